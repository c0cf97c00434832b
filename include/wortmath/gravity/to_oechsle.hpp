#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct to_oechsle_models {
    static constexpr const char* question = "How many degrees Oechsle is a specific gravity?";

    struct definition : model<struct definition, unit::oechsle(unit::gravity_20_20)> {
        static constexpr facts about{.source = "common definition of the degree Oechsle",
                                     .status = evidence::secondary,
                                     .use = "must scales, and instruments of wine makers",
                                     .accuracy = "exact by definition",
                                     .note = "older instruments read against 15/15 or 17.5/17.5 (from memory)"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 1000.0 * (S - 1.0);
        }
    } definition;
};
inline constexpr family<&to_oechsle_models::definition> to_oechsle{};

}  // namespace wortmath::gravity
