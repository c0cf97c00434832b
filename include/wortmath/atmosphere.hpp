#pragma once

#include "wortmath/atmosphere/altitude.hpp"
#include "wortmath/atmosphere/pressure.hpp"
#include "wortmath/atmosphere/station_pressure.hpp"

namespace wortmath::atmosphere {
inline constexpr auto families = list_families(pressure, altitude, station_pressure);
}
