#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct from_brewers_pounds_models {
    static constexpr const char* question = "Which specific gravity is a number of brewers' pounds per barrel?";

    struct definition : model<struct definition, unit::gravity_60F_60F(unit::brewers_pounds)> {
        static constexpr facts about{
            .source = "A Practical Treatise on Brewing, 4th edition: a barrel of 36 imperial gallons holds 360 lb of water",
            .status = evidence::secondary,
            .use = "old British recipes and brewing books",
            .accuracy = "exact by definition",
            .note = "the pounds by which a barrel of wort outweighs a barrel of water, not pounds of extract; one is 2.778 points; also called degrees Long"};
        // where the gravity lies between 0.990 and 1.35, and between 0.95 and 1.50
        static constexpr input inputs[]{
            {"brewers_pounds", validated{360.0 * (0.990 - 1.0), 360.0 * (1.35 - 1.0)}, possible{360.0 * (0.95 - 1.0), 360.0 * (1.50 - 1.0)}}};

        template <class T>
        static constexpr T formula(T brewers_pounds) {
            return 1.0 + brewers_pounds / 360.0;
        }
    } definition;
};
inline constexpr family<&from_brewers_pounds_models::definition> from_brewers_pounds{};

}  // namespace wortmath::gravity
