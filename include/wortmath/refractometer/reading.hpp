#pragma once

#include "wortmath/extract/to_gravity.hpp"
#include "wortmath/refractometer/additive.hpp"
#include "wortmath/refractometer/brix_from_index.hpp"

namespace wortmath::refractometer {

struct reading_models {
    static constexpr const char* question = "What does a refractometer show in a fermenting beer?";

    struct additive : model<struct additive, unit::raw_brix(unit::original_extract, unit::apparent_extract, unit::ratio)> {
        static constexpr facts about{
            .source = "additivity of the specific refraction with C. J. N. Balling's extract and alcohol; nothing in it was fitted to beer",
            .status = evidence::derived,
            .use = "the whole fermentation; at the start it gives the wort factor times the original extract exactly",
            .accuracy = "assumes that the extract keeps its refraction while sugars go and dextrins stay, and Balling's yield of alcohol",
            .note = detail::wort_factor_note};
        static constexpr input inputs[]{{"original_extract", validated{3, 25}, possible{2, 77}}, {"apparent_extract"}, detail::wort_factor_input};
        static constexpr const char* refusal = attenuation::detail::apparent_above_original;
        static constexpr const char* holds_when = attenuation::detail::attenuation_below_115;

        template <class T>
        static constexpr T formula(T original, T apparent, T wort_factor) {
            T r = let("extract_refraction", extract_refraction.from_wort.formula(original, wort_factor * original));
            T X = let("X", detail::refraction_of_beer(original, apparent, extract::to_gravity.asbc.formula(apparent), r));
            return select(apparent <= original, brix_from_index.icumsa_1974.formula(detail::index_from_refraction(X)), undefined);
        }
        template <class T>
        static constexpr bool holds(T, T original, T apparent, T) {
            return attenuation::detail::attenuated_at_most_115(original, apparent);
        }
    } additive;
};
inline constexpr family<&reading_models::additive> reading{};

}  // namespace wortmath::refractometer
