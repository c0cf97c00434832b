// Litres and grams of a wort, taken as a sucrose solution, and of water at the same temperature.
#pragma once

#include "wortmath/extract/density.hpp"

namespace wortmath::balance::detail {

template <class T>
constexpr T grams_of(T litres, T P, T t) {
    return litres * wortmath::extract::density.icumsa.formula(P / 100.0, t);
}
template <class T>
constexpr T litres_of(T grams, T P, T t) {
    return grams / wortmath::extract::density.icumsa.formula(P / 100.0, t);
}
template <class T>
constexpr T litres_of_water(T grams, T t) {
    return grams / water::density.ptb_1990.formula(t);
}

}  // namespace wortmath::balance::detail
