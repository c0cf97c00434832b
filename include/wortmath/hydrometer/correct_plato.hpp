#pragma once

#include "wortmath/hydrometer/correct.hpp"

namespace wortmath::hydrometer {

struct correct_plato_models {
    static constexpr const char* question = "What would this saccharometer have read at its calibration temperature?";

    // hydrometer.correct.glass_and_liquid for an instrument whose stem is marked in degrees Plato, Brix or Balling.
    struct glass_and_liquid : model<struct glass_and_liquid, unit::plato(unit::plato, unit::celsius, unit::celsius, unit::per_kelvin)> {
        static constexpr facts about{
            .source = "this project's own derivation: force balance on the float; glass constant of ISO 1768:1975",
            .status = evidence::derived,
            .use = "every saccharometer whose calibration temperature is known",
            .accuracy = "the correction table of NBS Circular C440 within 0.031 degP at 10 to 30 degC, 0.054 at 5 to 60, 0.105 at 0",
            .note =
                "a sample at 60 degC burns skin in seconds and a hot or cold one can break the glass: cool it to within 10 K of calibration, and give "
                "up wort or beer in which an instrument broke; above 60 degC the glass constant is extrapolated; fermented samples expand more "
                "than this knows: cool them"};
        static constexpr input inputs[]{{"extract", validated{-2.5, 70}, possible{-8, 80}},
                                        {"sample_temperature", validated{0, 60}, possible{-5, 102}},
                                        {"calibration_temperature", validated{0, 60}, possible{-5, 102}, otherwise{20.0}},
                                        {"glass_expansion", only{0, 1e-3}, otherwise{25e-6}}};
        static constexpr const char* refusal = "no wort carries the instrument to this mark at this temperature: check the reading and both temperatures";

        template <class T>
        static constexpr T formula(T P, T t, T t_cal, T beta) {
            T mark = let("mark", wortmath::extract::density.icumsa.formula(P / 100.0, t_cal));
            return 100.0 * detail::liquid_that_carries(mark, t, t_cal, beta);
        }
    } glass_and_liquid;
};
inline constexpr family<&correct_plato_models::glass_and_liquid> correct_plato{};

}  // namespace wortmath::hydrometer
