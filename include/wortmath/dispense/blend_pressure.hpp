#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::dispense {

struct blend_pressure_models {
    static constexpr const char* question = "What gauge pressure of a gas blend replaces a pressure of pure carbon dioxide?";

    struct partial_pressure : model<struct partial_pressure, unit::gauge_pressure(unit::gauge_pressure, unit::fraction, unit::pressure)> {
        static constexpr facts about{
            .source = "the definition in the Brewers Association's Draught Beer Quality Manual",
            .status = evidence::derived,
            .use = "blends of carbon dioxide and nitrogen, as ideal gases",
            .note = "the share multiplies the absolute pressure, never the gauge: 30 psi gauge of a 70 % blend acts like 16.6 psi of pure gas, not 21",
            .danger = "a small share asks for more than any keg is made for (0.8 bar and 25 % make 6.2 bar): put the result through package.caution, keg, "
                      "before it becomes a setting; above that, this blend cannot hold this carbonation"};
        static constexpr const char* refusal =
            "a gauge pressure of the pure gas this low leaves no carbon dioxide at this barometer: check the sign and the unit";
        static constexpr input inputs[]{{"pure_co2_gauge_pressure"},
                                        {"co2_fraction", only{above(0), 1}},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T pure, T share, T barometer) {
            T absolute = pure + barometer;
            return select(absolute > 0.0, absolute / share - barometer, undefined);
        }
    } partial_pressure;
};
inline constexpr family<&blend_pressure_models::partial_pressure> blend_pressure{};

}  // namespace wortmath::dispense
