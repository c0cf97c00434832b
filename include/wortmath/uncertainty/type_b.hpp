// Standard uncertainty from a statement: a limit, an expanded value, a display step. JCGM 100, 4.3; JCGM 101, 6.4.
#pragma once

#include "wortmath/uncertainty/special.hpp"

namespace wortmath::uncertainty::type_b {

inline constexpr double normal_95 = 1.9599639845400542;

inline double rectangular(double limit) { return detail::check_not_negative(limit, "the limit"), limit / std::sqrt(3.0); }
inline double triangular(double limit) { return detail::check_not_negative(limit, "the limit"), limit / std::sqrt(6.0); }
inline double arcsine(double limit) { return detail::check_not_negative(limit, "the limit"), limit / std::sqrt(2.0); }
inline double trapezoidal(double limit, double top_ratio) {
    detail::check_not_negative(limit, "the limit");
    if (!(top_ratio >= 0.0 && top_ratio <= 1.0)) throw error("the top of the trapezoid is " + detail::text_of(top_ratio) + " of its base; expected a share from 0 to 1");
    return limit * std::sqrt((1.0 + top_ratio * top_ratio) / 6.0);
}
// The limit itself is known only to within limit_tolerance.
inline double curvilinear_trapezoid(double limit, double limit_tolerance) {
    detail::check_not_negative(limit, "the limit"), detail::check_not_negative(limit_tolerance, "the tolerance of the limit");
    if (limit_tolerance > limit) throw error("the tolerance of the limit, " + detail::text_of(limit_tolerance) + ", is wider than the limit, " + detail::text_of(limit));
    return std::sqrt(limit * limit / 3.0 + limit_tolerance * limit_tolerance / 9.0);
}
inline double expanded(double expanded, double coverage_factor = 2.0) {
    detail::check_not_negative(expanded, "the expanded uncertainty");
    if (!(coverage_factor > 0.0 && coverage_factor < detail::infinite)) throw error("the coverage factor is " + detail::text_of(coverage_factor) + "; expected a positive number, usually 2");
    return expanded / coverage_factor;
}
inline double resolution(double step) { return detail::check_not_negative(step, "the display step"), step / std::sqrt(12.0); }
// The 95 % critical difference of two single results.
inline double critical_difference(double critical_difference) {
    return detail::check_not_negative(critical_difference, "the critical difference"), critical_difference / (normal_95 * std::sqrt(2.0));
}
inline double log_normal_spread(double factor) {
    if (!(factor > 1.0 && factor < detail::infinite)) throw error("the factor is " + detail::text_of(factor) + "; a value right within a factor either way needs one above 1");
    return std::log(factor) / normal_95;
}
// Right within a factor either way at 95 %; the value is the median.
inline double log_normal(double value, double factor) {
    if (!(value > 0.0 && value < detail::infinite)) throw error("the value is " + detail::text_of(value) + "; a log-normal quantity is positive");
    double const v = log_normal_spread(factor) * log_normal_spread(factor);
    return value * std::exp(0.5 * v) * std::sqrt(std::expm1(v));
}

}  // namespace wortmath::uncertainty::type_b
