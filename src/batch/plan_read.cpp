// The [[target]] and [[free]] of a batch file, and new amounts put into the text where the old ones stand.
#include "batch/toml.hpp"
#include "batch/units.hpp"
#include "wortmath/batch/plan.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wortmath::batch {
namespace {

int line_of(const toml::source_region& r) { return static_cast<int>(r.begin.line); }

std::string seen(const toml::node& n) {
    if (auto const* s = n.as_string()) return in_quotes(s->get());
    if (auto const* i = n.as_integer()) return std::to_string(i->get());
    if (auto const* f = n.as_floating_point()) return plain(f->get());
    if (auto const* b = n.as_boolean()) return b->get() ? "true" : "false";
    return n.is_array() ? "a list" : n.is_table() ? "a table" : "a date or a time of day";
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (auto const& w : words) text += (text.empty() ? "" : ", ") + w;
    return text;
}

// One [[target]] or [[free]].
struct entry {
    const toml::table& t;
    std::string_view name;
    int line;

    [[noreturn]] void fail(std::string_view key, std::string text) const {
        auto const i = t.find(key);
        throw file_error({i == t.end() ? line : line_of(i->first.source()), 0, {}, std::string(key), std::string(name)}, std::move(text));
    }
    void only(const std::vector<std::string>& known) const {
        for (auto const& [key, node] : t)
            if (std::find(known.begin(), known.end(), key.str()) == known.end()) fail(key.str(), "unknown key; known for [[" + std::string(name) + "]]: " + joined(known));
    }
    const toml::node* find(std::string_view key) const {
        auto const i = t.find(key);
        return i == t.end() ? nullptr : &i->second;
    }
    std::optional<std::string> text(std::string_view key) const {
        auto const* n = find(key);
        if (!n) return {};
        auto const* s = n->as_string();
        if (!s || s->get().empty()) fail(key, seen(*n) + " is not a text; write it in quotes");
        return s->get();
    }
};

std::optional<double> bare(const toml::node& n) {
    if (auto const* i = n.as_integer()) return static_cast<double>(i->get());
    if (auto const* f = n.as_floating_point()) return f->get();
    return {};
}

parsed_amount parsed(const entry& e, std::string_view key, const std::string& text, dimension d) {
    try {
        return parse_amount(text, d);
    } catch (const amount_error& x) {
        e.fail(key, x.what());
    }
}

// Numbers with a unit that only results have: "35 BU", "1800 kJ/L".
double with_unit(const entry& e, const std::string& text, std::string_view unit) {
    std::size_t end = 0;
    double v = 0.0;
    try {
        v = std::stod(text, &end);
    } catch (const std::exception&) {
        e.fail("value", in_quotes(text) + " does not begin with a number; expected a number and " + std::string(unit));
    }
    std::string_view rest(text);
    rest.remove_prefix(end);
    while (!rest.empty() && rest.front() == ' ') rest.remove_prefix(1);
    while (!rest.empty() && rest.back() == ' ') rest.remove_suffix(1);
    if (rest != unit) e.fail("value", in_quotes(text) + (rest.empty() ? " has no unit" : ": unknown unit " + in_quotes(rest)) + "; expected " + std::string(unit));
    if (!std::isfinite(v)) e.fail("value", in_quotes(text) + " is not a number");
    return v;
}

plan_target target_of(const entry& e) {
    e.only({"result", "value"});
    plan_target t;
    t.line = e.line;
    auto const key = e.text("result");
    if (!key) e.fail("result", "missing; a target names a key of results");
    auto const known = result_keys();
    if (std::find(known.begin(), known.end(), *key) == known.end()) e.fail("result", in_quotes(*key) + " is not a result that can be a target; known: " + joined(known));
    t.result = *key;
    auto const* n = e.find("value");
    if (!n) e.fail("value", "missing; a target has the value that it shall have");
    auto const ends = [&](std::string_view tail) { return key->ends_with(tail); };
    auto const has = [&](std::string_view part) { return key->find(part) != std::string::npos; };

    if (*key == "bitterness_ratio" || *key == "cells_needed") {
        auto const v = bare(*n);
        if (!v || !std::isfinite(*v)) e.fail("value", seen(*n) + " is not a bare number; this result has no unit");
        t.value = *v, t.text = plain(*v);
    } else {
        auto const* s = n->as_string();
        if (!s && ends("attenuation")) {
            auto const v = bare(*n);
            if (!v || !(*v >= 0.0 && *v <= 1.0)) e.fail("value", seen(*n) + " is not a share: write it with %, in quotes, or as a bare number from 0 to 1");
            t.value = *v, t.text = plain(*v);
        } else {
            if (!s) e.fail("value", seen(*n) + " is not an amount: write a number and a unit in quotes");
            std::string const& text = s->get();
            t.text = text;
            if (ends("gravity")) {
                auto const a = parsed(e, "value", text, dimension::gravity);
                if (a.in->in == measure::plato) {
                    if (*key != "original_gravity") e.fail("value", in_quotes(text) + ": give this gravity as SG");
                    t.result = "original_extract_degp";
                }
                t.value = a.value();
            } else if (*key == "original_extract_degp") {
                auto const a = parsed(e, "value", text, dimension::gravity);
                if (a.in->in != measure::plato) t.result = "original_gravity";
                t.value = a.value();
            } else if (has("alcohol")) {
                t.value = 100.0 * parsed(e, "value", text, dimension::share).value();
            } else if (ends("attenuation")) {
                t.value = parsed(e, "value", text, dimension::share).value();
            } else if (*key == "bitterness_bu") {
                t.value = with_unit(e, text, "BU");
            } else if (*key == "energy_kj_per_l") {
                t.value = with_unit(e, text, "kJ/L");
            } else if (has("colour")) {
                auto const a = parsed(e, "value", text, dimension::colour);
                t.result = a.in->in == measure::ebc ? "colour_ebc" : "colour_srm";
                t.value = a.value();
            } else if (ends("_l")) {
                t.value = parsed(e, "value", text, dimension::volume).value();
            } else if (ends("_g")) {
                t.value = parsed(e, "value", text, dimension::mass).value();
            } else if (ends("_vol")) {
                auto const a = parsed(e, "value", text, dimension::gas);
                t.value = a.in->in == measure::gram_per_litre ? wortmath::carbonation::volumes.real_gas.formula(a.value()) : a.value();
            } else {
                t.value = parsed(e, "value", text, dimension::pressure).value();
            }
        }
    }
    if (t.value < 0.0) e.fail("value", in_quotes(t.text) + " is negative");
    return t;
}

// The limits of a free amount, in the library's unit of that amount.
double limit_of(const entry& e, std::string_view key, const amount<double>& a) {
    auto const* n = e.find(key);
    if (auto const v = bare(*n)) {
        bool const share = a.in == measure::share;
        if (!share && a.in != measure::number) e.fail(key, seen(*n) + " has no unit; write it as the amount itself is written, \"" + a.text + "\"");
        if (!std::isfinite(*v) || *v < 0.0 || (share && *v > 1.0)) e.fail(key, seen(*n) + (share ? " is not a share from 0 to 1" : " is not possible here"));
        return *v;
    }
    auto const* s = n->as_string();
    if (!s) e.fail(key, seen(*n) + " is not an amount: write a number and a unit in quotes");
    unit const* const own = a.unit.empty() ? nullptr : find_unit(a.unit);
    dimension const d = own ? own->of : dimension::share;
    auto const p = parsed(e, key, s->get(), d);
    if (p.in->in != a.in && !(a.in == measure::day && p.in->in == measure::minute))
        e.fail(key, in_quotes(s->get()) + " is on another scale than the amount itself, \"" + a.text + "\"; use its unit");
    double const v = a.in == measure::day ? p.value() / 1440.0 : p.value();
    if (v < 0.0 && a.in != measure::celsius && a.in != measure::metre) e.fail(key, in_quotes(s->get()) + " is negative");
    return v;
}

plan_freedom freedom_of(const entry& e, const std::vector<named_amount<double>>& all) {
    e.only({"name", "step", "key", "least", "most"});
    plan_freedom f;
    f.line = e.line;
    auto const name = e.text("name");
    std::optional<int> step;
    if (auto const* n = e.find("step")) {
        auto const* i = n->as_integer();
        if (!i || i->get() < 1) e.fail("step", seen(*n) + " is not the number of a step; steps are counted from 1");
        step = static_cast<int>(std::min<std::int64_t>(i->get(), 100000));
    }
    if (!name && !step) e.fail("name", "missing; say which amount is free: the name of an ingredient, the number of a step, or both");
    auto const key = e.text("key");
    if (!key) e.fail("key", "missing; say which key is free, such as mass");

    std::vector<std::size_t> fits;
    bool named = false, stepped = false;
    std::vector<std::string> keys;
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto const& a = all[i];
        if (a.at.step == 0) continue;
        if (step && a.at.step != *step) continue;
        stepped = true;
        if (name ? a.ingredient != *name : !a.list.empty()) continue;
        named = true;
        if (std::find(keys.begin(), keys.end(), a.at.key) == keys.end()) keys.push_back(a.at.key);
        if (a.at.key == *key) fits.push_back(i);
    }
    if (!stepped) e.fail("step", "there is no step " + std::to_string(*step) + " with amounts");
    if (name && !named) e.fail("name", "there is no ingredient " + in_quotes(*name) + (step ? " in step " + std::to_string(*step) : std::string()));
    if (fits.empty()) e.fail("key", in_quotes(*key) + " is not an amount there; known: " + joined(keys));
    if (fits.size() > 1) {
        if (*key == "range") e.fail("key", "a range is not one amount");
        bool const same = std::all_of(fits.begin(), fits.end(), [&](std::size_t i) { return all[i].at.step == all[fits[0]].at.step; });
        e.fail("name", in_quotes(name ? *name : *key) + (same ? " stands more than once in that step; give the ingredients names of their own" : " stands more than once; add the number of the step"));
    }
    amount<double> const& a = *all[fits[0]].is;
    if (!a.given) e.fail("key", "this amount is a default and not in the file; write it into step " + std::to_string(all[fits[0]].at.step) + " first");
    f.amounts = fits;
    if (a.value == 0.0 && !(e.find("least") && e.find("most"))) e.fail(e.find("least") ? "most" : "least", "missing; from zero nothing can be guessed: give least and most");
    bool const temperature = a.in == measure::celsius;
    f.least = e.find("least") ? limit_of(e, "least", a) : temperature ? 0.0 : a.value / 1000.0;
    f.most = e.find("most") ? limit_of(e, "most", a) : a.in == measure::share ? 1.0 : temperature ? 100.0 : a.value * 1000.0;
    if (!(f.least < f.most)) e.fail(e.find("most") ? "most" : "least", "the most must be more than the least");
    return f;
}

const toml::array* tables(const toml::table& root, std::string_view name) {
    auto const i = root.find(name);
    return i == root.end() ? nullptr : i->second.as_array();  // the reader has checked that it is a list of tables
}

// Byte of a line and a column, both counted from 1 and columns in characters.
std::size_t byte_of(std::string_view text, toml::source_position at) {
    std::size_t i = 0;
    for (toml::source_index line = 1; line < at.line && i < text.size(); ++i)
        if (text[i] == '\n') ++line;
    for (toml::source_index column = 1; column < at.column && i < text.size(); ++column) {
        ++i;
        while (i < text.size() && (static_cast<unsigned char>(text[i]) & 0xC0) == 0x80) ++i;
    }
    return i;
}

}  // namespace

plan_request read_plan(std::string_view text, const batch<double>& b) {
    toml::table const root = parse_toml(text);
    plan_request r;
    batch<double> copy = b;
    auto const all = amounts_of(copy);
    auto const* targets = tables(root, "target");
    auto const* frees = tables(root, "free");
    if (!targets || targets->empty()) throw file_error({b.line, 0, {}, {}, "target"}, "missing; a plan requires at least one [[target]] with result and value");
    if (!frees || frees->empty()) throw file_error({b.line, 0, {}, {}, "free"}, "missing; a plan requires at least one [[free]] with name or step, and key");
    for (auto const& n : *targets) {
        entry const e{*n.as_table(), "target", line_of(n.source())};
        r.targets.push_back(target_of(e));
        for (std::size_t i = 0; i + 1 < r.targets.size(); ++i)
            if (r.targets[i].result == r.targets.back().result) e.fail("result", in_quotes(r.targets.back().result) + " is a target already, on line " + std::to_string(r.targets[i].line));
    }
    for (auto const& n : *frees) {
        entry const e{*n.as_table(), "free", line_of(n.source())};
        r.free.push_back(freedom_of(e, all));
        for (std::size_t i = 0; i + 1 < r.free.size(); ++i)
            if (r.free[i].amounts == r.free.back().amounts) e.fail("key", "this amount is free already, on line " + std::to_string(r.free[i].line));
    }
    return r;
}

std::string with_amounts(std::string_view text, const std::vector<replacement>& changes) {
    toml::table const root = parse_toml(text);
    batch<double> b = read_text(text);
    auto const all = amounts_of(b);
    struct edit {
        std::size_t from, to;
        std::string words;
    };
    std::vector<edit> edits;
    auto const* steps = tables(root, "step");
    for (auto const& c : changes) {
        auto const& a = all.at(c.amount);
        toml::table const* t = nullptr;
        if (a.at.step > 0 && steps) t = (*steps)[static_cast<std::size_t>(a.at.step - 1)].as_table();
        else t = root[a.at.table].as_table();
        toml::node const* n = nullptr;
        if (t && a.list.empty()) {
            n = t->get(a.at.key);
            if (n && n->is_array()) n = n->as_array()->get(a.element);
        } else if (t) {
            auto const* list = t->get(a.list) ? t->get(a.list)->as_array() : nullptr;
            auto const* item = list ? list->get(a.item) : nullptr;
            if (item && item->as_table()) n = item->as_table()->get(a.at.key);
        }
        if (!n) throw file_error(a.at, "this amount is a default and not in the file; write it there first");
        edit e{byte_of(text, n->source().begin), byte_of(text, n->source().end), written(c.value, a.is->in, a.is->unit)};
        if (n->is_string()) e.words = '"' + e.words + '"';
        edits.push_back(std::move(e));
    }
    std::sort(edits.begin(), edits.end(), [](const edit& x, const edit& y) { return x.from > y.from; });
    std::string out(text);
    for (auto const& e : edits) out.replace(e.from, e.to - e.from, e.words);
    return out;
}

}  // namespace wortmath::batch
