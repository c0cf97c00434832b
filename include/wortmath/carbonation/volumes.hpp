#pragma once

#include "wortmath/carbonation/concentration.hpp"

namespace wortmath::carbonation {

struct volumes_models {
    static constexpr const char* question = "How many volumes of carbon dioxide is a content in grams per litre?";

    struct real_gas : model<struct real_gas, unit::volumes_co2(unit::co2_concentration)> {
        static constexpr facts about{.source = "definition: A. J. deLange, CO2 Volumes in Beer (2011)",
                                     .status = evidence::primary,
                                     .use = "always, unless a text says that it uses another volume",
                                     .accuracy = "1.9768 g/L from the virial volume 22.2633 L/mol; IUPAC-NIST gives 1.9770, Messer 1.977",
                                     .note = "the constant is derived from the virial molar volume"};
        static constexpr input inputs[]{{"co2"}};

        template <class T>
        static constexpr T formula(T c) {
            return c / detail::g_per_volume;
        }
    } real_gas;

    struct ideal_gas : model<struct ideal_gas, unit::volumes_co2(unit::co2_concentration)> {
        static constexpr facts about{.source = "definition with the molar volume of an ideal gas, 22.41396954 L/mol",
                                     .status = evidence::derived,
                                     .use = "to write for readers of texts that used it",
                                     .accuracy = "0.7 % higher than real_gas"};
        static constexpr input inputs[]{{"co2"}};

        template <class T>
        static constexpr T formula(T c) {
            return c / detail::g_per_ideal_volume;
        }
    } ideal_gas;

    struct rounded_1_96 : model<struct rounded_1_96, unit::volumes_co2(unit::co2_concentration)> {
        static constexpr facts about{.source = "common practice, no source",
                                     .status = evidence::memory,
                                     .use = "to write for readers of texts that used 1.96 g/L",
                                     .accuracy = "0.9 % higher than real_gas",
                                     .note = "the ideal-gas volume, rounded; \"1 g/L is 0.5 volume\" is 0.506 rounded"};
        static constexpr input inputs[]{{"co2"}};

        template <class T>
        static constexpr T formula(T c) {
            return c / 1.96;
        }
    } rounded_1_96;

    struct gas_at_temperature : model<struct gas_at_temperature, unit::volumes_co2(unit::co2_concentration, unit::celsius)> {
        static constexpr facts about{.source = "the virial molar volume at 1 atm",
                                     .status = evidence::derived,
                                     .use = "to compare with recipes whose volume is gas at room temperature",
                                     .note = "1.8394 g/L at 20 degC, 7 % less than a true volume"};
        static constexpr input inputs[]{{"co2"}, {"temperature", validated{0, 30}, possible{-5, 80}}};

        template <class T>
        static constexpr T formula(T c, T t) {
            return c / detail::gas_density(t);
        }
    } gas_at_temperature;
};
inline constexpr family<&volumes_models::real_gas> volumes{};

}  // namespace wortmath::carbonation
