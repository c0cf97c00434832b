#pragma once

#include "wortmath/hop/ageing.hpp"

namespace wortmath::hop {

struct ageing_initial_alpha_models {
    static constexpr const char* question = "How much alpha acids did hops hold before storage, from what they hold today?";

    struct garetz_storage : model<struct garetz_storage, unit::alpha_acids(unit::alpha_acids, unit::fraction, unit::celsius, unit::ratio, unit::days)> {
        static constexpr facts about{.source = "M. Garetz, Brewing Techniques 2(1), 1994; the product form and the factors 0.75 and 0.5 recalled",
                                     .status = evidence::memory,
                                     .accuracy = "the exact inverse of hop.ageing",
                                     .note = "misprint of the appendix: A0 = AN*100/(100*lost) is printed where 100/(100 - lost) is meant, which is used"};
        static constexpr input inputs[]{{"alpha"},
                                        {"six_month_loss", detail::loss_below_all},
                                        {"temperature", detail::storage_temperature, detail::any_storage_temperature},
                                        {"storage_factor", only{0, 1}},
                                        {"storage_days", bitterness::detail::amount}};

        template <class T>
        static constexpr T formula(T alpha, T six_month_loss, T temperature, T storage_factor, T storage_days) {
            return alpha * exp(detail::ageing_exponent(six_month_loss, temperature, storage_factor, storage_days));
        }
    } garetz_storage;
};
inline constexpr family<&ageing_initial_alpha_models::garetz_storage> ageing_initial_alpha{};

}  // namespace wortmath::hop
