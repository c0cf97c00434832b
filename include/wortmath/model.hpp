// What a model and a family are: one published answer to one question, and one question with all its answers.
//
// A model is written once, as a template on the number type; the typed call, the range check, the array kernels, the
// printed formula and the derivatives are made from it. DEVELOPERS.md shows how to write one.
#pragma once

#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <utility>

#include "wortmath/math.hpp"
#include "wortmath/scale.hpp"

namespace wortmath {

// ---- what is known about a model ------------------------------------------------------------------------------------

enum class evidence : unsigned char { primary, secondary, memory, derived };

constexpr const char* spelled_out(evidence e) noexcept {
    constexpr const char* words[]{"primary", "secondary", "memory", "derived"};
    return words[static_cast<int>(e)];
}

struct facts {
    const char* source;
    evidence status;
    const char* use = "";        // when to take this model rather than its siblings
    const char* accuracy = "";   // as stated by the source or measured against tables
    const char* note = "";       // traps, and misprints in circulation: what is printed, what is used, why
    const char* danger = "";     // set where an error can hurt someone: which direction, and why nothing is extrapolated
};

enum class policy : unsigned char {
    raise,        // outside the validated region: an exception
    nan,          // outside the validated region: not a number
    extrapolate,  // outside the validated region: computed, nobody vouches; impossible input is still an exception
};

// ---- inputs ---------------------------------------------------------------------------------------------------------

struct validated {
    double lo, hi;
};
struct possible {
    double lo, hi;
};
struct only {  // supported and computable are the same region
    double lo, hi;
};
struct otherwise {
    double value;
    constexpr explicit otherwise(double v) noexcept : value(v) {}
    constexpr explicit otherwise(int v) noexcept : value(v) {}
    template <class Word>
        requires __is_enum(Word)
    constexpr explicit otherwise(Word w) noexcept : value(static_cast<double>(w)) {}
    constexpr explicit otherwise(bool b) noexcept : value(b ? 1.0 : 0.0) {}
};
struct otherwise_none {};
struct beyond {  // said in place of the range to whoever exceeds what is possible
    const char* words;
};

// The open end of an interval: the nearest number beyond.
constexpr double above(double x) noexcept { return x == 0.0 ? 4.9406564584124654e-324 : x > 0.0 ? x * (1.0 + 2.3e-16) : x * (1.0 - 1.2e-16); }
constexpr double below(double x) noexcept { return -above(-x); }

struct limits {
    double valid_lo = -no_limit, valid_hi = no_limit;  // validated
    double lo = -no_limit, hi = no_limit;              // possible
    // NaN lies in every region: it passes through a formula as NaN. (Written so that an infinite limit costs nothing.)
    constexpr bool validates(double x) const noexcept { return !(x < valid_lo) && !(x > valid_hi); }
    constexpr bool allows(double x) const noexcept { return !(x < lo) && !(x > hi); }
};

struct input {
    const char* name;
    double fallback = 0.0;
    bool optional = false, optional_none = false;
    bool has_validated = false, has_possible = false;
    limits range{};
    const char* beyond_words = nullptr;

    template <class... Parts>
    constexpr input(const char* n, Parts... parts) noexcept : name(n) {
        (take(parts), ...);
    }
    constexpr void take(validated v) noexcept { range.valid_lo = v.lo, range.valid_hi = v.hi, has_validated = true; }
    constexpr void take(possible p) noexcept { range.lo = p.lo, range.hi = p.hi, has_possible = true; }
    constexpr void take(only o) noexcept { take(validated{o.lo, o.hi}), take(possible{o.lo, o.hi}); }
    constexpr void take(otherwise o) noexcept { fallback = o.value, optional = true; }
    constexpr void take(beyond b) noexcept { beyond_words = b.words; }
    constexpr void take(otherwise_none) noexcept { optional = optional_none = true; }
};

// ---- words ----------------------------------------------------------------------------------------------------------

// How the words of an enumeration are spelled: specialise with `static constexpr const char* names[]`.
template <class Word>
struct spelled;

template <class Word>
inline constexpr std::size_t word_count = sizeof(spelled<Word>::names) / sizeof(const char*);

// A result that is one word, and one that is several words at once.
template <class Word>
struct name_of {
    Word value;
    constexpr explicit name_of(double code) noexcept : value(static_cast<Word>(static_cast<int>(code))) {}
    constexpr operator Word() const noexcept { return value; }
    constexpr const char* text() const noexcept { return spelled<Word>::names[static_cast<int>(value)]; }
};
template <class Word>
struct names_of {
    unsigned bits;
    constexpr explicit names_of(double mask) noexcept : bits(static_cast<unsigned>(mask)) {}
    constexpr bool contains(Word w) const noexcept { return (bits >> static_cast<int>(w)) & 1u; }
};

// ---- errors ---------------------------------------------------------------------------------------------------------

enum class region : unsigned char { unvalidated, impossible, joint };

// A model refuses. `what()` is a sentence for the person who gave the value.
class range_error : public std::exception {
public:
    const char* model = "";
    const char* argument = "";
    double value = 0.0;
    limits range{};
    region where = region::impossible;
    char text[640] = "";
    const char* what() const noexcept override { return text; }
};

struct sibling {
    const char* model = nullptr;
    limits range{};
};

namespace detail {

// "12 is not a specific gravity ...; is it degrees Plato?"
inline int hint(char* out, std::size_t room, const scale& s, const limits& r, double v) noexcept {
    switch (s.slip) {
        case likely::gravity:
            if (v > 1.4 && v <= 45.0) return std::snprintf(out, room, "; is it degrees Plato? extract.to_gravity makes a gravity of them");
            if (v >= 900.0 && v <= 1400.0) return std::snprintf(out, room, "; is it %.4f?", v / 1000.0);
            break;
        case likely::extract:
            if (v >= 900.0 && v <= 1400.0) return std::snprintf(out, room, "; is it a gravity of %.4f? extract.from_gravity makes degrees Plato of it", v / 1000.0);
            break;
        case likely::share:
            if (v > 1.0 && v <= 110.0) return std::snprintf(out, room, "; is it per cent? %g %% is %g", v, v / 100.0);
            break;
        case likely::temperature:
            if (r.allows((v - 32.0) / 1.8) && !r.allows(v)) return std::snprintf(out, room, "; is it degF? %g degF is %.1f degC", v, (v - 32.0) / 1.8);
            if (r.allows(v - 273.15) && !r.allows(v)) return std::snprintf(out, room, "; is it kelvin? %g K is %.1f degC", v, v - 273.15);
            break;
        case likely::pressure:
            if (r.allows(v / 1000.0) && v >= 100.0) return std::snprintf(out, room, "; is it mbar or hPa? %g mbar is %g bar", v, v / 1000.0);
            if (r.allows(v * 0.0689475729) && !r.allows(v)) return std::snprintf(out, room, "; is it psi? %g psi is %.3f bar", v, v * 0.0689475729);
            break;
        case likely::percent:
        case likely::nothing: break;
    }
    return 0;
}

inline int bounds(char* out, std::size_t room, double lo, double hi, const char* unit) noexcept {
    bool const plain = unit[0] == '\0' || (unit[0] == 'r' && unit[1] == 'a') || (unit[0] == 'f' && unit[1] == 'r') || (unit[0] == 'a' && unit[1] == 'n');
    const char* const gap = plain ? "" : " ";
    const char* const u = plain ? "" : unit;
    // The largest finite number keeps infinity out; to a reader it is no limit at all.
    if (hi > 1e308) hi = no_limit;
    if (lo < -1e308) lo = -no_limit;
    // An open end is the nearest number beyond; its printed form is the limit itself.
    auto round_number = [](double x) {
        char t[40];
        std::snprintf(t, sizeof t, "%.9g", x);
        return std::strtod(t, nullptr);
    };
    bool const open_lo = lo > -no_limit && lo > round_number(lo), open_hi = hi < no_limit && hi < round_number(hi);
    bool const from_zero = lo > 0.0 && lo < 1e-300;
    double const shown_lo = from_zero ? 0.0 : lo;
    if (lo == -no_limit && hi == no_limit) return std::snprintf(out, room, "any");
    if (hi == no_limit) return std::snprintf(out, room, open_lo || from_zero ? "above %.9g%s%s" : "%.9g%s%s or more", shown_lo, gap, u);
    if (lo == -no_limit) return std::snprintf(out, room, open_hi ? "below %.9g%s%s" : "%.9g%s%s at most", hi, gap, u);
    return std::snprintf(out, room, "%s%.9g %s %.9g%s%s", open_lo || from_zero ? "above " : "", shown_lo, open_hi ? "to below" : "to", hi, gap, u);
}

struct writer {
    char* out;
    std::size_t room;
    void moved(int n) noexcept {
        std::size_t const k = n < 0 ? 0 : static_cast<std::size_t>(n) < room ? static_cast<std::size_t>(n) : (room ? room - 1 : 0);
        out += k, room -= k;
    }
};

// The sentence of an input outside its region. The same for C++ and Python.
inline void refusal_sentence(range_error& e, const scale& s, const sibling& other, const char* beyond_words) noexcept {
    writer w{e.text, sizeof e.text};
    double const v = e.value;
    w.moved(std::snprintf(w.out, w.room, "%s: %s = %.10g ", e.model, e.argument, v));
    if (e.where == region::impossible && beyond_words && v > e.range.hi) {
        w.moved(std::snprintf(w.out, w.room, "is %s", beyond_words));
    } else if (e.where == region::impossible) {
        // A temperature of 70 degC is a temperature all the same, if this model ends at 50.
        bool const of_its_kind = v >= s.least && v <= s.most && (s.least > -no_limit || s.most < no_limit || s.slip == likely::nothing);
        w.moved(std::snprintf(w.out, w.room, "%s%s (", v != v ? "is not a number, and this model needs " : of_its_kind ? "is beyond what this model can compute" : "is not ", of_its_kind && v == v ? "" : s.noun));
        w.moved(bounds(w.out, w.room, e.range.lo, e.range.hi, s.unit));
        w.moved(std::snprintf(w.out, w.room, ")"));
        w.moved(hint(w.out, w.room, s, e.range, v));
    } else {
        w.moved(std::snprintf(w.out, w.room, "is outside the validated range ("));
        w.moved(bounds(w.out, w.room, e.range.valid_lo, e.range.valid_hi, s.unit));
        w.moved(std::snprintf(w.out, w.room, ")"));
        if (other.model) {
            w.moved(std::snprintf(w.out, w.room, "; %s covers it (", other.model));
            w.moved(bounds(w.out, w.room, other.range.valid_lo, other.range.valid_hi, s.unit));
            w.moved(std::snprintf(w.out, w.room, ")"));
        }
        w.moved(std::snprintf(w.out, w.room, "; the policy \"extrapolate\" computes it unvouched"));
    }
}

// ---- types of a signature -------------------------------------------------------------------------------------------

enum class kind : unsigned char { number, optional_number, list, word, truth };

template <class A>
struct argument;  // what the base needs to know about one type of a signature

template <class S>
struct argument<point<S>> {
    static constexpr kind what = kind::number;
    static constexpr const scale* of = &S::about;
    template <class T>
    using in_formula = T;
    static constexpr double plain(point<S> p) noexcept { return p.value; }
};
template <class S>
struct argument<optional_point<point<S>>> {
    static constexpr kind what = kind::optional_number;
    static constexpr const scale* of = &S::about;
    template <class T>
    using in_formula = maybe<T>;
    static constexpr maybe<double> plain(optional_point<point<S>> p) noexcept { return {p.value, p.given}; }
};
template <class S>
struct argument<list<point<S>>> {
    static constexpr kind what = kind::list;
    static constexpr const scale* of = &S::about;
    template <class T>
    using in_formula = series<T>;
    static series<double> plain(list<point<S>> l) noexcept {
        static_assert(sizeof(point<S>) == sizeof(double));
        return {l.size ? &l.data->value : nullptr, l.size};
    }
};
template <class W>
    requires __is_enum(W)
struct argument<W> {
    static constexpr kind what = kind::word;
    static constexpr scale about{"word", "one of its words", 0, static_cast<double>(word_count<W> - 1)};
    static constexpr const scale* of = &about;
    template <class T>
    using in_formula = W;
    static constexpr W plain(W w) noexcept { return w; }
};
template <>
struct argument<bool> {
    static constexpr kind what = kind::truth;
    static constexpr scale about{"bool", "true or false", 0, 1};
    static constexpr const scale* of = &about;
    template <class T>
    using in_formula = bool;
    static constexpr bool plain(bool b) noexcept { return b; }
};

template <class R>
struct result_field;
template <class S>
struct result_field<point<S>> {
    static constexpr const scale* of = &S::about;
    static constexpr bool whole = requires { S::whole; };
    static constexpr bool truth = false;
    static constexpr const char* const* words = nullptr;
    static constexpr std::size_t words_count = 0;
    static constexpr bool several_words = false;
};
template <>
struct result_field<bool> {
    static constexpr const scale* of = &argument<bool>::about;
    static constexpr bool whole = false, truth = true, several_words = false;
    static constexpr const char* const* words = nullptr;
    static constexpr std::size_t words_count = 0;
};
template <class W>
struct result_field<name_of<W>> {
    static constexpr scale about{"name", "a name"};
    static constexpr const scale* of = &about;
    static constexpr bool whole = false, truth = false, several_words = false;
    static constexpr const char* const* words = spelled<W>::names;
    static constexpr std::size_t words_count = word_count<W>;
};
template <class W>
struct result_field<names_of<W>> {
    static constexpr scale about{"list of names", "a list of names"};
    static constexpr const scale* of = &about;
    static constexpr bool whole = false, truth = false, several_words = true;
    static constexpr const char* const* words = spelled<W>::names;
    static constexpr std::size_t words_count = word_count<W>;
};

template <class R>
inline constexpr bool is_several = requires { R::names; } && !requires { R::scale_type::about; };

template <class... A>
struct types {
    static constexpr std::size_t count = sizeof...(A);
};

// The fields of a result with names, as types.
template <class R>
struct fields_of {
    using list = types<R>;
};
template <class R>
    requires is_several<R>
struct fields_of<R> {
    static constexpr std::size_t count = sizeof(R::names) / sizeof(const char*);
    static consteval auto peel() {
        R* r = nullptr;
        if constexpr (count == 1) { auto& [a] = *r; return types<std::remove_cvref_t<decltype(a)>>{}; }
        else if constexpr (count == 2) { auto& [a, b] = *r; return types<std::remove_cvref_t<decltype(a)>, std::remove_cvref_t<decltype(b)>>{}; }
        else if constexpr (count == 3) { auto& [a, b, c] = *r; return types<std::remove_cvref_t<decltype(a)>, std::remove_cvref_t<decltype(b)>, std::remove_cvref_t<decltype(c)>>{}; }
        else { static_assert(count == 4); auto& [a, b, c, d] = *r; return types<std::remove_cvref_t<decltype(a)>, std::remove_cvref_t<decltype(b)>, std::remove_cvref_t<decltype(c)>, std::remove_cvref_t<decltype(d)>>{}; }
    }
    using list = decltype(peel());
};

template <class F>
constexpr F made(double v) {
    if constexpr (__is_same(F, bool)) return v != 0.0;
    else return F(v);
}
template <class R, class... F, class V, std::size_t... I>
constexpr R packed(types<F...>, const V& v, std::index_sequence<I...>) {
    if constexpr (is_several<R>) return R{made<F>(v[I])...};
    else return (made<F>(v), ...);
}
template <class R, class V>
constexpr R packed(const V& v) {
    using fields = typename fields_of<R>::list;
    return packed<R>(fields{}, v, std::make_index_sequence<fields::count>{});
}

// "wortmath::bitterness::utilisation_models::tinseth" -> bitterness, utilisation, tinseth
template <class M>
consteval const char* type_name() {
    return __PRETTY_FUNCTION__;
}
struct path_text {
    char full[128]{};
    std::size_t topic = 0, family = 0;  // where the first and the second dot stand
};
consteval path_text path_from(const char* pretty) {
    const char* p = pretty;
    while (!(p[0] == 'M' && p[1] == ' ' && p[2] == '=' && p[3] == ' ')) ++p;
    p += 4;
    const char library[] = "wortmath::";
    std::size_t skip = 0;
    while (library[skip] && p[skip] == library[skip]) ++skip;
    if (!library[skip]) p += skip;
    path_text out;
    std::size_t n = 0;
    for (; *p != ']' && *p != ';'; ++p) {
        const char tail[] = "_models::";
        std::size_t k = 0;
        while (tail[k] && p[k] == tail[k]) ++k;
        if (!tail[k]) p += 7;
        if (p[0] == ':' && p[1] == ':') {
            (out.topic ? out.family : out.topic) = n;
            out.full[n++] = '.';
            ++p;
        } else {
            out.full[n++] = *p;
        }
    }
    return out;
}
template <class M>
inline constexpr path_text path_of = path_from(type_name<M>());

}  // namespace detail

// ---- the base of every model ----------------------------------------------------------------------------------------

template <class M, class Signature>
struct model;

namespace detail {

template <class Signature>
struct parts;
template <class R, class... A>
struct parts<R(A...)> {
    using result = R;
    using arguments = types<A...>;
    static constexpr std::size_t arity = sizeof...(A);
    static constexpr const scale* scales[sizeof...(A) + 1]{argument<A>::of..., nullptr};
    static constexpr kind kinds[sizeof...(A) + 1]{argument<A>::what..., kind::number};
};

template <class M>
struct limit_table {
    static constexpr std::size_t arity = M::signature::arity;
    limits of[arity + 1]{};
    consteval limit_table() {
        for (std::size_t i = 0; i < arity; ++i) {
            auto const& in = M::inputs[i];
            const scale& s = *M::signature::scales[i];
            limits r = in.range;
            if (!in.has_possible) r.lo = s.least, r.hi = s.most;
            if (!in.has_validated) r.valid_lo = r.lo, r.valid_hi = r.hi;
            if (r.valid_lo < r.lo || r.valid_hi > r.hi) throw "the validated region must lie within the possible region";
            of[i] = r;
        }
    }
};
template <class M>
inline constexpr limit_table<M> limits_of{};

template <class M>
consteval std::size_t required() {
    std::size_t n = 0;
    if constexpr (M::signature::arity > 0) {
        for (auto const& in : M::inputs) {
            if (in.optional) break;
            ++n;
        }
    }
    return n;
}

template <class M>
inline constexpr bool has_joint_range = requires { M::holds_when; };
template <class M>
inline constexpr bool has_refusal = requires { M::refusal; };
// package.caution and room.caution guard people: they answer the highest level where others pass NaN or refuse.
template <class M>
inline constexpr bool answers_always = requires { M::answer_to_anything_else; };
template <class M>
inline constexpr bool refuses_nan = requires { M::nan_is_impossible; };

constexpr bool validates(const limits& r, double v) noexcept { return r.validates(v); }
constexpr bool validates(const limits& r, maybe<double> v) noexcept { return !v.given || r.validates(v.value); }
constexpr bool validates(const limits& r, series<double> v) noexcept {
    for (double x : v)
        if (!r.validates(x)) return false;
    return true;
}
template <class W>
constexpr bool validates(const limits&, W) noexcept { return true; }

// Counts what is wrong with one argument; the first fault of each region is kept for the message.
struct findings {
    int impossible = -1, unvalidated = -1;
    double impossible_value = 0.0, unvalidated_value = 0.0;
    void look(int i, const limits& r, double v) noexcept {
        if (v != v) { if (impossible < 0 && nan_counts) impossible = i, impossible_value = v; return; }
        if (!r.allows(v)) { if (impossible < 0) impossible = i, impossible_value = v; }
        else if (!r.validates(v)) { if (unvalidated < 0) unvalidated = i, unvalidated_value = v; }
    }
    void look(int i, const limits& r, maybe<double> v) noexcept { if (v.given) look(i, r, v.value); }
    void look(int i, const limits& r, series<double> v) noexcept { for (double x : v) look(i, r, x); }
    template <class W>
    void look(int, const limits&, W) noexcept {}
    bool nan_counts = false;
};

// The models of a family, counted from its struct and unpacked.
struct anything {
    template <class T>
    constexpr operator T() const noexcept;
};
template <class F, class... X>
consteval std::size_t member_count() {
    if constexpr (requires { F{X{}..., anything{}}; }) return member_count<F, X..., anything>();
    else return sizeof...(X);
}

template <class F, class Visit>
constexpr void each_model(const F& f, Visit visit) {
    constexpr std::size_t n = member_count<F>();
    // clang-format off
#define WORTMATH_PEEL(count, ...) if constexpr (n == count) { auto& [__VA_ARGS__] = f; auto all = [&](auto&... m) { (visit(m), ...); }; all(__VA_ARGS__); } else
    WORTMATH_PEEL(1, a) WORTMATH_PEEL(2, a, b) WORTMATH_PEEL(3, a, b, c) WORTMATH_PEEL(4, a, b, c, d) WORTMATH_PEEL(5, a, b, c, d, e)
    WORTMATH_PEEL(6, a, b, c, d, e, g) WORTMATH_PEEL(7, a, b, c, d, e, g, h) WORTMATH_PEEL(8, a, b, c, d, e, g, h, i)
    WORTMATH_PEEL(9, a, b, c, d, e, g, h, i, j) WORTMATH_PEEL(10, a, b, c, d, e, g, h, i, j, k) WORTMATH_PEEL(11, a, b, c, d, e, g, h, i, j, k, l)
    WORTMATH_PEEL(12, a, b, c, d, e, g, h, i, j, k, l, m) WORTMATH_PEEL(13, a, b, c, d, e, g, h, i, j, k, l, m, o)
    WORTMATH_PEEL(14, a, b, c, d, e, g, h, i, j, k, l, m, o, p) WORTMATH_PEEL(15, a, b, c, d, e, g, h, i, j, k, l, m, o, p, q)
    WORTMATH_PEEL(16, a, b, c, d, e, g, h, i, j, k, l, m, o, p, q, r) WORTMATH_PEEL(17, a, b, c, d, e, g, h, i, j, k, l, m, o, p, q, r, s)
    WORTMATH_PEEL(18, a, b, c, d, e, g, h, i, j, k, l, m, o, p, q, r, s, t)
    { static_assert(n >= 1 && n <= 18, "a family of more models: extend the list above"); }
#undef WORTMATH_PEEL
    // clang-format on
}

// A model of the family Owner that asks for the same things and whose validated region covers the value.
template <class M, class Owner>
sibling covering(int at, double value) noexcept {
    sibling found;
    if constexpr (!__is_same(Owner, void)) {
        each_model(Owner{}, [&](auto const& other) {
            using O = std::remove_cvref_t<decltype(other)>;
            if constexpr (!__is_same(O, M)) {
                auto const i = static_cast<std::size_t>(at);
                if (found.model || i >= O::signature::arity || O::signature::scales[i] != M::signature::scales[i]) return;
                limits const r = limits_of<O>.of[i];
                if (r.validates(value) && r.valid_lo > -no_limit) found = {path_of<O>.full, r};
            }
        });
    }
    return found;
}

template <class M, class Owner>
[[noreturn]] void refuse(int at, double value, region where) {
    range_error e;
    e.model = path_of<M>.full;
    e.where = where;
    e.value = value;
    if constexpr (M::signature::arity > 0) {
        if (at >= 0) {
            auto const i = static_cast<std::size_t>(at);
            e.argument = M::inputs[i].name;
            e.range = limits_of<M>.of[i];
            refusal_sentence(e, *M::signature::scales[i], where == region::unvalidated ? covering<M, Owner>(at, value) : sibling{},
                             M::inputs[i].beyond_words);
        }
    }
    throw e;
}

template <class M>
[[noreturn]] void refuse_jointly(const char* sentence, region where) {
    range_error e;
    e.model = path_of<M>.full;
    e.where = where;
    e.value = undefined;
    std::snprintf(e.text, sizeof e.text, "%s: %s", e.model, sentence);
    throw e;
}

struct nan_everywhere {
    constexpr double operator[](std::size_t) const noexcept { return undefined; }
    constexpr operator double() const noexcept { return undefined; }
};

// Off the straight path: one input at least is not validated. True: the formula may run.
template <class M, class Owner, class... P>
[[gnu::cold, gnu::noinline]] bool may_run(policy how, P... p) {
    findings found;
    found.nan_counts = refuses_nan<M>;
    int i = 0;
    ((found.look(i, limits_of<M>.of[i], p), ++i), ...);
    if (found.impossible >= 0) {
        if (how == policy::nan) return false;
        refuse<M, Owner>(found.impossible, found.impossible_value, region::impossible);
    }
    if (found.unvalidated >= 0) {
        if (how == policy::raise) refuse<M, Owner>(found.unvalidated, found.unvalidated_value, region::unvalidated);
        if (how == policy::nan) return false;
    }
    return true;
}

template <class V>
constexpr bool is_nan(const V& v) noexcept {
    if constexpr (requires { v[0]; }) return v[0] != v[0];
    else return v != v;
}
template <class P>
constexpr bool nan_in(const P& p) noexcept {
    if constexpr (__is_same(P, double)) return p != p;
    else if constexpr (__is_same(P, maybe<double>)) return p.given && p.value != p.value;
    else if constexpr (__is_same(P, series<double>)) {
        for (double x : p)
            if (x != x) return true;
        return false;
    } else return false;
}

template <class M, class Owner, class... P>
constexpr auto answer(policy how, P... p) {
    using R = typename M::signature::result;
    [[maybe_unused]] std::size_t i = 0;
    bool inside = (validates(limits_of<M>.of[i++], p) && ... && true);
    if constexpr (refuses_nan<M>) inside = inside && !(nan_in(p) || ...);
    if constexpr (answers_always<M>) {
        // An optional number is different: none where it is not a number, refused as everywhere where it is impossible.
        bool fit = true;
        std::size_t k = 0;
        (([&](auto& v) {
             if constexpr (requires { v.given; }) {
                 v.given = v.given && v.value == v.value;
                 if (v.given && !limits_of<M>.of[k].allows(v.value)) {
                     if (how == policy::nan) fit = false;
                     else refuse<M, Owner>(static_cast<int>(k), v.value, region::impossible);
                 }
             } else if constexpr (requires { static_cast<double>(v) + 0.5; }) {
                 fit = fit && limits_of<M>.of[k].allows(static_cast<double>(v)) && !nan_in(v);
             }
             ++k;
         }(p)),
         ...);
        return packed<R>(fit ? M::formula(p...) : double(M::answer_to_anything_else));
    } else {
        if (!inside) [[unlikely]] {
            if (!may_run<M, Owner>(how, p...)) return packed<R>(nan_everywhere{});
        }
        auto const value = M::template formula<double>(p...);
        if constexpr (has_refusal<M>) {
            if (is_nan(value)) [[unlikely]] {
                if (how != policy::nan && !(nan_in(p) || ...)) refuse_jointly<M>(M::refusal, region::impossible);
            }
        }
        if constexpr (has_joint_range<M>) {
            if (how != policy::extrapolate && !M::holds(value, p...)) [[unlikely]] {
                if (how == policy::nan) return packed<R>(nan_everywhere{});
                if (!(nan_in(p) || ...)) refuse_jointly<M>(M::holds_when, region::joint);
            }
        }
        return packed<R>(value);
    }
}

// ---- calls ------------------------------------------------------------------------------------------------------------

template <class A>
inline constexpr bool any_gravity = __is_same(A, unit::gravity);

// A bare SG takes any gravity scale, one and the same for all such arguments of a call, and gives that scale back.
template <class A, class G>
inline constexpr bool accepts = requires(G g, void (*f)(A)) { f(g); };
template <class S>
inline constexpr bool accepts<unit::gravity, point<S>> = S::about.slip == likely::gravity;

struct two_scales {};
template <class Seen, class... Pairs>
struct common_gravity {
    using type = Seen;
};
template <class A, class G, class... Pairs>
struct common_gravity<void, types<A, G>, Pairs...>
    : common_gravity<std::conditional_t<any_gravity<A>, G, void>, Pairs...> {};
template <class Seen, class A, class G, class... Pairs>
struct common_gravity<Seen, types<A, G>, Pairs...>
    : common_gravity<std::conditional_t<any_gravity<A> && !__is_same(Seen, G), two_scales, Seen>, Pairs...> {};

template <class A, class G>
constexpr A as_argument(const G& g) {
    if constexpr (any_gravity<A>) return unit::gravity(g.value);
    else return A(g);
}

struct no_calls {
    struct nothing {};
    void operator()(nothing) const = delete;
};

// One overload for each number of arguments, none of them a template: defaults, implicit conversion of quantities and
// short compiler messages follow from that.
template <class M, class Owner, class R, class Front, class... Rest>
struct calls;

template <class M, class Owner, class R, class Front, class... Rest>
struct next_calls {
    using type = no_calls;
};
template <class M, class Owner, class R, class... F, class Next, class... Rest>
struct next_calls<M, Owner, R, types<F...>, Next, Rest...> {
    using type = calls<M, Owner, R, types<F..., Next>, Rest...>;
};

template <class M, class Owner, class R, class... F, class... Rest>
struct calls<M, Owner, R, types<F...>, Rest...> : next_calls<M, Owner, R, types<F...>, Rest...>::type {
    using next_calls<M, Owner, R, types<F...>, Rest...>::type::operator();

    constexpr R operator()(F... a) const
        requires(sizeof...(F) >= required<M>())
    {
        return M::template complete<Owner>(policy::raise, a...);
    }
    constexpr R operator()(policy how, F... a) const
        requires(sizeof...(F) >= required<M>())
    {
        return M::template complete<Owner>(how, a...);
    }
};

template <class M, class Owner, class R, class... A>
struct gravity_calls {
private:
    template <class... F, std::size_t... I, class... G>
    static constexpr auto first_of(types<F...>, std::index_sequence<I...>, types<G...>) {
        return types<types<typename nth<I, F...>::type, G>...>{};
    }
    template <std::size_t I, class First, class... More>
    struct nth : nth<I - 1, More...> {};
    template <class First, class... More>
    struct nth<0, First, More...> {
        using type = First;
    };
    template <class... F, class... G>
    static constexpr bool fit(types<types<F, G>...>) {
        if constexpr (!(accepts<F, G> && ...)) return false;
        else return !__is_same(typename common_gravity<void, types<F, G>...>::type, two_scales);
    }
    template <class... G>
    static constexpr auto pairs() {
        return first_of(types<A...>{}, std::index_sequence_for<G...>{}, types<G...>{});
    }
    template <class... G>
    static constexpr bool fitting() {
        if constexpr (sizeof...(G) > sizeof...(A) || sizeof...(G) < required<M>()) return false;
        else return fit(pairs<G...>());
    }
    template <class... F, class... G>
    static constexpr auto run(policy how, types<types<F, G>...>, G... a) {
        R const r = M::template complete<Owner>(how, as_argument<F>(a)...);
        using scale_of_call = typename common_gravity<void, types<F, G>...>::type;
        if constexpr (any_gravity<R> && !__is_same(scale_of_call, void)) return scale_of_call(r.value);
        else return r;
    }

public:
    template <class... G>
        requires(fitting<G...>())
    constexpr auto operator()(G... a) const {
        return run(policy::raise, pairs<G...>(), a...);
    }
    template <class... G>
        requires(fitting<G...>())
    constexpr auto operator()(policy how, G... a) const {
        return run(how, pairs<G...>(), a...);
    }
};

template <class M, class Owner, class R, class... A>
using calls_for = std::conditional_t<(any_gravity<A> || ... || false), gravity_calls<M, Owner, R, A...>, calls<M, Owner, R, types<>, A...>>;

}  // namespace detail

template <class M, class R, class... A>
struct model<M, R(A...)> : detail::calls_for<M, void, R, A...> {
    using signature = detail::parts<R(A...)>;
    static constexpr input inputs[]{{""}};  // a model without arguments needs no list of its own

    template <class Owner, class... G>
    static constexpr R complete(policy how, G... given) {
        return filled<Owner>(how, std::make_index_sequence<sizeof...(A) - sizeof...(G)>{}, detail::argument<G>::plain(given)...);
    }

private:
    template <std::size_t I, class First, class... More>
    static constexpr auto fallback_of() {
        if constexpr (I > 0) return fallback_of<I - 1, More...>();
        else return detail::argument<First>{};
    }
    template <std::size_t I>
    static constexpr auto fallback() {
        using a = decltype(fallback_of<I, A...>());
        constexpr input const& in = M::inputs[I];
        if constexpr (a::what == detail::kind::number) return in.fallback;
        else if constexpr (a::what == detail::kind::optional_number) return maybe<double>{in.fallback, !in.optional_none};
        else return static_cast<typename a::template in_formula<double>>(static_cast<int>(in.fallback));
    }
    template <class Owner, std::size_t... I, class... P>
    static constexpr R filled(policy how, std::index_sequence<I...>, P... p) {
        return detail::answer<M, Owner>(how, p..., fallback<sizeof...(P) + I>()...);
    }
};

// ---- families -------------------------------------------------------------------------------------------------------

namespace detail {
template <class F, class M, class R, class... A>
calls_for<M, F, R, A...> calls_of(const model<M, R(A...)>&);
template <class F, class M>
M member_type(M F::*);
}  // namespace detail

// One question and all its models; calling the family calls its default.
template <auto Default>
struct family;
template <class F, class M, M F::*Default>
struct family<Default> : F, decltype(detail::calls_of<F>(std::declval<M>())) {
    using models = F;
    using default_model = M;
    using decltype(detail::calls_of<F>(std::declval<M>()))::operator();
};

// The models of some families answer different questions: one has to be named.
template <class F>
struct family_without_default : F {
    using models = F;
    using default_model = void;
    template <class... A>
    void operator()(A...) const {
        static_assert(sizeof...(A) > 1000, "the models of this family answer different questions: name one, as in family.model(...)");
    }
};

// All families of a topic; the one list that a topic keeps.
template <class... F>
struct family_list {};
template <class... F>
constexpr family_list<F...> list_families(const F&...) noexcept {
    return {};
}

// The formula without range check, on any number type: what models and the batch engine call.
template <class T, class M, class... A>
constexpr auto formula_of(const M&, A... a) {
    return M::template formula<T>(a...);
}

}  // namespace wortmath
