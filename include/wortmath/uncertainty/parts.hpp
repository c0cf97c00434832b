// Parts: formulas with a name that are used inside the functions of this chapter and tested by that name.
#pragma once

#include "wortmath/uncertainty/interval.hpp"
#include "wortmath/uncertainty/multivariate.hpp"

namespace wortmath::uncertainty::parts {

namespace trials {
// JCGM 101, 7.2.2.
inline long long minimum(double probability) {
    detail::check_probability(probability);
    double const j = 100.0 / (1.0 - probability), whole = std::round(j);
    double const least = std::abs(j - whole) <= 1e-9 * j ? whole : std::ceil(j);
    if (!(least < 1e15)) throw error("a probability of " + detail::text_of(probability) + " needs more trials than any machine can run");
    return std::max(static_cast<long long>(least), 10000LL);
}
}  // namespace trials

namespace tolerance {
// Half a unit of the last of `digits` significant digits. JCGM 101, 7.9.2.
inline double numerical(double z, int digits) {
    if (digits < 1 || digits > 15) throw error("the number of significant digits is " + std::to_string(digits) + "; expected 1 to 15");
    detail::check_finite(z, "the value");
    if (z == 0.0) return 0.0;
    // the decimal that is printed decides: 0.0996 with two digits is 0.10
    char buffer[64];
    std::snprintf(buffer, sizeof buffer, "%.*e", digits - 1, std::abs(z));
    std::string const text(buffer);
    int const exponent = std::stoi(text.substr(text.find('e') + 1)) - (digits - 1);
    return 0.5 * std::pow(10.0, exponent);
}
}  // namespace tolerance

namespace bias {
// mean(y) - y(mean) from the second derivatives.
inline double second_order(const matrix& hessian, const vector& uncertainties, const matrix& correlations) {
    auto const n = uncertainties.size();
    if (hessian.rows() != n || hessian.cols() != n) throw error("the second derivatives and the uncertainties belong to different numbers of inputs");
    detail::check_correlations(correlations, n);
    return 0.5 * (hessian.array() * correlations.array() * (uncertainties * uncertainties.transpose()).array()).sum();
}
}  // namespace bias

namespace agreement {
// Whether Monte Carlo confirms the first-order interval. JCGM 101, 8.
struct verdict {
    bool confirmed;
    double low_difference, high_difference, tolerance;
};
inline verdict jcgm_101(interval_result first_order, interval_result monte_carlo, double uncertainty, int digits) {
    double const delta = tolerance::numerical(uncertainty, digits), low = std::abs(first_order.low - monte_carlo.low), high = std::abs(first_order.high - monte_carlo.high);
    return {low <= delta && high <= delta, low, high, delta};
}
}  // namespace agreement

namespace fit {
// Ordinary least squares: intercept and slope with their uncertainties. JCGM 100, H.3.
struct line_result {
    double intercept, slope, intercept_uncertainty, slope_uncertainty, correlation, residual, dof;
    double at(double x) const { return intercept + slope * x; }
    double uncertainty_at(double x) const {
        double const v = intercept_uncertainty * intercept_uncertainty + x * x * slope_uncertainty * slope_uncertainty + 2.0 * x * correlation * intercept_uncertainty * slope_uncertainty;
        return std::sqrt(std::max(0.0, v));
    }
};
inline line_result line(std::span<const double> x, std::span<const double> y) {
    if (x.size() != y.size()) throw error("there are " + std::to_string(x.size()) + " abscissae and " + std::to_string(y.size()) + " readings; expected pairs");
    if (x.size() < 3) throw error("a line with an uncertainty needs at least three points");
    double const n = static_cast<double>(x.size());
    double mx = 0.0, my = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) detail::check_finite(x[i], "an abscissa"), detail::check_finite(y[i], "a reading"), mx += x[i] / n, my += y[i] / n;
    // about the mean, since sums of raw abscissae cancel
    double sxx = 0.0, sxy = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) sxx += (x[i] - mx) * (x[i] - mx), sxy += (x[i] - mx) * (y[i] - my);
    if (!(sxx > 0.0)) throw error("all points have the same abscissa; no line goes through them");
    double const slope = sxy / sxx;
    double left = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        double const r = y[i] - my - slope * (x[i] - mx);
        left += r * r;
    }
    double const s = std::sqrt(left / (n - 2.0)), raw = sxx + n * mx * mx;
    return {my - slope * mx, slope, s * std::sqrt(raw / (n * sxx)), s / std::sqrt(sxx), -mx * std::sqrt(n / raw), s, n - 2.0};
}
}  // namespace fit

namespace weighted_mean {
struct mean_result {
    double mean, uncertainty, birge_ratio;
};
inline mean_result inverse_variance(std::span<const double> values, std::span<const double> uncertainties) {
    if (values.size() != uncertainties.size() || values.empty()) throw error("a weighted mean needs as many uncertainties as values, and at least one");
    double weights = 0.0, sum = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (!(uncertainties[i] > 0.0)) throw error("a weighted mean needs uncertainties above 0");
        double const w = 1.0 / (uncertainties[i] * uncertainties[i]);
        weights += w, sum += w * values[i];
    }
    double const mean = sum / weights;
    double chi = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        double const z = (values[i] - mean) / uncertainties[i];
        chi += z * z;
    }
    return {mean, 1.0 / std::sqrt(weights), values.size() > 1 ? std::sqrt(chi / static_cast<double>(values.size() - 1)) : detail::nan};
}
}  // namespace weighted_mean

}  // namespace wortmath::uncertainty::parts
