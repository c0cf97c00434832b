#pragma once

#include "wortmath/model.hpp"

namespace wortmath::colour {

struct labelled_extract_models {
    static constexpr const char* question = "What colour does a malt extract bring whose label states a colour at a stated strength?";

    struct beer_law : model<struct beer_law, unit::srm(unit::srm, unit::kilograms_per_litre, unit::grams, unit::litres)> {
        static constexpr facts about{.source = "law of Beer; strengths met on labels",
                                     .status = evidence::derived,
                                     .note = "label_concentration is kg of the product (syrup or powder) per litre of the solution that was measured, and an unknown "
                                             "one is a factor of ten: 1 (a kit supplier's rule), 0.1 (10 % weight per volume; 0.103 for 10 % by mass), at 8 degP "
                                             "0.103 for syrup and 0.085 for powder, at 10 degP 0.130 and 0.107; a label in EBC gives EBC; no storage, no boil; the "
                                             "result may be added to a colour from from_grist.congress, not to one from an empirical fit"};
        static constexpr input inputs[]{{"label_colour"},
                                        {"label_concentration", possible{above(0), no_limit}},
                                        {"mass"},
                                        {"volume", possible{above(0), no_limit}}};

        template <class T>
        static constexpr T formula(T label_colour, T label_concentration, T mass, T volume) {
            return label_colour * (mass / 1000.0 / volume) / label_concentration;
        }
    } beer_law;
};
inline constexpr family<&labelled_extract_models::beer_law> labelled_extract{};

}  // namespace wortmath::colour
