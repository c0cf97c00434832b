#pragma once

#include "wortmath/model.hpp"

namespace wortmath::mash {

struct volume_models {
    static constexpr const char* question = "How much room does the mash take in the tun?";

    struct displacement : model<struct displacement, unit::litres(unit::grams, unit::litres, unit::litres_per_kilogram)> {
        static constexpr facts about{.source = "common practice, no source: malt displaces 0.65 L/kg (10 fl oz/lb); from memory",
                                     .status = evidence::memory,
                                     .note = "compare it with the volume of the tun"};
        static constexpr input inputs[]{{"grist_mass"}, {"water_volume"}, {"displacement", otherwise{0.65}}};

        template <class T>
        static constexpr T formula(T G, T W, T displacement) {
            return W + displacement * (G / 1000.0);
        }
    } displacement;
};
inline constexpr family<&volume_models::displacement> volume{};

}  // namespace wortmath::mash
