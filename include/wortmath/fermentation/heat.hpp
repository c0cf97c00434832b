#pragma once

#include "wortmath/model.hpp"

namespace wortmath::fermentation {

struct heat_models {
    static constexpr const char* question = "How much heat does the fermentation release?";

    // One figure for all of the extract.
    struct per_extract : model<struct per_extract, unit::kilojoules(unit::grams, unit::kilojoules_per_kilogram)> {
        static constexpr facts about{
            .source =
                "published figures per kg of extract fermented: 560 (R. Barth), 586 (252 Btu/lb, 140 kcal/kg), 652, 506 to 716 by sugar; a handbook "
                "gives 1216 with the metabolism of the yeast",
            .status = evidence::secondary,
            .use = "malt wort, where the sugars are not known one by one",
            .accuracy = "600 +/- 60 kJ/kg",
            .note =
                "take the real extract fermented: the apparent drop overstates the heat by about 23 %. For sizing a cooler use 1200 kJ/kg, the larger "
                "and cautious figure"};
        static constexpr input inputs[]{{"fermented_mass"}, {"heat_of_fermentation", only{0, no_limit}, otherwise{600.0}}};

        template <class T>
        static constexpr T formula(T m, T h) {
            return h * (m / 1000.0);
        }
    } per_extract;

    // The sugars one by one.
    struct sugar_profile : model<struct sugar_profile, unit::kilojoules(unit::grams, unit::grams, unit::grams)> {
        static constexpr facts about{.source =
                                         "constants of D. A. Gee and W. F. Ramirez as quoted: 91.2, 226.3, 361.3 kJ per mol glucose, maltose, "
                                         "maltotriose",
                                     .status = evidence::secondary,
                                     .use = "a wort with an analysis of its sugars",
                                     .accuracy = "506.2, 661.1 and 716.2 kJ/kg, against 560 to 652 kJ/kg published for all extract"};
        static constexpr input inputs[]{{"glucose_mass"}, {"maltose_mass"}, {"maltotriose_mass"}};

        template <class T>
        static constexpr T formula(T glucose, T maltose, T maltotriose) {
            return 91.2 * (glucose / 180.156) + 226.3 * (maltose / 342.297) + 361.3 * (maltotriose / 504.438);
        }
    } sugar_profile;
};
inline constexpr family<&heat_models::per_extract> heat{};

}  // namespace wortmath::fermentation
