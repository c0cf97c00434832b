#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct yeast_formed_models {
    static constexpr const char* question = "How much dry yeast grew for each gram of beer?";

    struct balling : model<struct balling, unit::mass_share(unit::alcohol_by_mass)> {
        static constexpr facts about{.source = "C. J. N. Balling's mass balance: 2.0665 g extract = 1 g alcohol + 0.9565 g CO2 + 0.11 g dry yeast",
                                     .status = evidence::secondary,
                                     .use = "the yeast of a whole fermentation, per gram of beer",
                                     .note = "100 g of beer came from 100 + 1.0665 A g of wort"};
        static constexpr input inputs[]{{"alcohol_by_mass"}};

        template <class T>
        static constexpr T formula(T alcohol) {
            return 0.0011 * alcohol;
        }
    } balling;
};
inline constexpr family<&yeast_formed_models::balling> yeast_formed{};

}  // namespace wortmath::attenuation
