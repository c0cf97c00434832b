#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::colour {

struct malt_mass_models {
    static constexpr const char* question = "How much of one malt brings a load of malt colour?";

    struct mcu : model<struct mcu, unit::grams(unit::mcu, unit::lovibond, unit::litres)> {
        static constexpr facts about{.source = "definition of the malt colour unit",
                                     .status = evidence::derived,
                                     .use = "after mcu_for_colour",
                                     .note = "for 100 % extraction, as in grist_load"};
        static constexpr input inputs[]{{"mcu"}, {"lovibond", possible{above(0), no_limit}}, {"volume", possible{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T mcu, T lovibond, T volume) {
            return constants::g_per_lb * mcu * (volume / constants::l_per_us_gal) / lovibond;
        }
    } mcu;

    struct si : model<struct si, unit::grams(unit::colour_load, unit::lovibond, unit::litres)> {
        static constexpr facts about{.source = "definition: colour times kilograms, per litre",
                                     .status = evidence::derived,
                                     .use = "metric work",
                                     .note = "for 100 % extraction, as in grist_load; load and malt on the same scale"};
        static constexpr input inputs[]{{"colour_load"}, {"lovibond", possible{above(0), no_limit}}, {"volume", possible{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T colour_load, T lovibond, T volume) {
            return 1000.0 * colour_load * volume / lovibond;
        }
    } si;
};
inline constexpr family<&malt_mass_models::mcu> malt_mass{};

}  // namespace wortmath::colour
