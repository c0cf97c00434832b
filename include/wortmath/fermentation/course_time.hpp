#pragma once

#include "wortmath/model.hpp"

namespace wortmath::fermentation {

struct course_time_models {
    static constexpr const char* question = "When will a given share of the drop in gravity be done?";

    // The course of fermentation.course.logistic, solved for the time.
    struct logistic : model<struct logistic, unit::hours(unit::fraction, unit::per_hour, unit::hours)> {
        static constexpr facts about{.source = "inverse of fermentation.course.logistic",
                                     .status = evidence::memory,
                                     .note = "the time can be negative: the curve has a tail before the pitch too",
                                     .danger =
                                         "it describes readings and does not prove that fermentation has ended: beer bottled early can burst "
                                         "its bottles"};
        static constexpr input inputs[]{{"progress", only{above(0), below(1)}}, {"rate", only{above(0), no_limit}}, {"midpoint_hours"}};

        template <class T>
        static constexpr T formula(T f, T rate, T midpoint) {
            return midpoint + log(f / (1.0 - f)) / rate;
        }
    } logistic;
};
inline constexpr family<&course_time_models::logistic> course_time{};

}  // namespace wortmath::fermentation
