#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct absorbance_from_srm_models {
    static constexpr const char* question = "What absorbance at 430 nm, in one centimetre, has a beer of this colour in SRM?";

    struct asbc : model<struct asbc, unit::per_centimetre(unit::srm)> {
        static constexpr facts about{.source = "ASBC Methods of Analysis, Beer-10 A (after Stone and Miller 1949)",
                                     .status = evidence::secondary,
                                     .note = "decadic absorbance of the undiluted liquid"};
        static constexpr input inputs[]{{"srm"}};

        template <class T>
        static constexpr T formula(T srm) {
            return srm / 12.7;
        }
    } asbc;
};
inline constexpr family<&absorbance_from_srm_models::asbc> absorbance_from_srm{};

}  // namespace wortmath::colour
