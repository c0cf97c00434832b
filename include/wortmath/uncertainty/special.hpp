// The few distribution functions that uncertainty needs, by Boost.Math. Upper tails are computed directly: a
// probability of 5e-32 is not 1 less something.
#pragma once

#include <cmath>
#include <limits>
#include <stdexcept>
#include <string>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/gamma.hpp>

namespace wortmath::uncertainty {

// What the caller asked for cannot be answered; a sentence says why.
class error : public std::invalid_argument {
public:
    using std::invalid_argument::invalid_argument;
};

namespace detail {

inline constexpr double infinite = std::numeric_limits<double>::infinity();
inline constexpr double nan = std::numeric_limits<double>::quiet_NaN();

inline std::string text_of(double x) {
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%.6g", x);
    return buffer;
}
inline void check_probability(double p, const char* name = "the probability") {
    if (!(p > 0.0 && p < 1.0)) throw error(std::string(name) + " is " + text_of(p) + "; expected a fraction between 0 and 1, both excluded");
}
inline void check_not_negative(double x, const char* name) {
    if (!(x >= 0.0) || !(x < infinite)) throw error(std::string(name) + " is " + text_of(x) + "; expected zero or a positive number");
}
inline void check_finite(double x, const char* name) {
    if (!(x - x == 0.0)) throw error(std::string(name) + " is " + text_of(x) + "; expected a number");
}
inline void check_dof(double n) {
    if (!(n > 0.0)) throw error("the degrees of freedom are " + text_of(n) + "; expected a number above 0, or infinity");
}

inline double normal_quantile(double p) { return boost::math::quantile(boost::math::normal_distribution<double>(), p); }
inline double normal_upper_quantile(double q) { return boost::math::quantile(boost::math::complement(boost::math::normal_distribution<double>(), q)); }
inline double normal_below(double z) { return boost::math::cdf(boost::math::normal_distribution<double>(), z); }
// Q(n/2, x/2): the probability of a chi-square above x.
inline double chi_square_above(double x, double n) { return x <= 0.0 ? 1.0 : boost::math::gamma_q(0.5 * n, 0.5 * x); }
inline double chi_square_quantile(double p, double n) { return 2.0 * boost::math::gamma_p_inv(0.5 * n, p); }
inline double student_upper_quantile(double q, double n) {
    if (n == infinite) return normal_upper_quantile(q);
    return boost::math::quantile(boost::math::complement(boost::math::students_t_distribution<double>(n), q));
}

}  // namespace detail
}  // namespace wortmath::uncertainty
