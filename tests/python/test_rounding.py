"""How much a result may suffer from rounding: every formula against itself at 50 digits.

The outside is mpmath, which evaluates the formula's own export. At random points of the validated range the error must stay
below four rounding units (2^-53) times the condition number: how much the result moves, relative to itself, when each
input moves by one unit, plus one unit for the result itself. Where the inputs alone do not explain the error, the
coefficients count too, since each of them was rounded when it was stored: a polynomial whose large terms cancel cannot
know more than its coefficients do.
"""

from __future__ import annotations

import random
from typing import Any, Callable

import pytest

from expression import model
from test_export import NOT_EXPORTED, PATHS, function_name, parts, points
from test_points import CHAPTERS
from wortmath import _core

mp = pytest.importorskip("mpmath")

UNIT = 2.0**-53
ALLOWED = 4.0
SAMPLES = 6

# Errors that no condition number of inputs and coefficients describes, as absolute bounds.
ABSOLUTE = {
    # The difference of two boiling temperatures near 373 K: a few units of those, however small the difference.
    "thermal.boiling_point_elevation.ideal_solution": 1e-12,
    # The difference of two pressures of about 1 bar.
    "dispense.altitude_addition.standard_atmosphere": 4.5e-16,
    # The edge of its range, where the curve falls below the smallest normal number.
    "colour.observer.wyman_1964": 1e-300,
}
# Seldom more than four units (two of 502 models among 80 points each).
MORE_UNITS = {
    "ethanol.alcohol_by_mass_from_volume.oiml_r22": 16.0,  # the residual of its iteration is a difference of large terms
    "bitterness.kettle_cooling.newton": 8.0,               # where wort passes 0 degC in frost
}
# Tables of exact entries: nothing is rounded, and only the wavelengths of the table are answered.
TABLES = {"colour.observer.cie_1931", "colour.observer.cie_1964"}

ROWS: dict[str, list[dict[str, Any]]] = {}
# The values of tests/reference/points: where a range has no end, they say how far a brewer goes.
SEEN: dict[tuple[str, str], list[float]] = {}
for _chapter in CHAPTERS:
    for _path, _inputs in points(_chapter):
        ROWS.setdefault(_path, []).append(_inputs)
        for _name, _value in _inputs.items():
            if isinstance(_value, (float, list)):
                SEEN.setdefault((_path, _name), []).extend(_value if isinstance(_value, list) else [_value])


def near_a_row(path: str, draw: random.Random) -> dict[str, Any]:
    """For inputs that must fit together: a row of points/, shaken a little."""
    row = draw.choice(ROWS[path])
    return {k: v * (1 + draw.uniform(-1e-3, 1e-3)) if isinstance(v, float) else v for k, v in row.items()}


def sample(path: str, draw: random.Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {}
    length = draw.randint(2, 4)
    for i in model(path).inputs:
        if i.kind == "word":
            inputs[i.name] = draw.choice(i.words)
            continue
        if i.kind == "truth":
            inputs[i.name] = draw.random() < 0.5
            continue
        seen = SEEN.get((path, i.name), [i.default or 0.0, i.default or 1.0])
        lo, hi = (end if abs(end) < 1e300 else edge(seen) for end, edge in zip(i.validated, (min, max)))
        if i.kind == "list":
            inputs[i.name] = [draw.uniform(lo, hi) for _ in range(81 if i.name == "transmittances" else length)]
        else:
            inputs[i.name] = None if i.kind == "optional" and draw.random() < 0.3 else draw.uniform(lo, hi)
    return inputs


def exact(value: Any) -> Any:
    if isinstance(value, list):
        return [mp.mpf(x) for x in value]
    return mp.mpf(value) if isinstance(value, float) else value


def moved(inputs: dict[str, Any], by: Any) -> list[dict[str, Any]]:
    """The inputs with one number each moved by its share."""
    out = []
    for name, value in inputs.items():
        if isinstance(value, list):
            out += [{**inputs, name: [x * (1 + by) if k == at else x for k, x in enumerate(value)]} for at in range(len(value))]
        elif isinstance(value, mp.mpf):
            out.append({**inputs, name: value * (1 + by)})
    return out


def worst(path: str, function: Callable[..., Any], samples: int, draw: random.Random) -> tuple[int, float, str]:
    """How many points were compared, the largest error in units times condition number, and where."""
    by = mp.mpf(10) ** -25
    compared, largest, where = 0, 0.0, ""
    for attempt in range(samples * 20):
        if compared == samples:
            break
        inputs = sample(path, draw) if attempt < samples * 10 else near_a_row(path, draw)
        try:
            got = parts(model(path)(**inputs))
        except ValueError:  # the inputs together are refused
            continue
        compared += 1
        precise = {k: exact(v) for k, v in inputs.items()}
        true = parts(function(**precise))

        def shares(results: list[Any]) -> list[Any]:
            return [abs(x - t) / by for x, t in zip(results, true)]

        units = [abs(t) for t in true]
        for other in moved(precise, by):
            units = [u + s for u, s in zip(units, shares(parts(function(**other))))]
        errors = [max(mp.mpf(0), abs(mp.mpf(g) - t) - ABSOLUTE.get(path, 0.0)) for g, t in zip(got, true)]
        if any(e > ALLOWED * UNIT * u for e, u in zip(errors, units)):
            coefficients: set[float] = set()
            function(**precise, k=lambda c: (coefficients.add(c), mp.mpf(c))[1])
            for c in coefficients:
                units = [u + s for u, s in zip(units, shares(parts(function(**precise, k=lambda x: mp.mpf(x) * (1 + by) if x == c else mp.mpf(x)))))]
        for e, u in zip(errors, units):
            ratio = float(e / (u * UNIT)) if u else (0.0 if e == 0 else 1e99)
            if ratio > largest:
                largest, where = ratio, str(inputs)
    return compared, largest, where


@pytest.mark.parametrize("topic", sorted({p.split(".")[0] for p in PATHS}))
def test_rounding(topic: str) -> None:
    faults, compared = [], 0
    with mp.workdps(50):
        for path in (p for p in PATHS if p.split(".")[0] == topic):
            if path in NOT_EXPORTED or path in TABLES or any(o.kind != "number" for o in model(path).outputs):
                continue  # whole numbers and words are not rounded
            scope: dict[str, Any] = {}
            exec(compile(_core.printed(path, "mpmath"), path, "exec"), scope)  # noqa: S102
            points_used, ratio, where = worst(path, scope[function_name(path)], SAMPLES, random.Random(path))
            compared += points_used
            if points_used == 0:
                faults.append(f"{path}: no point was compared")
            if ratio > MORE_UNITS.get(path, ALLOWED):
                faults.append(f"{path}: {ratio:.3g} units at {where}")
    assert not faults, "\n".join(faults)
    assert compared > 0


def test_the_exceptions_are_models() -> None:
    assert {*ABSOLUTE, *MORE_UNITS, *TABLES} <= set(PATHS)
