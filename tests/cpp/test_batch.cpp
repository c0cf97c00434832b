// The engine in C++ against the answers in tests/reference/batch: every number of every answer, and every refusal.
#include <catch.hpp>
#include <cmath>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>

#include "reference.hpp"
#include "wortmath/batch/cautions.hpp"
#include "wortmath/batch/forecast.hpp"
#include "wortmath/batch/read.hpp"

namespace batch = wortmath::batch;

namespace {

// A JSON text as a flat map from ".steps[3].after.mass_g" to the text of its value.
class flat_json {
public:
    std::map<std::string, std::string> values;
    explicit flat_json(std::string text) : text_(std::move(text)) { value(""); }

private:
    std::string text_;
    std::size_t at_ = 0;
    char next() {
        while (std::isspace(static_cast<unsigned char>(text_[at_]))) ++at_;
        return text_[at_];
    }
    std::string quoted() {
        std::string s;
        for (++at_; text_[at_] != '"'; ++at_) {
            if (text_[at_] == '\\') s += text_[at_++];
            s += text_[at_];
        }
        ++at_;
        return s;
    }
    void value(const std::string& path) {
        char const c = next();
        if (c == '{') {
            ++at_;
            while (next() != '}') {
                std::string const key = quoted();
                next(), ++at_;
                value(path + "." + key);
                if (next() == ',') ++at_;
            }
            ++at_;
        } else if (c == '[') {
            ++at_;
            for (int i = 0; next() != ']'; ++i) {
                value(path + "[" + std::to_string(i) + "]");
                if (next() == ',') ++at_;
            }
            ++at_;
        } else if (c == '"') {
            values[path] = quoted();
        } else {
            std::size_t const from = at_;
            while (at_ < text_.size() && !std::strchr(",]} \n\r\t", text_[at_])) ++at_;
            values[path] = text_.substr(from, at_ - from);
        }
    }
};

std::string contents(const std::filesystem::path& p) {
    std::ifstream f(p, std::ios::binary);
    return {std::istreambuf_iterator<char>(f), {}};
}

void same(const flat_json& want, const std::string& path, double got) {
    auto const found = want.values.find(path);
    INFO(path);
    REQUIRE(found != want.values.end());
    double const w = std::strtod(found->second.c_str(), nullptr);
    CHECK(std::fabs(got - w) <= 1e-12 + 1e-9 * std::fabs(w));
}
void same(const flat_json& want, const std::string& path, const std::optional<double>& got) {
    INFO(path);
    REQUIRE(want.values.count(path) == 1);
    if (want.values.at(path) == "null") CHECK(!got);
    else {
        REQUIRE(got);
        same(want, path, *got);
    }
}

}  // namespace

TEST_CASE("batches agree with their answers") {
    int batches = 0;
    for (auto const& file : std::filesystem::directory_iterator(test::reference("batch"))) {
        if (file.path().extension() != ".toml") continue;
        ++batches;
        INFO(file.path().filename().string());
        auto answer = file.path();
        flat_json const want(contents(answer.replace_extension(".json")));
        auto const f = batch::forecast(batch::read_file(file.path()));
        same(want, ".barometer_bar", f.barometer);
        same(want, ".boiling_temperature_c", f.boiling_temperature);
        for (std::size_t i = 0; i < f.steps.size(); ++i) {
            std::string const step = ".steps[" + std::to_string(i) + "]", after = step + ".after";
            CHECK(want.values.at(step + ".line") == std::to_string(f.steps[i].line));
            CHECK(want.values.at(step + ".place") == f.steps[i].place);
            for (auto const& [name, x] : f.steps[i].reported) same(want, step + ".reported." + name, x);
            if (!f.steps[i].after) {
                CHECK(want.values.at(after) == "null");
                continue;
            }
            auto const& s = *f.steps[i].after;
            same(want, after + ".mass_g", s.mass), same(want, after + ".water_g", s.water), same(want, after + ".malt_extract_g", s.malt_extract);
            same(want, after + ".sugar_extract_g", s.sugar_extract), same(want, after + ".ethanol_g", s.ethanol), same(want, after + ".co2_g", s.co2);
            same(want, after + ".temperature_c", s.temperature), same(want, after + ".volume_l", s.volume), same(want, after + ".volume_20c_l", s.volume_20c);
            same(want, after + ".extract_degp", s.extract), same(want, after + ".apparent_extract_degp", s.apparent_extract);
            same(want, after + ".gravity_20_20", s.gravity), same(want, after + ".hydrometer", s.hydrometer);
            same(want, after + ".refractometer_degbx", s.refractometer), same(want, after + ".bitterness_bu", s.bitterness);
            same(want, after + ".colour_srm", s.colour), same(want, after + ".alcohol_by_volume", s.alcohol_by_volume);
        }
        for (std::size_t i = 0; i < f.hops.size(); ++i) {
            std::string const hop = ".hops[" + std::to_string(i) + "]";
            same(want, hop + ".utilisation", f.hops[i].utilisation), same(want, hop + ".bu", f.hops[i].bitterness);
            for (auto const& [name, x] : f.hops[i].by_model) same(want, hop + ".bu_by_model." + name, x);
        }
        same(want, ".results.original_gravity", f.original_gravity), same(want, ".results.final_gravity", f.final_gravity);
        same(want, ".results.alcohol_by_volume", f.alcohol_by_volume), same(want, ".results.bitterness_bu", f.bitterness);
        same(want, ".results.colour_srm", f.colour), same(want, ".results.energy_kj_per_l", f.energy), same(want, ".results.bitterness_ratio", f.bitterness_ratio);
        for (auto const& [name, x] : f.alcohol_by_formula) same(want, ".results.alcohol_by_formula." + name, x);
        for (auto const& [name, x] : f.colour_by_model) same(want, ".results.colour_by_model." + name, x);
        REQUIRE(f.package);
        same(want, ".package.hottest_pressure_bar", f.package->hottest_pressure), same(want, ".package.hazard_pressure_bar", f.package->hazard_pressure);
        same(want, ".package.hazard_carbonation_vol", f.package->hazard_carbonation), same(want, ".package.carbonation_vol", f.package->carbonation);
        CHECK(want.values.at(".package.level") == std::to_string(f.package->level));
        std::set<std::string> got_cautions, want_cautions;
        for (auto const& c : f.cautions) got_cautions.insert(c.id + " " + c.level + " " + (c.step ? std::to_string(*c.step) : "null"));
        for (int i = 0; want.values.count(".cautions[" + std::to_string(i) + "].id"); ++i) {
            std::string const c = ".cautions[" + std::to_string(i) + "].";
            want_cautions.insert(want.values.at(c + "id") + " " + want.values.at(c + "level") + " " + want.values.at(c + "step"));
        }
        CHECK(got_cautions == want_cautions);
        for (auto const& c : f.cautions) CHECK(!batch::caution_text(c.id).empty());
        double in = 0.0;
        for (auto const& [name, grams] : f.in) in += grams;
        CHECK(std::fabs(f.imbalance) <= 1e-12 * in);
    }
    CHECK(batches >= 4);
}

TEST_CASE("wrong files are refused at the right place with the right words") {
    int files = 0;
    for (auto const& file : std::filesystem::directory_iterator(test::reference("batch/bad"))) {
        if (file.path().extension() != ".toml") continue;
        ++files;
        auto expect = file.path();
        std::map<std::string, std::string> want;
        std::ifstream lines(expect.replace_extension(".expect"));
        for (std::string line; std::getline(lines, line);) {
            auto const at = line.find(" = ");
            if (at != std::string::npos) want[line.substr(0, at)] = line.substr(at + 3);
        }
        auto lower = [](std::string s) {
            for (char& c : s) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            return s;
        };
        INFO(file.path().filename().string());
        try {
            (void)batch::forecast(batch::read_file(file.path()));
            FAIL_CHECK("it was accepted");
        } catch (const batch::file_error& e) {
            std::string const message = lower(e.what());
            INFO(message);
            if (want.count("line")) CHECK(("|" + want["line"] + "|").find("|" + std::to_string(e.line()) + "|") != std::string::npos);
            if (want.count("step")) CHECK(want["step"] == std::to_string(e.step()));
            if (want.count("key")) CHECK(want["key"] == e.key());
            std::string words = want["words"] + "|";
            for (std::size_t at; (at = words.find('|')) != std::string::npos; words.erase(0, at + 1)) CHECK(message.find(lower(words.substr(0, at))) != std::string::npos);
        }
    }
    CHECK(files >= 22);
}
