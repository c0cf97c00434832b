// What only C++ offers of the topic colour: spectra as functions, the hex form, the compiled tables of the CIE.
#include <catch.hpp>
#include "reference.hpp"

#include <cmath>
#include <string>
#include <vector>

#include "wortmath/colour.hpp"

using namespace wortmath;

namespace {

double cell(const test::table& t, std::size_t row, const char* column) { return std::stod(t.at(row, column)); }

word::illuminant illuminant_of(const std::string& name) { return name == "c" ? word::illuminant::c : word::illuminant::d65; }
word::observer observer_of(const std::string& name) { return name == "cie_1964" ? word::observer::cie_1964 : word::observer::cie_1931; }

std::string refusal_of(auto call) {
    try {
        call();
    } catch (const range_error& e) {
        return e.what();
    }
    return "";
}

}  // namespace

// The rows of tristimulus_cases.csv whose spectrum has a parameter: half a unit of the last printed digit.
TEST_CASE("tristimulus values through a spectrum of the caller's own") {
    auto const t = test::read_table("colour/tristimulus_cases.csv");
    int seen = 0;
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        if (t.at(i, "parameter").empty()) continue;
        ++seen;
        double const parameter = cell(t, i, "parameter");
        bool const two_group = t.at(i, "spectrum") == "two_group";
        auto const spectrum = [&](unit::nanometres l) {
            return two_group ? colour::spectrum.two_group(l, unit::fraction(parameter)) : colour::spectrum.log_linear(l, unit::ratio(parameter));
        };
        unit::srm const srm(cell(t, i, "srm"));
        unit::centimetres const path(cell(t, i, "path_cm"));
        auto const il = illuminant_of(t.at(i, "illuminant"));
        auto const ob = observer_of(t.at(i, "observer"));
        auto const v = t.at(i, "step_nm") == "10" ? colour::tristimulus.table_10nm(srm, path, il, ob, spectrum) : colour::tristimulus.table_5nm(srm, path, il, ob, spectrum);
        CHECK(std::fabs(v.x.value - cell(t, i, "X")) <= 5.1e-7);
        CHECK(std::fabs(v.y.value - cell(t, i, "Y")) <= 5.1e-7);
        CHECK(std::fabs(v.z.value - cell(t, i, "Z")) <= 5.1e-7);
    }
    CHECK(seen >= 4);
}

// identity: the average beer as a function is the average beer by name.
TEST_CASE("a spectrum as a function meets the spectrum by name") {
    auto const average = [](unit::nanometres l) { return colour::spectrum(l); };
    unit::srm const srm(9.0);
    unit::centimetres const path(3.0);
    auto const by_name = colour::tristimulus.table_10nm(srm, path, word::illuminant::c, word::observer::cie_1964);
    auto const by_function = colour::tristimulus.table_10nm(srm, path, word::illuminant::c, word::observer::cie_1964, average);
    CHECK(std::fabs(by_name.x.value - by_function.x.value) < 1e-14);
    CHECK(std::fabs(by_name.y.value - by_function.y.value) < 1e-14);
    CHECK(std::fabs(by_name.z.value - by_function.z.value) < 1e-14);
}

TEST_CASE("spectra that are refused") {
    auto const d65 = word::illuminant::d65;
    auto const cie_1931 = word::observer::cie_1931;
    unit::centimetres const path(5.0);
    for (auto named : {word::spectrum::log_linear, word::spectrum::two_group}) {
        CHECK(refusal_of([&] { colour::tristimulus(unit::srm(9.0), path, d65, cie_1931, named); }).find("need their parameter") != std::string::npos);
        CHECK(refusal_of([&] { colour::tristimulus.table_10nm(unit::srm(9.0), path, d65, cie_1931, named); }).find("need their parameter") != std::string::npos);
    }
    auto const flat = [](unit::nanometres) { return unit::ratio(1.0); };
    CHECK(refusal_of([&] { colour::tristimulus.table_5nm(unit::srm(70.0), path, d65, cie_1931, flat); }).find("srm = 70 is outside the validated range") != std::string::npos);
    CHECK(colour::tristimulus.table_5nm(policy::extrapolate, unit::srm(70.0), path, d65, cie_1931, flat).y.value > 0.0);
    auto const gap = [](unit::nanometres) { return unit::ratio(undefined); };
    CHECK(refusal_of([&] { colour::tristimulus.table_5nm(unit::srm(9.0), path, d65, cie_1931, gap); }).find("every row") != std::string::npos);
}

// CIE 15:2004; the files state their source.
TEST_CASE("the compiled tables of the CIE are the files") {
    namespace tables = colour::detail;
    auto const same = [](const char* file, const char* column, const double(&compiled)[tables::cie_rows]) {
        auto const t = test::read_table(std::string("colour/") + file);
        REQUIRE(t.rows.size() == tables::cie_rows);
        for (std::size_t i = 0; i < tables::cie_rows; ++i) {
            CHECK(cell(t, i, "wavelength_nm") == tables::cie_wavelengths[i]);
            CHECK(cell(t, i, column) == compiled[i]);
        }
    };
    same("cie_1931_2deg_5nm.csv", "xbar", tables::observer_cie_1931.xbar);
    same("cie_1931_2deg_5nm.csv", "ybar", tables::observer_cie_1931.ybar);
    same("cie_1931_2deg_5nm.csv", "zbar", tables::observer_cie_1931.zbar);
    same("cie_1964_10deg_5nm.csv", "xbar", tables::observer_cie_1964.xbar);
    same("cie_1964_10deg_5nm.csv", "ybar", tables::observer_cie_1964.ybar);
    same("cie_1964_10deg_5nm.csv", "zbar", tables::observer_cie_1964.zbar);
    same("cie_illuminant_d65_5nm.csv", "S", tables::illuminant_d65);
    same("cie_illuminant_c_5nm.csv", "S", tables::illuminant_c);
}

// identity: two hexadecimal digits for each channel.
TEST_CASE("hex form of a colour") {
    auto const beer = colour::swatch(unit::srm(6.0));
    CHECK(std::string(beer.hex().text) == "#d98a00");
    CHECK(beer.outside_gamut);
    CHECK(std::string(colour::swatch(unit::srm(0.0)).hex().text) == "#ffffff");
    CHECK(std::string(colour::srgb(unit::ratio(0.0), unit::ratio(0.0), unit::ratio(0.0)).hex().text) == "#000000");
}

// BJCP 2021 Style Guidelines, colour reference: closed intervals.
TEST_CASE("colour words") {
    CHECK(colour::word(unit::srm(6.0)) == word::beer_colour::amber);
    CHECK(std::string(colour::word(unit::srm(5.999)).text()) == "gold");
    auto const both = colour::word.bjcp_2021(unit::srm(3.0));
    CHECK(both.contains(word::bjcp_colour::straw));
    CHECK(both.contains(word::bjcp_colour::yellow));
    CHECK_FALSE(both.contains(word::bjcp_colour::gold));
    CHECK(colour::word.bjcp_2021(unit::srm(18.5)).bits == 0u);
}

// A list of colours with fewer volumes is never read beyond its end.
TEST_CASE("lists of unequal length are refused") {
    std::vector<unit::srm> const colours{unit::srm(4.0), unit::srm(20.0)};
    std::vector<unit::litres> const one{unit::litres(10.0)};
    CHECK(refusal_of([&] { colour::blend(colours, one); }).find("as many volumes as colours") != std::string::npos);
    std::vector<unit::lovibond> const malts{unit::lovibond(2.0), unit::lovibond(60.0)};
    std::vector<unit::grams> const mass{unit::grams(5000.0)};
    CHECK(refusal_of([&] { colour::grist_load(malts, mass, unit::litres(20.0)); }).find("as many masses as colours") != std::string::npos);
    CHECK(colour::grist_load(std::vector<unit::lovibond>{}, std::vector<unit::grams>{}, unit::litres(20.0)).value == 0.0);
}
