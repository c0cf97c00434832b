// The models against the outside: random points of an independent implementation, printed tables, worked answers.
// tests/python/test_points.py and test_checks.py read the same files.
#include <catch.hpp>
#include <filesystem>

#include "expression.hpp"
#include "reference.hpp"

namespace {

namespace core = wortmath::core;
using wortmath::detail::kind;

const char* const chapters[]{"attenuation", "bitterness", "carbonation", "colour", "extract", "process", "refractometer"};

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> out;
    std::string part;
    for (char c : text) {
        if (c == at) out.push_back(part), part.clear();
        else part += c;
    }
    if (!part.empty()) out.push_back(part);
    return out;
}

std::vector<std::pair<std::string, test::value>> arguments(const core::entry& e, const std::string& inputs) {
    std::vector<std::pair<std::string, test::value>> out;
    for (auto const& pair : split(inputs, ';')) {
        std::size_t const at = pair.find('=');
        std::string const name = pair.substr(0, at), text = pair.substr(at + 1);
        test::value v;
        for (int i = 0; i < e.arity; ++i) {
            if (name != e.inputs[i].name) continue;
            if (e.inputs[i].what == kind::list) v.what = test::value::kind::list, v.list = test::list_of(text);
            else if (e.inputs[i].what == kind::word) v = test::value::of(text);
            else if (text != "None" && text != "none") v = test::number_or_word(text);
        }
        out.emplace_back(name, v);
    }
    out.emplace_back("policy", test::value::of(std::string("extrapolate")));
    return out;
}

// Empty, or what is wrong.
std::string fault(const test::value& got, const std::string& want, double absolute, double relative) {
    auto near = [&](double a, const std::string& text) {
        double const b = text == "True" ? 1.0 : text == "False" ? 0.0 : std::strtod(text.c_str(), nullptr);
        return std::fabs(a - b) <= absolute + relative * std::fabs(b);
    };
    if (got.what == test::value::kind::word) return got.word == want ? "" : "'" + got.word + "' against '" + want + "'";
    std::vector<double> const values = got.what == test::value::kind::number ? std::vector<double>{got.number} : got.list;
    auto const wanted = split(want, '|');
    if (values.size() != wanted.size()) return "another number of results";
    for (std::size_t i = 0; i < values.size(); ++i)
        if (!near(values[i], wanted[i])) return std::to_string(values[i]) + " against " + wanted[i];
    return "";
}

}  // namespace

TEST_CASE("every model agrees with an independent implementation at random points") {
    std::size_t rows = 0;
    for (const char* chapter : chapters) {
        auto const t = test::read_table(std::string("points/") + chapter + ".csv");
        for (std::size_t r = 0; r < t.rows.size(); ++r) {
            auto const& path = t.at(r, "path");
            auto const* const e = core::find(path.c_str());
            INFO(path << "(" << t.at(r, "inputs") << ")");
            REQUIRE(e != nullptr);
            std::string wrong;
            try {
                wrong = fault(test::call_model(path, arguments(*e, t.at(r, "inputs"))), t.at(r, "result"), std::stod(t.at(r, "abs")), std::stod(t.at(r, "rel")));
            } catch (const std::exception& x) {
                wrong = x.what();
            }
            CHECK(wrong == "");
            ++rows;
        }
    }
    CHECK(rows > 2500);
}

TEST_CASE("printed tables") {
    std::size_t checks = 0;
    for (const char* chapter : chapters) {
        std::string const manifest = std::string(chapter) + "/checks.csv";
        REQUIRE(std::filesystem::exists(test::reference(manifest)));
        auto const m = test::read_table(manifest);
        for (std::size_t c = 0; c < m.rows.size(); ++c) {
            auto const t = test::read_table(std::string(chapter) + "/" + m.at(c, "file"));
            std::size_t used = 0;
            for (std::size_t r = 0; r < t.rows.size(); ++r) {
                auto column = [&](const std::string& name) { return t.at(r, name); };
                INFO(chapter << "/" << m.at(c, "file") << ", row " << r + 1 << ": " << m.at(c, "expression") << " where " << m.at(c, "where"));
                try {
                    if (!m.at(c, "where").empty() && !test::expression(m.at(c, "where"), column).run().truth()) continue;
                    ++used;
                    auto const got = test::expression(m.at(c, "expression"), column).run(), want = test::expression(m.at(c, "compare"), column).run();
                    if (got.what == test::value::kind::word || want.what == test::value::kind::word) {
                        CHECK(got.word == want.word);
                    } else {
                        double const tolerance = test::expression(m.at(c, "tolerance"), column).run().real();
                        double const off = std::fabs(got.real() - want.real());
                        CHECK(off <= tolerance * (1 + 1e-12));
                    }
                } catch (const std::exception& x) {
                    FAIL_CHECK(x.what());
                }
            }
            INFO(manifest << ": " << m.at(c, "file") << ": " << m.at(c, "expression"));
            CHECK(used > 0);
            ++checks;
        }
    }
    CHECK(checks > 300);
}

TEST_CASE("answers worked out in public, the right ones and the wrong ones") {
    for (const char* file : {"questions/worked_answers.csv", "questions/published_slips.csv"}) {
        auto const t = test::read_table(file);
        bool const slips = t.columns[3] == "printed";
        for (std::size_t r = 0; r < t.rows.size(); ++r) {
            auto const& path = t.at(r, "model");
            auto const* const e = core::find(path.c_str());
            INFO(t.at(r, "id") << ": " << path);
            REQUIRE(e != nullptr);
            auto const v = test::call_model(path, arguments(*e, t.at(r, "inputs")));
            double const got = v.what == test::value::kind::results ? v.list[0] : v.real();
            double const tolerance = std::stod(t.at(r, "tolerance"));
            CHECK(std::fabs(got - std::stod(t.at(r, slips ? "correct" : "value"))) <= tolerance * (1 + 1e-9));
            if (slips) CHECK(std::fabs(got - std::stod(t.at(r, "printed"))) > tolerance);
        }
    }
}
