#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::beer {

struct alcohol_by_volume_models {
    static constexpr const char* question = "What is the alcohol by volume of a beer whose alcohol by mass and density are known?";

    struct definition : model<struct definition, unit::alcohol_by_volume(unit::alcohol_by_mass, unit::density)> {
        static constexpr facts about{.source = "definition of alcohol by volume at 20 degC, with the legal density of ethanol",
                                     .status = evidence::primary,
                                     .use = "beer, with the density of the beer itself at 20 degC in vacuum",
                                     .accuracy = "exact",
                                     .note = "the density of a mixture of water and ethanol in place of the beer's is 2 to 4 % wrong"};
        static constexpr input inputs[]{{"alcohol_by_mass"}, {"beer_density", only{950, 1500}}};

        template <class T>
        static constexpr T formula(T alcohol, T density) {
            return alcohol * density / constants::ethanol_20C;
        }
    } definition;
};
inline constexpr family<&alcohol_by_volume_models::definition> alcohol_by_volume{};

}  // namespace wortmath::beer
