#include "wortmath/fermentation.hpp"
#include "table.hpp"

WORTMATH_TOPIC(fermentation)
