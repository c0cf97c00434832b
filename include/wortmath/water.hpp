#pragma once

#include "wortmath/water/boiling_temperature.hpp"
#include "wortmath/water/density.hpp"
#include "wortmath/water/dissolved_air.hpp"
#include "wortmath/water/oxygen_saturation.hpp"
#include "wortmath/water/pressure_factor.hpp"
#include "wortmath/water/saturation_pressure.hpp"

namespace wortmath::water {
inline constexpr auto families = list_families(density, pressure_factor, dissolved_air, saturation_pressure, boiling_temperature, oxygen_saturation);
}
