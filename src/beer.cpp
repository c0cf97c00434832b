#include "wortmath/beer.hpp"
#include "table.hpp"

WORTMATH_TOPIC(beer)
