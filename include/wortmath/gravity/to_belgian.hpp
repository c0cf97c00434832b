#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct to_belgian_models {
    static constexpr const char* question = "How many Belgian degrees is a specific gravity?";

    struct definition : model<struct definition, unit::belgian(unit::gravity)> {
        static constexpr facts about{.source = "common definition of the Belgian degree",
                                     .status = evidence::secondary,
                                     .use = "old Belgian recipes; the scale of the gravity stays what it was",
                                     .accuracy = "exact by definition",
                                     .note = "1.048 is 4.8 degrees"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 100.0 * (S - 1.0);
        }
    } definition;
};
inline constexpr family<&to_belgian_models::definition> to_belgian{};

}  // namespace wortmath::gravity
