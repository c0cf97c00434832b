#include "batch/units.hpp"

#include <charconv>
#include <cmath>
#include <system_error>

namespace wortmath::batch {
namespace {

// Legal definitions: the international pound, the US gallon of 231 cubic inches and the imperial gallon.
constexpr double pound = 453.59237, us_gallon = 3.785411784, imperial_gallon = 4.54609;

constexpr unit table[] = {
    {"mg", dimension::mass, measure::gram, 0, 1, 1000},
    {"g", dimension::mass, measure::gram, 0, 1, 1},
    {"kg", dimension::mass, measure::gram, 0, 1000, 1},
    {"oz", dimension::mass, measure::gram, 0, pound, 16},
    {"lb", dimension::mass, measure::gram, 0, pound, 1},

    {"mL", dimension::volume, measure::litre, 0, 1, 1000},
    {"L", dimension::volume, measure::litre, 0, 1, 1},
    {"hL", dimension::volume, measure::litre, 0, 100, 1},
    {"floz", dimension::volume, measure::litre, 0, us_gallon, 128, measures::us},
    {"pt", dimension::volume, measure::litre, 0, us_gallon, 8, measures::us},
    {"qt", dimension::volume, measure::litre, 0, us_gallon, 4, measures::us},
    {"gal", dimension::volume, measure::litre, 0, us_gallon, 1, measures::us},
    {"bbl", dimension::volume, measure::litre, 0, us_gallon * 31, 1, measures::us},
    {"impfloz", dimension::volume, measure::litre, 0, imperial_gallon, 160, measures::imperial},
    {"imppt", dimension::volume, measure::litre, 0, imperial_gallon, 8, measures::imperial},
    {"impqt", dimension::volume, measure::litre, 0, imperial_gallon, 4, measures::imperial},
    {"impgal", dimension::volume, measure::litre, 0, imperial_gallon, 1, measures::imperial},

    {"s", dimension::time, measure::minute, 0, 1, 60},
    {"min", dimension::time, measure::minute, 0, 1, 1},
    {"h", dimension::time, measure::minute, 0, 60, 1},
    {"d", dimension::time, measure::minute, 0, 1440, 1},

    {"degC", dimension::temperature, measure::celsius, 0, 1, 1},
    {"°C", dimension::temperature, measure::celsius, 0, 1, 1},
    {"degF", dimension::temperature, measure::celsius, 32, 5, 9},
    {"°F", dimension::temperature, measure::celsius, 32, 5, 9},
    {"K", dimension::temperature, measure::celsius, 273.15, 1, 1},

    {"bar", dimension::pressure, measure::bar, 0, 1, 1},
    {"mbar", dimension::pressure, measure::bar, 0, 1, 1000},
    {"kPa", dimension::pressure, measure::bar, 0, 1, 100},
    {"hPa", dimension::pressure, measure::bar, 0, 1, 1000},
    {"psi", dimension::pressure, measure::bar, 0, 0.06894757293168, 1},
    {"mmHg", dimension::pressure, measure::bar, 0, 133.322387415, 100000},
    {"atm", dimension::pressure, measure::bar, 0, 1.01325, 1},

    {"m", dimension::length, measure::metre, 0, 1, 1},
    {"km", dimension::length, measure::metre, 0, 1000, 1},
    {"ft", dimension::length, measure::metre, 0, 0.3048, 1},

    {"kg/h", dimension::evaporation, measure::gram_per_hour, 0, 1000, 1},
    {"lb/h", dimension::evaporation, measure::gram_per_hour, 0, pound, 1},
    {"L/h", dimension::evaporation, measure::litre_per_hour, 0, 1, 1},
    {"gal/h", dimension::evaporation, measure::litre_per_hour, 0, us_gallon, 1, measures::us},
    {"impgal/h", dimension::evaporation, measure::litre_per_hour, 0, imperial_gallon, 1, measures::imperial},

    {"W", dimension::power, measure::kilowatt, 0, 1, 1000},
    {"kW", dimension::power, measure::kilowatt, 0, 1, 1},

    {"%", dimension::share, measure::share, 0, 1, 100},

    {"degL", dimension::colour, measure::srm, 0, 1, 1},
    {"SRM", dimension::colour, measure::srm, 0, 1, 1},
    {"EBC", dimension::colour, measure::ebc, 0, 1, 1},

    {"SG", dimension::gravity, measure::gravity, 0, 1, 1},
    {"degP", dimension::gravity, measure::plato, 0, 1, 1},

    {"vol", dimension::gas, measure::volumes, 0, 1, 1},
    {"g/L", dimension::gas, measure::gram_per_litre, 0, 1, 1},

    {"L/kg", dimension::absorption, measure::litre_per_kilogram, 0, 1, 1},
    {"floz/oz", dimension::absorption, measure::litre_per_kilogram, 0, us_gallon * 125, pound, measures::us},
};

bool digit(char c) { return c >= '0' && c <= '9'; }

std::string_view trim(std::string_view s) {
    constexpr std::string_view blank = " \t";
    const auto first = s.find_first_not_of(blank);
    if (first == s.npos) return {};
    return s.substr(first, s.find_last_not_of(blank) - first + 1);
}

std::string expected(dimension d) {
    std::string text = "; expected " + std::string(dimension_name(d)) + ": a number and ";
    if (d == dimension::share) return text + "%, such as 5.2 %, or a bare number from 0 to 1";
    return text + "one of " + units_of(d);
}

}  // namespace

std::span<const unit> all_units() { return table; }

const unit* find_unit(std::string_view name) {
    for (const unit& u : table) {
        if (u.name == name) return &u;
    }
    return nullptr;
}

std::string_view dimension_name(dimension d) {
    switch (d) {
        case dimension::mass: return "a mass";
        case dimension::volume: return "a volume";
        case dimension::time: return "a time";
        case dimension::temperature: return "a temperature";
        case dimension::pressure: return "a pressure";
        case dimension::length: return "a height";
        case dimension::evaporation: return "an evaporation rate";
        case dimension::power: return "a power";
        case dimension::share: return "a share";
        case dimension::colour: return "a colour";
        case dimension::gravity: return "a gravity";
        case dimension::gas: return "a carbonation";
        case dimension::absorption: return "an absorption";
    }
    return "an amount";
}

std::string units_of(dimension d) {
    std::string list;
    for (const unit& u : table) {
        if (u.of != d) continue;
        if (!list.empty()) list += ", ";
        list += u.name;
    }
    return list;
}

parsed_amount parse_amount(std::string_view text, dimension d) {
    const std::string shown = in_quotes(text);
    std::string_view rest = trim(text);
    if (rest.empty()) throw amount_error(shown + " is empty" + expected(d));
    if (rest.front() == '+') rest.remove_prefix(1);

    double number = 0;
    const auto [end, problem] = std::from_chars(rest.data(), rest.data() + rest.size(), number);
    if (problem == std::errc::result_out_of_range) throw amount_error(shown + " is not a number this program can hold");
    if (problem != std::errc{}) throw amount_error(shown + " does not begin with a number" + expected(d));
    if (!std::isfinite(number)) throw amount_error(shown + " is not a number" + expected(d));
    rest.remove_prefix(static_cast<std::size_t>(end - rest.data()));

    const std::string_view name = trim(rest);
    if (name.empty()) throw amount_error(shown + " has no unit" + expected(d));
    // "5,2 gal", "1 000 g", "1_000 g", "1'000 g", "1 1/2 lb", "1.5.2 L"
    if (digit(name.front()) || (name.size() > 1 && digit(name[1]) && std::string_view(",._'/-").find(name.front()) != std::string_view::npos)) {
        throw amount_error(shown + " is not one plain number and a unit: use a decimal point, no separators and no fractions");
    }
    const unit* u = find_unit(name);
    if (!u) throw amount_error(shown + ": unknown unit " + in_quotes(name) + expected(d));
    if (u->of != d) throw amount_error(shown + ": the unit " + std::string(name) + " is for " + std::string(dimension_name(u->of)) + expected(d));
    return {number, u};
}

double in_unit(double value, measure in, std::string_view unit_name) {
    if (unit_name.empty()) return value;
    const unit* u = find_unit(unit_name);
    if (!u) throw std::invalid_argument("unknown unit " + std::string(unit_name));
    if (in == measure::day && u->in == measure::minute) return value * 1440 * u->over / u->times;
    if (u->in != in) throw std::invalid_argument("the unit " + std::string(unit_name) + " does not fit this amount");
    return value * u->over / u->times + u->zero;
}

std::string visible(std::string_view text) {
    constexpr std::size_t longest = 60;
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto c = static_cast<unsigned char>(text[i]);
        if (i >= longest && (c & 0xC0) != 0x80) {  // never in the middle of a character
            out += "...";
            break;
        }
        if (c == '\n') out += "\\n";
        else if (c == '\t') out += "\\t";
        else if (c < 0x20 || c == 0x7F) out += '?';
        else out += text[i];
    }
    return out;
}

std::string in_quotes(std::string_view text) { return '"' + visible(text) + '"'; }

std::string plain(double x) {
    if (std::isnan(x)) return "nan";
    if (std::isinf(x)) return x < 0 ? "-inf" : "inf";
    char buffer[32];
    // Counts of cells look better in full than with an exponent.
    const bool whole = std::abs(x) < 1e15 && x == std::floor(x);
    const auto r = whole ? std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::fixed)
                         : std::to_chars(buffer, buffer + sizeof buffer, x);
    return {buffer, r.ptr};
}

}  // namespace wortmath::batch
