#pragma once

#include "wortmath/extract/cubics.hpp"
#include "wortmath/extract/from_density.hpp"
#include "wortmath/gravity/to_density.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct from_gravity_models {
    static constexpr const char* question = "How many degrees Plato belong to a specific gravity?";

    // The trade's degrees Plato: what a number without a named formula means.
    struct asbc : model<struct asbc, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "fit to Table 1 of the ASBC Methods of Analysis, itself the apparent specific gravity "
                                               "20/20 of Plato 1900",
                                     .status = evidence::secondary,
                                     .use = "the trade's degrees Plato up to 20 degP, 25 at most",
                                     .accuracy = "0.005 degP to Plato's table up to 20 degP, 0.010 at 25; above ICUMSA by 0.001 at 10 and "
                                                 "0.011 degP at 20",
                                     .note = "misprinted with 135.977 for 135.997 and 1114.14 for 1111.14 (3 degP too high everywhere); "
                                             "-0.003 degP at a gravity of 1 comes from the fit and is not rounded away"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.106}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return detail::asbc.extract(S);
        }
    } asbc;

    // Follows the table of the National Bureau of Standards as far as brewing goes.
    struct nbs : model<struct nbs, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "fit to NBS Circular C440 (1942)",
                                     .status = evidence::secondary,
                                     .use = "above 20 degP",
                                     .accuracy = "0.0009 degBx (root mean square) to its table; 0.006 degP to Plato's table up to 20 "
                                                 "degP; above ICUMSA by 0.012 at 20 and 0.022 degP at 40",
                                     .note = "-0.005 degP at a gravity of 1 comes from the fit; with one digit more (182.46007, "
                                             "775.68212, 1262.7794, 669.56218) it is the same to 1e-4 degP"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.178}, possible{0.97, 1.40}}};

        template <class T>
        static constexpr T formula(T S) {
            return detail::nbs.extract(S);
        }
    } nbs;

    // Three terms that can be turned round in closed form.
    struct nbs_three_term : model<struct nbs_three_term, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "quoted as a fit to the NBS sucrose table, with terms in S and 1/S",
                                     .status = evidence::secondary,
                                     .use = "where an inverse without iteration is wanted, to 34 degP",
                                     .accuracy = "0.005 degP to Plato's table up to 20 degP; above ICUMSA by 0.011 at 20 and 0.020 degP "
                                                 "at 30"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.160}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return 28.14203 * S + 202.4427 - 230.5870 / S;
        }
    } nbs_three_term;

    // The rough sibling of the three terms.
    struct nbs_two_term : model<struct nbs_two_term, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "quoted as a fit to the NBS sucrose table, with a term in 1/S",
                                     .status = evidence::secondary,
                                     .use = "to repeat work that used it",
                                     .accuracy = "0.143 degP to Plato's table up to 20 degP"};
        static constexpr input inputs[]{{"gravity", validated{1.000, 1.178}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return 263.663 - 263.806 / S;
        }
    } nbs_two_term;

    // A parabola through 0 at a gravity of 1, easily done by hand.
    struct lincoln : model<struct lincoln, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "R. H. Lincoln, MBAA Tech. Quart. 24 (1987)",
                                     .status = evidence::secondary,
                                     .use = "by hand, to 20 degP",
                                     .accuracy = "0.008 degP to Plato's table up to 20 degP; 0.085 degP under ICUMSA at 30"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.083}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return (463.0 - 205.0 * S) * (S - 1.0);
        }
    } lincoln;

    // The parabola of the textbook.
    struct de_clerck : model<struct de_clerck, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "J. De Clerck, via G. Hall, Zymurgy, Summer 1995, p. 54",
                                     .status = evidence::memory,
                                     .use = "to repeat work that used it, to 20 degP",
                                     .accuracy = "0.006 degP to Plato's table up to 20 degP; 0.084 degP under ICUMSA at 30"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.083}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return poly(S, -463.37, 668.72, -205.347);
        }
    } de_clerck;

    // A parabola like De Clerck's, a little closer above 20 degP.
    struct rosendal_schmidt : model<struct rosendal_schmidt, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "I. Rosendal, F. Schmidt, J. Inst. Brew. 93 (1987) 373",
                                     .status = evidence::memory,
                                     .use = "to repeat work that used it, to 20 degP",
                                     .accuracy = "0.007 degP to Plato's table up to 20 degP; 0.064 degP under ICUMSA at 30"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.083}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return poly(S, -460.234, 662.649, -202.414);
        }
    } rosendal_schmidt;

    // For hydrometers marked at 60 degF.
    struct manning : model<struct manning, unit::plato(unit::gravity_60F_60F)> {
        static constexpr facts about{.source = "M. Manning, Brewing Techniques 1 (1993)",
                                     .status = evidence::memory,
                                     .use = "gravity read on the 60/60 degF scale",
                                     .accuracy = "0.004 at 10, 0.008 at 20 and 0.016 degP at 30 under ICUMSA",
                                     .note = "usually quoted without its temperature; 60/60 degF was found by agreement with ICUMSA, true "
                                             "and apparent cannot be told apart; an apparent 20/20 gravity reads 0.082 degP low at 20 "
                                             "degP"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.130}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return detail::manning.extract(S);
        }
    } manning;

    // For old saccharometers of 17.5 degC.
    struct plato_17_5 : model<struct plato_17_5, unit::plato(unit::gravity_17_5_17_5)> {
        static constexpr facts about{.source = "a saccharometer maker's description",
                                     .status = evidence::secondary,
                                     .use = "gravity read on the true 17.5/17.5 scale",
                                     .accuracy = "above ICUMSA by 0.003 at 10, 0.012 at 20 and 0.019 degP at 40, the gap between the data "
                                                 "of Plato and of ICUMSA",
                                     .note = "usually quoted without its temperature; 17.5/17.5 in vacuum was found by agreement with "
                                             "ICUMSA; an apparent 20/20 gravity reads 0.024 degP low at 20 degP"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.176}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return detail::plato_17_5.extract(S);
        }
    } plato_17_5;

    // One constant, at its best between 10 and 20 degP.
    struct buhl : model<struct buhl, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "Buhl, OSF preprint 9wfym",
                                     .status = evidence::primary,
                                     .use = "by hand, to 20 degP",
                                     .accuracy = "0.053 degP to Plato's table up to 20 degP; 0.202 degP under ICUMSA at 30"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.083}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return 260.4 - 260.4 / S;
        }
    } buhl;

    // A new fit that lies on the ASBC cubic.
    struct buhl_cubic : model<struct buhl_cubic, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "Buhl, OSF preprint 9wfym",
                                     .status = evidence::primary,
                                     .use = "to repeat work that used it",
                                     .accuracy = "0.006 degP to Plato's table up to 20 degP; above ICUMSA by 0.011 degP at 20",
                                     .note = "the last four digits of 613.9427 are from a copy, not from the preprint"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.106}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return detail::buhl.extract(S);
        }
    } buhl_cubic;

    // The formula of an instrument's manual.
    struct constant_260 : model<struct constant_260, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "an instrument manual",
                                     .status = evidence::primary,
                                     .use = "to check what an instrument shows",
                                     .accuracy = "0.084 degP to Plato's table up to 20 degP; 0.248 degP under ICUMSA at 30"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.083}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return 260.0 - 260.0 / S;
        }
    } constant_260;

    // The same form with another constant.
    struct constant_259 : model<struct constant_259, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "recalled, no source",
                                     .status = evidence::memory,
                                     .use = "to repeat work that used it",
                                     .accuracy = "0.160 degP to Plato's table up to 20 degP; 0.363 degP under ICUMSA at 30"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.083}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return 259.0 - 259.0 / S;
        }
    } constant_259;

    // Points divided by four, in the head.
    struct quarter : model<struct quarter, unit::plato(unit::gravity_20_20)> {
        static constexpr facts about{.source = "common practice, no source",
                                     .status = evidence::secondary,
                                     .use = "in the head, to 12 degP",
                                     .accuracy = "0.008 degP at 10, but 0.74 degP too high at 20"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.050}, possible{0.97, 1.20}}};

        template <class T>
        static constexpr T formula(T S) {
            return 250.0 * (S - 1.0);
        }
    } quarter;

    // Published from extract to gravity; turned round by Newton's method.
    struct hackbarth : model<struct hackbarth, unit::plato(unit::gravity_20_20_true)> {
        static constexpr facts about{.source = "J. Hackbarth, J. ASBC 69 (2011) 39, fit to the AOAC Brix tables",
                                     .status = evidence::secondary,
                                     .use = "true gravity 20/20, to 60 degP",
                                     .accuracy = "above ICUMSA by 0.001 at 10, 0.011 at 20 and 0.020 degP at 40",
                                     .note = "its gravities are true: an apparent one fed to it reads high"};
        static constexpr input inputs[]{{"gravity", validated{1.000, 1.300}, possible{0.97, 1.40}}};

        template <class T>
        static constexpr T gravity(T w) {
            return poly(w, 1.0, 0.3875135555, 0.09702881653, 0.3883357480, -1.782845295, 5.591472292, -11.00667976, 13.62230734, -10.33082001,
                        4.387787019, -0.7995558730);
        }
        template <class T>
        static constexpr T slope(T w) {
            return poly(w, 0.3875135555, 2.0 * 0.09702881653, 3.0 * 0.3883357480, 4.0 * -1.782845295, 5.0 * 5.591472292, 6.0 * -11.00667976,
                        7.0 * 13.62230734, 8.0 * -10.33082001, 9.0 * 4.387787019, 10.0 * -0.7995558730);
        }
        // Three steps reach rounding from a gravity of 0.97 to 1.40.
        template <class T>
        static constexpr T formula(T S) {
            return 100.0 * newton<3>(detail::rational_extract(S) / 100.0, [=](T w) { return gravity(w) - S; }, [](T w) { return slope(w); });
        }
    } hackbarth;

    // Any scale and any liquid temperature, through the density.
    struct icumsa : model<struct icumsa, unit::plato(unit::gravity, unit::celsius, unit::celsius, unit::density)> {
        static constexpr facts about{.source = "gravity.to_density.definition and extract.from_density.icumsa",
                                     .status = evidence::derived,
                                     .use = "any scale or temperature but the trade's, and inside mass balances",
                                     .accuracy = "0.015 degP to Plato's table up to 20 degP: the gap between the data of Plato and of "
                                                 "ICUMSA",
                                     .note = "without further arguments the gravity is taken as apparent 20/20; for a scale in vacuum "
                                             "give an air density of 0"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.97, 1.40}},
                                        {"liquid_temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}},
                                        {"water_temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}},
                                        {"air_density", only{0, 2}, otherwise{gravity::conventional_air}}};
        static constexpr const char* refusal =
            "no wort has this gravity with these temperatures: it would hold less than -10 or more than 90 degrees Plato. Check the "
            "temperatures of the liquid and of the water";

        template <class T>
        static constexpr T formula(T S, T t, T t_w, T a) {
            return 100.0 * from_density_models::icumsa::formula(gravity::to_density.definition.formula(S, t_w, a), t);
        }
    } icumsa;
};
inline constexpr family<&from_gravity_models::asbc> from_gravity{};

}  // namespace wortmath::extract
