#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/ethanol/density.hpp"
#include "wortmath/ethanol/words.hpp"

namespace wortmath::ethanol {

struct alcohol_by_mass_from_volume_models {
    static constexpr const char* question = "What is the alcohol by mass of a mixture of water and ethanol of this alcohol by volume?";

    struct oiml_r22 : model<struct oiml_r22, unit::alcohol_by_mass(unit::alcohol_by_volume, word::reference)> {
        static constexpr facts about{
            .source = "definition of alcohol by volume in Council Directive 76/766/EEC, Annex, OJ L 262, 27.9.1976, with the densities of OIML R 22",
            .status = evidence::primary,
            .use = "mixtures of water and ethanol; for beer beer.alcohol_by_mass",
            .accuracy = "the table of the Bureau of Standards of 1913 within 0.008 % mass",
            .note =
                "pure ethanol is 99.99989 % vol at 20 degC, since the formula gives 789.23912 kg/m3 where the law says 789.24: from there up to 100 % vol the "
                "result is 100 % mass"};
        static constexpr input inputs[]{{"alcohol_by_volume"}, {"reference", otherwise{word::reference::at_20C}}};

        template <class T>
        static constexpr T formula(T alcohol, word::reference reference) {
            if (reference == word::reference::at_20C)
                return least(T(100.0), 100.0 * detail::share_from_concentration_at_20C(alcohol / 100.0 * constants::ethanol_20C));
            T u = T(detail::at_60F);
            return least(T(100.0), 100.0 * detail::share_from_concentration(alcohol / 100.0 * detail::density_of_mixture(T(1.0), u), u));
        }
    } oiml_r22;
};
inline constexpr family<&alcohol_by_mass_from_volume_models::oiml_r22> alcohol_by_mass_from_volume{};

}  // namespace wortmath::ethanol
