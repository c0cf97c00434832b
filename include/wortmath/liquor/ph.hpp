#pragma once

#include "wortmath/liquor/carbonate_system.hpp"

namespace wortmath::liquor {

struct ph_models {
    static constexpr const char* question = "What is the pH of a water with this carbonate and alkalinity?";

    // The way to the pH of a blend: blend carbonate and alkalinity, never pH.
    struct carbonate : model<struct carbonate, unit::ph(unit::millimoles_per_litre, unit::milliequivalents_per_litre, unit::celsius)> {
        static constexpr facts about{.source =
                                         "charge balance of closed carbonate water with the constants of Plummer and Busenberg 1982 and Harned "
                                         "and Owen 1958",
                                     .status = evidence::derived,
                                     .note =
                                         "the alkalinity is counted from the level of CO2 in water: liquor.alkalinity.carbonate gives it. Zero "
                                         "ionic strength"};
        static constexpr input inputs[]{
            {"total_carbonate"}, {"alkalinity", validated{0, 10}, possible{0, 100}}, {"temperature", validated{0, 60}, otherwise{25.0}}};

        // The balance rises with pH everywhere; steps of one unit at most keep Newton's method on the way.
        template <class T>
        static constexpr T formula(T total, T alkalinity, T t) {
            carbonate_system<T> water = carbonate_system<T>::at(t);
            return newton<20>(
                T(7.0), [&](T ph) -> T { return total * water.charge(ph) + water.water(ph) - alkalinity; },
                [&](T ph) -> T {
                    T residual = total * water.charge(ph) + water.water(ph) - alkalinity;
                    return most(T(fabs(residual)), total * water.charge_slope(ph) + water.water_slope(ph));
                });
        }
    } carbonate;
};
inline constexpr family<&ph_models::carbonate> ph{};

}  // namespace wortmath::liquor
