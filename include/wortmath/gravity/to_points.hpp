#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct to_points_models {
    static constexpr const char* question = "How many gravity points is a specific gravity?";

    struct definition : model<struct definition, unit::points(unit::gravity)> {
        static constexpr facts about{.source = "definition: 1000 times what the gravity has above water",
                                     .status = evidence::derived,
                                     .use = "the scale of the gravity stays what it was",
                                     .accuracy = "exact by definition",
                                     .note = "also called excess gravity, or degrees of gravity"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 1000.0 * (S - 1.0);
        }
    } definition;
};
inline constexpr family<&to_points_models::definition> to_points{};

}  // namespace wortmath::gravity
