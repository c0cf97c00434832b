"""The trade's units: one table, by dimension, with exact factors. The shell reads amounts with it, pint gets its names from it.

The argument's own unit decides what a value is: "64 degF" for an argument in degC, "12 psi" for one in bar (gauge stays
gauge, absolute stays absolute), "9 %" for a share. What the trade reads off a scale (specific gravity, degrees Plato,
SRM, bitterness units) takes no unit or its own name: going from one scale to another is a model of its own.
"""

from __future__ import annotations

import difflib
import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

_pound = Fraction(45359237, 100000)                     # g
_gallon = Fraction(3785411784, 10**9)                   # L, 231 cubic inches
_imperial = Fraction(454609, 10**5)                     # L
_foot = Fraction(3048, 10**4)                           # m
_psi = Fraction(44482216152605, 10**13) / Fraction(64516, 10**8) / 10**5   # bar, a pound-force on a square inch
_mmhg = Fraction(133322387415, 10**9) / 10**5           # bar
_btu = Fraction(105505585262, 10**11)                   # kJ, the international table's
_kcal = Fraction(41868, 10**4)                          # kJ, the international table's
_F = Fraction


@dataclass(frozen=True)
class Unit:
    """A unit of a dimension: so much of the dimension's first unit, and where its zero lies (temperatures)."""
    name: str
    dimension: str
    factor: Fraction
    zero: Fraction = Fraction(0)
    customary: bool = False    # US or imperial: the reader thinks in them, results are shown in them too


def _units() -> dict[str, dict[str, Unit]]:
    table: dict[str, dict[str, Unit]] = {}

    def add(dimension: str, metric: dict[str, Fraction | int], customary: dict[str, Fraction | int] | None = None) -> None:
        table[dimension] = {name: Unit(name, dimension, Fraction(factor)) for name, factor in metric.items()}
        for name, factor in (customary or {}).items():
            table[dimension][name] = Unit(name, dimension, Fraction(factor), customary=True)

    add("mass", {"g": 1, "mg": _F(1, 1000), "kg": 1000}, {"oz": _pound / 16, "lb": _pound})
    add("volume", {"L": 1, "mL": _F(1, 1000), "hL": 100, "m3": 1000},
        {"floz": _gallon / 128, "pt": _gallon / 8, "qt": _gallon / 4, "gal": _gallon, "bbl": _gallon * 31, "ft3": _foot**3 * 1000,
         "impfloz": _imperial / 160, "imppt": _imperial / 8, "impqt": _imperial / 4, "impgal": _imperial})
    add("time", {"min": 1, "s": _F(1, 60), "h": 60, "d": 1440})
    table["temperature"] = {n: Unit(n, "temperature", _F(f), _F(z), c) for n, f, z, c in
                            (("degC", 1, 0, False), ("°C", 1, 0, False), ("degF", _F(5, 9), 32, True), ("°F", _F(5, 9), 32, True), ("K", 1, _F(27315, 100), False))}
    add("temperature difference", {"K": 1}, {"degF": _F(5, 9)})
    add("pressure", {"bar": 1, "mbar": _F(1, 1000), "Pa": _F(1, 10**5), "hPa": _F(1, 1000), "kPa": _F(1, 100), "MPa": 10, "mmHg": _mmhg, "atm": _F(101325, 10**5)}, {"psi": _psi})
    add("length", {"m": 1, "nm": _F(1, 10**9), "mm": _F(1, 1000), "cm": _F(1, 100), "km": 1000}, {"in": _foot / 12, "ft": _foot})
    add("area", {"cm2": 1, "mm2": _F(1, 100), "m2": 10**4}, {"in2": (_foot / 12 * 100)**2, "ft2": (_foot * 100)**2})
    add("mass in a volume", {"g/L": 1, "mg/L": _F(1, 1000), "kg/L": 1000, "kg/m3": 1, "g/mL": 1000, "g/cm3": 1000},
        {"oz/gal": _pound / 16 / _gallon, "lb/gal": _pound / _gallon, "lb/impgal": _pound / _imperial})
    add("volume for a mass", {"L/kg": 1, "mL/g": 1}, {"floz/oz": _gallon / 128 / (_pound / 16) * 1000, "qt/lb": _gallon / 4 / _pound * 1000, "gal/lb": _gallon / _pound * 1000,
                                                      "impqt/lb": _imperial / 4 / _pound * 1000})
    add("mass rate", {"g/h": 1, "kg/h": 1000}, {"oz/h": _pound / 16, "lb/h": _pound})
    add("volume rate", {"m3/h": 1, "L/h": _F(1, 1000), "L/min": _F(60, 1000), "L/s": _F(3600, 1000)}, {"ft3/min": _foot**3 * 60, "gal/h": _gallon / 1000})
    add("power", {"kW": 1, "W": _F(1, 1000)}, {"BTU/h": _btu / 3600})
    add("energy", {"kJ": 1, "J": _F(1, 1000), "MJ": 1000, "kWh": 3600, "kcal": _kcal}, {"BTU": _btu})
    add("heat for a kelvin", {"kJ/K": 1, "J/K": _F(1, 1000)}, {"BTU/degF": _btu * _F(9, 5)})
    add("specific heat", {"kJ/(kg K)": 1, "J/(kg K)": _F(1, 1000), "J/(g K)": 1, "kcal/(kg K)": _kcal}, {"BTU/(lb degF)": _btu * _F(9, 5) / _pound * 1000})
    add("heat for a mass", {"kJ/kg": 1, "J/g": 1, "kcal/kg": _kcal}, {"BTU/lb": _btu / _pound * 1000})
    add("power for a kelvin", {"kW/K": 1, "W/K": _F(1, 1000)})
    add("rate in time", {"1/min": 1, "1/s": 60, "1/h": _F(1, 60), "1/d": _F(1, 1440)})
    add("expansion for a kelvin", {"1/K": 1, "1/degC": 1}, {"1/degF": _F(9, 5)})
    add("pressure drop in a length", {"bar/m": 1, "mbar/m": _F(1, 1000), "kPa/m": _F(1, 100)}, {"psi/ft": _psi / _foot})
    add("surface tension", {"mN/m": 1, "N/m": 1000})
    add("share", {"": 1, "%": _F(1, 100)})
    add("headspace", {"L/L": 1, "": 1, "mL/L": _F(1, 1000), "%": _F(1, 100)})
    add("mass for a mass", {"g/g": 1, "": 1, "kg/kg": 1, "g/kg": _F(1, 1000), "%": _F(1, 100)})
    add("parts in a million", {"ppm": 1, "%": 10**4})
    add("per cent by mass", {"% mass": 1, "%": 1})
    add("per cent by volume", {"% vol": 1, "%": 1})
    add("amount in a volume", {"mmol/L": 1, "umol/L": _F(1, 1000), "mol/L": 1000})
    add("equivalents in a volume", {"mEq/L": 1, "Eq/L": 1000})
    add("equivalents", {"mEq": 1, "Eq": 1000})
    add("number of cells", {"cells": 1, "million cells": 10**6, "billion cells": 10**9})
    add("carbonation", {"volumes": 1, "vol": 1})
    add("specific gravity", {"SG": 1})
    add("degrees Plato", {"degP": 1, "°P": 1})
    add("degrees Brix", {"degBx": 1, "°Bx": 1})
    add("beer colour", {"SRM": 1})
    add("colour in degrees Lovibond", {"degL": 1, "°L": 1})
    add("bitterness", {"BU": 1, "IBU": 1})
    add("angle", {"degrees": 1, "deg": 1})
    return table


TABLE = _units()

# The dimension of each unit of the library that is not a scale of its own; its factor comes from the table.
_DIMENSION = {unit.name: dimension for dimension, units in TABLE.items() for unit in units.values() if dimension not in ("temperature difference",)}
_DIMENSION.update({"fraction": "share", "ratio": "share", "fraction per decade": "share", "K": "temperature difference", "L/L": "headspace", "g/g": "mass for a mass",
                   "ppm": "parts in a million", "%": "share"})

# What a value on another scale needs first.
_SCALE_MODELS = {("specific gravity", "degP"): "extract.to_gravity", ("specific gravity", "°P"): "extract.to_gravity", ("specific gravity", "degBx"): "refractometer.wort_correction",
                 ("degrees Plato", "SG"): "extract.from_gravity", ("degrees Plato", "degBx"): "refractometer.wort_correction", ("beer colour", "EBC"): "colour.srm_from_ebc",
                 ("colour in degrees Lovibond", "EBC"): "colour.srm_from_ebc", ("carbonation", "g/L"): "carbonation.volumes", ("mass in a volume", "vol"): "carbonation.concentration",
                 ("mass in a volume", "volumes"): "carbonation.concentration", ("beer colour", "degL"): "colour.srm_from_lovibond",
                 ("colour in degrees Lovibond", "SRM"): "colour.lovibond_from_srm"}

# Spellings from everywhere, with the one that is meant here.
_MEANT = {"f": "degF", "c": "degC", "fahrenheit": "degF", "celsius": "degC", "deg f": "degF", "deg c": "degC", "° f": "degF", "° c": "degC", "l": "L", "litre": "L", "litres": "L",
          "liter": "L", "liters": "L", "ml": "mL", "hl": "hL", "gallon": "gal", "gallons": "gal", "us gal": "gal", "imp gal": "impgal", "fl oz": "floz", "imp pt": "imppt",
          "imp fl oz": "impfloz", "quart": "qt", "quarts": "qt", "pint": "pt", "pints": "pt", "barrel": "bbl", "barrels": "bbl", "lbs": "lb", "pound": "lb", "pounds": "lb",
          "ounce": "oz", "ounces": "oz", "gram": "g", "grams": "g", "gr": "g", "kilogram": "kg", "kilograms": "kg", "kilo": "kg", "kilos": "kg", "hour": "h", "hours": "h", "hr": "h",
          "hrs": "h", "minute": "min", "minutes": "min", "mins": "min", "m": "min", "day": "d", "days": "d", "second": "s", "seconds": "s", "sec": "s", "feet": "ft", "foot": "ft",
          "metre": "m", "metres": "m", "meter": "m", "meters": "m", "percent": "%", "per cent": "%", "plato": "degP", "brix": "degBx", "bx": "degBx", "p": "degP", "kw": "kW",
          "lovibond": "degL", "ibus": "IBU", "psig": "psi", "psia": "psi", "barg": "bar", "bara": "bar", "inch": "in", "inches": "in", "ppm": "mg/L", "vols": "vol"}

_NUMBER = re.compile(r"([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)", re.DOTALL)


def nearest(word: str, known: list[str]) -> str:
    """' (did you mean "x"?)' or nothing."""
    close = difflib.get_close_matches(word, known, 1, 0.5)
    return f' (did you mean "{close[0]}"?)' if close else ""


class UnitError(ValueError):
    """A value whose number or unit cannot be read; the message is a sentence."""


def dimension_of(unit: str) -> str | None:
    """The dimension of a unit of the library, or None where the unit is a scale that nothing else converts to."""
    return "specific gravity" if unit.startswith("SG") else _DIMENSION.get(unit)


def _known(unit: str) -> dict[str, Unit]:
    dimension = dimension_of(unit)
    return TABLE[dimension] if dimension else {unit: Unit(unit, unit, Fraction(1))}


def _factor(unit: str, known: dict[str, Unit]) -> Fraction:
    return known[unit].factor if unit in known else Fraction(1)


def _names(known: dict[str, Unit]) -> str:
    names = [n for n in known if n]
    return ", ".join(names) if names else "no unit"


def convert(value: float, given: str, unit: str) -> float:
    """A value in the unit `given` as a value in the library's `unit`."""
    known = _known(unit)
    here, there = known[given], _factor(unit, known)
    ratio = here.factor / there
    return (value - float(here.zero)) * ratio.numerator / ratio.denominator


def express(value: float, unit: str, wanted: str) -> float:
    """A value in the library's `unit` as a value in the unit `wanted`."""
    known = _known(unit)
    here, there = known[wanted], _factor(unit, known)
    ratio = there / here.factor
    return value * ratio.numerator / ratio.denominator + float(here.zero)


def split(text: str) -> tuple[str, str]:
    """Number and unit of a text; raises UnitError where it does not begin with a number."""
    stripped = text.strip()
    if re.match(r"[+-]?\d+,\d+(\D|$)", stripped):
        raise UnitError(f'"{text}" has a comma; write it with a decimal point: {stripped.replace(",", ".", 1)}')
    found = _NUMBER.match(stripped)
    if not found:
        raise UnitError(f'"{text}" does not begin with a number')
    return found[1], " ".join(found[2].split())


def check_unit(name: str, unit: str) -> str:
    """The unit `name` as one that an argument in `unit` takes; raises UnitError with the nearest known one."""
    known = _known(unit)
    if name in known or not name or name == unit:
        return name
    dimension = dimension_of(unit)
    model = _SCALE_MODELS.get((dimension or "", name))
    if model:
        raise UnitError(f'"{name}" is another scale than {unit}; the models of {model} go from one to the other')
    meant = _MEANT.get(name.lower())
    if meant not in known:
        close = difflib.get_close_matches(name, [n for n in known if n], 1, 0.5) or [n for n in known if n and n.lower() == name.lower()]
        meant = close[0] if close else None
    hint = f' (did you mean "{meant}"?)' if meant else ""
    if any(name in units for units in TABLE.values()) and not hint:
        raise UnitError(f'"{name}" does not fit here; expected is {_expected(unit, known)}')
    raise UnitError(f'"{name}" is not known here{hint}; expected is {_expected(unit, known)}')


def _expected(unit: str, known: dict[str, Unit]) -> str:
    dimension = dimension_of(unit)
    if dimension in ("share", "headspace", "mass for a mass"):
        return f"a number without a unit, or one of {_names(known)}"
    if dimension is None or len(known) == 1:
        return f"a number without a unit or with {_names(known)}"
    return f"a number, alone (in {unit}) or with one of {_names(known)}"


def parse(text: str, unit: str) -> float:
    """The value of "64 degF" as a number in the library's `unit`. A bare number is in that unit already."""
    number, name = split(text)
    value = float(number)
    if value in (float("inf"), float("-inf")):
        raise UnitError(f'"{text}" is too large a number')
    name = check_unit(name, unit)
    known = _known(unit)
    return convert(value, name, unit) if name in known and name != "" else value


def customary(name: str, unit: str) -> bool:
    """Whether the unit is a US or imperial one."""
    return name in _known(unit) and _known(unit)[name].customary


_SECOND = {"temperature": "degF", "temperature difference": "degF", "pressure": "psi", "volume": "gal", "mass": "oz", "length": "ft", "mass in a volume": "lb/gal",
           "volume for a mass": "qt/lb", "mass rate": "lb/h"}


def second_opinion(value: Any, unit: str) -> tuple[float, str] | None:
    """The same value in the customary unit that a US reader would take, where there is one."""
    dimension = dimension_of(unit)
    name = _SECOND.get(dimension or "")
    if name is None or isinstance(value, bool):
        return None
    if dimension == "mass" and abs(value) >= 453.59237:
        name = "lb"
    if dimension == "volume" and 0 < abs(value) < 1:
        name = "floz"
    return express(float(value), unit, name), name
