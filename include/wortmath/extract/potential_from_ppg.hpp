#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct potential_from_ppg_models {
    static constexpr const char* question = "How many litre-degrees per kg is a potential in points per pound and US gallon?";

    struct definition : model<struct definition, unit::litre_degrees_per_kilogram(unit::ppg)> {
        static constexpr facts about{.source = "the units: 1 ppg is one point in one US gallon from one pound",
                                     .status = evidence::derived,
                                     .use = "potentials of American malt lists",
                                     .accuracy = "exact",
                                     .note = "8.345404452 L degrees/kg each; never mix the two gallons"};
        static constexpr input inputs[]{{"ppg"}};

        template <class T>
        static constexpr T formula(T ppg) {
            return ppg * (constants::l_per_us_gal / (constants::g_per_lb / 1000.0));
        }
    } definition;
};
inline constexpr family<&potential_from_ppg_models::definition> potential_from_ppg{};

}  // namespace wortmath::extract
