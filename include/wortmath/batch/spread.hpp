// A batch brewed many times with other amounts: the answers that a study of its spread or of its readings needs.
#pragma once

#include <atomic>
#include <functional>
#include <limits>
#include <thread>

#include "wortmath/batch/forecast.hpp"

namespace wortmath::batch {

// A figure of a forecast: of the state after a step, or (step 0) of `results` and `package`.
struct answer {
    int step = 0;
    std::string key;
};

namespace detail {

inline double or_nan(const std::optional<double>& x) { return x ? *x : std::numeric_limits<double>::quiet_NaN(); }

inline const std::optional<double>* found_in(const figures<double>& list, std::string_view name) {
    for (auto const& [known, x] : list)
        if (known == name) return &x;
    return nullptr;
}

}  // namespace detail

// False: a forecast has no such figure. NaN: it has, but not here.
inline bool figure_of(const forecast_result<double>& f, const answer& a, double& value) {
    using detail::or_nan;
    value = std::numeric_limits<double>::quiet_NaN();
    if (a.step > 0) {
        step_result<double> const* s = nullptr;
        for (auto const& one : f.steps)
            if (one.number == a.step) s = &one;
        if (!s) return false;
        if (auto const* x = detail::found_in(s->reported, a.key)) return value = or_nan(*x), true;
        static constexpr std::pair<std::string_view, double state<double>::*> plain[] = {
            {"mass_g", &state<double>::mass}, {"water_g", &state<double>::water}, {"malt_extract_g", &state<double>::malt_extract}, {"sugar_extract_g", &state<double>::sugar_extract}, {"ethanol_g", &state<double>::ethanol},
            {"co2_g", &state<double>::co2}, {"temperature_c", &state<double>::temperature}, {"volume_l", &state<double>::volume}, {"volume_20c_l", &state<double>::volume_20c}, {"extract_degp", &state<double>::extract},
            {"apparent_extract_degp", &state<double>::apparent_extract}, {"gravity_20_20", &state<double>::gravity}, {"bitterness_bu", &state<double>::bitterness}, {"colour_srm", &state<double>::colour},
            {"alcohol_by_volume", &state<double>::alcohol_by_volume}};
        for (auto const& [name, member] : plain)
            if (name == a.key) return value = s->after ? (*s->after).*member : value, true;
        if (a.key == "hydrometer" || a.key == "refractometer_degbx") {
            if (s->after) value = or_nan(a.key == "hydrometer" ? s->after->hydrometer : s->after->refractometer);
            return true;
        }
        return a.key == "pressure_bar";
    }
    static constexpr std::pair<std::string_view, figure<double> forecast_result<double>::*> results[] = {
        {"original_gravity", &forecast_result<double>::original_gravity}, {"original_extract_degp", &forecast_result<double>::original_extract}, {"final_gravity", &forecast_result<double>::final_gravity},
        {"apparent_attenuation", &forecast_result<double>::apparent_attenuation}, {"real_attenuation", &forecast_result<double>::real_attenuation}, {"alcohol_by_volume", &forecast_result<double>::alcohol_by_volume},
        {"alcohol_by_volume_before_priming", &forecast_result<double>::alcohol_by_volume_before_priming}, {"alcohol_by_mass", &forecast_result<double>::alcohol_by_mass}, {"bitterness_bu", &forecast_result<double>::bitterness},
        {"bitterness_ratio", &forecast_result<double>::bitterness_ratio}, {"colour_srm", &forecast_result<double>::colour}, {"colour_ebc", &forecast_result<double>::colour_ebc},
        {"volume_packaged_l", &forecast_result<double>::volume_packaged}, {"cells_needed", &forecast_result<double>::cells_needed}, {"dry_yeast_g", &forecast_result<double>::dry_yeast}, {"energy_kj_per_l", &forecast_result<double>::energy}};
    for (auto const& [name, member] : results)
        if (name == a.key) return value = or_nan(f.*member), true;
    static constexpr std::pair<std::string_view, figure<double> package_result<double>::*> package[] = {
        {"residual_vol", &package_result<double>::residual}, {"carbonation_vol", &package_result<double>::carbonation}, {"priming_sugar_g", &package_result<double>::priming_sugar},
        {"serving_pressure_bar", &package_result<double>::serving_pressure}, {"hottest_pressure_bar", &package_result<double>::hottest_pressure}, {"hazard_pressure_bar", &package_result<double>::hazard_pressure},
        {"hazard_carbonation_vol", &package_result<double>::hazard_carbonation}, {"regulator_pressure_bar", &package_result<double>::regulator_pressure}};
    for (auto const& [name, member] : package)
        if (name == a.key) return value = f.package ? or_nan((*f.package).*member) : value, true;
    return false;
}

// On the day the sugar that the plan computed is weighed, whatever the beer then is: priming by carbonation becomes
// priming by mass.
inline batch<double> as_brewed(const batch<double>& b) {
    auto const f = forecast(b);
    batch<double> made = b;
    for (auto& s : made.steps)
        if (auto* const p = std::get_if<prime_step<double>>(&s); p && p->carbonation) {
            answer const sugar{p->number, "sugar_g"};
            double grams = 0.0;
            if (!figure_of(f, sugar, grams) || grams != grams) continue;
            amount<double> a;
            a.value = grams, a.in = measure::gram, a.line = p->carbonation->line, a.unit = "g", a.text = engine::text_of(grams) + " g";
            p->mass = a;
            p->carbonation.reset();
        }
    return made;
}

// The answers for many sets of values of some amounts. columns[i][k] is the value of amount `amounts[i]` in set k; the
// answer j of set k goes to out[j][k]. NaN in all answers of a set: an amount is impossible, or the batch cannot be
// brewed with it.
inline void brew_many(const batch<double>& b, const std::vector<std::size_t>& amounts, const std::vector<answer>& answers, std::size_t sets, const std::function<double(std::size_t, std::size_t)>& value_of,
                      const std::function<void(std::size_t, std::size_t, double)>& put, unsigned threads) {
    constexpr std::size_t stretch = 64;
    std::atomic<std::size_t> next{0};
    auto const work = [&] {
        batch<double> mine = b;
        std::vector<amount<double>*> all;
        for_each_amount(mine, [&](const where&, std::string_view, amount<double>& a) { all.push_back(&a); });
        for (std::size_t begin; (begin = next.fetch_add(stretch)) < sets;) {
            for (std::size_t k = begin; k < std::min(sets, begin + stretch); ++k) {
                bool possible = true;
                for (std::size_t i = 0; i < amounts.size(); ++i) {
                    amount<double>& a = *all[amounts[i]];
                    a.value = value_of(i, k);
                    bool const any_sign = a.in == measure::celsius || a.in == measure::metre || a.in == measure::plato;
                    possible = possible && (any_sign ? a.value - a.value == 0.0 : a.value >= 0.0) && !(a.in == measure::share && a.value > 1.0);
                }
                std::vector<double> found(answers.size(), std::numeric_limits<double>::quiet_NaN());
                if (possible) {
                    try {
                        auto const f = forecast(mine);
                        for (std::size_t j = 0; j < answers.size(); ++j) figure_of(f, answers[j], found[j]);
                    } catch (const file_error&) {  // it cannot be brewed like this: no answer
                    } catch (const refused&) {
                    }
                }
                for (std::size_t j = 0; j < answers.size(); ++j) put(j, k, found[j]);
            }
        }
    };
    if (threads <= 1 || sets <= stretch) return work();
    std::vector<std::jthread> crew;
    for (unsigned i = 1; i < threads; ++i) crew.emplace_back(work);
    work();
}

}  // namespace wortmath::batch
