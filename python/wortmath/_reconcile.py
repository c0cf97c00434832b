"""A real day against its batch: the most probable amounts, the reading that does not fit, and what probably happened.

The batch is the constraint. Its uncertain amounts and the readings are all measured quantities; each reading must equal
what the batch, brewed with the true amounts, would show. Each thing that may have gone wrong is a change of that
forecast; what the readings say for and against it is its marginal likelihood, so that a cause which could explain
anything does not win by that.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from . import _core
from ._spread import Amount, Brewer, _Tools, amounts_of, answer_in, input_of, label, output_options, page_of, text_of, two_digits
from .reconcile import Reconciled, _result
from .uncertainty import Floats, Input

if TYPE_CHECKING:
    from .batch import Batch

_engine = _core._spread
_numbers = _core._uncertainty

ERROR_RATE = 0.05
_UNITS = {"volume": "L", "mass": "g", "temperature": "degC", "gravity": "SG", "refractometer": "degBx", "alcohol": "% vol", "carbonation": "vol", "pressure": "bar", "bitterness": "BU", "colour": "SRM"}
_FIGURES = {"volume": "volume_l", "mass": "mass_g", "temperature": "temperature_c", "gravity": "gravity_20_20", "refractometer": "refractometer_degbx", "alcohol": "alcohol_by_volume",
            "pressure": "pressure_bar", "bitterness": "bitterness_bu", "colour": "colour_srm"}
# How far a reading may be off for a reason that nobody thought of: one standard deviation, of the value or absolute.
_GROSS = {"volume": (0.15, 0.0), "mass": (0.15, 0.0), "temperature": (0.0, 10.0), "gravity": (0.0, 0.012), "refractometer": (0.0, 2.5), "alcohol": (0.0, 1.5), "carbonation": (0.0, 0.6),
          "pressure": (0.0, 0.7), "bitterness": (0.3, 0.0), "colour": (0.3, 0.0)}


@dataclass
class Reading:
    """What was read: on the library's scales (gravity as SG 20/20, corrected if its temperature was given)."""
    step: int
    quantity: str
    value: float
    input: Any
    text: str = ""
    called: str = ""
    line: int = 0
    unit: str = ""            # of the file: "SG" or "degP" for a gravity, "gal" for a volume
    temperature: float | None = None
    instrument: str = ""      # by name, if its readings share an offset

    @property
    def name(self) -> str:
        return f"{self.called or self.quantity} (step {self.step})"


def _to_gravity(plato: Floats) -> Floats:
    import wortmath
    return np.asarray(wortmath.extract.to_gravity(np.asarray(plato, dtype=float), policy="extrapolate"), dtype=float)


def _to_plato(gravity: Floats) -> Floats:
    import wortmath
    return np.asarray(wortmath.extract.from_gravity(np.asarray(gravity, dtype=float), policy="extrapolate"), dtype=float)


def _corrected(reading: float, sample: float, calibration: float) -> float:
    import wortmath
    return float(wortmath.hydrometer.correct(reading, sample, calibration, policy="extrapolate"))


def _usual_tool(quantity: str, value: float, place: str, tools: _Tools) -> tuple[Any, str]:
    """The instrument that is supposed where the reading names none: an input maker and its name."""
    if quantity == "volume":
        name = "fermenter marks" if place == "fermenter" else "kettle marks"
        return tools.get("volume_marks", name).read, name
    if quantity == "gravity":
        return tools.get("hydrometer").read, "hydrometer"
    if quantity == "refractometer":
        return tools.get("hand_refractometer").read, "hand refractometer"
    if quantity == "temperature":
        return tools.get("kitchen_thermometer").read, "kitchen thermometer"
    if quantity == "mass":
        return (tools.big_scale if value > 5000 else tools.scale).read, "large scale" if value > 5000 else "kitchen scale"
    u = {"alcohol": 0.2, "carbonation": 0.1, "pressure": 0.05, "bitterness": 0.07 * value, "colour": 0.07 * value}[quantity]
    return (lambda v, n: Input(v, u, name=n)), ""


def readings_of(batch: Batch, tools: _Tools, raw: Sequence[dict[str, Any]] | None = None) -> list[Reading]:
    """The [[reading]] of the file, or the same as dicts."""
    found = []
    calibration = batch.instruments["hydrometer_calibration"]["value"]
    steps = batch.forecast().steps
    for r in raw if raw is not None else _engine.readings(text_of(batch), batch._core):
        value, how, quantity = float(r["value"]), r.get("how"), r["quantity"]
        place = steps[r["step"] - 1]["place"]
        width = 1.0
        if quantity == "gravity" and r.get("unit") == "degP":
            low, high = _to_gravity(np.array([value - 0.01, value + 0.01]))
            width, value = float(high - low) / 0.02, float(_to_gravity(np.array([value]))[0])
        temperature = r.get("temperature")
        if quantity == "gravity" and temperature is not None:
            value = _corrected(value, temperature, calibration)
        name = f"{r.get('name') or quantity} (step {r['step']})"
        if how is None:
            make, tool = _usual_tool(quantity, value, place, tools)
            known = make(value, name)
        else:
            how = dict(how, uncertainty=how["uncertainty"] * width, limit=how["limit"] * width)
            known, _ = input_of(how, value, name, tools)
            tool = how["label"] or how["instrument"].replace("_", " ")
        if not known.uncertainty > 0:
            raise ValueError(f"the reading of {name} has no uncertainty; nothing can be weighed against it")
        unit = r.get("unit") or ("gal" if any(w in r.get("text", "") for w in ("gal", "qt", "pt")) else "")
        found.append(Reading(r["step"], quantity, value, known, r.get("text", ""), r.get("name", ""), r.get("line", 0), unit, temperature, tool))
    return found


@dataclass
class Explanation:
    """A change of the forecast. `extras` are unknown sizes of the fault, each with mean and standard deviation."""
    cause: str
    words: str
    weight: float
    extras: list[tuple[float, float]] = field(default_factory=list)
    amounts: Callable[[Floats, Floats], Floats] | None = None    # amounts by sets, extras by sets
    shown: Callable[[Floats, Floats], Floats] | None = None      # figures by sets, extras by sets
    replaced: dict[int, float] = field(default_factory=dict)     # the file's value of an amount was another
    moved: list[int] = field(default_factory=list)               # the readings it puts the blame on
    size: Callable[[float], str] | None = None


class Day:
    """A batch and the readings of the day it was brewed."""

    def __init__(self, batch: Batch, readings: Sequence[Reading] | None = None, *, defaults: bool = True, tools: _Tools | None = None) -> None:
        self.batch = batch
        self.core = _engine.as_brewed(batch._core)
        tools = tools or _Tools()
        amounts = amounts_of(batch, self.core, defaults, tools)
        self.readings = list(readings) if readings is not None else readings_of(batch, tools)
        if not self.readings:
            raise ValueError("there is no [[reading]] in the file; nothing to reconcile")
        steps = batch.forecast().steps
        self.steps = steps
        answers: list[tuple[int, str]] = []
        for r in self.readings:
            if not 1 <= r.step <= len(steps):
                raise ValueError(f"there is no step {r.step}; the batch has {len(steps)}")
            answers.append((0, "carbonation_vol") if r.quantity == "carbonation" else (r.step, "volume_20c_l" if r.quantity == "volume" and r.temperature is not None else _FIGURES[r.quantity]))
        self.first_help = len(answers)
        self.top_up = next((s["number"] for s in steps if s["do"] == "top_up"), None)
        self.ferment = next((s["number"] for s in steps if s["do"] == "ferment"), None)
        # beside the readings: what some explanations need
        self.help: dict[tuple[int, str], int] = {}
        for r in self.readings:
            for key in ("refractometer_degbx", "temperature_c"):
                self._helper(answers, (r.step, key))
        if self.top_up:
            for s in (self.top_up - 1, self.top_up):
                if s >= 1:
                    self._helper(answers, (s, "volume_20c_l"))
        self.answers = answers
        everything = Brewer(self.core, amounts, answers, threads=1)
        if len(amounts):
            values, slopes = everything.sensitivities()
            u = np.array([a.input.uncertainty for a in amounts])
            ur = np.array([r.input.uncertainty for r in self.readings])
            # what moves no reading by a millionth of its uncertainty plays no part here
            moves = (np.abs(np.nan_to_num(slopes[:self.first_help])) * u / ur[:, None]).max(axis=0) > 1e-6
        else:
            values, moves = np.array(_engine.answer(self.core, answers)), np.zeros(0, dtype=bool)
        self.amounts = [a for a, m in zip(amounts, moves) if m]
        self.all_amounts = amounts
        for r, v in zip(self.readings, values):
            if v != v:
                raise ValueError(f"line {r.line}: the batch has no {r.quantity} after step {r.step} ({steps[r.step - 1]['do']}), so the reading cannot be compared" if r.line else
                                 f"the batch has no {r.quantity} after step {r.step} ({steps[r.step - 1]['do']})")
        self.brewer = Brewer(self.core, self.amounts, answers, threads=1)
        kinds = [a.place["in"] for a in self.amounts]
        self.lowest = np.array([-math.inf if k in ("degC", "m", "degP") else 0.0 for k in kinds])
        self.highest = np.array([1.0 if k == "share" else math.inf for k in kinds])
        self.slopes = np.nan_to_num(slopes[:, moves]) if len(amounts) else np.zeros((len(answers), 0))
        self.planned = self._shown(values[:, None], np.zeros((0, 1)), None)[:, 0]

    def _helper(self, answers: list[tuple[int, str]], answer: tuple[int, str]) -> None:
        if answer not in self.help:
            self.help[answer] = len(answers)
            answers.append(answer)

    def _shown(self, figures: Floats, extras: Floats, e: Explanation | None) -> Floats:
        """What the instruments show, of the figures of the forecast."""
        h = figures.copy()
        for j, r in enumerate(self.readings):
            if r.quantity == "volume" and r.temperature is not None:
                import wortmath
                water = wortmath.water.density
                h[j] *= water(20.0) / water(r.temperature)
        if e is not None and e.shown is not None:
            h = e.shown(h, extras)
        return h[:len(self.readings)]

    def _predicted(self, x: Floats, e: Explanation) -> Floats:
        n = len(self.amounts)
        theta, extras = x[:n], x[n:]
        if e.amounts is not None:
            theta = e.amounts(theta.copy(), extras)
        # A step of the solver may leave what is possible: from there on straight lines, as from the file's values.
        inside = np.clip(theta, self.lowest[:, None], self.highest[:, None])
        figures = self.brewer(inside) + self.slopes @ (theta - inside) if n else np.tile(np.array(_engine.answer(self.core, self.answers))[:, None], (1, x.shape[1]))
        return self._shown(figures, extras, e)

    def solve(self, e: Explanation, *, unmeasured: Sequence[int] = (), left_out: Sequence[int] = ()) -> Reconciled:
        """Reconciles under an explanation. `unmeasured`: amounts whose file value shall not count; `left_out`: readings."""
        n, k = len(self.amounts), len(e.extras)
        kept = [j for j in range(len(self.readings)) if j not in set(left_out)]
        free = list(unmeasured)
        inputs = [a.input for a in self.amounts] + [Input(m, s) for m, s in e.extras] + [self.readings[j].input for j in kept]
        y = np.array([i.value for i in inputs])
        for i, value in e.replaced.items():
            y[i] = value
        v = np.asarray(_numbers.covariance_of(inputs, None))
        measured = [i for i in range(len(y)) if i not in free]
        u = np.array([i.uncertainty for i in inputs])[:n + k]
        step = np.where(u > 0, u, 1e-6 * np.maximum(1.0, np.abs(y[:n + k])))

        def linearised(x: Floats, z: Floats) -> tuple[Floats, Floats, Floats]:
            full = np.empty(len(y))
            full[measured], full[free] = x, z
            at = full[:n + k]
            sets = np.tile(at[:, None], (1, 2 * (n + k) + 1))
            for i in range(n + k):
                sets[i, 1 + 2 * i] += 0.1 * step[i]
                sets[i, 2 + 2 * i] -= 0.1 * step[i]
            p = self._predicted(sets, e)[kept]
            up, down, mid = p[:, 1::2], p[:, 2::2], p[:, :1]
            slopes = (up - down) / (0.2 * step)
            slopes = np.where(np.isnan(slopes), np.where(np.isnan(up), (mid - down), (up - mid)) / (0.1 * step), slopes)
            j = np.hstack([-slopes, np.eye(len(kept))])
            return full[n + k:] - p[:, 0], j[:, measured], j[:, free]

        start, within = y[measured], v[np.ix_(measured, measured)]
        try:
            return _result(_numbers.nonlinear(linearised, start, within, y[free], ERROR_RATE, 0.80))
        except ValueError:
            # A gross fault can lead where nothing can be brewed. Straight lines from the start still weigh it.
            f, by_x, by_z = linearised(start, y[free])
            if not all(np.isfinite(m).all() for m in (f, by_x, by_z)):
                raise
            return _result(_numbers.nonlinear(lambda x, z: (f + by_x @ (x - start) + by_z @ (z - y[free]), by_x, by_z), start, within, y[free], ERROR_RATE, 0.80))

    # ---- what may have happened -----------------------------------------------------------------------------------

    def explanations(self) -> list[Explanation]:
        out: list[Explanation] = []
        rs = self.readings
        place = {a.place["index"]: i for i, a in enumerate(self.amounts)}

        def on_reading(j: int, f: Callable[[Floats, Floats, Floats], Floats]) -> Callable[[Floats, Floats], Floats]:
            def shown(h: Floats, x: Floats) -> Floats:
                h[j] = f(h[j], x[0] if len(x) else np.zeros(h.shape[1]), h)
                return h
            return shown

        wort_gravities = [j for j, r in enumerate(rs) if r.quantity in ("gravity", "refractometer") and self.top_up and r.step >= self.top_up and (self.ferment is None or r.step < self.ferment)]
        if wort_gravities:
            def unmixed(h: Floats, x: Floats) -> Floats:
                for j in wort_gravities:
                    h[j] = _to_gravity(_to_plato(h[j]) * (1 - x[0])) if rs[j].quantity == "gravity" else h[j] * (1 - x[0])
                return h
            out.append(Explanation("top-up not mixed", "The top-up was not mixed in before the sample was taken", 3.0, [(0.0, 0.4)], shown=unmixed, moved=wort_gravities,
                                   size=lambda w: f"the sample held {abs(100 * w):.0f} % {'less' if w > 0 else 'more'} extract than the whole"))
            if self.top_up and (self.top_up - 1, "volume_20c_l") in self.help:
                before, after = self.help[(self.top_up - 1, "volume_20c_l")], self.help[(self.top_up, "volume_20c_l")]
                for j in (j for j in wort_gravities if rs[j].quantity == "gravity"):
                    out.append(Explanation("points over the kettle volume", f"The gravity points of {rs[j].name} were divided by the volume before the top-up, not by the whole", 0.5,
                                           shown=on_reading(j, lambda g, _, h: 1 + (g - 1) * h[after] / h[before]), moved=[j]))
        calibration = self.batch.instruments["hydrometer_calibration"]["value"]
        for j, r in enumerate(rs):
            if r.quantity == "gravity" and r.temperature is None:
                t = float(np.array(_engine.answer(self.core, [(r.step, "temperature_c")]))[0])
                mean, sd = (t, 3.0) if t <= 45 else (45.0, 15.0)
                if abs(mean - calibration) >= 5:
                    def warm(g: Floats, x: Floats, _: Floats) -> Floats:
                        return np.array([a - (_corrected(a, float(min(max(b, 0.0), 99.0)), calibration) - a) if math.isfinite(a) else a for a, b in zip(g, x)])
                    out.append(Explanation("sample temperature", f"The sample of {r.name} was not at the hydrometer's {calibration:.0f} degC, and not corrected for that", 2.0, [(mean, sd)],
                                           shown=on_reading(j, warm), moved=[j], size=lambda t: f"sample near {t:.0f} degC"))
            if r.quantity == "gravity" and self.ferment and r.step >= self.ferment:
                at, factor = self.help[(r.step, "refractometer_degbx")], self.batch.instruments["wort_factor"]["value"]
                out.append(Explanation("refractometer in beer", f"{r.name} is a refractometer reading of beer, not corrected for its alcohol", 2.0,
                                       shown=on_reading(j, lambda g, _, h, at=at, factor=factor: _to_gravity(h[at] / factor)), moved=[j]))  # type: ignore[misc]
            if r.quantity == "gravity" and r.unit == "degP":
                factor = self.batch.instruments["wort_factor"]["value"]
                out.append(Explanation("Brix for Plato", f"{r.name} is in degrees Brix of a refractometer, taken for degrees Plato", 1.0, shown=on_reading(j, lambda g, _, h, f=factor: _to_gravity(_to_plato(g) * f)), moved=[j]))  # type: ignore[misc]
            if r.quantity == "refractometer":
                factor = self.batch.instruments["wort_factor"]["value"]
                out.append(Explanation("Brix for Plato", f"{r.name} was divided by the wort factor already: degrees Plato taken for Brix", 1.0, shown=on_reading(j, lambda g, _, h, f=factor: g / f), moved=[j]))  # type: ignore[misc]
            if r.quantity == "pressure":
                barometer = float(self.batch.forecast().barometer_bar)
                out.append(Explanation("gauge for absolute", f"{r.name} is an absolute pressure, taken for gauge", 1.0, shown=on_reading(j, lambda p, _, h, b=barometer: p + b), moved=[j]))  # type: ignore[misc]
                out.append(Explanation("gauge for absolute", f"{r.name} had the pressure of the air taken off once too often", 0.5, shown=on_reading(j, lambda p, _, h, b=barometer: p - b), moved=[j]))  # type: ignore[misc]
        volumes = [j for j, r in enumerate(rs) if r.quantity == "volume"]
        marks = [i for i, a in enumerate(self.amounts) if a.place["in"] == "L" and a.place["key"] in ("volume", "to", "water") and a.place["do"] not in ("prime", "bottle")]
        for j in volumes:
            out.append(Explanation("wrong volume mark", f"The volume of {rs[j].name} was read at a wrong mark", 1.5 / max(1, len(volumes) + len(marks)), [(0.0, 0.15)],
                                   shown=on_reading(j, lambda v, x, _: v * (1 + x)), moved=[j], size=lambda s: f"it reads {abs(100 * s):.0f} % {'high' if s > 0 else 'low'}"))
        for i in marks:
            a = self.amounts[i]
            def other(theta: Floats, x: Floats, i: int = i) -> Floats:
                theta[i] *= 1 + x[0]
                return theta
            out.append(Explanation("wrong volume mark", f"Of {a.name}, another volume went in than the file says", 1.5 / max(1, len(volumes) + len(marks)), [(0.0, 0.15)], amounts=other,
                                   size=lambda s, a=a: f"about {a.place['value'] * (1 + s):.3g} L in place of {a.place['value']:.3g} L"))  # type: ignore[misc]
        us_imperial = 4.54609 / 3.785411784
        gallons = [("r", j) for j in volumes] + [("a", i) for i in marks]
        in_gallons = any(self.amounts[i].place["unit"] in ("gal", "qt", "pt", "impgal", "impqt", "imppt") if kind == "a" else rs[i].unit == "gal" for kind, i in gallons)
        for kind, i in gallons:
            name = rs[i].name if kind == "r" else self.amounts[i].name
            for factor, words in ((us_imperial, "imperial gallons, taken for US gallons"), (1 / us_imperial, "US gallons, taken for imperial gallons")):
                weight = (0.7 if in_gallons else 0.05) / len(gallons) / 2
                if kind == "r":
                    out.append(Explanation("gallons", f"The marks of {name} are {words}", weight, shown=on_reading(i, lambda v, _, h, f=factor: v / f), moved=[i]))  # type: ignore[misc]
                else:
                    def gallon(theta: Floats, x: Floats, i: int = i, f: float = factor) -> Floats:
                        theta[i] *= f
                        return theta
                    out.append(Explanation("gallons", f"{name} was measured in {words}", weight, amounts=gallon))
        by_item: dict[tuple[int, str, int], dict[str, int]] = {}
        for i, a in enumerate(self.amounts):
            by_item.setdefault((a.place["step"], a.place["name"], a.place["line"]), {})[a.place["key"]] = i
        items = [(self.batch.steps[s["number"] - 1], x) for s in self.batch.steps for x in (s.get("extracts") or [])]
        places = _engine.amounts(self.core)
        pairs = []
        for p, q in zip(places, places[1:]):
            if p["key"] == "mass" and q["key"] == "solids" and p["name"] == q["name"] and p["step"] == q["step"]:
                pairs.append((p, q))
        extracts = [(p, q) for p, q in pairs if any(x.get("name") == (p["name"] or None) and x.get("kind") in ("syrup", "dry") for _, x in items)]
        for p, q in extracts:
            kind = next(x["kind"] for _, x in items if x.get("name") == (p["name"] or None) and abs(x["mass"]["value"] - p["value"]) < 1e-9)
            mass, solids = place.get(p["index"]), place.get(q["index"])
            name = p["name"] or "the extract"
            if mass is not None and kind == "syrup":
                def left(theta: Floats, x: Floats, i: int = mass) -> Floats:
                    theta[i] *= 1 - x[0]
                    return theta
                out.append(Explanation("extract left in the can", f"Some of the {name} stayed in its can", 1.5 / len(extracts), [(0.06, 0.04)], amounts=left, size=lambda l: f"about {100 * l:.0f} % of it"))
            if solids is not None:
                swapped = 0.97 if kind == "syrup" else 0.80
                out.append(Explanation("syrup and dry extract", f"The {name} was {'dry extract, taken for syrup' if kind == 'syrup' else 'syrup, taken for dry extract'}", 0.7 / len(extracts), replaced={solids: swapped}))
        for i, a in enumerate(self.amounts):
            if a.place["key"] == "evaporation":
                def rate(theta: Floats, x: Floats, i: int = i) -> Floats:
                    theta[i] = np.maximum(0.0, theta[i] * (1 + x[0]))
                    return theta
                out.append(Explanation("evaporation", "The boil evaporated at another rate than the file says", 2.0, [(0.0, 0.5)], amounts=rate,
                                       size=lambda f, a=a: f"{a.place['value'] * (1 + f):.3g} in place of {a.place['value']:.3g} {a.place['in']}"))  # type: ignore[misc]
        weighed = [i for i, a in enumerate(self.amounts) if a.place["key"] == "mass" and a.place["do"] in ("mash", "steep", "dissolve", "boil", "prime")]
        for i in weighed:
            def wrong(theta: Floats, x: Floats, i: int = i) -> Floats:
                theta[i] = np.maximum(0.0, theta[i] * (1 + x[0]))
                return theta
            out.append(Explanation("an amount mistaken", f"Of {self.amounts[i].name}, another amount went in than the file says", 0.3 / len(weighed), [(0.0, 0.10)], amounts=wrong,
                                   size=lambda f: f"{abs(100 * f):.0f} % {'more' if f > 0 else 'less'}"))
        tools: dict[str, list[int]] = {}
        for j, r in enumerate(rs):
            if r.instrument and r.quantity in ("gravity", "refractometer", "temperature"):
                tools.setdefault(r.instrument, []).append(j)
        for tool, js in tools.items():
            if len(js) < 2:
                continue
            def offset(h: Floats, x: Floats, js: list[int] = js) -> Floats:
                for j in js:
                    h[j] = h[j] + x[0]
                return h
            sd = {"gravity": 0.004, "refractometer": 0.8, "temperature": 3.0}[rs[js[0]].quantity]
            out.append(Explanation("instrument offset", f"The {tool} is off by the same in all its readings", 1.0, [(0.0, sd)], shown=offset, moved=js,
                                   size=lambda o, q=rs[js[0]].quantity: f"it reads {abs(o):.2g} {_UNITS[q]} {'high' if o > 0 else 'low'}"))  # type: ignore[misc]
        for j, r in enumerate(rs):
            share, absolute = _GROSS[r.quantity]
            out.append(Explanation("reading wrong", f"The reading of {r.name} is wrong for another reason", 0.5 / len(rs), [(0.0, max(share * abs(r.value), absolute))], shown=on_reading(j, lambda h, x, _: h + x), moved=[j],
                                   size=lambda b, r=r: f"it reads {two_digits(abs(b), abs(b) / 10)[0]} {_UNITS[r.quantity]} {'high' if b > 0 else 'low'}"))  # type: ignore[misc]
        return out


NOTHING = Explanation("nothing", "Nothing is wrong; the departures are chance", 40.0)


def _plain(r: Reading, value: float) -> str:
    return f"{value:.4f}" if r.quantity == "gravity" else f"{value:.4g}"


def contradictions(readings: Sequence[Reading], wort_factor: float = 1.04, before: int | None = None) -> list[dict[str, Any]]:
    """Pairs of readings of one thing that contradict each other; no batch is needed. Of unfermented wort a hydrometer
    and a refractometer read the same thing: then step numbers below `before` count as unfermented."""
    found = []
    for j, a in enumerate(readings):
        for b in readings[j + 1:]:
            if a.step != b.step:
                continue
            if a.quantity == b.quantity:
                d, v = a.value - b.value, np.asarray(_numbers.covariance_of([a.input, b.input], None))
                unit = _UNITS[a.quantity]
            elif {a.quantity, b.quantity} == {"gravity", "refractometer"} and (before is None or a.step < before):
                both = []
                for r in (a, b):
                    if r.quantity == "gravity":
                        p = _to_plato(np.array([r.value - r.input.uncertainty, r.value, r.value + r.input.uncertainty]))
                        both.append((float(p[1]), float(p[2] - p[0]) / 2))
                    else:  # the wort factor itself is good to about 0.02 (common practice, no source)
                        both.append((r.value / wort_factor, math.hypot(r.input.uncertainty, 0.02 * r.value / wort_factor) / wort_factor))
                d, v, unit = both[0][0] - both[1][0], np.diag([both[0][1] ** 2, both[1][1] ** 2]), "degP"
            else:
                continue
            u = math.sqrt(max(0.0, v[0, 0] + v[1, 1] - 2 * v[0, 1]))
            z = d / u if u > 0 else 0.0
            if abs(z) > 1.959964:
                found.append({"readings": [a.name, b.name], "difference": d, "uncertainty": u, "unit": unit, "z": z})
    return found


def diagnose(day: Day) -> dict[str, Any]:
    """Reconciles a day and says what does not fit and what probably happened."""
    plain = day.solve(NOTHING)
    n = len(day.amounts)
    alarm = bool(plain.dof > 0 and plain.probability < ERROR_RATE)
    study: dict[str, Any] = {"format": "wortmath reconcile 1", "name": day.batch.name, "objective": plain.objective, "dof": plain.dof, "probability": _none(plain.probability), "critical_z": plain.critical_z,
                             "fits": not alarm, "uncertainties_too_large": bool(plain.dof >= 3 and plain.probability > 0.99)}
    study["readings"] = []
    for j, r in enumerate(day.readings):
        i = n + j
        study["readings"].append({"name": r.name, "step": r.step, "quantity": r.quantity, "unit": _UNITS[r.quantity], "value": r.value, "uncertainty": r.input.uncertainty, "planned": float(day.planned[j]),
                                  "reconciled": float(plain.values[i]), "reconciled_uncertainty": float(plain.uncertainties[i]), "z": float(plain.z[i]), "bias": _none(float(plain.bias[i])),
                                  "detectable_bias": _none(float(plain.detectable_bias[i]))})
    study["amounts"] = [{"name": a.name, "step": a.place["step"] or None, "key": a.place["key"], "unit": a.place["in"], "value": a.place["value"], "uncertainty": a.input.uncertainty,
                         "reconciled": float(plain.values[i]), "reconciled_uncertainty": float(plain.uncertainties[i]), "z": float(plain.z[i]), "assumed": a.assumed} for i, a in enumerate(day.amounts)]
    study["contradictions"] = contradictions(day.readings, day.batch.instruments["wort_factor"]["value"], day.ferment)
    study["outliers"], study["diagnosis"] = [], []
    if alarm:
        reading_z = np.abs(plain.z[n:])
        for i in np.argsort(-reading_z):
            if reading_z[i] > plain.critical_z and reading_z[i] >= 0.75 * reading_z.max():
                study["outliers"].append({"name": day.readings[i].name, "z": float(plain.z[n + i]), "bias": _none(float(plain.bias[n + i])), "unit": _UNITS[day.readings[i].quantity]})
        study["diagnosis"] = _causes(day, plain)
    return study


def _none(x: float) -> float | None:
    return x if math.isfinite(x) else None


def _causes(day: Day, plain: Reconciled) -> list[dict[str, Any]]:
    found: list[tuple[float, Explanation, Reconciled]] = [(math.log(NOTHING.weight) - 0.5 * (plain.objective + plain.log_determinant), NOTHING, plain)]
    for e in day.explanations():
        try:
            r = day.solve(e)
        except ValueError:
            continue  # the readings cannot be brewed like this at all
        found.append((math.log(e.weight) - 0.5 * (r.objective + r.log_determinant), e, r))
    top = max(f[0] for f in found)
    total = sum(math.exp(f[0] - top) for f in found)
    causes: dict[str, dict[str, Any]] = {}
    for score, e, r in sorted(found, key=lambda f: -f[0]):
        p = math.exp(score - top) / total
        size = None
        if e.extras and e.size is not None:
            size = e.size(float(r.values[len(day.amounts)]))
        if e.cause not in causes:
            causes[e.cause] = {"cause": e.cause, "words": e.words, "size": size, "probability": p, "fits": bool(not r.dof or not r.probability < ERROR_RATE), "readings": [day.readings[j].name for j in e.moved], "others": []}
        else:
            causes[e.cause]["probability"] += p
            if p > 0.02:
                causes[e.cause]["others"].append({"words": e.words, "size": size, "probability": p})
    ranked = sorted(causes.values(), key=lambda c: -c["probability"])
    return [c for c in ranked if c["probability"] >= 0.02]


# ------------------------------------------------------------------------------------------------- house constants

_HOUSE = {"evaporation": "boil-off", "leave": "left behind", "loss": "lost in packaging", "dead_space": "dead space", "conversion": "efficiency of the mash", "efficiency": "efficiency", "absorption": "absorption",
          "attenuation": "attenuation"}


def house_constants(day: Day) -> list[dict[str, Any]]:
    """Boil-off, efficiency, losses: each from the readings alone, its file value not counted. Not those that the
    readings do not determine, or no better than to half of their value."""
    found = []
    for i, a in enumerate(day.amounts):
        key = a.place["key"]
        if key not in _HOUSE or (key == "efficiency" and a.place["do"] not in ("steep",)):
            continue
        try:
            r = day.solve(NOTHING, unmeasured=[i])
        except ValueError:
            continue
        value, u = float(r.unmeasured[0]), float(r.unmeasured_uncertainties[0])
        if 0 < u < 0.5 * abs(value) and value > 0:
            found.append({"constant": _HOUSE[key], "key": key, "do": a.place["do"], "name": a.name, "unit": a.place["in"], "file": a.place["value"], "value": value, "uncertainty": u,
                          "fits": bool(r.dof == 0 or r.probability >= ERROR_RATE)})
    for j, read in enumerate(day.readings):
        if read.quantity == "bitterness" and day.planned[j] > 0:
            e = Explanation("utilisation", "", 1.0)
            without = day.solve(e, left_out=[j]) if len(day.readings) > 1 else None
            theta = np.array([a.input.value for a in day.amounts]) if without is None else without.values[:len(day.amounts)]
            shown = float(day._predicted(theta[:, None], NOTHING)[j, 0])
            _, slopes = Brewer(day.core, day.amounts, [day.answers[j]], threads=1).sensitivities()
            v = np.asarray(_numbers.covariance_of([a.input for a in day.amounts], None)) if without is None else without.covariance[:len(day.amounts), :len(day.amounts)]
            u_shown = math.sqrt(max(0.0, float(slopes[0] @ v @ slopes[0])))
            scale = read.value / shown
            found.append({"constant": "utilisation scale", "key": "utilisation", "do": "boil", "name": f"utilisation scale ({read.name})", "unit": "times the model", "file": 1.0, "value": scale,
                          "uncertainty": scale * math.hypot(read.input.uncertainty / read.value, u_shown / shown), "fits": True})
    return found


def pooled(many: Sequence[list[dict[str, Any]]]) -> list[dict[str, Any]]:
    """House constants of several batches: means with inverse variances; where they disagree by more than their
    uncertainties, u is multiplied by the ratio (Birge)."""
    groups: dict[tuple[str, str, str], list[dict[str, Any]]] = {}
    for constants in many:
        for c in constants:
            if c["fits"]:
                groups.setdefault((c["constant"], c["do"], c["unit"]), []).append(c)
    out = []
    for (constant, do, unit), cs in groups.items():
        mean, u, ratio = _numbers.parts.weighted_mean([c["value"] for c in cs], [c["uncertainty"] for c in cs])
        spread_out = math.isfinite(ratio) and ratio > 1.5
        out.append({"constant": constant, "do": do, "unit": unit, "value": mean, "uncertainty": u * (ratio if spread_out else 1.0), "batches": len(cs), "birge_ratio": _none(ratio), "disagree": spread_out})
    return out


def reconcile(batch: Batch, *, defaults: bool = True) -> dict[str, Any]:
    """The whole answer for a batch with its [[reading]], as plain data."""
    day = Day(batch, defaults=defaults)
    study = diagnose(day)
    # A fault would sit in them; first that has to be found.
    study["house_constants"] = house_constants(day) if study["fits"] else []
    return study


# ---------------------------------------------------------------------------------------------------------- showing

def _sentences(study: dict[str, Any]) -> list[str]:
    out = []
    p = study["probability"]
    if p is None:
        out.append("There are no readings to spare: nothing can be checked against anything.")
    elif study["fits"]:
        out.append(f"The readings fit the batch and each other (probability {p:.2g} of departures like these or larger by chance).")
        if study["uncertainties_too_large"]:
            out.append("They fit better than their uncertainties allow: those are stated too large.")
    else:
        out.append(f"Something does not fit: departures like these would come by chance with a probability of {p:.1g}.")
        for o in study["outliers"][:1]:
            if o["bias"] is not None:
                b = abs(o["bias"])
                out.append(f"The reading that fits least is {o['name']}: it reads {two_digits(b, b / 10)[0]} {o['unit']} {'high' if o['bias'] > 0 else 'low'}, were it the only fault.")
        if len(study["outliers"]) > 1:
            out.append("Hard to tell from it: " + ", ".join(o["name"] for o in study["outliers"][1:]) + ".")
    for c in study["contradictions"]:
        out.append(f"{c['readings'][0]} and {c['readings'][1]} contradict each other: they differ by {two_digits(abs(c['difference']), c['uncertainty'])[0]} {c['unit']}, with u {c['uncertainty']:.2g}.")
    return out


_CAUTION = "A reconciled value is an estimate. Where gravity decides whether bottles may be closed, the raw reading and the more cautious of the two count."


def text(study: dict[str, Any]) -> str:
    import textwrap
    rows = [study["name"], "=" * min(80, len(study["name"])), ""]
    for s in _sentences(study):
        rows += textwrap.wrap(s, 78)
    if study["diagnosis"]:
        rows += ["", "What probably happened"]
        for c in study["diagnosis"]:
            rows += textwrap.wrap(f"{100 * c['probability']:3.0f} %  {c['words']}{'; ' + c['size'] if c['size'] else ''}.", 78, initial_indent="  ", subsequent_indent=" " * 9)
            for o in c["others"][:3]:
                rows += textwrap.wrap(f"or: {o['words']}{'; ' + o['size'] if o['size'] else ''} ({100 * o['probability']:.0f} %).", 78, initial_indent=" " * 9, subsequent_indent=" " * 13)
        rows += textwrap.wrap("The percentages weigh these causes against each other; a cause that is not in the list has none.", 78, initial_indent="  ", subsequent_indent="  ")
    rows += ["", f"{'reading':27}{'read':>9} {'u':>7} {'planned':>9} {'most probable':>14}     z"]
    for r in study["readings"]:
        v, u = two_digits(r["value"], r["uncertainty"])
        planned = two_digits(r["planned"], r["uncertainty"])[0]
        m, mu = two_digits(r["reconciled"], r["reconciled_uncertainty"])
        z = f"{r['z']:5.1f}" if r["z"] != 0 else "    -"
        rows.append(f"{r['name'] + ', ' + r['unit']:27.27}{v:>9} {u:>7} {planned:>9} {m + ' u ' + mu:>15} {z}{' *' if abs(r['z']) > study['critical_z'] else ''}")
    rows.append(f"z: departure from what the others imply, in its own uncertainty; beyond {study['critical_z']:.1f}")
    rows.append("it is marked *. A dash: nothing checks that reading.")
    moved = [a for a in study["amounts"] if abs(a["reconciled"] - a["value"]) > 0.3 * a["uncertainty"] and a["uncertainty"] > 0]
    if moved and study["fits"]:
        rows += ["", "Amounts, as the readings make them most probable"]
        for a in moved:
            v, _ = two_digits(a["value"], a["uncertainty"])
            m, mu = two_digits(a["reconciled"], a["reconciled_uncertainty"])
            rows.append(f"  {a['name']:40.40} {v:>8} -> {m} u {mu} {a['unit']}")
    if study.get("house_constants"):
        rows += ["", "Your own constants, from these readings alone"]
        for c in study["house_constants"]:
            m, mu = two_digits(c["value"], c["uncertainty"])
            rows.append(f"  {c['name']:40.40} {m} u {mu} {c['unit']} (file: {c['file']:g}){'' if c['fits'] else ' ?'}")
    rows += [""] + textwrap.wrap(_CAUTION, 78)
    return "\n".join(row.rstrip() for row in rows) + "\n"


def page(study: dict[str, Any]) -> str:
    import html
    e = html.escape
    out = [f"<h1>{e(study['name'])}</h1>"] + [f"<p{'' if study['fits'] else ' class=caution'}>{e(s)}</p>" for s in _sentences(study)]
    if study["diagnosis"]:
        out.append("<h2>What probably happened</h2><table>")
        for c in study["diagnosis"]:
            more = "".join(f"<br><span class=muted>or: {e(o['words'])}{'; ' + e(o['size']) if o['size'] else ''} ({100 * o['probability']:.0f} %)</span>" for o in c["others"][:3])
            out.append(f"<tr><td class=n>{100 * c['probability']:.0f} %</td><td style='width:25%'><span class=bar style='width:{100 * c['probability']:.0f}%'></span></td><td>{e(c['words'])}{'; ' + e(c['size']) if c['size'] else ''}{more}</td></tr>")
        out.append("</table><p class=muted>The percentages weigh these causes against each other; a cause that is not in the list has none.</p>")
    out.append("<h2>The readings</h2><table><tr><th>reading</th><th>read</th><th>u</th><th>planned</th><th>most probable</th><th>z</th></tr>")
    for r in study["readings"]:
        v, u = two_digits(r["value"], r["uncertainty"])
        m, mu = two_digits(r["reconciled"], r["reconciled_uncertainty"])
        out.append(f"<tr><td>{e(r['name'])}, {e(r['unit'])}</td><td class=n>{v}</td><td class=n>{u}</td><td class=n>{two_digits(r['planned'], r['uncertainty'])[0]}</td><td class=n>{m} u {mu}</td><td class=n>{r['z']:.1f}{' *' if abs(r['z']) > study['critical_z'] else ''}</td></tr>")
    out.append(f"</table><p class=muted>z: departure from what the others imply, in its own uncertainty; beyond {study['critical_z']:.1f} it is marked *; 0: nothing checks that reading.</p>")
    if study.get("house_constants"):
        out.append("<h2>Your own constants</h2><table>")
        for c in study["house_constants"]:
            m, mu = two_digits(c["value"], c["uncertainty"])
            out.append(f"<tr><td>{e(c['name'])}</td><td class=n>{m} u {mu}</td><td>{e(c['unit'])}</td><td class=muted>file: {c['file']:g}</td></tr>")
        out.append("</table>")
    out.append(f"<p class=caution>{e(_CAUTION)}</p>\n")
    return page_of(f"{study['name']}: reconciled", "\n".join(out))


# ------------------------------------------------------------------------------------------------------ command line

def configure(parser: Any) -> None:
    parser.add_argument("file", metavar="FILE", nargs="?", help="a batch file with [[reading]] in it, or a folder of such files for the house constants")
    parser.add_argument("--reading", action="append", default=[], metavar="\"WHAT VALUE\"", help="without FILE: two or more readings of one wort, such as --reading \"gravity 1.050 SG\" --reading \"refractometer 11.2 degBx\"")
    parser.add_argument("--no-usual", action="store_true", help="only what the file calls uncertain; nothing is taken for granted")
    output_options(parser)


def _folder(path: Path, defaults: bool) -> dict[str, Any]:
    from . import batch
    files = sorted(path.glob("*.toml"))
    if not files:
        raise ValueError(f"{path} holds no batch file (*.toml)")
    batches, skipped = [], []
    for f in files:
        try:
            batches.append((f.name, reconcile(batch.read(f), defaults=defaults)))
        except ValueError as e:
            skipped.append({"file": f.name, "why": str(e)})
    return {"format": "wortmath reconcile 1", "folder": path.name, "batches": [{"file": n, "name": s["name"], "fits": s["fits"], "probability": s["probability"]} for n, s in batches], "skipped": skipped,
            "house_constants": pooled([s["house_constants"] for _, s in batches if s["fits"]])}


def _folder_text(study: dict[str, Any]) -> str:
    rows = [f"{study['folder']}: {len(study['batches'])} batches", ""]
    for b in study["batches"]:
        rows.append(f"  {b['file']:30.30} {b['name']:28.28} {'fits' if b['fits'] else 'something does not fit; not counted'}")
    rows += [f"  {s['file']:30.30} left out: {s['why']}"[:80] for s in study["skipped"]]
    rows += ["", "Your own constants"]
    for c in study["house_constants"]:
        m, mu = two_digits(c["value"], c["uncertainty"])
        rows.append(f"  {c['constant'] + ' (' + c['do'] + ')':34.34} {m} u {mu} {c['unit']}, {c['batches']} batches{'; they disagree, u raised' if c['disagree'] else ''}")
    if not study["house_constants"]:
        rows.append("  none could be determined from these readings")
    return "\n".join(rows) + "\n"


def _folder_page(study: dict[str, Any]) -> str:
    import html
    return page_of(f"{study['folder']}: reconciled", f"<pre>{html.escape(_folder_text(study))}</pre>\n")


_NO_BATCH = '[batch]\nname = "readings"\n[[step]]\ndo = "note"\ntext = "readings"\n'


def compare(readings: Sequence[str]) -> dict[str, Any]:
    """Readings of one unfermented wort against each other, each as "gravity 1.050 SG"; no batch is needed."""
    from . import batch
    if len(readings) < 2:
        raise ValueError("expected two readings or more, each as a quantity and a value, such as \"gravity 1.050 SG\"")
    parts = [r.strip().partition(" ") for r in readings]
    quoted = [(q, v.strip().replace("\\", "").replace('"', "")) for q, _, v in parts]
    body = _NO_BATCH + "".join(f'[[reading]]\nstep = 1\nquantity = "{q}"\nvalue = "{v}"\nname = "{q} {v}"\n' for q, v in quoted)
    nothing = batch.read_text(body)
    try:
        raw = _engine.readings(body, nothing._core)
    except batch.BatchError as e:
        raise ValueError(str(e).partition("reading: ")[2] or str(e)) from None
    found = readings_of(nothing, _Tools(), raw)
    return {"format": "wortmath reconcile 1", "readings": [{"name": r.called, "quantity": r.quantity, "value": r.value, "unit": _UNITS[r.quantity], "uncertainty": r.input.uncertainty} for r in found],
            "contradictions": contradictions(found)}


def _compare_text(study: dict[str, Any]) -> str:
    import textwrap
    if not study["contradictions"]:
        return "No two of these readings contradict each other, by the usual instruments.\n"
    rows = []
    for c in study["contradictions"]:
        a, b = (n.partition(" (step")[0] for n in c["readings"])
        rows += textwrap.wrap(f"{a} and {b} contradict each other: they differ by {two_digits(abs(c['difference']), c['uncertainty'])[0]} {c['unit']}, {abs(c['z']):.1f} times the uncertainty of the difference ({c['uncertainty']:.2g}).", 78)
    return "\n".join(rows) + "\n"


def _compare_page(study: dict[str, Any]) -> str:
    import html
    return page_of("Readings compared", f"<pre>{html.escape(_compare_text(study))}</pre>\n")


def main(options: Any) -> tuple[str, list[tuple[str, str]]]:
    """What `wortmath reconcile` prints and saves. ValueError and OSError carry sentences."""
    from . import batch
    if options.reading and options.file:
        raise ValueError("--reading is for readings without a batch; those of a batch stand in its file as [[reading]]")
    if options.reading:
        return answer_in(compare(options.reading), options, _compare_text, _compare_page)
    if not options.file:
        raise ValueError("a batch file is missing, as in: wortmath reconcile my.toml; or two readings: --reading \"gravity 1.050 SG\" --reading \"refractometer 11.2 degBx\"")
    path = Path(options.file)
    if path.is_dir():
        return answer_in(_folder(path, not options.no_usual), options, _folder_text, _folder_page)
    return answer_in(reconcile(batch.read(path), defaults=not options.no_usual), options, text, page)
