#include "wortmath/gravity.hpp"
#include "table.hpp"

WORTMATH_TOPIC(gravity)
