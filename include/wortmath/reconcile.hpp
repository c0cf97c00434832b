// Readings that must obey balances: most probable values, and which reading does not fit. Needs Eigen and Boost.Math; opt-in.
#pragma once

#include "wortmath/reconcile/linear.hpp"
#include "wortmath/reconcile/nonlinear.hpp"
#include "wortmath/reconcile/partial_boil.hpp"
