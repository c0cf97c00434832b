#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath {

namespace word {
enum class steeped_malt {
    light_crystal,
    pale_crystal,
    medium_crystal,
    dark_crystal,
    dark_belgian_caramel,
    chocolate_malt,
    roast_barley,
    black_patent_malt,
    brown_malt,
    dextrin_malt,
    malto_dextrin,
    sugar
};
}
template <>
struct spelled<word::steeped_malt> {
    static constexpr const char* names[]{"light_crystal", "pale_crystal",      "medium_crystal", "dark_crystal", "dark_belgian_caramel", "chocolate_malt",
                                         "roast_barley",  "black_patent_malt", "brown_malt",     "dextrin_malt", "malto_dextrin",        "sugar"};
};

namespace steep {

inline constexpr double sucrose_points = 46.214;                                                                        // points x US gallon per pound
inline constexpr double sucrose_potential = sucrose_points * constants::l_per_us_gal / (constants::g_per_lb / 1000.0);  // 385.6745 L degrees/kg

// Points x US gallon per pound, in the order of the words.
inline constexpr double palmer_steeped_points[]{14, 22, 18, 16, 16, 15, 21, 21, 8, 4, 40, 46};

struct extract_models {
    static constexpr const char* question = "How much extract does steeped grain give, without a mash?";

    // Grain by name, as weighed and steeped by one author.
    struct palmer_table : model<struct palmer_table, unit::grams(unit::grams, word::steeped_malt)> {
        static constexpr facts about{
            .source = "J. J. Palmer, How to Brew, online edition, chapter 12.4, Table 9: 1 lb crushed in 1 US gal at 160 degF for 30 min",
            .status = evidence::primary,
            .use = "the grains of the table",
            .accuracy = "whole points from one laboratory: 0.5 point is 2 to 5 %",
            .note =
                "light_crystal, brown_malt and dextrin_malt are low because of unconverted starch. Base malts, Munich and flakes are absent on purpose: "
                "steeped they give starch, not extract. 46.214 points are those of pure sucrose"};
        static constexpr input inputs[]{{"grist_mass"}, {"malt"}};

        template <class T>
        static constexpr T formula(T G, word::steeped_malt malt) {
            double const points = palmer_steeped_points[static_cast<int>(malt)];
            return G * points / sucrose_points;
        }
    } palmer_table;

    // Any grain, by its potential in a mash.
    struct fraction_of_potential : model<struct fraction_of_potential, unit::grams(unit::grams, unit::litre_degrees_per_kilogram, unit::fraction)> {
        static constexpr facts about{.source = "a published home-brewing rule: steeping gives 35 % of the potential",
                                     .status = evidence::secondary,
                                     .use = "grain that the table does not name",
                                     .accuracy =
                                         "the table implies 0.48 (dark crystal) to 0.84 (roast and black) of its own maximum: show both, a "
                                         "factor 1.4 to 2.4 apart is the honest uncertainty",
                                     .note = "385.6745 L degrees/kg (46.214 points US gal/lb) is pure sucrose"};
        static constexpr input inputs[]{{"grist_mass"}, {"potential"}, {"efficiency", only{0, 1}, otherwise{0.35}}};

        template <class T>
        static constexpr T formula(T G, T potential, T efficiency) {
            return G * (potential / sucrose_potential) * efficiency;
        }
    } fraction_of_potential;
};
inline constexpr family<&extract_models::palmer_table> extract{};

}  // namespace steep
}  // namespace wortmath
