#include "wortmath/attenuation.hpp"
#include "table.hpp"

WORTMATH_TOPIC(attenuation)
