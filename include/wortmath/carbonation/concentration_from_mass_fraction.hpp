#pragma once

#include "wortmath/model.hpp"

namespace wortmath::carbonation {

struct concentration_from_mass_fraction_models {
    static constexpr const char* question = "How many grams of carbon dioxide per litre is a share by mass?";

    struct density : model<struct density, unit::co2_concentration(unit::fraction, unit::density)> {
        static constexpr facts about{.source = "definition",
                                     .status = evidence::derived,
                                     .use = "to read results in % by mass, as MEBAK gives them",
                                     .note = "per cent by mass times ten is g/kg, not g/L: for beer that is 1 % apart"};
        static constexpr input inputs[]{{"mass_fraction"}, {"density", only{900, 1500}}};

        template <class T>
        static constexpr T formula(T share, T rho) {
            return share * rho;
        }
    } density;
};
inline constexpr family<&concentration_from_mass_fraction_models::density> concentration_from_mass_fraction{};

}  // namespace wortmath::carbonation
