#pragma once

#include "wortmath/mash/malt_heat.hpp"
#include "wortmath/mash/slaking_rise.hpp"

namespace wortmath::mash {

struct initial_temperature_models {
    static constexpr const char* question = "What is the temperature of a mash just mixed?";

    struct pauls_whites : model<struct pauls_whites, unit::celsius(unit::litres_per_kilogram, unit::celsius, unit::celsius, unit::fraction)> {
        static constexpr facts about{.source = "heat balance with the malt heat and slaking rise of the Pauls and Whites Brewing Room Book 1984/85",
                                     .status = evidence::derived,
                                     .note =
                                         "the printed equation was not legible: its list of variables and the first law give this form. Litres count as "
                                         "kilograms, as in the book"};
        static constexpr input inputs[]{{"mash_ratio", validated{2.4, 2.9}, possible{above(0), no_limit}},
                                        {"grain_temperature", validated{0, 100}},
                                        {"liquor_temperature", validated{0, 100}},
                                        {"moisture", validated{0, 0.08}, possible{0, 0.20}, otherwise{0.04}}};

        template <class T>
        static constexpr T formula(T R, T Tg, T liquor, T moisture) {
            T S = let("S", malt_heat.pauls_whites.formula(moisture));
            return (S * Tg + R * liquor) / (S + R) + slaking_rise.pauls_whites.formula(moisture);
        }
    } pauls_whites;
};
inline constexpr family<&initial_temperature_models::pauls_whites> initial_temperature{};

}  // namespace wortmath::mash
