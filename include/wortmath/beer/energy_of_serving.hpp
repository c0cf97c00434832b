#pragma once

#include "wortmath/beer/energy.hpp"

namespace wortmath::beer {

struct energy_of_serving_models {
    static constexpr const char* question = "How much energy is in a serving of 355 mL, from original and final gravity?";

    struct hall : model<struct hall, unit::kilojoules(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{.source = "M. L. Hall, Zymurgy 18(2), Summer 1995, p. 54",
                                     .status = evidence::memory,
                                     .use = "two gravities and no analysis",
                                     .accuracy = "1 % above asbc_beer33 at 1.050, 3.5 % at 1.080",
                                     .note =
                                         "printed in kcal per 12 US fluid ounces. An estimate: people who dose medicine by energy or carbohydrate (diabetes) "
                                         "must not rely on it, and it says nothing about gluten or allergens"};
        static constexpr input inputs[]{{"original_gravity"}, {"final_gravity"}};
        static constexpr const char* refusal = "the final gravity is above the original gravity: nothing can have fermented; check which reading is which";

        template <class T>
        static constexpr T formula(T original, T final) {
            T from_alcohol = 1881.22 * final * (original - final) / (1.775 - original);
            T from_extract = 3550.0 * final * (0.1808 * original + 0.8192 * final - 1.0004);
            return select(final <= original, detail::kj_per_kcal * (from_alcohol + from_extract), undefined);
        }
    } hall;
};
inline constexpr family<&energy_of_serving_models::hall> energy_of_serving{};

}  // namespace wortmath::beer
