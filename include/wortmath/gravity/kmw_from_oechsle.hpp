#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct kmw_from_oechsle_models {
    static constexpr const char* question = "What does the Klosterneuburg must scale read at a number of degrees Oechsle?";

    // The exact inverse of gravity.oechsle_from_kmw.babo.
    struct babo : model<struct babo, unit::kmw(unit::oechsle)> {
        static constexpr facts about{.source = "Babo's must scale, as quoted",
                                     .status = evidence::secondary,
                                     .use = "must scales of the Klosterneuburg kind",
                                     .note = "the factors 5 and 4.86 that also circulate are not the same"};
        static constexpr input inputs[]{{"oechsle", only{0, 156}}};  // 0 to 30 on the must scale

        template <class T>
        static constexpr T formula(T oechsle) {
            return 2.0 * oechsle / (4.54 + sqrt(square(4.54) + 0.088 * oechsle));
        }
    } babo;
};
inline constexpr family<&kmw_from_oechsle_models::babo> kmw_from_oechsle{};

}  // namespace wortmath::gravity
