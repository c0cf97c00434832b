#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct mcu_for_colour_models {
    static constexpr const char* question = "How much malt colour does a beer of this colour need?";

    struct morey : model<struct morey, unit::mcu(unit::srm)> {
        static constexpr facts about{.source = "inverse of from_grist.morey (D. A. Morey, letter \"Beer's Law\", BrewingTechniques)",
                                     .status = evidence::derived,
                                     .use = "beside from_grist.morey; less the MCU of the malts already chosen it is the MCU of one more malt",
                                     .accuracy = "exact inverse"};
        static constexpr input inputs[]{{"srm", validated{0, below(50)}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T srm) {
            return pow(srm / 1.4922, 1.0 / 0.6859);
        }
    } morey;

    struct daniels : model<struct daniels, unit::mcu(unit::srm)> {
        static constexpr facts about{.source = "inverse of from_grist.daniels (R. Daniels, Beer Color Demystified, BrewingTechniques 1995)",
                                     .status = evidence::derived,
                                     .use = "beside from_grist.daniels; amber beers",
                                     .accuracy = "exact inverse",
                                     .note = "no load gives less than 8.4 SRM; the coefficients are from memory"};
        static constexpr input inputs[]{{"srm", validated{10.5, 15.8}, possible{8.4, no_limit}}};

        template <class T>
        static constexpr T formula(T srm) {
            return (srm - 8.4) / 0.2;
        }
    } daniels;

    struct mosher : model<struct mosher, unit::mcu(unit::srm)> {
        static constexpr facts about{.source = "inverse of from_grist.mosher (R. Mosher, The Brewer's Companion, 1994)",
                                     .status = evidence::derived,
                                     .use = "beside from_grist.mosher; dark beers",
                                     .accuracy = "exact inverse",
                                     .note = "no load gives less than 4.7 SRM; the coefficients are from memory"};
        static constexpr input inputs[]{{"srm", validated{above(15.8), no_limit}, possible{4.7, no_limit}}};

        template <class T>
        static constexpr T formula(T srm) {
            return (srm - 4.7) / 0.3;
        }
    } mosher;

    struct piecewise : model<struct piecewise, unit::mcu(unit::srm)> {
        static constexpr facts about{.source = "inverse of from_grist.piecewise",
                                     .status = evidence::derived,
                                     .use = "beside from_grist.piecewise",
                                     .accuracy = "exact inverse",
                                     .note = "the slopes are from memory"};
        static constexpr input inputs[]{{"srm", validated{0, 53.9}, possible{0, no_limit}}};

        template <class T>
        static constexpr T formula(T srm) {
            return select(srm <= 10.5, srm, select(srm <= 15.8, (srm - 8.4) / 0.2, (srm - 4.7) / 0.3));
        }
    } piecewise;

    struct bies_hansen : model<struct bies_hansen, unit::mcu(unit::srm)> {
        static constexpr facts about{.source = "inverse of from_grist.bies_hansen (D. J. Bies, R. M. Hansen, poster 56, MBAA/ASBC Brewing Summit 2010)",
                                     .status = evidence::derived,
                                     .use = "beside from_grist.bies_hansen; the load of caramel and roast malts only",
                                     .accuracy = "exact inverse"};
        static constexpr input inputs[]{{"srm"}};

        template <class T>
        static constexpr T formula(T srm) {
            return 32.3 / 31.0 * srm;
        }
    } bies_hansen;

    struct congress : model<struct congress, unit::mcu(unit::srm)> {
        static constexpr facts about{.source = "inverse of from_grist.congress",
                                     .status = evidence::derived,
                                     .use = "beside from_grist.congress; malts measured by photometer",
                                     .accuracy = "exact inverse"};
        static constexpr input inputs[]{{"srm"}};

        template <class T>
        static constexpr T formula(T srm) {
            return srm / 1.022;
        }
    } congress;
};
inline constexpr family<&mcu_for_colour_models::morey> mcu_for_colour{};

}  // namespace wortmath::colour
