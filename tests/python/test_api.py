"""The public interface: tests/reference/api.csv lists every path, its arguments with units and defaults, and its result."""

from __future__ import annotations

import csv
import inspect
import math
import pickle
import re
import subprocess
import sys
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import wortmath as wm

from expression import REFERENCE, argument, model, read_table

ROWS = list(csv.reader((REFERENCE / "api.csv").read_text(encoding="utf-8").splitlines()))[1:]
PATHS = [r[0] for r in ROWS]


def first_points() -> dict[str, str]:
    first: dict[str, str] = {}
    for chapter in ("attenuation", "bitterness", "carbonation", "colour", "extract", "process", "refractometer"):
        for row in read_table(f"points/{chapter}.csv")[1]:
            first.setdefault(row["path"], row["inputs"])
    return first


FIRST = first_points()


def valid_arguments(path: str) -> dict[str, Any]:
    by_name = {i.name: i for i in model(path).inputs}
    return {k: argument(by_name[k], v) for k, v in (pair.split("=", 1) for pair in FIRST[path].split(";") if pair)} if path in FIRST else {}


def test_nothing_is_missing_and_nothing_is_beside_it() -> None:
    assert sorted(wm._core._models) == sorted(PATHS)


@pytest.mark.parametrize("row", ROWS, ids=PATHS)
def test_signature(row: list[str]) -> None:
    path, arguments, result, default, _ = row
    m = model(path)
    wanted = []
    for text in filter(None, (a.strip() for a in arguments.split(";"))):
        match = re.fullmatch(r"(\w+) \[(.*?)\](?: = (.*))?", text)
        assert match
        wanted.append(match.groups())
    assert [i.name for i in m.inputs] == [w[0] for w in wanted]
    assert list(inspect.signature(m).parameters)[:-1] == [w[0] for w in wanted]
    for i, (_, unit, otherwise) in zip(m.inputs, wanted):
        assert (i.kind == "list") == unit.startswith("list of ")
        assert i.unit == unit.removeprefix("list of ")
        if otherwise is None:
            assert i.required
        elif isinstance(i.default, float):
            assert i.default == pytest.approx(float(otherwise), rel=1e-12)
        else:
            assert str(i.default) == otherwise
    results = [re.fullmatch(r"(?:(\w+) )?\[?(.*?)\]?", r.strip()) for r in result.split(";")]
    if len(results) == 1:
        assert m.output.unit == result
    else:
        assert [(o.name, o.unit) for o in m.outputs] == [(r[1], r[2]) for r in results if r]
    if default == "default":
        assert wm._core.is_default(m)


@pytest.mark.parametrize("path", PATHS)
def test_calls(path: str) -> None:
    m = model(path)
    given = valid_arguments(path)
    by_name = m(**given, policy="extrapolate")
    in_order = [given.get(i.name, i.default) for i in m.inputs]
    assert repr(m(*in_order, policy="extrapolate")) == repr(by_name)
    if all(i.kind == "number" for i in m.inputs) and m.inputs and all(o.kind == "number" for o in m.outputs):
        columns = [np.full((2, 3), v) for v in in_order]
        array = m(*columns, policy="extrapolate")
        for column, scalar in zip(array if isinstance(array, tuple) else (array,), by_name if isinstance(by_name, tuple) else (by_name,)):
            assert column.shape == (2, 3)
            assert np.allclose(column, scalar, rtol=1e-10, atol=1e-12, equal_nan=True)
    assert pickle.loads(pickle.dumps(m)) is m
    assert m.question.endswith("?")
    assert m.source
    assert m.status in ("primary", "secondary", "memory", "derived")
    assert m.source in m.__doc__
    assert path in repr(m)


PASSES_NO_NAN = [p for p in PATHS if wm._core.describe(p)["nan_is_impossible"]]


@pytest.mark.parametrize("path", PATHS)
def test_nan_and_impossible_input(path: str) -> None:
    m = model(path)
    given = valid_arguments(path)
    facts = wm._core.describe(path)
    for i in m.inputs:
        if i.kind != "number":
            continue
        with_nan = {**given, i.name: math.nan}
        if facts["guards"]:
            assert m(**with_nan) == 2
        elif facts["nan_is_impossible"]:
            with pytest.raises(wm.RangeError):
                m(**with_nan, policy="extrapolate")
        else:
            value = m(**with_nan, policy="extrapolate")
            assert any(isinstance(v, float) and math.isnan(v) for v in (value if isinstance(value, tuple) else (value,))), i.name
        for limit, beyond in ((i.possible[0], -1.0), (i.possible[1], 1.0)):
            # where the largest finite number keeps infinity out, infinity is the impossible value
            outside = math.copysign(math.inf, beyond) if 1e308 < abs(limit) < math.inf else limit + beyond * (1.0 + abs(limit)) if math.isfinite(limit) else None
            if outside is None:
                continue
            if facts["guards"]:
                assert m(**{**given, i.name: outside}) == 2
                continue
            with pytest.raises(wm.RangeError) as refused:
                m(**{**given, i.name: outside}, policy="extrapolate")
            message = str(refused.value)
            assert i.name in message and path in message
        for nonsense in ("12", None, 1j, True):
            with pytest.raises(TypeError, match=i.name):
                m(**{**given, i.name: nonsense})
    if m.inputs:
        with pytest.raises(TypeError, match="has no argument"):
            m(**given, wrong_name=1.0)


def test_the_generated_cpp_test_is_up_to_date() -> None:
    script = Path(__file__).parents[1] / "tools" / "make_api_test.py"
    assert subprocess.run([sys.executable, str(script), "--check"], check=False).returncode == 0, f"run python {script.name}"


def test_families_without_a_default_say_what_their_models_answer() -> None:
    with pytest.raises(TypeError, match="eu_1169_beer"):
        wm.labelling.alcohol_tolerance(5.0)
