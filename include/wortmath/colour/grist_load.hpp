#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::colour {

namespace detail {
// Colour times mass, summed; lists of unequal length have no sum.
template <class T>
constexpr T sum_of_products(series<T> colours, series<T> amounts) {
    if (colours.size() != amounts.size()) return T(undefined);
    T sum = T(0.0);
    for (std::size_t i = 0; i < colours.size(); ++i) sum = sum + colours[i] * amounts[i];
    return sum;
}
}  // namespace detail

struct grist_load_models {
    static constexpr const char* question = "How much malt colour goes into how much wort?";

    // The load that from_grist asks for: degL times pounds per US gallon.
    struct mcu : model<struct mcu, unit::mcu(list<unit::lovibond>, list<unit::grams>, unit::litres)> {
        static constexpr facts about{.source = "definition used in D. A. Morey, letter \"Beer's Law\", BrewingTechniques",
                                     .status = evidence::secondary,
                                     .use = "before from_grist",
                                     .note = "the volume is the finished wort in the fermenter, not in the kettle; sugar and other colourless extract count as 0; "
                                             "for malt extract see labelled_extract"};
        static constexpr input inputs[]{{"lovibonds"}, {"masses"}, {"volume", possible{above(0), no_limit}}};
        static constexpr const char* refusal = "needs as many masses as colours: one of each for every malt";

        template <class T>
        static constexpr T formula(series<T> lovibonds, series<T> masses, T volume) {
            return detail::sum_of_products(lovibonds, masses) / constants::g_per_lb / (volume / constants::l_per_us_gal);
        }
    } mcu;

    struct si : model<struct si, unit::colour_load(list<unit::lovibond>, list<unit::grams>, unit::litres)> {
        static constexpr facts about{.source = "definition: colour times kilograms, per litre",
                                     .status = evidence::derived,
                                     .use = "metric work; malt colours in EBC give EBC kg/L; mcu_from_load comes before from_grist",
                                     .note = "the volume is the finished wort in the fermenter, not in the kettle; sugar and other colourless extract count as 0; "
                                             "for malt extract see labelled_extract"};
        static constexpr input inputs[]{{"lovibonds"}, {"masses"}, {"volume", possible{above(0), no_limit}}};
        static constexpr const char* refusal = "needs as many masses as colours: one of each for every malt";

        template <class T>
        static constexpr T formula(series<T> lovibonds, series<T> masses, T volume) {
            return detail::sum_of_products(lovibonds, masses) / 1000.0 / volume;
        }
    } si;
};
inline constexpr family<&grist_load_models::mcu> grist_load{};

}  // namespace wortmath::colour
