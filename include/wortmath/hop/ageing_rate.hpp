#pragma once

#include "wortmath/model.hpp"

namespace wortmath::hop {

namespace detail {

// All of it lost in six months has no rate.
inline constexpr only loss_below_all{0, below(1)};

}  // namespace detail

struct ageing_rate_models {
    static constexpr const char* question = "At which rate per day do stored hops lose alpha acids, from the share lost in six months?";

    struct garetz : model<struct garetz, unit::per_day(unit::fraction)> {
        static constexpr facts about{.source = "M. Garetz, Brewing Techniques 2(1), 1994",
                                     .status = evidence::primary,
                                     .accuracy = "15, 35, 50, 65 % give 0.000903, 0.002393, 0.003851, 0.005832 per day",
                                     .note = "the loss of 180 days at 20 degC in air; typical 15 to 20 % for good keepers, 35 to 65 % for aroma varieties"};
        static constexpr input inputs[]{{"six_month_loss", detail::loss_below_all}};

        template <class T>
        static constexpr T formula(T six_month_loss) {
            return -log1p(-six_month_loss) / 180.0;
        }
    } garetz;
};
inline constexpr family<&ageing_rate_models::garetz> ageing_rate{};

}  // namespace wortmath::hop
