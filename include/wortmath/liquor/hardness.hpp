#pragma once

#include "wortmath/liquor/atomic_weights.hpp"
#include "wortmath/model.hpp"

namespace wortmath::liquor {

struct hardness_models {
    static constexpr const char* question = "What is the total hardness of a water?";

    struct calcium_magnesium : model<struct calcium_magnesium, unit::milliequivalents_per_litre(unit::milligrams_per_litre, unit::milligrams_per_litre)> {
        static constexpr facts about{.source = "two equivalents per mole of calcium and of magnesium",
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "in ppm as CaCO3 it is 2.49728 Ca + 4.11792 Mg"};
        static constexpr input inputs[]{{"calcium", validated{0, 500}}, {"magnesium", validated{0, 500}}};

        template <class T>
        static constexpr T formula(T calcium, T magnesium) {
            return 2.0 * (calcium / element::Ca + magnesium / element::Mg);
        }
    } calcium_magnesium;
};
inline constexpr family<&hardness_models::calcium_magnesium> hardness{};

}  // namespace wortmath::liquor
