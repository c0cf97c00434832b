#include "wortmath/colour.hpp"
#include "table.hpp"

WORTMATH_TOPIC(colour)
