#pragma once

#include "wortmath/model.hpp"

namespace wortmath::mash {

struct decoction_models {
    static constexpr const char* question = "How much of the mash must be boiled to reach the next rest?";

    // A decoction as thick as the mash; the same formula holds for volumes.
    struct equal_heat : model<struct equal_heat, unit::grams(unit::grams, unit::celsius, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "brewing course sheets",
                                     .status = evidence::secondary,
                                     .use = "a decoction as thick as the mash it is taken from",
                                     .note =
                                         "`temperature` is that of the rest when the decoction returns; evaporation during its boil is not in it. The "
                                         "boiling temperature is the local one"};
        static constexpr input inputs[]{{"mash_mass"},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"boiling_temperature", validated{80, 120}, otherwise{100.0}}};
        static constexpr const char* refusal = "the target must lie between the rest and the boil: a decoction cannot heat beyond its own temperature";

        template <class T>
        static constexpr T formula(T M, T T1, T T2, T Tb) {
            T share = let("share", (T2 - T1) / (Tb - T1));
            return select(Tb > T1, select(least(share, 1.0 - share) >= 0.0, M * share, undefined), undefined);
        }
    } equal_heat;

    // A thick decoction carries less heat per kilogram than the mash.
    struct heat_capacity : model<struct heat_capacity,
                                 unit::grams(unit::kilojoules_per_kelvin, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "first law with the heat capacity of mash and tun and the specific heat of the decoction",
                                     .status = evidence::derived,
                                     .use = "a decoction thicker or thinner than the mash, or a tun that takes up heat",
                                     .note =
                                         "`temperature` is that of the rest when the decoction returns; evaporation during its boil is not in it. The "
                                         "boiling temperature is the local one"};
        static constexpr input inputs[]{{"mash_heat_capacity"},
                                        {"decoction_specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"boiling_temperature", validated{80, 120}, otherwise{100.0}}};
        static constexpr const char* refusal = "the target must lie between the rest and the boil: a decoction cannot heat beyond its own temperature";

        template <class T>
        static constexpr T formula(T C, T c, T Tr, T T2, T Tb) {
            T share = let("share", (T2 - Tr) / (Tb - Tr));
            return select(Tb > Tr, select(least(share, 1.0 - share) >= 0.0, 1000.0 * (C / c * share), undefined), undefined);
        }
    } heat_capacity;
};
inline constexpr family<&decoction_models::equal_heat> decoction{};

}  // namespace wortmath::mash
