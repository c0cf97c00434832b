#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct original_extract_from_extracts_models {
    static constexpr const char* question = "What was the original extract, from the hydrometer before and after boiling off the alcohol?";

    // Positive root of (p - n) (0.22 + 0.001 p) = n - m.
    struct balling : model<struct balling, unit::original_extract(unit::apparent_extract, unit::real_extract)> {
        static constexpr facts about{
            .source =
                "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague), section on the saccharometric beer test",
            .status = evidence::primary,
            .use = "a beer of unknown history and a hydrometer alone",
            .accuracy = "ill-conditioned: 0.01 degP in the difference of the readings moves the result by 0.04 degP",
            .note = "Balling's worked example stops after two steps with a rounded quotient: 15.784 where the root is 15.791"};
        static constexpr input inputs[]{{"apparent_extract"}, {"real_extract"}};
        static constexpr const char* refusal =
            "the real extract is below the apparent extract: alcohol makes a hydrometer read low, never high; check which reading is which, or whether the "
            "beer was made up to its volume";

        template <class T>
        static constexpr T formula(T apparent, T real) {
            T b = 0.22 - 0.001 * real;
            T c = 1.22 * real - apparent;
            return select(apparent <= real, 2.0 * c / (b + sqrt(square(b) + 0.004 * c)), undefined);
        }
    } balling;
};
inline constexpr family<&original_extract_from_extracts_models::balling> original_extract_from_extracts{};

}  // namespace wortmath::attenuation
