#pragma once

#include "wortmath/refractometer/temperature_correction.hpp"

namespace wortmath::refractometer {

struct brix_at_20_models {
    static constexpr const char* question = "What would the instrument have read at 20 degC?";

    struct polynomial : model<struct polynomial, unit::raw_brix(unit::raw_brix, unit::celsius)> {
        static constexpr facts about{
            .source =
                "least squares through the international table of 1936 (10 to 22 degC), glucose syrup at 30 and 45 degC (ISO 1743) and water from IAPWS R9-97",
            .status = evidence::derived,
            .use = "wort and sugar, on an instrument true at 20 degC that does not compensate by itself",
            .accuracy =
                "0.016 degBx to the table of 1936, 0.013 to ISO 1743, 0.016 to IAPWS, 0.037 to the OIV table from 5 to 17 degC; at 60 degC 0.07 too high for "
                "water",
            .note =
                "still a raw reading: the wort factor comes after it. Never on top of an automatic compensation. Not for beer, whose alcohol changes faster "
                "with temperature. A hot sample scalds: cool it before it is handled"};
        static constexpr input inputs[]{{"brix", validated{-3, 40}}, {"sample_temperature", validated{5, 45}, possible{0, 60}}};

        template <class T>
        static constexpr T formula(T B, T temperature) {
            return B + temperature_correction.polynomial.formula(B, temperature);
        }
    } polynomial;
};
inline constexpr family<&brix_at_20_models::polynomial> brix_at_20{};

}  // namespace wortmath::refractometer
