#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct congress_models {
    static constexpr const char* question = "What extract yield does a congress mash show?";

    // 50 g of malt made up to 450 g: all the water in the beaker dissolves the extract, the malt's own moisture included.
    struct mass_balance : model<struct mass_balance, unit::fraction(unit::plato, unit::fraction)> {
        static constexpr facts about{.source = "mass balance of the congress mash (EBC 4.5.1, ASBC Malt-4, both recalled)",
                                     .status = evidence::derived,
                                     .use = "the extract of a laboratory wort; the yield is as-is, moisture included",
                                     .accuracy = "exact for full conversion"};
        static constexpr input inputs[]{{"extract", only{7, 10}}, {"moisture", only{0.01, 0.12}}};

        template <class T>
        static constexpr T formula(T P, T moisture) {
            return P * (100.0 * moisture + 800.0) / (100.0 - P) / 100.0;
        }
    } mass_balance;
};
inline constexpr family<&congress_models::mass_balance> congress{};

}  // namespace wortmath::extract
