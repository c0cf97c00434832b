"""Synthetic brewing days with known truth: do intervals hold what they should, how often is there a false alarm, is a
gross error found as often as theory says, and is the right cause named?

    python tests/study/coverage.py --days 1000 --faults 100

writes docs/coverage.md. Everything is drawn from fixed seeds. True amounts and errors are normal with the standard
uncertainties that the study is told; the batch is the bundled invented one.
"""

from __future__ import annotations

import argparse
import math
import time
from pathlib import Path
from typing import Any

import numpy as np

import wortmath as wm
from wortmath import _reconcile, _spread, reconcile
from wortmath.uncertainty import Input

FLAT = _spread._numbers
READ = ((6, "volume"), (5, "gravity"), (8, "volume"), (8, "gravity"), (8, "refractometer"), (10, "gravity"), (15, "pressure"))


def band(rate: float, n: int) -> tuple[float, float]:
    """The binomial 99.9 % band of a rate, by the normal approximation with a half-count."""
    half = 3.290527 * math.sqrt(rate * (1 - rate) / n) + 0.5 / n
    return max(0.0, rate - half), min(1.0, rate + half)


class World:
    """The batch, its instruments and the readings as planned."""

    def __init__(self) -> None:
        self.batch = wm.batch.read(wm.batch.demo_path())
        tools = _spread._Tools()
        raw = []
        state = {s["number"]: s for s in self.batch.forecast().steps}
        for step, quantity in READ:
            value = state[step]["reported"]["pressure_bar"] if quantity == "pressure" else state[step]["after"][_reconcile._FIGURES[quantity]]
            raw.append({"step": step, "quantity": quantity, "value": value})
        self.tools = tools
        self.planned = _reconcile.readings_of(self.batch, tools, raw)
        self.day = _reconcile.Day(self.batch, self.planned, tools=tools)
        # truths are normal: what is stated as a limit would be held too often by an interval made for a normal one
        for a in self.day.amounts:
            if a.input._instrument is None:
                a.input = Input(a.input.value, a.input.uncertainty, name=a.input.name)
        self.day.brewer.inputs = [a.input for a in self.day.amounts]
        self.n = len(self.day.amounts)
        self.inputs = [a.input for a in self.day.amounts] + [r.input for r in self.planned]

    def draw(self, seed: int, fault: Any = None) -> tuple[np.ndarray, list[float]]:  # type: ignore[type-arg]
        """True amounts, and what was read."""
        x = FLAT.draw(self.inputs, None, seed, 0, 1)[:, 0]
        # what was weighed or read is the true amount plus the error, so the truth is the file's value less the error
        theta = 2 * np.array([a.input.value for a in self.day.amounts]) - x[:self.n]
        errors = x[self.n:] - np.array([r.input.value for r in self.planned])
        rng = np.random.default_rng(seed)
        if fault is None:
            shown = self.day._predicted(theta[:, None], _reconcile.NOTHING)[:, 0]
            return theta, list(shown + errors)
        theta, shown = fault(self, rng, theta)
        return theta, list(shown + errors)

    def read(self, values: list[float], gallons: bool = False) -> _reconcile.Day:
        """The day with these readings; the work on the batch itself is done once."""
        readings = []
        for r, v in zip(self.planned, values):
            make, tool = _reconcile._usual_tool(r.quantity, v, "fermenter" if r.step >= 7 else "kettle", self.tools)
            readings.append(_reconcile.Reading(r.step, r.quantity, v, make(v, r.name), "", "", 0, "gal" if gallons and r.quantity == "volume" else "", None, tool))
        day: _reconcile.Day = object.__new__(_reconcile.Day)
        day.__dict__.update(self.day.__dict__)
        day.readings = readings
        return day

    def shown(self, theta: Any) -> Any:
        return self.day._predicted(theta[:, None], _reconcile.NOTHING)[:, 0]

    def figure(self, theta: Any, step: int, key: str) -> float:
        return float(_spread._engine.brew_many(self.day.core, self.day.brewer.indices, [(step, key)], theta[:, None], 1)[0, 0])

    def amount(self, key: str, do: str, name: str = "") -> int:
        return next(i for i, a in enumerate(self.day.amounts) if a.place["key"] == key and a.place["do"] == do and name in a.place["name"])


def reading(quantity: str, step: int) -> int:
    return READ.index((step, quantity))


def _size(rng: Any, low: float, high: float) -> float:
    return float(rng.uniform(low, high) * rng.choice([-1, 1]))


def unmixed(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    s = _size(rng, 0.06, 0.35)
    y[reading("gravity", 8)] = _reconcile._to_gravity(_reconcile._to_plato(y[reading("gravity", 8)]) * (1 - s))
    y[reading("refractometer", 8)] *= 1 - s
    return theta, y


def warm(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    # drawn from the boil and not cooled all the way
    t = float(rng.uniform(30, 50))
    j = reading("gravity", 5)
    y[j] -= _reconcile._corrected(y[j], t, 20.0) - y[j]
    return theta, y


def mark(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    y[reading("volume", int(rng.choice([6, 8])))] *= 1 + _size(rng, 0.10, 0.30)
    return theta, y


def can(w: World, rng: Any, theta: Any) -> Any:
    theta = theta.copy()
    theta[w.amount("mass", "dissolve", "syrup")] *= 1 - rng.uniform(0.05, 0.12)
    return theta, w.shown(theta)


def evaporation(w: World, rng: Any, theta: Any) -> Any:
    theta = theta.copy()
    theta[w.amount("evaporation", "boil")] *= 1 + _size(rng, 0.35, 0.8)
    return theta, w.shown(theta)


def dry(w: World, rng: Any, theta: Any) -> Any:
    theta = theta.copy()
    theta[w.amount("solids", "dissolve", "syrup")] += 0.17
    return theta, w.shown(theta)


def gallons(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    y[reading("volume", int(rng.choice([6, 8])))] /= 4.54609 / 3.785411784
    return theta, y


def points(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    j = reading("gravity", 8)
    y[j] = 1 + (y[j] - 1) * w.figure(theta, 8, "volume_20c_l") / w.figure(theta, 7, "volume_20c_l")
    return theta, y


def beer(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    y[reading("gravity", 10)] = float(_reconcile._to_gravity(np.array([w.figure(theta, 10, "refractometer_degbx") / 1.04]))[0])
    return theta, y


def offset(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    o = _size(rng, 0.004, 0.008)
    for j in (reading("gravity", 5), reading("gravity", 8), reading("gravity", 10)):
        y[j] += o
    return theta, y


def brix(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    y[reading("refractometer", 8)] /= 1.04
    return theta, y


def gauge(w: World, rng: Any, theta: Any) -> Any:
    y = w.shown(theta)
    y[reading("pressure", 15)] += w.batch.forecast().barometer_bar
    return theta, y


FAULTS = {"top-up not mixed": unmixed, "sample temperature": warm, "wrong volume mark": mark, "extract left in the can": can, "evaporation": evaporation, "syrup and dry extract": dry, "gallons": gallons,
          "points over the kettle volume": points, "refractometer in beer": beer, "instrument offset": offset, "Brix for Plato": brix, "gauge for absolute": gauge}


def partial_boil(n: int) -> dict[str, Any]:
    """The worked example of the chapter, invented: false alarms, coverage, and faults as large as can be detected."""
    truth = np.array([2767.0, 12300.0, 22.496, 8000.0, 20300.0, 0.0])
    truth[0] = truth[1] * truth[2] / 100
    truth[4] = truth[1] + truth[3]
    truth[5] = 100 * truth[0] / truth[4]
    u = np.array([30.0, 150.0, 0.15, 30.0, 200.0, 0.10])
    detectable = reconcile.partial_boil.least_squares(truth, u).detectable_bias
    rng = np.random.default_rng(1)
    held, alarms, found = np.zeros(6), 0, np.zeros(6)
    for _ in range(n):
        noise = rng.normal(0, u)
        r = reconcile.partial_boil.least_squares(truth + noise, u)
        held += np.abs(r.values - truth) <= 1.959964 * r.uncertainties
        alarms += r.probability < 0.05
        for i in range(6):
            y = truth + noise
            y[i] += detectable[i]
            found[i] += abs(reconcile.partial_boil.least_squares(y, u).z[i]) > 1.959964
    return {"n": n, "held": held / n, "alarms": alarms / n, "found": found / n}


def days(w: World, n: int) -> dict[str, Any]:
    held = np.zeros(w.n)
    alarms, forecast_held = 0, 0
    constants: dict[str, list[tuple[float, float]]] = {}
    which = {"boil-off": w.amount("evaporation", "boil"), "attenuation": w.amount("attenuation", "ferment")}
    core_answers = [(0, "original_gravity"), (0, "final_gravity"), (0, "bitterness_bu"), (0, "alcohol_by_volume")]
    b = _spread.Brewer(w.day.core, w.day.amounts, core_answers, 1)
    values, slopes = b.sensitivities()
    v = np.asarray(FLAT.covariance_of([a.input for a in w.day.amounts], None))
    wide = 1.959964 * np.sqrt(np.einsum("ij,jk,ik->i", slopes, v, slopes))
    results = np.zeros(len(core_answers))
    for seed in range(n):
        theta, y = w.draw(seed)
        results += np.abs(b(theta[:, None])[:, 0] - values) <= wide
        day = w.read(y)
        r = day.solve(_reconcile.NOTHING)
        held += np.abs(r.values[:w.n] - theta) <= 1.959964 * r.uncertainties[:w.n]
        alarms += r.probability < 0.05
        for name, i in which.items():
            c = day.solve(_reconcile.NOTHING, unmeasured=[i])
            constants.setdefault(name, []).append((float(c.unmeasured[0] - theta[i]), float(c.unmeasured_uncertainties[0])))
    return {"n": n, "held": held / n, "alarms": alarms / n, "results": dict(zip([k for _, k in core_answers], results / n)), "constants": constants}


def faults(w: World, n: int) -> dict[str, dict[str, float]]:
    out = {}
    for name, fault in FAULTS.items():
        seen = first = second = 0
        others: dict[str, int] = {}
        for seed in range(10_000, 10_000 + n):
            _, y = w.draw(seed, fault)
            day = w.read(y, gallons=name == "gallons")
            plain = day.solve(_reconcile.NOTHING)
            if not plain.probability < 0.05:
                continue
            seen += 1
            ranked = [c["cause"] for c in _reconcile._causes(day, plain) if c["cause"] != "nothing"]
            first += ranked[:1] == [name]
            second += name in ranked[:2]
            if ranked[:1] != [name] and ranked:
                others[ranked[0]] = others.get(ranked[0], 0) + 1
        out[name] = {"n": n, "seen": seen, "first": first, "second": second, "other": max(others, key=lambda k: others[k]) if others else ""}  # type: ignore[dict-item]
    return out


def report(n_days: int, n_faults: int, n_boils: int) -> tuple[str, dict[str, Any]]:
    start = time.monotonic()
    w = World()
    boil, many, found = partial_boil(n_boils), days(w, n_days), faults(w, n_faults)
    lo, hi = band(0.95, n_days)
    flo, fhi = band(0.05, n_days)
    rows = ["# Coverage study", "", f"Generated by `python tests/study/coverage.py --days {n_days} --faults {n_faults} --boils {n_boils}` (the defaults are 1000, 100, 2000); the days are synthetic, the batch is the bundled invented one, and its true", "amounts and errors are drawn from fixed seeds, normal with the standard uncertainties of the study.", ""]
    rows += ["## A partial boil of six readings", "", f"{boil['n']} days. Theory: 95 % of the intervals hold the truth, 5 % false alarms, and a fault as large as `detectable_bias` is found", "in 80 % of the days by its own test at 5 %.", "",
             "| reading | interval holds the truth | fault found |", "|---|---|---|"]
    for name, h, f in zip(("extract", "kettle wort", "its extract", "water", "fermenter", "its extract"), boil["held"], boil["found"]):
        rows.append(f"| {name} | {100 * h:.1f} % | {100 * f:.1f} % |")
    rows += ["", f"False alarms of the global test: {100 * boil['alarms']:.1f} %.", ""]
    inside = int(np.sum((many["held"] >= lo) & (many["held"] <= hi)))
    rows += ["## Days of the batch", "", f"{many['n']} days with {len(READ)} readings and {len(many['held'])} uncertain amounts. The 99.9 % binomial band around 95 % is {100 * lo:.1f} to {100 * hi:.1f} %.", "",
             f"- Reconciled amounts: {inside} of {len(many['held'])} intervals lie in the band; lowest {100 * many['held'].min():.1f} %, highest {100 * many['held'].max():.1f} %.",
             f"- False alarms: {100 * many['alarms']:.1f} % (band around 5 %: {100 * flo:.1f} to {100 * fhi:.1f} %)."]
    for k, share in many["results"].items():
        rows.append(f"- First-order 95 % interval of the forecast, {k}: holds {100 * share:.1f} %.")
    for k, pairs in many["constants"].items():
        e, u = np.array([p[0] for p in pairs]), np.array([p[1] for p in pairs])
        rows.append(f"- House constant {k}: mean error {e.mean():+.4f}, {e.mean() / (e.std(ddof=1) / math.sqrt(len(e))):+.1f} times its standard error; {100 * np.mean(np.abs(e) <= 1.959964 * u):.1f} % within 1.96 u.")
    rows += ["", "## Seeded faults", "", f"{n_faults} days for each. Seen: the global test gives the alarm. Named: among the days seen. A fault is as large as the study draws it, many times what can be detected or not much more.", "",
             "| fault | seen | named first | among the first two | most often named in its place |", "|---|---|---|---|---|"]
    for name, f in found.items():
        s = max(1, f["seen"])
        rows.append(f"| {name} | {100 * f['seen'] / f['n']:.0f} % | {100 * f['first'] / s:.0f} % | {100 * f['second'] / s:.0f} % | {f['other']} |")
    rows += ["", "Not studied here: joint outputs of Monte Carlo, days with fewer readings, several faults at once.", ""]
    print(f"{time.monotonic() - start:.0f} s")
    return "\n".join(rows), {"boil": boil, "days": many, "faults": found}


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--days", type=int, default=1000)
    parser.add_argument("--faults", type=int, default=100)
    parser.add_argument("--boils", type=int, default=2000)
    parser.add_argument("--out", default=str(Path(__file__).parents[2] / "docs" / "coverage.md"))
    options = parser.parse_args()
    text, _ = report(options.days, options.faults, options.boils)
    Path(options.out).write_text(text, encoding="utf-8")
    print(text)
