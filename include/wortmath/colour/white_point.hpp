#pragma once

#include "wortmath/colour/tristimulus_sum.hpp"

namespace wortmath::colour {

struct white_point_models {
    static constexpr const char* question = "What are the tristimulus values of the white that an illuminant shows to an observer?";

    struct table_5nm : model<struct table_5nm, xyz(word::illuminant, word::observer)> {
        static constexpr facts about{.source = "CIE 15:2004: plain sum over the tables every 5 nm from 380 to 780 nm",
                                     .status = evidence::secondary,
                                     .use = "beside tristimulus.table_5nm",
                                     .accuracy = "published whites (two decimals of per cent) within 0.005",
                                     .note = "take the white of the same sum, grid and range as the colour"};
        static constexpr input inputs[]{{"illuminant", otherwise{word::illuminant::d65}}, {"observer", otherwise{word::observer::cie_1931}}};

        template <class T>
        static constexpr several<T, 3> formula(word::illuminant i, word::observer o) {
            return detail::tristimulus_sum<5, T>(detail::table_of(i), detail::table_of(o), [](std::size_t) -> T { return T(1.0); });
        }
    } table_5nm;

    struct table_10nm : model<struct table_10nm, xyz(word::illuminant, word::observer)> {
        static constexpr facts about{.source = "CIE 15:2004: plain sum over the tables every 10 nm from 380 to 780 nm",
                                     .status = evidence::secondary,
                                     .use = "beside tristimulus.table_10nm",
                                     .note = "take the white of the same sum, grid and range as the colour"};
        static constexpr input inputs[]{{"illuminant", otherwise{word::illuminant::d65}}, {"observer", otherwise{word::observer::cie_1931}}};

        template <class T>
        static constexpr several<T, 3> formula(word::illuminant i, word::observer o) {
            return detail::tristimulus_sum<10, T>(detail::table_of(i), detail::table_of(o), [](std::size_t) -> T { return T(1.0); });
        }
    } table_10nm;
};
inline constexpr family<&white_point_models::table_5nm> white_point{};

}  // namespace wortmath::colour
