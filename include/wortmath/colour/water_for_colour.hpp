#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct water_for_colour_models {
    static constexpr const char* question = "How much water brings a beer down to a paler colour?";

    struct beer_law : model<struct beer_law, unit::litres(unit::srm, unit::srm, unit::litres)> {
        static constexpr facts about{.source = "law of Beer; filtered beers dilute linearly: Benning, Lowater, Bailey-Hartsel, MBAA Tech. Q. 60(3), 2023 (abstract)",
                                     .status = evidence::secondary,
                                     .accuracy = "exact for clear liquids",
                                     .note = "both colours in EBC are as good; water added to beer must be potable and is limited by local law and excise rules"};
        static constexpr input inputs[]{{"colour"}, {"target_colour", possible{above(0), no_limit}}, {"volume", possible{above(0), no_limit}}};
        static constexpr const char* refusal = "water only makes a beer paler: the target colour lies above the colour of the beer; ask for a target at or below it";

        template <class T>
        static constexpr T formula(T colour, T target, T volume) {
            return select(target <= colour, volume * (colour - target) / target, T(undefined));
        }
    } beer_law;
};
inline constexpr family<&water_for_colour_models::beer_law> water_for_colour{};

}  // namespace wortmath::colour
