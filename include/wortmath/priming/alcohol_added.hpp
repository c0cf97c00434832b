#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/priming/sugar.hpp"

namespace wortmath::priming {

struct alcohol_added_models {
    static constexpr const char* question = "How much strength does the priming sugar add?";

    struct stoichiometric : model<struct stoichiometric, unit::alcohol_by_volume(unit::grams, unit::litres, word::sugar, unit::fraction)> {
        static constexpr facts about{
            .source = "the equation of fermentation and the molar masses",
            .status = evidence::derived,
            .use = "to be added to a strength that comes from the gravities before priming, on a label too",
            .accuracy = "the sugar's own volume is left out: 0.3 % of the result per volume of CO2 at most",
            .note = "each volume of CO2 from sugar brings 0.262 % vol; brewer's yeast does not ferment lactose"};
        static constexpr input inputs[]{{"sugar_mass"}, {"beer_volume", only{above(0), no_limit}}, {"sugar"}, {"efficiency", otherwise{0.95}}};

        template <class T>
        static constexpr T formula(T mass, T volume, word::sugar sugar, T efficiency) {
            return 100.0 * mass * (detail::moles_per_gram(sugar) * 46.06844) * efficiency / (volume * constants::ethanol_20C);
        }
    } stoichiometric;
};
inline constexpr family<&alcohol_added_models::stoichiometric> alcohol_added{};

}  // namespace wortmath::priming
