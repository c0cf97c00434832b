#pragma once

#include "wortmath/thermal/immersion_chiller.hpp"

namespace wortmath::thermal {

struct immersion_time_models {
    static constexpr const char* question = "How long does a cooling coil take to bring the wort to a temperature?";

    // The balance of thermal.immersion_chiller, solved for the time.
    struct lumped : model<struct lumped, unit::minutes(unit::grams, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::celsius, unit::grams_per_hour,
                                                       unit::celsius, unit::kilowatts_per_kelvin)> {
        static constexpr facts about{.source = "heat balance of stirred wort and coil, the coil as an exchanger in a stirred bath",
                                     .status = evidence::derived,
                                     .note = "still wort cools several times slower. A tap that runs 5 L/min gives 300 000 g/h"};
        static constexpr input inputs[]{{"mass", only{above(0), no_limit}},       {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},       {"target_temperature", validated{0, 100}},
                                        {"water_flow", only{above(0), no_limit}}, {"water_temperature", validated{0, 100}},
                                        {"ua", only{above(0), no_limit}}};
        static constexpr const char* refusal =
            "the target must lie above the cooling water and not above the wort: a coil cannot cool below the temperature of its water";

        template <class T>
        static constexpr T formula(T M, T c, T T0, T T1, T flow, T Tw, T UA) {
            T seconds = let("seconds", log((T0 - Tw) / (T1 - Tw)) / detail::coil_rate(M, c, flow, UA));
            return select(T1 > Tw, select(T1 <= T0, seconds / 60.0, undefined), undefined);
        }
    } lumped;
};
inline constexpr family<&immersion_time_models::lumped> immersion_time{};

}  // namespace wortmath::thermal
