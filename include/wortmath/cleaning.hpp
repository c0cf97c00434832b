// Cleaning and sanitising solutions.
#pragma once

#include "wortmath/cleaning/dose.hpp"

namespace wortmath::cleaning {

inline constexpr auto families = list_families(dose);

}  // namespace wortmath::cleaning
