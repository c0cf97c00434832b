#pragma once

#include "wortmath/model.hpp"

// What no model of bitterness and hops computes: infinite amounts, nothing to divide by, gravities that no kettle holds.
namespace wortmath::bitterness::detail {

inline constexpr double largest = 1.7976931348623157e308;
inline constexpr possible amount{0, largest};
inline constexpr possible some{above(0), largest};
inline constexpr possible wort_gravity{0.990, 1.300};

}  // namespace wortmath::bitterness::detail
