#pragma once

#include "wortmath/model.hpp"

namespace wortmath {
namespace word {
// The temperature at which a strength by volume is stated.
enum class reference { at_20C, at_60F };
}  // namespace word

template <>
struct spelled<word::reference> {
    static constexpr const char* names[]{"20C", "60F"};
};
}  // namespace wortmath
