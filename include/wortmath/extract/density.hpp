#pragma once

#include "wortmath/extract/cubics.hpp"
#include "wortmath/model.hpp"
#include "wortmath/water/density.hpp"

namespace wortmath::extract {

namespace detail {

// ICUMSA's polynomial at one temperature: what a mass fraction w of sucrose adds to the density of water is w excess(w).
template <class T>
struct sucrose {
    T water, c1, c2, c3, c4, c5;
    static constexpr double c6 = -17.2890;

    constexpr explicit sucrose(T t)
        : water(water::density.ptb_1990.formula(t)),
          c1(poly(tau(t), 385.1761, -46.2720, 59.7712, -47.2207, 18.3184)),
          c2(poly(tau(t), 135.3705, -7.1720, 7.2491, -21.6977, 12.3081)),
          c3(poly(tau(t), 40.9299, 1.1597, 12.3630, 27.6301)),
          c4(poly(tau(t), -3.9643, 5.1126, -35.4791)),
          c5(poly(tau(t), 13.4853, 17.5254)) {}

    static constexpr T tau(T t) { return (t - 20.0) / 100.0; }

    constexpr T excess(T w) const { return c1 + w * (c2 + w * (c3 + w * (c4 + w * (c5 + w * c6)))); }
    constexpr T density(T w) const { return water + w * excess(w); }
    constexpr T slope(T w) const { return c1 + w * (2.0 * c2 + w * (3.0 * c3 + w * (4.0 * c4 + w * (5.0 * c5 + w * (6.0 * c6))))); }
};

}  // namespace detail

struct density_models {
    static constexpr const char* question = "What is the density of wort, taken as a sucrose solution, of a strength at a temperature?";

    // The only one that reaches from ice water to the boil; wort is taken as sucrose of the same extract.
    struct icumsa : model<struct icumsa, unit::density(unit::fraction, unit::celsius)> {
        static constexpr facts about{
            .source = "Z. Bubnik, P. Kadlec, D. Urban, M. Bruhns, Sugar Technologists Manual, 8th ed. 1995, p. 164",
            .status = evidence::secondary,
            .use = "wort at any temperature, and every mass balance",
            .accuracy = "stated near 0.01 % (recalled); heavier than Plato's table of 1900 by 0.05 kg/m3 at 20 % and 0.10 kg/m3 at 31 to "
                        "40 %",
            .note = "the same numbers stand in Llano-Restrepo 2005; ICUMSA SPS-4 and OIML G 14 after Bettin, Emmerich, Spieweck, "
                    "Rosenhauer, Zuckerindustrie 123 (1998) 341 are recalled, not read. The first data reach about 80 degC (recalled); "
                    "below a mass fraction of 0 it is a smooth continuation for dry beer, above 0.70 (malt syrup) an extrapolation. One "
                    "copy prints -3.9646 for -3.9643, which is used: 7e-5 kg/m3 at 70 %"};
        static constexpr input inputs[]{{"mass_fraction", validated{-0.03, 0.70}, possible{-0.10, 0.90}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}}};

        template <class T>
        static constexpr T formula(T w, T t) {
            return detail::sucrose<T>(t).density(w);
        }
    } icumsa;

    // Weighs wort whose degrees Plato were read off the trade's cubic.
    struct asbc_20 : model<struct asbc_20, unit::density(unit::fraction)> {
        static constexpr facts about{.source = "the ASBC cubic through the apparent specific gravity 20/20, air 1.2 kg/m3",
                                     .status = evidence::derived,
                                     .use = "at 20 degC only, for degrees Plato that came from extract.from_gravity.asbc",
                                     .accuracy = "exact inverse of the cubic",
                                     .note = "at a mass fraction of 0 it is 0.012 kg/m3 above water, as the cubic gives -0.003 degP at a "
                                             "gravity of 1"};
        static constexpr input inputs[]{{"mass_fraction", only{0, 0.25}}};

        template <class T>
        static constexpr T formula(T w) {
            constexpr double air = 1.2, of_water = water::density.ptb_1990.formula(20.0);
            return air + detail::asbc.gravity(100.0 * w) * (of_water - air);
        }
    } asbc_20;
};
inline constexpr family<&density_models::icumsa> density{};

}  // namespace wortmath::extract
