#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer {

struct two_instrument_original_gravity_models {
    static constexpr const char* question = "What was the original gravity of a beer of unknown history, from refractometer and hydrometer together?";

    // Raw readings, no wort factor.
    struct woodland : model<struct woodland, unit::gravity_20_20(unit::raw_brix, unit::gravity_20_20)> {
        static constexpr facts about{.source = "Woodland, author's article, February 2013",
                                     .status = evidence::primary,
                                     .use = "raw readings, not divided by a wort factor; two_instrument_original_extract.additive is the safer way",
                                     .accuracy = "to additive with a factor of 1: mean -0.75, worst 4.2 points (20 degP)",
                                     .note = "its author went through 231.61 (SG - 0.9977) degP, which is 0.5 off at a gravity of 1"};
        static constexpr input inputs[]{{"current_brix", only{-5, 85}}, {"gravity"}};

        template <class T>
        static constexpr T formula(T current_brix, T gravity) {
            return -1.728 * gravity + 0.01085 * current_brix + 2.728;
        }
    } woodland;
};
inline constexpr family<&two_instrument_original_gravity_models::woodland> two_instrument_original_gravity{};

}  // namespace wortmath::refractometer
