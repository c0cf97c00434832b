// Brewing water: salts, hardness and alkalinity, pH and acid.
#pragma once

#include "wortmath/liquor/acid_demand.hpp"
#include "wortmath/liquor/acid_dose.hpp"
#include "wortmath/liquor/acid_equivalents.hpp"
#include "wortmath/liquor/acid_strength.hpp"
#include "wortmath/liquor/activity.hpp"
#include "wortmath/liquor/alkalinity.hpp"
#include "wortmath/liquor/blend.hpp"
#include "wortmath/liquor/carbonate_fractions.hpp"
#include "wortmath/liquor/carbonate_pk1.hpp"
#include "wortmath/liquor/carbonate_pk2.hpp"
#include "wortmath/liquor/clark_degrees_from_equivalents.hpp"
#include "wortmath/liquor/dechlorination.hpp"
#include "wortmath/liquor/equivalents_from_clark_degrees.hpp"
#include "wortmath/liquor/equivalents_from_french_degrees.hpp"
#include "wortmath/liquor/equivalents_from_german_degrees.hpp"
#include "wortmath/liquor/equivalents_from_grains_per_gallon.hpp"
#include "wortmath/liquor/equivalents_from_millimoles.hpp"
#include "wortmath/liquor/equivalents_from_ppm_caco3.hpp"
#include "wortmath/liquor/french_degrees_from_equivalents.hpp"
#include "wortmath/liquor/german_degrees_from_equivalents.hpp"
#include "wortmath/liquor/grains_per_gallon_from_equivalents.hpp"
#include "wortmath/liquor/hardness.hpp"
#include "wortmath/liquor/ion_balance.hpp"
#include "wortmath/liquor/mash_ph.hpp"
#include "wortmath/liquor/millimoles_from_equivalents.hpp"
#include "wortmath/liquor/ph.hpp"
#include "wortmath/liquor/ph_shift.hpp"
#include "wortmath/liquor/ppm_caco3_from_equivalents.hpp"
#include "wortmath/liquor/residual_alkalinity.hpp"
#include "wortmath/liquor/salt.hpp"
#include "wortmath/liquor/sulphate_chloride.hpp"
#include "wortmath/liquor/total_carbonate.hpp"
#include "wortmath/liquor/water_pk.hpp"

namespace wortmath::liquor {

inline constexpr auto families = list_families(
    acid_demand, acid_dose, acid_equivalents, acid_strength, activity, alkalinity, blend, carbonate_fractions, carbonate_pk1, carbonate_pk2,
    clark_degrees_from_equivalents, dechlorination, equivalents_from_clark_degrees, equivalents_from_french_degrees, equivalents_from_german_degrees,
    equivalents_from_grains_per_gallon, equivalents_from_millimoles, equivalents_from_ppm_caco3, french_degrees_from_equivalents,
    german_degrees_from_equivalents, grains_per_gallon_from_equivalents, hardness, ion_balance, mash_ph, millimoles_from_equivalents, ph, ph_shift,
    ppm_caco3_from_equivalents, residual_alkalinity, salt, sulphate_chloride, total_carbonate, water_pk);

}  // namespace wortmath::liquor
