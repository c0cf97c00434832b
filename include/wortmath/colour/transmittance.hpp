#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct transmittance_models {
    static constexpr const char* question = "What share of the light of one wavelength passes through a beer?";

    struct beer_lambert : model<struct beer_lambert, unit::fraction(unit::srm, unit::centimetres, unit::ratio)> {
        static constexpr facts about{.source = "law of Beer and Lambert",
                                     .status = evidence::derived,
                                     .use = "bright beer",
                                     .note = "haze scatters light and is not in the formula; relative_absorbance is that at the wavelength over that at 430 nm"};
        static constexpr input inputs[]{{"srm"}, {"path_length"}, {"relative_absorbance", possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T srm, T path, T f) {
            return power(10.0, -(srm / 12.7) * path * f);
        }
    } beer_lambert;
};
inline constexpr family<&transmittance_models::beer_lambert> transmittance{};

}  // namespace wortmath::colour
