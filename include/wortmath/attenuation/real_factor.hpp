#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

// A = b (p - n).
struct real_factor_models {
    static constexpr const char* question = "How much alcohol, in % mass of the beer, comes of each degree by which the real extract fell?";

    struct balling : model<struct balling, unit::ratio(unit::original_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer",
                                     .note = "206.65 is 100 times the 2.0665 g of extract that make 1 g of alcohol; one scanned page shows 206.05, a misprint"};
        static constexpr input inputs[]{{"original_extract", validated{1, 30}}};

        template <class T>
        static constexpr T formula(T original) {
            return 100.0 / (206.65 - 1.0665 * original);
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
            return 0.481 + 0.0030 * original;
        }
    } pawlowski;

    struct cutaia : model<struct cutaia, unit::ratio(unit::original_extract)> {
        static constexpr facts about{.source = "A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327, Table VI",
                                     .status = evidence::primary,
                                     .use = "to compare with the brews of that paper",
                                     .accuracy = "standard error 0.015",
                                     .note = "the three factors were fitted separately: two of them do not make a quotient of attenuations"};
        static constexpr input inputs[]{{"original_extract", validated{9, 18}}};

        template <class T>
        static constexpr T formula(T original) {
            return 0.459 + 0.00469 * original;
        }
    } cutaia;
};
inline constexpr family<&real_factor_models::balling> real_factor{};

}  // namespace wortmath::attenuation
