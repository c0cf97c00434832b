// Heat: mixing, cooling, boiling.
#pragma once

#include "wortmath/thermal/boiling_point_elevation.hpp"
#include "wortmath/thermal/cooling_water.hpp"
#include "wortmath/thermal/counterflow_chiller.hpp"
#include "wortmath/thermal/effectiveness.hpp"
#include "wortmath/thermal/ice.hpp"
#include "wortmath/thermal/ice_result.hpp"
#include "wortmath/thermal/immersion_chiller.hpp"
#include "wortmath/thermal/immersion_time.hpp"
#include "wortmath/thermal/latent_heat.hpp"
#include "wortmath/thermal/mix.hpp"
#include "wortmath/thermal/specific_heat.hpp"

namespace wortmath::thermal {

inline constexpr auto families = list_families(boiling_point_elevation, cooling_water, counterflow_chiller, effectiveness, ice, ice_result, immersion_chiller,
                                               immersion_time, latent_heat, mix, specific_heat);

}  // namespace wortmath::thermal
