#pragma once

#include "wortmath/model.hpp"

namespace wortmath::priming {

namespace detail {
inline constexpr const char* end_above_present =
    "the final extract must not be above the present one: that would subtract gas. Check which of the two is the value at the end of fermentation";
}  // namespace detail

struct fermentable_models {
    static constexpr const char* question = "How much of the extract will still ferment?";

    struct balling : model<struct balling, unit::extract_drop(unit::real_extract, unit::real_extract)> {
        static constexpr facts about{
            .source = "C. J. N. Balling's balance, as in ASBC Beer-6",
            .status = evidence::derived,
            .use = "speise, kraeusen and beers that were bottled early",
            .note = "grams per 100 g of the liquid as it is now; the denominator counts the mass that leaves as CO2 and yeast; extracts are real ones, for "
                    "wort the same as apparent",
            .danger = "a final extract above the present one would hide gas and is refused; take the final value from a forced fermentation"};
        static constexpr const char* refusal = detail::end_above_present;
        static constexpr input inputs[]{{"real_extract", only{0, 30}}, {"final_real_extract", only{0, 30}}};

        template <class T>
        static constexpr T formula(T now, T end) {
            return select(end <= now, (now - end) / (1.0 - 0.005161 * end), undefined);
        }
    } balling;
};
inline constexpr family<&fermentable_models::balling> fermentable{};

}  // namespace wortmath::priming
