#pragma once

#include "wortmath/bitterness/alpha_dosed.hpp"
#include "wortmath/bitterness/altitude_factor.hpp"
#include "wortmath/bitterness/average_boil_gravity.hpp"
#include "wortmath/bitterness/balanced_bitterness.hpp"
#include "wortmath/bitterness/bitterness_units.hpp"
#include "wortmath/bitterness/boil_gravity.hpp"
#include "wortmath/bitterness/cellar_retention.hpp"
#include "wortmath/bitterness/from_addition.hpp"
#include "wortmath/bitterness/gravity_adjustment.hpp"
#include "wortmath/bitterness/hopped_extract.hpp"
#include "wortmath/bitterness/hopping_rate.hpp"
#include "wortmath/bitterness/hopping_rate_factor.hpp"
#include "wortmath/bitterness/isomerisation.hpp"
#include "wortmath/bitterness/isomerisation_alpha_left.hpp"
#include "wortmath/bitterness/isomerisation_degraded.hpp"
#include "wortmath/bitterness/isomerisation_fractions.hpp"
#include "wortmath/bitterness/isomerisation_peak_time.hpp"
#include "wortmath/bitterness/isomerisation_profile.hpp"
#include "wortmath/bitterness/isomerisation_rate.hpp"
#include "wortmath/bitterness/kettle_cooling.hpp"
#include "wortmath/bitterness/kettle_cooling_time.hpp"
#include "wortmath/bitterness/mass_for_target.hpp"
#include "wortmath/bitterness/oxidised_alpha.hpp"
#include "wortmath/bitterness/partial_boil.hpp"
#include "wortmath/bitterness/post_boil.hpp"
#include "wortmath/bitterness/products.hpp"
#include "wortmath/bitterness/ratio.hpp"
#include "wortmath/bitterness/relative_utilisation.hpp"
#include "wortmath/bitterness/sensory_bitterness.hpp"
#include "wortmath/bitterness/sensory_bitterness_spread.hpp"
#include "wortmath/bitterness/solubility_limit.hpp"
#include "wortmath/bitterness/utilisation.hpp"

namespace wortmath::bitterness {

inline constexpr auto families = list_families(
    alpha_dosed, from_addition, mass_for_target, utilisation, hopped_extract, gravity_adjustment, boil_gravity, average_boil_gravity, hopping_rate,
    hopping_rate_factor, isomerisation_rate, isomerisation_fractions, isomerisation_peak_time, isomerisation, isomerisation_alpha_left, isomerisation_degraded,
    isomerisation_profile, relative_utilisation, kettle_cooling, kettle_cooling_time, post_boil, altitude_factor, solubility_limit, partial_boil,
    cellar_retention, bitterness_units, oxidised_alpha, sensory_bitterness, sensory_bitterness_spread, ratio, balanced_bitterness);

}  // namespace wortmath::bitterness
