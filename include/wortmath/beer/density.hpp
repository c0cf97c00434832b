#pragma once

#include "wortmath/attenuation/apparent_extract.hpp"
#include "wortmath/attenuation/original_extract.hpp"
#include "wortmath/constants.hpp"
#include "wortmath/ethanol/density.hpp"
#include "wortmath/extract/cubics.hpp"
#include "wortmath/extract/to_gravity.hpp"

namespace wortmath::beer {
namespace detail {

// Gravity of water with this much alcohol, and with this much extract, both in kg/m3 at 20 degC.
template <class T>
constexpr T gravity_with_alcohol(T concentration) {
    return ethanol::detail::density_at_20C(ethanol::detail::share_from_concentration_at_20C(concentration)) / ethanol::detail::A[0];
}
template <class T>
constexpr T gravity_with_extract(T concentration) {
    constexpr auto scale = extract::detail::asbc;
    constexpr double share = constants::water_20C / 100.0;  // kg/m3 of extract for each degP and unit of gravity
    return newton<4>(
        1.0 + concentration * 3.86e-4, [=](T S) { return scale.extract(S) * S * share - concentration; },
        [=](T S) { return (scale.extract(S) + S * poly(S, scale.c1, 2.0 * scale.c2, 3.0 * scale.c3)) * share; });
}

}  // namespace detail

struct density_models {
    static constexpr const char* question = "What is the density of degassed beer at 20 degC, from its alcohol and real extract?";

    // SG = SG_A + SG_E - 1, where both solutions hold the same grams per 100 mL as the beer.
    struct tabarie : model<struct tabarie, unit::density(unit::alcohol_by_mass, unit::real_extract)> {
        static constexpr facts about{.source = "method of Tabarie as in OIV-MA-AS2-03B, with the densities of OIML R 22 and the ASBC extract scale",
                                     .status = evidence::secondary,
                                     .use = "any beer",
                                     .accuracy =
                                         "0.05 gravity points after a fit; within the 95 % limits below 5 % sucrose and 18 % ethanol (J. J. Hackbarth, J. Am. "
                                         "Soc. Brew. Chem. 67 (2009) 146); 34 analysed beers +0.5 points (old extract tables)",
                                     .note =
                                         "adding the gravities at equal mass per cent instead of equal mass per volume shifts a beer of 12 degP by 0.24 points "
                                         "and one of 16 degP by 0.43. The density is in vacuum"};
        static constexpr input inputs[]{{"alcohol_by_mass", validated{0, 14}, possible{0, 30}}, {"real_extract", validated{0, 20}, possible{0, 50}}};

        // The part of the residual that moves with the gravity is small, so a slope from the first order serves: six steps
        // reach 1e-14 over the validated region and 1e-11 over the possible one.
        template <class T>
        static constexpr T formula(T alcohol, T real) {
            T slope = 1.0 + 0.0017 * alcohol - 0.0039 * real;
            T gravity = newton<6>(
                2.0 - slope,
                [=](T S) {
                    T kilogram_per_percent = S * (constants::water_20C / 100.0);
                    return S - (detail::gravity_with_alcohol(alcohol * kilogram_per_percent) + detail::gravity_with_extract(real * kilogram_per_percent) - 1.0);
                },
                [=](T) { return slope; });
            return constants::water_20C * gravity;
        }
    } tabarie;

    // The gravity that Balling's hydrometer would show.
    struct balling : model<struct balling, unit::density(unit::alcohol_by_mass, unit::real_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling's great formula and attenuation quotient, through the ASBC extract scale",
                                     .status = evidence::derived,
                                     .use = "consistent with the extract family of models",
                                     .accuracy = "higher than tabarie by up to 0.45 gravity points for worts up to 20 degP"};
        static constexpr input inputs[]{{"alcohol_by_mass", validated{0, 14}}, {"real_extract", validated{0, 20}}};

        template <class T>
        static constexpr T formula(T alcohol, T real) {
            T p = let("original_extract", attenuation::original_extract.balling.formula(alcohol, real));
            T m = let("apparent_extract", attenuation::apparent_extract.balling.unguarded(p, real));
            return constants::water_20C * extract::to_gravity.asbc.formula(m);
        }
    } balling;
};
inline constexpr family<&density_models::tabarie> density{};

}  // namespace wortmath::beer
