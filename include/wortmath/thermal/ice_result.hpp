#pragma once

#include "wortmath/model.hpp"
#include "wortmath/thermal/constants.hpp"

namespace wortmath::thermal {

struct ice_result_models {
    static constexpr const char* question = "How cold does a wort become with a given mass of ice?";

    struct cooled {
        unit::celsius temperature;
        unit::grams remaining_ice_mass;
        static constexpr const char* names[]{"temperature", "remaining_ice_mass"};
    };

    // Ice that does not melt stays behind at 0 degC.
    struct enthalpy : model<struct enthalpy, cooled(unit::grams, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::grams, unit::celsius)> {
        static constexpr facts about{.source = "first law with the heats of ice and water of IAPWS-06",
                                     .status = evidence::derived,
                                     .note = "not a number where the wort cannot even warm the ice to 0 degC"};
        static constexpr input inputs[]{{"mass", only{above(0), no_limit}},
                                        {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},
                                        {"ice_mass"},
                                        {"ice_temperature", validated{-30, 0}, possible{-273.15, 0}, otherwise{0.0}}};

        template <class T>
        static constexpr several<T, 2> formula(T mass, T c, T t, T ice, T T_ice) {
            T M = mass / 1000.0, m = ice / 1000.0;
            T T1 = let("T1", (M * c * t - m * (heat_of_fusion - heat_of_ice * T_ice)) / (M * c + heat_of_water * m));
            T melted = let("melted", (M * c * t + heat_of_ice * T_ice * m) / heat_of_fusion);
            T zero = select(melted >= 0.0, T(0.0), T(undefined));  // ice that stays holds the wort at 0 degC
            return {{select(T1 >= 0.0, T1, zero), select(T1 >= 0.0, T(0.0), zero + 1000.0 * (m - melted))}};
        }
    } enthalpy;
};
inline constexpr family<&ice_result_models::enthalpy> ice_result{};

}  // namespace wortmath::thermal
