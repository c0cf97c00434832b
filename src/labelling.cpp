#include "wortmath/labelling.hpp"
#include "table.hpp"

WORTMATH_TOPIC(labelling)
