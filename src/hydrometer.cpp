#include "wortmath/hydrometer.hpp"
#include "table.hpp"

WORTMATH_TOPIC(hydrometer)
