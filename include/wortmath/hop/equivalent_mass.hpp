#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::hop {

struct equivalent_mass_models {
    static constexpr const char* question = "How much of the hops in hand brings the alpha acids that the recipe counts on?";

    struct equal_alpha : model<struct equal_alpha, unit::grams(unit::grams, unit::alpha_acids, unit::alpha_acids)> {
        static constexpr facts about{.source = "definition",
                                     .status = evidence::derived,
                                     .use = "hops boiled for bitterness, from another lot or aged",
                                     .accuracy = "exact",
                                     .note = "keeps the bitterness; for late and dry hops, where aroma counts, keep the mass instead"};
        static constexpr input inputs[]{{"mass", bitterness::detail::amount}, {"alpha"}, {"actual_alpha", only{above(0), 1}}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T actual_alpha) {
            return mass * alpha / actual_alpha;
        }
    } equal_alpha;
};
inline constexpr family<&equivalent_mass_models::equal_alpha> equivalent_mass{};

}  // namespace wortmath::hop
