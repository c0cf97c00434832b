#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct from_belgian_models {
    static constexpr const char* question = "Which specific gravity is a number of Belgian degrees?";

    struct definition : model<struct definition, unit::gravity(unit::belgian)> {
        static constexpr facts about{.source = "common definition of the Belgian degree",
                                     .status = evidence::secondary,
                                     .use = "old Belgian recipes; the scale of the gravity stays what it was",
                                     .accuracy = "exact by definition",
                                     .note = "1.048 is 4.8 degrees"};
        // where the gravity lies between 0.990 and 1.35, and between 0.95 and 1.50
        static constexpr input inputs[]{
            {"belgian", validated{100.0 * (0.990 - 1.0), 100.0 * (1.35 - 1.0)}, possible{100.0 * (0.95 - 1.0), 100.0 * (1.50 - 1.0)}}};

        template <class T>
        static constexpr T formula(T belgian) {
            return 1.0 + belgian / 100.0;
        }
    } definition;
};
inline constexpr family<&from_belgian_models::definition> from_belgian{};

}  // namespace wortmath::gravity
