// Carbon dioxide: as a gas, in water and in beer.
#pragma once

#include "wortmath/carbonation/compressibility.hpp"
#include "wortmath/carbonation/concentration.hpp"
#include "wortmath/carbonation/concentration_from_mass_fraction.hpp"
#include "wortmath/carbonation/equilibrium.hpp"
#include "wortmath/carbonation/fugacity_coefficient.hpp"
#include "wortmath/carbonation/henry_constant.hpp"
#include "wortmath/carbonation/molar_volume.hpp"
#include "wortmath/carbonation/pressure.hpp"
#include "wortmath/carbonation/residual.hpp"
#include "wortmath/carbonation/second_virial.hpp"
#include "wortmath/carbonation/solubility.hpp"
#include "wortmath/carbonation/volumes.hpp"

namespace wortmath::carbonation {
inline constexpr auto families = list_families(second_virial, fugacity_coefficient, compressibility, molar_volume, concentration, volumes,
                                               concentration_from_mass_fraction, henry_constant, solubility, equilibrium, pressure, residual);
}
