#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer {

struct ethanol_index_models {
    static constexpr const char* question = "What is the refractive index of weak ethanol in water, at 20 degC against air?";

    struct crc_fit : model<struct crc_fit, unit::ratio(unit::alcohol_by_mass)> {
        static constexpr facts about{
            .source = "fit to the CRC Handbook of Chemistry and Physics, 102nd ed. (2021), concentrative properties of aqueous solutions",
            .status = evidence::derived,
            .use = "up to 12 % mass; above that mixture_index",
            .accuracy = "5e-5, the rounding of the handbook",
            .note = "the index passes a maximum near 80 % mass, so no strength can be read from it over the whole range"};
        static constexpr input inputs[]{{"alcohol_by_mass", only{0, 12}}};

        template <class T>
        static constexpr T formula(T alcohol) {
            return poly(alcohol, 1.33299 + 3.5E-5, 5.607E-4, 8.85E-6);
        }
    } crc_fit;
};
inline constexpr family<&ethanol_index_models::crc_fit> ethanol_index{};

}  // namespace wortmath::refractometer
