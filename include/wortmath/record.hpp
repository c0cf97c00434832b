// A number type that writes down what a formula does with it, so that one text is computed, printed and exported.
//
// Opt-in, and to be included before the models. The kernels and model.hpp know nothing of it.
//
//     recording r;                                             // what follows on this thread is written down here
//     recorded y = bitterness::utilisation.tinseth.formula(r.input(0), r.input(1), recorded(4.15));
//     r.nodes[y.node]                                          // the last step; operands stand before their users
#pragma once

#include <cstring>
#include <string>
#include <type_traits>
#include <unordered_map>
#include <utility>
#include <vector>

#include "wortmath/math.hpp"

namespace wortmath {

// What a step of a recording does with its operands.
enum class step : unsigned char {
    number,    // value
    input,     // argument number `index`
    element,   // element `count` of the list that is argument number `index`
    variable,  // what an iteration looks for
    negative,
    plus,
    minus,
    times,
    over,
    less,
    less_equal,
    greater,
    greater_equal,
    equal,
    not_equal,
    both,
    either,
    opposite,
    choice,    // condition, then, otherwise
    function,  // `name` of one or two operands
    power,     // base, exponent
    square,
    cube,
    poly,  // x, c0, c1, c2, ...
    least,
    most,
    named,      // a step that bears a `name`
    root,       // start, variable, residual, slope; `count` steps of Newton's method
    bracketed,  // low, high, variable, residual, slope
    lines,      // piecewise linear through `xs`, `ys`
    stairs,     // `ys` from each of `xs` on
    // Made afterwards, from terms that are alike:
    sum,     // first, body; over `count` terms or, where `index` is not negative, over the elements of that list
    item,    // number `count` of `ys`, of the loop `index`
    member,  // the element of the list `count` that belongs to this turn of the loop `index`
    running  // first, body: `first` plus what the body has added in earlier turns of the loop `index`
};

struct recorded_step {
    step what;
    const char* name = "";
    double value = 0.0;
    int index = -1, count = 0;
    std::vector<int> of{};
    std::vector<double> xs{}, ys{};
};

struct recorded {
    int node = -1;
    recorded() = default;
    recorded(double x);
    recorded& operator+=(recorded x);
    recorded& operator-=(recorded x);
    recorded& operator*=(recorded x);
    recorded& operator/=(recorded x);
};

// A comparison between recorded numbers, to be used by select.
struct recorded_condition {
    int node = -1;
};

class recording {
public:
    std::vector<recorded_step> nodes;
    bool asked_for_a_number = false;  // the formula looked inside a number: what it did then is not in the recording

    recording() : outer_(current()) { current() = this; }
    ~recording() { current() = outer_; }
    recording(const recording&) = delete;
    recording& operator=(const recording&) = delete;

    static recording*& current() {
        static thread_local recording* now = nullptr;
        return now;
    }

    recorded input(int index) { return at(add({.what = step::input, .index = index})); }
    recorded element(int list, int position) { return at(add({.what = step::element, .index = list, .count = position})); }
    recorded variable() {
        nodes.push_back({.what = step::variable});
        return at(static_cast<int>(nodes.size()) - 1);
    }

    // The step's number; the same step on the same operands is one step.
    int add(recorded_step s) {
        std::string key(1, static_cast<char>(s.what));
        auto put = [&](const auto& x) { key.append(reinterpret_cast<const char*>(&x), sizeof x); };
        put(s.value), put(s.index), put(s.count);
        for (int i : s.of) put(i);
        for (double x : s.xs) put(x);
        for (double y : s.ys) put(y);
        key += s.name;
        auto const [found, fresh] = known_.emplace(std::move(key), static_cast<int>(nodes.size()));
        if (fresh) nodes.push_back(std::move(s));
        return found->second;
    }

    static recorded at(int node) {
        recorded r;
        r.node = node;
        return r;
    }

private:
    recording* outer_;
    std::unordered_map<std::string, int> known_;
};

namespace detail {

inline recorded record(step what, std::initializer_list<int> of, const char* name = "") {
    return recording::at(recording::current()->add({.what = what, .name = name, .of = of}));
}
inline recorded_condition record_condition(step what, int a, int b) {
    recorded_condition c;
    c.node = recording::current()->add({.what = what, .of = b < 0 ? std::vector<int>{a} : std::vector<int>{a, b}});
    return c;
}
inline recorded record_table(step what, recorded x, const double* xs, const double* ys, std::size_t n) {
    return recording::at(recording::current()->add({.what = what, .of = {x.node}, .xs = {xs, xs + n}, .ys = {ys, ys + n}}));
}
inline recorded record_poly(recorded x, std::initializer_list<double> c) {
    recorded_step s{.what = step::poly, .of = {x.node}};
    for (double k : c) s.of.push_back(recorded(k).node);
    return recording::at(recording::current()->add(std::move(s)));
}
inline recorded record_root(step what, int count, std::initializer_list<int> of) {
    return recording::at(recording::current()->add({.what = what, .count = count, .of = of}));
}

}  // namespace detail

inline recorded::recorded(double x) : node(recording::current() ? recording::current()->add({.what = step::number, .value = x}) : -1) {}

inline recorded operator+(recorded a, recorded b) { return detail::record(step::plus, {a.node, b.node}); }
inline recorded operator-(recorded a, recorded b) { return detail::record(step::minus, {a.node, b.node}); }
inline recorded operator*(recorded a, recorded b) { return detail::record(step::times, {a.node, b.node}); }
inline recorded operator/(recorded a, recorded b) { return detail::record(step::over, {a.node, b.node}); }
inline recorded operator-(recorded a) { return detail::record(step::negative, {a.node}); }
inline recorded& recorded::operator+=(recorded x) { return *this = *this + x; }
inline recorded& recorded::operator-=(recorded x) { return *this = *this - x; }
inline recorded& recorded::operator*=(recorded x) { return *this = *this * x; }
inline recorded& recorded::operator/=(recorded x) { return *this = *this / x; }

inline recorded_condition operator<(recorded a, recorded b) { return detail::record_condition(step::less, a.node, b.node); }
inline recorded_condition operator<=(recorded a, recorded b) { return detail::record_condition(step::less_equal, a.node, b.node); }
inline recorded_condition operator>(recorded a, recorded b) { return detail::record_condition(step::greater, a.node, b.node); }
inline recorded_condition operator>=(recorded a, recorded b) { return detail::record_condition(step::greater_equal, a.node, b.node); }
inline recorded_condition operator==(recorded a, recorded b) { return detail::record_condition(step::equal, a.node, b.node); }
inline recorded_condition operator!=(recorded a, recorded b) { return detail::record_condition(step::not_equal, a.node, b.node); }
inline recorded_condition operator&&(recorded_condition a, recorded_condition b) { return detail::record_condition(step::both, a.node, b.node); }
inline recorded_condition operator||(recorded_condition a, recorded_condition b) { return detail::record_condition(step::either, a.node, b.node); }
inline recorded_condition operator!(recorded_condition a) { return detail::record_condition(step::opposite, a.node, -1); }

inline recorded select(recorded_condition c, recorded yes, recorded no) {
    return yes.node == no.node ? yes : detail::record(step::choice, {c.node, yes.node, no.node});
}
inline recorded select(bool c, recorded yes, recorded no) { return c ? yes : no; }

#define WORTMATH_RECORD(f) \
    inline recorded f(recorded x) { return detail::record(step::function, {x.node}, #f); }
WORTMATH_RECORD(exp)
WORTMATH_RECORD(log)
WORTMATH_RECORD(expm1)
WORTMATH_RECORD(log1p)
WORTMATH_RECORD(sqrt)
WORTMATH_RECORD(tanh)
WORTMATH_RECORD(cbrt)
WORTMATH_RECORD(sin)
WORTMATH_RECORD(cos)
WORTMATH_RECORD(fabs)
WORTMATH_RECORD(floor)
#undef WORTMATH_RECORD
inline recorded atan2(recorded y, recorded x) { return detail::record(step::function, {y.node, x.node}, "atan2"); }
inline recorded hypot(recorded x, recorded y) { return detail::record(step::function, {x.node, y.node}, "hypot"); }
inline recorded pow(recorded x, recorded y) { return detail::record(step::function, {x.node, y.node}, "pow"); }
inline recorded power(double base, recorded y) { return detail::record(step::power, {recorded(base).node, y.node}); }

inline recorded let(const char* name, recorded x) { return detail::record(step::named, {x.node}, name); }
inline recorded square(recorded x) { return detail::record(step::square, {x.node}); }
inline recorded cube(recorded x) { return detail::record(step::cube, {x.node}); }
inline recorded least(recorded a, recorded b) { return detail::record(step::least, {a.node, b.node}); }
inline recorded most(recorded a, recorded b) { return detail::record(step::most, {a.node, b.node}); }

inline recorded poly(recorded, double c0) { return recorded(c0); }
template <class... C>
recorded poly(recorded x, double c0, double c1, C... rest) {
    return detail::record_poly(x, {c0, c1, static_cast<double>(rest)...});
}

template <std::size_t N>
recorded piecewise_linear(recorded x, const double (&xs)[N], const double (&ys)[N]) {
    return detail::record_table(step::lines, x, xs, ys, N);
}
template <std::size_t N>
recorded stepped(recorded x, const double (&xs)[N], const double (&ys)[N]) {
    return detail::record_table(step::stairs, x, xs, ys, N);
}

template <int Steps, class Residual, class Slope>
recorded newton(recorded start, Residual residual, Slope slope) {
    recorded const x = recording::current()->variable(), f = residual(x), d = slope(x);
    return detail::record_root(step::root, Steps, {start.node, x.node, f.node, d.node});
}
template <int Steps, class Residual, class Slope>
recorded bracketed(recorded lo, recorded hi, Residual residual, Slope slope) {
    recorded const x = recording::current()->variable(), f = residual(x), d = slope(x);
    return detail::record_root(step::bracketed, Steps, {lo.node, hi.node, x.node, f.node, d.node});
}

// A formula that looks at the number inside cannot be written down.
inline double number(recorded) {
    recording::current()->asked_for_a_number = true;
    return undefined;
}

}  // namespace wortmath
