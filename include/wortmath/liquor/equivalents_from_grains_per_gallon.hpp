#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct equivalents_from_grains_per_gallon_models {
    static constexpr const char* question = "How many mEq/L of hardness or alkalinity are these grains per US gallon?";

    struct exact : model<struct exact, unit::milliequivalents_per_litre(unit::grains_per_gallon)> {
        static constexpr facts about{
            .source = hardness_source, .status = evidence::derived, .accuracy = "exact", .note = "one grain of CaCO3 per US gallon is 17.118061 ppm as CaCO3"};
        static constexpr input inputs[]{{"grains_per_gallon", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T grains_per_gallon) {
            return grains_per_gallon * equivalents_per_grain_per_gallon;
        }
    } exact;
};
inline constexpr family<&equivalents_from_grains_per_gallon_models::exact> equivalents_from_grains_per_gallon{};

}  // namespace wortmath::liquor
