#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/carbonation/fugacity_coefficient.hpp"
#include "wortmath/carbonation/henry_constant.hpp"

namespace wortmath::carbonation {

namespace detail {
inline constexpr double coldest = -1.12;  // the trade's chart begins at 30 degF, which is -1 degC in round figures

// Charts are printed in psi gauge at sea level: the reading there that means the same absolute pressure.
template <class T>
constexpr T chart_psi(T gauge, T barometer) {
    return (gauge + barometer - constants::bar_per_atm) / constants::bar_per_psi;
}
template <class T>
constexpr T gauge_of_chart_psi(T psi, T barometer) {
    return constants::bar_per_psi * psi + constants::bar_per_atm - barometer;
}
template <class T>
constexpr T fahrenheit(T t) {
    return 1.8 * t + 32.0;
}

// Volumes per psi absolute.
template <class T>
constexpr T exponential_chart_slope(T t) {
    return 0.01821 + 0.090115 * exp(-(fahrenheit(t) - 32.0) / 43.11);
}

// g/L per bar absolute.
template <class T>
constexpr T german_exponential_slope(T t) {
    return 10.0 * exp(-10.73797 + 2617.25 / (t + constants::zero_celsius));
}
}  // namespace detail

struct equilibrium_models {
    static constexpr const char* question = "How much carbon dioxide does beer hold under a gauge pressure of the pure gas?";

    struct exponential_chart : model<struct exponential_chart, unit::volumes_co2(unit::celsius, unit::gauge_pressure, unit::pressure)> {
        static constexpr facts about{
            .source = "usually credited to A. J. deLange, Homebrew Digest 5586 (2009); fits the trade's chart, ASBC Beer-13",
            .status = evidence::memory,
            .use = "beer at the tap and in cold kegs; beer_henry for packages and above 20 degC",
            .accuracy = "0.06 volumes at most to the chart, -1 to 8 degC; the chart itself is good to 0.01 to 0.02",
            .note = "coefficients from memory, confirmed against the chart; a reading without shaking needs days to weeks to be an equilibrium; a gauge "
                    "reading says nothing of the barometer it was read at, so give it",
            .danger = "warm, the chart calls the beer too soluble (more than water at 60 degC) and promises too little pressure: nothing above 30 degC, "
                      "and never the strength of a package"};
        static constexpr input inputs[]{{"temperature", validated{detail::coldest, 20}, possible{detail::coldest, 30}},
                                        {"gauge_pressure", validated{0, 3}, possible{-0.3, 6}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T gauge, T barometer) {
            T P = let("P", detail::chart_psi(gauge, barometer));
            return (P + 14.695) * detail::exponential_chart_slope(t) - 0.003342;
        }
    } exponential_chart;

    // Water's solubility times a constant factor.
    struct beer_henry : model<struct beer_henry, unit::volumes_co2(unit::celsius, unit::gauge_pressure, unit::pressure, unit::ratio)> {
        static constexpr facts about{
            .source = "water after R. F. Weiss, Marine Chemistry 2 (1974) 203, times the ratio of the trade's chart to water",
            .status = evidence::derived,
            .use = "packages, and everything above 20 degC",
            .accuracy = "factor 0.93 lies 0.05 volumes below the chart on average, 0.13 at most; factor 0.95 follows it without bias",
            .note = "0.93 is low on purpose, 0.89 is a measured lager (5 % vol, 6 degC), 1.0 serves soft drinks without sugar; the ratio to water has "
                    "been seen below 10 degC only, for beers of 4 to 6 % vol and 3 to 5 % real extract",
            .danger = "a factor too high promises too little pressure in a package: nothing is extrapolated"};
        static constexpr input inputs[]{{"temperature", only{detail::coldest, 60}},
                                        {"gauge_pressure", only{-0.3, 6}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}},
                                        {"factor", only{0.80, 1}, otherwise{0.93}}};

        template <class T>
        static constexpr T formula(T t, T gauge, T barometer, T factor) {
            T p = let("p", gauge + barometer - water::saturation_pressure.iapws_sr1_86.formula(t));
            return factor * henry_constant.weiss_1974.formula(t) * fugacity_coefficient.virial.formula(t, p) * p / detail::g_per_volume;
        }
    } beer_henry;

    struct quadratic_regulator : model<struct quadratic_regulator, unit::volumes_co2(unit::celsius, unit::gauge_pressure, unit::pressure)> {
        static constexpr facts about{.source = "formula beside a table in a home-brewing article library of the 1990s, author not named",
                                     .status = evidence::secondary,
                                     .use = "cold beer of 2 to 3 volumes: the closest to the chart",
                                     .accuracy = "0.04 volumes to the trade's chart, -1 to 8 degC",
                                     .note = "the inverse of the quadratic, which has to land between 2 and 3 volumes",
                                     .danger = "outside its box of 0 to 26.7 degC and 2 to 3 volumes it gives absurd values, and warm ones too low: "
                                               "nothing is extrapolated"};
        static constexpr const char* refusal =
            "this pressure holds less than 2 or more than 3 volumes at this temperature, and the quadratic was made for 2 to 3 volumes only: take "
            "carbonation.equilibrium.exponential_chart";
        static constexpr input inputs[]{{"temperature", validated{0, 10}, possible{0, 26.7}},
                                        {"gauge_pressure", validated{0, 3}, possible{-0.3, 6}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T gauge, T barometer) {
            T F = let("F", detail::fahrenheit(t));
            T b = let("b", 0.173354 * F + 4.24267);
            T c = let("c", detail::chart_psi(gauge, barometer) + 16.6999 + 0.0101059 * F - 0.00116512 * square(F));
            T V = 2.0 * c / (b + sqrt(square(b) - 4.0 * 0.0684226 * c));
            return select(V >= 2.0 - 1e-9, select(V <= 3.0 + 1e-9, V, undefined), undefined);
        }
    } quadratic_regulator;

    struct german_exponential : model<struct german_exponential, unit::volumes_co2(unit::celsius, unit::gauge_pressure, unit::pressure)> {
        static constexpr facts about{
            .source = "K. Troester, Carbonation Tables (author's page)",
            .status = evidence::primary,
            .use = "to compare with German tables",
            .accuracy = "0.09 volumes at most to the trade's chart, -1 to 8 degC; 0.05 g/L to the table printed from it",
            .note = "a product: copies that divide by the exponential are wrong, and without the factor 10 the result is in % by mass; often called the "
                    "Haffmans formula, that MEBAK means the same is not confirmed; air makes a measured result high, more than 10 g/L of sugar needs a "
                    "correction",
            .danger = "up to 0.5 psi less pressure than exponential_chart at 4 volumes, and a straight line beyond its data: nothing above 30 degC, and "
                      "never the strength of a package"};
        static constexpr input inputs[]{{"temperature", validated{detail::coldest, 25}, possible{detail::coldest, 30}},
                                        {"gauge_pressure", validated{0, 3}, possible{-0.3, 6}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T gauge, T barometer) {
            T p = let("p", gauge + barometer - constants::bar_per_atm);
            return (p + 1.013) * detail::german_exponential_slope(t) / detail::g_per_volume;
        }
    } german_exponential;
};
inline constexpr family<&equilibrium_models::exponential_chart> equilibrium{};

}  // namespace wortmath::carbonation
