#pragma once

#include "wortmath/extract/concentration.hpp"
#include "wortmath/extract/volume_ratio.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct brewhouse_yield_models {
    static constexpr const char* question = "What share of the grist's weight is extract in the wort?";

    // Extract in the wort over the grist, both in kilograms.
    struct mass : model<struct mass, unit::fraction(unit::plato, unit::litres, unit::celsius, unit::grams)> {
        static constexpr facts about{.source = "mass balance; density extract.density.icumsa",
                                     .status = evidence::derived,
                                     .use = "any volume whose temperature is known",
                                     .accuracy = "exact but for the density; the volume read decides",
                                     .note = "say which volume is meant: trub left in the kettle is worth several per cent. A yield above "
                                             "the grist's own extract is wrong too, even below 1"};
        static constexpr input inputs[]{{"extract", only{0, below(100)}},
                                        {"volume", only{above(0), no_limit}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}},
                                        {"grist_mass", only{above(0), no_limit}}};
        static constexpr const char* holds_when =
            "there is more extract in this wort than the whole grist weighs (a yield above 1). Check the volume, the reading and the grist";

        template <class T>
        static constexpr bool holds(T yield, T, T, T, T) {
            return yield <= 1.0;
        }
        template <class T>
        static constexpr T formula(T P, T V, T t, T m) {
            return concentration_models::icumsa::formula(P / 100.0, t) * V / m;
        }
    } mass;

    // The volume is read in the boiling kettle.
    struct kunze : model<struct kunze, unit::fraction(unit::plato, unit::gravity_20_20, unit::litres, unit::grams)> {
        static constexpr facts about{.source = "W. Kunze, Technologie fuer Brauer und Maelzer (quoted)",
                                     .status = evidence::secondary,
                                     .use = "to repeat a brewhouse sheet: boiling volume, cold sample",
                                     .accuracy = "0.96 lumps liquid, vessel and trub; see extract.volume_ratio",
                                     .note = "the quoted form does not name the gravity scale; extract and gravity are of the same cold "
                                             "sample"};
        static constexpr input inputs[]{{"extract", only{0, below(100)}},
                                        {"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}},
                                        {"hot_volume", only{above(0), no_limit}},
                                        {"grist_mass", only{above(0), no_limit}}};
        static constexpr const char* holds_when = mass::holds_when;

        template <class T>
        static constexpr bool holds(T yield, T, T, T, T) {
            return yield <= 1.0;
        }
        template <class T>
        static constexpr T formula(T P, T S, T V_hot, T m) {
            return P / 100.0 * S * volume_ratio_models::kunze::formula<T>() * V_hot / (m / 1000.0);
        }
    } kunze;
};
inline constexpr family<&brewhouse_yield_models::mass> brewhouse_yield{};

}  // namespace wortmath::extract
