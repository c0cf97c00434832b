#pragma once

#include "wortmath/liquor/words.hpp"

namespace wortmath::liquor {

struct acid_equivalents_models {
    static constexpr const char* question = "How many protons does a molecule of the acid give off at a pH?";

    struct dissociation : model<struct dissociation, unit::equivalents_per_mole(word::acid, unit::ph)> {
        static constexpr facts about{
            .source =
                "species ratios with pK at 25 degC and zero ionic strength: phosphoric and citric NIST critical constants as in the PHREEQC data base "
                "minteq.v4, lactic 3.86 read, hydrochloric and sulphuric from memory",
            .status = evidence::derived,
            .accuracy = "published for 88 % lactic acid: 0.972 at pH 5.4, reproduced"};
        static constexpr input inputs[]{{"acid"}, {"ph"}};

        template <class T>
        static constexpr T formula(word::acid acid, T ph) {
            acid_constants const& of = acids[static_cast<int>(acid)];
            T species = T(1.0), sum = T(1.0), protons = T(0.0);
            for (int i = 0; i < of.protons; ++i) {
                species = species * power(10.0, ph - of.pk[i]);
                sum = sum + species;
                protons = protons + (i + 1.0) * species;
            }
            return protons / sum;
        }
    } dissociation;
};
inline constexpr family<&acid_equivalents_models::dissociation> acid_equivalents{};

}  // namespace wortmath::liquor
