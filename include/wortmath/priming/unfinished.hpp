#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/priming/fermentable.hpp"

namespace wortmath::priming {

struct unfinished_models {
    static constexpr const char* question = "How much carbon dioxide will extract that has not fermented yet still give?";

    struct balling
        : model<struct balling, unit::co2_concentration(unit::original_extract, unit::apparent_extract, unit::apparent_extract, unit::density)> {
        static constexpr facts about{
            .source = "C. J. N. Balling's attenuation quotient; the chain from it is derived",
            .status = evidence::derived,
            .use = "beer that is packaged before its final extract is reached",
            .accuracy = "the trade's fixed quotient 1/0.8192 gives up to 1 % more at 12 degP",
            .note = "g/L: carbonation.volumes makes volumes of it; one gravity point of drop is half a volume, one of added sucrose 0.64 to 0.67: "
                    "different quantities",
            .danger = "unfinished fermentation bursts bottles: take the final value from a forced fermentation. Without growth of yeast there is 1.13 times "
                      "as much gas, and wild or diastatic yeast ferments what a forced test left (1 degP of real extract is 2.4 volumes). A final extract "
                      "above the present one would hide gas and is refused"};
        static constexpr const char* refusal = detail::end_above_present;
        static constexpr input inputs[]{{"original_extract", only{0, 30}},
                                        {"apparent_extract", possible{-8, 30}},
                                        {"final_apparent_extract", possible{-8, 30}},
                                        {"density", only{900, 1500}}};

        template <class T>
        static constexpr T formula(T original, T now, T end, T rho) {
            T q = let("q", 1.22 + 0.001 * original);
            T real_now = let("RE_now", original - (original - now) / q);
            T real_end = let("RE_final", original - (original - end) / q);
            return wortmath::carbonation::detail::g_co2_per_g_extract * 10.0 * (rho / 1000.0) * fermentable.balling.formula(real_now, real_end);
        }
    } balling;
};
inline constexpr family<&unfinished_models::balling> unfinished{};

}  // namespace wortmath::priming
