#pragma once

#include "wortmath/model.hpp"

namespace wortmath::hydrometer {

struct calibrate_models {
    static constexpr const char* question = "What does a hydrometer reading become when the instrument's own error is taken off?";

    // Right near 1.000 only, which is where a final gravity is read.
    struct offset : model<struct offset, unit::gravity(unit::gravity, unit::gravity)> {
        static constexpr facts about{.source = "this project's own derivation: the error in water is taken off everywhere",
                                     .status = evidence::derived,
                                     .use = "when water is the only known liquid at hand",
                                     .note =
                                         "read at the calibration temperature, or apply hydrometer.correct to every reading first; water must read 1.000 on "
                                         "scales whose liquid and water temperatures are equal"};
        static constexpr input inputs[]{{"gravity", only{0.980, 1.20}}, {"water_reading", only{0.980, 1.20}}};

        template <class T>
        static constexpr T formula(T S, T water) {
            return S - (water - 1.0);
        }
    } offset;

    // A straight line through two known liquids.
    struct two_point : model<struct two_point, unit::gravity(unit::gravity, unit::gravity, unit::gravity, unit::gravity, unit::gravity)> {
        static constexpr facts about{.source = "this project's own derivation: a straight line between readings in two known liquids",
                                     .status = evidence::derived,
                                     .use = "water, and sucrose weighed into water: 100 g and 900 g make 10 degP, 1.0400 on the scale 20/20",
                                     .note =
                                         "read at the calibration temperature, or apply hydrometer.correct to every reading first; the known gravities "
                                         "must be on the instrument's own scale"};
        static constexpr input inputs[]{{"gravity", only{0.980, 1.20}},
                                        {"low_reading", only{0.980, 1.20}},
                                        {"low_gravity", validated{0.990, 1.35}, possible{0.95, 1.50}},
                                        {"high_reading", only{0.980, 1.20}},
                                        {"high_gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};
        static constexpr const char* refusal = "the high reading must lie at least 0.020 above the low reading: take a stronger second liquid";

        template <class T>
        static constexpr T formula(T S, T low_reading, T low, T high_reading, T high) {
            T span = high_reading - low_reading;
            return select(span >= 0.02 - 1e-12, low + (S - low_reading) * (high - low) / span, undefined);
        }
    } two_point;
};
inline constexpr family<&calibrate_models::offset> calibrate{};

}  // namespace wortmath::hydrometer
