#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct conversion_efficiency_models {
    static constexpr const char* question = "What share of the malt's extract has the mash dissolved?";

    // From the strength of the first wort, before sparging.
    struct mass_balance : model<struct mass_balance, unit::fraction(unit::plato, unit::fraction, unit::fraction, unit::ratio)> {
        static constexpr facts about{.source = "mass balance of the mash",
                                     .status = evidence::derived,
                                     .use = "a well stirred mash; how far conversion has come",
                                     .accuracy = "exact for a mixed mash",
                                     .note = "the form without P/(100 - P) is wrong: it forgets that extract replaces water. More than 1 "
                                             "means that a figure is off"};
        static constexpr input inputs[]{{"extract", only{0, below(100)}},
                                        {"extract_yield", only{above(0), 1}},
                                        {"moisture", only{0, below(1)}},
                                        {"liquor_to_grist", only{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T P, T e, T moisture, T R) {
            return P * (R + moisture) / ((100.0 - P) * e);
        }
    } mass_balance;
};
inline constexpr family<&conversion_efficiency_models::mass_balance> conversion_efficiency{};

}  // namespace wortmath::extract
