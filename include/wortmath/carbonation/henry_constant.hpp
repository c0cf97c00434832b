#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/water/density.hpp"
#include "wortmath/water/dissolved_gas.hpp"

namespace wortmath::carbonation {

namespace detail {
// A Henry constant in MPa per mole fraction becomes g per litre and bar.
template <class T>
constexpr T g_per_litre_and_bar(T megapascals, T t) {
    return 0.1 * g_per_mol_co2 * water::density.kell.formula(t) / (g_per_mol_water * megapascals);
}
}  // namespace detail

struct henry_constant_models {
    static constexpr const char* question = "How much carbon dioxide does water take up per bar?";

    struct weiss_1974 : model<struct weiss_1974, unit::henry_constant(unit::celsius)> {
        static constexpr facts about{
            .source = "R. F. Weiss, Marine Chemistry 2 (1974) 203",
            .status = evidence::secondary,
            .use = "drinks at all temperatures of storage, and everything about packages",
            .accuracy = "0.7 % at most to Murray and Riley 1971 and Harned and Davis 1943, 0 to 35 degC; fitted to about 40 degC, from 40 to 60 within "
                        "2 % of the other two",
            .note = "the exponential is in mol per litre and atm of fugacity: at 1 atm multiply by the fugacity coefficient, 0.993 to 0.995; the 0.831 "
                    "in circulation is an Ostwald coefficient at 25 degC, not a Bunsen coefficient; recalled mass-based constants of the same paper "
                    "agree within 0.03 %, so no digit is wrong",
            .danger = "taken too high it promises too little pressure: package models do not use it above 60 degC"};
        static constexpr input inputs[]{{"temperature", validated{-1, 60}, possible{-1, 80}}};

        template <class T>
        static constexpr T formula(T t) {
            T hundreds = (t + constants::zero_celsius) / 100.0;
            return exp(-58.0931 + 90.5069 / hundreds + 22.2940 * log(hundreds)) * detail::g_per_mol_co2 / constants::bar_per_atm;
        }
    } weiss_1974;

    struct carroll_1991 : model<struct carroll_1991, unit::henry_constant(unit::celsius)> {
        static constexpr facts about{.source = "J. J. Carroll, J. D. Slupsky, A. E. Mather, J. Phys. Chem. Ref. Data 20 (1991) 1201",
                                     .status = evidence::secondary,
                                     .use = "the literature of soft drinks and of high temperatures",
                                     .accuracy = "2.5 % low at 0 degC, 2 % high at 25 degC to measurements; 0.15 % to the CRC Handbook's table",
                                     .note = "copies drop the leading minus or an exponent; 141.3637 MPa at 20 degC"};
        static constexpr input inputs[]{{"temperature", only{0, 100}}};

        template <class T>
        static constexpr T formula(T t) {
            T H = let("H", exp(poly(1.0 / (t + constants::zero_celsius), -6.8346, 1.2817e4, -3.7668e6, 2.997e8)));
            return detail::g_per_litre_and_bar(H, t);
        }
    } carroll_1991;

    // Not for carbonation: it is here for comparison, and as the outside check at 60 degC.
    struct iapws_g7_04 : model<struct iapws_g7_04, unit::henry_constant(unit::celsius)> {
        static constexpr facts about{.source = "IAPWS G7-04, guideline on the Henry constant of gases in water (2004)",
                                     .status = evidence::secondary,
                                     .use = "hot water and comparisons; not for carbonation",
                                     .accuracy = "the fit has a root mean square error of 5 %: 4.7 % low at 0 degC",
                                     .note = "fitted from 1.04 to 369.5 degC; transcribed from open thermodynamic libraries"};
        static constexpr input inputs[]{{"temperature", validated{1.04, 100}, possible{-5, 130}}};

        template <class T>
        static constexpr T formula(T t) {
            return detail::g_per_litre_and_bar(water::detail::henry_iapws_g7_04(t, water::detail::carbon_dioxide), t);
        }
    } iapws_g7_04;
};
inline constexpr family<&henry_constant_models::weiss_1974> henry_constant{};

}  // namespace wortmath::carbonation
