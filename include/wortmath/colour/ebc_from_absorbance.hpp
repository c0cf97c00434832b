#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct ebc_from_absorbance_models {
    static constexpr const char* question = "What colour in EBC units does a photometer reading at 430 nm mean?";

    struct analytica : model<struct analytica, unit::ebc(unit::ratio, unit::centimetres, unit::ratio)> {
        static constexpr facts about{.source = "Analytica-EBC 9.6 (beer), 8.5 (wort), 4.7.1 (malt)",
                                     .status = evidence::secondary,
                                     .use = "clear, degassed beer and wort; a reading above 2 has to be repeated diluted",
                                     .note = "decadic absorbance; the method numbers 8.5 and 9.6 are from memory; the sample is filtered at 0.45 um unless its "
                                             "(diluted) haze is below 1 EBC haze unit; dilution is total volume over beer volume; "
                                             "a sample of wort drawn near boiling scalds: let it cool in a closed heat-proof vessel"};
        static constexpr input inputs[]{{"absorbance_430", validated{0, 2}, possible{0, no_limit}},
                                        {"path_length", possible{above(0), no_limit}, otherwise{1.0}},
                                        {"dilution", possible{1, no_limit}, otherwise{1.0}}};

        template <class T>
        static constexpr T formula(T A, T path, T dilution) {
            return 25.0 * dilution * A / path;
        }
    } analytica;
};
inline constexpr family<&ebc_from_absorbance_models::analytica> ebc_from_absorbance{};

}  // namespace wortmath::colour
