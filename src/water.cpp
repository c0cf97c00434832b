#include "wortmath/water.hpp"
#include "table.hpp"

WORTMATH_TOPIC(water)
