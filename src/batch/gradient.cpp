#include "wortmath/batch/gradient.hpp"

#include <numeric>

namespace wortmath::batch {

namespace {
constexpr std::size_t lanes = 8;  // amounts in one run of the engine
using moving = dual<lanes>;
}  // namespace

std::vector<std::string> result_keys() {
    std::vector<std::string> keys;
    forecast_result<double> f;
    f.package.emplace();
    each_result(f, [&](std::string_view k, const figure<double>&) { keys.emplace_back(k); });
    return keys;
}

moved_results differentiate(const batch<double>& b, const std::vector<std::string>& keys, const std::vector<std::size_t>& amounts) {
    moved_results out;
    out.values.resize(keys.size());
    out.slopes.assign(keys.size(), std::vector<double>(amounts.size(), 0.0));
    for (std::size_t from = 0; from < amounts.size() || from == 0; from += lanes) {
        batch<moving> moved = with_numbers<moving>(b);
        auto const all = amounts_of(moved);
        for (std::size_t i = 0; i < lanes && from + i < amounts.size(); ++i) {
            auto& x = all.at(amounts[from + i]).is->value;
            x = moving::input(x.value, i);
        }
        auto const f = forecast(moved);
        for (std::size_t k = 0; k < keys.size(); ++k) {
            figure<moving> const r = result_of(f, keys[k]);
            if (!r) continue;
            out.values[k] = r->value;
            for (std::size_t i = 0; i < lanes && from + i < amounts.size(); ++i) out.slopes[k][from + i] = r->by[i];
        }
        if (from == 0)
            for (auto const& o : f.outside_range) out.outside_range.push_back({o.step, o.model, o.argument, o.value.value, o.distance});
    }
    return out;
}

std::vector<derivative> gradient(const batch<double>& b, std::string_view key) {
    batch<double> copy = b;
    auto const all = amounts_of(copy);
    std::vector<std::size_t> indices(all.size());
    std::iota(indices.begin(), indices.end(), std::size_t{0});
    auto const moved = differentiate(b, {std::string(key)}, indices);
    std::vector<derivative> out;
    for (std::size_t i = 0; i < all.size(); ++i)
        out.push_back({all[i].at, all[i].ingredient, all[i].is->in, all[i].is->value, moved.slopes[0][i], all[i].is->given});
    return out;
}

}  // namespace wortmath::batch
