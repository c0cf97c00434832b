#pragma once

#include "wortmath/liquor/atomic_weights.hpp"
#include "wortmath/liquor/carbonate_system.hpp"

namespace wortmath::liquor {

struct alkalinity_models {
    static constexpr const char* question = "What is the alkalinity of a water?";

    // From the figure of a water report.
    struct from_bicarbonate : model<struct from_bicarbonate, unit::milliequivalents_per_litre(unit::milligrams_per_litre)> {
        static constexpr facts about{.source = "one equivalent per mole of bicarbonate",
                                     .status = evidence::derived,
                                     .use = "a water report, at a pH below 8.5",
                                     .note = "in ppm as CaCO3 it is 0.820162 HCO3; above pH 8.5 carbonate counts too"};
        static constexpr input inputs[]{{"bicarbonate", validated{0, 500}}};

        template <class T>
        static constexpr T formula(T bicarbonate) {
            return bicarbonate / bicarbonate_mass;
        }
    } from_bicarbonate;

    // From total carbonate and pH: what a blend needs.
    struct carbonate : model<struct carbonate, unit::milliequivalents_per_litre(unit::millimoles_per_litre, unit::ph, unit::celsius)> {
        static constexpr facts about{.source =
                                         "charge balance of closed carbonate water with the constants of Plummer and Busenberg 1982 and Harned "
                                         "and Owen 1958",
                                     .status = evidence::derived,
                                     .use = "water whose total carbonate and pH are known",
                                     .note = "counted from the level of CO2 in water, not from the end point of a titration. Zero ionic strength"};
        static constexpr input inputs[]{{"total_carbonate"}, {"ph", validated{4.3, 9}}, {"temperature", validated{0, 60}, otherwise{25.0}}};

        template <class T>
        static constexpr T formula(T total, T ph, T t) {
            carbonate_system<T> water = carbonate_system<T>::at(t);
            return total * water.charge(ph) + water.water(ph);
        }
    } carbonate;
};
inline constexpr family<&alkalinity_models::from_bicarbonate> alkalinity{};

}  // namespace wortmath::liquor
