#include "wortmath/package.hpp"
#include "table.hpp"

WORTMATH_TOPIC(package)
