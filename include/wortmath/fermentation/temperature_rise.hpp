#pragma once

#include "wortmath/model.hpp"

namespace wortmath::fermentation {

struct temperature_rise_models {
    static constexpr const char* question = "How much would the beer warm up if nothing cooled it?";

    // An upper bound: no heat leaves.
    struct adiabatic : model<struct adiabatic, unit::kelvins(unit::extract_drop, unit::kilojoules_per_kilogram, unit::kilojoules_per_kilogram_kelvin)> {
        static constexpr facts about{.source = "heat balance of the fermenter with the heat of fermentation of fermentation.heat.per_extract",
                                     .status = evidence::derived,
                                     .accuracy = "10 %, that of the heat of fermentation",
                                     .note =
                                         "the drop is of real extract: the apparent drop overstates the rise by about 23 %. A wort of 12 degP that loses "
                                         "8 degP of real extract would warm by 12 K"};
        static constexpr input inputs[]{{"extract_drop", validated{0, 60}},
                                        {"heat_of_fermentation", only{0, no_limit}, otherwise{600.0}},
                                        {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}, otherwise{4.0}}};

        template <class T>
        static constexpr T formula(T drop, T h, T c) {
            return drop / 100.0 * h / c;
        }
    } adiabatic;
};
inline constexpr family<&temperature_rise_models::adiabatic> temperature_rise{};

}  // namespace wortmath::fermentation
