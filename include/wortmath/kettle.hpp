// The kettle: heating, boiling off, wort kept by hops.
#pragma once

#include "wortmath/kettle/evaporated_volume.hpp"
#include "wortmath/kettle/evaporation.hpp"
#include "wortmath/kettle/heating_time.hpp"
#include "wortmath/kettle/hop_absorption.hpp"
#include "wortmath/kettle/net_power.hpp"

namespace wortmath::kettle {

inline constexpr auto families = list_families(evaporated_volume, evaporation, heating_time, hop_absorption, net_power);

}  // namespace wortmath::kettle
