// How the result of a model moves with its inputs: exact partial derivatives, from the same formula on dual numbers.
//
//     auto g = wortmath::gradient(bitterness::utilisation.tinseth, 1.050_sg, 60_min);
//     g.value            the utilisation
//     g.by[0]            its change for one unit of gravity; g.by[1] for one minute; g.by[2] for the brewery constant
//
// Ranges are those of the call. What is chosen by a word or a truth value has no derivative and counts as zero.
// The derivatives of a whole batch are in wortmath/batch/gradient.hpp.
#pragma once

#include <cstddef>
#include <tuple>
#include <type_traits>
#include <utility>

#include "wortmath/dual.hpp"
#include "wortmath/model.hpp"

namespace wortmath {

// One result of a model and its partial derivatives, in the order of the model's arguments.
template <std::size_t Arity>
struct sensitivity {
    double value = 0.0;
    double by[Arity > 0 ? Arity : 1]{};
};

namespace detail {

template <class V>
constexpr auto result_at(const V& v, std::size_t i) {
    if constexpr (requires { v[i]; }) return v[i];
    else return v;
}

// A plain argument as one that moves: dual number `at`.
template <std::size_t N>
constexpr dual<N> moving(double x, std::size_t at) noexcept {
    return dual<N>::input(x, at);
}
template <std::size_t N>
constexpr maybe<dual<N>> moving(maybe<double> x, std::size_t at) noexcept {
    return {dual<N>::input(x.value, at), x.given};
}
template <std::size_t N, class W>
    requires(__is_enum(W) || __is_same(W, bool))
constexpr W moving(W word, std::size_t) noexcept {
    return word;
}

template <class M, std::size_t N, std::size_t... I, class... P>
constexpr auto on_duals(std::index_sequence<I...>, const P&... p) {
    return M::template formula<dual<N>>(moving<N>(p, I)...);
}

template <class M, class Arguments = typename M::signature::arguments>
struct differentiable;
template <class M, class... A>
struct differentiable<M, types<A...>> {
    static constexpr std::size_t arity = sizeof...(A);
    static constexpr std::size_t results = fields_of<typename M::signature::result>::list::count;
    static constexpr bool lists = ((argument<A>::what == kind::list) || ... || false);

    template <class... P>
    static constexpr auto of(const P&... p) {
        auto const v = on_duals<M, arity>(std::index_sequence_for<P...>{}, p...);
        if constexpr (results == 1) {
            return sensitivity<arity>(taken(result_at(v, 0)));
        } else {
            several<sensitivity<arity>, results> all{};
            for (std::size_t k = 0; k < results; ++k) all.values[k] = taken(result_at(v, k));
            return all;
        }
    }
    template <std::size_t... I, class... P>
    static constexpr auto filled(std::index_sequence<I...>, const P&... p) {
        return of(p..., fallback<sizeof...(P) + I>()...);
    }
    template <class... G>
    static constexpr auto at(const G&... given) {
        static_assert(sizeof...(G) <= arity);
        return with(std::make_index_sequence<sizeof...(G)>{}, given...);
    }

private:
    static constexpr sensitivity<arity> taken(const dual<arity>& d) {
        sensitivity<arity> s;
        s.value = d.value;
        for (std::size_t i = 0; i < arity; ++i) s.by[i] = d.by[i];
        return s;
    }
    template <std::size_t I>
    static constexpr auto fallback() {
        using a = argument<std::tuple_element_t<I, std::tuple<A...>>>;
        constexpr input const& in = M::inputs[I];
        if constexpr (a::what == kind::number) return in.fallback;
        else if constexpr (a::what == kind::optional_number) return maybe<double>{in.fallback, !in.optional_none};
        else return static_cast<typename a::template in_formula<double>>(static_cast<int>(in.fallback));
    }
    template <class Arg, class G>
    static constexpr auto plain(const G& g) {
        if constexpr (any_gravity<Arg>) return g.value;
        else return argument<Arg>::plain(Arg(g));
    }
    template <std::size_t... I, class... G>
    static constexpr auto with(std::index_sequence<I...>, const G&... given) {
        return filled(std::make_index_sequence<arity - sizeof...(G)>{}, plain<std::tuple_element_t<I, std::tuple<A...>>>(given)...);
    }
};

}  // namespace detail

// The model at typed arguments, as in its call; what is left out takes its default. For models without lists.
template <class M, class... G>
    requires requires { typename M::signature; }
constexpr auto gradient(const M& model, G... given) {
    static_assert(!detail::differentiable<M>::lists, "a model of lists has as many derivatives as elements: call its formula on lists of dual numbers");
    (void)model(given...);  // the ranges
    return detail::differentiable<M>::at(given...);
}
// A family stands for its default.
template <class F, class... G>
    requires(requires { typename F::default_model; } && !std::is_void_v<typename F::default_model>)
constexpr auto gradient(const F& family, G... given) {
    (void)family(given...);
    return detail::differentiable<typename F::default_model>::at(given...);
}

namespace detail {

// The untyped form, for tables: `in` holds one pointer for each argument, to one value or, for lists, to n values.
// `by` receives for each result one number for each flat column (a list has n columns, anything else one).
template <class M, class Arguments = typename M::signature::arguments>
struct slopes;
template <class M, class... A>
struct slopes<M, types<A...>> {
    using D = differentiable<M>;
    // Scalars are done in one go; lists, whose length nobody knows, in passes.
    static constexpr std::size_t width = D::lists ? 8 : D::arity > 0 ? D::arity : 1;
    using T = dual<width>;

    template <class Arg>
    static auto one(const double* x, std::size_t n, T* room, std::size_t column, std::size_t from, bool absent) {
        using a = argument<Arg>;
        auto seeded = [&](double v, std::size_t c) { return c >= from && c < from + width ? T::input(v, c - from) : T(v); };
        if constexpr (a::what == kind::list) {
            for (std::size_t i = 0; i < n; ++i) room[i] = seeded(x[i], column + i);
            return series<T>{room, n};
        } else if constexpr (a::what == kind::number) {
            return seeded(*x, column);
        } else if constexpr (a::what == kind::optional_number) {
            return maybe<T>{seeded(*x, column), !absent};
        } else {
            (void)room, (void)n, (void)column, (void)absent;
            return static_cast<typename a::template in_formula<T>>(static_cast<int>(*x));
        }
    }
    template <std::size_t... I>
    static void run(const double* const* in, std::size_t n, const bool* absent, [[maybe_unused]] T* room, double* value, double* by, std::index_sequence<I...>) {
        constexpr bool is_list[sizeof...(A) + 1]{(argument<A>::what == kind::list)..., false};
        [[maybe_unused]] std::size_t column[sizeof...(A) + 1]{};
        std::size_t columns = 0;
        for (std::size_t i = 0; i < sizeof...(A); ++i) column[i] = columns, columns += is_list[i] ? n : 1;
        for (std::size_t from = 0; from < columns || from == 0; from += width) {
            auto const v = M::template formula<T>(one<A>(in[I], n, room + I * n, column[I], from, absent[I])...);
            for (std::size_t k = 0; k < D::results; ++k) {
                T const r = result_at(v, k);
                value[k] = r.value;
                for (std::size_t c = from; c < columns && c < from + width; ++c) by[k * columns + c] = r.by[c - from];
            }
        }
    }
    // `room` has space for arity x n numbers of the type T.
    static void at(const double* const* in, std::size_t n, const bool* absent, void* room, double* value, double* by) {
        run(in, n, absent, static_cast<T*>(room), value, by, std::index_sequence_for<A...>{});
    }
};

}  // namespace detail
}  // namespace wortmath
