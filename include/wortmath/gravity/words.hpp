// The gravity scales by name, and what each of them means.
#pragma once

#include "wortmath/model.hpp"

namespace wortmath {

namespace word {
enum class gravity_scale {
    gravity_20_20,
    gravity_20_20_true,
    gravity_20_4,
    gravity_17_5_17_5,
    gravity_15_15,
    gravity_15_4,
    gravity_60F_60F,
    gravity_60F_60F_apparent
};
}  // namespace word

template <>
struct spelled<word::gravity_scale> {
    static constexpr const char* names[]{"gravity_20_20", "gravity_20_20_true", "gravity_20_4",    "gravity_17_5_17_5",
                                         "gravity_15_15", "gravity_15_4",       "gravity_60F_60F", "gravity_60F_60F_apparent"};
};

namespace gravity {

// A specific gravity means nothing without these three.
struct scale_facts {
    double liquid_temperature;  // degC
    double water_temperature;   // degC
    double air_density;         // kg/m3; 0: in vacuum
};

inline constexpr double conventional_air = 1.2;               // kg/m3, the convention of OIML
inline constexpr double sixty_fahrenheit = 15.0 + 5.0 / 9.0;  // degC, not 15.5

constexpr scale_facts facts_of(word::gravity_scale name) noexcept {
    constexpr scale_facts all[]{{20.0, 20.0, conventional_air},
                                {20.0, 20.0, 0.0},
                                {20.0, 4.0, 0.0},
                                {17.5, 17.5, 0.0},
                                {15.0, 15.0, 0.0},
                                {15.0, 4.0, 0.0},
                                {sixty_fahrenheit, sixty_fahrenheit, 0.0},
                                {sixty_fahrenheit, sixty_fahrenheit, conventional_air}};
    return all[static_cast<int>(name)];
}

}  // namespace gravity
}  // namespace wortmath
