#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct boil_gravity_models {
    static constexpr const char* question = "What is the gravity in the kettle while a concentrated wort boils?";

    struct garetz_1994 : model<struct garetz_1994, unit::gravity_20_20(unit::gravity_20_20, unit::ratio)> {
        static constexpr facts about{
            .source = "M. Garetz, Using Hops, HopTech, 1994; recalled",
            .status = evidence::memory,
            .use = "the gravity that the other rules of that book ask for",
            .note = "concentration_factor is the final volume over the boiling volume: 1 for a full boil, 2 for a wort topped up to twice its volume"};
        static constexpr input inputs[]{{"original_gravity", detail::wort_gravity}, {"concentration_factor", detail::some}};

        template <class T>
        static constexpr T formula(T G, T CF) {
            return CF * (G - 1.0) + 1.0;
        }
    } garetz_1994;
};
inline constexpr family<&boil_gravity_models::garetz_1994> boil_gravity{};

}  // namespace wortmath::bitterness
