// A program of somebody else: reads a batch file and asks a few models. README.md shows ten lines of it.
#include <cstdio>

#include "wortmath/wortmath.hpp"

namespace wm = wortmath;
using namespace wm::literals;

int main(int argc, char** argv) {
    wm::unit::plato const extract = wm::extract::from_gravity(1.048_sg);
    wm::unit::fraction const used = wm::bitterness::utilisation(1.048_sg, 60_min);
    std::printf("%.2f degP, %.1f %% of the alpha acids\n", extract.value, 100.0 * used.value);
    try {
        (void)wm::extract::from_gravity(12_sg);
    } catch (const wm::range_error& e) {
        std::puts(e.what());
    }
    if (argc < 2) return 1;
    auto const batch = wm::batch::read_file(argv[1]);
    auto const forecast = wm::batch::forecast(batch);
    std::printf("%s: OG %.4f, FG %.4f, %.0f BU\n", forecast.name.c_str(), *forecast.original_gravity, *forecast.final_gravity, *forecast.bitterness);
    for (auto const& caution : forecast.cautions)
        if (caution.level == "stop") std::puts(std::string(wm::batch::caution_text(caution.id)).c_str());
    return *forecast.original_gravity > 1.0 ? 0 : 1;
}
