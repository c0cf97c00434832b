// Derivatives: every model on dual numbers against central differences of the same model on plain numbers, the functions
// of the formula's vocabulary against closed forms, the batch against itself.
#include <algorithm>
#include <catch.hpp>
#include <cmath>
#include <cstddef>
#include <memory>
#include <string>
#include <vector>

#include "core.hpp"
#include "gradient.hpp"
#include "wortmath/batch/gradient.hpp"
#include "wortmath/batch/read.hpp"
#include "wortmath/bitterness.hpp"
#include "wortmath/extract.hpp"
#include "wortmath/sensitivity.hpp"

using namespace wortmath;

TEST_CASE("the functions of a formula carry their derivatives") {
    using D = dual<2>;
    D const x = D::input(0.7, 0), y = D::input(1.3, 1);
    auto close = [](D f, double value, double by_x, double by_y) {
        CHECK(f.value == Approx(value).epsilon(1e-15));
        CHECK(f.by[0] == Approx(by_x).epsilon(1e-13).margin(1e-15));
        CHECK(f.by[1] == Approx(by_y).epsilon(1e-13).margin(1e-15));
    };
    double const a = 0.7, b = 1.3;
    close(x + y, a + b, 1, 1);
    close(x - y, a - b, 1, -1);
    close(x * y, a * b, b, a);
    close(x / y, a / b, 1 / b, -a / (b * b));
    close(2.0 / y, 2 / b, 0, -2 / (b * b));
    close(-x, -a, -1, 0);
    close(exp(x * y), std::exp(a * b), b * std::exp(a * b), a * std::exp(a * b));
    close(expm1(x), std::expm1(a), std::exp(a), 0);
    close(log(x), std::log(a), 1 / a, 0);
    close(log1p(x), std::log1p(a), 1 / (1 + a), 0);
    close(sqrt(y), std::sqrt(b), 0, 0.5 / std::sqrt(b));
    close(cbrt(y), std::cbrt(b), 0, 1 / (3 * std::cbrt(b * b)));
    close(sin(x), std::sin(a), std::cos(a), 0);
    close(cos(x), std::cos(a), -std::sin(a), 0);
    close(tanh(x), std::tanh(a), 1 - std::tanh(a) * std::tanh(a), 0);
    close(fabs(-x), a, 1, 0);
    close(floor(x + 2.0), 2, 0, 0);
    close(pow(x, y), std::pow(a, b), b * std::pow(a, b - 1), std::pow(a, b) * std::log(a));
    close(pow(x, 3.0), a * a * a, 3 * a * a, 0);
    close(power(0.25, y), std::pow(0.25, b), 0, std::pow(0.25, b) * std::log(0.25));
    close(atan2(y, x), std::atan2(b, a), -b / (a * a + b * b), a / (a * a + b * b));
    close(hypot(x, y), std::hypot(a, b), a / std::hypot(a, b), b / std::hypot(a, b));
    close(poly(x, 1.0, 2.0, 3.0, 4.0), 1 + 2 * a + 3 * a * a + 4 * a * a * a, 2 + 6 * a + 12 * a * a, 0);
    close(square(x) + cube(y), a * a + b * b * b, 2 * a, 3 * b * b);
    close(select(x < y, x * 2.0, y), 2 * a, 2, 0);
    close(least(x, y), a, 1, 0);
    close(most(x, y), b, 0, 1);
}

TEST_CASE("what does not move stays at rest where a function is steep") {
    using D = dual<1>;
    CHECK(sqrt(D(0.0)).by[0] == 0.0);
    CHECK(pow(D(0.0), D(0.5)).by[0] == 0.0);
    CHECK(std::isinf(sqrt(D::input(0.0, 0)).by[0]));
    CHECK(pow(D::input(0.0, 0), D(2.0)).by[0] == 0.0);
}

TEST_CASE("roots: exact derivatives whatever the slope of the iteration") {
    using D = dual<2>;
    D const p = D::input(2.0, 0), q = D::input(5.0, 1);
    // x^3 + p x = q
    auto residual = [=](D x) { return x * x * x + p * x - q; };
    auto exact = [=](D x) { return 3.0 * x * x + p; };
    auto rough = [=](D x) { return (residual(x + 1e-3) - residual(x)) * 1e3; };
    D const r = newton<8>(D(1.0), residual, exact), s = newton<8>(D(1.0), residual, rough), t = bracketed<60>(D(0.0), D(3.0), residual, exact);
    double const x = r.value, slope = 3 * x * x + 2;
    for (D const& root : {r, s, t}) {
        CHECK(root.value == Approx(x).epsilon(1e-14));
        CHECK(root.by[0] == Approx(-x / slope).epsilon(1e-12));
        CHECK(root.by[1] == Approx(1 / slope).epsilon(1e-12));
    }
}

TEST_CASE("a typed gradient") {
    using namespace wortmath::literals;
    auto const g = gradient(bitterness::utilisation.tinseth, 1.050_sg, 60_min);
    double const u = bitterness::utilisation.tinseth(1.050_sg, 60_min).value;
    CHECK(g.value == u);
    CHECK(g.by[0] == Approx(u * std::log(0.000125)).epsilon(1e-13));
    CHECK(g.by[2] == Approx(-u / 4.15).epsilon(1e-13));
    CHECK(gradient(extract::from_gravity, 1.050_sg).by[0] == gradient(extract::from_gravity.asbc, 1.050_sg).by[0]);
    CHECK_THROWS_AS(gradient(bitterness::utilisation.tinseth, unit::gravity_20_20(1.5), 60_min), range_error);
}

namespace {

// A place within the range of an input, away from its ends: these are where formulas have their kinks.
double place(const core::input_entry& in, int k) {
    double lo = in.range.valid_lo, hi = in.range.valid_hi;
    if (lo < -1e6 && hi > 1e6) lo = 1.0, hi = 10.0;
    else if (hi > 1e6) lo = std::fmax(lo, 0.0), hi = lo + 10.0;
    else if (lo < -1e6) lo = hi - 10.0;
    constexpr double shares[]{0.437, 0.531, 0.613, 0.279, 0.353, 0.711, 0.173, 0.827};
    return lo + shares[k % 8] * (hi - lo);
}

}  // namespace

TEST_CASE("every model against central differences") {
    std::size_t topics = 0, models = 0, compared = 0, moving = 0, kinks = 0, undefined_everywhere = 0;
    for (auto const* t = core::topics(topics); topics > 0; ++t, --topics) {
        for (std::size_t m = 0; m < t->count; ++m) {
            core::entry const& e = t->entries[m];
            std::string const path = e.path.full;
            core::slope_entry const* const s = core::slopes_of(path.c_str());
            if (e.guards) {
                CHECK(s == nullptr);
                continue;
            }
            INFO(path);
            REQUIRE(s != nullptr);
            ++models;
            auto const arity = static_cast<std::size_t>(e.arity), results = static_cast<std::size_t>(e.results);
            std::size_t const n = e.has_lists ? 3 : 1;
            bool found = false;
            for (int attempt = 0; attempt < 40 && !found; ++attempt) {
                std::vector<std::vector<double>> x(arity);
                std::vector<const double*> in(arity);
                std::vector<std::size_t> column(arity);
                std::unique_ptr<bool[]> absent(new bool[arity + 1]{});
                std::size_t width = 0;
                for (std::size_t i = 0; i < arity; ++i) {
                    auto const& input = e.inputs[i];
                    bool const list_here = input.what == detail::kind::list;
                    std::size_t const k = list_here ? n : 1;
                    for (std::size_t j = 0; j < k; ++j) {
                        double v;
                        if (input.what == detail::kind::word) v = static_cast<double>(static_cast<std::size_t>(attempt) % input.word_total);
                        else if (input.what == detail::kind::truth) v = attempt % 2;
                        else if (core::is_absent(input.fallback) && attempt % 3 == 0) v = core::absent(), absent[i] = true;
                        else if (input.optional && attempt % 2 == 0) v = input.fallback;
                        else v = place(input, attempt * 3 + static_cast<int>(i) * (1 + attempt / 8) + static_cast<int>(j));
                        // times and temperatures of a profile go one way
                        x[i].push_back(v);
                    }
                    if (list_here) std::sort(x[i].begin(), x[i].end());
                    column[i] = width, width += k;
                }
                auto value = [&](std::vector<double>& out) {
                    for (std::size_t i = 0; i < arity; ++i) in[i] = x[i].data();
                    out.assign(results, 0.0);
                    if (e.has_lists) {
                        e.listed(in.data(), n, out.data());
                    } else {
                        std::vector<double> flat;
                        for (auto const& c : x) flat.push_back(c[0]);
                        flat.push_back(0.0);
                        e.scalar(flat.data(), out.data());
                    }
                };
                std::vector<double> middle, up, down, half_up, half_down;
                value(middle);
                if (!std::all_of(middle.begin(), middle.end(), [](double v) { return std::isfinite(v); })) continue;
                found = true;
                std::vector<double> by(results * std::max<std::size_t>(width, 1)), again(results);
                std::vector<std::byte> room((arity * n + 1) * s->number_size);
                for (std::size_t i = 0; i < arity; ++i) in[i] = x[i].data();
                s->at(in.data(), n, absent.get(), room.data(), again.data(), by.data());
                for (std::size_t k = 0; k < results; ++k) CHECK(again[k] == Approx(middle[k]).epsilon(1e-11).margin(1e-13));
                for (std::size_t i = 0; i < arity; ++i) {
                    auto const what = e.inputs[i].what;
                    if (what == detail::kind::word || what == detail::kind::truth || absent[i]) continue;
                    for (std::size_t j = 0; j < x[i].size(); ++j) {
                        double const v = x[i][j], h = 1e-4 * std::fmax(std::fabs(v) * (std::fabs(v) < 2.0 ? 0.1 : 1.0), 1e-4);
                        auto moved = [&](double by_how_much, std::vector<double>& out) {
                            x[i][j] = v + by_how_much;
                            value(out);
                            x[i][j] = v;
                        };
                        moved(h, up), moved(-h, down), moved(h / 2, half_up), moved(-h / 2, half_down);
                        for (std::size_t k = 0; k < results; ++k) {
                            if (e.outputs[k].words || e.outputs[k].truth) continue;
                            double const wide = (up[k] - down[k]) / (2 * h), narrow = (half_up[k] - half_down[k]) / h, best = (4 * narrow - wide) / 3;
                            double const forward = (half_up[k] - middle[k]) * 2 / h, backward = (middle[k] - half_down[k]) * 2 / h;
                            double const noise = 2e-13 * std::fabs(middle[k]) / h + 1e-14 / h, d = by[k * width + column[i] + j];
                            if (!std::isfinite(best)) continue;
                            // Where the two sides differ, the formula has a kink, a step or rounds to whole numbers.
                            bool const kink = std::fabs(forward - backward) > 0.05 * (std::fabs(forward) + std::fabs(backward)) + 100 * noise;
                            if (kink) {
                                ++kinks;
                                continue;
                            }
                            INFO(e.inputs[i].name << " = " << v << ", result " << k << ": derivative " << d << ", difference " << best);
                            double const error = std::fabs(best - narrow) + noise;
                            CHECK(std::fabs(d - best) <= 2e-6 * std::fabs(best) + 3 * error);
                            ++compared;
                            moving += std::fabs(best) > noise;
                        }
                    }
                }
            }
            undefined_everywhere += !found;
        }
    }
    CAPTURE(models, compared, moving, kinks, undefined_everywhere);
    CHECK(models > 480);
    CHECK(compared > 1200);
    CHECK(moving > 1100);
    CHECK(kinks < compared / 20);
    // Those that the search does not find are compared at the reference points, in tests/python/test_plan.py.
    CHECK(undefined_everywhere <= 13);
}

TEST_CASE("the batch engine gives the same numbers on dual numbers, and their derivatives by every amount") {
    batch::batch<double> const b = batch::read_file(std::string(WORTMATH_REFERENCE) + "/batch/a_extract_us.toml");
    auto const plain = batch::forecast(b);
    auto const keys = batch::result_keys();
    std::vector<std::size_t> all;
    {
        auto copy = b;
        for (std::size_t i = 0; i < batch::amounts_of(copy).size(); ++i) all.push_back(i);
    }
    auto const moved = batch::differentiate(b, keys, all);
    for (std::size_t k = 0; k < keys.size(); ++k) {
        auto const v = batch::result_of(plain, keys[k]);
        INFO(keys[k]);
        REQUIRE(v.has_value() == moved.values[k].has_value());
        if (v) CHECK(*moved.values[k] == Approx(*v).epsilon(1e-12).margin(1e-14));
    }
    CHECK(moved.outside_range.size() == plain.outside_range.size());
    // Alpha acids given and mass of hops enter as a product: both elasticities are the same.
    auto const bu = batch::gradient(b, "bitterness_bu");
    double by_mass = 0.0, by_alpha = 0.0;
    for (auto const& d : bu) {
        if (d.at.do_word != "boil") continue;
        if (d.at.key == "mass") by_mass += d.slope * d.value;
        if (d.at.key == "alpha") by_alpha += d.slope * d.value;
    }
    CHECK(by_mass == Approx(by_alpha).epsilon(1e-12));
    // All bitterness comes from the hops of the boil: Euler's theorem for a function of degree one.
    CHECK(by_alpha == Approx(*plain.bitterness).epsilon(1e-9));
}
