#pragma once

#include "wortmath/model.hpp"
#include "wortmath/thermal/constants.hpp"

namespace wortmath::thermal {

struct cooling_water_models {
    static constexpr const char* question = "How much cold water brings a wort to a temperature?";

    // Water poured into the wort, which it also dilutes.
    struct constant_heat : model<struct constant_heat, unit::grams(unit::grams, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::celsius,
                                                                   unit::celsius, unit::kilojoules_per_kilogram_kelvin)> {
        static constexpr facts about{.source = "first law with one specific heat for wort and one for water",
                                     .status = evidence::derived,
                                     .note = "the water also dilutes: where gravity and temperature both matter, solve for both at once"};
        static constexpr input inputs[]{{"mass"},
                                        {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"water_temperature", validated{0, 100}},
                                        {"water_specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}, otherwise{heat_of_water}}};
        static constexpr const char* refusal = "the target must lie between the water and the wort: water cannot cool below its own temperature";

        template <class T>
        static constexpr T formula(T M, T c, T t, T T1, T Tw, T cw) {
            T water = let("water", M * c * (t - T1) / (cw * (T1 - Tw)));
            return select(least(t - T1, T1 - Tw) > 0.0, water, undefined);
        }
    } constant_heat;
};
inline constexpr family<&cooling_water_models::constant_heat> cooling_water{};

}  // namespace wortmath::thermal
