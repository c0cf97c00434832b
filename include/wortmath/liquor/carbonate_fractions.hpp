#pragma once

#include "wortmath/liquor/carbonate_system.hpp"

namespace wortmath::liquor {

struct carbonate_fractions_models {
    static constexpr const char* question = "In which forms is the carbonate of a water at a pH?";

    struct shares {
        unit::fraction co2, bicarbonate, carbonate;
        static constexpr const char* names[]{"co2", "bicarbonate", "carbonate"};
    };

    struct equilibrium : model<struct equilibrium, shares(unit::ph, unit::celsius)> {
        static constexpr facts about{.source = "mass action with the constants of liquor.carbonate_pk1 and liquor.carbonate_pk2 (Plummer and Busenberg 1982)",
                                     .status = evidence::derived,
                                     .note = "at infinite dilution"};
        static constexpr input inputs[]{{"ph", validated{4.3, 9}}, {"temperature", validated{0, 90}, otherwise{25.0}}};

        template <class T>
        static constexpr several<T, 3> formula(T ph, T t) {
            carbonate_system<T> water = carbonate_system<T>::at(t);
            T co2 = let("H/K1", water.first(ph));
            T co3 = let("K2/H", water.second(ph));
            T D = let("D", 1.0 + co2 + co3);
            return {{co2 / D, 1.0 / D, co3 / D}};
        }
    } equilibrium;
};
inline constexpr family<&carbonate_fractions_models::equilibrium> carbonate_fractions{};

}  // namespace wortmath::liquor
