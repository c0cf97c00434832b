#pragma once

#include "wortmath/liquor/words.hpp"

namespace wortmath::liquor {

struct dechlorination_models {
    static constexpr const char* question = "How much metabisulphite removes the chlorine of tap water?";

    struct stoichiometric : model<struct stoichiometric, unit::grams(unit::litres, unit::milligrams_per_litre, word::metabisulphite, unit::fraction)> {
        static constexpr facts about{
            .source = "S2O5 + 2 HOCl + H2O = 2 SO4 + 2 Cl + 4 H, and likewise two monochloramine; abridged atomic weights of IUPAC",
            .status = evidence::derived,
            .accuracy =
                "1.5678 g/g (potassium) and 1.3406 g/g (sodium) of chlorine as Cl2; practice takes more: 1.47 g/g sodium salt in a utility's "
                "field table, 2 to 3 in membrane plants",
            .note =
                "`chlorine` is total chlorine as Cl2, the figure of a water report. Each mg/L of chlorine adds 1.355 mg/L sulphate and takes up at most "
                "0.028 mEq/L alkalinity. Sulphites give off sulphur dioxide, more so with acid: dangerous for people with asthma, and rules on "
                "declaring sulphites may apply"};
        static constexpr input inputs[]{{"volume"}, {"chlorine", validated{0, 5}}, {"salt"}, {"assay", only{above(0), 1}, otherwise{1.0}}};

        template <class T>
        static constexpr T formula(T V, T chlorine, word::metabisulphite salt, T assay) {
            double const per_gram = metabisulphite_masses[static_cast<int>(salt)] / (2.0 * (2.0 * element::Cl));
            return V * chlorine / 1000.0 * per_gram / assay;
        }
    } stoichiometric;
};
inline constexpr family<&dechlorination_models::stoichiometric> dechlorination{};

}  // namespace wortmath::liquor
