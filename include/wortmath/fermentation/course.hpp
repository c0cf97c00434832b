#pragma once

#include "wortmath/model.hpp"

namespace wortmath::fermentation {

struct course_models {
    static constexpr const char* question = "What does the hydrometer read after some hours of fermentation?";

    // Describes readings that the brewer has taken; fits by least squares.
    struct logistic : model<struct logistic, unit::any(unit::hours, unit::any, unit::any, unit::per_hour, unit::hours)> {
        static constexpr facts about{
            .source =
                "the four-parameter logistic of the ASBC method Yeast-14 and of Speers and co-workers; its use confirmed in Fermentation "
                "7(1):13, 2021, the algebra recalled",
            .status = evidence::memory,
            .note =
                "any gravity scale, one throughout; the reading at 0 h is not exactly `start`. Some papers carry the opposite sign of the rate. A fit "
                "needs readings on both sides of the midpoint, or the end is not determined",
            .danger = "it describes readings and does not prove that fermentation has ended: beer bottled early can burst its bottles"};
        static constexpr input inputs[]{{"hours"}, {"start"}, {"end"}, {"rate", only{above(0), no_limit}}, {"midpoint_hours"}};

        template <class T>
        static constexpr T formula(T t, T start, T end, T rate, T midpoint) {
            return end + (start - end) / (1.0 + exp(rate * (t - midpoint)));
        }
    } logistic;
};
inline constexpr family<&course_models::logistic> course{};

}  // namespace wortmath::fermentation
