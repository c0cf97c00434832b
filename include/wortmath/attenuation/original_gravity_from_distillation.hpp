#pragma once

#include "wortmath/attenuation/original_extract.hpp"
#include "wortmath/ethanol/alcohol_by_mass_from_density.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/extract/to_gravity.hpp"

namespace wortmath::attenuation {

struct original_gravity_from_distillation_models {
    static constexpr const char* question =
        "What was the original gravity, from the distillate and the spent beer, both made up to the volume of the sample at 60 degF?";

    // The mass balance in place of the statutory table. Grams per 100 mL of sample over the density of the beer are % mass,
    // and the density of water at 60 degF cancels out of both.
    struct balling : model<struct balling, unit::gravity_60F_60F(unit::gravity_60F_60F, unit::gravity_60F_60F, unit::degrees)> {
        static constexpr facts about{.source = "mass balance of distillate and residue with OIML R 22 and C. J. N. Balling's great formula",
                                     .status = evidence::derived,
                                     .use = "laboratories entitled to distil: the model does the arithmetic only",
                                     .accuracy =
                                         "against the one known example of the statutory table (Spirits Act 1880): 37.06 where it reads 35.75 degrees lost, so "
                                         "the result may be 1.3 points above the old legal figure",
                                     .note =
                                         "the extract scale is applied to gravities 60/60 degF as they are, going in and coming out, so a sample without "
                                         "alcohol returns its own gravity",
                                     .danger = "the vapour of a distillation burns, and distilling, even for analysis, needs a licence in many countries"};
        static constexpr input inputs[]{{"distillate_gravity"}, {"residue_gravity"}, {"acid_indication", only{0, no_limit}, otherwise{0.0}}};
        static constexpr const char* refusal =
            "the distillate must be lighter than water and not lighter than ethanol once the acid indication is added: gravity 1 at most; check which reading "
            "is which";

        template <class T>
        static constexpr T formula(T distillate, T residue, T acid_indication) {
            T u = T(ethanol::detail::at_60F);
            T water = ethanol::detail::density_of_mixture(T(0.0), u);
            T indication = let("spirit_indication", 1000.0 * (1.0 - distillate) + acid_indication);
            T spirit = 1.0 - indication / 1000.0;
            T strength = most(T(0.0), 100.0 * ethanol::detail::share_from_density(spirit * water, u));
            T beer = let("beer_gravity", spirit + residue - 1.0);
            T alcohol = let("alcohol_by_mass", strength * spirit / beer);
            T real = let("real_extract", extract::from_gravity.asbc.formula(residue) * residue / beer);
            T gravity = extract::to_gravity.asbc.formula(original_extract.balling.formula(alcohol, real));
            return select(spirit <= 1.0, select(spirit * water >= ethanol::detail::density_of_mixture(T(1.0), u), gravity, undefined), undefined);
        }
    } balling;
};
inline constexpr family<&original_gravity_from_distillation_models::balling> original_gravity_from_distillation{};

}  // namespace wortmath::attenuation
