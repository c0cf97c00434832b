// The tests of a reconciliation: of the whole, of each reading and of each balance.
#pragma once

#include <string>

#include <Eigen/Dense>

#include "wortmath/uncertainty/special.hpp"

namespace wortmath::reconcile {

using uncertainty::error;
using vector = Eigen::VectorXd;
using matrix = Eigen::MatrixXd;

struct reconciled {
    vector values, uncertainties;
    double objective = 0.0;
    int dof = 0;
    double probability = 0.0;   // of a larger objective
    vector z;                   // of each reading; 0: nothing checks it
    double critical_z = 0.0;
    vector balance_z, bias, detectable_bias;
    vector unmeasured, unmeasured_uncertainties;  // of the nonlinear kind
    matrix covariance;          // of the reconciled values
    double log_determinant = 0.0;  // of the covariance of the balances' residuals, for comparing explanations
};

namespace parts {

namespace global_test {
// The probability of a larger objective; NaN without a degree of freedom.
inline double chi_square(double objective, double dof) {
    if (!(objective >= 0.0)) throw error("the objective is " + uncertainty::detail::text_of(objective) + "; expected zero or a positive number");
    return dof > 0.0 ? uncertainty::detail::chi_square_above(objective, dof) : uncertainty::detail::nan;
}
}  // namespace global_test

namespace critical_z {
// For the largest of n independent tests.
inline double sidak(double error_rate, int readings) {
    uncertainty::detail::check_probability(error_rate, "the error rate");
    if (readings < 1) throw error("there are no readings to test");
    double const one = -std::expm1(std::log1p(-error_rate) / readings);
    return uncertainty::detail::normal_upper_quantile(0.5 * one);
}
}  // namespace critical_z

namespace detectable_bias {
// The factor over the uncertainty of the bias, for one two-sided test by itself.
inline double factor(double error_rate, double detection_rate) {
    uncertainty::detail::check_probability(error_rate, "the error rate"), uncertainty::detail::check_probability(detection_rate, "the detection rate");
    return uncertainty::detail::normal_upper_quantile(0.5 * error_rate) + uncertainty::detail::normal_quantile(detection_rate);
}
}  // namespace detectable_bias

namespace constraint_test {
inline vector nodal(const vector& residuals, const matrix& s) { return residuals.array() / s.diagonal().array().sqrt(); }
}  // namespace constraint_test

}  // namespace parts

namespace detail {

inline void check_covariance(const matrix& v, Eigen::Index n) {
    if (v.rows() != n || v.cols() != n)
        throw error("the covariance is " + std::to_string(v.rows()) + " by " + std::to_string(v.cols()) + "; with " + std::to_string(n) + " readings it has " + std::to_string(n) + " rows and columns");
    for (Eigen::Index i = 0; i < n; ++i) {
        if (!(v(i, i) >= 0.0 && v(i, i) < uncertainty::detail::infinite)) throw error("the variance of reading " + std::to_string(i + 1) + " is " + uncertainty::detail::text_of(v(i, i)) + "; expected zero or a positive number");
        for (Eigen::Index k = 0; k < i; ++k)
            if (!(std::abs(v(i, k) - v(k, i)) <= 1e-12 * std::sqrt(v(i, i) * v(k, k)))) throw error("the covariance of readings " + std::to_string(k + 1) + " and " + std::to_string(i + 1) + " is not symmetric");
    }
    vector const u = v.diagonal().cwiseSqrt().unaryExpr([](double x) { return x > 0.0 ? x : 1.0; });
    if (n > 0 && Eigen::SelfAdjointEigenSolver<matrix>(u.cwiseInverse().asDiagonal() * v * u.cwiseInverse().asDiagonal(), Eigen::EigenvaluesOnly).eigenvalues().minCoeff() < -1e-9)
        throw error("no readings can have this covariance: it has a negative eigenvalue");
}

// Cholesky of S in units of its own diagonal; says which balance adds nothing.
class solver {
public:
    explicit solver(const matrix& s) : scale_(s.diagonal().cwiseSqrt()), l_(matrix::Zero(s.rows(), s.rows())) {
        auto const n = s.rows();
        for (Eigen::Index i = 0; i < n; ++i)
            if (!(scale_[i] > 0.0)) throw error("balance " + std::to_string(i + 1) + " holds no reading with an uncertainty; it can neither be met nor checked");
        for (Eigen::Index i = 0; i < n; ++i) {
            for (Eigen::Index k = 0; k <= i; ++k) {
                double x = s(i, k) / (scale_[i] * scale_[k]);
                for (Eigen::Index j = 0; j < k; ++j) x -= l_(i, j) * l_(k, j);
                if (k < i) l_(i, k) = x / l_(k, k);
                else {
                    if (!(x > 1e-12)) throw error("balance " + std::to_string(i + 1) + " is redundant: it follows from the balances before it; leave it out");
                    l_(i, i) = std::sqrt(x);
                }
            }
        }
    }
    // L^-1 b with S = L L'
    matrix half(const matrix& b) const {
        matrix x = scale_.cwiseInverse().asDiagonal() * b;
        l_.triangularView<Eigen::Lower>().solveInPlace(x);
        return x;
    }
    matrix solve(const matrix& b) const {
        matrix x = half(b);
        l_.triangularView<Eigen::Lower>().transpose().solveInPlace(x);
        return scale_.cwiseInverse().asDiagonal() * x;
    }
    double log_determinant() const { return 2.0 * (scale_.array().log().sum() + l_.diagonal().array().log().sum()); }

private:
    vector scale_;
    matrix l_;
};

// A linear (or linearised) set A x + B z = b, residual r at the readings: values are the caller's, the rest is here.
inline void test(reconciled& out, const matrix& v, const matrix& a, const matrix& b, const matrix& s, const vector& r, double error_rate, double detection_rate) {
    solver const chol(s);
    // In half-whitened space Q is a projection: off what the unmeasured can take up.
    matrix ha = chol.half(a);
    vector hr = chol.half(r);
    matrix const whole = ha;
    Eigen::Index taken = 0;
    if (b.cols() > 0) {
        matrix const hb = chol.half(b);
        Eigen::ColPivHouseholderQR<matrix> const qr(hb);
        taken = qr.rank();
        matrix const q = matrix(qr.householderQ()).leftCols(taken);
        ha -= (q * (q.transpose() * ha)).eval();
        hr -= (q * (q.transpose() * hr)).eval();
    }
    auto const n = a.cols();
    matrix const av = ha * v;
    matrix vx = v - av.transpose() * av;
    out.covariance = 0.5 * (vx + vx.transpose());
    out.uncertainties = out.covariance.diagonal().cwiseMax(0.0).cwiseSqrt();
    out.objective = hr.squaredNorm();
    out.dof = static_cast<int>(a.rows() - taken);
    out.probability = parts::global_test::chi_square(out.objective, out.dof);
    out.critical_z = parts::critical_z::sidak(error_rate, static_cast<int>(n));
    out.log_determinant = chol.log_determinant();
    double const factor = parts::detectable_bias::factor(error_rate, detection_rate);
    out.z = vector::Zero(n), out.bias = vector::Constant(n, uncertainty::detail::nan), out.detectable_bias = vector::Constant(n, uncertainty::detail::infinite);
    for (Eigen::Index i = 0; i < n; ++i) {
        double const power = ha.col(i).squaredNorm();
        if (!(power > 1e-12 * whole.col(i).squaredNorm())) continue;
        double const d = ha.col(i).dot(hr);
        out.z[i] = d / std::sqrt(power), out.bias[i] = d / power, out.detectable_bias[i] = factor / std::sqrt(power);
    }
    out.balance_z = parts::constraint_test::nodal(r, s);
    for (Eigen::Index k = 0; k < b.rows(); ++k)
        if (b.cols() > 0 && (b.row(k).array() != 0.0).any()) out.balance_z[k] = uncertainty::detail::nan;
}

}  // namespace detail
}  // namespace wortmath::reconcile
