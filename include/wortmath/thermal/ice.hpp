#pragma once

#include "wortmath/model.hpp"
#include "wortmath/thermal/constants.hpp"

namespace wortmath::thermal {

struct ice_models {
    static constexpr const char* question = "How much ice cools a wort to a temperature?";

    // Ice added to the wort, all of it melted in the end.
    struct enthalpy : model<struct enthalpy, unit::grams(unit::grams, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "first law with the heats of ice and water of IAPWS-06",
                                     .status = evidence::derived,
                                     .note = "ice counts as top-up water by mass, not by volume; it must be clean: boiled, then frozen"};
        static constexpr input inputs[]{{"mass"},
                                        {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}, possible{0, 130}},
                                        {"ice_temperature", validated{-30, 0}, possible{-273.15, 0}, otherwise{0.0}}};
        static constexpr const char* refusal = "the target lies above the temperature of the wort: ice does not heat";

        template <class T>
        static constexpr T formula(T M, T c, T t, T T1, T T_ice) {
            T ice = let("ice", M * c * (t - T1) / (heat_of_fusion - heat_of_ice * T_ice + heat_of_water * T1));
            return select(T1 <= t, ice, undefined);
        }
    } enthalpy;
};
inline constexpr family<&ice_models::enthalpy> ice{};

}  // namespace wortmath::thermal
