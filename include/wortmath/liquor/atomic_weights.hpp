// Masses of the ions and compounds of brewing water, g/mol, from the abridged standard atomic weights of IUPAC.
#pragma once

namespace wortmath::liquor {

namespace element {
inline constexpr double H = 1.008, C = 12.011, O = 15.999, Na = 22.98977, Mg = 24.305, P = 30.973762, S = 32.06, Cl = 35.45, K = 39.0983, Ca = 40.078;
}

inline constexpr double sulphate_mass = element::S + 4.0 * element::O;          // 96.056
inline constexpr double carbonate_mass = element::C + 3.0 * element::O;         // 60.008
inline constexpr double bicarbonate_mass = element::H + carbonate_mass;         // 61.016
inline constexpr double hydroxide_mass = element::O + element::H;               // 17.007
inline constexpr double water_mass = 2.0 * element::H + element::O;             // 18.015
inline constexpr double calcium_carbonate_mass = element::Ca + carbonate_mass;  // 100.086
inline constexpr double calcium_oxide_mass = element::Ca + element::O;          // 56.077

}  // namespace wortmath::liquor
