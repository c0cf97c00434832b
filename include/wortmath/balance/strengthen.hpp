#pragma once

#include "wortmath/balance/liquid.hpp"

namespace wortmath::balance {

struct strengthen_models {
    static constexpr const char* question = "How much malt extract or sugar brings a wort up to a target strength?";

    // Grams of an addition of which the given share is solids.
    struct mass : model<struct mass, unit::grams(unit::grams, unit::plato, unit::plato, unit::fraction)> {
        static constexpr facts about{.source = "this project's own derivation: exact balance of total mass and mass of extract",
                                     .status = evidence::derived,
                                     .use = "weighed amounts",
                                     .accuracy = "exact",
                                     .note = "solids: 0.78 to 0.82 for liquid malt extract, 0.955 to 0.97 dried, 1 for dry sugar"};
        static constexpr input inputs[]{
            {"mass", only{above(0), no_limit}}, {"extract", only{0, below(100)}}, {"target_extract", only{0, below(100)}}, {"solids"}};
        static constexpr const char* refusal =
            "the target must not lie below the extract that is there, and must lie below the strength of the addition itself";

        template <class T>
        static constexpr T formula(T m, T P, T target, T solids) {
            return select(target >= P && target < 100.0 * solids, m * (target - P) / (100.0 * solids - target), undefined);
        }
    } mass;

    // Grams of the addition, for litres of wort.
    struct volume : model<struct volume, unit::grams(unit::litres, unit::plato, unit::plato, unit::fraction, unit::celsius)> {
        static constexpr facts about{
            .source = "this project's own derivation: exact balance of total mass and mass of extract; densities of extract.density.icumsa",
            .status = evidence::derived,
            .use = "amounts read in litres",
            .accuracy = "exact for sucrose solutions"};
        static constexpr input inputs[]{{"volume", only{above(0), no_limit}},
                                        {"extract", only{0, below(100)}},
                                        {"target_extract", only{0, below(100)}},
                                        {"solids"},
                                        {"temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}}};
        static constexpr const char* refusal = mass::refusal;

        template <class T>
        static constexpr T formula(T V, T P, T target, T solids, T t) {
            T m = let("mass", detail::grams_of(V, P, t));
            return mass::formula(m, P, target, solids);
        }
    } volume;
};
inline constexpr family<&strengthen_models::mass> strengthen{};

}  // namespace wortmath::balance
