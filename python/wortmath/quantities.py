"""Models and pint: a Quantity goes in, converted or refused, and the answer comes back as a Quantity.

    >>> import pint, wortmath as wm                                             # doctest: +SKIP
    >>> units = pint.UnitRegistry()                                             # doctest: +SKIP
    >>> wm.water.density(units.Quantity(68, "degF")).to("pound / gallon")       # doctest: +SKIP

`define` gives a registry the names of the trade's scales (specific_gravity, degree_plato, srm, bitterness_unit,
co2_volume, ...). Calling a model with a Quantity does so by itself. A scale that has no dimension in physics has one of
its own here, so that degrees Plato do not pass for SRM; a number without a unit passes where a scale is expected.
Shares and per cents are pint's own: 5 percent and 0.05 are the same alcohol content.
pint is an optional dependency: pip install "wortmath[units]".
"""

from __future__ import annotations

from typing import Any

from . import _units

# How pint spells a unit of the library that it can convert.
_PHYSICAL = {
    "g": "gram", "L": "liter", "min": "minute", "h": "hour", "d": "day", "degC": "degree_Celsius", "K": "delta_degree_Celsius", "bar": "bar", "m": "meter", "cm": "centimeter",
    "mm": "millimeter", "nm": "nanometer", "cm2": "centimeter ** 2", "m3": "meter ** 3", "kg/m3": "kilogram / meter ** 3", "g/L": "gram / liter", "kg/L": "kilogram / liter",
    "mg/L": "milligram / liter", "L/kg": "liter / kilogram", "cm3/g": "centimeter ** 3 / gram", "cm3/mol": "centimeter ** 3 / mole", "L/mol": "liter / mole", "g/mol": "gram / mole",
    "g/h": "gram / hour", "m3/h": "meter ** 3 / hour", "kW": "kilowatt", "kJ": "kilojoule", "kJ/K": "kilojoule / delta_degree_Celsius", "kJ/kg": "kilojoule / kilogram",
    "kJ/(kg K)": "kilojoule / kilogram / delta_degree_Celsius", "kW/K": "kilowatt / delta_degree_Celsius", "kJ/L": "kilojoule / liter", "kcal/L": "kilocalorie / liter",
    "1/K": "1 / delta_degree_Celsius", "1/min": "1 / minute", "1/h": "1 / hour", "1/d": "1 / day", "1/cm": "1 / centimeter", "mN/m": "millinewton / meter", "bar/m": "bar / meter",
    "g/(L bar)": "gram / liter / bar", "mmol/L": "millimole / liter", "mEq/L": "milliequivalent / liter", "mEq": "milliequivalent", "eq/mol": "equivalent / mole",
    "mEq/(kg pH)": "milliequivalent / kilogram", "mEq/(kg pH2)": "milliequivalent / kilogram", "mEq/(kg pH3)": "milliequivalent / kilogram", "lb/US gal": "pound / gallon",
    "cells": "cell", "cells/g": "cell / gram", "cells/mL": "cell / milliliter",
}

# Shares, for which pint has units of its own.
_SHARES = {"fraction": "", "ratio": "", "g/g": "", "L/L": "", "fraction per decade": "", "% mass": "percent", "% vol": "percent", "ppm": "ppm", "degrees": "degree"}

# The scales of the trade: the name in pint, and its short form.
_SCALES = {
    "degP": ("degree_plato", "degP"), "degBx": ("degree_brix", "degBx"), "degOe": ("degree_oechsle", "degOe"), "degKMW": ("degree_kmw", "degKMW"), "degTw": ("degree_twaddell", "degTw"),
    "degBe": ("degree_baume", "degBe"), "belgian degrees": ("degree_belgian", "degBelg"), "points": ("gravity_point", ""), "ppg": ("point_per_pound_us_gallon", "ppg"),
    "pt imp gal/lb": ("point_per_pound_imperial_gallon", ""), "lb/bbl": ("brewers_pound_per_barrel", ""), "lb/qr": ("brewers_pound_per_quarter", ""),
    "L degrees/kg": ("litre_degree_per_kilogram", ""), "SRM": ("standard_reference_colour", "SRM"), "EBC": ("ebc_colour", "EBC"), "EBC (IoB mash)": ("ebc_colour_iob_mash", ""),
    "visual EBC": ("visual_ebc_colour", ""), "degL": ("degree_lovibond", "degL"), "MCU": ("malt_colour_unit", "MCU"), "degL kg/L": ("degree_lovibond_kilogram_per_litre", ""),
    "BU": ("bitterness_unit", "BU"), "BU L/kg": ("bitterness_unit_litre_per_kilogram", ""), "BU per gravity point": ("bitterness_unit_per_gravity_point", ""),
    "BU per degP": ("bitterness_unit_per_degree_plato", ""), "AAU": ("alpha_acid_unit", "AAU"), "volumes": ("co2_volume", ""), "pH": ("ph_reading", ""),
    "scale divisions": ("scale_division", ""), "million cells/(mL degP)": ("million_cells_per_millilitre_and_degree_plato", ""), "Clark degrees": ("clark_degree", ""),
    "French degrees": ("french_degree", ""), "German degrees": ("german_degree", ""), "grains/US gal": ("grain_per_us_gallon", ""), "ppm as CaCO3": ("ppm_as_calcium_carbonate", ""),
    "0..255": ("colour_channel", ""), "any": ("", ""), "bottles": ("bottle_count", ""),
}


def define(registry: Any) -> Any:
    """Give a pint registry the names of the trade's scales and of the units it lacks; returns the registry. Once is enough, twice does no harm."""
    if "degree_plato" in registry:
        return registry
    for name, text in (("percent", "percent = 0.01"), ("ppm", "ppm = 1e-6"), ("equivalent", "equivalent = [equivalents] = Eq"), ("cell", "cell = [cells]"),
                       ("specific_gravity", "specific_gravity = [] = SG")):
        if name not in registry:
            registry.define(text)
    for name, short in _SCALES.values():
        if name and name not in registry:
            registry.define(f"{name} = [{name}]" + (f" = {short}" if short and short not in registry else ""))
    metric = {"volume": "liter", "mass": "gram"}
    for dimension, base in metric.items():
        for unit in _units.TABLE[dimension].values():
            if unit.name.isalpha() and unit.name not in registry:
                registry.define(f"{unit.name} = {float(unit.factor)!r} * {base}")
    return registry


def _named(unit: str) -> str:
    """A unit of the library in the words of a message."""
    return f"{unit} (a specific gravity)" if unit.startswith("SG") else unit


def _refused(model: Any, given: Any, value: Any, reason: str) -> TypeError:
    return TypeError(f"{model.path}: {given.name} = {value} {reason}; {given.noun} is expected")


def magnitude_of(model: Any, given: Any, value: Any) -> Any:
    """The number (or array) that a Quantity is in the unit of the argument `given`; raises TypeError where it is something else."""
    registry = define(value._REGISTRY)
    unit = given.unit
    if given.kind in ("word", "truth"):
        raise TypeError(f"{model.path}: {given.name} = {value} is a quantity; {given.noun if given.kind == 'word' else 'True or False'} is expected")
    plain = value.units == registry.Unit("")
    if unit == "degC":
        # A difference has the dimension of a temperature; only its units tell it apart.
        if "delta_" in str(value.units):
            raise _refused(model, given, value, "is a difference of temperatures")
        if not value.check("[temperature]"):
            raise _refused(model, given, value, f"is in {_unit_name(value)}, which is no temperature")
        return value.to("degree_Celsius").magnitude
    if unit in _PHYSICAL:
        wanted = registry.Unit(_PHYSICAL[unit]) if unit != "K" else registry.Unit("delta_degree_Celsius")
        if value.dimensionality != wanted.dimensionality:
            raise _refused(model, given, value, f"has no unit and should be in {unit}" if plain else f"is in {_unit_name(value)}, which does not convert to {unit}")
        return value.to(wanted).magnitude
    if unit in _SHARES:
        # Here a number without a unit has its meaning in pint: 0.05 is 5 %.
        if value.dimensionality != registry.Unit("").dimensionality:
            raise _refused(model, given, value, f"is in {_unit_name(value)}, not a bare share")
        return value.to(_SHARES[unit]).magnitude
    if plain:
        return value.magnitude
    wanted_name = "specific_gravity" if unit.startswith("SG") else _SCALES.get(unit, ("", ""))[0]
    if wanted_name and value.units == registry.Unit(wanted_name):
        return value.magnitude
    hint = _units._SCALE_MODELS.get((_units.dimension_of(unit) or "", _library_unit(value)))
    raise _refused(model, given, value, f"is not on the scale {_named(unit)}" + (f" (the models of {hint} go from one to the other)" if hint else ""))


def _unit_name(value: Any) -> str:
    name = str(value.units)
    return "no unit" if name in ("", "dimensionless") else name


def _library_unit(value: Any) -> str:
    """The library's name of a scale that pint carries, for the hint to the model that converts it."""
    name = str(value.units)
    return "SG" if name == "specific_gravity" else next((unit for unit, (long, _) in _SCALES.items() if long == name), name)


def _one(registry: Any, output: Any, value: Any) -> Any:
    if output.kind in ("word", "words", "truth") or output.unit in ("level", "bool", "name", "list of names"):
        return value
    unit = output.unit
    if unit in _PHYSICAL:
        return registry.Quantity(value, _PHYSICAL[unit])
    if unit in _SHARES:
        return registry.Quantity(value, _SHARES[unit])
    name = "specific_gravity" if unit.startswith("SG") else _SCALES.get(unit, ("", ""))[0]
    return registry.Quantity(value, name)


def quantity_from(model: Any, answer: Any, registry: Any) -> Any:
    """The answer of a model as a Quantity, or as a named tuple of them; words, truth values and levels stay what they are."""
    define(registry)
    outputs = model.outputs
    if len(outputs) == 1 and outputs[0].name is None:
        return _one(registry, outputs[0], answer)
    return model.result_type(*(_one(registry, o, v) for o, v in zip(outputs, answer)))
