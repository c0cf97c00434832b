// Exact factors and conventional constants that more than one chapter of the catalogue uses.
#pragma once

namespace wortmath::constants {

inline constexpr double g_per_lb = 453.59237;              // international pound, exact
inline constexpr double g_per_oz = 28.349523125;           // exact
inline constexpr double l_per_us_gal = 3.785411784;        // exact
inline constexpr double l_per_imp_gal = 4.54609;           // exact
inline constexpr double bar_per_psi = 0.0689475729316836;  // lbf/in2
inline constexpr double bar_per_atm = 1.01325;             // exact
inline constexpr double m_per_ft = 0.3048;                 // exact
inline constexpr double zero_celsius = 273.15;             // K, exact
inline constexpr double standard_gravity = 9.80665;        // m/s2, exact
inline constexpr double gas_constant = 8.31446261815324;   // J/(mol K), exact since 2019
inline constexpr double water_20C = 998.2067;               // kg/m3, turns SG 20/20 of wort and beer into a density
inline constexpr double ethanol_20C = 789.24;               // kg/m3, the legal value behind % vol

}  // namespace wortmath::constants
