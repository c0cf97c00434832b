#pragma once

#include "wortmath/model.hpp"

namespace wortmath::yeast {

struct pitch_models {
    static constexpr const char* question = "How many yeast cells should be pitched?";

    // The trade's rule, with the rate in the brewer's hands.
    struct rate_plato : model<struct rate_plato, unit::cells(unit::litres, unit::plato, unit::pitch_rate)> {
        static constexpr facts about{.source = "trade rates: 0.75 (ale, from memory), 1.0 general and 1.5 lager (read) million cells per mL and degree Plato",
                                     .status = evidence::secondary,
                                     .use = "any gravity, and whenever a rate is prescribed",
                                     .accuracy = "published rates differ by a factor of 2 at the same gravity"};
        static constexpr input inputs[]{
            {"volume"}, {"extract", validated{0, 60}, possible{0, 100}}, {"pitch_rate", validated{0.3, 2.5}, possible{above(0), no_limit}, otherwise{0.75}}};

        template <class T>
        static constexpr T formula(T V, T P, T rate) {
            return 1e9 * (rate * V * P);
        }
    } rate_plato;

    // One maker's table for ale.
    struct two_step : model<struct two_step, unit::cells(unit::litres, unit::gravity_20_20)> {
        static constexpr facts about{.source = "a yeast maker's pitching table (Wyeast Laboratories)",
                                     .status = evidence::primary,
                                     .use = "ale pitched and fermented above 18 degC (65 degF), up to a gravity of 1.076",
                                     .note =
                                         "6 million cells/mL up to 1.060, 12 million up to 1.076; colder fermentations need more by the same maker. "
                                         "At 15 degP it gives 12 million where 1.0 million per mL and degP gives 15 million"};
        static constexpr input inputs[]{{"volume"}, {"gravity"}};
        static constexpr const char* refusal = "the maker's table ends at a gravity of 1.076; yeast.pitch.rate_plato takes any extract";

        template <class T>
        static constexpr T formula(T V, T G) {
            T cells_per_ml = let("cells_per_ml", select(G <= 1.060, T(6e6), select(G <= 1.076, T(12e6), T(undefined))));
            return 1000.0 * V * cells_per_ml;
        }
    } two_step;
};
inline constexpr family<&pitch_models::rate_plato> pitch{};

}  // namespace wortmath::yeast
