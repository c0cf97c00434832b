#pragma once

#include "wortmath/bitterness/isomerisation.hpp"

namespace wortmath::bitterness {

struct isomerisation_degraded_models {
    static constexpr const char* question =
        "What share of the dissolved alpha acids has become iso-alpha acids and been lost again, at a constant temperature?";

    struct malowicki_shellhammer : model<struct malowicki_shellhammer, unit::fraction(unit::celsius, unit::minutes)> {
        static constexpr facts about{
            .source = "M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439, abstract",
            .status = evidence::primary,
            .use = "why a very long boil gains nothing",
            .accuracy =
                "24.3 % of iso-alpha acids lost in 90 min at 100 degC, where more than 20 % was measured (Kappler et al., J. Inst. Brew. "
                "116 (2010) 332)",
            .note = "rates measured from 90 degC up; the loss is said to depend on pH and gravity"};
        static constexpr input inputs[]{{"temperature", detail::measured_rates, detail::carried_rates}, {"minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T temperature, T minutes) {
            return detail::isomerised(temperature, minutes)[2];
        }
    } malowicki_shellhammer;
};
inline constexpr family<&isomerisation_degraded_models::malowicki_shellhammer> isomerisation_degraded{};

}  // namespace wortmath::bitterness
