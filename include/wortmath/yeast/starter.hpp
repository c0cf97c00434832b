#pragma once

#include "wortmath/yeast/count.hpp"

namespace wortmath::yeast {

// Growth at 25, 50, 100 and 200 million cells/mL: one node for each doubling.
inline constexpr double starter_doublings[]{0, 1, 2, 3};
inline constexpr double starter_growth[]{2.76, 2.05, 1.52, 1.12};

struct starter_models {
    static constexpr const char* question = "How many cells are there after a starter?";

    // Left to stand.
    struct unstirred_table : model<struct unstirred_table, unit::cells(unit::cells, unit::litres)> {
        static constexpr facts about{.source =
                                         "C. White, J. Zainasheff, Yeast, 2010, Figure 5.5, read in two quotations: 100e9 cells in 4, 2, 1, 0.5 "
                                         "L give 276, 205, 152, 112",
                                     .status = evidence::secondary,
                                     .use = "a starter that stands",
                                     .accuracy =
                                         "the four printed counts are met exactly; between them growth is linear in the logarithm of the "
                                         "concentration",
                                     .note = "loose cover, never a stopper: a starter gives off gas"};
        static constexpr input inputs[]{{"cells"}, {"volume", only{above(0), no_limit}}};
        static constexpr const char* refusal =
            "the table holds for 25 to 200 million cells per mL of starter: change the volume (a count is typed in full, 100e9 and not 100)";

        template <class T>
        static constexpr T formula(T cells, T V) {
            T millions = let("millions_per_ml", cells / (1000.0 * V) / 1e6);
            T doublings = let("doublings", log(millions / 25.0) / log(2.0));
            T grown = cells * piecewise_linear(doublings, starter_doublings, starter_growth);
            return select(millions >= 25.0, select(millions <= 200.0, grown, undefined), undefined);
        }
    } unstirred_table;

    // On a stirrer.
    struct stirred_extract : model<struct stirred_extract, unit::cells(unit::cells, unit::grams)> {
        static constexpr facts about{.source = "K. Troester 2012; the variable (cells per gram of extract) was read, the numbers are recalled, unverified",
                                     .status = evidence::memory,
                                     .use = "a stirred starter",
                                     .accuracy = "the two branches differ by 0.008e9 cells per gram where they meet",
                                     .note = "loose cover, never a stopper: a starter gives off gas"};
        static constexpr input inputs[]{{"cells"}, {"extract_mass", only{above(0), no_limit}}};
        static constexpr const char* refusal = count_refusal;

        template <class T>
        static constexpr T formula(T cells, T extract) {
            T B = let("B", cells / 1e9 / extract);
            T growth = let("growth", select(B < 1.4, T(1.4), most(T(0.0), 2.33 - 0.67 * B)));
            return counted(cells, T(cells + 1e9 * (growth * extract)));
        }
    } stirred_extract;
};
inline constexpr family<&starter_models::unstirred_table> starter{};

}  // namespace wortmath::yeast
