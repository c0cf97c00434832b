// Uncertainty and reconciliation in C++ against the tables of tests/reference/uncertainty.
#include <catch.hpp>
#include "reference.hpp"

#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "wortmath/reconcile.hpp"
#include "wortmath/uncertainty.hpp"

using namespace wortmath;
using namespace wortmath::uncertainty;

namespace {

test::table table(const char* name) { return test::read_table(std::string("uncertainty/") + name + ".csv"); }
double cell(const test::table& t, std::size_t row, const char* column) { return t.at(row, column) == "inf" ? detail::infinite : std::stod(t.at(row, column)); }

// quantity, value, tolerance
class printed {
public:
    explicit printed(const char* name) {
        auto const t = table(name);
        for (std::size_t i = 0; i < t.rows.size(); ++i) rows_[t.at(i, "quantity")] = {cell(t, i, "value"), cell(t, i, "tolerance")};
    }
    void check(const char* name, double got) {
        INFO(name << " " << got);
        auto const at = rows_.find(name);
        REQUIRE(at != rows_.end());
        CHECK(std::abs(got - at->second.first) <= at->second.second * (1.0 + 1e-9));
        rows_.erase(at);
    }
    std::size_t left() const { return rows_.size(); }

private:
    std::map<std::string, std::pair<double, double>> rows_;
};

std::string refusal_of(auto call) {
    try {
        call();
    } catch (const uncertainty::error& e) {
        return e.what();
    }
    return "";
}
bool near(double a, double b, double tolerance) { return std::abs(a - b) <= tolerance; }

}  // namespace

TEST_CASE("coverage factors and chi-square") {
    auto t = table("student_t");
    CHECK(t.rows.size() == 14);
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        double const n = cell(t, i, "dof");
        // 68.27 and 95.45 % are one and two standard deviations of a normal quantity, in full
        CHECK(near(coverage_factor::student(std::erf(std::sqrt(0.5)), n), cell(t, i, "k_6827"), 1e-6));
        CHECK(near(coverage_factor::student(0.95, n), cell(t, i, "k_95"), 1e-6));
        CHECK(near(coverage_factor::student(std::erf(std::sqrt(2.0)), n), cell(t, i, "k_9545"), 1e-6));
        CHECK(near(coverage_factor::student(0.99, n), cell(t, i, "k_99"), 1e-6));
    }
    t = table("chi_square");
    CHECK(t.rows.size() == 10);
    for (std::size_t i = 0; i < t.rows.size(); ++i)
        for (auto const& [column, p] : {std::pair{"q_90", 0.90}, {"q_95", 0.95}, {"q_99", 0.99}}) {
            double const n = cell(t, i, "dof"), q = cell(t, i, column);
            CHECK(near(std::pow(uncertainty::parts::region::ellipsoid_factor(p, static_cast<int>(n)), 2), q, 1e-6));
            CHECK(near(reconcile::parts::global_test::chi_square(q, n), 1.0 - p, 1e-6));
        }
    t = table("effective_dof");
    double const w[]{cell(t, 0, "u1"), cell(t, 0, "u2")}, n[]{cell(t, 0, "dof1"), cell(t, 0, "dof2")};
    CHECK(near(dof::welch_satterthwaite(w, n), cell(t, 0, "dof_effective"), 0.05));
}

TEST_CASE("numerical tolerance and intervals of a sample") {
    auto t = table("numerical_tolerance");
    for (std::size_t i = 0; i < t.rows.size(); ++i)
        CHECK(near(uncertainty::parts::tolerance::numerical(cell(t, i, "value"), std::stoi(t.at(i, "digits"))), cell(t, i, "tolerance"), 1e-12));
    CHECK(uncertainty::parts::trials::minimum(0.95) == 10000);
    CHECK(uncertainty::parts::trials::minimum(0.999) == 100000);
    t = table("sample_intervals");
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        int const m = std::stoi(t.at(i, "size"));
        std::vector<double> y;
        for (int r = m; r >= 1; --r) y.push_back(-std::log(1.0 - (r - 0.5) / m));
        auto const s = interval::symmetric(y, cell(t, i, "probability")), k = interval::shortest(y, cell(t, i, "probability"));
        CHECK(near(s.low, cell(t, i, "symmetric_low"), 1e-9));
        CHECK(near(s.high, cell(t, i, "symmetric_high"), 1e-9));
        CHECK(near(k.low, cell(t, i, "shortest_low"), 1e-9));
        CHECK(near(k.high, cell(t, i, "shortest_high"), 1e-9));
    }
}

TEST_CASE("readings of one instrument") {
    auto const t = table("shared_instrument");
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        double const x[]{cell(t, i, "x1"), cell(t, i, "x2")};
        instrument const tool(cell(t, i, "u_reading"), cell(t, i, "u_offset"), cell(t, i, "u_scale"), "tool");
        auto const v = covariance::shared_terms(x, tool.reading_uncertainty, tool.offset_uncertainty, tool.scale_uncertainty);
        double const u = cell(t, i, "u_difference");
        CHECK(near(std::sqrt(v(0, 0) + v(1, 1) - 2.0 * v(0, 1)), u, 1e-8 * u));
        CHECK(near(std::sqrt(v(0, 0) + v(1, 1)), cell(t, i, "u_if_independent"), 1e-8));
        CHECK(near(v(0, 1) / std::sqrt(v(0, 0) * v(1, 1)), cell(t, i, "correlation"), 1e-8));
        auto const b = budget::first_order([](std::span<const double> a) { return a[0] - a[1]; }, {tool.read(x[0], "a"), tool.read(x[1], "b")});
        CHECK(near(b.uncertainty, u, 1e-8 * u));
        CHECK(b.names == std::vector<std::string>{"a", "tool offset", "tool scale", "b"});
    }
}

TEST_CASE("end gauge of GUM H.1") {
    printed p("gum_h1");
    measurement const model = [](std::span<const double> x) { return x[0] + x[1] - x[0] * (x[3] * x[5] + x[2] * x[4]); };
    std::vector<input> const in{input(50000623, 25, 18), input(215, 9.7, 25.6), input::rectangular(11.5e-6, 2e-6), input(0, type_b::rectangular(1e-6), 50), input(0, type_b::rectangular(0.05), 2), input(-0.1, 0.41)};
    auto const b = budget::first_order(model, in);
    p.check("l", *b.value);
    p.check("u_first_order", b.uncertainty);
    p.check("u_second_order", budget::second_order(model, in).uncertainty);
    p.check("component_l_s", b.components[0]);
    p.check("component_d_theta", b.components[4]);
    p.check("component_d_alpha", b.components[3]);
    p.check("dof_effective", *b.dof);
    auto const d = budget::first_order(vector::Ones(3), vector{{5.8, 3.9, 6.7}});
    p.check("u_d", d.uncertainty);
    double const n[]{24, 5, 8};
    p.check("dof_d", dof::welch_satterthwaite({d.components.data(), 3}, n));
    CHECK(p.left() == 0);
}

TEST_CASE("impedance of GUM H.2") {
    printed p("gum_h2");
    auto const t = table("gum_h2_data");
    std::vector<double> data[3];
    for (std::size_t i = 0; i < t.rows.size(); ++i) data[0].push_back(cell(t, i, "V")), data[1].push_back(1e-3 * cell(t, i, "I")), data[2].push_back(cell(t, i, "phi"));
    matrix v(3, 3), r(3, 3);
    std::vector<input> in;
    for (int i = 0; i < 3; ++i) {
        in.push_back(input(type_a::mean(data[i]).mean, type_a::mean(data[i]).uncertainty));
        for (int k = 0; k < 3; ++k) v(i, k) = uncertainty::parts::type_a_covariance::means(data[i], data[k]);
    }
    for (int i = 0; i < 3; ++i)
        for (int k = 0; k < 3; ++k) r(i, k) = i == k ? 1.0 : v(i, k) / std::sqrt(v(i, i) * v(k, k));
    auto const j = multivariate::first_order({[](std::span<const double> x) { return x[0] / x[1] * std::cos(x[2]); }, [](std::span<const double> x) { return x[0] / x[1] * std::sin(x[2]); }, [](std::span<const double> x) { return x[0] / x[1]; }}, in, r);
    char const* const names[]{"R", "X", "Z"};
    for (int i = 0; i < 3; ++i) {
        p.check(names[i], (*j.values)[i]);
        p.check((std::string("u_") + names[i]).c_str(), std::sqrt(j.covariance(i, i)));
        for (int k = i + 1; k < 3; ++k) p.check((std::string("r_") + names[i] + names[k]).c_str(), j.covariance(i, k) / std::sqrt(j.covariance(i, i) * j.covariance(k, k)));
    }
    CHECK(p.left() == 0);
}

TEST_CASE("Monte Carlo: mass of JCGM 101, viscometer of TN 1900, logarithm of NPL, sums, phase") {
    printed p("jcgm101_mass");
    measurement const mass = [](std::span<const double> x) { return (x[0] + x[1]) * (1.0 + (x[2] - 1.2) * (1.0 / x[3] - 1.0 / x[4])) - 100000.0; };
    std::vector<input> const in{input(100000, 0.05), input(1.234, 0.02), input::rectangular(1.2, 0.1), input::rectangular(8000, 1000), input::rectangular(8000, 50)};
    auto const b = budget::first_order(mass, in);
    auto const mc = monte_carlo::adaptive({mass}, in, std::nullopt, {.interval = interval_kind::shortest});
    p.check("estimate", *b.value);
    p.check("u_first_order", b.uncertainty);
    p.check("u_second_order", budget::second_order(mass, in).uncertainty);
    p.check("u_monte_carlo", mc.uncertainty[0]);
    p.check("shortest_low", mc.low[0]);
    p.check("shortest_high", mc.high[0]);
    CHECK(p.left() == 0);
    CHECK(mc.converged);

    printed visc("tn1900_viscometer");
    auto const m2 = monte_carlo::adaptive({[](std::span<const double> x) { return x[0] * x[1] * (x[3] - x[4]) / (x[2] * (x[3] - x[5])); }},
                                          {input(4.63, 0.0463), input(61, 6.1), input(36.6, 5.49), input(2217, 0.5), input(1180, 0.5), input(810, 0.5)});
    visc.check("mean_monte_carlo", m2.value[0]);
    visc.check("u_monte_carlo", m2.uncertainty[0]);
    visc.check("low_95", m2.low[0]);
    visc.check("high_95", m2.high[0]);
    visc.check("estimate_first_order", 4.63 * 61 * (2217 - 1180) / (36.6 * (2217 - 810)));
    CHECK(visc.left() == 0);

    printed npl("npl_logarithm");
    auto const x = input::rectangular(0.6, 0.5);
    auto const m3 = monte_carlo::adaptive({[](std::span<const double> a) { return std::log(a[0]); }}, {x}, std::nullopt, {.interval = interval_kind::shortest});
    auto const first = budget::first_order(vector{{1.0 / x.value}}, vector{{x.uncertainty}});
    npl.check("estimate_first_order", std::log(x.value));
    npl.check("u_first_order", first.uncertainty);
    npl.check("upper_95_first_order", std::log(x.value) + coverage_factor::student(0.95) * first.uncertainty);
    npl.check("mean", m3.value[0]);
    npl.check("u", m3.uncertainty[0]);
    npl.check("shortest_low", m3.low[0]);
    npl.check("shortest_high", m3.high[0]);
    CHECK(npl.left() == 0);

    auto const t = table("jcgm101_additive");
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        std::vector<input> four;
        for (int k = 0; k < 4; ++k) {
            double const u = t.at(i, "case") == "one_wide_rectangular" && k == 3 ? 10.0 : 1.0;
            four.push_back(t.at(i, "case") == "four_normal" ? input(0, u) : input::rectangular(0, u * std::sqrt(3.0)));
        }
        auto const s = monte_carlo::adaptive({[](std::span<const double> a) { return a[0] + a[1] + a[2] + a[3]; }}, four);
        CHECK(near(s.uncertainty[0], cell(t, i, "u"), cell(t, i, "tolerance_u")));
        CHECK(near(s.high[0], cell(t, i, "half_width_95"), cell(t, i, "tolerance_half_width")));
    }

    auto const polar = table("jcgm102_polar");
    auto const joint = monte_carlo::adaptive({[](std::span<const double> a) { return std::hypot(a[0], a[1]); }, [](std::span<const double> a) { return std::atan2(a[1], a[0]); }}, {input(cell(polar, 0, "re"), 0.01), input(0, 0.01)});
    CHECK(near(joint.value[0], cell(polar, 0, "magnitude"), 0.0005));
    CHECK(near(joint.uncertainty[0], cell(polar, 0, "u_magnitude"), 0.0005));
    CHECK(near(joint.uncertainty[1], cell(polar, 0, "u_phase"), 0.005));
    CHECK(joint.samples.rows() == 2);
}

TEST_CASE("a block's draws depend on seed and block alone") {
    sampler const s({input(1, 0.1), input::arcsine(2, 0.3)});
    matrix const a = s.draw(5, 3, 50);
    (void)s.draw(5, 2, 7);
    CHECK((a.array() == s.draw(5, 3, 50).array()).all());
    CHECK(!(a.array() == s.draw(5, 4, 50).array()).any());
    CHECK(!(a.array() == s.draw(6, 3, 50).array()).any());
}

TEST_CASE("reconciliation: flows and a partial boil") {
    auto const flows = table("reconcile_flows");
    vector y(6);
    for (int i = 0; i < 6; ++i) y[i] = cell(flows, static_cast<std::size_t>(i), "measured");
    matrix a(4, 6);
    a << 1, -1, -1, 0, 0, 0, 0, 1, 0, -1, 0, 0, 0, 0, 1, 0, -1, 0, 0, 0, 0, 1, 1, -1;
    auto const r = reconcile::linear::least_squares(y, matrix::Identity(6, 6), a, vector::Zero(4));
    for (int i = 0; i < 6; ++i) CHECK(near(r.values[i], cell(flows, static_cast<std::size_t>(i), "reconciled"), 0.005));
    CHECK(near(r.objective, 6.4075, 5e-5));
    CHECK(r.dof == 4);

    auto const t = table("reconcile_batch");
    vector const grams{{1000, 1000, 1, 1000, 1000, 1}};
    for (std::size_t first : {std::size_t{0}, std::size_t{6}}) {
        vector m(6), u(6);
        for (int i = 0; i < 6; ++i) m[i] = cell(t, first + static_cast<std::size_t>(i), "measured"), u[i] = cell(t, first + static_cast<std::size_t>(i), "u");
        auto const b = reconcile::partial_boil::least_squares(m.cwiseProduct(grams), u.cwiseProduct(grams));
        for (int i = 0; i < 6; ++i) {
            auto const row = first + static_cast<std::size_t>(i);
            CHECK(near(b.values[i] / grams[i], cell(t, row, "reconciled"), 5.1e-6));
            CHECK(near(b.uncertainties[i] / grams[i], cell(t, row, "u_reconciled"), 5.1e-6));
            CHECK(near(b.z[i], cell(t, row, "z"), 5.1e-5));
            CHECK(near(b.bias[i] / grams[i], cell(t, row, "bias_if_only_fault"), 5.1e-5));
        }
        CHECK(near(b.objective, cell(t, first, "objective"), 5.1e-5));
        CHECK(near(b.probability, cell(t, first, "p_value"), 1e-3 * cell(t, first, "p_value")));
    }

    auto const q = table("reconcile_batch_unmeasured");
    vector m(5), u(5);
    for (int i = 0; i < 5; ++i) m[i] = cell(q, static_cast<std::size_t>(i), "measured"), u[i] = cell(q, static_cast<std::size_t>(i), "u");
    auto const without = [](const auto& x, const auto& z) {
        auto six = x;
        six.conservativeResize(6);
        six[5] = z[0];
        return reconcile::partial_boil::balances{}(six, z);
    };
    auto const b = reconcile::nonlinear::least_squares(without, m, u.cwiseAbs2().asDiagonal(), vector{{12.0}});
    for (int i = 0; i < 5; ++i) CHECK(near(b.values[i], cell(q, static_cast<std::size_t>(i), "reconciled"), 5.1e-6));
    CHECK(near(b.unmeasured[0], cell(q, 5, "reconciled"), 5.1e-6));
    CHECK(near(b.unmeasured_uncertainties[0], 0.08117, 5.1e-6));
    CHECK(b.dof == 2);
}

TEST_CASE("uncertainty refuses with sentences") {
    CHECK(refusal_of([] { instrument::preset("spoon"); }).find("known: fine_hydrometer") != std::string::npos);
    CHECK(refusal_of([] { input(1.0, -1.0); }).find("the uncertainty is -1") != std::string::npos);
    CHECK(refusal_of([] { coverage_factor::student(1.0); }).find("between 0 and 1") != std::string::npos);
    CHECK(refusal_of([] { reconcile::linear::least_squares(vector{{1, 2}}, matrix::Identity(2, 2), matrix{{1, -1}, {2, -2}}, vector::Zero(2)); }).find("balance 2 is redundant") != std::string::npos);
    double const three[]{1.0, 2.0, 3.0};
    CHECK(refusal_of([&] { sampler({input::readings(three)}); }).find("four readings") != std::string::npos);
}
