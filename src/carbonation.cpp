#include "wortmath/carbonation.hpp"
#include "table.hpp"

WORTMATH_TOPIC(carbonation)
