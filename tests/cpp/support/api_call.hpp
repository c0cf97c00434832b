// Calls a model with types made from plain numbers, and compares with the same model in the table.
#pragma once

#include <catch.hpp>
#include <cmath>
#include <initializer_list>
#include <string>
#include <tuple>
#include <vector>

#include "core.hpp"

namespace test {

inline int& checked() {
    static int count = 0;
    return count;
}

template <class A>
struct typed;
template <class S>
struct typed<wortmath::point<S>> {
    static wortmath::point<S> from(const std::vector<double>& v) { return wortmath::point<S>(v.at(0)); }
};
template <class S>
struct typed<wortmath::optional_point<wortmath::point<S>>> {
    static wortmath::optional_point<wortmath::point<S>> from(const std::vector<double>& v) {
        if (v.empty()) return wortmath::none;
        return wortmath::point<S>(v[0]);
    }
};
template <class S>
struct typed<wortmath::list<wortmath::point<S>>> {
    static std::vector<wortmath::point<S>> from(const std::vector<double>& v) {
        std::vector<wortmath::point<S>> out;
        for (double x : v) out.emplace_back(x);
        return out;
    }
};
template <class W>
    requires std::is_enum_v<W>
struct typed<W> {
    static W from(const std::vector<double>& v) { return static_cast<W>(static_cast<int>(v.at(0))); }
};
template <>
struct typed<bool> {
    static bool from(const std::vector<double>& v) { return v.at(0) != 0.0; }
};

// Several results are compared by their first.
template <class R>
double first_of(const R& r) {
    if constexpr (std::is_same_v<R, bool>) return r;
    else if constexpr (requires { r.bits; }) return r.bits;
    else if constexpr (std::is_enum_v<std::remove_cvref_t<decltype(r.value)>>) return static_cast<double>(static_cast<int>(r.value));
    else return r.value;
}
template <class R>
double first_result(const R& r) {
    if constexpr (wortmath::detail::is_several<R>) {
        constexpr std::size_t n = sizeof(R::names) / sizeof(const char*);
        if constexpr (n == 2) { auto const& [a, b] = r; (void)b; return first_of(a); }
        else if constexpr (n == 3) { auto const& [a, b, c] = r; (void)b, (void)c; return first_of(a); }
        else { auto const& [a, b, c, d] = r; (void)b, (void)c, (void)d; return first_of(a); }
    } else {
        return first_of(r);
    }
}

template <class M, class... A, std::size_t... I>
double call(const M& model, wortmath::detail::types<A...>, std::index_sequence<I...>, const std::vector<std::vector<double>>& inputs) {
    // lists own their elements for the time of the call
    [[maybe_unused]] auto owned = std::make_tuple(typed<A>::from(inputs.at(I))...);
    return first_result(model(wortmath::policy::extrapolate, A(std::get<I>(owned))...));
}

template <class M>
void check(const M& model, const char* path, const std::vector<std::vector<double>>& inputs) {
    namespace core = wortmath::core;
    INFO(path);
    CHECK(std::string(wortmath::detail::path_of<M>.full) == path);
    auto const* const e = core::find(path);
    REQUIRE(e != nullptr);
    CHECK(e->arity == static_cast<int>(inputs.size()));
    std::vector<double> flat;
    std::vector<const double*> pointers;
    std::size_t n = 1;
    flat.reserve(inputs.size());
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        flat.push_back(inputs[i].empty() ? core::absent() : inputs[i][0]);
        bool const list = e->inputs[i].what == wortmath::detail::kind::list;
        if (list) n = inputs[i].size();
        pointers.push_back(list ? inputs[i].data() : &flat.back());
    }
    double out[4]{};
    if (e->has_lists) e->listed(pointers.data(), n, out);
    else e->scalar(flat.data(), out);
    double const got = call(model, typename M::signature::arguments{}, std::make_index_sequence<M::signature::arity>{}, inputs);
    bool const same = std::fabs(got - out[0]) <= 1e-13 * std::fabs(out[0]) || (got != got && out[0] != out[0]);
    CHECK(same);
    ++checked();
}

}  // namespace test
