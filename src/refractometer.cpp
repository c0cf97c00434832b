#include "wortmath/refractometer.hpp"
#include "table.hpp"

WORTMATH_TOPIC(refractometer)
