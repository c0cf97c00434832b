// The reader of batch files: units, structures, and every refusal with its place.
//
// The rules are those of docs/batch.md; the units are checked against published conversion factors, and the files of
// tests/reference/batch are read with the places and words that lie beside them.
#include "catch.hpp"

#include "batch/units.hpp"
#include "wortmath/batch/read.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace wortmath::batch;

namespace {

// An invented batch that uses every kind of key once; the cases below spoil it in one place each.
const std::string sound = R"([batch]
name = "Quay Pale"
altitude = "100 m"

[models]
colour = "morey"

[instruments]
wort_factor = 1.03

[[step]]
do = "water"
volume = "20 L"
temperature = "12 degC"

[[step]]
do = "heat"
to = "70 degC"
power = "3 kW"

[[step]]
do = "steep"
minutes = "30 min"
grains = [
  { name = "amber malt", mass = "300 g", colour = "60 EBC" },
]

[[step]]
do = "dissolve"
extracts = [
  { name = "pale syrup", mass = "3 kg", kind = "syrup", colour = "6 degL" },
]

[[step]]
do = "boil"
minutes = "60 min"
evaporation = "2 L/h"
hops = [
  { name = "first hop", mass = "30 g", alpha = "8 %", minutes = "60 min" },
  { name = "last hop", mass = "20 g", alpha = 0.05, minutes = "5 min" },
]
sugars = [{ name = "white sugar", mass = "300 g", kind = "sucrose", minutes = "10 min" }]

[[step]]
do = "stand"
minutes = "15 min"
temperature = "80 degC"
hops = [{ mass = "40 g", alpha = "8 %" }]

[[step]]
do = "chill"
to = "20 degC"

[[step]]
do = "transfer"
leave = "0.5 L"

[[step]]
do = "top_up"
to = "20 L"

[[step]]
do = "pitch"
name = "house yeast"
cells = 180e9
range = ["18 degC", "22 degC"]

[[step]]
do = "ferment"
days = "10 d"
temperature = "19 degC"
attenuation = "75 %"
limit_attenuation = "80 %"

[[step]]
do = "rack"
leave = "1 L"

[[step]]
do = "dry_hop"
days = "4 d"
hops = [{ name = "dry hop", mass = "50 g" }]

[[step]]
do = "prime"
sugar = "sucrose"
carbonation = "2.4 vol"

[[step]]
do = "note"
text = "Stir slowly."

[[step]]
do = "bottle"
volume = "0.5 L"
hottest = "25 degC"

[[step]]
do = "condition"
days = "14 d"
temperature = "20 degC"

[[step]]
do = "serve"
temperature = "8 degC"
)";

std::string changed(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

int line_of(const std::string& text, const std::string& mark) {
    const auto at = text.find(mark);
    REQUIRE(at != std::string::npos);
    return 1 + static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

std::string lower(std::string s) {
    std::transform(s.begin(), s.end(), s.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return s;
}

bool holds(const std::string& text, const std::string& word) { return lower(text).find(lower(word)) != std::string::npos; }

// The place is given as text that stands on the line, so that the cases survive a change of the file above.
struct refusal {
    std::string from, to, mark;
    int step;
    std::string key;
    std::vector<std::string> words;
};

void check(const refusal& c) {
    const std::string text = changed(sound, c.from, c.to);
    INFO(c.from << " -> " << c.to);
    try {
        read_text(text);
        FAIL("read without complaint");
    } catch (const file_error& e) {
        INFO(e.what());
        CHECK(e.line() == line_of(text, c.mark));
        CHECK(e.step() == c.step);
        CHECK(e.key() == c.key);
        for (const auto& w : c.words) {
            INFO("word: " << w);
            CHECK(holds(e.what(), w));
        }
    }
}

file_error refused(const std::string& text) {
    try {
        read_text(text);
    } catch (const file_error& e) {
        return e;
    }
    FAIL("read without complaint: " << text);
    throw std::logic_error("not reached");
}

template <class S> const S& only_step(const batch<double>& b) {
    for (const auto& any : b.steps) {
        if (const auto* s = std::get_if<S>(&any)) return *s;
    }
    FAIL("no such step");
    throw std::logic_error("not reached");
}

std::filesystem::path reference() { return std::filesystem::path(__FILE__).parent_path().parent_path() / "reference" / "batch"; }

std::map<std::string, std::string> expectation(const std::filesystem::path& file) {
    std::map<std::string, std::string> all;
    std::ifstream in(file);
    for (std::string line; std::getline(in, line);) {
        if (const auto cut = line.find(" = "); cut != std::string::npos) all[line.substr(0, cut)] = line.substr(cut + 3);
    }
    return all;
}

std::vector<std::string> split(const std::string& text) {
    std::vector<std::string> parts;
    std::istringstream in(text);
    for (std::string part; std::getline(in, part, '|');) parts.push_back(part);
    return parts;
}

}  // namespace

TEST_CASE("units lead to the library's units by published factors") {
    // NIST SP 811, appendix B.8, recalled, in the digits printed there (UK: Units of Measurement Regulations 1995;
    // barrel of 31 US gallons: 27 CFR 25.11).
    struct row { const char* text; dimension of; measure in; double value, half_unit; };
    const row rows[] = {
        {"1 oz", dimension::mass, measure::gram, 28.34952, 5e-6},
        {"1 lb", dimension::mass, measure::gram, 453.59237, 1e-12},
        {"1 floz", dimension::volume, measure::litre, 0.02957353, 5e-9},
        {"1 pt", dimension::volume, measure::litre, 0.4731765, 5e-8},
        {"1 qt", dimension::volume, measure::litre, 0.9463529, 5e-8},
        {"1 gal", dimension::volume, measure::litre, 3.785412, 5e-7},
        {"1 bbl", dimension::volume, measure::litre, 117.3478, 5e-5},
        {"1 impfloz", dimension::volume, measure::litre, 0.0284130625, 1e-16},
        {"1 imppt", dimension::volume, measure::litre, 0.56826125, 1e-14},
        {"1 impqt", dimension::volume, measure::litre, 1.1365225, 1e-14},
        {"1 impgal", dimension::volume, measure::litre, 4.54609, 1e-14},
        {"1 psi", dimension::pressure, measure::bar, 0.06894757, 5e-9},
        {"1 mmHg", dimension::pressure, measure::bar, 0.001333224, 5e-10},
        {"1 atm", dimension::pressure, measure::bar, 1.01325, 1e-15},
        {"1 ft", dimension::length, measure::metre, 0.3048, 1e-15},
        {"1 gal/h", dimension::evaporation, measure::litre_per_hour, 3.785412, 5e-7},
        {"1 lb/h", dimension::evaporation, measure::gram_per_hour, 453.59237, 1e-12},
        // 0.02957353 L/28.34952 g from the two lines above
        {"1 floz/oz", dimension::absorption, measure::litre_per_kilogram, 1.0431756, 5e-7},
        {"212 degF", dimension::temperature, measure::celsius, 100, 1e-13},
        {"-40 degF", dimension::temperature, measure::celsius, -40, 1e-13},
        {"273.15 K", dimension::temperature, measure::celsius, 0, 1e-13},
    };
    for (const row& r : rows) {
        INFO(r.text);
        const parsed_amount p = parse_amount(r.text, r.of);
        CHECK(p.in->in == r.in);
        CHECK(std::abs(p.value() - r.value) <= r.half_unit);
    }
}

TEST_CASE("every unit of every dimension is read, with and without a space, and shown back") {
    std::set<std::string_view> names;
    for (const unit& u : all_units()) {
        INFO(u.name);
        CHECK(names.insert(u.name).second);
        for (const char* gap : {"", " ", "  "}) {
            const parsed_amount p = parse_amount("1.25" + std::string(gap) + std::string(u.name), u.of);
            CHECK(p.in == &u);
            CHECK(p.number == 1.25);
            CHECK(std::abs(in_unit(p.value(), u.in, u.name) - 1.25) <= 1e-12);
        }
        CHECK(units_of(u.of).find(u.name) != std::string::npos);
    }
    CHECK(names.size() == 53);  // as many as the file format names
    CHECK(in_unit(9, measure::day, "d") == 9);
    CHECK(in_unit(0.5, measure::day, "h") == 12);
    CHECK_THROWS_AS(in_unit(1, measure::gram, "L"), std::invalid_argument);
}

TEST_CASE("amounts that are no amounts") {
    const auto message = [](const char* text, dimension d) -> std::string {
        try {
            parse_amount(text, d);
        } catch (const amount_error& e) {
            return e.what();
        }
        return "";
    };
    const std::pair<const char*, const char*> cases[] = {
        {"10", "no unit"},          {"", "empty"},           {"kg", "number"},          {"nan kg", "not a number"},
        {"inf kg", "not a number"}, {"5,2 kg", "separator"}, {"1 000 g", "separator"},  {"1_000 g", "separator"},
        {"1.5.2 g", "separator"},   {"1 1/2 lb", "fraction"}, {"1e999 g", "number"},     {"5 stone", "unknown unit"},
        {"5 KG", "unknown unit"},   {"5 L", "a volume"},     {"- 5 g", "number"},       {"5 kg kg", "unknown unit"},
    };
    for (const auto& [text, word] : cases) {
        INFO(text);
        CHECK(holds(message(text, dimension::mass), word));
        CHECK(holds(message(text, dimension::mass), std::string_view(word) == "separator" || std::string_view(word) == "fraction" ||
                                                            std::string_view(text) == "1e999 g" ? "number" : "mg, g, kg, oz, lb"));
    }
    CHECK(holds(message("25 °X", dimension::temperature), "°X"));
    CHECK(parse_amount("+5 kg", dimension::mass).value() == 5000);
    CHECK(parse_amount(".5 kg", dimension::mass).value() == 500);
    CHECK(parse_amount("1e3 g", dimension::mass).value() == 1000);
}

TEST_CASE("a sound file becomes a batch") {
    const batch<double> b = read_text(sound);
    CHECK(b.line == 1);
    CHECK(b.name == "Quay Pale");
    REQUIRE(b.altitude);
    CHECK(b.altitude->value == 100);
    CHECK_FALSE(b.barometer);
    CHECK(b.models.colour.given);
    CHECK(b.models.utilisation.value == "tinseth");
    CHECK_FALSE(b.models.utilisation.given);
    CHECK(b.instruments.wort_factor.value == 1.03);
    CHECK(b.instruments.sample_temperature.value == 20);
    REQUIRE(b.steps.size() == 18);

    const auto& boil = only_step<boil_step<>>(b);
    CHECK(boil.number == 5);
    CHECK(boil.line == line_of(sound, "[[step]]\ndo = \"boil\""));
    CHECK(boil.minutes.value == 60);
    CHECK(boil.minutes.text == "60 min");
    CHECK(boil.minutes.unit == "min");
    CHECK(boil.minutes.line == line_of(sound, "minutes = \"60 min\""));
    REQUIRE(boil.evaporation);
    CHECK(boil.evaporation->in == measure::litre_per_hour);
    CHECK(boil.evaporation->value == 2);
    CHECK_FALSE(boil.power);
    CHECK_FALSE(boil.efficiency.given);
    REQUIRE(boil.hops.size() == 2);
    CHECK(boil.hops[1].name == "last hop");
    CHECK(boil.hops[1].line == line_of(sound, "{ name = \"last hop\""));
    CHECK(boil.hops[1].alpha.value == 0.05);
    CHECK(boil.hops[0].alpha.value == 0.08);
    REQUIRE(boil.sugars.size() == 1);
    CHECK(boil.sugars[0].solids.value == 1);
    CHECK(boil.sugars[0].minutes->value == 10);

    const auto& steep = only_step<steep_step<>>(b);
    CHECK(steep.grains.at(0).colour.in == measure::ebc);
    CHECK(steep.grains.at(0).extract.line == steep.grains.at(0).line);
    CHECK_FALSE(steep.temperature);
    const auto& pitch = only_step<pitch_step<>>(b);
    CHECK(pitch.cells->value == 180e9);
    CHECK(pitch.range.size() == 2);
    CHECK(pitch.cells_per_gram.value == 5e9);
    CHECK(only_step<ferment_step<>>(b).days.in == measure::day);
    CHECK(only_step<ferment_step<>>(b).days.value == 10);
    CHECK(only_step<dry_hop_step<>>(b).hops.at(0).alpha.value == 0);
    CHECK(only_step<prime_step<>>(b).carbonation->in == measure::volumes);
    CHECK(only_step<prime_step<>>(b).water.value == 0.5);
    CHECK(only_step<bottle_step<>>(b).package.value == "unrated_glass");
    CHECK(only_step<stand_step<>>(b).kettle_hops.value);
}

TEST_CASE("defaults that shape the forecast are listed") {
    const batch<double> b = read_text(sound);
    std::multiset<std::string> seen;
    for (const assumption& a : b.assumed) {
        std::ostringstream text;
        text << a.step << ' ' << a.key << ' ';
        std::visit([&](const auto& v) { text << v; }, a.value);
        text << ' ' << a.name.value_or("-");
        seen.insert(text.str());
    }
    CHECK(seen == std::multiset<std::string>{"3 extract 0.76 amber malt", "3 efficiency 0.35 -", "4 solids 0.8 pale syrup",
                                             "16 package unrated_glass -", "16 headspace 0.04 -"});

    // The first fermentation has a default attenuation, a later one has none.
    const std::string two = changed(sound, "attenuation = \"75 %\"\nlimit_attenuation = \"80 %\"\n",
                                    "\n[[step]]\ndo = \"ferment\"\ndays = \"3 d\"\ntemperature = \"20 degC\"\n");
    const batch<double> c = read_text(two);
    const auto& first = std::get<ferment_step<>>(c.steps[10]);
    REQUIRE(first.attenuation);
    CHECK(first.attenuation->value == 0.75);
    CHECK_FALSE(first.attenuation->given);
    CHECK(first.attenuation->line == first.line);
    CHECK_FALSE(std::get<ferment_step<>>(c.steps[11]).attenuation);
    CHECK(std::count_if(c.assumed.begin(), c.assumed.end(), [](const assumption& a) { return a.key == "attenuation"; }) == 1);

    // M(glucose)/M(glucose monohydrate) from IUPAC atomic weights (C 12.011, H 1.008, O 15.999): 180.156/198.171.
    const std::string corn = changed(sound, "kind = \"sucrose\", minutes", "kind = \"glucose_monohydrate\", minutes");
    CHECK(std::abs(only_step<boil_step<>>(read_text(corn)).sugars[0].solids.value - 180.156 / 198.171) <= 1e-5);
}

TEST_CASE("another number type carries the same batch") {
    struct dual {
        double value = 0, slope = 0;
        dual() = default;
        explicit dual(double v) : value(v) {}
    };
    const batch<double> b = read_text(sound);
    batch<dual> d = with_numbers<dual>(b);
    REQUIRE(d.steps.size() == b.steps.size());
    std::vector<std::string> one, two;
    const auto note = [](std::vector<std::string>& list) {
        return [&list](const where& at, std::string_view item, const auto& a) {
            double v;
            if constexpr (requires { a.value.slope; }) v = a.value.value;
            else v = a.value;
            list.push_back(file_error(at, std::string(item)).what() + a.text + std::to_string(v));
        };
    };
    for_each_amount(b, note(one));
    for_each_amount(d, note(two));
    CHECK(one == two);
    // altitude, 3 instruments, and of the steps 2, 4, 6, 3, 13, 4, 1, 2, 2, 5, 4, 1, 4, 4, 0, 5, 2, 1
    CHECK(one.size() == 67);
    CHECK(std::count(one.begin(), one.end(), "line 40, step 5 (boil): alpha: last hop0.050.050000") == 1);
    for_each_amount(d, [](const where& at, std::string_view item, amount<dual>& a) {
        if (at.key == "alpha" && item == "first hop") a.value.slope = 1;
    });
    CHECK(only_step<boil_step<>>(b).hops[0].mass.value == 30);
    for (const auto& any : d.steps) {
        if (const auto* s = std::get_if<boil_step<dual>>(&any)) CHECK(s->hops[0].alpha.value.slope == 1);
    }
}

TEST_CASE("unknown words") {
    for (const refusal& c : std::vector<refusal>{
             {"[models]", "[modles]", "[modles]", 0, "modles", {"unknown", "models"}},
             {"[models]", "[[steps]]\n[models]", "[[steps]]", 0, "steps", {"unknown", "step"}},
             {"[batch]\n", "title = \"x\"\n[batch]\n", "title", 0, "title", {"unknown"}},
             {"[batch]\n", "name = \"x\"\n[batch]\n", "name = \"x\"", 0, "name", {"[batch]"}},
             {"altitude =", "altitud =", "altitud =", 0, "altitud", {"unknown", "altitude", "batch"}},
             {"colour = \"morey\"", "color = \"morey\"", "color =", 0, "color", {"unknown", "colour", "models"}},
             {"wort_factor", "wortfactor", "wortfactor", 0, "wortfactor", {"unknown", "wort_factor", "instruments"}},
             {"\"dissolve\"", "\"disolve\"", "disolve", 4, "do", {"unknown", "dissolve"}},
             {"evaporation", "evaporaton", "evaporaton", 5, "evaporaton", {"boil", "unknown", "evaporation"}},
             {"alpha = \"8 %\", minutes", "alfa = \"8 %\", minutes", "alfa", 5, "alfa", {"unknown", "alpha", "hop"}},
             {"alpha = \"8 %\" }]", "alpha = \"8 %\", minutes = \"5 min\" }]", "minutes = \"5 min\" }]", 6, "minutes", {"unknown", "boil"}},
             {"kind = \"syrup\"", "kind = \"sirup\"", "sirup", 4, "kind", {"unknown", "syrup", "dry"}},
             {"sugar = \"sucrose\"", "sugar = \"dextrose\"", "dextrose", 14, "sugar", {"unknown", "glucose_monohydrate"}},
             {"hottest = ", "package = \"keg\"\nhottest = ", "package", 16, "package", {"unknown", "unrated_glass", "other"}},
             {"colour = \"morey\"", "utilisation = \"tinseth_gravity_steps\"", "tinseth_gravity_steps", 0, "utilisation", {"unknown", "rager_table", "tutzauer"}},
             {"colour = \"morey\"", "gravity = \"rational\"", "rational", 0, "gravity", {"unknown", "icumsa", "rosendal_schmidt"}},
             {"colour = \"morey\"", "residual = \"x\"", "\"x\"", 0, "residual", {"unknown", "water_quadratic", "zero_gauge_equilibrium"}},
             {"colour = \"morey\"", "altitude_factor = \"no\"", "\"no\"", 0, "altitude_factor", {"unknown", "none", "hosom"}},
         }) {
        check(c);
    }
}

TEST_CASE("wrong types of TOML") {
    for (const refusal& c : std::vector<refusal>{
             {"\"Quay Pale\"", "5", "name = 5", 0, "name", {"text", "5"}},
             {"volume = \"20 L\"", "volume = true", "volume = true", 1, "volume", {"true", "a volume"}},
             {"volume = \"20 L\"", "volume = [\"20 L\"]", "volume =", 1, "volume", {"list", "a volume"}},
             {"volume = \"20 L\"", "volume = 1979-05-27", "volume =", 1, "volume", {"date", "a volume"}},
             {"do = \"water\"", "do = 1", "do = 1", 1, "do", {"text"}},
             {"minutes = \"30 min\"\n", "squeezed = \"yes\"\n", "squeezed", 3, "squeezed", {"true", "false"}},
             {"sugars = [{ name", "sugars = [5, { name", "sugars =", 5, "sugars", {"5", "list"}},
             {"hops = [{ mass = \"40 g\", alpha = \"8 %\" }]", "hops = { mass = \"40 g\", alpha = \"8 %\" }", "hops = { mass", 6, "hops", {"table", "list"}},
             {"cells = 180e9", "cells = \"180e9 cells\"", "cells =", 10, "cells", {"bare number", "180e9"}},
             {"wort_factor = 1.03", "wort_factor = \"1.03\"", "wort_factor", 0, "wort_factor", {"bare number"}},
             {"range = [\"18 degC\", \"22 degC\"]", "range = \"18 degC\"", "range", 10, "range", {"two temperatures"}},
             {"range = [\"18 degC\", \"22 degC\"]", "range = [\"18 degC\"]", "range", 10, "range", {"two temperatures"}},
             {"[models]", "[[models]]", "[[models]]", 0, "", {"models", "once"}},
             {"[models]", "[[models]]\n[[models]]", "[[models]]", 0, "", {"models", "once"}},
             {"[models]", "[target]\n[models]", "[target]", 0, "", {"target", "[[target]]"}},
             {"[models]", "[reading]\n[models]", "[reading]", 0, "", {"reading", "[[reading]]"}},
         }) {
        check(c);
    }
    CHECK(read_text(sound + "[[target]]\nanything = 1\n[[free]]\n[[uncertain]]\n[[reading]]\n[[reading]]\n").steps.size() == 18);
    CHECK(holds(refused("target = [1]\n" + sound).what(), "target"));
    const file_error single = refused("[batch]\nname = \"x\"\n[step]\ndo = \"water\"\n");
    CHECK(single.line() == 3);
    CHECK(holds(single.what(), "[[step]]"));
}

TEST_CASE("amounts out of what is possible") {
    for (const refusal& c : std::vector<refusal>{
             {"volume = \"20 L\"", "volume = 20", "volume = 20", 1, "volume", {"water", "unit", "20"}},
             {"volume = \"20 L\"", "volume = \"20\"", "volume =", 1, "volume", {"unit", "20"}},
             {"volume = \"20 L\"", "volume = \"20 kg\"", "volume =", 1, "volume", {"kg", "mass", "volume"}},
             {"volume = \"20 L\"", "volume = \"-20 L\"", "volume =", 1, "volume", {"-20", "negative"}},
             {"volume = \"20 L\"", "volume = -20", "volume =", 1, "volume", {"-20", "negative", "unit"}},
             {"volume = \"20 L\"", "volume = \"0 L\"", "volume =", 1, "volume", {"0 L", "zero"}},
             {"volume = \"20 L\"", "volume = nan", "volume =", 1, "volume", {"nan", "number"}},
             {"volume = \"20 L\"", "volume = \"inf L\"", "volume =", 1, "volume", {"inf", "number"}},
             {"mass = \"300 g\", colour", "mass = \"0 g\", colour", "\"0 g\"", 3, "mass", {"zero"}},
             {"cells = 180e9", "cells = -1", "cells", 10, "cells", {"-1", "negative"}},
             {"cells = 180e9", "cells = inf", "cells", 10, "cells", {"inf", "number"}},
             {"cells = 180e9", "cells = 180", "cells", 10, "cells", {"180e9"}},
             {"cells = 180e9", "cells = 1000000", "cells", 10, "cells", {"180e9"}},
             {"cells = 180e9", "cells = 0", "cells", 10, "cells", {"180e9"}},
             {"cells = 180e9", "cells = 180e9\npitch_rate = 0", "pitch_rate", 10, "pitch_rate", {"0"}},
             {"alpha = 0.05", "alpha = 5", "alpha = 5", 5, "alpha", {"boil", "5 %", "share"}},
             {"alpha = 0.05", "alpha = -0.05", "alpha = -0.05", 5, "alpha", {"-0.05", "negative"}},
             {"alpha = 0.05", "alpha = \"5\"", "alpha = \"5\"", 5, "alpha", {"unit", "%"}},
             {"alpha = 0.05", "alpha = \"105 %\"", "105 %", 5, "alpha", {"share", "100 %"}},
             {"power = \"3 kW\"", "power = \"3 kW\"\nefficiency = 0", "efficiency", 2, "efficiency", {"zero"}},
             {"power = \"3 kW\"", "power = \"3 kW\"\nefficiency = \"0 %\"", "efficiency", 2, "efficiency", {"zero"}},
             {"power = \"3 kW\"", "power = \"3 kW\"\nvessel_heat_capacity = \"4 kJ/K\"", "vessel", 2, "vessel_heat_capacity", {"bare number", "kJ/K"}},
             {"hottest = ", "headspace = 0\nhottest = ", "headspace", 16, "headspace", {"zero"}},
             {"kind = \"syrup\"", "kind = \"syrup\", solids = 0.0", "solids", 4, "solids", {"zero"}},
             {"alpha = \"8 %\", minutes = \"60 min\"", "alpha = \"8 %\", minutes = \"61 min\"", "61 min", 5, "minutes", {"boil", "61", "60"}},
             {"kind = \"sucrose\", minutes = \"10 min\"", "kind = \"sucrose\", minutes = \"2 h\"", "2 h", 5, "minutes", {"boil", "2 h", "60"}},
             {"altitude = \"100 m\"", "altitude = \"9000 m\"", "altitude", 0, "altitude", {"5500", "ft"}},
             {"altitude = \"100 m\"", "altitude = \"-600 m\"", "altitude", 0, "altitude", {"-500"}},
             {"altitude = \"100 m\"", "barometer = \"1013 bar\"", "barometer", 0, "barometer", {"1.1", "mbar"}},
             {"altitude = \"100 m\"", "barometer = \"0.4 bar\"", "barometer", 0, "barometer", {"0.5"}},
             {"temperature = \"12 degC\"", "temperature = \"-1 degC\"", "\"-1 degC\"", 1, "temperature", {"-1", "0 degC"}},
             {"temperature = \"12 degC\"", "temperature = \"20 K\"", "\"20 K\"", 1, "temperature", {"20 K", "is it degC"}},
             {"temperature = \"12 degC\"", "temperature = \"20 degF\"", "\"20 degF\"", 1, "temperature", {"is it degC"}},
             {"temperature = \"19 degC\"", "temperature = \"66 degC\"", "\"66 degC\"", 11, "temperature", {"ferment", "66", "is it degF"}},
             {"temperature = \"19 degC\"", "temperature = \"41 degC\"", "\"41 degC\"", 11, "temperature", {"40"}},
             {"hottest = \"25 degC\"", "hottest = \"120 degC\"", "hottest", 16, "hottest", {"100", "is it degF"}},
             {"temperature = \"8 degC\"", "temperature = \"-2 degC\"", "\"-2 degC\"", 18, "temperature", {"-1"}},
             {"wort_factor = 1.03", "sample_temperature = \"68 degC\"", "sample_temp", 0, "sample_temperature", {"60", "is it degF"}},
             {"range = [\"18 degC\", \"22 degC\"]", "range = [\"22 degC\", \"18 degC\"]", "range", 10, "range", {"22", "low"}},
             {"attenuation = \"75 %\"\nlimit_attenuation = \"80 %\"", "final_gravity = \"12 SG\"", "final_gravity", 11, "final_gravity", {"12", "degP", "Plato"}},
             {"attenuation = \"75 %\"\nlimit_attenuation = \"80 %\"", "final_gravity = \"1010 SG\"", "final_gravity", 11, "final_gravity", {"1010", "degP"}},
             {"attenuation = \"75 %\"\nlimit_attenuation = \"80 %\"", "final_gravity = \"-1 degP\"", "final_gravity", 11, "final_gravity", {"-1", "negative"}},
             {"limit_attenuation = \"80 %\"", "limit_attenuation = \"70 %\"", "limit_att", 11, "limit_attenuation", {"70", "75"}},
             {"carbonation = \"2.4 vol\"", "carbonation = 2.4", "carbonation", 14, "carbonation", {"unit", "vol"}},
             {"sugar = \"sucrose\"", "sugar = \"lactose\"", "lactose", 14, "sugar", {"lactose", "gas"}},
             {"hottest = \"25 degC\"", "rated = \"58 bar\"\nhottest = \"25 degC\"", "rated", 16, "rated", {"12 bar", "psi"}},
             {"temperature = \"20 degC\"\n\n[[step]]\ndo = \"serve\"", "temperature = \"26 degC\"\n\n[[step]]\ndo = \"serve\"", "\"26 degC\"", 17, "temperature", {"condition", "26", "hottest", "25"}},
             {"name = \"Quay Pale\"", "name = \"Quay Pale\"\nformat = 2", "format", 0, "format", {"2", "1"}},
             {"name = \"Quay Pale\"", "name = \"Quay Pale\"\nformat = \"1\"", "format", 0, "format", {"bare number"}},
         }) {
        check(c);
    }
}

TEST_CASE("zero where a brewer may mean it, and limits that are reached exactly") {
    for (const auto& [from, to] : std::vector<std::pair<std::string, std::string>>{
             {"minutes = \"30 min\"", "minutes = \"0 min\""},
             {"evaporation = \"2 L/h\"", "evaporation = \"0 kg/h\""},
             {"leave = \"0.5 L\"", "leave = \"0 L\"\nhop_absorption = \"0 L/kg\""},
             {"days = \"4 d\"", "days = \"0 d\"\nabsorption = \"0 floz/oz\""},
             {"alpha = 0.05", "alpha = 0"},
             {"colour = \"60 EBC\"", "colour = \"0 SRM\", extract = \"0 %\""},
             {"carbonation = \"2.4 vol\"", "carbonation = \"4.9 g/L\"\nwater = \"0 L\""},
             {"hottest = \"25 degC\"", "hottest = \"25 degC\"\nloss = \"0 mL\""},
             {"power = \"3 kW\"", "power = \"3000 W\"\nvessel_heat_capacity = 0"},
             {"temperature = \"12 degC\"", "temperature = \"32 °F\""},
             {"temperature = \"19 degC\"", "temperature = \"104 degF\""},
             {"temperature = \"19 degC\"", "temperature = \"313.15 K\""},
             {"hottest = \"25 degC\"", "hottest = \"212 degF\""},
             {"temperature = \"20 degC\"\n\n[[step]]\ndo = \"serve\"", "temperature = \"77 degF\"\n\n[[step]]\ndo = \"serve\""},
             {"altitude = \"100 m\"", "altitude = \"-500 m\""},
             {"altitude = \"100 m\"", "altitude = \"5.5 km\""},
             {"altitude = \"100 m\"", "barometer = \"1100 hPa\""},
             {"minutes = \"60 min\" },\n  { name = \"last", "minutes = \"1 h\" },\n  { name = \"last"},
             {"hottest = \"25 degC\"\n\n[[step]]\ndo = \"condition\"\ndays = \"14 d\"\ntemperature = \"20 degC\"",
              "hottest = \"28 degC\"\n\n[[step]]\ndo = \"condition\"\ndays = \"14 d\"\ntemperature = \"82.4 degF\""},
             {"attenuation = \"75 %\"\nlimit_attenuation = \"80 %\"", "final_gravity = \"0 degP\""},
             {"attenuation = \"75 %\"\nlimit_attenuation = \"80 %\"", "final_gravity = \"0.97 SG\""},
             {"limit_attenuation = \"80 %\"", "limit_attenuation = 0.75"},
             {"name = \"Quay Pale\"", "format = 1\nname = \"Quay Pale\"\nnotes = \"Invented.\""},
         }) {
        INFO(from << " -> " << to);
        const std::string text = changed(sound, from, to);
        CHECK(read_text(text).steps.size() == 18);
    }
}

TEST_CASE("keys that are missing or exclude each other") {
    for (const refusal& c : std::vector<refusal>{
             {"name = \"Quay Pale\"\n", "", "[batch]", 0, "name", {"missing", "batch"}},
             {"do = \"water\"\n", "", "[[step]]\nvolume", 1, "do", {"missing", "water", "note"}},
             {"volume = \"20 L\"\n", "", "[[step]]\ndo = \"water\"", 1, "volume", {"missing", "volume or mass"}},
             {"volume = \"20 L\"\n", "mass = \"20 kg\"\nvolume = \"20 L\"\n", "volume = \"20 L\"", 1, "volume", {"mass", "not both"}},
             {"to = \"70 degC\"\n", "", "[[step]]\ndo = \"heat\"", 2, "to", {"missing"}},
             {"grains = [\n  { name = \"amber malt\", mass = \"300 g\", colour = \"60 EBC\" },\n]\n", "", "[[step]]\ndo = \"steep\"", 3, "grains", {"missing"}},
             {"  { name = \"amber malt\", mass = \"300 g\", colour = \"60 EBC\" },\n", "", "grains", 3, "grains", {"at least one"}},
             {"mass = \"300 g\", colour = \"60 EBC\"", "colour = \"60 EBC\"", "{ name = \"amber malt\"", 3, "mass", {"missing", "grain"}},
             {", kind = \"syrup\"", "", "{ name = \"pale syrup\"", 4, "kind", {"missing", "syrup", "dry"}},
             {"extracts = [\n  { name = \"pale syrup\", mass = \"3 kg\", kind = \"syrup\", colour = \"6 degL\" },\n]\n", "", "[[step]]\ndo = \"dissolve\"", 4, "extracts", {"at least one"}},
             {"minutes = \"60 min\"\n", "", "[[step]]\ndo = \"boil\"", 5, "minutes", {"missing", "boil"}},
             {"evaporation = \"2 L/h\"\n", "", "[[step]]\ndo = \"boil\"", 5, "evaporation", {"missing", "power"}},
             {"evaporation = \"2 L/h\"\n", "evaporation = \"2 L/h\"\npower = \"2 kW\"\n", "power = \"2 kW\"", 5, "power", {"evaporation", "not both"}},
             {", minutes = \"10 min\"", "", "sugars", 5, "minutes", {"missing", "sugar"}},
             {", minutes = \"5 min\"", "", "{ name = \"last hop\"", 5, "minutes", {"missing", "hop"}},
             {", alpha = 0.05", "", "{ name = \"last hop\"", 5, "alpha", {"missing", "hop"}},
             {"temperature = \"80 degC\"\n", "", "[[step]]\ndo = \"stand\"", 6, "temperature", {"missing", "stand"}},
             {"to = \"20 L\"\n", "", "[[step]]\ndo = \"top_up\"", 9, "volume", {"missing", "volume or mass or to"}},
             {"to = \"20 L\"\n", "to = \"20 L\"\nmass = \"1 kg\"\n", "mass = \"1 kg\"", 9, "mass", {"to", "not both"}},
             {"cells = 180e9\n", "", "[[step]]\ndo = \"pitch\"", 10, "mass", {"missing", "cells"}},
             {"cells = 180e9\n", "cells = 180e9\nmass = \"11 g\"\n", "mass = \"11 g\"", 10, "mass", {"cells", "not both"}},
             {"days = \"10 d\"\n", "", "[[step]]\ndo = \"ferment\"", 11, "days", {"missing", "ferment"}},
             {"attenuation = \"75 %\"\n", "final_gravity = \"1.010 SG\"\nattenuation = \"75 %\"\n", "attenuation = \"75 %\"", 11, "attenuation", {"final_gravity", "not both"}},
             {"hops = [{ name = \"dry hop\", mass = \"50 g\" }]\n", "", "[[step]]\ndo = \"dry_hop\"", 13, "hops", {"missing", "dry_hop"}},
             {"carbonation = \"2.4 vol\"\n", "", "[[step]]\ndo = \"prime\"", 14, "mass", {"missing", "carbonation"}},
             {"carbonation = \"2.4 vol\"\n", "carbonation = \"2.4 vol\"\nmass = \"120 g\"\n", "mass = \"120 g\"", 14, "mass", {"carbonation", "not both"}},
             {"text = \"Stir slowly.\"\n", "", "[[step]]\ndo = \"note\"", 15, "text", {"missing", "note"}},
             {"volume = \"0.5 L\"\n", "", "[[step]]\ndo = \"bottle\"", 16, "volume", {"missing", "bottle"}},
             {"hottest = \"25 degC\"\n", "", "[[step]]\ndo = \"bottle\"", 16, "hottest", {"missing", "bottle", "warmest"}},
             {"altitude = \"100 m\"\n", "barometer = \"1 bar\"\naltitude = \"100 m\"\n", "altitude", 0, "altitude", {"barometer", "not both"}},
         }) {
        check(c);
    }
    const file_error none = refused("[batch]\nname = \"x\"\n");
    CHECK(none.line() == 1);
    CHECK(holds(none.what(), "[[step]]"));
    const file_error headless = refused("# only a step\n[[step]]\ndo = \"note\"\ntext = \"x\"\n");
    CHECK(headless.line() == 1);
    CHECK(holds(headless.what(), "[batch]"));
}

TEST_CASE("the order of the steps") {
    const std::string note = "[[step]]\ndo = \"note\"\ntext = \"Stir slowly.\"\n";
    const auto step = [](const std::string& name, const std::string& keys) { return "[[step]]\ndo = \"" + name + "\"\n" + keys + "\n"; };
    const std::string mash = step("mash", "temperature = \"66 degC\"\nwater = \"15 L\"\ngrains = [{ mass = \"4 kg\" }]");
    const std::string lauter = step("lauter", "sparges = []");
    const std::string rack = step("rack", ""), transfer = step("transfer", ""), chill = step("chill", "to = \"20 degC\"");
    const std::string pitch = step("pitch", "mass = \"11 g\""), ferment = step("ferment", "days = \"9 d\"\ntemperature = \"19 degC\"");
    const std::string water = step("water", "volume = \"20 L\"");
    const std::string syrup = step("dissolve", "extracts = [{ mass = \"3 kg\", kind = \"syrup\" }]");
    const std::string boil = step("boil", "minutes = \"60 min\"\nevaporation = \"2 L/h\"");
    const std::string prime = step("prime", "carbonation = \"2.4 vol\"");
    const std::string bottle = step("bottle", "volume = \"0.5 L\"\nhottest = \"25 degC\"");
    const std::string keg = step("keg", "hottest = \"25 degC\""), gassed = step("keg", "hottest = \"25 degC\"\ncarbonation = \"2.4 vol\"");
    const std::string serve = step("serve", "temperature = \"8 degC\"");
    const std::string top_up = step("top_up", "volume = \"5 L\""), top_up_to = step("top_up", "to = \"20 L\"");
    const std::string beer = water + syrup + boil + transfer + pitch + ferment;
    const std::string head = "[batch]\nname = \"x\"\n";

    for (const std::string& good : {mash + lauter, mash + note + note + lauter + boil, water + mash + lauter, beer + prime + note + bottle + serve, beer + prime + keg,
                                    beer + gassed + serve, water + top_up + top_up_to + transfer + chill, beer + chill + rack + syrup + ferment, note}) {
        INFO(good);
        CHECK_FALSE(read_text(head + good).steps.empty());
    }

    struct wrong {
        std::string steps;
        int step;
        std::string key;
        std::vector<std::string> words;
    };
    for (const wrong& c : std::vector<wrong>{
             {mash + step("heat", "to = \"70 degC\""), 2, "", {"heat", "mash", "lauter"}},
             {mash, 1, "", {"mash", "lauter", "ends"}},
             {mash + lauter + mash, 3, "", {"mash", "once"}},
             {mash + mash, 2, "", {"mash", "once", "lauter"}},
             {water + syrup + mash, 3, "", {"mash", "water"}},
             {mash + lauter + lauter, 3, "", {"lauter", "once"}},
             {water + lauter, 2, "", {"lauter", "mash"}},
             {boil, 1, "", {"boil", "empty", "water"}},
             {syrup, 1, "", {"dissolve", "empty", "water"}},
             {chill, 1, "", {"chill", "empty"}},
             {transfer, 1, "", {"transfer", "empty"}},
             {water + transfer + transfer, 3, "", {"transfer", "once"}},
             {water + transfer + boil, 3, "", {"boil", "transfer"}},
             {water + transfer + water, 3, "", {"water", "top_up"}},
             {top_up_to, 1, "to", {"top_up", "empty"}},
             {water + pitch, 2, "", {"pitch", "transfer"}},
             {water + transfer + pitch + pitch, 4, "", {"pitch", "once"}},
             {water + transfer + ferment, 3, "", {"ferment", "pitch"}},
             {water + transfer + pitch + rack, 4, "", {"rack", "ferment"}},
             {water + transfer + pitch + prime, 4, "", {"prime", "ferment"}},
             {water + transfer + pitch + bottle, 4, "", {"bottle", "ferment"}},
             {beer + prime + rack, 8, "", {"rack", "prime", "bottle", "keg"}},
             {beer + prime + prime + bottle, 8, "", {"prime", "once"}},
             {beer + prime, 7, "", {"prime", "bottle", "ends"}},
             {beer + prime + gassed, 8, "carbonation", {"keg", "prime", "not both"}},
             {beer + keg, 7, "carbonation", {"keg", "missing", "prime"}},
             {beer + serve, 7, "", {"serve", "bottle", "keg"}},
             {beer + bottle + gassed, 8, "", {"keg", "bottle"}},
             {beer + bottle + top_up, 8, "", {"top_up", "packaged"}},
             {beer + bottle + water, 8, "", {"water", "packaged"}},
             {step("mash", "temperature = \"66 degC\"\ngrains = [{ mass = \"4 kg\" }]") + lauter, 1, "water", {"mash", "missing", "water"}},
             {beer + step("ferment", "days = \"9 d\"\ntemperature = \"19 degC\"\nattenuation = \"60 %\""), 7, "attenuation", {"60 %", "0.75"}},
         }) {
        INFO(c.steps);
        const std::string text = head + c.steps;
        const file_error e = refused(text);
        INFO(e.what());
        CHECK(e.step() == c.step);
        CHECK(e.key() == c.key);
        for (const auto& w : c.words) {
            INFO("word: " << w);
            CHECK(holds(e.what(), w));
        }
        // The line of the step, unless a key is at fault that is there.
        int line = 0, seen = 0;
        std::istringstream lines(text);
        int n = 0;
        for (std::string l; std::getline(lines, l);) {
            ++n;
            if (l == "[[step]]" && ++seen == c.step) line = n;
            if (seen == c.step && !c.key.empty() && l.rfind(c.key + " = ", 0) == 0) line = n;
        }
        CHECK(e.line() == line);
    }
}

TEST_CASE("two kinds of pint in one file") {
    const std::string us = changed(changed(sound, "leave = \"1 L\"", "leave = \"2 imppt\""), "leave = \"0.5 L\"", "leave = \"1 pt\"");
    const file_error e = refused(us);
    INFO(e.what());
    CHECK(e.line() == line_of(us, "2 imppt"));
    CHECK(e.step() == 12);
    CHECK(e.key() == "leave");
    for (const char* w : {"rack", "imppt", "pt", "US", "imperial", "litres"}) CHECK(holds(e.what(), w));
    CHECK(holds(e.what(), "line " + std::to_string(line_of(us, "1 pt"))));

    // Rates and absorptions count too, and the order of the keys in a table does not matter: lines do.
    const std::string rate = changed(changed(sound, "evaporation = \"2 L/h\"", "evaporation = \"0.5 gal/h\""), "volume = \"20 L\"", "volume = \"4 impgal\"");
    CHECK(refused(rate).line() == line_of(rate, "gal/h"));
    const std::string dry = changed(changed(sound, "days = \"4 d\"", "absorption = \"5 floz/oz\"\ndays = \"4 d\""), "leave = \"1 L\"", "leave = \"1 impqt\"");
    CHECK(refused(dry).key() == "absorption");
    CHECK(read_text(changed(sound, "leave = \"1 L\"", "leave = \"1 qt\"")).steps.size() == 18);
}

TEST_CASE("liquids hotter than water boils") {
    const std::string text = changed(sound, "to = \"70 degC\"", "to = \"155 degC\"");
    const batch<double> b = read_text(text);
    try {
        check_liquid_temperatures(b, 99.6);
        FAIL("155 degC passed");
    } catch (const file_error& e) {
        CHECK(e.line() == line_of(text, "155 degC"));
        CHECK(e.step() == 2);
        CHECK(e.key() == "to");
        for (const char* w : {"155 degC", "99.6", "is it degF"}) CHECK(holds(e.what(), w));
    }
    CHECK_NOTHROW(check_liquid_temperatures(read_text(sound), 99.6));
    // hottest may be 100 degC: it is no liquid in a kettle
    CHECK_NOTHROW(check_liquid_temperatures(read_text(changed(sound, "hottest = \"25 degC\"", "hottest = \"100 degC\"")), 99.6));
}

TEST_CASE("files that are no batch files") {
    for (const char* text : {"", "\n\n", "# nothing\n"}) {
        const file_error e = refused(text);
        CHECK(e.line() == 1);
        CHECK(holds(e.what(), "empty"));
        CHECK(holds(e.what(), "batch"));
    }
    const file_error bad = refused(changed(sound, "alpha = 0.05", "alpha = "));
    CHECK(bad.line() == line_of(sound, "alpha = 0.05"));
    CHECK(holds(bad.what(), "TOML"));
    CHECK(holds(refused("{\"name\": 1}").what(), "TOML"));
    const file_error twice = refused(changed(sound, "to = \"20 degC\"", "to = \"20 degC\"\nto = \"18 degC\""));
    CHECK(twice.line() == line_of(sound, "to = \"20 degC\"") + 1);
    CHECK(holds(twice.what(), "TOML"));

    const file_error latin = refused(changed(sound, "Quay Pale", "K\xF6lner"));
    CHECK(latin.line() == 2);
    CHECK(holds(latin.what(), "UTF-8"));
    for (const char* broken : {"\xC0\x80", "\xED\xA0\x80", "\xF5\x80\x80\x80", "\xE2\x82", "\x80"}) {
        CHECK(holds(refused(changed(sound, "Quay Pale", broken)).what(), "UTF-8"));
    }
    CHECK(holds(refused("x = \"\xE2\x82").what(), "UTF-8"));
    CHECK(read_text(changed(sound, "Quay Pale", "Bière ☕ 𝄞")).name == "Bière ☕ 𝄞");
    CHECK(holds(refused(std::string("[batch]\0", 8)).what(), "TOML"));

    // Letters outside quotes, and nesting that would exhaust the stack.
    for (const char* stray : {"é", "の", "名前 = \"x\"", "\u201Cname\u201D = 1", "\u00A0", "ﻼ"}) CHECK(holds(refused(sound + stray + "\n").what(), "TOML"));
    const std::string brace = changed(sound, "grains = [", "grains = [\n}");
    CHECK(refused(brace).line() == line_of(brace, "}"));
    CHECK(holds(refused(brace).what(), "TOML"));
    std::string deep;
    for (int i = 0; i < 400'000; ++i) deep += "a.";
    CHECK(holds(refused(deep + "b = 1").what(), "TOML"));
    CHECK(holds(refused("[" + deep + "b]").what(), "TOML"));
    CHECK(holds(refused("x = " + std::string(900'000, '[')).what(), "TOML"));
    std::string braces = "x = ";
    for (int i = 0; i < 1000; ++i) braces += "{a.b.c = ";
    CHECK(holds(refused(braces).what(), "TOML"));

    std::string windows;
    for (const char c : sound) windows += c == '\n' ? std::string("\r\n") : std::string(1, c);
    const batch<double> w = read_text("\xEF\xBB\xBF" + windows);
    CHECK(only_step<boil_step<>>(w).line == only_step<boil_step<>>(read_text(sound)).line);

    std::string large = sound;
    large += "# " + std::string(1'000'000 - sound.size() - 2, 'x');
    CHECK(large.size() == 1'000'000);
    CHECK(read_text(large).steps.size() == 18);
    CHECK(holds(refused(large + "x").what(), "1 MB"));
}

TEST_CASE("at most 200 steps and 100 ingredients in a list") {
    const std::string note = "[[step]]\ndo = \"note\"\ntext = \"x\"\n";
    std::string text = "[batch]\nname = \"x\"\n";
    for (int i = 0; i < 200; ++i) text += note;
    CHECK(read_text(text).steps.size() == 200);
    const file_error steps = refused(text + note);
    CHECK(steps.step() == 201);
    CHECK(steps.line() == 2 + 3 * 200 + 1);
    CHECK(holds(steps.what(), "200"));

    const std::string hop = "  { name = \"last hop\", mass = \"20 g\", alpha = 0.05, minutes = \"5 min\" },\n";
    std::string hops;
    for (int i = 0; i < 98; ++i) hops += hop;
    const std::string hundred = changed(sound, hop, hops + hop);
    CHECK(only_step<boil_step<>>(read_text(hundred)).hops.size() == 100);
    const std::string over = changed(hundred, hop, hop + hop);
    const file_error list = refused(over);
    CHECK(list.key() == "hops");
    CHECK(list.line() == line_of(sound, "{ name = \"first hop\"") + 100);
    CHECK(holds(list.what(), "100"));
}

TEST_CASE("text from the file cannot garble a message") {
    const file_error unit_text = refused(changed(sound, "volume = \"20 L\"", "volume = \"20 L\\u001b[31m\\n" + std::string(500, 'y') + "\""));
    CHECK(std::string(unit_text.what()).find('\x1b') == std::string::npos);
    CHECK(std::string(unit_text.what()).find('\n') == std::string::npos);
    CHECK(std::string(unit_text.what()).size() < 500);
    const file_error key = refused(changed(sound, "volume =", "\"vol\\u001bume\" = 1\nvolume ="));
    CHECK(std::string(key.what()).find('\x1b') == std::string::npos);
    CHECK(holds(key.what(), "unknown"));
}

TEST_CASE("files on disk") {
    const auto folder = std::filesystem::temp_directory_path() / "wortmath_batch_file_test";
    std::filesystem::create_directories(folder);
    const auto file = folder / "quay.toml";
    std::ofstream(file) << sound;
    CHECK(read_file(file).name == "Quay Pale");
    const auto message = [](const std::filesystem::path& p) -> std::string {
        try {
            read_file(p);
        } catch (const file_error& e) {
            CHECK(e.line() == 0);
            return e.what();
        }
        return "";
    };
    CHECK(holds(message(folder), "directory"));
    CHECK(holds(message(folder / "nowhere.toml"), "nowhere.toml"));
    CHECK(holds(message(folder / "nowhere.toml"), "cannot be read"));
    std::filesystem::remove_all(folder);
}

TEST_CASE("reference batches are read, and the spoilt ones refused at their place") {
    REQUIRE(std::filesystem::exists(reference() / "bad"));
    std::size_t good = 0, bad = 0;
    for (const auto& entry : std::filesystem::directory_iterator(reference())) {
        if (entry.path().extension() != ".toml") continue;
        INFO(entry.path().string());
        CHECK_FALSE(read_file(entry.path()).steps.empty());
        ++good;
    }
    CHECK(good >= 4);

    // What is wrong with these shows only in the state of the wort: the engine's tests refuse them.
    const std::set<std::string> for_the_engine{"boiled_dry", "carbonation_below_residual", "fahrenheit_as_celsius", "hot_pitch", "top_up_below"};
    for (const auto& entry : std::filesystem::directory_iterator(reference() / "bad")) {
        if (entry.path().extension() != ".toml") continue;
        INFO(entry.path().string());
        if (for_the_engine.count(entry.path().stem().string())) {
            CHECK_NOTHROW(read_file(entry.path()));
            continue;
        }
        auto expected = entry.path();
        auto wanted = expectation(expected.replace_extension(".expect"));
        REQUIRE_FALSE(wanted.empty());
        try {
            read_file(entry.path());
            FAIL("read without complaint");
        } catch (const file_error& e) {
            INFO(e.what());
            const auto lines = split(wanted["line"]);
            CHECK(std::count(lines.begin(), lines.end(), std::to_string(e.line())) == 1);
            CHECK(e.step() == (wanted.count("step") ? std::stoi(wanted["step"]) : 0));
            if (wanted.count("key")) CHECK(e.key() == wanted["key"]);
            for (const auto& w : split(wanted["words"])) {
                INFO("word: " << w);
                CHECK(holds(e.what(), w));
            }
        }
        ++bad;
    }
    CHECK(bad >= 17);
}
