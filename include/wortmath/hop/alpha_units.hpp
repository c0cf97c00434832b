#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/constants.hpp"

namespace wortmath::hop {

struct alpha_units_models {
    static constexpr const char* question = "How many alpha acid units, or homebrew bitterness units, is a hop addition?";

    struct aau : model<struct aau, unit::alpha_units(unit::grams, unit::alpha_acids)> {
        static constexpr facts about{
            .source = "Hops FAQ, revision 3, N. Pyle (ed.), 11 Nov 1993",
            .status = evidence::primary,
            .use = "recipes that count ounces times per cent",
            .accuracy = "definition",
            .note = "means nothing without a volume (5 US gal is understood) and a boil time: no bitterness follows from it without both"};
        static constexpr input inputs[]{{"mass", bitterness::detail::amount}, {"alpha"}};

        template <class T>
        static constexpr T formula(T mass, T alpha) {
            return mass / constants::g_per_oz * 100.0 * alpha;
        }
    } aau;
};
inline constexpr family<&alpha_units_models::aau> alpha_units{};

}  // namespace wortmath::hop
