#pragma once

#include "wortmath/model.hpp"

namespace wortmath::liquor {

struct blend_models {
    static constexpr const char* question = "What does a blend of waters hold?";

    struct linear : model<struct linear, unit::any(list<unit::any>, list<unit::litres>)> {
        static constexpr facts about{.source = "mass balance",
                                     .status = evidence::derived,
                                     .accuracy = "exact",
                                     .note =
                                         "for any concentration, for alkalinity in mEq/L and for total carbonate, never for pH: blend total "
                                         "carbonate and alkalinity, then take liquor.ph.carbonate (a true 7.195 where the mean of the pH says "
                                         "7.900)"};
        static constexpr input inputs[]{{"concentrations"}, {"volumes"}};
        static constexpr const char* refusal = "there is nothing to blend: give at least one water with a volume above 0 L";

        template <class T>
        static constexpr T formula(series<T> c, series<T> V) {
            T volume = T(0.0), amount = T(0.0);
            for (std::size_t i = 0; i < c.size(); ++i) {
                volume = volume + V[i];
                amount = amount + c[i] * V[i];
            }
            return select(volume > 0.0, amount / volume, undefined);
        }
    } linear;
};
inline constexpr family<&blend_models::linear> blend{};

}  // namespace wortmath::liquor
