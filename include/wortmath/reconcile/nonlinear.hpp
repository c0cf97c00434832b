// Readings x and unmeasured z that must obey f(x, z) = 0: Gauss-Newton with Lagrange multipliers.
#pragma once

#include <complex>
#include <functional>

#include "wortmath/reconcile/tests.hpp"

namespace wortmath::reconcile::nonlinear {

// The balances at a point, with their derivatives.
struct linearised {
    vector f;
    matrix by_x, by_z;
};
using balance_function = std::function<linearised(const vector& x, const vector& z)>;

inline reconciled least_squares_of(const balance_function& balances, const vector& readings, const matrix& covariance, const vector& guesses = {}, double error_rate = 0.05, double detection_rate = 0.80) {
    if (readings.size() == 0) throw error("there are no readings");
    if (!readings.allFinite() || !guesses.allFinite()) throw error("a reading or a guess is not a number");
    detail::check_covariance(covariance, readings.size());
    vector const u = covariance.diagonal().cwiseSqrt();
    vector x = readings, z = guesses;
    auto const unmeasured = z.size();
    for (int steps = 0; steps < 50; ++steps) {
        linearised const b = balances(x, z);
        if (b.f.size() == 0) throw error("there are no balances; nothing ties the readings");
        if (b.by_x.rows() != b.f.size() || b.by_x.cols() != x.size() || b.by_z.rows() != b.f.size() || b.by_z.cols() != unmeasured) throw error("the derivatives of the balances do not fit the readings");
        if (!b.f.allFinite() || !b.by_x.allFinite() || !b.by_z.allFinite()) throw error("a balance has no finite value or derivative at step " + std::to_string(steps + 1) + "; start from better guesses");
        matrix const s = b.by_x * covariance * b.by_x.transpose();
        detail::solver const chol(s);
        vector const r = b.f + b.by_x * (readings - x);
        vector dz = vector::Zero(unmeasured), uz = dz;
        if (unmeasured > 0) {
            matrix hz = chol.half(b.by_z);
            vector const length = hz.colwise().norm();
            vector const unit = length.unaryExpr([](double l) { return l > 0.0 ? l : 1.0; });
            hz = (hz * unit.cwiseInverse().asDiagonal()).eval();
            Eigen::JacobiSVD<matrix> const svd(hz, Eigen::ComputeThinU | Eigen::ComputeFullV);
            double const least = svd.singularValues().size() < unmeasured ? 0.0 : svd.singularValues().minCoeff();
            if (!(least > 1e-9)) {
                std::string names;
                for (Eigen::Index j = 0; j < unmeasured; ++j)
                    if (std::abs(svd.matrixV()(j, unmeasured - 1)) > 1e-6) names += (names.empty() ? "unmeasured quantity " : " and ") + std::to_string(j + 1);
                throw error(names + " cannot be determined from these readings");
            }
            matrix const inverse = svd.matrixV() * svd.singularValues().cwiseInverse().asDiagonal();
            dz = -(inverse * (svd.matrixU().transpose() * chol.half(r))).cwiseQuotient(unit);
            uz = inverse.rowwise().norm().cwiseQuotient(unit);
        }
        vector const next = readings - covariance * b.by_x.transpose() * chol.solve(r + b.by_z * dz);
        double step = 0.0;
        for (Eigen::Index i = 0; i < x.size(); ++i)
            if (u[i] > 0.0) step = std::max(step, std::abs(next[i] - x[i]) / u[i]);
        for (Eigen::Index j = 0; j < unmeasured; ++j) step = std::max(step, std::abs(dz[j]) / uz[j]);
        x = next, z += dz;
        if (!x.allFinite() || !z.allFinite()) throw error("the reconciliation runs away; start from better guesses");
        if (step > 1e-10) continue;
        linearised const end = balances(x, z);
        matrix const at = end.by_x * covariance * end.by_x.transpose();
        reconciled out;
        out.values = x, out.unmeasured = z, out.unmeasured_uncertainties = uz;
        detail::test(out, covariance, end.by_x, end.by_z, at, end.f + end.by_x * (readings - x), error_rate, detection_rate);
        return out;
    }
    throw error("the reconciliation did not settle in 50 steps; the balances may contradict each other, or the guesses are far off");
}

namespace detail {

// Derivatives of a function on any number type by a step into the complex plane: no difference is taken, so no digits
// are lost. The function is a template: f(x, z) with x and z vectors of T, and a vector of T back.
template <class F>
linearised by_complex_step(const F& f, const vector& x, const vector& z) {
    using number = std::complex<double>;
    using vectors = Eigen::Matrix<number, Eigen::Dynamic, 1>;
    constexpr double h = 1e-30;
    linearised out;
    vectors cx = x.cast<number>(), cz = z.cast<number>();
    vectors const plain = f(cx, cz);
    out.f = plain.real();
    out.by_x.resize(out.f.size(), x.size()), out.by_z.resize(out.f.size(), z.size());
    for (Eigen::Index i = 0; i < x.size(); ++i) {
        cx[i] += number(0.0, h);
        out.by_x.col(i) = vectors(f(cx, cz)).imag() / h;
        cx[i] = x[i];
    }
    for (Eigen::Index i = 0; i < z.size(); ++i) {
        cz[i] += number(0.0, h);
        out.by_z.col(i) = vectors(f(cx, cz)).imag() / h;
        cz[i] = z[i];
    }
    return out;
}

}  // namespace detail

template <class Balances>
reconciled least_squares(const Balances& balances, const vector& readings, const matrix& covariance, const vector& guesses = {}, double error_rate = 0.05, double detection_rate = 0.80) {
    return least_squares_of([&](const vector& x, const vector& z) { return detail::by_complex_step(balances, x, z); }, readings, covariance, guesses, error_rate, detection_rate);
}

}  // namespace wortmath::reconcile::nonlinear
