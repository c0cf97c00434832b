#pragma once

#include "wortmath/carbonation/compressibility.hpp"
#include "wortmath/carbonation/constants.hpp"

namespace wortmath::package {

struct headspace_gas_models {
    static constexpr const char* question = "How much carbon dioxide is in the headspace, per litre of beer?";

    struct virial : model<struct virial, unit::co2_concentration(unit::pressure, unit::celsius, unit::gas_volume_share)> {
        static constexpr facts about{
            .source = "the virial equation of the gas",
            .status = evidence::derived,
            .use = "kegs that are primed: their headspace takes gas that a dose does not count",
            .note = "the pressure is that of the CO2 alone, absolute; 2.8 % of the gas at 4 % headspace and 4 degC, as much as 73 % of what the beer holds in "
                    "a half-full keg"};
        static constexpr input inputs[]{{"co2_pressure", validated{0, 15}, possible{0, 30}},
                                        {"temperature", validated{0, 60}, possible{-5, 80}},
                                        {"headspace"}};

        template <class T>
        static constexpr T formula(T p, T t, T headspace) {
            return headspace * 100.0 * carbonation::detail::g_per_mol_co2 * p /
                   (carbonation::compressibility.virial.formula(t, p) * constants::gas_constant * (t + constants::zero_celsius));
        }
    } virial;
};
inline constexpr family<&headspace_gas_models::virial> headspace_gas{};

}  // namespace wortmath::package
