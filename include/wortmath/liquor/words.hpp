// Salts, ions and acids of water treatment, and what they are made of.
#pragma once

#include "wortmath/liquor/atomic_weights.hpp"
#include "wortmath/model.hpp"

namespace wortmath {

namespace word {
enum class salt {
    calcium_sulphate_dihydrate,
    calcium_sulphate_anhydrous,
    calcium_chloride_dihydrate,
    calcium_chloride_anhydrous,
    magnesium_sulphate_heptahydrate,
    magnesium_chloride_hexahydrate,
    sodium_bicarbonate,
    sodium_carbonate_anhydrous,
    calcium_carbonate,
    calcium_hydroxide,
    sodium_chloride,
    potassium_chloride,
    sodium_hydroxide
};
enum class ion { calcium, magnesium, sodium, potassium, sulphate, chloride, bicarbonate, carbonate, hydroxide };
enum class metabisulphite { potassium_metabisulphite, sodium_metabisulphite };
enum class acid { lactic, phosphoric, citric, hydrochloric, sulphuric };
}  // namespace word

template <>
struct spelled<word::salt> {
    static constexpr const char* names[]{"calcium_sulphate_dihydrate",
                                         "calcium_sulphate_anhydrous",
                                         "calcium_chloride_dihydrate",
                                         "calcium_chloride_anhydrous",
                                         "magnesium_sulphate_heptahydrate",
                                         "magnesium_chloride_hexahydrate",
                                         "sodium_bicarbonate",
                                         "sodium_carbonate_anhydrous",
                                         "calcium_carbonate",
                                         "calcium_hydroxide",
                                         "sodium_chloride",
                                         "potassium_chloride",
                                         "sodium_hydroxide"};
};
template <>
struct spelled<word::ion> {
    static constexpr const char* names[]{"calcium", "magnesium", "sodium", "potassium", "sulphate", "chloride", "bicarbonate", "carbonate", "hydroxide"};
};
template <>
struct spelled<word::metabisulphite> {
    static constexpr const char* names[]{"potassium_metabisulphite", "sodium_metabisulphite"};
};
template <>
struct spelled<word::acid> {
    static constexpr const char* names[]{"lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"};
};

namespace liquor {

struct salt_composition {
    double ions[9];  // of each ion, in the order of the words
    double waters;   // of crystallisation
};

inline constexpr double ion_masses[]{element::Ca, element::Mg,      element::Na,    element::K,    sulphate_mass,
                                     element::Cl, bicarbonate_mass, carbonate_mass, hydroxide_mass};

// clang-format off
//                                             Ca Mg Na K SO4 Cl HCO3 CO3 OH  water
inline constexpr salt_composition salts[]{{{1, 0, 0, 0, 1, 0, 0, 0, 0}, 2},   // calcium sulphate dihydrate
                                          {{1, 0, 0, 0, 1, 0, 0, 0, 0}, 0},   // calcium sulphate
                                          {{1, 0, 0, 0, 0, 2, 0, 0, 0}, 2},   // calcium chloride dihydrate
                                          {{1, 0, 0, 0, 0, 2, 0, 0, 0}, 0},   // calcium chloride
                                          {{0, 1, 0, 0, 1, 0, 0, 0, 0}, 7},   // magnesium sulphate heptahydrate
                                          {{0, 1, 0, 0, 0, 2, 0, 0, 0}, 6},   // magnesium chloride hexahydrate
                                          {{0, 0, 1, 0, 0, 0, 1, 0, 0}, 0},   // sodium bicarbonate
                                          {{0, 0, 2, 0, 0, 0, 0, 1, 0}, 0},   // sodium carbonate
                                          {{1, 0, 0, 0, 0, 0, 0, 1, 0}, 0},   // calcium carbonate
                                          {{1, 0, 0, 0, 0, 0, 0, 0, 2}, 0},   // calcium hydroxide
                                          {{0, 0, 1, 0, 0, 1, 0, 0, 0}, 0},   // sodium chloride
                                          {{0, 0, 0, 1, 0, 1, 0, 0, 0}, 0},   // potassium chloride
                                          {{0, 0, 1, 0, 0, 0, 0, 0, 1}, 0}};  // sodium hydroxide
// clang-format on

// The mass of an ion in a gram of a salt.
constexpr double mass_fraction_in(word::salt s, word::ion i) noexcept {
    salt_composition const& c = salts[static_cast<int>(s)];
    double salt_mass = c.waters * water_mass;
    for (int k = 0; k < 9; ++k) salt_mass += c.ions[k] * ion_masses[k];
    return c.ions[static_cast<int>(i)] * ion_masses[static_cast<int>(i)] / salt_mass;
}

inline constexpr double metabisulphite_masses[]{2.0 * element::K + 2.0 * element::S + 5.0 * element::O,    // K2S2O5 222.312
                                                2.0 * element::Na + 2.0 * element::S + 5.0 * element::O};  // Na2S2O5 190.095

struct acid_constants {
    double molar_mass;
    int protons;
    double pk[3];  // 25 degC, zero ionic strength
};

// Phosphoric and citric: NIST critical constants as in the PHREEQC data base minteq.v4; lactic read; hydrochloric and sulphuric from memory.
inline constexpr acid_constants acids[]{{3.0 * element::C + 6.0 * element::H + 3.0 * element::O, 1, {3.86}},                 // C3H6O3 90.078
                                        {3.0 * element::H + element::P + 4.0 * element::O, 3, {2.148, 7.198, 12.375}},       // H3PO4 97.994
                                        {6.0 * element::C + 8.0 * element::H + 7.0 * element::O, 3, {3.128, 4.761, 6.396}},  // C6H8O7 192.123
                                        {element::H + element::Cl, 1, {-7.0}},                                               // HCl 36.458
                                        {2.0 * element::H + element::S + 4.0 * element::O, 2, {-3.0, 1.99}}};                // H2SO4 98.072

}  // namespace liquor
}  // namespace wortmath
