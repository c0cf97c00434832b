#pragma once

#include "wortmath/model.hpp"

namespace wortmath::kettle {

struct heating_time_models {
    static constexpr const char* question = "How long does it take to heat the kettle?";

    // All losses are in the efficiency.
    struct lossless : model<struct lossless, unit::minutes(unit::grams, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::celsius, unit::kilowatts,
                                                           unit::fraction, unit::kilojoules_per_kelvin)> {
        static constexpr facts about{.source = "heat balance of the kettle",
                                     .status = evidence::derived,
                                     .use = "the usual estimate, with one efficiency for the whole heating",
                                     .note = "efficiencies from memory: immersed element 0.95 to 1, gas under a pot 0.3 to 0.5"};
        static constexpr input inputs[]{{"mass"},
                                        {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"power", only{above(0), no_limit}},
                                        {"efficiency", only{above(0), 1}, otherwise{1.0}},
                                        {"vessel_heat_capacity", otherwise{0.0}}};
        static constexpr const char* refusal = "the target lies below the temperature at the start: heating cannot reach it";

        template <class T>
        static constexpr T formula(T m, T c, T T1, T T2, T P, T eta, T Cv) {
            T seconds = let("seconds", (m / 1000.0 * c + Cv) * (T2 - T1) / (eta * P));
            return select(T1 <= T2, seconds / 60.0, undefined);
        }
    } lossless;

    // A kettle that loses heat to its surroundings all the while.
    struct newton_loss
        : model<struct newton_loss, unit::minutes(unit::grams, unit::kilojoules_per_kilogram_kelvin, unit::celsius, unit::celsius, unit::kilowatts,
                                                  unit::kilowatts_per_kelvin, unit::fraction, unit::kilojoules_per_kelvin, unit::celsius)> {
        static constexpr facts about{.source = "heat balance of the kettle with a loss in proportion to the temperature above the surroundings",
                                     .status = evidence::derived,
                                     .use = "a weak burner or a bare kettle, once the loss has been measured",
                                     .note = "infinite where the burner cannot hold the target against the loss"};
        static constexpr input inputs[]{{"mass"},
                                        {"specific_heat", validated{3.0, 4.25}, possible{above(0), no_limit}},
                                        {"temperature", validated{0, 100}},
                                        {"target_temperature", validated{0, 100}},
                                        {"power", only{above(0), no_limit}},
                                        {"loss_coefficient"},
                                        {"efficiency", only{above(0), 1}, otherwise{1.0}},
                                        {"vessel_heat_capacity", otherwise{0.0}},
                                        {"ambient_temperature", validated{-30, 60}, possible{-60, 130}, otherwise{20.0}}};
        static constexpr const char* refusal = "the target lies below the temperature at the start: heating cannot reach it";

        template <class T>
        static constexpr T formula(T m, T c, T T1, T T2, T P, T K, T eta, T Cv, T Ta) {
            T surplus = let("surplus", eta * P - K * (T2 - Ta));
            // ln((eta P - K (T1 - Ta)) / surplus), written so that a small loss does not cancel.
            T seconds = let("seconds", (m / 1000.0 * c + Cv) / K * log1p(K * (T2 - T1) / surplus));
            T unlost = decltype(heating_time_models::lossless)::template formula<T>(m, c, T1, T2, P, eta, Cv);
            T time = select(K == 0.0, unlost, select(surplus <= 0.0, T(no_limit), seconds / 60.0));
            return select(T1 <= T2, time, undefined);
        }
    } newton_loss;
};
inline constexpr family<&heating_time_models::lossless> heating_time{};

}  // namespace wortmath::kettle
