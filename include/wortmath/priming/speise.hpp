#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/priming/fermentable.hpp"

namespace wortmath::priming {

struct speise_models {
    static constexpr const char* question = "How much unfermented or fermenting wort brings the beer to the carbonation I want?";

    struct mass_balance : model<struct mass_balance, unit::litres(unit::litres, unit::volumes_co2, unit::volumes_co2, unit::real_extract,
                                                                  unit::real_extract, unit::density, unit::volumes_co2)> {
        static constexpr facts about{
            .source = "a mass balance of CO2 over beer and wort, with C. J. N. Balling's yield",
            .status = evidence::derived,
            .use = "speise, gyle and kraeusen whose extract was measured",
            .note = "extracts are real ones, for wort the same as apparent; speise_carbonation is 0 for wort and about the residual for kraeusen; without "
                    "the basis correction there would be 2 % too much speise",
            .danger = "Balling's yield may be 10 to 13 % too low for a late fermentation: a hazard run takes 1.13 times the gas of the speise. Mix evenly, "
                      "and look at package.pressure at the hottest storage temperature"};
        static constexpr const char* refusal =
            "no amount of this wort brings the beer to the target: the beer already holds more than that, or the wort gives less gas than the target asks "
            "for. Check which extract is the final one, and the target";
        static constexpr input inputs[]{{"beer_volume"},
                                        {"target_carbonation"},
                                        {"beer_carbonation"},
                                        {"speise_real_extract", only{0, 30}},
                                        {"final_real_extract", only{0, 30}},
                                        {"speise_density", only{900, 1500}},
                                        {"speise_carbonation", otherwise{0.0}}};

        template <class T>
        static constexpr T formula(T volume, T target, T residual, T speise, T end, T rho, T speise_residual) {
            constexpr double per_volume = wortmath::carbonation::detail::g_per_volume;
            T gain = let("gain", wortmath::carbonation::detail::g_co2_per_g_extract * 10.0 * (rho / 1000.0) * fermentable.balling.formula(speise, end));
            T surplus = gain + (speise_residual - target) * per_volume;
            T needed = volume * (target - residual) * per_volume / surplus;
            return select(target >= residual, select(surplus > 0.0, needed, undefined), undefined);
        }
    } mass_balance;

    // A rule of the kitchen: it knows neither the gas that is there nor what the wort will ferment to.
    struct papazian_gyle : model<struct papazian_gyle, unit::litres(unit::litres, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "C. Papazian, The Complete Joy of Home Brewing: US quarts = 12 x US gallons / points",
            .status = evidence::secondary,
            .use = "to repeat recipes that used it",
            .note = "adds about 1.1 volumes at 75 % apparent attenuation, whatever the beer holds",
            .danger = "ignores the gas that the beer holds and the extract that ferments: take mass_balance for bottles"};
        static constexpr input inputs[]{{"beer_volume"}, {"speise_gravity", only{above(1), 1.40}}};

        template <class T>
        static constexpr T formula(T volume, T gravity) {
            return 3.0 * volume / ((gravity - 1.0) * 1000.0);
        }
    } papazian_gyle;
};
inline constexpr family<&speise_models::mass_balance> speise{};

}  // namespace wortmath::priming
