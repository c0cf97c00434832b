// The uncertainty of one output, and who contributes. JCGM 100, 5.1 and 5.2; the second order from the note to 5.1.2.
#pragma once

#include <functional>
#include <optional>
#include <span>

#include "wortmath/uncertainty/dof.hpp"
#include "wortmath/uncertainty/inputs.hpp"

namespace wortmath::uncertainty {

// `value` and what follows it only where a model and inputs were given: one entry for each line of the budget.
struct budget_result {
    double uncertainty = 0.0;
    vector components, shares;
    double cross_share = 0.0;
    std::optional<double> value, dof;
    std::vector<std::string> names;
    vector sensitivities, uncertainties;
};

struct second_order_result {
    double uncertainty = 0.0, bias = 0.0;
    std::optional<double> value;
};

// A measurement model: the numbers of its arguments in order, one number out.
using measurement = std::function<double(std::span<const double>)>;

namespace detail {

inline double called(const measurement& model, const vector& x) {
    double const y = model(std::span<const double>(x.data(), static_cast<std::size_t>(x.size())));
    if (!(y - y == 0.0)) throw error("the model gives no finite number near the values of its inputs");
    return y;
}

// The only place where derivatives of a model with numbers alone are made: half the change over two standard
// uncertainties, which has the scale of the input (JCGM 100, 5.1.3, note). An exact input gets a small relative step.
inline vector sensitivities(const measurement& model, const vector& x, const vector& u) {
    vector c(x.size());
    for (Eigen::Index i = 0; i < x.size(); ++i) {
        double const h = u[i] > 0.0 ? u[i] : 1e-6 * (x[i] != 0.0 ? std::abs(x[i]) : 1.0);
        vector up = x, down = x;
        up[i] += h, down[i] -= h;
        if (u[i] > 0.0) c[i] = (called(model, up) - called(model, down)) / (2.0 * h);
        else {  // moves nothing; a model that cannot be asked here has no sensitivity to show
            try {
                c[i] = (called(model, up) - called(model, down)) / (2.0 * h);
            } catch (const error&) {
                c[i] = nan;
            }
        }
    }
    return c;
}

}  // namespace detail

namespace budget {

inline budget_result first_order(const vector& sensitivities, const vector& uncertainties, const std::optional<matrix>& correlations = std::nullopt) {
    if (sensitivities.size() != uncertainties.size())
        throw error("there are " + std::to_string(sensitivities.size()) + " sensitivities and " + std::to_string(uncertainties.size()) + " uncertainties; expected as many of one as of the other");
    for (double const u : uncertainties) detail::check_not_negative(u, "an uncertainty");
    if (correlations) detail::check_correlations(*correlations, sensitivities.size());
    budget_result r;
    vector w(sensitivities.size());
    for (Eigen::Index i = 0; i < w.size(); ++i) {
        w[i] = uncertainties[i] == 0.0 ? 0.0 : sensitivities[i] * uncertainties[i];
        detail::check_finite(w[i], "a sensitivity");
    }
    r.components = w.cwiseAbs();
    // in units of the largest, so that squares neither overflow nor vanish
    double const unit = w.size() ? r.components.maxCoeff() : 0.0;
    vector const v = unit > 0.0 ? vector(w / unit) : w;
    double const sum = correlations ? v.dot(*correlations * v) : v.squaredNorm();
    r.uncertainty = unit * std::sqrt(std::max(0.0, sum));
    if (r.uncertainty > 0.0) {
        r.shares = v.cwiseAbs2() / sum;
        r.cross_share = correlations && !detail::is_identity(*correlations) ? 1.0 - r.shares.sum() : 0.0;
    } else {
        r.shares = vector::Constant(w.size(), detail::nan);
        r.cross_share = detail::nan;
    }
    return r;
}

// The derivatives of the model by its arguments are given: the way for dual numbers.
inline budget_result first_order(double value, const vector& by_argument, const error_lines& errors) {
    vector const c = errors.effects.transpose() * by_argument.unaryExpr([](double x) { return x == x ? x : 0.0; });
    vector const u = errors.uncertainties();
    budget_result r = first_order(c, u, errors.correlations);
    r.value = value, r.sensitivities = c, r.uncertainties = u;
    for (Eigen::Index k = 0; k < c.size(); ++k)
        for (Eigen::Index i = 0; i < by_argument.size(); ++i)
            if (errors.effects(i, k) != 0.0 && by_argument[i] != by_argument[i]) r.sensitivities[k] = detail::nan;
    std::vector<double> dofs;
    for (auto const& line : errors.lines) r.names.push_back(line.name), dofs.push_back(line.dof);
    r.dof = errors.correlations ? detail::nan : dof::welch_satterthwaite({r.components.data(), static_cast<std::size_t>(r.components.size())}, dofs);
    return r;
}

inline budget_result first_order(const measurement& model, const std::vector<input>& inputs, const std::optional<matrix>& correlations = std::nullopt) {
    error_lines const errors(inputs, correlations);
    vector u(errors.values.size());
    for (std::size_t i = 0; i < inputs.size(); ++i) u[static_cast<Eigen::Index>(i)] = inputs[i].uncertainty;
    return first_order(detail::called(model, errors.values), detail::sensitivities(model, errors.values, u), errors);
}

// Independent inputs; exact for a product of two. The terms of one input with itself hold for normal inputs.
inline second_order_result second_order(const vector& sensitivities, const matrix& hessian, const matrix& third, const vector& uncertainties) {
    auto const n = sensitivities.size();
    if (uncertainties.size() != n || hessian.rows() != n || hessian.cols() != n || third.rows() != n || third.cols() != n)
        throw error("sensitivities, second and third derivatives and uncertainties must belong to the same inputs: " + std::to_string(n) + " sensitivities, " + std::to_string(hessian.rows()) + " by " + std::to_string(hessian.cols()) + ", " +
                    std::to_string(third.rows()) + " by " + std::to_string(third.cols()) + ", " + std::to_string(uncertainties.size()) + " uncertainties");
    for (double const u : uncertainties) detail::check_not_negative(u, "an uncertainty");
    double first = 0.0, second = 0.0, bias = 0.0;
    for (Eigen::Index i = 0; i < n; ++i) {
        double const w = uncertainties[i] == 0.0 ? 0.0 : sensitivities[i] * uncertainties[i];
        first += w * w;
        if (uncertainties[i] > 0.0) bias += 0.5 * hessian(i, i) * uncertainties[i] * uncertainties[i];
        for (Eigen::Index k = 0; k < n; ++k) {
            if (uncertainties[i] == 0.0 || uncertainties[k] == 0.0) continue;
            double const h = hessian(i, k) * uncertainties[i] * uncertainties[k];
            second += 0.5 * h * h + w * third(i, k) * uncertainties[i] * uncertainties[k] * uncertainties[k];
        }
    }
    detail::check_finite(first + second + bias, "a derivative");
    return {std::sqrt(std::max(0.0, first + second)), bias, std::nullopt};
}

// Second and third derivatives by central differences over a tenth of the standard uncertainty.
inline second_order_result second_order(const measurement& model, const std::vector<input>& inputs) {
    error_lines const errors(inputs);
    vector const u = errors.uncertainties();
    auto const n = u.size();
    // in units of the standard uncertainties of the independent errors
    auto const at = [&](Eigen::Index i, double a, Eigen::Index k = 0, double b = 0.0) {
        vector e = vector::Zero(n);
        e[i] += a * u[i];
        if (b != 0.0) e[k] += b * u[k];
        return detail::called(model, errors.values + errors.effects * e);
    };
    double const f0 = detail::called(model, errors.values), h = 0.1;
    vector c = vector::Zero(n);
    matrix second = matrix::Zero(n, n), third = matrix::Zero(n, n);
    std::vector<double> plus(static_cast<std::size_t>(n)), minus(static_cast<std::size_t>(n));
    for (Eigen::Index i = 0; i < n; ++i) {
        if (u[i] == 0.0) continue;
        double const p = plus[static_cast<std::size_t>(i)] = at(i, h), m = minus[static_cast<std::size_t>(i)] = at(i, -h);
        c[i] = 0.5 * (at(i, 1.0) - at(i, -1.0));
        second(i, i) = (p - 2.0 * f0 + m) / (h * h);
        third(i, i) = (at(i, 2.0 * h) - 2.0 * p + 2.0 * m - at(i, -2.0 * h)) / (2.0 * h * h * h);
    }
    for (Eigen::Index i = 0; i < n; ++i)
        for (Eigen::Index k = 0; k < i; ++k) {
            if (u[i] == 0.0 || u[k] == 0.0) continue;
            double const pp = at(i, h, k, h), pm = at(i, h, k, -h), mp = at(i, -h, k, h), mm = at(i, -h, k, -h);
            double const ip = plus[static_cast<std::size_t>(i)], im = minus[static_cast<std::size_t>(i)], kp = plus[static_cast<std::size_t>(k)], km = minus[static_cast<std::size_t>(k)];
            second(i, k) = second(k, i) = (pp - pm - mp + mm) / (4.0 * h * h);
            third(i, k) = ((pp - 2.0 * ip + pm) - (mp - 2.0 * im + mm)) / (2.0 * h * h * h);
            third(k, i) = ((pp - 2.0 * kp + mp) - (pm - 2.0 * km + mm)) / (2.0 * h * h * h);
        }
    second_order_result r = second_order(c, second, third, vector::Ones(n));
    r.value = f0;
    return r;
}

}  // namespace budget
}  // namespace wortmath::uncertainty
