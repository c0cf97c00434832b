#pragma once

#include "wortmath/attenuation/quotient.hpp"

namespace wortmath::attenuation {

struct real_attenuation_from_apparent_models {
    static constexpr const char* question = "What is the real attenuation of a beer whose apparent attenuation is known?";

    struct balling : model<struct balling, unit::real_attenuation(unit::original_extract, unit::apparent_attenuation)> {
        static constexpr facts about{.source = "C. J. N. Balling's attenuation quotient",
                                     .status = evidence::primary,
                                     .use = "gives the plain degree, that of real_attenuation.balling",
                                     .note = "a share: 77 % is 0.77"};
        static constexpr input inputs[]{{"original_extract", only{above(0), 80}}, {"apparent_attenuation", validated{0, 1.10}}};

        template <class T>
        static constexpr T formula(T original, T apparent_attenuation) {
            return apparent_attenuation / quotient.balling.formula(original);
        }
    } balling;

    struct cutaia : model<struct cutaia, unit::real_attenuation(unit::original_extract, unit::apparent_attenuation)> {
        static constexpr facts about{
            .source = "A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327, Table VI",
            .status = evidence::primary,
            .use = "gives the kind of degree that real_attenuation.asbc gives",
            .accuracy = "standard error 0.005",
            .note = "that it is the ASBC kind is derived: the five group means of the paper agree within 0.0012 that way and miss by 0.01 to 0.02 otherwise"};
        static constexpr input inputs[]{{"original_extract", only{above(0), 80}}, {"apparent_attenuation", validated{0, 1.10}}};

        template <class T>
        static constexpr T formula(T original, T apparent_attenuation) {
            return (0.814 + 0.000862 * original) * apparent_attenuation;
        }
    } cutaia;
};
inline constexpr family<&real_attenuation_from_apparent_models::balling> real_attenuation_from_apparent{};

}  // namespace wortmath::attenuation
