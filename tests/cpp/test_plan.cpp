// Plans: the answer is a batch file that meets its targets; what stands elsewhere in the file is untouched.
#include <catch.hpp>
#include <cmath>
#include <fstream>
#include <iterator>
#include <string>

#include "wortmath/batch/adjust.hpp"
#include "wortmath/batch/plan.hpp"
#include "wortmath/batch/read.hpp"

using namespace wortmath;

namespace {
std::string file(const char* name) {
    std::ifstream in(std::string(WORTMATH_REFERENCE) + "/batch/" + name, std::ios::binary);
    REQUIRE(in);
    return {std::istreambuf_iterator<char>(in), {}};
}
batch::plan_request request(const std::string& text, std::initializer_list<batch::plan_target> targets, std::initializer_list<std::pair<const char*, const char*>> free) {
    auto b = batch::read_text(text);
    auto const all = batch::amounts_of(b);
    batch::plan_request r;
    r.targets = targets;
    for (auto const& [name, key] : free)
        for (std::size_t i = 0; i < all.size(); ++i)
            if (all[i].ingredient == name && all[i].at.key == key) r.free.push_back({{i}, all[i].is->value / 50.0, all[i].is->value * 50.0, 0});
    return r;
}
}  // namespace

TEST_CASE("a plan meets its targets in the file that it writes") {
    for (double og : {1.045, 1.055, 1.065})
        for (double bu : {20.0, 45.0}) {
            std::string const text = file("a_extract_us.toml");
            auto const r = request(text, {{"original_gravity", og, "", 0}, {"bitterness_bu", bu, "", 0}}, {{"pale syrup", "mass"}, {"house hop", "mass"}});
            REQUIRE(r.free.size() == 2);
            auto const p = batch::plan(text, r);
            CHECK(p.met);
            CHECK(p.iterations < 50);
            auto const f = batch::forecast(batch::read_text(p.text));
            CHECK(std::fabs(*f.original_gravity - og) < 1e-9);
            CHECK(std::fabs(*f.bitterness - bu) < 1e-9 * bu);
        }
}

TEST_CASE("what is already so stays so") {
    std::string const text = file("c_late_extract_altitude.toml");
    auto const f = batch::forecast(batch::read_text(text));
    auto const p = batch::plan(text, request(text, {{"original_gravity", *f.original_gravity, "", 0}}, {{"late syrup", "mass"}, {"last dry extract", "mass"}}));
    CHECK(p.met);
    for (auto const& a : p.amounts) CHECK(a.after == Approx(a.before).epsilon(1e-10));
}

TEST_CASE("more freedom than targets: the changes are in the ratio of the derivatives") {
    // The smallest sum of squared relative changes: each is the multiplier times the elasticity, at the answer.
    std::string const text = file("c_late_extract_altitude.toml");
    auto const p = batch::plan(text, request(text, {{"original_gravity", 1.052, "", 0}}, {{"late syrup", "mass"}, {"last dry extract", "mass"}, {"first extract", "mass"}}));
    CHECK(p.met);
    auto const g = batch::gradient(batch::read_text(p.text), "original_gravity");
    double multiplier = 0.0;
    for (auto const& a : p.amounts)
        for (auto const& d : g)
            if (d.ingredient == a.ingredient && d.at.key == "mass") {
                double const ratio = (a.after / a.before - 1.0) / (d.slope * a.before);
                if (multiplier == 0.0) multiplier = ratio;
                CHECK(ratio == Approx(multiplier).epsilon(1e-5));
            }
    CHECK(multiplier > 0.0);
}

TEST_CASE("amounts are replaced where they stand") {
    std::string const text = "[batch]\nname = \"a\" # mass = \"1 kg\"\n[[step]]\ndo = \"water\"\nvolume   =   \"10 L\"   # ten\ntemperature='15 degC'\n";
    CHECK(batch::with_amounts(text, {}) == text);
    auto b = batch::read_text(text);
    auto const all = batch::amounts_of(b);
    std::vector<batch::replacement> changes;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].at.key == "volume") changes.push_back({i, 12.5});
        if (all[i].at.key == "temperature") changes.push_back({i, 20.0});
    }
    CHECK(batch::with_amounts(text, changes) == "[batch]\nname = \"a\" # mass = \"1 kg\"\n[[step]]\ndo = \"water\"\nvolume   =   \"12.5 L\"   # ten\ntemperature=\"20 degC\"\n");
    CHECK_THROWS_AS(batch::with_amounts(text, {{0, 3.0}}), batch::file_error);  // the altitude is a default
}

TEST_CASE("written amounts read back as the same number") {
    for (auto const& [value, in, unit] : {std::tuple{1234.5678901234567, batch::measure::gram, "lb"}, {17.3, batch::measure::litre, "gal"}, {66.666666666666671, batch::measure::celsius, "degF"}, {0.0512345678901234567, batch::measure::share, "%"}}) {
        auto const text = batch::written(value, in, unit);
        INFO(text);
        std::string const key = in == batch::measure::gram ? "mass" : in == batch::measure::litre ? "volume" : "";
        if (key.empty()) continue;
        auto b = batch::read_text("[batch]\nname = \"a\"\n[[step]]\ndo = \"water\"\n" + key + " = \"" + text + "\"\n");
        for (auto const& a : batch::amounts_of(b))
            if (a.at.key == key) CHECK(a.is->value == Approx(value).epsilon(4e-16));
    }
}

TEST_CASE("a reading that is off") {
    batch::adjust_request q;
    q.stage = "in_fermenter", q.volume = 20.0, q.gravity = 1.050, q.target_gravity = 1.045;
    auto const a = batch::adjust(q);
    REQUIRE(a.choices.size() == 1);
    CHECK(a.choices[0].what == "add_water");
    CHECK(a.choices[0].after.gravity == Approx(1.045).epsilon(1e-13));
    q.stage = "breakfast";
    CHECK_THROWS_AS(batch::adjust(q), batch::file_error);
}
