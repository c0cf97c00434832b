// The vocabulary of a formula. Every function here works on double; the dual number, the recording number and any
// other number type bring their own overloads, found by argument-dependent lookup, so that one text serves all.
#pragma once

#include <cmath>
#include <cstddef>

namespace wortmath {

using ::atan2, ::cbrt, ::cos, ::exp, ::expm1, ::fabs, ::floor, ::hypot, ::log, ::log1p, ::pow, ::sin, ::sqrt, ::tanh;

// The value of a formula where its inputs contradict each other; the model's refusal says why in words.
inline constexpr double undefined = __builtin_nan("");

constexpr double select(bool condition, double yes, double no) noexcept { return condition ? yes : no; }

// Names a step of the printed formula.
constexpr double let(const char*, double x) noexcept { return x; }

// c^y for a constant base: the logarithm is folded at compile time, pow would cost 2.5 times as much.
inline double power(double base, double y) noexcept { return exp(log(base) * y); }

// c0 + c1 x + c2 x^2 + ... by Horner's rule.
template <class T>
constexpr T poly(T, double c0) noexcept {
    return T(c0);
}
template <class T, class... C>
constexpr T poly(T x, double c0, C... rest) noexcept {
    return c0 + x * poly(x, rest...);
}

template <class T>
constexpr T square(T x) noexcept {
    return x * x;
}
template <class T>
constexpr T cube(T x) noexcept {
    return x * x * x;
}

// The smaller and the larger of two; NaN if one of them is.
template <class T>
constexpr T least(T a, T b) noexcept {
    return select(a < b, a, select(a == a, b, a));
}
template <class T>
constexpr T most(T a, T b) noexcept {
    return select(a > b, a, select(a == a, b, a));
}

// Straight lines between the points of a table; beyond its ends the first and the last line go on.
template <class T, std::size_t N>
constexpr T piecewise_linear(T x, const double (&xs)[N], const double (&ys)[N]) {
    T y = ys[0] + (x - xs[0]) * ((ys[1] - ys[0]) / (xs[1] - xs[0]));
    for (std::size_t i = 1; i + 1 < N; ++i) y = select(x > xs[i], ys[i] + (x - xs[i]) * ((ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i])), y);
    return y;
}

// ys[i] from xs[i] up to, but not including, xs[i + 1]; ys[0] below xs[0] too.
template <class T, std::size_t N>
constexpr T stepped(T x, const double (&xs)[N], const double (&ys)[N]) {
    T y = T(ys[0]);
    for (std::size_t i = 1; i < N; ++i) y = select(x >= xs[i], T(ys[i]), y);
    return select(x == x, y, x);
}

// The number inside, without derivatives or records.
constexpr double number(double x) noexcept { return x; }

// A fixed count of Newton steps from a proven start. Other number types overload it where they can do better.
template <int Steps, class T, class Residual, class Slope>
constexpr T newton(T x, Residual residual, Slope slope) {
    for (int i = 0; i < Steps; ++i) x = x - residual(x) / slope(x);
    return x;
}

// The root of a continuous residual between lo and hi, where it changes sign: Chandrupatla's method (inverse quadratic
// where it converges, bisection where it does not), at most Steps evaluations, down to the resolution of a double.
// Where the residual does not change sign the result is undefined.
template <int Steps, class Residual>
double bracketed(double lo, double hi, Residual residual) {
    double a = hi, b = lo, c = lo, fa = residual(a), fb = residual(b), fc = fb, t = 0.5;
    if (fa == 0.0) return a;
    if (fb == 0.0) return b;
    if (!((fa < 0.0) != (fb < 0.0))) return undefined;
    for (int i = 0; i < Steps; ++i) {
        double const x = a + t * (b - a), fx = residual(x);
        if (fx == 0.0) return x;
        if ((fx < 0.0) == (fa < 0.0)) {
            c = a, fc = fa;
        } else {
            c = b, b = a, fc = fb, fb = fa;
        }
        a = x, fa = fx;
        double const best = fabs(fa) < fabs(fb) ? a : b, resolution = 4.5e-16 * fabs(best) + 1e-300, half = resolution / fabs(b - c);
        if (half > 0.5) return best;
        double const xi = (a - b) / (c - b), phi = (fa - fb) / (fc - fb);
        t = phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi
                ? fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
                : 0.5;
        t = t < half ? half : t > 1.0 - half ? 1.0 - half : t;
    }
    return fabs(fa) < fabs(fb) ? a : b;
}

// The same on any number type: the root is found on plain numbers, one step of Newton's method carries what else T carries.
template <int Steps, class T, class Residual, class Slope>
constexpr T bracketed(T lo, T hi, Residual residual, Slope slope) {
    double const root = bracketed<Steps>(number(lo), number(hi), [&](double x) -> double { return number(residual(T(x))); });
    return newton<1>(T(root), residual, slope);
}

// Several numbers of an argument that is a list.
template <class T>
struct series {
    const T* data;
    std::size_t count;
    constexpr std::size_t size() const noexcept { return count; }
    constexpr const T& operator[](std::size_t i) const noexcept { return data[i]; }
    constexpr const T* begin() const noexcept { return data; }
    constexpr const T* end() const noexcept { return data + count; }
};

// An argument without a number in its place, if it is not given.
template <class T>
struct maybe {
    T value{};
    bool given = false;
};

// Several results of one formula, in the order of the fields of the model's result type.
template <class T, std::size_t N>
struct several {
    T values[N];
    constexpr const T& operator[](std::size_t i) const noexcept { return values[i]; }
};

}  // namespace wortmath
