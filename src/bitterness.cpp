#include "wortmath/bitterness.hpp"
#include "table.hpp"

WORTMATH_TOPIC(bitterness)
