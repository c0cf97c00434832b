#pragma once

#include "wortmath/extract/density.hpp"
#include "wortmath/gravity/words.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct sucrose_potential_models {
    static constexpr const char* question = "How many litre-degrees does a kilogram of sucrose give, in wort of a strength?";

    // Not constant, which is why 46.31, 46.21, 46.17 and 46 points per pound and US gallon all stand in print.
    struct icumsa : model<struct icumsa, unit::litre_degrees_per_kilogram(unit::plato, word::gravity_scale)> {
        static constexpr facts about{.source = "extract.density.icumsa and gravity.from_density.definition",
                                     .status = evidence::derived,
                                     .use = "the potential of sugar where the constant of extract.potential_from_yield is not close enough",
                                     .accuracy = "as extract.density.icumsa",
                                     .note = "1000 (S - 1)/(w rho/1000) with w divided out; gravity, density and litre are at the "
                                             "temperature of the scale"};
        static constexpr input inputs[]{{"extract", only{above(0), below(100)}}, {"scale", otherwise{word::gravity_scale::gravity_20_20}}};
        static constexpr const char* refusal =
            "a potential counts points above water at 1.000, so the scale must take liquid and water at the same temperature: not "
            "gravity_20_4, not gravity_15_4";

        template <class T>
        static constexpr T formula(T P, word::gravity_scale scale) {
            gravity::scale_facts const of = gravity::facts_of(scale);
            detail::sucrose<T> const s(T(of.liquid_temperature));
            T w = P / 100.0;
            T potential = 1e6 * s.excess(w) / ((s.water - of.air_density) * s.density(w));
            return select(of.liquid_temperature == of.water_temperature, potential, undefined);
        }
    } icumsa;
};
inline constexpr family<&sucrose_potential_models::icumsa> sucrose_potential{};

}  // namespace wortmath::extract
