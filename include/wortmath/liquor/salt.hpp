#pragma once

#include "wortmath/liquor/words.hpp"

namespace wortmath::liquor {

struct salt_models {
    static constexpr const char* question = "How much of an ion does a salt add to the water?";

    struct stoichiometric : model<struct stoichiometric, unit::milligrams_per_litre(word::salt, word::ion, unit::grams, unit::litres, unit::fraction)> {
        static constexpr facts about{
            .source = "stoichiometry with the abridged atomic weights of IUPAC",
            .status = evidence::derived,
            .accuracy = "suppliers' printed figures are met within 0.41 mg/L for 1 g in 1 US gal, their rounding",
            .note =
                "an ion that the salt does not hold gives 0. Dihydrate taken for anhydrous calcium chloride is 32 % of calcium; calcium chloride "
                "takes up moisture, so use `assay`. Copies print 322 mg/L per g/gal for chalk under CO3, 435 for lime under OH, both in HCO3, "
                "and 158 under HCO3, in CO3. Chalk raises alkalinity only where acid or CO2 dissolves it. Food-grade salts only; sodium and "
                "calcium hydroxide are caustic: eye and hand protection"};
        static constexpr input inputs[]{{"salt"}, {"ion"}, {"mass"}, {"volume", only{above(0), no_limit}}, {"assay", only{0, 1}, otherwise{1.0}}};

        template <class T>
        static constexpr T formula(word::salt salt, word::ion ion, T m, T V, T assay) {
            double const share = mass_fraction_in(salt, ion);
            return 1000.0 * m * assay / V * share;
        }
    } stoichiometric;
};
inline constexpr family<&salt_models::stoichiometric> salt{};

}  // namespace wortmath::liquor
