#pragma once

#include "wortmath/liquor/hardness_scales.hpp"

namespace wortmath::liquor {

struct equivalents_from_ppm_caco3_models {
    static constexpr const char* question = "How many mEq/L of hardness or alkalinity are these ppm as CaCO3?";

    struct exact : model<struct exact, unit::milliequivalents_per_litre(unit::ppm_caco3)> {
        static constexpr facts about{.source = hardness_source,
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "1 mEq/L is 50.043 ppm as CaCO3, a unit of equivalents and not of the ion"};
        static constexpr input inputs[]{{"ppm_caco3", only{-no_limit, no_limit}}};

        template <class T>
        static constexpr T formula(T ppm_caco3) {
            return ppm_caco3 * equivalents_per_ppm_caco3;
        }
    } exact;
};
inline constexpr family<&equivalents_from_ppm_caco3_models::exact> equivalents_from_ppm_caco3{};

}  // namespace wortmath::liquor
