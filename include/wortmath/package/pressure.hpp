#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/carbonation/henry_constant.hpp"
#include "wortmath/carbonation/second_virial.hpp"

namespace wortmath::package {

namespace detail {

inline constexpr const char* no_pressure =
    "full of liquid, or nearly: the beer, warmed from the fill temperature, leaves less than 0.5 % of headspace, and the pressure then has no useful "
    "bound: stop";

inline constexpr beyond too_much_gas{"more gas than this chapter's packages are made for: stop"};

inline constexpr const char* danger =
    "bottles burst without warning. A solubility, headspace or fill temperature too high, a storage temperature or carbonation too low hide pressure: more "
    "than 6 volumes, more than 60 degC and a package full of liquid are refused, nothing is extrapolated there. carbonation is all the gas: priming and "
    "unfinished extract too. The result is an estimate; the margin of a used bottle is not known";

// All CO2 of the package is in the beer or in the headspace; air and vapour press with it. Newton's four steps reach the
// last digit from 0 to 6 volumes, -1 to 60 degC and every headspace and solubility that the models below accept.
template <class T>
constexpr T gauge_pressure(T v, T t, T henry, T headspace, T air, T t_fill, T p_fill, T barometer) {
    namespace gas = carbonation::detail;
    T liquid = let("VL", water::density.kell.formula(t_fill) / water::density.kell.formula(t));
    T space = let("VH", headspace + 1.0 - liquid);
    T b = let("b", gas::virial_per_bar(t));
    T dissolved = liquid * henry;
    T ideal = let("G", space * 100.0 * gas::g_per_mol_co2 / (constants::gas_constant * (t + constants::zero_celsius)));
    T m = let("m", gas::g_per_volume * v);
    T p = let("p", newton<4>(
                       m / (dissolved + ideal), [&](T x) -> T { return dissolved * exp(b * x) * x + ideal * x / (1.0 + b * x) - m; },
                       [&](T x) -> T { return dissolved * exp(b * x) * (1.0 + b * x) + ideal / square(1.0 + b * x); }));
    T p_air = let("p_air", air * (p_fill - water::saturation_pressure.iapws_sr1_86.formula(t_fill)) * (headspace / space) *
                               ((t + constants::zero_celsius) / (t_fill + constants::zero_celsius)));
    T gauge = p + p_air + water::saturation_pressure.iapws_sr1_86.formula(t) - barometer;
    return select(v <= 6.0, select(space >= 0.005, gauge, undefined), undefined);
}

}  // namespace detail

struct pressure_models {
    static constexpr const char* question = "What gauge pressure will the sealed package see at a temperature?";

    struct beer_henry
        : model<struct beer_henry, unit::gauge_pressure(unit::volumes_co2, unit::celsius, unit::gas_volume_share, unit::fraction, unit::celsius,
                                                        unit::pressure, unit::pressure, unit::ratio)> {
        static constexpr facts about{
            .source = "a mass balance of CO2 between beer and headspace, with water's solubility after R. F. Weiss (1974) times a factor",
            .status = evidence::derived,
            .use = "what a bottle, can or keg sees; hazard_run for the caution",
            .accuracy = "published can pressures at pasteurising temperature lie below it; for a growler 99 % full at 38 degF the Brewers Association states "
                        "29 psi at 68 degF and 52 at 90 without air, here 31 and 49, with air 50 and 81",
            .note = "air is the share of the sealed-in air still there: 1 just closed (keep it for warnings), about 0.55 once yeast took the oxygen, 0 after "
                    "purging; dosed nitrogen adds its pressure to fill_pressure; beer of 5, 7.5 and 12.5 % vol expands by 0.0004, 0.0008 and 0.0023 more "
                    "than water from 4 to 40 degC: take that off the headspace",
            .danger = detail::danger};
        static constexpr const char* refusal = detail::no_pressure;
        static constexpr input inputs[]{{"carbonation", validated{0.5, 6}, possible{0, 6}, detail::too_much_gas},
                                        {"temperature", validated{0, 60}, possible{-1, 60}},
                                        {"headspace", only{0.01, 3}, otherwise{0.04}},
                                        {"air", otherwise{1.0}},
                                        {"fill_temperature", validated{0, 25}, possible{-1, 25}, otherwise{20.0}},
                                        {"fill_pressure", only{0.7, 4}, otherwise{constants::bar_per_atm}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}},
                                        {"factor", only{0.80, 1}, otherwise{0.93}}};

        template <class T>
        static constexpr T formula(T v, T t, T headspace, T air, T t_fill, T p_fill, T barometer, T factor) {
            return detail::gauge_pressure(v, t, factor * carbonation::henry_constant.weiss_1974.formula(t), headspace, air, t_fill, p_fill, barometer);
        }
    } beer_henry;

    struct given_solubility
        : model<struct given_solubility, unit::gauge_pressure(unit::volumes_co2, unit::celsius, unit::henry_constant, unit::gas_volume_share,
                                                              unit::fraction, unit::celsius, unit::pressure, unit::pressure)> {
        static constexpr facts about{
            .source = "a mass balance of CO2 between drink and headspace",
            .status = evidence::derived,
            .use = "other drinks, or a beer whose solubility was measured",
            .note = "henry_constant at the temperature of the question, at vanishing pressure; champagne has about 2.1 g/(L bar) at 10 degC, a 5 % lager 2.4 "
                    "at 6 degC",
            .danger = detail::danger};
        static constexpr const char* refusal = detail::no_pressure;
        static constexpr input inputs[]{{"carbonation", validated{0.5, 6}, possible{0, 6}, detail::too_much_gas},
                                        {"temperature", validated{0, 60}, possible{-1, 60}},
                                        {"henry_constant", only{0.4, 4}},
                                        {"headspace", only{0.01, 3}, otherwise{0.04}},
                                        {"air", otherwise{1.0}},
                                        {"fill_temperature", validated{0, 25}, possible{-1, 25}, otherwise{20.0}},
                                        {"fill_pressure", only{0.7, 4}, otherwise{constants::bar_per_atm}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T v, T t, T henry, T headspace, T air, T t_fill, T p_fill, T barometer) {
            return detail::gauge_pressure(v, t, henry, headspace, air, t_fill, p_fill, barometer);
        }
    } given_solubility;

    // beer_henry with every choice on the cautious side; headspace and fill temperature have no default, so that neither is forgotten.
    struct hazard_run
        : model<struct hazard_run, unit::gauge_pressure(unit::volumes_co2, unit::celsius, unit::gas_volume_share, unit::celsius, unit::pressure,
                                                        unit::pressure, unit::ratio)> {
        static constexpr facts about{
            .source = "package.pressure.beer_henry with all the air and a solubility as low as measured",
            .status = evidence::derived,
            .use = "what package.caution is fed with: hottest temperature, smallest plausible headspace, coldest plausible fill temperature",
            .note = "carbonation is what the beer held, the sugar at 100 % of its yield, and 1.13 times the gas of malt extract, speise and unfinished extract; "
                    "factor 0.89 is a measured lager, 0.85 for beers above 7 % vol or 6 degP real extract and 0.80 for both are the project's choice",
            .danger = detail::danger};
        static constexpr const char* refusal = detail::no_pressure;
        static constexpr input inputs[]{{"carbonation", validated{0.5, 6}, possible{0, 6}, detail::too_much_gas},
                                        {"temperature", validated{0, 60}, possible{-1, 60}},
                                        {"headspace", only{0.01, 0.30}},
                                        {"fill_temperature", validated{0, 25}, possible{-1, 25}},
                                        {"fill_pressure", only{0.7, 4}, otherwise{constants::bar_per_atm}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}},
                                        {"factor", only{0.80, 0.89}, otherwise{0.89}}};

        template <class T>
        static constexpr T formula(T v, T t, T headspace, T t_fill, T p_fill, T barometer, T factor) {
            return detail::gauge_pressure(v, t, factor * carbonation::henry_constant.weiss_1974.formula(t), headspace, T(1.0), t_fill, p_fill, barometer);
        }
    } hazard_run;
};
inline constexpr family<&pressure_models::beer_henry> pressure{};

}  // namespace wortmath::package
