#pragma once

#include "wortmath/liquor/atomic_weights.hpp"
#include "wortmath/model.hpp"

namespace wortmath::liquor {

struct ion_balance_models {
    static constexpr const char* question = "Do the ions of a water report balance?";

    struct sums {
        unit::milliequivalents_per_litre cations, anions;
        unit::ratio difference;
        static constexpr const char* names[]{"cations", "anions", "difference"};
    };

    struct relative
        : model<struct relative, sums(unit::milligrams_per_litre, unit::milligrams_per_litre, unit::milligrams_per_litre, unit::milligrams_per_litre,
                                      unit::milligrams_per_litre, unit::milligrams_per_litre, unit::milligrams_per_litre)> {
        static constexpr facts about{
            .source = "charge balance with the abridged atomic weights of IUPAC",
            .status = evidence::derived,
            .note =
                "difference is (cations - anions) relative to their mean, not a number where both are 0. Common practice, no source: be warned "
                "above 0.05, do not trust the report above 0.10. It catches most typing mistakes and sulphate reported as S (x 2.996)"};
        static constexpr input inputs[]{{"calcium", validated{0, 500}},    {"magnesium", validated{0, 500}}, {"sodium", validated{0, 500}},
                                        {"potassium", validated{0, 500}},  {"sulphate", validated{0, 500}},  {"chloride", validated{0, 500}},
                                        {"bicarbonate", validated{0, 500}}};

        template <class T>
        static constexpr several<T, 3> formula(T calcium, T magnesium, T sodium, T potassium, T sulphate, T chloride, T bicarbonate) {
            T cations = let("cations", 2.0 * calcium / element::Ca + 2.0 * magnesium / element::Mg + sodium / element::Na + potassium / element::K);
            T anions = let("anions", 2.0 * sulphate / sulphate_mass + chloride / element::Cl + bicarbonate / bicarbonate_mass);
            return {{cations, anions, (cations - anions) / ((cations + anions) / 2.0)}};
        }
    } relative;
};
inline constexpr family<&ion_balance_models::relative> ion_balance{};

}  // namespace wortmath::liquor
