#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct linner_index_models {
    static constexpr const char* question = "How steep is the spectrum between green and red: is the colour red or brown?";

    struct linner : model<struct linner, unit::ratio(unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "R. T. Linner, Proc. Soc. Soft Drink Technol., 1970, 63-72",
                                     .status = evidence::secondary,
                                     .accuracy = "the average beer gives 3.382 for A430/A530 by this slope, 3.464 by its spectrum",
                                     .note = "typical 3 to 7.5 for caramel colours; caramel malt lies high (redder), black malt low (browner)"};
        static constexpr input inputs[]{{"absorbance_510", possible{above(0), no_limit}}, {"absorbance_610", possible{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T A510, T A610) {
            constexpr double ln10 = 2.302585092994046;
            return 10.0 / ln10 * log(A510 / A610);
        }
    } linner;
};
inline constexpr family<&linner_index_models::linner> linner_index{};

}  // namespace wortmath::colour
