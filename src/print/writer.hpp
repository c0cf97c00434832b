// A model in a style: its words, its comment, its results.
#pragma once

#include "print/code.hpp"
#include "print/mathematics.hpp"
#include "print/sheet.hpp"

namespace wortmath::core::print {

inline bool has_states(const input_entry& in) {
    return in.what == detail::kind::word || in.what == detail::kind::truth || in.what == detail::kind::optional_number;
}
inline int states_of(const input_entry& in) { return in.what == detail::kind::word ? static_cast<int>(in.word_total) : has_states(in) ? 2 : 1; }

class writer {
public:
    writer(const entry& e, style how, const states& chosen)
        : e_(e), how_(how), state_(static_cast<std::size_t>(e.arity), -1), from_(find_recorder(e.path.full)) {
        if (!from_) throw not_printable{std::string("there is no recording of ") + e.path.full};
        for (std::size_t i = 0; i < state_.size() && i < chosen.size(); ++i) state_[i] = chosen[i];
        for (int i = 0; i < e.arity; ++i)
            if (!has_states(e.inputs[i])) state_[static_cast<std::size_t>(i)] = 0;
    }
    std::string run() {
        switch (how_) {
            case style::latex:
                return latex();
            case style::openformula:
                return rows();
            default:
                return code();
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
        if (r.asked_for_a_number)
            throw not_printable{std::string(e_.path.full) +
                                " is computed by an iteration whose length depends on its own results; it has no closed form to print"};
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
                if (at == texts.end())
                    texts.push_back(t), groups.push_back({k});
                else
                    groups[static_cast<std::size_t>(at - texts.begin())].push_back(k);
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
        for (int k = 0; k < e_.results; ++k)
            s += (k ? ", " : "") + (e_.outputs[k].name ? std::string(e_.outputs[k].name) + " " : "") + "[" + e_.outputs[k].of->unit + "]";
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
                    if (python)
                        out += const_indent + (last_of_two ? "else" : (k ? "elif " : "if ") + when) + ":\n" + texts[k];
                    else
                        out += (k ? "" : const_indent) + (last_of_two ? "{\n" : "if (" + when + ") {\n") + texts[k] + const_indent + "}" +
                               (k + 1 < groups.size() ? " else " : "\n");
                }
                if (e_.inputs[open].what == detail::kind::word) out += const_indent + unknown_word(open) + "\n";
                return out;
            });
        if (python) {
            std::string s = how_ == style::python ? "import math\n\n\n" : "import mpmath as mp\n\n\n";
            s += "def " + function_name() + "(" + parameters() + "):\n";
            return s + commented("    r\"\"\"", "    ", "\n    \"\"\"\n", false) + body;
        }
        if (how_ == style::javascript)
            return commented("/**\n * ", " * ", "\n */\n", true) + "function " + function_name() + "(" + parameters() + ") {\n" + body + "}\n";
        std::string s = "#include <math.h>\n";
        if (has_words()) s += "#include <string.h>\n";
        s += "\n";
        if (e_.outputs[0].name) {
            s += "struct " + function_name() + "_result {\n";
            for (int k = 0; k < e_.results; ++k) s += "    " + std::string(e_.outputs[k].truth ? "int " : "double ") + e_.outputs[k].name + ";\n";
            s += "};\n\n";
        }
        std::string const type = e_.outputs[0].name    ? "struct " + function_name() + "_result "
                                 : e_.outputs[0].words ? (e_.outputs[0].several_words ? "unsigned " : "const char *")
                                                       : "double ";
        return s + commented("/* ", "   ", " */\n", true) + type + function_name() + "(" + parameters() + ") {\n" + body + "}\n";
    }
    bool has_words() const {
        for (int i = 0; i < e_.arity; ++i)
            if (e_.inputs[i].what == detail::kind::word && state_[u(i)] < 0) return true;
        return false;
    }
    // Words that were chosen are no arguments any more.
    bool is_parameter(int i) const {
        return !has_states(e_.inputs[i]) || state_[u(i)] < 0 || (e_.inputs[i].what == detail::kind::optional_number && state_[u(i)] == 1);
    }
    std::string parameters() const {
        std::string s;
        bool lists = false;
        for (int i = 0; i < e_.arity; ++i) {
            if (!is_parameter(i)) continue;
            input_entry const& in = e_.inputs[i];
            s += s.empty() ? "" : ", ";
            if (how_ == style::c) {
                if (in.what == detail::kind::list)
                    s += "const double *" + names_[u(i)], lists = true;
                else if (in.what == detail::kind::word)
                    s += "const char *" + names_[u(i)];
                else
                    s += (in.what == detail::kind::truth ? "int " : "double ") + names_[u(i)];
                continue;
            }
            s += names_[u(i)];
            if (!in.optional) continue;
            s += how_ == style::javascript ? " = " : "=";
            if (is_absent(in.fallback))
                s += how_ == style::javascript ? "null" : "None";
            else if (in.what == detail::kind::word)
                s += std::string("\"") + in.words[static_cast<std::size_t>(in.fallback)] + "\"";
            else if (in.what == detail::kind::truth)
                s += how_ == style::javascript ? (in.fallback != 0.0 ? "true" : "false") : (in.fallback != 0.0 ? "True" : "False");
            else
                s += literal(in.fallback, how_ == style::mpmath ? style::python : how_);
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
            for (std::size_t k = 0; k < g.results.size(); ++k)
                s += (k ? ", " : "") + std::string(e_.outputs[k].name) + ": " + dressed(e_.outputs[k], c.result(k));
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
                            if (in.what == detail::kind::word)
                                one += std::string("=\"") + in.words[state] + "\"";
                            else if (in.what == detail::kind::optional_number)
                                one = state ? "NOT(ISBLANK(" + one + "))" : "ISBLANK(" + one + ")";
                            else if (!state)
                                one = "NOT(" + one + ")";
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
                std::string const w = in.words[s[u(i)]];
                std::string t;
                for (char c : w) t += c == '_' ? "\\_" : std::string(1, c);
                out += (t == w ? " = \\text{" : " = \\mathrm{") + t + "}";
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

}  // namespace wortmath::core::print
