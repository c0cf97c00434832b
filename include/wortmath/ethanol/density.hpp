#pragma once

#include <cstddef>
#include <utility>

#include "wortmath/model.hpp"

namespace wortmath::ethanol {
namespace detail {

// OIML R 22. A_k multiplies p^(k-1), B_k u^k, C_ik p^k u^i; p is the share of ethanol by mass, u = t - 20.
inline constexpr double A[]{9.982012300E2, -1.929769495E2, 3.891238958E2, -1.668103923E3, 1.352215441E4, -8.829278388E4,
                            3.062874042E5, -6.138381234E5, 7.470172998E5, -5.478461354E5, 2.234460334E5, -3.903285426E4};
inline constexpr double B[]{-2.0618513E-1, -5.2682542E-3, 3.6130013E-5, -3.8957702E-7, 7.1693540E-9, -9.9739231E-11};
inline constexpr double C1[]{1.693443461530087E-1, -1.046914743455169E1, 7.196353469546523E1, -7.047478054272792E2, 3.924090430035045E3, -1.210164659068747E4,
                             2.248646550400788E4,  -2.605562982188164E4, 1.852373922069467E4, -7.420201433430137E3, 1.285617841998974E3};
inline constexpr double C2[]{-1.193013005057010E-2, 2.517399633803461E-1, -2.170575700536993,  1.353034988843029E1,  -5.029988758547014E1,
                             1.096355666577570E2,   -1.422753946421155E2, 1.080435942856230E2, -4.414153236817392E1, 7.442971530188783};
inline constexpr double C3[]{-6.802995733503803E-4, 1.876837790289664E-2, -2.002561813734156E-1, 1.022992966719220,    -2.895696483903638,
                             4.810060584300675,     -4.672147440794683,   2.458043105903461,     -5.411227621436812E-1};
inline constexpr double C4[]{4.075376675622027E-6, -8.763058573471110E-6, 6.515031360099368E-6, -1.515784836987210E-6};
inline constexpr double C5[]{-2.788074354782409E-8, 1.345612883493354E-8};

inline constexpr double at_60F = (60.0 - 32.0) / 1.8 - 20.0;  // as u

template <std::size_t N>
struct coefficients {
    double c[N];
};
// The coefficients of the derivative of c0 + c1 x + ... (Lowest = 0) or c0 x + c1 x^2 + ... (Lowest = 1).
template <std::size_t Lowest, std::size_t N>
consteval auto derived(const double (&c)[N]) {
    coefficients<N + Lowest - 1> d{};
    for (std::size_t k = 1 - Lowest; k < N; ++k) d.c[k + Lowest - 1] = static_cast<double>(k + Lowest) * c[k];
    return d;
}
inline constexpr auto dA = derived<0>(A);
inline constexpr auto dC1 = derived<1>(C1);
inline constexpr auto dC2 = derived<1>(C2);
inline constexpr auto dC3 = derived<1>(C3);
inline constexpr auto dC4 = derived<1>(C4);
inline constexpr auto dC5 = derived<1>(C5);

template <class T, std::size_t N, std::size_t... I>
constexpr T polynomial(T x, const double (&c)[N], std::index_sequence<I...>) {
    return poly(x, c[I]...);
}
template <class T, std::size_t N>
constexpr T polynomial(T x, const double (&c)[N]) {
    return polynomial(x, c, std::make_index_sequence<N>{});
}

// Density in kg/m3 for a share p by mass. Terms up to 7e5 cancel: in single precision up to 0.05 kg/m3 would be lost.
template <class T>
constexpr T density_at_20C(T p) {
    return polynomial(p, A);
}
template <class T>
constexpr T density_of_mixture(T p, T u) {
    T mixed = polynomial(p, C1) + u * (polynomial(p, C2) + u * (polynomial(p, C3) + u * (polynomial(p, C4) + u * polynomial(p, C5))));
    return density_at_20C(p) + u * (polynomial(u, B) + p * mixed);
}
// Its derivative by p.
template <class T>
constexpr T slope_at_20C(T p) {
    return polynomial(p, dA.c);
}
template <class T>
constexpr T slope_of_mixture(T p, T u) {
    return slope_at_20C(p) +
           u * (polynomial(p, dC1.c) + u * (polynomial(p, dC2.c) + u * (polynomial(p, dC3.c) + u * (polynomial(p, dC4.c) + u * polynomial(p, dC5.c)))));
}

// Share by mass at which the mixture holds c kg of ethanol in a cubic metre: p rho(p) = c. The left side rises and bends
// down over the whole range, so each step after the first comes from the same side; five reach rounding.
template <class T>
constexpr T share_from_concentration_at_20C(T c) {
    T x = c / A[0];
    return newton<5>(
        x + 0.2 * square(x), [=](T p) { return p * density_at_20C(p) - c; }, [=](T p) { return density_at_20C(p) + p * slope_at_20C(p); });
}
template <class T>
constexpr T share_from_concentration(T c, T u) {
    T x = c / A[0];
    return newton<5>(
        x + 0.2 * square(x), [=](T p) { return p * density_of_mixture(p, u) - c; }, [=](T p) { return density_of_mixture(p, u) + p * slope_of_mixture(p, u); });
}

// Below 0 degC a weaker mixture freezes: the weakest liquid one, % mass; negative above 0 degC.
inline constexpr double freezing_temperature[]{-20.0, -15.0, -10.0, -5.0, 0.0};
inline constexpr double freezing_strength[]{29.6, 24.5, 18.9, 11.0, 0.0};

template <class T>
constexpr T freezing_line(T temperature) {
    return piecewise_linear(temperature, freezing_temperature, freezing_strength);
}

}  // namespace detail

struct density_models {
    static constexpr const char* question = "What is the density of a mixture of water and ethanol?";

    // The formula behind the legal alcohol tables of most countries.
    struct oiml_r22 : model<struct oiml_r22, unit::density(unit::alcohol_by_mass, unit::celsius)> {
        static constexpr facts about{
            .source =
                "OIML R 22, International Alcoholometric Tables (1973, edition 1975); Council Directive 76/766/EEC, Annex, OJ L 262, 27.9.1976, p. 149-152",
            .status = evidence::secondary,
            .use = "mixtures of water and ethanol, distillates too; for beer see beer.density",
            .accuracy = "printed cells within 0.003 kg/m3; older density data from 10 to 40 degC within 0.06 kg/m3 up to 50 % mass",
            .note =
                "the terms A1 to A4, B1 to B4 and eight digits of A5 were read in the original, the others in copies. One copy carries C1,1 = 1.693433...E-1; "
                "used, with ten others: 1.693443...E-1 (4e-5 kg/m3 apart). The temperature is on the scale of 1968: today's costs 0.001 kg/m3 at beer "
                "strengths and 20 degC. The density is in vacuum"};
        static constexpr input inputs[]{{"alcohol_by_mass"}, {"temperature", only{-20, 40}}};
        static constexpr const char* refusal =
            "so weak a mixture is frozen at this temperature: the formula is for liquids; take a higher temperature or a stronger mixture";

        template <class T>
        static constexpr T formula(T alcohol, T temperature) {
            return select(alcohol >= detail::freezing_line(temperature), detail::density_of_mixture(alcohol / 100.0, temperature - 20.0), undefined);
        }
    } oiml_r22;
};
inline constexpr family<&density_models::oiml_r22> density{};

}  // namespace wortmath::ethanol
