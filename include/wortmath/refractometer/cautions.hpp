// What has to stand beside every wort factor, every gravity and every strength that comes of a refractometer.
#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer::detail {

inline constexpr const char* wort_factor_note =
    "readings are raw. The wort factor belongs to the wort and the instrument. 1.04 is the habit (S. Terrill, author's article, 2010; 1.02 to 1.06 is met in "
    "the trade): the published formulas were used with it, no measurement behind it is known. Measured are 1.01 to 1.03: maltose 1.016 to 1.029, the wort of "
    "Savel 1971 1.016, lactose 1.016, glucose 1.009 (outside: fructose 0.978, glucose syrup 1.045 against dry mass). Measure your own (wort_factor.measured): "
    "0.02 in the factor moves the original extract by 2 % of its value and a strength from two instruments by 0.14 % vol";
inline constexpr const char* gravity_danger =
    "may be 2 points low or high, and 2 points of unexpected extract are about 1 volume of CO2 (2 g/L) too much: bottles may burst. It must not be the only "
    "evidence that fermentation has ended: ask for a hydrometer or density reading that stays equal for days, or a forced ferment, and follow the package "
    "maker's pressure limit";
inline constexpr const char* strength_danger =
    "an estimate, 0.3 % vol off and more, in either direction: not for a label, duty or anyone who must avoid alcohol";

// One region for every model that takes the factor: what wort_factor.measured rejects cannot be put in either.
inline constexpr input wort_factor_input{"wort_factor", only{0.95, 1.10}, otherwise{1.04}};

}  // namespace wortmath::refractometer::detail
