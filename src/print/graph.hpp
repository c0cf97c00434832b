// A recording without what nobody uses, and with sums where terms are alike.
#pragma once

#include <algorithm>
#include <map>

#include "print.hpp"
#include "wortmath/record.hpp"

namespace wortmath::core::print {

using nodes = std::vector<int>;

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
            if (s.what != first.what || s.index != first.index || s.count != first.count || std::strcmp(s.name, first.name) != 0 ||
                s.of.size() != first.of.size() || s.xs != first.xs || s.ys != first.ys || s.what == step::variable || s.what == step::root ||
                s.what == step::bracketed || s.of.empty())
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
inline graph written_out(const graph& g) {
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

}  // namespace wortmath::core::print
