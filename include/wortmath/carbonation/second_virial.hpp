#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::carbonation {

struct second_virial_models {
    static constexpr const char* question = "How far is carbon dioxide gas from an ideal gas at a temperature?";

    struct weiss_1974 : model<struct weiss_1974, unit::cubic_centimetres_per_mole(unit::celsius)> {
        static constexpr facts about{.source = "R. F. Weiss, Marine Chemistry 2 (1974) 203",
                                     .status = evidence::secondary,
                                     .use = "the second virial coefficient behind every pressure of this chapter",
                                     .accuracy = "the molar volume made from it agrees with two published ones within 0.003 L/mol at 1 atm",
                                     .note = "the coefficients are those that public ocean-chemistry libraries carry"};
        static constexpr input inputs[]{{"temperature", validated{0, 60}, possible{-5, 80}}};

        template <class T>
        static constexpr T formula(T t) {
            return poly(t + constants::zero_celsius, -1636.75, 12.0408, -3.27957e-2, 3.16528e-5);
        }
    } weiss_1974;
};
inline constexpr family<&second_virial_models::weiss_1974> second_virial{};

namespace detail {
// The same coefficient per bar: Z = 1 + b p, ln(phi) = b p.
template <class T>
constexpr T virial_per_bar(T t) {
    return 0.1 * second_virial.weiss_1974.formula(t) / (constants::gas_constant * (t + constants::zero_celsius));
}
}  // namespace detail

}  // namespace wortmath::carbonation
