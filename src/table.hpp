// Turns the models of a topic into one plain table: metadata, scalar functions and block kernels for each instruction set.
// Included once by each src/<topic>.cpp, after the topic's header.
#pragma once

#include <array>

#include "core.hpp"

#if defined(WORTMATH_LIBMVEC) && defined(__GNUC__) && !defined(__clang__)
// The C library has vector forms of these; declared so, the compiler uses them in ordinary loops, without -ffast-math.
#define WORTMATH_SIMD __attribute__((simd("notinbranch")))
extern "C" {
WORTMATH_SIMD double exp(double) noexcept;
WORTMATH_SIMD double log(double) noexcept;
WORTMATH_SIMD double pow(double, double) noexcept;
WORTMATH_SIMD double sin(double) noexcept;
WORTMATH_SIMD double cos(double) noexcept;
#if WORTMATH_LIBMVEC >= 235
WORTMATH_SIMD double expm1(double) noexcept;
WORTMATH_SIMD double log1p(double) noexcept;
WORTMATH_SIMD double tanh(double) noexcept;
WORTMATH_SIMD double cbrt(double) noexcept;
#endif
}
#undef WORTMATH_SIMD
#endif

#if defined(__x86_64__)
#define WORTMATH_X86 1
#define WORTMATH_V3 [[gnu::target("arch=x86-64-v3"), gnu::flatten]]
#define WORTMATH_V4 [[gnu::target("arch=x86-64-v4"), gnu::flatten]]
#else
#define WORTMATH_X86 0
#endif

#if defined(__clang__)
#define WORTMATH_INDEPENDENT
#else
#define WORTMATH_INDEPENDENT _Pragma("GCC ivdep")
#endif

namespace wortmath::core {

// ---- arguments from plain numbers -----------------------------------------------------------------------------------

template <class A>
[[gnu::always_inline]] inline auto argument_from(double x) noexcept {
    using a = detail::argument<A>;
    if constexpr (a::what == detail::kind::number) return x;
    else if constexpr (a::what == detail::kind::optional_number) return maybe<double>{x, !is_absent(x)};
    else return static_cast<typename a::template in_formula<double>>(static_cast<int>(x));
}
template <class A>
inline auto argument_from(const double* x, std::size_t n) noexcept {
    if constexpr (detail::argument<A>::what == detail::kind::list) return series<double>{x, n};
    else return argument_from<A>(*x);
}

template <class V>
[[gnu::always_inline]] inline double component(const V& v, std::size_t i) noexcept {
    if constexpr (requires { v[i]; }) return v[i];
    else return v;
}

template <class M, class Arguments = typename M::signature::arguments>
struct functions;

template <class M, class... A>
struct functions<M, detail::types<A...>> {
    using R = typename M::signature::result;
    static constexpr std::size_t results = detail::fields_of<R>::list::count;
    static constexpr bool lists = ((detail::argument<A>::what == detail::kind::list) || ... || false);

    template <std::size_t... I>
    static void scalar_at(const double* in, double* out, std::index_sequence<I...>) {
        auto const v = M::template formula<double>(argument_from<A>(in[I])...);
        for (std::size_t k = 0; k < results; ++k) out[k] = component(v, k);
    }
    static void scalar(const double* in, double* out) { scalar_at(in, out, std::index_sequence_for<A...>{}); }

    template <std::size_t... I>
    static void listed_at(const double* const* in, std::size_t n, double* out, std::index_sequence<I...>) {
        auto const v = M::template formula<double>(argument_from<A>(in[I], n)...);
        for (std::size_t k = 0; k < results; ++k) out[k] = component(v, k);
    }
    static void listed(const double* const* in, std::size_t n, double* out) { listed_at(in, n, out, std::index_sequence_for<A...>{}); }

    template <std::size_t... I, std::size_t... K>
    static bool holds_at(const double* const* in, std::size_t n, const double* out, std::index_sequence<I...>, std::index_sequence<K...>) {
        if constexpr (sizeof...(K) == 1) return M::holds(out[0], argument_from<A>(in[I], n)...);
        else return M::holds(several<double, sizeof...(K)>{{out[K]...}}, argument_from<A>(in[I], n)...);
    }
    static bool holds(const double* const* in, std::size_t n, const double* out) {
        return holds_at(in, n, out, std::index_sequence_for<A...>{}, std::make_index_sequence<results>{});
    }

    // The loop over blocks. `Only` is the one input that moves (-1: all do); words and truth values never do.
    template <class Arg, int Only, int I>
    [[gnu::always_inline]] static auto moving(const double* column, std::size_t i) noexcept {
        constexpr auto what = detail::argument<Arg>::what;
        constexpr bool still = what == detail::kind::word || what == detail::kind::truth || (Only >= 0 && Only != I);
        return argument_from<Arg>(column[still ? 0 : i]);
    }
    template <int Only, std::size_t... I>
    [[gnu::always_inline]] static void loop(const double* const* in, double* const* out, std::size_t blocks, std::index_sequence<I...>) {
        const double* p[sizeof...(A) + 1]{in[I]...};
        double* q[results];
        for (std::size_t k = 0; k < results; ++k) q[k] = out[k];
        std::size_t const n = blocks * block;
        WORTMATH_INDEPENDENT
        for (std::size_t i = 0; i < n; ++i) {
            auto const v = M::template formula<double>(moving<A, Only, static_cast<int>(I)>(p[I], i)...);
            if constexpr (results == 1) {
                q[0][i] = component(v, 0);
            } else {
                for (std::size_t k = 0; k < results; ++k) q[k][i] = component(v, k);
            }
        }
        (void)p;
    }
    template <int Only>
    static void baseline(const double* const* in, double* const* out, std::size_t blocks) { loop<Only>(in, out, blocks, std::index_sequence_for<A...>{}); }
#if WORTMATH_X86
    template <int Only>
    WORTMATH_V3 static void v3(const double* const* in, double* const* out, std::size_t blocks) { loop<Only>(in, out, blocks, std::index_sequence_for<A...>{}); }
    template <int Only>
    WORTMATH_V4 static void v4(const double* const* in, double* const* out, std::size_t blocks) { loop<Only>(in, out, blocks, std::index_sequence_for<A...>{}); }
#endif

    template <std::size_t... I>
    static constexpr auto moving_kernels(int set, std::index_sequence<I...>) {
        std::array<kernel, sizeof...(I) + 1> k{};
#if WORTMATH_X86
        if (set == 1) return k = {&v3<static_cast<int>(I)>..., nullptr};
        if (set == 2) return k = {&v4<static_cast<int>(I)>..., nullptr};
#endif
        return k = {&baseline<static_cast<int>(I)>..., nullptr};
    }
    static constexpr bool has_variants = sizeof...(A) >= 2 && !lists;
    template <int Set>
    static constexpr auto by_input = moving_kernels(Set, std::make_index_sequence<has_variants ? sizeof...(A) : 0>{});

    static constexpr void fill_kernels(entry& e) {
        if constexpr (!lists) {
            e.scalar = &scalar;
            e.kernels[0] = &baseline<-1>;
#if WORTMATH_X86
            e.kernels[1] = &v3<-1>;
            e.kernels[2] = &v4<-1>;
#else
            e.kernels[1] = e.kernels[2] = &baseline<-1>;
#endif
            if constexpr (has_variants) {
                e.one_moving[0] = by_input<0>.data();
                e.one_moving[1] = by_input<1>.data();
                e.one_moving[2] = by_input<2>.data();
            }
        } else {
            e.listed = &listed;
        }
        if constexpr (detail::has_joint_range<M>) e.holds = &holds;
    }

    static constexpr std::array<input_entry, sizeof...(A) + 1> make_inputs() {
        std::array<input_entry, sizeof...(A) + 1> a{};
        [[maybe_unused]] std::size_t i = 0;
        (([&] {
             auto const& in = M::inputs[i];
             input_entry& e = a[i];
             e.name = in.name;
             e.what = detail::argument<A>::what;
             e.of = detail::argument<A>::of;
             e.range = detail::limits_of<M>.of[i];
             e.optional = in.optional;
             e.beyond_words = in.beyond_words;
             e.fallback = in.optional_none ? __builtin_bit_cast(double, absent_bits) : in.fallback;
             if constexpr (detail::argument<A>::what == detail::kind::word) e.words = spelled<A>::names, e.word_total = word_count<A>;
             ++i;
         }()),
         ...);
        return a;
    }
    static constexpr auto inputs = make_inputs();

    template <class... F>
    static constexpr std::array<output_entry, results> make_outputs(detail::types<F...>) {
        std::array<output_entry, results> a{};
        std::size_t i = 0;
        (([&] {
             using f = detail::result_field<F>;
             output_entry& e = a[i];
             e.name = nullptr;
             if constexpr (detail::is_several<R>) e.name = R::names[i];
             e.of = f::of, e.whole = f::whole, e.truth = f::truth, e.several_words = f::several_words, e.words = f::words, e.word_total = f::words_count;
             ++i;
         }()),
         ...);
        return a;
    }
    static constexpr auto outputs = make_outputs(typename detail::fields_of<R>::list{});
};

template <class Family, class M>
constexpr entry entry_of() {
    using f = functions<M>;
    entry e{};
    e.path = detail::path_of<M>;
    e.question = Family::models::question;
    e.about = &M::about;
    e.is_default = __is_same(M, typename Family::default_model);
    e.family_has_default = !__is_same(void, typename Family::default_model);
    e.inputs = f::inputs.data();
    e.arity = static_cast<int>(M::signature::arity);
    e.required = static_cast<int>(detail::required<M>());
    e.outputs = f::outputs.data();
    e.results = static_cast<int>(f::results);
    if constexpr (detail::has_joint_range<M>) e.holds_when = M::holds_when;
    if constexpr (detail::has_refusal<M>) e.refusal = M::refusal;
    if constexpr (detail::answers_always<M>) e.guards = true, e.worst = M::answer_to_anything_else;
    e.nan_is_impossible = detail::refuses_nan<M>;
    e.has_lists = f::lists;
    f::fill_kernels(e);
    return e;
}

template <class Family>
inline constexpr std::size_t models_in = detail::member_count<typename Family::models>();

template <class Family, std::size_t N>
constexpr void fill(std::array<entry, N>& a, std::size_t& at) {
    constexpr typename Family::models all{};
    detail::each_model(all, [&](auto const& m) { a[at++] = entry_of<Family, std::remove_cvref_t<decltype(m)>>(); });
}

template <class... Family>
constexpr auto entries_of(family_list<Family...>) {
    std::array<entry, (models_in<Family> + ... + 0)> a{};
    std::size_t at = 0;
    (fill<Family>(a, at), ...);
    return a;
}

}  // namespace wortmath::core

#define WORTMATH_TOPIC(name)                                                                        \
    namespace wortmath::core {                                                                      \
    static constexpr auto name##_entries = entries_of(std::remove_cv_t<decltype(wortmath::name::families)>{}); \
    extern const topic name##_topic;                                                                \
    constexpr topic name##_topic{#name, name##_entries.data(), name##_entries.size()};              \
    }
