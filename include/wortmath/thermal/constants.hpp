// Heats that this library's kettle, mash and cooling balances share.
#pragma once

namespace wortmath::thermal {

inline constexpr double heat_of_water = 4.19;                // kJ/(kg K), mean of 20 to 100 degC from IAPWS-IF97 (4.178 to 4.217)
inline constexpr double heat_of_ice = 2.10;                  // kJ/(kg K), IAPWS-06 at 0 degC; 2.03 is the mean from -18 degC, 0.3 % of the ice
inline constexpr double heat_of_fusion = 333.4;              // kJ/kg, IAPWS-06 at 0 degC
inline constexpr double kg_per_s_per_g_per_h = 1.0 / 3.6e6;  // a flow in kg/s from g/h

}  // namespace wortmath::thermal
