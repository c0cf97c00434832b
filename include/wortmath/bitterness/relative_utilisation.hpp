#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/bitterness/decay.hpp"
#include "wortmath/bitterness/isomerisation_rate.hpp"

namespace wortmath::bitterness {

namespace detail {

template <class T>
constexpr T hosom_rate(T temperature) {
    return 2.39e11 * exp(-9773.0 / (temperature + constants::zero_celsius));
}

}  // namespace detail

struct relative_utilisation_models {
    static constexpr const char* question = "How fast does bitterness form below the boil, relative to a boil at 100 degC?";

    struct hosom : model<struct hosom, unit::ratio(unit::celsius)> {
        static constexpr facts about{
            .source = "J.-P. Hosom, author's own article on utilisation below boiling",
            .status = evidence::primary,
            .use = "hops in wort that cools after the boil",
            .accuracy =
                "homebrew experiments from 63 degC to the boil; at 63 degC about half the bitterness of a boil was found although this gives "
                "0.056: the rest is not iso-alpha acids, so that cool stands read too low",
            .note = "held at 1 above 99.87 degC, which changes results by less than 1 %"};
        static constexpr input inputs[]{{"temperature", validated{63, 101}}};

        template <class T>
        static constexpr T formula(T temperature) {
            return least(T(1.0), detail::hosom_rate(temperature));
        }
    } hosom;

    struct hosom_unclamped : model<struct hosom_unclamped, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "J.-P. Hosom, author's own article on utilisation below boiling",
                                     .status = evidence::primary,
                                     .use = "the formula as printed",
                                     .accuracy = "as hosom",
                                     .note = "1.0092 at 100 degC, not 1"};
        static constexpr input inputs[]{{"temperature", validated{63, 101}}};

        template <class T>
        static constexpr T formula(T temperature) {
            return detail::hosom_rate(temperature);
        }
    } hosom_unclamped;

    struct malowicki_rate_ratio : model<struct malowicki_rate_ratio, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "derived from the rates of M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439",
                                     .status = evidence::derived,
                                     .use = "very short times, when nothing has been lost yet",
                                     .accuracy = "the lowest of the models; 2 % by the two figures of the constants",
                                     .note = "rates measured from 90 degC up"};
        static constexpr input inputs[]{{"temperature", detail::measured_rates, detail::carried_rates}};

        template <class T>
        static constexpr T formula(T temperature) {
            return isomerisation_rate.malowicki_shellhammer.formula(temperature)[0] / isomerisation_rate.malowicki_shellhammer.formula(T(100.0))[0];
        }
    } malowicki_rate_ratio;

    // Iso-alpha acids after a time, over those after the same time at 100 degC. The exponents are taken together, so that
    // the quotient survives times after which both are gone; at no time it is the ratio of the rates.
    struct malowicki_yield_ratio : model<struct malowicki_yield_ratio, unit::ratio(unit::celsius, unit::minutes)> {
        static constexpr facts about{.source = "derived from the rates of M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439",
                                     .status = evidence::derived,
                                     .use = "a known time at a known temperature",
                                     .accuracy = "between hosom and the ratio of the rates for most times",
                                     .note = "rates measured from 90 degC up"};
        static constexpr input inputs[]{{"temperature", detail::measured_rates, detail::carried_rates}, {"minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T temperature, T minutes) {
            several<T, 2> k = isomerisation_rate.malowicki_shellhammer.formula(temperature);
            several<T, 2> boiling = isomerisation_rate.malowicki_shellhammer.formula(T(100.0));
            T a = k[0] * minutes, b = k[1] * minutes, a100 = boiling[0] * minutes, b100 = boiling[1] * minutes;
            return k[0] / boiling[0] * exp(least(a100, b100) - least(a, b)) * detail::phi(detail::apart(a, b)) / detail::phi(detail::apart(a100, b100));
        }
    } malowicki_yield_ratio;
};
inline constexpr family<&relative_utilisation_models::hosom> relative_utilisation{};

}  // namespace wortmath::bitterness
