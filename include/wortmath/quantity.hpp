// Boost.Units quantities where a model asks for a mass, a volume, a time, a pressure, a density or a temperature, and
// the units of the trade. Opt-in: nothing else of the library includes it.
//
//     namespace wm = wortmath;
//     wm::extract::density(wm::unit::fraction(0.12), wm::quantity::degrees_celsius(20));
//     boost::units::quantity<boost::units::si::mass> m = wm::quantity::to_si(5_lb);
//
// A temperature is an absolute one only as `absolute`: 20 degC is a point, 20 K a difference, and they are not the same
// number of anything. Trade scales (SG, degP, SRM) stay strong types of this library: to Boost.Units they would all be
// the same dimensionless number.
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>
#include <boost/units/systems/temperature/celsius.hpp>
#include <boost/units/systems/temperature/fahrenheit.hpp>

#include "wortmath/scale.hpp"

namespace wortmath {
namespace quantity {

namespace bu = boost::units;
namespace si = boost::units::si;

using mass = bu::quantity<si::mass>;
using volume = bu::quantity<si::volume>;
using time = bu::quantity<si::time>;
using pressure = bu::quantity<si::pressure>;
using density = bu::quantity<si::mass_density>;
using length = bu::quantity<si::length>;
using area = bu::quantity<si::area>;
using energy = bu::quantity<si::energy>;
using power = bu::quantity<si::power>;
using kelvin = bu::quantity<bu::absolute<si::temperature>>;
using celsius = bu::quantity<bu::absolute<bu::celsius::temperature>>;
using fahrenheit = bu::quantity<bu::absolute<bu::fahrenheit::temperature>>;

inline celsius degrees_celsius(double t) { return t * bu::absolute<bu::celsius::temperature>(); }
inline fahrenheit degrees_fahrenheit(double t) { return t * bu::absolute<bu::fahrenheit::temperature>(); }

inline mass kilograms(double x) { return x * si::kilograms; }
inline mass grams(double x) { return x * 1e-3 * si::kilograms; }
inline mass pounds(double x) { return x * 0.45359237 * si::kilograms; }
inline mass ounces(double x) { return x * 0.028349523125 * si::kilograms; }
inline volume litres(double x) { return x * 1e-3 * si::cubic_meters; }
inline volume us_gallons(double x) { return x * 3.785411784e-3 * si::cubic_meters; }
inline volume imperial_gallons(double x) { return x * 4.54609e-3 * si::cubic_meters; }
inline volume us_barrels(double x) { return us_gallons(31.0 * x); }
inline time minutes(double x) { return x * 60.0 * si::seconds; }
inline time hours(double x) { return x * 3600.0 * si::seconds; }
inline time days(double x) { return x * 86400.0 * si::seconds; }
inline pressure bar(double x) { return x * 1e5 * si::pascals; }
inline pressure psi(double x) { return x * 6894.75729316836 * si::pascals; }
inline length feet(double x) { return x * 0.3048 * si::meters; }

template <dimension D>
struct si_of {
    static constexpr bool known = false;
};
#define WORTMATH_SI(name, si_unit)                \
    template <>                                   \
    struct si_of<dimension::name> {               \
        static constexpr bool known = true;       \
        using type = bu::quantity<si::si_unit>;   \
    };
WORTMATH_SI(mass, mass)
WORTMATH_SI(volume, volume)
WORTMATH_SI(time, time)
WORTMATH_SI(absolute_pressure, pressure)
WORTMATH_SI(gauge_pressure, pressure)
WORTMATH_SI(density, mass_density)
WORTMATH_SI(length, length)
WORTMATH_SI(area, area)
WORTMATH_SI(energy, energy)
WORTMATH_SI(power, power)
#undef WORTMATH_SI

template <class Scale>
using si_for = typename si_of<Scale::about.dim>::type;

// A point of this library as a quantity in SI units.
template <class Scale>
    requires(si_of<Scale::about.dim>::known)
si_for<Scale> to_si(point<Scale> p) {
    return si_for<Scale>::from_value(p.value * Scale::about.si);
}
inline kelvin to_si(unit::celsius p) { return kelvin(degrees_celsius(p.value)); }

}  // namespace quantity

// A quantity of the right dimension is read as a point; any unit that Boost.Units can convert to SI will do. Whether a
// pressure is gauge or absolute is not part of its dimension: that one has to be said, as in unit::gauge_pressure(q).
template <class Scale, class Unit>
    requires(quantity::si_of<Scale::about.dim>::known && requires(boost::units::quantity<Unit> q) { quantity::si_for<Scale>(q); })
struct bridge<Scale, boost::units::quantity<Unit>> {
    static constexpr bool open = true;
    static double value(const boost::units::quantity<Unit>& q) { return quantity::si_for<Scale>(q).value() / Scale::about.si; }
};

// Absolute temperatures only: a difference in kelvins is no point on a thermometer.
template <class Scale, class Unit>
    requires(Scale::about.dim == dimension::temperature && requires(boost::units::quantity<boost::units::absolute<Unit>> q) { quantity::kelvin(q); })
struct bridge<Scale, boost::units::quantity<boost::units::absolute<Unit>>> {
    static constexpr bool open = true;
    static double value(const boost::units::quantity<boost::units::absolute<Unit>>& q) { return quantity::kelvin(q).value() - 273.15; }
};

}  // namespace wortmath
