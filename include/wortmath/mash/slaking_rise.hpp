#pragma once

#include "wortmath/mash/malt_heat.hpp"

namespace wortmath::mash {

struct slaking_rise_models {
    static constexpr const char* question = "By how much does wetting the malt warm the mash?";

    struct pauls_whites : model<struct pauls_whites, unit::kelvins(unit::fraction)> {
        static constexpr facts about{
            .source = "Pauls and Whites Brewing Room Book 1984/85, as reprinted by Murphy and Son, Appendix 4",
            .status = evidence::secondary,
            .accuracy = "printed to 0.1 K, 0.5 K where whole numbers stand",
            .note =
                "linear between the printed moistures; for the book's own mash of 2.5 barrels per quarter (2.685 L/kg). Its Fahrenheit column "
                "was rounded apart: 0 % prints 5.5 for 5.4 degF, 4 % prints 3 for 2.7 degF; the Celsius column is used"};
        static constexpr input inputs[]{{"moisture", validated{0, 0.08}, possible{0, 0.20}}};

        template <class T>
        static constexpr T formula(T moisture) {
            return piecewise_linear(detail::tabled_moisture(moisture), pauls_whites_moisture, pauls_whites_rise);
        }
    } pauls_whites;
};
inline constexpr family<&slaking_rise_models::pauls_whites> slaking_rise{};

}  // namespace wortmath::mash
