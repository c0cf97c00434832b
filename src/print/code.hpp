// A formula as statements of Python, C or JavaScript.
#pragma once

#include "print/words.hpp"

namespace wortmath::core::print {

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
            case step::square:
                return 2;
            case step::cube:
                return 3;
            case step::poly:
                return k == 0 ? static_cast<int>(s.of.size()) - 1 : 1;
            case step::least:
            case step::most:
                return how_ == style::c ? 3 : 1;
            case step::lines:
            case step::stairs:
                return 3;
            default:
                return 1;
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
            if (s.what == step::choice)
                inner_[0][u(i)] = new_block(here, -1), inner_[1][u(i)] = new_block(here, -1);
            else if (is_loop(s.what))
                inner_[0][u(i)] = new_block(here, i);
            for (std::size_t k = 0; k < s.of.size(); ++k) {
                int where = here;
                if (s.what == step::choice && k > 0)
                    where = inner_[k - 1][u(i)];
                else if (is_loop(s.what) && k >= (s.what == step::bracketed ? 2u : 1u))
                    where = inner_[0][u(i)];
                else if (s.what == step::running)
                    where = k == 0 ? block_of_[u(sum_of_loop_.at(s.index))] : inner_[0][u(sum_of_loop_.at(s.index))];
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
        return names_.fresh(g_[i].what == step::named  ? g_[i].name
                            : wish != wished_.end()    ? wish->second
                            : g_[i].what == step::sum  ? "total"
                            : is_condition(g_[i].what) ? "so"
                                                       : "u");
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
        tables_ += std::string(static_cast<std::size_t>(top_) * 4, ' ') +
                   (how_ == style::c            ? "static const double " + name + "[]"
                    : how_ == style::javascript ? "const " + name
                                                : name) +
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
            case step::choice:
                choice(i);
                return;
            case step::root:
            case step::bracketed:
                iteration(i, s);
                return;
            case step::sum:
                loop(i, s);
                return;
            case step::lines:
            case step::stairs:
                look_up(i, s);
                return;
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
        if (goes_on)
            decide(value, name);
        else
            line(name + " = " + expression(value).s + end());
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
                                          : (python()           ? "len(" + inputs_[u(list)] + ")"
                                             : how_ == style::c ? "n"
                                                                : inputs_[u(list)] + ".length") +
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
        std::string const e =
            lines ? ys + here + " + (" + x + " - " + xs + here + ") * ((" + ys + next + " - " + ys + here + ") / (" + xs + next + " - " + xs + here + "))"
                  : ys + here;
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
            case step::number:
                return {literal(s.value, how_), s.value < 0.0 ? prefix : atom};
            case step::input:
                return {inputs_[u(s.index)], atom};
            case step::element:
                return {inputs_[u(s.index)] + "[" + std::to_string(s.count) + "]", atom};
            case step::item:
                return {name_[u(i)] + "[" + loop_index_[s.index] + "]", atom};
            case step::member: {
                int const shift = static_cast<int>(s.value);
                return {inputs_[u(s.count)] + "[" + loop_index_[s.index] + (shift ? " + " + std::to_string(shift) : "") + "]", atom};
            }
            case step::negative:
                return {"-" + at_least(expression(s.of[0]), prefix + 1), prefix};
            case step::plus: {
                recorded_step const& right = g_[s.of[1]];
                if (right.what == step::number && right.value < 0.0)
                    return {at_least(expression(s.of[0]), additive) + " - " + literal(-right.value, how_), additive};
                return binary(s, " + ", additive, multiplicative);
            }
            case step::minus:
                return binary(s, " - ", additive, multiplicative);
            case step::times:
                return binary(s, " * ", multiplicative, prefix);
            case step::over:
                return binary(s, " / ", multiplicative, prefix);
            case step::less:
                return binary(s, " < ", comparison, additive);
            case step::less_equal:
                return binary(s, " <= ", comparison, additive);
            case step::greater:
                return binary(s, " > ", comparison, additive);
            case step::greater_equal:
                return binary(s, " >= ", comparison, additive);
            case step::equal:
                return binary(s, how_ == style::javascript ? " === " : " == ", comparison, additive);
            case step::not_equal:
                return binary(s, how_ == style::javascript ? " !== " : " != ", comparison, additive);
            case step::both:
                return binary(s, python() ? " and " : " && ", and_, and_ + 1);
            case step::either:
                return binary(s, python() ? " or " : " || ", or_, or_ + 2);
            case step::opposite:
                return {python() ? "not " + at_least(expression(s.of[0]), not_) : "!" + at_least(expression(s.of[0]), atom), python() ? not_ : prefix};
            case step::choice: {
                std::string const condition = at_least(expression(s.of[0]), ternary + 1), yes = at_least(expression(s.of[1]), ternary + 1),
                                  no = expression(s.of[2]).s;
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
            case step::power:
                return {call("pow", expression(s.of[0]).s + ", " + expression(s.of[1]).s), atom};
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
            case step::named:
                return expression(s.of[0]);
            default:
                throw not_printable{"a step has no form in this language"};
        }
    }
};

}  // namespace wortmath::core::print
