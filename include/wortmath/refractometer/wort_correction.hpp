#pragma once

#include "wortmath/refractometer/cautions.hpp"

namespace wortmath::refractometer {

struct wort_correction_models {
    static constexpr const char* question = "What extract has an unfermented wort that reads so many degrees Brix?";

    struct divide : model<struct divide, unit::plato(unit::raw_brix, unit::ratio)> {
        static constexpr facts about{.source = "common practice, no source for the division; default factor of S. Terrill, author's article, 2010",
                                     .status = evidence::primary,
                                     .use = "unfermented wort only: alcohol raises the reading",
                                     .note = detail::wort_factor_note};
        static constexpr input inputs[]{{"brix"}, detail::wort_factor_input};

        template <class T>
        static constexpr T formula(T brix, T wort_factor) {
            return brix / wort_factor;
        }
    } divide;
};
inline constexpr family<&wort_correction_models::divide> wort_correction{};

}  // namespace wortmath::refractometer
