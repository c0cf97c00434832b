#pragma once

#include "wortmath/extract/density.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct volume_ratio_models {
    static constexpr const char* question = "How does the volume of the same wort change with its temperature?";

    struct density_ratio : model<struct density_ratio, unit::ratio(unit::fraction, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "extract.density.icumsa at both temperatures",
                                     .status = evidence::derived,
                                     .use = "any pair of temperatures",
                                     .accuracy = "as extract.density.icumsa",
                                     .note = "strongly curved: to 20 degC wort shrinks 4.0 % from 100, 2.4 % from 75 and 1.1 % from 50 "
                                             "degC. So 4 % must not be scaled linearly, nor applied to cold volumes. The vessel expands "
                                             "too: extract.vessel_expansion"};
        static constexpr input inputs[]{{"mass_fraction", validated{-0.03, 0.70}, possible{-0.10, 0.90}},
                                        {"from_temperature", validated{0, 100}, possible{-5, 105}},
                                        {"to_temperature", validated{0, 100}, possible{-5, 105}}};

        template <class T>
        static constexpr T formula(T w, T from, T to) {
            return density_models::icumsa::formula(w, from) / density_models::icumsa::formula(w, to);
        }
    } density_ratio;

    // Cold litres for each boiling litre, by the textbook.
    struct kunze : model<struct kunze, unit::ratio()> {
        static constexpr facts about{.source = "W. Kunze, Technologie fuer Brauer und Maelzer",
                                     .status = evidence::secondary,
                                     .use = "boiling kettle to cold wort, to repeat a brewhouse sheet",
                                     .accuracy = "the liquid alone gives 0.960; 0.964 seen through a steel kettle marked cold",
                                     .note = "said to lump liquid, vessel and trub; for boiling wort only"};

        template <class T>
        static constexpr T formula() {
            return T(0.96);
        }
    } kunze;

    // As above, by others: the sources disagree.
    struct pfisterer_stanners : model<struct pfisterer_stanners, unit::ratio()> {
        static constexpr facts about{.source = "Pfisterer, Stanners, MBAA Tech. Quart. 1984",
                                     .status = evidence::secondary,
                                     .use = "boiling kettle to cold wort, to repeat work that used it",
                                     .accuracy = "the liquid alone gives 0.960; 0.964 seen through a steel kettle marked cold",
                                     .note = "meant with a density 20/4; for boiling wort only"};

        template <class T>
        static constexpr T formula() {
            return T(0.97);
        }
    } pfisterer_stanners;
};
inline constexpr family<&volume_ratio_models::density_ratio> volume_ratio{};

}  // namespace wortmath::extract
