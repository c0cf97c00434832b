#pragma once

#include "wortmath/bitterness/isomerisation_fractions.hpp"
#include "wortmath/bitterness/isomerisation_rate.hpp"

namespace wortmath::bitterness {

namespace detail {

// The three fractions at constant temperature.
template <class T>
constexpr several<T, 3> isomerised(T temperature, T minutes) {
    several<T, 2> k = isomerisation_rate.malowicki_shellhammer.formula(temperature);
    return isomerisation_fractions.first_order.formula(k[0], k[1], minutes);
}

}  // namespace detail

struct isomerisation_models {
    static constexpr const char* question = "How much iso-alpha acids does a milligram of dissolved alpha acids give at a constant temperature?";

    struct malowicki_shellhammer : model<struct malowicki_shellhammer, unit::isomerisation_yield(unit::celsius, unit::minutes)> {
        static constexpr facts about{.source = "M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439, abstract",
                                     .status = evidence::primary,
                                     .use = "iso-alpha acids in hot wort; contains no losses after it, and is not a utilisation",
                                     .accuracy = "0.476 for an hour at 100 degC, times a cellar retention of 0.663, is near the 30 % of the trade",
                                     .note = "rates measured from 90 degC up; the most that boiling wort can reach is 63 %, where 75 to 85 % is often quoted"};
        static constexpr input inputs[]{{"temperature", detail::measured_rates, detail::carried_rates}, {"minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T temperature, T minutes) {
            return detail::isomerised(temperature, minutes)[1];
        }
    } malowicki_shellhammer;
};
inline constexpr family<&isomerisation_models::malowicki_shellhammer> isomerisation{};

}  // namespace wortmath::bitterness
