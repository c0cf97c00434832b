#pragma once

#include "wortmath/model.hpp"

namespace wortmath::gravity {

struct to_baume_models {
    static constexpr const char* question = "How many degrees Baume is a specific gravity?";

    // The sugar trade's scale.
    struct modulus_145 : model<struct modulus_145, unit::baume(unit::gravity_20_20_true)> {
        static constexpr facts about{.source = "AOAC 942.33 and the NBS sugar tables: modulus 145",
                                     .status = evidence::secondary,
                                     .use = "syrups and malt extract sold by degrees Baume",
                                     .accuracy = "the table of Junk and Pancoast 1973 within 0.016 degBe",
                                     .note = "three scales bear the name, with other moduli and other temperatures"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 145.0 - 145.0 / S;
        }
    } modulus_145;

    // The European instruments' scale.
    struct modulus_144_3 : model<struct modulus_144_3, unit::baume(unit::gravity_15_4)> {
        static constexpr facts about{.source = "an instrument maker's manual: modulus 144.3, gravity 15/4",
                                     .status = evidence::primary,
                                     .use = "instruments and density meters that say 15/4 or modulus 144.3",
                                     .note = "the manual prints (1/S - 1)(-144.3), which is the same"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 144.3 - 144.3 / S;
        }
    } modulus_144_3;

    // The oldest of the rational scales.
    struct gerlach : model<struct gerlach, unit::baume(unit::gravity_15_15)> {
        static constexpr facts about{.source = "Gerlach's scale, modulus 144.32 at 15/15", .status = evidence::memory, .use = "old German tables"};
        static constexpr input inputs[]{{"gravity", validated{0.990, 1.35}, possible{0.95, 1.50}}};

        template <class T>
        static constexpr T formula(T S) {
            return 144.32 - 144.32 / S;
        }
    } gerlach;
};
inline constexpr family<&to_baume_models::modulus_145> to_baume{};

}  // namespace wortmath::gravity
