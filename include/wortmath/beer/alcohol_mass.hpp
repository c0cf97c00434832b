#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::beer {

struct alcohol_mass_models {
    static constexpr const char* question = "How many grams of alcohol are in a serving?";

    struct definition : model<struct definition, unit::grams(unit::alcohol_by_volume, unit::litres)> {
        static constexpr facts about{.source = "definition of alcohol by volume at 20 degC, with the legal density of ethanol",
                                     .status = evidence::primary,
                                     .use = "the gram figure to show beside any counting unit",
                                     .accuracy = "exact",
                                     .note =
                                         "counting units differ by country (from memory): United Kingdom 10 mL, which is 7.8924 g; United States 14 g; "
                                         "Australia 10 g. None of them says how much is harmless"};
        static constexpr input inputs[]{{"alcohol_by_volume"}, {"volume"}};

        template <class T>
        static constexpr T formula(T alcohol, T volume) {
            return constants::ethanol_20C / 100.0 * alcohol * volume;
        }
    } definition;
};
inline constexpr family<&alcohol_mass_models::definition> alcohol_mass{};

}  // namespace wortmath::beer
