#pragma once

#include "wortmath/model.hpp"

namespace wortmath::attenuation {

struct original_extract_models {
    static constexpr const char* question = "What was the original extract of the wort, from alcohol and real extract of the beer (the great formula)?";

    // Written on 100 g of beer that came from 100 + 1.0665 A g of wort: CO2 and yeast have left.
    struct balling : model<struct balling, unit::original_extract(unit::alcohol_by_mass, unit::real_extract)> {
        static constexpr facts about{
            .source =
                "C. J. N. Balling; as stated by H. Nielsen, A. G. Kristiansen, K. M. Krieger Lassen, C. Erikstroem, Brauwelt International 2007; the same "
                "relation in the methods of EBC, MEBAK and ASBC",
            .status = evidence::secondary,
            .use = "an analysed beer",
            .accuracy = "34 analysed brews: mean -0.03, standard deviation 0.24, worst 0.52 degP; the table of GOST 12787-2021 within 0.009 degP",
            .note = "not proportional under dilution: a beer blended with water does not scale exactly"};
        static constexpr input inputs[]{{"alcohol_by_mass", validated{0, 12}}, {"real_extract", validated{0, 25}}};

        template <class T>
        static constexpr T formula(T alcohol, T real) {
            return 100.0 * (2.0665 * alcohol + real) / (100.0 + 1.0665 * alcohol);
        }
    } balling;
};
inline constexpr family<&original_extract_models::balling> original_extract{};

}  // namespace wortmath::attenuation
