#pragma once

#include "wortmath/refractometer/index.hpp"

namespace wortmath::refractometer {

struct brix_from_index_models {
    static constexpr const char* question = "What sugar content belongs to a refractive index at 20 degC against air?";

    // Exact inverse of the scale: four steps reach 2e-13 degBx over the whole range.
    struct icumsa_1974 : model<struct icumsa_1974, unit::brix(unit::ratio)> {
        static constexpr facts about{.source = "inverse of the fit to the ICUMSA 1974 refractive index scale (method SPS-3)",
                                     .status = evidence::derived,
                                     .use = "any sugar content",
                                     .accuracy = "0.0036 degBx to the table",
                                     .note = "an index against vacuum is divided by 1.000272 first (index_in_air)"};
        static constexpr input inputs[]{{"index", only{1.3260, 1.5040}}};

        template <class T>
        static constexpr T formula(T n) {
            using detail::quintic;
            T w = newton<4>(
                6.0 * (n - 1.33299), [=](T x) { return refractometer::index.icumsa_1974.formula(100.0 * x) - n; },
                [](T x) { return poly(x, quintic[1], 2.0 * quintic[2], 3.0 * quintic[3], 4.0 * quintic[4], 5.0 * quintic[5]); });
            return 100.0 * w;
        }
    } icumsa_1974;

    // A fit of its own, not the inverse of the other cubic.
    struct icumsa_1974_cubic : model<struct icumsa_1974_cubic, unit::brix(unit::ratio)> {
        static constexpr facts about{.source = "fit to the ICUMSA 1974 refractive index scale (method SPS-3), as carried by an open library",
                                     .status = evidence::derived,
                                     .use = "small computers; wort strengths, 0 to 30 degBx",
                                     .accuracy = "0.0033 degBx to the table up to 30 degBx",
                                     .note = "the round trip through index.icumsa_1974_cubic closes to 0.0007 degBx only"};
        static constexpr input inputs[]{{"index", validated{1.33298, 1.38116}, possible{1.3260, 1.5040}}};

        template <class T>
        static constexpr T formula(T n) {
            return poly(n - 1.33299, 0.0032780, 699.81832, -1810.4729, 4414.3426);
        }
    } icumsa_1974_cubic;

    struct horner_quintic : model<struct horner_quintic, unit::brix(unit::ratio)> {
        static constexpr facts about{.source = "much copied polynomial of unnamed origin",
                                     .status = evidence::secondary,
                                     .use = "to repeat older work",
                                     .accuracy = "up to 0.026 degBx wrong, 0.021 below 30 degBx: its digits are too few for their cancellation",
                                     .note = "evaluated exactly in the order printed"};
        static constexpr input inputs[]{{"index", validated{1.33298, 1.5040}, possible{1.3260, 1.5040}}};

        template <class T>
        static constexpr T formula(T n) {
            return (((((11758.74 * n - 88885.21) * n + 270177.93) * n - 413145.80) * n + 318417.95) * n - 99127.4536);
        }
    } horner_quintic;
};
inline constexpr family<&brix_from_index_models::icumsa_1974> brix_from_index{};

}  // namespace wortmath::refractometer
