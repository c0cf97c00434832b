#include "wortmath/room.hpp"
#include "table.hpp"

WORTMATH_TOPIC(room)
