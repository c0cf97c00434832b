#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::colour {

struct mcu_from_load_models {
    static constexpr const char* question = "How many malt colour units (degL lb per US gallon) are a load in degL kg per litre?";

    struct exact : model<struct exact, unit::mcu(unit::colour_load)> {
        static constexpr facts about{.source = "definitions of the pound and the US gallon",
                                     .status = evidence::derived,
                                     .accuracy = "exact: 8.345404452... MCU per degL kg/L",
                                     .note = "the imperial gallon would make MCU 20 % wrong; a load in EBC kg/L, with SRM taken as degL, has to be "
                                             "multiplied by 0.508 first"};
        static constexpr input inputs[]{{"colour_load"}};

        template <class T>
        static constexpr T formula(T colour_load) {
            return colour_load * (constants::l_per_us_gal / (constants::g_per_lb / 1000.0));
        }
    } exact;
};
inline constexpr family<&mcu_from_load_models::exact> mcu_from_load{};

}  // namespace wortmath::colour
