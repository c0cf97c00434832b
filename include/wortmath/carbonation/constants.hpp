// Numbers of the chapter on carbonation that several of its formulas share.
#pragma once

namespace wortmath::carbonation::detail {

inline constexpr double g_per_mol_co2 = 44.0095;
inline constexpr double g_per_mol_water = 18.015268;
inline constexpr double g_per_volume = 1.9768;  // one volume of CO2, real gas at 0 degC and 1 atm: 44.0095 g / 22.2633 L

// Balling: 2.0665 g of extract make 1.0000 ethanol, 0.9565 CO2 and 0.11 yeast. Printed as 0.462860; a text that misprints
// 0.9695 is corrected by the sum.
inline constexpr double g_co2_per_g_extract = 0.9565 / 2.0665;

}  // namespace wortmath::carbonation::detail
