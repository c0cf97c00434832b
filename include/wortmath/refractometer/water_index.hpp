#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/refractometer/refraction.hpp"

namespace wortmath::refractometer {

struct water_index_models {
    static constexpr const char* question = "What is the refractive index of water, against vacuum?";

    struct iapws_r9_97 : model<struct iapws_r9_97, unit::ratio(unit::celsius, unit::density, unit::nanometres)> {
        static constexpr facts about{
            .source = "IAPWS R9-97 (1997); A. H. Harvey, J. S. Gallagher, J. M. H. Levelt Sengers, J. Phys. Chem. Ref. Data 27 (1998) 761",
            .status = evidence::secondary,
            .use = "to check the zero of an instrument at its temperature and wavelength",
            .accuracy = "the check value of the release within 7e-11",
            .note =
                "against vacuum: divide by 1.000272 (index_in_air) before comparing with a sugar scale, which is against air; the difference is 0.25 degBx. "
                "The sodium D line is 589.3 nm. Transcribed from an open library that reproduces the check value; the upper limit of the density is from "
                "memory"};
        static constexpr input inputs[]{{"temperature", only{-12, 500}}, {"density", only{0, 1060}}, {"wavelength", only{200, 1100}}};

        template <class T>
        static constexpr T formula(T temperature, T density, T wavelength) {
            T d = density / 1000.0;
            T reduced = (temperature + constants::zero_celsius) / constants::zero_celsius;
            T L2 = square(wavelength / 1000.0 / 0.589);
            T X = d * (0.244257733 + 9.74634476E-3 * d - 3.73234996E-3 * reduced + 2.68678472E-4 * L2 * reduced + 1.58920570E-3 / L2 +
                       2.45934259E-3 / (L2 - square(0.2292020)) + 0.900704920 / (L2 - square(5.432937)) - 1.66626219E-2 * square(d));
            return detail::index_from_refraction(X);
        }
    } iapws_r9_97;
};
inline constexpr family<&water_index_models::iapws_r9_97> water_index{};

}  // namespace wortmath::refractometer
