#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct dry_basis_models {
    static constexpr const char* question = "What is an as-is extract yield on dry basis?";

    struct exact : model<struct exact, unit::fraction(unit::fraction, unit::fraction)> {
        static constexpr facts about{.source = "definition of the dry basis",
                                     .status = evidence::derived,
                                     .use = "to compare malts of different moisture",
                                     .accuracy = "exact"};
        static constexpr input inputs[]{{"extract_yield", only{0, 1}}, {"moisture", only{0, below(1)}}};

        template <class T>
        static constexpr T formula(T e, T moisture) {
            return e / (1.0 - moisture);
        }
    } exact;
};
inline constexpr family<&dry_basis_models::exact> dry_basis{};

}  // namespace wortmath::extract
