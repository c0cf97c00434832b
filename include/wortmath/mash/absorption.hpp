#pragma once

#include "wortmath/model.hpp"

namespace wortmath::mash {

struct absorption_models {
    static constexpr const char* question = "How much liquid does the drained grain keep?";

    // The kitchen figure, in volume.
    struct per_mass : model<struct per_mass, unit::litres(unit::grams, unit::litres_per_kilogram)> {
        static constexpr facts about{
            .source = "published figures: 0.88 to 1.02 L/kg in a derivation, 1.2 in a worked example, 0.69 for a squeezed bag (one weighing, 66 % water)",
            .status = evidence::secondary,
            .use = "planning, with the figure measured in one's own tun",
            .accuracy = "0.9 to 1.2 L/kg for drained grain",
            .note = "a book table prints 1.7 L/kg (0.2 US gal/lb), which seems to hold other losses"};
        static constexpr input inputs[]{{"grist_mass"}, {"absorption", validated{0.5, 2}, otherwise{1.0}}};

        template <class T>
        static constexpr T formula(T G, T absorption) {
            return absorption * (G / 1000.0);
        }
    } per_mass;

    // From the moisture of the spent grain, in mass.
    struct spent_grain_moisture : model<struct spent_grain_moisture, unit::grams(unit::grams, unit::fraction, unit::grams, unit::fraction)> {
        static constexpr facts about{
            .source = "mass balance with printed moistures of spent grain (The Oxford Companion to Beer; Farber and others 2019 as quoted)",
            .status = evidence::derived,
            .use = "spent grain whose moisture is known: lauter tun 0.75, combined mash and lauter tun 0.80, mash filter 0.65",
            .accuracy = "printed: 100 to 130 kg wet spent grain of 75 to 80 % water from 100 kg grist, or 0.75 to 1.04 kg/kg",
            .note = "counts the dissolved extract in the held liquid with the water"};
        static constexpr input inputs[]{
            {"grist_mass"}, {"moisture", validated{0, 0.08}, possible{0, 0.20}}, {"extract_mass"}, {"spent_moisture", only{0, below(1)}, otherwise{0.78}}};
        static constexpr const char* refusal = "more extract than the dry grist weighs: check the masses of grist and extract";

        template <class T>
        static constexpr T formula(T G, T M, T E, T w) {
            T dry = let("dry", G * (1.0 - M) - E);
            return select(dry >= 0.0, dry * w / (1.0 - w), undefined);
        }
    } spent_grain_moisture;
};
inline constexpr family<&absorption_models::per_mass> absorption{};

}  // namespace wortmath::mash
