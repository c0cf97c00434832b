#include "wortmath/dispense.hpp"
#include "table.hpp"

WORTMATH_TOPIC(dispense)
