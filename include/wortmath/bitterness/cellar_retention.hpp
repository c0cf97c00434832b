#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct cellar_retention_models {
    static constexpr const char* question = "How much of the bitterness of the wort is left in the filtered beer?";

    struct justus_2018 : model<struct justus_2018, unit::bitterness_units(unit::bitterness_units, unit::fraction)> {
        static constexpr facts about{.source = "A. Justus, MBAA Technical Quarterly 55(3) (2018) 67-74, abstract and summary",
                                     .status = evidence::secondary,
                                     .use = "bitterness measured or computed in the wort; retention for your own cellar",
                                     .accuracy = "mean loss of 33.7 % in one brewery; yeast alone moved one wort from 13.4 to 16.9 BU",
                                     .note = "never on the result of an empirical utilisation, which contains this loss already"};
        static constexpr input inputs[]{{"wort_bitterness", detail::amount}, {"retention", otherwise{0.663}}};

        template <class T>
        static constexpr T formula(T wort_bitterness, T retention) {
            return retention * wort_bitterness;
        }
    } justus_2018;
};
inline constexpr family<&cellar_retention_models::justus_2018> cellar_retention{};

}  // namespace wortmath::bitterness
