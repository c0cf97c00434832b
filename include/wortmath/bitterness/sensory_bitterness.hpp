#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct sensory_bitterness_models {
    static constexpr const char* question = "How bitter does a beer taste, as mg/L of iso-alpha acids?";

    struct algazzali_shellhammer_2016
        : model<struct algazzali_shellhammer_2016, unit::sensory_equivalent(unit::iso_alpha, unit::humulinones, unit::hulupones)> {
        static constexpr facts about{
            .source = "Algazzali and Shellhammer, J. Am. Soc. Brew. Chem. 74 (2016) 36-43, abstract",
            .status = evidence::primary,
            .use = "figures by HPLC, dry-hopped beer above all",
            .accuracy = "weights 66 +- 13 % and 84 +- 10 % (what the +- stands for is not stated)",
            .note = "dry hopping raises bitterness below 20 to 25 mg/L of iso-alpha acids and lowers it above 25 to 40; no rate law is published"};
        static constexpr input inputs[]{{"iso_alpha", detail::amount}, {"humulinones", detail::amount}, {"hulupones", detail::amount}};

        template <class T>
        static constexpr T formula(T iso_alpha, T humulinones, T hulupones) {
            return iso_alpha + 0.66 * humulinones + 0.84 * hulupones;
        }
    } algazzali_shellhammer_2016;

    struct algazzali_shellhammer_2014
        : model<struct algazzali_shellhammer_2014, unit::sensory_equivalent(unit::iso_alpha, unit::humulinones, unit::hulupones)> {
        static constexpr facts about{.source = "Algazzali and Shellhammer, ASBC meeting 2014, abstract",
                                     .status = evidence::primary,
                                     .use = "to repeat work from before 2016",
                                     .accuracy = "at 20 mg/L; superseded"};
        static constexpr input inputs[]{{"iso_alpha", detail::amount}, {"humulinones", detail::amount}, {"hulupones", detail::amount}};

        template <class T>
        static constexpr T formula(T iso_alpha, T humulinones, T hulupones) {
            return iso_alpha + humulinones / 1.9 + hulupones / 1.4;
        }
    } algazzali_shellhammer_2014;

    struct maye : model<struct maye, unit::sensory_equivalent(unit::iso_alpha, unit::humulinones, unit::alpha_in_beer)> {
        static constexpr facts about{.source = "J. P. Maye, hop supplier's publications and MBAA proceedings 2015",
                                     .status = evidence::secondary,
                                     .use = "when the alpha acids in the beer are known but not its hulupones",
                                     .accuracy = "none stated; 0.65 instead of 0.66 in 2015",
                                     .note = "alpha_acids is the mg/L in the beer, not the share in the hops"};
        static constexpr input inputs[]{{"iso_alpha", detail::amount}, {"humulinones", detail::amount}, {"alpha_acids", detail::amount}};

        template <class T>
        static constexpr T formula(T iso_alpha, T humulinones, T alpha_acids) {
            return iso_alpha + 0.66 * humulinones + 0.10 * alpha_acids;
        }
    } maye;
};
inline constexpr family<&sensory_bitterness_models::algazzali_shellhammer_2016> sensory_bitterness{};

}  // namespace wortmath::bitterness
