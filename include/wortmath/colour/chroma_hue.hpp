#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

namespace detail {
inline constexpr double degrees_per_radian = 57.29577951308232;

// Angle of a point, 0 to 360 degrees; 0 for the origin.
template <class T>
constexpr T hue_angle(T a, T b) {
    T angle = atan2(b, a) * degrees_per_radian;
    return select(fabs(a) + fabs(b) <= 0.0, T(0.0), select(angle < 0.0, angle + 360.0, angle));
}
}  // namespace detail

struct chroma_hue_models {
    static constexpr const char* question = "How vivid is a colour, and which hue has it?";

    struct polar {
        unit::ratio chroma;
        unit::degrees hue;
        static constexpr const char* names[]{"chroma", "hue"};
    };

    struct cie_1976 : model<struct cie_1976, polar(unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "CIE 15:2004; ISO/CIE 11664-4",
                                     .status = evidence::secondary,
                                     .note = "hue 0 for a colour without chroma; 90 degrees is yellow, 0 is red"};
        static constexpr input inputs[]{{"a"}, {"b"}};

        template <class T>
        static constexpr several<T, 2> formula(T a, T b) {
            return {{sqrt(square(a) + square(b)), detail::hue_angle(a, b)}};
        }
    } cie_1976;
};
inline constexpr family<&chroma_hue_models::cie_1976> chroma_hue{};

}  // namespace wortmath::colour
