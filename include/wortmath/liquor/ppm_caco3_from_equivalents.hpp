#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct ppm_caco3_from_equivalents_models {
    static constexpr const char* question = "How many ppm as CaCO3 are these mEq/L of hardness or alkalinity?";

    struct exact : model<struct exact, unit::ppm_caco3(unit::milliequivalents_per_litre)> {
        static constexpr facts about{.source = hardness_source,
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "1 mEq/L is 50.043 ppm as CaCO3, a unit of equivalents and not of the ion"};
        static constexpr input inputs[]{{"equivalents", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T equivalents) {
            return equivalents / equivalents_per_ppm_caco3;
        }
    } exact;
};
inline constexpr family<&ppm_caco3_from_equivalents_models::exact> ppm_caco3_from_equivalents{};

}  // namespace wortmath::liquor
