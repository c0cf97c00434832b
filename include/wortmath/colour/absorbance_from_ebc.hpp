#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct absorbance_from_ebc_models {
    static constexpr const char* question = "What absorbance at 430 nm, in one centimetre, has a beer of this colour in EBC units?";

    struct analytica : model<struct analytica, unit::per_centimetre(unit::ebc)> {
        static constexpr facts about{.source = "Analytica-EBC 9.6 (beer), 8.5 (wort), 4.7.1 (malt)",
                                     .status = evidence::secondary,
                                     .note = "decadic absorbance of the undiluted liquid; the method numbers 8.5 and 9.6 are from memory"};
        static constexpr input inputs[]{{"ebc"}};

        template <class T>
        static constexpr T formula(T ebc) {
            return ebc / 25.0;
        }
    } analytica;
};
inline constexpr family<&absorbance_from_ebc_models::analytica> absorbance_from_ebc{};

}  // namespace wortmath::colour
