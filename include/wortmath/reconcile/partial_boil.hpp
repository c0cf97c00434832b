// A concentrated boil topped up in the fermenter: extract put in (g), kettle wort (g, degP), water added (g), wort in
// the fermenter (g, degP). Without losses.
#pragma once

#include "wortmath/reconcile/nonlinear.hpp"

namespace wortmath::reconcile::partial_boil {

struct balances {
    template <class X, class Z>
    Eigen::Matrix<typename X::Scalar, Eigen::Dynamic, 1> operator()(const X& x, const Z&) const {
        using T = typename X::Scalar;
        T const extract = x[0], kettle = x[1], p = x[2], water = x[3], fermenter = x[4], q = x[5];
        Eigen::Matrix<T, Eigen::Dynamic, 1> f(3);
        f << extract - kettle * p / 100.0, kettle + water - fermenter, kettle * p / 100.0 - fermenter * q / 100.0;
        return f;
    }
};

inline reconciled least_squares(const vector& readings, const vector& uncertainties, double error_rate = 0.05, double detection_rate = 0.80) {
    if (readings.size() != 6 || uncertainties.size() != 6)
        throw error("expected six readings and six uncertainties: extract, kettle wort and its extract, water, fermenter wort and its extract");
    for (double const u : uncertainties) uncertainty::detail::check_not_negative(u, "an uncertainty");
    return nonlinear::least_squares(balances{}, readings, uncertainties.cwiseAbs2().asDiagonal(), {}, error_rate, detection_rate);
}

}  // namespace wortmath::reconcile::partial_boil
