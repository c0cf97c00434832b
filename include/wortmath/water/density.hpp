#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::water {

struct density_models {
    static constexpr const char* question = "What is the density of air-free pure water at a temperature?";

    // One equation from cold to boiling at 0.1 MPa: the default wherever plain water is meant.
    struct iapws_sr6_08 : model<struct iapws_sr6_08, unit::density(unit::celsius)> {
        static constexpr facts about{.source = "IAPWS SR6-08, supplementary release on liquid water at 0.1 MPa, Table 8",
                                     .status = evidence::secondary,
                                     .use = "plain water at any temperature",
                                     .accuracy = "IAPWS-95 within 4e-5 kg/m3 at 0.1 MPa; 7e-4 kg/m3 against the value at 101.325 kPa",
                                     .note = "transcribed from an open library that reproduces the check values of the release"};
        static constexpr input inputs[]{{"temperature", only{-20, 110}}};

        template <class T>
        static constexpr T formula(T t) {
            T absolute = t + constants::zero_celsius;
            T alpha = let("alpha", 10.0 / (593.0 - absolute));
            T beta = let("beta", 10.0 / (absolute - 232.0));
            T a2 = square(alpha), a4 = square(a2), a5 = a4 * alpha, a7 = a5 * a2, a8 = square(a4), a9 = a8 * alpha;
            T sum = 1.93763157e-2 + 6.74458446e3 * a4 - 2.22521604e5 * a5 + 1.00231247e8 * a7 - 1.63552118e9 * a8 + 8.32299658e9 * a9 +
                    poly(beta, 0.0, 5.78545292e-3, -1.53195665e-2, 3.11337859e-2, -4.23546241e-2, 3.38713507e-2, -1.19946761e-2);
            return 1.0 / (461.51805 * 10.0 / 1e5 * sum);
        }
    } iapws_sr6_08;

    // The metrologists' formula for 0 to 40 degC.
    struct tanaka : model<struct tanaka, unit::density(unit::celsius)> {
        static constexpr facts about{.source = "M. Tanaka, G. Girard, R. Davis, A. Peuto, N. Bignell, Metrologia 38 (2001) 301",
                                     .status = evidence::secondary,
                                     .use = "calibration work between 0 and 40 degC",
                                     .accuracy = "0.0011 kg/m3 to IAPWS-95; stated uncertainty 0.00083 kg/m3 (k = 2)",
                                     .note = "for tap water 999.972 replaces 999.974950 (number from memory)"};
        static constexpr input inputs[]{{"temperature", validated{0, 40}, possible{0, 50}}};

        template <class T>
        static constexpr T formula(T t) {
            return 999.974950 * (1.0 - square(t - 3.983035) * (t + 301.797) / (522528.9 * (t + 69.34881)));
        }
    } tanaka;

    // Long the standard formula; its temperatures are on the scale of 1968.
    struct kell : model<struct kell, unit::density(unit::celsius)> {
        static constexpr facts about{.source = "G. S. Kell, J. Chem. Eng. Data 20 (1975) 97",
                                     .status = evidence::secondary,
                                     .use = "to repeat older work",
                                     .accuracy = "0.003 kg/m3 under Tanaka at 0 to 20 degC; 0.0146 kg/m3 above IAPWS-95 at 100 degC",
                                     .note = "temperatures of 1968 taken as given; misprints in circulation: +7.987e-3 for -7.987e-3 (4.8 kg/m3 too "
                                             "high at 20 degC) and 16.897850e-3 for 16.879850e-3 (0.27 kg/m3 too low at 20 degC)"};
        static constexpr input inputs[]{{"temperature", only{0, 150}}};

        template <class T>
        static constexpr T formula(T t) {
            return poly(t, 999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12) / (1.0 + 16.879850e-3 * t);
        }
    } kell;

    // The water inside ICUMSA's sucrose tables: inside a gravity ratio it makes pure water read exactly 1.
    struct ptb_1990 : model<struct ptb_1990, unit::density(unit::celsius)> {
        static constexpr facts about{.source = "H. Bettin, F. Spieweck, PTB-Mitteilungen 100 (1990) 195",
                                     .status = evidence::secondary,
                                     .use = "above and below the line of every gravity ratio, beside icumsa",
                                     .accuracy = "-0.0038 kg/m3 to Tanaka, -0.0058 kg/m3 to IAPWS-95 at most",
                                     .note = "the last constant truncated to 0.0168872 is 0.0013 kg/m3 off at 100 degC"};
        static constexpr input inputs[]{{"temperature", validated{0, 100}, possible{0, 110}}};

        template <class T>
        static constexpr T formula(T t) {
            return poly(t, 999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12) / (1.0 + 16.887236e-3 * t);
        }
    } ptb_1990;
};
inline constexpr family<&density_models::iapws_sr6_08> density{};

}  // namespace wortmath::water
