"""Quantities of pint in and out of models: converted, refused with a sentence, offsets and differences of temperature right."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest

import wortmath as wm
from wortmath import _core, _units, quantities

pint = pytest.importorskip("pint")


@pytest.fixture(scope="module")
def registry() -> Any:
    return quantities.define(pint.UnitRegistry())


@pytest.fixture(scope="module")
def q(registry: Any) -> Any:
    return registry.Quantity


# ------------------------------------------------------------------------------------------------ going in

def test_offset_temperatures(q: Any) -> None:
    for text in (q(68, "degF"), q(20, "degC"), q(293.15, "kelvin"), q(527.67, "degR")):
        assert wm.water.density(text).magnitude == pytest.approx(wm.water.density(20.0), rel=1e-12)
    # ITS-90 water at 20 degC: 998.2071 kg/m3 (CIPM, M. Tanaka et al. 2001, from memory)
    assert wm.water.density(q(68, "degF")).to("kg/m**3").magnitude == pytest.approx(998.2071, abs=0.002)


@pytest.mark.parametrize("unit", ["delta_degC", "delta_degF"])
def test_differences_are_no_temperatures(q: Any, unit: str) -> None:
    with pytest.raises(TypeError, match="difference of temperatures"):
        wm.water.density(q(20, unit))


def test_difference_of_temperature_comes_back_as_one(registry: Any, q: Any) -> None:
    """A result in K is a difference: 1 K of it is 1.8 degF of it, without the 32."""
    models = [m for m in _core._models.values() if any(o.unit == "K" for o in m.outputs)]
    assert models
    answer = quantities.quantity_from(models[0], 5.0, registry)
    assert answer.to("delta_degF").magnitude == pytest.approx(9.0)
    with pytest.raises(pint.OffsetUnitCalculusError):
        answer + q(1.0, "degC") + q(1.0, "degC")


@pytest.mark.parametrize(("value", "unit", "plain"), [(1, "hour", 60.0), (3600, "second", 60.0), (60, "minute", 60.0)])
def test_times(q: Any, value: float, unit: str, plain: float) -> None:
    answer = wm.bitterness.utilisation(q(1.05, ""), q(value, unit))
    assert answer.magnitude == pytest.approx(wm.bitterness.utilisation(1.05, plain), rel=1e-14) and answer.check("[]")


def test_pressure_volume_mass(q: Any) -> None:
    by_bar = wm.water.boiling_temperature(0.9)
    assert wm.water.boiling_temperature(q(0.9, "bar")).to("degC").magnitude == pytest.approx(by_bar, rel=1e-14)
    assert wm.water.boiling_temperature(q(0.9 / 0.0689475729316836, "psi")).to("degC").magnitude == pytest.approx(by_bar, rel=1e-9)
    beer = wm.priming.dose(q(2.4, "co2_volume"), 0.85, q(5, "gallon"), 0.5, 1.0)
    assert beer.to("gram").magnitude == pytest.approx(wm.priming.dose(2.4, 0.85, 5 * 3.785411784, 0.5, 1.0), rel=1e-12)


def test_some_arguments_plain(q: Any) -> None:
    assert wm.package.pressure(2.4, q(80.6, "degF")).to("bar").magnitude == pytest.approx(wm.package.pressure(2.4, 27.0), rel=1e-12)


@pytest.mark.parametrize("share", [(9, "percent"), (0.09, ""), (90, "gram/kilogram"), (0.09, "kilogram/kilogram")])
def test_shares(q: Any, share: tuple[float, str]) -> None:
    answer = wm.bitterness.alpha_dosed(q(28, "gram"), q(*share), q(20, "liter"))
    assert answer.to("mg/L").magnitude == pytest.approx(wm.bitterness.alpha_dosed(28.0, 0.09, 20.0), rel=1e-12)


def test_per_cents_of_alcohol(q: Any) -> None:
    by_mass = wm.ethanol.alcohol_by_mass_from_volume
    for value in (q(5, "percent"), q(0.05, ""), q(0.05, "liter/liter")):
        assert by_mass(value).to("percent").magnitude == pytest.approx(by_mass(5.0), rel=1e-12)
    with pytest.raises(wm.RangeError):   # 500 %, not 5
        by_mass(q(5, ""))


def test_arrays_and_whole_numbers(q: Any) -> None:
    minutes = np.array([15, 30, 60])
    answer = wm.bitterness.utilisation(q(1.05, ""), q(minutes, "minute"))
    assert answer.magnitude.tolist() == wm.bitterness.utilisation(1.05, minutes.astype(float)).tolist()
    lists = wm.bitterness.utilisation.tinseth_gravity_steps([1.04, 1.06], q([0.5, 0.25], "hour"))
    assert lists.magnitude == pytest.approx(wm.bitterness.utilisation.tinseth_gravity_steps([1.04, 1.06], [30.0, 15.0]), rel=1e-14)


def test_nan_passes(q: Any) -> None:
    assert math.isnan(wm.water.density(q(math.nan, "degF")).magnitude)


def test_ranges_and_policies_hold(q: Any) -> None:
    with pytest.raises(wm.RangeError, match="nbs"):
        wm.extract.from_gravity(q(1.11, "specific_gravity"))
    answer = wm.extract.from_gravity(q(1.11, "specific_gravity"), policy="extrapolate")
    assert answer.magnitude == wm.extract.from_gravity(1.11, policy="extrapolate")


# ------------------------------------------------------------------------------------------------ the trade's scales

def test_scales(q: Any) -> None:
    assert str(wm.extract.from_gravity(q(1.048, "specific_gravity")).units) == "degree_plato"
    assert wm.extract.from_gravity(q(1.048, "")).magnitude == wm.extract.from_gravity(1.048)
    gravity = wm.extract.to_gravity(q(12, "degP"))
    assert str(gravity.units) == "specific_gravity" and gravity.magnitude == wm.extract.to_gravity(12.0)
    assert wm.colour.ebc_from_srm(q(10, "SRM")).units == q(1, "ebc_colour").units
    # there and back through the answers themselves
    assert wm.extract.to_gravity(wm.extract.from_gravity(q(1.048, "SG"))).magnitude == pytest.approx(1.048, abs=2e-6)


@pytest.mark.parametrize(("call", "words"), [
    (lambda q: wm.extract.from_gravity(q(12, "degree_plato")), ["gravity", "degree_plato", "extract.to_gravity"]),
    (lambda q: wm.extract.to_gravity(q(1.05, "specific_gravity")), ["extract", "specific_gravity", "extract.from_gravity"]),
    (lambda q: wm.extract.to_gravity(q(10, "SRM")), ["extract", "degP"]),
    (lambda q: wm.extract.to_gravity(q(12, "percent")), ["extract", "percent", "degP"]),
    (lambda q: wm.colour.ebc_from_srm(q(10, "ebc_colour")), ["srm", "ebc_colour"]),
    (lambda q: wm.water.density(q(20, "liter")), ["temperature", "liter"]),
    (lambda q: wm.water.density(q(20, "")), ["temperature", "no temperature"]),
    (lambda q: wm.water.density(q(20, "degree_plato")), ["temperature", "degree_plato"]),
    (lambda q: wm.bitterness.utilisation(1.05, q(1, "kilogram")), ["boil_minutes", "kilogram", "min"]),
    (lambda q: wm.bitterness.utilisation(1.05, q(60, "")), ["boil_minutes", "no unit", "min"]),
    (lambda q: wm.bitterness.utilisation(q(1.05, "gram"), 60.0), ["boil_gravity", "gram"]),
    (lambda q: wm.bitterness.alpha_dosed(q(28, "gram"), q(9, "gram"), q(20, "liter")), ["alpha", "gram", "share"]),
    (lambda q: wm.package.caution(q(1, "gram"), 2.0, 2.0), ["package", "word"]),
    (lambda q: wm.package.caution("keg", 2.0, 2.0, None, q(1, "")), ["fermentation_confirmed", "True or False"]),
])
def test_refusals(q: Any, call: Any, words: list[str]) -> None:
    with pytest.raises(TypeError) as raised:
        call(q)
    for word in words:
        assert word in str(raised.value)


def test_every_unit_of_the_library_is_known_to_pint(registry: Any) -> None:
    """Every argument of every model takes a Quantity in its own unit unchanged, every result becomes one."""
    seen = set()
    for model in _core._models.values():
        for i in model.inputs:
            if i.kind in ("word", "truth") or i.unit in seen:
                continue
            seen.add(i.unit)
            expression = quantities._PHYSICAL.get(i.unit, quantities._SHARES.get(i.unit))
            if expression is None:
                expression = "specific_gravity" if i.unit.startswith("SG") else quantities._SCALES[i.unit][0]
            assert quantities.magnitude_of(model, i, registry.Quantity(1.25, expression)) == pytest.approx(1.25, rel=1e-14), i.unit
        for o in model.outputs:
            if o.kind == "number":
                assert quantities._one(registry, o, 1.25).magnitude == 1.25
    assert len(seen) > 60


def test_define_twice_and_elsewhere() -> None:
    one, other = pint.UnitRegistry(), pint.UnitRegistry()
    quantities.define(quantities.define(one))
    assert "degree_plato" in one and "degree_plato" not in other
    assert str(wm.extract.from_gravity(other.Quantity(1.05, "")).units) == "degree_plato"   # a call defines what it needs
    assert one.Quantity(1, "gal").to("liter").magnitude == pytest.approx(3.785411784, rel=1e-12)
    assert one.Quantity(1, "impgal").to("liter").magnitude == pytest.approx(4.54609, rel=1e-12)


def test_named_results_stay_named(q: Any) -> None:
    answer = wm.thermal.ice_result(q(20, "kilogram"), 4.0, q(30, "degC"), q(2, "kilogram"), q(0, "degC"))
    assert answer._fields == ("temperature", "remaining_ice_mass")
    assert answer.temperature.check("[temperature]") and answer.remaining_ice_mass.check("[mass]")


def test_words_and_levels_stay_plain(q: Any) -> None:
    assert wm.package.caution("keg", q(100, "psi"), q(3, "co2_volume")) == 2
    assert wm.colour.word(q(10, "SRM")) == wm.colour.word(10.0)


# ------------------------------------------------------------------------------------------------ the table against pint

_IN_PINT = {
    "g": "gram", "mg": "milligram", "kg": "kilogram", "oz": "ounce", "lb": "pound", "L": "liter", "mL": "milliliter", "hL": "hectoliter", "m3": "meter**3", "floz": "fluid_ounce", "pt": "pint",
    "qt": "quart", "gal": "gallon", "bbl": "beer_barrel", "ft3": "foot**3", "impfloz": "imperial_fluid_ounce", "imppt": "imperial_pint", "impqt": "imperial_quart", "impgal": "imperial_gallon",
    "s": "second", "min": "minute", "h": "hour", "d": "day", "degC": "degC", "degF": "degF", "K": "kelvin", "bar": "bar", "mbar": "millibar", "Pa": "pascal", "hPa": "hectopascal",
    "kPa": "kilopascal", "MPa": "megapascal", "mmHg": "millimeter_Hg", "atm": "atmosphere", "psi": "psi", "nm": "nanometer", "mm": "millimeter", "cm": "centimeter", "m": "meter", "km": "kilometer",
    "in": "inch", "ft": "foot", "cm2": "centimeter**2", "m2": "meter**2", "in2": "inch**2", "ft2": "foot**2", "g/L": "gram/liter", "kg/m3": "kilogram/meter**3", "lb/gal": "pound/gallon",
    "oz/gal": "ounce/gallon", "lb/impgal": "pound/imperial_gallon", "floz/oz": "fluid_ounce/ounce", "qt/lb": "quart/pound", "gal/lb": "gallon/pound", "impqt/lb": "imperial_quart/pound",
    "lb/h": "pound/hour", "oz/h": "ounce/hour", "ft3/min": "foot**3/minute", "L/s": "liter/second", "gal/h": "gallon/hour", "W": "watt", "BTU/h": "Btu_it/hour", "kcal": "kilocalorie_it",
    "BTU": "Btu_it", "kWh": "kilowatt_hour", "BTU/lb": "Btu_it/pound", "psi/ft": "psi/foot", "1/h": "1/hour", "1/d": "1/day",
}


def test_units_agree_with_pint(registry: Any) -> None:
    """pint's own definitions are an independent list of the same legal units."""
    compared = 0
    for dimension, units in _units.TABLE.items():
        known = [n for n in units if n in _IN_PINT]
        if dimension == "temperature difference" or len(known) < 2:
            continue
        base = next(iter(units))
        for name in known:
            try:
                theirs = registry.Quantity(7.3, _IN_PINT[name])
            except pint.UndefinedUnitError:   # older releases lack some of the international table's calories
                continue
            to = theirs.to(_IN_PINT[base]).magnitude if base in _IN_PINT else None
            if to is not None:
                assert _units.convert(7.3, name, base) == pytest.approx(to, rel=2e-6 if name in ("mmHg", "psi") else 1e-9), name
                compared += 1
    assert compared > 45
