#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

namespace detail {

template <class T>
constexpr T oxidised(T alpha_dosed) {
    return 0.7 * 0.06 * alpha_dosed;
}

}  // namespace detail

struct oxidised_alpha_models {
    static constexpr const char* question = "How much bitterness comes from alpha acids that oxidise as the hops go in?";

    struct hosom_cones : model<struct hosom_cones, unit::bitterness_units(unit::alpha_dosed)> {
        static constexpr facts about{
            .source = "J.-P. Hosom, Hop Cones vs. Pellets: IBU Differences, author's own article, abstract",
            .status = evidence::primary,
            .use = "whole hops, on top of an estimate from iso-alpha acids; not on top of utilisation.tinseth",
            .accuracy = "none stated",
            .note = "alpha acids per litre of kettle volume; above about 240 mg/L pass the result of solubility_limit; does not depend on the boil time"};
        static constexpr input inputs[]{{"alpha_dosed", detail::amount}};

        template <class T>
        static constexpr T formula(T A) {
            return detail::oxidised(A);
        }
    } hosom_cones;

    struct hosom_pellets : model<struct hosom_pellets, unit::bitterness_units(unit::alpha_dosed, unit::ratio)> {
        static constexpr facts about{
            .source = "J.-P. Hosom, Hop Cones vs. Pellets: IBU Differences, author's own article, abstract",
            .status = evidence::primary,
            .use = "pellets, on top of an estimate from iso-alpha acids; not on top of utilisation.tinseth",
            .accuracy =
                "printed gain of 1.5 to 10.8 BU at 170 mg/L; 1.2 gives 1.4 BU here, 3.2 would give 15.7: the printed ranges are not of the same "
                "varieties",
            .note = "a flat 10 % more utilisation for pellets has the wrong shape: this does not depend on the boil time"};
        static constexpr input inputs[]{{"alpha_dosed", detail::amount}, {"variety_factor", validated{1.2, 3.2}, detail::amount, otherwise{2.0}}};

        template <class T>
        static constexpr T formula(T A, T f) {
            return detail::oxidised(A) * f;
        }
    } hosom_pellets;
};
inline constexpr family<&oxidised_alpha_models::hosom_cones> oxidised_alpha{};

}  // namespace wortmath::bitterness
