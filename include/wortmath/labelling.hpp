// What the law makes of a strength.
#pragma once

#include "wortmath/labelling/alcohol_tolerance.hpp"
#include "wortmath/labelling/duty_strength.hpp"

namespace wortmath::labelling {

inline constexpr auto families = list_families(alcohol_tolerance, duty_strength);

}  // namespace wortmath::labelling
