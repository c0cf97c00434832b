#pragma once

#include "wortmath/refractometer/additive.hpp"

namespace wortmath::refractometer {

struct two_instrument_real_extract_models {
    static constexpr const char* question = "What is the real extract of a beer of unknown history, from refractometer and hydrometer together?";

    struct additive : model<struct additive, unit::real_extract(unit::raw_brix, unit::gravity_20_20, unit::ratio)> {
        static constexpr facts about{.source = "inverse of reading.additive; nothing in it was fitted to beer",
                                     .status = evidence::derived,
                                     .use = "any beer",
                                     .accuracy = "0.1 degBx is 0.05 degP, 1 gravity point 0.12 degP (slopes of additive_linear)",
                                     .note = detail::wort_factor_note};
        static constexpr input inputs[]{{"current_brix", only{-5, 85}}, {"gravity"}, detail::wort_factor_input};
        static constexpr const char* refusal = detail::pair_refusal;

        template <class T>
        static constexpr T formula(T current_brix, T gravity, T wort_factor) {
            T p = let("original_extract", detail::original_from_pair(current_brix, gravity, wort_factor));
            T m = extract::from_gravity.asbc.formula(gravity);
            return attenuation::real_extract.balling.unguarded(p, m);
        }
    } additive;

    // The plane through the additive model, for small computers.
    struct additive_linear : model<struct additive_linear, unit::real_extract(unit::raw_brix, unit::gravity_20_20, unit::ratio)> {
        static constexpr facts about{.source = "plane fitted to the additive model over worts of 6 to 20 degP and apparent attenuations of 40 to 85 %",
                                     .status = evidence::derived,
                                     .use = "where no iteration is wanted",
                                     .accuracy = "0.05 % mass to the additive model",
                                     .note = detail::wort_factor_note};
        static constexpr input inputs[]{{"current_brix", only{-5, 85}}, {"gravity"}, detail::wort_factor_input};
        static constexpr const char* holds_when = detail::plane_holds_when;

        template <class T>
        static constexpr T formula(T current_brix, T gravity, T wort_factor) {
            return detail::plane_of_pair(current_brix, gravity, wort_factor).real_extract;
        }
        template <class T>
        static constexpr bool holds(T, T current_brix, T gravity, T wort_factor) {
            return detail::plane_holds(current_brix, gravity, wort_factor);
        }
    } additive_linear;
};
inline constexpr family<&two_instrument_real_extract_models::additive> two_instrument_real_extract{};

}  // namespace wortmath::refractometer
