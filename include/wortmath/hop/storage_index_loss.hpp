#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::hop {

struct storage_index_loss_models {
    static constexpr const char* question = "What share of its alpha and beta acids has a hop lost, judged by its storage index?";

    struct nickerson_likens : model<struct nickerson_likens, unit::fraction(unit::ratio, unit::fraction_per_decade)> {
        static constexpr facts about{
            .source = "G. B. Nickerson, S. T. Likens, J. Am. Soc. Brew. Chem. 37 (1979) 184-187, abstract; the 110 and the 0.25 as usually quoted",
            .status = evidence::secondary,
            .accuracy = "slopes of four crops 1.018 to 1.146: 9.5 to 10.7 % lost at an index of 0.31",
            .note =
                "alpha plus beta acids, not alpha alone; negative below 0.25 is real and is given as it is; the six-month loss of hop.ageing is often "
                "mislabelled storage index"};
        static constexpr input inputs[]{{"storage_index", validated{above(0), 2.0}, bitterness::detail::some},
                                        {"slope", bitterness::detail::amount, otherwise{1.10}}};

        template <class T>
        static constexpr T formula(T storage_index, T slope) {
            return slope * (log(storage_index / 0.25) / log(10.0));
        }
    } nickerson_likens;
};
inline constexpr family<&storage_index_loss_models::nickerson_likens> storage_index_loss{};

}  // namespace wortmath::hop
