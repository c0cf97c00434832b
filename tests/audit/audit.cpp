// The rows of the tests with one number changed; coefficients.py drives it.
//
//   audit trace FILE    writes the results as they are; prints which numbers each row depends on
//   audit change FILE   reads lines "NUMBER ROW,ROW,..." (or "NUMBER all"); prints for each the largest change over tolerance
//                       and the failures, outside and inside. A number that a constant asks for before main has to be in the
//                       environment too (WORTMATH_AUDIT), and then costs a run of its own
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <memory>
#include <set>
#include <sstream>

#include "audit_value.hpp"
#include "expression.hpp"
#include "reference.hpp"

namespace wortmath::audit {

static std::set<int>& asked() {
    static std::set<int> numbers;
    return numbers;
}
void not_before_start() noexcept {}
static int& which() {
    static int number = [] {
        const char* const t = std::getenv("WORTMATH_AUDIT");
        return t ? std::atoi(t) : -1;
    }();
    return number;
}
double at_start(int number, double printed, double changed) noexcept {
    if (which() < 0) asked().insert(number);  // being traced
    return number == which() ? changed : printed;
}

}  // namespace wortmath::audit

namespace {

using test::value;
namespace core = wortmath::core;

// One comparison of the tests: what is computed, what it is compared with, and how close it must be.
struct row {
    bool outside;
    std::string name;
    std::function<void(std::vector<double>&, std::vector<double>&, std::vector<double>&)> run;  // got, wanted, tolerance
};

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> out;
    std::stringstream s(text);
    for (std::string part; std::getline(s, part, at);) out.push_back(part);
    return out;
}

double word_code(const std::string& w) { return static_cast<double>(std::hash<std::string>{}(w) % 1000003u); }

void append(std::vector<double>& to, const value& v) {
    if (v.what == value::kind::word)
        to.push_back(word_code(v.word));
    else if (v.what == value::kind::number)
        to.push_back(v.number);
    else
        to.insert(to.end(), v.list.begin(), v.list.end());
}

value call(const std::string& path, const std::string& inputs) {
    const core::entry* const e = core::find(path.c_str());
    if (!e) throw std::runtime_error("no model " + path);
    std::vector<std::pair<std::string, value>> arguments;
    for (auto const& pair : split(inputs, ';')) {
        std::size_t const at = pair.find('=');
        if (at == std::string::npos) continue;
        std::string const name = pair.substr(0, at), text = pair.substr(at + 1);
        value v;
        for (int i = 0; i < e->arity; ++i) {
            if (name != e->inputs[i].name) continue;
            if (e->inputs[i].what == wortmath::detail::kind::list)
                v.what = value::kind::list, v.list = test::list_of(text);
            else if (e->inputs[i].what == wortmath::detail::kind::word)
                v = value::of(text);
            else if (text != "None" && text != "none")
                v = test::number_or_word(text);
        }
        arguments.emplace_back(name, v);
    }
    arguments.emplace_back("policy", value::of(std::string("extrapolate")));
    return test::call_model(path, arguments);
}

double number(const std::string& text) { return text == "True" ? 1.0 : text == "False" ? 0.0 : std::strtod(text.c_str(), nullptr); }

std::vector<row> all_rows() {
    std::vector<row> rows;
    std::vector<std::filesystem::path> folders;
    for (auto const& f : std::filesystem::directory_iterator(WORTMATH_REFERENCE)) folders.push_back(f.path());
    std::sort(folders.begin(), folders.end());
    for (auto const& folder : folders) {
        std::string const chapter = folder.filename().string();
        if (std::filesystem::exists(folder / "checks.csv")) {
            auto const checks = test::read_table(chapter + "/checks.csv");
            for (std::size_t c = 0; c < checks.rows.size(); ++c) {
                auto const t = std::make_shared<test::table>(test::read_table(chapter + "/" + checks.at(c, "file")));
                std::string const where = checks.at(c, "where"), expression = checks.at(c, "expression"), compare = checks.at(c, "compare"),
                                  tolerance = checks.at(c, "tolerance");
                for (std::size_t r = 0; r < t->rows.size(); ++r) {
                    auto column = [t, r](const std::string& name) { return t->at(r, name); };
                    if (!where.empty() && !test::expression(where, column).run().truth()) continue;
                    rows.push_back({true, chapter + "/" + checks.at(c, "file") + ":" + std::to_string(r + 1) + ": " + expression,
                                    [=](std::vector<double>& got, std::vector<double>& wanted, std::vector<double>& near) {
                                        append(got, test::expression(expression, column).run());
                                        append(wanted, test::expression(compare, column).run());
                                        near.assign(got.size(), test::expression(tolerance, column).run().real() * (1 + 1e-12));
                                    }});
                }
            }
        }
        if (chapter != "points" && chapter != "questions") continue;
        std::vector<std::filesystem::path> files;
        for (auto const& f : std::filesystem::directory_iterator(folder)) files.push_back(f.path());
        std::sort(files.begin(), files.end());
        for (auto const& f : files) {
            if (f.extension() != ".csv") continue;
            std::string const name = chapter + "/" + f.filename().string();
            auto const t = test::read_table(name);
            auto has = [&](const char* column) { return std::find(t.columns.begin(), t.columns.end(), column) != t.columns.end(); };
            bool const points = has("path") && has("result"), worked = has("model") && has("inputs") && has("tolerance") && (has("value") || has("correct"));
            if (!points && !worked) continue;
            for (std::size_t r = 0; r < t.rows.size(); ++r) {
                std::string const path = t.at(r, points ? "path" : "model"), inputs = t.at(r, "inputs");
                std::string const result = t.at(r, points ? "result" : has("value") ? "value" : "correct");
                double const absolute = std::strtod(t.at(r, points ? "abs" : "tolerance").c_str(), nullptr);
                double const relative = points ? std::strtod(t.at(r, "rel").c_str(), nullptr) : 0.0;
                rows.push_back({!points, name + ":" + std::to_string(r + 1) + ": " + path,
                                [=](std::vector<double>& got, std::vector<double>& wanted, std::vector<double>& near) {
                                    value const v = call(path, inputs);
                                    append(got, v);
                                    if (v.what == value::kind::word)
                                        wanted.push_back(word_code(result));
                                    else
                                        for (auto const& part : split(result, '|')) wanted.push_back(number(part));
                                    if (!points) got.resize(1);
                                    for (double w : wanted) near.push_back((absolute + relative * std::fabs(w)) * (1 + 1e-9));
                                }});
            }
        }
    }
    return rows;
}

struct outcome {
    std::vector<double> got, near;
    bool fails = false;
};
outcome run(const row& r) {
    outcome o;
    std::vector<double> wanted;
    try {
        r.run(o.got, wanted, o.near);
    } catch (const std::exception&) {
        o.fails = true;
        return o;
    }
    o.fails = o.got.size() != wanted.size();
    for (std::size_t i = 0; i < o.got.size() && !o.fails; ++i)
        o.fails = !(std::fabs(o.got[i] - wanted[i]) <= o.near[i]) && !(o.got[i] != o.got[i] && wanted[i] != wanted[i]);
    return o;
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 3) return 2;
    auto const rows = all_rows();
    if (std::string(arguments[1]) == "trace") {
        std::ofstream file(arguments[2]);
        file.precision(17);
        std::cout << "fixed";
        for (int n : wortmath::audit::asked()) std::cout << ' ' << n;
        std::cout << '\n';
        for (std::size_t i = 0; i < rows.size(); ++i) {
            wortmath::audit::asked().clear();
            outcome const o = run(rows[i]);
            if (o.fails) std::cout << "fails " << rows[i].name << '\n';
            std::cout << "row " << i;
            for (int n : wortmath::audit::asked()) std::cout << ' ' << n;
            std::cout << '\n';
            file << o.got.size();
            for (double x : o.got) file << ' ' << x;
            file << '\n';
        }
        return 0;
    }
    std::vector<std::vector<double>> before(rows.size());
    std::ifstream file(arguments[2]);
    for (auto& b : before) {
        std::size_t n = 0;
        file >> n;
        for (std::string x; n > 0 && file >> x; --n) b.push_back(std::strtod(x.c_str(), nullptr));
    }
    int changed = 0;
    for (std::string list; std::cin >> changed >> list;) {
        wortmath::audit::which() = changed;
        std::vector<std::size_t> chosen;
        if (list == "all")
            for (std::size_t i = 0; i < rows.size(); ++i) chosen.push_back(i);
        else
            for (auto const& i : split(list, ',')) chosen.push_back(std::strtoul(i.c_str(), nullptr, 10));
        double largest[2]{-1.0, -1.0};
        int failures[2]{};
        for (std::size_t i : chosen) {
            outcome const o = run(rows[i]);
            int const inside = rows[i].outside ? 0 : 1;
            failures[inside] += o.fails ? 1 : 0;
            for (std::size_t k = 0; k < o.got.size() && k < before[i].size(); ++k) {
                double const moved = std::fabs(o.got[k] - before[i][k]), share = moved == 0.0 ? 0.0 : o.near[k] > 0.0 ? moved / o.near[k] : 1e9;
                if (share > largest[inside] && share == share) largest[inside] = share;
            }
        }
        std::printf("%d %.3g %.3g %d %d\n", changed, largest[0], largest[1], failures[0], failures[1]);
    }
    return 0;
}
