#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/extract/density.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct concentration_models {
    static constexpr const char* question = "How many grams of extract does a litre of wort hold?";

    struct icumsa : model<struct icumsa, unit::grams_per_litre(unit::fraction, unit::celsius)> {
        static constexpr facts about{.source = "mass fraction times extract.density.icumsa",
                                     .status = evidence::derived,
                                     .use = "any strength and temperature",
                                     .accuracy = "published tables of g/L at 20 degC agree within 0.21 g/L",
                                     .note = "hectolitres times degrees Plato is not a mass: 25 hL of 11.5 degP hold 300.3 kg, not 287.5"};
        static constexpr input inputs[]{{"mass_fraction", validated{-0.03, 0.70}, possible{-0.10, 0.90}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}}};

        template <class T>
        static constexpr T formula(T w, T t) {
            return w * density_models::icumsa::formula(w, t);
        }
    } icumsa;

    // The maltsters' rule for pounds per US barrel, turned into g/L.
    struct lincoln : model<struct lincoln, unit::grams_per_litre(unit::plato)> {
        static constexpr facts about{.source = "a maltster's technical note, after R. H. Lincoln: 2.58/(1/P - 0.00382) lb per barrel of "
                                               "31 US gal",
                                     .status = evidence::secondary,
                                     .use = "to repeat American brewhouse figures at 20 degC",
                                     .accuracy = "0.03 % to ICUMSA weighed in air, 0.5 to 30 degP",
                                     .note = "weighed in air: the mass is 0.12 % more. Computed as 2.58 P/(1 - 0.00382 P), so that 0 degP "
                                             "gives 0"};
        static constexpr input inputs[]{{"extract", validated{0.5, 30}, possible{0, 35}}};

        template <class T>
        static constexpr T formula(T P) {
            constexpr double g_per_l = constants::g_per_lb / (31.0 * constants::l_per_us_gal);
            T pounds_per_barrel = let("pounds_per_barrel", 2.58 * P / (1.0 - 0.00382 * P));
            return pounds_per_barrel * g_per_l;
        }
    } lincoln;
};
inline constexpr family<&concentration_models::icumsa> concentration{};

}  // namespace wortmath::extract
