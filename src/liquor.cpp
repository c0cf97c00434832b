#include "wortmath/liquor.hpp"
#include "table.hpp"

WORTMATH_TOPIC(liquor)
