#pragma once

#include "wortmath/colour/tristimulus_sum.hpp"

namespace wortmath::colour {

struct tristimulus_from_transmittance_models {
    static constexpr const char* question = "What are the tristimulus values of a sample whose transmittance was measured at every wavelength?";

    struct table_5nm : model<struct table_5nm, xyz(list<unit::fraction>, word::illuminant, word::observer)> {
        static constexpr facts about{.source = "CIE 15:2004 and ASTM E308-22: plain sum over the tables every 5 nm from 380 to 780 nm",
                                     .status = evidence::secondary,
                                     .use = "a scanned spectrum: this beer instead of an average one",
                                     .note = "81 shares of light, measured through the path that is meant, at 380, 385, 390 ... 780 nm"};
        static constexpr input inputs[]{{"transmittances", validated{0, 1}, possible{0, no_limit}},
                                        {"illuminant", otherwise{word::illuminant::d65}},
                                        {"observer", otherwise{word::observer::cie_1931}}};
        static constexpr std::size_t elements = detail::cie_rows;
        static constexpr const char* refusal = "needs 81 transmittances, one at every 5 nm from 380 to 780 nm";

        template <class T>
        static constexpr several<T, 3> formula(series<T> transmittances, word::illuminant i, word::observer o) {
            if (transmittances.size() != elements) return {{T(undefined), T(undefined), T(undefined)}};
            return detail::tristimulus_sum<5, T>(detail::table_of(i), detail::table_of(o), [&](std::size_t row) -> T { return transmittances[row]; });
        }
    } table_5nm;
};
inline constexpr family<&tristimulus_from_transmittance_models::table_5nm> tristimulus_from_transmittance{};

}  // namespace wortmath::colour
