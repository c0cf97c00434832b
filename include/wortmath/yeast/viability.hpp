#pragma once

#include "wortmath/model.hpp"

namespace wortmath::yeast {

struct viability_models {
    static constexpr const char* question = "What share of stored yeast is still alive?";

    struct exponential : model<struct exponential, unit::fraction(unit::days, unit::fraction, unit::fraction, unit::days)> {
        static constexpr facts about{.source = "a maker's 75 to 85 % after 30 days, carried on at a constant rate",
                                     .status = evidence::derived,
                                     .accuracy = "the 30-day figure is good to 0.05; the law beyond it is an assumption",
                                     .note =
                                         "replace `retained` and `reference_days` by a count of one's own. A straight line that reaches zero is "
                                         "a trade convention without published data"};
        static constexpr input inputs[]{{"days"},
                                        {"initial_viability", validated{0.3, 1}, possible{above(0), 1}, otherwise{1.0}},
                                        {"retained", only{above(0), 1}, otherwise{0.80}},
                                        {"reference_days", only{above(0), no_limit}, otherwise{30.0}}};

        template <class T>
        static constexpr T formula(T days, T initial, T retained, T reference) {
            return initial * pow(retained, days / reference);
        }
    } exponential;
};
inline constexpr family<&viability_models::exponential> viability{};

}  // namespace wortmath::yeast
