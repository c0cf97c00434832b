#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct quotient_models {
    static constexpr const char* question = "How many times larger than the real attenuation is the apparent one?";

    // (p - m)/(p - n): everything that Balling links starts from it.
    struct balling : model<struct balling, unit::ratio(unit::original_extract)> {
        static constexpr facts about{
            .source =
                "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague), chapter on the saccharometric beer test",
            .status = evidence::primary,
            .use = "apparent over real attenuation of a wort of this original extract",
            .accuracy =
                "the rule of Tabarie with modern densities differs by -0.5 to +0.3 gravity points for worts of 6 to 25 degP and apparent attenuations of 50 to "
                "85 %"};
        static constexpr input inputs[]{{"original_extract", validated{1, 30}}};

        template <class T>
        static constexpr T formula(T original) {
            return 1.22 + 0.001 * original;
        }
    } balling;
};
inline constexpr family<&quotient_models::balling> quotient{};

}  // namespace wortmath::attenuation
