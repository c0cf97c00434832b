#pragma once

#include "wortmath/balance/liquid.hpp"

namespace wortmath::balance {

struct blend_models {
    static constexpr const char* question = "How strong is a blend of two worts?";

    struct blended {
        unit::litres volume;
        unit::plato extract;
        static constexpr const char* names[]{"volume", "extract"};
    };

    // Pearson's square; it holds in mass, never in volume.
    struct mass : model<struct mass, unit::plato(unit::grams, unit::plato, unit::grams, unit::plato)> {
        static constexpr facts about{.source = "this project's own derivation: exact balance of total mass and mass of extract",
                                     .status = evidence::derived,
                                     .use = "weighed amounts",
                                     .accuracy = "exact"};
        static constexpr input inputs[]{
            {"mass_1", only{above(0), no_limit}}, {"extract_1", only{0, below(100)}}, {"mass_2", only{above(0), no_limit}}, {"extract_2", only{0, below(100)}}};

        template <class T>
        static constexpr T formula(T m1, T P1, T m2, T P2) {
            return (m1 * P1 + m2 * P2) / (m1 + m2);
        }
    } mass;

    // Both worts at one temperature; what is left of two volumes is a little less than their sum.
    struct volume : model<struct volume, blended(unit::litres, unit::plato, unit::litres, unit::plato, unit::celsius)> {
        static constexpr facts about{
            .source = "this project's own derivation: exact balance of total mass and mass of extract; densities of extract.density.icumsa",
            .status = evidence::derived,
            .use = "amounts read in litres",
            .accuracy = "exact for sucrose solutions",
            .note = "hot wort is 2 to 4 % lighter per litre: blend worts of two temperatures by mass"};
        static constexpr input inputs[]{{"volume_1", only{above(0), no_limit}},
                                        {"extract_1", only{0, below(100)}},
                                        {"volume_2", only{above(0), no_limit}},
                                        {"extract_2", only{0, below(100)}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}}};

        template <class T>
        static constexpr several<T, 2> formula(T V1, T P1, T V2, T P2, T t) {
            T m1 = let("mass_1", detail::grams_of(V1, P1, t)), m2 = let("mass_2", detail::grams_of(V2, P2, t));
            T P = let("P", mass::formula(m1, P1, m2, P2));
            return several<T, 2>{{detail::litres_of(m1 + m2, P, t), P}};
        }
    } volume;

    // The trade's rule: gravity points times litres add up.
    struct points_volume : model<struct points_volume, unit::gravity(unit::litres, unit::gravity, unit::litres, unit::gravity)> {
        static constexpr facts about{.source = "common practice, no source",
                                     .status = evidence::derived,
                                     .use = "mental arithmetic; the volume model is exact",
                                     .accuracy = "5 L of 20 degP and 5 L of water give 1.04146 where the truth is 1.04164"};
        static constexpr input inputs[]{{"volume_1", only{above(0), no_limit}},
                                        {"gravity_1", validated{0.990, 1.35}, possible{0.95, 1.50}},
                                        {"volume_2", only{above(0), no_limit}},
                                        {"gravity_2", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T V1, T S1, T V2, T S2) {
            return (V1 * S1 + V2 * S2) / (V1 + V2);
        }
    } points_volume;
};
inline constexpr family<&blend_models::mass> blend{};

}  // namespace wortmath::balance
