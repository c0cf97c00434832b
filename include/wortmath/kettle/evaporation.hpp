#pragma once

#include "wortmath/thermal/latent_heat.hpp"

namespace wortmath::kettle {

struct evaporation_models {
    static constexpr const char* question = "How much water boils off in an hour at a given net power?";

    // The rate belongs to burner, kettle and lid, not to the volume in the kettle.
    struct latent_heat : model<struct latent_heat, unit::grams_per_hour(unit::kilowatts, unit::celsius)> {
        static constexpr facts about{.source = "net power over the enthalpy of vaporisation of water (thermal.latent_heat.iapws_fit)",
                                     .status = evidence::derived,
                                     .accuracy = "3e-5 relative, from the fit of the latent heat",
                                     .note = "water vapour alone leaves, the mass of extract stays; altitude changes the latent heat by 1 % at 3000 m only"};
        static constexpr input inputs[]{{"net_power"}, {"boiling_temperature", validated{80, 120}, otherwise{100.0}}};

        template <class T>
        static constexpr T formula(T P, T t) {
            return 1000.0 * (3600.0 * P / thermal::latent_heat.iapws_fit.formula(t));
        }
    } latent_heat;
};
inline constexpr family<&evaporation_models::latent_heat> evaporation{};

}  // namespace wortmath::kettle
