// What the additive model is made of: refraction adds up by mass, the index does not.
#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer::detail {

// Lorentz and Lorenz: X = (n^2 - 1)/(n^2 + 2), and back.
template <class T>
constexpr T refraction_from_index(T n) {
    return (square(n) - 1.0) / (square(n) + 2.0);
}
template <class T>
constexpr T index_from_refraction(T X) {
    return sqrt((1.0 + 2.0 * X) / (1.0 - X));
}

// X over the density in g/cm3: cm3/g, sodium D line, 20 degC, against air.
inline constexpr double water_refraction = 0.20605784;
inline constexpr double ethanol_refraction = 0.27760;
inline constexpr double sucrose_refraction = 0.20650;  // dilute

}  // namespace wortmath::refractometer::detail
