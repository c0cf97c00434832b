#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::beer {

struct alcohol_by_mass_models {
    static constexpr const char* question = "What is the alcohol by mass of a beer whose alcohol by volume and density are known?";

    struct definition : model<struct definition, unit::alcohol_by_mass(unit::alcohol_by_volume, unit::density)> {
        static constexpr facts about{.source = "definition of alcohol by volume at 20 degC, with the legal density of ethanol",
                                     .status = evidence::primary,
                                     .use = "beer, with the density of the beer itself at 20 degC in vacuum",
                                     .accuracy = "exact",
                                     .note = "the density of a mixture of water and ethanol in place of the beer's is 2 to 4 % wrong"};
        static constexpr input inputs[]{{"alcohol_by_volume"}, {"beer_density", only{950, 1500}}};

        template <class T>
        static constexpr T formula(T alcohol, T density) {
            return alcohol * constants::ethanol_20C / density;
        }
    } definition;
};
inline constexpr family<&alcohol_by_mass_models::definition> alcohol_by_mass{};

}  // namespace wortmath::beer
