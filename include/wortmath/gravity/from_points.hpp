#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct from_points_models {
    static constexpr const char* question = "Which specific gravity is a number of gravity points?";

    struct definition : model<struct definition, unit::gravity(unit::points)> {
        static constexpr facts about{.source = "definition: 1000 times what the gravity has above water",
                                     .status = evidence::derived,
                                     .use = "the scale of the gravity stays what it was",
                                     .accuracy = "exact by definition",
                                     .note = "also called excess gravity, or degrees of gravity"};
        // where the gravity lies between 0.990 and 1.35, and between 0.95 and 1.50
        static constexpr input inputs[]{
            {"points", validated{1000.0 * (0.990 - 1.0), 1000.0 * (1.35 - 1.0)}, possible{1000.0 * (0.95 - 1.0), 1000.0 * (1.50 - 1.0)}}};

        template <class T>
        static constexpr T formula(T points) {
            return 1.0 + points / 1000.0;
        }
    } definition;
};
inline constexpr family<&from_points_models::definition> from_points{};

}  // namespace wortmath::gravity
