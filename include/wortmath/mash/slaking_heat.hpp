#pragma once

#include "wortmath/mash/malt_heat.hpp"
#include "wortmath/mash/slaking_rise.hpp"
#include "wortmath/thermal/constants.hpp"

namespace wortmath::mash {

struct slaking_heat_models {
    static constexpr const char* question = "How much heat does a kilogram of malt release when it is wetted?";

    // The tabled rise as an energy, so that it serves at any mash thickness.
    struct pauls_whites : model<struct pauls_whites, unit::kilojoules_per_kilogram(unit::fraction)> {
        static constexpr facts about{
            .source = "the rise and the malt heat of the Pauls and Whites table, at the book's 2.5 barrels per quarter",
            .status = evidence::derived,
            .note =
                "2.5 barrels per quarter are 36 imperial gallons x 2.5 to 336 lb, or 2.685 L/kg, and not a mass ratio of 2.5, which would cost 0.6 degF; "
                "assumes that the printed correction was meant for that mash"};
        static constexpr input inputs[]{{"moisture", validated{0, 0.08}, possible{0, 0.20}}};

        template <class T>
        static constexpr T formula(T moisture) {
            T heat = let("heat", malt_heat.pauls_whites.formula(moisture));
            T rise = let("rise", slaking_rise.pauls_whites.formula(moisture));
            return thermal::heat_of_water * (heat + 2.685) * rise;
        }
    } pauls_whites;
};
inline constexpr family<&slaking_heat_models::pauls_whites> slaking_heat{};

}  // namespace wortmath::mash
