#pragma once

#include "wortmath/attenuation/quotient.hpp"
#include "wortmath/attenuation/real_factor.hpp"

namespace wortmath::attenuation {

// A = c (n - m): what boiling off the alcohol does to the hydrometer.
struct difference_factor_models {
    static constexpr const char* question = "How much alcohol, in % mass of the beer, goes with each degree between real and apparent extract?";

    struct balling : model<struct balling, unit::ratio(unit::original_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer",
                                     .accuracy = "Balling's own tables within 0.0015 % mass"};
        static constexpr input inputs[]{{"original_extract", validated{1, 30}}};

        template <class T>
        static constexpr T formula(T original) {
            return real_factor.balling.formula(original) / (quotient.balling.formula(original) - 1.0);
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
            return 2.19 + 0.0031 * original;
        }
    } pawlowski;

    struct cutaia : model<struct cutaia, unit::ratio(unit::original_extract)> {
        static constexpr facts about{.source = "A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327, Table VI",
                                     .status = evidence::primary,
                                     .use = "to compare with the brews of that paper",
                                     .accuracy = "standard error 0.013",
                                     .note =
                                         "printed: 1.99 x 10^-1; used: 1.99, since the factor is 2.2 at 12 degP. The three factors were fitted separately: two "
                                         "of them do not make a quotient of attenuations"};
        static constexpr input inputs[]{{"original_extract", validated{9, 18}}};

        template <class T>
        static constexpr T formula(T original) {
            return 1.99 + 0.0134 * original;
        }
    } cutaia;
};
inline constexpr family<&difference_factor_models::balling> difference_factor{};

}  // namespace wortmath::attenuation
