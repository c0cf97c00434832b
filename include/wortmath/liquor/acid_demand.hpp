#pragma once

#include "wortmath/liquor/total_carbonate.hpp"

namespace wortmath::liquor {

struct acid_demand_models {
    static constexpr const char* question = "How much strong acid brings a water to a pH?";

    // No CO2 leaves: the least acid that can be needed.
    struct closed : model<struct closed, unit::milliequivalents_per_litre(unit::milliequivalents_per_litre, unit::ph, unit::ph, unit::celsius, unit::ph)> {
        static constexpr facts about{
            .source = "charge balance of closed carbonate water with the constants of Plummer and Busenberg 1982 and Harned and Owen 1958",
            .status = evidence::derived,
            .accuracy = "at pH 5.4 it is 0.876 (from pH 7.0) to 0.897 (from 8.3) of the reported alkalinity at 25 degC: the trade's 0.90",
            .note =
                "where CO2 escapes the demand is higher, towards the whole alkalinity. Negative (a base is needed) where the target lies above "
                "the pH of the water. Zero ionic strength"};
        static constexpr input inputs[]{{"alkalinity", validated{0, 10}, possible{0, 100}},
                                        {"ph", validated{4.3, 9}},
                                        {"target_ph", validated{4.3, 9}},
                                        {"temperature", validated{0, 60}, otherwise{25.0}},
                                        {"endpoint_ph", otherwise{4.3}}};
        static constexpr const char* refusal = "the pH of the water must lie above the end point of the titration";

        template <class T>
        static constexpr T formula(T alkalinity, T ph, T target, T t, T endpoint) {
            carbonate_system<T> water = carbonate_system<T>::at(t);
            T total = let("C_T", total_carbonate.titration.formula(alkalinity, ph, t, endpoint));
            return total * (water.charge(ph) - water.charge(target)) + water.water(ph) - water.water(target);
        }
    } closed;
};
inline constexpr family<&acid_demand_models::closed> acid_demand{};

}  // namespace wortmath::liquor
