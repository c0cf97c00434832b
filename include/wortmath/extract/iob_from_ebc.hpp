#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct iob_from_ebc_models {
    static constexpr const char* question = "What potential by the hot-water mash of the Institute of Brewing belongs to an extract yield "
                                            "by the congress mash?";

    // A straight line between two laboratory mashes.
    struct linear : model<struct linear, unit::litre_degrees_per_kilogram(unit::fraction)> {
        static constexpr facts about{.source = "a maltster's page",
                                     .status = evidence::secondary,
                                     .use = "to read a British malt analysis beside a European one",
                                     .accuracy = "called an approximation by its source",
                                     .note = "both sides as-is, or both dry"};
        static constexpr input inputs[]{{"extract_yield", only{0.60, 0.90}}};

        template <class T>
        static constexpr T formula(T e) {
            return (100.0 * e - 1.705) / 0.2586;
        }
    } linear;
};
inline constexpr family<&iob_from_ebc_models::linear> iob_from_ebc{};

}  // namespace wortmath::extract
