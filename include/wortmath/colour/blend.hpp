#pragma once

#include "wortmath/colour/grist_load.hpp"
#include "wortmath/model.hpp"

namespace wortmath::colour {

struct blend_models {
    static constexpr const char* question = "What colour has a mixture of beers?";

    struct beer_law : model<struct beer_law, unit::srm(list<unit::srm>, list<unit::litres>)> {
        static constexpr facts about{.source = "law of Beer; filtered beers dilute linearly: Benning, Lowater, Bailey-Hartsel, MBAA Tech. Q. 60(3), 2023 (abstract)",
                                     .status = evidence::secondary,
                                     .accuracy = "exact for clear liquids; hazy beer may follow a straight line to a wrong value",
                                     .note = "colours in EBC give EBC; not for degrees Lovibond and visual EBC units; contraction on mixing is neglected; volumes, not "
                                             "masses or degrees Plato, also of a concentrate"};
        static constexpr input inputs[]{{"colours"}, {"volumes"}};
        static constexpr const char* refusal = "needs as many volumes as colours, and together more than nothing";

        template <class T>
        static constexpr T formula(series<T> colours, series<T> volumes) {
            T total = T(0.0);
            for (T volume : volumes) total = total + volume;
            return select(total > 0.0, detail::sum_of_products(colours, volumes) / total, T(undefined));
        }
    } beer_law;
};
inline constexpr family<&blend_models::beer_law> blend{};

}  // namespace wortmath::colour
