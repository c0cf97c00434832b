#pragma once

#include "wortmath/dispense/line.hpp"
#include "wortmath/model.hpp"

namespace wortmath::dispense {

struct line_pressure_models {
    static constexpr const char* question = "What gauge pressure pushes the beer through its line?";

    struct balance : model<struct balance, unit::gauge_pressure(unit::metres, unit::metres, unit::pressure_per_metre, unit::density, unit::pressure_step)> {
        static constexpr facts about{
            .source = "Brewers Association, Draught Beer Quality Manual",
            .status = evidence::secondary,
            .use = "a line of one bore between keg and tap",
            .note = "resistance as published, for about 60 mL/s (from memory): 3/16 in vinyl 3.0 psi/ft, 1/4 in vinyl 0.85, 5/16 in barrier 0.1, 3/8 in 0.07; "
                    "1 psi/ft is 0.2262 bar/m; German trade 7 mm 0.05 and 10 mm 0.01 bar/m; the trade's 0.5 psi/ft of lift is 0.438 rounded up",
            .danger = "a long line asks for more than a keg is made for: put the result through package.caution before it becomes a setting"};
        static constexpr input inputs[]{{"length", only{0, no_limit}},
                                        {"lift"},
                                        {"resistance"},
                                        {"beer_density", only{900, 1500}, otherwise{1010.0}},
                                        {"other_pressure_drop", otherwise{0.0}}};

        template <class T>
        static constexpr T formula(T length, T lift, T resistance, T density, T other) {
            return length * resistance + detail::hydrostatic(density, lift) + other;
        }
    } balance;
};
inline constexpr family<&line_pressure_models::balance> line_pressure{};

}  // namespace wortmath::dispense
