#include "wortmath/cleaning.hpp"
#include "table.hpp"

WORTMATH_TOPIC(cleaning)
