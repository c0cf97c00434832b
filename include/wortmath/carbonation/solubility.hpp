#pragma once

#include "wortmath/carbonation/fugacity_coefficient.hpp"
#include "wortmath/carbonation/henry_constant.hpp"

namespace wortmath::carbonation {

struct solubility_models {
    static constexpr const char* question = "How much carbon dioxide does water hold under a pressure of the gas?";

    struct weiss_1974 : model<struct weiss_1974, unit::co2_concentration(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "R. F. Weiss, Marine Chemistry 2 (1974) 203",
                                     .status = evidence::secondary,
                                     .use = "water at the temperatures of drinks",
                                     .accuracy = "0.7 % at most to Murray and Riley 1971 and Harned and Davis 1943, 0 to 35 degC",
                                     .note = "the pressure is that of the CO2 alone: absolute, without air, nitrogen and water vapour",
                                     .danger = "taken too high it promises too little pressure: package models do not use it above 60 degC"};
        static constexpr input inputs[]{{"temperature", validated{-1, 60}, possible{-1, 80}},
                                        {"co2_pressure", validated{0, 15}, possible{0, 30}}};

        template <class T>
        static constexpr T formula(T t, T p) {
            return henry_constant.weiss_1974.formula(t) * fugacity_coefficient.virial.formula(t, p) * p;
        }
    } weiss_1974;

    struct carroll_1991 : model<struct carroll_1991, unit::co2_concentration(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "J. J. Carroll, J. D. Slupsky, A. E. Mather, J. Phys. Chem. Ref. Data 20 (1991) 1201",
                                     .status = evidence::secondary,
                                     .use = "the literature of soft drinks and of high temperatures",
                                     .accuracy = "0.15 % to the CRC Handbook's table",
                                     .note = "the pressure is that of the CO2 alone: absolute, without air, nitrogen and water vapour"};
        static constexpr input inputs[]{{"temperature", only{0, 100}}, {"co2_pressure", validated{0, 10}, possible{0, 30}}};

        template <class T>
        static constexpr T formula(T t, T p) {
            return henry_constant.carroll_1991.formula(t) * fugacity_coefficient.virial.formula(t, p) * p;
        }
    } carroll_1991;

    struct iapws_g7_04 : model<struct iapws_g7_04, unit::co2_concentration(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "IAPWS G7-04, guideline on the Henry constant of gases in water (2004)",
                                     .status = evidence::secondary,
                                     .use = "hot water and comparisons; not for carbonation",
                                     .accuracy = "the fit has a root mean square error of 5 %: 4.7 % low at 0 degC",
                                     .note = "the pressure is that of the CO2 alone: absolute, without air, nitrogen and water vapour"};
        static constexpr input inputs[]{{"temperature", validated{1.04, 100}, possible{-5, 130}},
                                        {"co2_pressure", validated{0, 15}, possible{0, 30}}};

        template <class T>
        static constexpr T formula(T t, T p) {
            return henry_constant.iapws_g7_04.formula(t) * fugacity_coefficient.virial.formula(t, p) * p;
        }
    } iapws_g7_04;
};
inline constexpr family<&solubility_models::weiss_1974> solubility{};

}  // namespace wortmath::carbonation
