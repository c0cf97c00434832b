#pragma once

#include "wortmath/atmosphere/pressure.hpp"

namespace wortmath::atmosphere {

struct altitude_models {
    static constexpr const char* question = "At which altitude is an air pressure the usual one?";

    // The exact inverse of atmosphere.pressure.us1976.
    struct us1976 : model<struct us1976, unit::metres(unit::pressure)> {
        static constexpr facts about{.source = "NOAA, NASA, USAF, U.S. Standard Atmosphere, 1976",
                                     .status = evidence::secondary,
                                     .use = "to place a barometer's reading on the scale of altitudes",
                                     .note = "transcribed from an open library; the weather alone moves the answer by some hundred metres"};
        // the pressures at 10000 and -2000 m, and at 11019 and -5000 m
        static constexpr input inputs[]{{"pressure", validated{0.26499898139, 1.27782833366}, possible{0.22632305217, 1.77761500482}}};

        template <class T>
        static constexpr T formula(T p) {
            T H = let("H", detail::sea_level_temperature / detail::lapse * (1.0 - pow(p / detail::sea_level_pressure, T(1.0 / detail::exponent))));
            return detail::earth_radius * H / (detail::earth_radius - H);
        }
    } us1976;
};
inline constexpr family<&altitude_models::us1976> altitude{};

}  // namespace wortmath::atmosphere
