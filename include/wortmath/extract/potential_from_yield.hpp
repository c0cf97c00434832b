#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/extract/sucrose_potential.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct potential_from_yield_models {
    static constexpr const char* question = "What potential does an ingredient have that yields a share of its weight as extract?";

    // Sucrose as it counts in a wort of usual strength.
    struct sucrose_10_plato : model<struct sucrose_10_plato, unit::litre_degrees_per_kilogram(unit::fraction)> {
        static constexpr facts about{.source = "apparent potential of sucrose at 10 degP (extract.sucrose_potential.icumsa)",
                                     .status = evidence::derived,
                                     .use = "any ingredient, for worts near 10 degP",
                                     .accuracy = "385.6214 L degrees/kg (46.2076 ppg) at 10 degP; the true value falls from 387.0 at 0 to "
                                                 "384.0 at 20 degP",
                                     .note = "the yield is of the ingredient as it is weighed, moisture included"};
        static constexpr input inputs[]{{"extract_yield", only{0, 1.05}}};

        template <class T>
        static constexpr T formula(T e) {
            constexpr double of_sucrose = sucrose_potential_models::icumsa::formula(10.0, word::gravity_scale::gravity_20_20);
            return of_sucrose * e;
        }
    } sucrose_10_plato;

    // The sugar of the older American books.
    struct noonan : model<struct noonan, unit::litre_degrees_per_kilogram(unit::fraction)> {
        static constexpr facts about{.source = "G. Noonan: 46.214 points per pound and US gallon",
                                     .status = evidence::secondary,
                                     .use = "to repeat recipes that used it",
                                     .accuracy = "0.014 % above sucrose_10_plato"};
        static constexpr input inputs[]{{"extract_yield", only{0, 1.05}}};

        template <class T>
        static constexpr T formula(T e) {
            return 46.214 * (constants::l_per_us_gal / (constants::g_per_lb / 1000.0)) * e;
        }
    } noonan;

    // Whole points, as American malt lists round them.
    struct palmer : model<struct palmer, unit::litre_degrees_per_kilogram(unit::fraction)> {
        static constexpr facts about{.source = "J. Palmer, How to Brew: 46 points per pound and US gallon",
                                     .status = evidence::primary,
                                     .use = "American malt lists in whole points",
                                     .accuracy = "0.45 % under sucrose_10_plato"};
        static constexpr input inputs[]{{"extract_yield", only{0, 1.05}}};

        template <class T>
        static constexpr T formula(T e) {
            return 46.0 * (constants::l_per_us_gal / (constants::g_per_lb / 1000.0)) * e;
        }
    } palmer;

    // Sucrose in very thin wort.
    struct dilute_limit : model<struct dilute_limit, unit::litre_degrees_per_kilogram(unit::fraction)> {
        static constexpr facts about{.source = "BrewingTechniques 2(1), 1994: 386.5 litre-degrees per kg",
                                     .status = evidence::secondary,
                                     .use = "very thin worts",
                                     .accuracy = "0.23 % above sucrose_10_plato"};
        static constexpr input inputs[]{{"extract_yield", only{0, 1.05}}};

        template <class T>
        static constexpr T formula(T e) {
            return 386.5 * e;
        }
    } dilute_limit;
};
inline constexpr family<&potential_from_yield_models::sucrose_10_plato> potential_from_yield{};

}  // namespace wortmath::extract
