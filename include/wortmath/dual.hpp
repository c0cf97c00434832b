// A number that carries its derivatives: formulas run on it unchanged, and every result knows how it moves with N inputs.
//
// Values follow the same arithmetic as on plain numbers, in the same order, so that they are the same to the last digit.
// Comparisons look at the value alone; at a kink the derivative is that of the branch that the value takes.
#pragma once

#include <cstddef>

#include "wortmath/math.hpp"

namespace wortmath {

template <std::size_t N>
struct dual {
    double value = 0.0;
    double by[N > 0 ? N : 1]{};

    constexpr dual() noexcept = default;
    constexpr dual(double v) noexcept : value(v) {}
    // The input number `at`: it moves with itself.
    static constexpr dual input(double v, std::size_t at) noexcept {
        dual x(v);
        x.by[at] = 1.0;
        return x;
    }

    constexpr dual& operator+=(const dual& b) noexcept { return *this = *this + b; }
    constexpr dual& operator-=(const dual& b) noexcept { return *this = *this - b; }
    constexpr dual& operator*=(const dual& b) noexcept { return *this = *this * b; }
    constexpr dual& operator/=(const dual& b) noexcept { return *this = *this / b; }

    constexpr dual operator-() const noexcept {
        dual r(-value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = -by[i];
        return r;
    }
    constexpr dual operator+() const noexcept { return *this; }

    friend constexpr dual operator+(const dual& a, const dual& b) noexcept {
        dual r(a.value + b.value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = a.by[i] + b.by[i];
        return r;
    }
    friend constexpr dual operator+(const dual& a, double b) noexcept {
        dual r = a;
        r.value += b;
        return r;
    }
    friend constexpr dual operator+(double a, const dual& b) noexcept {
        dual r = b;
        r.value = a + b.value;
        return r;
    }
    friend constexpr dual operator-(const dual& a, const dual& b) noexcept {
        dual r(a.value - b.value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = a.by[i] - b.by[i];
        return r;
    }
    friend constexpr dual operator-(const dual& a, double b) noexcept {
        dual r = a;
        r.value -= b;
        return r;
    }
    friend constexpr dual operator-(double a, const dual& b) noexcept {
        dual r(a - b.value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = -b.by[i];
        return r;
    }
    friend constexpr dual operator*(const dual& a, const dual& b) noexcept {
        dual r(a.value * b.value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = a.by[i] * b.value + a.value * b.by[i];
        return r;
    }
    friend constexpr dual operator*(const dual& a, double b) noexcept {
        dual r(a.value * b);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = a.by[i] * b;
        return r;
    }
    friend constexpr dual operator*(double a, const dual& b) noexcept {
        dual r(a * b.value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = a * b.by[i];
        return r;
    }
    friend constexpr dual operator/(const dual& a, const dual& b) noexcept {
        dual r(a.value / b.value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = (a.by[i] - r.value * b.by[i]) / b.value;
        return r;
    }
    friend constexpr dual operator/(const dual& a, double b) noexcept {
        dual r(a.value / b);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = a.by[i] / b;
        return r;
    }
    friend constexpr dual operator/(double a, const dual& b) noexcept {
        dual r(a / b.value);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = -r.value * b.by[i] / b.value;
        return r;
    }

    friend constexpr bool operator==(const dual& a, const dual& b) noexcept { return a.value == b.value; }
    friend constexpr bool operator!=(const dual& a, const dual& b) noexcept { return a.value != b.value; }
    friend constexpr bool operator<(const dual& a, const dual& b) noexcept { return a.value < b.value; }
    friend constexpr bool operator>(const dual& a, const dual& b) noexcept { return a.value > b.value; }
    friend constexpr bool operator<=(const dual& a, const dual& b) noexcept { return a.value <= b.value; }
    friend constexpr bool operator>=(const dual& a, const dual& b) noexcept { return a.value >= b.value; }

    friend constexpr double number(const dual& a) noexcept { return a.value; }
    friend constexpr dual select(bool condition, const dual& yes, const dual& no) noexcept { return condition ? yes : no; }
    friend constexpr dual let(const char*, const dual& x) noexcept { return x; }

    // f(x) where the value and the slope of f are known. What does not move stays at rest, however steep f is there.
    static constexpr dual chain(double v, double slope, const dual& x) noexcept {
        dual r(v);
        for (std::size_t i = 0; i < N; ++i) r.by[i] = x.by[i] == 0.0 ? 0.0 : slope * x.by[i];
        return r;
    }

    friend dual exp(const dual& x) noexcept {
        double const e = ::exp(x.value);
        return chain(e, e, x);
    }
    friend dual expm1(const dual& x) noexcept { return chain(::expm1(x.value), ::exp(x.value), x); }
    friend dual log(const dual& x) noexcept { return chain(::log(x.value), 1.0 / x.value, x); }
    friend dual log1p(const dual& x) noexcept { return chain(::log1p(x.value), 1.0 / (1.0 + x.value), x); }
    friend dual sqrt(const dual& x) noexcept {
        double const s = ::sqrt(x.value);
        return chain(s, 0.5 / s, x);
    }
    friend dual cbrt(const dual& x) noexcept {
        double const c = ::cbrt(x.value);
        return chain(c, 1.0 / (3.0 * c * c), x);
    }
    friend dual sin(const dual& x) noexcept { return chain(::sin(x.value), ::cos(x.value), x); }
    friend dual cos(const dual& x) noexcept { return chain(::cos(x.value), -::sin(x.value), x); }
    friend dual tanh(const dual& x) noexcept {
        double const t = ::tanh(x.value);
        return chain(t, (1.0 - t) * (1.0 + t), x);
    }
    friend dual fabs(const dual& x) noexcept { return chain(::fabs(x.value), x.value < 0.0 ? -1.0 : 1.0, x); }
    friend dual floor(const dual& x) noexcept { return dual(::floor(x.value)); }
    friend dual atan2(const dual& y, const dual& x) noexcept {
        dual r(::atan2(y.value, x.value));
        double const squares = x.value * x.value + y.value * y.value;
        for (std::size_t i = 0; i < N; ++i) {
            double const turn = x.value * y.by[i] - y.value * x.by[i];
            r.by[i] = turn == 0.0 ? 0.0 : turn / squares;
        }
        return r;
    }
    friend dual hypot(const dual& x, const dual& y) noexcept {
        dual r(::hypot(x.value, y.value));
        for (std::size_t i = 0; i < N; ++i) {
            double const along = x.value * x.by[i] + y.value * y.by[i];
            r.by[i] = along == 0.0 ? 0.0 : along / r.value;
        }
        return r;
    }
    friend dual pow(const dual& x, const dual& y) noexcept {
        double const p = ::pow(x.value, y.value);
        dual r = chain(p, y.value == 0.0 ? 0.0 : y.value * ::pow(x.value, y.value - 1.0), x);
        for (std::size_t i = 0; i < N; ++i)
            if (y.by[i] != 0.0) r.by[i] += (p == 0.0 ? 0.0 : p * ::log(x.value)) * y.by[i];
        return r;
    }
    friend dual power(double base, const dual& y) noexcept {
        double const rate = ::log(base), p = ::exp(rate * y.value);
        return chain(p, rate * p, y);
    }
};

// Horner's rule for the value and the slope at once.
template <std::size_t N, class... C>
constexpr dual<N> poly(const dual<N>& x, double c0, C... rest) noexcept {
    double const c[]{c0, static_cast<double>(rest)...};
    double y = c[sizeof...(rest)], slope = 0.0;
    for (std::size_t i = sizeof...(rest); i-- > 0;) {
        slope = slope * x.value + y;
        y = c[i] + x.value * y;
    }
    return dual<N>::chain(y, slope, x);
}

namespace detail {
// The derivatives of the root of a residual at a known place: dx = -(dr/dp)/(dr/dx). The rounds make up for a slope that
// is not exact (each gains as many digits as the slope has); an exact one is done after the first.
template <std::size_t N, class Residual>
constexpr dual<N> rooted(double root, double slope, Residual residual) {
    dual<N> x(root);
    for (int round = 0; round < 5; ++round) {
        dual<N> const r = residual(x);
        bool moved = false;
        for (std::size_t i = 0; i < N; ++i) {
            double const change = r.by[i] / slope;
            moved = moved || !(::fabs(change) <= 1e-14 * ::fabs(x.by[i]));
            x.by[i] -= change;
        }
        if (!moved) break;
    }
    return x;
}
}  // namespace detail

// The steps are those of plain numbers; the derivatives come from the root they end at.
template <int Steps, std::size_t N, class Residual, class Slope>
constexpr dual<N> newton(dual<N> start, Residual residual, Slope slope) {
    double x = start.value;
    for (int i = 0; i < Steps; ++i) x = x - number(residual(dual<N>(x))) / number(slope(dual<N>(x)));
    return detail::rooted<N>(x, number(slope(dual<N>(x))), residual);
}

template <int Steps, std::size_t N, class Residual, class Slope>
constexpr dual<N> bracketed(dual<N> lo, dual<N> hi, Residual residual, Slope slope) {
    double const root = bracketed<Steps>(lo.value, hi.value, [&](double x) -> double { return number(residual(dual<N>(x))); });
    double const x = root - number(residual(dual<N>(root))) / number(slope(dual<N>(root)));
    return detail::rooted<N>(x, number(slope(dual<N>(x))), residual);
}

}  // namespace wortmath
