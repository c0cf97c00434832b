#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/bitterness/decay.hpp"
#include "wortmath/bitterness/gravity_adjustment.hpp"

namespace wortmath::bitterness {

namespace detail {

// Tables of utilisation, in per cent. A time that is not a number falls into no bin.

// Bins printed as 0-5, 6-10, ...: the first whose upper end is not passed; the last value holds beyond the last end.
template <class T, std::size_t N>
constexpr T by_upper_end(T t, const double (&ends)[N], const double (&percent)[N]) {
    T y = select(t > ends[N - 2], T(percent[N - 1]), T(undefined));
    for (std::size_t i = N - 1; i-- > 0;) y = select(t <= ends[i], T(percent[i]), y);
    return y;
}

// Bins printed as 0-9, 10-19, ... and open at the end: the last whose lower end is reached.
template <class T, std::size_t N>
constexpr T by_lower_end(T t, const double (&starts)[N], const double (&percent)[N]) {
    T y = select(t < starts[1], T(percent[0]), T(undefined));
    for (std::size_t i = 1; i < N; ++i) y = select(t >= starts[i], T(percent[i]), y);
    return y;
}

inline constexpr double bins_1990[]{5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60};
inline constexpr double rager_percent[]{5.0, 6.0, 8.0, 10.1, 12.1, 15.3, 18.8, 22.8, 26.9, 28.1, 30.0};
inline constexpr double garetz_1993_percent[]{0, 0, 1, 4, 6, 11, 13, 19, 23, 24, 25};

inline constexpr double garetz_1994_bins[]{10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90};
inline constexpr double garetz_1994_percent[]{0, 2, 5, 8, 11, 14, 16, 18, 19, 20, 21, 22, 23};

inline constexpr double daniels_bins[]{0, 10, 20, 30, 45, 60, 75};
inline constexpr double daniels_whole_percent[]{5, 12, 15, 19, 22, 24, 27};
inline constexpr double daniels_pellet_percent[]{6, 15, 19, 24, 27, 30, 34};

inline constexpr double mosher_minutes[]{0, 5, 15, 30, 45, 60};
inline constexpr double mosher_percent[]{0, 6, 12, 22, 25, 27};

}  // namespace detail

struct utilisation_models {
    static constexpr const char* question = "What share of the dosed alpha acids counts as bitterness units in the beer?";

    // Smooth in time and zero at no time: the default.
    struct tinseth : model<struct tinseth, unit::bitterness_yield(unit::gravity_20_20, unit::minutes, unit::ratio)> {
        static constexpr facts about{.source = "G. Tinseth, Hop Utilization Numbers, author's own web article, about 1995-97",
                                     .status = evidence::primary,
                                     .use = "any boil, any hop addition; tune brewery_constant to measured beers (smaller gives more)",
                                     .accuracy =
                                         "none stated, fitted on whole hops; repeats the author's table within half its last digit; one wort measured "
                                         "with two yeasts came out 5 % and 33 % lower",
                                     .note =
                                         "the gravity is the mean over the boil and the volume that of the finished beer: original gravity and kettle volume "
                                         "are common misuse; copied elsewhere with exp(-0.04 t/4.15), which doubles the value for an hour"};
        static constexpr input inputs[]{{"boil_gravity", validated{1.030, 1.130}, detail::wort_gravity},
                                        {"boil_minutes", validated{0, 120}, detail::amount},
                                        {"brewery_constant", detail::some, otherwise{4.15}}};

        template <class T>
        static constexpr T formula(T G, T t, T k) {
            T bigness = let("bigness", gravity_adjustment.tinseth.formula(G));
            return bigness * -expm1(-0.04 * t) / k;
        }
    } tinseth;

    // The integral of the tinseth rate while the gravity rises in a straight line.
    struct tinseth_linear_gravity : model<struct tinseth_linear_gravity, unit::bitterness_yield(unit::gravity_20_20, unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{.source = "derived from G. Tinseth, Hop Utilization Numbers: exact integral over a gravity that changes linearly",
                                     .status = evidence::derived,
                                     .use = "a strong boil, or hops added late into a boil whose gravity at both ends is known",
                                     .accuracy = "exact for its assumption; equals tinseth where both gravities are the same",
                                     .note = "the start is the moment the hops go in, not the start of the boil"};
        static constexpr input inputs[]{{"start_gravity", validated{1.030, 1.130}, detail::wort_gravity},
                                        {"end_gravity", validated{1.030, 1.130}, detail::wort_gravity},
                                        {"boil_minutes", validated{0, 120}, detail::amount}};

        template <class T>
        static constexpr T formula(T start, T end, T t) {
            T bigness = let("bigness", gravity_adjustment.tinseth.formula(start));
            T z = let("z", 0.04 * t + log(8000.0) * (end - start));
            return bigness * 0.04 * t / 4.15 * detail::phi(z);
        }
    } tinseth_linear_gravity;

    // The integral of the tinseth rate while the gravity jumps.
    struct tinseth_gravity_steps : model<struct tinseth_gravity_steps, unit::bitterness_yield(list<unit::gravity_20_20>, list<unit::minutes>)> {
        static constexpr facts about{
            .source = "derived from G. Tinseth, Hop Utilization Numbers: exact integral over a gravity that changes in steps",
            .status = evidence::derived,
            .use = "extract or sugar added late, water topped up: whatever makes the kettle gravity jump while these hops boil",
            .accuracy = "exact for its assumption; equals tinseth for one step",
            .note = "in time order from this hop addition to the end of the boil; the first step is what is left of it when the hops go in"};
        static constexpr input inputs[]{{"boil_gravities", validated{1.030, 1.130}, detail::wort_gravity}, {"step_minutes", validated{0, 120}, detail::amount}};
        static constexpr const char* refusal = "give at least one step, and as many minutes as gravities: each step of the boil has one gravity and one length";
        static constexpr const char* holds_when = "the table behind the formula ends at 120 minutes of boil: the steps together last longer";

        template <class T>
        static constexpr T formula(series<T> gravities, series<T> minutes) {
            if (gravities.size() == 0 || gravities.size() != minutes.size()) return T(undefined);
            T sum = T(0.0), elapsed = T(0.0);
            for (std::size_t i = 0; i < gravities.size(); ++i) {
                sum = sum + gravity_adjustment.tinseth.formula(gravities[i]) * exp(-0.04 * elapsed) * -expm1(-0.04 * minutes[i]);
                elapsed = elapsed + minutes[i];
            }
            return sum / 4.15;
        }
        template <class T>
        static constexpr bool holds(T, series<T>, series<T> minutes) {
            T total = T(0.0);
            for (T step : minutes) total = total + step;
            return !(total > 120.0);
        }
    } tinseth_gravity_steps;

    // A smooth curve through rager_table, printed beside it without its author's name.
    struct rager : model<struct rager, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{
            .source =
                "Hops FAQ, revision 3, N. Pyle (ed.), 11 Nov 1993, after J. Rager, Calculating Hop Bitterness in Beer, Zymurgy 13(4) "
                "special issue, 1990, 53-54",
            .status = evidence::secondary,
            .use = "recipes written with it; hops at the end of the boil are not zero here (5.12 %)",
            .accuracy = "up to 0.97 percentage points from its table at the middle of a bin, 2.06 at the upper ends",
            .note =
                "the gravity is that at the end of the boil, the volume the final batch; from_addition.rager goes with it; misprints in "
                "circulation: 32.32 for 31.32 (0.75 points low at 30 min), and the gravity test reversed"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}, {"boil_minutes", validated{0, 60}, detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T percent = let("percent", 18.10907 + 13.86204 * tanh((t - 31.32275) / 18.26774));
            return percent / 100.0 * gravity_adjustment.rager.formula(G);
        }
    } rager;

    struct rager_table : model<struct rager_table, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{
            .source =
                "J. Rager, Calculating Hop Bitterness in Beer, Zymurgy 13(4) special issue, 1990, 53-54, as reprinted in the Hops FAQ, "
                "revision 3, 11 Nov 1993",
            .status = evidence::secondary,
            .use = "to repeat a calculation done with the printed table: pellets thrown in loose",
            .accuracy = "the printed table",
            .note = "jumps from bin to bin: not for a search over the time; the gravity is that at the end of the boil"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}, {"boil_minutes", validated{0, 60}, detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T percent = let("percent", detail::by_upper_end(t, detail::bins_1990, detail::rager_percent));
            return percent / 100.0 * gravity_adjustment.rager.formula(G);
        }
    } rager_table;

    struct garetz_1993 : model<struct garetz_1993, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{.source = "M. Garetz in the Hops FAQ, revision 3, N. Pyle (ed.), 11 Nov 1993, average yeast",
                                     .status = evidence::secondary,
                                     .use = "to repeat a calculation done with the early table; it gives hops boiled 10 minutes or less no bitterness",
                                     .accuracy = "the printed table",
                                     .note = "jumps from bin to bin: not for a search over the time; not the table of his book of 1994"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}, {"boil_minutes", validated{0, 60}, detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T percent = let("percent", detail::by_upper_end(t, detail::bins_1990, detail::garetz_1993_percent));
            return percent / 100.0 * gravity_adjustment.rager.formula(G);
        }
    } garetz_1993;

    struct garetz_1994 : model<struct garetz_1994, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{.source = "M. Garetz, Using Hops, HopTech, 1994, average yeast; recalled",
                                     .status = evidence::memory,
                                     .use = "only to repeat a calculation done with the book; hopping rate and elevation are families of their own",
                                     .accuracy = "the table is from memory: only zero to 10 min and the largest value at 90 min are confirmed",
                                     .note = "jumps from bin to bin: not for a search over the time; takes the gravity in the kettle"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}, {"boil_minutes", validated{0, 90}, detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T percent = let("percent", detail::by_upper_end(t, detail::garetz_1994_bins, detail::garetz_1994_percent));
            return percent / 100.0 * gravity_adjustment.garetz_1994.formula(G);
        }
    } garetz_1994;

    struct daniels_whole : model<struct daniels_whole, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{.source = "R. Daniels, Designing Great Beers, Brewers Publications, 1996; recalled",
                                     .status = evidence::memory,
                                     .use = "whole hops, to repeat a calculation done with the book",
                                     .accuracy = "the table is from memory and not confirmed from another source",
                                     .note = "jumps from bin to bin: not for a search over the time"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}, {"boil_minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T percent = let("percent", detail::by_lower_end(t, detail::daniels_bins, detail::daniels_whole_percent));
            return percent / 100.0 * gravity_adjustment.daniels.formula(G);
        }
    } daniels_whole;

    struct daniels_pellet : model<struct daniels_pellet, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{.source = "R. Daniels, Designing Great Beers, Brewers Publications, 1996; recalled",
                                     .status = evidence::memory,
                                     .use = "hop pellets, to repeat a calculation done with the book",
                                     .accuracy = "the table is from memory and not confirmed from another source",
                                     .note = "jumps from bin to bin: not for a search over the time"};
        static constexpr input inputs[]{{"boil_gravity", detail::wort_gravity}, {"boil_minutes", detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T percent = let("percent", detail::by_lower_end(t, detail::daniels_bins, detail::daniels_pellet_percent));
            return percent / 100.0 * gravity_adjustment.daniels.formula(G);
        }
    } daniels_pellet;

    // Stated for weak worts alone, so the gravity only decides whether there is an answer.
    struct mosher : model<struct mosher, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{.source = "R. Mosher, The Brewer's Companion, as quoted on a public brewing forum",
                                     .status = evidence::secondary,
                                     .use = "pellets in a wort that ends the boil at 1.050 or less",
                                     .accuracy = "five printed points, straight lines between them",
                                     .note = "the line from zero at no time to the first point at 5 minutes is our extension"};
        static constexpr input inputs[]{{"boil_gravity", only{0.990, 1.050}}, {"boil_minutes", validated{5, 60}, detail::amount}};

        template <class T>
        static constexpr T formula(T G, T t) {
            T percent = let("percent", least(T(27.0), piecewise_linear(t, detail::mosher_minutes, detail::mosher_percent)));
            return select(G <= 1.050, percent / 100.0, undefined);
        }
    } mosher;

    struct tutzauer : model<struct tutzauer, unit::bitterness_yield(unit::gravity_20_20, unit::minutes)> {
        static constexpr facts about{
            .source =
                "T. Hettmansperger's regression of the chart in C. Papazian, The New Complete Joy of Home Brewing, by F. Tutzauer, quoted "
                "by W. H. Gude in the Home Brew Digest, 23 April 1992",
            .status = evidence::primary,
            .use = "to repeat recipes made with that chart, with from_addition.hbu_1_34",
            .accuracy =
                "said to explain 99 % of the variation; 0.28 BU on the author's four worked points, 1.29 percentage points on three "
                "chart values at 1.070",
            .note =
                "quadratic in time with its peak at 60 to 62 min, hence nothing beyond an hour; about 2 % at no time; the ends of the "
                "gravity range are not confirmed"};
        static constexpr input inputs[]{{"boil_gravity", validated{1.040, 1.110}, detail::wort_gravity}, {"boil_minutes", only{0, 60}}};

        template <class T>
        static constexpr T formula(T s, T t) {
            return exp(-23.63 + 0.12896 * t + 37.76 * s - 0.00068496 * square(t) - 18.01 * square(s) - 0.04187 * t * s);
        }
    } tutzauer;
};
inline constexpr family<&utilisation_models::tinseth> utilisation{};

}  // namespace wortmath::bitterness
