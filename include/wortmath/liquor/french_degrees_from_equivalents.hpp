#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct french_degrees_from_equivalents_models {
    static constexpr const char* question = "How many French degrees are these mEq/L of hardness or alkalinity?";

    struct exact : model<struct exact, unit::french_degrees(unit::milliequivalents_per_litre)> {
        static constexpr facts about{
            .source = hardness_source, .status = evidence::derived, .accuracy = "exact", .note = "one French degree is 10 mg CaCO3 per litre: 10 ppm as CaCO3"};
        static constexpr input inputs[]{{"equivalents", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T equivalents) {
            return equivalents / equivalents_per_french_degree;
        }
    } exact;
};
inline constexpr family<&french_degrees_from_equivalents_models::exact> french_degrees_from_equivalents{};

}  // namespace wortmath::liquor
