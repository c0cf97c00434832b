#include "wortmath/kettle.hpp"
#include "table.hpp"

WORTMATH_TOPIC(kettle)
