#pragma once

#include "wortmath/atmosphere/pressure.hpp"
#include "wortmath/constants.hpp"

namespace wortmath::dispense {

struct altitude_addition_models {
    static constexpr const char* question = "What has to be added to a chart's gauge pressure at my altitude?";

    struct standard_atmosphere : model<struct standard_atmosphere, unit::pressure_step(unit::metres)> {
        static constexpr facts about{.source = "U.S. Standard Atmosphere 1976",
                                     .status = evidence::secondary,
                                     .use = "when no barometer is at hand",
                                     .note = "better is the station's barometer, not reduced to sea level, given to carbonation.pressure as barometer",
                                     .danger = "what is added is for the beer: the package feels it too. Put the sum through package.caution before it becomes "
                                               "a setting"};
        static constexpr input inputs[]{{"altitude", validated{-2000, 10000}, possible{-5000, 11019}}};

        template <class T>
        static constexpr T formula(T z) {
            return constants::bar_per_atm - atmosphere::pressure.us1976.formula(z);
        }
    } standard_atmosphere;

    struct half_psi_per_1000_ft : model<struct half_psi_per_1000_ft, unit::pressure_step(unit::metres)> {
        static constexpr facts about{.source = "New Belgium Brewing, CO2 selection chart",
                                     .status = evidence::secondary,
                                     .use = "to repeat the trade's chart",
                                     .accuracy = "0.03 psi at 5000 ft, 0.65 psi too much at 12 000 ft"};
        static constexpr input inputs[]{{"altitude", validated{-2000, 10000}, possible{-5000, 11019}}};

        template <class T>
        static constexpr T formula(T z) {
            return 0.5 * constants::bar_per_psi * z / (1000.0 * constants::m_per_ft);
        }
    } half_psi_per_1000_ft;
};
inline constexpr family<&altitude_addition_models::standard_atmosphere> altitude_addition{};

}  // namespace wortmath::dispense
