#pragma once

#include "wortmath/balance/liquid.hpp"

namespace wortmath::balance {

struct boil_down_models {
    static constexpr const char* question = "How far must a wort be boiled down to reach a target strength?";

    // Grams of water to evaporate.
    struct mass : model<struct mass, unit::grams(unit::grams, unit::plato, unit::plato)> {
        static constexpr facts about{.source = "this project's own derivation: exact balance of total mass and mass of extract",
                                     .status = evidence::derived,
                                     .use = "weighed amounts",
                                     .accuracy = "exact"};
        static constexpr input inputs[]{{"mass", only{above(0), no_limit}}, {"extract", only{0, below(100)}}, {"target_extract", only{0, below(100)}}};
        static constexpr const char* refusal = "boiling only strengthens: the target must not lie below the extract that is there, and be above 0";

        template <class T>
        static constexpr T formula(T m, T P, T target) {
            return select(target >= P && target > 0.0, m - m * P / target, undefined);
        }
    } mass;

    // Litres that are left when the target is reached, read at the temperature of the first reading.
    struct volume : model<struct volume, unit::litres(unit::litres, unit::plato, unit::plato, unit::celsius)> {
        static constexpr facts about{
            .source = "this project's own derivation: exact balance of total mass and mass of extract; densities of extract.density.icumsa",
            .status = evidence::derived,
            .use = "amounts read in litres",
            .accuracy = "exact for sucrose solutions",
            .note = "the litres left, not the litres evaporated: read both cold or both hot"};
        static constexpr input inputs[]{{"volume", only{above(0), no_limit}},
                                        {"extract", only{0, below(100)}},
                                        {"target_extract", only{0, below(100)}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}}};
        static constexpr const char* refusal = mass::refusal;

        template <class T>
        static constexpr T formula(T V, T P, T target, T t) {
            T m = let("mass", detail::grams_of(V, P, t));
            T left = m - mass::formula(m, P, target);
            return detail::litres_of(left, target, t);
        }
    } volume;
};
inline constexpr family<&boil_down_models::mass> boil_down{};

}  // namespace wortmath::balance
