#pragma once

#include "wortmath/model.hpp"

namespace wortmath::thermal {

struct specific_heat_models {
    static constexpr const char* question = "How much heat does a kilogram of wort take for each kelvin?";

    struct kadlec : model<struct kadlec, unit::kilojoules_per_kilogram_kelvin(unit::plato, unit::celsius, unit::fraction)> {
        static constexpr facts about{.source = "P. Kadlec and others, as given by Nebra and Fernandez-Parra 2005",
                                     .status = evidence::secondary,
                                     .use = "wort at any temperature",
                                     .accuracy = "0.001 kJ/(kg K) of peacock; its water is 4.1868 at any temperature, where the truth runs from 4.179 to 4.217",
                                     .note =
                                         "a formula for sugar juice: sucrose stands in for wort; 4.19 - 0.033 x and 4.186 (1 - 0.0078 x), also in use, "
                                         "are 0.11 low at 12 degP and 0.28 low at 30; beer has about 4.05"};
        static constexpr input inputs[]{{"extract", only{0, 60}}, {"temperature", only{0, 100}}, {"purity", otherwise{1.0}}};

        template <class T>
        static constexpr T formula(T x, T t, T purity) {
            return 4.1868 - 0.0297 * x + 4.6e-5 * x * (100.0 * purity) + 7.5e-5 * x * t;
        }
    } kadlec;

    struct peacock : model<struct peacock, unit::kilojoules_per_kilogram_kelvin(unit::plato, unit::celsius)> {
        static constexpr facts about{.source = "S. Peacock, Int. Sugar J. 97 (1995) 571: temperature derivative of the enthalpy given there",
                                     .status = evidence::secondary,
                                     .use = "as a check on kadlec, of another origin",
                                     .accuracy = "0.001 kJ/(kg K) of kadlec",
                                     .note =
                                         "the enthalpy is in print with x/10 for x/100 in the last bracket, which gives 1.35 instead of 3.90 kJ/(kg K); "
                                         "x/100 is used"};
        static constexpr input inputs[]{{"extract", only{0, below(100)}}, {"temperature", validated{0, 100}, possible{-5, 105}}};

        template <class T>
        static constexpr T formula(T x, T t) {
            return 4.1868 * (1.0 - x / 100.0 * (0.6 - 0.0018 * t));
        }
    } peacock;
};
inline constexpr family<&specific_heat_models::kadlec> specific_heat{};

}  // namespace wortmath::thermal
