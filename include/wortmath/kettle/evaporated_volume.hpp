#pragma once

#include "wortmath/model.hpp"

namespace wortmath::kettle {

struct evaporated_volume_models {
    static constexpr const char* question = "How many litres boil off, by the share of the start that is lost in an hour?";

    // The trade's habit; the rate in g/h of kettle.evaporation can be carried from one batch to another, this one cannot.
    struct percent_of_start : model<struct percent_of_start, unit::litres(unit::litres, unit::per_hour, unit::hours)> {
        static constexpr facts about{.source = "common practice, no source; from memory",
                                     .status = evidence::memory,
                                     .accuracy =
                                         "published shares: more than 0.10 per hour (traditional direct-fired copper), about 0.14 (small "
                                         "kettles), 0.04 to 0.10 (modern plant, from memory)",
                                     .note = "a share of the starting volume per hour: 0.10, not 10. It cannot be carried to another batch size"};
        static constexpr input inputs[]{{"volume"}, {"boil_off"}, {"hours"}};
        static constexpr const char* refusal = "more would boil off than there is; boil_off is a share of the start per hour (0.10, not 10)";

        template <class T>
        static constexpr T formula(T V, T boil_off, T hours) {
            return select(boil_off * hours > 1.0, undefined, V * boil_off * hours);
        }
    } percent_of_start;
};
inline constexpr family<&evaporated_volume_models::percent_of_start> evaporated_volume{};

}  // namespace wortmath::kettle
