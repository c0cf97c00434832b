#pragma once

#include "wortmath/ethanol/density.hpp"

namespace wortmath::ethanol {
namespace detail {

// Fall of the density below that of water, as a share of the fall to pure ethanol, at the two ends of the temperature
// range: what lies between starts Newton's method within 0.09 of the root, and six steps reach rounding.
inline constexpr double strengths[]{0.0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0};
inline constexpr double fall_at_minus_20C[]{0.0, 0.044, 0.074, 0.089, 0.109, 0.182, 0.417, 0.686, 1.0};
inline constexpr double fall_at_40C[]{0.0, 0.042, 0.079, 0.153, 0.235, 0.328, 0.536, 0.756, 1.0};

template <class T>
constexpr T share_from_density(T density, T u) {
    T water = density_of_mixture(T(0.0), u);
    T fall = (water - density) / (water - density_of_mixture(T(1.0), u));
    T cold = piecewise_linear(fall, fall_at_minus_20C, strengths);
    T warm = piecewise_linear(fall, fall_at_40C, strengths);
    return newton<6>(
        cold + (warm - cold) * ((u + 40.0) / 60.0), [=](T p) { return density_of_mixture(p, u) - density; }, [=](T p) { return slope_of_mixture(p, u); });
}

}  // namespace detail

struct alcohol_by_mass_from_density_models {
    static constexpr const char* question = "How strong is a mixture of water and ethanol, such as a distillate, of this density?";

    struct oiml_r22 : model<struct oiml_r22, unit::alcohol_by_mass(unit::density, unit::celsius)> {
        static constexpr facts about{
            .source =
                "OIML R 22, International Alcoholometric Tables (1973, edition 1975); Council Directive 76/766/EEC, Annex, OJ L 262, 27.9.1976, p. 149-152",
            .status = evidence::secondary,
            .use = "mixtures of water and ethanol without extract",
            .accuracy = "the table of GOST 12787-2021, which rests on older data, within 0.021 % mass",
            .note = "a relative density 20/20 from a table is multiplied by 998.20123 kg/m3 first; 0.0001 in it is 0.055 % mass near zero"};
        static constexpr input inputs[]{{"density"}, {"temperature", only{-20, 40}}};
        static constexpr const char* refusal =
            "no liquid mixture of water and ethanol has this density at this temperature: it must lie between that of pure ethanol and that of water (below 0 "
            "degC, of the weakest mixture that is not frozen); check the unit, kg/m3, and the temperature";

        template <class T>
        static constexpr T formula(T density, T temperature) {
            T u = temperature - 20.0;
            T weakest = most(T(0.0), detail::freezing_line(temperature)) / 100.0;
            T strength = 100.0 * detail::share_from_density(density, u);
            return select(density <= detail::density_of_mixture(weakest, u), select(density >= detail::density_of_mixture(T(1.0), u), strength, undefined),
                          undefined);
        }
    } oiml_r22;
};
inline constexpr family<&alcohol_by_mass_from_density_models::oiml_r22> alcohol_by_mass_from_density{};

}  // namespace wortmath::ethanol
