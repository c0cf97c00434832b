"""How sure a forecast is: budget, second order, Monte Carlo, and the spread between published models beside it."""

from __future__ import annotations

import html
import json
import math
import os
import sys
import time
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from . import _core
from .uncertainty import Floats, Input, Instrument, coverage_factor, interval

if TYPE_CHECKING:
    from .batch import Batch

_engine = _core._spread
_numbers = _core._uncertainty

# The answers that are studied: key, words, unit, decimals of the value as printed where u does not say more.
ANSWERS = (("original_gravity", "original gravity", "SG"), ("final_gravity", "final gravity", "SG"), ("alcohol_by_volume", "alcohol", "% vol"), ("bitterness_bu", "bitterness", "BU"),
           ("colour_srm", "colour", "SRM"), ("volume_packaged_l", "volume packaged", "L"), ("carbonation_vol", "carbonation", "vol"), ("hottest_pressure_bar", "pressure at hottest", "bar"),
           ("hazard_carbonation_vol", "worst carbonation", "vol"), ("hazard_pressure_bar", "worst pressure", "bar"))
_MODELS = {"bitterness_bu": "bitterness_by_model", "alcohol_by_volume": "alcohol_by_formula", "colour_srm": "colour_by_model"}

HAZARD_PROBABILITY = 0.99


class Amount:
    """One uncertain amount of a batch: where it stands, and the input that stands for it."""

    def __init__(self, place: dict[str, Any], known: Any, evidence: str, assumed: bool) -> None:
        self.place, self.input, self.evidence, self.assumed = place, known, evidence, assumed

    @property
    def name(self) -> str:
        return label(self.place)


def label(place: dict[str, Any]) -> str:
    """"bittering hop, alpha (step 5)"."""
    where = f" (step {place['step']})" if place["step"] else ""
    return f"{place['name'] or place['do'] or place['table'] or 'batch'}: {place['key'].replace('_', ' ')}{where}"


class _Tools:
    """Instruments by preset and label: two readings with the same pair share offset and scale."""

    def __init__(self) -> None:
        self.made: dict[tuple[str, str], Any] = {}
        self.scale = Instrument(0.29, 0.6, name="kitchen scale")
        self.big_scale = Instrument(2.9, 6.0, name="large scale")

    def get(self, preset: str, called: str = "") -> Any:
        key = (preset, called)
        if key not in self.made:
            p = Instrument.preset(preset)
            self.made[key] = Instrument(p.reading_uncertainty, p.offset_uncertainty, p.scale_uncertainty, called or preset.replace("_", " "))
        return self.made[key]


_PACKET = "common practice, no source"


def _usual(p: dict[str, Any], tools: _Tools, packets: dict[tuple[str, str, float], tuple[Any, str]]) -> tuple[Any, str] | None:
    """What is proposed for an amount of which the file says nothing; None: taken as exact."""
    key, do, x, unit, name = p["key"], p["do"], p["value"], p["in"], label(p)
    if x == 0 or p["step"] == 0 or do in ("pitch", "condition", "serve", "note"):
        return None
    if key == "mass" and unit == "g":
        big = x > 5000
        return (tools.big_scale if big else tools.scale).read(x, name), f"balance, step {10 if big else 1} g: 0.29 e reading, 0.6 e shared (OIML R 76, doubled in service; derived)"
    if key in ("volume", "to", "water") and unit == "L" and do != "bottle":
        if do == "prime":
            return tools.get("litre_cylinder").read(x, name), "measuring cylinder of class B (ISO 4788, memory)"
        vessel = "fermenter marks" if do == "top_up" else "kettle marks"
        return tools.get("volume_marks", vessel).read(x, name), "volume marks, 2 % (common practice, no source; calibrate with weighed water)"
    if key in ("leave", "loss", "dead_space"):
        return Input.rectangular(x, 0.3 * x, name), "estimated, within 30 % (" + _PACKET + ")"
    if key in ("absorption", "hop_absorption"):
        return Input.rectangular(x, 0.2 * x, name), "within 20 % (" + _PACKET + ")"
    if key == "evaporation":
        return Input.rectangular(x, 0.15 * x, name), "within 15 % until measured (" + _PACKET + ")"
    shared = (p["name"], key, x)
    if p["name"] and shared in packets:
        return packets[shared]
    made: tuple[Any, str] | None = None  # of one packet
    if key == "alpha":
        made = Input(x, 0.03 * x, name=name), "3 % of the packet's value: trade tolerance of 5 % as a limit (hop trade note; secondary); age apart"
    elif key == "solids":
        made = Input.rectangular(x, 0.02 if x < 0.93 else 0.015, name), "maker's range, about 2 % (" + _PACKET + ")"
    elif key == "extract":
        made = Input.rectangular(x, 0.02, name), "within 2 % of the mass (" + _PACKET + ")"
    elif key == "colour":
        made = Input.rectangular(x, 0.1 * x, name), "maker's range, about 10 % (" + _PACKET + ")"
    if made and p["name"]:
        packets[shared] = made
    if made:
        return made
    if key == "efficiency" and do == "steep":
        return Input.rectangular(x, 0.25 * x, name), "within a quarter of the value (" + _PACKET + ")"
    if key == "conversion":
        return Input.rectangular(x, min(0.03, 1 - x) if x < 1 else 0.0, name), "within 3 % (" + _PACKET + ")"
    if key == "attenuation":
        return Input(x, min(0.02, (1 - x) / 4), name=name), "the same yeast in another wort, u 2 % (" + _PACKET + ")"
    if key == "final_gravity" and unit == "SG":
        return tools.get("hydrometer").read(x, name), "hydrometer with 0.001 divisions (ASTM E100, secondary)"
    if key == "efficiency" and do == "prime":
        return Input.rectangular(x, min(0.04, 1 - x), name), "within 4 % (" + _PACKET + ")"
    if key == "headspace":
        return Input.rectangular(x, 0.25 * x, name), "filled by eye, within a quarter (" + _PACKET + ")"
    if key == "temperature" and do in ("ferment", "rack"):
        return tools.get("kitchen_thermometer").read(x, name), "kitchen thermometer, 1 degC (common practice)"
    return None


def input_of(how: dict[str, Any], value: float, name: str, tools: _Tools) -> tuple[Any, str]:
    """A statement of the file as an input."""
    shape = how["shape"]
    if shape == "instrument":
        tool = tools.get(how["instrument"], how["label"])
        return tool.read(value, name), f"{how['instrument'].replace('_', ' ')}, as the file says"
    if shape == "log_normal":
        return Input.log_normal(value, how["factor"], name), f"right within a factor of {how['factor']:g}, as the file says"
    if shape == "normal":
        return Input(value, how["uncertainty"], how["dof"] or math.inf, name), "standard uncertainty, as the file says"
    return getattr(Input, shape)(value, how["limit"], name), f"{shape} limit, as the file says"


def text_of(batch: Batch) -> str:
    """The text of the batch's file, which holds [[uncertain]] and [[reading]]."""
    return str(batch.text)


def amounts_of(batch: Batch, core: Any, defaults: bool, tools: _Tools | None = None) -> list[Amount]:
    """The uncertain amounts: those of the file's [[uncertain]], and, unless it is asked not to, the usual ones."""
    tools = tools or _Tools()
    text = text_of(batch)
    places = _engine.amounts(core)
    original = {(p["step"], p["key"], p["name"], p["line"]): p["index"] for p in _engine.amounts(batch._core)}
    back = {original.get((p["step"], p["key"], p["name"], p["line"])): p for p in places}
    made: dict[int, Amount] = {}
    for u in _engine.uncertain(text, batch._core) if text else []:
        there = [back[i] for i in u["indices"] if i in back]
        if not there:  # the carbonation that became a mass of sugar
            raise _core.BatchError(f"line {u['line']}: uncertain: the carbonation of a prime step is a plan, not an amount; on the day its sugar is weighed. Give the mass, or its uncertainty apart")
        known, evidence = input_of(u["how"], there[0]["value"], label(there[0]), tools)
        for p in there:
            made[p["index"]] = Amount(p, known, evidence, False)
    packets: dict[tuple[str, str, float], tuple[Any, str]] = {}
    if defaults:
        for p in places:
            if p["index"] not in made and (found := _usual(p, tools, packets)) is not None:
                made[p["index"]] = Amount(p, found[0], found[1], True)
    return [made[i] for i in sorted(made)]


class Brewer:
    """Brews a batch with many sets of values for some of its amounts."""

    def __init__(self, core: Any, amounts: Sequence[Amount], answers: Sequence[tuple[int, str]], threads: int | None = None) -> None:
        self.core, self.answers = core, list(answers)
        self.indices = [a.place["index"] for a in amounts]
        self.inputs = [a.input for a in amounts]
        self.threads = threads or min(8, os.cpu_count() or 1)

    def __call__(self, x: Floats) -> Floats:
        y: Floats = _engine.brew_many(self.core, self.indices, self.answers, np.ascontiguousarray(x, dtype=float), self.threads)
        return y

    def base(self) -> Floats:
        return np.array([i.value for i in self.inputs], dtype=float)

    def sensitivities(self) -> tuple[Floats, Floats]:
        """The answers, and their derivatives by the amounts: half the change over two standard uncertainties. One side
        where the other cannot be brewed. The one place to change when exact derivatives shall be used."""
        x = self.base()
        u = np.array([i.uncertainty for i in self.inputs], dtype=float)
        h = np.where(u > 0, u, 1e-6 * np.maximum(1.0, np.abs(x)))
        n = len(x)
        sets = np.tile(x[:, None], (1, 2 * n + 1))
        for i in range(n):
            sets[i, 1 + 2 * i] += h[i]
            sets[i, 2 + 2 * i] -= h[i]
        y = self(sets)
        up, down, mid = y[:, 1::2], y[:, 2::2], y[:, :1]
        both = (up - down) / (2 * h)
        slopes = np.where(np.isnan(both), np.where(np.isnan(up), (mid - down) / h, (up - mid) / h), both)
        return y[:, 0], slopes

    def second_order(self) -> list[tuple[float, float]]:
        """Uncertainty and bias with second-order terms, for all answers from the same brews."""
        points: list[list[float]] = []

        def asked(x: list[float]) -> float:
            points.append(x)
            return 0.0
        _numbers.second_order_of_model(asked, self.inputs)
        y = self(np.array(points).T)
        found = []
        for row in y:
            replies = iter(row.tolist())
            try:
                u, bias, _ = _numbers.second_order_of_model(lambda _: next(replies), self.inputs)
            except ValueError:
                u = bias = math.nan
            found.append((u, bias))
        return found


class Output:
    """A figure of a batch as a measurement model: a function of some of its amounts, for wortmath.uncertainty."""

    def __init__(self, batch: Batch, result: str, amounts: Sequence[tuple[str | int, str]], step: int = 0) -> None:
        core = _engine.as_brewed(batch._core)
        places = _engine.amounts(core)
        self.indices = []
        for where, key in amounts:
            fits = [p for p in places if p["key"] == key and (p["step"] == where and not p["name"] if isinstance(where, int) else p["name"] == where)]
            if len(fits) != 1:
                raise ValueError(f"{where!r}, {key!r} fits {len(fits) or 'no'} amounts of the batch; expected the name of an ingredient or the number of a step, and a key of it")
            self.indices.append(fits[0]["index"])
        self.values = [next(p["value"] for p in places if p["index"] == i) for i in self.indices]
        self.core, self.answer = core, (step, result)
        _engine.answer(core, [self.answer])

    def _block(self, x: Floats) -> Floats:
        y: Floats = _engine.brew_many(self.core, self.indices, [self.answer], np.ascontiguousarray(x, dtype=float), min(8, os.cpu_count() or 1))
        row: Floats = y[0]
        return row

    def __call__(self, *values: float) -> float:
        if len(values) != len(self.indices):
            raise TypeError(f"this output takes {len(self.indices)} amounts, {len(values)} were given")
        return float(self._block(np.array(values, dtype=float)[:, None])[0])


def _finite(x: float) -> float | None:
    return None if x != x or math.isinf(x) else x


def spread(batch: Batch, *, defaults: bool = True, seed: int = 1, trials: float = 1e6, digits: int = 2, probability: float = 0.95, monte_carlo: bool = True,
           progress: Callable[[int], None] | None = None, threads: int | None = None) -> dict[str, Any]:
    """The study of a batch as plain data, in the shape of `wortmath spread --json`."""
    core = _engine.as_brewed(batch._core)
    forecast = batch.forecast()
    amounts = amounts_of(batch, core, defaults)
    if not amounts:
        raise ValueError("nothing in this batch is uncertain; say in [[uncertain]] what is, or take the usual instruments")
    here = dict(zip([k for k, _, _ in ANSWERS], _engine.answer(core, [(0, k) for k, _, _ in ANSWERS])))
    studied = [(k, words, unit) for k, words, unit in ANSWERS if here[k] == here[k]]
    if not studied:
        raise ValueError("the batch reaches none of the results whose spread is studied")
    brewer = Brewer(core, amounts, [(0, k) for k, _, _ in studied], threads)
    values, slopes = brewer.sensitivities()
    second = brewer.second_order()
    moving = [j for j in range(len(studied)) if np.any(np.nan_to_num(slopes[j]) * np.array([i.uncertainty for i in brewer.inputs]) != 0)]
    if not moving:
        raise ValueError("none of the results depends on an amount that is uncertain")
    studied, values, slopes, second = [studied[j] for j in moving], values[moving], slopes[moving], [second[j] for j in moving]
    brewer = Brewer(core, amounts, [(0, k) for k, _, _ in studied], threads)
    k95 = {}
    found: dict[str, Any] = {}
    for j, (key, words, unit) in enumerate(studied):
        b = _numbers.budget_of_derivatives(float(values[j]), np.nan_to_num(slopes[j]), brewer.inputs, None)
        k = coverage_factor.student(probability, b["dof"]) if b["dof"] > 0 else math.nan
        k95[key] = k
        lines = [{"name": n, "sensitivity": float(c), "uncertainty": float(u), "component": float(w), "share": _finite(float(s))}
                 for n, c, u, w, s in zip(b["names"], b["sensitivities"], b["uncertainties"], b["components"], b["shares"])]
        lines.sort(key=lambda line: -line["component"])
        found[key] = {"words": words, "unit": unit, "value": float(values[j]),
                      "first_order": {"uncertainty": b["uncertainty"], "dof": _finite(b["dof"]), "coverage_factor": k, "expanded": k * b["uncertainty"],
                                      "interval": [float(values[j]) - k * b["uncertainty"], float(values[j]) + k * b["uncertainty"]], "budget": [line for line in lines if line["component"] > 0]},
                      "second_order": {"uncertainty": _finite(second[j][0]), "bias": _finite(second[j][1])}, "monte_carlo": None, "models": None}
    study: dict[str, Any] = {"format": "wortmath spread 1", "name": batch.name, "probability": probability, "seed": seed, "trials": 0, "refused": 0, "converged": None, "results": found, "package": None,
                             "uncertain": [{"name": a.name, "step": a.place["step"] or None, "key": a.place["key"], "value": a.place["value"], "unit": a.place["in"], "uncertainty": a.input.uncertainty,
                                            "shape": a.input.shape, "evidence": a.evidence, "assumed": a.assumed} for a in amounts]}
    results = forecast.results
    for key, table in _MODELS.items():
        of = {n: v for n, v in (results.get(table) or {}).items() if v is not None}
        if key in found and len(of) > 1:
            low, high = min(of, key=lambda n: of[n]), max(of, key=lambda n: of[n])
            found[key]["models"] = {"low": of[low], "high": of[high], "lowest": low, "highest": high, "count": len(of), "rectangular_uncertainty": (of[high] - of[low]) / math.sqrt(12)}
    if monte_carlo:
        done = 0

        def block(x: Floats) -> Floats:
            nonlocal done
            # in stretches, so that Ctrl-C and the progress line do not wait for a whole block
            parts = []
            for at in range(0, x.shape[1], 2000):
                parts.append(brewer(x[:, at:at + 2000]))
                done += parts[-1].shape[1]
                if progress:
                    progress(done)
            return np.hstack(parts)

        mc = _numbers.adaptive(block, brewer.inputs, None, probability, False, digits, seed, float(trials))
        study["trials"], study["refused"], study["converged"] = mc["trials"], mc["refused"], mc["converged"]
        for j, (key, _, _) in enumerate(studied):
            y = mc["samples"][j]
            kept = y[~np.isnan(y)]
            shortest = interval.shortest(kept, probability)
            upper = float(_numbers.upper_with_refused(y, HAZARD_PROBABILITY))
            first = found[key]["first_order"]
            confirmed, low, high, delta = _numbers.parts.agreement_jcgm_101(tuple(first["interval"]), (float(mc["low"][j]), float(mc["high"][j])), first["uncertainty"], 1)
            found[key]["monte_carlo"] = {"mean": float(mc["value"][j]), "uncertainty": float(mc["uncertainty"][j]), "symmetric": [float(mc["low"][j]), float(mc["high"][j])], "shortest": list(shortest),
                                         "refused": int(np.isnan(y).sum()), "upper_99": _finite(upper), "upper_99_is_infinite": math.isinf(upper),
                                         "first_order_confirmed": confirmed, "differences": [low, high], "tolerance": delta}
        if "covariance" in mc and mc["covariance"] is not None:
            study["covariance"] = np.asarray(mc["covariance"]).tolist()
            study["joint"] = [k for k, _, _ in studied]
            study["ellipsoid_factor"] = _finite(mc["ellipsoid_factor"])
        study["package"] = _package(batch, forecast, found)
    return study


def _package(batch: Batch, forecast: Any, found: dict[str, Any]) -> dict[str, Any] | None:
    """The caution for the package from the upper ends of the 99 % intervals, every refused draw counted as infinite."""
    package = forecast.package
    if package is None:
        return None
    import wortmath

    def upper(key: str) -> float:
        mc = found.get(key, {}).get("monte_carlo")
        return math.nan if mc is None else math.inf if mc["upper_99_is_infinite"] else mc["upper_99"]
    pressure, carbonation = upper("hazard_pressure_bar"), upper("hazard_carbonation_vol")
    step: dict[str, Any] = next((s for s in reversed(batch.steps) if s["do"] in ("bottle", "keg")), {})
    rated = step["rated"]["value"] if step.get("rated") else None
    confirmed = bool(step.get("fermentation_confirmed"))

    def level(is_confirmed: bool) -> int:
        if not (math.isfinite(pressure) and math.isfinite(carbonation)):
            return 2
        return int(wortmath.package.caution(package["package"], pressure, carbonation, rated, is_confirmed, policy="extrapolate"))
    return {"kind": package["kind"], "package": package["package"], "hazard_pressure_bar": package["hazard_pressure_bar"], "hazard_pressure_upper_99_bar": _finite(pressure),
            "hazard_carbonation_upper_99_vol": _finite(carbonation), "level": max(package["level"], level(confirmed)), "level_of_the_forecast": package["level"]}


# ---------------------------------------------------------------------------------------------------------- showing

def two_digits(value: float, u: float) -> tuple[str, str]:
    """Value and u to two significant digits of u."""
    if not (u > 0 and math.isfinite(u)):
        return f"{value:.5g}", f"{u:.2g}"
    place = max(0, 1 - int(f"{u:.1e}".split("e")[1]))
    return f"{value:.{place}f}", f"{u:.{place}f}"


def _both(ends: Sequence[float], u: float) -> str:
    return " to ".join(two_digits(x, u)[0] for x in ends)


_WARNING = {0: "No rule of this list was met at that pressure. This is not a statement about your bottles.", 1: "caution: the package gets close to what it is made for.",
            2: "STOP: do not package like this."}


def text(study: dict[str, Any]) -> str:
    """At most 80 columns."""
    p = 100 * study["probability"]
    rows = [study["name"], "=" * min(80, len(study["name"])), f"How sure the forecast is: {p:g} % of such intervals hold the value.", ""]
    rows.append(f"{'':24}{'value':>8} {'u':>7}  {f'first order {p:g} %':19}{'Monte Carlo' if study['trials'] else ''}")
    for r in study["results"].values():
        u = r["first_order"]["uncertainty"]
        value, width = two_digits(r["value"], u)
        mc = r["monte_carlo"]
        rows.append(f"{r['words'] + ', ' + r['unit']:24.24}{value:>8} {width:>7}  {_both(r['first_order']['interval'], u):19}{_both(mc['symmetric'], mc['uncertainty']) if mc else ''}".rstrip())
    if study["trials"]:
        rows += ["", f"Monte Carlo: {study['trials']} trials, seed {study['seed']}, {study['refused']} refused" + ("" if study["converged"] else "; NOT converged: give it more trials"),
                 "u: one standard uncertainty, first order."]
    notes = []
    for r in study["results"].values():
        mc, first, second = r["monte_carlo"], r["first_order"], r["second_order"]
        if mc and not mc["first_order_confirmed"]:
            notes.append(f"{r['words']}: Monte Carlo does not confirm first order (ends differ by {mc['differences'][0]:.2g} and {mc['differences'][1]:.2g})")
        elif second["uncertainty"] and second["uncertainty"] ** 2 > 1.05 * first["uncertainty"] ** 2:
            notes.append(f"{r['words']}: second order says u = {second['uncertainty']:.2g}, first order {first['uncertainty']:.2g}")
        if mc:
            a, b = mc["symmetric"], mc["shortest"]
            if max(abs(a[0] - b[0]), abs(a[1] - b[1])) > 0.05 * (a[1] - a[0]):
                notes.append(f"{r['words']}: the shortest interval is {_both(b, mc['uncertainty'])}")
    if notes:
        rows += [""] + [line for n in notes for line in _wrap(n, "  ", 78)]
    rows += ["", "Who contributes (share of the variance)"]
    for r in study["results"].values():
        if not r["first_order"]["budget"]:
            continue
        rows.append(f"  {r['words']}")
        for line in r["first_order"]["budget"][:3]:
            share = line["share"] or 0.0
            rows.append(f"    {line['name']:46.46} {'#' * round(20 * share):20} {100 * share:3.0f} %")
    models = [(r["words"], r["unit"], r["models"]) for r in study["results"].values() if r["models"]]
    if models:
        rows += ["", "Published models differ beside that; it is no standard uncertainty"]
        for words, unit, m in models:
            rows.append(f"  {words}: {m['low']:.3g} ({m['lowest']}) to {m['high']:.3g} {unit} ({m['highest']}), {m['count']} models{' (before priming)' if words == 'alcohol' else ''}")
            rows.append(f"    as a rectangle over the models, were one number needed: u = {m['rectangular_uncertainty']:.2g}")
    package = study["package"]
    if package:
        upper = package["hazard_pressure_upper_99_bar"]
        rows += ["", "Package"]
        rows += _wrap(f"Worst-case pressure, upper end of the 99 % interval: {'not bounded: some draws were refused' if upper is None else f'{upper:.2f} bar gauge'}. {_WARNING[package['level']]}"
                      " Pressure can burst bottles and kegs: mind their maker's figures and local rules.", "  ", 78)
    rows += ["", "What was taken as uncertain"]
    for a in study["uncertain"]:
        value, width = two_digits(a["value"], a["uncertainty"])
        rows.append(f"  {a['name']:44.44} {value:>8} u {width} {a['unit']}{'  (usual)' if a['assumed'] else ''}")
    if any(a["assumed"] for a in study["uncertain"]):
        rows += _wrap("(usual): the file says nothing; taken for the usual instrument. [[uncertain]] in the file says better; --json shows the evidence.", "  ", 78)
    return "\n".join(row.rstrip() for row in rows) + "\n"


def _wrap(sentence: str, indent: str, width: int) -> list[str]:
    import textwrap
    return textwrap.wrap(sentence, width, initial_indent=indent, subsequent_indent=indent)


PAGE_STYLE = """
body{margin:0;background:#f3f0ea;color:#231f1b;font:1rem/1.5 -apple-system,"Segoe UI",Roboto,Arial,sans-serif;font-variant-numeric:tabular-nums}
main{max-width:60rem;margin:0 auto;background:#fff;padding:1.25rem 1rem 2rem}
h1,h2{font-family:"Iowan Old Style",Palatino,Georgia,serif;line-height:1.15}
table{border-collapse:collapse;width:100%;margin:.5rem 0}th,td{text-align:left;padding:.25rem .6rem .25rem 0;border-top:1px solid #cfc8bd;vertical-align:top}
td.n{text-align:right;white-space:nowrap}.bar{display:inline-block;height:.8em;background:#0a659c;vertical-align:-.05em;min-width:1px}
.muted{color:#5f574f;font-size:.875rem}.stop{background:#fce8e5;border-left:.3rem solid #b3261e;padding:.5rem .8rem}.caution{background:#fbf0d9;border-left:.3rem solid #985400;padding:.5rem .8rem}
@media (prefers-color-scheme:dark){body{background:#141210;color:#ece6dd}main{background:#1e1b18}th,td{border-color:#4b443c}.bar{background:#69b5ea}.muted{color:#b3a99d}.stop{background:#40211d}.caution{background:#332916}}
"""


def page_of(title: str, body: str) -> str:
    return (f'<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>{html.escape(title)}</title>'
            f"<style>{PAGE_STYLE}</style></head><body><main>\n{body}</main></body></html>\n")


def page(study: dict[str, Any]) -> str:
    """One HTML file, no script, no request to anywhere."""
    e, p = html.escape, 100 * study["probability"]
    out = [f"<h1>{e(study['name'])}</h1><p>How sure the forecast is: {p:g} % of such intervals hold the value.</p>",
           f"<table><tr><th>result</th><th>value</th><th>u</th><th>first order, {p:g} %</th><th>Monte Carlo, {p:g} %</th></tr>"]
    for r in study["results"].values():
        u, mc = r["first_order"]["uncertainty"], r["monte_carlo"]
        value, width = two_digits(r["value"], u)
        out.append(f"<tr><td>{e(r['words'])}, {e(r['unit'])}</td><td class=n>{value}</td><td class=n>{width}</td><td>{_both(r['first_order']['interval'], u)}</td>"
                   f"<td>{_both(mc['symmetric'], mc['uncertainty']) if mc else ''}{'' if not mc or mc['first_order_confirmed'] else ' <span class=muted>(first order not confirmed)</span>'}</td></tr>")
    out.append("</table>")
    if study["trials"]:
        out.append(f"<p class=muted>Monte Carlo: {study['trials']} trials, seed {study['seed']}, {study['refused']} refused, {'converged' if study['converged'] else 'not converged'}.</p>")
    if study["package"]:
        package = study["package"]
        upper = package["hazard_pressure_upper_99_bar"]
        kind = ("muted", "caution", "stop")[package["level"]]
        out.append(f"<p class={kind}>Worst-case pressure, upper end of the 99 % interval: {'not bounded, some draws were refused' if upper is None else f'{upper:.2f} bar gauge'}. {e(_WARNING[package['level']])} "
                   "Pressure can burst bottles and kegs: mind their maker's figures and local rules.</p>")
    out.append("<h2>Who contributes</h2>")
    for r in study["results"].values():
        out.append(f"<h3>{e(r['words'])}</h3><table>")
        for line in r["first_order"]["budget"][:6]:
            share = line["share"] or 0.0
            out.append(f"<tr><td style='width:45%'>{e(line['name'])}</td><td><span class=bar style='width:{60 * share:.1f}%'></span> {100 * share:.0f} %</td></tr>")
        out.append("</table>")
    if any(r["models"] for r in study["results"].values()):
        out.append("<h2>Between published models</h2><p class=muted>Beside the above, not part of it.</p><table>")
        for r in study["results"].values():
            if m := r["models"]:
                out.append(f"<tr><td>{e(r['words'])}</td><td>{m['low']:.3g} ({e(m['lowest'])}) to {m['high']:.3g} {e(r['unit'])} ({e(m['highest'])}), {m['count']} models</td></tr>")
        out.append("</table>")
    out.append("<h2>What was taken as uncertain</h2><table><tr><th>amount</th><th>value</th><th>u</th><th>why</th></tr>")
    for a in study["uncertain"]:
        value, width = two_digits(a["value"], a["uncertainty"])
        out.append(f"<tr><td>{e(a['name'])}</td><td class=n>{value}</td><td class=n>{width} {e(a['unit'])}</td><td class=muted>{'usual: ' if a['assumed'] else ''}{e(a['evidence'])}</td></tr>")
    out.append("</table>\n")
    return page_of(f"{study['name']}: spread", "\n".join(out))


# ------------------------------------------------------------------------------------------------------ command line

class _Progress:
    """One line on a terminal, at most five times a second."""

    def __init__(self) -> None:
        self.on, self.last, self.shown = sys.stderr is not None and sys.stderr.isatty(), 0.0, False

    def __call__(self, done: int) -> None:
        if self.on and time.monotonic() - self.last > 0.2:
            self.last, self.shown = time.monotonic(), True
            sys.stderr.write(f"\r{done} trials ")
            sys.stderr.flush()

    def end(self) -> None:
        if self.shown:
            sys.stderr.write("\r" + " " * 30 + "\r")
            sys.stderr.flush()


def output_options(parser: Any) -> None:
    parser.add_argument("--json", metavar="FILE", help="also save all numbers as JSON; - writes them to standard output instead")
    parser.add_argument("--html", metavar="FILE", help="also save a page to print or to open in a browser")


def configure(parser: Any) -> None:
    parser.add_argument("file", metavar="FILE", help="a batch file, such as my.toml")
    parser.add_argument("--seed", type=int, default=1, metavar="N", help="of the random draws; the same seed gives the same numbers (1)")
    parser.add_argument("--trials", type=float, default=1e6, metavar="N", help="the most trials (1000000); 0 leaves Monte Carlo out")
    parser.add_argument("--digits", type=int, default=1, metavar="N", help="significant digits of u that shall be steady (1)")
    parser.add_argument("--no-usual", action="store_true", help="only what the file calls uncertain; nothing is taken for granted")
    output_options(parser)


def answer_in(study: dict[str, Any], options: Any, shown: Callable[[dict[str, Any]], str], made_page: Callable[[dict[str, Any]], str]) -> tuple[str, list[tuple[str, str]]]:
    """Standard output and files."""
    if options.html == "-" and options.json == "-":
        raise ValueError("--json - and --html - both want standard output; give one of them a file name")
    numbers = json.dumps(study, indent=2, ensure_ascii=True, allow_nan=False) + "\n" if options.json is not None else ""
    web = made_page(study) if options.html is not None else ""
    files = [(path, content) for path, content in ((options.json, numbers), (options.html, web)) if path not in (None, "-")]
    return (numbers if options.json == "-" else web if options.html == "-" else shown(study)), files


def main(options: Any) -> tuple[str, list[tuple[str, str]]]:
    """What `wortmath spread` prints and saves. ValueError and OSError carry sentences."""
    from . import batch
    if options.seed < 0:
        raise ValueError(f"--seed {options.seed} is negative; expected a whole number from 0")
    if not (options.trials == 0 or options.trials >= 1e5):
        raise ValueError(f"--trials {options.trials:g} is too few: the rule for stopping needs ten blocks of 10000, that is 100000; 0 leaves Monte Carlo out")
    if not 1 <= options.digits <= 4:
        raise ValueError(f"--digits {options.digits} is not possible; expected 1 to 4")
    progress = _Progress()
    try:
        study = spread(batch.read(options.file), defaults=not options.no_usual, seed=options.seed, trials=options.trials, digits=options.digits, monte_carlo=options.trials > 0, progress=progress)
    finally:
        progress.end()
    return answer_in(study, options, text, page)
