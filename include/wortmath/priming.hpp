// Sugar, speise and unfinished extract: the carbon dioxide that comes after fermentation.
#pragma once

#include "wortmath/priming/alcohol_added.hpp"
#include "wortmath/priming/carbonation.hpp"
#include "wortmath/priming/dose.hpp"
#include "wortmath/priming/fermentable.hpp"
#include "wortmath/priming/speise.hpp"
#include "wortmath/priming/sugar_yield.hpp"
#include "wortmath/priming/unfinished.hpp"

namespace wortmath::priming {
inline constexpr auto families = list_families(sugar_yield, dose, carbonation, alcohol_added, fermentable, unfinished, speise);
}
