#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct srm_from_absorbance_models {
    static constexpr const char* question = "What colour in SRM does a photometer reading at 430 nm mean?";

    struct asbc : model<struct asbc, unit::srm(unit::ratio, unit::centimetres, unit::ratio)> {
        static constexpr facts about{.source = "ASBC Methods of Analysis, Beer-10 A (after Stone and Miller 1949)",
                                     .status = evidence::secondary,
                                     .use = "clear, degassed beer and wort; a reading above 2 has to be repeated diluted",
                                     .note = "decadic absorbance; 12.7 belongs to 1 cm and 10 to the half-inch cell (27 % error if mixed): give the path "
                                             "instead; dilution is total volume over beer volume; some instruments lose linearity from about 30 SRM in 1 cm; "
                                             "a sample of wort drawn near boiling scalds: let it cool in a closed heat-proof vessel"};
        static constexpr input inputs[]{{"absorbance_430", validated{0, 2}, possible{0, no_limit}},
                                        {"path_length", possible{above(0), no_limit}, otherwise{1.0}},
                                        {"dilution", possible{1, no_limit}, otherwise{1.0}}};

        template <class T>
        static constexpr T formula(T A, T path, T dilution) {
            return 12.7 * dilution * A / path;
        }
    } asbc;
};
inline constexpr family<&srm_from_absorbance_models::asbc> srm_from_absorbance{};

}  // namespace wortmath::colour
