#pragma once

#include "wortmath/carbonation/second_virial.hpp"

namespace wortmath::carbonation {

struct molar_volume_models {
    static constexpr const char* question = "How many litres does one mole of carbon dioxide gas take?";

    struct virial : model<struct virial, unit::litres_per_mole(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "R. F. Weiss, Marine Chemistry 2 (1974) 203",
                                     .status = evidence::secondary,
                                     .use = "to turn a mass of CO2 into a volume of gas",
                                     .accuracy = "22.2633 L/mol at 0 degC and 1 atm, where Messer prints 22.263 and IUPAC-NIST 22.2605"};
        static constexpr input inputs[]{{"temperature", validated{0, 60}, possible{-5, 80}},
                                        {"pressure", validated{above(0), 15}, possible{above(0), 30}}};

        template <class T>
        static constexpr T formula(T t, T P) {
            T ideal = let("v0", constants::gas_constant * (t + constants::zero_celsius) / (100.0 * P));
            return ideal / 2.0 * (1.0 + sqrt(1.0 + 4.0 * (second_virial.weiss_1974.formula(t) / 1000.0) / ideal));
        }
    } virial;
};
inline constexpr family<&molar_volume_models::virial> molar_volume{};

}  // namespace wortmath::carbonation
