#pragma once

#include "wortmath/carbonation/equilibrium.hpp"

namespace wortmath::carbonation {

struct pressure_models {
    static constexpr const char* question = "What gauge pressure of pure carbon dioxide holds a carbonation in beer?";

    struct exponential_chart : model<struct exponential_chart, unit::gauge_pressure(unit::celsius, unit::volumes_co2, unit::pressure)> {
        static constexpr facts about{
            .source = "usually credited to A. J. deLange, Homebrew Digest 5586 (2009); fits the trade's chart, ASBC Beer-13",
            .status = evidence::memory,
            .use = "the regulator of a cold keg; beer_henry for packages and above 20 degC",
            .accuracy = "0.01 psi on average to the trade's chart, -1 to 8 degC; 0.23 psi at most to a brewery's chart for 2.5 volumes",
            .note = "coefficients from memory, confirmed against the chart; put the result through package.caution before it becomes a setting",
            .danger = "warm, the chart promises too little pressure: nothing above 30 degC or 6 bar, and never the strength of a package"};
        static constexpr const char* refusal =
            "this carbonation needs more than 6 bar at this temperature, where no chart reaches: carbonation.pressure.beer_henry gives the pressure of "
            "a package";
        static constexpr input inputs[]{{"temperature", validated{detail::coldest, 20}, possible{detail::coldest, 30}},
                                        {"carbonation", validated{0.5, 5}, possible{0, no_limit}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T v, T barometer) {
            T P = let("P", (v + 0.003342) / detail::exponential_chart_slope(t) - 14.695);
            T gauge = detail::gauge_of_chart_psi(P, barometer);
            return select(gauge <= 6.0, gauge, undefined);
        }
    } exponential_chart;

    struct beer_henry : model<struct beer_henry, unit::gauge_pressure(unit::celsius, unit::volumes_co2, unit::pressure, unit::ratio)> {
        static constexpr facts about{
            .source = "water after R. F. Weiss, Marine Chemistry 2 (1974) 203, times the ratio of the trade's chart to water",
            .status = evidence::derived,
            .use = "beer under pure CO2 above 20 degC; a closed package has air in it too: package.pressure",
            .accuracy = "0.6 psi above the trade's chart on average with factor 0.93, none with 0.95, -1 to 8 degC",
            .note = "0.93 is low on purpose, 0.89 is a measured lager (5 % vol, 6 degC), 1.0 serves soft drinks without sugar",
            .danger = "a factor too high promises too little pressure, and the air in a package adds 0.6 to 1.8 bar that are not in here: nothing is "
                      "extrapolated"};
        static constexpr const char* refusal =
            "this carbonation needs more than 15 bar of carbon dioxide at this temperature, and the gas data end there: stop";
        static constexpr input inputs[]{{"temperature", only{detail::coldest, 60}},
                                        {"carbonation"},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}},
                                        {"factor", only{0.80, 1}, otherwise{0.93}}};

        // p exp(b p) = f. As b < 0, f <= p: what is refused above 15 bar is all that could keep Newton's steps from the root.
        template <class T>
        static constexpr T formula(T t, T v, T barometer, T factor) {
            T b = let("b", detail::virial_per_bar(t));
            T f = let("f", detail::g_per_volume * v / (factor * henry_constant.weiss_1974.formula(t)));
            T p = newton<4>(
                f, [&](T x) -> T { return x * exp(b * x) - f; }, [&](T x) -> T { return (1.0 + b * x) * exp(b * x); });
            T gauge = p + water::saturation_pressure.iapws_sr1_86.formula(t) - barometer;
            return select(f <= 15.0, select(p <= 15.0, gauge, undefined), undefined);
        }
    } beer_henry;

    struct quadratic_regulator : model<struct quadratic_regulator, unit::gauge_pressure(unit::celsius, unit::volumes_co2, unit::pressure)> {
        static constexpr facts about{.source = "formula beside a table in a home-brewing article library of the 1990s, author not named",
                                     .status = evidence::secondary,
                                     .use = "cold beer of 2 to 3 volumes: the closest to the chart",
                                     .accuracy = "0.05 psi to its own printed table, 0.02 psi on average to the trade's chart, -1 to 8 degC",
                                     .note = "put the result through package.caution before it becomes a setting",
                                     .danger = "outside its box of 0 to 26.7 degC and 2 to 3 volumes it gives absurd values, and warm ones too low (at "
                                               "80 degF 1.3 to 4.5 psi below exponential_chart): nothing is extrapolated"};
        static constexpr input inputs[]{{"temperature", validated{0, 10}, possible{0, 26.7}},
                                        {"carbonation", only{2, 3}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T v, T barometer) {
            T F = let("F", detail::fahrenheit(t));
            T P = -16.6999 - 0.0101059 * F + 0.00116512 * square(F) + 0.173354 * F * v + 4.24267 * v - 0.0684226 * square(v);
            return detail::gauge_of_chart_psi(P, barometer);
        }
    } quadratic_regulator;

    struct german_exponential : model<struct german_exponential, unit::gauge_pressure(unit::celsius, unit::volumes_co2, unit::pressure)> {
        static constexpr facts about{.source = "K. Troester, Carbonation Tables (author's page)",
                                     .status = evidence::primary,
                                     .use = "to compare with German tables",
                                     .accuracy = "0.34 psi below the trade's chart on average, -1 to 8 degC",
                                     .note = "a product: copies that divide by the exponential are wrong; put the result through package.caution before it "
                                             "becomes a setting",
                                     .danger = "up to 0.5 psi less pressure than exponential_chart at 4 volumes, and a straight line beyond its data: "
                                               "nothing above 30 degC or 6 bar, and never the strength of a package"};
        static constexpr const char* refusal =
            "this carbonation needs more than 6 bar at this temperature, where no chart reaches: carbonation.pressure.beer_henry gives the pressure of "
            "a package";
        static constexpr input inputs[]{{"temperature", validated{detail::coldest, 25}, possible{detail::coldest, 30}},
                                        {"carbonation", validated{0.5, 5}, possible{0, no_limit}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T v, T barometer) {
            T p = let("p", detail::g_per_volume * v / detail::german_exponential_slope(t) - 1.013);
            T gauge = p + constants::bar_per_atm - barometer;
            return select(gauge <= 6.0, gauge, undefined);
        }
    } german_exponential;
};
inline constexpr family<&pressure_models::exponential_chart> pressure{};

}  // namespace wortmath::carbonation
