#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer {

struct temperature_correction_models {
    static constexpr const char* question = "What is added to a reading taken away from 20 degC, without automatic compensation?";

    struct polynomial : model<struct polynomial, unit::brix_correction(unit::raw_brix, unit::celsius)> {
        static constexpr facts about{
            .source =
                "least squares through the international table of 1936 (10 to 22 degC), glucose syrup at 30 and 45 degC (ISO 1743) and water from IAPWS R9-97",
            .status = evidence::derived,
            .use = "wort and sugar, on an instrument true at 20 degC that does not compensate by itself",
            .accuracy =
                "0.016 degBx to the table of 1936, 0.013 to ISO 1743, 0.016 to IAPWS, 0.037 to the OIV table from 5 to 17 degC; at 60 degC 0.07 too high for "
                "water",
            .note =
                "never on top of an automatic compensation: both together count the temperature twice. Not for beer, whose alcohol changes faster with "
                "temperature: read that at 18 to 22 degC and allow 0.1 degBx. A hot sample scalds: cool it before it is handled; a hot drop also evaporates "
                "and cools on the prism. Check the zero with water at the working temperature first"};
        static constexpr input inputs[]{{"brix", validated{-3, 40}}, {"sample_temperature", validated{5, 45}, possible{0, 60}}};

        template <class T>
        static constexpr T formula(T B, T temperature) {
            T u = temperature - 20.0;
            return u * poly(B, 0.0621010, 6.02537E-4, -6.42353E-6) + square(u) * poly(B, 1.169856E-3, -2.11980E-5, 1.258183E-7) - 3.148918E-6 * cube(u);
        }
    } polynomial;
};
inline constexpr family<&temperature_correction_models::polynomial> temperature_correction{};

}  // namespace wortmath::refractometer
