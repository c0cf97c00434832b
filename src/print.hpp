// Formulas as text: mathematics for documents, and code in other languages, printed from the formula itself.
#pragma once

#include <string>
#include <vector>

#include "core.hpp"

namespace wortmath {
class recording;
}

namespace wortmath::core {

enum class style : unsigned char { latex, python, mpmath, c, javascript, openformula };

// The state of each argument while a formula is written down: the word, 0 or 1 for a truth value, 1 for an optional
// number that is given; without meaning for numbers and lists.
using states = std::vector<int>;

// How a model is written down.
struct recorder {
    const char* path;
    // Runs the formula on `into`, with lists of `elements` elements; the steps of its results.
    std::vector<int> (*run)(recording& into, const int* state, int elements);
    int elements;  // that each list must have; 0: as many as you like
};
const recorder* find_recorder(const char* path) noexcept;

struct not_printable {
    std::string why;
};

// `chosen` leaves the states open with -1, and may be shorter than the arguments are many. A word that is left open
// becomes a case of the printed formula, or an argument of the exported function. Throws not_printable.
std::string printed(const entry& e, style how, const states& chosen = {});

}  // namespace wortmath::core
