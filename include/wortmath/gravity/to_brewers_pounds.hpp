#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct to_brewers_pounds_models {
    static constexpr const char* question = "How many brewers' pounds per barrel is a specific gravity?";

    struct definition : model<struct definition, unit::brewers_pounds(unit::gravity_60F_60F)> {
        static constexpr facts about{
            .source = "A Practical Treatise on Brewing, 4th edition: a barrel of 36 imperial gallons holds 360 lb of water",
            .status = evidence::secondary,
            .use = "old British recipes and brewing books",
            .accuracy = "exact by definition",
            .note = "the pounds by which a barrel of wort outweighs a barrel of water, not pounds of extract; one is 2.778 points; also called degrees Long"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 360.0 * (S - 1.0);
        }
    } definition;
};
inline constexpr family<&to_brewers_pounds_models::definition> to_brewers_pounds{};

}  // namespace wortmath::gravity
