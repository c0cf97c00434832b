#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct from_baume_models {
    static constexpr const char* question = "Which specific gravity is a number of degrees Baume?";

    // The sugar trade's scale.
    struct modulus_145 : model<struct modulus_145, unit::gravity_20_20_true(unit::baume)> {
        static constexpr facts about{.source = "AOAC 942.33 and the NBS sugar tables: modulus 145",
                                     .status = evidence::secondary,
                                     .use = "syrups and malt extract sold by degrees Baume",
                                     .accuracy = "the table of Junk and Pancoast 1973 within 0.04 degBx to 55 degBx and 0.11 to 75",
                                     .note = "three scales bear the name, with other moduli and other temperatures"};
        // where the gravity lies between 0.990 and 1.35, and between 0.95 and 1.50
        static constexpr input inputs[]{
            {"baume", validated{145.0 - 145.0 / 0.990, 145.0 - 145.0 / 1.35}, possible{145.0 - 145.0 / 0.95, 145.0 - 145.0 / 1.50}}};

        template <class T>
        static constexpr T formula(T baume) {
            return 145.0 / (145.0 - baume);
        }
    } modulus_145;

    // The European instruments' scale.
    struct modulus_144_3 : model<struct modulus_144_3, unit::gravity_15_4(unit::baume)> {
        static constexpr facts about{.source = "an instrument maker's manual: modulus 144.3, gravity 15/4",
                                     .status = evidence::primary,
                                     .use = "instruments and density meters that say 15/4 or modulus 144.3"};
        static constexpr input inputs[]{
            {"baume", validated{144.3 - 144.3 / 0.990, 144.3 - 144.3 / 1.35}, possible{144.3 - 144.3 / 0.95, 144.3 - 144.3 / 1.50}}};

        template <class T>
        static constexpr T formula(T baume) {
            return 144.3 / (144.3 - baume);
        }
    } modulus_144_3;

    // The oldest of the rational scales.
    struct gerlach : model<struct gerlach, unit::gravity_15_15(unit::baume)> {
        static constexpr facts about{.source = "Gerlach's scale, modulus 144.32 at 15/15", .status = evidence::memory, .use = "old German tables"};
        static constexpr input inputs[]{
            {"baume", validated{144.32 - 144.32 / 0.990, 144.32 - 144.32 / 1.35}, possible{144.32 - 144.32 / 0.95, 144.32 - 144.32 / 1.50}}};

        template <class T>
        static constexpr T formula(T baume) {
            return 144.32 / (144.32 - baume);
        }
    } gerlach;
};
inline constexpr family<&from_baume_models::modulus_145> from_baume{};

}  // namespace wortmath::gravity
