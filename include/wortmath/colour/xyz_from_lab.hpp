#pragma once

#include "wortmath/colour/lab.hpp"
#include "wortmath/colour/words.hpp"

namespace wortmath::colour {

struct xyz_from_lab_models {
    static constexpr const char* question = "Which tristimulus values belong to this lightness, redness and yellowness (L*, a*, b*)?";

    struct cie_1976 : model<struct cie_1976, xyz(unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "CIE 15:2004; ISO/CIE 11664-4",
                                     .status = evidence::secondary,
                                     .accuracy = "exact inverse of lab.cie_1976",
                                     .note = "coordinates that no light has give negative values, which are not clipped"};
        static constexpr input inputs[]{{"l"},
                                        {"a"},
                                        {"b"},
                                        {"xn", possible{above(0), no_limit}},
                                        {"yn", possible{above(0), no_limit}},
                                        {"zn", possible{above(0), no_limit}}};

        template <class T>
        static constexpr several<T, 3> formula(T l, T a, T b, T xn, T yn, T zn) {
            constexpr double d = detail::lab_delta;
            auto const G = [](T u) -> T { return select(u > d, cube(u), 3.0 * d * d * (u - 4.0 / 29.0)); };
            T fy = (l + 16.0) / 116.0;
            return {{xn * G(fy + a / 500.0), yn * G(fy), zn * G(fy - b / 200.0)}};
        }
    } cie_1976;
};
inline constexpr family<&xyz_from_lab_models::cie_1976> xyz_from_lab{};

}  // namespace wortmath::colour
