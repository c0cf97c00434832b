// A number of a formula that can be changed by one in its last printed digit, one number in a run.
#pragma once

namespace wortmath::audit {

double at_start(int number, double printed, double changed) noexcept;
void not_before_start() noexcept;  // keeps the compiler from computing a static constant itself

// Ranges that the compiler works out from a formula are those of the formula as printed.
constexpr double value(int number, double printed, double changed) noexcept {
    if (__builtin_is_constant_evaluated()) return printed;
    return at_start(number, printed, changed);
}

}  // namespace wortmath::audit
