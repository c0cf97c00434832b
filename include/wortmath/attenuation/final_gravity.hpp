#pragma once

#include "wortmath/attenuation/cautions.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/extract/to_gravity.hpp"

namespace wortmath::attenuation {

struct final_gravity_models {
    static constexpr const char* question = "Where will the gravity end if the wort ferments to this apparent attenuation?";

    struct plato : model<struct plato, unit::gravity_20_20(unit::gravity_20_20, unit::apparent_attenuation)> {
        static constexpr facts about{.source = "definition of the apparent attenuation, through the extract scale",
                                     .status = evidence::derived,
                                     .use = "attenuations in extract, as laboratories and yeast makers mean them",
                                     .danger = detail::predicted_gravity};
        static constexpr input inputs[]{{"original_gravity"}, {"apparent_attenuation", only{0, 1.10}}};

        template <class T>
        static constexpr T formula(T original, T apparent_attenuation) {
            T p = let("original_extract", extract::from_gravity.asbc.formula(original));
            return extract::to_gravity.asbc.formula(p * (1.0 - apparent_attenuation));
        }
    } plato;

    // Differs from plato because the scale bends.
    struct points : model<struct points, unit::gravity_20_20(unit::gravity_20_20, unit::apparent_attenuation)> {
        static constexpr facts about{.source = "trade shortcut: the attenuation taken of the gravity points",
                                     .status = evidence::derived,
                                     .use = "in the head",
                                     .note = "1.050 at 0.77 gives 1.0115 where plato gives 1.0111",
                                     .danger = detail::predicted_gravity};
        static constexpr input inputs[]{{"original_gravity"}, {"apparent_attenuation", only{0, 1.10}}};

        template <class T>
        static constexpr T formula(T original, T apparent_attenuation) {
            return 1.0 + (original - 1.0) * (1.0 - apparent_attenuation);
        }
    } points;
};
inline constexpr family<&final_gravity_models::plato> final_gravity{};

}  // namespace wortmath::attenuation
