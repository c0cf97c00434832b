#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::room {

struct co2_release_models {
    static constexpr const char* question = "How much carbon dioxide does a fermentation give off?";

    struct balling : model<struct balling, unit::grams_per_litre(unit::original_extract, unit::density, unit::attenuation)> {
        static constexpr facts about{
            .source = "C. J. N. Balling's yield of CO2",
            .status = evidence::derived,
            .use = "a whole fermentation, in grams per litre of wort",
            .note = "the attenuation is the share of the extract that ferments, as attenuation.real_attenuation.asbc gives it; 12 degP and 0.66 make 38.43 g/L, "
                    "21 litres of gas per litre of wort at 20 degC",
            .danger = "the gas lies in pits and cellars and gives no warning. The plain real attenuation gives 1.6 to 4.6 % too little from 8 to 25 degP"};
        static constexpr input inputs[]{{"original_extract", only{0, 80}}, {"density", only{900, 1500}}, {"real_attenuation", only{0, 1}}};

        template <class T>
        static constexpr T formula(T original, T density, T attenuation) {
            return 10.0 * original * (density / 1000.0) * attenuation * carbonation::detail::g_co2_per_g_extract;
        }
    } balling;
};
inline constexpr family<&co2_release_models::balling> co2_release{};

}  // namespace wortmath::room
