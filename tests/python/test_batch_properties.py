"""What must hold for any batch: the ledger closes, units do not matter, and danger is never reported lower."""

from __future__ import annotations

import math
import re
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

import wortmath as wm

from expression import REFERENCE

FILES = sorted((REFERENCE / "batch").glob("*.toml"))
SETTINGS = settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow], derandomize=True)

# unit -> (dimension, factor, offset): exact definitions (NIST SP 811; the values are recalled, not read)
UNITS = {
    "mg": ("mass", 1e-3, 0.0), "g": ("mass", 1.0, 0.0), "kg": ("mass", 1e3, 0.0), "oz": ("mass", 28.349523125, 0.0), "lb": ("mass", 453.59237, 0.0),
    "mL": ("volume", 1e-3, 0.0), "L": ("volume", 1.0, 0.0), "hL": ("volume", 100.0, 0.0),
    "floz": ("volume", 3.785411784 / 128, 0.0), "pt": ("volume", 3.785411784 / 8, 0.0), "qt": ("volume", 3.785411784 / 4, 0.0), "gal": ("volume", 3.785411784, 0.0),
    "impfloz": ("volume", 4.54609 / 160, 0.0), "imppt": ("volume", 4.54609 / 8, 0.0), "impqt": ("volume", 4.54609 / 4, 0.0), "impgal": ("volume", 4.54609, 0.0),
    "bbl": ("volume", 31 * 3.785411784, 0.0),
    "s": ("time", 1.0, 0.0), "min": ("time", 60.0, 0.0), "h": ("time", 3600.0, 0.0), "d": ("time", 86400.0, 0.0),
    "degC": ("temperature", 1.0, 0.0), "°C": ("temperature", 1.0, 0.0), "degF": ("temperature", 1 / 1.8, -32 / 1.8), "°F": ("temperature", 1 / 1.8, -32 / 1.8), "K": ("temperature", 1.0, -273.15),
    "bar": ("pressure", 1.0, 0.0), "mbar": ("pressure", 1e-3, 0.0), "kPa": ("pressure", 1e-2, 0.0), "hPa": ("pressure", 1e-3, 0.0),
    "psi": ("pressure", 0.0689475729316836, 0.0), "mmHg": ("pressure", 1.33322387415e-3, 0.0), "atm": ("pressure", 1.01325, 0.0),
    "m": ("length", 1.0, 0.0), "km": ("length", 1e3, 0.0), "ft": ("length", 0.3048, 0.0),
    "kg/h": ("mass rate", 1.0, 0.0), "lb/h": ("mass rate", 0.45359237, 0.0),
    "L/h": ("volume rate", 1.0, 0.0), "gal/h": ("volume rate", 3.785411784, 0.0), "impgal/h": ("volume rate", 4.54609, 0.0),
    "W": ("power", 1e-3, 0.0), "kW": ("power", 1.0, 0.0),
    "L/kg": ("absorption", 1.0, 0.0), "floz/oz": ("absorption", 3.785411784 / 128 / 0.028349523125, 0.0),
    "degL": ("colour", 1.0, 0.0), "SRM": ("colour", 1.0, 0.0),
}
US = {"floz", "pt", "qt", "gal", "bbl", "gal/h", "floz/oz"}
IMPERIAL = {"impfloz", "imppt", "impqt", "impgal", "impgal/h"}
AMOUNT = re.compile(r'"(-?[0-9.]+(?:e[0-9+-]+)?) ?([^"0-9%][^"]*)"')


def rewritten(text: str, choose: Any, family: set[str]) -> str:
    """Every amount of the file in another unit of its dimension; measures of one country only."""
    def other(match: re.Match[str]) -> str:
        number, unit = float(match[1]), match[2]
        if unit not in UNITS:
            return match[0]
        dimension, factor, offset = UNITS[unit]
        base = number * factor + offset
        units = [u for u, (d, _, _) in UNITS.items() if d == dimension and u not in (US | IMPERIAL) - family]
        chosen = choose(units)
        return f'"{(base - UNITS[chosen][2]) / UNITS[chosen][1]!r} {chosen}"'

    def share(match: re.Match[str]) -> str:
        return repr(float(match[1]) / 100.0)

    lines = []
    for line in text.splitlines():
        if not re.match(r"\s*(#|name\s*=|notes\s*=|text\s*=)", line):
            line = AMOUNT.sub(other, line)
            line = re.sub(r'"([0-9.]+) ?%"', share, line)
        lines.append(line)
    return "\n".join(lines) + "\n"


def numbers(value: Any, at: str = "") -> dict[str, float]:
    if isinstance(value, dict):
        return {k: v for key, inner in value.items() for k, v in numbers(inner, f"{at}.{key}").items()}
    if isinstance(value, list):
        return {k: v for i, inner in enumerate(value) for k, v in numbers(inner, f"{at}[{i}]").items()}
    return {at: float(value)} if isinstance(value, (int, float)) and not isinstance(value, bool) else {}


@pytest.mark.parametrize("path", FILES, ids=lambda p: p.stem)
@SETTINGS
@given(data=st.data())
def test_units_do_not_matter(path: Path, data: st.DataObject) -> None:
    text = path.read_text(encoding="utf-8")
    family = data.draw(st.sampled_from([US, IMPERIAL, set()]))
    again = rewritten(text, lambda units: data.draw(st.sampled_from(units)), family)
    assert again != text
    before, after = (numbers(wm.batch.read_text(t).forecast().to_dict()) for t in (text, again))
    assert before.keys() == after.keys()
    for key, x in before.items():
        if key != ".ledger.imbalance_g":
            # converting to and fro rounds in the sixteenth digit, which temperatures near a limit may feel
            assert math.isclose(x, after[key], rel_tol=1e-8, abs_tol=1e-8), key


# ---- random batches -------------------------------------------------------------------------------------------------

@st.composite
def extract_batch(draw: Any) -> dict[str, Any]:
    number = lambda lo, hi: round(draw(st.floats(lo, hi)), 3)  # noqa: E731
    return {
        "altitude": number(-100, 3000), "water": number(8, 14), "grain": number(100, 800), "syrup": number(1000, 3000), "dry": number(0.1, 900), "sugar": number(0.1, 500),
        "minutes": number(20, 90), "evaporation": number(0.5, 3), "hop": number(5, 60), "alpha": number(0.03, 0.15), "late": number(0, 19),
        "stand": number(1, 30), "stand_temperature": number(60, 90), "leave": number(0, 1), "top": number(18, 24), "attenuation": number(0.55, 0.85),
        "days": number(3, 20), "ferment": number(10, 24), "rack": number(0, 1), "dry_hop": number(1, 80), "target": number(1.8, 3.2), "hottest": number(20, 35),
        "loss": number(0, 0.5), "headspace": number(0.02, 0.10), "bottle": draw(st.sampled_from([0.33, 0.355, 0.5, 0.75])),
    }


def text_of(b: dict[str, Any], **more: Any) -> str:
    b = {"package": "unrated_glass", "limit": "", "sugar_for_priming": f'carbonation = "{b["target"]} vol"', "rated": "", **b, **more}
    return f"""
[batch]
name = "random"
altitude = "{b['altitude']} m"
[[step]]
do = "water"
volume = "{b['water']} L"
[[step]]
do = "steep"
temperature = "60 degC"
grains = [{{ mass = "{b['grain']} g", colour = "80 degL" }}]
[[step]]
do = "dissolve"
extracts = [{{ mass = "{b['syrup']} g", kind = "syrup", colour = "5 degL" }}]
[[step]]
do = "boil"
minutes = "{b['minutes']} min"
evaporation = "{b['evaporation']} kg/h"
hops = [{{ mass = "{b['hop']} g", alpha = {b['alpha']}, minutes = "{b['minutes']} min" }}, {{ mass = "{b['hop']} g", alpha = {b['alpha']}, minutes = "{b['late']} min" }}]
extracts = [{{ mass = "{b['dry']} g", kind = "dry", minutes = "10 min" }}]
sugars = [{{ mass = "{b['sugar']} g", kind = "glucose_monohydrate", minutes = "5 min" }}]
[[step]]
do = "stand"
minutes = "{b['stand']} min"
temperature = "{b['stand_temperature']} degC"
hops = [{{ mass = "10 g", alpha = 0.1 }}]
[[step]]
do = "chill"
to = "25 degC"
[[step]]
do = "transfer"
leave = "{b['leave']} L"
hop_absorption = "5 L/kg"
[[step]]
do = "top_up"
to = "{b['top']} L"
temperature = "10 degC"
[[step]]
do = "pitch"
mass = "11 g"
[[step]]
do = "ferment"
days = "{b['days']} d"
temperature = "{b['ferment']} degC"
attenuation = {b['attenuation']}
{b['limit']}
[[step]]
do = "rack"
leave = "{b['rack']} L"
[[step]]
do = "dry_hop"
days = "3 d"
hops = [{{ mass = "{b['dry_hop']} g" }}]
[[step]]
do = "prime"
{b['sugar_for_priming']}
[[step]]
do = "bottle"
volume = "{b['bottle']} L"
headspace = {b['headspace']}
hottest = "{b['hottest']} degC"
serving = "6 degC"
loss = "{b['loss']} L"
package = "{b['package']}"
fermentation_confirmed = true
{b['rated']}
"""


@SETTINGS
@given(b=extract_batch())
def test_the_ledger_closes(b: dict[str, Any]) -> None:
    f = wm.batch.read_text(text_of(b)).forecast()
    ledger = f.ledger
    into = sum(ledger["in"].values())
    assert all(g >= 0 for g in [*ledger["in"].values(), *ledger["out"].values()])
    assert abs(into - sum(ledger["out"].values()) - ledger["kept_g"]) <= 1e-12 * into
    assert abs(ledger["imbalance_g"]) <= 1e-12 * into
    # the balance by elements of the brewer's kind: what fermented is alcohol, gas and yeast
    for step in f.steps:
        r = step["reported"]
        if step["do"] == "ferment":
            alcohol = r["fermented_g"] / 2.0665
            assert math.isclose(r["fermented_g"], alcohol + r["co2_formed_g"] + r["yeast_g"], rel_tol=1e-12)
    last = f.steps[-1]["after"]
    assert math.isclose(last["mass_g"], sum(last[k] for k in ("water_g", "malt_extract_g", "sugar_extract_g", "ethanol_g")), rel_tol=1e-14)
    assert math.isclose(sum(h["bu"] for h in f.hops), f.results["bitterness_bu"], rel_tol=1e-12)


WORSE = {
    "warmer": lambda b: {"hottest": b["hottest"] + 7},
    "fuller": lambda b: {"headspace": b["headspace"] * 0.6},
    "more gas": lambda b: {"target": b["target"] + 0.6},
    "less attenuated": lambda b: {"attenuation": b["attenuation"] - 0.04},
    "more left to ferment": lambda b: {"limit": "limit_attenuation = 0.90"},
}


@pytest.mark.parametrize("change", WORSE)
@SETTINGS
@given(b=extract_batch())
def test_more_danger_never_lowers_the_level(change: str, b: dict[str, Any]) -> None:
    base = {**b, "limit": "limit_attenuation = 0.86", "target": b["target"] + 0.8}
    levels = [wm.batch.read_text(text_of(x)).forecast() for x in (base, {**base, **WORSE[change](base)})]
    assert levels[1].package["level"] >= levels[0].package["level"]
    assert levels[1].package["hazard_pressure_bar"] is None or levels[1].package["hazard_pressure_bar"] >= levels[0].package["hazard_pressure_bar"] - 1e-9


@SETTINGS
@given(b=extract_batch(), grams=st.floats(40, 300), more=st.floats(1, 200))
def test_more_sugar_never_lowers_the_level(b: dict[str, Any], grams: float, more: float) -> None:
    levels = [wm.batch.read_text(text_of(b, sugar_for_priming=f'mass = "{g!r} g"')).forecast().package["level"] for g in (grams, grams + more)]
    assert levels[1] >= levels[0]


@SETTINGS
@given(b=extract_batch(), rated=st.floats(1.0, 12.0))
def test_a_weaker_package_never_lowers_the_level(b: dict[str, Any], rated: float) -> None:
    b = {**b, "target": b["target"] + 0.5}
    level = {k: wm.batch.read_text(text_of(b, package=k)).forecast().package["level"] for k in
             ("sparkling_wine_glass", "soft_drink_glass", "beer_glass_rated", "unrated_glass", "not_pressure_rated")}
    assert level["sparkling_wine_glass"] <= level["soft_drink_glass"] <= level["beer_glass_rated"] <= level["unrated_glass"] <= level["not_pressure_rated"]
    by_rating = [wm.batch.read_text(text_of(b, package="beer_glass_rated", rated=f'rated = "{r!r} bar"')).forecast().package["level"] for r in (rated, rated * 0.7)]
    assert by_rating[1] >= by_rating[0]


def test_the_common_kit() -> None:
    """Six pounds of malt syrup and one of dry extract, made up to five US gallons: about 5.5 % vol and some fifty
    12-ounce bottles. Common practice, no source."""
    f = wm.batch.read_text("""
[batch]
name = "the common kit"
[[step]]
do = "water"
volume = "2.5 gal"
[[step]]
do = "dissolve"
extracts = [{ mass = "6 lb", kind = "syrup" }, { mass = "1 lb", kind = "dry" }]
[[step]]
do = "boil"
minutes = "60 min"
evaporation = "0.5 gal/h"
hops = [{ mass = "1 oz", alpha = "6 %", minutes = "60 min" }]
[[step]]
do = "chill"
to = "80 degF"
[[step]]
do = "transfer"
[[step]]
do = "top_up"
to = "5 gal"
[[step]]
do = "pitch"
mass = "11.5 g"
[[step]]
do = "ferment"
days = "14 d"
temperature = "66 degF"
[[step]]
do = "prime"
carbonation = "2.4 vol"
[[step]]
do = "bottle"
volume = "12 floz"
hottest = "77 degF"
""").forecast()
    assert f.results["alcohol_by_volume"] == pytest.approx(5.5, abs=0.5)
    assert 50 <= f.package["bottles"] <= 55
    formulas = f.results["alcohol_by_formula"]
    assert max(formulas.values()) - min(formulas.values()) < 0.3  # they differ by what they take for alcohol per extract
