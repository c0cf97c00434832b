// Points and differences on the scales that the trade reads off instruments and tables.
//
// A point on one scale never becomes a point on another by itself, and never comes from a bare number: going from
// specific gravity to degrees Plato is a published formula with a source, not a conversion of types.
#pragma once

#include <cstddef>

namespace wortmath {

// What a value that misses its scale is likely to be; drives the hint in an error.
enum class likely : unsigned char { nothing, gravity, extract, share, temperature, pressure, percent };

enum class dimension : unsigned char {
    none, mass, volume, time, temperature, absolute_pressure, gauge_pressure, density, length, area, energy, power, mass_rate, volume_rate
};

inline constexpr double no_limit = __builtin_huge_val();

struct scale {
    const char* unit;                         // as printed: "SG 20/20", "degP"
    const char* noun;                         // fits into "12 is not ..."
    double least = -no_limit;                 // physical bounds; a model may narrow or widen them
    double most = no_limit;
    likely slip = likely::nothing;
    dimension dim = dimension::none;          // for quantities with a physical dimension,
    double si = 1.0;                          // how many SI units one unit is (temperature: degC)
};

// The difference of two points: a rise of 3 K, a drop of 40 gravity points.
template <class Scale>
struct difference {
    double value;
    constexpr explicit difference(double v) noexcept : value(v) {}
    constexpr difference operator-() const noexcept { return difference(-value); }
    friend constexpr difference operator+(difference a, difference b) noexcept { return difference(a.value + b.value); }
    friend constexpr difference operator-(difference a, difference b) noexcept { return difference(a.value - b.value); }
    friend constexpr difference operator*(difference a, double k) noexcept { return difference(a.value * k); }
    friend constexpr difference operator*(double k, difference a) noexcept { return difference(k * a.value); }
    friend constexpr difference operator/(difference a, double k) noexcept { return difference(a.value / k); }
    friend constexpr double operator/(difference a, difference b) noexcept { return a.value / b.value; }
    friend constexpr bool operator==(difference a, difference b) noexcept { return a.value == b.value; }
    friend constexpr bool operator<(difference a, difference b) noexcept { return a.value < b.value; }
    friend constexpr bool operator>(difference a, difference b) noexcept { return a.value > b.value; }
};

// Quantities of other libraries become points through this bridge; quantity.hpp opens it for Boost.Units.
template <class Scale, class Quantity>
struct bridge {
    static constexpr bool open = false;
};

template <class Narrow, class Wide>
concept widens_to = requires { typename Narrow::wider; } && __is_same(typename Narrow::wider, Wide);

template <class Scale>
struct point {
    using scale_type = Scale;
    double value;

    constexpr explicit point(double v) noexcept : value(v) {}

    // A narrow scale is read where the wide one is asked for (an apparent extract is an extract) ...
    template <class Narrow>
        requires widens_to<Narrow, Scale>
    constexpr point(point<Narrow> p) noexcept : value(p.value) {}

    // ... but narrowing has to be said.
    template <class Wide>
        requires widens_to<Scale, Wide>
    constexpr explicit point(point<Wide> p) noexcept : value(p.value) {}

    template <class Quantity>
        requires bridge<Scale, Quantity>::open
    constexpr point(const Quantity& q) : value(bridge<Scale, Quantity>::value(q)) {}

    friend constexpr difference<Scale> operator-(point a, point b) noexcept { return difference<Scale>(a.value - b.value); }
    friend constexpr point operator+(point a, difference<Scale> d) noexcept { return point(a.value + d.value); }
    friend constexpr point operator+(difference<Scale> d, point a) noexcept { return point(a.value + d.value); }
    friend constexpr point operator-(point a, difference<Scale> d) noexcept { return point(a.value - d.value); }
    friend constexpr bool operator==(point a, point b) noexcept { return a.value == b.value; }
    friend constexpr bool operator<(point a, point b) noexcept { return a.value < b.value; }
    friend constexpr bool operator>(point a, point b) noexcept { return a.value > b.value; }
    friend constexpr bool operator<=(point a, point b) noexcept { return a.value <= b.value; }
    friend constexpr bool operator>=(point a, point b) noexcept { return a.value >= b.value; }
};

// Several points of one scale, as a view on memory that the caller owns.
template <class Point>
struct list {
    const Point* data;
    std::size_t size;
    constexpr list(const Point* d, std::size_t n) noexcept : data(d), size(n) {}
    template <std::size_t N>
    constexpr list(const Point (&a)[N]) noexcept : data(a), size(N) {}
    template <class Range>
        requires requires(const Range& r) { static_cast<const Point*>(r.data()); r.size(); }
    constexpr list(const Range& r) noexcept : data(r.data()), size(r.size()) {}
};

// An argument that may be left out without a number in its place.
struct none_t {};
inline constexpr none_t none{};

template <class Point>
struct optional_point {
    double value = 0.0;
    bool given = false;
    constexpr optional_point(none_t) noexcept {}
    constexpr optional_point(Point p) noexcept : value(p.value), given(true) {}
    template <class Q>
        requires(!__is_same(Q, Point) && requires(const Q& q) { Point(q); } && !requires(double d) { d = Q{}; })
    constexpr optional_point(const Q& q) : value(Point(q).value), given(true) {}
};

// clang-format off
namespace scales {

// Gravity scales: what the number means depends on both temperatures and on air or vacuum.
struct gravity                  { static constexpr scale about{"SG",                    "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_20_20            { static constexpr scale about{"SG 20/20",              "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_20_20_true       { static constexpr scale about{"SG 20/20 true",         "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_20_4             { static constexpr scale about{"SG 20/4",               "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_17_5_17_5        { static constexpr scale about{"SG 17.5/17.5",          "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_15_15            { static constexpr scale about{"SG 15/15",              "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_15_4             { static constexpr scale about{"SG 15/4",               "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_60F_60F          { static constexpr scale about{"SG 60/60 degF",         "a specific gravity", 0.97, 1.40, likely::gravity}; };
struct gravity_60F_60F_apparent { static constexpr scale about{"SG 60/60 degF apparent","a specific gravity", 0.97, 1.40, likely::gravity}; };
struct converted_gravity        { static constexpr scale about{"SG",                    "a specific gravity", 0.97, 1.40, likely::gravity}; };  // on the scale that a conversion was asked for: to be named by its reader

// Extract and the readings that are often mistaken for it.
struct plato             { static constexpr scale about{"degP",  "an extract in degrees Plato", -8, 80, likely::extract}; };
struct original_extract  { using wider = plato; static constexpr scale about{"degP", "an original extract in degrees Plato", -8, 80, likely::extract}; };
struct apparent_extract  { using wider = plato; static constexpr scale about{"degP", "an apparent extract in degrees Plato", -8, 80, likely::extract}; };
struct real_extract      { using wider = plato; static constexpr scale about{"degP", "a real extract in degrees Plato", -8, 80, likely::extract}; };
struct extract_drop      { static constexpr scale about{"degP",  "a drop of extract in degrees Plato", 0, 80}; };
struct brix              { static constexpr scale about{"degBx", "a sugar content in degrees Brix", -8, 95, likely::extract}; };
struct raw_brix          { static constexpr scale about{"degBx", "a refractometer reading in degrees Brix", -8, 95, likely::extract}; };
struct brix_correction   { static constexpr scale about{"degBx", "a correction in degrees Brix"}; };
struct points            { static constexpr scale about{"points", "a number of gravity points", -30, 400}; };
struct baume             { static constexpr scale about{"degBe", "degrees Baume", -5, 45}; };
struct oechsle           { static constexpr scale about{"degOe", "degrees Oechsle", -30, 400}; };
struct kmw               { static constexpr scale about{"degKMW", "degrees of the Klosterneuburg must scale", -10, 100}; };
struct twaddell          { static constexpr scale about{"degTw", "degrees Twaddell", -6, 80}; };
struct belgian           { static constexpr scale about{"belgian degrees", "Belgian degrees", -3, 40}; };
struct brewers_pounds    { static constexpr scale about{"lb/bbl", "brewers' pounds per barrel", -12, 144}; };
struct pounds_per_gallon { static constexpr scale about{"lb/US gal", "pounds per US gallon", 0, 20}; };
struct scale_divisions   { static constexpr scale about{"scale divisions", "a scale reading", 0, 200}; };

// Shares and plain numbers.
struct ratio               { static constexpr scale about{"ratio", "a ratio"}; };
struct fraction            { static constexpr scale about{"fraction", "a share from 0 to 1", 0, 1, likely::share}; };
struct attenuation         { static constexpr scale about{"fraction", "an attenuation from 0 to 1", -0.2, 1.10, likely::share}; };
struct apparent_attenuation { using wider = attenuation; static constexpr scale about{"fraction", "an apparent attenuation from 0 to 1", -0.2, 1.10, likely::share}; };
struct real_attenuation    { using wider = attenuation; static constexpr scale about{"fraction", "a real attenuation from 0 to 1", -0.2, 1.10, likely::share}; };
struct alpha_acids         { static constexpr scale about{"fraction", "a share of alpha acids from 0 to 1", 0, 1, likely::share}; };
struct fraction_per_decade { static constexpr scale about{"fraction per decade", "a share per decade", 0, no_limit}; };
struct gas_volume_share    { static constexpr scale about{"L/L", "litres of headspace per litre of beer", 0, no_limit}; };
struct mass_share          { static constexpr scale about{"g/g", "grams per gram", 0, no_limit}; };
struct any                 { static constexpr scale about{"any", "a number"}; };
struct degrees             { static constexpr scale about{"degrees", "degrees"}; };

// Quantities with a dimension.
struct grams           { static constexpr scale about{"g", "a mass in grams", 0, no_limit, likely::nothing, dimension::mass, 1e-3}; };
struct litres          { static constexpr scale about{"L", "a volume in litres", 0, no_limit, likely::nothing, dimension::volume, 1e-3}; };
struct cubic_metres    { static constexpr scale about{"m3", "a volume in cubic metres", 0, no_limit, likely::nothing, dimension::volume, 1.0}; };
struct minutes         { static constexpr scale about{"min", "a time in minutes", 0, no_limit, likely::nothing, dimension::time, 60.0}; };
struct hours           { static constexpr scale about{"h", "a time in hours", 0, no_limit, likely::nothing, dimension::time, 3600.0}; };
struct days            { static constexpr scale about{"d", "a time in days", 0, no_limit, likely::nothing, dimension::time, 86400.0}; };
struct celsius         { static constexpr scale about{"degC", "a temperature of a liquid in degrees Celsius", -5, 130, likely::temperature, dimension::temperature, 1.0}; };
struct kelvins         { static constexpr scale about{"K", "a temperature difference in kelvins"}; };
struct density         { static constexpr scale about{"kg/m3", "a density in kg/m3", 0, no_limit, likely::nothing, dimension::density, 1.0}; };
struct density_change  { static constexpr scale about{"kg/m3", "a change of density in kg/m3", -no_limit, no_limit, likely::nothing, dimension::density, 1.0}; };
struct pressure        { static constexpr scale about{"bar", "an absolute pressure in bar", 5e-324, no_limit, likely::pressure, dimension::absolute_pressure, 1e5}; };
struct gauge_pressure  { static constexpr scale about{"bar", "a gauge pressure in bar", -1.1, no_limit, likely::pressure, dimension::gauge_pressure, 1e5}; };
struct pressure_step   { static constexpr scale about{"bar", "a pressure difference in bar", -no_limit, no_limit, likely::nothing, dimension::gauge_pressure, 1e5}; };
struct pressure_per_metre { static constexpr scale about{"bar/m", "a pressure drop in bar per metre", 0, no_limit}; };
struct metres          { static constexpr scale about{"m", "a length in metres", -no_limit, no_limit, likely::nothing, dimension::length, 1.0}; };
struct centimetres     { static constexpr scale about{"cm", "a length in centimetres", 0, no_limit, likely::nothing, dimension::length, 1e-2}; };
struct millimetres     { static constexpr scale about{"mm", "a length in millimetres", 0, no_limit, likely::nothing, dimension::length, 1e-3}; };
struct nanometres      { static constexpr scale about{"nm", "a wavelength in nanometres", 0, no_limit, likely::nothing, dimension::length, 1e-9}; };
struct square_centimetres { static constexpr scale about{"cm2", "an area in square centimetres", 0, no_limit, likely::nothing, dimension::area, 1e-4}; };
struct kilojoules      { static constexpr scale about{"kJ", "an energy in kJ", -no_limit, no_limit, likely::nothing, dimension::energy, 1e3}; };
struct kilowatts       { static constexpr scale about{"kW", "a power in kW", 0, no_limit, likely::nothing, dimension::power, 1e3}; };
struct grams_per_hour  { static constexpr scale about{"g/h", "a mass rate in grams per hour", 0, no_limit, likely::nothing, dimension::mass_rate, 1e-3 / 3600.0}; };
struct cubic_metres_per_hour { static constexpr scale about{"m3/h", "an air flow in cubic metres per hour", 0, no_limit, likely::nothing, dimension::volume_rate, 1.0 / 3600.0}; };

// Heat.
struct kilojoules_per_kelvin          { static constexpr scale about{"kJ/K", "a heat capacity in kJ/K", 0, no_limit}; };
struct kilowatts_per_kelvin           { static constexpr scale about{"kW/K", "a heat conductance in kW/K", 0, no_limit}; };
struct kilojoules_per_kilogram        { static constexpr scale about{"kJ/kg", "a heat in kJ/kg"}; };
struct kilojoules_per_litre           { static constexpr scale about{"kJ/L", "an energy in kJ/L"}; };
struct kilocalories_per_litre         { static constexpr scale about{"kcal/L", "an energy in kcal/L"}; };
struct kilojoules_per_kilogram_kelvin { static constexpr scale about{"kJ/(kg K)", "a specific heat in kJ/(kg K)", 0, no_limit}; };
struct per_kelvin                     { static constexpr scale about{"1/K", "an expansion per kelvin"}; };

// Rates and molar quantities.
struct per_minute        { static constexpr scale about{"1/min", "a rate per minute", 0, no_limit}; };
struct per_hour          { static constexpr scale about{"1/h", "a rate per hour", 0, no_limit}; };
struct per_day           { static constexpr scale about{"1/d", "a rate per day", 0, no_limit}; };
struct per_centimetre    { static constexpr scale about{"1/cm", "an absorbance per cm", 0, no_limit}; };
struct grams_per_mole    { static constexpr scale about{"g/mol", "a molar mass in g/mol", 0, no_limit}; };
struct litres_per_mole   { static constexpr scale about{"L/mol", "a molar volume in L/mol", 0, no_limit}; };
struct cubic_centimetres_per_mole { static constexpr scale about{"cm3/mol", "a volume in cm3/mol"}; };
struct cubic_centimetres_per_gram { static constexpr scale about{"cm3/g", "a specific refraction in cm3/g", 0, no_limit}; };
struct newtons_per_kilometre { static constexpr scale about{"mN/m", "a surface tension in mN/m"}; };

// Alcohol.
struct alcohol_by_mass   { static constexpr scale about{"% mass", "an alcohol content in % mass", 0, 100, likely::percent}; };
struct alcohol_by_volume { static constexpr scale about{"% vol", "an alcohol content in % vol", 0, 100, likely::percent}; };

// Concentrations. One type for each substance that is easily taken for another.
struct grams_per_litre      { static constexpr scale about{"g/L", "a concentration in g/L", 0, no_limit}; };
struct kilograms_per_litre  { static constexpr scale about{"kg/L", "a concentration in kg/L", 0, no_limit}; };
struct milligrams_per_litre { static constexpr scale about{"mg/L", "a concentration in mg/L", 0, no_limit}; };
struct alpha_dosed          { using wider = milligrams_per_litre; static constexpr scale about{"mg/L", "dosed alpha acids in mg/L", 0, no_limit}; };
struct alpha_in_beer        { using wider = milligrams_per_litre; static constexpr scale about{"mg/L", "alpha acids in mg/L", 0, no_limit}; };
struct iso_alpha            { using wider = milligrams_per_litre; static constexpr scale about{"mg/L", "iso-alpha acids in mg/L", 0, no_limit}; };
struct humulinones          { using wider = milligrams_per_litre; static constexpr scale about{"mg/L", "humulinones in mg/L", 0, no_limit}; };
struct hulupones            { using wider = milligrams_per_litre; static constexpr scale about{"mg/L", "hulupones in mg/L", 0, no_limit}; };
struct other_resin          { using wider = milligrams_per_litre; static constexpr scale about{"mg/L", "other resins in mg/L", 0, no_limit}; };
struct sensory_equivalent   { static constexpr scale about{"mg/L", "a bitterness as tasted, in mg/L of iso-alpha acids", 0, no_limit}; };
struct volumes_co2          { static constexpr scale about{"volumes", "a carbonation in volumes of CO2", 0, no_limit}; };
struct co2_concentration    { static constexpr scale about{"g/L", "a CO2 content in g/L", 0, no_limit}; };
struct henry_constant       { static constexpr scale about{"g/(L bar)", "a solubility in g/(L bar)", 0, no_limit}; };
struct parts_per_million    { static constexpr scale about{"ppm", "a concentration in ppm by volume", 0, no_limit}; };

// Water treatment.
struct milliequivalents_per_litre { static constexpr scale about{"mEq/L", "a concentration in mEq/L"}; };
struct milliequivalents           { static constexpr scale about{"mEq", "an amount in mEq"}; };
struct millimoles_per_litre       { static constexpr scale about{"mmol/L", "a concentration in mmol/L", 0, no_limit}; };
struct equivalents_per_mole       { static constexpr scale about{"eq/mol", "equivalents per mole"}; };
struct ph                         { static constexpr scale about{"pH", "a pH", 0, 14}; };
struct clark_degrees              { static constexpr scale about{"Clark degrees", "Clark degrees"}; };
struct french_degrees             { static constexpr scale about{"French degrees", "French degrees"}; };
struct german_degrees             { static constexpr scale about{"German degrees", "German degrees"}; };
struct grains_per_gallon          { static constexpr scale about{"grains/US gal", "grains per US gallon"}; };
struct ppm_caco3                  { static constexpr scale about{"ppm as CaCO3", "ppm as CaCO3"}; };
struct buffer_1                   { static constexpr scale about{"mEq/(kg pH)", "a buffer capacity in mEq/(kg pH)"}; };
struct buffer_2                   { static constexpr scale about{"mEq/(kg pH2)", "a buffer coefficient in mEq/(kg pH2)"}; };
struct buffer_3                   { static constexpr scale about{"mEq/(kg pH3)", "a buffer coefficient in mEq/(kg pH3)"}; };

// Bitterness.
struct bitterness_units  { static constexpr scale about{"BU", "bitterness units", 0, no_limit}; };
struct bitterness_yield  { using wider = fraction; static constexpr scale about{"fraction", "a utilisation from 0 to 1", 0, 1, likely::share}; };
struct isomerisation_yield { using wider = fraction; static constexpr scale about{"fraction", "a yield of iso-alpha acids from 0 to 1", 0, 1, likely::share}; };
struct bitterness_label  { static constexpr scale about{"BU L/kg", "a labelled bitterness in BU L/kg", 0, no_limit}; };
struct bu_per_point      { static constexpr scale about{"BU per gravity point", "bitterness units per gravity point", 0, no_limit}; };
struct bu_per_plato      { static constexpr scale about{"BU per degP", "bitterness units per degree Plato", 0, no_limit}; };
struct alpha_units       { static constexpr scale about{"AAU", "alpha acid units", 0, no_limit}; };

// Colour.
struct srm        { static constexpr scale about{"SRM", "a beer colour in SRM", 0, no_limit}; };
struct ebc        { static constexpr scale about{"EBC", "a colour in EBC", 0, no_limit}; };
struct visual_ebc { static constexpr scale about{"visual EBC", "a colour in visual EBC units", 0, no_limit}; };
struct iob_colour { static constexpr scale about{"EBC (IoB mash)", "a colour in EBC by the IoB mash", 0, no_limit}; };
struct lovibond   { static constexpr scale about{"degL", "a colour in degrees Lovibond", 0, no_limit}; };
struct mcu        { static constexpr scale about{"MCU", "a colour load in malt colour units", 0, no_limit}; };
struct colour_load{ static constexpr scale about{"degL kg/L", "a colour load in degL kg/L", 0, no_limit}; };

// Malt.
struct litre_degrees_per_kilogram { static constexpr scale about{"L degrees/kg", "a potential in litre-degrees per kg", 0, no_limit}; };
struct ppg                        { static constexpr scale about{"ppg", "a potential in points per pound and US gallon", 0, no_limit}; };
struct imperial_ppg               { static constexpr scale about{"pt imp gal/lb", "a potential in points per pound and imperial gallon", 0, no_limit}; };
struct pounds_per_quarter         { static constexpr scale about{"lb/qr", "a yield in brewers' pounds per quarter", 0, no_limit}; };
struct litres_per_kilogram        { static constexpr scale about{"L/kg", "litres per kg", 0, no_limit}; };

// Yeast.
struct cells                { static constexpr scale about{"cells", "a count of cells", 0, no_limit}; };
struct cells_per_gram       { static constexpr scale about{"cells/g", "cells per gram", 0, no_limit}; };
struct cells_per_millilitre { static constexpr scale about{"cells/mL", "cells per mL", 0, no_limit}; };
struct pitch_rate           { static constexpr scale about{"million cells/(mL degP)", "a pitch rate in million cells per mL and degP", 0, no_limit}; };

// Results that are whole numbers.
struct bottles    { static constexpr scale about{"bottles", "a number of bottles", 0, no_limit}; static constexpr bool whole = true; };
struct level      { static constexpr scale about{"level", "a level of caution", 0, 2}; static constexpr bool whole = true; };
struct byte_level { static constexpr scale about{"0..255", "a colour channel", 0, 255}; static constexpr bool whole = true; };
}  // namespace scales

// The types of a signature. They have a namespace of their own since families and models carry the same words.
namespace unit {
#define WORTMATH_UNIT(name) using name = point<scales::name>;
WORTMATH_UNIT(gravity) WORTMATH_UNIT(gravity_20_20) WORTMATH_UNIT(gravity_20_20_true) WORTMATH_UNIT(gravity_20_4) WORTMATH_UNIT(gravity_17_5_17_5)
WORTMATH_UNIT(gravity_15_15) WORTMATH_UNIT(gravity_15_4) WORTMATH_UNIT(gravity_60F_60F) WORTMATH_UNIT(gravity_60F_60F_apparent) WORTMATH_UNIT(converted_gravity)
WORTMATH_UNIT(plato) WORTMATH_UNIT(original_extract) WORTMATH_UNIT(apparent_extract) WORTMATH_UNIT(real_extract) WORTMATH_UNIT(extract_drop)
WORTMATH_UNIT(brix) WORTMATH_UNIT(raw_brix) WORTMATH_UNIT(brix_correction) WORTMATH_UNIT(points) WORTMATH_UNIT(baume) WORTMATH_UNIT(oechsle)
WORTMATH_UNIT(kmw) WORTMATH_UNIT(twaddell) WORTMATH_UNIT(belgian) WORTMATH_UNIT(brewers_pounds) WORTMATH_UNIT(pounds_per_gallon) WORTMATH_UNIT(scale_divisions)
WORTMATH_UNIT(ratio) WORTMATH_UNIT(fraction) WORTMATH_UNIT(attenuation) WORTMATH_UNIT(apparent_attenuation) WORTMATH_UNIT(real_attenuation) WORTMATH_UNIT(alpha_acids) WORTMATH_UNIT(fraction_per_decade)
WORTMATH_UNIT(gas_volume_share) WORTMATH_UNIT(mass_share) WORTMATH_UNIT(any) WORTMATH_UNIT(degrees)
WORTMATH_UNIT(grams) WORTMATH_UNIT(litres) WORTMATH_UNIT(cubic_metres) WORTMATH_UNIT(minutes) WORTMATH_UNIT(hours) WORTMATH_UNIT(days)
WORTMATH_UNIT(celsius) WORTMATH_UNIT(kelvins) WORTMATH_UNIT(density) WORTMATH_UNIT(density_change) WORTMATH_UNIT(pressure) WORTMATH_UNIT(gauge_pressure) WORTMATH_UNIT(pressure_step)
WORTMATH_UNIT(pressure_per_metre) WORTMATH_UNIT(metres) WORTMATH_UNIT(centimetres) WORTMATH_UNIT(millimetres) WORTMATH_UNIT(nanometres)
WORTMATH_UNIT(square_centimetres) WORTMATH_UNIT(kilojoules) WORTMATH_UNIT(kilowatts) WORTMATH_UNIT(grams_per_hour) WORTMATH_UNIT(cubic_metres_per_hour)
WORTMATH_UNIT(kilojoules_per_kelvin) WORTMATH_UNIT(kilowatts_per_kelvin) WORTMATH_UNIT(kilojoules_per_kilogram) WORTMATH_UNIT(kilojoules_per_litre)
WORTMATH_UNIT(kilocalories_per_litre) WORTMATH_UNIT(kilojoules_per_kilogram_kelvin) WORTMATH_UNIT(per_kelvin) WORTMATH_UNIT(per_minute)
WORTMATH_UNIT(per_hour) WORTMATH_UNIT(per_day) WORTMATH_UNIT(per_centimetre) WORTMATH_UNIT(grams_per_mole) WORTMATH_UNIT(litres_per_mole)
WORTMATH_UNIT(cubic_centimetres_per_mole) WORTMATH_UNIT(cubic_centimetres_per_gram) WORTMATH_UNIT(newtons_per_kilometre)
WORTMATH_UNIT(alcohol_by_mass) WORTMATH_UNIT(alcohol_by_volume) WORTMATH_UNIT(grams_per_litre) WORTMATH_UNIT(kilograms_per_litre)
WORTMATH_UNIT(milligrams_per_litre) WORTMATH_UNIT(alpha_dosed) WORTMATH_UNIT(alpha_in_beer) WORTMATH_UNIT(iso_alpha) WORTMATH_UNIT(humulinones)
WORTMATH_UNIT(hulupones) WORTMATH_UNIT(other_resin) WORTMATH_UNIT(sensory_equivalent) WORTMATH_UNIT(volumes_co2) WORTMATH_UNIT(co2_concentration)
WORTMATH_UNIT(henry_constant) WORTMATH_UNIT(parts_per_million) WORTMATH_UNIT(milliequivalents_per_litre) WORTMATH_UNIT(milliequivalents)
WORTMATH_UNIT(millimoles_per_litre) WORTMATH_UNIT(equivalents_per_mole) WORTMATH_UNIT(ph) WORTMATH_UNIT(clark_degrees) WORTMATH_UNIT(french_degrees)
WORTMATH_UNIT(german_degrees) WORTMATH_UNIT(grains_per_gallon) WORTMATH_UNIT(ppm_caco3) WORTMATH_UNIT(buffer_1) WORTMATH_UNIT(buffer_2)
WORTMATH_UNIT(buffer_3) WORTMATH_UNIT(bitterness_units) WORTMATH_UNIT(bitterness_yield) WORTMATH_UNIT(isomerisation_yield) WORTMATH_UNIT(bitterness_label) WORTMATH_UNIT(bu_per_point) WORTMATH_UNIT(bu_per_plato)
WORTMATH_UNIT(alpha_units) WORTMATH_UNIT(srm) WORTMATH_UNIT(ebc) WORTMATH_UNIT(visual_ebc) WORTMATH_UNIT(iob_colour) WORTMATH_UNIT(lovibond)
WORTMATH_UNIT(mcu) WORTMATH_UNIT(colour_load) WORTMATH_UNIT(litre_degrees_per_kilogram) WORTMATH_UNIT(ppg) WORTMATH_UNIT(imperial_ppg)
WORTMATH_UNIT(pounds_per_quarter) WORTMATH_UNIT(litres_per_kilogram) WORTMATH_UNIT(cells) WORTMATH_UNIT(cells_per_gram)
WORTMATH_UNIT(cells_per_millilitre) WORTMATH_UNIT(pitch_rate) WORTMATH_UNIT(bottles) WORTMATH_UNIT(level) WORTMATH_UNIT(byte_level)
#undef WORTMATH_UNIT
}  // namespace unit

// 1.048_sg, 12_degP, 60_min: for code that would otherwise be full of brackets.
namespace literals {
#define WORTMATH_LITERAL(suffix, type, factor)                                                                                    \
    constexpr unit::type operator""_##suffix(long double v) noexcept { return unit::type(static_cast<double>(v) * (factor)); }     \
    constexpr unit::type operator""_##suffix(unsigned long long v) noexcept { return unit::type(static_cast<double>(v) * (factor)); }
WORTMATH_LITERAL(sg, gravity_20_20, 1.0)
WORTMATH_LITERAL(degP, plato, 1.0)
WORTMATH_LITERAL(degBx, raw_brix, 1.0)
WORTMATH_LITERAL(g, grams, 1.0)
WORTMATH_LITERAL(kg, grams, 1000.0)
WORTMATH_LITERAL(oz, grams, 28.349523125)
WORTMATH_LITERAL(lb, grams, 453.59237)
WORTMATH_LITERAL(L, litres, 1.0)
WORTMATH_LITERAL(gal, litres, 3.785411784)
WORTMATH_LITERAL(impgal, litres, 4.54609)
WORTMATH_LITERAL(min, minutes, 1.0)
WORTMATH_LITERAL(h, hours, 1.0)
WORTMATH_LITERAL(d, days, 1.0)
WORTMATH_LITERAL(degC, celsius, 1.0)
WORTMATH_LITERAL(bar, pressure, 1.0)
WORTMATH_LITERAL(bar_gauge, gauge_pressure, 1.0)
WORTMATH_LITERAL(vol, volumes_co2, 1.0)
WORTMATH_LITERAL(BU, bitterness_units, 1.0)
WORTMATH_LITERAL(SRM, srm, 1.0)
WORTMATH_LITERAL(EBC, ebc, 1.0)
WORTMATH_LITERAL(percent, fraction, 0.01)
#undef WORTMATH_LITERAL
}  // namespace literals
// clang-format on

}  // namespace wortmath
