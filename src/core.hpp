// The catalogue as plain data: what the bindings, the C interface and the command line read.
// Nothing here knows Python, NumPy, Boost or Eigen.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstring>

#include "wortmath/model.hpp"

namespace wortmath::core {

// Stands for an argument that is not given. A NaN with a payload of its own: other NaN are values and pass through.
inline constexpr std::uint64_t absent_bits = 0x7ff800006e6f6e65u;
inline double absent() noexcept { return __builtin_bit_cast(double, absent_bits); }
inline bool is_absent(double x) noexcept { return __builtin_bit_cast(std::uint64_t, x) == absent_bits; }

struct input_entry {
    const char* name;
    detail::kind what;
    const scale* of;
    limits range;
    bool optional;        // may be left out
    double fallback;      // then this value (absent() for "none")
    const char* beyond_words;  // said to whoever exceeds what is possible; nullptr: the range says it
    const char* const* words;
    std::size_t word_total;
};

struct output_entry {
    const char* name;     // nullptr: the only result
    const scale* of;
    bool whole, truth, several_words;
    const char* const* words;
    std::size_t word_total;
};

// Blocks of 8 elements, one contiguous column for each input and output.
inline constexpr std::size_t block = 8;
using kernel = void (*)(const double* const* in, double* const* out, std::size_t blocks);
inline constexpr int instruction_sets = 3;  // baseline, x86-64-v3, x86-64-v4

struct entry {
    detail::path_text path;
    const char* question;
    const facts* about;
    bool is_default, family_has_default;
    const input_entry* inputs;
    int arity, required;
    const output_entry* outputs;
    int results;
    const char* holds_when;  // the range that inputs and result have together; nullptr: none
    const char* refusal;     // why inputs may contradict each other; nullptr: they cannot
    bool guards;             // answers `worst` where others refuse
    double worst;
    bool nan_is_impossible;
    bool has_lists;
    void (*scalar)(const double* in, double* out);                                // null for models with lists
    void (*listed)(const double* const* in, std::size_t n, double* out);          // null for models without
    bool (*holds)(const double* const* in, std::size_t n, const double* out);     // null where holds_when is
    kernel kernels[instruction_sets];               // null for models with lists
    const kernel* one_moving[instruction_sets];     // by input: all others are constant over the blocks
};

struct topic {
    const char* name;
    const entry* entries;
    std::size_t count;
};

const topic* topics(std::size_t& count) noexcept;
const entry* find(const char* path) noexcept;

// What stands in the way of evaluating a model at these inputs; false: nothing does.
// `in` holds one pointer for each input, to one value or, for lists, to n values.
bool diagnose(const entry& e, policy how, const double* const* in, std::size_t n, range_error& error) noexcept;
// The sentence of a refused result (undefined, or outside the joint range).
void describe_joint(const entry& e, region where, range_error& error) noexcept;
void describe_input(const entry& e, int input, double value, region where, range_error& error) noexcept;

enum class element : unsigned char { f64, f32, i64 };

// What an array call met. Counted in elements.
struct tally {
    std::size_t elements = 0, impossible = 0, unvalidated = 0, joint = 0, undefined = 0;
    int first_input = -1;
    double first_value = 0.0;
    region first_region = region::impossible;
    std::size_t faults() const noexcept { return impossible + unvalidated + joint + undefined; }
};

// One strided run over a model without lists: columns of inputs, then of results; refused elements become NaN.
void run(const entry& e, policy how, char* const* columns, const std::ptrdiff_t* steps, std::size_t n, element input_type, element output_type, tally& found) noexcept;

int best_instruction_set() noexcept;
int use_instruction_set(int which) noexcept;  // for tests and benchmarks; returns the one now in use

}  // namespace wortmath::core
