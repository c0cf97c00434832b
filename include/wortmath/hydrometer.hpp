#pragma once

#include "wortmath/hydrometer/calibrate.hpp"
#include "wortmath/hydrometer/correct.hpp"
#include "wortmath/hydrometer/correct_plato.hpp"
#include "wortmath/hydrometer/surface_tension_shift.hpp"

namespace wortmath::hydrometer {
inline constexpr auto families = list_families(correct, correct_plato, calibrate, surface_tension_shift);
}
