// Scales, ranges, policies, messages, arrays: the frame in which every formula stands.
#include <catch.hpp>
#include <cmath>
#include <limits>
#include <string>

#include "core.hpp"
#include "wortmath/array.hpp"
#include "wortmath/catalogue.hpp"
#include "wortmath/quantity.hpp"

namespace wm = wortmath;
using namespace wm::literals;

namespace {
template <class F>
std::string sentence(F f) {
    try {
        (void)f();
    } catch (const wm::range_error& e) {
        return e.what();
    }
    return "";
}
bool has(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }
}  // namespace

TEST_CASE("points and differences") {
    wm::unit::gravity_20_20 const og = 1.050_sg, fg = 1.010_sg;
    wm::difference<wm::scales::gravity_20_20> const drop = og - fg;
    CHECK(drop.value == Approx(0.040));
    CHECK((fg + drop).value == Approx(1.050));
    CHECK((og - drop).value == Approx(1.010));
    CHECK(drop / (2.0 * drop) == Approx(0.5));
    CHECK(fg < og);
    static_assert(sizeof(wm::unit::gravity_20_20) == sizeof(double));
}

TEST_CASE("paths come from the types") {
    CHECK(std::string(wm::detail::path_of<decltype(wm::bitterness::utilisation.tinseth)>.full) == "bitterness.utilisation.tinseth");
    CHECK(wm::core::find("extract.from_gravity") == wm::core::find("extract.from_gravity.asbc"));
    CHECK(wm::core::find("extract.from_gravity.nonsense") == nullptr);
}

TEST_CASE("the three policies") {
    auto const& asbc = wm::extract::from_gravity.asbc;
    CHECK(has(sentence([&] { return asbc(1.110_sg); }), "outside the validated range"));
    CHECK(std::isnan(asbc(wm::policy::nan, 1.110_sg).value));
    CHECK(asbc(wm::policy::extrapolate, 1.110_sg).value > 25.0);
    CHECK(has(sentence([&] { return asbc(wm::policy::extrapolate, 12_sg); }), "is not a specific gravity"));
    CHECK(std::isnan(asbc(wm::policy::nan, 12_sg).value));
    CHECK(std::isnan(asbc(wm::unit::gravity_20_20(std::nan(""))).value));  // silently
}

TEST_CASE("messages say what was probably meant") {
    CHECK(has(sentence([] { return wm::extract::from_gravity(12_sg); }), "degrees Plato"));
    CHECK(has(sentence([] { return wm::extract::from_gravity(1048_sg); }), "1.0480"));
    CHECK(has(sentence([] { return wm::extract::from_gravity(1.110_sg); }), "extract.from_gravity.nbs"));
    CHECK(has(sentence([] { return wm::water::density(212_degC); }), "degF"));
    CHECK(has(sentence([] { return wm::bitterness::alpha_dosed(28_g, wm::unit::alpha_acids(12), 20_L); }), "12 % is 0.12"));
    CHECK(has(sentence([] { return wm::atmosphere::altitude(wm::unit::pressure(1004)); }), "1.004 bar"));
}

TEST_CASE("a bare gravity gives back the scale that it was given") {
    auto const mixed = wm::balance::blend.points_volume(1_L, 1.060_sg, 1_L, 1.040_sg);
    static_assert(std::is_same_v<decltype(mixed), const wm::unit::gravity_20_20>);
    CHECK(mixed.value == Approx(1.050));
    wm::unit::gravity_60F_60F const old = wm::balance::blend.points_volume(1_L, wm::unit::gravity_60F_60F(1.060), 3_L, wm::unit::gravity_60F_60F(1.000));
    CHECK(old.value == Approx(1.015));
}

TEST_CASE("several results, words, lists, no argument, optional arguments, truth values") {
    auto const [volume, extract] = wm::balance::blend.volume(5_L, 20_degP, 5_L, 0_degP);
    CHECK(extract.value == Approx(10.4).margin(0.1));
    CHECK(volume.value == Approx(10.0).margin(0.1));
    CHECK(wm::priming::sugar_yield(wm::word::sugar::sucrose).value == Approx(0.514).margin(0.002));
    wm::unit::grams const masses[]{wm::unit::grams(1000), wm::unit::grams(3000)};
    wm::unit::plato const extracts[]{0_degP, 0_degP};
    wm::unit::celsius const temperatures[]{10_degC, 30_degC};
    CHECK(wm::thermal::mix(masses, extracts, temperatures).value == Approx(25.0).margin(0.1));
    CHECK(wm::extract::volume_ratio.kunze().value == Approx(0.96).margin(0.01));
    CHECK(wm::hydrometer::correct(1.050_sg, 30_degC).value > 1.050);
    CHECK(wm::hydrometer::correct(1.050_sg, 30_degC, 20_degC, wm::none).value == wm::hydrometer::correct(1.050_sg, 30_degC).value);
    CHECK(std::string(wm::colour::word(3_SRM).text()).size() > 2);
}

TEST_CASE("what guards people answers the highest level") {
    auto const level = [](double pressure, double volumes) {
        return wm::package::caution(wm::word::package::unrated_glass, wm::unit::gauge_pressure(pressure), wm::unit::volumes_co2(volumes), wm::none, true).value;
    };
    CHECK(level(2.0, 2.4) == 0.0);
    CHECK(level(5.0, 2.4) == 1.0);
    CHECK(level(7.0, 2.4) == 2.0);
    CHECK(level(std::nan(""), 2.4) == 2.0);
    CHECK(level(2.0, std::nan("")) == 2.0);
    CHECK(level(2.0, -1.0) == 2.0);
    CHECK(wm::room::caution(wm::unit::parts_per_million(std::nan(""))).value == 2.0);
}

TEST_CASE("Boost.Units quantities and absolute temperatures") {
    namespace q = wm::quantity;
    CHECK(wm::water::density(q::degrees_celsius(20)).value == wm::water::density(20_degC).value);
    CHECK(wm::water::density(q::degrees_fahrenheit(68)).value == Approx(wm::water::density(20_degC).value).epsilon(1e-12));
    CHECK(wm::unit::grams(q::pounds(1)).value == Approx(453.59237).epsilon(1e-14));
    CHECK(wm::unit::litres(q::us_gallons(1)).value == Approx(3.785411784).epsilon(1e-14));
    CHECK(wm::unit::minutes(q::hours(1)).value == Approx(60.0));
    CHECK(wm::unit::pressure(q::psi(14.5037738)).value == Approx(1.0).epsilon(1e-8));
    CHECK(q::to_si(5_lb).value() == Approx(2.26796185));
    CHECK(q::to_si(20_degC).value() == Approx(293.15));
}

TEST_CASE("Eigen arrays, expressions and strides") {
    Eigen::ArrayXd g(4);
    g << 1.030, 1.050, 1.070, 1.200;
    Eigen::ArrayXd const u = wm::over(wm::bitterness::utilisation.tinseth, g, 60.0);
    CHECK(u[1] == wm::bitterness::utilisation(1.050_sg, 60_min).value);
    CHECK(std::isnan(u[3]));
    CHECK(wm::over(wm::policy::extrapolate, wm::bitterness::utilisation.tinseth, g, 60.0)[3] > 0.0);
    CHECK_THROWS_AS(wm::over(wm::policy::raise, wm::bitterness::utilisation.tinseth, g, 60.0), wm::range_error);
    Eigen::ArrayXXd table = Eigen::ArrayXXd::Constant(3, 3, 1.050);
    Eigen::ArrayXd const row = wm::over(wm::extract::from_gravity, table.row(1).transpose());
    CHECK(row.size() == 3);
    CHECK(row[2] == wm::extract::from_gravity(1.050_sg).value);
}

namespace {

std::vector<double> by_kernel(const wm::core::entry& e, const std::vector<double>& x, const std::vector<double>& fixed, int mover, wm::core::tally& found, std::ptrdiff_t stride = 1) {
    std::vector<std::vector<double>> columns(static_cast<std::size_t>(e.arity));
    std::vector<std::vector<double>> results(static_cast<std::size_t>(e.results), std::vector<double>(x.size()));
    std::vector<double> spread(x.size() * static_cast<std::size_t>(stride));
    for (std::size_t i = 0; i < x.size(); ++i) spread[i * static_cast<std::size_t>(stride)] = x[i];
    char* pointers[20];
    std::ptrdiff_t steps[20]{};
    std::vector<double> constants = fixed;
    for (int i = 0; i < e.arity; ++i) {
        pointers[i] = reinterpret_cast<char*>(i == mover ? spread.data() : &constants[static_cast<std::size_t>(i)]);
        steps[i] = i == mover ? stride * 8 : 0;
    }
    for (int k = 0; k < e.results; ++k) pointers[e.arity + k] = reinterpret_cast<char*>(results[static_cast<std::size_t>(k)].data()), steps[e.arity + k] = 8;
    wm::core::run(e, wm::policy::nan, pointers, steps, x.size(), wm::core::element::f64, wm::core::element::f64, found);
    return results[0];
}

}  // namespace

TEST_CASE("scalar calls, arrays and every instruction set agree, in any place of the array and with any stride") {
    std::size_t topics_count, models = 0;
    auto const* const topics = wm::core::topics(topics_count);
    for (std::size_t t = 0; t < topics_count; ++t) {
        for (std::size_t m = 0; m < topics[t].count; ++m) {
            auto const& e = topics[t].entries[m];
            if (e.has_lists || e.arity == 0) continue;
            bool numbers = true;
            std::vector<double> fixed;
            for (int i = 0; i < e.arity; ++i) {
                auto const& in = e.inputs[i];
                numbers = numbers && in.what != wm::detail::kind::truth;
                double const lo = std::max(in.range.valid_lo, -1e6), hi = std::min(in.range.valid_hi, in.range.valid_lo > 0 ? in.range.valid_lo * 50 + 1 : 1e3);
                fixed.push_back(in.what == wm::detail::kind::word ? 0.0 : in.optional ? in.fallback : lo + 0.37 * (hi - lo));
            }
            if (!numbers || e.inputs[0].what != wm::detail::kind::number) continue;
            auto const& in = e.inputs[0];
            double const lo = std::max(in.range.valid_lo, -1e6), hi = std::min(in.range.valid_hi, in.range.valid_lo > 0 ? in.range.valid_lo * 50 + 1 : 1e3);
            std::vector<double> x;
            for (int i = 0; i < 77; ++i) x.push_back(lo + (hi - lo) * i / 76.0);
            x[13] = std::nan("");
            INFO(e.path.full);
            ++models;
            for (int set = 0; set <= wm::core::best_instruction_set(); ++set) {
                wm::core::use_instruction_set(set);
                wm::core::tally found;
                auto const whole = by_kernel(e, x, fixed, 0, found);
                wm::core::tally ignored;
                auto const strided = by_kernel(e, x, fixed, 0, ignored, 3);
                auto const tail = by_kernel(e, std::vector<double>(x.begin() + 70, x.end()), fixed, 0, ignored);
                for (std::size_t i = 0; i < x.size(); ++i) {
                    std::vector<double> point = fixed;
                    point[0] = x[i];
                    double out[4];
                    std::vector<const double*> pointers;
                    for (double const& v : point) pointers.push_back(&v);
                    wm::range_error error;
                    bool const refused = wm::core::diagnose(e, wm::policy::nan, pointers.data(), 1, error);
                    e.scalar(point.data(), out);
                    bool const joint = e.holds && !e.holds(pointers.data(), 1, out);
                    if (refused || joint) {
                        if (!e.guards) CHECK(std::isnan(whole[i]));
                        continue;
                    }
                    if (e.guards && std::isnan(x[i])) continue;
                    bool const same = whole[i] == out[0] || (std::isnan(whole[i]) && std::isnan(out[0])) || std::fabs(whole[i] - out[0]) <= 2e-11 * std::fabs(out[0]) + 1e-13;
                    if (!same) CHECK(whole[i] == out[0]);
                    bool const strides = whole[i] == strided[i] || (std::isnan(whole[i]) && std::isnan(strided[i]));
                    CHECK(strides);
                    if (i >= 70) {
                        bool const places = whole[i] == tail[i - 70] || (std::isnan(whole[i]) && std::isnan(tail[i - 70]));
                        CHECK(places);
                    }
                }
            }
            wm::core::use_instruction_set(-1);
        }
    }
    CHECK(models > 300);
}
