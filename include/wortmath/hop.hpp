#pragma once

#include "wortmath/hop/ageing.hpp"
#include "wortmath/hop/ageing_initial_alpha.hpp"
#include "wortmath/hop/ageing_rate.hpp"
#include "wortmath/hop/ageing_temperature_factor.hpp"
#include "wortmath/hop/alpha_units.hpp"
#include "wortmath/hop/equivalent_mass.hpp"
#include "wortmath/hop/storage_index.hpp"
#include "wortmath/hop/storage_index_loss.hpp"

namespace wortmath::hop {

inline constexpr auto families =
    list_families(alpha_units, equivalent_mass, storage_index, storage_index_loss, ageing, ageing_initial_alpha, ageing_rate, ageing_temperature_factor);

}  // namespace wortmath::hop
