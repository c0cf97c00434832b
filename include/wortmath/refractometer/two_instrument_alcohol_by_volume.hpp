#pragma once

#include "wortmath/beer/alcohol_by_volume.hpp"
#include "wortmath/refractometer/additive.hpp"

namespace wortmath::refractometer {

struct two_instrument_alcohol_by_volume_models {
    static constexpr const char* question = "How strong is a beer of unknown history, from refractometer and hydrometer together?";

    struct additive : model<struct additive, unit::alcohol_by_volume(unit::raw_brix, unit::gravity_20_20, unit::ratio)> {
        static constexpr facts about{.source = "inverse of reading.additive; nothing in it was fitted to beer",
                                     .status = evidence::derived,
                                     .use = "any beer",
                                     .accuracy = "0.1 degBx is 0.15 % vol, 1 gravity point 0.37 % vol",
                                     .note = detail::wort_factor_note,
                                     .danger = detail::strength_danger};
        static constexpr input inputs[]{{"current_brix", only{-5, 85}}, {"gravity"}, detail::wort_factor_input};
        static constexpr const char* refusal = detail::pair_refusal;

        template <class T>
        static constexpr T formula(T current_brix, T gravity, T wort_factor) {
            T p = let("original_extract", detail::original_from_pair(current_brix, gravity, wort_factor));
            T m = extract::from_gravity.asbc.formula(gravity);
            T n = let("real_extract", attenuation::real_extract.balling.unguarded(p, m));
            T A = let("alcohol_by_mass", attenuation::alcohol_by_mass_from_real_extract.balling.unguarded(p, n));
            return beer::alcohol_by_volume.definition.formula(A, gravity * constants::water_20C);
        }
    } additive;

    // The plane through the additive model, for small computers.
    struct additive_linear : model<struct additive_linear, unit::alcohol_by_volume(unit::raw_brix, unit::gravity_20_20, unit::ratio)> {
        static constexpr facts about{.source = "plane fitted to the additive model over worts of 6 to 20 degP and apparent attenuations of 40 to 85 %",
                                     .status = evidence::derived,
                                     .use = "where no iteration is wanted",
                                     .accuracy = "0.17 % vol to the additive model",
                                     .note = detail::wort_factor_note,
                                     .danger = detail::strength_danger};
        static constexpr input inputs[]{{"current_brix", only{-5, 85}}, {"gravity"}, detail::wort_factor_input};
        static constexpr const char* holds_when = detail::plane_holds_when;

        template <class T>
        static constexpr T formula(T current_brix, T gravity, T wort_factor) {
            return detail::plane_of_pair(current_brix, gravity, wort_factor).alcohol_by_volume;
        }
        template <class T>
        static constexpr bool holds(T, T current_brix, T gravity, T wort_factor) {
            return detail::plane_holds(current_brix, gravity, wort_factor);
        }
    } additive_linear;

    // Raw readings, no wort factor.
    struct woodland : model<struct woodland, unit::alcohol_by_volume(unit::raw_brix, unit::gravity_20_20)> {
        static constexpr facts about{.source = "Woodland, author's article, February 2013",
                                     .status = evidence::primary,
                                     .use = "raw readings, not divided by a wort factor",
                                     .accuracy = "to additive with a factor of 1: mean -0.14, worst 0.64 % vol",
                                     .danger = detail::strength_danger};
        static constexpr input inputs[]{{"current_brix", only{-5, 85}}, {"gravity"}};

        template <class T>
        static constexpr T formula(T current_brix, T gravity) {
            return 1.421 * current_brix - 357.4 * (gravity - 1.0);
        }
    } woodland;
};
inline constexpr family<&two_instrument_alcohol_by_volume_models::additive> two_instrument_alcohol_by_volume{};

}  // namespace wortmath::refractometer
