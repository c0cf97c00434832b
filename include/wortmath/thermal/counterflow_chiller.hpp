#pragma once

#include "wortmath/model.hpp"
#include "wortmath/thermal/constants.hpp"
#include "wortmath/thermal/effectiveness.hpp"

namespace wortmath::thermal {

struct counterflow_chiller_models {
    static constexpr const char* question = "How cold does wort leave a plate or counterflow chiller, and how warm does the water?";

    struct outlets {
        unit::celsius wort_out_temperature, water_out_temperature;
        static constexpr const char* names[]{"wort_out_temperature", "water_out_temperature"};
    };

    // One pass, steady flow.
    struct effectiveness : model<struct effectiveness, outlets(unit::grams_per_hour, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::grams_per_hour,
                                                               unit::celsius, unit::kilowatts_per_kelvin)> {
        static constexpr facts about{.source = "heat balance with the effectiveness of a counterflow exchanger (thermal.effectiveness.counterflow)",
                                     .status = evidence::derived,
                                     .accuracy = "1e-4 K to the numerical integration along the exchanger",
                                     .note = "the conductance falls with the flow and with fouling: measure it at the flow in use"};
        static constexpr input inputs[]{{"wort_flow", only{above(0), no_limit}},  {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},       {"water_flow", only{above(0), no_limit}},
                                        {"water_temperature", validated{0, 100}}, {"ua"}};

        template <class T>
        static constexpr several<T, 2> formula(T wort_flow, T c, T Th, T water_flow, T Tc, T UA) {
            T Ch = let("C_h", wort_flow * kg_per_s_per_g_per_h * c);
            T Cc = let("C_c", water_flow * kg_per_s_per_g_per_h * heat_of_water);
            T C_min = select(Cc < Ch, Cc, Ch), C_max = select(Cc < Ch, Ch, Cc);
            T eps = let("eps", thermal::effectiveness.counterflow.formula(T(UA / C_min), T(C_min / C_max)));
            T Q = let("Q", eps * C_min * (Th - Tc));
            return {{Th - Q / Ch, Tc + Q / Cc}};
        }
    } effectiveness;
};
inline constexpr family<&counterflow_chiller_models::effectiveness> counterflow_chiller{};

}  // namespace wortmath::thermal
