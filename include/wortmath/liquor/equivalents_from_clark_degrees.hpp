#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct equivalents_from_clark_degrees_models {
    static constexpr const char* question = "How many mEq/L of hardness or alkalinity are these Clark degrees?";

    struct exact : model<struct exact, unit::milliequivalents_per_litre(unit::clark_degrees)> {
        static constexpr facts about{.source = hardness_source,
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "one Clark degree is one grain of CaCO3 per imperial gallon: 14.253768 ppm as CaCO3"};
        static constexpr input inputs[]{{"clark_degrees", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T clark_degrees) {
            return clark_degrees * equivalents_per_clark_degree;
        }
    } exact;
};
inline constexpr family<&equivalents_from_clark_degrees_models::exact> equivalents_from_clark_degrees{};

}  // namespace wortmath::liquor
