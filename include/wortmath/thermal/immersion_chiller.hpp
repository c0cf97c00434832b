#pragma once

#include "wortmath/model.hpp"
#include "wortmath/thermal/constants.hpp"
#include "wortmath/thermal/effectiveness.hpp"

namespace wortmath::thermal {

namespace detail {
// The rate at which a coil with the conductance UA draws a stirred wort toward the temperature of its water, 1/s.
template <class T>
constexpr T coil_rate(T mass, T specific_heat, T water_flow, T UA) {
    T capacity_flow = water_flow * kg_per_s_per_g_per_h * heat_of_water;
    T eps = let("eps", effectiveness.isothermal.formula(T(UA / capacity_flow)));
    return let("k", eps * capacity_flow / (mass / 1000.0 * specific_heat));
}
}  // namespace detail

struct immersion_chiller_models {
    static constexpr const char* question = "How cold is the wort after some minutes with a cooling coil in it?";

    // The coil lies in wort that is stirred all the while.
    struct lumped : model<struct lumped, unit::celsius(unit::grams, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::grams_per_hour, unit::celsius,
                                                       unit::kilowatts_per_kelvin, unit::minutes)> {
        static constexpr facts about{.source = "heat balance of stirred wort and coil, the coil as an exchanger in a stirred bath",
                                     .status = evidence::derived,
                                     .note =
                                         "still wort cools several times slower. A tap that runs 5 L/min gives 300 000 g/h. The conductance of a "
                                         "coil comes from one measured cooling"};
        static constexpr input inputs[]{{"mass", only{above(0), no_limit}},
                                        {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},
                                        {"water_flow", only{above(0), no_limit}},
                                        {"water_temperature", validated{0, 100}},
                                        {"ua"},
                                        {"minutes"}};

        template <class T>
        static constexpr T formula(T M, T c, T T0, T flow, T Tw, T UA, T minutes) {
            return Tw + (T0 - Tw) * exp(-detail::coil_rate(M, c, flow, UA) * (60.0 * minutes));
        }
    } lumped;
};
inline constexpr family<&immersion_chiller_models::lumped> immersion_chiller{};

}  // namespace wortmath::thermal
