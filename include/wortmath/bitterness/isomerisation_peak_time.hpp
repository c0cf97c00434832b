#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/bitterness/decay.hpp"
#include "wortmath/bitterness/isomerisation_rate.hpp"

namespace wortmath::bitterness {

namespace detail {

template <class T>
constexpr T peak_minutes(T k1, T k2) {
    T d = let("d", (k2 - k1) / k1);
    return log1p_ratio(d) / k1;
}

}  // namespace detail

struct isomerisation_peak_time_models {
    static constexpr const char* question = "After how many minutes is there most iso-alpha acids?";

    struct first_order : model<struct first_order, unit::minutes(unit::per_minute, unit::per_minute)> {
        static constexpr facts about{.source = "textbook solution of two first-order steps in series",
                                     .status = evidence::derived,
                                     .use = "rates of your own",
                                     .accuracy = "exact",
                                     .note = "infinite where nothing is lost (k2 = 0)"};
        static constexpr input inputs[]{{"k1", detail::some}, {"k2", detail::amount}};

        template <class T>
        static constexpr T formula(T k1, T k2) {
            return detail::peak_minutes(k1, k2);
        }
    } first_order;

    struct malowicki_shellhammer : model<struct malowicki_shellhammer, unit::minutes(unit::celsius)> {
        static constexpr facts about{.source = "M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439, abstract",
                                     .status = evidence::primary,
                                     .use = "wort at a temperature",
                                     .accuracy = "148.6 min at 100 degC",
                                     .note = "rates measured from 90 degC up"};
        static constexpr input inputs[]{{"temperature", detail::measured_rates, detail::carried_rates}};

        template <class T>
        static constexpr T formula(T temperature) {
            several<T, 2> k = isomerisation_rate.malowicki_shellhammer.formula(temperature);
            return detail::peak_minutes(k[0], k[1]);
        }
    } malowicki_shellhammer;
};
inline constexpr family<&isomerisation_peak_time_models::malowicki_shellhammer> isomerisation_peak_time{};

}  // namespace wortmath::bitterness
