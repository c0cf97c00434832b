#pragma once

#include "wortmath/model.hpp"

namespace wortmath::package {

struct bottle_count_models {
    static constexpr const char* question = "How many bottles does the batch fill?";

    // Full bottles only.
    struct whole : model<struct whole, unit::bottles(unit::litres, unit::litres, unit::litres)> {
        static constexpr facts about{.source = "arithmetic",
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note = "20/0.5, 0.9/0.3 and 2.1/0.7 come out just below a whole number in binary: 1e-9 is added before rounding down"};
        static constexpr input inputs[]{{"volume"}, {"loss_volume"}, {"bottle_volume", only{above(0), no_limit}}};
        static constexpr bool nan_is_impossible = true;

        template <class T>
        static constexpr T formula(T V, T loss, T bottle) {
            return most(T(0.0), floor((V - loss) / bottle + 1e-9));
        }
    } whole;
};
inline constexpr family<&bottle_count_models::whole> bottle_count{};

}  // namespace wortmath::package
