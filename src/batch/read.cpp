#include "wortmath/batch/read.hpp"

#include "batch/toml.hpp"
#include "batch/units.hpp"

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <cstring>
#include <fstream>
#include <limits>
#include <span>
#include <system_error>

namespace wortmath::batch {
namespace {

constexpr std::size_t most_bytes = 1'000'000, most_steps = 200, most_ingredients = 100;
constexpr double infinite = std::numeric_limits<double>::infinity();
// Limits are inclusive, and 82.4 degF is not above 28 degC although the arithmetic leaves a last digit too many.
constexpr double rounding = 1e-9;

struct parser_failure {};

// ------------------------------------------------------------------------------------------------ what keys hold

// The limits of an amount, in the library's units. Without a low limit an amount may not be negative, and zero
// only where it makes sense.
struct kind {
    dimension of;
    bool zero = false;
    double low = -infinite, high = infinite;
    bool days = false;
    std::string_view why{};  // said after a breach of the limits
};

constexpr kind mass{dimension::mass};
constexpr kind volume{dimension::volume};
constexpr kind volume_or_none{dimension::volume, true};
constexpr kind minutes{dimension::time, true};
constexpr kind days{.of = dimension::time, .zero = true, .days = true};
constexpr kind power{dimension::power};
constexpr kind evaporation{dimension::evaporation, true};
constexpr kind absorption{dimension::absorption, true};
constexpr kind share{dimension::share, true};
constexpr kind some_share{dimension::share, false};
constexpr kind colour{dimension::colour, true};
constexpr kind gravity{dimension::gravity, true};
constexpr kind gas{dimension::gas};
// The upper limit of a liquid is the boiling temperature of the place: see check_liquid_temperatures.
constexpr kind liquid{.of = dimension::temperature, .zero = true, .low = 0, .why = "a liquid"};
constexpr kind fermenting{.of = dimension::temperature, .zero = true, .low = 0, .high = 40, .why = "a fermentation"};
constexpr kind grain{.of = dimension::temperature, .zero = true, .low = -30, .high = 60, .why = "grain"};
constexpr kind storage{.of = dimension::temperature, .zero = true, .low = -1, .high = 100, .why = "a package"};
constexpr kind keg_serving{.of = dimension::temperature, .zero = true, .low = -1, .high = 30, .why = "a keg that is served"};
constexpr kind sample{.of = dimension::temperature, .zero = true, .low = 0, .high = 60, .why = "a sample"};
constexpr kind height{.of = dimension::length, .zero = true, .low = -500, .high = 5500, .why = "the altitude"};
constexpr kind air_pressure{.of = dimension::pressure, .low = 0.5, .high = 1.1,
                            .why = "a barometer: the absolute pressure at the place, not reduced to sea level"};
// No package of package.caution works above 12 bar: more is a burst figure or psi.
constexpr kind rating{.of = dimension::pressure, .high = 12, .why = "a maker's maximum working pressure (gauge; not a burst pressure)"};

struct number_kind {
    bool zero;
    std::string_view in;
};

constexpr std::string_view utilisation_names[] = {"tinseth", "rager", "rager_table", "daniels_whole", "daniels_pellet",
                                                  "mosher", "garetz_1993", "garetz_1994", "tutzauer"};
constexpr std::string_view altitude_names[] = {"malowicki_yield_ratio", "malowicki_rate_ratio", "hosom", "garetz_1994", "none"};
constexpr std::string_view colour_names[] = {"morey", "mosher", "daniels", "congress", "bies_hansen", "piecewise"};
constexpr std::string_view gravity_names[] = {"asbc", "buhl", "buhl_cubic", "constant_259", "constant_260", "de_clerck", "icumsa",
                                              "lincoln", "nbs", "nbs_three_term", "nbs_two_term", "quarter", "rosendal_schmidt"};
constexpr std::string_view residual_names[] = {"water_quadratic", "zero_gauge_equilibrium"};
constexpr std::string_view extract_kinds[] = {"syrup", "dry"};
constexpr std::string_view sugar_kinds[] = {"sucrose", "glucose", "fructose", "glucose_monohydrate", "maltose"};
constexpr std::string_view priming_kinds[] = {"sucrose", "glucose", "fructose", "glucose_monohydrate", "maltose",
                                              "maltose_monohydrate", "maltotriose", "lactose"};
constexpr std::string_view bottle_packages[] = {"unrated_glass", "beer_glass_rated", "soft_drink_glass", "sparkling_wine_glass",
                                                "not_pressure_rated", "other"};
constexpr std::string_view keg_packages[] = {"keg", "other", "not_pressure_rated"};
constexpr std::string_view table_names[] = {"batch", "models", "instruments", "step", "target", "free", "uncertain", "reading"};

// g glucose in a g of its monohydrate: the molar masses of the carbonation chapter.
constexpr double monohydrate_solids = 180.1559 / 198.1712;

template <class> struct alternatives;
template <class... S> struct alternatives<std::variant<S...>> {
    static std::vector<std::string_view> words() { return {S::do_word...}; }
    // Calls f with an empty step of the kind that `word` names.
    template <class F> static bool choose(std::string_view word, F&& f) { return ((S::do_word == word && (f(S{}), true)) || ...); }
};
using steps_known = alternatives<step<double>>;

template <class S> std::vector<std::string_view> keys_of() {
    std::vector<std::string_view> keys;
    S object{};
    S::each_key([&](std::string_view key, const auto&) { keys.push_back(key); }, object);
    return keys;
}

// ----------------------------------------------------------------------------------------------------- sentences

std::string listed(std::span<const std::string_view> words) {
    std::string text;
    for (const auto w : words) {
        if (!text.empty()) text += ", ";
        text += w;
    }
    return text;
}

// The known word that takes the fewest letters to change, whatever the case.
std::string_view nearest(std::string_view word, std::span<const std::string_view> known) {
    const auto low = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
    std::string_view best;
    std::size_t fewest = std::numeric_limits<std::size_t>::max();
    for (const auto k : known) {
        std::vector<std::size_t> row(k.size() + 1);
        for (std::size_t j = 0; j <= k.size(); ++j) row[j] = j;
        for (std::size_t i = 0; i < word.size(); ++i) {
            std::size_t diagonal = row[0];
            row[0] = i + 1;
            for (std::size_t j = 0; j < k.size(); ++j) {
                const std::size_t change = diagonal + (low(word[i]) != low(k[j]));
                diagonal = row[j + 1];
                row[j + 1] = std::min({change, row[j] + 1, row[j + 1] + 1});
            }
        }
        if (row.back() < fewest) {
            fewest = row.back();
            best = k;
        }
    }
    return best;
}

std::string did_you_mean(std::string_view word, std::span<const std::string_view> known) {
    return "; did you mean \"" + std::string(nearest(word.substr(0, 100), known)) + "\"? ";
}

std::string found(const toml::node& n) {
    if (const auto* s = n.as_string()) return in_quotes(s->get());
    if (const auto* i = n.as_integer()) return std::to_string(i->get());
    if (const auto* f = n.as_floating_point()) return plain(f->get());
    if (const auto* b = n.as_boolean()) return b->get() ? "true" : "false";
    if (n.is_array()) return "a list";
    if (n.is_table()) return "a table";
    return "a date or a time of day";
}

std::string_view example(dimension d) {
    switch (d) {
        case dimension::mass: return "\"5.2 kg\"";
        case dimension::volume: return "\"5.2 gal\"";
        case dimension::time: return "\"60 min\"";
        case dimension::temperature: return "\"20 degC\"";
        case dimension::pressure: return "\"1.01 bar\"";
        case dimension::length: return "\"300 m\"";
        case dimension::evaporation: return "\"3 L/h\"";
        case dimension::power: return "\"2.5 kW\"";
        case dimension::share: return "\"5.2 %\"";
        case dimension::colour: return "\"8 EBC\"";
        case dimension::gravity: return "\"1.012 SG\"";
        case dimension::gas: return "\"2.4 vol\"";
        case dimension::absorption: return "\"1.0 L/kg\"";
    }
    return "\"1 g\"";
}

// "; is it degF?" if the same number would be possible in another unit that people mix up with the one given.
std::string other_unit(double number, const unit& given, double low, double high) {
    constexpr std::string_view candidates[] = {"degF", "degC", "K", "psi", "mbar", "kPa", "bar", "ft", "m"};
    for (const auto name : candidates) {
        const unit* u = find_unit(name);
        if (u->of != given.of || (u->zero == given.zero && u->times == given.times && u->over == given.over)) continue;
        const double value = parsed_amount{number, u}.value();
        if (value >= low && value <= high) return "; is it " + std::string(name) + "?";
    }
    return "";
}

std::string limits(const kind& k) {
    const unit* base = nullptr;
    for (const unit& u : all_units()) {
        if (u.of == k.of && u.times == u.over && u.zero == 0) {
            base = &u;
            break;
        }
    }
    const std::string name = base ? " " + std::string(base->name) : "";
    if (k.low == -infinite) return "above " + plain(k.high) + name;
    if (k.high == infinite) return "below " + plain(k.low) + name;
    return "outside " + plain(k.low) + " to " + plain(k.high) + name;
}

// ------------------------------------------------------------------------------------------------- a whole file

struct source {
    int line = 0, column = 0;
    bool operator<(const source& o) const { return line != o.line ? line < o.line : column < o.column; }
};

source source_of(const toml::source_region& r) { return {static_cast<int>(r.begin.line), static_cast<int>(r.begin.column)}; }

struct measure_used {
    source at;
    where place;
    const unit* in;
    std::string text;
};

struct file {
    std::vector<measure_used> measures_used;  // US and imperial ones
    std::vector<assumption> assumed;
    std::optional<amount<double>> attenuation;  // of the last ferment step that names one
    int attenuation_step = 0;
    bool fermented = false;
};

// One table of the file: a step, an ingredient, [batch].
class reader {
public:
    reader(const toml::table& t, where at, std::string what, file& f) : table(t), place(std::move(at)), what_(std::move(what)), file_(f) {}

    const toml::table& table;
    where place;  // of the table itself; no key

    [[noreturn]] void fail(std::string_view key, int line, std::string text) const {
        where w = place;
        w.line = line;
        w.key = key;
        throw file_error(w, std::move(text));
    }
    [[noreturn]] void fail(std::string_view key, std::string text) const { fail(key, line_of(key), std::move(text)); }
    [[noreturn]] void missing(std::string_view key, std::string_view why = {}) const {
        std::string text = "missing; " + what_ + " requires " + std::string(key);
        if (!why.empty()) text += ": " + std::string(why);
        fail(key, place.line, std::move(text));
    }

    bool has(std::string_view key) const { return table.find(key) != table.end(); }
    const toml::node* find(std::string_view key) const {
        const auto i = table.find(key);
        return i == table.end() ? nullptr : &i->second;
    }
    source at(std::string_view key) const {
        const auto i = table.find(key);
        return i == table.end() ? source{place.line, 0} : source_of(i->first.source());
    }
    int line_of(std::string_view key) const { return at(key).line; }

    void only(std::span<const std::string_view> known) const {
        const toml::key* first = nullptr;
        for (const auto& [key, value] : table) {
            if (std::find(known.begin(), known.end(), key.str()) != known.end()) continue;
            if (!first || source_of(key.source()) < source_of(first->source())) first = &key;
        }
        if (!first) return;
        const std::string name = visible(first->str());
        std::string text = "unknown key";
        if (name == "minutes") text += "; only additions to a boil and steps that take time have minutes";
        fail(name, source_of(first->source()).line, text + did_you_mean(name, known) + "Known for " + what_ + ": " + listed(known));
    }

    // Which of the keys that exclude each other the file gives; empty if none.
    std::string_view one_of(std::initializer_list<std::string_view> keys, bool required, std::string_view why = {}) const {
        std::vector<std::string_view> given;
        for (const auto k : keys) {
            if (has(k)) given.push_back(k);
        }
        std::sort(given.begin(), given.end(), [&](auto a, auto b) { return at(a) < at(b); });
        if (given.size() > 1) {
            fail(given[1], "give " + std::string(given[0]) + " or " + std::string(given[1]) + ", not both; " + std::string(given[0]) +
                               " is on line " + std::to_string(line_of(given[0])));
        }
        if (given.empty() && required) {
            std::string list;
            for (const auto k : keys) {
                if (!list.empty()) list += " or ";
                list += k;
            }
            std::string text = "missing; " + what_ + " requires " + list;
            if (!why.empty()) text += ": " + std::string(why);
            fail(*keys.begin(), place.line, std::move(text));
        }
        return given.empty() ? std::string_view{} : given[0];
    }

    std::optional<amount<double>> maybe(std::string_view key, const kind& k) {
        const toml::node* n = find(key);
        if (!n) return std::nullopt;
        return read_amount(key, *n, at(key), k);
    }
    amount<double> need(std::string_view key, const kind& k, std::string_view why = {}) {
        if (!has(key)) missing(key, why);
        return *maybe(key, k);
    }
    amount<double> otherwise(std::string_view key, const kind& k, double value, measure in) {
        if (auto given = maybe(key, k)) return *given;
        return default_amount(value, in);
    }
    amount<double> default_amount(double value, measure in) const {
        amount<double> a;
        a.value = value;
        a.in = in;
        a.line = place.line;
        return a;
    }

    std::optional<amount<double>> maybe_number(std::string_view key, const number_kind& k) {
        const toml::node* n = find(key);
        if (!n) return std::nullopt;
        const std::string text = found(*n);
        std::string expected = "; expected a bare number without a unit";
        if (!k.in.empty()) expected += ", in " + std::string(k.in);
        const auto v = bare(*n);
        if (!v) fail(key, text + " is not a bare number" + expected);
        if (!std::isfinite(*v)) fail(key, text + " is not a number" + expected);
        if (*v < 0) fail(key, text + " is negative" + expected);
        if (*v == 0 && !k.zero) fail(key, "0 is not possible here" + expected);
        amount<double> a;
        a.value = *v;
        a.text = text;
        a.line = line_of(key);
        a.given = true;
        return a;
    }
    amount<double> number_or(std::string_view key, const number_kind& k, double value) {
        if (auto given = maybe_number(key, k)) return *given;
        return default_amount(value, measure::number);
    }

    std::optional<std::string> text(std::string_view key) const {
        const toml::node* n = find(key);
        if (!n) return std::nullopt;
        const auto* s = n->as_string();
        if (!s) fail(key, found(*n) + " is not text; expected text in quotes");
        return s->get();
    }

    word choice(std::string_view key, std::span<const std::string_view> known, std::optional<std::string_view> value) const {
        const auto given = text(key);
        if (!given) {
            if (!value) missing(key, "one of " + listed(known));
            return {std::string(*value), place.line, false};
        }
        if (std::find(known.begin(), known.end(), *given) == known.end()) {
            fail(key, in_quotes(*given) + " is unknown" + did_you_mean(*given, known) + "Known: " + listed(known));
        }
        return {*given, line_of(key), true};
    }

    flag yes_or_no(std::string_view key, bool value) const {
        const toml::node* n = find(key);
        if (!n) return {value, place.line, false};
        const auto* b = n->as_boolean();
        if (!b) fail(key, found(*n) + " is not true or false; expected one of these two words, without quotes");
        return {b->get(), line_of(key), true};
    }

    // [low, high], or nothing
    std::vector<amount<double>> temperature_range(std::string_view key) {
        const toml::node* n = find(key);
        if (!n) return {};
        const auto* list = n->as_array();
        if (!list || list->size() != 2) {
            fail(key, (list ? "a list of " + std::to_string(list->size()) : found(*n)) + "; expected two temperatures: [\"18 degC\", \"24 degC\"]");
        }
        std::vector<amount<double>> both;
        for (const toml::node& one : *list) both.push_back(read_amount(key, one, at(key), liquid));
        if (both[0].value > both[1].value) fail(key, in_quotes(both[0].text) + " is above " + in_quotes(both[1].text) + "; expected the low temperature first");
        return both;
    }

    // A list of inline tables, each read by make(reader&, Item&).
    template <class Item, class Make>
    std::vector<Item> items(std::string_view key, std::string_view singular, std::span<const std::string_view> known, Make&& make) {
        std::vector<Item> all;
        const toml::node* n = find(key);
        if (!n) return all;
        const auto* list = n->as_array();
        if (!list) fail(key, found(*n) + " is not a list; expected a list of tables: [{ ... }, { ... }]");
        for (const toml::node& one : *list) {
            const auto* t = one.as_table();
            const int line = source_of(one.source()).line;
            if (!t) fail(key, line, found(one) + " in the list; expected a list of tables: [{ ... }, { ... }]");
            if (all.size() == most_ingredients) fail(key, line, "more than 100 entries in one list");
            where w = place;
            w.line = line;
            reader inner(*t, w, std::string(singular), file_);
            inner.only(known);
            Item& made = all.emplace_back();
            made.line = line;
            if constexpr (requires { made.name; }) made.name = inner.text("name");
            make(inner, made);
        }
        return all;
    }

    void assume(std::string_view key, std::variant<double, std::string> value, std::optional<std::string> name = std::nullopt) {
        file_.assumed.push_back({place.step, std::string(key), std::move(value), std::move(name)});
    }
    file& whole() { return file_; }

private:
    std::string what_;  // "boil", "a hop"
    file& file_;

    static std::optional<double> bare(const toml::node& n) {
        if (const auto* i = n.as_integer()) return static_cast<double>(i->get());
        if (const auto* f = n.as_floating_point()) return f->get();
        return std::nullopt;
    }

    amount<double> read_amount(std::string_view key, const toml::node& n, source at, const kind& k) {
        amount<double> a;
        a.line = at.line;
        a.given = true;
        a.text = found(n);
        const std::string expected = "; expected " + std::string(dimension_name(k.of)) + " such as " + std::string(example(k.of));
        if (const auto v = bare(n)) {
            if (!std::isfinite(*v)) fail(key, at.line, a.text + " is not a number" + expected);
            const bool negative = *v < 0 && k.low == -infinite;
            if (k.of != dimension::share) {
                fail(key, at.line, a.text + " has no unit" + (negative ? " and is negative" : "") + expected + " (in quotes; units: " + units_of(k.of) + ")");
            }
            if (negative) fail(key, at.line, a.text + " is negative" + expected);
            if (*v > 1) fail(key, at.line, a.text + " is too much for a share, which as a bare number goes from 0 to 1: write " + a.text + " %, in quotes");
            a.value = *v;
            a.in = measure::share;
        } else if (const auto* s = n.as_string()) {
            parsed_amount p{};
            try {
                p = parse_amount(s->get(), k.of);
            } catch (const amount_error& e) {
                fail(key, at.line, e.what());
            }
            a.text = s->get();
            a.unit = p.in->name;
            a.value = p.value();
            a.in = p.in->in;
            check_limits(key, at, k, p, a);
            if (p.in->system != measures::common) {
                where w = place;
                w.line = at.line;
                w.key = key;
                file_.measures_used.push_back({at, w, p.in, a.text});
            }
            if (k.days) {
                a.value /= 1440;
                a.in = measure::day;
            }
        } else {
            fail(key, at.line, a.text + " is not an amount" + expected);
        }
        if (a.value == 0 && !k.zero) {
            fail(key, at.line, (a.text.empty() ? "0" : a.text) + ": zero is not possible here" + expected);
        }
        return a;
    }

    void check_limits(std::string_view key, source at, const kind& k, const parsed_amount& p, const amount<double>& a) const {
        const std::string shown = in_quotes(a.text);
        if (k.low == -infinite && p.number < 0) {
            std::string text = shown + " is negative; expected " + std::string(dimension_name(k.of)) + (k.zero ? " of zero or more" : " above zero");
            if (a.in == measure::plato) text += " (an apparent extract below that of water is written as SG, such as \"0.998 SG\")";
            fail(key, at.line, std::move(text));
        }
        if (k.of == dimension::share && a.value > 1) fail(key, at.line, shown + " is more than the whole; a share goes from 0 % to 100 %");
        if (a.in == measure::gravity && !(a.value >= 0.97 && a.value <= 1.20)) {
            fail(key, at.line, shown + " is outside 0.97 to 1.20, where a specific gravity lies; is it degrees Plato? then write " + plain(p.number) + " degP");
        }
        if (a.value < k.low - rounding || a.value > k.high + rounding) {
            // The place's boiling temperature is not known here; 100 degC serves for the question.
            const bool hot = k.of == dimension::temperature && k.high == infinite;
            const double low = k.low == -infinite ? 1e-3 : k.low;
            fail(key, at.line, shown + " is " + limits(k) + ", not possible for " + std::string(k.why) + other_unit(p.number, *p.in, low, hot ? 100 : k.high));
        }
    }
};

// --------------------------------------------------------------------------------------------------- ingredients

std::vector<std::string_view> without(std::vector<std::string_view> keys, std::string_view key) {
    std::erase(keys, key);
    return keys;
}

std::vector<grain_item<>> read_grains(reader& r) {
    if (!r.has("grains")) r.missing("grains");
    auto list = r.items<grain_item<>>("grains", "a grain", keys_of<grain_item<>>(), [](reader& i, grain_item<>& g) {
        g.mass = i.need("mass", mass);
        g.colour = i.otherwise("colour", colour, 0, measure::srm);
        g.extract = i.otherwise("extract", share, 0.76, measure::share);
        if (!g.extract.given) i.assume("extract", g.extract.value, g.name);
    });
    if (list.empty()) r.fail("grains", "the list is empty; expected at least one grain");
    return list;
}

// Extracts, sugars and hops have minutes in a boil and nowhere else.
enum class timed : bool { no, yes };

template <class Item> std::vector<std::string_view> item_keys(timed t) {
    return t == timed::yes ? keys_of<Item>() : without(keys_of<Item>(), "minutes");
}

template <class Item> void read_minutes(reader& i, Item& item, timed t) {
    if (t == timed::yes) item.minutes = i.need("minutes", minutes, "how long before the end of the boil it goes in");
}

std::vector<extract_item<>> read_extracts(reader& r, timed t) {
    return r.items<extract_item<>>("extracts", "an extract", item_keys<extract_item<>>(t), [t](reader& i, extract_item<>& e) {
        e.mass = i.need("mass", mass);
        e.kind = i.choice("kind", extract_kinds, std::nullopt);
        e.solids = i.otherwise("solids", some_share, e.kind.value == "dry" ? 0.97 : 0.80, measure::share);
        e.colour = i.otherwise("colour", colour, 0, measure::srm);
        read_minutes(i, e, t);
        if (!e.solids.given) i.assume("solids", e.solids.value, e.name);
    });
}

std::vector<sugar_item<>> read_sugars(reader& r, timed t) {
    return r.items<sugar_item<>>("sugars", "a sugar", item_keys<sugar_item<>>(t), [t](reader& i, sugar_item<>& s) {
        s.mass = i.need("mass", mass);
        s.kind = i.choice("kind", sugar_kinds, std::nullopt);
        s.solids = i.otherwise("solids", some_share, s.kind.value == "glucose_monohydrate" ? monohydrate_solids : 1.0, measure::share);
        s.colour = i.otherwise("colour", colour, 0, measure::srm);
        read_minutes(i, s, t);
        if (!s.solids.given && s.solids.value != 1) i.assume("solids", s.solids.value, s.name);
    });
}

enum class hop_use { boil, stand, dry };

std::vector<hop_item<>> read_hops(reader& r, hop_use use) {
    const timed t = use == hop_use::boil ? timed::yes : timed::no;
    return r.items<hop_item<>>("hops", "a hop", item_keys<hop_item<>>(t), [=](reader& i, hop_item<>& h) {
        h.mass = i.need("mass", mass);
        h.alpha = use == hop_use::dry ? i.otherwise("alpha", share, 0, measure::share)
                                      : i.need("alpha", share, "the share of alpha acids, such as \"5.2 %\"");
        read_minutes(i, h, t);
    });
}

// --------------------------------------------------------------------------------------------------------- steps

void read(reader& r, water_step<>& s) {
    r.one_of({"volume", "mass"}, true);
    s.volume = r.maybe("volume", volume);
    s.mass = r.maybe("mass", mass);
    s.temperature = r.otherwise("temperature", liquid, 15, measure::celsius);
}

void read(reader& r, heat_step<>& s) {
    s.to = r.need("to", liquid);
    s.power = r.maybe("power", power);
    s.efficiency = r.otherwise("efficiency", some_share, 1, measure::share);
    s.vessel_heat_capacity = r.number_or("vessel_heat_capacity", {true, "kJ/K"}, 0);
}

void read(reader& r, steep_step<>& s) {
    s.grains = read_grains(r);
    s.minutes = r.maybe("minutes", minutes);
    s.temperature = r.maybe("temperature", liquid);
    s.efficiency = r.otherwise("efficiency", some_share, 0.35, measure::share);
    s.absorption = r.otherwise("absorption", absorption, 1.0, measure::litre_per_kilogram);
    s.squeezed = r.yes_or_no("squeezed", false);
    if (!s.efficiency.given) r.assume("efficiency", s.efficiency.value);
}

void read(reader& r, mash_step<>& s) {
    s.grains = read_grains(r);
    s.minutes = r.maybe("minutes", minutes);
    s.temperature = r.need("temperature", liquid);
    s.water = r.maybe("water", volume);
    s.water_temperature = r.otherwise("water_temperature", liquid, 15, measure::celsius);
    s.grain_temperature = r.otherwise("grain_temperature", grain, 20, measure::celsius);
    s.conversion = r.otherwise("conversion", some_share, 0.95, measure::share);
    if (!s.conversion.given) r.assume("conversion", s.conversion.value);
}

void read(reader& r, lauter_step<>& s) {
    s.absorption = r.otherwise("absorption", absorption, 1.0, measure::litre_per_kilogram);
    s.dead_space = r.otherwise("dead_space", volume_or_none, 0, measure::litre);
    if (!r.has("sparges")) r.missing("sparges", "a list, empty if there is no sparge: sparges = []");
    s.sparges = r.items<sparge_item<>>("sparges", "a sparge", keys_of<sparge_item<>>(), [](reader& i, sparge_item<>& p) {
        p.volume = i.need("volume", volume);
        p.temperature = i.otherwise("temperature", liquid, 75, measure::celsius);
    });
}

void read(reader& r, dissolve_step<>& s) {
    s.extracts = read_extracts(r, timed::no);
    s.sugars = read_sugars(r, timed::no);
    if (s.extracts.empty() && s.sugars.empty()) {
        const std::string_view key = r.has("sugars") && !r.has("extracts") ? "sugars" : "extracts";
        r.fail(key, "missing; dissolve requires at least one extract or sugar");
    }
}

void read(reader& r, boil_step<>& s) {
    r.one_of({"evaporation", "power"}, true, "what leaves as steam, or the heat that drives it off");
    s.minutes = r.need("minutes", minutes);
    s.evaporation = r.maybe("evaporation", evaporation);
    s.power = r.maybe("power", power);
    s.efficiency = r.otherwise("efficiency", some_share, 1, measure::share);
    s.hops = read_hops(r, hop_use::boil);
    s.extracts = read_extracts(r, timed::yes);
    s.sugars = read_sugars(r, timed::yes);
    const auto in_time = [&](const auto& list) {
        for (const auto& i : list) {
            if (i.minutes->value <= s.minutes.value + rounding) continue;
            r.fail("minutes", i.minutes->line,
                   in_quotes(i.minutes->text) + " before the end is longer than the boil, which takes " + in_quotes(s.minutes.text) +
                       "; expected at most that");
        }
    };
    in_time(s.hops);
    in_time(s.extracts);
    in_time(s.sugars);
}

void read(reader& r, stand_step<>& s) {
    s.minutes = r.need("minutes", minutes);
    s.temperature = r.need("temperature", liquid);
    s.hops = read_hops(r, hop_use::stand);
    s.kettle_hops = r.yes_or_no("kettle_hops", true);
}

void read(reader& r, chill_step<>& s) { s.to = r.need("to", liquid); }

void read(reader& r, transfer_step<>& s) {
    s.leave = r.otherwise("leave", volume_or_none, 0, measure::litre);
    s.hop_absorption = r.otherwise("hop_absorption", absorption, 0, measure::litre_per_kilogram);
}

void read(reader& r, top_up_step<>& s) {
    r.one_of({"volume", "mass", "to"}, true);
    s.volume = r.maybe("volume", volume);
    s.mass = r.maybe("mass", mass);
    s.to = r.maybe("to", volume);
    s.temperature = r.otherwise("temperature", liquid, 15, measure::celsius);
}

void read(reader& r, pitch_step<>& s) {
    r.one_of({"mass", "cells"}, true, "of dry yeast the mass, of other yeast the number of cells");
    s.name = r.text("name");
    s.mass = r.maybe("mass", mass);
    s.cells = r.maybe_number("cells", {true, "cells, such as 180e9"});
    if (s.cells && s.cells->value <= 1e6) {
        r.fail("cells", s.cells->text + " cells are too few; expected the whole count, for 180 thousand million cells type 180e9");
    }
    s.pitch_rate = r.number_or("pitch_rate", {false, "million cells per mL and degP"}, 0.75);
    s.range = r.temperature_range("range");
    s.cells_per_gram = r.number_or("cells_per_gram", {false, "cells per gram"}, 5e9);
}

void read(reader& r, ferment_step<>& s) {
    r.one_of({"attenuation", "final_gravity"}, false);
    s.days = r.need("days", days);
    s.temperature = r.need("temperature", fermenting);
    s.attenuation = r.maybe("attenuation", share);
    s.final_gravity = r.maybe("final_gravity", gravity);
    s.limit_attenuation = r.maybe("limit_attenuation", share);
    file& f = r.whole();
    if (!f.fermented && !s.attenuation && !s.final_gravity) {
        s.attenuation = r.default_amount(0.75, measure::share);
        r.assume("attenuation", 0.75);
    }
    f.fermented = true;

    const auto shown = [](const amount<double>& a) { return a.given ? in_quotes(a.text) : "the default, " + plain(a.value); };
    if (s.attenuation) {
        if (f.attenuation && s.attenuation->value < f.attenuation->value - rounding) {
            r.fail("attenuation", shown(*s.attenuation) + " is below the attenuation of step " + std::to_string(f.attenuation_step) + " (" +
                                      shown(*f.attenuation) + "); what has fermented does not come back");
        }
        f.attenuation = s.attenuation;
        f.attenuation_step = s.number;
    }
    if (s.limit_attenuation && !s.final_gravity && f.attenuation && s.limit_attenuation->value < f.attenuation->value - rounding) {
        r.fail("limit_attenuation", in_quotes(s.limit_attenuation->text) + " is below the attenuation reached (" + shown(*f.attenuation) +
                                        "); expected the limit that this wort can reach at most");
    }
}

void read(reader& r, rack_step<>& s) {
    s.leave = r.otherwise("leave", volume_or_none, 0, measure::litre);
    s.temperature = r.maybe("temperature", liquid);
}

void read(reader& r, dry_hop_step<>& s) {
    if (!r.has("hops")) r.missing("hops");
    s.hops = read_hops(r, hop_use::dry);
    if (s.hops.empty()) r.fail("hops", "the list is empty; expected at least one hop");
    s.days = r.need("days", days);
    s.absorption = r.otherwise("absorption", absorption, 5.0, measure::litre_per_kilogram);
    s.temperature = r.maybe("temperature", liquid);
}

void read(reader& r, prime_step<>& s) {
    r.one_of({"mass", "carbonation"}, true);
    s.sugar = r.choice("sugar", priming_kinds, "sucrose");
    s.mass = r.maybe("mass", mass);
    s.carbonation = r.maybe("carbonation", gas);
    if (s.carbonation && s.sugar.value == "lactose") {
        r.fail("sugar", "\"lactose\" gives no gas, since brewing yeast does not ferment it, so no amount reaches the carbonation asked for; "
                        "name another sugar, or give the mass");
    }
    s.water = r.otherwise("water", volume_or_none, 0.5, measure::litre);
    s.water_temperature = r.otherwise("water_temperature", liquid, 20, measure::celsius);
    s.efficiency = r.otherwise("efficiency", some_share, 0.95, measure::share);
}

constexpr std::string_view hottest_why = "the warmest the package may get; nobody else knows it";

template <class Step> void read_package(reader& r, Step& s, const kind& serving, std::span<const std::string_view> packages) {
    s.hottest = r.need("hottest", storage, hottest_why);
    s.serving = r.otherwise("serving", serving, 6, measure::celsius);
    s.headspace = r.otherwise("headspace", some_share, 0.04, measure::share);
    s.loss = r.otherwise("loss", volume_or_none, 0, measure::litre);
    s.package = r.choice("package", packages, packages.front());
    s.rated = r.maybe("rated", rating);
    s.fermentation_confirmed = r.yes_or_no("fermentation_confirmed", false);
    if (!s.package.given) r.assume("package", s.package.value);
    if (!s.headspace.given) r.assume("headspace", s.headspace.value);
}

void read(reader& r, bottle_step<>& s) {
    s.volume = r.need("volume", volume, "of the beer in one bottle");
    read_package(r, s, storage, bottle_packages);
}

void read(reader& r, keg_step<>& s) {
    s.carbonation = r.maybe("carbonation", gas);
    read_package(r, s, keg_serving, keg_packages);
}

void read(reader& r, condition_step<>& s) {
    s.days = r.need("days", days);
    s.temperature = r.need("temperature", storage);
}

void read(reader& r, serve_step<>& s) { s.temperature = r.need("temperature", storage); }

void read(reader& r, note_step<>& s) {
    const auto t = r.text("text");
    if (!t) r.missing("text");
    s.text = {*t, r.line_of("text"), true};
}

step<double> read_step(const toml::table& t, int number, file& f) {
    where place{source_of(t.source()).line, number, {}, {}};
    reader r(t, place, "a step", f);
    const auto words = steps_known::words();
    const auto word = r.text("do");
    if (!word) r.missing("do", "one of " + listed(words));

    std::optional<step<double>> made;
    steps_known::choose(*word, [&](auto s) {
        using S = decltype(s);
        s.number = number;
        s.line = place.line;
        where at = place_of(s);
        reader inner(t, at, *word, f);
        auto keys = keys_of<S>();
        keys.insert(keys.begin(), "do");
        inner.only(keys);
        read(inner, s);
        made = std::move(s);
    });
    if (!made) r.fail("do", in_quotes(*word) + " is an unknown step" + did_you_mean(*word, words) + "Known: " + listed(words));
    return std::move(*made);
}

// -------------------------------------------------------------------------------------------- order of the steps

// Walks through the day by words alone: which vessel holds something, what has been done.
class day {
public:
    void operator()(const water_step<>& s) {
        in_kettle(s, "use top_up for water in the fermenter");
        filled_ = watered_ = true;
    }
    void operator()(const heat_step<>& s) { in_filled_kettle(s); }
    void operator()(const steep_step<>& s) {
        in_filled_kettle(s);
        more_than_water_ = true;
    }
    void operator()(const mash_step<>& s) {
        in_kettle(s);
        if (mashed_) fail(s, "a batch is mashed once, and step " + std::to_string(mashed_) + " did it");
        if (more_than_water_) fail(s, "the kettle holds more than water; put the mash step before everything that brings extract or hops");
        if (!s.water && !watered_) fail(s, "water", s.water, "missing; mash requires water, or a water step before it");
        filled_ = more_than_water_ = true;
        mashed_ = s.number;
        expected_ = {"mash", s.number, s.line};
    }
    void operator()(const lauter_step<>& s) {
        in_kettle(s);
        if (!mashed_) fail(s, "nothing has been mashed; put a mash step before it");
        if (lautered_) fail(s, "the mash has been lautered already; lauter comes right after the mash step, once");
        lautered_ = true;
    }
    void operator()(const dissolve_step<>& s) {
        not_packaged(s);
        if (!transferred_) {
            in_filled_kettle(s);
            more_than_water_ = true;
        }
    }
    void operator()(const boil_step<>& s) {
        in_filled_kettle(s);
        if (!s.hops.empty() || !s.extracts.empty() || !s.sugars.empty()) more_than_water_ = true;
    }
    void operator()(const stand_step<>& s) {
        in_filled_kettle(s);
        if (!s.hops.empty()) more_than_water_ = true;
    }
    void operator()(const chill_step<>& s) {
        not_packaged(s);
        if (!transferred_) in_filled_kettle(s);
    }
    void operator()(const transfer_step<>& s) {
        not_packaged(s);
        if (transferred_) fail(s, "the batch goes to the fermenter once, and step " + std::to_string(transferred_) + " did it");
        in_filled_kettle(s);
        transferred_ = s.number;
        fermenter_filled_ = true;
    }
    void operator()(const top_up_step<>& s) {
        not_packaged(s);
        if (s.to && !fermenter_filled_) fail(s, "to", s.to, "the fermenter is empty; put the transfer before it, or give the volume of water to add");
        fermenter_filled_ = true;
    }
    void operator()(const pitch_step<>& s) {
        not_packaged(s);
        if (!transferred_) fail(s, "there is no wort in the fermenter; put a transfer step before it");
        if (pitched_) fail(s, "yeast is pitched once, and step " + std::to_string(pitched_) + " did it");
        pitched_ = s.number;
    }
    void operator()(const ferment_step<>& s) {
        not_packaged(s);
        if (!pitched_) fail(s, "no yeast has been pitched; put a pitch step before it");
        fermented_ = true;
    }
    void operator()(const rack_step<>& s) { needs_beer(s); }
    void operator()(const dry_hop_step<>& s) { needs_beer(s); }
    void operator()(const prime_step<>& s) {
        needs_beer(s);
        // No second one can follow: the next step closes the package.
        primed_ = s.number;
        expected_ = {"prime", s.number, s.line};
    }
    void operator()(const bottle_step<>& s) {
        needs_beer(s);
        package(s, s.hottest);
    }
    void operator()(const keg_step<>& s) {
        needs_beer(s);
        if (s.carbonation && primed_) {
            fail(s, "carbonation", s.carbonation,
                 "give carbonation from the cylinder or a prime step, not both; step " + std::to_string(primed_) + " has primed the beer");
        }
        if (!s.carbonation && !primed_) {
            fail(s, "carbonation", s.carbonation, "missing; keg requires carbonation (from the cylinder), or a prime step before it");
        }
        package(s, s.hottest);
    }
    void operator()(const condition_step<>& s) { in_package(s, s.temperature); }
    void operator()(const serve_step<>& s) { in_package(s, s.temperature); }
    void operator()(const note_step<>&) {}

    // Some steps leave the vessel in a state that only one kind of step can follow.
    void before(const step<double>& any) {
        std::visit(
            [&](const auto& s) {
                using S = std::remove_cvref_t<decltype(s)>;
                if (expected_.do_word.empty() || S::do_word == "note") return;
                if (S::do_word == expected_.do_word) {
                    fail(s, "a batch has " + expected_.do_word + " only once, and it is step " + std::to_string(expected_.number) +
                                "; the step after it must be " + follower(expected_.do_word));
                }
                const bool fits = expected_.do_word == "mash" ? S::do_word == "lauter" : S::do_word == "bottle" || S::do_word == "keg";
                if (!fits) {
                    fail(s, "the step after " + name(expected_) + " must be " + follower(expected_.do_word) +
                                ", notes aside; put that step before this one");
                }
                expected_ = {};
            },
            any);
    }
    void end() const {
        if (expected_.do_word.empty()) return;
        throw file_error({expected_.line, expected_.number, expected_.do_word, {}},
                         "the next step must be " + follower(expected_.do_word) + ", but the file ends here");
    }

private:
    struct open_step {
        std::string do_word;
        int number = 0, line = 0;
    };
    open_step expected_;
    bool filled_ = false, watered_ = false, more_than_water_ = false, lautered_ = false;
    bool fermenter_filled_ = false, fermented_ = false;
    int mashed_ = 0, transferred_ = 0, pitched_ = 0, primed_ = 0;  // step numbers
    open_step packaged_;
    amount<double> hottest_;

    static std::string name(const open_step& s) { return s.do_word + " (step " + std::to_string(s.number) + ")"; }
    static std::string follower(std::string_view word) { return word == "mash" ? "lauter" : "bottle or keg"; }

    template <class Step> void not_packaged(const Step& s) const {
        if (!packaged_.do_word.empty()) {
            fail(s, "the beer has been packaged by " + name(packaged_) + "; after that only condition, serve and note can follow");
        }
    }
    template <class Step> void in_kettle(const Step& s, std::string_view instead = {}) const {
        not_packaged(s);
        if (!transferred_) return;
        std::string text = "this belongs to the kettle, which step " + std::to_string(transferred_) + " (transfer) has emptied; put it before the transfer";
        if (!instead.empty()) text += ", or " + std::string(instead);
        fail(s, std::move(text));
    }
    template <class Step> void in_filled_kettle(const Step& s) const {
        in_kettle(s);
        if (!filled_) fail(s, "the kettle is empty; put a water step before it");
    }
    template <class Step> void needs_beer(const Step& s) const {
        not_packaged(s);
        if (!fermented_) fail(s, "the beer has not been fermented; put a ferment step before it");
    }
    template <class Step> void package(const Step& s, const amount<double>& hottest) {
        packaged_ = {std::string(Step::do_word), s.number, s.line};
        hottest_ = hottest;
    }
    template <class Step> void in_package(const Step& s, const amount<double>& temperature) const {
        if (packaged_.do_word.empty()) fail(s, "the beer has not been packaged; put a bottle or keg step before it");
        if (temperature.value > hottest_.value + rounding) {
            fail(s, "temperature", temperature,
                 in_quotes(temperature.text) + " is above " + in_quotes(hottest_.text) + ", the hottest that " + name(packaged_) +
                     " allows; raise hottest there, or keep the package cooler");
        }
    }
};

void check_order(const batch<double>& b) {
    day d;
    for (const auto& any : b.steps) {
        d.before(any);
        std::visit(d, any);
    }
    d.end();
}

// A pint that is not the pint meant is 20 % off, and nothing in the numbers would show it.
void check_measures(file& f) {
    auto& used = f.measures_used;
    std::stable_sort(used.begin(), used.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
    for (const auto& u : used) {
        const auto& first = used.front();
        if (u.in->system == first.in->system) continue;
        const auto described = [](const measure_used& m) {
            return in_quotes(m.text) + " is " + (m.in->system == measures::us ? "a US" : "an imperial") + " measure (" + std::string(m.in->name) + ", line " +
                   std::to_string(m.at.line) + ")";
        };
        throw file_error(u.place, described(u) + ", but " + described(first) +
                                      "; a US gallon has 3.785 litres, an imperial one 4.546: use one kind throughout, or litres");
    }
}

// ---------------------------------------------------------------------------------------------- the file itself

// The line of the first byte that is not UTF-8; 0 if all is well.
int line_of_bad_utf8(std::string_view s) {
    int line = 1;
    for (std::size_t i = 0; i < s.size();) {
        const auto c = static_cast<unsigned char>(s[i]);
        if (c == '\n') ++line;
        const std::size_t more = c < 0x80 ? 0 : c >= 0xC2 && c <= 0xDF ? 1 : c >= 0xE0 && c <= 0xEF ? 2 : c >= 0xF0 && c <= 0xF4 ? 3 : 4;
        if (more == 4 || i + more >= s.size()) return line;
        for (std::size_t k = 1; k <= more; ++k) {
            const auto d = static_cast<unsigned char>(s[i + k]);
            // After E0, ED, F0 and F4 part of the range would be overlong, a surrogate or beyond the last code point.
            const unsigned low = k > 1 ? 0x80 : c == 0xE0 ? 0xA0 : c == 0xF0 ? 0x90 : 0x80;
            const unsigned high = k > 1 ? 0xBF : c == 0xED ? 0x9F : c == 0xF4 ? 0x8F : 0xBF;
            if (d < low || d > high) return line;
        }
        i += more + 1;
    }
    return 0;
}

toml::table parse(std::string_view text) {
    if (text.size() > most_bytes) throw file_error({1, 0, {}, {}}, "the file is larger than 1 MB; a batch file has a few kB");
    if (const int line = line_of_bad_utf8(text)) {
        throw file_error({line, 0, {}, {}}, "this is not UTF-8 text, as TOML requires; save the file with the encoding UTF-8");
    }
    try {
        return toml::parse(text);
    } catch (const toml::parse_error& e) {
        std::string why(e.description());
        if (constexpr std::string_view prefix = "Error while parsing "; why.starts_with(prefix)) why.replace(0, prefix.size(), "while reading ");
        throw file_error({source_of(e.source()).line, 0, {}, {}}, "this is not valid TOML: " + why);
    } catch (const parser_failure&) {
        throw file_error({1, 0, {}, {}}, "this is not valid TOML: the parser cannot make sense of it, nor say where");
    }
}

// The sections of the file that are single tables.
const toml::table* single_table(const toml::table& root, std::string_view name) {
    const auto i = root.find(name);
    if (i == root.end()) return nullptr;
    if (const auto* t = i->second.as_table()) return t;
    throw file_error({source_of(i->first.source()).line, 0, {}, {}, std::string(name)},
                     found(i->second) + " is not a table; write it once, as [" + std::string(name) + "]");
}

const toml::array* table_list(const toml::table& root, std::string_view name) {
    const auto i = root.find(name);
    if (i == root.end()) return nullptr;
    const where at{source_of(i->first.source()).line, 0, {}, {}, std::string(name)};
    const auto* list = i->second.as_array();
    if (!list) throw file_error(at, found(i->second) + " is not a list of tables; write [[" + std::string(name) + "]], with two brackets");
    for (const toml::node& n : *list) {
        if (n.is_table()) continue;
        where w = at;
        w.line = source_of(n.source()).line;
        throw file_error(w, found(n) + " in the list is not a table; write [[" + std::string(name) + "]] for each");
    }
    return list;
}

void check_top_level(const toml::table& root) {
    const toml::key* first = nullptr;
    const toml::node* value = nullptr;
    for (const auto& [key, node] : root) {
        if (std::find(std::begin(table_names), std::end(table_names), key.str()) != std::end(table_names)) continue;
        if (!first || source_of(key.source()) < source_of(first->source())) {
            first = &key;
            value = &node;
        }
    }
    if (!first) return;
    const std::string name = visible(first->str());
    const where at{source_of(first->source()).line, 0, {}, name};
    if (!value->is_table() && !value->is_array_of_tables()) {
        const std::string text = "unknown key outside the tables";
        std::vector<std::string_view> known{"name", "format", "altitude", "barometer", "notes"};
        if (std::find(known.begin(), known.end(), name) != known.end()) throw file_error(at, text + "; put it under [batch]");
        throw file_error(at, text + did_you_mean(name, table_names) + "Known tables: " + listed(table_names));
    }
    throw file_error(at, "unknown table" + did_you_mean(name, table_names) + "Known tables: " + listed(table_names));
}

void read_batch_table(reader& r, batch<double>& b) {
    const std::vector<std::string_view> known{"name", "format", "altitude", "barometer", "notes"};
    r.only(known);
    const auto name = r.text("name");
    if (!name) r.missing("name");
    b.name = *name;
    b.notes = r.text("notes");
    if (const auto format = r.maybe_number("format", {true, ""}); format && format->value != 1) {
        r.fail("format", format->text + " is not a format this program knows; expected 1");
    }
    r.one_of({"altitude", "barometer"}, false);
    b.altitude = r.maybe("altitude", height);
    b.barometer = r.maybe("barometer", air_pressure);
    if (!b.altitude && !b.barometer) b.altitude = r.default_amount(0, measure::metre);
}

void read_models(reader& r, models_table& m) {
    r.only(keys_of<models_table>());
    m.utilisation = r.choice("utilisation", utilisation_names, "tinseth");
    m.altitude_factor = r.choice("altitude_factor", altitude_names, "malowicki_yield_ratio");
    m.colour = r.choice("colour", colour_names, "morey");
    m.gravity = r.choice("gravity", gravity_names, "asbc");
    m.residual = r.choice("residual", residual_names, "water_quadratic");
}

void read_instruments(reader& r, instruments_table<>& i) {
    r.only(keys_of<instruments_table<>>());
    i.hydrometer_calibration = r.otherwise("hydrometer_calibration", sample, 20, measure::celsius);
    i.sample_temperature = r.otherwise("sample_temperature", sample, 20, measure::celsius);
    i.wort_factor = r.number_or("wort_factor", {false, ""}, 1.04);
}

}  // namespace

void parser_gave_up() { throw parser_failure{}; }

toml::table parse_toml(std::string_view text) { return parse(text); }

batch<double> read_text(std::string_view text) {
    const toml::table root = parse(text);
    if (root.empty()) throw file_error({1, 0, {}, {}}, "the file is empty; a batch begins with [batch] and a name, and has one [[step]] for each step");
    check_top_level(root);

    file f;
    batch<double> b;
    const toml::table none;
    const auto section = [&](std::string_view name, const toml::table* t) {
        return reader(t ? *t : none, {t ? source_of(t->source()).line : b.line, 0, {}, {}, std::string(name)}, '[' + std::string(name) + ']', f);
    };

    const toml::table* head = single_table(root, "batch");
    if (!head) throw file_error({1, 0, {}, {}, "batch"}, "missing; a batch file requires a [batch] table with a name");
    reader batch_reader = section("batch", head);
    b.line = batch_reader.place.line;
    read_batch_table(batch_reader, b);
    reader models_reader = section("models", single_table(root, "models"));
    read_models(models_reader, b.models);
    reader instruments_reader = section("instruments", single_table(root, "instruments"));
    read_instruments(instruments_reader, b.instruments);

    const toml::array* steps = table_list(root, "step");
    if (!steps || steps->empty()) throw file_error({b.line, 0, {}, {}, "step"}, "missing; a batch requires at least one [[step]]");
    for (const toml::node& n : *steps) {
        const int number = static_cast<int>(b.steps.size()) + 1;
        if (b.steps.size() == most_steps) throw file_error({source_of(n.source()).line, number, {}, {}}, "more than 200 steps in one batch");
        b.steps.push_back(read_step(*n.as_table(), number, f));
    }
    for (const std::string_view name : {"target", "free", "uncertain", "reading"}) table_list(root, name);

    check_measures(f);
    check_order(b);
    b.assumed = std::move(f.assumed);
    return b;
}

batch<double> read_file(const std::filesystem::path& path) {
    const auto refuse = [&](std::string_view why) { throw file_error({}, path.string() + ": " + std::string(why)); };
    std::error_code ignored;
    if (std::filesystem::is_directory(path, ignored)) refuse("this is a directory, not a batch file");
    errno = 0;
    std::ifstream in(path, std::ios::binary);
    if (!in) refuse(std::string("the file cannot be read: ") + std::strerror(errno));
    // One byte more than allowed, so that a device without an end is no trap.
    std::string text(most_bytes + 1, '\0');
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (in.bad()) refuse(std::string("the file cannot be read: ") + std::strerror(errno));
    text.resize(static_cast<std::size_t>(in.gcount()));
    return read_text(text);
}

}  // namespace wortmath::batch
