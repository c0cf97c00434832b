// Finished beer: density, strength, energy.
#pragma once

#include "wortmath/beer/alcohol_by_mass.hpp"
#include "wortmath/beer/alcohol_by_volume.hpp"
#include "wortmath/beer/alcohol_mass.hpp"
#include "wortmath/beer/carbohydrate.hpp"
#include "wortmath/beer/density.hpp"
#include "wortmath/beer/energy.hpp"
#include "wortmath/beer/energy_of_serving.hpp"
#include "wortmath/beer/label_energy_kilocalorie.hpp"
#include "wortmath/beer/label_energy_kilojoule.hpp"
#include "wortmath/beer/real_extract_from_density.hpp"

namespace wortmath::beer {

inline constexpr auto families = list_families(density, real_extract_from_density, alcohol_by_volume, alcohol_by_mass, alcohol_mass, energy, energy_of_serving,
                                               label_energy_kilojoule, label_energy_kilocalorie, carbohydrate);

}  // namespace wortmath::beer
