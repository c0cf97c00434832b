#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"
#include "wortmath/thermal/constants.hpp"

namespace wortmath::mash {

// The heat of a litre-based mash in the trade's thumb rule: 0.2 US quart of water per pound of malt, in L/kg.
inline constexpr double palmer_malt_heat = 0.2 * (constants::l_per_us_gal / 4.0) / (constants::g_per_lb / 1000.0);

struct strike_models {
    static constexpr const char* question = "How hot must the water be for the mash to reach its temperature?";

    // The full balance, in mass.
    struct enthalpy : model<struct enthalpy, unit::celsius(unit::ratio, unit::celsius, unit::celsius, unit::ratio, unit::kilojoules_per_kilogram,
                                                           unit::kilojoules_per_kilogram_kelvin, unit::celsius)> {
        static constexpr facts about{
            .source =
                "first law; R. Barth, MBAA Technical Quarterly 61(1) 2024, derives the same kind of exact balance with enthalpy of hydration "
                "(abstract read)",
            .status = evidence::derived,
            .use = "any mash or steep: water by mass, with or without slaking heat and a cold tun",
            .note =
                "slaking heat and tun are 0 by default on purpose: in small tuns the rise from wetting (1 to 1.5 K) and the heat taken by tun and "
                "air are of one size and opposite sign, so give both or neither; mash.slaking_heat supplies the first. Water measured hot by "
                "volume is 2 to 3 % lighter. An answer above the boiling point means: mash too thick or tun too cold for one infusion"};
        static constexpr input inputs[]{{"mass_ratio", validated{1.5, 40}, possible{above(0), no_limit}},
                                        {"grain_temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"malt_heat", validated{0.35, 0.45}, possible{above(0), no_limit}, otherwise{0.40}},
                                        {"slaking_heat", only{0, no_limit}, otherwise{0.0}},
                                        {"tun_specific_heat", validated{0, 2}, possible{0, no_limit}, otherwise{0.0}},
                                        {"tun_temperature", validated{0, 100}, otherwise{20.0}}};

        template <class T>
        static constexpr T formula(T R, T Tg, T T2, T S, T q, T C_tun, T T_tun) {
            return T2 + (S * (T2 - Tg) + (C_tun * (T2 - T_tun) - q) / thermal::heat_of_water) / R;
        }
    } enthalpy;

    // The home brewer's rule, kept so that old recipes can be repeated.
    struct palmer : model<struct palmer, unit::celsius(unit::litres_per_kilogram, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "J. J. Palmer, How to Brew, chapter 16",
                                     .status = evidence::secondary,
                                     .use = "to repeat a recipe worked with the rule of 0.2 quart per pound",
                                     .accuracy = "the printed example (1 qt/lb, 65 to 130 degF: 143 degF) is met exactly",
                                     .note =
                                         "equals the balance with a malt heat of 0.417 of that of water; water measured hot by volume is 2 to 3 "
                                         "% lighter"};
        static constexpr input inputs[]{{"mash_ratio", validated{1.5, 8}, possible{above(0), no_limit}},
                                        {"grain_temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}}};

        template <class T>
        static constexpr T formula(T r, T T1, T T2) {
            return palmer_malt_heat / r * (T2 - T1) + T2;
        }
    } palmer;
};
inline constexpr family<&strike_models::enthalpy> strike{};

}  // namespace wortmath::mash
