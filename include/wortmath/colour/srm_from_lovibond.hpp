#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct srm_from_lovibond_models {
    static constexpr const char* question = "What is a malt colour in degrees Lovibond on the SRM scale?";

    struct maltster : model<struct maltster, unit::srm(unit::lovibond)> {
        static constexpr facts about{.source = "regression on maltsters' EBC and Lovibond data, quoted in encyclopaedia accounts of SRM",
                                     .status = evidence::secondary,
                                     .use = "degrees read with the discs of series 52; malt and laboratory wort, not finished beer",
                                     .note = "0 below 0.5611 degL; 12.7 is printed for 10 degL, truncated from 12.786"};
        static constexpr input inputs[]{{"lovibond"}};

        template <class T>
        static constexpr T formula(T L) {
            return most(T(0.0), 1.3546 * L - 0.76);
        }
    } maltster;

    // On many certificates degrees Lovibond are SRM under the old name.
    struct identity : model<struct identity, unit::srm(unit::lovibond)> {
        static constexpr facts about{.source = "practice of maltsters in the USA",
                                     .status = evidence::secondary,
                                     .use = "certificates whose \"L\" is a photometer reading",
                                     .accuracy = "below about 10 the two models differ by less than 3 SRM, above 100 by about 35 %"};
        static constexpr input inputs[]{{"lovibond"}};

        template <class T>
        static constexpr T formula(T L) {
            return L;
        }
    } identity;
};
inline constexpr family<&srm_from_lovibond_models::maltster> srm_from_lovibond{};

}  // namespace wortmath::colour
