#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/bitterness/decay.hpp"

namespace wortmath::bitterness {

namespace detail {

// a b times the sum of (-1)^n h_n/(n + 2)!, h_n = b h_(n-1) + a^n: what has gone both steps, to the last digit for small a and b.
template <class T>
constexpr T degraded_early(T a, T b) {
    T h = T(1.0), power_of_a = T(1.0), sum = T(0.5);
    double factor = 0.5;
    for (int n = 1; n <= 25; ++n) {
        power_of_a = power_of_a * a;
        h = b * h + power_of_a;
        factor /= -(n + 2.0);
        sum = sum + factor * h;
    }
    return a * b * sum;
}

}  // namespace detail

struct isomerisation_fractions_models {
    static constexpr const char* question = "At constant rates, how much of the dissolved alpha acids is left, turned into iso-alpha acids, and degraded?";

    struct fractions {
        unit::fraction alpha_left;
        unit::isomerisation_yield isomerisation_yield;
        unit::fraction degraded;
        static constexpr const char* names[]{"alpha_left", "isomerisation_yield", "degraded"};
    };

    struct first_order : model<struct first_order, fractions(unit::per_minute, unit::per_minute, unit::minutes)> {
        static constexpr facts about{
            .source = "textbook solution of two first-order steps in series",
            .status = evidence::derived,
            .use = "rates of your own; isomerisation takes a temperature instead",
            .accuracy =
                "relative rounding error below 6e-14 for what is left, 3e-14 for the yield, 2e-15 for what is degraded, equal rates and "
                "short times included",
            .note =
                "the textbook form k1/(k2 - k1) (exp(-k1 t) - exp(-k2 t)) is 0/0 for equal rates and loses digits near them: the same "
                "function is used in forms that do not"};
        static constexpr input inputs[]{{"k1", detail::amount}, {"k2", detail::amount}, {"minutes", detail::amount}};

        template <class T>
        static constexpr several<T, 3> formula(T k1, T k2, T t) {
            T a = let("a", k1 * t), b = let("b", k2 * t);
            T left = exp(-a);
            T yield = let("yield", a * detail::mean_decay(a, b));
            T low = least(a, b), high = most(a, b), gap = high - low;
            T far_apart = a * b * (detail::phi(low) - detail::phi(high)) / gap;
            T late = select(gap >= 0.5 * high, far_apart, -expm1(-a) - yield);
            return {{left, yield, select(high <= 1.0, detail::degraded_early(a, b), late)}};
        }
    } first_order;
};
inline constexpr family<&isomerisation_fractions_models::first_order> isomerisation_fractions{};

}  // namespace wortmath::bitterness
