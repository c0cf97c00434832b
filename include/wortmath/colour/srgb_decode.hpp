#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct srgb_decode_models {
    static constexpr const char* question = "How much linear light does the value of a screen's channel, from 0 to 1, stand for?";

    struct iec : model<struct iec, unit::ratio(unit::ratio)> {
        static constexpr facts about{.source = "IEC 61966-2-1:1999",
                                     .status = evidence::secondary,
                                     .accuracy = "the two branches meet with a step of 3e-8",
                                     .note = "an older draft split at 0.03928 and is not used"};
        static constexpr input inputs[]{{"v", only{0, 1}}};

        template <class T>
        static constexpr T formula(T v) {
            return select(v <= 0.04045, v / 12.92, pow((v + 0.055) / 1.055, 2.4));
        }
    } iec;
};
inline constexpr family<&srgb_decode_models::iec> srgb_decode{};

}  // namespace wortmath::colour
