#include "wortmath/thermal.hpp"
#include "table.hpp"

WORTMATH_TOPIC(thermal)
