#pragma once

#include "wortmath/colour/chroma_hue.hpp"
#include "wortmath/model.hpp"

namespace wortmath::colour {

struct difference_models {
    static constexpr const char* question = "How different do two colours look: would anyone see it?";

    struct ciede2000 : model<struct ciede2000, unit::ratio(unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30(1):21-30, 2005",
                                     .status = evidence::secondary,
                                     .use = "small differences; about 1 is just noticeable",
                                     .accuracy = "the 34 published pairs within 4.95e-5",
                                     .note = "both colours against the same white; where hues lie 180 degrees apart one rounding of the arc tangent moves the result "
                                             "(published pair 14: 4.8045 or 4.7461)"};
        static constexpr input inputs[]{{"l1"}, {"a1"}, {"b1"}, {"l2"}, {"a2"}, {"b2"}};

        template <class T>
        static constexpr T formula(T l1, T a1, T b1, T l2, T a2, T b2) {
            auto const length = [](T x, T y) -> T { return sqrt(square(x) + square(y)); };
            auto const grey = [](T chroma) -> T {  // sqrt(C^7/(C^7 + 25^7))
                T c7 = cube(square(chroma)) * chroma;
                return sqrt(c7 / (c7 + 6103515625.0));
            };
            auto const radians = [](T degrees) -> T { return degrees / detail::degrees_per_radian; };

            T G = let("G", 0.5 * (1.0 - grey((length(a1, b1) + length(a2, b2)) / 2.0)));
            T a1s = (1.0 + G) * a1, a2s = (1.0 + G) * a2;
            T C1 = let("C1'", length(a1s, b1)), C2 = let("C2'", length(a2s, b2));
            T h1 = let("h1'", detail::hue_angle(a1s, b1)), h2 = let("h2'", detail::hue_angle(a2s, b2));

            T CC = C1 * C2, turn = h2 - h1, sum = h1 + h2;
            T dh = let("dh", select(CC <= 0.0, T(0.0), select(turn > 180.0, turn - 360.0, select(turn < -180.0, turn + 360.0, turn))));
            T dL = l2 - l1, dC = C2 - C1, dH = let("dH", 2.0 * sqrt(CC) * sin(radians(dh / 2.0)));

            T Lm = (l1 + l2) / 2.0, Cm = (C1 + C2) / 2.0;
            T hm = let("hm", select(CC <= 0.0, sum, select(fabs(turn) <= 180.0, sum / 2.0, select(sum < 360.0, (sum + 360.0) / 2.0, (sum - 360.0) / 2.0))));
            T t = let("T", 1.0 - 0.17 * cos(radians(hm - 30.0)) + 0.24 * cos(radians(2.0 * hm)) + 0.32 * cos(radians(3.0 * hm + 6.0)) -
                               0.20 * cos(radians(4.0 * hm - 63.0)));
            T SL = let("SL", 1.0 + 0.015 * square(Lm - 50.0) / sqrt(20.0 + square(Lm - 50.0)));
            T SC = let("SC", 1.0 + 0.045 * Cm), SH = let("SH", 1.0 + 0.015 * Cm * t);
            T RT = let("RT", -sin(radians(60.0 * exp(-square((hm - 275.0) / 25.0)))) * 2.0 * grey(Cm));
            return sqrt(square(dL / SL) + square(dC / SC) + square(dH / SH) + RT * (dC / SC) * (dH / SH));
        }
    } ciede2000;

    // The straight distance.
    struct cie76 : model<struct cie76, unit::ratio(unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "CIE 15:2004",
                                     .status = evidence::secondary,
                                     .use = "to compare with older work; about 2.3 is just noticeable (Mahy 1994)",
                                     .note = "both colours against the same white"};
        static constexpr input inputs[]{{"l1"}, {"a1"}, {"b1"}, {"l2"}, {"a2"}, {"b2"}};

        template <class T>
        static constexpr T formula(T l1, T a1, T b1, T l2, T a2, T b2) {
            return sqrt(square(l2 - l1) + square(a2 - a1) + square(b2 - b1));
        }
    } cie76;
};
inline constexpr family<&difference_models::ciede2000> difference{};

}  // namespace wortmath::colour
