#pragma once

#include "wortmath/attenuation/alcohol_by_mass.hpp"
#include "wortmath/attenuation/cautions.hpp"
#include "wortmath/beer/alcohol_by_volume.hpp"
#include "wortmath/extract/from_gravity.hpp"

namespace wortmath::attenuation {
namespace detail {

inline constexpr const char* final_above_original = "the final gravity is above the original gravity: nothing can have fermented; check which reading is which";

// Alcohol by mass to alcohol by volume for a beer that shows this gravity.
template <class T>
constexpr T by_volume(T alcohol_by_mass, T final_gravity) {
    return beer::alcohol_by_volume.definition.formula(alcohol_by_mass, final_gravity * constants::water_20C);
}

inline constexpr double hmrc_from[]{0.0, 6.95, 10.45, 17.25, 26.15, 36.05, 46.55, 57.15, 67.95, 78.85, 89.75};
inline constexpr double hmrc_factor[]{0.125, 0.126, 0.127, 0.128, 0.129, 0.130, 0.131, 0.132, 0.133, 0.134, 0.135};

}  // namespace detail

struct alcohol_by_volume_models {
    static constexpr const char* question = "How strong is the beer, from its original and final gravity?";

    struct balling : model<struct balling, unit::alcohol_by_volume(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "C. J. N. Balling's alcohol by mass, carried to volume by the definition of alcohol by volume with the beer's own density",
            .status = evidence::derived,
            .use = "any beer; the only chain of published parts",
            .accuracy = "34 analysed beers: mean +0.14, standard deviation 0.14, worst +0.44 % vol",
            .danger = detail::estimated_strength};
        static constexpr input inputs[]{{"original_gravity", validated{1.010, 1.106}}, {"final_gravity"}};
        static constexpr const char* refusal = detail::final_above_original;

        template <class T>
        static constexpr T formula(T original, T final) {
            T p = let("original_extract", extract::from_gravity.asbc.formula(original));
            T m = let("apparent_extract", extract::from_gravity.asbc.formula(final));
            T A = let("alcohol_by_mass", alcohol_by_mass.balling.unguarded(p, m));
            return select(final <= original, detail::by_volume(A, final), undefined);
        }
    } balling;

    struct linear_131 : model<struct linear_131, unit::alcohol_by_volume(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "trade rule: 1.05 g of alcohol for each g of CO2 over a rounded density of 0.80",
            .status = evidence::memory,
            .use = "in the head; as good as any formula below 16 degP",
            .accuracy =
                "34 analysed beers: mean +0.10, standard deviation 0.14 % vol; to balling at 75 % apparent attenuation -0.05 % vol at 16 degP, -0.22 at 25",
            .danger = detail::estimated_strength};
        static constexpr input inputs[]{{"original_gravity", validated{1.010, 1.106}}, {"final_gravity"}};
        static constexpr const char* refusal = detail::final_above_original;

        template <class T>
        static constexpr T formula(T original, T final) {
            return select(final <= original, 131.25 * (original - final), undefined);
        }
    } linear_131;

    struct hall : model<struct hall, unit::alcohol_by_volume(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "M. L. Hall, Zymurgy 18(2), Summer 1995, p. 54",
            .status = evidence::memory,
            .use = "not above 14 degP: its four gravity points for each degree make it run high",
            .accuracy =
                "34 analysed beers: mean +0.33, standard deviation 0.17 % vol; to balling at 75 % apparent attenuation +0.07 % vol at 12 degP, +0.24 at 16, "
                "+1.03 at 25",
            .note = "printed and used: 76.08. The author's own ingredients give 76.81 and his energy formula 76.80, so two digits probably changed places",
            .danger = detail::estimated_strength};
        static constexpr input inputs[]{{"original_gravity", validated{1.010, 1.106}}, {"final_gravity"}};
        static constexpr const char* refusal = detail::final_above_original;

        template <class T>
        static constexpr T formula(T original, T final) {
            return select(final <= original, 76.08 * (original - final) / (1.775 - original) * (final / 0.794), undefined);
        }
    } hall;

    struct hmrc : model<struct hmrc, unit::alcohol_by_volume(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "HM Revenue and Customs, Excise Notice 226 Beer Duty, section 30",
            .status = evidence::memory,
            .use = "the official British factors",
            .accuracy = "34 analysed beers: mean +0.06, standard deviation 0.14 % vol; jumps of 0.007 to 0.09 % vol where the factor changes",
            .note =
                "the limits between the factors include the rounding of the gravity drop to 0.1 points. For duty the strength is cut, not rounded: "
                "labelling.duty_strength",
            .danger = detail::estimated_strength};
        static constexpr input inputs[]{{"original_gravity", validated{1.010, 1.106}}, {"final_gravity"}};
        static constexpr const char* refusal =
            "the gravity must fall from original to final, by 100.7 points at most: the official table ends there, and with a final gravity above the original "
            "one nothing can have fermented";

        template <class T>
        static constexpr T formula(T original, T final) {
            T drop = let("drop", 1000.0 * (original - final));
            T strength = drop * stepped(drop, detail::hmrc_from, detail::hmrc_factor);
            return select(final <= original, select(drop < 100.75, strength, undefined), undefined);
        }
    } hmrc;

    struct cutaia : model<struct cutaia, unit::alcohol_by_volume(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "A. J. Cutaia, A.-J. Reid, R. A. Speers, J. Inst. Brew. 115(4) (2009) 318-327, Table VI, carried to volume as in balling",
            .status = evidence::primary,
            .use = "to compare with the brews of that paper, 9 to 18 degP",
            .accuracy =
                "34 analysed beers: mean +0.15, standard deviation 0.14 % vol; to balling at 75 % apparent attenuation -0.08 % vol at 9 degP, +0.04 at 16",
            .danger = detail::estimated_strength};
        // 9 to 18 degP
        static constexpr input inputs[]{{"original_gravity", validated{1.03589, 1.07414}}, {"final_gravity"}};
        static constexpr const char* refusal = detail::final_above_original;

        template <class T>
        static constexpr T formula(T original, T final) {
            T p = let("original_extract", extract::from_gravity.asbc.formula(original));
            T m = let("apparent_extract", extract::from_gravity.asbc.formula(final));
            T A = let("alcohol_by_mass", alcohol_by_mass.cutaia.unguarded(p, m));
            return select(final <= original, detail::by_volume(A, final), undefined);
        }
    } cutaia;

    struct de_clerck : model<struct de_clerck, unit::alcohol_by_volume(unit::gravity_20_20, unit::gravity_20_20)> {
        static constexpr facts about{
            .source = "J. De Clerck's real extract in the combination of G. Fix",
            .status = evidence::memory,
            .use = "to repeat older work",
            .accuracy =
                "34 analysed beers: mean +0.18, standard deviation 0.14 % vol; to balling at 75 % apparent attenuation +0.02 % vol at 12 degP, +0.17 at 25",
            .note = "0.794 is the gravity of ethanol at 60/60 degF, so the final gravity should strictly be on that scale too",
            .danger = detail::estimated_strength};
        static constexpr input inputs[]{{"original_gravity", validated{1.010, 1.106}}, {"final_gravity"}};
        static constexpr const char* refusal = detail::final_above_original;

        template <class T>
        static constexpr T formula(T original, T final) {
            T p = let("original_extract", extract::from_gravity.asbc.formula(original));
            T m = let("apparent_extract", extract::from_gravity.asbc.formula(final));
            T n = let("real_extract", real_extract.de_clerck.unguarded(p, m));
            T A = let("alcohol_by_mass", alcohol_by_mass_from_real_extract.balling.unguarded(p, n));
            return select(final <= original, A * final / 0.794, undefined);
        }
    } de_clerck;
};
inline constexpr family<&alcohol_by_volume_models::balling> alcohol_by_volume{};

}  // namespace wortmath::attenuation
