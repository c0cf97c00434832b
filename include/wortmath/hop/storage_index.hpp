#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::hop {

struct storage_index_models {
    static constexpr const char* question = "What is the hop storage index, from the absorbances of a hop extract?";

    // The method works with toluene and methanol: for a laboratory with its own rules.
    struct absorbance_ratio : model<struct absorbance_ratio, unit::ratio(unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "ASBC Hops-12",
                                     .status = evidence::primary,
                                     .accuracy = "coefficient of variation 1.3 % within and 2.8 % between laboratories",
                                     .note = "fresh hops differ by 0.1 between varieties"};
        static constexpr input inputs[]{{"absorbance_275", bitterness::detail::amount}, {"absorbance_325", bitterness::detail::some}};

        template <class T>
        static constexpr T formula(T absorbance_275, T absorbance_325) {
            return absorbance_275 / absorbance_325;
        }
    } absorbance_ratio;
};
inline constexpr family<&storage_index_models::absorbance_ratio> storage_index{};

}  // namespace wortmath::hop
