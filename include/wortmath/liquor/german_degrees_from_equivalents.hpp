#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct german_degrees_from_equivalents_models {
    static constexpr const char* question = "How many German degrees are these mEq/L of hardness or alkalinity?";

    struct exact : model<struct exact, unit::german_degrees(unit::milliequivalents_per_litre)> {
        static constexpr facts about{.source = hardness_source,
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "one German degree is 10 mg CaO per litre: 17.847959 ppm as CaCO3"};
        static constexpr input inputs[]{{"equivalents", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T equivalents) {
            return equivalents / equivalents_per_german_degree;
        }
    } exact;
};
inline constexpr family<&german_degrees_from_equivalents_models::exact> german_degrees_from_equivalents{};

}  // namespace wortmath::liquor
