#pragma once

#include "wortmath/model.hpp"

namespace wortmath::balance {

struct after_boil_models {
    static constexpr const char* question = "How strong is a wort after water has boiled off?";

    struct mass : model<struct mass, unit::plato(unit::grams, unit::plato, unit::grams)> {
        static constexpr facts about{.source = "this project's own derivation: exact balance of total mass and mass of extract",
                                     .status = evidence::derived,
                                     .use = "weighed amounts",
                                     .accuracy = "exact"};
        static constexpr input inputs[]{{"mass", only{above(0), no_limit}}, {"extract", only{0, below(100)}}, {"evaporated_mass"}};
        static constexpr const char* refusal = "there is less water in the wort than would be boiled off";

        template <class T>
        static constexpr T formula(T m, T P, T evaporated) {
            return select(evaporated < m * (1.0 - P / 100.0), m * P / (m - evaporated), undefined);
        }
    } mass;
};
inline constexpr family<&after_boil_models::mass> after_boil{};

}  // namespace wortmath::balance
