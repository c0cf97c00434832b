#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct vessel_expansion_models {
    static constexpr const char* question = "How much more does a vessel hold at a mark when it is hot?";

    struct linear : model<struct linear, unit::ratio(unit::per_kelvin, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "three times the linear expansion of the wall",
                                     .status = evidence::derived,
                                     .use = "to correct a level read on a hot vessel",
                                     .accuracy = "terms of second order left out, below 1e-5 for metal",
                                     .note = "stainless steel 16.5e-6 1/K: 0.40 % more at 80 K above the mark's temperature. The "
                                             "expansion of water at 20 degC (2.07e-4 1/K) used over 80 K gives 1.7 % and is wrong"};
        static constexpr input inputs[]{{"linear_expansion", only{0, 1e-3}},
                                        {"mark_temperature", validated{0, 100}, possible{-5, 105}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}}};

        template <class T>
        static constexpr T formula(T alpha, T t_mark, T t) {
            return 1.0 + 3.0 * alpha * (t - t_mark);
        }
    } linear;
};
inline constexpr family<&vessel_expansion_models::linear> vessel_expansion{};

}  // namespace wortmath::extract
