// A batch moved to another kettle and fermenter.
#include <algorithm>
#include <cmath>

#include "batch/units.hpp"
#include "wortmath/batch/plan.hpp"
#include "wortmath/batch/read.hpp"
#include "wortmath/extract/density.hpp"

namespace wortmath::batch {
namespace {

[[noreturn]] void refuse(std::string text) { throw file_error({}, std::move(text)); }

std::string litres(double v) {
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%.2f L", v);
    return buffer;
}

// What grows with the batch: ingredients and what goes with them. Vessels' own losses, rates and bottles do not.
bool grows(const named_amount<double>& a) {
    std::string_view const k = a.at.key, d = a.at.do_word;
    if (a.at.step == 0) return false;
    if (!a.list.empty()) return k == "mass" || (a.list == "sparges" && k == "volume");
    if (d == "water" || d == "top_up") return k == "volume" || k == "mass" || k == "to";
    if (d == "mash") return k == "water";
    if (d == "pitch") return k == "mass" || k == "cells";
    if (d == "prime") return k == "mass" || k == "water";
    return false;
}

struct view {
    double volume = 0.0;  // in the fermenter at pitching, at 20 degC
    double boil = 0.0;    // the most in the kettle while it boils, hot
    double top_up_g = 0.0, top_up = 0.0;
    int transfer = 0;     // line after which a top-up can be put in; its step
    forecast_result<double> f;
};

view look(const batch<double>& b) {
    view v;
    v.f = forecast(b);
    state<double> const* before = nullptr;
    for (std::size_t i = 0; i < v.f.steps.size(); ++i) {
        auto const& s = v.f.steps[i];
        if (s.do_word == "boil" && before) {
            double const hot = v.f.boiling_temperature;
            auto volume = [&](double grams, double extract) { return grams / extract::density.icumsa.formula(extract / grams, hot); };
            double extra = 0.0, extra_extract = 0.0;
            // What joins at the very start of the boil is in the kettle before anything has left it.
            std::visit(
                [&](auto const& step) {
                    if constexpr (std::is_same_v<std::remove_cvref_t<decltype(step)>, boil_step<double>>) {
                        auto join = [&](auto const& list) {
                            for (auto const& x : list)
                                if (x.minutes->value >= step.minutes.value) extra += x.mass.value, extra_extract += x.mass.value * x.solids.value;
                        };
                        join(step.extracts), join(step.sugars);
                    }
                },
                b.steps[i]);
            v.boil = std::max(v.boil, volume(before->mass + extra, before->malt_extract + before->sugar_extract + extra_extract));
            if (s.after) v.boil = std::max(v.boil, volume(s.after->mass, s.after->malt_extract + s.after->sugar_extract));
        }
        if (s.do_word == "top_up") {
            for (auto const& [name, x] : s.reported)
                if (name == "added_g" && x) v.top_up_g += *x;
        }
        if (s.do_word == "pitch" && s.after) v.volume = s.after->volume_20c;
        if (s.do_word == "transfer") v.transfer = s.number;
        if (s.after) before = &*s.after;
    }
    return v;
}

}  // namespace

rescale_result rescale(std::string_view toml, const rescale_request& q) {
    batch<double> b = read_text(toml);
    view const old = look(b);
    if (!old.transfer || !(old.volume > 0.0)) refuse("a batch that is not pitched has no volume to scale by: transfer and pitch are missing");
    rescale_result r;
    if (q.factor && q.volume) refuse("give the factor or the volume, not both");
    double const wanted = q.volume ? *q.volume : (q.factor ? *q.factor : 1.0) * old.volume;
    if (!(wanted > 0.0) || !std::isfinite(wanted)) refuse("the new volume must be above 0");
    r.factor = wanted / old.volume;

    // What is not a number of the file needs words of its own.
    std::string text(toml);
    auto all = amounts_of(b);
    std::vector<replacement> changes;
    auto put = [&](std::size_t i, double v) {
        if (all[i].is->given) changes.push_back({i, v});
    };
    auto set = [&](const char* word, const char* key, const std::optional<double>& v, const char* noun) {
        if (!v) return;
        if (*v < 0.0 || !std::isfinite(*v)) refuse(std::string(noun) + " must not be negative");
        bool found = false;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (all[i].at.do_word != word || all[i].at.key != key || !all[i].list.empty()) continue;
            if (!all[i].is->given) refuse(std::string(noun) + ": step " + std::to_string(all[i].at.step) + " (" + word + ") has no " + key + " of its own; write it into the file first");
            double const grams_or_litres = all[i].is->in == measure::gram_per_hour ? *v * water::density.ptb_1990.formula(20.0) : *v;
            put(i, grams_or_litres), found = true;
        }
        if (!found) refuse(std::string(noun) + ": the batch has no " + key + " in a " + word + " step");
    };
    set("boil", "evaporation", q.evaporation, "the boil-off");
    set("transfer", "leave", q.leave, "what is left in the kettle");
    set("lauter", "dead_space", q.dead_space, "the dead space");
    set("rack", "leave", q.rack_leave, "what is left under the beer");
    if (q.packaging_loss) {
        bool const keg = std::any_of(all.begin(), all.end(), [](auto const& a) { return a.at.do_word == "keg"; });
        set(keg ? "keg" : "bottle", "loss", q.packaging_loss, "the loss in packaging");
    }
    if (q.altitude) {
        if (!b.altitude || !b.altitude->given) refuse("the altitude: the file has no altitude of its own; write it into [batch] first");
        put(0, *q.altitude);
    }
    double volume_scale = r.factor;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (grows(all[i])) put(i, all[i].is->value * volume_scale);
    text = with_amounts(text, changes);

    // Ingredients keep their proportions: grain, extracts and sugars, and hops each move together.
    auto group = [&](std::vector<named_amount<double>> const& list, auto fits) {
        plan_freedom f;
        for (std::size_t i = 0; i < list.size(); ++i)
            if (list[i].is->given && list[i].is->value > 0.0 && fits(list[i])) f.amounts.push_back(i);
        if (!f.amounts.empty()) {
            double const first = list[f.amounts.front()].is->value;
            f.least = first / 20.0, f.most = first * 20.0;
        }
        return f;
    };
    auto const is_water = [](const named_amount<double>& a) {
        return (a.list.empty() && ((a.at.do_word == "water" && (a.at.key == "volume" || a.at.key == "mass")) || (a.at.do_word == "mash" && a.at.key == "water"))) ||
               (a.list == "sparges" && a.at.key == "volume");
    };
    auto const is_grain = [](const named_amount<double>& a) { return a.list == "grains" && a.at.key == "mass"; };
    auto const is_extract = [](const named_amount<double>& a) { return (a.list == "extracts" || a.list == "sugars") && a.at.key == "mass"; };

    auto water_by = [&](const std::string& from, double times) {
        batch<double> now = read_text(from);
        auto const list = amounts_of(now);
        std::vector<replacement> c;
        for (std::size_t i = 0; i < list.size(); ++i)
            if (is_water(list[i]) && list[i].is->given) c.push_back({i, list[i].is->value * times});
        return c;
    };
    // The kettle's water: as much as the volume asks for, at most what the kettle boils.
    auto with_water = [&](const std::string& from, double times) {
        batch<double> now = read_text(from);
        auto const list = amounts_of(now);
        for (auto const& c : water_by(from, times)) list[c.amount].is->value = c.value;
        return now;
    };
    auto solve_water = [&](const std::string& from, auto measured, double aim) -> std::optional<double> {
        auto measure_at = [&](double times) -> std::optional<double> {
            try {
                return measured(look(with_water(from, times)));
            } catch (const file_error&) {
                return {};
            }
        };
        auto const now = measure_at(1.0);
        double low = 0.02, high = 1.0;
        if (!now || *now < aim) {
            // Upwards in small steps: far above, other things of the file may not fit any more.
            low = 1.0;
            for (high = 1.25; high < 20.0; high *= 1.25) {
                auto const there = measure_at(high);
                if (there && *there >= aim) break;
                if (!there && now) return {};
            }
            if (!now && high >= 20.0) (void)look(with_water(from, 1.0));  // the engine says why
        }
        // Too little water does not brew: then it counts as too small.
        double const x = bracketed<80>(low, high, [&](double times) { return measure_at(times).value_or(0.0) - aim; });
        if (x != x) return {};
        // It may have met the edge of what can be brewed instead.
        auto const there = measure_at(x);
        if (!there || std::fabs(*there - aim) > 1e-6 * aim) return {};
        return x;
    };
    auto last_top_up = [](const std::vector<named_amount<double>>& list) -> std::optional<std::size_t> {
        std::optional<std::size_t> at;
        for (std::size_t i = 0; i < list.size(); ++i)
            if (list[i].at.do_word == "top_up" && (list[i].at.key == "to" || list[i].at.key == "volume" || list[i].at.key == "mass")) at = i;
        return at;
    };

    // In turns, until nothing moves any more: water of the kettle (and a top-up where the kettle is too small), then ingredients.
    for (int turn = 0; turn < 15; ++turn) {
        batch<double> now = read_text(text);
        auto list = amounts_of(now);
        auto top = last_top_up(list);
        bool const to = top && list[*top].at.key == "to";
        if (!top || to) {
            // Without a top-up all the volume is boiled; with one up to a mark, only as much of it as was before.
            if (!to) {
                auto const x = solve_water(text, [](const view& v) { return v.volume; }, wanted);
                if (!x) refuse("no amount of water in the kettle gives " + litres(wanted) + " in the fermenter");
                text = with_amounts(text, water_by(text, *x));
            } else {
                // The mark is read at the temperature of the mix: find the one that holds `wanted` at 20 degC.
                auto f = [&](double mark) {
                    list[*top].is->value = mark;
                    try {
                        return look(now).volume - wanted;
                    } catch (const file_error&) {
                        return -wanted;
                    }
                };
                // With more than enough in the fermenter the batch must brew; if not, the engine says why.
                list[*top].is->value = 1.2 * wanted;
                (void)look(now);
                double const mark = bracketed<80>(0.5 * wanted, 1.2 * wanted, f);
                if (mark != mark) refuse("the kettle holds more than " + litres(wanted) + " already: boil less water, or choose a larger volume");
                text = with_amounts(text, {{*top, mark}});
            }
        } else {
            // A top-up of a fixed amount makes up the difference.
            auto f = [&](double x) {
                list[*top].is->value = x;
                return look(now).volume - wanted;
            };
            double const unit = list[*top].at.key == "mass" ? 1000.0 : 1.0, x = bracketed<80>(1e-6, 2.0 * wanted * unit, f);
            if (x == x) text = with_amounts(text, {{*top, x}});
            else {
                auto const y = solve_water(text, [](const view& v) { return v.volume; }, wanted);
                if (!y) refuse("no amount of water gives " + litres(wanted) + " in the fermenter");
                text = with_amounts(text, water_by(text, *y));
            }
        }
        view v = look(read_text(text));
        if (q.largest_boil && v.boil > *q.largest_boil * (1.0 + 1e-9)) {
            auto const x = solve_water(text, [](const view& w) { return w.boil; }, *q.largest_boil);
            if (!x) refuse("the extract alone does not fit into a kettle that boils " + litres(*q.largest_boil));
            text = with_amounts(text, water_by(text, *x));
            now = read_text(text), list = amounts_of(now), top = last_top_up(list);
            if (!top) {
                // After the transfer, before whatever follows it.
                batch<double> const with_lines = read_text(text);
                int line = 0;
                for (auto const& any : with_lines.steps)
                    std::visit([&](auto const& s) { if (s.number == v.transfer + 1) line = s.line; }, any);
                std::size_t at = 0;
                for (int l = 1; l < line && at < text.size(); ++at)
                    if (text[at] == '\n') ++l;
                double const t = q.top_up_temperature.value_or(15.0);
                text.insert(at, "[[step]]\ndo = \"top_up\"\nto = \"" + plain(wanted) + " L\"\ntemperature = \"" + plain(t) + " degC\"\n\n");
                r.top_up_put_in = true;
            }
            if (turn < 14) continue;  // the volume again, now by the top-up
        }
        now = read_text(text), list = amounts_of(now);
        plan_request p;
        auto const grain = group(list, is_grain), extract = group(list, is_extract), hops = group(list, [](auto const& a) { return a.list == "hops" && a.at.key == "mass" && (a.at.do_word == "boil" || a.at.do_word == "stand"); });
        auto aim = [&](const char* key, const figure<double>& x) {
            if (x) p.targets.push_back({key, *x, "as before", 0});
        };
        aim("original_gravity", old.f.original_gravity);
        if (!hops.amounts.empty() && old.f.bitterness && *old.f.bitterness > 0.0) aim("bitterness_bu", old.f.bitterness), p.free.push_back(hops);
        bool const both = !grain.amounts.empty() && !extract.amounts.empty();
        // Colour has an amount of its own only where grain and extract can move apart.
        if (both && old.f.colour && *old.f.colour > 0.0) aim("colour_srm", old.f.colour);
        if (!grain.amounts.empty()) p.free.push_back(grain);
        if (!extract.amounts.empty()) p.free.push_back(extract);
        if (p.free.empty()) refuse("there is nothing with extract in this batch");
        r.plan = plan(text, p);
        text = r.plan.text;
        view const after = look(read_text(text));
        bool const volume_right = std::fabs(after.volume - wanted) <= 1e-9 * wanted;
        bool const fits = !q.largest_boil || after.boil <= *q.largest_boil * (1.0 + 1e-6);
        if (volume_right && fits) break;
    }
    // Told against the file as it was given, not against what was tried on the way.
    batch<double> last = read_text(text);
    view const end = look(last);
    int const put_in = r.top_up_put_in ? old.transfer + 1 : 0;
    auto was = [&](int step) { return put_in && step > put_in ? step - 1 : step; };
    auto after = amounts_of(last);
    std::erase_if(after, [&](auto const& x) { return put_in && x.at.step == put_in; });
    r.plan.amounts.clear();
    for (std::size_t i = 0; i < all.size() && i < after.size(); ++i) {
        amount<double> const &x = *all[i].is, &y = *after[i].is;
        if (x.value == y.value) continue;
        planned_amount m;
        m.at = after[i].at, m.ingredient = after[i].ingredient, m.in = y.in, m.unit = y.unit, m.before_text = x.text, m.after_text = y.text;
        m.before = x.value, m.after = y.value, m.least = 0.0, m.most = no_limit;
        r.plan.amounts.push_back(std::move(m));
    }
    r.plan.newly_outside.clear(), r.plan.new_cautions.clear();
    for (auto const& o : end.f.outside_range) {
        auto same = [&](auto const& x) { return x.step == (o.step ? std::optional<int>(was(*o.step)) : o.step) && x.model == o.model && x.argument == o.argument; };
        if (std::none_of(old.f.outside_range.begin(), old.f.outside_range.end(), same)) r.plan.newly_outside.push_back(o);
    }
    for (auto const& c : end.f.cautions) {
        auto same = [&](auto const& x) { return x.id == c.id && x.level == c.level && x.step == (c.step ? std::optional<int>(was(*c.step)) : c.step); };
        if ((c.level == "caution" || c.level == "stop") && std::none_of(old.f.cautions.begin(), old.f.cautions.end(), same)) r.plan.new_cautions.push_back(c);
    }
    r.volume = end.volume, r.boil_volume = end.boil;
    double t = 15.0;
    for (auto const& any : last.steps)
        if (auto const* s = std::get_if<top_up_step<double>>(&any)) t = s->temperature.value;
    r.top_up = end.top_up_g / water::density.ptb_1990.formula(t);
    r.sentences.push_back("the volume at pitching goes from " + litres(old.volume) + " to " + litres(r.volume) + " (at 20 degC)");
    if (r.top_up > 0.0) r.sentences.push_back("top up with " + litres(r.top_up) + " of water" + (r.top_up_put_in ? ", in a step that was put in after the transfer" : ""));
    r.sentences.push_back("the most in the kettle while it boils, hot: " + litres(r.boil_volume));
    if (q.largest_boil && r.boil_volume > *q.largest_boil * (1.0 + 1e-6)) r.sentences.push_back("that is more than the " + litres(*q.largest_boil) + " that were asked for");
    if (old.f.colour && end.f.colour && std::fabs(*end.f.colour - *old.f.colour) > 0.01 * *old.f.colour) {
        char buffer[120];
        std::snprintf(buffer, sizeof buffer, "the colour goes from %.1f to %.1f SRM: in these proportions it cannot be kept", *old.f.colour, *end.f.colour);
        r.sentences.emplace_back(buffer);
    }
    return r;
}

}  // namespace wortmath::batch
