#pragma once

#include "wortmath/liquor/acid_demand.hpp"
#include "wortmath/liquor/acid_strength.hpp"

namespace wortmath::liquor {

struct acid_dose_models {
    static constexpr const char* question = "How much of an acid solution brings a water to a pH?";

    // No CO2 leaves: the least dose.
    struct closed : model<struct closed, unit::litres(unit::litres, unit::milliequivalents_per_litre, unit::ph, unit::ph, word::acid, unit::fraction,
                                                      unit::density, unit::celsius, unit::ph)> {
        static constexpr facts about{
            .source = "liquor.acid_demand.closed over liquor.acid_strength.density at the target pH",
            .status = evidence::derived,
            .accuracy = "that of the water report; where CO2 escapes more is needed",
            .note =
                "show it in mL: add half, stir, measure, then the rest. Food-grade acid only. A density typed in g/mL would make the dose a "
                "thousand times too large: below 500 kg/m3 it is always refused. Add acid to water, never water to acid, with eye and hand "
                "protection; never bring acid together with a chlorine product"};
        static constexpr input inputs[]{{"volume"},
                                        {"alkalinity", validated{0, 10}, possible{0, 100}},
                                        {"ph", validated{4.3, 9}},
                                        {"target_ph", validated{4.3, 9}},
                                        {"acid"},
                                        {"mass_fraction", validated{0.05, 1}, possible{above(0), 1}},
                                        {"density", validated{1000, 1900}, possible{500, no_limit}},
                                        {"temperature", validated{0, 60}, otherwise{25.0}},
                                        {"endpoint_ph", otherwise{4.3}}};
        static constexpr const char* refusal =
            "acid lowers the pH: the target must lie below the pH of the water, and that pH above the end point of the titration";

        template <class T>
        static constexpr T formula(T V, T alkalinity, T ph, T target, word::acid acid, T w, T d, T t, T endpoint) {
            T demand = let("demand", acid_demand.closed.formula(alkalinity, ph, target, t, endpoint));
            T strength = let("strength", acid_strength.density.formula(acid, w, d, target));
            return select(target < ph, V * demand / strength, undefined);
        }
    } closed;
};
inline constexpr family<&acid_dose_models::closed> acid_dose{};

}  // namespace wortmath::liquor
