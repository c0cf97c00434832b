#pragma once

#include "wortmath/balance/liquid.hpp"

namespace wortmath::balance {

struct dilute_models {
    static constexpr const char* question = "How much water brings a wort down to a target strength?";

    // Grams of water to add.
    struct mass : model<struct mass, unit::grams(unit::grams, unit::plato, unit::plato)> {
        static constexpr facts about{.source = "this project's own derivation: exact balance of total mass and mass of extract",
                                     .status = evidence::derived,
                                     .use = "weighed amounts",
                                     .accuracy = "exact"};
        static constexpr input inputs[]{{"mass", only{above(0), no_limit}}, {"extract", only{0, below(100)}}, {"target_extract", only{0, below(100)}}};
        static constexpr const char* refusal = "water only weakens: the target must lie above 0 and not above the extract that is there";

        template <class T>
        static constexpr T formula(T m, T P, T target) {
            return select(target > 0.0 && target <= P, m * P / target - m, undefined);
        }
    } mass;

    // Litres of water to add, at the temperature of the wort.
    struct volume : model<struct volume, unit::litres(unit::litres, unit::plato, unit::plato, unit::celsius)> {
        static constexpr facts about{
            .source = "this project's own derivation: exact balance of total mass and mass of extract; densities of extract.density.icumsa",
            .status = evidence::derived,
            .use = "amounts read in litres",
            .accuracy = "exact for sucrose solutions",
            .note = "litres of wort and water do not add up exactly: the blend is a little less"};
        static constexpr input inputs[]{{"volume", only{above(0), no_limit}},
                                        {"extract", only{0, below(100)}},
                                        {"target_extract", only{0, below(100)}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}}};
        static constexpr const char* refusal = mass::refusal;

        template <class T>
        static constexpr T formula(T V, T P, T target, T t) {
            T m = let("mass", detail::grams_of(V, P, t));
            return detail::litres_of_water(mass::formula(m, P, target), t);
        }
    } volume;
};
inline constexpr family<&dilute_models::mass> dilute{};

}  // namespace wortmath::balance
