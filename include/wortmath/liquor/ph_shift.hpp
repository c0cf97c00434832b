#pragma once

#include "wortmath/liquor/hardness_scales.hpp"
#include "wortmath/model.hpp"

namespace wortmath::liquor {

struct ph_shift_models {
    static constexpr const char* question = "By how much does residual alkalinity raise the pH?";

    // As it is quoted everywhere.
    struct kolbach : model<struct kolbach, unit::ph(unit::milliequivalents_per_litre)> {
        static constexpr facts about{.source = "P. Kolbach 1953, 0.03 pH for a German degree; from memory",
                                     .status = evidence::memory,
                                     .use = "cast wort of 12 degP",
                                     .accuracy = "an estimate: measure the pH",
                                     .note = "found on cast wort and not on the mash; taking it for mash pH is a misuse that later authors have noted"};
        static constexpr input inputs[]{{"residual_alkalinity", validated{-5, 10}}};

        template <class T>
        static constexpr T formula(T ra) {
            return 0.03 * (ra / equivalents_per_german_degree);
        }
    } kolbach;

    // With the thickness of the mash.
    struct troester : model<struct troester, unit::ph(unit::milliequivalents_per_litre, unit::litres_per_kilogram)> {
        static constexpr facts about{.source = "K. Troester; the numbers from memory, the strong effect of mash thickness was read",
                                     .status = evidence::memory,
                                     .use = "the mash",
                                     .accuracy = "an estimate: measure the pH"};
        static constexpr input inputs[]{{"residual_alkalinity", validated{-5, 10}}, {"mash_ratio", validated{1.5, 8}, possible{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T ra, T R) {
            return (0.013 * R + 0.013) * ra;
        }
    } troester;
};
inline constexpr family<&ph_shift_models::kolbach> ph_shift{};

}  // namespace wortmath::liquor
