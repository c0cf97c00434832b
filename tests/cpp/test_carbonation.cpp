// Carbonation and packages, what only C++ shows: the kernels beyond the range of the models, Newton's steps against
// bisection over the whole possible region, and which mix-ups do not compile.
#include <catch.hpp>
#include "reference.hpp"

#include <cmath>
#include <string>

#include "wortmath/carbonation.hpp"
#include "wortmath/package.hpp"
#include "wortmath/priming.hpp"
#include "wortmath/water/oxygen_saturation.hpp"

using namespace wortmath;

namespace {

// The root of a rising function by bisection, in long double.
long double bisected(long double lo, long double hi, auto f) {
    for (int i = 0; i < 90; ++i) {
        long double const middle = (lo + hi) / 2;
        (f(middle) > 0 ? hi : lo) = middle;
    }
    return lo;
}

std::string refusal_of(auto call) {
    try {
        call();
    } catch (const range_error& e) {
        return e.what();
    }
    return "";
}

}  // namespace

// IAPWS G7-04 (2004), Table 6: 300 to 600 K, printed to four digits.
TEST_CASE("the IAPWS equation of dissolved gas meets its verification values") {
    auto const t = test::read_table("carbonation/iapws_g7_04_co2_n2.csv");
    constexpr water::detail::dissolved_gas nitrogen{-9.67578, 4.72162, 11.70585};
    int seen = 0;
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        auto const& name = t.at(i, "gas");
        auto const gas = name == "CO2" ? water::detail::carbon_dioxide : name == "N2" ? nitrogen : water::detail::oxygen;
        double const k_h = water::detail::henry_iapws_g7_04(std::stod(t.at(i, "t_k")) - 273.15, gas);
        CHECK(std::fabs(std::log(k_h / 1000.0) - std::stod(t.at(i, "ln_kh_per_gpa"))) <= 5e-5);
        ++seen;
    }
    CHECK(seen >= 8);
}

TEST_CASE("four Newton steps solve the balance of every package that is accepted") {
    namespace gas = carbonation::detail;
    double worst = 0.0;
    int solved = 0;
    for (double v : {0.0, 0.001, 0.1, 0.5, 1.0, 3.0, 5.0, 6.0}) {
        for (double t = -1.0; t <= 60.0; t += 2.5) {
            for (double henry : {0.4, 0.6, 1.0, 1.7, 2.5, 4.0, 0.8 * carbonation::henry_constant.weiss_1974.formula(t)}) {
                for (double headspace : {0.01, 0.012, 0.02, 0.04, 0.3, 1.0, 3.0}) {
                    for (double fill : {-1.0, 4.0, 25.0}) {
                        double const gauge = package::detail::gauge_pressure(v, t, henry, headspace, 0.0, fill, 1.0, 1.0);
                        if (gauge != gauge) continue;  // full of liquid
                        double const p = gauge + 1.0 - water::saturation_pressure.iapws_sr1_86.formula(t);
                        long double const liquid = water::density.kell.formula(fill) / water::density.kell.formula(t);
                        long double const b = gas::virial_per_bar(t);
                        long double const ideal = (headspace + 1 - liquid) * 100 * 44.0095L / (constants::gas_constant * (t + 273.15L));
                        auto const balance = [&](long double x) { return liquid * henry * x * std::exp(b * x) + ideal * x / (1 + b * x) - 1.9768L * v; };
                        long double const root = bisected(0, 60, balance);
                        worst = std::fmax(worst, static_cast<double>(std::fabs(p - root) / (1 + root)));
                        ++solved;
                    }
                }
            }
        }
    }
    CHECK(solved > 20000);
    CHECK(worst < 2e-15);
}

TEST_CASE("four Newton steps solve beer under pure gas up to its 15 bar, and nothing beyond slips through") {
    double worst = 0.0;
    for (double v = 0.0; v < 500.0; v = v * 1.05 + 0.02) {
        for (double t = -1.0; t <= 60.0; t += 1.0) {
            for (double factor : {0.80, 0.93, 1.0}) {
                double const gauge = carbonation::pressure.beer_henry.formula(t, v, 1.0, factor);
                long double const b = carbonation::detail::virial_per_bar(t);
                long double const f = 1.9768L * v / (factor * carbonation::henry_constant.weiss_1974.formula(t));
                bool const beyond = f > 15.0L * std::exp(15.0L * b);
                if (gauge != gauge) {
                    CHECK(f > 15.0L * std::exp(15.0L * b) * (1 - 1e-12L));
                    continue;
                }
                CHECK_FALSE(beyond);
                double const p = gauge + 1.0 - water::saturation_pressure.iapws_sr1_86.formula(t);
                long double const root = bisected(0, 60, [&](long double x) { return x * std::exp(b * x) - f; });
                worst = std::fmax(worst, static_cast<double>(std::fabs(p - root) / (1 + root)));
            }
        }
    }
    CHECK(worst < 2e-15);
}

TEST_CASE("typed calls of a package, with and without their defaults") {
    using namespace wortmath::literals;
    CHECK(std::fabs(package::pressure(2.5_vol, 20.0_degC).value - 3.036066) <= 5e-7);
    unit::gauge_pressure const hazard = package::pressure.hazard_run(2.5_vol, 30.0_degC, unit::gas_volume_share(0.04), 4.0_degC);
    CHECK(std::fabs(hazard.value - 4.383262) <= 5e-7);
    CHECK(package::caution(word::package::keg, hazard, 2.5_vol).value == 2.0);
    CHECK(package::caution(word::package::other, hazard, 2.5_vol, none, true).value == 0.0);
    CHECK(package::caution(word::package::other, hazard, 2.5_vol, 4.0_bar_gauge, true).value == 2.0);
    CHECK(package::caution(word::package::other, unit::gauge_pressure(undefined), 2.5_vol, none, true).value == 2.0);
    CHECK(refusal_of([] { package::pressure(policy::extrapolate, 7.0_vol, 20.0_degC); }).find("more gas than this chapter's packages are made for: stop") !=
          std::string::npos);
    CHECK(refusal_of([] { package::pressure(policy::extrapolate, 3.0_vol, 60.0_degC, unit::gas_volume_share(0.02)); }).find("full of liquid, or nearly") !=
          std::string::npos);
    CHECK(refusal_of([] { package::pressure(policy::extrapolate, 3.0_vol, 60.1_degC); }) != "");
}

// The formula alone, which the engine calls without a range check, holds the two stops too.
TEST_CASE("the formula of a package has no pressure for too much gas or a full package") {
    auto const at = [](double v, double t, double headspace) {
        return package::pressure.beer_henry.formula(v, t, headspace, 1.0, 20.0, 1.01325, 1.01325, 0.93);
    };
    CHECK(at(6.0, 30.0, 0.04) > 9.0);
    CHECK(std::isnan(at(6.0001, 30.0, 0.04)));
    CHECK(std::isnan(at(3.0, 60.0, 0.02)));
    CHECK(std::isnan(at(undefined, 30.0, 0.04)));
}

template <class... A>
concept package_pressure_takes = requires(A... a) { package::pressure(a...); };
template <class... A>
concept equilibrium_takes = requires(A... a) { carbonation::equilibrium(a...); };
template <class... A>
concept unfinished_takes = requires(A... a) { priming::unfinished(a...); };
template <class A>
concept volumes_take = requires(A a) { carbonation::volumes(a); };

TEST_CASE("gauge and absolute, grams and volumes, real and apparent extract do not mix") {
    STATIC_REQUIRE(package_pressure_takes<unit::volumes_co2, unit::celsius>);
    STATIC_REQUIRE_FALSE(package_pressure_takes<unit::co2_concentration, unit::celsius>);
    STATIC_REQUIRE_FALSE(package_pressure_takes<unit::celsius, unit::volumes_co2>);
    STATIC_REQUIRE(equilibrium_takes<unit::celsius, unit::gauge_pressure, unit::pressure>);
    STATIC_REQUIRE_FALSE(equilibrium_takes<unit::celsius, unit::pressure, unit::pressure>);
    STATIC_REQUIRE_FALSE(equilibrium_takes<unit::celsius, unit::gauge_pressure, unit::gauge_pressure>);
    STATIC_REQUIRE(unfinished_takes<unit::original_extract, unit::apparent_extract, unit::apparent_extract, unit::density>);
    STATIC_REQUIRE_FALSE(unfinished_takes<unit::original_extract, unit::real_extract, unit::real_extract, unit::density>);
    STATIC_REQUIRE(volumes_take<unit::co2_concentration>);
    STATIC_REQUIRE_FALSE(volumes_take<unit::grams_per_litre>);
}
