#pragma once

#include "wortmath/extract/brewhouse_yield.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct brewhouse_efficiency_models {
    static constexpr const char* question = "What share of the grist's own extract is in the wort?";

    // In kilograms of extract.
    struct mass : model<struct mass, unit::fraction(unit::plato, unit::litres, unit::celsius, unit::grams, unit::fraction)> {
        static constexpr facts about{.source = "extract.brewhouse_yield.mass over the grist's extract yield",
                                     .status = evidence::derived,
                                     .use = "any volume whose temperature is known",
                                     .accuracy = "exact but for the density; the volume read decides",
                                     .note = "the yield is the mean of the grist by mass, as-is. Extracts and sugars dissolve whole: "
                                             "subtract their extract first. Say which volume is meant: trub left behind is worth several "
                                             "per cent"};
        static constexpr input inputs[]{{"extract", only{0, below(100)}},
                                        {"volume", only{above(0), no_limit}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}},
                                        {"grist_mass", only{above(0), no_limit}},
                                        {"extract_yield", only{above(0), 1}}};
        static constexpr const char* holds_when =
            "there is more extract in this wort than the grist holds (an efficiency above 1). Check the volume, the reading and the "
            "grist, and whether sugar or malt extract was added";

        template <class T>
        static constexpr bool holds(T efficiency, T, T, T, T, T) {
            return efficiency <= 1.0;
        }
        template <class T>
        static constexpr T formula(T P, T V, T t, T m, T e) {
            return brewhouse_yield_models::mass::formula(P, V, t, m) / e;
        }
    } mass;

    // In gravity points: the trade's efficiency.
    struct points : model<struct points, unit::fraction(unit::gravity, unit::litres, unit::grams, unit::litre_degrees_per_kilogram)> {
        static constexpr facts about{.source = "definition of the potential",
                                     .status = evidence::derived,
                                     .use = "the trade's efficiency, comparable with recipes on paper",
                                     .accuracy = "the linear rule errs as extract.gravity_from_points does: 1 % near 20 degP",
                                     .note = "the potential is the mean of the grist by mass, on the gravity scale of the wort; the "
                                             "volume is cold. Extracts and sugars dissolve whole: subtract their points first"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}},
                                        {"volume", only{above(0), no_limit}},
                                        {"grist_mass", only{above(0), no_limit}},
                                        {"potential", only{above(0), no_limit}}};
        static constexpr const char* holds_when = mass::holds_when;

        template <class T>
        static constexpr bool holds(T efficiency, T, T, T, T) {
            return efficiency <= 1.0;
        }
        template <class T>
        static constexpr T formula(T S, T V, T m, T K) {
            return 1000.0 * (S - 1.0) * V / (m / 1000.0 * K);
        }
    } points;
};
inline constexpr family<&brewhouse_efficiency_models::mass> brewhouse_efficiency{};

}  // namespace wortmath::extract
