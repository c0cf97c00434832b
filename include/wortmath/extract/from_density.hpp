#pragma once

#include "wortmath/extract/density.hpp"

namespace wortmath::extract {

struct from_density_models {
    static constexpr const char* question = "How strong is wort of a density at a temperature?";

    // Monotonic from -0.10 to 0.95, so that there is one answer at most.
    struct icumsa : model<struct icumsa, unit::fraction(unit::density, unit::celsius)> {
        static constexpr facts about{.source = "inverse of extract.density.icumsa (Sugar Technologists Manual, 8th ed. 1995, p. 164)",
                                     .status = evidence::secondary,
                                     .use = "a density meter's result, or mass over volume, at any temperature",
                                     .accuracy = "as extract.density.icumsa; the inverse itself 1e-15 in mass fraction",
                                     .note = "a mass fraction, not degrees Plato: 0.12 is 12 degP"};
        static constexpr input inputs[]{{"density", only{950, 1500}}, {"temperature", validated{0, 100}, possible{-5, 105}}};
        static constexpr double rounding = 1e-12;  // the density of a limit itself is not refused
        static constexpr const char* holds_when =
            "the density is that of a liquid with a mass fraction below -0.03 or above 0.70 at this temperature, where the sucrose table "
            "ends; "
            "the policy \"extrapolate\" computes it unvouched";
        static constexpr const char* refusal =
            "no wort has this density at this temperature: the mass fraction would lie below -0.10 or above 0.90. Check both, and that "
            "the density is in kg/m3";

        template <class T>
        static constexpr bool holds(T w, T, T) {
            return w >= -0.03 - rounding && w <= 0.70 + rounding;
        }
        template <class T>
        static constexpr T formula(T rho, T t) {
            detail::sucrose<T> const s(t);
            T d = rho - s.water;
            T w = newton<4>(
                d / (386.0 * (1.0 + 0.35e-3 * d)), [=](T x) { return x * s.excess(x) - d; }, [=](T x) { return s.slope(x); });
            return select(w >= -0.10 - rounding && w <= 0.90 + rounding, w, undefined);
        }
    } icumsa;

    // The trade's degrees Plato out of a density meter's result at 20 degC.
    struct asbc_20 : model<struct asbc_20, unit::fraction(unit::density)> {
        static constexpr double air = 1.2, of_water = water::density.ptb_1990.formula(20.0);
        static constexpr facts about{.source = "the ASBC cubic of the apparent specific gravity 20/20, air 1.2 kg/m3",
                                     .status = evidence::derived,
                                     .use = "at 20 degC only, where the trade's degrees Plato are wanted",
                                     .accuracy = "as extract.from_gravity.asbc, here to 25 degP",
                                     .note = "the density of water, 998.203 kg/m3, gives a mass fraction of -0.00003, as the cubic does "
                                             "not pass through 0"};
        static constexpr input inputs[]{{"density", only{of_water, density_models::asbc_20::formula(0.25)}}};

        template <class T>
        static constexpr T formula(T rho) {
            return detail::asbc.extract((rho - air) / (of_water - air)) / 100.0;
        }
    } asbc_20;
};
inline constexpr family<&from_density_models::icumsa> from_density{};

}  // namespace wortmath::extract
