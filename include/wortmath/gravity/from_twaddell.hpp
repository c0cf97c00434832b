#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct from_twaddell_models {
    static constexpr const char* question = "Which specific gravity is a number of degrees Twaddell?";

    struct definition : model<struct definition, unit::gravity_60F_60F(unit::twaddell)> {
        static constexpr facts about{.source = "common definition of the degree Twaddell",
                                     .status = evidence::secondary,
                                     .use = "instruments of the chemical trade",
                                     .accuracy = "exact by definition"};
        // where the gravity lies between 0.990 and 1.35, and between 0.95 and 1.50
        static constexpr input inputs[]{
            {"twaddell", validated{200.0 * (0.990 - 1.0), 200.0 * (1.35 - 1.0)}, possible{200.0 * (0.95 - 1.0), 200.0 * (1.50 - 1.0)}}};

        template <class T>
        static constexpr T formula(T twaddell) {
            return 1.0 + twaddell / 200.0;
        }
    } definition;
};
inline constexpr family<&from_twaddell_models::definition> from_twaddell{};

}  // namespace wortmath::gravity
