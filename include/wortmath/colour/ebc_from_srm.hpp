#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct ebc_from_srm_models {
    static constexpr const char* question = "What is a colour in SRM on the EBC scale?";

    struct exact : model<struct exact, unit::ebc(unit::srm)> {
        static constexpr facts about{.source = "the defining factors of both scales at 430 nm: 12.7 and 25 per cm",
                                     .status = evidence::derived,
                                     .accuracy = "exact: 1.968503937...",
                                     .note = "1.97 is a rounding, 0.076 % high"};
        static constexpr input inputs[]{{"srm"}};

        template <class T>
        static constexpr T formula(T srm) {
            return srm * 25.0 / 12.7;
        }
    } exact;
};
inline constexpr family<&ebc_from_srm_models::exact> ebc_from_srm{};

}  // namespace wortmath::colour
