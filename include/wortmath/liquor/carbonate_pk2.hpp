#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::liquor {

namespace detail {
inline constexpr double ln_10 = 2.302585092994045684;

// log10 K = A + B T + C/T + D log10 T + E/T^2, the form of the USGS data base.
template <class T>
constexpr T tabled_log_k(T t, double A, double B, double C, double D, double E) {
    T absolute = let("T", t + constants::zero_celsius);
    return A + B * absolute + C / absolute + D * (log(absolute) / ln_10) + E / square(absolute);
}
}  // namespace detail

struct carbonate_pk2_models {
    static constexpr const char* question = "What is the second dissociation constant of carbonic acid (as pK)?";

    // Hot liquor and mash too.
    struct plummer_busenberg : model<struct plummer_busenberg, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "L. N. Plummer, E. Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011, as in the USGS PHREEQC data base",
                                     .status = evidence::secondary,
                                     .use = "any temperature from 0 to 90 degC",
                                     .accuracy = "0.0001 to the 10.329 that the data base stores for 25 degC",
                                     .note = "at infinite dilution"};
        static constexpr input inputs[]{{"temperature", validated{0, 90}}};

        template <class T>
        static constexpr T formula(T t) {
            return detail::tabled_log_k(t, 107.8871, 0.03252849, -5151.79, -38.92561, 563713.9);
        }
    } plummer_busenberg;

    struct millero : model<struct millero, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "F. J. Millero 1979, fresh water, as coded in the open-source PyCO2SYS",
                                     .status = evidence::secondary,
                                     .use = "to compare, up to 50 degC",
                                     .accuracy = "0.003 to plummer_busenberg up to 50 degC",
                                     .note = "at infinite dilution; not for mash temperatures"};
        static constexpr input inputs[]{{"temperature", validated{0, 50}}};

        template <class T>
        static constexpr T formula(T t) {
            T absolute = let("T", t + constants::zero_celsius);
            return -(207.6548 - 11843.79 / absolute - 33.6485 * log(absolute)) / detail::ln_10;
        }
    } millero;
};
inline constexpr family<&carbonate_pk2_models::plummer_busenberg> carbonate_pk2{};

}  // namespace wortmath::liquor
