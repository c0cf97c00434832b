#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct first_wort_models {
    static constexpr const char* question = "How strong is the first wort of a mash?";

    // All extract of the malt in all water of the mash, the malt's own moisture included.
    struct mass_balance : model<struct mass_balance, unit::plato(unit::fraction, unit::fraction, unit::ratio)> {
        static constexpr facts about{.source = "mass balance of the mash",
                                     .status = evidence::derived,
                                     .use = "the most that full conversion can give, before sparging",
                                     .accuracy = "exact for full conversion",
                                     .note = "yield and liquor in kg per kg of malt as it is weighed"};
        static constexpr input inputs[]{{"extract_yield", only{0, 1}},
                                        {"moisture", only{0, below(1)}},
                                        {"liquor_to_grist", only{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T e, T moisture, T R) {
            return 100.0 * e / (e + moisture + R);
        }
    } mass_balance;
};
inline constexpr family<&first_wort_models::mass_balance> first_wort{};

}  // namespace wortmath::extract
