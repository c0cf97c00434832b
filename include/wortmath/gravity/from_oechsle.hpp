#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct from_oechsle_models {
    static constexpr const char* question = "Which specific gravity is a number of degrees Oechsle?";

    struct definition : model<struct definition, unit::gravity_20_20(unit::oechsle)> {
        static constexpr facts about{.source = "common definition of the degree Oechsle",
                                     .status = evidence::secondary,
                                     .use = "must scales, and instruments of wine makers",
                                     .accuracy = "exact by definition",
                                     .note = "older instruments read against 15/15 or 17.5/17.5 (from memory)"};
        // where the gravity lies between 0.990 and 1.35, and between 0.95 and 1.50
        static constexpr input inputs[]{
            {"oechsle", validated{1000.0 * (0.990 - 1.0), 1000.0 * (1.35 - 1.0)}, possible{1000.0 * (0.95 - 1.0), 1000.0 * (1.50 - 1.0)}}};

        template <class T>
        static constexpr T formula(T oechsle) {
            return 1.0 + oechsle / 1000.0;
        }
    } definition;
};
inline constexpr family<&from_oechsle_models::definition> from_oechsle{};

}  // namespace wortmath::gravity
