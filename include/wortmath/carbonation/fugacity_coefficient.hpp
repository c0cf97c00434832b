#pragma once

#include "wortmath/carbonation/second_virial.hpp"

namespace wortmath::carbonation {

struct fugacity_coefficient_models {
    static constexpr const char* question = "By what factor does the pressure of carbon dioxide overstate its urge to dissolve?";

    struct virial : model<struct virial, unit::ratio(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "R. F. Weiss, Marine Chemistry 2 (1974) 203",
                                     .status = evidence::secondary,
                                     .use = "wherever a CO2 pressure of several bar meets a Henry constant",
                                     .note = "0.993 to 0.995 at 1 atm, about 0.94 at 10 bar; the pressure is that of the CO2 alone"};
        static constexpr input inputs[]{{"temperature", validated{0, 60}, possible{-5, 80}},
                                        {"co2_pressure", validated{0, 15}, possible{0, 30}}};

        template <class T>
        static constexpr T formula(T t, T p) {
            return exp(detail::virial_per_bar(t) * p);
        }
    } virial;
};
inline constexpr family<&fugacity_coefficient_models::virial> fugacity_coefficient{};

}  // namespace wortmath::carbonation
