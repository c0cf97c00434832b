// One recording, several languages. Terms that are alike become sums, steps used more than once get names, and each
// style says how an operation is spelled; nothing here knows a model.
#include "print.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>
#include <set>

#include "wortmath/record.hpp"

namespace wortmath::core {

namespace {

using nodes = std::vector<int>;

// ---- the recording, folded ------------------------------------------------------------------------------------------

struct graph {
    std::vector<recorded_step> steps;
    nodes results;
    const recorded_step& operator[](int n) const { return steps[static_cast<std::size_t>(n)]; }
    int size() const { return static_cast<int>(steps.size()); }
    bool is_number(int n) const { return (*this)[n].what == step::number; }
    bool is_undefined(int n) const { return is_number(n) && (*this)[n].value != (*this)[n].value; }
};

// Copies what the results need. Left-to-right sums of terms that differ only in constants, or in the element of a
// list, become one step: the order of the additions stays.
class folder {
public:
    folder(const recording& from, const nodes& results, int elements) : from_(from), elements_(elements), copied_(from.nodes.size(), -1) {
        for (int r : results) out_.results.push_back(copy(r));
        keep_what_is_used();
    }
    graph take() { return std::move(out_); }

private:
    const recording& from_;
    int const elements_;
    recording into_;
    graph out_;
    nodes copied_;
    int loops_ = 0;
    bool meets_list_ = false, meets_item_ = false;
    int first_position_ = 0, last_position_ = 0, list_ = -1;

    static constexpr std::size_t fewest_alike = 6;

    const recorded_step& old(int n) const { return from_.nodes[static_cast<std::size_t>(n)]; }

    // Attempts at a sum that failed have left steps behind.
    void keep_what_is_used() {
        nodes kept(into_.nodes.size(), -1);
        for (int r : out_.results) kept[static_cast<std::size_t>(r)] = 0;
        for (std::size_t i = kept.size(); i-- > 0;)
            if (kept[i] >= 0)
                for (int o : into_.nodes[i].of) kept[static_cast<std::size_t>(o)] = 0;
        for (std::size_t i = 0; i < kept.size(); ++i) {
            if (kept[i] < 0) continue;
            recorded_step s = std::move(into_.nodes[i]);
            for (int& o : s.of) o = kept[static_cast<std::size_t>(o)];
            kept[i] = out_.size();
            out_.steps.push_back(std::move(s));
        }
        for (int& r : out_.results) r = kept[static_cast<std::size_t>(r)];
    }

    int copy(int n) {
        int& done = copied_[static_cast<std::size_t>(n)];
        if (done >= 0) return done;
        int made = old(n).what == step::plus ? sum(n) : -1;
        if (made < 0) {
            recorded_step s = old(n);
            for (int& o : s.of) o = copy(o);
            if (s.what == step::variable) {
                into_.nodes.push_back(s);
                made = static_cast<int>(into_.nodes.size()) - 1;
            } else {
                made = into_.add(std::move(s));
            }
        }
        return copied_[static_cast<std::size_t>(n)] = made;
    }

    int sum(int n) {
        nodes terms;
        for (; old(n).what == step::plus; n = old(n).of[0]) terms.push_back(old(n).of[1]);
        terms.push_back(n);
        std::reverse(terms.begin(), terms.end());
        for (std::size_t start = 0; start + 2 <= terms.size() && start < 3; ++start) {
            nodes const alike(terms.begin() + static_cast<std::ptrdiff_t>(start), terms.end());
            meets_list_ = meets_item_ = false;
            first_position_ = elements_, last_position_ = -1, list_ = -1;
            int const loop = loops_++;
            find_lists(alike[0]);
            int const body = like(alike, loop);
            if (body < 0 || !(meets_list_ || (meets_item_ && alike.size() >= fewest_alike))) continue;
            int const base = start == 0 ? into_.add({.what = step::number, .value = 0.0}) : prefix(terms, start);
            int const count = static_cast<int>(alike.size());
            recorded_step s{.what = step::sum, .index = loop, .count = count, .of = {base, body}};
            s.xs = {meets_list_ ? double(list_) : -1.0, double(first_position_), double(elements_ - first_position_ - count)};
            if (!meets_list_) s.xs = {-1.0, 0.0, 0.0};
            return into_.add(std::move(s));
        }
        return -1;
    }
    // The sum of the terms before the run of terms that are alike.
    int prefix(const nodes& terms, std::size_t count) {
        int at = copy(terms[0]);
        for (std::size_t i = 1; i < count; ++i) at = into_.add({.what = step::plus, .of = {at, copy(terms[i])}});
        return at;
    }
    // The first position of a list that the first term uses: there its loop begins.
    void find_lists(int n) {
        if (old(n).what == step::element) first_position_ = std::min(first_position_, old(n).count);
        for (int o : old(n).of) find_lists(o);
    }

    // One step that stands for all of these in turn, or -1.
    int like(const nodes& all, int loop) {
        recorded_step const& first = old(all[0]);
        if (std::all_of(all.begin(), all.end(), [&](int n) { return n == all[0]; })) return first.what == step::element ? -1 : copy(all[0]);
        if (first.what == step::number && every(all, step::number)) {
            recorded_step s{.what = step::item, .index = loop, .of = {}};
            for (int n : all) s.ys.push_back(old(n).value);
            meets_item_ = true;
            return into_.add(std::move(s));
        }
        if (first.what == step::element && every(all, step::element)) {
            for (std::size_t i = 0; i < all.size(); ++i)
                if (old(all[i]).index != first.index || old(all[i]).count != first.count + static_cast<int>(i)) return -1;
            meets_list_ = true;
            if (list_ < 0) list_ = first.index;
            return into_.add({.what = step::member, .value = double(first.count - first_position_), .index = loop, .count = first.index});
        }
        bool grows = true;
        for (std::size_t i = 1; i < all.size(); ++i) grows = grows && old(all[i]).what == step::plus && old(all[i]).of[0] == all[i - 1];
        if (grows) {
            nodes added;
            for (std::size_t i = 1; i < all.size(); ++i) added.push_back(old(all[i]).of[1]);
            int const body = like(added, loop);
            if (body < 0 || into_.nodes[static_cast<std::size_t>(body)].what == step::item) return -1;
            return into_.add({.what = step::running, .index = loop, .of = {copy(all[0]), body}});
        }
        for (int n : all) {
            recorded_step const& s = old(n);
            if (s.what != first.what || s.index != first.index || s.count != first.count || std::strcmp(s.name, first.name) != 0 || s.of.size() != first.of.size() ||
                s.xs != first.xs || s.ys != first.ys || s.what == step::variable || s.what == step::root || s.what == step::bracketed || s.of.empty())
                return -1;
        }
        recorded_step s = first;
        for (std::size_t k = 0; k < s.of.size(); ++k) {
            nodes operand;
            for (int n : all) operand.push_back(old(n).of[k]);
            if ((s.of[k] = like(operand, loop)) < 0) return -1;
        }
        return into_.add(std::move(s));
    }
    bool every(const nodes& all, step what) const {
        return std::all_of(all.begin(), all.end(), [&](int n) { return old(n).what == what; });
    }
};

// Spreadsheets have no loops: iterations are written out, one row for each step.
graph written_out(const graph& g) {
    recording into;
    graph out;
    auto copy = [&](auto& self, int n, std::map<int, int>& known) -> int {
        if (auto const at = known.find(n); at != known.end()) return at->second;
        recorded_step s = g[n];
        int made;
        if (s.what == step::root) {
            int x = self(self, s.of[0], known);
            for (int i = 0; i < s.count; ++i) {
                if (into.nodes.size() > 6000) throw not_printable{"the iteration is too long for a spreadsheet"};
                std::map<int, int> inside = known;
                inside[s.of[1]] = x;
                int const f = self(self, s.of[2], inside), d = self(self, s.of[3], inside);
                int const change = into.add({.what = step::over, .of = {f, d}});
                x = into.add({.what = step::minus, .of = {x, change}});
                x = into.add({.what = step::named, .name = "x", .of = {x}});
            }
            made = x;
        } else if (s.what == step::bracketed) {
            throw not_printable{"the root is found between two bounds by an iteration that is too long for a spreadsheet"};
        } else {
            for (int& o : s.of) o = self(self, o, known);
            made = into.add(std::move(s));
        }
        return known[n] = made;
    };
    std::map<int, int> known;
    for (int r : g.results) out.results.push_back(copy(copy, r, known));
    out.steps = std::move(into.nodes);
    return out;
}

// ---- numbers and names ----------------------------------------------------------------------------------------------

std::string shortest(double x) {
    char text[40];
    auto const end = std::to_chars(text, text + sizeof text, x).ptr;
    return {text, end};
}

// As in most programming languages: 4.0, 1e-05.
std::string literal(double x, style how) {
    if (x != x) return how == style::python ? "math.nan" : how == style::mpmath ? "mp.nan" : how == style::c ? "NAN" : how == style::javascript ? "NaN" : "NA()";
    if (std::isinf(x)) {
        std::string const sign = x < 0 ? "-" : "";
        return sign + (how == style::python ? "math.inf" : how == style::mpmath ? "mp.inf" : how == style::c ? "INFINITY" : how == style::javascript ? "Infinity" : "9.99E307");
    }
    std::string s = shortest(x);
    if (how == style::openformula) {
        std::replace(s.begin(), s.end(), 'e', 'E');
        return s;
    }
    if (s.find_first_of(".e") == std::string::npos) s += ".0";
    return how == style::mpmath ? "k(" + s + ")" : s;
}

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Names of steps as identifiers; every name once.
class namer {
public:
    explicit namer(style how) : how_(how) {
        if (how == style::python || how == style::mpmath) {
            for (const char* w : {"and", "as", "assert", "class", "def", "del", "elif", "else", "except", "for", "from", "global", "if", "import", "in", "is", "lambda",
                                  "not", "or", "pass", "raise", "return", "try", "while", "with", "yield", "math", "mp", "abs", "min", "max", "len", "range", "k", "float",
                                  "int", "bool"})
                used_.insert(w);
        } else if (how == style::c) {
            for (const char* w : {"auto", "break", "case", "char", "const", "continue", "default", "do", "double", "else", "enum", "extern", "float", "for", "if", "int", "long",
                                  "register", "return", "short", "signed", "static", "struct", "switch", "union", "unsigned", "void", "volatile", "while", "exp", "log", "pow",
                                  "sqrt", "fabs", "floor", "NAN", "INFINITY", "n", "I"})
                used_.insert(w);
        } else if (how == style::javascript) {
            for (const char* w : {"await", "break", "case", "class", "const", "continue", "default", "delete", "do", "else", "export", "false", "for", "function", "if",
                                  "import", "in", "let", "new", "null", "return", "static", "switch", "this", "throw", "true", "try", "typeof", "undefined", "var", "void",
                                  "while", "with", "yield", "Math", "NaN", "Infinity"})
                used_.insert(w);
        }
    }
    std::string fresh(const std::string& wish) {
        std::string id;
        for (char c : wish) {
            if (c == '\'') id += "_prime";
            else if (c == '/') id += "_over_";
            else id += is_letter(c) || is_digit(c) ? c : '_';
        }
        if (how_ == style::openformula && looks_like_a_cell(id)) id += "_";
        std::string unique = id;
        for (int i = 2; !used_.insert(folded(unique)).second; ++i) unique = id + "_" + std::to_string(i);
        return unique;
    }

private:
    style how_;
    std::set<std::string> used_;

    // Spreadsheets do not tell capitals apart.
    std::string folded(std::string s) const {
        if (how_ == style::openformula)
            for (char& c : s) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        return s;
    }
    static bool looks_like_a_cell(const std::string& s) {
        std::size_t letters = 0;
        while (letters < s.size() && is_letter(s[letters])) ++letters;
        std::size_t digits = letters;
        while (digits < s.size() && is_digit(s[digits])) ++digits;
        bool const row_or_column = s == "R" || s == "r" || s == "C" || s == "c";
        return row_or_column || (letters >= 1 && letters <= 3 && digits > letters && digits == s.size());
    }
};

std::string under_scored(const char* path) {
    std::string s = path;
    std::replace(s.begin(), s.end(), '.', '_');
    return s;
}

std::string limit_text(double x) {
    char text[40];
    std::snprintf(text, sizeof text, "%.9g", std::fabs(x) < 1e-300 ? 0.0 : x);
    return text;
}
// An open end is the nearest number beyond the limit.
std::string range_text(const limits& r) {
    std::string const lo = limit_text(r.valid_lo), hi = limit_text(r.valid_hi);
    bool const open_lo = r.valid_lo > std::strtod(lo.c_str(), nullptr), open_hi = r.valid_hi < std::strtod(hi.c_str(), nullptr);
    bool const endless_lo = r.valid_lo < -1e300, endless_hi = r.valid_hi > 1e300;
    if (endless_lo && endless_hi) return "any";
    if (endless_hi) return open_lo ? "above " + lo : lo + " or more";
    if (endless_lo) return open_hi ? "below " + hi : hi + " at most";
    return (open_lo ? "above " : "") + lo + " to " + (open_hi ? "below " : "") + hi;
}

// ---- what all languages share: blocks, and where a step stands -------------------------------------------------------

bool is_leaf(step s) {
    return s == step::number || s == step::input || s == step::element || s == step::variable || s == step::item || s == step::member || s == step::running;
}
bool is_condition(step s) { return s >= step::less && s <= step::opposite; }
bool is_loop(step s) { return s == step::root || s == step::bracketed || s == step::sum; }

struct text {
    std::string s;
    int strength;  // of the operator that stands in it alone
};
enum strength { any = 0, ternary = 1, or_ = 2, and_ = 3, not_ = 4, comparison = 5, additive = 6, multiplicative = 7, prefix = 8, postfix = 9, atom = 10 };

std::string at_least(const text& t, int needed) { return t.strength >= needed ? t.s : "(" + t.s + ")"; }

// Python, C and JavaScript: statements in blocks.
class coder {
public:
    coder(const graph& g, style how, std::vector<std::string> inputs, namer& names) : g_(g), how_(how), inputs_(std::move(inputs)), names_(names) { arrange(); }

    // The statements before the results, and the results as expressions.
    std::string body(int indent) {
        indent_ = top_ = indent;
        block(0);
        return tables_ + out_;
    }
    std::string result(std::size_t i) { return expression(g_.results[i]).s; }

private:
    struct place {
        int parent, loop;
    };
    const graph& g_;
    style const how_;
    std::vector<std::string> inputs_;
    namer& names_;
    std::vector<int> block_of_, uses_;
    std::vector<char> is_temporary_;
    std::vector<int> inner_[2];  // the blocks that a choice or a loop owns
    std::vector<place> blocks_;
    std::vector<std::string> name_;
    std::map<int, int> sum_of_loop_;
    std::string out_;
    int indent_ = 0;

    bool python() const { return how_ == style::python || how_ == style::mpmath; }

    int common(int a, int b) const {
        if (a < 0) return b;
        while (a != b) (a > b ? a : b) = blocks_[static_cast<std::size_t>(a > b ? a : b)].parent;
        return a;
    }
    int new_block(int parent, int loop) {
        blocks_.push_back({parent, loop});
        return static_cast<int>(blocks_.size()) - 1;
    }
    std::size_t u(int n) const { return static_cast<std::size_t>(n); }

    // How often the operand k of a step is written where the step is written.
    int written(const recorded_step& s, std::size_t k) const {
        switch (s.what) {
            case step::square: return 2;
            case step::cube: return 3;
            case step::poly: return k == 0 ? static_cast<int>(s.of.size()) - 1 : 1;
            case step::least:
            case step::most: return how_ == style::c ? 3 : 1;
            case step::lines:
            case step::stairs: return 3;
            default: return 1;
        }
    }

    // Each step stands in the innermost block that holds all its uses, so that a branch computes only what it needs, and
    // before the loops that do not change it.
    void arrange() {
        std::size_t const n = g_.steps.size();
        block_of_.assign(n, -1), uses_.assign(n, 0), is_temporary_.assign(n, 0), name_.assign(n, "");
        inner_[0].assign(n, -1), inner_[1].assign(n, -1);
        for (int i = 0; i < g_.size(); ++i)
            if (g_[i].what == step::sum) sum_of_loop_[g_[i].index] = i;
        std::vector<std::set<int>> moves(n);  // the loops that change a step, by their variable or sum
        for (int i = 0; i < g_.size(); ++i) {
            recorded_step const& s = g_[i];
            auto& m = moves[u(i)];
            for (int o : s.of) m.insert(moves[u(o)].begin(), moves[u(o)].end());
            if (s.what == step::item || s.what == step::member || s.what == step::running) m.insert(sum_of_loop_.at(s.index));
            if (s.what == step::variable) m.insert(i);
            if (is_loop(s.what)) m.erase(key_of(i));
        }
        new_block(-1, -1);
        for (int r : g_.results) block_of_[u(r)] = 0, ++uses_[u(r)];
        for (int i = g_.size(); i-- > 0;) {
            int& here = block_of_[u(i)];
            if (here < 0) continue;
            recorded_step const& s = g_[i];
            if (!is_leaf(s.what)) {
                for (int loop; (loop = blocks_[u(here)].loop) >= 0 && !moves[u(i)].count(key_of(loop)); is_temporary_[u(i)] = 1) here = blocks_[u(here)].parent;
            }
            if (s.what == step::choice) inner_[0][u(i)] = new_block(here, -1), inner_[1][u(i)] = new_block(here, -1);
            else if (is_loop(s.what)) inner_[0][u(i)] = new_block(here, i);
            for (std::size_t k = 0; k < s.of.size(); ++k) {
                int where = here;
                if (s.what == step::choice && k > 0) where = inner_[k - 1][u(i)];
                else if (is_loop(s.what) && k >= (s.what == step::bracketed ? 2u : 1u)) where = inner_[0][u(i)];
                else if (s.what == step::running) where = k == 0 ? block_of_[u(sum_of_loop_.at(s.index))] : inner_[0][u(sum_of_loop_.at(s.index))];
                if (s.what == step::bracketed && k == 4) continue;  // halving needs no slope
                block_of_[u(s.of[k])] = common(block_of_[u(s.of[k])], where);
                uses_[u(s.of[k])] += written(s, k);
            }
        }
        for (int i = 0; i < g_.size(); ++i) {
            if (block_of_[u(i)] < 0) continue;
            recorded_step const& s = g_[i];
            if (is_leaf(s.what)) continue;
            bool holds = is_temporary_[u(i)] || uses_[u(i)] > 1 || is_loop(s.what) || s.what == step::lines || s.what == step::stairs;
            if (s.what == step::named) {
                holds = holds || !is_leaf(g_[s.of[0]].what);
                if (holds) wished_[s.of[0]] = s.name;
            }
            if (s.what == step::choice) holds = holds || filled(inner_[0][u(i)]) || filled(inner_[1][u(i)]);
            is_temporary_[u(i)] = holds;
        }
    }
    int key_of(int loop) const {
        recorded_step const& l = g_[loop];
        return l.what == step::sum ? loop : l.of[l.what == step::root ? 1 : 2];
    }
    std::map<int, const char*> wished_;
    bool filled(int block) const {
        for (std::size_t i = 0; i < block_of_.size(); ++i)
            if (is_temporary_[i] && block_of_[i] == block) return true;
        return false;
    }

    void line(const std::string& s) { out_ += std::string(static_cast<std::size_t>(indent_) * 4, ' ') + s + "\n"; }
    std::string end() const { return python() ? "" : ";"; }
    std::string fresh_for(int i) {
        auto const wish = wished_.find(i);
        return names_.fresh(g_[i].what == step::named ? g_[i].name : wish != wished_.end() ? wish->second : g_[i].what == step::sum ? "total" : is_condition(g_[i].what) ? "so" : "u");
    }
    std::string declared(int i, const std::string& name) const {
        if (python()) return name;
        if (how_ == style::javascript) return "const " + name;
        return (is_condition(g_[i].what) ? "const int " : "const double ") + name;
    }
    std::string variable_declared(const std::string& name) const { return python() ? name : how_ == style::javascript ? "let " + name : "double " + name; }
    std::string count_loop(const std::string& i, const std::string& from, const std::string& to) const {
        if (python()) return "for " + i + " in range(" + (from == "0" ? "" : from + ", ") + to + "):";
        std::string const type = how_ == style::c ? "int " : "let ";
        return "for (" + type + i + " = " + from + "; " + i + " < " + to + "; ++" + i + ") {";
    }
    void close() {
        if (!python()) line("}");
    }
    std::string list_of(const std::vector<double>& v) const {
        std::string s;
        for (double x : v) s += (s.empty() ? "" : ", ") + literal(x, how_);
        return how_ == style::c ? "{" + s + "}" : "[" + s + "]";
    }
    // Tables stand before everything else; one for the same numbers.
    std::string table(const char* wish, const std::vector<double>& v) {
        std::string& name = table_names_[v];
        if (!name.empty()) return name;
        name = names_.fresh(wish);
        tables_ += std::string(static_cast<std::size_t>(top_) * 4, ' ') + (how_ == style::c ? "static const double " + name + "[]" : how_ == style::javascript ? "const " + name : name) +
                   " = " + list_of(v) + end() + "\n";
        return name;
    }
    std::map<std::vector<double>, std::string> table_names_;
    std::string tables_;
    int top_ = 0;

    void block(int b) {
        for (int i = 0; i < g_.size(); ++i)
            if (is_temporary_[u(i)] && block_of_[u(i)] == b) statement(i);
    }

    void statement(int i) {
        recorded_step const& s = g_[i];
        switch (s.what) {
            case step::named: {
                // The operand may have taken the name already.
                int const o = s.of[0];
                if (is_temporary_[u(o)]) {
                    name_[u(i)] = name_[u(o)];
                    return;
                }
                std::string const e = expression(o).s;
                name_[u(i)] = fresh_for(i);
                line(declared(i, name_[u(i)]) + " = " + e + end());
                return;
            }
            case step::choice: choice(i); return;
            case step::root:
            case step::bracketed: iteration(i, s); return;
            case step::sum: loop(i, s); return;
            case step::lines:
            case step::stairs: look_up(i, s); return;
            default: {
                std::string const e = expression(i, true).s;
                name_[u(i)] = fresh_for(i);
                line(declared(i, name_[u(i)]) + " = " + e + end());
            }
        }
    }

    void choice(int i) {
        if (!filled(inner_[0][u(i)]) && !filled(inner_[1][u(i)])) {
            std::string const e = expression(i, true).s;
            name_[u(i)] = fresh_for(i);
            line(declared(i, name_[u(i)]) + " = " + e + end());
            return;
        }
        name_[u(i)] = fresh_for(i);
        if (!python()) line(variable_declared(name_[u(i)]) + ";");
        decide(i, name_[u(i)]);
    }
    void decide(int i, const std::string& name) {
        recorded_step const& s = g_[i];
        std::string const condition = expression(s.of[0]).s;
        line(python() ? "if " + condition + ":" : "if (" + condition + ") {");
        branch(inner_[0][u(i)], s.of[1], name);
        line(python() ? "else:" : "} else {");
        branch(inner_[1][u(i)], s.of[2], name);
        close();
    }
    void branch(int b, int value, const std::string& name) {
        ++indent_;
        // A choice that is the whole branch goes on with the same name.
        bool const goes_on = g_[value].what == step::choice && block_of_[u(value)] == b && uses_[u(value)] == 1 && is_temporary_[u(value)];
        if (goes_on) is_temporary_[u(value)] = 0;
        block(b);
        if (goes_on) decide(value, name);
        else line(name + " = " + expression(value).s + end());
        --indent_;
    }

    void iteration(int i, const recorded_step& s) {
        bool const between = s.what == step::bracketed;
        int const v = s.of[between ? 2 : 1], residual = s.of[between ? 3 : 2], slope = s.of[between ? 4 : 3];
        auto const wish = wished_.find(i);
        std::string const x = name_[u(i)] = name_[u(v)] = names_.fresh(wish != wished_.end() ? wish->second : "x");
        if (between) {
            // Halving, then one step of Newton's method.
            std::string const lo = names_.fresh("low"), hi = names_.fresh("high"), rising = names_.fresh("rising");
            line(variable_declared(lo) + " = " + expression(s.of[0]).s + end());
            line(variable_declared(hi) + " = " + expression(s.of[1]).s + end());
            line(variable_declared(x) + " = " + hi + end());
            line(variable_declared(rising) + " = " + (python() ? "None" : "0.0") + end());
            std::string const turn = names_.fresh("turn");
            line(count_loop(turn, "0", how_ == style::mpmath ? "200" : std::to_string(s.count + 1)));
            ++indent_;
            block(inner_[0][u(i)]);
            std::string const f = names_.fresh("balance");
            line((python() ? f : (how_ == style::c ? "const double " : "const ") + f) + " = " + expression(residual).s + end());
            if (python()) {
                line("if " + rising + " is None:");
                line("    " + rising + " = " + f + " > 0.0");
                line("elif (" + f + " > 0.0) == " + rising + ":");
            } else {
                line("if (" + turn + " == 0) {");
                line("    " + rising + " = " + f + " > 0.0 ? 1.0 : -1.0;");
                line("} else if (" + rising + " * " + f + " > 0.0) {");
            }
            line("    " + hi + " = " + x + end());
            line(python() ? "else:" : "} else {");
            line("    " + lo + " = " + x + end());
            close();
            line(x + " = 0.5 * (" + lo + " + " + hi + ")" + end());
            --indent_;
            close();
            return;
        }
        line(variable_declared(x) + " = " + expression(s.of[0]).s + end());
        line(count_loop(names_.fresh("turn"), "0", how_ == style::mpmath ? "200" : std::to_string(s.count)));
        ++indent_;
        block(inner_[0][u(i)]);
        if (how_ == style::mpmath) {
            std::string const change = names_.fresh("change");
            line(change + " = " + at_least(expression(residual), multiplicative) + " / " + at_least(expression(slope), prefix));
            line(x + " = " + x + " - " + change);
            line("if abs(" + change + ") < mp.mpf(10) ** (4 - mp.mp.dps):");
            line("    break");
        } else {
            line(x + " = " + x + " - " + at_least(expression(residual), multiplicative) + " / " + at_least(expression(slope), prefix) + end());
        }
        --indent_;
        close();
    }

    void loop(int i, const recorded_step& s) {
        if (depth_ == index_names_.size()) index_names_.push_back(names_.fresh(depth_ ? "j" : "i"));
        std::string const index = loop_index_[s.index] = index_names_[depth_];
        std::vector<int> running;
        for (int k = 0; k < i; ++k) {
            if (block_of_[u(k)] < 0) continue;
            if (g_[k].what == step::item && g_[k].index == s.index) name_[u(k)] = table("table", g_[k].ys);
            if (g_[k].what == step::running && g_[k].index == s.index) running.push_back(k);
        }
        for (int k : running) {
            name_[u(k)] = names_.fresh("so_far");
            line(variable_declared(name_[u(k)]) + " = " + expression(g_[k].of[0]).s + end());
        }
        std::string const first = expression(s.of[0]).s;
        std::string const total = name_[u(i)] = fresh_for(i);
        line(variable_declared(total) + " = " + first + end());
        int const list = static_cast<int>(s.xs[0]), from = static_cast<int>(s.xs[1]), rest = static_cast<int>(s.xs[2]);
        std::string const size = list < 0 ? std::to_string(s.count)
                                          : (python() ? "len(" + inputs_[u(list)] + ")" : how_ == style::c ? "n" : inputs_[u(list)] + ".length") +
                                                (rest ? " - " + std::to_string(rest) : "");
        line(count_loop(index, std::to_string(from), size));
        ++indent_, ++depth_;
        block(inner_[0][u(i)]);
        line(total + " = " + total + " + " + at_least(expression(s.of[1]), multiplicative) + end());
        for (int k : running) line(name_[u(k)] + " = " + name_[u(k)] + " + " + at_least(expression(g_[k].of[1]), multiplicative) + end());
        --indent_, --depth_;
        close();
    }
    std::map<int, std::string> loop_index_;
    std::vector<std::string> index_names_;
    std::size_t depth_ = 0;

    void look_up(int i, const recorded_step& s) {
        std::string const x = expression(s.of[0]).s;
        std::string const xs = table("xs", s.xs), ys = table("ys", s.ys), row = names_.fresh("row");
        if (depth_ == index_names_.size()) index_names_.push_back(names_.fresh(depth_ ? "j" : "i"));
        std::string const index = index_names_[depth_];
        bool const lines = s.what == step::lines;
        line((python() ? row : how_ == style::c ? "int " + row : "let " + row) + " = 0" + end());
        line(count_loop(index, "1", std::to_string(s.xs.size() - (lines ? 1 : 0))));
        ++indent_;
        std::string const condition = x + (lines ? " > " : " >= ") + xs + "[" + index + "]";
        if (python()) {
            line("if " + condition + ":");
            line("    " + row + " = " + index);
        } else {
            line("if (" + condition + ") " + row + " = " + index + ";");
        }
        --indent_;
        close();
        std::string const here = "[" + row + "]", next = "[" + row + " + 1]";
        std::string const e = lines ? ys + here + " + (" + x + " - " + xs + here + ") * ((" + ys + next + " - " + ys + here + ") / (" + xs + next + " - " + xs + here + "))" : ys + here;
        name_[u(i)] = fresh_for(i);
        line(declared(i, name_[u(i)]) + " = " + e + end());
    }

    std::string call(const char* f, const std::string& arguments) const {
        std::string const name = f;
        if (how_ == style::c) return name + "(" + arguments + ")";
        if (how_ == style::javascript) return "Math." + std::string(name == "fabs" ? "abs" : name) + "(" + arguments + ")";
        std::string const module = how_ == style::mpmath ? "mp." : "math.";
        if (how_ == style::mpmath && name == "pow") return "mp.power(" + arguments + ")";
        if (name == "floor") return how_ == style::mpmath ? "mp.floor(" + arguments + ")" : "float(math.floor(" + arguments + "))";
        return module + name + "(" + arguments + ")";
    }

    text binary(const recorded_step& s, const char* op, int own, int right) {
        return {at_least(expression(s.of[0]), own) + op + at_least(expression(s.of[1]), right), own};
    }

    text expression(int i, bool itself = false) {
        recorded_step const& s = g_[i];
        if (!name_[u(i)].empty() && !itself && (is_temporary_[u(i)] || s.what == step::variable || s.what == step::running)) return {name_[u(i)], atom};
        switch (s.what) {
            case step::number: return {literal(s.value, how_), s.value < 0.0 ? prefix : atom};
            case step::input: return {inputs_[u(s.index)], atom};
            case step::element: return {inputs_[u(s.index)] + "[" + std::to_string(s.count) + "]", atom};
            case step::item: return {name_[u(i)] + "[" + loop_index_[s.index] + "]", atom};
            case step::member: {
                int const shift = static_cast<int>(s.value);
                return {inputs_[u(s.count)] + "[" + loop_index_[s.index] + (shift ? " + " + std::to_string(shift) : "") + "]", atom};
            }
            case step::negative: return {"-" + at_least(expression(s.of[0]), prefix + 1), prefix};
            case step::plus: {
                recorded_step const& right = g_[s.of[1]];
                if (right.what == step::number && right.value < 0.0)
                    return {at_least(expression(s.of[0]), additive) + " - " + literal(-right.value, how_), additive};
                return binary(s, " + ", additive, multiplicative);
            }
            case step::minus: return binary(s, " - ", additive, multiplicative);
            case step::times: return binary(s, " * ", multiplicative, prefix);
            case step::over: return binary(s, " / ", multiplicative, prefix);
            case step::less: return binary(s, " < ", comparison, additive);
            case step::less_equal: return binary(s, " <= ", comparison, additive);
            case step::greater: return binary(s, " > ", comparison, additive);
            case step::greater_equal: return binary(s, " >= ", comparison, additive);
            case step::equal: return binary(s, how_ == style::javascript ? " === " : " == ", comparison, additive);
            case step::not_equal: return binary(s, how_ == style::javascript ? " !== " : " != ", comparison, additive);
            case step::both: return binary(s, python() ? " and " : " && ", and_, and_ + 1);
            case step::either: return binary(s, python() ? " or " : " || ", or_, or_ + 2);
            case step::opposite: return {python() ? "not " + at_least(expression(s.of[0]), not_) : "!" + at_least(expression(s.of[0]), atom), python() ? not_ : prefix};
            case step::choice: {
                std::string const condition = at_least(expression(s.of[0]), ternary + 1), yes = at_least(expression(s.of[1]), ternary + 1), no = expression(s.of[2]).s;
                return {python() ? yes + " if " + condition + " else " + no : condition + " ? " + yes + " : " + no, ternary};
            }
            case step::function: {
                if (how_ == style::python && std::strcmp(s.name, "cbrt") == 0) {
                    std::string const x = expression(s.of[0]).s;
                    return {"math.copysign(abs(" + x + ") ** (1.0 / 3.0), " + x + ")", atom};
                }
                if (how_ == style::mpmath && std::strcmp(s.name, "fabs") == 0) return {"abs(" + expression(s.of[0]).s + ")", atom};
                std::string arguments;
                for (int o : s.of) arguments += (arguments.empty() ? "" : ", ") + expression(o).s;
                return {call(s.name, arguments), atom};
            }
            case step::power: return {call("pow", expression(s.of[0]).s + ", " + expression(s.of[1]).s), atom};
            case step::square: {
                std::string const x = at_least(expression(s.of[0]), prefix);
                return {x + " * " + x, multiplicative};
            }
            case step::cube: {
                std::string const x = at_least(expression(s.of[0]), prefix);
                return {x + " * " + x + " * " + x, multiplicative};
            }
            case step::poly: {
                std::string const x = at_least(expression(s.of[0]), prefix);
                text t = expression(s.of.back());
                for (std::size_t k = s.of.size() - 1; k-- > 1;) t = {expression(s.of[k]).s + " + " + x + " * " + at_least(t, prefix), additive};
                return t;
            }
            case step::least:
            case step::most: {
                std::string const a = at_least(expression(s.of[0]), additive), b = at_least(expression(s.of[1]), additive);
                bool const low = s.what == step::least;
                if (how_ == style::c) return {a + (low ? " < " : " > ") + b + " ? " + a + " : " + a + " == " + a + " ? " + b + " : " + a, ternary};
                return {std::string(how_ == style::javascript ? "Math." : "") + (low ? "min(" : "max(") + a + ", " + b + ")", atom};
            }
            case step::named: return expression(s.of[0]);
            default: throw not_printable{"a step has no form in this language"};
        }
    }
};

// Spreadsheets: one row for each named step, "name<TAB>=formula".
class sheet {
public:
    sheet(std::vector<std::string> inputs, namer& names) : inputs_(std::move(inputs)), names_(names) {}

    std::string result(const graph& g, int node) {
        g_ = &g;
        known_.clear();
        uses_.assign(g.steps.size(), 0);
        std::set<int> seen;
        count(node, seen);
        moves_.assign(g.steps.size(), 0);
        for (int i = 0; i < g.size(); ++i) {
            recorded_step const& s = g[i];
            moves_[static_cast<std::size_t>(i)] = s.what == step::item || s.what == step::member || s.what == step::running;
            for (int o : s.of)
                if (s.what != step::sum) moves_[static_cast<std::size_t>(i)] |= moves_[static_cast<std::size_t>(o)];
        }
        return expression(node).s;
    }
    std::string row(const std::string& wish, const std::string& formula) {
        auto const at = rows_.find(formula);
        if (at != rows_.end()) return at->second;
        std::string const name = names_.fresh(wish);
        text_ += name + "\t=" + formula + "\n";
        if (++count_ > 400) throw not_printable{"it takes more than 400 rows of a spreadsheet"};
        return rows_[formula] = name;
    }
    std::string take() { return std::move(text_); }

private:
    const graph* g_ = nullptr;
    std::vector<std::string> inputs_;
    namer& names_;
    std::vector<int> uses_;
    std::map<int, std::string> known_;
    std::map<std::string, std::string> rows_;
    std::string text_;
    int count_ = 0;
    bool in_sum_ = false;
    std::vector<char> moves_;  // does a step change within a sum?

    void count(int n, std::set<int>& seen) {
        if (!seen.insert(n).second) return;
        recorded_step const& s = (*g_)[n];
        for (std::size_t k = 0; k < s.of.size(); ++k) {
            uses_[static_cast<std::size_t>(s.of[k])] += s.what == step::square || s.what == step::cube || s.what == step::lines || (s.what == step::poly && k == 0) ? 2 : 1;
            if (s.what == step::function && (std::strcmp(s.name, "expm1") == 0 || std::strcmp(s.name, "log1p") == 0)) ++uses_[static_cast<std::size_t>(s.of[k])];
            count(s.of[k], seen);
        }
    }

    static std::string array(const std::vector<double>& v, std::size_t n) {
        std::string s;
        for (std::size_t i = 0; i < n; ++i) s += (i ? "|" : "") + literal(v[i], style::openformula);
        return "{" + s + "}";
    }
    std::string joined(const recorded_step& s) {
        std::string a;
        for (int o : s.of) a += (a.empty() ? "" : ";") + expression(o).s;
        return a;
    }
    text binary(const recorded_step& s, const char* op, int own, int right) { return {at_least(expression(s.of[0]), own) + op + at_least(expression(s.of[1]), right), own}; }

    text expression(int n) {
        recorded_step const& s = (*g_)[n];
        if (is_leaf(s.what)) return leaf(n, s);
        if (auto const at = known_.find(n); at != known_.end()) return {at->second, atom};
        text t = spelled_out(s);
        if (!in_sum_ && (uses_[static_cast<std::size_t>(n)] > 1 || s.what == step::named) && !is_condition(s.what)) {
            const char* const wish = s.what == step::named ? s.name : "u";
            bool const only_a_name = s.what == step::named && known_.count(s.of[0]);
            t = {only_a_name ? known_[s.of[0]] : row(wish, t.s), atom};
            known_[n] = t.s;
        }
        return t;
    }
    text leaf(int, const recorded_step& s) {
        switch (s.what) {
            case step::number: return {literal(s.value, style::openformula), s.value < 0.0 ? prefix : atom};
            case step::input: return {inputs_[static_cast<std::size_t>(s.index)], atom};
            case step::item: return {array(s.ys, s.ys.size()), atom};
            case step::member:
                if (s.value == 0.0) return {inputs_[static_cast<std::size_t>(s.count)], atom};
                break;
            default: break;
        }
        throw not_printable{"it goes through a list in a way that a spreadsheet has no formula for"};
    }
    text spelled_out(const recorded_step& s) {
        switch (s.what) {
            case step::negative: return {"-" + at_least(expression(s.of[0]), prefix + 1), prefix};
            case step::plus: {
                recorded_step const& right = (*g_)[s.of[1]];
                if (right.what == step::number && right.value < 0.0) return {at_least(expression(s.of[0]), additive) + "-" + literal(-right.value, style::openformula), additive};
                return binary(s, "+", additive, multiplicative);
            }
            case step::minus: return binary(s, "-", additive, multiplicative);
            case step::times: return binary(s, "*", multiplicative, prefix);
            case step::over: return binary(s, "/", multiplicative, prefix);
            case step::less: return binary(s, "<", comparison, additive);
            case step::less_equal: return binary(s, "<=", comparison, additive);
            case step::greater: return binary(s, ">", comparison, additive);
            case step::greater_equal: return binary(s, ">=", comparison, additive);
            case step::equal: return binary(s, "=", comparison, additive);
            case step::not_equal: return binary(s, "<>", comparison, additive);
            case step::both: return {"AND(" + joined(s) + ")", atom};
            case step::either: return {"OR(" + joined(s) + ")", atom};
            case step::opposite: return {"NOT(" + joined(s) + ")", atom};
            case step::choice: return {"IF(" + joined(s) + ")", atom};
            case step::power: return {"POWER(" + joined(s) + ")", atom};
            case step::least: return {"MIN(" + joined(s) + ")", atom};
            case step::most: return {"MAX(" + joined(s) + ")", atom};
            case step::named: return expression(s.of[0]);
            case step::square: return {"POWER(" + expression(s.of[0]).s + ";2)", atom};
            case step::cube: return {"POWER(" + expression(s.of[0]).s + ";3)", atom};
            case step::poly: {
                std::string const x = at_least(expression(s.of[0]), prefix);
                text t = expression(s.of.back());
                for (std::size_t k = s.of.size() - 1; k-- > 1;) t = {expression(s.of[k]).s + "+" + x + "*" + at_least(t, prefix), additive};
                return t;
            }
            case step::function: {
                std::string const f = s.name, x = joined(s);
                // Spreadsheets have neither, and EXP(x)-1 loses digits for small x.
                if (f == "expm1") return {"2*EXP((" + x + ")/2)*SINH((" + x + ")/2)", multiplicative};
                if (f == "log1p") return {"2*ATANH((" + x + ")/(2+(" + x + ")))", multiplicative};
                if (f == "cbrt") return {"SIGN(" + x + ")*POWER(ABS(" + x + ");1/3)", multiplicative};
                if (f == "hypot") return {"SQRT(SUMSQ(" + x + "))", atom};
                if (f == "atan2") return {"ATAN2(" + expression(s.of[1]).s + ";" + expression(s.of[0]).s + ")", atom};  // x comes first
                if (f == "floor") return {"INT(" + x + ")", atom};
                if (f == "fabs") return {"ABS(" + x + ")", atom};
                if (f == "pow") return {"POWER(" + x + ")", atom};
                std::string upper = f == "log" ? "LN" : f;
                for (char& c : upper) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
                return {upper + "(" + x + ")", atom};
            }
            case step::lines: {
                std::vector<double> slopes;
                for (std::size_t i = 0; i + 1 < s.xs.size(); ++i) slopes.push_back((s.ys[i + 1] - s.ys[i]) / (s.xs[i + 1] - s.xs[i]));
                std::size_t const m = slopes.size();
                std::string const x = expression(s.of[0]).s, from = "LOOKUP(MAX(" + x + ";" + literal(s.xs[0], style::openformula) + ");" + array(s.xs, m) + ";";
                return {from + array(s.ys, m) + ")+((" + x + ")-" + from + array(s.xs, m) + "))*" + from + array(slopes, m) + ")", additive};
            }
            case step::stairs:
                return {"LOOKUP(MAX(" + expression(s.of[0]).s + ";" + literal(s.xs[0], style::openformula) + ");" + array(s.xs, s.xs.size()) + ";" + array(s.ys, s.ys.size()) + ")", atom};
            case step::sum: {
                if (in_sum_ || s.xs[1] != 0.0 || s.xs[2] != 0.0) throw not_printable{"it goes through a list in a way that a spreadsheet has no formula for"};
                std::string const first = expression(s.of[0]).s;
                prepare(s.of[1]);
                in_sum_ = true;
                std::string const body = expression(s.of[1]).s;
                in_sum_ = false;
                bool const none = (*g_)[s.of[0]].what == step::number && (*g_)[s.of[0]].value == 0.0;
                return none ? text{"SUMPRODUCT(" + body + ")", atom} : text{first + "+SUMPRODUCT(" + body + ")", additive};
            }
            default: throw not_printable{"a step has no form in a spreadsheet"};
        }
    }
    // What is the same in all terms of a sum gets its row before it.
    void prepare(int n) {
        if (is_leaf((*g_)[n].what) || is_condition((*g_)[n].what)) return;
        if (!moves_[static_cast<std::size_t>(n)]) {
            std::string const s = expression(n).s;
            bool const is_a_name = std::all_of(s.begin(), s.end(), [](char c) { return is_letter(c) || is_digit(c) || c == '_'; });
            if (!known_.count(n)) known_[n] = is_a_name ? s : row("u", s);
            return;
        }
        for (int o : (*g_)[n].of) prepare(o);
    }
};

// ---- mathematics ----------------------------------------------------------------------------------------------------

class mathematics {
public:
    mathematics(const entry& e, const graph& g, bool fixed_lists) : e_(e), g_(g), fixed_lists_(fixed_lists) { choose_names(); }

    // Lines of an aligned display: definitions, then the results, then the constants of sums.
    std::vector<std::string> lines() {
        std::vector<std::string> out;
        std::vector<std::set<int>> open(g_.steps.size());  // what an iteration looks for, until it is defined
        std::vector<std::pair<int, std::string>> waiting;
        for (int i = 0; i < g_.size(); ++i) {
            if (!reached_[u(i)]) continue;
            recorded_step const& s = g_[i];
            bool const solves = s.what == step::root || s.what == step::bracketed;
            int const variable = solves ? s.of[s.what == step::root ? 1 : 2] : -1;
            if (s.what == step::variable) open[u(i)].insert(i);
            for (int o : s.of) open[u(i)].insert(open[u(o)].begin(), open[u(o)].end());
            open[u(i)].erase(variable);
            if (!defines_[u(i)]) continue;
            if (!open[u(i)].empty()) {
                waiting.emplace_back(i, definition(i));
                continue;
            }
            out.push_back(definition(i));
            if (!solves) continue;
            for (auto& w : waiting) out.push_back(std::move(w.second));
            waiting.clear();
        }
        for (std::size_t k = 0; k < g_.results.size(); ++k) out.push_back(guarded(left_[k], g_.results[k]));
        for (auto const& note : notes_) out.push_back(note);
        return out;
    }

private:
    const entry& e_;
    const graph& g_;
    bool const fixed_lists_;
    std::vector<std::string> symbol_, left_;
    std::vector<char> reached_, defines_;
    std::vector<int> uses_, width_;
    std::vector<char> in_loop_;  // does a step change with the index of a sum?
    std::vector<std::string> notes_;
    std::set<std::string> taken_;
    std::map<std::vector<double>, std::string> item_;
    int automatic_ = 0;

    std::size_t u(int n) const { return static_cast<std::size_t>(n); }

    static std::string word(const std::string& name) {
        static const std::set<std::string> greek{"alpha", "beta", "rho", "theta", "eps"};
        if (greek.count(name)) return name == "eps" ? "\\varepsilon" : "\\" + name;
        std::size_t const slash = name.find('/');
        if (slash != std::string::npos) return word(name.substr(0, slash)) + "/" + word(name.substr(slash + 1));
        std::string base = name, prime;
        while (!base.empty() && base.back() == '\'') base.pop_back(), prime += "'";
        if (base.size() == 1) return base + prime;
        if (base.size() > 1 && is_letter(base[0])) {
            // k1, C_T: a letter with an index.
            bool const digits = std::all_of(base.begin() + 1, base.end(), is_digit);
            if (digits) return base.substr(0, 1) + "_{" + base.substr(1) + "}" + prime;
            if (base[1] == '_') return base.substr(0, 1) + "_{\\mathrm{" + escaped(base.substr(2)) + "}}" + prime;
        }
        return "\\mathrm{" + escaped(base) + "}" + prime;
    }
    static std::string escaped(const std::string& s) {
        std::string t;
        for (char c : s) t += c == '_' || c == '%' || c == '&' || c == '#' ? std::string("\\") + c : std::string(1, c);
        return t;
    }
    std::string symbol(const std::string& wish) {
        std::string s = wish;
        for (int i = 2; !taken_.insert(s).second; ++i) s = wish + (wish.find('_') == std::string::npos || wish[0] == '\\' ? "_{(" + std::to_string(i) + ")}" : "^{(" + std::to_string(i) + ")}");
        return s;
    }

    static std::string with_index(const std::string& name, const std::string& index) {
        std::size_t const at = name.rfind("_{");
        if (at == std::string::npos || name.back() != '}' || name[0] == '\\') return "{" + name + "}_{" + index + "}";
        return name.substr(0, name.size() - 1) + "," + index + "}";
    }

    // About as many characters as the step takes on paper, its named operands being short.
    int width(int i) const {
        recorded_step const& s = g_[i];
        auto w = [&](std::size_t k) { return symbol_[u(s.of[k])].empty() ? width_[u(s.of[k])] : 3; };
        switch (s.what) {
            case step::number: return static_cast<int>(visible(number(s.value).s));
            case step::input: return static_cast<int>(std::strlen(e_.inputs[s.index].name));
            case step::member:
            case step::element: return static_cast<int>(std::strlen(e_.inputs[s.what == step::member ? s.count : s.index].name)) + 1;
            case step::over: return std::max(w(0), w(1));
            case step::choice: return std::max(w(1), w(2)) + w(0);
            case step::poly: {
                int n = 0;
                for (std::size_t k = 1; k < s.of.size(); ++k) n += w(k) + w(0) + 2;
                return n;
            }
            case step::lines:
            case step::stairs: return 60;
            case step::root: return 2;
            case step::bracketed: return 2;
            case step::running: return w(1) + 4;
            default: {
                int n = 1;
                for (std::size_t k = 0; k < s.of.size(); ++k) n += w(k) + 1;
                return n;
            }
        }
    }

    static constexpr int worth_naming_used_twice = 16, worth_naming_used_often = 10, too_wide = 64;

    void choose_names() {
        std::size_t const n = g_.steps.size();
        symbol_.assign(n, ""), reached_.assign(n, 0), defines_.assign(n, 0), uses_.assign(n, 0), width_.assign(n, 1), in_loop_.assign(n, 0);
        for (int i = 0; i < e_.arity; ++i) taken_.insert(word(e_.inputs[i].name));
        for (std::size_t k = 0; k < g_.results.size(); ++k) {
            std::string const full = e_.path.full;
            std::string left = word(e_.outputs[k].name ? e_.outputs[k].name : full.substr(e_.path.topic + 1, e_.path.family - e_.path.topic - 1));
            if (!taken_.insert(left).second) taken_.insert(left = "\\mathrm{result}");
            left_.push_back(left);
        }
        std::set<int> tops(g_.results.begin(), g_.results.end());  // what stands on a line of its own anyway
        for (int r : g_.results) reached_[u(r)] = 1, ++uses_[u(r)];
        for (int i = g_.size(); i-- > 0;) {
            if (!reached_[u(i)]) continue;
            recorded_step const& s = g_[i];
            if (s.what == step::named || (s.what == step::choice && tops.count(i) && g_.is_undefined(s.of[2]))) tops.insert(s.of[s.what == step::named ? 0 : 1]);
            for (std::size_t k = 0; k < s.of.size(); ++k) {
                // Start and slope belong to the method, not to the formula.
                if ((s.what == step::root && k != 1 && k != 2) || (s.what == step::bracketed && k == 4)) continue;
                reached_[u(s.of[k])] = 1;
                uses_[u(s.of[k])] += s.what == step::poly && k == 0 ? static_cast<int>(s.of.size()) - 2 : 1;
            }
        }
        for (int i = 0; i < g_.size(); ++i) {
            if (!reached_[u(i)]) continue;
            recorded_step const& s = g_[i];
            for (int o : s.of)
                if (reached_[u(o)] && s.what != step::sum) in_loop_[u(i)] = in_loop_[u(i)] || in_loop_[u(o)];
            if (s.what == step::item || s.what == step::member || s.what == step::running) in_loop_[u(i)] = 1;
            int const w = width_[u(i)] = width(i);
            if (is_leaf(s.what) || is_condition(s.what)) continue;
            if (s.what == step::named) {
                if (g_[s.of[0]].what == step::number) continue;
                if (defines_[u(s.of[0])] && g_[s.of[0]].what != step::named) {
                    // The name is the step's own.
                    symbol_[u(i)] = symbol_[u(s.of[0])] = symbol(word(s.name));
                } else {
                    name(i, word(s.name));
                }
            } else if ((uses_[u(i)] > 1 && w >= worth_naming_used_twice) || (uses_[u(i)] > 2 && w >= worth_naming_used_often) || (w > too_wide && !tops.count(i)) ||
                       s.what == step::root || s.what == step::bracketed || s.what == step::lines) {
                while (taken_.count("u_{" + std::to_string(++automatic_) + "}")) {}
                name(i, "u_{" + std::to_string(automatic_) + "}");
            }
        }
        for (int i = 0; i < g_.size(); ++i) {
            if (!reached_[u(i)]) continue;
            recorded_step const& s = g_[i];
            if (s.what == step::root || s.what == step::bracketed) symbol_[u(s.of[s.what == step::root ? 1 : 2])] = symbol_[u(i)];
        }
    }
    void name(int i, const std::string& wish) {
        symbol_[u(i)] = symbol(wish);
        if (in_loop_[u(i)]) symbol_[u(i)] = with_index(symbol_[u(i)], "i");
        defines_[u(i)] = 1;
    }

    std::string definition(int i) {
        recorded_step const& s = g_[i];
        std::string const left = symbol_[u(i)];
        if (s.what == step::root) return left + " &\\text{ is the root of } " + equation(s.of[2]);
        if (s.what == step::bracketed) return left + " &\\text{ is the root of } " + equation(s.of[3]) + ",\\quad " + whole(s.of[0]) + " \\le " + left + " \\le " + whole(s.of[1]);
        if (s.what == step::named) return guarded(left, s.of[0]);
        return left + " &= " + whole(i, true);
    }
    // "residual = 0" with a difference on both sides of the sign.
    std::string equation(int residual) {
        recorded_step const& s = g_[residual];
        if (s.what == step::minus && symbol_[u(residual)].empty()) return whole(s.of[0]) + " = " + whole(s.of[1]);
        return whole(residual) + " = 0";
    }
    std::string whole(int i, bool itself = false) { return broken(i, itself); }

    // Where nothing but one case has a value, the case is a condition beside it.
    std::string guarded(const std::string& left, int node) {
        std::vector<std::string> conditions;
        while (g_[node].what == step::choice && symbol_[u(node)].empty() && g_.is_undefined(g_[node].of[2])) {
            conditions.push_back(condition(g_[node].of[0]));
            node = g_[node].of[1];
        }
        std::string s = left + " &= " + broken(node, false);
        bool const long_line = s.find("\n") != std::string::npos || visible(s) > 56;
        for (std::size_t k = 0; k < conditions.size(); ++k) s += (k ? ",\\; " : long_line ? " \\\\\n&\\qquad\\text{for } " : "\\qquad\\text{for } ") + conditions[k];
        return s;
    }

    // Long sums go on in further lines.
    std::string broken(int i, bool itself) {
        std::vector<std::string> parts;
        if (itself || symbol_[u(i)].empty()) terms(i, parts, itself);
        else parts = {expression(i).s};
        std::string s;
        std::size_t length = 0;
        for (std::size_t k = 0; k < parts.size(); ++k) {
            std::size_t const l = visible(parts[k]);
            if (k > 0 && length + l > 74) s += " \\\\\n&\\quad ", length = 0;
            s += (k ? " " : "") + parts[k];
            length += l;
        }
        return s;
    }
    // The signed terms of a sum.
    void terms(int i, std::vector<std::string>& parts, bool itself) {
        recorded_step const& s = g_[i];
        if (!itself && !symbol_[u(i)].empty()) {
            parts.push_back(expression(i).s);
            return;
        }
        if (s.what == step::named && !itself) return terms(s.of[0], parts, false);
        if (s.what == step::plus || s.what == step::minus) {
            if (g_.is_number(s.of[0]) && g_[s.of[0]].value == 0.0 && s.what == step::plus) return terms(s.of[1], parts, false);
            terms(s.of[0], parts, false);
            text const t = expression(s.of[1]);
            std::string r = at_least(t, multiplicative);
            bool const negative = r[0] == '-';
            bool minus = s.what == step::minus;
            if (negative && !minus) minus = true, r = r.substr(1);
            parts.push_back((minus ? "- " : "+ ") + (r[0] == '-' ? "(" + r + ")" : r));
            return;
        }
        if (s.what == step::poly) {
            polynomial(s, parts);
            return;
        }
        parts.push_back(expression(i, itself).s);
    }
    void polynomial(const recorded_step& s, std::vector<std::string>& parts) {
        text const x = expression(s.of[0]);
        for (std::size_t k = 1; k < s.of.size(); ++k) {
            double const c = g_[s.of[k]].value;
            if (c == 0.0) continue;
            std::string t;
            if (k == 1) {
                t = number(std::fabs(c)).s;
            } else {
                std::string const base = k == 2 ? at_least(x, multiplicative) : at_least(x, atom);
                t = (std::fabs(c) == 1.0 ? "" : product(number(std::fabs(c)).s, base + (k > 2 ? "^{" + std::to_string(k - 1) + "}" : "")));
                if (std::fabs(c) == 1.0) t = base + (k > 2 ? "^{" + std::to_string(k - 1) + "}" : "");
            }
            parts.push_back(parts.empty() ? (c < 0.0 ? "-" + t : t) : (c < 0.0 ? "- " : "+ ") + t);
        }
        if (parts.empty()) parts.push_back("0");
    }

    static std::size_t visible(const std::string& s) {
        std::size_t n = 0;
        for (std::size_t i = 0; i < s.size(); ++i) {
            if (s[i] == '\\') {
                ++n;
                while (i + 1 < s.size() && is_letter(s[i + 1])) ++i;
            } else if (s[i] != '{' && s[i] != '}' && s[i] != ' ' && s[i] != '_' && s[i] != '^') {
                ++n;
            }
        }
        return n;
    }

    static text number(double x) {
        if (x != x) return {"\\text{no value}", atom};
        if (std::isinf(x)) return {x < 0 ? "-\\infty" : "\\infty", x < 0 ? prefix : atom};
        std::string const sign = x < 0.0 ? "-" : "";
        double const a = std::fabs(x);
        std::string s = shortest(a);
        std::size_t digits = 0;
        for (char c : s.substr(0, s.find('e'))) digits += is_digit(c) ? 1 : 0;
        if (digits >= 15) {
            // A quotient that the compiler has worked out already, or a number that comes from others.
            for (int q = 2; q <= 1000; ++q) {
                double const p = std::round(a * q);
                if (p > 0.0 && p < 1e6 && p / q == a) return {sign + "\\frac{" + shortest(p) + "}{" + std::to_string(q) + "}", sign.empty() ? atom : prefix};
            }
            if (digits > 16) {
                char rounded[40];
                std::snprintf(rounded, sizeof rounded, "%.15g", a);
                s = rounded;
            }
        }
        std::size_t const e = s.find('e');
        if (e == std::string::npos) return {sign + s, sign.empty() ? atom : prefix};
        int power = std::atoi(s.c_str() + e + 1);
        std::string mantissa = s.substr(0, e);
        if (power < 0 && power >= -4) {
            char plain[60];
            digits = static_cast<std::size_t>(std::count_if(mantissa.begin(), mantissa.end(), is_digit));
            std::snprintf(plain, sizeof plain, "%.*f", static_cast<int>(digits) - 1 - power, a);
            return {sign + plain, sign.empty() ? atom : prefix};
        }
        std::string const ten = "10^{" + std::to_string(power) + "}";
        return {sign + (mantissa == "1" ? ten : mantissa + " \\times " + ten), sign.empty() ? multiplicative : prefix};
    }

    static std::string product(const std::string& a, const std::string& b) {
        return a + (!b.empty() && (is_digit(b[0]) || b.compare(0, 5, "\\frac") == 0) ? " \\cdot " : " \\, ") + b;
    }
    static std::string wrapped(const text& t, int needed) { return t.strength >= needed ? t.s : "\\left(" + t.s + "\\right)"; }
    static std::string at_least(const text& t, int needed) { return wrapped(t, needed); }

    std::string condition(int i) { return expression(i).s; }

    text cases(int i) {
        std::string rows;
        int node = i;
        for (;;) {
            recorded_step const& s = g_[node];
            if (s.what != step::choice || (node != i && !symbol_[u(node)].empty())) break;
            // A case within a case that ends alike is one case with two conditions.
            int yes = s.of[1];
            std::string when = condition(s.of[0]);
            while (g_[yes].what == step::choice && symbol_[u(yes)].empty() && g_[yes].of[2] == s.of[2]) {
                when += " \\text{ and } " + condition(g_[yes].of[0]);
                yes = g_[yes].of[1];
            }
            rows += expression(yes).s + " & \\text{if } " + when + " \\\\ ";
            node = s.of[2];
        }
        rows += expression(node).s + " & \\text{otherwise}";
        return {"\\begin{cases} " + rows + " \\end{cases}", any};
    }

    text relation(const recorded_step& s, const char* sign) { return {wrapped(expression(s.of[0]), additive) + " " + sign + " " + wrapped(expression(s.of[1]), additive), comparison}; }

    std::string points(const recorded_step& s) {
        std::string p;
        std::size_t const n = s.xs.size();
        for (std::size_t i = 0; i < n; ++i) {
            if (n > 24 && i == 3) {
                p += "\\dots, ";
                i = n - 2;
                continue;
            }
            p += "(" + number(s.xs[i]).s + ", " + number(s.ys[i]).s + ")" + (i + 1 < n ? ", " : "");
            if (i % 6 == 5 && i + 1 < n && n <= 24) p += "\\\\\n&\\quad ";
        }
        return p;
    }

    text expression(int i, bool itself = false) {
        recorded_step const& s = g_[i];
        if (!symbol_[u(i)].empty() && !itself) return {symbol_[u(i)], atom};
        switch (s.what) {
            case step::number: return number(s.value);
            case step::input: return {word(e_.inputs[s.index].name), atom};
            case step::element: return {word(e_.inputs[s.index].name) + "_{" + std::to_string(s.count + 1) + "}", atom};
            case step::variable: return {"x", atom};
            case step::member: {
                int const shift = static_cast<int>(s.value);
                return {with_index(word(e_.inputs[s.count].name), shift ? "i+" + std::to_string(shift) : "i"), atom};
            }
            case step::item: {
                auto& letter = item_[s.ys];
                if (letter.empty()) {
                    letter = std::string(1, "abcdfghk"[(item_.size() - 1) % 8]);
                    letter = with_index(symbol(letter), "i");
                    std::string values;
                    std::size_t const n = s.ys.size();
                    for (std::size_t k = 0; k < n; ++k) {
                        if (n > 30 && k == 3) {
                            values += "\\dots, ";
                            k = n - 2;
                            continue;
                        }
                        values += number(s.ys[k]).s + (k + 1 < n ? ", " : "");
                        if (k % 6 == 5 && k + 1 < n && n <= 30) values += "\\\\\n&\\quad ";
                    }
                    notes_.push_back(letter + " &= " + values);
                }
                return {letter, atom};
            }
            case step::running: {
                std::string const first = g_.is_number(s.of[0]) && g_[s.of[0]].value == 0.0 ? "" : expression(s.of[0]).s + " + ";
                std::string body = wrapped(expression(s.of[1]), multiplicative);
                for (std::size_t at; (at = body.find("_{i}")) != std::string::npos;) body.replace(at, 4, "_{j}");
                return {first + "\\sum_{j<i} " + body, additive};
            }
            case step::negative: {
                recorded_step const& o = g_[s.of[0]];
                if (o.what == step::function && std::strcmp(o.name, "expm1") == 0 && symbol_[u(s.of[0])].empty()) return {"1 - " + exponential(o.of[0]).s, additive};
                return {"-" + wrapped(expression(s.of[0]), multiplicative), prefix};
            }
            case step::plus:
            case step::minus:
            case step::poly: {
                std::vector<std::string> parts;
                terms(i, parts, true);
                std::string t;
                for (auto const& p : parts) t += (t.empty() ? "" : " ") + p;
                return {t, parts.size() > 1 ? additive : parts[0][0] == '-' ? prefix : multiplicative};
            }
            case step::times: {
                text const a = expression(s.of[0]), b = expression(s.of[1]);
                if (g_.is_number(s.of[0]) && g_[s.of[0]].value == 1.0) return b;
                if (g_.is_number(s.of[1]) && g_[s.of[1]].value == 1.0) return a;
                std::string r = wrapped(b, multiplicative);
                if (b.strength == prefix) r = "\\left(" + b.s + "\\right)";
                return {product(wrapped(a, multiplicative), r), a.strength == prefix ? prefix : multiplicative};
            }
            case step::over: return {"\\frac{" + expression(s.of[0]).s + "}{" + expression(s.of[1]).s + "}", postfix};
            case step::less: return relation(s, "<");
            case step::less_equal: return relation(s, "\\le");
            case step::greater: return relation(s, ">");
            case step::greater_equal: return relation(s, "\\ge");
            case step::equal: return relation(s, "=");
            case step::not_equal: return relation(s, "\\ne");
            case step::both: return {wrapped(expression(s.of[0]), and_) + " \\text{ and } " + wrapped(expression(s.of[1]), and_), and_};
            case step::either: return {wrapped(expression(s.of[0]), or_) + " \\text{ or } " + wrapped(expression(s.of[1]), or_), or_};
            case step::opposite: return {"\\text{not } " + wrapped(expression(s.of[0]), not_), not_};
            case step::choice: {
                recorded_step const& c = g_[s.of[0]];
                if (c.what == step::equal && c.of[0] == c.of[1]) return expression(s.of[1]);  // is it a number at all?
                return cases(i);
            }
            case step::function: return function(s);
            case step::power: {
                text const base = expression(s.of[0]);
                return {wrapped(base, atom) + "^{" + expression(s.of[1]).s + "}", postfix};
            }
            case step::square:
            case step::cube: {
                int exponent = s.what == step::square ? 2 : 3, base = s.of[0];
                for (; symbol_[u(base)].empty() && (g_[base].what == step::square || g_[base].what == step::cube); base = g_[base].of[0])
                    exponent *= g_[base].what == step::square ? 2 : 3;
                return {wrapped(expression(base), atom) + "^{" + std::to_string(exponent) + "}", postfix};
            }
            case step::least: return {"\\min\\left(" + expression(s.of[0]).s + ",\\; " + expression(s.of[1]).s + "\\right)", postfix};
            case step::most: return {"\\max\\left(" + expression(s.of[0]).s + ",\\; " + expression(s.of[1]).s + "\\right)", postfix};
            case step::named: return expression(s.of[0]);
            case step::lines: return {"\\text{straight lines in } " + expression(s.of[0]).s + " \\text{ through } " + points(s), any};
            case step::stairs: return stairs(s);
            case step::sum: {
                int const from = static_cast<int>(s.xs[1]), rest = static_cast<int>(s.xs[2]);
                std::string const top = s.xs[0] < 0.0 || fixed_lists_ ? std::to_string(s.count) : rest ? "n-" + std::to_string(rest) : "n";
                std::string const sum = "\\sum_{i=" + std::to_string(from + 1) + "}^{" + top + "} " + wrapped(expression(s.of[1]), multiplicative);
                bool const none = g_.is_number(s.of[0]) && g_[s.of[0]].value == 0.0;
                return none ? text{sum, multiplicative} : text{expression(s.of[0]).s + " + " + sum, additive};
            }
            default: throw not_printable{"a step has no printed form"};
        }
    }

    text stairs(const recorded_step& s) {
        std::string const x = expression(s.of[0]).s;
        if (s.xs.size() > 24) return {"\\text{the entry of the table at } " + x + " \\text{: from } " + points(s), any};
        std::string rows;
        for (std::size_t i = s.xs.size(); i-- > 1;) rows += number(s.ys[i]).s + " & \\text{if } " + x + " \\ge " + number(s.xs[i]).s + " \\\\ ";
        rows += number(s.ys[0]).s + " & \\text{otherwise}";
        return {"\\begin{cases} " + rows + " \\end{cases}", any};
    }

    text exponential(int x) {
        std::string const s = expression(x).s;
        if (s.find("cases") != std::string::npos || s.find("\\frac") != std::string::npos || visible(s) > 24) return {"\\exp\\left(" + s + "\\right)", postfix};
        return {"e^{" + s + "}", postfix};
    }
    text function(const recorded_step& s) {
        std::string const f = s.name;
        text const x = expression(s.of[0]);
        std::string const inside = "\\left(" + x.s + "\\right)";
        if (f == "exp") return exponential(s.of[0]);
        if (f == "expm1") return {exponential(s.of[0]).s + " - 1", additive};
        if (f == "log") return {"\\ln" + inside, postfix};
        if (f == "log1p") return {"\\ln\\left(1 " + (x.s[0] == '-' ? "- " + x.s.substr(1) : "+ " + x.s) + "\\right)", postfix};
        if (f == "sqrt") return {"\\sqrt{" + x.s + "}", atom};
        if (f == "cbrt") return {"\\sqrt[3]{" + x.s + "}", atom};
        if (f == "fabs") return {"\\left|" + x.s + "\\right|", atom};
        if (f == "floor") return {"\\left\\lfloor " + x.s + " \\right\\rfloor", atom};
        if (f == "pow") return {wrapped(x, atom) + "^{" + expression(s.of[1]).s + "}", postfix};
        if (f == "hypot") return {"\\sqrt{" + wrapped(x, atom) + "^{2} + " + wrapped(expression(s.of[1]), atom) + "^{2}}", atom};
        if (f == "atan2") return {"\\operatorname{atan2}\\left(" + x.s + ",\\; " + expression(s.of[1]).s + "\\right)", postfix};
        return {"\\" + f + inside, postfix};
    }
};

// ---- a model in a style ---------------------------------------------------------------------------------------------

bool has_states(const input_entry& in) {
    return in.what == detail::kind::word || in.what == detail::kind::truth || in.what == detail::kind::optional_number;
}
int states_of(const input_entry& in) { return in.what == detail::kind::word ? static_cast<int>(in.word_total) : has_states(in) ? 2 : 1; }

class writer {
public:
    writer(const entry& e, style how, const states& chosen) : e_(e), how_(how), state_(static_cast<std::size_t>(e.arity), -1), from_(find_recorder(e.path.full)) {
        if (!from_) throw not_printable{std::string("there is no recording of ") + e.path.full};
        for (std::size_t i = 0; i < state_.size() && i < chosen.size(); ++i) state_[i] = chosen[i];
        for (int i = 0; i < e.arity; ++i)
            if (!has_states(e.inputs[i])) state_[static_cast<std::size_t>(i)] = 0;
    }
    std::string run() {
        switch (how_) {
            case style::latex: return latex();
            case style::openformula: return rows();
            default: return code();
        }
    }

private:
    const entry& e_;
    style const how_;
    states state_;
    const recorder* const from_;
    std::vector<std::string> names_;

    std::size_t u(int i) const { return static_cast<std::size_t>(i); }

    graph recorded_graph(const states& s, int elements) {
        recording r;
        nodes const results = from_->run(r, s.data(), elements);
        if (r.asked_for_a_number) throw not_printable{std::string(e_.path.full) + " is computed by an iteration whose length depends on its own results; it has no closed form to print"};
        return folder(r, results, elements).take();
    }
    // The text made from one recording; with lists, from two of different lengths, which must agree.
    template <class Make>
    std::string written(const states& s, Make make) {
        if (!e_.has_lists) return make(recorded_graph(s, 0));
        if (from_->elements) return make(recorded_graph(s, from_->elements));
        std::string const four = make(recorded_graph(s, 4)), five = make(recorded_graph(s, 5));
        if (four != five) throw not_printable{std::string(e_.path.full) + " goes through its lists in a way that has no printed form"};
        return four;
    }

    int next_open(const states& s) const {
        for (int i = 0; i < e_.arity; ++i)
            if (s[u(i)] < 0) return i;
        return -1;
    }

    // One text for each combination of the open words; alike ones together.
    template <class Leaf, class Join>
    std::string branches(states s, int depth, Leaf leaf, Join join) {
        int const open = next_open(s);
        if (open < 0) return leaf(s, depth);
        int const n = states_of(e_.inputs[open]);
        std::vector<std::string> texts;
        std::vector<std::vector<int>> groups;
        // Whether there is a branch at all decides the depth of what stands in it.
        for (int trial = 0; trial < 2; ++trial) {
            texts.clear(), groups.clear();
            for (int k = 0; k < n; ++k) {
                s[u(open)] = k;
                std::string const t = branches(s, depth + trial, leaf, join);
                auto const at = std::find(texts.begin(), texts.end(), t);
                if (at == texts.end()) texts.push_back(t), groups.push_back({k});
                else groups[static_cast<std::size_t>(at - texts.begin())].push_back(k);
            }
            if (texts.size() == 1 && trial == 0) return texts[0];
        }
        return join(open, groups, texts, depth);
    }

    // ---- code

    std::string function_name() const { return under_scored(e_.path.full); }

    std::string comment() const {
        std::string s = std::string(e_.question) + "\n\n" + e_.path.full + ": " + e_.about->source + " (" + spelled_out(e_.about->status) + ").\n";
        if (e_.about->danger[0]) s += std::string("Danger: ") + e_.about->danger + ".\n";
        if (e_.holds_when) s += std::string("Validity: ") + e_.holds_when + ".\n";
        for (int i = 0; i < e_.arity; ++i) {
            input_entry const& in = e_.inputs[i];
            s += names_[u(i)] + ": ";
            if (in.what == detail::kind::word) {
                for (std::size_t k = 0; k < in.word_total; ++k) s += (k ? " | " : "") + std::string(in.words[k]);
            } else if (in.what == detail::kind::truth) {
                s += "true or false";
            } else {
                s += std::string(in.of->unit) + ", " + (in.what == detail::kind::list ? "a list, " : "") + "validated " + range_text(in.range);
                if (in.what == detail::kind::optional_number) s += how_ == style::c ? "; NAN: not given" : "; may be left out";
            }
            s += "\n";
        }
        s += "Result: ";
        for (int k = 0; k < e_.results; ++k) s += (k ? ", " : "") + (e_.outputs[k].name ? std::string(e_.outputs[k].name) + " " : "") + "[" + e_.outputs[k].of->unit + "]";
        return s + "\nRanges are not checked here.";
    }
    std::string commented(const std::string& before, const std::string& each, const std::string& after, bool cautious) const {
        std::string out = before;
        std::string c = comment();
        if (cautious)
            for (std::size_t at; (at = c.find("*/")) != std::string::npos;) c.replace(at, 2, "* /");
        std::size_t from = 0;
        while (from <= c.size()) {
            std::size_t const end = std::min(c.find('\n', from), c.size());
            std::string const line = c.substr(from, end - from);
            out += (from ? (line.empty() ? "\n" + (each == "    " ? "" : each.substr(0, each.size() - 1)) : "\n" + each) : "") + line;
            from = end + 1;
        }
        return out + after;
    }

    std::string code() {
        bool const python = how_ == style::python || how_ == style::mpmath;
        namer arguments(how_);
        names_.clear();
        for (int i = 0; i < e_.arity; ++i) names_.push_back(arguments.fresh(e_.inputs[i].name));
        std::string const body = branches(
            state_, 1,
            [&](const states& s, int depth) {
                return written(s, [&](const graph& g) {
                    namer names = arguments;
                    coder c(g, how_, names_, names);
                    std::string text = c.body(depth);
                    return text + std::string(u(depth) * 4, ' ') + answer(c, g) + "\n";
                });
            },
            [&](int open, const std::vector<std::vector<int>>& groups, const std::vector<std::string>& texts, int depth) {
                std::string out, const_indent(u(depth) * 4, ' ');
                for (std::size_t k = 0; k < groups.size(); ++k) {
                    bool const last_of_two = k + 1 == groups.size() && e_.inputs[open].what != detail::kind::word;
                    std::string const when = test(open, groups[k]);
                    if (python) out += const_indent + (last_of_two ? "else" : (k ? "elif " : "if ") + when) + ":\n" + texts[k];
                    else out += (k ? "" : const_indent) + (last_of_two ? "{\n" : "if (" + when + ") {\n") + texts[k] + const_indent + "}" + (k + 1 < groups.size() ? " else " : "\n");
                }
                if (e_.inputs[open].what == detail::kind::word) out += const_indent + unknown_word(open) + "\n";
                return out;
            });
        if (python) {
            std::string s = how_ == style::python ? "import math\n\n\n" : "import mpmath as mp\n\n\n";
            s += "def " + function_name() + "(" + parameters() + "):\n";
            return s + commented("    r\"\"\"", "    ", "\n    \"\"\"\n", false) + body;
        }
        if (how_ == style::javascript) return commented("/**\n * ", " * ", "\n */\n", true) + "function " + function_name() + "(" + parameters() + ") {\n" + body + "}\n";
        std::string s = "#include <math.h>\n";
        if (has_words()) s += "#include <string.h>\n";
        s += "\n";
        if (e_.outputs[0].name) {
            s += "struct " + function_name() + "_result {\n";
            for (int k = 0; k < e_.results; ++k) s += "    " + std::string(e_.outputs[k].truth ? "int " : "double ") + e_.outputs[k].name + ";\n";
            s += "};\n\n";
        }
        std::string const type = e_.outputs[0].name ? "struct " + function_name() + "_result " : e_.outputs[0].words ? (e_.outputs[0].several_words ? "unsigned " : "const char *") : "double ";
        return s + commented("/* ", "   ", " */\n", true) + type + function_name() + "(" + parameters() + ") {\n" + body + "}\n";
    }
    bool has_words() const {
        for (int i = 0; i < e_.arity; ++i)
            if (e_.inputs[i].what == detail::kind::word && state_[u(i)] < 0) return true;
        return false;
    }
    // Words that were chosen are no arguments any more.
    bool is_parameter(int i) const { return !has_states(e_.inputs[i]) || state_[u(i)] < 0 || (e_.inputs[i].what == detail::kind::optional_number && state_[u(i)] == 1); }
    std::string parameters() const {
        std::string s;
        bool lists = false;
        for (int i = 0; i < e_.arity; ++i) {
            if (!is_parameter(i)) continue;
            input_entry const& in = e_.inputs[i];
            s += s.empty() ? "" : ", ";
            if (how_ == style::c) {
                if (in.what == detail::kind::list) s += "const double *" + names_[u(i)], lists = true;
                else if (in.what == detail::kind::word) s += "const char *" + names_[u(i)];
                else s += (in.what == detail::kind::truth ? "int " : "double ") + names_[u(i)];
                continue;
            }
            s += names_[u(i)];
            if (!in.optional) continue;
            s += how_ == style::javascript ? " = " : "=";
            if (is_absent(in.fallback)) s += how_ == style::javascript ? "null" : "None";
            else if (in.what == detail::kind::word) s += std::string("\"") + in.words[static_cast<std::size_t>(in.fallback)] + "\"";
            else if (in.what == detail::kind::truth) s += how_ == style::javascript ? (in.fallback != 0.0 ? "true" : "false") : (in.fallback != 0.0 ? "True" : "False");
            else s += literal(in.fallback, how_ == style::mpmath ? style::python : how_);
        }
        if (lists) s += ", int n";
        if (how_ == style::mpmath) s += s.empty() ? "k=mp.mpf" : ", k=mp.mpf";
        return s.empty() && how_ == style::c ? "void" : s;
    }
    std::string test(int open, const std::vector<int>& group) const {
        input_entry const& in = e_.inputs[open];
        std::string const& name = names_[u(open)];
        bool const python = how_ == style::python || how_ == style::mpmath;
        if (in.what == detail::kind::truth) return group[0] ? name : python ? "not " + name : "!" + name;
        if (in.what == detail::kind::optional_number) {
            if (python) return name + (group[0] ? " is not None" : " is None");
            if (how_ == style::javascript) return name + (group[0] ? " !== null" : " === null");
            return (group[0] ? "!isnan(" : "isnan(") + name + ")";
        }
        std::string s;
        if (python) {
            if (group.size() == 1) return name + " == \"" + in.words[group[0]] + "\"";
            for (int k : group) s += (s.empty() ? "" : ", ") + std::string("\"") + in.words[k] + "\"";
            return name + " in (" + s + ")";
        }
        for (int k : group) {
            s += s.empty() ? "" : " || ";
            s += how_ == style::javascript ? name + " === \"" + in.words[k] + "\"" : "strcmp(" + name + ", \"" + in.words[k] + "\") == 0";
        }
        return s;
    }
    std::string unknown_word(int open) const {
        std::string words;
        for (std::size_t k = 0; k < e_.inputs[open].word_total; ++k) words += (k ? ", " : "") + std::string(e_.inputs[open].words[k]);
        std::string const sentence = "\"" + names_[u(open)] + " is one of " + words + "\"";
        if (how_ == style::python || how_ == style::mpmath) return "raise ValueError(" + sentence + ")";
        if (how_ == style::javascript) return "throw new RangeError(" + sentence + ");";
        if (!e_.outputs[0].name) return e_.outputs[0].words ? (e_.outputs[0].several_words ? "return 0;" : "return NULL;") : "return NAN;";
        std::string s = "return (struct " + function_name() + "_result){";
        for (int k = 0; k < e_.results; ++k) s += (k ? ", " : "") + std::string(e_.outputs[k].truth ? "0" : "NAN");
        return s + "};";
    }
    std::string dressed(const output_entry& o, const std::string& x) const {
        bool const python = how_ == style::python || how_ == style::mpmath;
        if (o.words) {
            std::string words;
            for (std::size_t k = 0; k < o.word_total; ++k) words += (k ? ", " : "") + std::string("\"") + o.words[k] + "\"";
            if (o.several_words) {
                if (python) return "[word for bit, word in enumerate([" + words + "]) if int(" + x + ") >> bit & 1]";
                if (how_ == style::javascript) return "[" + words + "].filter((word, bit) => (" + x + ") >> bit & 1)";
                return "(unsigned)(" + x + ")";
            }
            if (python) return "[" + words + "][int(" + x + ")]";
            if (how_ == style::javascript) return "[" + words + "][" + x + "]";
            return "((const char *const[]){" + words + "})[(int)(" + x + ")]";
        }
        if (o.truth) return python ? "bool(" + x + ")" : "(" + x + ") != 0.0";
        if (o.whole && python) return "int(" + x + ")";
        return x;
    }
    std::string answer(coder& c, const graph& g) const {
        bool const python = how_ == style::python || how_ == style::mpmath;
        std::string s;
        if (!e_.outputs[0].name) {
            s = "return " + dressed(e_.outputs[0], c.result(0));
        } else if (how_ == style::javascript) {
            for (std::size_t k = 0; k < g.results.size(); ++k) s += (k ? ", " : "") + std::string(e_.outputs[k].name) + ": " + dressed(e_.outputs[k], c.result(k));
            s = "return {" + s + "}";
        } else {
            for (std::size_t k = 0; k < g.results.size(); ++k) s += (k ? ", " : "") + dressed(e_.outputs[k], c.result(k));
            s = how_ == style::c ? "return (struct " + function_name() + "_result){" + s + "}" : "return " + (g.results.size() == 1 ? s + "," : s);
        }
        return s + (python ? "" : ";");
    }

    // ---- spreadsheets

    std::string rows() {
        namer names(how_);
        names_.clear();
        for (int i = 0; i < e_.arity; ++i) names_.push_back(names.fresh(e_.inputs[i].name));
        std::vector<std::string> results;
        for (int k = 0; k < e_.results; ++k) results.push_back(names.fresh(e_.outputs[k].name ? e_.outputs[k].name : e_.path.full + e_.path.family + 1));
        sheet rows(names_, names);
        std::vector<std::string> formulas;
        for (int k = 0; k < e_.results; ++k) {
            formulas.push_back(branches(
                state_, 0,
                [&](const states& s, int) {
                    return written(s, [&](const graph& g) {
                        graph const flat = written_out(g);
                        return rows.result(flat, flat.results[u(k)]);
                    });
                },
                [&](int open, const std::vector<std::vector<int>>& groups, const std::vector<std::string>& texts, int) {
                    input_entry const& in = e_.inputs[open];
                    std::string s = in.what == detail::kind::word ? "NA()" : texts.back();
                    for (std::size_t g = groups.size() - (in.what == detail::kind::word ? 0 : 1); g-- > 0;) {
                        std::string when;
                        for (int state : groups[g]) {
                            std::string one = names_[u(open)];
                            if (in.what == detail::kind::word) one += std::string("=\"") + in.words[state] + "\"";
                            else if (in.what == detail::kind::optional_number) one = state ? "NOT(ISBLANK(" + one + "))" : "ISBLANK(" + one + ")";
                            else if (!state) one = "NOT(" + one + ")";
                            when += (when.empty() ? "" : ";") + one;
                        }
                        if (groups[g].size() > 1) when = "OR(" + when + ")";
                        s = "IF(" + when + ";" + texts[g] + ";" + s + ")";
                    }
                    return s;
                }));
        }
        std::string out = rows.take();
        for (int k = 0; k < e_.results; ++k) {
            output_entry const& o = e_.outputs[k];
            std::string f = formulas[u(k)];
            if (o.several_words) throw not_printable{"its result is several words, which a cell cannot hold"};
            if (o.words) {
                f = "CHOOSE(1+" + f;
                for (std::size_t w = 0; w < o.word_total; ++w) f += std::string(";\"") + o.words[w] + "\"";
                f += ")";
            } else if (o.truth) {
                f = "(" + f + ")<>0";
            }
            if (f.size() > 8000) throw not_printable{"its formula is longer than a cell can hold"};
            out += results[u(k)] + "\t=" + f + "\n";
        }
        return out;
    }

    // ---- mathematics

    std::string latex() {
        constexpr std::size_t most_cases = 4;
        states s = state_;
        std::vector<std::pair<std::string, std::vector<states>>> texts;  // and the states that give them
        auto each = [&](auto& self, states at) -> void {
            int const open = next_open(at);
            if (open < 0) {
                std::string const t = display(at);
                for (auto& known : texts)
                    if (known.first == t) return known.second.push_back(at);
                texts.push_back({t, {at}});
                return;
            }
            for (int k = 0; k < states_of(e_.inputs[open]) && texts.size() <= most_cases; ++k) at[u(open)] = k, self(self, at);
        };
        each(each, s);
        if (texts.size() > most_cases) {
            // Too many to be read: the usual one stands for all.
            for (int i = 0; i < e_.arity; ++i)
                if (s[u(i)] < 0) s[u(i)] = e_.inputs[i].optional ? (is_absent(e_.inputs[i].fallback) ? 0 : static_cast<int>(e_.inputs[i].fallback)) : 0;
            return aligned({"&\\text{for } " + said(s) + ":", display(s)});
        }
        if (texts.size() == 1) return aligned({texts[0].first});
        std::vector<std::string> all;
        for (auto const& [t, which] : texts) {
            std::string when;
            for (std::size_t k = 0; k < which.size(); ++k) {
                if (k == 3) {
                    when += " \\text{ or others}";
                    break;
                }
                when += (k ? " \\text{ or } " : "") + said(which[k]);
            }
            all.push_back("&\\text{for } " + when + ":");
            all.push_back(t);
        }
        return aligned(all);
    }
    std::string said(const states& s) const {
        std::string out;
        for (int i = 0; i < e_.arity; ++i) {
            input_entry const& in = e_.inputs[i];
            if (!has_states(in) || state_[u(i)] >= 0) continue;
            out += out.empty() ? "" : " \\text{ and } ";
            std::string name = in.name, shown;
            for (char c : name) shown += c == '_' ? "\\_" : std::string(1, c);
            out += "\\mathrm{" + shown + "}";
            if (in.what == detail::kind::word) {
                std::string w = in.words[s[u(i)]], t;
                for (char c : w) t += c == '_' ? "\\_" : std::string(1, c);
                out += " = \\text{" + t + "}";
            } else if (in.what == detail::kind::truth) {
                out += s[u(i)] ? " \\text{ true}" : " \\text{ false}";
            } else {
                out += s[u(i)] ? " \\text{ given}" : " \\text{ not given}";
            }
        }
        return out;
    }
    std::string display(const states& s) {
        return written(s, [&](const graph& g) {
            std::string out;
            for (auto const& l : mathematics(e_, g, from_->elements != 0).lines()) out += (out.empty() ? "" : " \\\\\n") + l;
            return out;
        });
    }
    static std::string aligned(const std::vector<std::string>& displays) {
        std::string s;
        for (auto const& d : displays) s += (s.empty() ? "" : " \\\\\n") + d;
        return "\\begin{aligned}\n" + s + "\n\\end{aligned}";
    }
};

}  // namespace

std::string printed(const entry& e, style how, const states& chosen) { return writer(e, how, chosen).run(); }

}  // namespace wortmath::core
