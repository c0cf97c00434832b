#pragma once

#include "wortmath/attenuation/quotient.hpp"

namespace wortmath::attenuation {
namespace detail {

inline constexpr const char* apparent_above_original =
    "the apparent extract is above the original extract: nothing can have fermented; check which reading is which";
inline constexpr const char* attenuation_below_115 =
    "holds down to an apparent extract of -0.15 times the original extract (an apparent attenuation of 115 %); below that check the readings";

// A billionth of room: -1.8 is -0.15 times 12, though not in binary.
template <class T>
constexpr bool attenuated_at_most_115(T original, T apparent) {
    return !(apparent < -0.15 * original - 1e-9);
}

}  // namespace detail

struct real_extract_models {
    static constexpr const char* question = "What extract is left in the beer once its alcohol is taken away, from original and apparent extract?";

    struct balling : model<struct balling, unit::real_extract(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer",
                                     .accuracy = "0.1 degP to modern density data"};
        static constexpr input inputs[]{{"original_extract", validated{1, 25}}, {"apparent_extract"}};
        static constexpr const char* refusal = detail::apparent_above_original;
        static constexpr const char* holds_when = detail::attenuation_below_115;

        template <class T>
        static constexpr T unguarded(T original, T apparent) {
            return original - (original - apparent) / quotient.balling.formula(original);
        }
        template <class T>
        static constexpr T formula(T original, T apparent) {
            return select(apparent <= original, unguarded(original, apparent), undefined);
        }
        template <class T>
        static constexpr bool holds(T, T original, T apparent) {
            return detail::attenuated_at_most_115(original, apparent);
        }
    } balling;

    // Balling's quotient frozen at 1.2207.
    struct de_clerck : model<struct de_clerck, unit::real_extract(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{
            .source = "J. De Clerck, by way of G. Fix",
            .status = evidence::memory,
            .use = "to repeat older work; right for very weak worts only",
            .accuracy = "to balling at 75 % apparent attenuation: -0.02 degP at 6 degP, -0.07 at 12, -0.12 at 16, -0.19 at 20, -0.30 at 25"};
        static constexpr input inputs[]{{"original_extract", validated{1, 25}}, {"apparent_extract"}};
        static constexpr const char* refusal = detail::apparent_above_original;
        static constexpr const char* holds_when = detail::attenuation_below_115;

        template <class T>
        static constexpr T unguarded(T original, T apparent) {
            return 0.1808 * original + 0.8192 * apparent;
        }
        template <class T>
        static constexpr T formula(T original, T apparent) {
            return select(apparent <= original, unguarded(original, apparent), undefined);
        }
        template <class T>
        static constexpr bool holds(T, T original, T apparent) {
            return detail::attenuated_at_most_115(original, apparent);
        }
    } de_clerck;

    struct pawlowski : model<struct pawlowski, unit::real_extract(unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{
            .source = "Pawlowski-Doemens ratio, tabulated by A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327",
            .status = evidence::secondary,
            .use = "a second opinion beside balling",
            .accuracy = "within 0.005 degP of balling at 75 % apparent attenuation up to 25 degP"};
        static constexpr input inputs[]{{"original_extract", validated{1, 25}}, {"apparent_extract"}};
        static constexpr const char* refusal = detail::apparent_above_original;
        static constexpr const char* holds_when = detail::attenuation_below_115;

        template <class T>
        static constexpr T formula(T original, T apparent) {
            return select(apparent <= original, original - (0.820 - 0.00066 * original) * (original - apparent), undefined);
        }
        template <class T>
        static constexpr bool holds(T, T original, T apparent) {
            return detail::attenuated_at_most_115(original, apparent);
        }
    } pawlowski;
};
inline constexpr family<&real_extract_models::balling> real_extract{};

}  // namespace wortmath::attenuation
