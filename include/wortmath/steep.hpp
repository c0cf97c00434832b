// Grain steeped in hot water, without a mash.
#pragma once

#include "wortmath/steep/extract.hpp"

namespace wortmath::steep {

inline constexpr auto families = list_families(extract);

}  // namespace wortmath::steep
