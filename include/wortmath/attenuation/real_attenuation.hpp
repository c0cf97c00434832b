#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct real_attenuation_models {
    static constexpr const char* question = "What share of the extract has really fermented?";

    // The plain degree: the fall of the extract in per cent.
    struct balling : model<struct balling, unit::real_attenuation(unit::original_extract, unit::real_extract)> {
        static constexpr facts about{.source = "definition; C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "the plain degree of fermentation",
                                     .accuracy = "exact",
                                     .note = "asbc runs 1 to 5 % of the value higher: name the convention with the number"};
        static constexpr input inputs[]{{"original_extract", only{above(0), 80}}, {"real_extract"}};

        template <class T>
        static constexpr T formula(T original, T real) {
            return (original - real) / original;
        }
    } balling;

    // Counts the mass that leaves as CO2 and yeast: the share of the extract itself that is gone.
    struct asbc : model<struct asbc, unit::real_attenuation(unit::original_extract, unit::real_extract)> {
        static constexpr facts about{.source = "ASBC Methods of Analysis, Beer-6",
                                     .status = evidence::secondary,
                                     .use = "American analyses, and wherever the share of the extract that ferments is meant",
                                     .note = "runs 1 to 5 % of the value above balling: name the convention with the number"};
        static constexpr input inputs[]{{"original_extract", only{above(0), 80}}, {"real_extract"}};

        template <class T>
        static constexpr T formula(T original, T real) {
            return balling::formula(original, real) / (1.0 - 0.005161 * real);
        }
    } asbc;
};
inline constexpr family<&real_attenuation_models::balling> real_attenuation{};

}  // namespace wortmath::attenuation
