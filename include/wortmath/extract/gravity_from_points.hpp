#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct gravity_from_points_models {
    static constexpr const char* question = "What gravity does an ingredient give in a volume of wort?";

    // The trade's linear rule, for recipes on paper.
    struct linear : model<struct linear, unit::gravity(unit::grams, unit::litre_degrees_per_kilogram, unit::litres)> {
        static constexpr facts about{.source = "definition of the potential",
                                     .status = evidence::derived,
                                     .use = "rough recipes; a mass balance is better (balance.top_up)",
                                     .accuracy = "with the potential of sucrose at 10 degP: -0.04 points at 5, +0.04 at 12, +0.12 at 15, "
                                                 "+0.35 at 20 and +0.69 at 25 degP",
                                     .note = "on the gravity scale of the potential; one pound made up to one US gallon is 1.0462, one "
                                             "pound added to one US gallon of water is 1.0430 (sucrose, apparent 20/20)"};
        static constexpr input inputs[]{{"mass", only{above(0), no_limit}}, {"potential"}, {"volume", only{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T m, T K, T V) {
            return 1.0 + m / 1000.0 * K / V / 1000.0;
        }
    } linear;
};
inline constexpr family<&gravity_from_points_models::linear> gravity_from_points{};

}  // namespace wortmath::extract
