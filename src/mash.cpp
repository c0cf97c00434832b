#include "wortmath/mash.hpp"
#include "table.hpp"

WORTMATH_TOPIC(mash)
