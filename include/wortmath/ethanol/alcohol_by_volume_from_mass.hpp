#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/ethanol/density.hpp"
#include "wortmath/ethanol/words.hpp"

namespace wortmath::ethanol {

struct alcohol_by_volume_from_mass_models {
    static constexpr const char* question = "What is the alcohol by volume of a mixture of water and ethanol of this alcohol by mass?";

    struct oiml_r22 : model<struct oiml_r22, unit::alcohol_by_volume(unit::alcohol_by_mass, word::reference)> {
        static constexpr facts about{
            .source = "definition of alcohol by volume in Council Directive 76/766/EEC, Annex, OJ L 262, 27.9.1976, with the densities of OIML R 22",
            .status = evidence::primary,
            .use = "mixtures of water and ethanol; for beer beer.alcohol_by_volume",
            .accuracy = "the table of the Bureau of Standards of 1913 within 0.006 % vol",
            .note =
                "% vol is defined at its reference temperature and does not change when the liquid warms; at 60 degF it is 0.4 % of the value lower than at 20 "
                "degC"};
        static constexpr input inputs[]{{"alcohol_by_mass"}, {"reference", otherwise{word::reference::at_20C}}};

        template <class T>
        static constexpr T formula(T alcohol, word::reference reference) {
            if (reference == word::reference::at_20C) return alcohol * detail::density_at_20C(alcohol / 100.0) / constants::ethanol_20C;
            return alcohol * detail::density_of_mixture(alcohol / 100.0, T(detail::at_60F)) / detail::density_of_mixture(T(1.0), T(detail::at_60F));
        }
    } oiml_r22;
};
inline constexpr family<&alcohol_by_volume_from_mass_models::oiml_r22> alcohol_by_volume_from_mass{};

}  // namespace wortmath::ethanol
