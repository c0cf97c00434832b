#pragma once

#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/refractometer/additive.hpp"

namespace wortmath::refractometer {
namespace detail {

inline constexpr input original_brix_input{"original_brix", only{above(0), 85}};
inline constexpr input current_brix_input{"current_brix", only{-5, 85}};

inline constexpr const char* current_above_original =
    "the current reading is above the original reading: nothing can have fermented; check which reading is which";

// Apparent attenuation as the result has it.
template <class T>
constexpr T attenuation_of(T gravity, T original_extract) {
    return (original_extract - extract::from_gravity.asbc.formula(gravity)) / original_extract;
}

}  // namespace detail

struct final_gravity_models {
    static constexpr const char* question = "What gravity has the beer, from the readings before and during or after fermentation?";

    // Solved for the gravity itself: the refraction is nearly a straight line in it.
    struct additive : model<struct additive, unit::gravity_20_20(unit::raw_brix, unit::raw_brix, unit::ratio)> {
        static constexpr facts about{.source = "inverse of reading.additive; nothing in it was fitted to beer",
                                     .status = evidence::derived,
                                     .use = "the whole fermentation, early and unusual attenuations too",
                                     .accuracy =
                                         "m of J. Savel, Kvasny prumysl 17 (1971) 53, within 0.16 degP; 0.1 degBx in the current reading is 0.63 points, in "
                                         "the original 0.24; with a hand instrument expect 1.5 to 2 points at best",
                                     .note = detail::wort_factor_note,
                                     .danger = detail::gravity_danger};
        static constexpr input inputs[]{detail::original_brix_input, detail::current_brix_input, detail::wort_factor_input};
        static constexpr bool nan_is_impossible = true;
        static constexpr const char* refusal =
            "no beer gives these two readings: the current reading must lie below the original one and above about a quarter of it (an apparent attenuation of "
            "115 %); check both readings and the zero of the instrument";
        static constexpr const char* holds_when = "holds for worts of 3 to 25 degP (the original reading over the wort factor)";

        template <class T>
        static constexpr T formula(T original_brix, T current_brix, T wort_factor) {
            T p = let("original_extract", original_brix / wort_factor);
            T r = let("extract_refraction", extract_refraction.from_wort.formula(p, original_brix));
            T target = detail::refraction_of_reading(current_brix);
            auto const surplus = [=](T S) -> T { return detail::refraction_of_beer(p, extract::from_gravity.asbc.formula(S), S, r) - target; };
            T gravity =
                newton<5>(1.0 - 0.0024 * p + 0.0063 * current_brix / wort_factor, surplus, [=](T S) -> T { return (surplus(S + 1e-5) - surplus(S)) * 1e5; });
            T lowest = -0.15 * p - 1e-9;
            return select(current_brix <= original_brix, select(extract::from_gravity.asbc.formula(gravity) >= lowest, gravity, undefined), undefined);
        }
        template <class T>
        static constexpr bool holds(T, T original_brix, T, T wort_factor) {
            return original_brix >= 3.0 * wort_factor && original_brix <= 25.0 * wort_factor;
        }
    } additive;

    struct novotny_linear : model<struct novotny_linear, unit::gravity_20_20(unit::raw_brix, unit::raw_brix, unit::ratio)> {
        static constexpr facts about{.source = "P. Novotny, author's article, 2017; also Zymurgy, July/August 2017",
                                     .status = evidence::memory,
                                     .use = "apparent attenuations of 50 to 95 %, worts of 8 to 20 degP; what the trade quotes most",
                                     .accuracy =
                                         "to additive, worts of 8 to 20 degP: -0.9 points at 50 to 65 % apparent attenuation, -0.4 to 85, +0.5 to 95; -4.4 at "
                                         "the start; m of Savel 1971 within 0.11 degP with a factor of 1, 0.27 with that wort's own 1.016",
                                     .note = detail::wort_factor_note,
                                     .danger = detail::gravity_danger};
        static constexpr input inputs[]{detail::original_brix_input, detail::current_brix_input, detail::wort_factor_input};
        static constexpr bool nan_is_impossible = true;
        static constexpr const char* refusal = detail::current_above_original;
        static constexpr const char* holds_when =
            "holds for worts of 8 to 20 degP and apparent attenuations of 50 to 95 %, below 50 % only up to 12 degP; final_gravity.additive holds elsewhere";

        template <class T>
        static constexpr T formula(T original_brix, T current_brix, T wort_factor) {
            T i = original_brix / wort_factor, f = current_brix / wort_factor;
            return select(current_brix <= original_brix, 1.0 - 0.002349 * i + 0.006276 * f, undefined);
        }
        template <class T>
        static constexpr bool holds(T gravity, T original_brix, T, T wort_factor) {
            T p = original_brix / wort_factor, a = detail::attenuation_of(gravity, p);
            return p >= 8.0 - 1e-9 && p <= 20.0 + 1e-9 && a <= 0.95 && (a >= 0.50 || p <= 12.0 + 1e-9);
        }
    } novotny_linear;

    struct novotny_quadratic : model<struct novotny_quadratic, unit::gravity_20_20(unit::raw_brix, unit::raw_brix, unit::ratio)> {
        static constexpr facts about{.source = "P. Novotny, author's article, 2017; also Zymurgy, July/August 2017",
                                     .status = evidence::memory,
                                     .use = "apparent attenuations of 50 to 95 %",
                                     .accuracy =
                                         "to additive, worts of 8 to 20 degP: -1.2 points at 50 to 65 % apparent attenuation, -1.0 to 85, -0.9 to 95; -3.0 at "
                                         "the start; m of Savel 1971 within 0.15 degP with a factor of 1, 0.30 with that wort's own 1.016",
                                     .note = detail::wort_factor_note,
                                     .danger = detail::gravity_danger};
        static constexpr input inputs[]{detail::original_brix_input, detail::current_brix_input, detail::wort_factor_input};
        static constexpr bool nan_is_impossible = true;
        static constexpr const char* refusal = detail::current_above_original;
        static constexpr const char* holds_when = "holds for apparent attenuations of 50 to 95 %; final_gravity.additive holds elsewhere";

        template <class T>
        static constexpr T formula(T original_brix, T current_brix, T wort_factor) {
            T i = original_brix / wort_factor, f = current_brix / wort_factor;
            T gravity = 1.0 + 1.335E-5 * square(i) - 3.239E-5 * i * f + 2.916E-5 * square(f) - 2.421E-3 * i + 6.219E-3 * f;
            return select(current_brix <= original_brix, gravity, undefined);
        }
        template <class T>
        static constexpr bool holds(T gravity, T original_brix, T, T wort_factor) {
            T a = detail::attenuation_of(gravity, original_brix / wort_factor);
            return a >= 0.50 && a <= 0.95;
        }
    } novotny_quadratic;

    struct bonham : model<struct bonham, unit::gravity_20_20(unit::raw_brix, unit::raw_brix, unit::ratio)> {
        static constexpr facts about{
            .source = "L. K. Bonham, Zymurgy, January/February 2001, as quoted for readings over the wort factor by S. Terrill, author's article, 11 June 2010",
            .status = evidence::secondary,
            .use = "often called the standard formula; no range fails, but it runs low",
            .accuracy =
                "low against additive by 1.2 to 1.7 points at 12 and 2 to 2.7 at 20 degP; on ten beers 0.5 to 8.5 points below the hydrometer, 5.1 on average; "
                "m of Savel 1971 within 0.23 degP with a factor of 1, 0.39 with that wort's own 1.016",
            .note = detail::wort_factor_note,
            .danger = detail::gravity_danger};
        static constexpr input inputs[]{detail::original_brix_input, detail::current_brix_input, detail::wort_factor_input};
        static constexpr bool nan_is_impossible = true;
        static constexpr const char* refusal = detail::current_above_original;

        template <class T>
        static constexpr T formula(T original_brix, T current_brix, T wort_factor) {
            T i = original_brix / wort_factor, f = current_brix / wort_factor;
            T gravity = poly(i, 1.001843, -0.002318474, -0.000007775, -0.000000034) + poly(f, 0.0, 0.00574, 0.00003344, 0.000000086);
            return select(current_brix <= original_brix, gravity, undefined);
        }
    } bonham;

    // Fitted to 68 triplets; beers below 61 % apparent attenuation were left out.
    struct terrill_linear : model<struct terrill_linear, unit::gravity_20_20(unit::raw_brix, unit::raw_brix, unit::ratio)> {
        static constexpr facts about{.source = "S. Terrill, author's article, 7 April 2011",
                                     .status = evidence::primary,
                                     .use = "finished beer of 70 to 80 % apparent attenuation only; never to follow a fermentation",
                                     .accuracy =
                                         "to additive, worts of 8 to 20 degP: 4 points at 65 to 85 % apparent attenuation, 8 to 95, -30 at the start (-17 at "
                                         "12 degP); m of Savel 1971 within 3.9 degP",
                                     .note = detail::wort_factor_note,
                                     .danger = detail::gravity_danger};
        static constexpr input inputs[]{detail::original_brix_input, detail::current_brix_input, detail::wort_factor_input};
        static constexpr bool nan_is_impossible = true;
        static constexpr const char* refusal = detail::current_above_original;
        static constexpr const char* holds_when = "holds for finished beer of 70 to 80 % apparent attenuation; final_gravity.additive holds elsewhere";

        template <class T>
        static constexpr T formula(T original_brix, T current_brix, T wort_factor) {
            T i = original_brix / wort_factor, f = current_brix / wort_factor;
            return select(current_brix <= original_brix, 1.0 - 0.00085683 * i + 0.0034941 * f, undefined);
        }
        template <class T>
        static constexpr bool holds(T gravity, T original_brix, T, T wort_factor) {
            T a = detail::attenuation_of(gravity, original_brix / wort_factor);
            return a >= 0.70 && a <= 0.80;
        }
    } terrill_linear;

    struct terrill_cubic : model<struct terrill_cubic, unit::gravity_20_20(unit::raw_brix, unit::raw_brix, unit::ratio)> {
        static constexpr facts about{.source = "S. Terrill, author's article, 7 April 2011",
                                     .status = evidence::primary,
                                     .use = "finished beer of 65 to 85 % apparent attenuation only; never to follow a fermentation",
                                     .accuracy =
                                         "to additive, worts of 8 to 20 degP: 3.2 points at 65 to 85 % apparent attenuation, 6 to 95, +112 at the start (8 low "
                                         "at 12 degP); m of Savel 1971 within 2.3 degP",
                                     .note = detail::wort_factor_note,
                                     .danger = detail::gravity_danger};
        static constexpr input inputs[]{detail::original_brix_input, detail::current_brix_input, detail::wort_factor_input};
        static constexpr bool nan_is_impossible = true;
        static constexpr const char* refusal = detail::current_above_original;
        static constexpr const char* holds_when = "holds for finished beer of 65 to 85 % apparent attenuation; final_gravity.additive holds elsewhere";

        template <class T>
        static constexpr T formula(T original_brix, T current_brix, T wort_factor) {
            T i = original_brix / wort_factor, f = current_brix / wort_factor;
            T gravity = poly(i, 1.0, -0.0044993, 0.00027581, -0.0000072800) + poly(f, 0.0, 0.011774, -0.0012717, 0.000063293);
            return select(current_brix <= original_brix, gravity, undefined);
        }
        template <class T>
        static constexpr bool holds(T gravity, T original_brix, T, T wort_factor) {
            T a = detail::attenuation_of(gravity, original_brix / wort_factor);
            return a >= 0.65 && a <= 0.85;
        }
    } terrill_cubic;

    // Raw readings, no wort factor.
    struct woodland : model<struct woodland, unit::gravity_20_20(unit::raw_brix, unit::raw_brix)> {
        static constexpr facts about{.source = "Woodland, author's article, February 2013",
                                     .status = evidence::primary,
                                     .use = "finished beer up to 16 degP",
                                     .accuracy =
                                         "to additive, worts of 8 to 20 degP: -2.6 points at 50 to 65 % apparent attenuation, -1.9 to 85, -1.3 to 95, -6.1 at "
                                         "the start; m of Savel 1971 within 0.19 degP",
                                     .note = "raw readings, not divided by a wort factor; the range is judged with the raw reading as the extract",
                                     .danger = detail::gravity_danger};
        static constexpr input inputs[]{detail::original_brix_input, detail::current_brix_input};
        static constexpr bool nan_is_impossible = true;
        static constexpr const char* refusal = detail::current_above_original;
        static constexpr const char* holds_when =
            "holds for finished beer (50 % apparent attenuation and more) up to 16 degP; final_gravity.additive holds elsewhere";

        template <class T>
        static constexpr T formula(T original_brix, T current_brix) {
            return select(current_brix <= original_brix, 1.0013 - 0.0025 * original_brix + 0.00628 * current_brix, undefined);
        }
        template <class T>
        static constexpr bool holds(T gravity, T original_brix, T) {
            return original_brix <= 16.0 && detail::attenuation_of(gravity, original_brix) >= 0.50;
        }
    } woodland;
};
inline constexpr family<&final_gravity_models::additive> final_gravity{};

}  // namespace wortmath::refractometer
