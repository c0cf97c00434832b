#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

namespace detail {

template <class T>
constexpr T bitterness_per_point(T bitterness, T original_gravity) {
    return bitterness / (1000.0 * (original_gravity - 1.0));
}

}  // namespace detail

struct ratio_models {
    static constexpr const char* question = "How does the bitterness of a beer stand to its strength or its sweetness?";

    struct bu_gu : model<struct bu_gu, unit::bu_per_point(unit::bitterness_units, unit::gravity_20_20)> {
        static constexpr facts about{.source = "R. Daniels, Designing Great Beers, Brewers Publications, 1996",
                                     .status = evidence::secondary,
                                     .use = "bitterness against the strength of the wort",
                                     .accuracy = "definition",
                                     .note = "does not see how far the beer attenuates"};
        static constexpr input inputs[]{{"bitterness", detail::amount}, {"original_gravity", only{above(1.0), 1.300}}};

        template <class T>
        static constexpr T formula(T bitterness, T original_gravity) {
            return detail::bitterness_per_point(bitterness, original_gravity);
        }
    } bu_gu;

    struct relative_bitterness : model<struct relative_bitterness, unit::bu_per_point(unit::bitterness_units, unit::gravity_20_20, unit::attenuation)> {
        static constexpr facts about{.source = "R. Shwayder, author's own article, 2012",
                                     .status = evidence::primary,
                                     .use = "beers that attenuate more or less than usual",
                                     .accuracy = "two printed examples within half a unit of their third decimal",
                                     .note = "equals bu_gu at an apparent attenuation of 0.7655"};
        static constexpr input inputs[]{{"bitterness", detail::amount}, {"original_gravity", only{above(1.0), 1.300}}, {"apparent_attenuation"}};

        template <class T>
        static constexpr T formula(T bitterness, T original_gravity, T apparent_attenuation) {
            return detail::bitterness_per_point(bitterness, original_gravity) * (1.0 + (apparent_attenuation - 0.7655));
        }
    } relative_bitterness;

    struct bu_re : model<struct bu_re, unit::bu_per_plato(unit::bitterness_units, unit::original_extract, unit::apparent_extract)> {
        static constexpr facts about{.source = "R. Shwayder, author's own article, 2012",
                                     .status = evidence::primary,
                                     .use = "bitterness against what is left in the beer to balance it",
                                     .accuracy = "definition",
                                     .note = "his shorthand, degrees Plato = SG/4, means gravity points over four; go through extract.from_gravity instead"};
        static constexpr input inputs[]{{"bitterness", detail::amount}, {"original_extract"}, {"apparent_extract"}};
        static constexpr const char* refusal =
            "the real extract that follows from these two extracts is zero or less: nothing is left to compare the bitterness with";

        template <class T>
        static constexpr T formula(T bitterness, T original_extract, T apparent_extract) {
            T real_extract = let("real_extract", 0.1808 * original_extract + 0.8192 * apparent_extract);
            return select(real_extract > 0.0, bitterness / real_extract, undefined);
        }
    } bu_re;
};
inline constexpr family_without_default<ratio_models> ratio{};

}  // namespace wortmath::bitterness
