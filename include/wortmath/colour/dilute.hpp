#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct dilute_models {
    static constexpr const char* question = "What colour has a beer or wort after its volume has changed by water, added or evaporated?";

    struct beer_law : model<struct beer_law, unit::srm(unit::srm, unit::litres, unit::litres)> {
        static constexpr facts about{.source = "law of Beer; filtered beers dilute linearly: Benning, Lowater, Bailey-Hartsel, MBAA Tech. Q. 60(3), 2023 (abstract)",
                                     .status = evidence::secondary,
                                     .accuracy = "exact for clear liquids; apparent curvature in dark beer is stray light in the instrument",
                                     .note = "a colour in EBC gives EBC; not for degrees Lovibond and visual EBC units; evaporation: volume_after is the smaller one, and "
                                             "the darkening of the boil is not in it"};
        static constexpr input inputs[]{{"colour"}, {"volume_before"}, {"volume_after", possible{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T colour, T volume_before, T volume_after) {
            return colour * volume_before / volume_after;
        }
    } beer_law;
};
inline constexpr family<&dilute_models::beer_law> dilute{};

}  // namespace wortmath::colour
