#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct sensory_bitterness_spread_models {
    static constexpr const char* question = "How far may the bitterness as tasted be off through its weights?";

    struct algazzali_shellhammer_2016 : model<struct algazzali_shellhammer_2016, unit::sensory_equivalent(unit::humulinones, unit::hulupones)> {
        static constexpr facts about{.source = "Algazzali and Shellhammer, J. Am. Soc. Brew. Chem. 74 (2016) 36-43, abstract",
                                     .status = evidence::primary,
                                     .use = "beside sensory_bitterness of the same name",
                                     .note = "what the printed +- 13 % and +- 10 % stand for is not stated; humulinones come to 24 mg/L in beer at most"};
        static constexpr input inputs[]{{"humulinones", detail::amount}, {"hulupones", detail::amount}};

        template <class T>
        static constexpr T formula(T humulinones, T hulupones) {
            return sqrt(square(0.13 * humulinones) + square(0.10 * hulupones));
        }
    } algazzali_shellhammer_2016;
};
inline constexpr family<&sensory_bitterness_spread_models::algazzali_shellhammer_2016> sensory_bitterness_spread{};

}  // namespace wortmath::bitterness
