#pragma once

#include "wortmath/bitterness/alpha_dosed.hpp"
#include "wortmath/constants.hpp"

namespace wortmath::bitterness {

namespace detail {

// C is in mg/L for one ounce in one US gallon: exactly 28349.523125/3.785411784 = 7489.1517073.
template <class T>
constexpr T by_ounce_and_gallon(double C, T mass, T alpha, T volume, T utilisation) {
    T ounces = mass / constants::g_per_oz, gallons = volume / constants::l_per_us_gal;
    return C * ounces * alpha * utilisation / gallons;
}

}  // namespace detail

// One default without a rounded constant; the others keep a published rounding, so that printed examples can be repeated.
struct from_addition_models {
    static constexpr const char* question = "How many bitterness units does one hop addition bring?";

    struct exact : model<struct exact, unit::bitterness_units(unit::grams, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{.source = "definition",
                                     .status = evidence::derived,
                                     .use = "everything but the repetition of a printed example",
                                     .accuracy = "exact; the utilisation is good to about 30 %",
                                     .note = "additions sum; the volume is the one that the utilisation was published for, mostly the finished beer"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}, {"utilisation"}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume, T utilisation) {
            return alpha_dosed.exact.formula(mass, alpha, volume) * utilisation;
        }
    } exact;

    struct tinseth : model<struct tinseth, unit::bitterness_units(unit::grams, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{.source = "G. Tinseth, Hop Utilization Numbers, author's own web article, about 1995-97",
                                     .status = evidence::primary,
                                     .use = "examples in ounces and US gallons with the constant 7490",
                                     .accuracy = "0.011 % above exact",
                                     .note = "his form in grams and litres is exact"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}, {"utilisation"}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume, T utilisation) {
            return detail::by_ounce_and_gallon(7490.0, mass, alpha, volume, utilisation);
        }
    } tinseth;

    struct rager : model<struct rager, unit::bitterness_units(unit::grams, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{
            .source =
                "J. Rager, Calculating Hop Bitterness in Beer, Zymurgy 13(4) special issue, 1990, 53-54, as reprinted in the Hops FAQ, "
                "revision 3, 11 Nov 1993",
            .status = evidence::secondary,
            .use = "examples with the constant 7462",
            .accuracy = "0.36 % below exact",
            .note = "the article prints 7462, close to 10000/1.34 cut off; the Hops FAQ says that it should be 7490; 7462 is used, to repeat print"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}, {"utilisation"}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume, T utilisation) {
            return detail::by_ounce_and_gallon(7462.0, mass, alpha, volume, utilisation);
        }
    } rager;

    struct daniels : model<struct daniels, unit::bitterness_units(unit::grams, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{.source = "R. Daniels, Designing Great Beers, Brewers Publications, 1996",
                                     .status = evidence::secondary,
                                     .use = "examples with the constant 0.7489 and both percents",
                                     .accuracy = "0.002 % below exact"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}, {"utilisation"}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume, T utilisation) {
            return detail::by_ounce_and_gallon(7489.0, mass, alpha, volume, utilisation);
        }
    } daniels;

    struct garetz : model<struct garetz, unit::bitterness_units(unit::grams, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{.source = "M. Garetz, Using Hops, HopTech, 1994; recalled",
                                     .status = evidence::memory,
                                     .use = "examples with the constant 0.749 and both percents",
                                     .accuracy = "0.011 % above exact",
                                     .note = "his form in grams and litres (0.1) is exact"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}, {"utilisation"}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume, T utilisation) {
            return detail::by_ounce_and_gallon(7490.0, mass, alpha, volume, utilisation);
        }
    } garetz;

    struct palmer : model<struct palmer, unit::bitterness_units(unit::grams, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{.source = "J. Palmer, How to Brew, chapter 5, as quoted on a public brewing forum",
                                     .status = evidence::secondary,
                                     .use = "examples with the constant 75 and alpha acids in per cent",
                                     .accuracy = "0.14 % above exact; 0.37 BU on two printed additions"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}, {"utilisation"}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume, T utilisation) {
            return detail::by_ounce_and_gallon(7500.0, mass, alpha, volume, utilisation);
        }
    } palmer;

    struct hbu_1_34 : model<struct hbu_1_34, unit::bitterness_units(unit::grams, unit::alpha_acids, unit::litres, unit::bitterness_yield)> {
        static constexpr facts about{.source = "Home Brew Digest, 1992",
                                     .status = evidence::primary,
                                     .use = "examples with homebrew bitterness units times per cent over 1.34 gallons; goes with utilisation.tutzauer",
                                     .accuracy = "0.35 % below exact",
                                     .note = "1.34 is printed where 1.33527 is exact"};
        static constexpr input inputs[]{{"mass", detail::amount}, {"alpha"}, {"volume", detail::some}, {"utilisation"}};

        template <class T>
        static constexpr T formula(T mass, T alpha, T volume, T utilisation) {
            return detail::by_ounce_and_gallon(10000.0 / 1.34, mass, alpha, volume, utilisation);
        }
    } hbu_1_34;
};
inline constexpr family<&from_addition_models::exact> from_addition{};

}  // namespace wortmath::bitterness
