// The mash: heat, volume, and what the grain keeps.
#pragma once

#include "wortmath/mash/absorption.hpp"
#include "wortmath/mash/decoction.hpp"
#include "wortmath/mash/infusion.hpp"
#include "wortmath/mash/initial_temperature.hpp"
#include "wortmath/mash/malt_heat.hpp"
#include "wortmath/mash/slaking_heat.hpp"
#include "wortmath/mash/slaking_rise.hpp"
#include "wortmath/mash/strike.hpp"
#include "wortmath/mash/volume.hpp"

namespace wortmath::mash {

inline constexpr auto families = list_families(absorption, decoction, infusion, initial_temperature, malt_heat, slaking_heat, slaking_rise, strike, volume);

}  // namespace wortmath::mash
