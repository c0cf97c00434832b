#pragma once

#include "wortmath/bitterness/kettle_cooling.hpp"

namespace wortmath::bitterness {

struct kettle_cooling_time_models {
    static constexpr const char* question = "How many minutes after the heat is off does the wort reach a temperature?";

    struct hosom : model<struct hosom, unit::minutes(unit::celsius, unit::square_centimetres, unit::square_centimetres, unit::litres)> {
        static constexpr facts about{.source = "J.-P. Hosom, Predicting Wort Temperature After Flameout, author's own article",
                                     .status = evidence::primary,
                                     .use = "an open homebrew kettle without a chiller; where the curve starts at altitude",
                                     .accuracy = "the exact inverse of kettle_cooling.hosom",
                                     .note = "no time leads to 46.40 degC or below: that is where the fitted curve ends, not the temperature of the room"};
        static constexpr input inputs[]{
            {"temperature", validated{detail::cooling_fit_ends, detail::cooling_floor + detail::cooling_rise - constants::zero_celsius},
             possible{above(detail::cooling_floor - constants::zero_celsius), detail::cooling_floor + detail::cooling_rise - constants::zero_celsius}},
            {"surface_area", detail::amount},
            {"opening_area", detail::amount},
            {"volume", detail::homebrew_volume, detail::some}};

        template <class T>
        static constexpr T formula(T temperature, T surface_area, T opening_area, T volume) {
            T above_floor = temperature + constants::zero_celsius - detail::cooling_floor;
            return log(detail::cooling_rise / above_floor) / detail::cooling_rate(surface_area, opening_area, volume);
        }
    } hosom;
};
inline constexpr family<&kettle_cooling_time_models::hosom> kettle_cooling_time{};

}  // namespace wortmath::bitterness
