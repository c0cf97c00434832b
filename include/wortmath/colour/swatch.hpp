#pragma once

#include "wortmath/colour/srgb.hpp"
#include "wortmath/colour/tristimulus.hpp"

namespace wortmath::colour {

struct swatch_models {
    static constexpr const char* question = "What does a beer of this colour look like on a screen?";

    struct de_lange_d65 : model<struct de_lange_d65, screen_colour(unit::srm, unit::centimetres)> {
        static constexpr facts about{.source = "average beer spectrum of A. J. deLange under daylight D65, CIE 1931 observer, IEC 61966-2-1; 5 cm and daylight are "
                                               "the viewing conditions of the BJCP Color Guide",
                                     .status = evidence::derived,
                                     .accuracy = "real beers within 5 % in EBC differed by 4.5 to 17.4 Lab units (Koren et al., J. Food Sci. Technol. 57, 2020)",
                                     .note = "an average beer, not this beer; real glasses look lighter: no surface reflection, haze, foam or surround is in it; where "
                                             "outside_gamut is true (from 6 SRM in 5 cm, from 26 SRM in 1 cm) the screen cannot show the colour, and clipping has "
                                             "cost up to CIEDE2000 6.9 (11 SRM, 5 cm)"};
        static constexpr input inputs[]{{"srm", validated{0, 60}}, {"path_length", validated{0, 10}, otherwise{5.0}}};
        static constexpr bool nan_is_impossible = true;

        template <class T>
        static constexpr several<T, 4> formula(T srm, T path) {
            several<T, 3> v = tristimulus.table_5nm.formula(srm, path, word::illuminant::d65, word::observer::cie_1931, word::spectrum::de_lange_average);
            return srgb.iec.formula(v[0], v[1], v[2]);
        }
    } de_lange_d65;
};
inline constexpr family<&swatch_models::de_lange_d65> swatch{};

}  // namespace wortmath::colour
