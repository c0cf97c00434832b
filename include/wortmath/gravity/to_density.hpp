#pragma once

#include "wortmath/gravity/words.hpp"
#include "wortmath/water/density.hpp"

namespace wortmath::gravity {

struct to_density_models {
    static constexpr const char* question = "What density does a specific gravity stand for?";

    // The density is that of the liquid at the temperature its scale prescribes for it, in vacuum.
    struct definition : model<struct definition, unit::density(unit::gravity, unit::celsius, unit::density)> {
        static constexpr facts about{.source = "definition of the specific gravity; water of Bettin and Spieweck 1990",
                                     .status = evidence::derived,
                                     .use = "any gravity scale: say the temperature of its water, and air 0 for a scale in vacuum",
                                     .accuracy = "exact by definition",
                                     .note =
                                         "the other water formulas shift the answer by up to 6e-6; a column headed kg/m3 that is 1000 times "
                                         "SG 20/20 is 0.18 % high"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}},
                                        {"water_temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}},
                                        {"air_density", only{0, 2}, otherwise{conventional_air}}};

        template <class T>
        static constexpr T formula(T S, T t_w, T a) {
            return a + S * (water::density.ptb_1990.formula(t_w) - a);
        }
    } definition;
};
inline constexpr family<&to_density_models::definition> to_density{};

}  // namespace wortmath::gravity
