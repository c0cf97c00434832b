// What a beer line takes, besides its resistance.
#pragma once

namespace wortmath::dispense::detail {

inline constexpr double bar_per_metre = 0.0980665;  // of lift, per kg/L

template <class T>
constexpr T hydrostatic(T density, T lift) {
    return bar_per_metre * (density / 1000.0) * lift;
}

}  // namespace wortmath::dispense::detail
