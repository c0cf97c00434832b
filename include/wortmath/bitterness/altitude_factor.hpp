#pragma once

#include "wortmath/bitterness/relative_utilisation.hpp"

namespace wortmath::bitterness {

// No measurement decides between these: their spread is the honest uncertainty.
struct altitude_factor_models {
    static constexpr const char* question = "By what factor does a lower boiling point cut the utilisation of hops?";

    struct malowicki_yield_ratio : model<struct malowicki_yield_ratio, unit::ratio(unit::celsius, unit::minutes)> {
        static constexpr facts about{
            .source = "derived from the rates of M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439",
            .status = evidence::derived,
            .use = "the usual choice: published rates, and between the extremes",
            .accuracy = "0.747 where water boils at 94.7 degC, for an hour; the other models give 0.633 to 0.839 there",
            .note = "take the boiling temperature at the pressure of the place (water.boiling_temperature), not at a pressure reduced to sea level"};
        static constexpr input inputs[]{{"boiling_temperature", validated{85, 101}}, {"boil_minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T boiling_temperature, T boil_minutes) {
            return relative_utilisation.malowicki_yield_ratio.formula(boiling_temperature, boil_minutes);
        }
    } malowicki_yield_ratio;

    struct malowicki_rate_ratio : model<struct malowicki_rate_ratio, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "derived from the rates of M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439",
                                     .status = evidence::derived,
                                     .use = "the low end of the spread",
                                     .accuracy = "0.633 where water boils at 94.7 degC",
                                     .note = "the limit of malowicki_yield_ratio for no time"};
        static constexpr input inputs[]{{"boiling_temperature", validated{85, 101}}};

        template <class T>
        static constexpr T formula(T boiling_temperature) {
            return relative_utilisation.malowicki_rate_ratio.formula(boiling_temperature);
        }
    } malowicki_rate_ratio;

    struct hosom : model<struct hosom, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "derived from J.-P. Hosom, author's own article on utilisation below boiling",
                                     .status = evidence::derived,
                                     .use = "a factor that does not depend on the time",
                                     .accuracy = "0.686 where water boils at 94.7 degC",
                                     .note = "his printed formula over its value at 100 degC, so that it is 1 there"};
        static constexpr input inputs[]{{"boiling_temperature", validated{85, 101}}};

        template <class T>
        static constexpr T formula(T boiling_temperature) {
            return relative_utilisation.hosom_unclamped.formula(boiling_temperature) / relative_utilisation.hosom_unclamped.formula(T(100.0));
        }
    } hosom;

    struct garetz_1994 : model<struct garetz_1994, unit::ratio(unit::metres)> {
        static constexpr facts about{.source = "M. Garetz, Using Hops, HopTech, 1994; recalled",
                                     .status = evidence::memory,
                                     .use = "only to repeat a calculation done with the book",
                                     .accuracy = "the high end of the spread: 0.839 at 1609 m",
                                     .note = "2 % more hops for each 550 ft; the range is 0 to 15000 ft"};
        static constexpr input inputs[]{{"altitude", validated{0, 4572}, possible{-5000, 11019}}};

        template <class T>
        static constexpr T formula(T altitude) {
            T elevation_ft = let("elevation_ft", altitude / constants::m_per_ft);
            return 1.0 / (elevation_ft / 550.0 * 0.02 + 1.0);
        }
    } garetz_1994;
};
inline constexpr family<&altitude_factor_models::malowicki_yield_ratio> altitude_factor{};

}  // namespace wortmath::bitterness
