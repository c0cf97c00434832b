#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::priming {

struct carbonation_models {
    static constexpr const char* question = "How much carbonation does a weighed amount of priming sugar give?";

    struct mass_balance
        : model<struct mass_balance, unit::volumes_co2(unit::volumes_co2, unit::grams, unit::litres, unit::mass_share, unit::fraction)> {
        static constexpr facts about{
            .source = "a mass balance of CO2 over the beer",
            .status = evidence::derived,
            .use = "the way back from a dose, and what the pressure check is fed with",
            .note = "gas that goes to the headspace is not taken off, 3 % at 4 % headspace; the efficiency is 1.0 unless said, as the pressure check asks",
            .danger = "a yield, an efficiency or a residual too low hides gas from the pressure check"};
        static constexpr input inputs[]{{"beer_carbonation"},
                                        {"sugar_mass"},
                                        {"beer_volume", only{above(0), no_limit}},
                                        {"sugar_yield", only{0, 1}},
                                        {"efficiency", validated{0.85, 1}, possible{0, 1}, otherwise{1.0}}};

        template <class T>
        static constexpr T formula(T residual, T mass, T volume, T yield, T efficiency) {
            return residual + mass * yield * efficiency / (wortmath::carbonation::detail::g_per_volume * volume);
        }
    } mass_balance;
};
inline constexpr family<&carbonation_models::mass_balance> carbonation{};

}  // namespace wortmath::priming
