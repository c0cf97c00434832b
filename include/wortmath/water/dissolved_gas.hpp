// The IAPWS equation for how a gas dissolves in water, which several topics use for their own gas.
#pragma once

#include "wortmath/water/saturation_pressure.hpp"

namespace wortmath::water::detail {

// IAPWS G7-04 (2004), Table 2 for water: kH = fugacity per mole fraction.
struct dissolved_gas {
    double a, b, c;
};
inline constexpr dissolved_gas carbon_dioxide{-8.55445, 4.01195, 9.52345};
inline constexpr dissolved_gas oxygen{-9.44833, 4.43822, 11.42005};

// kH in MPa.
template <class T>
constexpr T henry_iapws_g7_04(T t, dissolved_gas gas) {
    T reduced = (t + constants::zero_celsius) / 647.096;
    T tau = 1.0 - reduced;
    return 0.1 * saturation_pressure.iapws_sr1_86.formula(t) *
           exp(gas.a / reduced + gas.b * pow(tau, 0.355) / reduced + gas.c * pow(reduced, -0.41) * exp(tau));
}

}  // namespace wortmath::water::detail
