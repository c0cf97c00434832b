#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer {

struct immersion_index_models {
    static constexpr const char* question = "What refractive index belongs to the scale of an old immersion refractometer?";

    struct zeiss : model<struct zeiss, unit::ratio(unit::scale_divisions)> {
        static constexpr facts about{.source = "scale of the Zeiss immersion refractometer, as carried by a public conversion routine",
                                     .status = evidence::secondary,
                                     .use = "old laboratory data",
                                     .note = "1.33300 at 14.5 divisions (water), 1.36640 at 105"};
        static constexpr input inputs[]{{"scale_reading", validated{14.5, 105}}};

        template <class T>
        static constexpr T formula(T R) {
            return poly(R, 1.327338, 0.00039347, -0.00000020446);
        }
    } zeiss;
};
inline constexpr family<&immersion_index_models::zeiss> immersion_index{};

}  // namespace wortmath::refractometer
