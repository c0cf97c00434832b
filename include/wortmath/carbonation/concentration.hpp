#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/carbonation/molar_volume.hpp"

namespace wortmath::carbonation {

namespace detail {
inline constexpr double g_per_ideal_volume = g_per_mol_co2 / 22.41396954;

// Grams in one litre of gas at 1 atm.
template <class T>
constexpr T gas_density(T t) {
    return g_per_mol_co2 / molar_volume.virial.formula(t, T(constants::bar_per_atm));
}
}  // namespace detail

struct concentration_models {
    static constexpr const char* question = "How many grams of carbon dioxide per litre is a carbonation in volumes?";

    // The trade's volume: litres of gas at 0 degC and 1 atm per litre of beer, with the real density of the gas.
    struct real_gas : model<struct real_gas, unit::co2_concentration(unit::volumes_co2)> {
        static constexpr facts about{.source = "definition: A. J. deLange, CO2 Volumes in Beer (2011)",
                                     .status = evidence::primary,
                                     .use = "always, unless a text says that it uses another volume",
                                     .accuracy = "1.9768 g/L from the virial volume 22.2633 L/mol; IUPAC-NIST gives 1.9770, Messer 1.977",
                                     .note = "the constant is derived from the virial molar volume"};
        static constexpr input inputs[]{{"carbonation"}};

        template <class T>
        static constexpr T formula(T v) {
            return detail::g_per_volume * v;
        }
    } real_gas;

    struct ideal_gas : model<struct ideal_gas, unit::co2_concentration(unit::volumes_co2)> {
        static constexpr facts about{.source = "definition with the molar volume of an ideal gas, 22.41396954 L/mol",
                                     .status = evidence::derived,
                                     .use = "to read texts that used it",
                                     .accuracy = "0.7 % lower than real_gas"};
        static constexpr input inputs[]{{"carbonation"}};

        template <class T>
        static constexpr T formula(T v) {
            return detail::g_per_ideal_volume * v;
        }
    } ideal_gas;

    struct rounded_1_96 : model<struct rounded_1_96, unit::co2_concentration(unit::volumes_co2)> {
        static constexpr facts about{.source = "common practice, no source",
                                     .status = evidence::memory,
                                     .use = "to read texts that used 1.96 g/L",
                                     .accuracy = "0.9 % lower than real_gas",
                                     .note = "the ideal-gas volume, rounded; \"1 g/L is 0.5 volume\" is 0.506 rounded"};
        static constexpr input inputs[]{{"carbonation"}};

        template <class T>
        static constexpr T formula(T v) {
            return 1.96 * v;
        }
    } rounded_1_96;

    struct gas_at_temperature : model<struct gas_at_temperature, unit::co2_concentration(unit::volumes_co2, unit::celsius)> {
        static constexpr facts about{.source = "the virial molar volume at 1 atm",
                                     .status = evidence::derived,
                                     .use = "to decode recipes whose volume is gas at room temperature",
                                     .note = "1.8394 g/L at 20 degC, 7 % less than a true volume"};
        static constexpr input inputs[]{{"carbonation"}, {"temperature", validated{0, 30}, possible{-5, 80}}};

        template <class T>
        static constexpr T formula(T v, T t) {
            return v * detail::gas_density(t);
        }
    } gas_at_temperature;
};
inline constexpr family<&concentration_models::real_gas> concentration{};

}  // namespace wortmath::carbonation
