// The additive model of a fermenting beer: Balling's extract and alcohol, Lorentz-Lorenz refraction. reading goes
// forward, final_gravity and the families of two instruments find what goes with a reading.
#pragma once

#include "wortmath/attenuation/alcohol_by_mass_from_real_extract.hpp"
#include "wortmath/attenuation/real_extract.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/refractometer/cautions.hpp"
#include "wortmath/refractometer/extract_refraction.hpp"
#include "wortmath/refractometer/mixture_index.hpp"

namespace wortmath::refractometer::detail {

// Lorentz-Lorenz X of a beer from original extract, apparent extract, the gravity that goes with it, and its extract.
template <class T>
constexpr T refraction_of_beer(T original, T apparent, T gravity, T extract_refraction) {
    T real = attenuation::real_extract.balling.unguarded(original, apparent);
    T alcohol = attenuation::alcohol_by_mass_from_real_extract.balling.unguarded(original, real);
    return mixture_index.lorentz_lorenz.refraction(alcohol, real, constants::water_20C * gravity, extract_refraction);
}

template <class T>
constexpr T refraction_of_reading(T brix) {
    return refraction_from_index(refractometer::index.icumsa_1974.formula(brix));
}

// The plane through the additive model: see two_instrument_*.additive_linear.
template <class T>
struct plane {
    T alcohol_by_volume, real_extract, original_extract;
};
template <class T>
constexpr plane<T> plane_of_pair(T brix, T gravity, T wort_factor) {
    T e = wort_factor - 1.0;
    T s = gravity - 1.0;
    T g = (brix - e * (0.02222 + 121.190 * s)) / (1.0 + 0.515873 * e);
    return {-0.29318 + 1.48718 * g - 361.968 * s, 0.02222 + 0.515873 * g + 121.190 * s, 0.10721 + 2.63689 * g - 408.205 * s};
}

// The original extract between most(apparent, 0.5) and 40 degP whose beer of this gravity gives this reading. The
// refraction rises with it, nearly in a straight line, so a slope by difference serves.
template <class T>
constexpr T original_from_pair(T brix, T gravity, T wort_factor) {
    T apparent = extract::from_gravity.asbc.formula(gravity);
    T lowest = most(apparent, T(0.5));
    T target = refraction_of_reading(brix);
    auto const surplus = [=](T p) -> T { return refraction_of_beer(p, apparent, gravity, extract_refraction.from_wort.formula(p, wort_factor * p)) - target; };
    T start = least(T(40.0), most(lowest, plane_of_pair(brix, gravity, wort_factor).original_extract));
    T p = newton<6>(start, surplus, [=](T x) -> T { return (surplus(x + 1e-4) - surplus(x)) * 1e4; });
    // A hair of room at both ends, since the reading of an unfermented wort comes from a calculation too.
    T within = least(T(40.0), most(lowest, p));
    return select(brix >= wort_factor * apparent - 1e-9, select(fabs(p - within) <= 1e-9, within, undefined), undefined);
}

// The plane is 0.19 degP off itself, so its own extract may overstep the fit range by that much.
inline constexpr const char* plane_holds_when = "holds for worts of 6 to 20 degP and apparent attenuations of 40 to 85 %; the model additive holds elsewhere";
template <class T>
constexpr bool plane_holds(T brix, T gravity, T wort_factor) {
    T p = plane_of_pair(brix, gravity, wort_factor).original_extract, a = (p - extract::from_gravity.asbc.formula(gravity)) / p;
    return p >= 5.8 && p <= 20.2 && a >= 0.39 && a <= 0.86;
}

inline constexpr const char* pair_refusal =
    "no beer gives these two readings: the refractometer must show at least the wort factor times the apparent extract of the hydrometer (where it shows just "
    "that, nothing has fermented), and the original extract must come out between 0.5 and 40 degP; check both readings, their temperatures and the zero of the "
    "refractometer";

}  // namespace wortmath::refractometer::detail
