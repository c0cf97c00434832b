// Extract: density and degrees Plato of wort, potentials, yields.
#pragma once

#include "wortmath/extract/as_is.hpp"
#include "wortmath/extract/brewhouse_efficiency.hpp"
#include "wortmath/extract/brewhouse_yield.hpp"
#include "wortmath/extract/concentration.hpp"
#include "wortmath/extract/congress.hpp"
#include "wortmath/extract/conversion_efficiency.hpp"
#include "wortmath/extract/density.hpp"
#include "wortmath/extract/dry_basis.hpp"
#include "wortmath/extract/first_wort.hpp"
#include "wortmath/extract/from_density.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/extract/gravity_from_points.hpp"
#include "wortmath/extract/iob_from_ebc.hpp"
#include "wortmath/extract/potential_from_imperial.hpp"
#include "wortmath/extract/potential_from_ppg.hpp"
#include "wortmath/extract/potential_from_quarter.hpp"
#include "wortmath/extract/potential_from_yield.hpp"
#include "wortmath/extract/ppg_from_potential.hpp"
#include "wortmath/extract/specific_volume.hpp"
#include "wortmath/extract/sucrose_potential.hpp"
#include "wortmath/extract/to_gravity.hpp"
#include "wortmath/extract/vessel_expansion.hpp"
#include "wortmath/extract/volume_ratio.hpp"

namespace wortmath::extract {

inline constexpr auto families = list_families(
    density, from_density, from_gravity, to_gravity, concentration, specific_volume, volume_ratio, vessel_expansion,
    sucrose_potential, potential_from_yield, potential_from_ppg, ppg_from_potential, potential_from_imperial,
    potential_from_quarter, gravity_from_points, iob_from_ebc, congress, dry_basis, as_is, brewhouse_yield,
    brewhouse_efficiency, first_wort, conversion_efficiency);

}  // namespace wortmath::extract
