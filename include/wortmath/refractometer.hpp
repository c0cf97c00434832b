// The refractometer in wort and beer.
#pragma once

#include "wortmath/refractometer/apparent_extract_from_immersion.hpp"
#include "wortmath/refractometer/brix_at_20.hpp"
#include "wortmath/refractometer/brix_from_index.hpp"
#include "wortmath/refractometer/ethanol_index.hpp"
#include "wortmath/refractometer/extract_refraction.hpp"
#include "wortmath/refractometer/final_gravity.hpp"
#include "wortmath/refractometer/immersion_index.hpp"
#include "wortmath/refractometer/index.hpp"
#include "wortmath/refractometer/index_in_air.hpp"
#include "wortmath/refractometer/mixture_index.hpp"
#include "wortmath/refractometer/reading.hpp"
#include "wortmath/refractometer/temperature_correction.hpp"
#include "wortmath/refractometer/two_instrument_alcohol_by_volume.hpp"
#include "wortmath/refractometer/two_instrument_original_extract.hpp"
#include "wortmath/refractometer/two_instrument_original_gravity.hpp"
#include "wortmath/refractometer/two_instrument_real_extract.hpp"
#include "wortmath/refractometer/water_index.hpp"
#include "wortmath/refractometer/wort_correction.hpp"
#include "wortmath/refractometer/wort_factor.hpp"

namespace wortmath::refractometer {

inline constexpr auto families =
    list_families(wort_correction, wort_factor, temperature_correction, brix_at_20, final_gravity, two_instrument_alcohol_by_volume,
                  two_instrument_real_extract, two_instrument_original_extract, two_instrument_original_gravity, reading, index, brix_from_index, water_index,
                  index_in_air, ethanol_index, mixture_index, extract_refraction, immersion_index, apparent_extract_from_immersion);

}  // namespace wortmath::refractometer
