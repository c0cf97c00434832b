#pragma once

#include "wortmath/yeast/count.hpp"

namespace wortmath::yeast {

struct dry_mass_models {
    static constexpr const char* question = "How much dry yeast should be pitched?";

    // From the count that is wanted.
    struct per_gram : model<struct per_gram, unit::grams(unit::cells, unit::cells_per_gram, unit::fraction)> {
        static constexpr facts about{
            .source = "a maker's guaranteed minimum of 5e9 living cells per gram (Lallemand); another maker states more than 6e9 at packaging",
            .status = evidence::primary,
            .use = "whenever a number of cells is wanted",
            .accuracy =
                "the default is a minimum, not a mean: counted values are 8e9 to 18e9 (S-189 9, S-04 8, S-23 10, K-97 14, S-33 16, T-58 18; "
                "Van den Berg and Van Landschoot, Cerevisia 28(3) 2003)",
            .note = "a count typed in thousand millions (180 for 180e9) would give nanograms and is refused"};
        static constexpr input inputs[]{{"cells"},
                                        {"cells_per_gram", validated{4e9, 20e9}, possible{above(0), no_limit}, otherwise{5e9}},
                                        {"viability", validated{0.3, 1}, possible{above(0), 1}, otherwise{1.0}}};
        static constexpr const char* refusal = count_refusal;

        template <class T>
        static constexpr T formula(T cells, T n, T viability) {
            return counted(cells, T(cells / (n * viability)));
        }
    } per_gram;

    // As the sachets say.
    struct dose_rate : model<struct dose_rate, unit::grams(unit::litres, unit::grams_per_litre)> {
        static constexpr facts about{.source = "makers' data sheets: 50 to 80 g/hL for ale, 80 to 120 g/hL for lager at 12 to 18 degC",
                                     .status = evidence::secondary,
                                     .use = "to follow the dose on a data sheet",
                                     .note = "makers print g/hL: 65 g/hL is 0.65 g/L"};
        static constexpr input inputs[]{{"volume"}, {"dose", otherwise{0.65}}};
        static constexpr const char* refusal = "more than 10 g of dry yeast per litre: was the dose in g/hL? 65 g/hL is 0.65 g/L";

        template <class T>
        static constexpr T formula(T V, T dose) {
            return select(dose > 10.0, undefined, V * dose);
        }
    } dose_rate;
};
inline constexpr family<&dry_mass_models::per_gram> dry_mass{};

}  // namespace wortmath::yeast
