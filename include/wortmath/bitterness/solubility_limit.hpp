#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct solubility_limit_models {
    static constexpr const char* question = "How much of the dosed alpha acids dissolves in boiling wort?";

    struct hosom : model<struct hosom, unit::alpha_dosed(unit::alpha_dosed)> {
        static constexpr facts about{
            .source = "J.-P. Hosom, author's own article on hopping rate",
            .status = evidence::primary,
            .use = "strongly hopped worts, before isomerisation; the sum of what is present, per litre of kettle volume",
            .accuracy = "direction as in a series measured in 2011, size roughly: utilisation 1, 0.75, 0.58 there and 1, 0.85, 0.72 here",
            .note =
                "printed as all up to 240 mg/L, then the exponential, which jumps by 0.24 mg/L there; the smaller of the two is used, which does "
                "not; the popular ceiling of 100 BU mixes up alpha acids and bitterness units"};
        static constexpr input inputs[]{{"alpha_dosed", detail::amount}};

        template <class T>
        static constexpr T formula(T A) {
            return least(490.0 * -expm1(-0.00280 * A), A);
        }
    } hosom;

    struct none : model<struct none, unit::alpha_dosed(unit::alpha_dosed)> {
        static constexpr facts about{
            .source = "definition", .status = evidence::derived, .use = "to repeat the published utilisations, which know no limit", .accuracy = "exact"};
        static constexpr input inputs[]{{"alpha_dosed", detail::amount}};

        template <class T>
        static constexpr T formula(T A) {
            return A;
        }
    } none;

    struct hosom_flat : model<struct hosom_flat, unit::alpha_dosed(unit::alpha_dosed)> {
        static constexpr facts about{.source = "J.-P. Hosom, author's own earlier article on hopping rate",
                                     .status = evidence::primary,
                                     .use = "a plain ceiling",
                                     .accuracy = "about 270 mg/L"};
        static constexpr input inputs[]{{"alpha_dosed", detail::amount}};

        template <class T>
        static constexpr T formula(T A) {
            return least(T(270.0), A);
        }
    } hosom_flat;

    struct hough : model<struct hough, unit::alpha_dosed(unit::alpha_dosed)> {
        static constexpr facts about{.source = "J. S. Hough et al., Malting and Brewing Science, 1982, through M. L. Hall, Zymurgy special issue, 1997",
                                     .status = evidence::secondary,
                                     .use = "a plain ceiling",
                                     .accuracy = "250 mg/L at pH 5 and 100 degC",
                                     .note = "the same source gives 5 mg/L at pH 4 and 0 degC; 90 mg/L was measured in a buffer of pH 5.2"};
        static constexpr input inputs[]{{"alpha_dosed", detail::amount}};

        template <class T>
        static constexpr T formula(T A) {
            return least(T(250.0), A);
        }
    } hough;
};
inline constexpr family<&solubility_limit_models::hosom> solubility_limit{};

}  // namespace wortmath::bitterness
