// The small language of tests/reference/*/checks.csv; tests/python/expression.py reads the same.
//
//   numbers, + - * / ( ), unary minus, comparisons, and or not, column names, col('odd name'), 'words', true false none,
//   [a, b], list(column), abs min max, model calls topic.family.model(1.04, keyword=2), result fields .red
#pragma once

#include <cmath>
#include <cstdlib>
#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

#include "core.hpp"

namespace test {

struct value {
    enum class kind { number, word, list, none, results } what = kind::none;
    double number = 0.0;
    std::string word;
    std::vector<double> list;
    std::vector<std::string> fields;  // of results

    static value of(double x) { value v; v.what = kind::number, v.number = x; return v; }
    static value of(std::string s) { value v; v.what = kind::word, v.word = std::move(s); return v; }
    double real() const {
        if (what == kind::number) return number;
        throw std::runtime_error("a number is expected, there is " + (what == kind::word ? "'" + word + "'" : std::string("something else")));
    }
    bool truth() const { return real() != 0.0; }
};

inline value number_or_word(const std::string& text) {
    char* end = nullptr;
    double const x = std::strtod(text.c_str(), &end);
    if (!text.empty() && *end == '\0') return value::of(x);
    if (text == "True" || text == "true") return value::of(1.0);
    if (text == "False" || text == "false") return value::of(0.0);
    return value::of(text);
}

inline std::vector<double> list_of(const std::string& text) {
    std::vector<double> out;
    std::size_t at = 0;
    while (at <= text.size() && !text.empty()) {
        std::size_t const bar = std::min(text.find_first_of("|;", at), text.size());
        out.push_back(std::strtod(text.substr(at, bar - at).c_str(), nullptr));
        at = bar + 1;
    }
    return out;
}

// Calls a model by path, with arguments by position or by name ("" for a position).
inline value call_model(const std::string& path, const std::vector<std::pair<std::string, value>>& arguments) {
    namespace core = wortmath::core;
    using wortmath::detail::kind;
    const core::entry* const e = core::find(path.c_str());
    if (!e) throw std::runtime_error("no model " + path);
    auto how = wortmath::policy::raise;
    std::vector<value> bound(static_cast<std::size_t>(e->arity));
    std::vector<bool> given(bound.size(), false);
    std::size_t position = 0;
    for (auto const& [name, v] : arguments) {
        if (name == "policy") {
            how = v.word == "extrapolate" ? wortmath::policy::extrapolate : v.word == "nan" ? wortmath::policy::nan : wortmath::policy::raise;
            continue;
        }
        std::size_t at = position;
        if (name.empty()) ++position;
        else
            for (at = 0; at < bound.size() && name != e->inputs[at].name; ++at) {}
        if (at >= bound.size()) throw std::runtime_error(path + " has no argument " + (name.empty() ? std::string("so far back") : name));
        bound[at] = v, given[at] = true;
    }
    std::vector<double> scalars(bound.size());
    std::vector<const double*> in(bound.size());
    std::size_t n = 1;
    for (std::size_t i = 0; i < bound.size(); ++i) {
        const core::input_entry& a = e->inputs[i];
        in[i] = &scalars[i];
        if (!given[i]) {
            if (!a.optional) throw std::runtime_error(path + ": " + a.name + " is missing");
            scalars[i] = a.fallback;
        } else if (a.what == kind::list) {
            if (bound[i].what == value::kind::number) bound[i].list = {bound[i].number};
            n = bound[i].list.size();
            in[i] = bound[i].list.data();
        } else if (a.what == kind::word) {
            std::size_t w = 0;
            while (w < a.word_total && bound[i].word != a.words[w]) ++w;
            if (w == a.word_total) throw std::runtime_error(path + ": " + a.name + " knows no '" + bound[i].word + "'");
            scalars[i] = static_cast<double>(w);
        } else if (bound[i].what == value::kind::none) {
            scalars[i] = core::absent();
        } else {
            scalars[i] = bound[i].real();
        }
    }
    wortmath::range_error error;
    double out[4]{};
    if (core::diagnose(*e, how, in.data(), n, error)) {
        if (!(e->guards && error.where == wortmath::region::impossible)) throw error;
        out[0] = e->worst;
    } else if (e->has_lists) {
        e->listed(in.data(), n, out);
    } else {
        std::vector<double> flat(bound.size() + 1);
        for (std::size_t i = 0; i < bound.size(); ++i) flat[i] = *in[i];
        e->scalar(flat.data(), out);
    }
    if (e->refusal && out[0] != out[0]) core::describe_joint(*e, wortmath::region::impossible, error), throw error;
    if (e->holds && how != wortmath::policy::extrapolate && !e->holds(in.data(), n, out)) core::describe_joint(*e, wortmath::region::joint, error), throw error;
    auto word_of = [](const core::output_entry& o, double v) {
        if (!o.several_words) return std::string(o.words[static_cast<std::size_t>(v)]);
        std::string joined;
        for (std::size_t i = 0; i < o.word_total; ++i)
            if (static_cast<unsigned>(v) >> i & 1u) joined += (joined.empty() ? "" : "|") + std::string(o.words[i]);
        return joined;
    };
    if (e->results == 1 && !e->outputs[0].name) return e->outputs[0].words ? value::of(word_of(e->outputs[0], out[0])) : value::of(out[0]);
    value v;
    v.what = value::kind::results;
    for (int k = 0; k < e->results; ++k) v.list.push_back(out[k]), v.fields.push_back(e->outputs[k].name);
    return v;
}

class expression {
public:
    using lookup = std::function<std::string(const std::string&)>;  // the text of a column in this row
    expression(const std::string& text, lookup columns) : text_(text), column_(std::move(columns)) {}
    value run() {
        value v = disjunction();
        blank();
        if (at_ != text_.size()) throw std::runtime_error("cannot read \"" + text_.substr(at_) + "\" in \"" + text_ + "\"");
        return v;
    }

private:
    const std::string& text_;
    lookup column_;
    std::size_t at_ = 0;

    void blank() { while (at_ < text_.size() && text_[at_] == ' ') ++at_; }
    bool take(const char* token) {
        blank();
        std::size_t const n = std::char_traits<char>::length(token);
        if (text_.compare(at_, n, token) != 0) return false;
        bool const word = std::isalpha(static_cast<unsigned char>(token[0])) != 0;
        if (word && at_ + n < text_.size() && (std::isalnum(static_cast<unsigned char>(text_[at_ + n])) || text_[at_ + n] == '_')) return false;
        at_ += n;
        return true;
    }
    void need(const char* token) { if (!take(token)) throw std::runtime_error(std::string("\"") + token + "\" is missing in \"" + text_ + "\""); }

    value disjunction() {
        value v = conjunction();
        while (take("or")) { bool const b = conjunction().truth(); v = value::of(v.truth() || b ? 1.0 : 0.0); }
        return v;
    }
    value conjunction() {
        value v = negation();
        while (take("and")) { bool const b = negation().truth(); v = value::of(v.truth() && b ? 1.0 : 0.0); }
        return v;
    }
    value negation() { return take("not") ? value::of(negation().truth() ? 0.0 : 1.0) : comparison(); }
    value comparison() {
        value v = sum();
        for (const char* op : {"<=", ">=", "==", "!=", "<", ">"}) {
            if (!take(op)) continue;
            value const w = sum();
            std::string const o = op;
            bool r;
            if (v.what == value::kind::word || w.what == value::kind::word) r = (v.what == w.what && v.word == w.word) == (o == "==");
            else r = o == "<=" ? v.real() <= w.real() : o == ">=" ? v.real() >= w.real() : o == "==" ? v.real() == w.real() : o == "!=" ? v.real() != w.real() : o == "<" ? v.real() < w.real() : v.real() > w.real();
            return value::of(r ? 1.0 : 0.0);
        }
        return v;
    }
    value sum() {
        value v = product();
        for (;;) {
            if (take("+")) v = value::of(v.real() + product().real());
            else if (take("-")) v = value::of(v.real() - product().real());
            else return v;
        }
    }
    value product() {
        value v = unary();
        for (;;) {
            if (take("*")) v = value::of(v.real() * unary().real());
            else if (take("/")) v = value::of(v.real() / unary().real());
            else return v;
        }
    }
    value unary() { return take("-") ? value::of(-unary().real()) : field(primary()); }
    value field(value v) {
        while (v.what == value::kind::results && take(".")) {
            std::string const name = identifier();
            for (std::size_t i = 0;; ++i) {
                if (i == v.fields.size()) throw std::runtime_error("no result " + name);
                if (v.fields[i] == name) return value::of(v.list[i]);
            }
        }
        return v;
    }
    std::string identifier() {
        blank();
        std::size_t const from = at_;
        while (at_ < text_.size() && (std::isalnum(static_cast<unsigned char>(text_[at_])) || text_[at_] == '_')) ++at_;
        return text_.substr(from, at_ - from);
    }
    std::string quoted() {
        need("'");
        std::size_t const end = text_.find('\'', at_);
        if (end == std::string::npos) throw std::runtime_error("a quote is not closed in \"" + text_ + "\"");
        std::string const s = text_.substr(at_, end - at_);
        at_ = end + 1;
        return s;
    }
    value primary() {
        blank();
        if (at_ >= text_.size()) throw std::runtime_error("\"" + text_ + "\" ends too early");
        char const c = text_[at_];
        if (c == '(') { ++at_; value v = disjunction(); need(")"); return v; }
        if (c == '\'') return value::of(quoted());
        if (c == '[') {
            ++at_;
            value v;
            v.what = value::kind::list;
            while (!take("]")) { v.list.push_back(disjunction().real()); take(","); }
            return v;
        }
        if (std::isdigit(static_cast<unsigned char>(c)) || c == '.') {
            char* end = nullptr;
            double const x = std::strtod(text_.c_str() + at_, &end);
            at_ = static_cast<std::size_t>(end - text_.c_str());
            return value::of(x);
        }
        std::string name = identifier();
        if (name.empty()) throw std::runtime_error("cannot read \"" + text_.substr(at_) + "\" in \"" + text_ + "\"");
        if (name == "true") return value::of(1.0);
        if (name == "false") return value::of(0.0);
        if (name == "none") return {};
        if (name == "col") { need("("); name = quoted(); need(")"); return number_or_word(column_(name)); }
        if (name == "list") {
            need("(");
            std::string const column = take("col") ? (need("("), [&] { std::string s = quoted(); need(")"); return s; }()) : identifier();
            need(")");
            value v;
            v.what = value::kind::list, v.list = list_of(column_(column));
            return v;
        }
        if (name == "abs") { need("("); double const x = disjunction().real(); need(")"); return value::of(std::fabs(x)); }
        if (name == "min" || name == "max") {
            need("(");
            double const a = disjunction().real();
            need(",");
            double const b = disjunction().real();
            need(")");
            return value::of(name == "min" ? std::fmin(a, b) : std::fmax(a, b));
        }
        if (at_ < text_.size() && text_[at_] == '.' ) {
            std::string path = name;
            while (at_ < text_.size() && text_[at_] == '.') ++at_, path += "." + identifier();
            need("(");
            std::vector<std::pair<std::string, value>> arguments;
            while (!take(")")) {
                std::size_t const back = at_;
                std::string const key = identifier();
                if (!key.empty() && take("=") && text_[at_] != '=') {
                    value v = disjunction();
                    arguments.emplace_back(key, std::move(v));
                } else {
                    at_ = back;
                    arguments.emplace_back("", disjunction());
                }
                take(",");
            }
            return call_model(path, arguments);
        }
        return number_or_word(column_(name));
    }
};

}  // namespace test
