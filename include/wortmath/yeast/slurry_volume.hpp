#pragma once

#include "wortmath/yeast/count.hpp"

namespace wortmath::yeast {

struct slurry_volume_models {
    static constexpr const char* question = "How much harvested yeast slurry holds the cells?";

    struct count : model<struct count, unit::litres(unit::cells, unit::cells_per_millilitre, unit::fraction)> {
        static constexpr facts about{.source = "arithmetic from a count",
                                     .status = evidence::derived,
                                     .accuracy =
                                         "that of the count; without one, brewers put settled slurry anywhere between 0.25e9 and 4e9 "
                                         "cells/mL, a factor of 4 either way",
                                     .note = "no density is assumed: count the slurry"};
        static constexpr input inputs[]{{"cells"},
                                        {"cells_per_ml", validated{1e8, 4e9}, possible{above(0), no_limit}},
                                        {"viability", validated{0.3, 1}, possible{above(0), 1}, otherwise{1.0}}};
        static constexpr const char* refusal = count_refusal;

        template <class T>
        static constexpr T formula(T cells, T density, T viability) {
            return counted(cells, T(cells / (1000.0 * density * viability)));
        }
    } count;
};
inline constexpr family<&slurry_volume_models::count> slurry_volume{};

}  // namespace wortmath::yeast
