#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct mass_for_target_models {
    static constexpr const char* question = "How much of a hop gives the bitterness that one addition is to bring?";

    struct exact : model<struct exact, unit::grams(unit::bitterness_units, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{.source = "definition",
                                     .status = evidence::derived,
                                     .accuracy = "the exact inverse of from_addition.exact",
                                     .note = "tables of utilisation are zero at short times, where no mass of hops would do"};
        static constexpr input inputs[]{
            {"bitterness", detail::amount}, {"alpha", only{above(0), 1}}, {"volume", detail::some}, {"utilisation", only{above(0), 1}}};

        template <class T>
        static constexpr T formula(T bitterness, T alpha, T volume, T utilisation) {
            return bitterness * volume / (1000.0 * alpha * utilisation);
        }
    } exact;
};
inline constexpr family<&mass_for_target_models::exact> mass_for_target{};

}  // namespace wortmath::bitterness
