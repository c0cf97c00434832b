#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct millimoles_from_equivalents_models {
    static constexpr const char* question = "How many mmol/L of calcium carbonate are these mEq/L of hardness or alkalinity?";

    struct exact : model<struct exact, unit::millimoles_per_litre(unit::milliequivalents_per_litre)> {
        static constexpr facts about{
            .source = hardness_source, .status = evidence::derived, .accuracy = "exact", .note = "one mmol of CaCO3 is two milliequivalents"};
        static constexpr input inputs[]{{"equivalents", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T equivalents) {
            return equivalents / equivalents_per_millimole;
        }
    } exact;
};
inline constexpr family<&millimoles_from_equivalents_models::exact> millimoles_from_equivalents{};

}  // namespace wortmath::liquor
