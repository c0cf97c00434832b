#pragma once

#include "wortmath/carbonation/equilibrium.hpp"

namespace wortmath::carbonation {

struct residual_models {
    static constexpr const char* question = "How much carbon dioxide is left in the beer after fermentation?";

    // The higher of the two curves, so that it leads to less sugar.
    struct water_quadratic : model<struct water_quadratic, unit::volumes_co2(unit::celsius, unit::pressure, unit::gauge_pressure)> {
        static constexpr facts about{
            .source = "quoted in home-brewing literature, often for M. Hall, Zymurgy 1995; attribution not confirmed",
            .status = evidence::secondary,
            .use = "before priming: it lies higher and asks for less sugar",
            .accuracy = "0.023 volumes to M. Hibberd's table (1995); it follows water rather than beer, 1.708 against 1.586 volumes at 0 degC",
            .note = "temperature: the warmest the beer has been since the last gas came, a later cold crash does not count; the parabola is held at "
                    "its vertex, 34.6 degC, beyond which it would rise",
            .danger = "too low a residual asks for too much sugar: enter the pressure of a closed fermenter, plus half the height of a tall tank, "
                      "0.05 bar per metre of beer"};
        static constexpr input inputs[]{{"temperature", validated{0, 24}, possible{-1, 40}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}},
                                        {"bunging_gauge_pressure", only{0, 3}, otherwise{0.0}}};

        template <class T>
        static constexpr T formula(T t, T barometer, T bunging) {
            T F = let("F", least(T(0.050062 / (2.0 * 0.00026555)), detail::fahrenheit(t)));
            return poly(F, 3.0378, -0.050062, 0.00026555) * (barometer + bunging) / constants::bar_per_atm;
        }
    } water_quadratic;

    struct zero_gauge_equilibrium : model<struct zero_gauge_equilibrium, unit::volumes_co2(unit::celsius, unit::pressure, unit::gauge_pressure)> {
        static constexpr facts about{
            .source = "carbonation.equilibrium.beer_henry at the pressure over the beer",
            .status = evidence::derived,
            .use = "the physical answer for beer; for priming the default is the cautious side",
            .accuracy = "0.12 volumes below the default at cellar temperature, 0.07 at 20 degC: 0.5 and 0.3 g/L more sugar",
            .note = "temperature: the warmest the beer has been since the last gas came, a later cold crash does not count",
            .danger = "too low a residual asks for too much sugar: enter the pressure of a closed fermenter; nothing is extrapolated"};
        static constexpr input inputs[]{{"temperature", only{-1, 40}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}},
                                        {"bunging_gauge_pressure", only{0, 3}, otherwise{0.0}}};

        template <class T>
        static constexpr T formula(T t, T barometer, T bunging) {
            return equilibrium.beer_henry.formula(t, bunging, barometer, T(0.93));
        }
    } zero_gauge_equilibrium;
};
inline constexpr family<&residual_models::water_quadratic> residual{};

}  // namespace wortmath::carbonation
