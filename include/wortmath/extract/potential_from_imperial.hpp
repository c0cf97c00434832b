#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct potential_from_imperial_models {
    static constexpr const char* question = "How many litre-degrees per kg is a potential in points per pound and imperial gallon?";

    struct definition : model<struct definition, unit::litre_degrees_per_kilogram(unit::imperial_ppg)> {
        static constexpr facts about{.source = "the units: one point in one imperial gallon from one pound",
                                     .status = evidence::derived,
                                     .use = "potentials of older British malt lists",
                                     .accuracy = "exact",
                                     .note = "10.022412855 L degrees/kg each; never mix the two gallons"};
        static constexpr input inputs[]{{"imperial_ppg"}};

        template <class T>
        static constexpr T formula(T imperial_ppg) {
            return imperial_ppg * (constants::l_per_imp_gal / (constants::g_per_lb / 1000.0));
        }
    } definition;
};
inline constexpr family<&potential_from_imperial_models::definition> potential_from_imperial{};

}  // namespace wortmath::extract
