#pragma once

#include "wortmath/colour/srgb_encode.hpp"
#include "wortmath/colour/srgb_linear.hpp"
#include "wortmath/colour/words.hpp"

namespace wortmath::colour {

struct srgb_models {
    static constexpr const char* question = "Which red, green and blue, from 0 to 255, show these tristimulus values on a screen?";

    struct iec : model<struct iec, screen_colour(unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "IEC 61966-2-1:1999 and its amendment 1",
                                     .status = evidence::secondary,
                                     .accuracy = "1 in each channel: legitimate matrices differ by that much",
                                     .note = "the input belongs to illuminant D65 with y = 1 for white: values of illuminant C come out up to 10 of 255 wrong, with a "
                                             "blue cast; where outside_gamut is true the screen cannot show the colour, and clipping has cost up to CIEDE2000 6.9"};
        static constexpr input inputs[]{{"x"}, {"y"}, {"z"}};
        static constexpr bool nan_is_impossible = true;

        template <class T>
        static constexpr several<T, 4> formula(T x, T y, T z) {
            several<T, 3> u = srgb_linear.seven_decimal.formula(x, y, z);
            auto const channel = [](T light) -> T { return floor(255.0 * srgb_encode.iec.formula(light) + 0.5); };
            T lowest = least(u[0], least(u[1], u[2])), highest = most(u[0], most(u[1], u[2]));
            T outside = select(lowest < -1e-4, T(1.0), select(highest > 1.0 + 1e-4, T(1.0), T(0.0)));
            return {{channel(u[0]), channel(u[1]), channel(u[2]), outside}};
        }
    } iec;
};
inline constexpr family<&srgb_models::iec> srgb{};

}  // namespace wortmath::colour
