#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct oechsle_from_kmw_models {
    static constexpr const char* question = "How many degrees Oechsle is a reading of the Klosterneuburg must scale?";

    struct babo : model<struct babo, unit::oechsle(unit::kmw)> {
        static constexpr facts about{.source = "Babo's must scale, as quoted",
                                     .status = evidence::secondary,
                                     .use = "must scales of the Klosterneuburg kind",
                                     .note = "the factors 5 and 4.86 that also circulate are not the same"};
        static constexpr input inputs[]{{"kmw", only{0, 30}}};

        template <class T>
        static constexpr T formula(T kmw) {
            return kmw * (0.022 * kmw + 4.54);
        }
    } babo;
};
inline constexpr family<&oechsle_from_kmw_models::babo> oechsle_from_kmw{};

}  // namespace wortmath::gravity
