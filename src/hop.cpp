#include "wortmath/hop.hpp"
#include "table.hpp"

WORTMATH_TOPIC(hop)
