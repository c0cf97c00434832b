// From original to final gravity and back: extract, alcohol and attenuation.
#pragma once

#include "wortmath/attenuation/alcohol_by_mass.hpp"
#include "wortmath/attenuation/alcohol_by_mass_from_real_extract.hpp"
#include "wortmath/attenuation/alcohol_by_volume.hpp"
#include "wortmath/attenuation/apparent_attenuation.hpp"
#include "wortmath/attenuation/apparent_extract.hpp"
#include "wortmath/attenuation/apparent_factor.hpp"
#include "wortmath/attenuation/co2_released.hpp"
#include "wortmath/attenuation/difference_factor.hpp"
#include "wortmath/attenuation/final_gravity.hpp"
#include "wortmath/attenuation/original_extract.hpp"
#include "wortmath/attenuation/original_extract_from_apparent.hpp"
#include "wortmath/attenuation/original_extract_from_extracts.hpp"
#include "wortmath/attenuation/original_gravity_from_distillation.hpp"
#include "wortmath/attenuation/quotient.hpp"
#include "wortmath/attenuation/real_attenuation.hpp"
#include "wortmath/attenuation/real_attenuation_from_apparent.hpp"
#include "wortmath/attenuation/real_extract.hpp"
#include "wortmath/attenuation/real_extract_from_alcohol.hpp"
#include "wortmath/attenuation/real_factor.hpp"
#include "wortmath/attenuation/yeast_formed.hpp"

namespace wortmath::attenuation {

inline constexpr auto families = list_families(quotient, apparent_factor, real_factor, difference_factor, real_extract, real_extract_from_alcohol,
                                               apparent_extract, original_extract, original_extract_from_extracts, original_extract_from_apparent,
                                               alcohol_by_mass, alcohol_by_mass_from_real_extract, alcohol_by_volume, apparent_attenuation, real_attenuation,
                                               real_attenuation_from_apparent, final_gravity, co2_released, yeast_formed, original_gravity_from_distillation);

}  // namespace wortmath::attenuation
