#pragma once

#include "wortmath/model.hpp"

namespace wortmath::thermal {

struct effectiveness_models {
    static constexpr const char* question = "What share of the heat that could pass does a heat exchanger pass?";

    // Plate and double-tube chillers.
    struct counterflow : model<struct counterflow, unit::fraction(unit::ratio, unit::ratio)> {
        static constexpr facts about{.source =
                                         "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, as coded in the open-source "
                                         "library ht",
                                     .status = evidence::secondary,
                                     .use = "streams that run against each other",
                                     .accuracy = "1e-12 to the values in the documentation of that library",
                                     .note = "written so that equal capacities (a ratio near 1) do not cancel"};
        static constexpr input inputs[]{{"ntu", only{0, no_limit}}, {"capacity_ratio", only{0, 1}}};

        template <class T>
        static constexpr T formula(T N, T C) {
            T q = let("q", -expm1(-N * (1.0 - C)));
            return select(C == 1.0, N / (1.0 + N), q / ((1.0 - C) + C * q));
        }
    } counterflow;

    struct parallel : model<struct parallel, unit::fraction(unit::ratio, unit::ratio)> {
        static constexpr facts about{.source =
                                         "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, as coded in the open-source "
                                         "library ht",
                                     .status = evidence::secondary,
                                     .use = "streams that run side by side in one direction: a chiller connected the wrong way round",
                                     .accuracy = "1e-12 to the values in the documentation of that library"};
        static constexpr input inputs[]{{"ntu", only{0, no_limit}}, {"capacity_ratio", only{0, 1}}};

        template <class T>
        static constexpr T formula(T N, T C) {
            return -expm1(-N * (1.0 + C)) / (1.0 + C);
        }
    } parallel;

    struct isothermal : model<struct isothermal, unit::fraction(unit::ratio)> {
        static constexpr facts about{.source =
                                         "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, as coded in the open-source "
                                         "library ht",
                                     .status = evidence::secondary,
                                     .use = "one side boils, or is a large stirred bath: a coil in the kettle"};
        static constexpr input inputs[]{{"ntu", only{0, no_limit}}};

        template <class T>
        static constexpr T formula(T N) {
            return -expm1(-N);
        }
    } isothermal;
};
inline constexpr family<&effectiveness_models::counterflow> effectiveness{};

}  // namespace wortmath::thermal
