// What one unit of each scale of hardness and alkalinity is in mEq/L.
#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/liquor/atomic_weights.hpp"
#include "wortmath/model.hpp"

namespace wortmath::liquor {

inline constexpr double mg_per_grain = 64.79891;  // exact
inline constexpr double equivalents_per_millimole = 2.0;
inline constexpr double equivalents_per_ppm_caco3 = 2.0 / calcium_carbonate_mass;                                               // 1/50.043
inline constexpr double equivalents_per_german_degree = 10.0 * 2.0 / calcium_oxide_mass;                                        // 10 mg CaO/L: 0.35665246
inline constexpr double equivalents_per_french_degree = 10.0 * equivalents_per_ppm_caco3;                                       // 10 mg CaCO3/L: 0.19982815
inline constexpr double equivalents_per_clark_degree = mg_per_grain / constants::l_per_imp_gal * equivalents_per_ppm_caco3;     // 0.28483040
inline constexpr double equivalents_per_grain_per_gallon = mg_per_grain / constants::l_per_us_gal * equivalents_per_ppm_caco3;  // 0.34206704

inline constexpr const char* hardness_source = "definitions of the scales with the abridged atomic weights of IUPAC";

}  // namespace wortmath::liquor
