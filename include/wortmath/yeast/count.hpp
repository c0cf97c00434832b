// A count of cells is a plain number: 180e9. Brewers say "180 billion", and 180 would pass for a count.
#pragma once

#include "wortmath/model.hpp"

namespace wortmath::yeast {

inline constexpr const char* count_refusal = "fewer than a million cells is no pitch: type the full count, 180e9 and not 180";

template <class T>
constexpr T counted(T cells, T answer) {
    return select(cells > 0.0, select(cells < 1e6, T(undefined), answer), answer);
}

}  // namespace wortmath::yeast
