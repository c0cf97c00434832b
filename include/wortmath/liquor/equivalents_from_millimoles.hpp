#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct equivalents_from_millimoles_models {
    static constexpr const char* question = "How many mEq/L of hardness or alkalinity are these mmol/L of calcium carbonate?";

    struct exact : model<struct exact, unit::milliequivalents_per_litre(unit::millimoles_per_litre)> {
        static constexpr facts about{
            .source = hardness_source, .status = evidence::derived, .accuracy = "exact", .note = "one mmol of CaCO3 is two milliequivalents"};
        static constexpr input inputs[]{{"millimoles", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T millimoles) {
            return millimoles * equivalents_per_millimole;
        }
    } exact;
};
inline constexpr family<&equivalents_from_millimoles_models::exact> equivalents_from_millimoles{};

}  // namespace wortmath::liquor
