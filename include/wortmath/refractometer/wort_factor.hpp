#pragma once

#include "wortmath/refractometer/cautions.hpp"

namespace wortmath::refractometer {

struct wort_factor_models {
    static constexpr const char* question = "What is the wort factor of this wort on this instrument?";

    struct measured : model<struct measured, unit::ratio(unit::raw_brix, unit::plato)> {
        static constexpr facts about{.source = "definition: the reading over the extract by a hydrometer in the same wort",
                                     .status = evidence::derived,
                                     .use = "once for each kind of wort and each instrument, unfermented and at 20 degC",
                                     .accuracy = "exact; 0.1 degBx in a reading of 12 is 0.008",
                                     .note = detail::wort_factor_note};
        static constexpr input inputs[]{{"brix"}, {"extract", only{above(0), 80}}};
        static constexpr const char* refusal =
            "the two readings give a factor outside 0.95 to 1.10, which no wort has: measure both again in the same unfermented wort at 20 degC, and check the "
            "zero with water";

        template <class T>
        static constexpr T formula(T brix, T extract) {
            T factor = brix / extract;
            return select(factor >= 0.95, select(factor <= 1.10, factor, undefined), undefined);
        }
    } measured;
};
inline constexpr family<&wort_factor_models::measured> wort_factor{};

}  // namespace wortmath::refractometer
