// Gas and beer on the way to the tap.
#pragma once

#include "wortmath/dispense/altitude_addition.hpp"
#include "wortmath/dispense/blend_fraction.hpp"
#include "wortmath/dispense/blend_pressure.hpp"
#include "wortmath/dispense/line_length.hpp"
#include "wortmath/dispense/line_pressure.hpp"

namespace wortmath::dispense {
inline constexpr auto families = list_families(altitude_addition, line_length, line_pressure, blend_pressure, blend_fraction);
}
