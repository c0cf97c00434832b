#pragma once

#include "wortmath/bitterness/isomerisation_fractions.hpp"
#include "wortmath/bitterness/isomerisation_rate.hpp"

namespace wortmath::bitterness {

namespace detail {

// One pass with `steps` equal sub-steps in each segment: Simpson means of both rates, then the solution at constant rates.
template <class T>
constexpr several<T, 3> isomerised_in_steps(series<T> minutes, series<T> temperatures, int steps) {
    T alpha = T(1.0), iso = T(0.0), degraded = T(0.0);
    for (std::size_t i = 0; i + 1 < minutes.size(); ++i) {
        T h = (minutes[i + 1] - minutes[i]) / static_cast<double>(steps);
        T rise = (temperatures[i + 1] - temperatures[i]) / static_cast<double>(steps);
        several<T, 2> start = isomerisation_rate.malowicki_shellhammer.formula(temperatures[i]);
        for (int n = 0; n < steps; ++n) {
            several<T, 2> middle = isomerisation_rate.malowicki_shellhammer.formula(temperatures[i] + (n + 0.5) * rise);
            several<T, 2> end = isomerisation_rate.malowicki_shellhammer.formula(temperatures[i] + (n + 1.0) * rise);
            T k1 = (start[0] + 4.0 * middle[0] + end[0]) / 6.0, k2 = (start[1] + 4.0 * middle[1] + end[1]) / 6.0;
            several<T, 3> f = isomerisation_fractions.first_order.formula(k1, k2, h);
            degraded = degraded + alpha * f[2] + iso * -expm1(-k2 * h);
            iso = alpha * f[1] + iso * exp(-k2 * h);
            alpha = alpha * f[0];
            start = end;
        }
    }
    return {{alpha, iso, degraded}};
}

}  // namespace detail

struct isomerisation_profile_models {
    static constexpr const char* question = "How much iso-alpha acids do dissolved alpha acids give along a history of temperatures?";

    // The steps of each segment are doubled until the result stands: the one model of this topic without a fixed count of
    // steps, since no count suits both a minute of cooling and a night.
    struct malowicki_shellhammer : model<struct malowicki_shellhammer, isomerisation_fractions_models::fractions(list<unit::minutes>, list<unit::celsius>)> {
        static constexpr facts about{
            .source = "rates of M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439, abstract; the integration is ours",
            .status = evidence::derived,
            .use = "a measured or computed course of temperature: a kettle that cools, a stand, a boil under pressure",
            .accuracy = "the integration to about 1e-9; mass balance to rounding",
            .note =
                "all alpha acids dissolve at the first time; for several additions run each from its own time and add the results weighted by "
                "mg/L; rates measured from 90 degC up"};
        static constexpr input inputs[]{{"minutes", detail::amount}, {"temperatures", detail::measured_rates, detail::carried_rates}};
        static constexpr const char* refusal =
            "give at least two points, as many temperatures as minutes, and minutes that grow from point to point; a segment that is "
            "still not resolved in 4096 steps is refused too: divide it";

        template <class T>
        static constexpr several<T, 3> formula(series<T> minutes, series<T> temperatures) {
            several<T, 3> const refused{{T(undefined), T(undefined), T(undefined)}};
            if (minutes.size() < 2 || minutes.size() != temperatures.size()) return refused;
            for (std::size_t i = 0; i + 1 < minutes.size(); ++i)
                if (!(number(minutes[i]) < number(minutes[i + 1]))) return refused;
            several<T, 3> coarse = detail::isomerised_in_steps(minutes, temperatures, 16), last = refused;
            for (int steps = 32; steps <= 4096; steps *= 2) {
                several<T, 3> fine = detail::isomerised_in_steps(minutes, temperatures, steps), best = fine;
                for (int k = 0; k < 3; ++k) best.values[k] = (4.0 * fine[k] - coarse[k]) / 3.0;
                if (close(best[0], last[0], 1e-9, 0.0) && close(best[1], last[1], 1e-9, 0.0) && close(best[2], last[2], 0.0, 1e-10)) return best;
                coarse = fine;
                last = best;
            }
            return refused;
        }

    private:
        template <class T>
        static constexpr bool close(T x, T before, double relative, double absolute) {
            return fabs(number(x) - number(before)) <= relative * fabs(number(x)) + absolute;
        }
    } malowicki_shellhammer;
};
inline constexpr family<&isomerisation_profile_models::malowicki_shellhammer> isomerisation_profile{};

}  // namespace wortmath::bitterness
