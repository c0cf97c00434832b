#pragma once

#include "wortmath/liquor/acid_equivalents.hpp"

namespace wortmath::liquor {

struct acid_strength_models {
    static constexpr const char* question = "How many equivalents does a litre of the acid solution hold at a pH?";

    struct density : model<struct density, unit::milliequivalents_per_litre(word::acid, unit::fraction, unit::density, unit::ph)> {
        static constexpr facts about{
            .source = "mass fraction, density and molar mass of the solution with liquor.acid_equivalents",
            .status = evidence::derived,
            .accuracy = "published for 88 % lactic acid of 1206 kg/m3: 11.5 mEq/mL near pH 5.4, 11.45 computed",
            .note =
                "the strength belongs to a pH: the same lactic acid has 8.64 mEq/mL at pH 4.3. Concentrated lactic acid is partly its own ester "
                "and its titre moves with age (from memory). Phosphoric acid may precipitate calcium. Densities, from memory but for the first: "
                "lactic 88 % 1206, 80 % 1190; phosphoric 85 % 1685, 75 % 1579, 10 % 1053.2; hydrochloric 37 % 1180; sulphuric 96 % 1840 kg/m3. A "
                "density typed in g/mL would make the dose a thousand times too large: below 500 kg/m3 it is always refused"};
        static constexpr input inputs[]{
            {"acid"}, {"mass_fraction", validated{0.05, 1}, possible{above(0), 1}}, {"density", validated{1000, 1900}, possible{500, no_limit}}, {"ph"}};

        template <class T>
        static constexpr T formula(word::acid acid, T w, T d, T ph) {
            double const M = acids[static_cast<int>(acid)].molar_mass;
            return 1000.0 * w * d / M * acid_equivalents.dissociation.formula(acid, ph);
        }
    } density;
};
inline constexpr family<&acid_strength_models::density> acid_strength{};

}  // namespace wortmath::liquor
