#pragma once

#include "wortmath/thermal/latent_heat.hpp"

namespace wortmath::kettle {

struct net_power_models {
    static constexpr const char* question = "What net power does a measured boil-off stand for?";

    // Weigh or measure one boil of plain water and keep the figure with the kettle.
    struct latent_heat : model<struct latent_heat, unit::kilowatts(unit::grams_per_hour, unit::celsius)> {
        static constexpr facts about{.source = "boil-off times the enthalpy of vaporisation of water (thermal.latent_heat.iapws_fit)",
                                     .status = evidence::derived,
                                     .accuracy = "3e-5 relative, from the fit of the latent heat",
                                     .note = "net power is what boils water: the burner gives more, by its losses"};
        static constexpr input inputs[]{{"evaporation_rate"}, {"boiling_temperature", validated{80, 120}, otherwise{100.0}}};

        template <class T>
        static constexpr T formula(T rate, T t) {
            return rate / 1000.0 * thermal::latent_heat.iapws_fit.formula(t) / 3600.0;
        }
    } latent_heat;
};
inline constexpr family<&net_power_models::latent_heat> net_power{};

}  // namespace wortmath::kettle
