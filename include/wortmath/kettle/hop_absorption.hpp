#pragma once

#include "wortmath/model.hpp"

namespace wortmath::kettle {

struct hop_absorption_models {
    static constexpr const char* question = "How much wort do the drained hops keep?";

    // Whole hops.
    struct per_mass : model<struct per_mass, unit::litres(unit::grams, unit::litres_per_kilogram)> {
        static constexpr facts about{.source = "one published weighing: 11.1 g leaf hops, boiled 20 min and drained 2 min unpressed, held 54 g",
                                     .status = evidence::secondary,
                                     .accuracy = "that weighing gives 4.9 kg/kg; no spread is known",
                                     .note = "no figure for pellets is published: their loss is the trub left behind, to be entered as a volume"};
        static constexpr input inputs[]{{"hop_mass"}, {"absorption", validated{0, 12}, otherwise{5.0}}};

        template <class T>
        static constexpr T formula(T m, T absorption) {
            return absorption * (m / 1000.0);
        }
    } per_mass;
};
inline constexpr family<&hop_absorption_models::per_mass> hop_absorption{};

}  // namespace wortmath::kettle
