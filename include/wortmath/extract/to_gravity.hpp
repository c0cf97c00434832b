#pragma once

#include "wortmath/extract/cubics.hpp"
#include "wortmath/extract/density.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/gravity/from_density.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

namespace detail {

// The extract of an inverse is validated, and possible, where the gravity that it answers is.
template <class Forward>
consteval input extract_of(const Forward&) {
    limits const s = wortmath::detail::limits_of<Forward>.of[0];
    return {"extract", validated{Forward::formula(s.valid_lo), Forward::formula(s.valid_hi)},
            possible{Forward::formula(s.lo), Forward::formula(s.hi)}};
}

// The lower root of a + b S + c S^2 = P, for the parabolas that bend down.
template <class T>
constexpr T lower_root(T P, double a, double b, double c) {
    return (b - sqrt(b * b + 4.0 * c * (P - a))) / (-2.0 * c);
}

// Named apart since the limits of its model need the inverse.
template <class T>
constexpr T cubic_gravity(T P) {
    return poly(P, 1.000019, 3.865613e-3, 1.296425e-5, 5.701128e-8);
}
constexpr double cubic_extract(double S) {
    return newton<6>(
        rational_extract(S), [=](double P) { return cubic_gravity(P) - S; },
        [](double P) { return poly(P, 3.865613e-3, 2.0 * 1.296425e-5, 3.0 * 5.701128e-8); });
}

}  // namespace detail

struct to_gravity_models {
    static constexpr const char* question = "Which specific gravity belongs to an extract in degrees Plato?";

    // The inverse of the trade's cubic.
    struct asbc : model<struct asbc, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.asbc (fit to Table 1 of the ASBC Methods of Analysis, "
                                               "itself the apparent specific gravity 20/20 of Plato 1900)",
                                     .status = evidence::secondary,
                                     .use = "the trade's degrees Plato up to 20 degP, 25 at most",
                                     .accuracy = "as extract.from_gravity.asbc; the inverse itself to rounding",
                                     .note = "1.0000116 at 0 degP: the fit does not pass through 1"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.asbc)};

        template <class T>
        static constexpr T formula(T P) {
            return detail::asbc.gravity(P);
        }
    } asbc;

    struct nbs : model<struct nbs, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.nbs (fit to NBS Circular C440 (1942))",
                                     .status = evidence::secondary,
                                     .use = "above 20 degP",
                                     .accuracy = "as extract.from_gravity.nbs; the inverse itself to rounding",
                                     .note = "1.0000185 at 0 degP: the fit does not pass through 1"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.nbs)};

        template <class T>
        static constexpr T formula(T P) {
            return detail::nbs.gravity(P);
        }
    } nbs;

    struct nbs_three_term : model<struct nbs_three_term, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.nbs_three_term (quoted as a fit to the NBS sucrose table, "
                                               "with terms in S and 1/S)",
                                     .status = evidence::secondary,
                                     .use = "where an inverse without iteration is wanted, to 34 degP",
                                     .accuracy = "as extract.from_gravity.nbs_three_term; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.nbs_three_term)};

        template <class T>
        static constexpr T formula(T P) {
            return (-(202.4427 - P) + sqrt(square(202.4427 - P) + 4.0 * 28.14203 * 230.5870)) / (2.0 * 28.14203);
        }
    } nbs_three_term;

    struct nbs_two_term : model<struct nbs_two_term, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.nbs_two_term (quoted as a fit to the NBS sucrose table, "
                                               "with a term in 1/S)",
                                     .status = evidence::secondary,
                                     .use = "to repeat work that used it",
                                     .accuracy = "as extract.from_gravity.nbs_two_term; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.nbs_two_term)};

        template <class T>
        static constexpr T formula(T P) {
            return 263.806 / (263.663 - P);
        }
    } nbs_two_term;

    struct lincoln : model<struct lincoln, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.lincoln (R. H. Lincoln, MBAA Tech. Quart. 24 (1987))",
                                     .status = evidence::secondary,
                                     .use = "by hand, to 20 degP",
                                     .accuracy = "as extract.from_gravity.lincoln; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.lincoln)};

        template <class T>
        static constexpr T formula(T P) {
            return (668.0 - sqrt(668.0 * 668.0 - 820.0 * (463.0 + P))) / 410.0;
        }
    } lincoln;

    struct de_clerck : model<struct de_clerck, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.de_clerck (J. De Clerck, via G. Hall, Zymurgy, Summer "
                                               "1995, p. 54)",
                                     .status = evidence::memory,
                                     .use = "to repeat work that used it, to 20 degP",
                                     .accuracy = "as extract.from_gravity.de_clerck; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.de_clerck)};

        template <class T>
        static constexpr T formula(T P) {
            return detail::lower_root(P, -463.37, 668.72, -205.347);
        }
    } de_clerck;

    struct rosendal_schmidt : model<struct rosendal_schmidt, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.rosendal_schmidt (I. Rosendal, F. Schmidt, J. Inst. Brew. "
                                               "93 (1987) 373)",
                                     .status = evidence::memory,
                                     .use = "to repeat work that used it, to 20 degP",
                                     .accuracy = "as extract.from_gravity.rosendal_schmidt; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.rosendal_schmidt)};

        template <class T>
        static constexpr T formula(T P) {
            return detail::lower_root(P, -460.234, 662.649, -202.414);
        }
    } rosendal_schmidt;

    struct manning : model<struct manning, unit::gravity_60F_60F(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.manning (M. Manning, Brewing Techniques 1 (1993))",
                                     .status = evidence::memory,
                                     .use = "for a hydrometer marked at 60 degF",
                                     .accuracy = "as extract.from_gravity.manning; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.manning)};

        template <class T>
        static constexpr T formula(T P) {
            return detail::manning.gravity(P);
        }
    } manning;

    struct plato_17_5 : model<struct plato_17_5, unit::gravity_17_5_17_5(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.plato_17_5 (a saccharometer maker's description)",
                                     .status = evidence::secondary,
                                     .use = "for an old saccharometer of 17.5 degC",
                                     .accuracy = "as extract.from_gravity.plato_17_5; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.plato_17_5)};

        template <class T>
        static constexpr T formula(T P) {
            return detail::plato_17_5.gravity(P);
        }
    } plato_17_5;

    struct buhl : model<struct buhl, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.buhl (Buhl, OSF preprint 9wfym)",
                                     .status = evidence::primary,
                                     .use = "by hand, to 20 degP",
                                     .accuracy = "as extract.from_gravity.buhl; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.buhl)};

        template <class T>
        static constexpr T formula(T P) {
            return 260.4 / (260.4 - P);
        }
    } buhl;

    struct buhl_cubic : model<struct buhl_cubic, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.buhl_cubic (Buhl, OSF preprint 9wfym)",
                                     .status = evidence::primary,
                                     .use = "to repeat work that used it",
                                     .accuracy = "as extract.from_gravity.buhl_cubic; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.buhl_cubic)};

        template <class T>
        static constexpr T formula(T P) {
            return detail::buhl.gravity(P);
        }
    } buhl_cubic;

    struct constant_260 : model<struct constant_260, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.constant_260 (an instrument manual)",
                                     .status = evidence::primary,
                                     .use = "to check what an instrument shows",
                                     .accuracy = "as extract.from_gravity.constant_260; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.constant_260)};

        template <class T>
        static constexpr T formula(T P) {
            return 260.0 / (260.0 - P);
        }
    } constant_260;

    struct constant_259 : model<struct constant_259, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.constant_259 (recalled, no source)",
                                     .status = evidence::memory,
                                     .use = "to repeat work that used it",
                                     .accuracy = "as extract.from_gravity.constant_259; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.constant_259)};

        template <class T>
        static constexpr T formula(T P) {
            return 259.0 / (259.0 - P);
        }
    } constant_259;

    struct quarter : model<struct quarter, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "inverse of extract.from_gravity.quarter (common practice, no source)",
                                     .status = evidence::secondary,
                                     .use = "in the head, to 12 degP",
                                     .accuracy = "as extract.from_gravity.quarter; the inverse itself to rounding"};
        static constexpr input inputs[]{detail::extract_of(from_gravity.quarter)};

        template <class T>
        static constexpr T formula(T P) {
            return 1.0 + P / 250.0;
        }
    } quarter;

    // One fraction, and the start of every iteration here.
    struct rational : model<struct rational, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "in wide use, author not known",
                                     .status = evidence::secondary,
                                     .use = "by hand, to 20 degP",
                                     .accuracy = "1.3e-5 to Plato's table up to 20 degP, 5.8e-5 at 30, 29e-5 at 40",
                                     .note = "misprinted as P/(258.6 - P/(258.2 x 227.1)); meant is (P/258.2) 227.1"};
        static constexpr input inputs[]{
            {"extract", validated{0, 30}, possible{detail::rational_extract(0.97), detail::rational_extract(1.20)}}};

        template <class T>
        static constexpr T formula(T P) {
            return detail::rational_gravity(P);
        }
    } rational;

    struct cubic : model<struct cubic, unit::gravity_20_20(unit::plato)> {
        static constexpr facts about{.source = "recalled, no source",
                                     .status = evidence::memory,
                                     .use = "to repeat work that used it, to 20 degP",
                                     .accuracy = "0.2e-5 to Plato's table at 5 to 20 degP, 1.9e-5 at 0, 6e-5 at 30"};
        static constexpr input inputs[]{{"extract", validated{0, 30}, possible{detail::cubic_extract(0.97), detail::cubic_extract(1.20)}}};

        template <class T>
        static constexpr T formula(T P) {
            return detail::cubic_gravity(P);
        }
    } cubic;

    // As published: ten terms, for true gravities up to syrups.
    struct hackbarth : model<struct hackbarth, unit::gravity_20_20_true(unit::plato)> {
        static constexpr facts about{.source = "J. Hackbarth, J. ASBC 69 (2011) 39, fit to the AOAC Brix tables",
                                     .status = evidence::secondary,
                                     .use = "true gravity 20/20, to 60 degP",
                                     .accuracy = "0.4e-5 to Plato's table up to 60 degP",
                                     .note = "its gravities are true: read as apparent they are 5, 10 and 16e-5 low at 10, 20 and 30 degP"};
        static constexpr input inputs[]{{"extract", validated{0, 60},
                                         possible{from_gravity_models::hackbarth::formula(0.97), from_gravity_models::hackbarth::formula(1.40)}}};

        template <class T>
        static constexpr T formula(T P) {
            return from_gravity_models::hackbarth::gravity(P / 100.0);
        }
    } hackbarth;

    // Any scale and any liquid temperature, through the density.
    struct icumsa : model<struct icumsa, unit::gravity(unit::plato, unit::celsius, unit::celsius, unit::density)> {
        static constexpr facts about{.source = "extract.density.icumsa and gravity.from_density.definition",
                                     .status = evidence::derived,
                                     .use = "any scale or temperature but the trade's, and inside mass balances",
                                     .accuracy = "5e-5 to Plato's table at 20 and 7e-5 at 25 degP: the gap between the data of Plato and "
                                                 "of ICUMSA",
                                     .note = "without further arguments the gravity is apparent 20/20; for a scale in vacuum give an air "
                                             "density of 0"};
        static constexpr input inputs[]{{"extract", validated{-3, 70}, possible{-10, 90}},
                                        {"liquid_temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}},
                                        {"water_temperature", validated{0, 100}, possible{-5, 105}, otherwise{20.0}},
                                        {"air_density", only{0, 2}, otherwise{gravity::conventional_air}}};

        template <class T>
        static constexpr T formula(T P, T t, T t_w, T a) {
            return gravity::from_density.definition.formula(density_models::icumsa::formula(P / 100.0, t), t_w, a);
        }
    } icumsa;
};
inline constexpr family<&to_gravity_models::asbc> to_gravity{};

}  // namespace wortmath::extract
