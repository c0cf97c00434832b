#pragma once

#include "wortmath/model.hpp"

namespace wortmath::beer {
namespace detail {

inline constexpr double kj_per_kcal = 4.184;

}  // namespace detail

struct energy_models {
    static constexpr const char* question = "How much energy is in a kilogram of beer, from its analysis?";

    struct asbc_beer33 : model<struct asbc_beer33, unit::kilojoules_per_kilogram(unit::alcohol_by_mass, unit::real_extract, unit::fraction)> {
        static constexpr facts about{.source = "ASBC Methods of Analysis, Beer-33, as quoted in The Oxford Companion to Beer",
                                     .status = evidence::secondary,
                                     .use = "an analysed beer",
                                     .note =
                                         "printed in kcal per 100 g. Times the beer density in kg/m3 over 1000 it is kJ/L; 24.495 A + 14.2 (n - 0.1) kcal per "
                                         "12 US fluid ounces is the same formula. An estimate: people who dose medicine by energy or carbohydrate (diabetes) "
                                         "must not rely on it, and it says nothing about gluten or allergens"};
        static constexpr input inputs[]{{"alcohol_by_mass"}, {"real_extract"}, {"ash", otherwise{0.001}}};

        template <class T>
        static constexpr T formula(T alcohol, T real, T ash) {
            T kilocalories_per_100_g = 6.9 * alcohol + 4.0 * (real - 100.0 * ash);
            return 10.0 * detail::kj_per_kcal * kilocalories_per_100_g;
        }
    } asbc_beer33;
};
inline constexpr family<&energy_models::asbc_beer33> energy{};

}  // namespace wortmath::beer
