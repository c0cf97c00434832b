#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::beer {

struct label_energy_kilojoule_models {
    static constexpr const char* question = "What energy in kJ does the law put on the label?";

    struct eu_1169 : model<struct eu_1169, unit::kilojoules_per_litre(unit::alcohol_by_volume, unit::grams_per_litre, unit::grams_per_litre)> {
        static constexpr facts about{
            .source = "Regulation (EU) 1169/2011, Annex XIV",
            .status = evidence::secondary,
            .use = "labels in the European Union; a label shows the energy of 100 mL, a tenth of this",
            .note =
                "read in a consolidated copy. The figures in kJ and kcal have integer factors of their own: do not convert one into the other. Left out though "
                "in the annex: organic acids 13, fibre 8, polyols 10 kJ/g, about 1 % of a beer's energy (from memory). An estimate: people who dose medicine "
                "by energy or carbohydrate (diabetes) must not rely on it, and it says nothing about gluten or allergens"};
        static constexpr input inputs[]{{"alcohol_by_volume"}, {"carbohydrate_concentration"}, {"protein_concentration"}};

        template <class T>
        static constexpr T formula(T alcohol, T carbohydrate, T protein) {
            return 29.0 * (constants::ethanol_20C / 100.0 * alcohol) + 17.0 * (carbohydrate + protein);
        }
    } eu_1169;
};
inline constexpr family<&label_energy_kilojoule_models::eu_1169> label_energy_kilojoule{};

}  // namespace wortmath::beer
