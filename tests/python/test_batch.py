"""Batches against answers: tests/reference/batch holds files with the results of an independent engine, and wrong files
with the words that their messages must hold."""

from __future__ import annotations

import json
from typing import Any

import pytest

import wortmath as wm

from expression import REFERENCE

FOLDER = REFERENCE / "batch"
GOOD = sorted(FOLDER.glob("*.toml"))
BAD = sorted((FOLDER / "bad").glob("*.toml"))


def differences(got: Any, want: Any, at: str = "") -> list[str]:
    """Where an answer differs; keys beyond those of the reference are allowed."""
    if at in (".cautions", ".outside_range", ".assumed", ".reasons", ".ledger.imbalance_g"):
        return []
    if isinstance(want, dict):
        if not isinstance(got, dict):
            return [f"{at}: {got!r} against {want!r}"]
        found = []
        for key, value in want.items():
            if key not in got:
                if not (at in (".ledger.in", ".ledger.out") and value == 0):
                    found.append(f"{at}.{key} is missing")
            else:
                found += differences(got[key], value, f"{at}.{key}")
        return found
    if isinstance(want, list):
        if not isinstance(got, list) or len(got) != len(want):
            return [f"{at}: {got!r} against {want!r}"]
        return [d for k, (g, w) in enumerate(zip(got, want)) for d in differences(g, w, f"{at}[{k}]")]
    if isinstance(want, float) and isinstance(got, (int, float)):
        return [] if abs(got - want) <= 1e-12 + 1e-9 * abs(want) else [f"{at}: {got!r} against {want!r}"]
    return [] if got == want else [f"{at}: {got!r} against {want!r}"]


@pytest.mark.parametrize("path", GOOD, ids=lambda p: p.stem)
def test_answers(path: Any) -> None:
    want = json.loads(path.with_suffix(".json").read_text(encoding="utf-8"))
    got = json.loads(wm.batch.read(path).forecast().to_json())
    assert not differences(got, want), "\n".join(differences(got, want)[:60])
    for key, fields in (("cautions", ("id", "level", "step")), ("outside_range", ("step", "model", "argument")), ("assumed", ("step", "key", "name"))):
        as_set = [{tuple(row[f] for f in fields) for row in d[key]} for d in (got, want)]
        assert as_set[0] == as_set[1], key
    assert bool(got["reasons"]) == bool(want["reasons"]), got["reasons"]
    for one, other in zip(*(sorted(d["assumed"], key=lambda r: (r["step"], r["key"], r["name"] or "")) for d in (got, want))):
        assert not differences(one["value"], other["value"])
    assert abs(got["ledger"]["imbalance_g"]) <= 1e-12 * sum(got["ledger"]["in"].values())


@pytest.mark.parametrize("path", BAD, ids=lambda p: p.stem)
def test_refusals(path: Any) -> None:
    expected = dict(line.split(" = ", 1) for line in path.with_suffix(".expect").read_text(encoding="utf-8").splitlines())
    with pytest.raises(wm.batch.BatchError) as raised:
        wm.batch.read(path).forecast()
    error, message = raised.value, str(raised.value).lower()
    if "line" in expected:
        assert str(error.line) in expected["line"].split("|"), message
    if "step" in expected:
        assert error.step == int(expected["step"]), message
    if "key" in expected:
        assert error.key == expected["key"], message
        assert expected["key"] in message
    for word in expected["words"].split("|"):
        assert word.lower() in message, f"{word!r} in {message!r}"
