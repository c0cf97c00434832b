// A formula as mathematics, in LaTeX.
#pragma once

#include "print/words.hpp"

namespace wortmath::core::print {

class mathematics {
public:
    mathematics(const entry& e, const graph& g, bool fixed_lists) : e_(e), g_(g), fixed_lists_(fixed_lists) { choose_names(); }

    // Lines of an aligned display: definitions, then the results, then the constants of sums.
    std::vector<std::string> lines() {
        std::vector<std::string> out;
        std::vector<std::set<int>> open(g_.steps.size());  // what an iteration looks for, until it is defined
        std::vector<std::pair<int, std::string>> waiting;
        for (int i : order_) {
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
    nodes order_;
    std::vector<std::string> symbol_, left_;
    std::vector<char> reached_, defines_;
    std::vector<int> uses_, width_;
    std::vector<double> constant_;
    std::vector<char> folded_;
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
        for (int i = 2; !taken_.insert(s).second; ++i)
            s = wish + (wish.find('_') == std::string::npos || wish[0] == '\\' ? "_{(" + std::to_string(i) + ")}" : "^{(" + std::to_string(i) + ")}");
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
        if (folded_[u(i)]) return 14;
        auto w = [&](std::size_t k) { return symbol_[u(s.of[k])].empty() ? width_[u(s.of[k])] : static_cast<int>(visible(symbol_[u(s.of[k])])); };
        switch (s.what) {
            case step::number:
                return static_cast<int>(visible(number(s.value).s));
            case step::input:
                return static_cast<int>(std::strlen(e_.inputs[s.index].name));
            case step::member:
            case step::element:
                return static_cast<int>(std::strlen(e_.inputs[s.what == step::member ? s.count : s.index].name)) + 1;
            case step::over:
                return std::max(w(0), w(1));
            case step::choice:
                return std::max(w(1), w(2)) + w(0);
            case step::poly: {
                int n = 0;
                for (std::size_t k = 1; k < s.of.size(); ++k) n += w(k) + w(0) + 2;
                return n;
            }
            case step::lines:
            case step::stairs:
                return 60;
            case step::root:
                return 2;
            case step::bracketed:
                return 2;
            case step::running:
                return w(1) + 4;
            default: {
                int n = 1;
                for (std::size_t k = 0; k < s.of.size(); ++k) n += w(k) + 1;
                return n;
            }
        }
    }

    static constexpr int worth_naming_used_twice = 16, worth_naming_used_often = 10, too_wide = 64, wide = 30;

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
            if (s.what == step::named || (s.what == step::choice && tops.count(i) && g_.is_undefined(s.of[2])))
                tops.insert(s.of[s.what == step::named ? 0 : 1]);
            for (std::size_t k = 0; k < s.of.size(); ++k) {
                // Start and slope belong to the method, not to the formula.
                if ((s.what == step::root && k != 1 && k != 2) || (s.what == step::bracketed && k == 4)) continue;
                reached_[u(s.of[k])] = 1;
                uses_[u(s.of[k])] += s.what == step::poly && k == 0 ? static_cast<int>(s.of.size()) - 2 : 1;
            }
        }
        constant_.assign(n, undefined), folded_.assign(n, 0);
        std::vector<char> visited(n, 0);
        for (int r : g_.results) put_in_order(r, visited);
        for (int i : order_) {
            recorded_step const& s = g_[i];
            for (int o : s.of)
                if (reached_[u(o)] && s.what != step::sum) in_loop_[u(i)] = in_loop_[u(i)] || in_loop_[u(o)];
            if (s.what == step::item || s.what == step::member || s.what == step::running) in_loop_[u(i)] = 1;
            // A long calculation with nothing but numbers is shown by what it gives.
            constant_[u(i)] = value_of_constant(s);
            if (constant_[u(i)] == constant_[u(i)] && s.what != step::number) {
                folded_[u(i)] = s.what == step::poly || width(i) > 40;
                for (int o : s.of) folded_[u(i)] = folded_[u(i)] || folded_[u(o)];
            }
            if (folded_[u(i)]) {
                width_[u(i)] = width(i);
                continue;
            }
            // What cannot be broken into lines is kept short by naming the widest of its operands.
            bool const goes_on_in_lines =
                s.what == step::plus || s.what == step::minus || s.what == step::poly || s.what == step::named || s.what == step::choice;
            for (int widest = 0; !goes_on_in_lines && width(i) > too_wide && widest >= 0;) {
                widest = -1;
                for (int o : s.of) {
                    step const what = g_[o].what;
                    if (reached_[u(o)] && symbol_[u(o)].empty() && !is_leaf(what) && !is_condition(what) && what != step::named && width_[u(o)] > wide &&
                        (widest < 0 || width_[u(o)] > width_[u(widest)]))
                        widest = o;
                }
                if (widest >= 0) name_automatically(widest);
            }
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
            } else if ((uses_[u(i)] > 1 && w >= worth_naming_used_twice) || (uses_[u(i)] > 2 && w >= worth_naming_used_often) ||
                       (w > too_wide && !tops.count(i)) || s.what == step::root || s.what == step::bracketed || s.what == step::lines) {
                name_automatically(i);
            }
        }
        for (int i = 0; i < g_.size(); ++i) {
            if (!reached_[u(i)]) continue;
            recorded_step const& s = g_[i];
            if (s.what == step::root || s.what == step::bracketed) symbol_[u(s.of[s.what == step::root ? 1 : 2])] = symbol_[u(i)];
        }
    }
    // Not a number where it depends on anything.
    double value_of_constant(const recorded_step& s) const {
        auto v = [&](std::size_t k) { return constant_[u(s.of[k])]; };
        switch (s.what) {
            case step::number:
                return s.value;
            case step::named:
                return v(0);
            case step::negative:
                return -v(0);
            case step::plus:
                return v(0) + v(1);
            case step::minus:
                return v(0) - v(1);
            case step::times:
                return v(0) * v(1);
            case step::over:
                return v(0) / v(1);
            case step::square:
                return v(0) * v(0);
            case step::cube:
                return v(0) * v(0) * v(0);
            case step::power:
                return std::pow(v(0), v(1));
            case step::poly: {
                double y = v(s.of.size() - 1);
                for (std::size_t k = s.of.size() - 1; k-- > 1;) y = v(k) + v(0) * y;
                return y;
            }
            case step::function: {
                std::string const f = s.name;
                if (f == "exp") return std::exp(v(0));
                if (f == "log") return std::log(v(0));
                if (f == "sqrt") return std::sqrt(v(0));
                if (f == "pow") return std::pow(v(0), v(1));
                return undefined;
            }
            default:
                return undefined;
        }
    }
    // Operands first, as a reader goes from left to right.
    void put_in_order(int i, std::vector<char>& visited) {
        if (!reached_[u(i)] || visited[u(i)]) return;
        visited[u(i)] = 1;
        for (int o : g_[i].of) put_in_order(o, visited);
        order_.push_back(i);
    }
    void name_automatically(int i) {
        while (taken_.count("u_{" + std::to_string(++automatic_) + "}")) {
        }
        name(i, "u_{" + std::to_string(automatic_) + "}");
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
        if (s.what == step::bracketed)
            return left + " &\\text{ is the root of } " + equation(s.of[3]) + ",\\quad " + whole(s.of[0]) + " \\le " + left + " \\le " + whole(s.of[1]);
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
        for (std::size_t k = 0; k < conditions.size(); ++k)
            s += (k ? ",\\; " : long_line ? " \\\\\n&\\qquad\\text{for } " : "\\qquad\\text{for } ") + conditions[k];
        return s;
    }

    // Long sums go on in further lines.
    std::string broken(int i, bool itself) {
        std::vector<std::string> parts;
        if (itself || symbol_[u(i)].empty())
            terms(i, parts, itself);
        else
            parts = {expression(i).s};
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
        if (folded_[u(i)] || (!itself && !symbol_[u(i)].empty())) {
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

    text relation(const recorded_step& s, const char* sign) {
        return {wrapped(expression(s.of[0]), additive) + " " + sign + " " + wrapped(expression(s.of[1]), additive), comparison};
    }

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
        if (folded_[u(i)]) return number(constant_[u(i)]);
        switch (s.what) {
            case step::number:
                return number(s.value);
            case step::input:
                return {word(e_.inputs[s.index].name), atom};
            case step::element:
                return {word(e_.inputs[s.index].name) + "_{" + std::to_string(s.count + 1) + "}", atom};
            case step::variable:
                return {"x", atom};
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
                if (o.what == step::function && std::strcmp(o.name, "expm1") == 0 && symbol_[u(s.of[0])].empty())
                    return {"1 - " + exponential(o.of[0]).s, additive};
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
            case step::over:
                return {"\\frac{" + expression(s.of[0]).s + "}{" + expression(s.of[1]).s + "}", postfix};
            case step::less:
                return relation(s, "<");
            case step::less_equal:
                return relation(s, "\\le");
            case step::greater:
                return relation(s, ">");
            case step::greater_equal:
                return relation(s, "\\ge");
            case step::equal:
                return relation(s, "=");
            case step::not_equal:
                return relation(s, "\\ne");
            case step::both:
                return {wrapped(expression(s.of[0]), and_) + " \\text{ and } " + wrapped(expression(s.of[1]), and_), and_};
            case step::either:
                return {wrapped(expression(s.of[0]), or_) + " \\text{ or } " + wrapped(expression(s.of[1]), or_), or_};
            case step::opposite:
                return {"\\text{not } " + wrapped(expression(s.of[0]), not_), not_};
            case step::choice: {
                recorded_step const& c = g_[s.of[0]];
                if (c.what == step::equal && c.of[0] == c.of[1]) return expression(s.of[1]);  // is it a number at all?
                return cases(i);
            }
            case step::function:
                return function(s);
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
            case step::least:
                return {"\\min\\left(" + expression(s.of[0]).s + ",\\; " + expression(s.of[1]).s + "\\right)", postfix};
            case step::most:
                return {"\\max\\left(" + expression(s.of[0]).s + ",\\; " + expression(s.of[1]).s + "\\right)", postfix};
            case step::named:
                return expression(s.of[0]);
            case step::lines:
                return {"\\text{straight lines in } " + expression(s.of[0]).s + " \\text{ through } " + points(s), any};
            case step::stairs:
                return stairs(s);
            case step::sum: {
                int const from = static_cast<int>(s.xs[1]), rest = static_cast<int>(s.xs[2]);
                std::string const top = s.xs[0] < 0.0 || fixed_lists_ ? std::to_string(s.count) : rest ? "n-" + std::to_string(rest) : "n";
                std::string const sum = "\\sum_{i=" + std::to_string(from + 1) + "}^{" + top + "} " + wrapped(expression(s.of[1]), multiplicative);
                bool const none = g_.is_number(s.of[0]) && g_[s.of[0]].value == 0.0;
                return none ? text{sum, multiplicative} : text{expression(s.of[0]).s + " + " + sum, additive};
            }
            default:
                throw not_printable{"a step has no printed form"};
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
        if (f == "atan2") return {"\\mathrm{atan2}\\left(" + x.s + ",\\; " + expression(s.of[1]).s + "\\right)", postfix};
        return {"\\" + f + inside, postfix};
    }
};

}  // namespace wortmath::core::print
