#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::dispense {

struct blend_fraction_models {
    static constexpr const char* question = "What share of carbon dioxide must a gas blend have?";

    struct partial_pressure : model<struct partial_pressure, unit::fraction(unit::gauge_pressure, unit::gauge_pressure, unit::pressure)> {
        static constexpr facts about{
            .source = "the definition in the Brewers Association's Draught Beer Quality Manual",
            .status = evidence::derived,
            .use = "blends of carbon dioxide and nitrogen, as ideal gases",
            .note = "the share multiplies the absolute pressure, never the gauge",
            .danger = "put the pressure of the blend through package.caution, keg, before it becomes a setting; a detector for carbon dioxide does not see "
                      "nitrogen, an oxygen monitor does"};
        static constexpr const char* refusal =
            "no blend does that: its pressure is below that of the pure gas (or one of them is below zero absolute), and the share would not lie between 0 "
            "and 1";
        static constexpr input inputs[]{{"pure_co2_gauge_pressure"},
                                        {"blend_gauge_pressure"},
                                        {"barometer", only{0.5, 1.1}, otherwise{constants::bar_per_atm}}};

        template <class T>
        static constexpr T formula(T pure, T blend, T barometer) {
            T share = (pure + barometer) / (blend + barometer);
            return select(pure + barometer > 0.0, select(pure <= blend + 1e-12, least(T(1.0), share), undefined), undefined);
        }
    } partial_pressure;
};
inline constexpr family<&blend_fraction_models::partial_pressure> blend_fraction{};

}  // namespace wortmath::dispense
