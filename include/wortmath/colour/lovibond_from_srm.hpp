#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct lovibond_from_srm_models {
    static constexpr const char* question = "What is a malt colour in SRM on the Lovibond scale?";

    struct maltster : model<struct maltster, unit::lovibond(unit::srm)> {
        static constexpr facts about{.source = "regression on maltsters' EBC and Lovibond data, quoted in encyclopaedia accounts of SRM",
                                     .status = evidence::secondary,
                                     .use = "degrees read with the discs of series 52; malt and laboratory wort, not finished beer",
                                     .note = "answers 0.561 degL for 0 SRM"};
        static constexpr input inputs[]{{"srm"}};

        template <class T>
        static constexpr T formula(T srm) {
            return (srm + 0.76) / 1.3546;
        }
    } maltster;

    // On many certificates degrees Lovibond are SRM under the old name.
    struct identity : model<struct identity, unit::lovibond(unit::srm)> {
        static constexpr facts about{.source = "practice of maltsters in the USA",
                                     .status = evidence::secondary,
                                     .use = "certificates whose \"L\" is a photometer reading",
                                     .accuracy = "below about 10 the two models differ by less than 3 SRM, above 100 by about 35 %"};
        static constexpr input inputs[]{{"srm"}};

        template <class T>
        static constexpr T formula(T srm) {
            return srm;
        }
    } identity;
};
inline constexpr family<&lovibond_from_srm_models::maltster> lovibond_from_srm{};

}  // namespace wortmath::colour
