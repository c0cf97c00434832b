#pragma once

#include "wortmath/extract/density.hpp"
#include "wortmath/gravity/from_density.hpp"
#include "wortmath/gravity/to_density.hpp"

namespace wortmath::gravity {

namespace detail {
// Mass fraction of sucrose. extract.from_density.icumsa refuses below -0.10 and above 0.90; the gravities that can be
// converted reach from -0.14 to 0.94, where ICUMSA's polynomial still rises.
template <class T>
constexpr T sucrose_of(T rho, T t) {
    wortmath::extract::detail::sucrose<T> const s(t);
    T d = rho - s.water;
    return newton<5>(
        d / (386.0 * (1.0 + 0.35e-3 * d)), [=](T w) { return w * s.excess(w) - d; }, [=](T w) { return s.slope(w); });
}
}  // namespace detail

struct convert_models {
    static constexpr const char* question = "What does a gravity on one scale read on another?";

    // In C++, convert_to<unit::gravity_20_20>(g) takes and gives typed scales and needs no words.
    struct icumsa : model<struct icumsa, unit::converted_gravity(unit::gravity, word::gravity_scale, word::gravity_scale)> {
        static constexpr facts about{.source =
                                         "this project's own derivation: definitions of the scales, and sucrose after ICUMSA where the liquid "
                                         "temperature changes",
                                     .status = evidence::derived,
                                     .use = "the only bridge between gravity scales",
                                     .accuracy = "exact by definition while the liquid temperature stays; else exact for sucrose solutions",
                                     .note =
                                         "d 20/4 taken for SG 20/20 costs 0.45 degP; if a final gravity so misread decides bottling, 3.5 to 4.5 g/L of "
                                         "sugar stay hidden, 0.9 to 1 volumes of CO2 in a closed bottle"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}, {"from_scale"}, {"to_scale"}};

        template <class T>
        static constexpr T formula(T S, word::gravity_scale from_scale, word::gravity_scale to_scale) {
            scale_facts const from = facts_of(from_scale), to = facts_of(to_scale);
            T rho = let("density", to_density.definition.formula(S, T(from.water_temperature), T(from.air_density)));
            if (from.liquid_temperature != to.liquid_temperature) {
                T w = let("w", detail::sucrose_of(rho, T(from.liquid_temperature)));
                rho = wortmath::extract::density.icumsa.formula(w, T(to.liquid_temperature));
            }
            return from_density.definition.formula(rho, T(to.water_temperature), T(to.air_density));
        }
    } icumsa;
};
inline constexpr family<&convert_models::icumsa> convert{};

namespace detail {
template <class Gravity>
inline constexpr word::gravity_scale word_of = [] {
    static_assert(sizeof(Gravity) == 0, "this type names no gravity scale");
    return word::gravity_scale{};
}();
#define WORTMATH_SCALE(name) \
    template <>              \
    inline constexpr word::gravity_scale word_of<unit::name> = word::gravity_scale::name;
WORTMATH_SCALE(gravity_20_20)
WORTMATH_SCALE(gravity_20_20_true)
WORTMATH_SCALE(gravity_20_4)
WORTMATH_SCALE(gravity_17_5_17_5)
WORTMATH_SCALE(gravity_15_15)
WORTMATH_SCALE(gravity_15_4)
WORTMATH_SCALE(gravity_60F_60F)
WORTMATH_SCALE(gravity_60F_60F_apparent)
#undef WORTMATH_SCALE
}  // namespace detail

// gravity.convert.icumsa with the scales told by the types: convert_to<unit::gravity_20_20>(unit::gravity_15_15(1.050)).
template <class To, class From>
constexpr To convert_to(From g, policy how = policy::raise) {
    return To(convert(how, g, detail::word_of<From>, detail::word_of<To>).value);
}

}  // namespace wortmath::gravity
