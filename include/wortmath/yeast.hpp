// Yeast: how much, how alive, how it grows.
#pragma once

#include "wortmath/yeast/dry_mass.hpp"
#include "wortmath/yeast/pitch.hpp"
#include "wortmath/yeast/slurry_volume.hpp"
#include "wortmath/yeast/starter.hpp"
#include "wortmath/yeast/viability.hpp"

namespace wortmath::yeast {

inline constexpr auto families = list_families(dry_mass, pitch, slurry_volume, starter, viability);

}  // namespace wortmath::yeast
