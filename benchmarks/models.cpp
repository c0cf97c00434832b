// A typed call beside the bare expression, and the array loop beside a plain loop over the formula. Ratios in one run.
#include <chrono>
#include <cstdio>
#include <vector>

#include "core.hpp"
#include "wortmath/bitterness.hpp"
#include "wortmath/extract.hpp"

namespace wm = wortmath;

namespace {

template <class F>
double best(F run) {
    double least = 1e9;
    for (int i = 0; i < 7; ++i) {
        auto const start = std::chrono::steady_clock::now();
        run();
        least = std::min(least, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    return least;
}

volatile double sink;

void over_array(const wm::core::entry& e, std::vector<double>& g, std::vector<double>& t, std::vector<double>& out) {
    char* columns[]{reinterpret_cast<char*>(g.data()), reinterpret_cast<char*>(t.data()), nullptr, nullptr};
    double constant = 4.15;
    std::ptrdiff_t steps[]{8, 8, 0, 8};
    columns[2] = reinterpret_cast<char*>(&constant), columns[3] = reinterpret_cast<char*>(out.data());
    wm::core::tally found;
    wm::core::run(e, wm::policy::nan, columns, steps, g.size(), wm::core::element::f64, wm::core::element::f64, found);
}

}  // namespace

int main() {
    std::size_t const n = 4096, rounds = 500;
    std::vector<double> g(n), t(n), out(n);
    for (std::size_t i = 0; i < n; ++i) g[i] = 1.03 + 0.06 * static_cast<double>(i) / n, t[i] = 1.0 + 89.0 * static_cast<double>(i) / n;

    double const typed = best([&] {
        for (std::size_t r = 0; r < rounds; ++r)
            for (double x : g) sink = wm::extract::from_gravity(wm::unit::gravity_20_20(x)).value;
    });
    double const bare = best([&] {
        for (std::size_t r = 0; r < rounds; ++r)
            for (double x : g) sink = wm::extract::from_gravity.asbc.formula(x);
    });
    std::printf("extract.from_gravity, typed and range-checked  %6.2f ns, %.2f x the bare polynomial\n", 1e9 * typed / (n * rounds), typed / bare);

    auto const& tinseth = *wm::core::find("bitterness.utilisation.tinseth");
    double const plain = best([&] {
        for (std::size_t r = 0; r < rounds; ++r) {
            for (std::size_t i = 0; i < n; ++i) out[i] = wm::bitterness::utilisation.tinseth.formula(g[i], t[i], 4.15);
            sink = out[7];
        }
    });
    const char* const names[]{"baseline", "x86-64-v3", "x86-64-v4"};
    for (int set = 0; set <= wm::core::best_instruction_set(); ++set) {
        wm::core::use_instruction_set(set);
        double const array = best([&] {
            for (std::size_t r = 0; r < rounds; ++r) over_array(tinseth, g, t, out), sink = out[7];
        });
        std::printf("bitterness.utilisation over an array, %-9s  %6.2f ns, %.2f x as fast as a plain loop\n", names[set], 1e9 * array / (n * rounds), plain / array);
    }
}
