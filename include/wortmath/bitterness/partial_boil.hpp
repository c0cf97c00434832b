#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct partial_boil_models {
    static constexpr const char* question = "What is left of the bitterness when a concentrated wort is topped up?";

    struct dilution : model<struct dilution, unit::bitterness_units(unit::bitterness_units, unit::litres, unit::litres)> {
        static constexpr facts about{
            .source = "dilution",
            .status = evidence::derived,
            .accuracy =
                "the dilution is exact; the gravity terms before it are doubtful: a full and a concentrated boil were measured at 66 and 61 BU "
                "(2010), ratio 0.92, where they predict 0.61 (tinseth) to 0.82 (rager)",
            .note = "take the utilisation at the gravity in the kettle, dose over the kettle volume, then dilute"};
        static constexpr input inputs[]{{"kettle_bitterness", detail::amount}, {"kettle_volume", detail::some}, {"final_volume", detail::some}};
        static constexpr const char* refusal =
            "the final volume is smaller than the kettle volume, so nothing was topped up: give the volume after the water went in last";

        template <class T>
        static constexpr T formula(T kettle_bitterness, T kettle_volume, T final_volume) {
            return select(final_volume >= kettle_volume, kettle_bitterness * kettle_volume / final_volume, undefined);
        }
    } dilution;
};
inline constexpr family<&partial_boil_models::dilution> partial_boil{};

}  // namespace wortmath::bitterness
