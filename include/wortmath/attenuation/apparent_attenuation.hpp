#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct apparent_attenuation_models {
    static constexpr const char* question = "What share of the extract seems to have fermented, judged by the hydrometer?";

    struct definition : model<struct definition, unit::apparent_attenuation(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{.source = "definition; C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer; on the sample of a forced ferment it is the limit attenuation",
                                     .accuracy = "exact",
                                     .note = "may exceed 1. A share: prints give it in %"};
        static constexpr input inputs[]{{"original_extract", only{above(0), 80}}, {"apparent_extract"}};

        template <class T>
        static constexpr T formula(T original, T apparent) {
            return (original - apparent) / original;
        }
    } definition;
};
inline constexpr family<&apparent_attenuation_models::definition> apparent_attenuation{};

}  // namespace wortmath::attenuation
