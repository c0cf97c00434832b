#pragma once

#include "wortmath/liquor/acid_demand.hpp"
#include "wortmath/liquor/atomic_weights.hpp"

namespace wortmath::liquor {

struct mash_ph_models {
    static constexpr const char* question = "What is the pH of the mash?";

    // Malts that have been titrated; no malt data come with the model.
    struct proton_condition
        : model<struct proton_condition, unit::ph(list<unit::grams>, list<unit::ph>, list<unit::buffer_1>, list<unit::buffer_2>, list<unit::buffer_3>,
                                                  unit::litres, unit::milliequivalents_per_litre, unit::ph, unit::milligrams_per_litre,
                                                  unit::milligrams_per_litre, unit::milliequivalents, unit::celsius, unit::ph)> {
        static constexpr facts about{
            .source = "form after A. J. deLange, MBAA Technical Quarterly 52(1) 2015 (abstract read), with Kolbach's terms for calcium and magnesium",
            .status = evidence::secondary,
            .accuracy = "an estimate: measure the pH",
            .note =
                "published pH of malt in distilled water: base 5.7 to 5.8, caramel 4.5 to 4.8, chocolate 4.3 to 4.5, black 4.0 to 4.2; the "
                "buffer slopes must be measured. Every pH is that of a cooled sample, and the temperature stays at 25 degC for that. Not a "
                "number where there is no root between pH 4 and 7. `acid_added` counts at mash pH; negative is a strong base"};
        static constexpr input inputs[]{{"masses"},
                                        {"malt_ph", validated{4.0, 6.0}},
                                        {"a1", only{-no_limit, below(0)}},
                                        {"a2"},
                                        {"a3"},
                                        {"volume"},
                                        {"alkalinity", validated{0, 10}, possible{0, 100}},
                                        {"ph", validated{4.3, 9}},
                                        {"calcium", validated{0, 500}},
                                        {"magnesium", validated{0, 500}},
                                        {"acid_added", otherwise{0.0}},
                                        {"temperature", validated{0, 60}, otherwise{25.0}},
                                        {"endpoint_ph", otherwise{4.3}}};
        static constexpr const char* holds_when = "a mash needs at least one malt, and the pH of its water must lie above the end point of the titration";

        template <class T>
        static constexpr bool holds(T, series<T> masses, series<T>, series<T>, series<T>, series<T>, T, T, T ph, T, T, T, T, T endpoint) {
            return masses.size() > 0 && ph > endpoint;
        }

        template <class T>
        static constexpr T formula(series<T> masses, series<T> malt_ph, series<T> a1, series<T> a2, series<T> a3, T V, T alkalinity, T ph, T calcium,
                                   T magnesium, T acid, T t, T endpoint) {
            carbonate_system<T> water = carbonate_system<T>::at(t);
            T total = let("C_T", total_carbonate.titration.formula(alkalinity, ph, t, endpoint));
            T hardness = let("hardness", 2.0 * calcium / element::Ca / 3.5 + 2.0 * magnesium / element::Mg / 7.0);
            // What the malt gives off on the way to p, and what the water takes up.
            auto const protons = [&](T p) -> T {
                T sum = T(0.0);
                for (std::size_t k = 0; k < masses.size(); ++k) {
                    T d = p - malt_ph[k];
                    sum = sum + masses[k] / 1000.0 * (d * (a1[k] + d * (a2[k] + d * a3[k])));
                }
                T demand = total * (water.charge(ph) - water.charge(p)) + water.water(ph) - water.water(p);
                return sum + V * (demand - hardness) - acid;
            };
            auto const slope = [&](T p) -> T {
                T sum = T(0.0);
                for (std::size_t k = 0; k < masses.size(); ++k) {
                    T d = p - malt_ph[k];
                    sum = sum + masses[k] / 1000.0 * (a1[k] + d * (2.0 * a2[k] + d * (3.0 * a3[k])));
                }
                return sum - V * (total * water.charge_slope(p) + water.water_slope(p));
            };
            return bracketed<60>(T(4.0), T(7.0), protons, slope);
        }
    } proton_condition;
};
inline constexpr family<&mash_ph_models::proton_condition> mash_ph{};

}  // namespace wortmath::liquor
