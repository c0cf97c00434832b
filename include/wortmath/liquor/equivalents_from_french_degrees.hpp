#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct equivalents_from_french_degrees_models {
    static constexpr const char* question = "How many mEq/L of hardness or alkalinity are these French degrees?";

    struct exact : model<struct exact, unit::milliequivalents_per_litre(unit::french_degrees)> {
        static constexpr facts about{
            .source = hardness_source, .status = evidence::derived, .accuracy = "exact", .note = "one French degree is 10 mg CaCO3 per litre: 10 ppm as CaCO3"};
        static constexpr input inputs[]{{"french_degrees", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T french_degrees) {
            return french_degrees * equivalents_per_french_degree;
        }
    } exact;
};
inline constexpr family<&equivalents_from_french_degrees_models::exact> equivalents_from_french_degrees{};

}  // namespace wortmath::liquor
