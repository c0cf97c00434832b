#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::hydrometer {

struct surface_tension_shift_models {
    static constexpr const char* question = "How much does a hydrometer misread in a liquid of another surface tension?";

    // indicated density = true density times (1 + shift)
    struct force_balance : model<struct force_balance, unit::ratio(unit::millimetres, unit::grams, unit::newtons_per_kilometre)> {
        static constexpr facts about{
            .source = "this project's own derivation: the meniscus pulls on the stem",
            .status = evidence::derived,
            .use = "to judge an instrument that was calibrated in another liquid",
            .accuracy = "the best calibrated hydrometers reach 100 ppm, in use 370 ppm or more (NIST, 2008)",
            .note =
                "the mass is that of the instrument, the change is the liquid's tension minus that of the calibration liquid: a negative "
                "change lets it float higher and read high; beer has 43 to 47 mN/m, wort 40 to 50, sucrose solution 73 to 76 "
                "(from memory), so brewing instruments are calibrated in wort or beer; the maker's leaflet says where on the "
                "meniscus to read"};
        static constexpr input inputs[]{{"stem_diameter"}, {"mass", only{above(0), no_limit}}, {"surface_tension_change"}};

        template <class T>
        static constexpr T formula(T stem, T mass, T change) {
            return -3.14159265358979323846 * (stem / 1000.0) * (change / 1000.0) / (mass / 1000.0 * constants::standard_gravity);
        }
    } force_balance;
};
inline constexpr family<&surface_tension_shift_models::force_balance> surface_tension_shift{};

}  // namespace wortmath::hydrometer
