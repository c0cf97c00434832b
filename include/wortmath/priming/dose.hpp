#pragma once

#include "wortmath/carbonation/constants.hpp"
#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::priming {

namespace detail {
inline constexpr const char* holds_more_than_asked =
    "the beer already holds more carbon dioxide than the target: no sugar is needed, and none may be added to reach it. Check the temperature of the "
    "residual, or raise the target";
}  // namespace detail

struct dose_models {
    static constexpr const char* question = "How much sugar brings the beer to the carbonation I want?";

    struct mass_balance
        : model<struct mass_balance, unit::grams(unit::volumes_co2, unit::volumes_co2, unit::litres, unit::mass_share, unit::fraction)> {
        static constexpr facts about{
            .source = "a mass balance of CO2 over the beer",
            .status = evidence::derived,
            .use = "any sugar whose yield is known",
            .note = "gas that goes to the headspace is not added, 3 % at 4 % headspace; efficiency: 0.95 is the middle of what is published, 1.0 the "
                    "cautious setting",
            .danger = "a yield, an efficiency or a residual too low adds too much sugar. Dissolve and mix evenly: a bottle that gets double sugar gets "
                      "double gas. Look at package.pressure at the hottest storage temperature before bottling"};
        static constexpr const char* refusal = detail::holds_more_than_asked;
        static constexpr input inputs[]{{"target_carbonation"},
                                        {"beer_carbonation"},
                                        {"beer_volume"},
                                        {"sugar_yield", only{above(0), 1}},
                                        {"efficiency", validated{0.85, 1}, possible{above(0), 1}, otherwise{0.95}}};

        template <class T>
        static constexpr T formula(T target, T residual, T volume, T yield, T efficiency) {
            T mass = volume * (target - residual) * wortmath::carbonation::detail::g_per_volume / (yield * efficiency);
            return select(target >= residual, mass, undefined);
        }
    } mass_balance;

    struct hibberd_1995 : model<struct hibberd_1995, unit::grams(unit::volumes_co2, unit::volumes_co2, unit::litres)> {
        static constexpr facts about{.source = "M. Hibberd, A Primer on Priming (1995)",
                                     .status = evidence::primary,
                                     .use = "a rule for sucrose that fits in the head",
                                     .accuracy = "96 % of what theory gives",
                                     .note = "grams of sucrose; gas that goes to the headspace is not added",
                                     .danger = "a residual too low adds too much sugar. Dissolve and mix evenly: a bottle that gets double sugar gets "
                                               "double gas"};
        static constexpr const char* refusal = detail::holds_more_than_asked;
        static constexpr input inputs[]{{"target_carbonation"}, {"beer_carbonation"}, {"beer_volume"}};

        template <class T>
        static constexpr T formula(T target, T residual, T volume) {
            return select(target >= residual, 4.0 * (target - residual) * volume, undefined);
        }
    } hibberd_1995;

    struct lewis : model<struct lewis, unit::grams(unit::volumes_co2, unit::volumes_co2, unit::litres, unit::celsius)> {
        static constexpr facts about{.source = "A. Lewis, quoted in print",
                                     .status = evidence::secondary,
                                     .use = "to repeat texts that used it",
                                     .note = "grams of glucose; the constant is M/(2 R) of an ideal gas, which makes a volume gas at that temperature: with "
                                             "volumes from a chart the temperature is 0 degC and nothing else",
                                     .danger = "a residual too low adds too much sugar. Dissolve and mix evenly: a bottle that gets double sugar gets "
                                               "double gas"};
        static constexpr const char* refusal = detail::holds_more_than_asked;
        static constexpr input inputs[]{{"target_carbonation"}, {"beer_carbonation"}, {"beer_volume"}, {"temperature", otherwise{0.0}}};

        template <class T>
        static constexpr T formula(T target, T residual, T volume, T t) {
            T mass = 1096.825 * (target - residual) * volume / (t + constants::zero_celsius);
            return select(target >= residual, mass, undefined);
        }
    } lewis;
};
inline constexpr family<&dose_models::mass_balance> dose{};

}  // namespace wortmath::priming
