#pragma once

#include "wortmath/liquor/carbonate_pk2.hpp"

namespace wortmath::liquor {

struct water_pk_models {
    static constexpr const char* question = "What is the ion product of water (as pK)?";

    struct harned_owen : model<struct harned_owen, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "F. J. Millero 1979 after Harned and Owen 1958, as coded in the open-source PyCO2SYS",
                                     .status = evidence::secondary,
                                     .accuracy = "0.005 below the IAPWS release at 0 and 60 degC",
                                     .note = "at infinite dilution. Codes for sea water carry 148.9652 for 148.9802: a change of pH scale, not of water"};
        static constexpr input inputs[]{{"temperature", validated{0, 60}}};

        template <class T>
        static constexpr T formula(T t) {
            T absolute = let("T", t + constants::zero_celsius);
            return -(148.9802 - 13847.26 / absolute - 23.6521 * log(absolute)) / detail::ln_10;
        }
    } harned_owen;
};
inline constexpr family<&water_pk_models::harned_owen> water_pk{};

}  // namespace wortmath::liquor
