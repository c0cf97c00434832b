#pragma once

#include "wortmath/attenuation/real_factor.hpp"

namespace wortmath::attenuation {

struct alcohol_by_mass_from_real_extract_models {
    static constexpr const char* question = "How much alcohol is in the beer, from its original and real extract?";

    struct balling : model<struct balling, unit::alcohol_by_mass(unit::original_extract, unit::real_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer"};
        static constexpr input inputs[]{{"original_extract", validated{3, 25}}, {"real_extract"}};
        static constexpr const char* refusal = "the real extract is above the original extract: nothing can have fermented; check which reading is which";

        template <class T>
        static constexpr T unguarded(T original, T real) {
            return (original - real) / (2.0665 - 0.010665 * original);
        }
        template <class T>
        static constexpr T formula(T original, T real) {
            return select(real <= original, unguarded(original, real), undefined);
        }
    } balling;

    struct pawlowski : model<struct pawlowski, unit::alcohol_by_mass(unit::original_extract, unit::real_extract)> {
        static constexpr facts about{
            .source = "Pawlowski-Doemens factor, tabulated by A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327",
            .status = evidence::secondary,
            .use = "a second opinion beside balling"};
        static constexpr input inputs[]{{"original_extract", validated{3, 25}}, {"real_extract"}};
        static constexpr const char* refusal = balling::refusal;

        template <class T>
        static constexpr T formula(T original, T real) {
            return select(real <= original, real_factor.pawlowski.formula(original) * (original - real), undefined);
        }
    } pawlowski;

    struct cutaia : model<struct cutaia, unit::alcohol_by_mass(unit::original_extract, unit::real_extract)> {
        static constexpr facts about{.source = "A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327, Table VI",
                                     .status = evidence::primary,
                                     .use = "to compare with the brews of that paper",
                                     .accuracy = "standard error of the factor 0.015"};
        static constexpr input inputs[]{{"original_extract", validated{9, 18}}, {"real_extract"}};
        static constexpr const char* refusal = balling::refusal;

        template <class T>
        static constexpr T formula(T original, T real) {
            return select(real <= original, real_factor.cutaia.formula(original) * (original - real), undefined);
        }
    } cutaia;
};
inline constexpr family<&alcohol_by_mass_from_real_extract_models::balling> alcohol_by_mass_from_real_extract{};

}  // namespace wortmath::attenuation
