"""How far the models of one family differ where a brewer works (the ranges: docs/brewing.toml)."""

from __future__ import annotations

import math
import sys
import warnings
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

import wortmath as wm
from evidence import expression, facts
from pages import figure
from wortmath import _core

if sys.version_info >= (3, 11):
    import tomllib as tomllib
else:
    import tomli as tomllib

_STEPS = 120
_SCALES = {"SG 60/60 degF": "gravity_60F_60F", "SG 17.5/17.5": "gravity_17_5_17_5", "SG 20/20 true": "gravity_20_20_true", "SG 15/4": "gravity_15_4", "SG 15/15": "gravity_15_15",
           "SG 20/20": "gravity_20_20"}


@lru_cache(maxsize=None)
def ranges() -> dict[str, Any]:
    found: dict[str, Any] = tomllib.loads((Path(__file__).parent / "brewing.toml").read_text(encoding="utf-8"))
    return found


@lru_cache(maxsize=None)
def families() -> dict[str, list[str]]:
    """The paths of the models by family, the default first."""
    found: dict[str, list[str]] = {}
    for path in _core._models:
        found.setdefault(facts(path)["family"], []).append(path)
    return {family: sorted(paths, key=lambda p: not facts(p)["is_default"]) for family, paths in found.items()}


@dataclass(frozen=True)
class Difference:
    """What the models of a family say at one point."""
    x: float
    values: dict[str, float]

    @property
    def least(self) -> str:
        return min(self.values, key=lambda n: (self.values[n], n))

    @property
    def most(self) -> str:
        return max(self.values, key=lambda n: (self.values[n], n))

    @property
    def width(self) -> float:
        return self.values[self.most] - self.values[self.least]


@dataclass(frozen=True)
class Spread:
    family: str
    over: str
    unit: str                         # of the argument that moves
    result_unit: str
    xs: tuple[float, ...]
    curves: dict[str, tuple[float, ...]]   # NaN where a model is not validated
    given: str                        # the other arguments in words
    at: tuple[Difference, ...]
    apart: dict[str, str]             # models that are not drawn, with the reason

    @property
    def widest(self) -> Difference | None:
        points = [d for x, *column in zip(self.xs, *self.curves.values())
                  if len((d := Difference(x, {n: v for n, v in zip(self.curves, column) if math.isfinite(v)})).values) > 1]
        return max(points, key=lambda d: d.width, default=None)


def _on_scale(value: float, one: str, other: str) -> float:
    if one == other or one not in _SCALES or other not in _SCALES:
        return value
    convert: Any = wm.gravity.convert
    return float(convert(value, _SCALES[one], _SCALES[other], policy="extrapolate"))


def _value(path: str, setting: dict[str, Any], x: float, wanted: str | None, extra: dict[str, Any]) -> float:
    f = facts(path)
    reference = facts(families()[f["family"]][0])
    units = {i.name: i.unit for i in reference["inputs"]}
    row = {setting["over"]: repr(x)}
    given = {**setting.get("given", {}), **extra}
    arguments: dict[str, Any] = {}
    for i in f["inputs"]:
        if i.name in given:
            v = given[i.name]
            arguments[i.name] = expression.evaluate(v, row) if isinstance(v, str) and i.kind != "word" else v
        elif i.name == setting["over"]:
            arguments[i.name] = x
        elif i.required:
            raise KeyError(i.name)
        if isinstance(arguments.get(i.name), float) and i.unit in _SCALES:
            arguments[i.name] = _on_scale(arguments[i.name], units.get(i.name, i.unit), i.unit)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        try:
            value = expression.model(path)(**arguments, policy="raise")
        except ValueError:
            return math.nan
    value = getattr(value, wanted) if wanted else value
    return _on_scale(float(value), f["outputs"][0].unit, reference["outputs"][0].unit)


def _round(x: float) -> float:
    return float(f"{x:.10g}")


@lru_cache(maxsize=None)
def spread(family: str) -> Spread | None:
    """None for a family of one model, or of models that have no argument in common."""
    setting = ranges().get(family)
    if setting is None:
        return None
    paths = families()[family]
    lo, hi = setting["range"]
    steps = setting.get("steps", _STEPS)
    xs = tuple(_round(lo + (hi - lo) * k / steps) for k in range(steps + 1))
    wanted = setting.get("result")
    apart = dict(setting.get("apart", {}))
    curves: dict[str, tuple[float, ...]] = {}
    own: dict[str, dict[str, Any]] = {}
    for path in paths:
        name = path.rsplit(".", 1)[1]
        extra = own[name] = setting.get("also", {}).get(name, {})
        if name in apart:
            continue
        try:
            curves[name] = tuple(_value(path, setting, x, wanted, extra) for x in xs)
        except KeyError as e:
            apart[name] = f"needs {e.args[0]} besides"
            continue
        if not any(map(math.isfinite, curves[name])):
            apart[name] = "not validated in this range"
            del curves[name]
    at = []
    for x in setting["at"]:
        values = {n: _value(f"{family}.{n}", setting, float(x), wanted, own[n]) for n in curves}
        at.append(Difference(float(x), {n: v for n, v in values.items() if math.isfinite(v)}))
    reference = facts(paths[0])
    unit = next((i.unit for p in paths for i in facts(p)["inputs"] if i.name == setting["over"]), "")
    output = next((o for o in reference["outputs"] if o.name == wanted), reference["outputs"][0])
    given = ", ".join(f"{n} {v}" if not isinstance(v, str) or v in ("d65", "c") or not any(c in v for c in "(*+ ") else f"{n} = {v}" for n, v in setting.get("given", {}).items())
    return Spread(family, setting["over"], unit, output.unit, xs, curves, given, tuple(at), apart)


def amount(value: float, unit: str) -> tuple[str, str]:
    """A difference as a brewer says it."""
    if unit.startswith("SG"):
        value, unit = 1000 * value, "gravity points"
    elif unit == "fraction":
        value, unit = 100 * value, "percentage points"
    elif unit in ("ratio", "any", "name"):
        unit = ""
    elif unit == "cells":
        value, unit = value / 1e9, "thousand million cells"
    elif unit == "bar":
        return figure(value), f"bar ({figure(value / 0.0689475729)} psi)"
    elif unit == "kg/m3":
        value, unit = value, "g/L"
    return figure(value), unit


def shown(value: float, unit: str, width: float = 0.0) -> str:
    """A value with as many digits as the trade reads, or as a difference of this width takes to be seen."""
    needed = math.ceil(math.log10(abs(value) / width)) + 1 if width > 0 and value else 0
    if unit.startswith("SG"):
        return f"{value:.{max(4, min(7, needed))}f}"
    if unit == "fraction":
        return f"{100 * value:.{max(3, min(8, needed))}g} %"
    if unit == "cells":
        return f"{value / 1e9:.0f} thousand million"
    return f"{value:.{max(4, min(8, needed))}g}"
