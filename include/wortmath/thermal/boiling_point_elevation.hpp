#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/water/boiling_temperature.hpp"
#include "wortmath/water/saturation_pressure.hpp"

namespace wortmath::thermal {

namespace detail {
inline constexpr double sucrose_molar_mass = 342.2965, water_molar_mass = 18.015268;  // g/mol

// Of the dissolved substance, in a solution of x per cent by mass.
template <class T>
constexpr T mole_fraction(T x, T molar_mass) {
    T solute = x / molar_mass;
    return solute / (solute + (100.0 - x) / water_molar_mass);
}
}  // namespace detail

struct boiling_point_elevation_models {
    static constexpr const char* question = "How far above water does wort boil?";

    // Activity of water over sucrose solution, and the pressure of water over itself.
    struct starzak_peacock : model<struct starzak_peacock, unit::kelvins(unit::plato, unit::pressure)> {
        static constexpr facts about{.source = "M. Starzak, S. Peacock, Zuckerindustrie 122 (1997) 380; water of IAPWS-IF97",
                                     .status = evidence::secondary,
                                     .use = "wort: sucrose stands in, as an upper figure for the sugars of wort",
                                     .note = "wort boils 0.1 to 0.4 K above water; altitude matters ten times more"};
        static constexpr input inputs[]{{"extract", validated{0, 60}, possible{0, 80}}, {"pressure", only{0.5, 1.1}}};

        template <class T>
        static constexpr T formula(T x, T p) {
            T y = let("y", detail::mole_fraction(x, T(detail::sucrose_molar_mass)));
            T k = let("k", -2121.4052 * square(y) * poly(y, 1.0, -1.0038, -0.24653));
            T boiling = let("T_water", water::boiling_temperature.if97.formula(p) + constants::zero_celsius);
            T wanted = 0.25 * (log(0.1 * p) - log1p(-y));  // of ln (p/MPa)^(1/4)
            T hot = newton<4>(
                boiling, [=](T a) { return log(water::detail::if97_root(a)) + 0.25 * k / a - wanted; },
                [=](T a) { return 0.25 * (water::detail::if97_log_slope(a, water::detail::if97_root(a)) - k / square(a)); });
            return hot - boiling;
        }
    } starzak_peacock;

    // Raoult's law alone.
    struct ideal_solution : model<struct ideal_solution, unit::kelvins(unit::plato, unit::grams_per_mole, unit::pressure)> {
        static constexpr facts about{.source = "this project's own derivation: an ideal solution, the activity of water is its mole fraction",
                                     .status = evidence::derived,
                                     .use = "solutes of another molar mass than sucrose; 500 g/mol is an assumption for wort"};
        static constexpr input inputs[]{{"extract", validated{0, 40}, possible{0, 80}}, {"solute_molar_mass", only{180, 1000}}, {"pressure", only{0.5, 1.1}}};

        template <class T>
        static constexpr T formula(T x, T molar_mass, T p) {
            T y = let("y", detail::mole_fraction(x, molar_mass));
            return water::boiling_temperature.if97.formula(p / (1.0 - y)) - water::boiling_temperature.if97.formula(p);
        }
    } ideal_solution;

    // Made for the evaporators of a sugar house.
    struct peacock_1995 : model<struct peacock_1995, unit::kelvins(unit::plato, unit::celsius)> {
        static constexpr facts about{
            .source = "correlation of Peacock 1995, as quoted",
            .status = evidence::secondary,
            .use = "syrup from 25 degP upwards",
            .note = "half the true value at 5 degP, so not for wort; one copy prints 374 for 374.3, a difference of less than 0.003 K"};
        static constexpr input inputs[]{{"extract", validated{25, 70}, possible{0, 80}}, {"water_boiling_temperature", only{80, 105}}};

        template <class T>
        static constexpr T formula(T x, T t) {
            return 6.064e-5 * (square(273.0 + t) * square(x) / pow(374.3 - t, T(0.38))) * (5.84e-7 * square(x - 40.0) + 0.00072);
        }
    } peacock_1995;
};
inline constexpr family<&boiling_point_elevation_models::starzak_peacock> boiling_point_elevation{};

}  // namespace wortmath::thermal
