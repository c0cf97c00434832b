#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct hopping_rate_models {
    static constexpr const char* question = "How much does a high hop charge lower the bitterness?";

    // The root of B times hopping_rate_factor(B) = X.
    struct garetz_1994 : model<struct garetz_1994, unit::bitterness_units(unit::bitterness_units, unit::ratio)> {
        static constexpr facts about{
            .source = "M. Garetz, Using Hops, HopTech, 1994; the form recalled, the 260 confirmed in the Home Brew Digest, 5 March 1995",
            .status = evidence::memory,
            .use = "once, on the sum of all additions of a calculation by that book",
            .accuracy = "the exact solution of what the book iterates",
            .note = "concentration_factor is the final volume over the boiling volume"};
        static constexpr input inputs[]{{"unadjusted_bitterness", detail::amount}, {"concentration_factor", detail::some}};

        template <class T>
        static constexpr T formula(T X, T CF) {
            return 2.0 * X / (1.0 + sqrt(1.0 + 4.0 * CF * X / 260.0));
        }
    } garetz_1994;
};
inline constexpr family<&hopping_rate_models::garetz_1994> hopping_rate{};

}  // namespace wortmath::bitterness
