// Coverage intervals of a sample. JCGM 101, 7.7.
#pragma once

#include <algorithm>
#include <span>
#include <vector>

#include "wortmath/uncertainty/special.hpp"

namespace wortmath::uncertainty {

struct interval_result {
    double low, high;
};

namespace interval {
namespace detail {

using uncertainty::detail::check_probability;

inline long long places(std::size_t size, double probability) {
    check_probability(probability);
    double const m = static_cast<double>(size), pm = probability * m, whole = std::round(pm);
    // 0.95 is not exactly 0.95; a product that close to a whole number is one
    double const q = std::abs(pm - whole) <= 1e-9 * m ? whole : std::floor(pm + 0.5);
    if (!(q >= 1.0 && q <= m - 1.0))
        throw error(std::to_string(size) + (size == 1 ? " value is" : " values are") + " too few for an interval with the probability " + uncertainty::detail::text_of(probability));
    return static_cast<long long>(q);
}
inline std::vector<double> sorted(std::span<const double> samples) {
    std::vector<double> y(samples.begin(), samples.end());
    for (double const x : y)
        if (x != x) throw error("one of the samples is not a number; leave refused draws out, or count them on the unfavourable side");
    std::sort(y.begin(), y.end());
    return y;
}
inline interval_result symmetric_of_sorted(std::span<const double> y, double probability) {
    long long const m = static_cast<long long>(y.size()), q = places(y.size(), probability), rest = m - q;
    long long const r = rest % 2 == 0 ? rest / 2 : (rest + 1) / 2;
    return {y[static_cast<std::size_t>(r - 1)], y[static_cast<std::size_t>(r + q - 1)]};
}
inline interval_result shortest_of_sorted(std::span<const double> y, double probability) {
    auto const q = static_cast<std::size_t>(places(y.size(), probability));
    std::size_t best = 0;
    for (std::size_t r = 1; r + q < y.size(); ++r)
        if (y[r + q] - y[r] < y[best + q] - y[best]) best = r;
    return {y[best], y[best + q]};
}

}  // namespace detail

// As much probability below as above.
inline interval_result symmetric(std::span<const double> samples, double probability = 0.95) { return detail::symmetric_of_sorted(detail::sorted(samples), probability); }
// The narrowest; of equals the first.
inline interval_result shortest(std::span<const double> samples, double probability = 0.95) { return detail::shortest_of_sorted(detail::sorted(samples), probability); }

}  // namespace interval
}  // namespace wortmath::uncertainty
