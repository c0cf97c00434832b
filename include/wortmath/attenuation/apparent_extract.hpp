#pragma once

#include "wortmath/attenuation/real_extract.hpp"

namespace wortmath::attenuation {

// The exact inverses of real_extract.
struct apparent_extract_models {
    static constexpr const char* question = "What does a hydrometer show in a beer of this original and real extract?";

    struct balling : model<struct balling, unit::apparent_extract(unit::original_extract, unit::real_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling, Die Bierbrauerei wissenschaftlich begruendet und practisch dargestellt (Prague)",
                                     .status = evidence::primary,
                                     .use = "any beer"};
        static constexpr input inputs[]{{"original_extract", validated{1, 25}}, {"real_extract"}};
        static constexpr const char* refusal = "the real extract is above the original extract: nothing can have fermented; check which reading is which";
        static constexpr const char* holds_when = detail::attenuation_below_115;

        template <class T>
        static constexpr T unguarded(T original, T real) {
            return original - quotient.balling.formula(original) * (original - real);
        }
        template <class T>
        static constexpr T formula(T original, T real) {
            return select(real <= original, unguarded(original, real), undefined);
        }
        template <class T>
        static constexpr bool holds(T apparent, T original, T) {
            return detail::attenuated_at_most_115(original, apparent);
        }
    } balling;

    struct de_clerck : model<struct de_clerck, unit::apparent_extract(unit::original_extract, unit::real_extract)> {
        static constexpr facts about{
            .source = "J. De Clerck, by way of G. Fix", .status = evidence::memory, .use = "to repeat older work; right for very weak worts only"};
        static constexpr input inputs[]{{"original_extract", validated{1, 25}}, {"real_extract"}};
        static constexpr const char* refusal = balling::refusal;
        static constexpr const char* holds_when = detail::attenuation_below_115;

        template <class T>
        static constexpr T formula(T original, T real) {
            return select(real <= original, (real - 0.1808 * original) / 0.8192, undefined);
        }
        template <class T>
        static constexpr bool holds(T apparent, T original, T) {
            return detail::attenuated_at_most_115(original, apparent);
        }
    } de_clerck;
};
inline constexpr family<&apparent_extract_models::balling> apparent_extract{};

}  // namespace wortmath::attenuation
