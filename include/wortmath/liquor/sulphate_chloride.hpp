#pragma once

#include "wortmath/model.hpp"

namespace wortmath::liquor {

struct sulphate_chloride_models {
    static constexpr const char* question = "What is the ratio of sulphate to chloride?";

    struct ratio : model<struct ratio, unit::ratio(unit::milligrams_per_litre, unit::milligrams_per_litre)> {
        static constexpr facts about{.source = "arithmetic", .status = evidence::derived, .accuracy = "exact", .note = "not a number without chloride"};
        static constexpr input inputs[]{{"sulphate", validated{0, 500}}, {"chloride", validated{0, 500}}};

        template <class T>
        static constexpr T formula(T sulphate, T chloride) {
            return select(chloride > 0.0, sulphate / chloride, undefined);
        }
    } ratio;
};
inline constexpr family<&sulphate_chloride_models::ratio> sulphate_chloride{};

}  // namespace wortmath::liquor
