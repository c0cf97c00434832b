// Mixtures of water and ethanol.
#pragma once

#include "wortmath/ethanol/alcohol_by_mass_from_density.hpp"
#include "wortmath/ethanol/alcohol_by_mass_from_volume.hpp"
#include "wortmath/ethanol/alcohol_by_volume_from_mass.hpp"
#include "wortmath/ethanol/density.hpp"

namespace wortmath::ethanol {

inline constexpr auto families = list_families(density, alcohol_by_mass_from_density, alcohol_by_volume_from_mass, alcohol_by_mass_from_volume);

}  // namespace wortmath::ethanol
