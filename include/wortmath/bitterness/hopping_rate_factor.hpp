#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct hopping_rate_factor_models {
    static constexpr const char* question = "By what factor does the bitterness of a strongly hopped beer fall short of the sum of its additions?";

    struct garetz_1994 : model<struct garetz_1994, unit::ratio(unit::bitterness_units, unit::ratio)> {
        static constexpr facts about{
            .source = "M. Garetz, Using Hops, HopTech, 1994; the form recalled, the 260 confirmed in the Home Brew Digest, 5 March 1995",
            .status = evidence::memory,
            .use = "to check a calculation of that book step by step; hopping_rate gives the result at once",
            .note = "takes the bitterness of the whole beer after the factor, not that of one addition"};
        static constexpr input inputs[]{{"bitterness", detail::amount}, {"concentration_factor", detail::some}};

        template <class T>
        static constexpr T formula(T bitterness, T CF) {
            return CF * bitterness / 260.0 + 1.0;
        }
    } garetz_1994;
};
inline constexpr family<&hopping_rate_factor_models::garetz_1994> hopping_rate_factor{};

}  // namespace wortmath::bitterness
