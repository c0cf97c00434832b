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
            T H = let("H", power(10.0, -ph));
            T K1 = let("K1", power(10.0, -carbonate_pk1.plummer_busenberg.formula(t)));
            T K2 = let("K2", power(10.0, -carbonate_pk2.plummer_busenberg.formula(t)));
            T D = let("D", square(H) + K1 * H + K1 * K2);
            return {{square(H) / D, K1 * H / D, K1 * K2 / D}};
        }
    } equilibrium;
};
inline constexpr family<&carbonate_fractions_models::equilibrium> carbonate_fractions{};

}  // namespace wortmath::liquor
