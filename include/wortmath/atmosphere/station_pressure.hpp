#pragma once

#include "wortmath/atmosphere/pressure.hpp"

namespace wortmath::atmosphere {

struct station_pressure_models {
    static constexpr const char* question = "What is the true air pressure here, given the weather report's?";

    // Weather services publish the pressure reduced to sea level; boiling knows only the true one.
    struct us1976_scaled : model<struct us1976_scaled, unit::pressure(unit::pressure, unit::metres)> {
        static constexpr facts about{.source = "this project's own derivation: the standard atmosphere of 1976, scaled to the day's sea-level pressure",
                                     .status = evidence::derived,
                                     .use = "before water.boiling_temperature, when the pressure comes from a weather report",
                                     .accuracy = "air 15 K off the standard changes the answer by 1 % at 1600 m, the boiling point by 0.3 K",
                                     .note = "a barometer that hangs here and was never set to sea level already reads the true pressure"};
        static constexpr input inputs[]{{"sea_level_pressure", validated{0.90, 1.06}, possible{0.85, 1.10}},
                                        {"altitude", validated{-2000, 10000}, possible{-5000, 11019}}};

        template <class T>
        static constexpr T formula(T sea_level, T z) {
            return sea_level * pressure.us1976.formula(z) / detail::sea_level_pressure;
        }
    } us1976_scaled;
};
inline constexpr family<&station_pressure_models::us1976_scaled> station_pressure{};

}  // namespace wortmath::atmosphere
