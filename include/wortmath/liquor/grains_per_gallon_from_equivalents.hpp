#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct grains_per_gallon_from_equivalents_models {
    static constexpr const char* question = "How many grains per US gallon are these mEq/L of hardness or alkalinity?";

    struct exact : model<struct exact, unit::grains_per_gallon(unit::milliequivalents_per_litre)> {
        static constexpr facts about{
            .source = hardness_source, .status = evidence::derived, .accuracy = "exact", .note = "one grain of CaCO3 per US gallon is 17.118061 ppm as CaCO3"};
        static constexpr input inputs[]{{"equivalents", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T equivalents) {
            return equivalents / equivalents_per_grain_per_gallon;
        }
    } exact;
};
inline constexpr family<&grains_per_gallon_from_equivalents_models::exact> grains_per_gallon_from_equivalents{};

}  // namespace wortmath::liquor
