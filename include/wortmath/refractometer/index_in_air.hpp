#pragma once

#include "wortmath/model.hpp"

namespace wortmath::refractometer {

struct index_in_air_models {
    static constexpr const char* question = "What is the refractive index against air where it is known against vacuum?";

    struct ratio : model<struct ratio, unit::ratio(unit::ratio)> {
        static constexpr facts about{.source = "refractive index of standard air, 1.000272",
                                     .status = evidence::derived,
                                     .use = "before an index of water meets a sugar scale",
                                     .note = "leaving it out costs 0.00036 in the index, 0.25 degBx"};
        static constexpr input inputs[]{{"index_in_vacuum", only{1, no_limit}}};

        template <class T>
        static constexpr T formula(T index_in_vacuum) {
            return index_in_vacuum / 1.000272;
        }
    } ratio;
};
inline constexpr family<&index_in_air_models::ratio> index_in_air{};

}  // namespace wortmath::refractometer
