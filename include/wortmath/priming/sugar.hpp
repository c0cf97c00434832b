// The sugars that priming knows, and what fermentation makes of them.
#pragma once

#include "wortmath/model.hpp"

namespace wortmath::word {
enum class sugar { glucose, fructose, glucose_monohydrate, sucrose, maltose, maltose_monohydrate, maltotriose, lactose };
}  // namespace wortmath::word

template <>
struct wortmath::spelled<wortmath::word::sugar> {
    static constexpr const char* names[]{"glucose", "fructose", "glucose_monohydrate", "sucrose", "maltose", "maltose_monohydrate", "maltotriose", "lactose"};
};

namespace wortmath::priming::detail {

// Moles of CO2, and of ethanol, that one mole of the sugar gives; ale and lager yeast leave lactose alone.
inline constexpr double moles_per_mole[]{2.0, 2.0, 2.0, 4.0, 4.0, 4.0, 6.0, 0.0};
inline constexpr double g_per_mol_sugar[]{180.1559, 180.1559, 198.1712, 342.2965, 342.2965, 360.3118, 504.4371, 342.2965};

constexpr double moles_per_gram(word::sugar s) noexcept {
    return moles_per_mole[static_cast<int>(s)] / g_per_mol_sugar[static_cast<int>(s)];
}

}  // namespace wortmath::priming::detail
