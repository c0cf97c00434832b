// Thirty lines of somebody else, from headers alone: models with types, refusals, a batch put together in the program.
#include <cstdio>

#include "wortmath/batch/forecast.hpp"
#include "wortmath/catalogue.hpp"

namespace wm = wortmath;
using namespace wm::literals;

int main() {
    wm::unit::plato const extract = wm::extract::from_gravity(1.048_sg);
    wm::unit::gravity_20_20 const end = wm::refractometer::final_gravity(12.4_degBx, 6.5_degBx);
    wm::unit::alcohol_by_volume const strength = wm::attenuation::alcohol_by_volume(1.048_sg, end);
    std::printf("%.2f degP, then %.3f and %.1f %% vol\n", extract.value, end.value, strength.value);

    // 2.4 volumes in a bottle that may get 30 degC warm
    wm::unit::gauge_pressure const pressure = wm::package::pressure.hazard_run(2.4_vol, 30_degC, wm::unit::gas_volume_share(0.04), 20_degC);
    auto const level = wm::package::caution(wm::word::package::unrated_glass, pressure, 2.4_vol, wm::none, true);
    std::printf("%.1f bar: level %.0f\n", pressure.value, level.value);

    try {
        (void)wm::extract::from_gravity(12_sg);
        return 1;
    } catch (const wm::range_error& e) {
        std::puts(e.what());
    }
    auto const [volume, blended] = wm::balance::blend.volume(10_L, 16_degP, 5_L, 0_degP);
    std::printf("%.2f L at %.2f degP\n", volume.value, blended.value);
    return level.value <= 2.0 ? 0 : 1;
}
