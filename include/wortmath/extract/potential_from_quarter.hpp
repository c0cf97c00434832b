#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct potential_from_quarter_models {
    static constexpr const char* question = "How many litre-degrees per kg is a yield in brewers' pounds per quarter?";

    struct definition : model<struct definition, unit::litre_degrees_per_kilogram(unit::pounds_per_quarter)> {
        static constexpr facts about{.source = "the units: a brewers' pound is the excess weight of 36 imperial gallons over 360 lb, a "
                                               "quarter of malt is 336 lb",
                                     .status = evidence::derived,
                                     .use = "yields in old British brewing books",
                                     .accuracy = "exact",
                                     .note = "2.982860969 L degrees/kg each"};
        static constexpr input inputs[]{{"pounds_per_quarter"}};

        template <class T>
        static constexpr T formula(T lb) {
            constexpr double points = 1000.0 / 360.0, barrel = 36.0 * constants::l_per_imp_gal, quarter = 336.0 * constants::g_per_lb / 1000.0;
            return lb * (points * barrel / quarter);
        }
    } definition;
};
inline constexpr family<&potential_from_quarter_models::definition> potential_from_quarter{};

}  // namespace wortmath::extract
