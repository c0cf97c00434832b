// Uncertainty: inputs, budgets, several outputs, Monte Carlo, intervals. Needs Eigen and Boost.Math; opt-in.
#pragma once

#include "wortmath/uncertainty/budget.hpp"
#include "wortmath/uncertainty/coverage_factor.hpp"
#include "wortmath/uncertainty/covariance.hpp"
#include "wortmath/uncertainty/interval.hpp"
#include "wortmath/uncertainty/monte_carlo.hpp"
#include "wortmath/uncertainty/multivariate.hpp"
#include "wortmath/uncertainty/parts.hpp"
