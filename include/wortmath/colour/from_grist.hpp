#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct from_grist_models {
    static constexpr const char* question = "What colour will a beer have that is brewed with this load of malt colour?";

    // Smooths the three straight lines of `piecewise` by one power law.
    struct morey : model<struct morey, unit::srm(unit::mcu)> {
        static constexpr facts about{.source = "D. A. Morey, letter \"Beer's Law\", BrewingTechniques",
                                     .status = evidence::secondary,
                                     .use = "the relation most recipes are written for",
                                     .accuracy = "R^2 0.97 is stated, against the lines it smooths and not against measured beers; beside piecewise 3.0 "
                                                 "SRM low at 10.5 MCU, 2.1 high near 50, 3.4 low at 151",
                                     .note = "stated for colours under 50 SRM; below 3.58 MCU the colour exceeds the MCU itself, by 0.49 SRM at most; a "
                                             "wrong exponent 0.659 circulates (6.805 SRM at 10 MCU, where 7.240 is right)"};
        static constexpr input inputs[]{{"mcu", validated{0, 167.33}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T mcu) {
            return 1.4922 * pow(mcu, 0.6859);
        }
    } morey;

    struct daniels : model<struct daniels, unit::srm(unit::mcu)> {
        static constexpr facts about{.source = "R. Daniels, Beer Color Demystified, BrewingTechniques 1995; Designing Great Beers, 1996",
                                     .status = evidence::memory,
                                     .use = "amber beers, from 10.5 to 37 MCU",
                                     .note = "answers 8.4 SRM for water; a regression on piecewise meets the digits of morey, which supports these"};
        static constexpr input inputs[]{{"mcu", validated{10.5, 37}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T mcu) {
            return 0.2 * mcu + 8.4;
        }
    } daniels;

    struct mosher : model<struct mosher, unit::srm(unit::mcu)> {
        static constexpr facts about{.source = "R. Mosher, The Brewer's Companion, 1994",
                                     .status = evidence::memory,
                                     .use = "dark beers, above 37 MCU",
                                     .note = "answers 4.7 SRM for water; a regression on piecewise meets the digits of morey, which supports these"};
        static constexpr input inputs[]{{"mcu", validated{above(37), no_limit}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T mcu) {
            return 0.3 * mcu + 4.7;
        }
    } mosher;

    struct piecewise : model<struct piecewise, unit::srm(unit::mcu)> {
        static constexpr facts about{.source = "the construction that D. A. Morey smoothed: MCU itself for pale beers, then Daniels, then Mosher",
                                     .status = evidence::secondary,
                                     .use = "to see what morey smooths",
                                     .note = "the slopes are from memory; the pieces meet at 10.5 and at 15.8 SRM; printed accounts give the last limit as "
                                             "\"< 37\", meant is \"> 37\""};
        static constexpr input inputs[]{{"mcu", validated{0, 164}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T mcu) {
            return select(mcu <= 10.5, mcu, select(mcu <= 37.0, 0.2 * mcu + 8.4, 0.3 * mcu + 4.7));
        }
    } piecewise;

    // The load divided by 32.3 per US beer barrel.
    struct bies_hansen : model<struct bies_hansen, unit::srm(unit::mcu)> {
        static constexpr facts about{.source = "D. J. Bies, R. M. Hansen, poster 56, MBAA/ASBC Brewing Summit 2010",
                                     .status = evidence::primary,
                                     .use = "caramel and roast malts, as a straight line; leave base malt out of the load",
                                     .accuracy = "the printed worked example is met within 0.05 SRM"};
        static constexpr input inputs[]{{"mcu"}};

        template <class T>
        static constexpr T formula(T mcu) {
            return 31.0 / 32.3 * mcu;
        }
    } bies_hansen;

    // Beer's law from the congress mash, which holds 0.1173 kg of malt in a litre.
    struct congress : model<struct congress, unit::srm(unit::mcu)> {
        static constexpr facts about{.source = "Beer's law from the congress mash: full extraction, no boil",
                                     .status = evidence::derived,
                                     .use = "malts measured by photometer (SRM or EBC); the only one to which labelled_extract may be added",
                                     .accuracy = "the factor lies between 1.020 and 1.024 for usual moisture and extract"};
        static constexpr input inputs[]{{"mcu"}};

        template <class T>
        static constexpr T formula(T mcu) {
            return 1.022 * mcu;
        }
    } congress;
};
inline constexpr family<&from_grist_models::morey> from_grist{};

}  // namespace wortmath::colour
