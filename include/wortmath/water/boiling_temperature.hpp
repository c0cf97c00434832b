#pragma once

#include "wortmath/water/saturation_pressure.hpp"

namespace wortmath::water {

struct boiling_temperature_models {
    static constexpr const char* question = "At which temperature does water boil under a pressure?";

    // The pressure is the true one at the place: a weather report's is reduced to sea level (atmosphere.station_pressure).
    struct if97 : model<struct if97, unit::celsius(unit::pressure)> {
        static constexpr facts about{.source = "IAPWS R7-97(2012), Industrial Formulation 1997, region 4, equation 31",
                                     .status = evidence::secondary,
                                     .use = "water; wort boils higher by thermal.boiling_point_elevation",
                                     .accuracy = "the verification values of the release within 4e-7 K",
                                     .note =
                                         "transcribed from an open library and other test suites; 1 degF per 500 ft of altitude, a rule of thumb, reads "
                                         "0.3 K low at 1000 m and 0.9 K low at 3000 m",
                                     .danger =
                                         "above 1.01 bar this is no design tool: a closed heated vessel needs to be rated for its pressure, needs "
                                         "a relief device and licensed practice; nothing is extrapolated"};
        // the ends belong to 0 and 373.946 degC: printed 0.00611213 and 220.64 bar
        static constexpr input inputs[]{{"pressure", only{0.0061121267, 220.64000001}}};

        template <class T>
        static constexpr T formula(T p) {
            T beta = let("beta", sqrt(sqrt(0.1 * p)));
            T e = let("E", square(beta) + detail::if97_n3 * beta + detail::if97_n6);
            T f = let("F", detail::if97_n1 * square(beta) + detail::if97_n4 * beta + detail::if97_n7);
            T g = let("G", detail::if97_n2 * square(beta) + detail::if97_n5 * beta + detail::if97_n8);
            T d = let("D", 2.0 * g / (-f - sqrt(square(f) - 4.0 * e * g)));
            T s = detail::if97_n10 + d;
            return (s - sqrt(square(s) - 4.0 * (detail::if97_n9 + detail::if97_n10 * d))) / 2.0 - constants::zero_celsius;
        }
    } if97;
};
inline constexpr family<&boiling_temperature_models::if97> boiling_temperature{};

}  // namespace wortmath::water
