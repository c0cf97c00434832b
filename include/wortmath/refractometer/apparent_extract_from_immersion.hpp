#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer {

struct apparent_extract_from_immersion_models {
    static constexpr const char* question = "What is the apparent extract of a fermenting beer, by an old immersion refractometer?";

    struct savel_1971 : model<struct savel_1971, unit::apparent_extract(unit::scale_divisions)> {
        static constexpr facts about{.source = "J. Savel, Kvasny prumysl 17 (1971) 53, abstract",
                                     .status = evidence::primary,
                                     .use = "wort of 11.50 degP only",
                                     .accuracy = "0.1 degP as stated"};
        static constexpr input inputs[]{{"scale_reading", validated{33, 61}}};

        template <class T>
        static constexpr T formula(T R) {
            return 0.3830 * R - 11.7129;
        }
    } savel_1971;
};
inline constexpr family<&apparent_extract_from_immersion_models::savel_1971> apparent_extract_from_immersion{};

}  // namespace wortmath::refractometer
