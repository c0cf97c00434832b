#include "wortmath/balance.hpp"
#include "table.hpp"

WORTMATH_TOPIC(balance)
