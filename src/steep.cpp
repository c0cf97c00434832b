#include "wortmath/steep.hpp"
#include "table.hpp"

WORTMATH_TOPIC(steep)
