#include "wortmath/yeast.hpp"
#include "table.hpp"

WORTMATH_TOPIC(yeast)
