#pragma once

#include "wortmath/mash/strike.hpp"

namespace wortmath::mash {

struct infusion_models {
    static constexpr const char* question = "How much hot water takes the mash to its next rest?";

    // The full balance, in mass.
    struct enthalpy
        : model<struct enthalpy, unit::grams(unit::grams, unit::grams, unit::celsius, unit::celsius, unit::celsius, unit::ratio, unit::kilojoules_per_kelvin)> {
        static constexpr facts about{.source = "first law",
                                     .status = evidence::derived,
                                     .use = "water by mass, with or without the heat that the tun takes up",
                                     .note = "water measured hot by volume is 2 to 3 % lighter"};
        static constexpr input inputs[]{{"grist_mass"},
                                        {"mash_water_mass"},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"infusion_temperature", validated{0, 100}},
                                        {"malt_heat", validated{0.35, 0.45}, possible{above(0), no_limit}, otherwise{0.40}},
                                        {"tun_heat_capacity", otherwise{0.0}}};
        static constexpr const char* refusal = "the target must lie between the mash and the water: water cannot heat a mash beyond its own temperature";

        template <class T>
        static constexpr T formula(T G, T W, T T1, T T2, T Ti, T S, T C_tun) {
            T water = let("water", (S * G + W + 1000.0 * C_tun / thermal::heat_of_water) * (T2 - T1) / (Ti - T2));
            return select(least(T2 - T1, Ti - T2) > 0.0, water, undefined);
        }
    } enthalpy;

    // The home brewer's rule, in volume.
    struct palmer : model<struct palmer, unit::litres(unit::grams, unit::litres, unit::celsius, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "J. J. Palmer, How to Brew, chapter 16",
                                     .status = evidence::secondary,
                                     .use = "to repeat a recipe worked with the rule of 0.2 quart per pound",
                                     .accuracy = "the step example worked from these equations in a published brewing log gives 7.20 quarts, printed as 7",
                                     .note = "water measured hot by volume is 2 to 3 % lighter"};
        static constexpr input inputs[]{{"grist_mass"},
                                        {"mash_water_volume"},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"infusion_temperature", validated{0, 100}}};
        static constexpr const char* refusal = "the target must lie between the mash and the water: water cannot heat a mash beyond its own temperature";

        template <class T>
        static constexpr T formula(T G, T W, T T1, T T2, T Ti) {
            T water = let("water", (T2 - T1) * (palmer_malt_heat * (G / 1000.0) + W) / (Ti - T2));
            return select(least(T2 - T1, Ti - T2) > 0.0, water, undefined);
        }
    } palmer;
};
inline constexpr family<&infusion_models::enthalpy> infusion{};

}  // namespace wortmath::mash
