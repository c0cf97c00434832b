#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/priming/sugar.hpp"

namespace wortmath::priming {

struct sugar_yield_models {
    static constexpr const char* question = "How many grams of carbon dioxide does one gram of priming sugar give?";

    // The most that the sugar holds.
    struct stoichiometric : model<struct stoichiometric, unit::mass_share(word::sugar)> {
        static constexpr facts about{
            .source = "the equation of fermentation and the molar masses",
            .status = evidence::derived,
            .use = "pure sugars",
            .accuracy = "real yields are 0.90 (Balling, growing yeast) to 0.96 (M. Hibberd's rule) of it",
            .note = "ask which corn sugar: monohydrate and anhydrous glucose differ by 10 %; brewer's yeast does not ferment lactose",
            .danger = "a yield too low asks for too much sugar and hides gas: a hazard run takes all of this yield, without an efficiency"};
        static constexpr input inputs[]{{"sugar"}};

        template <class T>
        static constexpr T formula(word::sugar sugar) {
            return T(detail::moles_per_gram(sugar) * wortmath::carbonation::detail::g_per_mol_co2);
        }
    } stoichiometric;

    struct malt_extract : model<struct malt_extract, unit::mass_share(unit::fraction, unit::attenuation)> {
        static constexpr facts about{
            .source = "C. J. N. Balling's yield of CO2",
            .status = evidence::derived,
            .use = "malt extract whose solids and attenuation its maker or a test gives",
            .note = "the attenuation is the share of the extract that ferments, as attenuation.real_attenuation.asbc gives it (the plain kind is 2 to "
                    "5 % lower); solids about 0.96 dry, attenuation 0.60 to 0.68 (both from memory): 0.27 to 0.30 g/g",
            .danger = "Balling's yield counts the growth of yeast, without it there is 1.13 times as much gas: a hazard run takes that"};
        static constexpr input inputs[]{{"solids"}, {"real_attenuation", only{0, 1}}};

        template <class T>
        static constexpr T formula(T solids, T attenuation) {
            return solids * attenuation * wortmath::carbonation::detail::g_co2_per_g_extract;
        }
    } malt_extract;
};
inline constexpr family<&sugar_yield_models::stoichiometric> sugar_yield{};

}  // namespace wortmath::priming
