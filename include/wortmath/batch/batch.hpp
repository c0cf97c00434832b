// A batch as the brewer wrote it down: plain structures, one for each step, nothing computed.
//
// Everything with a number carries it as T, so that an engine that is a template on T lets derivatives flow from
// any amount of the file. Words, flags, names and lines are the same for every T.
//
// Value, unit text and line stay together, so that a message can name the place and a card can show the file's units.
#ifndef WORTMATH_BATCH_BATCH_HPP
#define WORTMATH_BATCH_BATCH_HPP

#include <exception>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace wortmath::batch {

// ---------------------------------------------------------------------------------------------------- amounts

// What the value of an amount is counted in. Where the file has a choice of scales (SG or degP, SRM or EBC,
// volumes or g/L, kg/h or L/h) the value is kept on the scale it was given in: going over needs a model, and
// models are the engine's business.
enum class measure : unsigned char {
    gram,                // mass
    litre,               // volume
    minute,              // `minutes`
    day,                 // `days`
    celsius,             // temperature
    bar,                 // pressure; absolute or gauge as the key says
    metre,               // altitude
    gram_per_hour,       // evaporation by mass
    litre_per_hour,      // evaporation by volume
    kilowatt,            // power
    share,               // 0 to 1
    srm,                 // colour as degL or SRM
    ebc,                 // colour as EBC
    gravity,             // SG 20/20
    plato,               // degP
    volumes,             // volumes of CO2
    gram_per_litre,      // CO2 as g/L
    litre_per_kilogram,  // absorption
    number               // a bare number (cells, pitch_rate, cells_per_gram, vessel_heat_capacity, wort_factor)
};

template <class T = double>
struct amount {
    T value{};
    measure in = measure::number;
    std::string text;    // the whole as the file has it ("5.2 gal", "0.82"), for messages; empty for a default
    std::string unit;    // as the file spells it ("gal", "°F", "%"); empty for a bare number and for a default
    int line = 0;        // of the key; of a default that of its table or of the ingredient's opening brace
    bool given = false;  // false: the default
};

struct word {
    std::string value;
    int line = 0;
    bool given = false;
};

struct flag {
    bool value = false;
    int line = 0;
    bool given = false;
};

// ------------------------------------------------------------------------------------------------- ingredients
//
// `each_key` lists the keys of a structure once. It calls f("key", object.key...) for each, over any number of
// objects of the same kind at once: one to look at them, two to copy from one number type to another.

struct item_place {
    int line = 0;  // of the opening brace
    std::optional<std::string> name;
};

template <class T = double>
struct grain_item : item_place {
    template <class U> using with = grain_item<U>;
    amount<T> mass;
    amount<T> colour;   // measure::srm or ebc
    amount<T> extract;  // share of the mass as is

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("name", s.name...);
        f("mass", s.mass...);
        f("colour", s.colour...);
        f("extract", s.extract...);
    }
};

template <class T = double>
struct extract_item : item_place {
    template <class U> using with = extract_item<U>;
    amount<T> mass;
    word kind;  // "syrup" or "dry"
    amount<T> solids;
    amount<T> colour;                  // measure::srm or ebc
    std::optional<amount<T>> minutes;  // before the end; in a boil always, elsewhere never

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("name", s.name...);
        f("mass", s.mass...);
        f("kind", s.kind...);
        f("solids", s.solids...);
        f("colour", s.colour...);
        f("minutes", s.minutes...);
    }
};

template <class T = double>
struct sugar_item : item_place {
    template <class U> using with = sugar_item<U>;
    amount<T> mass;
    word kind;  // sucrose, glucose, glucose_monohydrate, fructose, maltose
    amount<T> solids;
    amount<T> colour;                  // measure::srm or ebc
    std::optional<amount<T>> minutes;  // before the end; in a boil always, elsewhere never

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("name", s.name...);
        f("mass", s.mass...);
        f("kind", s.kind...);
        f("solids", s.solids...);
        f("colour", s.colour...);
        f("minutes", s.minutes...);
    }
};

template <class T = double>
struct hop_item : item_place {
    template <class U> using with = hop_item<U>;
    amount<T> mass;
    amount<T> alpha;                   // share; 0 by default in dry_hop
    std::optional<amount<T>> minutes;  // before the end; in a boil always, elsewhere never

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("name", s.name...);
        f("mass", s.mass...);
        f("alpha", s.alpha...);
        f("minutes", s.minutes...);
    }
};

template <class T = double>
struct sparge_item {
    template <class U> using with = sparge_item<U>;
    int line = 0;  // of the opening brace
    amount<T> volume;
    amount<T> temperature;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("volume", s.volume...);
        f("temperature", s.temperature...);
    }
};

// ------------------------------------------------------------------------------------------------------- steps

struct step_place {
    int number = 0;  // counted from 1
    int line = 0;    // of [[step]]
};

// Of `volume` and `mass` exactly one is there (and so for every "or" below, unless it says otherwise).
template <class T = double>
struct water_step : step_place {
    template <class U> using with = water_step<U>;
    static constexpr std::string_view do_word = "water";
    std::optional<amount<T>> volume, mass;
    amount<T> temperature;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("volume", s.volume...);
        f("mass", s.mass...);
        f("temperature", s.temperature...);
    }
};

template <class T = double>
struct heat_step : step_place {
    template <class U> using with = heat_step<U>;
    static constexpr std::string_view do_word = "heat";
    amount<T> to;
    std::optional<amount<T>> power;  // kW
    amount<T> efficiency;
    amount<T> vessel_heat_capacity;  // kJ/K

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("to", s.to...);
        f("power", s.power...);
        f("efficiency", s.efficiency...);
        f("vessel_heat_capacity", s.vessel_heat_capacity...);
    }
};

template <class T = double>
struct steep_step : step_place {
    template <class U> using with = steep_step<U>;
    static constexpr std::string_view do_word = "steep";
    std::optional<amount<T>> minutes;
    std::optional<amount<T>> temperature;  // absent: as it is
    amount<T> efficiency;
    amount<T> absorption;  // L/kg
    flag squeezed;
    std::vector<grain_item<T>> grains;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("grains", s.grains...);
        f("minutes", s.minutes...);
        f("temperature", s.temperature...);
        f("efficiency", s.efficiency...);
        f("absorption", s.absorption...);
        f("squeezed", s.squeezed...);
    }
};

template <class T = double>
struct mash_step : step_place {
    template <class U> using with = mash_step<U>;
    static constexpr std::string_view do_word = "mash";
    std::optional<amount<T>> minutes;
    amount<T> temperature;
    std::optional<amount<T>> water;  // volume; absent only if a water step came before
    amount<T> water_temperature;
    amount<T> grain_temperature;
    amount<T> conversion;
    std::vector<grain_item<T>> grains;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("grains", s.grains...);
        f("minutes", s.minutes...);
        f("temperature", s.temperature...);
        f("water", s.water...);
        f("water_temperature", s.water_temperature...);
        f("grain_temperature", s.grain_temperature...);
        f("conversion", s.conversion...);
    }
};

template <class T = double>
struct lauter_step : step_place {
    template <class U> using with = lauter_step<U>;
    static constexpr std::string_view do_word = "lauter";
    amount<T> absorption;  // L/kg
    amount<T> dead_space;
    std::vector<sparge_item<T>> sparges;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("absorption", s.absorption...);
        f("sparges", s.sparges...);
        f("dead_space", s.dead_space...);
    }
};

template <class T = double>
struct dissolve_step : step_place {
    template <class U> using with = dissolve_step<U>;
    static constexpr std::string_view do_word = "dissolve";
    std::vector<extract_item<T>> extracts;
    std::vector<sugar_item<T>> sugars;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("extracts", s.extracts...);
        f("sugars", s.sugars...);
    }
};

template <class T = double>
struct boil_step : step_place {
    template <class U> using with = boil_step<U>;
    static constexpr std::string_view do_word = "boil";
    amount<T> minutes;
    std::optional<amount<T>> evaporation;  // measure::gram_per_hour or litre_per_hour
    std::optional<amount<T>> power;        // kW; with it `efficiency`
    amount<T> efficiency;
    std::vector<hop_item<T>> hops;
    std::vector<extract_item<T>> extracts;
    std::vector<sugar_item<T>> sugars;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("minutes", s.minutes...);
        f("evaporation", s.evaporation...);
        f("power", s.power...);
        f("efficiency", s.efficiency...);
        f("hops", s.hops...);
        f("extracts", s.extracts...);
        f("sugars", s.sugars...);
    }
};

template <class T = double>
struct stand_step : step_place {
    template <class U> using with = stand_step<U>;
    static constexpr std::string_view do_word = "stand";
    amount<T> minutes;
    amount<T> temperature;
    flag kettle_hops;
    std::vector<hop_item<T>> hops;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("minutes", s.minutes...);
        f("temperature", s.temperature...);
        f("hops", s.hops...);
        f("kettle_hops", s.kettle_hops...);
    }
};

template <class T = double>
struct chill_step : step_place {
    template <class U> using with = chill_step<U>;
    static constexpr std::string_view do_word = "chill";
    amount<T> to;

    template <class F, class... S> static void each_key(F&& f, S&... s) { f("to", s.to...); }
};

template <class T = double>
struct transfer_step : step_place {
    template <class U> using with = transfer_step<U>;
    static constexpr std::string_view do_word = "transfer";
    amount<T> leave;
    amount<T> hop_absorption;  // L/kg

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("leave", s.leave...);
        f("hop_absorption", s.hop_absorption...);
    }
};

template <class T = double>
struct top_up_step : step_place {
    template <class U> using with = top_up_step<U>;
    static constexpr std::string_view do_word = "top_up";
    std::optional<amount<T>> volume, mass, to;  // exactly one
    amount<T> temperature;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("volume", s.volume...);
        f("mass", s.mass...);
        f("to", s.to...);
        f("temperature", s.temperature...);
    }
};

template <class T = double>
struct pitch_step : step_place {
    template <class U> using with = pitch_step<U>;
    static constexpr std::string_view do_word = "pitch";
    std::optional<std::string> name;
    std::optional<amount<T>> mass, cells;
    amount<T> pitch_rate;          // million cells per mL and degP
    std::vector<amount<T>> range;  // low and high, or nothing
    amount<T> cells_per_gram;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("name", s.name...);
        f("mass", s.mass...);
        f("cells", s.cells...);
        f("pitch_rate", s.pitch_rate...);
        f("range", s.range...);
        f("cells_per_gram", s.cells_per_gram...);
    }
};

// Neither attenuation nor final_gravity: only a later ferment step has that (no more malt extract ferments).
// The first one then has the default attenuation, with given = false.
template <class T = double>
struct ferment_step : step_place {
    template <class U> using with = ferment_step<U>;
    static constexpr std::string_view do_word = "ferment";
    amount<T> days;
    amount<T> temperature;
    std::optional<amount<T>> attenuation;
    std::optional<amount<T>> final_gravity;  // measure::gravity or plato
    std::optional<amount<T>> limit_attenuation;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("days", s.days...);
        f("temperature", s.temperature...);
        f("attenuation", s.attenuation...);
        f("final_gravity", s.final_gravity...);
        f("limit_attenuation", s.limit_attenuation...);
    }
};

template <class T = double>
struct rack_step : step_place {
    template <class U> using with = rack_step<U>;
    static constexpr std::string_view do_word = "rack";
    amount<T> leave;
    std::optional<amount<T>> temperature;  // absent: as it is

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("leave", s.leave...);
        f("temperature", s.temperature...);
    }
};

template <class T = double>
struct dry_hop_step : step_place {
    template <class U> using with = dry_hop_step<U>;
    static constexpr std::string_view do_word = "dry_hop";
    amount<T> days;
    amount<T> absorption;                  // L/kg
    std::optional<amount<T>> temperature;  // absent: as it is
    std::vector<hop_item<T>> hops;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("hops", s.hops...);
        f("days", s.days...);
        f("absorption", s.absorption...);
        f("temperature", s.temperature...);
    }
};

template <class T = double>
struct prime_step : step_place {
    template <class U> using with = prime_step<U>;
    static constexpr std::string_view do_word = "prime";
    word sugar;  // a model argument of priming.sugar_yield
    std::optional<amount<T>> mass;
    std::optional<amount<T>> carbonation;  // measure::volumes or gram_per_litre
    amount<T> water;                       // volume
    amount<T> water_temperature;
    amount<T> efficiency;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("sugar", s.sugar...);
        f("mass", s.mass...);
        f("carbonation", s.carbonation...);
        f("water", s.water...);
        f("water_temperature", s.water_temperature...);
        f("efficiency", s.efficiency...);
    }
};

template <class T = double>
struct bottle_step : step_place {
    template <class U> using with = bottle_step<U>;
    static constexpr std::string_view do_word = "bottle";
    amount<T> volume;
    amount<T> headspace;  // L per L
    amount<T> loss;
    word package;
    std::optional<amount<T>> rated;  // gauge
    amount<T> hottest;
    amount<T> serving;
    flag fermentation_confirmed;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("volume", s.volume...);
        f("headspace", s.headspace...);
        f("loss", s.loss...);
        f("package", s.package...);
        f("rated", s.rated...);
        f("hottest", s.hottest...);
        f("serving", s.serving...);
        f("fermentation_confirmed", s.fermentation_confirmed...);
    }
};

// With `carbonation` the cylinder does it; without, a prime step came before.
template <class T = double>
struct keg_step : step_place {
    template <class U> using with = keg_step<U>;
    static constexpr std::string_view do_word = "keg";
    std::optional<amount<T>> carbonation;  // measure::volumes or gram_per_litre
    amount<T> serving;
    amount<T> headspace;  // L per L
    amount<T> hottest;
    word package;
    std::optional<amount<T>> rated;  // gauge
    amount<T> loss;
    flag fermentation_confirmed;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("carbonation", s.carbonation...);
        f("serving", s.serving...);
        f("headspace", s.headspace...);
        f("hottest", s.hottest...);
        f("package", s.package...);
        f("rated", s.rated...);
        f("loss", s.loss...);
        f("fermentation_confirmed", s.fermentation_confirmed...);
    }
};

template <class T = double>
struct condition_step : step_place {
    template <class U> using with = condition_step<U>;
    static constexpr std::string_view do_word = "condition";
    amount<T> days;
    amount<T> temperature;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("days", s.days...);
        f("temperature", s.temperature...);
    }
};

template <class T = double>
struct serve_step : step_place {
    template <class U> using with = serve_step<U>;
    static constexpr std::string_view do_word = "serve";
    amount<T> temperature;

    template <class F, class... S> static void each_key(F&& f, S&... s) { f("temperature", s.temperature...); }
};

template <class T = double>
struct note_step : step_place {
    template <class U> using with = note_step<U>;
    static constexpr std::string_view do_word = "note";
    word text;

    template <class F, class... S> static void each_key(F&& f, S&... s) { f("text", s.text...); }
};

template <class T = double>
using step = std::variant<water_step<T>, heat_step<T>, steep_step<T>, mash_step<T>, lauter_step<T>, dissolve_step<T>,
                          boil_step<T>, stand_step<T>, chill_step<T>, transfer_step<T>, top_up_step<T>, pitch_step<T>,
                          ferment_step<T>, rack_step<T>, dry_hop_step<T>, prime_step<T>, bottle_step<T>, keg_step<T>,
                          condition_step<T>, serve_step<T>, note_step<T>>;

// --------------------------------------------------------------------------------------------------- the batch

struct models_table {
    word utilisation{"tinseth"};
    word altitude_factor{"malowicki_yield_ratio"};
    word colour{"morey"};
    word gravity{"asbc"};
    word residual{"water_quadratic"};

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("utilisation", s.utilisation...);
        f("altitude_factor", s.altitude_factor...);
        f("colour", s.colour...);
        f("gravity", s.gravity...);
        f("residual", s.residual...);
    }
};

template <class T = double>
struct instruments_table {
    template <class U> using with = instruments_table<U>;
    amount<T> hydrometer_calibration;
    amount<T> sample_temperature;
    amount<T> wort_factor;

    template <class F, class... S> static void each_key(F&& f, S&... s) {
        f("hydrometer_calibration", s.hydrometer_calibration...);
        f("sample_temperature", s.sample_temperature...);
        f("wort_factor", s.wort_factor...);
    }
};

// A default that shapes the forecast and that the brewer should know about.
struct assumption {
    int step = 0;
    std::string key;
    std::variant<double, std::string> value;
    std::optional<std::string> name;  // of the ingredient
};

template <class T = double>
struct batch {
    int line = 0;  // of [batch]
    std::string name;
    std::optional<std::string> notes;
    std::optional<amount<T>> altitude;   // never both; neither: altitude 0 m is here, with given = false
    std::optional<amount<T>> barometer;  // absolute, at the place
    models_table models;
    instruments_table<T> instruments;
    std::vector<step<T>> steps;
    std::vector<assumption> assumed;
};

// ------------------------------------------------------------------------------------------------------ places

struct where {
    int line = 0;         // 0: the file as a whole
    int step = 0;         // 0: not in a step
    std::string do_word;  // empty: not known
    std::string key;      // empty: the whole step or table
    std::string table{};  // outside the steps: "batch", "models", "instruments"; may be empty
};

// "line 14, step 3 (boil): minutes: ...", "line 3: batch: altitude: ...", "line 7: ..."
class file_error : public std::exception {
public:
    where place;
    std::string detail;  // the message without the place
    file_error(where at, std::string text) : place(std::move(at)), detail(std::move(text)) {
        if (place.line > 0) {  // 0: the file could not be read at all
            message_ = "line " + std::to_string(place.line);
            if (place.step > 0) {
                message_ += ", step " + std::to_string(place.step);
                if (!place.do_word.empty()) message_ += " (" + place.do_word + ")";
            }
            message_ += ": ";
        }
        if (place.step == 0 && !place.table.empty()) message_ += place.table + ": ";
        if (!place.key.empty()) message_ += place.key + ": ";
        message_ += detail;
    }
    const char* what() const noexcept override { return message_.c_str(); }
    int line() const { return place.line; }
    int step() const { return place.step; }
    const std::string& do_word() const { return place.do_word; }
    const std::string& key() const { return place.key; }

private:
    std::string message_;
};

// The place of a whole step, and of one of its keys (an amount, a word or a flag: whatever has a line).
template <class Step> where place_of(const Step& s) { return {s.line, s.number, std::string(Step::do_word), {}}; }
template <class Step, class Key> where place_of(const Step& s, std::string_view key, const Key& at) {
    return {at.line, s.number, std::string(Step::do_word), std::string(key)};
}

// fail(s, "the kettle is empty; ...")                          order, or no key is at fault: line of [[step]]
// fail(s, "to", s.to, "9 L is less than what is there ...")    line of the key
// fail(s, "minutes", hop.minutes, "...")                       line of the ingredient's key; optional works too
template <class Step> [[noreturn]] void fail(const Step& s, std::string text) { throw file_error(place_of(s), std::move(text)); }
template <class Step, class Key>
[[noreturn]] void fail(const Step& s, std::string_view key, const Key& at, std::string text) {
    throw file_error(place_of(s, key, at), std::move(text));
}
template <class Step, class Key>
[[noreturn]] void fail(const Step& s, std::string_view key, const std::optional<Key>& at, std::string text) {
    throw file_error(at ? place_of(s, key, *at) : where{s.line, s.number, std::string(Step::do_word), std::string(key)},
                     std::move(text));
}

// ------------------------------------------------------------------------------------- over all amounts of a batch

namespace detail {

template <class F>
struct amount_visitor {
    where at;
    std::string_view item;  // name of the ingredient, if it has one
    F& f;

    template <class T> void operator()(std::string_view key, amount<T>& a) { f(place(key, a.line), item, a); }
    template <class T> void operator()(std::string_view key, const amount<T>& a) { f(place(key, a.line), item, a); }
    template <class T> void operator()(std::string_view key, std::optional<amount<T>>& a) { if (a) (*this)(key, *a); }
    template <class T> void operator()(std::string_view key, const std::optional<amount<T>>& a) { if (a) (*this)(key, *a); }
    template <class I> void operator()(std::string_view key, std::vector<I>& list) { each(key, list); }
    template <class I> void operator()(std::string_view key, const std::vector<I>& list) { each(key, list); }
    void operator()(std::string_view, const word&) {}
    void operator()(std::string_view, const flag&) {}
    void operator()(std::string_view, const std::optional<std::string>&) {}

private:
    where place(std::string_view key, int line) const {
        where w = at;
        w.line = line;
        w.key = key;
        return w;
    }
    template <class List> void each(std::string_view key, List& list) {
        for (auto& i : list) {
            if constexpr (requires { i.value; }) {
                (*this)(key, i);
            } else {
                amount_visitor inner{at, {}, f};
                if constexpr (requires { i.name; }) {
                    if (i.name) inner.item = *i.name;
                }
                std::remove_cvref_t<decltype(i)>::each_key(inner, i);
            }
        }
    }
};

struct copier {
    template <class U, class T> void operator()(std::string_view, amount<U>& to, const amount<T>& from) const {
        to = amount<U>{U(from.value), from.in, from.text, from.unit, from.line, from.given};
    }
    template <class U, class T>
    void operator()(std::string_view key, std::optional<amount<U>>& to, const std::optional<amount<T>>& from) const {
        to.reset();
        if (from) (*this)(key, to.emplace(), *from);
    }
    template <class I, class J> void operator()(std::string_view key, std::vector<I>& to, const std::vector<J>& from) const {
        to.clear();
        for (const J& j : from) {
            I& i = to.emplace_back();
            if constexpr (requires { j.value; }) {
                (*this)(key, i, j);
            } else {
                i.line = j.line;
                I::each_key(*this, i, j);
            }
        }
    }
    template <class X> void operator()(std::string_view, X& to, const X& from) const { to = from; }
};

}  // namespace detail

// Calls f(where, name of the ingredient or "", amount&) for every amount of the batch, defaults too, in the order of
// the file's steps. Works for const and changeable batches alike.
template <class Batch, class F>
void for_each_amount(Batch& b, F&& f) {
    detail::amount_visitor<std::remove_reference_t<F>> v{{b.line, 0, {}, {}, "batch"}, {}, f};
    v("altitude", b.altitude);
    v("barometer", b.barometer);
    v.at.table = "instruments";
    std::remove_cvref_t<decltype(b.instruments)>::each_key(v, b.instruments);
    for (auto& any : b.steps) {
        std::visit(
            [&](auto& s) {
                using S = std::remove_cvref_t<decltype(s)>;
                v.at = place_of(s);
                S::each_key(v, s);
            },
            any);
    }
}

// Liquids are at most as hot as water boils at the place; only the engine knows that temperature, so it asks here,
// once, before the first step. Storage, grain and sample temperatures have limits of their own, kept by the reader.
template <class T>
void check_liquid_temperatures(const batch<T>& b, double boiling_temperature) {
    for_each_amount(b, [&](const where& at, std::string_view, const amount<T>& a) {
        const bool liquid = at.step > 0 && at.key != "hottest" && at.key != "serving" && at.key != "grain_temperature" &&
                            at.do_word != "condition" && at.do_word != "serve";
        if (a.in != measure::celsius || !liquid || !(a.value > boiling_temperature + 1e-9)) return;
        const bool celsius = a.unit == "degC" || a.unit == "°C";
        const bool fits = a.value >= 32.0 && a.value <= 32.0 + 1.8 * boiling_temperature;
        const long tenths = static_cast<long>(10.0 * boiling_temperature + 0.5);
        throw file_error(at, '"' + a.text + "\" is above the boiling temperature, " + std::to_string(tenths / 10) + '.' +
                                 std::to_string(tenths % 10) + " degC here" +
                                 (celsius && fits ? "; is it degF?" : ""));
    });
}

// The same batch with another number type.
template <class U, class T>
batch<U> with_numbers(const batch<T>& from) {
    const detail::copier copy;
    batch<U> to;
    to.line = from.line;
    to.name = from.name;
    to.notes = from.notes;
    copy("altitude", to.altitude, from.altitude);
    copy("barometer", to.barometer, from.barometer);
    to.models = from.models;
    instruments_table<U>::each_key(copy, to.instruments, from.instruments);
    to.assumed = from.assumed;
    to.steps.reserve(from.steps.size());
    for (const step<T>& any : from.steps) {
        std::visit(
            [&](const auto& s) {
                using S = typename std::remove_cvref_t<decltype(s)>::template with<U>;
                S made;
                static_cast<step_place&>(made) = s;
                S::each_key(copy, made, s);
                to.steps.emplace_back(std::move(made));
            },
            any);
    }
    return to;
}

}  // namespace wortmath::batch

#endif
