#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct clarity_models {
    static constexpr const char* question = "Is a sample clear enough, and average enough in its spectrum, for a colour in SRM?";

    struct verdict {
        unit::ratio ratio;
        bool passes;
        static constexpr const char* names[]{"ratio", "passes"};
    };

    struct asbc : model<struct asbc, verdict(unit::ratio, unit::ratio)> {
        static constexpr facts about{.source = "ASBC Methods of Analysis, Beer-10 A",
                                     .status = evidence::secondary,
                                     .note = "both readings in the same cell at the same dilution; \"less than\" and \"at most\" 0.039 both occur in print, used is "
                                             "at most; a sample that still fails after filtering lacks the average spectrum, and SRM is not defined for it"};
        static constexpr input inputs[]{{"absorbance_430", possible{above(0), no_limit}}, {"absorbance_700", possible{0, no_limit}}};
        static constexpr bool nan_is_impossible = true;

        template <class T>
        static constexpr several<T, 2> formula(T A430, T A700) {
            return {{A700 / A430, select(A700 <= 0.039 * A430, T(1.0), T(0.0))}};
        }
    } asbc;
};
inline constexpr family<&clarity_models::asbc> clarity{};

}  // namespace wortmath::colour
