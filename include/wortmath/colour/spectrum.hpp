#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

namespace detail {
// The four coefficients of the average beer, in one place: they are from memory.
inline constexpr struct {
    double steep_share = 0.02465, steep_nm = 17.591, flat_share = 0.97535, flat_nm = 82.122;
} average_beer;
}  // namespace detail

struct spectrum_models {
    static constexpr const char* question = "How does the absorbance of beer change with the wavelength, relative to 430 nm?";

    struct de_lange_average : model<struct de_lange_average, unit::ratio(unit::nanometres)> {
        static constexpr facts about{.source = "A. J. deLange, J. Am. Soc. Brew. Chem. 66(3):143-150, 2008; also his chapter Color in C. Bamforth (ed.), "
                                               "Brewing Materials and Processes, 2016",
                                     .status = evidence::memory,
                                     .use = "a beer of which only the colour is known",
                                     .accuracy = "one number explains about 92 % of the spectral information; about 4 Lab units off for one ale of 6.8 SRM",
                                     .note = "mean of 99 beers, some fruit beers among them, which makes it redder than all-malt beer; not for cherry, fruit and "
                                             "coloured beers"};
        static constexpr input inputs[]{{"wavelength", only{380, 780}}};

        template <class T>
        static constexpr T formula(T l) {
            constexpr auto c = detail::average_beer;
            return c.steep_share * exp(-(l - 430.0) / c.steep_nm) + c.flat_share * exp(-(l - 430.0) / c.flat_nm);
        }
    } de_lange_average;

    // A spectrum that is a straight line on a logarithmic scale.
    struct log_linear : model<struct log_linear, unit::ratio(unit::nanometres, unit::ratio)> {
        static constexpr facts about{.source = "J. A. S. Viggiano, Rochester Institute of Technology, 2006 (abstract: the observation); form of this project",
                                     .status = evidence::secondary,
                                     .use = "a laboratory gives the absorbance at 430 nm and at one more wavelength",
                                     .note = "the straight line holds reasonably, not perfectly, for beer and wort; the decay length is 434.29/linner_index nm"};
        static constexpr input inputs[]{{"wavelength", only{380, 780}}, {"linner_index", possible{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T l, T HL) {
            return power(10.0, -(HL / 1000.0) * (l - 430.0));
        }
    } log_linear;

    // Caramel and kilned malts on one side, black and roast malts on the other.
    struct two_group : model<struct two_group, unit::ratio(unit::nanometres, unit::fraction)> {
        static constexpr facts about{.source = "D. J. Bies, R. M. Hansen, poster 56, MBAA/ASBC Brewing Summit 2010 (the two ratios, primary); the exponential "
                                               "shape is of this project",
                                     .status = evidence::derived,
                                     .use = "the share of roast malt is known; with 0 and 1 an honest band of uncertainty beside the average beer",
                                     .accuracy = "against the average beer in one 1 cm cell: CIEDE2000 3.3 to 3.4 at 10 SRM, 5.7 to 6.0 at 20 SRM",
                                     .note = "roast_share is the share of degL times mass that black and roast malts bring, base malt left out; the printed "
                                             "absorbances at 500 nm (0.5374 and 0.7802 for 20 SRM) imply a 1 cm cell without saying so"};
        static constexpr input inputs[]{{"wavelength", only{380, 780}}, {"roast_share", only{0, 1}}};

        template <class T>
        static constexpr T formula(T l, T roast_share) {
            T steps = (l - 430.0) / 70.0;
            return (1.0 - roast_share) * power(0.5374 * 12.7 / 20.0, steps) + roast_share * power(0.7802 * 12.7 / 20.0, steps);
        }
    } two_group;
};
inline constexpr family<&spectrum_models::de_lange_average> spectrum{};

}  // namespace wortmath::colour
