#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct alpha_dosed_models {
    static constexpr const char* question = "How much alpha acids does a hop addition bring per litre?";

    struct exact : model<struct exact, unit::alpha_dosed(unit::grams, unit::alpha_acids, unit::litres)> {
        static constexpr facts about{
            .source = "definition",
            .status = evidence::derived,
            .accuracy = "exact",
            .note =
                "the volume is that of the finished beer for bitterness units by tinseth, the final batch for rager, and the kettle for "
                "isomerisation and solubility_limit"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume) {
            return 1000.0 * mass * alpha / volume;
        }
    } exact;
};
inline constexpr family<&alpha_dosed_models::exact> alpha_dosed{};

}  // namespace wortmath::bitterness
