#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct clark_degrees_from_equivalents_models {
    static constexpr const char* question = "How many Clark degrees are these mEq/L of hardness or alkalinity?";

    struct exact : model<struct exact, unit::clark_degrees(unit::milliequivalents_per_litre)> {
        static constexpr facts about{.source = hardness_source,
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "one Clark degree is one grain of CaCO3 per imperial gallon: 14.253768 ppm as CaCO3"};
        static constexpr input inputs[]{{"equivalents", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T equivalents) {
            return equivalents / equivalents_per_clark_degree;
        }
    } exact;
};
inline constexpr family<&clark_degrees_from_equivalents_models::exact> clark_degrees_from_equivalents{};

}  // namespace wortmath::liquor
