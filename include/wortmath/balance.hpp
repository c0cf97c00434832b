#pragma once

#include "wortmath/balance/after_boil.hpp"
#include "wortmath/balance/blend.hpp"
#include "wortmath/balance/blend_ratio.hpp"
#include "wortmath/balance/boil_down.hpp"
#include "wortmath/balance/dilute.hpp"
#include "wortmath/balance/strengthen.hpp"
#include "wortmath/balance/top_up.hpp"

namespace wortmath::balance {
inline constexpr auto families = list_families(blend, blend_ratio, dilute, boil_down, after_boil, strengthen, top_up);
}
