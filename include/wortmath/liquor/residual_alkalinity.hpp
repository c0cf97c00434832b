#pragma once

#include "wortmath/liquor/atomic_weights.hpp"
#include "wortmath/model.hpp"

namespace wortmath::liquor {

struct residual_alkalinity_models {
    static constexpr const char* question = "What is left of the alkalinity after calcium and magnesium have met the malt's phosphate?";

    struct kolbach
        : model<struct kolbach, unit::milliequivalents_per_litre(unit::milliequivalents_per_litre, unit::milligrams_per_litre, unit::milligrams_per_litre)> {
        static constexpr facts about{
            .source = "P. Kolbach 1953; MEBAK W-030.01.900 (scope read; the formula in several copies)",
            .status = evidence::secondary,
            .note =
                "holds in equivalents only. The commonest mistake applies 3.5 and 7 to mg/L of the ion: 200 ppm alkalinity, 100 mg/L calcium and 20 mg/L "
                "magnesium give 116.9 ppm, the mistake 168.6. Magnesium is added, not subtracted, inside the bracket"};
        static constexpr input inputs[]{{"alkalinity", validated{0, 10}, possible{0, 100}}, {"calcium", validated{0, 500}}, {"magnesium", validated{0, 500}}};

        template <class T>
        static constexpr T formula(T alkalinity, T calcium, T magnesium) {
            T Ca = let("Ca", 2.0 / element::Ca * calcium);
            T Mg = let("Mg", 2.0 / element::Mg * magnesium);
            return alkalinity - (Ca / 3.5 + Mg / 7.0);
        }
    } kolbach;
};
inline constexpr family<&residual_alkalinity_models::kolbach> residual_alkalinity{};

}  // namespace wortmath::liquor
