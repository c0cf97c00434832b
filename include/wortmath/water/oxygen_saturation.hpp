#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/water/density.hpp"
#include "wortmath/water/dissolved_gas.hpp"

namespace wortmath::water {

struct oxygen_saturation_models {
    static constexpr const char* question = "How much oxygen does water hold that stands in air?";

    struct benson_krause : model<struct benson_krause, unit::milligrams_per_litre(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "B. B. Benson, D. Krause (1984), as printed in APHA, Standard Methods for the Examination of Water "
                                               "and Wastewater",
                                     .status = evidence::secondary,
                                     .use = "air-saturated pure water at cellar and pitching temperatures",
                                     .accuracy = "0.13 mg/L to an instrument maker's table that calls itself approximate",
                                     .note = "pure water: wort holds less; one print ends in -139.34410 for -139.34411, 1e-5 of the result; the scaling "
                                             "with the barometer is derived"};
        static constexpr input inputs[]{{"temperature", validated{0, 40}, possible{-5, 80}},
                                        {"barometer", validated{0.7, 1.1}, possible{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T barometer) {
            T per_kelvin = 1.0 / (t + constants::zero_celsius);
            T at_1_atm = let("C_1atm", exp(poly(per_kelvin, -139.34411, 1.575701e5, -6.642308e7, 1.243800e10, -8.621949e11)));
            T vapour = let("p_w", saturation_pressure.iapws_sr1_86.formula(t));
            return at_1_atm * (barometer - vapour) / (constants::bar_per_atm - vapour);
        }
    } benson_krause;

    struct iapws_g7_04 : model<struct iapws_g7_04, unit::milligrams_per_litre(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "IAPWS G7-04, guideline on the Henry constant of gases in water (2004), oxygen",
                                     .status = evidence::derived,
                                     .use = "as an independent check of the default",
                                     .accuracy = "within 1.2 % of the default from 2 to 40 degC"};
        static constexpr input inputs[]{{"temperature", validated{2, 40}, possible{-5, 80}},
                                        {"barometer", validated{0.7, 1.1}, possible{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T t, T barometer) {
            T in_air = 0.20946 * (barometer - saturation_pressure.iapws_sr1_86.formula(t));
            T mole_fraction = let("x", in_air * 0.1 / detail::henry_iapws_g7_04(t, detail::oxygen));
            return mole_fraction * 1e3 * density.kell.formula(t) * 31.9988 / 18.015268;
        }
    } iapws_g7_04;
};
inline constexpr family<&oxygen_saturation_models::benson_krause> oxygen_saturation{};

}  // namespace wortmath::water
