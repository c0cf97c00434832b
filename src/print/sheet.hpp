// A formula as rows of a spreadsheet, in OpenFormula.
#pragma once

#include "print/words.hpp"

namespace wortmath::core::print {

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
            uses_[static_cast<std::size_t>(s.of[k])] +=
                s.what == step::square || s.what == step::cube || s.what == step::lines || (s.what == step::poly && k == 0) ? 2 : 1;
            if (s.what == step::function && (std::strcmp(s.name, "expm1") == 0 || std::strcmp(s.name, "log1p") == 0))
                ++uses_[static_cast<std::size_t>(s.of[k])];
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
    text binary(const recorded_step& s, const char* op, int own, int right) {
        return {at_least(expression(s.of[0]), own) + op + at_least(expression(s.of[1]), right), own};
    }

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
            case step::number:
                return {literal(s.value, style::openformula), s.value < 0.0 ? prefix : atom};
            case step::input:
                return {inputs_[static_cast<std::size_t>(s.index)], atom};
            case step::item:
                return {array(s.ys, s.ys.size()), atom};
            case step::member:
                if (s.value == 0.0) return {inputs_[static_cast<std::size_t>(s.count)], atom};
                break;
            default:
                break;
        }
        throw not_printable{"it goes through a list in a way that a spreadsheet has no formula for"};
    }
    text spelled_out(const recorded_step& s) {
        switch (s.what) {
            case step::negative:
                return {"-" + at_least(expression(s.of[0]), prefix + 1), prefix};
            case step::plus: {
                recorded_step const& right = (*g_)[s.of[1]];
                if (right.what == step::number && right.value < 0.0)
                    return {at_least(expression(s.of[0]), additive) + "-" + literal(-right.value, style::openformula), additive};
                return binary(s, "+", additive, multiplicative);
            }
            case step::minus:
                return binary(s, "-", additive, multiplicative);
            case step::times:
                return binary(s, "*", multiplicative, prefix);
            case step::over:
                return binary(s, "/", multiplicative, prefix);
            case step::less:
                return binary(s, "<", comparison, additive);
            case step::less_equal:
                return binary(s, "<=", comparison, additive);
            case step::greater:
                return binary(s, ">", comparison, additive);
            case step::greater_equal:
                return binary(s, ">=", comparison, additive);
            case step::equal:
                return binary(s, "=", comparison, additive);
            case step::not_equal:
                return binary(s, "<>", comparison, additive);
            case step::both:
                return {"AND(" + joined(s) + ")", atom};
            case step::either:
                return {"OR(" + joined(s) + ")", atom};
            case step::opposite:
                return {"NOT(" + joined(s) + ")", atom};
            case step::choice:
                return {"IF(" + joined(s) + ")", atom};
            case step::power:
                return {"POWER(" + joined(s) + ")", atom};
            case step::least:
                return {"MIN(" + joined(s) + ")", atom};
            case step::most:
                return {"MAX(" + joined(s) + ")", atom};
            case step::named:
                return expression(s.of[0]);
            case step::square:
                return {"POWER(" + expression(s.of[0]).s + ";2)", atom};
            case step::cube:
                return {"POWER(" + expression(s.of[0]).s + ";3)", atom};
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
                std::string const x = expression(s.of[0]).s,
                                  from = "LOOKUP(MAX(" + x + ";" + literal(s.xs[0], style::openformula) + ");" + array(s.xs, m) + ";";
                return {from + array(s.ys, m) + ")+((" + x + ")-" + from + array(s.xs, m) + "))*" + from + array(slopes, m) + ")", additive};
            }
            case step::stairs:
                return {"LOOKUP(MAX(" + expression(s.of[0]).s + ";" + literal(s.xs[0], style::openformula) + ");" + array(s.xs, s.xs.size()) + ";" +
                            array(s.ys, s.ys.size()) + ")",
                        atom};
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
            default:
                throw not_printable{"a step has no form in a spreadsheet"};
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

}  // namespace wortmath::core::print
