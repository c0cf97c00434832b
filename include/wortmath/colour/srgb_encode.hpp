#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct srgb_encode_models {
    static constexpr const char* question = "Which value of a screen's channel, from 0 to 1, stands for an amount of linear light?";

    struct iec : model<struct iec, unit::ratio(unit::ratio)> {
        static constexpr facts about{.source = "IEC 61966-2-1:1999",
                                     .status = evidence::secondary,
                                     .accuracy = "the two branches meet with a step of 3e-8",
                                     .note = "light below 0 or above 1 is clipped; an older draft split at 0.00304 and is not used"};
        static constexpr input inputs[]{{"u"}};

        template <class T>
        static constexpr T formula(T u) {
            T c = least(T(1.0), most(T(0.0), u));
            return select(c <= 0.0031308, 12.92 * c, 1.055 * pow(c, 1.0 / 2.4) - 0.055);
        }
    } iec;
};
inline constexpr family<&srgb_encode_models::iec> srgb_encode{};

}  // namespace wortmath::colour
