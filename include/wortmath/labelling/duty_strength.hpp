#pragma once

#include "wortmath/model.hpp"

namespace wortmath::labelling {

struct duty_strength_models {
    static constexpr const char* question = "On what strength is duty charged?";

    struct uk : model<struct uk, unit::alcohol_by_volume(unit::alcohol_by_volume)> {
        static constexpr facts about{
            .source = "UK government technical guide to alcoholic products, section 11",
            .status = evidence::primary,
            .use = "beer duty in the United Kingdom",
            .accuracy = "exact",
            .note = "cut to one decimal, not rounded: 7.59 becomes 7.5. A strength worked out from gravities is an estimate; duty needs an accepted method"};
        static constexpr input inputs[]{{"alcohol_by_volume"}};

        // The billionth keeps 5.1 from becoming 5.0 in binary.
        template <class T>
        static constexpr T formula(T alcohol) {
            return floor(10.0 * alcohol + 1e-9) / 10.0;
        }
    } uk;
};
inline constexpr family<&duty_strength_models::uk> duty_strength{};

}  // namespace wortmath::labelling
