#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct hopped_extract_models {
    static constexpr const char* question = "How much bitterness does a hopped malt extract bring to the wort?";

    struct by_mass : model<struct by_mass, unit::bitterness_units(unit::bitterness_label, unit::grams, unit::litres)> {
        static constexpr facts about{
            .source = "a kit supplier's own rule: printed figure times kg over litres; its example gives 270 x 1.7/23 as 20 BU",
            .status = evidence::secondary,
            .accuracy = "0.04 BU on the supplier's example",
            .note =
                "wort before fermentation: the supplier allows a loss of 10 to 30 % (cellar_retention with 0.7 to 0.9); boiling the kit adds nothing "
                "here; other makers' labels may mean bitterness by volume of the tin, which divides the result by about 1.4: say which was "
                "assumed"};
        static constexpr input inputs[]{{"label_bitterness", detail::amount}, {"mass", detail::amount}, {"volume", detail::some}};

        template <class T>
        static constexpr T formula(T label_bitterness, T mass, T volume) {
            return label_bitterness * (mass / 1000.0) / volume;
        }
    } by_mass;
};
inline constexpr family<&hopped_extract_models::by_mass> hopped_extract{};

}  // namespace wortmath::bitterness
