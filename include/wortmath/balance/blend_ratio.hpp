#pragma once

#include "wortmath/model.hpp"

namespace wortmath::balance {

struct blend_ratio_models {
    static constexpr const char* question = "In which ratio of masses do two worts make a blend of a given strength?";

    // The mass of the first wort for each unit of mass of the second.
    struct mass : model<struct mass, unit::ratio(unit::plato, unit::plato, unit::plato)> {
        static constexpr facts about{.source = "this project's own derivation: exact balance of total mass and mass of extract",
                                     .status = evidence::derived,
                                     .use = "weighed amounts",
                                     .accuracy = "exact",
                                     .note = "a ratio of masses and not of litres"};
        static constexpr input inputs[]{{"extract_1", only{0, below(100)}}, {"extract_2", only{0, below(100)}}, {"target_extract", only{0, below(100)}}};
        static constexpr const char* refusal = "the target must lie strictly between the two worts: no blend of them is weaker or stronger than both";

        template <class T>
        static constexpr T formula(T P1, T P2, T target) {
            return select((target - P2) * (P1 - target) > 0.0, (target - P2) / (P1 - target), undefined);
        }
    } mass;
};
inline constexpr family<&blend_ratio_models::mass> blend_ratio{};

}  // namespace wortmath::balance
