#pragma once

#include "wortmath/beer/density.hpp"
#include "wortmath/extract/from_gravity.hpp"

namespace wortmath::beer {

struct real_extract_from_density_models {
    static constexpr const char* question = "What extract is in the beer, from its density and alcohol (density meter and alcohol meter)?";

    struct tabarie : model<struct tabarie, unit::real_extract(unit::density, unit::alcohol_by_mass)> {
        static constexpr facts about{
            .source = "method of Tabarie as in OIV-MA-AS2-03B, with the densities of OIML R 22 and the ASBC extract scale",
            .status = evidence::secondary,
            .use = "an analysed beer; the original extract then follows by attenuation.original_extract",
            .accuracy = "the exact inverse of density.tabarie",
            .note = "density of the degassed beer at 20 degC in vacuum. The OIV writes the same rule as d_r = d_v - d_a + 1.000 (20/20)"};
        static constexpr input inputs[]{{"beer_density", only{950, 1500}}, {"alcohol_by_mass", validated{0, 14}, possible{0, 30}}};

        template <class T>
        static constexpr T formula(T density, T alcohol) {
            T without_alcohol = let("gravity_without_alcohol", density / constants::water_20C - detail::gravity_with_alcohol(alcohol / 100.0 * density) + 1.0);
            return extract::from_gravity.asbc.formula(without_alcohol) * without_alcohol * constants::water_20C / density;
        }
    } tabarie;
};
inline constexpr family<&real_extract_from_density_models::tabarie> real_extract_from_density{};

}  // namespace wortmath::beer
