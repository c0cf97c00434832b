#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/bitterness/decay.hpp"

namespace wortmath::bitterness {

struct average_boil_gravity_models {
    static constexpr const char* question = "What is the mean gravity of a boil, from those at its start and its end?";

    struct constant_evaporation : model<struct constant_evaporation, unit::gravity_20_20(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "mean over the time while the volume falls in a straight line and the extract stays",
            .status = evidence::derived,
            .use = "the gravity that utilisation.tinseth asks for",
            .accuracy = "exact for its assumption",
            .note = "extract added during the boil: utilisation.tinseth_gravity_steps instead; at or below 1.000 the plain mean is taken"};
        static constexpr input inputs[]{{"start_gravity", detail::wort_gravity}, {"end_gravity", detail::wort_gravity}};

        template <class T>
        static constexpr T formula(T start, T end) {
            T P0 = start - 1.0, P1 = end - 1.0;
            T d = let("d", P1 / P0 - 1.0);
            return select(least(P0, P1) > 0.0, 1.0 + P1 * detail::log1p_ratio(d), (start + end) / 2.0);
        }
    } constant_evaporation;

    struct arithmetic : model<struct arithmetic, unit::gravity_20_20(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{.source = "arithmetic mean",
                                     .status = evidence::derived,
                                     .use = "a quick estimate",
                                     .accuracy = "0.3 gravity points above constant_evaporation from 1.045 to 1.055",
                                     .note = "always at or above constant_evaporation, since a boil spends more of its time thin than thick"};
        static constexpr input inputs[]{{"start_gravity", detail::wort_gravity}, {"end_gravity", detail::wort_gravity}};

        template <class T>
        static constexpr T formula(T start, T end) {
            return (start + end) / 2.0;
        }
    } arithmetic;
};
inline constexpr family<&average_boil_gravity_models::constant_evaporation> average_boil_gravity{};

}  // namespace wortmath::bitterness
