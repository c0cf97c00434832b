#pragma once

#include "wortmath/carbonation/second_virial.hpp"

namespace wortmath::carbonation {

struct compressibility_models {
    static constexpr const char* question = "What volume does carbon dioxide take, as a share of that of an ideal gas?";

    struct virial : model<struct virial, unit::ratio(unit::celsius, unit::pressure)> {
        static constexpr facts about{.source = "R. F. Weiss, Marine Chemistry 2 (1974) 203",
                                     .status = evidence::secondary,
                                     .use = "the gas in a headspace",
                                     .note = "the pressure is that of the CO2 alone"};
        static constexpr input inputs[]{{"temperature", validated{0, 60}, possible{-5, 80}},
                                        {"co2_pressure", validated{0, 15}, possible{0, 30}}};

        template <class T>
        static constexpr T formula(T t, T p) {
            return 1.0 + detail::virial_per_bar(t) * p;
        }
    } virial;
};
inline constexpr family<&compressibility_models::virial> compressibility{};

}  // namespace wortmath::carbonation
