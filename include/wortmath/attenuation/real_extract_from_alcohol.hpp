#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct real_extract_from_alcohol_models {
    static constexpr const char* question = "What extract is left in the beer once its alcohol is taken away, from apparent extract and measured alcohol?";

    struct dealcoholised : model<struct dealcoholised, unit::real_extract(unit::apparent_extract, unit::alcohol_by_mass)> {
        static constexpr facts about{.source = "formula sheet of a maltster; origin not stated",
                                     .status = evidence::secondary,
                                     .use = "quick work; beer.real_extract_from_density is more exact",
                                     .accuracy = "within 0.02 degP of balling for worts of 6 to 16 degP, -0.08 at 25 degP and 85 % apparent attenuation",
                                     .note = "printed without the brackets around the two alcohol terms; used: both are divided by 0.9962"};
        static constexpr input inputs[]{{"apparent_extract"}, {"alcohol_by_mass", validated{0, 8}}};

        template <class T>
        static constexpr T formula(T apparent, T alcohol) {
            return apparent + (0.4654 * alcohol - 0.003615 * square(alcohol)) / 0.9962;
        }
    } dealcoholised;
};
inline constexpr family<&real_extract_from_alcohol_models::dealcoholised> real_extract_from_alcohol{};

}  // namespace wortmath::attenuation
