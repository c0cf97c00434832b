// Readings of one instrument share its calibration offset and its scale error. JCGM 100, F.1.2.3 has the principle.
#pragma once

#include <span>

#include "wortmath/uncertainty/inputs.hpp"

namespace wortmath::uncertainty::covariance {

inline matrix shared_terms(std::span<const double> readings, double reading_uncertainty, double offset_uncertainty, double scale_uncertainty = 0.0) {
    detail::check_not_negative(reading_uncertainty, "the uncertainty of a reading");
    detail::check_not_negative(offset_uncertainty, "the uncertainty of the offset");
    detail::check_not_negative(scale_uncertainty, "the uncertainty of the scale");
    for (double const x : readings) detail::check_finite(x, "a reading");
    auto const x = Eigen::Map<const vector>(readings.data(), static_cast<Eigen::Index>(readings.size()));
    matrix v = scale_uncertainty * scale_uncertainty * x * x.transpose();
    v.array() += offset_uncertainty * offset_uncertainty;
    v.diagonal().array() += reading_uncertainty * reading_uncertainty;
    return v;
}

}  // namespace wortmath::uncertainty::covariance
