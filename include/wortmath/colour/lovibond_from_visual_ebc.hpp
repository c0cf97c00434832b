#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct lovibond_from_visual_ebc_models {
    static constexpr const char* question = "What is a malt colour in the visual EBC units used before 1991 in degrees Lovibond?";

    struct siebel : model<struct siebel, unit::lovibond(unit::visual_ebc)> {
        static constexpr facts about{.source = "conversion attributed to the Siebel Institute, met on malt labels",
                                     .status = evidence::secondary,
                                     .use = "malt labels",
                                     .note = "a third rounding, 0.375 with 0.46, is a slip; some brewers find that roasts above 500 SRM follow it while grains "
                                             "below 90 SRM follow the 430 nm scale"};
        static constexpr input inputs[]{{"visual_ebc"}};

        template <class T>
        static constexpr T formula(T E) {
            return 0.375 * E + 0.56;
        }
    } siebel;

    // The exact inverse of the line that gives visual EBC units.
    struct fix : model<struct fix, unit::lovibond(unit::visual_ebc)> {
        static constexpr facts about{.source = "G. Fix, Home Brew Digest 1328, 1994, as summarised in a newsgroup FAQ; also quoted from G. Noonan",
                                     .status = evidence::secondary,
                                     .use = "pale wort, below 4 SRM; goes there and back with visual_ebc_from_lovibond.fix",
                                     .note = "9.4 visual EBC units are 4 degL; the quotation from Noonan has no limit"};
        static constexpr input inputs[]{{"visual_ebc", validated{0, 9.4}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T E) {
            return (E + 1.2) / 2.65;
        }
    } fix;

    struct fix_printed : model<struct fix_printed, unit::lovibond(unit::visual_ebc)> {
        static constexpr facts about{.source = "G. Fix, Home Brew Digest 1328, 1994, as summarised in a newsgroup FAQ; also quoted from G. Noonan",
                                     .status = evidence::secondary,
                                     .use = "to repeat printed results",
                                     .accuracy = "does not go there and back: 0.012 visual EBC units low at 5, 0.10 low at 100"};
        static constexpr input inputs[]{{"visual_ebc", validated{0, 9.4}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T E) {
            return 0.377 * E + 0.45;
        }
    } fix_printed;
};
inline constexpr family<&lovibond_from_visual_ebc_models::siebel> lovibond_from_visual_ebc{};

}  // namespace wortmath::colour
