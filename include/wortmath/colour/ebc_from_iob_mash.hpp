#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct ebc_from_iob_mash_models {
    static constexpr const char* question = "What is a malt colour from the British (IoB) mash on the basis of the EBC mash?";

    struct concentration : model<struct concentration, unit::ebc(unit::iob_colour)> {
        static constexpr facts about{.source = "J. Inst. Brew. 1953, doi 10.1002/j.2050-0416.1953.tb06208.x (abstract)",
                                     .status = evidence::secondary,
                                     .note = "the continental mash is 1.18 times as concentrated; both kinds of certificate print \"EBC\""};
        static constexpr input inputs[]{{"iob_colour"}};

        template <class T>
        static constexpr T formula(T iob_colour) {
            return 1.18 * iob_colour;
        }
    } concentration;
};
inline constexpr family<&ebc_from_iob_mash_models::concentration> ebc_from_iob_mash{};

}  // namespace wortmath::colour
