#pragma once

#include "wortmath/model.hpp"

namespace wortmath::liquor {

struct activity_models {
    static constexpr const char* question = "What is the logarithm of an ion's activity coefficient?";

    struct davies : model<struct davies, unit::ratio(unit::ratio, unit::millimoles_per_litre)> {
        static constexpr facts about{.source = "C. W. Davies, textbook form at 25 degC, from memory",
                                     .status = evidence::memory,
                                     .note =
                                         "the carbonate models here take an ionic strength of 0. To allow for it add log g(1) to pK1, and log "
                                         "g(2) - log g(1) to pK2; 5 mmol/L moves pK1 by -0.033"};
        static constexpr input inputs[]{{"charge"}, {"ionic_strength", validated{0, 500}}};

        template <class T>
        static constexpr T formula(T z, T mmol) {
            T I = let("I", mmol / 1000.0);
            return -0.509 * square(z) * (sqrt(I) / (1.0 + sqrt(I)) - 0.3 * I);
        }
    } davies;
};
inline constexpr family<&activity_models::davies> activity{};

}  // namespace wortmath::liquor
