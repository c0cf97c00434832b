#pragma once

#include "wortmath/gravity/words.hpp"
#include "wortmath/water/density.hpp"

namespace wortmath::gravity {

struct from_density_models {
    static constexpr const char* question = "Which specific gravity belongs to a density?";

    // For a density meter, or a hydrometer in g/mL: such a reading is a density and no gravity.
    struct definition : model<struct definition, unit::gravity(unit::density, unit::celsius, unit::density)> {
        static constexpr facts about{.source = "definition of the specific gravity; water of Bettin and Spieweck 1990",
                                     .status = evidence::derived,
                                     .use =
                                         "any gravity scale: give the density at the liquid temperature of the scale, the temperature of its "
                                         "water, and air 0 for a scale in vacuum",
                                     .accuracy = "exact by definition",
                                     .note = "the other water formulas shift the answer by up to 6e-6"};
        static constexpr input inputs[]{{"density", only{950, 1500}},
                                        {"water_temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}},
                                        {"air_density", only{0, 2}, otherwise{conventional_air}}};
        static constexpr const char* holds_when = "the specific gravity would not lie between 0.990 and 1.35; the policy \"extrapolate\" computes it unvouched";

        template <class T>
        static constexpr T formula(T rho, T t_w, T a) {
            return (rho - a) / (water::density.ptb_1990.formula(t_w) - a);
        }
        template <class T>
        static constexpr bool holds(T S, T, T, T) {
            return S > 0.990 - 1e-12 && S < 1.35 + 1e-12;
        }
    } definition;
};
inline constexpr family<&from_density_models::definition> from_density{};

}  // namespace wortmath::gravity
