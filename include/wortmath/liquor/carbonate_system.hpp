// Carbonic acid in water at one temperature, closed to the air: what all the balances of alkalinity and pH share.
#pragma once

#include "wortmath/liquor/carbonate_pk1.hpp"
#include "wortmath/liquor/carbonate_pk2.hpp"
#include "wortmath/liquor/water_pk.hpp"

namespace wortmath::liquor {

template <class T>
struct carbonate_system {
    T pk1, pk2, pkw;

    static constexpr carbonate_system at(T t) {
        return {carbonate_pk1.plummer_busenberg.formula(t), carbonate_pk2.plummer_busenberg.formula(t), water_pk.harned_owen.formula(t)};
    }

    // H, K1 and K2 enter only as H/K1 and K2/H.
    constexpr T first(T ph) const { return power(10.0, pk1 - ph); }   // CO2 per HCO3
    constexpr T second(T ph) const { return power(10.0, ph - pk2); }  // CO3 per HCO3

    // phi = HCO3 + 2 CO3 as shares: the mean charge of the carbonate.
    constexpr T charge(T ph) const {
        T co2 = first(ph), co3 = second(ph);
        return (1.0 + 2.0 * co3) / (1.0 + co2 + co3);
    }
    constexpr T charge_slope(T ph) const {
        T co2 = first(ph), co3 = second(ph), sum = 1.0 + co2 + co3;
        return detail::ln_10 * (co2 + co3 + 4.0 * co2 * co3) / square(sum);
    }

    // w = 1000 (Kw/H - H): the water's own alkalinity, mEq/L.
    constexpr T water(T ph) const { return 1000.0 * (power(10.0, ph - pkw) - power(10.0, -ph)); }
    constexpr T water_slope(T ph) const { return 1000.0 * detail::ln_10 * (power(10.0, ph - pkw) + power(10.0, -ph)); }
};

}  // namespace wortmath::liquor
