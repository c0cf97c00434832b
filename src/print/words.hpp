// Numbers, names and operators as text: what all languages share.
#pragma once

#include <charconv>
#include <cmath>
#include <set>

#include "print/graph.hpp"

namespace wortmath::core::print {

inline std::string shortest(double x) {
    char text[40];
    auto const end = std::to_chars(text, text + sizeof text, x).ptr;
    return {text, end};
}

// As in most programming languages: 4.0, 1e-05.
inline std::string literal(double x, style how) {
    if (x != x)
        return how == style::python ? "math.nan" : how == style::mpmath ? "mp.nan" : how == style::c ? "NAN" : how == style::javascript ? "NaN" : "NA()";
    if (std::isinf(x)) {
        std::string const sign = x < 0 ? "-" : "";
        return sign + (how == style::python       ? "math.inf"
                       : how == style::mpmath     ? "mp.inf"
                       : how == style::c          ? "INFINITY"
                       : how == style::javascript ? "Infinity"
                                                  : "9.99E307");
    }
    std::string s = shortest(x);
    if (how == style::openformula) {
        std::replace(s.begin(), s.end(), 'e', 'E');
        return s;
    }
    if (s.find_first_of(".e") == std::string::npos) s += ".0";
    return how == style::mpmath ? "k(" + s + ")" : s;
}

inline bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
inline bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Names of steps as identifiers; every name once.
class namer {
public:
    explicit namer(style how) : how_(how) {
        if (how == style::python || how == style::mpmath) {
            for (const char* w : {"and",    "as", "assert", "class",  "def", "del", "elif",  "else",  "except", "for", "from",  "global", "if",
                                  "import", "in", "is",     "lambda", "not", "or",  "pass",  "raise", "return", "try", "while", "with",   "yield",
                                  "math",   "mp", "abs",    "min",    "max", "len", "range", "k",     "float",  "int", "bool"})
                used_.insert(w);
        } else if (how == style::c) {
            for (const char* w :
                 {"auto", "break",    "case",  "char", "const",    "continue", "default", "do",     "double", "else",   "enum",     "extern", "float",
                  "for",  "if",       "int",   "long", "register", "return",   "short",   "signed", "static", "struct", "switch",   "union",  "unsigned",
                  "void", "volatile", "while", "exp",  "log",      "pow",      "sqrt",    "fabs",   "floor",  "NAN",    "INFINITY", "n",      "I"})
                used_.insert(w);
        } else if (how == style::javascript) {
            for (const char* w :
                 {"await",    "break",  "case",      "class", "const", "continue", "default", "delete", "do",     "else",   "export",  "false", "for",
                  "function", "if",     "import",    "in",    "let",   "new",      "null",    "return", "static", "switch", "this",    "throw", "true",
                  "try",      "typeof", "undefined", "var",   "void",  "while",    "with",    "yield",  "Math",   "NaN",    "Infinity"})
                used_.insert(w);
        }
    }
    std::string fresh(const std::string& wish) {
        std::string id;
        for (char c : wish) {
            if (c == '\'')
                id += "_prime";
            else if (c == '/')
                id += "_over_";
            else
                id += is_letter(c) || is_digit(c) ? c : '_';
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

inline std::string under_scored(const char* path) {
    std::string s = path;
    std::replace(s.begin(), s.end(), '.', '_');
    return s;
}

inline std::string limit_text(double x) {
    char text[40];
    std::snprintf(text, sizeof text, "%.9g", std::fabs(x) < 1e-300 ? 0.0 : x);
    return text;
}
// An open end is the nearest number beyond the limit.
inline std::string range_text(const limits& r) {
    std::string const lo = limit_text(r.valid_lo), hi = limit_text(r.valid_hi);
    bool const open_lo = r.valid_lo > std::strtod(lo.c_str(), nullptr), open_hi = r.valid_hi < std::strtod(hi.c_str(), nullptr);
    bool const endless_lo = r.valid_lo<-1e300, endless_hi = r.valid_hi> 1e300;
    if (endless_lo && endless_hi) return "any";
    if (endless_hi) return open_lo ? "above " + lo : lo + " or more";
    if (endless_lo) return open_hi ? "below " + hi : hi + " at most";
    return (open_lo ? "above " : "") + lo + " to " + (open_hi ? "below " : "") + hi;
}

inline bool is_leaf(step s) {
    return s == step::number || s == step::input || s == step::element || s == step::variable || s == step::item || s == step::member || s == step::running;
}
inline bool is_condition(step s) { return s >= step::less && s <= step::opposite; }
inline bool is_loop(step s) { return s == step::root || s == step::bracketed || s == step::sum; }

struct text {
    std::string s;
    int strength;  // of the operator that stands in it alone
};
enum strength { any = 0, ternary = 1, or_ = 2, and_ = 3, not_ = 4, comparison = 5, additive = 6, multiplicative = 7, prefix = 8, postfix = 9, atom = 10 };

inline std::string at_least(const text& t, int needed) { return t.strength >= needed ? t.s : "(" + t.s + ")"; }

}  // namespace wortmath::core::print
