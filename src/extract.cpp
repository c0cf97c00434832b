#include "wortmath/extract.hpp"
#include "table.hpp"

WORTMATH_TOPIC(extract)
