// Carbon dioxide in the air of a room.
#pragma once

#include "wortmath/room/caution.hpp"
#include "wortmath/room/co2_concentration.hpp"
#include "wortmath/room/co2_release.hpp"

namespace wortmath::room {
inline constexpr auto families = list_families(co2_release, co2_concentration, caution);
}
