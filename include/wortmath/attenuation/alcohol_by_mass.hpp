#pragma once

#include "wortmath/attenuation/alcohol_by_mass_from_real_extract.hpp"
#include "wortmath/attenuation/apparent_factor.hpp"
#include "wortmath/attenuation/real_extract.hpp"

namespace wortmath::attenuation {

struct alcohol_by_mass_models {
    static constexpr const char* question = "How much alcohol is in the beer, from its original and apparent extract?";

    struct balling : model<struct balling, unit::alcohol_by_mass(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer"};
        static constexpr input inputs[]{{"original_extract", validated{3, 25}}, {"apparent_extract"}};
        static constexpr const char* refusal = detail::apparent_above_original;

        template <class T>
        static constexpr T unguarded(T original, T apparent) {
            return alcohol_by_mass_from_real_extract.balling.unguarded(original, real_extract.balling.unguarded(original, apparent));
        }
        template <class T>
        static constexpr T formula(T original, T apparent) {
            return select(apparent <= original, unguarded(original, apparent), undefined);
        }
    } balling;

    struct de_clerck : model<struct de_clerck, unit::alcohol_by_mass(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{
            .source = "J. De Clerck, by way of G. Fix",
            .status = evidence::memory,
            .use = "to repeat older work",
            .accuracy = "to balling at 75 % apparent attenuation: +0.01 % mass at 6 degP, +0.03 at 12, +0.06 at 16, +0.10 at 20, +0.17 at 25"};
        static constexpr input inputs[]{{"original_extract", validated{3, 25}}, {"apparent_extract"}};
        static constexpr const char* refusal = detail::apparent_above_original;

        template <class T>
        static constexpr T formula(T original, T apparent) {
            T real = real_extract.de_clerck.unguarded(original, apparent);
            return select(apparent <= original, alcohol_by_mass_from_real_extract.balling.unguarded(original, real), undefined);
        }
    } de_clerck;

    struct pawlowski : model<struct pawlowski, unit::alcohol_by_mass(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{
            .source = "Pawlowski-Doemens factor, tabulated by A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327",
            .status = evidence::secondary,
            .use = "a second opinion beside balling",
            .accuracy = "within 0.03 % mass of balling at 75 % apparent attenuation, 6 to 25 degP"};
        static constexpr input inputs[]{{"original_extract", validated{3, 25}}, {"apparent_extract"}};
        static constexpr const char* refusal = detail::apparent_above_original;

        template <class T>
        static constexpr T formula(T original, T apparent) {
            return select(apparent <= original, apparent_factor.pawlowski.formula(original) * (original - apparent), undefined);
        }
    } pawlowski;

    struct cutaia : model<struct cutaia, unit::alcohol_by_mass(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{.source = "A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327, Table VI",
                                     .status = evidence::primary,
                                     .use = "to compare with the brews of that paper",
                                     .accuracy =
                                         "standard error of the factor 0.010; to balling at 75 % apparent attenuation: -0.06 % mass at 6 degP, -0.03 at 12, "
                                         "+0.03 at 16, +0.12 at 20, +0.28 at 25"};
        static constexpr input inputs[]{{"original_extract", validated{9, 18}}, {"apparent_extract"}};
        static constexpr const char* refusal = detail::apparent_above_original;

        template <class T>
        static constexpr T unguarded(T original, T apparent) {
            return apparent_factor.cutaia.formula(original) * (original - apparent);
        }
        template <class T>
        static constexpr T formula(T original, T apparent) {
            return select(apparent <= original, unguarded(original, apparent), undefined);
        }
    } cutaia;
};
inline constexpr family<&alcohol_by_mass_models::balling> alcohol_by_mass{};

}  // namespace wortmath::attenuation
