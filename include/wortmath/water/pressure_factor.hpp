#pragma once

#include "wortmath/model.hpp"

namespace wortmath::water {

struct pressure_factor_models {
    static constexpr const char* question = "By which factor does pressure raise the density of water?";

    // The density at 1.01325 bar times this factor is the density at the pressure.
    struct tanaka : model<struct tanaka, unit::ratio(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "M. Tanaka, G. Girard, R. Davis, A. Peuto, N. Bignell, Metrologia 38 (2001) 301",
                                     .status = evidence::secondary,
                                     .use = "calibration work; no brewing reading can tell",
                                     .accuracy = "6e-7 of IAPWS-95",
                                     .note =
                                         "the last coefficient is in print as 4.16e-15 too, which is 2.3e-5 off at 40 degC and 5 bar; its power of ten here "
                                         "is derived from IAPWS-95"};
        static constexpr input inputs[]{{"temperature", only{0, 40}}, {"pressure", only{0.6, 5}}};

        template <class T>
        static constexpr T formula(T t, T p) {
            return 1.0 + poly(t, 5.074e-10, -3.26e-12, 4.16e-14) * (1e5 * p - 101325.0);
        }
    } tanaka;
};
inline constexpr family<&pressure_factor_models::tanaka> pressure_factor{};

}  // namespace wortmath::water
