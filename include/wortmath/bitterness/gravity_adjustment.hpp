#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

namespace detail {

// 1 up to 1.050, then a fifth of a unit of gravity halves the utilisation.
template <class T>
constexpr T divisor_above_1_050(T G) {
    return 1.0 + most(T(0.0), (G - 1.050) / 0.2);
}

}  // namespace detail

struct gravity_adjustment_models {
    static constexpr const char* question = "By what factor does the gravity of the wort scale the utilisation of hops?";

    struct tinseth : model<struct tinseth, unit::ratio(unit::gravity_20_20)> {
        static constexpr facts about{.source = "G. Tinseth, Hop Utilization Numbers, author's own web article, about 1995-97",
                                     .status = evidence::primary,
                                     .use = "with the utilisation of the same name, which contains it",
                                     .accuracy = "part of a formula that repeats the author's table within half its last digit",
                                     .note =
                                         "1.0528 at 1.050 and 1 at 1.0557, not 1 at 1.050: the factor belongs to its own utilisation; the gravity is the "
                                         "mean over the boil"};
        static constexpr input inputs[]{{"boil_gravity", validated{1.030, 1.130}, detail::wort_gravity}};

        template <class T>
        static constexpr T formula(T G) {
            return 1.65 * power(0.000125, G - 1.0);
        }
    } tinseth;

    struct rager : model<struct rager, unit::ratio(unit::gravity_20_20)> {
        static constexpr facts about{.source =
                                         "J. Rager, Calculating Hop Bitterness in Beer, Zymurgy 13(4) special issue, 1990, 53-54, as reprinted in the "
                                         "Hops FAQ, revision 3, 11 Nov 1993",
                                     .status = evidence::secondary,
                                     .use = "with the utilisations rager, rager_table and garetz_1993, which contain it",
                                     .note =
                                         "misprints of the article: .050 where 1.050 is meant, and 0.24 for 1.096 where its formula gives 0.23 "
                                         "(B. Szymczak, Home Brew Digest, 6 May 1992); 1.050 is used"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}};

        template <class T>
        static constexpr T formula(T G) {
            return 1.0 / detail::divisor_above_1_050(G);
        }
    } rager;

    struct daniels : model<struct daniels, unit::ratio(unit::gravity_20_20)> {
        static constexpr facts about{.source = "R. Daniels, Designing Great Beers, Brewers Publications, 1996; recalled",
                                     .status = evidence::memory,
                                     .use = "with the utilisations daniels_whole and daniels_pellet, which contain it",
                                     .note = "the same rule as rager"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}};

        template <class T>
        static constexpr T formula(T G) {
            return 1.0 / detail::divisor_above_1_050(G);
        }
    } daniels;

    struct garetz_1994 : model<struct garetz_1994, unit::ratio(unit::gravity_20_20)> {
        static constexpr facts about{.source = "M. Garetz, Using Hops, HopTech, 1994; recalled",
                                     .status = evidence::memory,
                                     .use = "with the utilisation of the same name, which contains it",
                                     .note =
                                         "takes the gravity in the kettle, as boil_gravity.garetz_1994 gives it; that the factor stays at 1 below 1.050 is "
                                         "our decision, not confirmed for the original"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}};

        template <class T>
        static constexpr T formula(T BG) {
            return 1.0 / detail::divisor_above_1_050(BG);
        }
    } garetz_1994;

    struct hosom : model<struct hosom, unit::ratio(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{.source = "J.-P. Hosom, author's own article on gravity and utilisation",
                                     .status = evidence::primary,
                                     .use = "to see that gravity may matter little for hops boiled less than half an hour",
                                     .accuracy = "homebrew experiments that found no effect at short times",
                                     .note = "0.966 at 1.050 for an hour; belongs to no other utilisation of this catalogue"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}, {"boil_minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T slope = let("slope", 1.0 + 0.39 * least(T(10.0), most(T(0.0), t - 30.0)));
            T x = let("x", slope * (G - 1.0));
            return select(x <= 0.0, T(1.0), most(T(0.0), 1.0 - 2.0 * exp(-1.0 / x)));
        }
    } hosom;
};
inline constexpr family<&gravity_adjustment_models::tinseth> gravity_adjustment{};

}  // namespace wortmath::bitterness
