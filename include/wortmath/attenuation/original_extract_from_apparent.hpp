#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct original_extract_from_apparent_models {
    static constexpr const char* question = "What was the original extract, from apparent extract and measured alcohol?";

    // Root of A (206.65 - 1.0665 p) (1.22 + 0.001 p) = 100 (p - m).
    struct balling : model<struct balling, unit::original_extract(unit::alcohol_by_mass, unit::apparent_extract)> {
        static constexpr facts about{.source = "C. J. N. Balling's attenuation quotient and alcohol yield, solved for the original extract",
                                     .status = evidence::derived,
                                     .use = "a density reading and an alcohol meter",
                                     .accuracy = "the exact inverse of alcohol_by_mass.balling"};
        static constexpr input inputs[]{{"alcohol_by_mass", validated{0, 12}}, {"apparent_extract"}};

        template <class T>
        static constexpr T formula(T alcohol, T apparent) {
            T a = 0.0010665 * alcohol;
            T b = 100.0 + 1.09448 * alcohol;
            T c = 252.113 * alcohol + 100.0 * apparent;
            return 2.0 * c / (b + sqrt(square(b) + 4.0 * a * c));
        }
    } balling;
};
inline constexpr family<&original_extract_from_apparent_models::balling> original_extract_from_apparent{};

}  // namespace wortmath::attenuation
