// The published cubics from gravity to extract and their inverse. They stand alone since extract.density.asbc_20 and
// the two families of gravity need them, and those need extract.density.
#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract::detail {

// The gravity of an extract in one step, 1.3e-5 off up to 20 degP: what to_gravity.rational publishes, and a start for Newton's method.
template <class T>
constexpr T rational_gravity(T P) {
    return 1.0 + P / (258.6 - P / 258.2 * 227.1);
}
template <class T>
constexpr T rational_extract(T S) {
    return 258.6 * (S - 1.0) / (1.0 + 227.1 / 258.2 * (S - 1.0));
}

struct cubic {
    double c0, c1, c2, c3;

    template <class T>
    constexpr T extract(T S) const {
        return poly(S, c0, c1, c2, c3);
    }
    // Three steps reach rounding wherever one of these cubics is used, S 0.97 to 1.40.
    template <class T>
    constexpr T gravity(T P) const {
        cubic const c = *this;
        return newton<3>(
            rational_gravity(P), [=](T S) { return poly(S, c.c0, c.c1, c.c2, c.c3) - P; },
            [=](T S) { return poly(S, c.c1, 2.0 * c.c2, 3.0 * c.c3); });
    }
};

inline constexpr cubic asbc{-616.868, 1111.14, -630.272, 135.997};
inline constexpr cubic nbs{-669.5622, 1262.7794, -775.6821, 182.4601};
inline constexpr cubic manning{-676.67, 1286.4, -800.47, 190.74};
inline constexpr cubic plato_17_5{-668.962, 1262.45, -776.43, 182.94};
inline constexpr cubic buhl{-613.9427, 1102.9079, -622.5576, 133.5892};

}  // namespace wortmath::extract::detail
