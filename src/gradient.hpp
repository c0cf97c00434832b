// The derivatives of every model, as one plain table beside the catalogue.
#pragma once

#include <cstddef>

namespace wortmath::core {

// `in`: one pointer for each argument, to one value or, for lists, to n of them; words by their number.
// `value`: one number for each result; `by`: for each result one for each column (a list has n columns, anything else one).
using slope_function = void (*)(const double* const* in, std::size_t n, const bool* absent, void* room, double* value, double* by);

struct slope_entry {
    const char* path;
    slope_function at;
    std::size_t number_size;  // bytes of one number in `room`, which has space for arity x n of them (lists only)
};

// nullptr: there is no model with this path, or its result is a level of caution, which has no derivative.
const slope_entry* slopes_of(const char* path) noexcept;

}  // namespace wortmath::core
