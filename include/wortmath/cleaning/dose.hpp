#pragma once

#include "wortmath/model.hpp"

namespace wortmath::cleaning {

struct dose_models {
    static constexpr const char* question = "How much of a product makes a cleaning or sanitising solution?";

    struct dilution : model<struct dilution, unit::litres(unit::litres, unit::milligrams_per_litre, unit::grams_per_litre)> {
        static constexpr facts about{
            .source = "mass balance: the product's strength diluted to the concentration",
            .status = evidence::derived,
            .accuracy = "a label's per cent by mass taken as % w/v is good to 8 %; old bleach is weaker",
            .note =
                "5.25 % w/v is 52.5 g/L. US measure: 1 tablespoon of 5.25 % hypochlorite in 1 gallon is 204 mg/L, of an 8.25 % product 320 mg/L. "
                "Plain bleach only, without perfume or thickener. Common practice; the label of the product in hand rules",
            .danger =
                "a strength typed too low makes the solution too strong: below 10 g/L it is refused. Never mix a chlorine product with any "
                "acid (chlorine gas) or with ammonia; out of children's reach"};
        static constexpr input inputs[]{{"volume"}, {"concentration"}, {"strength", only{above(0), no_limit}}};
        static constexpr const char* refusal =
            "a product below 10 g/L: was the strength in per cent? 5.25 % w/v is 52.5 g/L, and the dose would be ten times too strong";

        template <class T>
        static constexpr T formula(T V, T concentration, T strength) {
            return select(strength < 10.0, undefined, V * concentration / (1000.0 * strength));
        }
    } dilution;
};
inline constexpr family<&dose_models::dilution> dose{};

}  // namespace wortmath::cleaning
