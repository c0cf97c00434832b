#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct co2_released_models {
    static constexpr const char* question = "How much carbon dioxide went off for each gram of beer?";

    struct balling : model<struct balling, unit::mass_share(unit::alcohol_by_mass)> {
        static constexpr facts about{
            .source = "C. J. N. Balling's mass balance: 2.0665 g extract = 1 g alcohol + 0.9565 g CO2 + 0.11 g dry yeast",
            .status = evidence::secondary,
            .use = "the gas of a whole fermentation, per gram of beer; what stays dissolved is part of it",
            .note = "a copy that prints 0.9695 for the CO2 does not close the balance. 100 g of beer came from 100 + 1.0665 A g of wort",
            .danger =
                "the gas gathers low and can suffocate: 100 L of beer of 12 degP give off about 3.6 kg, near 2 m3. Air the room, and follow the local rules "
                "for such work places. Nothing is extrapolated"};
        static constexpr input inputs[]{{"alcohol_by_mass"}};

        template <class T>
        static constexpr T formula(T alcohol) {
            return 0.009565 * alcohol;
        }
    } balling;
};
inline constexpr family<&co2_released_models::balling> co2_released{};

}  // namespace wortmath::attenuation
