#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct balanced_bitterness_models {
    static constexpr const char* question = "Which bitterness balances a wort?";

    struct smith_1990 : model<struct smith_1990, unit::bitterness_units(unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "Q. B. Smith, Matching Hops with Beer Styles, Zymurgy 13(4) special issue, 1990, through the Hops FAQ, revision 3, 1993",
            .status = evidence::secondary,
            .use = "a first guess for a beer without a style",
            .accuracy = "all ten values of the printed chart, 1.010 to 1.100"};
        static constexpr input inputs[]{{"original_gravity", validated{1.010, 1.100}, possible{1.0, 1.300}}};

        template <class T>
        static constexpr T formula(T original_gravity) {
            T GU = let("GU", 1000.0 * (original_gravity - 1.0));
            return select(GU > 40.0, 16.0 + 0.8 * (GU - 40.0), 0.4 * GU);
        }
    } smith_1990;
};
inline constexpr family<&balanced_bitterness_models::smith_1990> balanced_bitterness{};

}  // namespace wortmath::bitterness
