#pragma once

#include "wortmath/model.hpp"

namespace wortmath::word {
enum class package { unrated_glass, beer_glass_rated, soft_drink_glass, sparkling_wine_glass, keg, not_pressure_rated, other };
}  // namespace wortmath::word

template <>
struct wortmath::spelled<wortmath::word::package> {
    static constexpr const char* names[]{"unrated_glass", "beer_glass_rated", "soft_drink_glass", "sparkling_wine_glass", "keg", "not_pressure_rated", "other"};
};

namespace wortmath::package {

namespace detail {
// In the order of word::package; bar gauge and volumes.
inline constexpr double caution_above[]{4.7, 4.7, 4.7, 6.0, 2.4, 0.2, 4.7};
inline constexpr double stop_above[]{6.0, 6.0, 6.0, 8.0, 3.0, 1.0, 6.0};
inline constexpr double caution_above_volumes[]{3.0, 4.0, 4.5, no_limit, 4.5, no_limit, 3.0};
// A rating may lower the limits of these, and never raises them.
inline constexpr bool rating_only_lowers[]{true, false, false, false, false, true, false};
}  // namespace detail

struct caution_models {
    static constexpr const char* question = "Which level of caution does a package call for?";

    struct project_rule : model<struct project_rule, unit::level(word::package, unit::gauge_pressure, unit::volumes_co2,
                                                                 optional_point<unit::gauge_pressure>, bool)> {
        static constexpr facts about{
            .source = "this project's own rule, not a standard, made from published figures: British Glass TEC 7 (4.7 bar), DIN 6647-1 (kegs, 3 bar), Brewers "
                      "Association (tanks without a stamp, 15 psi), BS 6119-1 (4.5 volumes), makers' and editors' figures for beer bottles",
            .status = evidence::derived,
            .use = "every package: fed with package.pressure.hazard_run at the hottest temperature, and that run's carbonation",
            .note = "0: no rule of this list was met, which is not a statement about your bottles; 1: caution; 2: stop. unrated_glass: made for beer or soft "
                    "drinks, its maker's figure unknown, or used; not_pressure_rated: growler, still-wine or spirit bottle, decorative flip-top, jar, carboy, "
                    "demijohn, plastic fermenter, bag, unstamped tank; other: can, PET bottle, flip-top bottle made for beer. A rating is the maker's highest "
                    "working pressure, never a burst grade",
            .danger = "re-used bottles are weaker than new ones, and burst grades of new glass do not carry over. What is not a number, or impossible, is "
                      "level 2; a fermentation that is not confirmed is at least 1; a pressure model that refuses is level 2 for whoever shows both"};
        static constexpr double answer_to_anything_else = 2.0;
        static constexpr input inputs[]{{"package"},
                                        {"gauge_pressure", only{-1.1, no_limit}},
                                        {"carbonation", only{0, no_limit}},
                                        {"rated_gauge_pressure", only{above(0), 12}, otherwise_none{}},
                                        {"fermentation_confirmed", otherwise{false}}};

        // A rating that is not a number is none. The comparisons are turned so that a pressure or carbonation that is not a number answers 2.
        template <class T>
        static constexpr T formula(word::package package, T p, T v, maybe<T> rated, bool confirmed) {
            int const kind = static_cast<int>(package);
            T caution = T(detail::caution_above[kind]);
            T stop = T(detail::stop_above[kind]);
            if (rated.given) {
                T rating = rated.value;
                T cautious = 0.8 * rating;
                caution = select(rating == rating, detail::rating_only_lowers[kind] ? least(caution, cautious) : cautious, caution);
                stop = select(rating == rating, detail::rating_only_lowers[kind] ? least(stop, rating) : rating, stop);
            }
            T below_stop = select(p <= caution, select(v <= detail::caution_above_volumes[kind], T(confirmed ? 0.0 : 1.0), T(1.0)), T(1.0));
            return select(p <= stop, select(p >= -1.1, select(v >= 0.0, below_stop, T(2.0)), T(2.0)), T(2.0));
        }
    } project_rule;
};
inline constexpr family<&caution_models::project_rule> caution{};

}  // namespace wortmath::package
