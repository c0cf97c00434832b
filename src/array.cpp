// A model over strided columns: gather into blocks, scan the ranges, run the kernel, scatter. One loop for all models,
// so that a result depends neither on its place in the array nor on the layout of the array.
#include <algorithm>

#include "core.hpp"

namespace wortmath::core {
namespace {

constexpr std::size_t chunk = 512;
constexpr int most_inputs = 16, most_results = 4;

int chosen = -1;

template <class T>
void gather(double* to, const char* from, std::ptrdiff_t step, std::size_t n) noexcept {
    if (step == static_cast<std::ptrdiff_t>(sizeof(T))) {
        T const* const p = reinterpret_cast<const T*>(from);
        for (std::size_t i = 0; i < n; ++i) to[i] = static_cast<double>(p[i]);  // contiguous: the compiler sees it
    } else {
        for (std::size_t i = 0; i < n; ++i, from += step) to[i] = static_cast<double>(*reinterpret_cast<const T*>(from));
    }
}

template <class T>
void scatter(char* to, std::ptrdiff_t step, const double* from, std::size_t n) noexcept {
    if (step == static_cast<std::ptrdiff_t>(sizeof(T))) {
        T* const p = reinterpret_cast<T*>(to);
        for (std::size_t i = 0; i < n; ++i) p[i] = static_cast<T>(from[i]);
        return;
    }
    for (std::size_t i = 0; i < n; ++i, to += step) *reinterpret_cast<T*>(to) = static_cast<T>(from[i]);
}

// As wide as a double, so that the comparison's mask is the number that is gathered.
bool any_outside(const double* x, std::size_t n, double lo, double hi) noexcept {
    std::int64_t hit = 0;
    for (std::size_t i = 0; i < n; ++i) {
        hit |= x[i] < lo ? -1 : 0;
        hit |= x[i] > hi ? -1 : 0;
    }
    return hit != 0;
}
bool any_nan(const double* x, std::size_t n) noexcept {
    std::int64_t hit = 0;
    for (std::size_t i = 0; i < n; ++i) hit |= x[i] != x[i] ? -1 : 0;
    return hit != 0;
}

// In float32 a limit such as 1.03 is a neighbouring number: what is written as the limit lies within it.
limits as_float(limits r) noexcept {
    auto const rounded = [](double x) { return static_cast<double>(static_cast<float>(x)); };
    return {std::min(r.valid_lo, rounded(r.valid_lo)), std::max(r.valid_hi, rounded(r.valid_hi)), std::min(r.lo, rounded(r.lo)), std::max(r.hi, rounded(r.hi))};
}

void note(tally& found, int input, double value, region where) noexcept {
    if (found.faults() == 0) found.first_input = input, found.first_value = value, found.first_region = where;
}

}  // namespace

int best_instruction_set() noexcept {
#if defined(__x86_64__)
    bool const v3 = __builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma") && __builtin_cpu_supports("bmi") && __builtin_cpu_supports("bmi2");
    bool const v4 = v3 && __builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512bw") &&
                    __builtin_cpu_supports("avx512vl") && __builtin_cpu_supports("avx512cd");
    return v4 ? 2 : v3 ? 1 : 0;
#else
    return 0;
#endif
}

int use_instruction_set(int which) noexcept {
    int const best = best_instruction_set();
    return chosen = which < 0 || which > best ? best : which;
}

void run(const entry& e, policy how, char* const* columns, const std::ptrdiff_t* steps, std::size_t n, element input_type, element output_type, tally& found) noexcept {
    if (chosen < 0) use_instruction_set(-1);
    alignas(64) double in_store[most_inputs][chunk];
    alignas(64) double out_store[most_results][chunk];
    const double* in[most_inputs];
    double* out[most_results];
    limits range[most_inputs];
    int moving = 0, mover = -1;
    for (int i = 0; i < e.arity; ++i) {
        in[i] = in_store[i];
        range[i] = input_type == element::f32 ? as_float(e.inputs[i].range) : e.inputs[i].range;
        if (steps[i] != 0) ++moving, mover = i;
    }
    auto const direct = [](std::ptrdiff_t step, element type, const char* at) {
        return type == element::f64 && step == static_cast<std::ptrdiff_t>(sizeof(double)) && reinterpret_cast<std::uintptr_t>(at) % sizeof(double) == 0;
    };
    const kernel* const variants = e.one_moving[chosen];
    kernel const run_block = moving == 1 && variants ? variants[mover] : e.kernels[chosen];
    bool const scans_result = e.holds != nullptr || e.refusal != nullptr;

    bool still_suspicious = false;
    for (std::size_t at = 0; at < n; at += chunk) {
        std::size_t const here = std::min(chunk, n - at), padded = (here + block - 1) / block * block;
        bool suspicious = false;
        for (int i = 0; i < e.arity; ++i) {
            double* const to = in_store[i];
            const char* const from = columns[i] + static_cast<std::ptrdiff_t>(at) * steps[i];
            if (steps[i] == 0) {
                if (at == 0) {
                    double const v = input_type == element::f32 ? static_cast<double>(*reinterpret_cast<const float*>(from)) : *reinterpret_cast<const double*>(from);
                    std::fill_n(to, chunk, v);
                }
            } else if (here == padded && direct(steps[i], input_type, from)) {
                in[i] = reinterpret_cast<const double*>(from);
            } else {
                if (input_type == element::f32) gather<float>(to, from, steps[i], here);
                else gather<double>(to, from, steps[i], here);
                std::fill(to + here, to + padded, to[here - 1]);
                in[i] = to;
            }
            // what does not move is looked at once
            if (steps[i] != 0 || at == 0) {
                std::size_t const looked = steps[i] == 0 ? 1 : here;
                bool const hit = any_outside(in[i], looked, range[i].valid_lo, range[i].valid_hi) || ((e.nan_is_impossible || e.guards) && any_nan(in[i], looked));
                suspicious = suspicious || hit;
                still_suspicious = still_suspicious || (hit && steps[i] == 0);
            }
        }
        suspicious = suspicious || still_suspicious;
        for (int k = 0; k < e.results; ++k) {
            char* const to = columns[e.arity + k] + static_cast<std::ptrdiff_t>(at) * steps[e.arity + k];
            // Results go straight into place where nothing has to be walked or changed afterwards.
            bool const straight = !suspicious && !scans_result && here == padded && direct(steps[e.arity + k], output_type, to);
            out[k] = straight ? reinterpret_cast<double*>(to) : out_store[k];
        }
        run_block(in, out, padded / block);

        if (suspicious || (scans_result && (e.holds || any_nan(out[0], here)))) {
            for (std::size_t j = 0; j < here; ++j) {
                bool lost = false, nan = false, impossible = false;
                int unvalidated = -1;
                for (int i = 0; i < e.arity && !lost; ++i) {
                    double const v = in[i][j];
                    const input_entry& a = e.inputs[i];
                    if (v != v) {
                        if ((is_absent(v) || e.guards) && a.what == detail::kind::optional_number) continue;  // a guard takes any NaN for none
                        nan = true;
                        if (!e.nan_is_impossible) continue;
                    } else if (range[i].allows(v)) {
                        if (unvalidated < 0 && !range[i].validates(v)) unvalidated = i;
                        continue;
                    }
                    if (!e.guards) note(found, i, v, region::impossible), ++found.impossible;
                    lost = impossible = true;
                }
                if (e.guards) {
                    if (nan || impossible) out[0][j] = e.worst;
                    continue;
                }
                if (!lost && unvalidated >= 0 && how != policy::extrapolate) {
                    note(found, unvalidated, in[unvalidated][j], region::unvalidated), ++found.unvalidated;
                    lost = true;
                }
                if (!lost && !nan && e.refusal && out[0][j] != out[0][j]) {
                    note(found, -1, 0.0, region::impossible), ++found.undefined;
                    lost = true;
                }
                if (!lost && !nan && e.holds && how != policy::extrapolate) {
                    const double* one[most_inputs];
                    double result[most_results];
                    for (int i = 0; i < e.arity; ++i) one[i] = in[i] + j;
                    for (int k = 0; k < e.results; ++k) result[k] = out[k][j];
                    if (!e.holds(one, 1, result)) note(found, -1, 0.0, region::joint), ++found.joint, lost = true;
                }
                if (lost)
                    for (int k = 0; k < e.results; ++k) out[k][j] = undefined;
            }
        }
        for (int k = 0; k < e.results; ++k) {
            char* const to = columns[e.arity + k] + static_cast<std::ptrdiff_t>(at) * steps[e.arity + k];
            std::ptrdiff_t const step = steps[e.arity + k];
            if (out[k] != out_store[k]) continue;
            if (output_type == element::f32) scatter<float>(to, step, out[k], here);
            else if (output_type == element::i64) scatter<std::int64_t>(to, step, out[k], here);
            else scatter<double>(to, step, out[k], here);
        }
    }
    found.elements += n;
}

}  // namespace wortmath::core
