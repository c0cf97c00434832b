#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct srm_from_ebc_models {
    static constexpr const char* question = "What is a colour in EBC units (430 nm) on the SRM scale?";

    struct exact : model<struct exact, unit::srm(unit::ebc)> {
        static constexpr facts about{.source = "the defining factors of both scales at 430 nm: 12.7 and 25 per cm",
                                     .status = evidence::derived,
                                     .accuracy = "exact: 0.508",
                                     .note = "not for the EBC units of visual discs (before 1991), nor for a malt colour from the IoB mash"};
        static constexpr input inputs[]{{"ebc"}};

        template <class T>
        static constexpr T formula(T ebc) {
            return 0.508 * ebc;
        }
    } exact;
};
inline constexpr family<&srm_from_ebc_models::exact> srm_from_ebc{};

}  // namespace wortmath::colour
