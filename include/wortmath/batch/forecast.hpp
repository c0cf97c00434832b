// Brews a batch on paper: the state after every step, a ledger in which every gram is accounted for, the expected
// readings and the cautions. The engine is a template on the number type, so that the same text gives the forecast,
// its derivatives and the draws of a Monte Carlo study. docs/batch.md is the contract.
#pragma once

#include <algorithm>
#include <cmath>

#include "wortmath/atmosphere/altitude.hpp"
#include "wortmath/atmosphere/pressure.hpp"
#include "wortmath/attenuation/alcohol_by_volume.hpp"
#include "wortmath/attenuation/apparent_attenuation.hpp"
#include "wortmath/attenuation/apparent_extract.hpp"
#include "wortmath/attenuation/real_attenuation.hpp"
#include "wortmath/attenuation/real_extract.hpp"
#include "wortmath/batch/wort.hpp"
#include "wortmath/beer/alcohol_by_volume.hpp"
#include "wortmath/beer/energy.hpp"
#include "wortmath/bitterness/altitude_factor.hpp"
#include "wortmath/bitterness/average_boil_gravity.hpp"
#include "wortmath/bitterness/post_boil.hpp"
#include "wortmath/bitterness/ratio.hpp"
#include "wortmath/bitterness/utilisation.hpp"
#include "wortmath/carbonation/pressure.hpp"
#include "wortmath/carbonation/residual.hpp"
#include "wortmath/carbonation/volumes.hpp"
#include "wortmath/colour/ebc_from_srm.hpp"
#include "wortmath/colour/from_grist.hpp"
#include "wortmath/colour/mcu_from_load.hpp"
#include "wortmath/colour/srm_from_ebc.hpp"
#include "wortmath/colour/swatch.hpp"
#include "wortmath/colour/word.hpp"
#include "wortmath/extract/density.hpp"
#include "wortmath/extract/from_density.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/extract/to_gravity.hpp"
#include "wortmath/gravity/from_density.hpp"
#include "wortmath/gravity/to_density.hpp"
#include "wortmath/hydrometer/correct.hpp"
#include "wortmath/kettle/evaporation.hpp"
#include "wortmath/kettle/heating_time.hpp"
#include "wortmath/mash/strike.hpp"
#include "wortmath/package/bottle_count.hpp"
#include "wortmath/package/caution.hpp"
#include "wortmath/package/pressure.hpp"
#include "wortmath/priming/alcohol_added.hpp"
#include "wortmath/priming/dose.hpp"
#include "wortmath/priming/sugar_yield.hpp"
#include "wortmath/refractometer/reading.hpp"
#include "wortmath/thermal/mix.hpp"
#include "wortmath/thermal/specific_heat.hpp"
#include "wortmath/water/boiling_temperature.hpp"
#include "wortmath/water/density.hpp"
#include "wortmath/yeast/dry_mass.hpp"
#include "wortmath/yeast/pitch.hpp"

namespace wortmath::batch {

// ---------------------------------------------------------------------------------------------------- the result

template <class T>
using figure = std::optional<T>;  // nothing: not reached, or a model refused (then `reasons` says why)

template <class T>
using figures = std::vector<std::pair<std::string, figure<T>>>;  // by name, in order

template <class T>
struct state {
    T mass{}, water{}, malt_extract{}, sugar_extract{}, ethanol{}, co2{}, temperature{}, volume{}, volume_20c{}, extract{}, apparent_extract{}, gravity{};
    figure<T> hydrometer, refractometer;
    T bitterness{}, colour{}, alcohol_by_volume{};
};

template <class T>
struct step_result {
    int number = 0, line = 0;
    std::string do_word, place;
    figure<T> minutes;
    std::optional<state<T>> after;  // nothing: the vessel is empty
    figures<T> reported;
};

template <class T>
struct addition_result {
    int step = 0;
    std::optional<std::string> name;
    figure<T> minutes;
    T alpha_g{}, utilisation{}, bitterness{};
    figures<T> by_model;
};

struct caution {
    std::string id, level;
    std::optional<int> step;
};

template <class T>
struct package_result {
    std::string kind, package;
    int step = 0;
    figure<T> bottles, remainder, residual, carbonation, priming_sugar, priming_alcohol, serving_pressure, hottest_pressure, hazard_pressure, hazard_carbonation, regulator_pressure;
    int level = 0;
};

template <class T>
struct forecast_result {
    std::string name;
    T barometer{}, boiling_temperature{};
    models_table models;
    std::vector<step_result<T>> steps;
    std::vector<std::pair<std::string, T>> in, out;
    T kept{}, imbalance{};
    std::vector<addition_result<T>> hops;
    figure<T> original_gravity, original_extract, final_gravity, apparent_attenuation, real_attenuation, alcohol_by_volume, alcohol_by_volume_before_priming, alcohol_by_mass;
    figures<T> alcohol_by_formula;
    figure<T> bitterness;
    figures<T> bitterness_by_model;
    figure<T> bitterness_ratio, colour, colour_ebc;
    figures<T> colour_by_model;
    std::optional<std::array<int, 3>> swatch;
    std::vector<std::string> colour_words;
    bool has_colour_words = false;
    figure<T> volume_packaged, cells_needed, dry_yeast, energy;
    std::optional<package_result<T>> package;
    std::vector<caution> cautions;
    std::vector<outside<T>> outside_range;
    std::vector<assumption> assumed;
    std::vector<std::string> reasons;

    bool stops() const {
        return std::any_of(cautions.begin(), cautions.end(), [](const caution& c) { return c.level == "stop"; });
    }
};

// ----------------------------------------------------------------------------------------------------- the engine

namespace engine {

inline std::string text_of(double v, int digits = 6) {
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%.*g", digits, v);
    return buffer;
}

// The root of f between lo and hi: found on plain numbers, then one Newton step on T, which carries the derivatives.
template <class T, class F>
T solved(double lo, double hi, F f) {
    double const x = bracketed<200>(lo, hi, [&](double v) { return number(f(T(v))); });
    if (x != x) return T(undefined);
    if constexpr (__is_same(T, double)) return x;
    else {
        double const h = 1e-6 * (1.0 + (x < 0.0 ? -x : x));
        double const slope = (number(f(T(x + h))) - number(f(T(x - h)))) / (2.0 * h);
        return newton<1>(T(x), f, [slope](T) { return T(slope); });
    }
}

template <class T>
class brewer {
public:
    explicit brewer(const batch<T>& b) : b_(b) {}

    forecast_result<T> run() {
        r_.name = b_.name;
        r_.models = b_.models;
        r_.assumed = b_.assumed;
        guarded({b_.line, 0, {}, b_.barometer ? "barometer" : "altitude", "batch"}, [&] {
            if (b_.barometer) {
                r_.barometer = b_.barometer->value;
                altitude_ = call_(atmosphere::altitude.us1976, r_.barometer);
            } else {
                altitude_ = b_.altitude ? b_.altitude->value : T(0.0);
                r_.barometer = call_(atmosphere::pressure.us1976, altitude_);
            }
            r_.boiling_temperature = call_(water::boiling_temperature.if97, r_.barometer);
        });
        boiling_ = r_.boiling_temperature;
        check_liquid_temperatures(b_, number(boiling_));
        for (auto const& s : b_.steps) std::visit([&](auto const& one) { take(one); }, s);
        finish();
        return std::move(r_);
    }

private:
    const batch<T>& b_;
    forecast_result<T> r_;
    caller<T> call_;
    T boiling_{}, altitude_{};
    wort<T> kettle_, fermenter_;
    bool transferred_ = false, packaged_ = false, pitched_ = false, ferments_ = false;
    T mashed_grain_{};  // g
    T kettle_hops_{};   // g
    T kettle_alpha_{};  // g
    struct dosed {
        T mass{}, alpha{}, added{};  // added: mg of bitterness when it went in, stands included
        figure<T> boil_minutes;
        std::array<bool, utilisation_names.size()> accepted{};
    };
    std::vector<dosed> dosed_;
    figure<T> limit_attenuation_;
    T greatest_attenuation_{0.0};
    T final_oe_{}, final_ae_{}, final_re_{};
    struct {
        bool used = false;
        T mass{}, yield{}, efficiency{};
        wortmath::word::sugar sugar{};
        T residual{};
    } prime_;
    bool dry_hopped_ = false;
    figure<T> carbonation_;  // of the closed package
    T headspace_{}, air_{}, filling_{}, hottest_{};

    // ---- models ------------------------------------------------------------------------------------------------------

    // What a model refuses inside becomes an error of the file at this place.
    template <class F>
    auto guarded(where at, F f) -> decltype(f()) {
        try {
            return f();
        } catch (const refused& e) {
            throw file_error(std::move(at), e.text);
        }
    }
    void reason(std::string text) {
        if (std::find(r_.reasons.begin(), r_.reasons.end(), text) == r_.reasons.end()) r_.reasons.push_back(std::move(text));
    }
    // A figure that a model may refuse without spoiling the batch.
    template <class F>
    figure<T> offered(const char* what, F f) {
        bool const before = call_.watching;
        call_.watching = false;
        figure<T> v;
        try {
            v = f();
        } catch (const refused& e) {
            reason(std::string(what) + ": " + e.text);
        }
        call_.watching = before;
        if (v && !(number(*v) - number(*v) == 0.0)) {
            reason(std::string(what) + ": the model gives no finite number here");
            v.reset();
        }
        return v;
    }

    T to_gravity(T plato) {
        T g{};
        with_model(extract::to_gravity, b_.models.gravity.value, [&](auto const& m) { g = call_(m, plato); });
        return g;
    }
    T from_gravity(T gravity) {
        T p{};
        with_model(extract::from_gravity, b_.models.gravity.value, [&](auto const& m) { p = call_(m, gravity); });
        return p;
    }
    T water_mass(T litres, T t) { return litres * call_(water::density.ptb_1990, t); }
    T original_extract(const wort<T>& w) {
        T const a = w.alcohol(), p = w.plato();
        return 100.0 * (balling_extract * a + p) / (100.0 + balling_rest * a);
    }
    T apparent_extract(const wort<T>& w) { return w.fermented() ? call_(attenuation::apparent_extract.balling, original_extract(w), w.plato()) : w.plato(); }
    T gravity(const wort<T>& w) { return to_gravity(apparent_extract(w)); }
    T volume(const wort<T>& w, T t) {
        if (w.empty()) return T(0.0);
        if (!w.fermented()) return w.mass() / call_(extract::density.icumsa, w.extract() / w.mass(), t);
        T const at_20 = call_(gravity::to_density.definition, gravity(w));
        return w.mass() / (at_20 * call_(water::density.ptb_1990, t) / call_(water::density.ptb_1990, T(20.0)));
    }
    T volume(const wort<T>& w) { return volume(w, w.temperature); }
    T volume_20(const wort<T>& w) { return volume(w, T(20.0)); }
    T strength(const wort<T>& w) { return w.fermented() ? call_(beer::alcohol_by_volume.definition, w.alcohol(), call_(gravity::to_density.definition, gravity(w))) : T(0.0); }
    T mcu(const wort<T>& w, T v20) { return call_(colour::mcu_from_load.exact, w.colour / 1000.0 / v20); }
    T colour(const wort<T>& w, T v20) {
        T c{};
        T const load = mcu(w, v20);
        with_model(colour::from_grist, b_.models.colour.value, [&](auto const& m) { c = call_(m, load); });
        return c;
    }
    T bitterness(const wort<T>& w, T v20) {
        T b(0.0);
        for (auto const& h : w.hops) b = b + h.bitterness;
        return b / v20;
    }
    T residual(T t) {
        T v{};
        with_model(carbonation::residual, b_.models.residual.value, [&](auto const& m) { v = call_(m, t, r_.barometer); });
        return v;
    }

    // ---- vessels -----------------------------------------------------------------------------------------------------

    wort<T>& here() { return transferred_ ? fermenter_ : kettle_; }
    static void entry(std::vector<std::pair<std::string, T>>& list, const std::string& name, T grams) {
        for (auto& [known, sum] : list)
            if (known == name) {
                sum = sum + grams;
                return;
            }
        list.emplace_back(name, grams);
    }
    void came(const std::string& name, T grams) { entry(r_.in, name, grams); }
    void went(const std::string& name, T grams) { entry(r_.out, name, grams); }

    void mix(wort<T>& into, const wort<T>& stream) {
        if (into.empty()) {
            into.add(stream);
            into.temperature = stream.temperature;
            return;
        }
        if (stream.empty()) {
            into.add(stream);
            return;
        }
        into.temperature = mixed_temperature({&into, &stream});
        into.add(stream);
    }
    T mixed_temperature(std::initializer_list<const wort<T>*> all) {
        std::vector<T> m, p, t;
        for (auto const* w : all) {
            if (w->empty()) continue;
            m.push_back(w->mass()), p.push_back(w->plato()), t.push_back(w->temperature);
        }
        return call_(thermal::mix.wort_enthalpy, series<T>{m.data(), m.size()}, series<T>{p.data(), p.size()}, series<T>{t.data(), t.size()});
    }
    static wort<T> plain_water(T grams, T t) {
        wort<T> w;
        w.water = grams, w.temperature = t;
        return w;
    }
    void limit_co2(wort<T>& w) {
        if (!ferments_ || w.empty()) return;
        T const most = co2_g_per_volume * volume_20(w) * residual(w.temperature);
        if (number(w.co2) > number(most)) {
            went("CO2 released", w.co2 - most);
            w.co2 = most;
        }
    }
    template <class S, class K>
    void set_temperature(const S& s, std::string_view key, const K& at, wort<T>& w, T t) {
        if (number(t) > number(boiling_)) fail(s, key, at, text_of(number(t), 4) + " degC is above the boiling temperature here, " + text_of(number(boiling_), 4) + " degC");
        bool const changes = number(t) != number(w.temperature);
        w.temperature = t;
        if (changes && ferments_ && &w == &fermenter_) limit_co2(w);
    }
    template <class S>
    T take_share(const S& s, std::string_view key, const amount<T>& at, const wort<T>& w, T litres, const char* what) {
        T const there = volume(w);
        if (!(number(litres) < number(there)))
            fail(s, key, at, std::string(what) + " would take " + text_of(number(litres), 4) + " L, but only " + text_of(number(there), 4) + " L " + (number(there) > 0.0 ? "are" : "is") + " there; nothing would be left");
        return litres / there;
    }
    static T total(const wort<T>& w) { return w.mass() + w.co2 + w.priming; }
    template <class S>
    void lose(const S& s, std::string_view key, const amount<T>& at, wort<T>& w, T litres, const char* name, const char* what) {
        if (number(litres) == 0.0) {
            went(name, T(0.0));
            return;
        }
        T const share = take_share(s, key, at, w, litres, what);
        went(name, total(w) * share);
        w.keep(1.0 - share);
    }

    // ---- ingredients -------------------------------------------------------------------------------------------------

    T degrees_lovibond(const amount<T>& c) { return c.in == measure::ebc ? call_(colour::srm_from_ebc.exact, c.value) : c.value; }
    void dissolve_item(wort<T>& w, const extract_item<T>& e) {
        T const dry = e.solids.value * e.mass.value;
        w.malt = w.malt + dry, w.water = w.water + (e.mass.value - dry), w.colour = w.colour + e.mass.value * degrees_lovibond(e.colour);
        if (pitched_) w.malt_at_pitch = w.malt_at_pitch + dry;
        came("malt extract", e.mass.value);
    }
    void dissolve_item(wort<T>& w, const sugar_item<T>& s) {
        T const dry = s.solids.value * s.mass.value;
        w.sugar = w.sugar + dry, w.water = w.water + (s.mass.value - dry), w.colour = w.colour + s.mass.value * degrees_lovibond(s.colour);
        came("sugar", s.mass.value);
    }
    void grains_into(wort<T>& w, const std::vector<grain_item<T>>& grains, T yield, T& kilograms) {
        for (auto const& g : grains) {
            T const x = g.mass.value * g.extract.value * yield;
            w.malt = w.malt + x;
            w.colour = w.colour + g.mass.value * degrees_lovibond(g.colour);
            kilograms = kilograms + g.mass.value / 1000.0;
            came("grain extract", x);
        }
    }

    // ---- the frame of a step -----------------------------------------------------------------------------------------

    template <class S>
    void take(const S& s) {
        call_.step = s.number;
        step_result<T> out;
        out.number = s.number, out.line = s.line, out.do_word = std::string(S::do_word);
        if constexpr (requires { s.minutes.value; }) out.minutes = s.minutes.value;
        else if constexpr (requires { s.minutes->value; }) { if (s.minutes) out.minutes = s.minutes->value; }
        guarded(place_of(s), [&] { brew(s, out); });
        bool const in_fermenter = transferred_ || S::do_word == "top_up";
        out.place = packaged_ ? "package" : in_fermenter ? "fermenter" : "kettle";
        wort<T> const& w = in_fermenter ? fermenter_ : kettle_;
        guarded(place_of(s), [&] {
            if (!w.empty()) out.after = look(w);
        });
        if (out.after && number(out.after->temperature) > 50.0) warn("hot_liquid", "always", s.number);
        if constexpr (S::do_word == "transfer" || S::do_word == "top_up")
            if (out.after && number(out.after->temperature) > 40.0) warn("hot_glass", "stop", s.number);
        r_.steps.push_back(std::move(out));
    }
    void warn(const char* id, const char* level, std::optional<int> step) { r_.cautions.push_back({id, level, step}); }

    state<T> look(const wort<T>& w) {
        state<T> s;
        s.mass = w.mass(), s.water = w.water, s.malt_extract = w.malt, s.sugar_extract = w.sugar, s.ethanol = w.ethanol, s.co2 = w.co2, s.temperature = w.temperature;
        s.volume = volume(w), s.volume_20c = volume_20(w);
        s.extract = w.plato(), s.apparent_extract = apparent_extract(w), s.gravity = to_gravity(s.apparent_extract);
        s.alcohol_by_volume = strength(w);
        s.bitterness = bitterness(w, s.volume_20c);
        bool const before = call_.watching;
        call_.watching = false;
        s.colour = colour(w, s.volume_20c);
        call_.watching = before;
        auto const& set = b_.instruments;
        if (number(100.0 * (w.extract() + w.ethanol) / w.mass()) >= 1.0)
            s.hydrometer = offered("hydrometer", [&] { return hydrometer(s.gravity, set.hydrometer_calibration.value, set.sample_temperature.value); });
        s.refractometer = offered("refractometer", [&] {
            if (!w.fermented()) return T(w.plato() * set.wort_factor.value);
            return call_(refractometer::reading.additive, original_extract(w), s.apparent_extract, set.wort_factor.value);
        });
        return s;
    }
    // What a hydrometer calibrated at `calibration` shows in a sample at `sample`.
    T hydrometer(T g, T calibration, T sample) {
        T const w = call_(extract::from_density.icumsa, call_(gravity::to_density.definition, g), T(20.0));
        T const shown_at_calibration = call_(gravity::from_density.definition, call_(extract::density.icumsa, w, calibration), calibration);
        // The correction changes by about 1 % of a change in the reading, so that this converges by two digits a round.
        T reading = shown_at_calibration;
        for (int round = 0; round < 12; ++round)
            reading = reading - (hydrometer::correct.glass_and_liquid.formula(reading, sample, calibration, maybe<T>{}, T(glass[4].fallback), T(glass[5].fallback)) - shown_at_calibration);
        return reading;
    }
    static constexpr auto& glass = hydrometer::correct_models::glass_and_liquid::inputs;

    // ---- the steps ---------------------------------------------------------------------------------------------------

    template <class S>
    wort<T> water_of(const S& s, const std::optional<amount<T>>& litres, const std::optional<amount<T>>& grams, const amount<T>& t) {
        (void)s;
        return plain_water(litres ? water_mass(litres->value, t.value) : grams->value, t.value);
    }
    template <class S>
    void below_boiling(const S& s, std::string_view key, const amount<T>& t) {
        if (number(t.value) > number(boiling_)) fail(s, key, t, text_of(number(t.value), 4) + " degC is above the boiling temperature here, " + text_of(number(boiling_), 4) + " degC");
    }
    template <class S>
    void not_empty(const S& s, const wort<T>& w, const char* vessel) {
        if (w.empty()) fail(s, std::string("the ") + vessel + " is empty; put something into it first");
    }

    void brew(const water_step<T>& s, step_result<T>&) {
        below_boiling(s, "temperature", s.temperature);
        wort<T> const w = water_of(s, s.volume, s.mass, s.temperature);
        came("water", w.water);
        mix(kettle_, w);
    }

    void brew(const heat_step<T>& s, step_result<T>& out) {
        not_empty(s, kettle_, "kettle");
        T const to = s.to.value, t = kettle_.temperature;
        if (number(to) > number(boiling_)) fail(s, "to", s.to, text_of(number(to), 4) + " degC is above the boiling temperature here, " + text_of(number(boiling_), 4) + " degC");
        if (number(to) < number(t)) fail(s, "to", s.to, text_of(number(to), 4) + " degC is below the present temperature, " + text_of(number(t), 4) + " degC; chill is the step that cools");
        if (s.power) {
            T const heat = call_(thermal::specific_heat.kadlec, kettle_.plato(), (t + to) / 2.0);
            out.reported.emplace_back("minutes", call_(kettle::heating_time.lossless, kettle_.mass(), heat, t, to, s.power->value, s.efficiency.value, s.vessel_heat_capacity.value));
        }
        kettle_.temperature = to;
        warn("burner", "always", s.number);
    }

    void brew(const steep_step<T>& s, step_result<T>&) {
        not_empty(s, kettle_, "kettle");
        if (s.temperature) set_temperature(s, "temperature", *s.temperature, kettle_, s.temperature->value);
        T kilograms(0.0);
        grains_into(kettle_, s.grains, s.efficiency.value, kilograms);
        T const held = s.absorption.value * kilograms * (s.squeezed.value ? 0.5 : 1.0);
        lose(s, "absorption", s.absorption, kettle_, held, "held by grain", "the grain");
        for (auto const& g : s.grains)
            if (g.extract.given && number(g.extract.value) > 0.78) {
                warn("steep_starch", "note", s.number);
                break;
            }
    }

    void brew(const mash_step<T>& s, step_result<T>& out) {
        if (number(kettle_.extract()) > 0.0) fail(s, "the kettle holds wort already; a mash starts in an empty kettle or in plain water");
        below_boiling(s, "temperature", s.temperature);
        if (s.water) {
            below_boiling(s, "water_temperature", s.water_temperature);
            T const grams = water_mass(s.water->value, s.water_temperature.value);
            came("water", grams);
            kettle_.water = kettle_.water + grams;
        }
        if (kettle_.empty()) fail(s, "water", s.water, "the mash has no water");
        T kilograms(0.0);
        T const liquor = kettle_.water;
        grains_into(kettle_, s.grains, s.conversion.value, kilograms);
        if (!(number(kilograms) > 0.0)) fail(s, "the grains weigh nothing");
        kettle_.temperature = s.temperature.value;
        mashed_grain_ = kilograms;
        out.reported.emplace_back("strike_temperature_c", call_(mash::strike.enthalpy, liquor / (1000.0 * kilograms), s.grain_temperature.value, s.temperature.value));
    }

    void brew(const lauter_step<T>& s, step_result<T>& out) {
        T const held = s.absorption.value * mashed_grain_;
        wort<T> tun = std::move(kettle_);
        kettle_ = {};
        std::vector<wort<T>> runnings;
        auto run_off = [&](std::string_view key, const amount<T>& at) {
            T const there = volume(tun);
            if (!(number(held) < number(there)))
                fail(s, key, at, "the grain holds back " + text_of(number(held), 4) + " L and only " + text_of(number(there), 4) + " L are there: nothing runs off");
            T const stays = held / there;
            wort<T> run = tun;
            run.keep(1.0 - stays);
            tun.keep(stays);
            runnings.push_back(std::move(run));
        };
        run_off("absorption", s.absorption);
        out.reported.emplace_back("first_runnings_degp", runnings.front().plato());
        for (auto const& sp : s.sparges) {
            if (number(sp.temperature.value) > number(boiling_)) fail(s, "temperature", sp.temperature, text_of(number(sp.temperature.value), 4) + " degC is above the boiling temperature here, " + text_of(number(boiling_), 4) + " degC");
            T const grams = water_mass(sp.volume.value, sp.temperature.value);
            came("water", grams);
            mix(tun, plain_water(grams, sp.temperature.value));
            run_off("volume", sp.volume);
        }
        went("held by grain", total(tun));
        lose(s, "dead_space", s.dead_space, runnings.back(), s.dead_space.value, "left in the tun", "the dead space");
        std::vector<T> m, p, t;
        for (auto const& w : runnings) m.push_back(w.mass()), p.push_back(w.plato()), t.push_back(w.temperature);
        T const mixed = call_(thermal::mix.wort_enthalpy, series<T>{m.data(), m.size()}, series<T>{p.data(), p.size()}, series<T>{t.data(), t.size()});
        for (auto const& w : runnings) kettle_.add(w);
        kettle_.temperature = mixed;
    }

    void brew(const dissolve_step<T>& s, step_result<T>&) {
        wort<T>& w = here();
        not_empty(s, w, transferred_ ? "fermenter" : "kettle");
        for (auto const& e : s.extracts) guarded(place_of(s, "colour", e.colour), [&] { dissolve_item(w, e); });
        for (auto const& e : s.sugars) guarded(place_of(s, "colour", e.colour), [&] { dissolve_item(w, e); });
    }

    // U of one model for an addition of t minutes: stretches between later additions of extract, each with its gravity.
    struct boil_view {
        std::vector<T> gravities, stretches;
        T mean{}, end{}, minutes{};
    };
    T utilisation(std::string_view name, const boil_view& v) {
        if (name == "tinseth") {
            // What was published is the table up to two hours from the addition on, however it is cut into stretches.
            auto const& steps = bitterness::utilisation.tinseth_gravity_steps;
            call_.note(steps, "boil_minutes", v.minutes, limits{.valid_lo = 0.0, .valid_hi = 120.0});
            call_.unwatched_argument = "step_minutes";
            T const u = call_(steps, series<T>{v.gravities.data(), v.gravities.size()}, series<T>{v.stretches.data(), v.stretches.size()});
            call_.unwatched_argument = {};
            return u;
        }
        T const g = name.starts_with("garetz") || name == "tutzauer" ? v.mean : v.end;
        T u{};
        with_model(bitterness::utilisation, name, [&](auto const& m) {
            using M = std::remove_cvref_t<decltype(m)>;
            if constexpr (wortmath::detail::required<M>() == 2 && M::signature::kinds[0] == wortmath::detail::kind::number) u = call_(m, g, v.minutes);
        });
        return u;
    }
    T altitude_factor(T minutes) {
        auto const& name = b_.models.altitude_factor.value;
        if (name == "none") return T(1.0);
        T f{};
        with_model(bitterness::altitude_factor, name, [&](auto const& m) {
            using M = std::remove_cvref_t<decltype(m)>;
            if constexpr (M::signature::arity == 2) f = call_(m, boiling_, minutes);
            else f = call_(m, name == "garetz_1994" ? altitude_ : boiling_);
        });
        return f;
    }
    std::size_t record(int step, const hop_item<T>& h, figure<T> minutes) {
        addition_result<T> a;
        a.step = step, a.name = h.name, a.minutes = minutes, a.alpha_g = h.mass.value * h.alpha.value;
        r_.hops.push_back(std::move(a));
        dosed d;
        d.mass = h.mass.value, d.alpha = h.alpha.value, d.boil_minutes = minutes, d.added = T(0.0);
        d.accepted.fill(true);
        dosed_.push_back(d);
        return dosed_.size() - 1;
    }

    void brew(const boil_step<T>& s, step_result<T>& out) {
        wort<T>& w = kettle_;
        not_empty(s, w, "kettle");
        w.temperature = boiling_;
        warn("burner", "always", s.number);
        warn("boil_over", "always", s.number);
        T const total_minutes = s.minutes.value;
        std::string_view const key = s.evaporation ? "evaporation" : "power";
        const amount<T>& at = s.evaporation ? *s.evaporation : *s.power;
        T rate = guarded(place_of(s, key, at), [&]() -> T {  // g/h
            if (!s.evaporation) return call_(kettle::evaporation.latent_heat, s.power->value * s.efficiency.value, boiling_);
            return at.in == measure::gram_per_hour ? at.value : water_mass(at.value, T(20.0));
        });

        // Everything that joins, by the minutes left; of things at one minute extracts and sugars come first.
        struct event {
            double left;
            T minutes;
            int kind;  // 0 extract, 1 sugar, 2 hops
            std::size_t index;
        };
        std::vector<event> events;
        for (std::size_t i = 0; i < s.extracts.size(); ++i) events.push_back({number(s.extracts[i].minutes->value), s.extracts[i].minutes->value, 0, i});
        for (std::size_t i = 0; i < s.sugars.size(); ++i) events.push_back({number(s.sugars[i].minutes->value), s.sugars[i].minutes->value, 1, i});
        for (std::size_t i = 0; i < s.hops.size(); ++i) events.push_back({number(s.hops[i].minutes->value), s.hops[i].minutes->value, 2, i});
        auto too_early = [&](const amount<T>& minutes) {
            if (number(minutes.value) > number(total_minutes))
                fail(s, "minutes", minutes, text_of(number(minutes.value), 4) + " min is longer than the boil of " + text_of(number(total_minutes), 4) + " min");
        };
        for (auto const& e : s.extracts) too_early(*e.minutes);
        for (auto const& e : s.sugars) too_early(*e.minutes);
        for (auto const& e : s.hops) too_early(*e.minutes);
        std::stable_sort(events.begin(), events.end(), [](const event& x, const event& y) { return x.left != y.left ? x.left > y.left : (x.kind == 2) < (y.kind == 2); });

        T left = total_minutes, lost(0.0);
        auto boil_to = [&](T minutes_left) {
            T const grams = rate * ((left - minutes_left) / 60.0);
            if (!(number(grams) < number(w.water)))
                fail(s, key, at, "the boil would evaporate all the water in the kettle (" + text_of(number(rate) / 1000.0, 4) + " kg/h for " + text_of(number(total_minutes), 4) + " min, " + text_of((number(w.water) + number(lost)) / 1000.0, 4) + " kg of water): it boils dry");
            w.water = w.water - grams;
            lost = lost + grams;
            left = minutes_left;
        };
        // Gravities just after what joined at a minute, and just before.
        struct mark {
            T minutes, before, after;
        };
        std::vector<mark> marks;
        struct waiting {
            std::size_t addition;
            std::size_t from;  // index of its mark
            const hop_item<T>* item;
        };
        std::vector<waiting> hops;
        for (std::size_t i = 0; i < events.size();) {
            double const minute = events[i].left;
            T const minutes = events[i].minutes;
            boil_to(minutes);
            mark m{minutes, T(0.0), T(0.0)};
            m.before = gravity(w);
            bool joins = false;
            std::size_t k = i;
            for (; k < events.size() && events[k].left == minute; ++k) {
                if (events[k].kind == 2) break;
                // No time passes between things of one minute, but each has a minute of its own to move with.
                if (k > i) boil_to(events[k].minutes);
                if (events[k].kind == 0) dissolve_item(w, s.extracts[events[k].index]), joins = true;
                else dissolve_item(w, s.sugars[events[k].index]), joins = true;
            }
            m.after = joins ? gravity(w) : m.before;
            marks.push_back(m);
            if (joins) cuts_.push_back(marks.size() - 1);
            for (; k < events.size() && events[k].left == minute; ++k) {
                if (k > i) {
                    boil_to(events[k].minutes);
                    T const g = gravity(w);
                    marks.push_back({events[k].minutes, g, g});
                }
                hops.push_back({record(s.number, s.hops[events[k].index], events[k].minutes), marks.size() - 1, &s.hops[events[k].index]});
            }
            i = k;
        }
        boil_to(T(0.0));
        T const end = gravity(w);
        // The end of the last stretch lies before what joins at minute 0.
        if (marks.empty() || number(marks.back().minutes) > 0.0) marks.push_back({T(0.0), end, end});
        std::size_t const last = marks.size() - 1;

        for (auto const& h : hops) {
            const amount<T>& at_minutes = *h.item->minutes;
            guarded(place_of(s, "minutes", at_minutes), [&] {
                boil_view v;
                v.minutes = at_minutes.value, v.end = end;
                std::size_t from = h.from;
                for (std::size_t k = h.from + 1; k <= last; ++k) {
                    bool const cut = k == last || std::find(cuts_.begin(), cuts_.end(), k) != cuts_.end();
                    if (!cut) continue;
                    v.gravities.push_back(call_(bitterness::average_boil_gravity.constant_evaporation, marks[from].after, marks[k].before));
                    v.stretches.push_back(marks[from].minutes - marks[k].minutes);
                    from = k;
                }
                if (number(v.minutes) == 0.0 || v.gravities.empty()) v.gravities = {end}, v.stretches = {T(0.0)}, v.mean = end;
                else {
                    T weighted(0.0);
                    for (std::size_t k = 0; k < v.gravities.size(); ++k) weighted = weighted + v.gravities[k] * v.stretches[k];
                    v.mean = weighted / v.minutes;
                }
                T const factor = altitude_factor(v.minutes);
                T const alpha_mg = 1000.0 * (h.item->mass.value * h.item->alpha.value);
                hop_load<T> load;
                load.addition = h.addition;
                load.bitterness = alpha_mg * (utilisation(b_.models.utilisation.value, v) * factor);
                bool const before = call_.watching;
                call_.watching = false;
                for (std::size_t n = 0; n < utilisation_names.size(); ++n) {
                    try {
                        load.by_model[n] = alpha_mg * (utilisation(utilisation_names[n], v) * factor);
                    } catch (const refused&) {
                        dosed_[h.addition].accepted[n] = false;
                    }
                }
                call_.watching = before;
                dosed_[h.addition].added = load.bitterness;
                w.hops.push_back(std::move(load));
            });
            kettle_hops_ = kettle_hops_ + h.item->mass.value;
            kettle_alpha_ = kettle_alpha_ + h.item->mass.value * h.item->alpha.value;
        }
        cuts_.clear();
        went("evaporated", lost);
        out.reported.emplace_back("evaporated_g", lost);
        if (!s.hops.empty()) warn("hop_dog", "always", s.number);
        if (number(kettle_alpha_) > 0.0 && number(1000.0 * kettle_alpha_ / volume_20(w)) > 240.0) warn("hop_ceiling", "note", s.number);
    }
    std::vector<std::size_t> cuts_;

    void brew(const stand_step<T>& s, step_result<T>&) {
        wort<T>& w = kettle_;
        not_empty(s, w, "kettle");
        T const t = s.temperature.value;
        if (number(t) > number(w.temperature)) fail(s, "temperature", s.temperature, text_of(number(t), 4) + " degC is above the present temperature, " + text_of(number(w.temperature), 4) + " degC; heat is the step that warms");
        w.temperature = t;
        T const g = gravity(w);
        auto share = [&](T boiled, T stood) { return call_(bitterness::post_boil.constant_temperature, g, boiled, stood, t); };
        guarded(place_of(s, "minutes", s.minutes), [&] {
            if (s.kettle_hops.value) {
                for (auto& h : w.hops) {
                    dosed& d = dosed_[h.addition];
                    if (!d.boil_minutes) continue;
                    T const more = 1000.0 * (d.mass * d.alpha) * (share(*d.boil_minutes, s.minutes.value) - share(*d.boil_minutes, T(0.0)));
                    grow(h, more);
                }
            }
            for (auto const& item : s.hops) {
                hop_load<T> h;
                h.addition = record(s.number, item, {});
                h.bitterness = T(0.0);
                grow(h, 1000.0 * (item.mass.value * item.alpha.value) * share(T(0.0), s.minutes.value));
                w.hops.push_back(std::move(h));
                kettle_hops_ = kettle_hops_ + item.mass.value;
                kettle_alpha_ = kettle_alpha_ + item.mass.value * item.alpha.value;
            }
        });
        if (!s.hops.empty()) warn("hop_dog", "always", s.number);
    }
    void grow(hop_load<T>& h, T more) {
        h.bitterness = h.bitterness + more;
        for (T& b : h.by_model) b = b + more;
        dosed_[h.addition].added = dosed_[h.addition].added + more;
    }

    void brew(const chill_step<T>& s, step_result<T>&) {
        wort<T>& w = here();
        not_empty(s, w, transferred_ ? "fermenter" : "kettle");
        if (number(s.to.value) > number(w.temperature))
            fail(s, "to", s.to, text_of(number(s.to.value), 4) + " degC is above the present temperature, " + text_of(number(w.temperature), 4) + " degC; " + (transferred_ ? "a ferment, rack or dry_hop step can warm beer" : "heat is the step that warms"));
        set_temperature(s, "to", s.to, w, s.to.value);
    }

    void brew(const transfer_step<T>& s, step_result<T>&) {
        wort<T>& w = kettle_;
        not_empty(s, w, "kettle");
        T const there = volume(w), hops = s.hop_absorption.value * kettle_hops_ / 1000.0, gone = s.leave.value + hops;
        if (!(number(gone) < number(there)))
            fail(s, "leave", s.leave, "what is left behind and what the hops hold (" + text_of(number(gone), 4) + " L) is all there is in the kettle (" + text_of(number(there), 4) + " L)");
        went("left in the kettle", total(w) * (s.leave.value / there));
        if (number(hops) > 0.0) went("held by hops", total(w) * (hops / there));
        w.keep(1.0 - gone / there);
        mix(fermenter_, w);
        kettle_ = {};
        transferred_ = true;
    }

    void brew(const top_up_step<T>& s, step_result<T>& out) {
        below_boiling(s, "temperature", s.temperature);
        wort<T>& f = fermenter_;
        T grams{};
        if (s.to) {
            not_empty(s, f, "fermenter");
            T const there = volume(f);
            if (number(s.to->value) < number(there))
                fail(s, "to", *s.to, text_of(number(s.to->value), 4) + " L is less than what is there, " + text_of(number(there), 4) + " L");
            auto excess = [&](T g) {
                wort<T> w = f;
                mix(w, plain_water(g, s.temperature.value));
                return T(volume(w) - s.to->value);
            };
            bool const before = call_.watching;
            call_.watching = false;
            double const most = 1100.0 * (number(s.to->value) - number(there)) + 1.0;
            grams = number(s.to->value) == number(there) ? T(0.0) : solved<T>(0.0, most, excess);
            call_.watching = before;
        } else {
            grams = s.volume ? water_mass(s.volume->value, s.temperature.value) : s.mass->value;
        }
        came("water", grams);
        mix(f, plain_water(grams, s.temperature.value));
        if (number(grams) > 0.0) limit_co2(f);
        out.reported.emplace_back("added_g", grams);
    }

    void brew(const pitch_step<T>& s, step_result<T>& out) {
        wort<T>& w = fermenter_;
        not_empty(s, w, "fermenter");
        double const t = number(w.temperature);
        if (t > 40.0) fail(s, "the wort is at " + text_of(t, 4) + " degC; above 40 degC yeast dies: put a chill step before it");
        pitched_ = true;
        w.malt_at_pitch = w.malt;
        T const v20 = volume_20(w), p = w.plato();
        T const cells = guarded(place_of(s, "pitch_rate", s.pitch_rate), [&] { return call_(yeast::pitch.rate_plato, v20, p, s.pitch_rate.value); });
        T const dry = guarded(place_of(s, "cells_per_gram", s.cells_per_gram), [&] { return call_(yeast::dry_mass.per_gram, cells, s.cells_per_gram.value); });
        T const by_dose = call_(yeast::dry_mass.dose_rate, v20);
        T const g = gravity(w);
        out.reported.emplace_back("cells_needed", cells);
        out.reported.emplace_back("dry_yeast_g", dry);
        out.reported.emplace_back("dry_yeast_by_dose_g", by_dose);
        out.reported.emplace_back("original_gravity", g);
        r_.original_gravity = g, r_.original_extract = p, r_.cells_needed = cells, r_.dry_yeast = dry;
        if (s.range.size() == 2) {
            if (t > number(s.range[1].value)) warn("warm_pitch", "caution", s.number);
            if (t < number(s.range[0].value)) warn("cold_pitch", "caution", s.number);
        }
        bool const few = s.cells && number(s.cells->value) < 0.5 * number(cells);
        bool const little = s.mass && number(s.mass->value) < 0.5 * std::min(number(dry), number(by_dose));
        if (few || little) warn("yeast_short", "caution", s.number);
    }

    static constexpr double k = balling_rest / balling_extract;
    // The share of the malt extract that ferments at an apparent attenuation, at the original extract of the state.
    T fermentable_share(T oe, T apparent) {
        T const re = call_(attenuation::real_extract.balling, oe, oe * (1.0 - apparent));
        return (oe - re) / ((1.0 - k * re / 100.0) * oe);
    }

    void brew(const ferment_step<T>& s, step_result<T>& out) {
        wort<T>& w = fermenter_;
        not_empty(s, w, "fermenter");
        set_temperature(s, "temperature", s.temperature, w, s.temperature.value);
        warn("co2_room", "always", s.number);
        T from_malt(0.0), from_sugar = w.sugar;
        if (s.final_gravity) {
            auto const& fg = *s.final_gravity;
            guarded(place_of(s, "final_gravity", fg), [&] {
                T const present = gravity(w), present_ae = apparent_extract(w);
                T const ae = fg.in == measure::plato ? fg.value : from_gravity(fg.value);
                bool const above = fg.in == measure::plato ? number(ae) > number(present_ae) : number(fg.value) > number(present);
                if (above) fail(s, "final_gravity", fg, text_of(number(fg.value)) + " is above the present gravity, " + text_of(number(fg.in == measure::plato ? present_ae : present)));
                T const re = call_(attenuation::real_extract.balling, original_extract(w), ae);
                T const all = (w.extract() - re * w.mass() / 100.0) / (1.0 - k * re / 100.0);
                if (number(all) > number(w.extract())) fail(s, "final_gravity", fg, text_of(number(fg.value)) + " would need more extract to ferment than there is");
                if (number(all) < 0.0) fail(s, "final_gravity", fg, text_of(number(fg.value)) + " is above the present gravity, " + text_of(number(present)));
                from_sugar = number(all) < number(w.sugar) ? all : w.sugar;
                from_malt = all - from_sugar;
            });
        } else if (s.attenuation) {
            auto const& a = *s.attenuation;
            guarded(place_of(s, "attenuation", a), [&] {
                if (number(a.value) < number(greatest_attenuation_))
                    fail(s, "attenuation", a, text_of(100.0 * number(a.value)) + " % is below the " + text_of(100.0 * number(greatest_attenuation_)) + " % of an earlier step; fermentation does not go back");
                greatest_attenuation_ = a.value;
                T const target = fermentable_share(original_extract(w), a.value) * w.malt_at_pitch - (w.malt_at_pitch - w.malt);
                from_malt = number(target) > 0.0 ? target : T(0.0);
                if (number(from_malt) > number(w.malt)) fail(s, "attenuation", a, text_of(100.0 * number(a.value)) + " % would need more malt extract to ferment than there is");
            });
        }
        if (s.limit_attenuation) {
            if (s.attenuation && number(s.limit_attenuation->value) < number(s.attenuation->value))
                fail(s, "limit_attenuation", *s.limit_attenuation, text_of(100.0 * number(s.limit_attenuation->value)) + " % is below the attenuation of " + text_of(100.0 * number(s.attenuation->value)) + " %");
            limit_attenuation_ = s.limit_attenuation->value;
        }
        T const fermented = from_malt + from_sugar;
        T const co2 = balling_co2 * fermented / balling_extract, yeast = balling_yeast * fermented / balling_extract;
        w.malt = w.malt - from_malt, w.sugar = w.sugar - from_sugar;
        w.ethanol = w.ethanol + fermented / balling_extract;
        w.co2 = w.co2 + co2;
        went("yeast", yeast);
        ferments_ = true;
        limit_co2(w);
        out.reported.emplace_back("fermented_g", fermented);
        out.reported.emplace_back("co2_formed_g", co2);
        out.reported.emplace_back("yeast_g", yeast);
        final_oe_ = original_extract(w), final_re_ = w.plato(), final_ae_ = apparent_extract(w);
        r_.final_gravity = gravity(w);
    }

    void brew(const rack_step<T>& s, step_result<T>&) {
        wort<T>& w = fermenter_;
        if (s.temperature) set_temperature(s, "temperature", *s.temperature, w, s.temperature->value);
        lose(s, "leave", s.leave, w, s.leave.value, "left under the beer", "what is left behind");
    }

    void brew(const dry_hop_step<T>& s, step_result<T>&) {
        wort<T>& w = fermenter_;
        if (s.temperature) set_temperature(s, "temperature", *s.temperature, w, s.temperature->value);
        T kilograms(0.0);
        for (auto const& h : s.hops) {
            hop_load<T> load;
            load.addition = record(s.number, h, {});
            load.bitterness = T(0.0);
            for (T& b : load.by_model) b = T(0.0);
            kilograms = kilograms + h.mass.value / 1000.0;
            w.hops.push_back(std::move(load));
        }
        lose(s, "absorption", s.absorption, w, s.absorption.value * kilograms, "held by dry hops", "the hops");
        dry_hopped_ = true;
        if (!s.hops.empty()) warn("hop_dog", "always", s.number);
    }

    T volumes_of(const amount<T>& c) { return c.in == measure::gram_per_litre ? call_(carbonation::volumes.real_gas, c.value) : c.value; }

    void brew(const prime_step<T>& s, step_result<T>& out) {
        wort<T>& w = fermenter_;
        below_boiling(s, "water_temperature", s.water_temperature);
        T const grams = water_mass(s.water.value, s.water_temperature.value);
        came("priming water", grams);
        mix(w, plain_water(grams, s.water_temperature.value));
        if (number(grams) > 0.0) limit_co2(w);
        T const v = volume_20(w), residual = w.co2 / (co2_g_per_volume * v);
        prime_.used = true, prime_.residual = residual, prime_.efficiency = s.efficiency.value;
        for (std::size_t i = 0; i < word_count<wortmath::word::sugar>; ++i)
            if (s.sugar.value == spelled<wortmath::word::sugar>::names[i]) prime_.sugar = static_cast<wortmath::word::sugar>(i);
        guarded(place_of(s, "sugar", s.sugar), [&] { prime_.yield = call_(priming::sugar_yield.stoichiometric, prime_.sugar); });
        if (s.carbonation) {
            guarded(place_of(s, "carbonation", *s.carbonation), [&] {
                T const target = volumes_of(*s.carbonation);
                if (number(target) < number(residual))
                    fail(s, "carbonation", *s.carbonation, text_of(number(target), 4) + " volumes is less than the beer holds already, " + text_of(number(residual), 3) + " volumes");
                if (!(number(prime_.yield) > 0.0)) fail(s, "sugar", s.sugar, s.sugar.value + " does not ferment and gives no gas; no amount of it reaches a carbonation");
                prime_.mass = call_(priming::dose.mass_balance, target, residual, v, prime_.yield, s.efficiency.value);
            });
        } else {
            prime_.mass = s.mass->value;
        }
        w.priming = w.priming + prime_.mass;
        came("priming sugar", prime_.mass);
        out.reported.emplace_back("sugar_g", prime_.mass);
        out.reported.emplace_back("residual_vol", residual);
    }

    // The share of water's solubility that beer has: the default of the model, and the run for the hazard with less.
    const T usual_factor = T(package::pressure_models::beer_henry::inputs[7].fallback);
    figure<T> package_pressure(const char* what, T volumes, T t, T factor) {
        return offered(what, [&] {
            // A package that is mostly headspace is a different vessel: the contract ends at 0.30 L per L.
            double const p = number(r_.barometer);
            if (p < 0.7 || p > 1.1) throw refused("a barometer of " + text_of(p, 4) + " bar is outside the 0.7 to 1.1 bar for which a package pressure is given");
            if (number(headspace_) > 0.30) throw refused("a headspace of " + text_of(number(headspace_)) + " L per L of beer is more than the 0.30 for which a package pressure is given");
            return call_(package::pressure.beer_henry, volumes, t, headspace_, air_, filling_, r_.barometer, r_.barometer, factor);
        });
    }

    template <class S>
    void close(const S& s, package_result<T>& p) {
        wort<T>& w = fermenter_;
        p.package = s.package.value, p.step = s.number;
        headspace_ = s.headspace.value;
        hottest_ = s.hottest.value;
        filling_ = number(w.temperature) > 25.0 ? T(25.0) : w.temperature;
        T const v20 = volume_20(w), gas = co2_g_per_volume * v20;
        T const sugar_gas = prime_.used ? w.priming * prime_.yield : T(0.0);
        T const carbonation = w.co2 / gas + (prime_.used ? sugar_gas * prime_.efficiency / gas : T(0.0));
        carbonation_ = carbonation;
        T malt_left(0.0);
        if (limit_attenuation_) {
            T const target = fermentable_share(original_extract(w), *limit_attenuation_) * w.malt_at_pitch - (w.malt_at_pitch - w.malt);
            malt_left = !(number(target) > 0.0) ? T(0.0) : number(target) > number(w.malt) ? w.malt : target;
        }
        // 1.13: what the yield of a slow last part of fermentation may add; the cautious side.
        T const unfinished = 1.13 * balling_co2 / balling_extract * (w.sugar + malt_left) / gas;
        T const hazard_carbonation = w.co2 / gas + sugar_gas / gas + unfinished;
        p.residual = prime_.used ? prime_.residual : w.co2 / gas;
        p.carbonation = carbonation, p.hazard_carbonation = hazard_carbonation;
        p.priming_sugar = p.priming_alcohol = T(0.0);
        if (prime_.used) {
            p.priming_sugar = prime_.mass;
            p.priming_alcohol = call_(priming::alcohol_added.stoichiometric, w.priming, v20, prime_.sugar, prime_.efficiency);
        }
        T const strength_all = strength(w) + (p.priming_alcohol ? *p.priming_alcohol : T(0.0));
        bool const strong = number(strength_all) > 7.0, heavy = number(w.plato()) > 6.0;
        T const factor(strong && heavy ? 0.80 : strong || heavy ? 0.85 : 0.89);
        bool refusal = false;
        auto press = [&](const char* what, T volumes, T t, T f) {
            figure<T> const v = package_pressure(what, volumes, t, f);
            refusal = refusal || !v;
            return v;
        };
        p.serving_pressure = press("serving pressure", carbonation, s.serving.value, usual_factor);
        p.hottest_pressure = press("pressure at the hottest", carbonation, hottest_, usual_factor);
        p.hazard_pressure = press("hazard pressure", hazard_carbonation, hottest_, factor);
        auto level = [&](bool confirmed) {
            if (refusal) return 2;
            wortmath::word::package kind{};
            for (std::size_t i = 0; i < word_count<wortmath::word::package>; ++i)
                if (s.package.value == spelled<wortmath::word::package>::names[i]) kind = static_cast<wortmath::word::package>(i);
            maybe<double> const rated = s.rated ? maybe<double>{number(s.rated->value), true} : maybe<double>{};
            return static_cast<int>(package::caution.project_rule.formula(kind, number(*p.hazard_pressure), number(hazard_carbonation), rated, confirmed));
        };
        p.level = level(s.fermentation_confirmed.value);
        int const physical = level(true);
        if (!s.fermentation_confirmed.value && (p.kind == "bottle" || prime_.used)) warn("early_package", "caution", s.number);
        if (physical > 0) warn("package_pressure", physical == 2 ? "stop" : "caution", s.number);
        if (dry_hopped_ && (p.kind == "bottle" || prime_.used)) warn("dry_hop_restart", "caution", s.number);
        if ((p.kind == "bottle" || prime_.used) && s.fermentation_confirmed.value && !limit_attenuation_ && number((final_oe_ - final_ae_) / final_oe_) < 0.60) warn("low_attenuation", "caution", s.number);
        warn(p.kind == "bottle" ? "bottles" : "keg", "always", s.number);
        r_.alcohol_by_volume_before_priming = strength(w);
        r_.alcohol_by_volume = strength_all;
        r_.volume_packaged = volume(w);
        packaged_ = true;
        r_.package = std::move(p);
    }

    void brew(const bottle_step<T>& s, step_result<T>& out) {
        wort<T>& w = fermenter_;
        package_result<T> p;
        p.kind = "bottle";
        T const there = volume(w);
        T const bottles = guarded(place_of(s, "volume", s.volume), [&] { return call_(package::bottle_count.whole, there, s.loss.value, s.volume.value); });
        if (!(number(bottles) >= 1.0)) fail(s, "volume", s.volume, "there is not enough beer for one bottle of " + text_of(number(s.volume.value), 4) + " L: " + text_of(number(there), 4) + " L less a loss of " + text_of(number(s.loss.value), 4) + " L");
        p.bottles = bottles;
        p.remainder = there - s.loss.value - bottles * s.volume.value;
        out.reported.emplace_back("bottles", bottles);
        lose(s, "loss", s.loss, w, s.loss.value, "lost in packaging", "the loss");
        air_ = T(1.0);
        close(s, p);
    }

    void brew(const keg_step<T>& s, step_result<T>&) {
        wort<T>& w = fermenter_;
        package_result<T> p;
        p.kind = "keg";
        lose(s, "loss", s.loss, w, s.loss.value, "lost in packaging", "the loss");
        air_ = T(1.0);
        figure<T> before;
        if (s.carbonation) {
            guarded(place_of(s, "carbonation", *s.carbonation), [&] {
                T const gas = co2_g_per_volume * volume_20(w), target = volumes_of(*s.carbonation);
                before = w.co2 / gas;
                if (number(target) < number(*before))
                    fail(s, "carbonation", *s.carbonation, text_of(number(target), 4) + " volumes is less than the beer holds already, " + text_of(number(*before), 3) + " volumes");
                came("cylinder CO2", target * gas - w.co2);
                w.co2 = target * gas;
                air_ = T(0.0);
                p.regulator_pressure = call_(carbonation::pressure.exponential_chart, s.serving.value, target, r_.barometer);
            });
        }
        close(s, p);
        if (before) r_.package->residual = before;
    }

    template <class S>
    void pressure_at(const S& s, step_result<T>& out) {
        if (number(s.temperature.value) > number(hottest_))
            fail(s, "temperature", s.temperature, text_of(number(s.temperature.value), 4) + " degC is above the `hottest` of the package, " + text_of(number(hottest_), 4) + " degC");
        out.reported.emplace_back("pressure_bar", package_pressure("pressure", *carbonation_, s.temperature.value, usual_factor));
    }
    void brew(const condition_step<T>& s, step_result<T>& out) { pressure_at(s, out); }
    void brew(const serve_step<T>& s, step_result<T>& out) { pressure_at(s, out); }
    void brew(const note_step<T>&, step_result<T>&) {}

    // ---- the end -----------------------------------------------------------------------------------------------------

    void finish() {
        call_.step.reset();
        wort<T> const& w = here();
        T in(0.0), out(0.0);
        for (auto const& [name, grams] : r_.in) in = in + grams;
        for (auto const& [name, grams] : r_.out) out = out + grams;
        // Water may wait in the fermenter before the transfer.
        r_.kept = total(kettle_) + total(fermenter_);
        r_.imbalance = in - out - r_.kept;
        if (!w.empty()) guarded({b_.line, 0, {}, {}, "batch"}, [&] { results(w); });
        warn("cleaning", "always", {});
        double low = no_limit, high = 0.0;
        for (auto const& [name, bu] : r_.bitterness_by_model) low = std::min(low, number(*bu)), high = std::max(high, number(*bu));
        if (high > 2.0 * low) warn("wide_bitterness", "note", {});
        r_.outside_range = std::move(call_.found);
    }

    void results(wort<T> const& w) {
        T const v20 = [&] {
            bool const before = call_.watching;
            call_.watching = false;
            T const v = volume_20(w);
            call_.watching = before;
            return v;
        }();
        // colour is watched here, and nowhere else
        T const load = mcu(w, v20);
        r_.colour = colour(w, v20);
        call_.watching = false;
        r_.colour_ebc = offered("colour_ebc", [&] { return call_(colour::ebc_from_srm.exact, *r_.colour); });
        wortmath::detail::each_model(static_cast<const colour::from_grist_models&>(colour::from_grist), [&](auto const& m) {
            try {
                r_.colour_by_model.emplace_back(std::string(name_of_model(m)), call_(m, load));
            } catch (const refused&) {  // a comparison: a model that does not reach this far is left out
            }
        });
        try {
            auto const rgb = call_(colour::swatch.de_lange_d65, *r_.colour);
            r_.swatch = {static_cast<int>(number(rgb[0])), static_cast<int>(number(rgb[1])), static_cast<int>(number(rgb[2]))};
        } catch (const refused& e) {
            reason(std::string("swatch: ") + e.text);
        }
        try {
            auto const mask = static_cast<unsigned>(number(call_(colour::word.bjcp_2021, *r_.colour)));
            using W = word_of_result<std::remove_cvref_t<decltype(colour::word.bjcp_2021)>>;
            for (std::size_t i = 0; i < word_count<W>; ++i)
                if (mask >> i & 1u) r_.colour_words.push_back(spelled<W>::names[i]);
            r_.has_colour_words = true;
        } catch (const refused& e) {
            reason(std::string("colour_word: ") + e.text);
        }

        r_.bitterness = bitterness(w, v20);
        std::array<bool, utilisation_names.size()> all{};
        all.fill(!r_.hops.empty());
        std::array<T, utilisation_names.size()> sums{};
        for (T& x : sums) x = T(0.0);
        for (std::size_t i = 0; i < r_.hops.size(); ++i) {
            addition_result<T>& a = r_.hops[i];
            const dosed& d = dosed_[i];
            const hop_load<T>* load = nullptr;
            for (auto const& h : w.hops)
                if (h.addition == i) load = &h;
            T const dose = 1000.0 * (d.mass * d.alpha);
            a.utilisation = number(dose) > 0.0 ? d.added / dose : T(0.0);
            a.bitterness = load ? load->bitterness / v20 : T(0.0);
            for (std::size_t n = 0; n < utilisation_names.size(); ++n) {
                all[n] = all[n] && d.accepted[n];
                if (!d.accepted[n]) continue;
                T const bu = load ? load->by_model[n] / v20 : T(0.0);
                a.by_model.emplace_back(std::string(utilisation_names[n]), bu);
                sums[n] = sums[n] + bu;
            }
        }
        for (std::size_t n = 0; n < utilisation_names.size(); ++n)
            if (all[n]) r_.bitterness_by_model.emplace_back(std::string(utilisation_names[n]), sums[n]);

        r_.alcohol_by_mass = w.alcohol();
        if (!packaged_) r_.alcohol_by_volume = r_.alcohol_by_volume_before_priming = strength(w);
        if (r_.original_gravity && number(*r_.original_gravity) > 1.0)
            r_.bitterness_ratio = offered("bitterness_ratio", [&] { return call_(bitterness::ratio.bu_gu, *r_.bitterness, *r_.original_gravity); });
        if (r_.final_gravity) {
            r_.apparent_attenuation = offered("apparent_attenuation", [&] { return call_(attenuation::apparent_attenuation.definition, final_oe_, final_ae_); });
            r_.real_attenuation = offered("real_attenuation", [&] { return call_(attenuation::real_attenuation.balling, final_oe_, final_re_); });
            wortmath::detail::each_model(static_cast<const attenuation::alcohol_by_volume_models&>(attenuation::alcohol_by_volume), [&](auto const& m) {
                std::string const name(name_of_model(m));
                r_.alcohol_by_formula.emplace_back(name, offered(("alcohol_by_formula " + name).c_str(), [&] { return call_(m, *r_.original_gravity, *r_.final_gravity); }));
            });
            r_.energy = offered("energy", [&] { return call_(beer::energy.asbc_beer33, w.alcohol(), w.plato()) * call_(gravity::to_density.definition, gravity(w)) / 1000.0; });
        }
        call_.watching = true;
    }
    template <class M>
    struct word_of_names;
    template <class W>
    struct word_of_names<names_of<W>> {
        using type = W;
    };
    template <class M>
    using word_of_result = typename word_of_names<typename M::signature::result>::type;
};

}  // namespace engine

template <class T>
forecast_result<T> forecast(const batch<T>& b) {
    return engine::brewer<T>(b).run();
}

}  // namespace wortmath::batch
