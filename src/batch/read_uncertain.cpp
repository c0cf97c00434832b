#include "wortmath/batch/read_uncertain.hpp"

#include "batch/toml.hpp"
#include "batch/units.hpp"

#include <algorithm>
#include <cmath>
#include <span>

namespace wortmath::batch {
namespace {

constexpr std::string_view presets[] = {"fine_hydrometer", "hydrometer", "household_hydrometer", "thermometer", "kitchen_thermometer", "volume_marks", "hand_refractometer", "litre_cylinder", "weighed_volume_marks"};
constexpr std::string_view shapes[] = {"normal", "rectangular", "triangular", "arcsine"};

int line_of(const toml::source_region& r) { return static_cast<int>(r.begin.line); }

std::string seen(const toml::node& n) {
    if (auto const* s = n.as_string()) return in_quotes(s->get());
    if (auto const* i = n.as_integer()) return std::to_string(i->get());
    if (auto const* f = n.as_floating_point()) return plain(f->get());
    if (auto const* b = n.as_boolean()) return b->get() ? "true" : "false";
    return n.is_array() ? "a list" : n.is_table() ? "a table" : "a date or a time of day";
}
template <class Words>
std::string joined(const Words& words) {
    std::string text;
    for (auto const& w : words) text += (text.empty() ? "" : ", ") + std::string(w);
    return text;
}

struct entry {
    const toml::table& t;
    std::string_view name;
    int line;

    [[noreturn]] void fail(std::string_view key, std::string text) const {
        auto const i = t.find(key);
        throw file_error({i == t.end() ? line : line_of(i->first.source()), 0, {}, std::string(key), std::string(name)}, std::move(text));
    }
    void only(std::initializer_list<std::string_view> known) const {
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
    std::optional<std::string> word(std::string_view key, std::span<const std::string_view> known) const {
        auto const w = text(key);
        if (w && std::find(known.begin(), known.end(), *w) == known.end()) fail(key, in_quotes(*w) + " is unknown; known: " + joined(known));
        return w;
    }
    std::optional<double> number(std::string_view key) const {
        auto const* n = find(key);
        if (!n) return {};
        double v = std::nan("");
        if (auto const* i = n->as_integer()) v = static_cast<double>(i->get());
        else if (auto const* f = n->as_floating_point()) v = f->get();
        if (!std::isfinite(v)) fail(key, seen(*n) + " is not a bare number");
        return v;
    }
    std::optional<int> step(const batch<double>& b) const {
        auto const* n = find("step");
        if (!n) return {};
        auto const* i = n->as_integer();
        if (!i || i->get() < 1) fail("step", seen(*n) + " is not the number of a step; steps are counted from 1");
        if (i->get() > static_cast<std::int64_t>(b.steps.size())) fail("step", "there is no step " + std::to_string(i->get()) + "; the batch has " + std::to_string(b.steps.size()));
        return static_cast<int>(i->get());
    }
};

parsed_amount parsed(const entry& e, std::string_view key, const std::string& text, dimension d) {
    try {
        return parse_amount(text, d);
    } catch (const amount_error& x) {
        e.fail(key, x.what());
    }
}

std::vector<entry> entries(const toml::table& root, std::string_view name) {
    std::vector<entry> all;
    auto const i = root.find(name);
    if (i == root.end()) return all;
    if (auto const* list = i->second.as_array())
        for (auto const& n : *list) all.push_back({*n.as_table(), name, line_of(n.source())});
    return all;
}

// A width around a value: a difference, so that degF have no zero; a percentage of anything but a share is one of the value.
double width(const entry& e, std::string_view key, measure in, const std::string& unit_name, double value) {
    auto const* n = e.find(key);
    double v = 0.0;
    if (auto const bare_number = n->is_number() ? e.number(key) : std::nullopt) {
        if (in != measure::number && in != measure::share) e.fail(key, seen(*n) + " has no unit; write it with the unit of the amount, or in %");
        v = *bare_number;
    } else {
        auto const* s = n->as_string();
        if (!s) e.fail(key, seen(*n) + " is not an amount: write a number and a unit in quotes");
        std::string const& text = s->get();
        bool const percent = text.find('%') != std::string::npos;
        if (percent && in != measure::share) v = parsed(e, key, text, dimension::share).value() * std::abs(value);
        else if (in == measure::number) e.fail(key, in_quotes(text) + ": this amount is a bare number; write the width as one too, or in %");
        else {
            unit const* const own = unit_name.empty() ? nullptr : find_unit(unit_name);
            dimension d{};
            bool known = own != nullptr;
            if (own) d = own->of;
            else
                for (unit const& u : all_units())
                    if (u.in == in || (in == measure::day && u.in == measure::minute)) {
                        d = u.of, known = true;
                        break;
                    }
            if (in == measure::share) d = dimension::share, known = true;
            if (!known) e.fail(key, in_quotes(text) + ": no unit is known for this amount");
            auto const p = parsed(e, key, text, d);
            if (p.in->in != in && !(in == measure::day && p.in->in == measure::minute)) e.fail(key, in_quotes(text) + " is on another scale than the value it belongs to; use the unit of that");
            v = p.number * p.in->times / p.in->over;
            if (in == measure::day) v /= 1440.0;
        }
    }
    if (!(v >= 0.0)) e.fail(key, seen(*n) + " is negative; an uncertainty is a width");
    return v;
}

std::optional<statement> statement_of(const entry& e, measure in, const std::string& unit_name, double value, bool required) {
    statement s;
    int given = 0;
    for (auto const key : {"uncertainty", "limit", "factor", "instrument"}) given += e.find(key) != nullptr;
    if (given > 1) e.fail("uncertainty", "give one of uncertainty (a standard uncertainty), limit (a half-width), factor and instrument");
    if (given == 0) {
        if (required) e.fail("uncertainty", "missing; say how sure the amount is: uncertainty (a standard uncertainty), limit (a half-width), factor or instrument");
        return {};
    }
    auto const shape = e.word("shape", shapes);
    if (shape && !e.find("limit")) e.fail("shape", "a shape goes with a limit: rectangular (all values alike), triangular or arcsine; with uncertainty it is normal");
    if (auto const n = e.number("dof")) {
        if (!(*n > 0.0)) e.fail("dof", plain(*n) + " is not possible; expected the degrees of freedom, above 0");
        if (!e.find("uncertainty")) e.fail("dof", "degrees of freedom go with uncertainty");
        s.dof = *n;
    }
    if (e.find("uncertainty")) s.shape = "normal", s.uncertainty = width(e, "uncertainty", in, unit_name, value);
    else if (e.find("limit")) {
        s.shape = shape.value_or("rectangular");
        if (s.shape == "normal") e.fail("shape", "a limit is the half-width of a shape with ends; give a normal one by its uncertainty");
        s.limit = width(e, "limit", in, unit_name, value);
    } else if (auto const f = e.number("factor")) {
        if (!(*f > 1.0)) e.fail("factor", plain(*f) + " is not possible; right within a factor either way needs one above 1");
        s.shape = "log_normal", s.factor = *f;
    } else {
        s.shape = "instrument", s.instrument = *e.word("instrument", presets);
    }
    s.label = e.text("label").value_or("");
    if (!s.label.empty() && s.instrument.empty()) e.fail("label", "a label tells instruments apart; give the instrument too");
    return s;
}

}  // namespace

std::vector<amount_place> amount_places(const batch<double>& b) {
    std::vector<amount_place> all;
    for_each_amount(b, [&](const where& at, std::string_view item, const amount<double>& a) {
        all.push_back({all.size(), at.step, a.line, at.do_word, at.key, std::string(item), at.table, a.unit, a.in, a.value, a.given});
    });
    return all;
}

std::vector<uncertain_amount> read_uncertain(std::string_view toml_text, const batch<double>& b) {
    auto const root = parse_toml(toml_text);
    auto const places = amount_places(b);
    std::vector<uncertain_amount> all;
    for (entry const& e : entries(root, "uncertain")) {
        e.only({"name", "step", "key", "uncertainty", "limit", "shape", "factor", "dof", "instrument", "label"});
        auto const name = e.text("name"), key = e.text("key");
        auto const step = e.step(b);
        if (!key) e.fail("key", "missing; say which key is uncertain, such as mass");
        bool const outside = *key == "altitude" || *key == "barometer" || *key == "hydrometer_calibration" || *key == "sample_temperature" || *key == "wort_factor";
        if (!name && !step && !outside) e.fail("name", "missing; say which amount is uncertain: the name of an ingredient, the number of a step, or both");
        std::vector<amount_place> fits;
        std::vector<std::string> keys;
        for (auto const& p : places) {
            if (name ? p.name != *name : !p.name.empty()) continue;
            if (step ? p.step != *step : (!name && p.step != 0)) continue;
            if (std::find(keys.begin(), keys.end(), p.key) == keys.end()) keys.push_back(p.key);
            if (p.key == *key) fits.push_back(p);
        }
        if (keys.empty() && name) e.fail("name", "no ingredient is called " + in_quotes(*name) + (step ? " in step " + std::to_string(*step) : std::string()));
        if (fits.empty()) e.fail("key", in_quotes(*key) + " is no amount there; known: " + joined(keys));
        // What belongs to the ingredient and not to one addition of it: one packet, one uncertainty.
        bool const of_the_packet = name && (*key == "alpha" || *key == "solids" || *key == "extract" || *key == "colour") &&
                                   std::all_of(fits.begin(), fits.end(), [&](auto const& p) { return p.value == fits[0].value && p.in == fits[0].in; });
        if (fits.size() > 1 && !of_the_packet) {
            std::string steps;
            for (auto const& p : fits) steps += (steps.empty() ? "" : ", ") + std::to_string(p.step);
            e.fail("name", "that fits " + std::to_string(fits.size()) + " amounts, in steps " + steps + "; give the step too, or names that differ");
        }
        auto const& p = fits[0];
        for (auto const& other : all)
            if (std::find(other.indices.begin(), other.indices.end(), p.index) != other.indices.end()) e.fail("key", "this amount is made uncertain in line " + std::to_string(other.line) + " already");
        uncertain_amount made{e.line, {}, *statement_of(e, p.in, p.unit, p.value, true)};
        for (auto const& one : fits) made.indices.push_back(one.index);
        all.push_back(std::move(made));
    }
    return all;
}

std::vector<day_reading> read_readings(std::string_view toml_text, const batch<double>& b) {
    auto const root = parse_toml(toml_text);
    std::vector<day_reading> all;
    for (entry const& e : entries(root, "reading")) {
        e.only({"step", "quantity", "value", "temperature", "uncertainty", "limit", "shape", "factor", "dof", "instrument", "label", "name"});
        day_reading r;
        r.line = e.line;
        auto const step = e.step(b);
        if (!step) e.fail("step", "missing; say after which step this was read");
        auto const quantity = e.word("quantity", reading_quantities);
        if (!quantity) e.fail("quantity", "missing; one of " + joined(reading_quantities));
        r.step = *step, r.quantity = *quantity, r.label = e.text("name").value_or("");
        auto const* n = e.find("value");
        if (!n) e.fail("value", "missing; what was read, with its unit");
        measure in = measure::number;
        std::string unit_name;
        auto const taken = [&](dimension d) {
            auto const* s = n->as_string();
            if (!s) e.fail("value", seen(*n) + " is not an amount: write a number and a unit in quotes, such as " + (d == dimension::gravity ? "\"1.050 SG\"" : d == dimension::volume ? "\"19 L\"" : "\"5 %\"") );
            auto const p = parsed(e, "value", s->get(), d);
            r.text = s->get(), in = p.in->in, unit_name = p.in->name;
            return p.value();
        };
        if (r.quantity == "volume") r.value = taken(dimension::volume);
        else if (r.quantity == "mass") r.value = taken(dimension::mass);
        else if (r.quantity == "temperature") r.value = taken(dimension::temperature);
        else if (r.quantity == "gravity") {
            r.value = taken(dimension::gravity);
            r.unit = in == measure::plato ? "degP" : "SG";
        } else if (r.quantity == "alcohol") r.value = 100.0 * taken(dimension::share);
        else if (r.quantity == "carbonation") {
            r.value = taken(dimension::gas);
            if (in == measure::gram_per_litre) e.fail("value", "give the carbonation in volumes (\"2.4 vol\")");
        } else if (r.quantity == "pressure") r.value = taken(dimension::pressure);
        else {
            // degBx, bitterness units and SRM have no unit word of their own in a batch file
            auto const* s = n->as_string();
            if (s) {
                std::size_t end = 0;
                try {
                    r.value = std::stod(s->get(), &end);
                } catch (const std::exception&) {
                    e.fail("value", seen(*n) + " does not begin with a number");
                }
                std::string rest = s->get().substr(end);
                rest.erase(std::remove(rest.begin(), rest.end(), ' '), rest.end());
                std::string_view const own = r.quantity == "refractometer" ? "degBx" : r.quantity == "bitterness" ? "BU" : "SRM";
                if (rest != own) e.fail("value", seen(*n) + ": expected a number and " + std::string(own));
                r.text = s->get();
            } else {
                r.value = *e.number("value"), r.text = plain(r.value);
            }
        }
        if (r.value < 0.0 && r.quantity != "temperature" && r.quantity != "pressure") e.fail("value", seen(*n) + " is negative");
        if (auto const t = e.text("temperature")) {
            if (r.quantity != "gravity" && r.quantity != "volume") e.fail("temperature", "a temperature goes with a gravity (of the sample) or a volume (of the wort)");
            r.temperature = parsed(e, "temperature", *t, dimension::temperature).value();
            if (!(*r.temperature >= 0.0 && *r.temperature <= 100.0)) e.fail("temperature", in_quotes(*t) + " is no temperature of wort or beer");
        }
        r.how = statement_of(e, in, unit_name, r.value, false);
        if (r.how && r.quantity == "alcohol" && r.how->instrument.empty()) r.how->uncertainty *= 100.0, r.how->limit *= 100.0;
        all.push_back(std::move(r));
    }
    return all;
}

}  // namespace wortmath::batch
