#pragma once

#include "wortmath/model.hpp"

namespace wortmath::beer {

struct carbohydrate_models {
    static constexpr const char* question = "What share of the beer is carbohydrate?";

    struct asbc_beer33 : model<struct asbc_beer33, unit::fraction(unit::real_extract, unit::fraction, unit::fraction)> {
        static constexpr facts about{.source = "ASBC Methods of Analysis, Beer-33",
                                     .status = evidence::memory,
                                     .use = "an analysed beer",
                                     .note =
                                         "shares by mass: the concentration in g/L is the result times the beer density in kg/m3. Typical protein 0.003 to "
                                         "0.005 (all malt up to 0.75 g/100 mL), ash 0.001 to 0.0025. An estimate: people who dose medicine by carbohydrate "
                                         "(diabetes) must not rely on it, and it says nothing about gluten or allergens"};
        static constexpr input inputs[]{{"real_extract"}, {"protein"}, {"ash"}};
        static constexpr const char* refusal =
            "protein and ash together exceed the real extract: they are shares of the beer, 0.4 % is 0.004; check the three figures";

        template <class T>
        static constexpr T formula(T real, T protein, T ash) {
            T carbohydrate = real / 100.0 - protein - ash;
            return select(carbohydrate >= 0.0, carbohydrate, undefined);
        }
    } asbc_beer33;
};
inline constexpr family<&carbohydrate_models::asbc_beer33> carbohydrate{};

}  // namespace wortmath::beer
