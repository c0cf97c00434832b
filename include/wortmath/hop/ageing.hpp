#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/hop/ageing_rate.hpp"
#include "wortmath/hop/ageing_temperature_factor.hpp"

namespace wortmath::hop {

namespace detail {

// How many times the logarithm of the alpha acids has fallen by one.
template <class T>
constexpr T ageing_exponent(T six_month_loss, T temperature, T storage_factor, T storage_days) {
    T k = let("k", ageing_rate.garetz.formula(six_month_loss));
    T TF = let("TF", ageing_temperature_factor.garetz.formula(temperature));
    return k * TF * storage_factor * storage_days;
}

}  // namespace detail

struct ageing_models {
    static constexpr const char* question = "How much alpha acids is left in hops after storage?";

    struct garetz_storage : model<struct garetz_storage, unit::alpha_acids(unit::alpha_acids, unit::fraction, unit::celsius, unit::ratio, unit::days)> {
        static constexpr facts about{
            .source = "M. Garetz, Brewing Techniques 2(1), 1994; the product form and the factors 0.75 and 0.5 recalled",
            .status = evidence::memory,
            .use = "storage_factor 1 in air, 0.75 sealed with air inside, 0.5 in a barrier under vacuum or inert gas",
            .accuracy =
                "measured losses overlap with the model's, no more: 64 to 88 % in 12 months in air at 20 degC (here 58 to 88), 10 to 35 % in 2 years "
                "at 4 degC without air (here 15 to 64)",
            .note = "first order is approximate: a lag of 3 to 6 months at 5 degC is reported"};
        static constexpr input inputs[]{{"alpha"},
                                        {"six_month_loss", detail::loss_below_all},
                                        {"temperature", detail::storage_temperature, detail::any_storage_temperature},
                                        {"storage_factor", only{0, 1}},
                                        {"storage_days", bitterness::detail::amount}};

        template <class T>
        static constexpr T formula(T alpha, T six_month_loss, T temperature, T storage_factor, T storage_days) {
            return alpha * exp(-detail::ageing_exponent(six_month_loss, temperature, storage_factor, storage_days));
        }
    } garetz_storage;
};
inline constexpr family<&ageing_models::garetz_storage> ageing{};

}  // namespace wortmath::hop
