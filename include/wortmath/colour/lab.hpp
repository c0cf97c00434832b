#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

namespace detail {
inline constexpr double lab_delta = 6.0 / 29.0;
}

struct lab_models {
    static constexpr const char* question = "Which lightness, redness and yellowness (L*, a*, b*) belong to these tristimulus values?";

    struct coordinates {
        unit::ratio l, a, b;
        static constexpr const char* names[]{"l", "a", "b"};
    };

    struct cie_1976 : model<struct cie_1976, coordinates(unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "CIE 15:2004; ISO/CIE 11664-4",
                                     .status = evidence::secondary,
                                     .note = "ASBC Beer-10 C: 1 cm, illuminant C, CIE 1964 observer, white of the same sum; negative tristimulus values count as 0; "
                                             "6/29 exactly, not the roundings 0.008856 and 7.787"};
        static constexpr input inputs[]{{"x"},
                                        {"y"},
                                        {"z"},
                                        {"xn", possible{above(0), no_limit}},
                                        {"yn", possible{above(0), no_limit}},
                                        {"zn", possible{above(0), no_limit}}};

        template <class T>
        static constexpr several<T, 3> formula(T x, T y, T z, T xn, T yn, T zn) {
            constexpr double d = detail::lab_delta;
            auto const F = [](T value, T white) -> T {
                T t = most(T(0.0), value) / white;
                return select(t > d * d * d, cbrt(t), t / (3.0 * d * d) + 4.0 / 29.0);
            };
            T fx = F(x, xn), fy = F(y, yn), fz = F(z, zn);
            return {{116.0 * fy - 16.0, 500.0 * (fx - fy), 200.0 * (fy - fz)}};
        }
    } cie_1976;
};
inline constexpr family<&lab_models::cie_1976> lab{};

}  // namespace wortmath::colour
