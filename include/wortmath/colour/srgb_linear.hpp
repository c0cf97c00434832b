#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

namespace detail {
struct matrix {
    double of[3][3];
};

template <class T>
constexpr several<T, 3> times(const matrix& m, T x, T y, T z) {
    auto const row = [&](const double(&r)[3]) -> T { return r[0] * x + r[1] * y + r[2] * z; };
    return {{row(m.of[0]), row(m.of[1]), row(m.of[2])}};
}

consteval matrix inverse(const matrix& m) {
    auto const minor = [&](int i, int j) {
        int const a = (i + 1) % 3, b = (i + 2) % 3, c = (j + 1) % 3, d = (j + 2) % 3;
        return m.of[a][c] * m.of[b][d] - m.of[a][d] * m.of[b][c];
    };
    double const determinant = m.of[0][0] * minor(0, 0) + m.of[0][1] * minor(0, 1) + m.of[0][2] * minor(0, 2);
    matrix r{};
    for (int i = 0; i < 3; ++i)
        for (int j = 0; j < 3; ++j) r.of[i][j] = minor(j, i) / determinant;
    return r;
}

// From XYZ to linear red, green and blue, given the chromaticities of red, green, blue and white.
consteval matrix from_primaries() {
    constexpr double xy[4][2]{{0.64, 0.33}, {0.30, 0.60}, {0.15, 0.06}, {0.3127, 0.3290}};
    matrix p{};
    for (int k = 0; k < 3; ++k) p.of[0][k] = xy[k][0] / xy[k][1], p.of[1][k] = 1.0, p.of[2][k] = (1.0 - xy[k][0] - xy[k][1]) / xy[k][1];
    auto const strength = times(inverse(p), xy[3][0] / xy[3][1], 1.0, (1.0 - xy[3][0] - xy[3][1]) / xy[3][1]);
    for (auto& row : p.of)
        for (int k = 0; k < 3; ++k) row[k] *= strength.values[k];
    return inverse(p);
}

inline constexpr matrix srgb_seven_decimal{{{3.2406255, -1.5372080, -0.4986286}, {-0.9689307, 1.8757561, 0.0415175}, {0.0557101, -0.2040211, 1.0569959}}};
inline constexpr matrix srgb_four_decimal{{{3.2406, -1.5372, -0.4986}, {-0.9689, 1.8758, 0.0415}, {0.0557, -0.2040, 1.0570}}};
inline constexpr matrix srgb_primaries = from_primaries();
}  // namespace detail

struct srgb_linear_models {
    static constexpr const char* question = "How much linear red, green and blue light of a screen makes these tristimulus values?";

    struct linear_light {
        unit::ratio red, green, blue;
        static constexpr const char* names[]{"red", "green", "blue"};
    };

    struct seven_decimal : model<struct seven_decimal, linear_light(unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "IEC 61966-2-1, amendment 1 (the attribution is from memory)",
                                     .status = evidence::secondary,
                                     .use = "the usual case",
                                     .accuracy = "inverse of the printed forward matrix within 5e-8",
                                     .note = "for illuminant D65 with y = 1 for white; not clipped; the three matrices differ by at most 1 of 255 in a channel"};
        static constexpr input inputs[]{{"x"}, {"y"}, {"z"}};

        template <class T>
        static constexpr several<T, 3> formula(T x, T y, T z) {
            return detail::times(detail::srgb_seven_decimal, x, y, z);
        }
    } seven_decimal;

    struct four_decimal : model<struct four_decimal, linear_light(unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "IEC 61966-2-1:1999",
                                     .status = evidence::secondary,
                                     .use = "to repeat results of the first edition",
                                     .accuracy = "inverse of the printed forward matrix within 4e-5",
                                     .note = "for illuminant D65 with y = 1 for white; not clipped"};
        static constexpr input inputs[]{{"x"}, {"y"}, {"z"}};

        template <class T>
        static constexpr several<T, 3> formula(T x, T y, T z) {
            return detail::times(detail::srgb_four_decimal, x, y, z);
        }
    } four_decimal;

    struct primaries : model<struct primaries, linear_light(unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "computed from the primaries and the white of IEC 61966-2-1: red 0.64 0.33, green 0.30 0.60, blue 0.15 0.06, white "
                                               "0.3127 0.3290",
                                     .status = evidence::secondary,
                                     .use = "more digits than any printed matrix",
                                     .note = "for illuminant D65 with y = 1 for white; not clipped"};
        static constexpr input inputs[]{{"x"}, {"y"}, {"z"}};

        template <class T>
        static constexpr several<T, 3> formula(T x, T y, T z) {
            return detail::times(detail::srgb_primaries, x, y, z);
        }
    } primaries;
};
inline constexpr family<&srgb_linear_models::seven_decimal> srgb_linear{};

}  // namespace wortmath::colour
