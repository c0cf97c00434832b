// The factor from a standard to an expanded uncertainty.
#pragma once

#include "wortmath/uncertainty/special.hpp"

namespace wortmath::uncertainty::coverage_factor {

// Two-sided; infinite degrees of freedom: normal.
inline double student(double probability, double dof = detail::infinite) {
    detail::check_probability(probability);
    detail::check_dof(dof);
    return detail::student_upper_quantile(0.5 * (1.0 - probability), dof);
}

}  // namespace wortmath::uncertainty::coverage_factor
