#pragma once

#include "wortmath/scale.hpp"

// What may be multiplied and added among the four quantities that look alike; everything else does not compile, above all
// iso-alpha acids in place of bitterness units. Both sides have to be meant for the same volume.
namespace wortmath {

constexpr unit::bitterness_units operator*(unit::alpha_dosed dose, unit::bitterness_yield yield) noexcept {
    return unit::bitterness_units(dose.value * yield.value);
}
constexpr unit::iso_alpha operator*(unit::alpha_dosed dissolved, unit::isomerisation_yield yield) noexcept {
    return unit::iso_alpha(dissolved.value * yield.value);
}

constexpr unit::bitterness_units operator+(unit::bitterness_units a, unit::bitterness_units b) noexcept { return unit::bitterness_units(a.value + b.value); }
constexpr unit::alpha_dosed operator+(unit::alpha_dosed a, unit::alpha_dosed b) noexcept { return unit::alpha_dosed(a.value + b.value); }
constexpr unit::iso_alpha operator+(unit::iso_alpha a, unit::iso_alpha b) noexcept { return unit::iso_alpha(a.value + b.value); }

}  // namespace wortmath
