#pragma once

#include "wortmath/liquor/carbonate_pk2.hpp"

namespace wortmath::liquor {

struct carbonate_pk1_models {
    static constexpr const char* question = "What is the first dissociation constant of carbonic acid (as pK)?";

    // Hot liquor and mash too.
    struct plummer_busenberg : model<struct plummer_busenberg, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "L. N. Plummer, E. Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011, as in the USGS PHREEQC data base",
                                     .status = evidence::secondary,
                                     .use = "any temperature from 0 to 90 degC",
                                     .accuracy = "0.0001 to the 6.352 that the data base stores for 25 degC",
                                     .note = "at infinite dilution; the source gives both steps together, from which the second is taken"};
        static constexpr input inputs[]{{"temperature", validated{0, 90}}};

        template <class T>
        static constexpr T formula(T t) {
            T both = let("both", detail::tabled_log_k(t, 464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9));
            return both - carbonate_pk2.plummer_busenberg.formula(t);
        }
    } plummer_busenberg;

    struct millero : model<struct millero, unit::ratio(unit::celsius)> {
        static constexpr facts about{.source = "F. J. Millero 1979, fresh water, as coded in the open-source PyCO2SYS",
                                     .status = evidence::secondary,
                                     .use = "to compare, up to 50 degC",
                                     .accuracy = "0.003 to plummer_busenberg up to 50 degC, 0.038 off at 90 degC",
                                     .note = "at infinite dilution; not for mash temperatures"};
        static constexpr input inputs[]{{"temperature", validated{0, 50}}};

        template <class T>
        static constexpr T formula(T t) {
            T absolute = let("T", t + constants::zero_celsius);
            return -(290.9097 - 14554.21 / absolute - 45.0575 * log(absolute)) / detail::ln_10;
        }
    } millero;
};
inline constexpr family<&carbonate_pk1_models::plummer_busenberg> carbonate_pk1{};

}  // namespace wortmath::liquor
