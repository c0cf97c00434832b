#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::water {

namespace detail {
// Region 4 of IAPWS-IF97: with theta = T + n9/(T - n10) and beta = (p/MPa)^(1/4), both directions solve one and the same
// A(theta) beta^2 + B(theta) beta + C(theta) = 0.
inline constexpr double if97_n1 = 1167.0521452767, if97_n2 = -724213.16703206, if97_n3 = -17.073846940092, if97_n4 = 12020.824702470,
                        if97_n5 = -3232555.0322333, if97_n6 = 14.915108613530, if97_n7 = -4823.2657361591, if97_n8 = 405113.40542057,
                        if97_n9 = -0.23855557567849, if97_n10 = 650.17534844798;

// (p/MPa)^(1/4) at an absolute temperature.
template <class T>
constexpr T if97_root(T absolute) {
    T theta = let("theta", absolute + if97_n9 / (absolute - if97_n10));
    T a = let("A", square(theta) + if97_n1 * theta + if97_n2);
    T b = let("B", if97_n3 * square(theta) + if97_n4 * theta + if97_n5);
    T c = let("C", if97_n6 * square(theta) + if97_n7 * theta + if97_n8);
    return 2.0 * c / (-b + sqrt(square(b) - 4.0 * a * c));
}

// The derivative of ln p by the temperature, 1/K, where `root` is if97_root(absolute).
template <class T>
constexpr T if97_log_slope(T absolute, T root) {
    T theta = absolute + if97_n9 / (absolute - if97_n10);
    T a = square(theta) + if97_n1 * theta + if97_n2;
    T b = if97_n3 * square(theta) + if97_n4 * theta + if97_n5;
    T by_theta = (2.0 * theta + if97_n1) * square(root) + (2.0 * if97_n3 * theta + if97_n4) * root + 2.0 * if97_n6 * theta + if97_n7;
    T by_absolute = by_theta * (1.0 - if97_n9 / square(absolute - if97_n10));
    return -4.0 * by_absolute / (root * (2.0 * a * root + b));
}
}  // namespace detail

struct saturation_pressure_models {
    static constexpr const char* question = "At which pressure does water boil at a temperature?";

    // The exact inverse of water.boiling_temperature.if97.
    struct if97 : model<struct if97, unit::pressure(unit::celsius)> {
        static constexpr facts about{.source = "IAPWS R7-97(2012), Industrial Formulation 1997, region 4, equation 30",
                                     .status = evidence::secondary,
                                     .use = "everywhere",
                                     .accuracy = "the verification values of the release within 1.8e-9 relative",
                                     .note =
                                         "transcribed from an open library and other test suites; above 100 degC it describes closed vessels, "
                                         "which are built by licensed practice and not by this number"};
        static constexpr input inputs[]{{"temperature", only{0, 373.946}}};

        template <class T>
        static constexpr T formula(T t) {
            return 10.0 * square(square(detail::if97_root(t + constants::zero_celsius)));
        }
    } if97;

    // Independent of if97, to check it.
    struct iapws_sr1_86 : model<struct iapws_sr1_86, unit::pressure(unit::celsius)> {
        static constexpr facts about{.source = "IAPWS SR1-86(1992), supplementary release on the saturation properties of ordinary water",
                                     .status = evidence::secondary,
                                     .use = "as a check on if97 that shares nothing with it",
                                     .accuracy = "5e-5 relative from if97 at 400 K",
                                     .note = "as evaluated in the tests of an open library"};
        static constexpr input inputs[]{{"temperature", only{0.01, 373.946}}};

        template <class T>
        static constexpr T formula(T t) {
            T absolute = t + constants::zero_celsius;
            T h = let("h", most(1.0 - absolute / 647.096, T(0.0)));  // at the critical point rounding must not go below 0
            T root = sqrt(h), h3 = cube(h);
            return 220.64 * exp(647.096 / absolute *
                                (-7.85951783 * h + 1.84408259 * h * root - 11.7866497 * h3 + 22.6807411 * h3 * root - 15.9618719 * square(square(h)) +
                                 1.80122502 * square(h3) * h * root));
        }
    } iapws_sr1_86;
};
inline constexpr family<&saturation_pressure_models::if97> saturation_pressure{};

}  // namespace wortmath::water
