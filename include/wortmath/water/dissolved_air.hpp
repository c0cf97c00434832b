#pragma once

#include "wortmath/model.hpp"

namespace wortmath::water {

struct dissolved_air_models {
    static constexpr const char* question = "How much is added to the density of air-free water when it is saturated with air?";

    struct tanaka : model<struct tanaka, unit::density_change(unit::celsius)> {
        static constexpr facts about{.source = "M. Tanaka, G. Girard, R. Davis, A. Peuto, N. Bignell, Metrologia 38 (2001) 301",
                                     .status = evidence::secondary,
                                     .use = "calibration work; no brewing reading can tell",
                                     .note = "negative over the whole range: air makes water lighter"};
        static constexpr input inputs[]{{"temperature", only{0, 25}}};

        template <class T>
        static constexpr T formula(T t) {
            return -4.612e-3 + 0.106e-3 * t;
        }
    } tanaka;
};
inline constexpr family<&dissolved_air_models::tanaka> dissolved_air{};

}  // namespace wortmath::water
