#pragma once

#include "wortmath/extract/density.hpp"
#include "wortmath/extract/from_density.hpp"
#include "wortmath/gravity/from_density.hpp"
#include "wortmath/gravity/to_density.hpp"
#include "wortmath/water/density.hpp"

namespace wortmath::hydrometer {

namespace detail {
// Mass fraction of the liquid in which the instrument, warm or cold with it, sinks to a mark.
template <class T>
constexpr T liquid_that_carries(T mark, T t, T t_cal, T beta) {
    T rho = let("rho", mark / (1.0 + beta * (t - t_cal)));
    return let("w", wortmath::extract::from_density.icumsa.formula(rho, t));
}
}  // namespace detail

struct correct_models {
    static constexpr const char* question = "What would this hydrometer have read at its calibration temperature?";

    // The answer stays on the instrument's own scale; gravity.convert goes to another. Cool the sample first: that beats any
    // correction.
    struct glass_and_liquid : model<struct glass_and_liquid, unit::gravity(unit::gravity, unit::celsius, unit::celsius, optional_point<unit::celsius>,
                                                                           unit::density, unit::per_kelvin)> {
        static constexpr facts about{
            .source = "this project's own derivation: force balance on the float; glass constant of ISO 1768:1975",
            .status = evidence::derived,
            .use = "every hydrometer whose calibration temperature is known",
            .accuracy =
                "the correction table of NBS Circular C440 within 0.031 degP at 10 to 30 degC, 0.054 at 5 to 60, 0.105 at 0; one kelvin of "
                "thermometer error is 0.24 points at 20, 0.33 at 30 and 0.54 at 60 degC",
            .note =
                "a sample at 60 degC burns skin in seconds and a hot or cold one can break the glass: cool it to within 10 K of calibration, and give "
                "up wort or beer in which a hydrometer broke; the calibration temperature is printed on the stem, and 20 taken for 15 degC "
                "costs 1.1 points; above 60 degC the glass constant is extrapolated; alcohol makes beer expand more: 0.15 points too high at "
                "10 degC, 0.16 too low at 30, 0.4 at 40 for beer from 12 degP, so cool fermented samples"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.97, 1.40}},
                                        {"sample_temperature", validated{0, 60}, possible{-5, 102}},
                                        {"calibration_temperature", validated{0, 60}, possible{-5, 102}, otherwise{20.0}},
                                        {"water_temperature", validated{0, 100}, possible{-5, 105}, otherwise_none{}},  // none: the calibration temperature
                                        {"air_density", only{0, 2}, otherwise{gravity::conventional_air}},
                                        {"glass_expansion", only{0, 1e-3}, otherwise{25e-6}}};
        static constexpr const char* refusal = "no wort carries the instrument to this mark at this temperature: check the reading and both temperatures";

        template <class T>
        static constexpr T formula(T S, T t, T t_cal, maybe<T> water, T a, T beta) {
            T t_w = water.given ? water.value : t_cal;
            T mark = let("mark", gravity::to_density.definition.formula(S, t_w, a));
            T w = detail::liquid_that_carries(mark, t, t_cal, beta);
            return gravity::from_density.definition.formula(wortmath::extract::density.icumsa.formula(w, t_cal), t_w, a);
        }
    } glass_and_liquid;

    // Water only, no sugar and no glass. An instrument of 59 degF.
    struct lyons : model<struct lyons, unit::gravity(unit::gravity, unit::celsius)> {
        static constexpr facts about{.source = "C. Lyons, Homebrew Digest 963, 7 September 1992",
                                     .status = evidence::primary,
                                     .use = "to repeat older work with an instrument of 59 degF",
                                     .accuracy = "24 water densities within 0.17 points at 0 degC and 0.11 elsewhere",
                                     .note = "not zero at 59 degF but 0.11 points; copies print 2.057793e-3 as 2.057793 times 2.71828 minus 3"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}, {"sample_temperature", only{0, 100}}};

        template <class T>
        static constexpr T formula(T S, T t) {
            return S + points(t) / 1000.0;
        }
        // Points to add, with the temperature in degF.
        template <class T>
        static constexpr T points(T t) {
            return poly(let("F", 1.8 * t + 32.0), 1.313454, -0.132674, 2.057793e-3, -2.627634e-6);
        }
    } lyons;

    // The same cubic for an instrument of another temperature.
    struct lyons_difference : model<struct lyons_difference, unit::gravity(unit::gravity, unit::celsius, unit::celsius)> {
        static constexpr facts about{
            .source = "this project's own derivation from the cubic of C. Lyons, Homebrew Digest 963, 7 September 1992",
            .status = evidence::derived,
            .use = "to compare with glass_and_liquid",
            .accuracy = "against glass_and_liquid at 1.050 and 20 degC: 0.42 points high at 10 degC, 0.35 low at 30, 0.64 low at 50, 0.29 low at 100"};
        static constexpr input inputs[]{
            {"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}, {"sample_temperature", only{0, 100}}, {"calibration_temperature", only{0, 100}}};

        template <class T>
        static constexpr T formula(T S, T t, T t_cal) {
            return S + (lyons::points(t) - lyons::points(t_cal)) / 1000.0;
        }
    } lyons_difference;

    // For mental arithmetic. An instrument of 59 degF.
    struct lyons_quadratic : model<struct lyons_quadratic, unit::gravity(unit::gravity, unit::celsius)> {
        static constexpr facts about{.source = "C. Lyons, a second article, as quoted",
                                     .status = evidence::secondary,
                                     .use = "to repeat older work with an instrument of 59 degF",
                                     .accuracy = "0.27 points of the water densities between 15 and 75 degC"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}, {"sample_temperature", validated{15, 75}}};

        template <class T>
        static constexpr T formula(T S, T t) {
            return S + poly(let("F", 1.8 * t + 32.0), -2.52, -0.0252, 0.00112) / 1000.0;
        }
    } lyons_quadratic;

    // The gravity is multiplied, as with a change of volume: the water's, without sugar and glass.
    struct ratio_cubic : model<struct ratio_cubic, unit::gravity(unit::gravity, unit::celsius, unit::celsius)> {
        static constexpr facts about{
            .source = "author unknown",
            .status = evidence::secondary,
            .use = "to repeat older work",
            .accuracy =
                "the water ratio to 60 degF within 1.7e-4; against glass_and_liquid at 1.050 and 20 degC: 0.36 points high at 10 degC, 0.26 "
                "low at 35, 0.23 high at 60, 1.9 high at 100"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}},
                                        {"sample_temperature", validated{0, 60}, possible{0, 100}},
                                        {"calibration_temperature", validated{0, 60}, possible{0, 100}}};

        template <class T>
        static constexpr T formula(T S, T t, T t_cal) {
            return S * swelling(t) / swelling(t_cal);
        }
        // How much more room water takes than at 60 degF.
        template <class T>
        static constexpr T swelling(T t) {
            return poly(let("F", 1.8 * t + 32.0), 1.00130346, -1.34722124e-4, 2.04052596e-6, -2.32820948e-9);
        }
    } ratio_cubic;

    // What printed trade tables hold: the water alone.
    struct water_only : model<struct water_only, unit::gravity(unit::gravity, unit::celsius, unit::celsius)> {
        static constexpr facts about{.source = "this project's own derivation: water density of IAPWS SR6-08",
                                     .status = evidence::derived,
                                     .use = "to check a printed table of corrections",
                                     .accuracy = "a trade table for 15 degC within 8e-5",
                                     .note = "neither sugar nor glass; one printing of the table lost the minus signs below 15 degC"};
        static constexpr input inputs[]{
            {"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}, {"sample_temperature", only{0, 100}}, {"calibration_temperature", only{0, 100}}};

        template <class T>
        static constexpr T formula(T S, T t, T t_cal) {
            T calibrated = water::density.iapws_sr6_08.formula(t_cal);
            return S + (calibrated - water::density.iapws_sr6_08.formula(t)) / calibrated;
        }
    } water_only;
};
inline constexpr family<&correct_models::glass_and_liquid> correct{};

}  // namespace wortmath::hydrometer
