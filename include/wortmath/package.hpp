// Bottles, cans and kegs: how many, what pressure they see, and what that calls for.
#pragma once

#include "wortmath/package/bottle_count.hpp"
#include "wortmath/package/caution.hpp"
#include "wortmath/package/headspace_gas.hpp"
#include "wortmath/package/pressure.hpp"

namespace wortmath::package {
inline constexpr auto families = list_families(bottle_count, pressure, headspace_gas, caution);
}
