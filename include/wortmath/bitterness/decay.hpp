#pragma once

#include "wortmath/math.hpp"

// Quotients of a first-order decay that are 0/0 at zero. Near zero a series takes over: the quotient itself would be
// accurate there, its derivative would not.
namespace wortmath::bitterness::detail {

// The mean of exp(-s) for s from 0 to z.
template <class T>
constexpr T phi(T z) {
    return select(fabs(z) < 0.02, poly(z, 1.0, -1.0 / 2, 1.0 / 6, -1.0 / 24, 1.0 / 120, -1.0 / 720, 1.0 / 5040, -1.0 / 40320), -expm1(-z) / z);
}

// |a - b|, with the slope that belongs to least(a, b) where both are equal.
template <class T>
constexpr T apart(T a, T b) {
    return select(a < b, b - a, a - b);
}

// The mean of exp(-s) for s between a and b, in any order.
template <class T>
constexpr T mean_decay(T a, T b) {
    return exp(-least(a, b)) * phi(apart(a, b));
}

// ln(1 + d)/d.
template <class T>
constexpr T log1p_ratio(T d) {
    return select(fabs(d) < 0.01, poly(d, 1.0, -1.0 / 2, 1.0 / 3, -1.0 / 4, 1.0 / 5, -1.0 / 6, 1.0 / 7, -1.0 / 8, 1.0 / 9), log1p(d) / d);
}

}  // namespace wortmath::bitterness::detail
