#include "wortmath/ethanol.hpp"
#include "table.hpp"

WORTMATH_TOPIC(ethanol)
