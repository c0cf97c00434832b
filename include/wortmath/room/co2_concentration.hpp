#pragma once

#include "wortmath/carbonation/concentration.hpp"

namespace wortmath::room {

struct co2_concentration_models {
    static constexpr const char* question = "How much carbon dioxide is in the air of the room?";

    struct sealed_room : model<struct sealed_room, unit::parts_per_million(unit::grams, unit::cubic_metres, unit::celsius, unit::parts_per_million)> {
        static constexpr facts about{
            .source = "a mass balance over the room",
            .status = evidence::derived,
            .use = "a cylinder that empties, or a room without ventilation",
            .note = "well mixed, no leakage, the ratio of gas to room taken as it is (also above a million: an upper bound); for 1 atm, at a lower barometer the "
                    "added ppm are 1.01325/barometer times as many; the mass is in grams, a 10 kg cylinder is 10 000",
            .danger = "near the floor it is higher than the mean. An estimate: a CO2 detector is the measurement"};
        static constexpr input inputs[]{{"co2_mass"},
                                        {"room_volume", only{above(0), no_limit}},
                                        {"temperature", validated{0, 60}, possible{-5, 80}, otherwise{20.0}},
                                        {"background", otherwise{420.0}}};

        template <class T>
        static constexpr T formula(T mass, T volume, T t, T background) {
            return background + 1e6 * (mass / 1000.0) / (carbonation::detail::gas_density(t) * volume);
        }
    } sealed_room;

    struct steady_ventilation
        : model<struct steady_ventilation, unit::parts_per_million(unit::grams_per_hour, unit::cubic_metres_per_hour, unit::celsius,
                                                                   unit::parts_per_million)> {
        static constexpr facts about{
            .source = "a mass balance over the air that passes through the room",
            .status = evidence::derived,
            .use = "a room with a known flow of fresh air",
            .note = "well mixed; for 1 atm, at a lower barometer the added ppm are 1.01325/barometer times as many; the rate is the peak, two to three times the "
                    "mean of a fermentation (from memory), and the sum of all vessels; without fresh air take sealed_room",
            .danger = "a ventilation taken too high or a release too low hides gas: asphyxiation comes without warning. An estimate: a CO2 detector is the "
                      "measurement"};
        static constexpr input inputs[]{{"release_rate"},
                                        {"fresh_air_flow", only{above(0), no_limit}},
                                        {"temperature", validated{0, 60}, possible{-5, 80}, otherwise{20.0}},
                                        {"background", otherwise{420.0}}};

        template <class T>
        static constexpr T formula(T rate, T flow, T t, T background) {
            return background + 1e6 * (rate / 1000.0) / (carbonation::detail::gas_density(t) * flow);
        }
    } steady_ventilation;
};
inline constexpr family_without_default<co2_concentration_models> co2_concentration{};

}  // namespace wortmath::room
