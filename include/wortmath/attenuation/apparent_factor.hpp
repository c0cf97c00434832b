#pragma once

#include "wortmath/attenuation/quotient.hpp"
#include "wortmath/attenuation/real_factor.hpp"

namespace wortmath::attenuation {

// A = a (p - m).
struct apparent_factor_models {
    static constexpr const char* question = "How much alcohol, in % mass of the beer, comes of each degree by which the apparent extract fell?";

    struct balling : model<struct balling, unit::ratio(unit::original_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer"};
        static constexpr input inputs[]{{"original_extract", validated{1, 30}}};

        template <class T>
        static constexpr T formula(T original) {
            return real_factor.balling.formula(original) / quotient.balling.formula(original);
        }
    } balling;

    struct pawlowski : model<struct pawlowski, unit::ratio(unit::original_extract)> {
        static constexpr facts about{
            .source = "Pawlowski-Doemens factors, tabulated by A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327",
            .status = evidence::secondary,
            .use = "a second opinion beside balling"};
        static constexpr input inputs[]{{"original_extract", validated{6, 20}}};

        template <class T>
        static constexpr T formula(T original) {
            return 0.395 + 0.0021 * original;
        }
    } pawlowski;

    struct cutaia : model<struct cutaia, unit::ratio(unit::original_extract)> {
        static constexpr facts about{.source = "A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327, Table VI",
                                     .status = evidence::primary,
                                     .use = "to compare with the brews of that paper",
                                     .accuracy = "standard error 0.010",
                                     .note = "the three factors were fitted separately: two of them do not make a quotient of attenuations"};
        static constexpr input inputs[]{{"original_extract", validated{9, 18}}};

        template <class T>
        static constexpr T formula(T original) {
            return 0.372 + 0.00357 * original;
        }
    } cutaia;
};
inline constexpr family<&apparent_factor_models::balling> apparent_factor{};

}  // namespace wortmath::attenuation
