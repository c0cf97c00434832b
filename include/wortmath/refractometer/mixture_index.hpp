#pragma once

#include "wortmath/refractometer/refraction.hpp"

namespace wortmath::refractometer {

struct mixture_index_models {
    static constexpr const char* question = "What is the refractive index of water, alcohol and extract together, at 20 degC against air?";

    struct lorentz_lorenz
        : model<struct lorentz_lorenz, unit::ratio(unit::alcohol_by_mass, unit::real_extract, unit::density, unit::cubic_centimetres_per_gram)> {
        static constexpr facts about{
            .source = "additivity of the specific refraction (Lorentz and Lorenz) with constants from ICUMSA, CRC and OIML data",
            .status = evidence::derived,
            .use = "beer, with the refraction of its own extract from extract_refraction",
            .accuracy = "ethanol and water 5.8e-5 to 12 % mass, 1.3e-4 at 24; sucrose with 0.2065 cm3/g 0.005 degBx at 12 %, 0.043 at 20, 0.09 at 25",
            .note =
                "the specific refraction of sucrose falls slowly with strength; extract_refraction.from_wort removes this. The density is that of the mixture "
                "at 20 degC"};
        static constexpr input inputs[]{{"alcohol_by_mass", validated{0, 24}},
                                        {"real_extract", validated{0, 25}},
                                        {"density", only{750, 1500}},
                                        {"extract_refraction", only{0.15, 0.30}, otherwise{detail::sucrose_refraction}}};

        template <class T>
        static constexpr T refraction(T alcohol, T real, T density, T extract_refraction) {
            return density / 1000.0 *
                   ((1.0 - alcohol / 100.0 - real / 100.0) * detail::water_refraction + alcohol / 100.0 * detail::ethanol_refraction +
                    real / 100.0 * extract_refraction);
        }
        template <class T>
        static constexpr T formula(T alcohol, T real, T density, T extract_refraction) {
            T X = let("X", refraction(alcohol, real, density, extract_refraction));
            return detail::index_from_refraction(X);
        }
    } lorentz_lorenz;
};
inline constexpr family<&mixture_index_models::lorentz_lorenz> mixture_index{};

}  // namespace wortmath::refractometer
