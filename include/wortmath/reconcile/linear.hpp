// Readings that must obey linear balances A x = b: the set nearest to the readings, each by its own uncertainty.
#pragma once

#include "wortmath/reconcile/tests.hpp"

namespace wortmath::reconcile::linear {

inline reconciled least_squares(const vector& readings, const matrix& covariance, const matrix& balances, const vector& constants, double error_rate = 0.05, double detection_rate = 0.80) {
    if (readings.size() == 0) throw error("there are no readings");
    if (!readings.allFinite() || !balances.allFinite() || !constants.allFinite()) throw error("a reading or a balance holds something that is not a number");
    detail::check_covariance(covariance, readings.size());
    if (balances.cols() != readings.size()) throw error("the balances have " + std::to_string(balances.cols()) + " columns; expected one for each of the " + std::to_string(readings.size()) + " readings");
    if (balances.rows() != constants.size()) throw error("there are " + std::to_string(balances.rows()) + " balances and " + std::to_string(constants.size()) + " constants; expected as many of one as of the other");
    if (balances.rows() == 0) throw error("there are no balances; nothing ties the readings");
    vector const r = balances * readings - constants;
    matrix const s = balances * covariance * balances.transpose();
    reconciled out;
    out.values = readings - covariance * balances.transpose() * detail::solver(s).solve(r);
    detail::test(out, covariance, balances, matrix(balances.rows(), 0), s, r, error_rate, detection_rate);
    return out;
}

}  // namespace wortmath::reconcile::linear
