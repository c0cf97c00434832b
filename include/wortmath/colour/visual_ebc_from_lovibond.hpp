#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct visual_ebc_from_lovibond_models {
    static constexpr const char* question = "What is a malt colour in degrees Lovibond in the visual EBC units used before 1991?";

    struct siebel : model<struct siebel, unit::visual_ebc(unit::lovibond)> {
        static constexpr facts about{.source = "conversion attributed to the Siebel Institute, met on malt labels",
                                     .status = evidence::secondary,
                                     .use = "malt labels",
                                     .note = "0 below 0.56 degL; a third rounding, 0.375 with 0.46, is a slip; some brewers find that roasts above 500 SRM follow "
                                             "it while grains below 90 SRM follow the 430 nm scale"};
        static constexpr input inputs[]{{"lovibond"}};

        template <class T>
        static constexpr T formula(T L) {
            return most(T(0.0), (L - 0.56) / 0.375);
        }
    } siebel;

    struct fix : model<struct fix, unit::visual_ebc(unit::lovibond)> {
        static constexpr facts about{.source = "G. Fix, Home Brew Digest 1328, 1994, as summarised in a newsgroup FAQ; also quoted from G. Noonan",
                                     .status = evidence::secondary,
                                     .use = "pale wort, below 4 SRM",
                                     .note = "0 below 0.453 degL; the quotation from Noonan has no limit"};
        static constexpr input inputs[]{{"lovibond", validated{0, 4}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T L) {
            return most(T(0.0), 2.65 * L - 1.2);
        }
    } fix;
};
inline constexpr family<&visual_ebc_from_lovibond_models::siebel> visual_ebc_from_lovibond{};

}  // namespace wortmath::colour
