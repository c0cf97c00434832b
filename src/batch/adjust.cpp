#include "wortmath/batch/adjust.hpp"

#include <algorithm>
#include <cmath>

#include "wortmath/attenuation/alcohol_by_mass_from_real_extract.hpp"
#include "wortmath/attenuation/apparent_extract.hpp"
#include "wortmath/attenuation/original_extract.hpp"
#include "wortmath/attenuation/real_extract.hpp"
#include "wortmath/balance.hpp"
#include "wortmath/batch/cautions.hpp"
#include "wortmath/batch/wort.hpp"
#include "wortmath/beer/alcohol_by_volume.hpp"
#include "wortmath/carbonation/volumes.hpp"
#include "wortmath/colour/from_grist.hpp"
#include "wortmath/colour/mcu_for_colour.hpp"
#include "wortmath/colour/mcu_from_load.hpp"
#include "wortmath/extract/density.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/extract/to_gravity.hpp"
#include "wortmath/gravity/to_density.hpp"
#include "wortmath/priming/unfinished.hpp"
#include "wortmath/water/density.hpp"

namespace wortmath::batch {
namespace {

[[noreturn]] void refuse(std::string text) { throw file_error({}, std::move(text)); }

// Models with the policy of batches: unvalidated inputs are computed, impossible ones are a sentence.
template <class M, class... A>
auto value_of(const M& m, A... a) {
    caller<double> call;
    try {
        return call(m, a...);
    } catch (const refused& e) {
        refuse(e.text);
    }
}

double gravity_of(double plato) { return value_of(extract::to_gravity.asbc, plato); }
double water_litres(double grams, double t) { return grams / value_of(water::density.ptb_1990, t); }

// Wort or beer in grams, with its loads: BU x L and the colour as MCU x L.
struct liquid {
    double water = 0.0, extract = 0.0, ethanol = 0.0, temperature = 20.0;
    double sugar = 0.0;  // the part of the extract that ferments completely
    std::optional<double> bitterness, colour;

    double mass() const { return water + extract + ethanol; }
    double plato() const { return 100.0 * extract / mass(); }
    double alcohol() const { return 100.0 * ethanol / mass(); }
    double original() const { return ethanol > 0.0 ? value_of(attenuation::original_extract.balling, alcohol(), plato()) : plato(); }
    double gravity() const { return gravity_of(ethanol > 0.0 ? value_of(attenuation::apparent_extract.balling, original(), plato()) : plato()); }
    double volume(double t) const {
        if (!(ethanol > 0.0)) return mass() / value_of(extract::density.icumsa, plato() / 100.0, t);
        return mass() / (value_of(gravity::to_density.definition, gravity()) * value_of(water::density.ptb_1990, t) / value_of(water::density.ptb_1990, 20.0));
    }
    double strength() const { return ethanol > 0.0 ? value_of(beer::alcohol_by_volume.definition, alcohol(), value_of(gravity::to_density.definition, gravity())) : 0.0; }
};

liquid liquid_of(double volume, double gravity, double t, std::optional<double> original_gravity, std::optional<double> bitterness, std::optional<double> colour) {
    liquid w;
    w.temperature = t;
    double const apparent = value_of(extract::from_gravity.asbc, gravity);
    if (original_gravity) {
        if (*original_gravity < gravity) refuse("the original gravity is below the present one: nothing ferments upwards; check which reading is which");
        double const original = value_of(extract::from_gravity.asbc, *original_gravity);
        double const real = value_of(attenuation::real_extract.balling, original, apparent);
        double const a = original > real ? value_of(attenuation::alcohol_by_mass_from_real_extract.balling, original, real) : 0.0;
        double const rho = value_of(gravity::to_density.definition, gravity) * value_of(water::density.ptb_1990, t) / value_of(water::density.ptb_1990, 20.0);
        double const m = volume * rho;
        w.extract = m * real / 100.0, w.ethanol = m * a / 100.0, w.water = m - w.extract - w.ethanol;
    } else {
        if (apparent < 0.0) refuse("a gravity below that of water is beer and not wort: give its original gravity and the stage after_fermentation");
        double const m = volume * value_of(extract::density.icumsa, apparent / 100.0, t);
        w.extract = m * apparent / 100.0, w.water = m - w.extract;
    }
    double const v20 = w.volume(20.0);
    if (bitterness) w.bitterness = *bitterness * v20;
    if (colour) w.colour = value_of(colour::mcu_for_colour.morey, *colour) * v20;
    return w;
}

liquid sum_of(const liquid& a, const liquid& b) {
    liquid s = a;
    s.water += b.water, s.extract += b.extract, s.ethanol += b.ethanol, s.sugar += b.sugar;
    if (s.bitterness) s.bitterness = b.bitterness ? std::optional<double>(*s.bitterness + *b.bitterness) : std::nullopt;
    if (s.colour) s.colour = b.colour ? std::optional<double>(*s.colour + *b.colour) : std::nullopt;
    return s;
}
liquid part_of(const liquid& a, double share) {
    liquid s = a;
    s.water *= share, s.extract *= share, s.ethanol *= share, s.sugar *= share;
    if (s.bitterness) *s.bitterness *= share;
    if (s.colour) *s.colour *= share;
    return s;
}
liquid of_water(double grams) {
    liquid w;
    w.water = grams, w.bitterness = 0.0, w.colour = 0.0;
    return w;
}
// An addition: its solids, the water that comes with them, and its colour (MCU x L are what degL x kg make of them).
liquid of_extract(double grams, double solids, double degl) {
    liquid w;
    w.extract = solids * grams, w.water = grams - w.extract, w.bitterness = 0.0;
    w.colour = value_of(colour::mcu_from_load.exact, degl * grams / 1000.0);
    return w;
}
liquid boiled(const liquid& w, double grams) {
    liquid s = w;
    s.water -= grams;
    return s;
}

adjusted_state told(const liquid& w, std::optional<double> attenuation_of) {
    adjusted_state s;
    double const v20 = w.volume(20.0);
    s.mass = w.mass(), s.volume = w.volume(w.temperature), s.volume_20c = v20, s.gravity = w.gravity(), s.extract = w.plato(), s.original_extract = w.original(), s.alcohol_by_volume = w.strength();
    if (w.bitterness) s.bitterness = *w.bitterness / v20;
    if (w.colour) s.colour = value_of(colour::from_grist.morey, *w.colour / v20);
    if (attenuation_of && !(w.ethanol > 0.0)) {
        // As a ferment step of a batch does it: the malt extract to its attenuation, sugar completely.
        double const original = w.plato(), real = value_of(attenuation::real_extract.balling, original, original * (1.0 - *attenuation_of));
        double const share = original > 0.0 ? (original - real) / ((1.0 - balling_rest / balling_extract * real / 100.0) * original) : 0.0;
        liquid done = w;
        double const fermented = share * (w.extract - w.sugar) + w.sugar;
        done.extract -= fermented, done.ethanol = fermented / balling_extract;
        s.alcohol_expected = done.strength();
    }
    return s;
}

std::string text(const char* form, double v) {
    char buffer[48];
    std::snprintf(buffer, sizeof buffer, form, v);
    return buffer;
}
std::string litres(double v) { return text("%.2f", v) + " L"; }
std::string grams(double v) { return text("%.0f", v) + " g"; }

// The root of f from 0 on, for amounts; nothing if there is none below `most`.
template <class F>
std::optional<double> amount_for(F f, double most) {
    // So much may be more than a formula takes: then as much as it takes.
    for (int k = 0; k < 60; ++k, most *= 0.8) {
        try {
            (void)f(most);
        } catch (const file_error&) {
            continue;
        }
        double const x = bracketed<200>(0.0, most, f);
        if (x != x) return {};
        return x;
    }
    return {};
}

void caution(adjust_result& r, std::string_view id) {
    std::string words(caution_text(id));
    if (std::find(r.cautions.begin(), r.cautions.end(), words) == r.cautions.end()) r.cautions.push_back(std::move(words));
}

}  // namespace

adjust_result adjust(const adjust_request& q) {
    bool const before_boil = q.stage == "before_boil", after_boil = q.stage == "after_boil", in_fermenter = q.stage == "in_fermenter", beer = q.stage == "after_fermentation";
    if (!before_boil && !after_boil && !in_fermenter && !beer) refuse('"' + q.stage + "\" is not a stage; known: before_boil, after_boil, in_fermenter, after_fermentation");
    if (!(q.volume > 0.0) || !std::isfinite(q.volume)) refuse("the volume must be above 0");
    if (!(q.temperature >= 0.0 && q.temperature <= 105.0)) refuse("the temperature of a liquid lies between 0 degC and boiling; is it degF?");
    if (!q.target_gravity && !q.target_volume && !q.target_alcohol) refuse("nothing is wanted: give a target gravity, a target volume or a target alcohol");
    if (beer && !q.original_gravity) refuse("beer holds alcohol: its original gravity is needed to tell how much");
    if (!beer && q.target_alcohol) refuse("a target alcohol belongs to the stage after_fermentation");
    if (!(q.solids > 0.0 && q.solids <= 1.0)) refuse("the solids of an extract are a share above 0 and at most 1");
    if (q.attenuation && !(*q.attenuation >= 0.0 && *q.attenuation < 1.0)) refuse("the attenuation is a share from 0 to below 1");
    if (q.target_volume && !(*q.target_volume > 0.0)) refuse("the target volume must be above 0");
    if (q.evaporation && !(*q.evaporation > 0.0)) refuse("the evaporation must be above 0");

    adjust_result r;
    liquid const w = liquid_of(q.volume, q.gravity, q.temperature, beer ? q.original_gravity : std::nullopt, q.bitterness, q.colour);
    r.now = told(w, q.attenuation);
    r.target_gravity = q.target_gravity;
    double const t = q.temperature, m = w.mass(), P = w.plato();

    auto offer = [&](std::string what, double amount, std::string unit, std::string sentence, const liquid& after, std::vector<std::pair<std::string, double>> further = {}) {
        r.choices.push_back({std::move(what), amount, std::move(unit), std::move(further), std::move(sentence), told(after, q.attenuation)});
    };
    auto offer_water = [&](double g) {
        double const v = water_litres(g, 20.0);
        offer("add_water", v, "L", "add " + litres(v) + " of water (measured at 20 degC)" + (beer ? ", boiled, cooled and with as little air as can be" : ""), sum_of(w, of_water(g)), {{"mass_g", g}});
    };
    auto offer_boil = [&](double g) {
        double const v = water_litres(g, 20.0);
        std::vector<std::pair<std::string, double>> more{{"water_l", v}, {"mass_g", g}};
        bool const timed = q.evaporation.has_value();
        double const minutes = timed ? 60.0 * v / *q.evaporation : 0.0;
        offer("boil_longer", timed ? minutes : v, timed ? "min" : "L", (timed ? "boil " + text("%.0f", minutes) + " min longer, until " : "boil off until ") + litres(v) + " of water are gone; hops that are in give more bitterness, which is not counted here",
              boiled(w, g), std::move(more));
        caution(r, "burner"), caution(r, "boil_over"), caution(r, "hot_liquid");
    };
    auto offer_extract = [&](const char* what, const std::string& name, double solids, double degl, double g) {
        liquid added = of_extract(g, solids, degl);
        if (std::string_view(what) == "add_sugar") added.sugar = added.extract;
        offer(what, g, "g", "add " + grams(g) + " of " + name, sum_of(w, added));
        if (before_boil || after_boil) caution(r, "boil_over"), caution(r, "hot_liquid");
    };

    if (!beer && q.target_gravity) {
        double const target = value_of(extract::from_gravity.asbc, *q.target_gravity);
        if (!(target > 0.0)) refuse("a target gravity of wort lies above that of water");
        if (std::fabs(*q.target_gravity - q.gravity) < 1e-12) {
            r.not_possible.push_back("the gravity is the one wanted; nothing is to be done about it");
        } else if (target < P) {
            double const g = value_of(balance::dilute.mass, m, P, target);
            offer_water(g);
            if (before_boil && q.evaporation) {
                double const v = water_litres(g, 20.0), minutes = 60.0 * v / *q.evaporation;
                offer("boil_less", minutes, "min", "boil " + text("%.0f", minutes) + " min less: " + litres(v) + " of water stay; hops give less bitterness, which is not counted here", w, {{"water_l", v}, {"mass_g", g}});
            }
        } else {
            if (target < 100.0 * q.solids) offer_extract("add_extract", q.extract_name, q.solids, q.extract_colour, value_of(balance::strengthen.mass, m, P, target, q.solids));
            else r.not_possible.push_back("the target is stronger than the extract itself");
            if (q.solids != 0.97) offer_extract("add_dry_extract", "dry malt extract (97 % solids)", 0.97, q.extract_colour, value_of(balance::strengthen.mass, m, P, target, 0.97));
            offer_extract("add_sugar", "sucrose", 1.0, 0.0, value_of(balance::strengthen.mass, m, P, target, 1.0));
            if (P > 0.0) {
                double const g = value_of(balance::boil_down.mass, m, P, target);
                if (in_fermenter) r.not_possible.push_back("boiling down would take " + litres(water_litres(g, 20.0)) + " of water out, but the wort has left the kettle");
                else offer_boil(g);
            } else {
                r.not_possible.push_back("there is no extract: boiling cannot strengthen it");
            }
        }
        if (q.target_volume) {
            // Both at once: extract and water, or a boil where there is too much water.
            double const wanted = *q.target_volume * value_of(extract::density.icumsa, target / 100.0, t), extract_needed = wanted * target / 100.0 - w.extract;
            double const g = extract_needed / q.solids, water = wanted - m - g;
            liquid after = sum_of(sum_of(w, of_extract(std::max(g, 0.0), q.solids, q.extract_colour)), of_water(std::max(water, 0.0)));
            if (g < -1e-9 * m) {
                r.not_possible.push_back("there is more extract than " + litres(*q.target_volume) + " of the target gravity hold: " + litres(w.extract / (target / 100.0) / value_of(extract::density.icumsa, target / 100.0, t)) + " can be made");
            } else if (water >= 0.0) {
                offer("extract_and_water", std::max(g, 0.0), "g", "for " + litres(*q.target_volume) + ": add " + grams(std::max(g, 0.0)) + " of " + q.extract_name + " and " + litres(water_litres(water, 20.0)) + " of water", after, {{"water_l", water_litres(water, 20.0)}, {"water_g", water}});
            } else if (in_fermenter) {
                r.not_possible.push_back("for " + litres(*q.target_volume) + " too much water is there by " + litres(water_litres(-water, 20.0)) + ", and the wort has left the kettle");
            } else {
                double const v = water_litres(-water, 20.0);
                std::vector<std::pair<std::string, double>> more{{"boil_off_l", v}, {"boil_off_g", -water}};
                if (q.evaporation) more.emplace_back("boil_min", 60.0 * v / *q.evaporation);
                offer("extract_and_boil", std::max(g, 0.0), "g", "for " + litres(*q.target_volume) + ": add " + grams(std::max(g, 0.0)) + " of " + q.extract_name + " and boil off " + litres(v) + " of water", boiled(after, -water), std::move(more));
                caution(r, "burner"), caution(r, "boil_over"), caution(r, "hot_liquid");
            }
        }
    } else if (!beer && q.target_volume) {
        double const v = q.volume;
        if (*q.target_volume > v) {
            auto const g = amount_for([&](double x) { return sum_of(w, of_water(x)).volume(t) - *q.target_volume; }, 1.2 * 1000.0 * (*q.target_volume - v) + 1.0);
            if (g) offer_water(*g);
        } else if (*q.target_volume < v && !in_fermenter) {
            auto const g = amount_for([&](double x) { return boiled(w, x).volume(t) - *q.target_volume; }, w.water * 0.999);
            if (g) offer_boil(*g);
        } else if (*q.target_volume < v) {
            r.not_possible.push_back("the wort has left the kettle: water cannot be boiled off any more");
        }
    }

    if (beer) {
        auto feed = [](double g) {  // sucrose that ferments completely
            liquid s;
            s.ethanol = g / balling_extract, s.bitterness = 0.0, s.colour = 0.0;
            return s;
        };
        auto both = [&](const char* noun, double wanted, double have, auto of, const std::string& shown) {
            if (std::fabs(wanted - have) < 1e-12) {
                r.not_possible.push_back(std::string(noun) + " is the one wanted; nothing is to be done about it");
                return;
            }
            // A gravity below water's cannot be diluted down to; what water does decides.
            auto const g = amount_for([&](double x) { return of(sum_of(w, of_water(x))) - wanted; }, 100.0 * m);
            if (g) offer_water(*g);
            else if (wanted < have) r.not_possible.push_back("water alone does not bring the " + std::string(noun) + " to " + shown);
        };
        if (q.target_alcohol) {
            double const wanted = *q.target_alcohol, have = w.strength();
            if (wanted < 0.0) refuse("the target alcohol must not be negative");
            auto strength = [](const liquid& x) { return x.strength(); };
            if (wanted <= have) both("alcohol", wanted, have, strength, text("%.2f", wanted) + " % vol");
            else {
                auto const g = amount_for([&](double x) { return sum_of(w, feed(x)).strength() - wanted; }, 0.5 * m);
                if (g) {
                    offer("feed", *g, "g", "feed " + grams(*g) + " of sucrose and let it ferment out completely", sum_of(w, feed(*g)));
                    caution(r, "co2_room"), caution(r, "early_package");
                } else r.not_possible.push_back("no amount of sugar up to half the mass of the beer gives " + text("%.2f", wanted) + " % vol");
            }
        }
        if (q.target_gravity) {
            double const wanted = *q.target_gravity;
            auto gravity = [](const liquid& x) { return x.gravity(); };
            if (wanted > q.gravity) {
                auto const g = amount_for([&](double x) { return sum_of(w, of_extract(x, 1.0, 0.0)).gravity() - wanted; }, m);
                if (g) {
                    offer("sweeten", *g, "g", "sweeten with " + grams(*g) + " of sugar, right before it is drunk, or of a sugar that this yeast does not ferment: what ferments makes gas and alcohol", sum_of(w, of_extract(*g, 1.0, 0.0)));
                    caution(r, "bottles");
                }
            }
            if (wanted <= q.gravity || w.gravity() < 1.0) both("gravity", wanted, q.gravity, gravity, text("%.4f", wanted));
        }
        if (q.target_volume) {
            if (*q.target_volume > q.volume) {
                auto const g = amount_for([&](double x) { return sum_of(w, of_water(x)).volume(t) - *q.target_volume; }, 1.2 * 1000.0 * (*q.target_volume - q.volume) + 1.0);
                if (g) offer_water(*g);
            } else if (*q.target_volume < q.volume) {
                r.not_possible.push_back("beer is not boiled down: its alcohol would leave first, and its vapour burns");
            }
        }
    }

    if (q.blend_gravity && (q.target_gravity || q.target_alcohol)) {
        if (beer && !q.blend_original_gravity) refuse("the second beer holds alcohol: its original gravity is needed to tell how much");
        // A litre of the other one; in wort the ratio follows from balance.blend_ratio.
        liquid const litre = liquid_of(1.0, *q.blend_gravity, t, beer ? q.blend_original_gravity : std::nullopt, q.blend_bitterness, q.blend_colour);
        std::optional<double> v;
        if (!beer) {
            double const target = value_of(extract::from_gravity.asbc, *q.target_gravity), other = litre.plato();
            if ((target - other) * (P - target) > 0.0) v = m / value_of(balance::blend_ratio.mass, P, other, target) / litre.mass();
        } else {
            auto of = [&](double x) {
                liquid const s = sum_of(w, part_of(litre, x));
                return q.target_alcohol ? s.strength() - *q.target_alcohol : s.gravity() - *q.target_gravity;
            };
            v = amount_for(of, 1000.0 * q.volume);
        }
        if (!v) {
            r.not_possible.push_back("no blend with the second one reaches the target: it must lie between the two");
        } else if (q.blend_volume && *v > *q.blend_volume) {
            r.not_possible.push_back("the blend would take " + litres(*v) + " of the second one, and there are " + litres(*q.blend_volume));
        } else {
            offer("blend", *v, "L", "blend with " + litres(*v) + " of the second one (at the same temperature)", sum_of(w, part_of(litre, *v)), {{"mass_g", *v * litre.mass()}});
            if (beer) caution(r, "early_package");
        }
    }
    return r;
}

fermentation_judgement judge_fermentation(const fermentation_request& q) {
    std::size_t const n = q.days.size();
    if (n < 2 || q.gravities.size() != n) refuse("at least two readings are needed, each with its day");
    if (!(q.standard_uncertainty > 0.0) || q.standard_uncertainty > 0.05) refuse("the standard uncertainty of a reading is a gravity difference such as 0.0005");
    double day = 0.0, gravity = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        if (!std::isfinite(q.days[i])) refuse("a day is not a number");
        if (!(q.gravities[i] > 0.97 && q.gravities[i] < 1.2)) refuse(text("%g", q.gravities[i]) + " is not a gravity of beer (0.97 to 1.20)");
        day += q.days[i] / static_cast<double>(n), gravity += q.gravities[i] / static_cast<double>(n);
    }
    double squares = 0.0, products = 0.0;
    for (std::size_t i = 0; i < n; ++i) squares += (q.days[i] - day) * (q.days[i] - day), products += (q.days[i] - day) * (q.gravities[i] - gravity);
    if (!(squares > 0.0)) refuse("all readings are of one day: two readings apart in time are needed");
    auto const [first, last] = std::minmax_element(q.days.begin(), q.days.end());
    double const span = *last - *first;

    fermentation_judgement f;
    f.slope = products / squares, f.slope_uncertainty = q.standard_uncertainty / std::sqrt(squares);
    f.drop = -f.slope * span, f.drop_uncertainty = f.slope_uncertainty * span;
    double const z = f.slope / f.slope_uncertainty;
    f.probability = 0.5 * std::erfc(-z / std::sqrt(2.0));
    // One-sided at 5 %, found nine times in ten.
    f.detectable = (1.6448536269514722 + 1.2815515655446004) * f.slope_uncertainty;
    double const now = gravity + f.slope * (*last - day);
    double const now_uncertainty = std::sqrt(q.standard_uncertainty * q.standard_uncertainty / static_cast<double>(n) + f.slope_uncertainty * f.slope_uncertainty * (*last - day) * (*last - day));

    std::optional<double> const end = q.limit_gravity ? q.limit_gravity : q.expected_gravity;
    std::string const numbers = text("%.4f", std::fabs(f.drop)) + (f.drop >= 0.0 ? " down" : " up") + " in " + text("%.3g", span) + " days, with a standard uncertainty of " + text("%.4f", f.drop_uncertainty);
    // Half a gravity point a day is the slowest fall that still matters: two days of it are what a hydrometer's mark shows.
    constexpr double slow = 0.0005;
    if (f.probability < 0.05) {
        f.verdict = "falling";
        f.sentence = "The gravity is still falling: " + numbers + ". Fermentation is not finished.";
    } else if (1.0 - f.probability < 0.05) {
        f.verdict = "rising";
        f.sentence = "The gravity seems to rise (" + numbers + "), which fermentation does not do: check temperature, bubbles in the sample and the readings.";
    } else if (f.detectable > slow) {
        f.verdict = "cannot_tell";
        f.sentence = "No fall can be seen (" + numbers + "), but these readings would miss one of less than " + text("%.4f", f.detectable) + " a day: wait and read again.";
    } else if (!end) {
        f.verdict = "steady";
        f.sentence = "The gravity is steady: " + numbers + ". Whether it has finished or stopped too high, only a forced fermentation can tell.";
    } else {
        double const above = now - *end, spread = std::sqrt(now_uncertainty * now_uncertainty + q.standard_uncertainty * q.standard_uncertainty);
        double const margin = (q.limit_gravity ? 0.0 : 0.002) + 1.6448536269514722 * spread;
        bool const stuck = above > margin;
        f.verdict = stuck ? "stuck" : "steady_at_the_end";
        f.sentence = stuck ? "The gravity is steady but " + text("%.4f", above) + " above " + (q.limit_gravity ? "the end of the forced fermentation" : "what was expected") + ": stuck, or the expectation was wrong. A forced fermentation settles it."
                           : "The gravity is steady and no higher than " + std::string(q.limit_gravity ? "the end of the forced fermentation" : "expected") + " within the readings: " + numbers + ".";
    }

    if (end && q.original_gravity) {
        if (!(*q.original_gravity > 1.0 && *q.original_gravity < 1.2)) refuse("the original gravity lies between 1.00 and 1.20");
        double const original = value_of(extract::from_gravity.asbc, *q.original_gravity), bottom = value_of(extract::from_gravity.asbc, *end);
        auto volumes = [&](double g) {
            double const apparent = std::max(value_of(extract::from_gravity.asbc, g), bottom);
            return value_of(carbonation::volumes.real_gas, value_of(priming::unfinished.balling, original, apparent, bottom, value_of(gravity::to_density.definition, g)));
        };
        f.remaining_drop = std::max(0.0, now - *end);
        f.remaining_co2 = volumes(now);
        // 1.13: gas where no yeast grows any more; and the reading at the upper end of its 95 % interval.
        f.remaining_co2_upper = 1.13 * volumes(now + 1.6448536269514722 * std::sqrt(now_uncertainty * now_uncertainty + q.standard_uncertainty * q.standard_uncertainty));
        if (*f.remaining_co2_upper > 0.0) {
            f.sentence += " What is left would make " + text("%.2f", *f.remaining_co2) + " volumes of CO2 in a closed package, and up to " + text("%.2f", *f.remaining_co2_upper) + " at the upper end of the readings.";
        }
    }
    f.cautions.emplace_back(caution_text("early_package"));
    f.cautions.emplace_back(caution_text("bottles"));
    return f;
}

}  // namespace wortmath::batch
