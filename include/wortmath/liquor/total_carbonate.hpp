#pragma once

#include "wortmath/liquor/carbonate_system.hpp"

namespace wortmath::liquor {

struct total_carbonate_models {
    static constexpr const char* question = "How much carbonate, in all its forms, does a water hold?";

    // The alkalinity of a water report: what the titration to an end point takes.
    struct titration : model<struct titration, unit::millimoles_per_litre(unit::milliequivalents_per_litre, unit::ph, unit::celsius, unit::ph)> {
        static constexpr facts about{.source =
                                         "charge balance of closed carbonate water with the constants of Plummer and Busenberg 1982 and Harned "
                                         "and Owen 1958",
                                     .status = evidence::derived,
                                     .use = "the alkalinity of a water report",
                                     .note =
                                         "a result below 0 counts as 0: a water reported with no alkalinity holds less than the titration sees. "
                                         "Zero ionic strength"};
        static constexpr input inputs[]{{"alkalinity", validated{0, 10}, possible{0, 100}},
                                        {"ph", validated{4.3, 9}},
                                        {"temperature", validated{0, 60}, otherwise{25.0}},
                                        {"endpoint_ph", otherwise{4.3}}};
        static constexpr const char* refusal = "the pH of the water must lie above the end point of the titration";

        template <class T>
        static constexpr T formula(T alkalinity, T ph, T t, T endpoint) {
            carbonate_system<T> water = carbonate_system<T>::at(t);
            T titrated = let("titrated", alkalinity - water.water(ph) + water.water(endpoint));
            T total = titrated / (water.charge(ph) - water.charge(endpoint));
            return select(ph > endpoint, most(T(0.0), total), undefined);
        }
    } titration;

    // Alkalinity above the level of CO2 in water, as a Gran plot gives it.
    struct equilibrium : model<struct equilibrium, unit::millimoles_per_litre(unit::milliequivalents_per_litre, unit::ph, unit::celsius)> {
        static constexpr facts about{.source =
                                         "charge balance of closed carbonate water with the constants of Plummer and Busenberg 1982 and Harned "
                                         "and Owen 1958",
                                     .status = evidence::derived,
                                     .use = "an alkalinity counted from the level of CO2 (Gran), as liquor.alkalinity.carbonate gives it",
                                     .note = "a result below 0 counts as 0. Zero ionic strength"};
        static constexpr input inputs[]{
            {"alkalinity", validated{0, 10}, possible{0, 100}}, {"ph", validated{4.3, 9}}, {"temperature", validated{0, 60}, otherwise{25.0}}};

        template <class T>
        static constexpr T formula(T alkalinity, T ph, T t) {
            carbonate_system<T> water = carbonate_system<T>::at(t);
            return most(T(0.0), (alkalinity - water.water(ph)) / water.charge(ph));
        }
    } equilibrium;
};
inline constexpr family<&total_carbonate_models::titration> total_carbonate{};

}  // namespace wortmath::liquor
