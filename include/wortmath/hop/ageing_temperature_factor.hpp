#pragma once

#include "wortmath/model.hpp"

namespace wortmath::hop {

namespace detail {

inline constexpr validated storage_temperature{-30, 20};
inline constexpr possible any_storage_temperature{-273.15, 130};

}  // namespace detail

struct ageing_temperature_factor_models {
    static constexpr const char* question = "By what factor does the temperature change the ageing of stored hops, relative to 20 degC?";

    struct garetz : model<struct garetz, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "M. Garetz, Brewing Techniques 2(1), 1994",
                                     .status = evidence::primary,
                                     .accuracy = "half for each 15 degC: 0.4774 at 4, 0.3969 at 0, 0.1727 at -18 degC",
                                     .note = "given up to 20 degC"};
        static constexpr input inputs[]{{"temperature", detail::storage_temperature, detail::any_storage_temperature}};

        template <class T>
        static constexpr T formula(T temperature) {
            return power(0.5, (20.0 - temperature) / 15.0);
        }
    } garetz;
};
inline constexpr family<&ageing_temperature_factor_models::garetz> ageing_temperature_factor{};

}  // namespace wortmath::hop
