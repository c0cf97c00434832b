#pragma once

#include "wortmath/model.hpp"

namespace wortmath::thermal {

struct latent_heat_models {
    static constexpr const char* question = "How much heat does it take to evaporate a kilogram of water?";

    // Saturated water from cold to a pressure cooker.
    struct iapws_fit : model<struct iapws_fit, unit::kilojoules_per_kilogram(unit::celsius)> {
        static constexpr facts about{.source = "own least-squares fit to the IAPWS Industrial Formulation 1997 (R7-97)",
                                     .status = evidence::derived,
                                     .accuracy = "0.07 kJ/kg to IAPWS-IF97 at most (at 120 degC); 0.03 kJ/kg from 0 to 115 degC"};
        static constexpr input inputs[]{{"temperature", validated{0, 120}}};

        template <class T>
        static constexpr T formula(T t) {
            return poly(t, 2500.9465, -2.377971, 6.20519e-4, -1.290964e-5);
        }
    } iapws_fit;
};
inline constexpr family<&latent_heat_models::iapws_fit> latent_heat{};

}  // namespace wortmath::thermal
