// Standard uncertainty from repeated readings. JCGM 100, 4.2 and 5.2.3.
#pragma once

#include <span>

#include "wortmath/uncertainty/special.hpp"

namespace wortmath::uncertainty {
namespace type_a {

struct mean_result {
    double mean, uncertainty, dof;
};

inline mean_result mean(std::span<const double> readings) {
    std::size_t const n = readings.size();
    if (n < 2) throw error("a mean with an uncertainty needs at least two readings; there " + std::string(n == 1 ? "is one" : "is none"));
    double sum = 0.0, squares = 0.0;
    for (double const x : readings) detail::check_finite(x, "a reading"), sum += x;
    double const middle = sum / static_cast<double>(n);
    for (double const x : readings) squares += (x - middle) * (x - middle);
    double const count = static_cast<double>(n);
    return {middle, std::sqrt(squares / (count - 1.0) / count), count - 1.0};
}

}  // namespace type_a

namespace parts::type_a_covariance {

// Covariance of two means whose readings were taken in pairs.
inline double means(std::span<const double> x, std::span<const double> y) {
    if (x.size() != y.size()) throw error("the two lists of readings have " + std::to_string(x.size()) + " and " + std::to_string(y.size()) + " entries; expected pairs");
    double const mx = type_a::mean(x).mean, my = type_a::mean(y).mean, n = static_cast<double>(x.size());
    double sum = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) sum += (x[i] - mx) * (y[i] - my);
    return sum / (n * (n - 1.0));
}

}  // namespace parts::type_a_covariance
}  // namespace wortmath::uncertainty
