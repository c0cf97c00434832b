#pragma once

#include "wortmath/gravity/words.hpp"
#include "wortmath/water/density.hpp"

namespace wortmath::gravity {

struct apparent_from_true_models {
    static constexpr const char* question = "What would a gravity in vacuum be, weighed in air?";

    // Liquid and water temperature stay; only the buoyancy of air is added. In C++ the answer's scale has to be named anew.
    struct buoyancy : model<struct buoyancy, unit::converted_gravity(unit::gravity, unit::celsius, unit::density)> {
        static constexpr facts about{.source = "this project's own derivation: both weighings lose the weight of the air displaced",
                                     .status = evidence::derived,
                                     .use = "within one pair of temperatures; gravity.convert goes from scale to scale",
                                     .accuracy = "exact by definition",
                                     .note = "at 20 degC the apparent excess over water is 1.001204 times the true one"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}},
                                        {"water_temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}},
                                        {"air_density", only{0, 2}, otherwise{conventional_air}}};

        template <class T>
        static constexpr T formula(T S, T t_w, T a) {
            return 1.0 + (S - 1.0) / (1.0 - a / water::density.ptb_1990.formula(t_w));
        }
    } buoyancy;
};
inline constexpr family<&apparent_from_true_models::buoyancy> apparent_from_true{};

}  // namespace wortmath::gravity
