#include "wortmath/atmosphere.hpp"
#include "table.hpp"

WORTMATH_TOPIC(atmosphere)
