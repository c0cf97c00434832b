#pragma once

#include "wortmath/bitterness/isomerisation.hpp"

namespace wortmath::bitterness {

struct isomerisation_alpha_left_models {
    static constexpr const char* question = "What share of the dissolved alpha acids is still alpha acids after a time at a constant temperature?";

    struct malowicki_shellhammer : model<struct malowicki_shellhammer, unit::fraction(unit::celsius, unit::minutes)> {
        static constexpr facts about{.source = "M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439, abstract",
                                     .status = evidence::primary,
                                     .use = "what is left to isomerise",
                                     .accuracy = "half-life 55.5 min at 100 degC",
                                     .note = "rates measured from 90 degC up"};
        static constexpr input inputs[]{{"temperature", detail::measured_rates, detail::carried_rates}, {"minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T temperature, T minutes) {
            return detail::isomerised(temperature, minutes)[0];
        }
    } malowicki_shellhammer;
};
inline constexpr family<&isomerisation_alpha_left_models::malowicki_shellhammer> isomerisation_alpha_left{};

}  // namespace wortmath::bitterness
