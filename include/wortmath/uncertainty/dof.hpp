// Effective degrees of freedom of a combined uncertainty. JCGM 100, G.4. Independent inputs only.
#pragma once

#include <span>

#include "wortmath/uncertainty/special.hpp"

namespace wortmath::uncertainty::dof {

inline double welch_satterthwaite(std::span<const double> components, std::span<const double> dofs) {
    if (components.size() != dofs.size())
        throw error("there are " + std::to_string(components.size()) + " components and " + std::to_string(dofs.size()) + " degrees of freedom; expected as many of one as of the other");
    double largest = 0.0;
    for (double const w : components) detail::check_finite(w, "a component"), largest = std::max(largest, std::abs(w));
    double squares = 0.0, fourths = 0.0;
    for (std::size_t i = 0; i < components.size(); ++i) {
        detail::check_dof(dofs[i]);
        double const w = largest > 0.0 ? components[i] / largest : 0.0;
        squares += w * w;
        fourths += w * w * w * w / dofs[i];
    }
    return fourths > 0.0 ? squares * squares / fourths : detail::infinite;
}

}  // namespace wortmath::uncertainty::dof
