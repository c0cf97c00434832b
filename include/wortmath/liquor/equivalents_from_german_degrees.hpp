#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct equivalents_from_german_degrees_models {
    static constexpr const char* question = "How many mEq/L of hardness or alkalinity are these German degrees?";

    struct exact : model<struct exact, unit::milliequivalents_per_litre(unit::german_degrees)> {
        static constexpr facts about{.source = hardness_source,
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "one German degree is 10 mg CaO per litre: 17.847959 ppm as CaCO3"};
        static constexpr input inputs[]{{"german_degrees", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T german_degrees) {
            return german_degrees * equivalents_per_german_degree;
        }
    } exact;
};
inline constexpr family<&equivalents_from_german_degrees_models::exact> equivalents_from_german_degrees{};

}  // namespace wortmath::liquor
