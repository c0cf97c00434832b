#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer {
namespace detail {

inline constexpr double quintic[]{1.33298723, 0.14275328, 0.05474398, 0.01200009, 0.01340275, -0.00961397};

}  // namespace detail

struct index_models {
    static constexpr const char* question = "What is the refractive index of a sucrose solution, at 20 degC against air?";

    // The scale behind the instrument.
    struct icumsa_1974 : model<struct icumsa_1974, unit::ratio(unit::brix)> {
        static constexpr facts about{.source = "fit to the ICUMSA 1974 refractive index scale (method SPS-3), as carried by an open library",
                                     .status = evidence::derived,
                                     .use = "any sugar content",
                                     .accuracy = "5.5e-6 to the table, whose own rounding is 5e-6",
                                     .note =
                                         "589.3 nm. A quadratic in circulation, 1.33302 + 0.001427193 B + 0.000005791157 B^2, is up to 0.06 degBx wrong to 30 "
                                         "and 0.25 at 40: not offered"};
        static constexpr input inputs[]{{"brix", validated{0, 85}, possible{-5, 85}}};

        template <class T>
        static constexpr T formula(T brix) {
            return poly(brix / 100.0, detail::quintic[0], detail::quintic[1], detail::quintic[2], detail::quintic[3], detail::quintic[4], detail::quintic[5]);
        }
    } icumsa_1974;

    struct icumsa_1974_cubic : model<struct icumsa_1974_cubic, unit::ratio(unit::brix)> {
        static constexpr facts about{.source = "fit to the ICUMSA 1974 refractive index scale (method SPS-3), as carried by an open library",
                                     .status = evidence::derived,
                                     .use = "small computers; wort strengths",
                                     .accuracy = "5.1e-6 to the table up to 30 degBx",
                                     .note = "589.3 nm"};
        static constexpr input inputs[]{{"brix", validated{0, 30}, possible{-5, 32}}};

        template <class T>
        static constexpr T formula(T brix) {
            return poly(brix / 100.0, 1.33298624, 0.14282951, 0.05358583, 0.01824046);
        }
    } icumsa_1974_cubic;
};
inline constexpr family<&index_models::icumsa_1974> index{};

}  // namespace wortmath::refractometer
