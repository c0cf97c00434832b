#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/gravity/words.hpp"

namespace wortmath::gravity {

namespace detail {
inline constexpr double pounds_per_gallon_of = constants::l_per_us_gal / constants::g_per_lb;  // lb/US gal for each kg/m3
}

struct pounds_per_us_gallon_models {
    static constexpr const char* question = "How many pounds does a US gallon of a liquid weigh?";

    // The mass itself.
    struct mass : model<struct mass, unit::pounds_per_gallon(unit::density)> {
        static constexpr facts about{.source = "definition of the pound and the US gallon",
                                     .status = evidence::derived,
                                     .use = "mass balances",
                                     .accuracy = "exact",
                                     .note = "water at 20 degC: 8.330 lb"};
        static constexpr input inputs[]{{"density", only{950, 1500}}};

        template <class T>
        static constexpr T formula(T rho) {
            return rho * detail::pounds_per_gallon_of;
        }
    } mass;

    // What a balance shows that was adjusted with weights in air.
    struct in_air : model<struct in_air, unit::pounds_per_gallon(unit::density, unit::density, unit::density)> {
        static constexpr facts about{.source = "this project's own derivation: buoyancy of the liquid and of the weights",
                                     .status = evidence::derived,
                                     .use = "to repeat tables of weights in air",
                                     .accuracy = "NBS Circular C440 within 0.001 lb, with icumsa densities at 20 degC",
                                     .note =
                                         "the default weights are old brass as in the NBS tables; weights of today have 8000 kg/m3, 7e-6 relative "
                                         "apart; water at 20 degC: 8.322 lb"};
        static constexpr input inputs[]{
            {"density", only{950, 1500}}, {"air_density", only{0, 2}, otherwise{conventional_air}}, {"weight_density", only{1000, 23000}, otherwise{8400.0}}};

        template <class T>
        static constexpr T formula(T rho, T a, T weights) {
            return (rho - a) / (1.0 - a / weights) * detail::pounds_per_gallon_of;
        }
    } in_air;
};
inline constexpr family<&pounds_per_us_gallon_models::mass> pounds_per_us_gallon{};

}  // namespace wortmath::gravity
