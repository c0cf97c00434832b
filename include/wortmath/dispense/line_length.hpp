#pragma once

#include "wortmath/dispense/line.hpp"
#include "wortmath/model.hpp"

namespace wortmath::dispense {

struct line_length_models {
    static constexpr const char* question = "How long must the beer line be to use up the pressure?";

    struct balance : model<struct balance, unit::metres(unit::gauge_pressure, unit::metres, unit::pressure_per_metre, unit::density, unit::pressure_step)> {
        static constexpr facts about{
            .source = "Brewers Association, Draught Beer Quality Manual",
            .status = evidence::secondary,
            .use = "a line of one bore between keg and tap",
            .note = "resistance as published, for about 60 mL/s (from memory): 3/16 in vinyl 3.0 psi/ft, 1/4 in vinyl 0.85, 5/16 in barrier 0.1, 3/8 in 0.07; "
                    "1 psi/ft is 0.2262 bar/m; German trade 7 mm 0.05 and 10 mm 0.01 bar/m; the trade's 0.5 psi/ft of lift is 0.438 rounded up"};
        static constexpr const char* refusal =
            "not enough pressure: the lift and the other drops take more than is applied, so that no length of line pours. Raise the pressure the beer needs "
            "by blending gas, or shorten the lift";
        static constexpr input inputs[]{{"applied_gauge_pressure"},
                                        {"lift"},
                                        {"resistance", only{above(0), no_limit}},
                                        {"beer_density", only{900, 1500}, otherwise{1010.0}},
                                        {"other_pressure_drop", otherwise{0.0}}};

        template <class T>
        static constexpr T formula(T applied, T lift, T resistance, T density, T other) {
            T length = (applied - detail::hydrostatic(density, lift) - other) / resistance;
            return select(length >= 0.0, length, undefined);
        }
    } balance;
};
inline constexpr family<&line_length_models::balance> line_length{};

}  // namespace wortmath::dispense
