// A model over Eigen arrays, element by element, with the model's own ranges. Opt-in: needs Eigen.
//
//     Eigen::ArrayXd g(3); g << 1.030, 1.050, 1.070;
//     Eigen::ArrayXd u = wortmath::over(wortmath::bitterness::utilisation.tinseth, g, 60.0);
//
// Arguments are arrays of one size, or single numbers, in the units of the model's signature; defaults may be left out.
// Policy: elements outside the validated range become NaN; `over(policy::raise, ...)` throws at the first,
// `over(policy::extrapolate, ...)` computes them unvouched. Any strides, maps, blocks and expressions will do.
#pragma once

#include <Eigen/Core>
#include <stdexcept>
#include <string>
#include <tuple>

#include "wortmath/model.hpp"

namespace wortmath {
namespace detail {

template <class X>
concept eigen_array = requires(const X& x) { x.derived(); x.size(); typename X::Scalar; };

template <class X>
Eigen::Index length_of(const X& x) {
    if constexpr (eigen_array<X>) return x.size();
    else return -1;
}
template <class X>
double element_of(const X& x, Eigen::Index i) {
    if constexpr (eigen_array<X>) return static_cast<double>(x.derived().coeff(i));
    else return static_cast<double>(x);
}

// Expressions are evaluated once, not at every element.
template <class X>
auto evaluated(const X& x) {
    if constexpr (eigen_array<X>) return x.derived().eval();
    else return x;
}

template <class M, class... A, class... X, std::size_t... I>
Eigen::ArrayXd over_each(policy how, const M& model, types<A...>, std::index_sequence<I...>, const X&... x) {
    Eigen::Index n = -1;
    for (Eigen::Index k : {length_of(x)...}) {
        if (k < 0) continue;
        if (n >= 0 && k != n) throw std::invalid_argument(std::string(path_of<M>.full) + ": the arrays differ in size");
        n = k;
    }
    if (n < 0) n = 1;
    Eigen::ArrayXd out(n);
    for (Eigen::Index i = 0; i < n; ++i) out[i] = model(how, std::tuple_element_t<I, std::tuple<A...>>(element_of(x, i))...).value;
    return out;
}

}  // namespace detail

template <class M, class... X>
    requires requires { typename M::signature; }
Eigen::ArrayXd over(policy how, const M& model, const X&... x) {
    return detail::over_each(how, model, typename M::signature::arguments{}, std::make_index_sequence<sizeof...(X)>{}, detail::evaluated(x)...);
}
template <class M, class... X>
    requires requires { typename M::signature; }
Eigen::ArrayXd over(const M& model, const X&... x) {
    return over(policy::nan, model, x...);
}
// The default of a family.
template <class F, class... X>
    requires requires { typename F::default_model; }
Eigen::ArrayXd over(const F&, const X&... x) {
    return over(policy::nan, typename F::default_model{}, x...);
}

}  // namespace wortmath
