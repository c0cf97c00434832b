#pragma once

#include "wortmath/model.hpp"

namespace wortmath::atmosphere {

namespace detail {
// The lowest layer of the standard atmosphere: the temperature falls evenly with the geopotential altitude.
inline constexpr double earth_radius = 6356766.0;        // m
inline constexpr double sea_level_temperature = 288.15;  // K
inline constexpr double lapse = 0.0065;                  // K/m
inline constexpr double sea_level_pressure = 1.01325;    // bar
inline constexpr double exponent = 9.80665 * 28.9644 / (8314.32 * lapse);
}  // namespace detail

struct pressure_models {
    static constexpr const char* question = "What is the usual air pressure at an altitude?";

    // A long-term mean: the weather moves the pressure of a place by a few per cent.
    struct us1976 : model<struct us1976, unit::pressure(unit::metres)> {
        static constexpr facts about{.source = "NOAA, NASA, USAF, U.S. Standard Atmosphere, 1976",
                                     .status = evidence::secondary,
                                     .use = "where no barometer is at hand",
                                     .accuracy = "the table of the source within 5e-5 relative, its own rounding",
                                     .note = "the altitude is the geometric one, in metres and not in feet; transcribed from an open library"};
        static constexpr input inputs[]{{"altitude", validated{-2000, 10000}, possible{-5000, 11019}}};

        template <class T>
        static constexpr T formula(T z) {
            T H = let("H", detail::earth_radius * z / (detail::earth_radius + z));
            return detail::sea_level_pressure * pow((detail::sea_level_temperature - detail::lapse * H) / detail::sea_level_temperature, T(detail::exponent));
        }
    } us1976;
};
inline constexpr family<&pressure_models::us1976> pressure{};

}  // namespace wortmath::atmosphere
