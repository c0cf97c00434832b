#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct to_twaddell_models {
    static constexpr const char* question = "How many degrees Twaddell is a specific gravity?";

    struct definition : model<struct definition, unit::twaddell(unit::gravity_60F_60F)> {
        static constexpr facts about{.source = "common definition of the degree Twaddell",
                                     .status = evidence::secondary,
                                     .use = "instruments of the chemical trade",
                                     .accuracy = "exact by definition"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 200.0 * (S - 1.0);
        }
    } definition;
};
inline constexpr family<&to_twaddell_models::definition> to_twaddell{};

}  // namespace wortmath::gravity
