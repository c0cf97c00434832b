#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct ppg_from_potential_models {
    static constexpr const char* question = "How many points per pound and US gallon is a potential in litre-degrees per kg?";

    struct definition : model<struct definition, unit::ppg(unit::litre_degrees_per_kilogram)> {
        static constexpr facts about{.source = "the units: 1 ppg is one point in one US gallon from one pound",
                                     .status = evidence::derived,
                                     .use = "potentials for American recipes",
                                     .accuracy = "exact"};
        static constexpr input inputs[]{{"potential"}};

        template <class T>
        static constexpr T formula(T K) {
            return K / (constants::l_per_us_gal / (constants::g_per_lb / 1000.0));
        }
    } definition;
};
inline constexpr family<&ppg_from_potential_models::definition> ppg_from_potential{};

}  // namespace wortmath::extract
