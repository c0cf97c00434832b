#pragma once

#include "wortmath/bitterness/bounds.hpp"

namespace wortmath::bitterness {

struct bitterness_units_models {
    static constexpr const char* question = "How many bitterness units do laboratory figures stand for?";

    // The method works with strong acid and iso-octane: for a laboratory with its own rules.
    struct asbc_beer_23a : model<struct asbc_beer_23a, unit::bitterness_units(unit::ratio, unit::ratio)> {
        static constexpr facts about{
            .source = "ASBC Beer-23A, EBC 9.8, MEBAK B-400.17.110",
            .status = evidence::primary,
            .use = "an absorbance at 275 nm, 1 cm, of the iso-octane extract of acidified beer",
            .accuracy = "not known to us; against iso-alpha acids by HPLC R2 0.90 over 30 beers",
            .note =
                "dry-hopped beers read high; not valid with saccharin, salicylic or sorbic acid or p-hydroxybenzoates; dilute a sample that absorbs "
                "more than 2; dilution is total volume over sample volume"};
        static constexpr input inputs[]{{"absorbance_275", validated{0, 2}, detail::amount}, {"dilution", possible{1, detail::largest}, otherwise{1.0}}};

        template <class T>
        static constexpr T formula(T absorbance_275, T dilution) {
            return 50.0 * absorbance_275 * dilution;
        }
    } asbc_beer_23a;

    struct five_sevenths : model<struct five_sevenths, unit::bitterness_units(unit::iso_alpha, unit::other_resin)> {
        static constexpr facts about{
            .source = "Oxford Companion to Beer; V. Peacock as quoted by J.-P. Hosom",
            .status = evidence::secondary,
            .use = "the only way from mg/L to bitterness units",
            .accuracy = "a convention: one beer had 47.5 BU with 39.9 mg/L of iso-alpha acids, another 49.9 BU with 2.2 mg/L (T. Kishimoto et al., 2021)",
            .note = "1 mg/L of pure iso-alpha acids counts as 0.714 BU, not as 1"};
        static constexpr input inputs[]{{"iso_alpha", detail::amount}, {"other_resin", detail::amount}};

        template <class T>
        static constexpr T formula(T iso_alpha, T other_resin) {
            return 5.0 / 7.0 * (iso_alpha + other_resin);
        }
    } five_sevenths;
};
inline constexpr family<&bitterness_units_models::asbc_beer_23a> bitterness_units{};

}  // namespace wortmath::bitterness
