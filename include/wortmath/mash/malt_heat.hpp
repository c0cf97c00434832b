#pragma once

#include "wortmath/model.hpp"

namespace wortmath::mash {

// The table of the brewing room book; beyond its last moisture the last value stays.
inline constexpr double pauls_whites_moisture[]{0, 1, 2, 3, 4, 6, 8};  // % w/w
inline constexpr double pauls_whites_heat[]{0.38, 0.38, 0.39, 0.40, 0.40, 0.41, 0.42};
inline constexpr double pauls_whites_rise[]{3, 2.8, 2.3, 2.3, 1.5, 1.3, 1.0};  // K

namespace detail {
template <class T>
constexpr T tabled_moisture(T moisture) {
    T percent = 100.0 * moisture;
    return select(percent > 8.0, T(8.0), percent);
}
}  // namespace detail

struct malt_heat_models {
    static constexpr const char* question = "What is the specific heat of malt, relative to water?";

    struct pauls_whites : model<struct pauls_whites, unit::ratio(unit::fraction)> {
        static constexpr facts about{.source = "Pauls and Whites Brewing Room Book 1984/85, as reprinted by Murphy and Son, Appendix 4",
                                     .status = evidence::secondary,
                                     .accuracy = "printed to 0.01",
                                     .note = "linear between the printed moistures; 0.40 means 0.40 x 4.19 kJ/(kg K)"};
        static constexpr input inputs[]{{"moisture", validated{0, 0.08}, possible{0, 0.20}}};

        template <class T>
        static constexpr T formula(T moisture) {
            return piecewise_linear(detail::tabled_moisture(moisture), pauls_whites_moisture, pauls_whites_heat);
        }
    } pauls_whites;
};
inline constexpr family<&malt_heat_models::pauls_whites> malt_heat{};

}  // namespace wortmath::mash
