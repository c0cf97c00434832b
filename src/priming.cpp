#include "wortmath/priming.hpp"
#include "table.hpp"

WORTMATH_TOPIC(priming)
