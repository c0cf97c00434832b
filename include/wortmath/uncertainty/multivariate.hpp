// Several outputs together. JCGM 102, 6.2.
#pragma once

#include "wortmath/uncertainty/budget.hpp"

namespace wortmath::uncertainty {

struct joint_result {
    matrix covariance;
    double ellipsoid_factor = 0.0;
    std::optional<vector> values;
};

namespace parts::region {

// Gaussian coverage ellipsoid of m outputs.
inline double ellipsoid_factor(double probability, int outputs) {
    detail::check_probability(probability);
    if (outputs < 1) throw error("a coverage region needs at least one output");
    return std::sqrt(detail::chi_square_quantile(probability, outputs));
}
// The probability of each side of a rectangle that holds all outputs.
inline double rectangle_side(double probability, int outputs) {
    detail::check_probability(probability);
    if (outputs < 1) throw error("a coverage region needs at least one output");
    return 1.0 - (1.0 - probability) / outputs;
}

}  // namespace parts::region

namespace multivariate {

inline joint_result first_order(const matrix& jacobian, const matrix& covariance, double probability = 0.95) {
    if (covariance.rows() != jacobian.cols() || covariance.cols() != jacobian.cols())
        throw error("the sensitivities are " + std::to_string(jacobian.rows()) + " by " + std::to_string(jacobian.cols()) + " and the covariance " + std::to_string(covariance.rows()) + " by " + std::to_string(covariance.cols()) +
                    "; expected one row and column of the covariance for each input");
    matrix v = jacobian * covariance * jacobian.transpose();
    v = (0.5 * (v + v.transpose())).eval();
    return {v, parts::region::ellipsoid_factor(probability, static_cast<int>(jacobian.rows())), std::nullopt};
}

inline joint_result first_order(const std::vector<measurement>& models, const std::vector<input>& inputs, const std::optional<matrix>& correlations = std::nullopt, double probability = 0.95) {
    error_lines const errors(inputs, correlations);
    vector u(errors.values.size());
    for (std::size_t i = 0; i < inputs.size(); ++i) u[static_cast<Eigen::Index>(i)] = inputs[i].uncertainty;
    matrix j(static_cast<Eigen::Index>(models.size()), errors.values.size());
    vector y(static_cast<Eigen::Index>(models.size()));
    for (std::size_t k = 0; k < models.size(); ++k) {
        auto const row = static_cast<Eigen::Index>(k);
        y[row] = detail::called(models[k], errors.values);
        j.row(row) = detail::sensitivities(models[k], errors.values, u).unaryExpr([](double c) { return c == c ? c : 0.0; }).transpose();
    }
    joint_result r = first_order(j, errors.covariance(), probability);
    r.values = y;
    return r;
}

}  // namespace multivariate
}  // namespace wortmath::uncertainty
