"""The printed tables: every row of tests/reference/*/checks.csv against the models, in Python.

tests/cpp/test_tables.cpp reads the same files. Each check's note says what it shows and why its tolerance is not half
a unit of the last printed digit, where it is not; each table names its source in its head.
"""

from __future__ import annotations

import pytest

from expression import REFERENCE, call_from_text, evaluate, read_table
from test_points import CHAPTERS, components

MANIFESTS = [c for c in CHAPTERS if (REFERENCE / c / "checks.csv").exists()]


def _checks() -> list[tuple[str, dict[str, str]]]:
    return [(chapter, row) for chapter in MANIFESTS for row in read_table(f"{chapter}/checks.csv")[1]]


@pytest.mark.parametrize("chapter,check", _checks(), ids=lambda p: p if isinstance(p, str) else f"{p['file']}:{p['expression'][:60]}")
def test_printed_table(chapter: str, check: dict[str, str]) -> None:
    _, rows = read_table(f"{chapter}/{check['file']}")
    faults, used = [], 0
    for row in rows:
        if check["where"] and not evaluate(check["where"], row):
            continue
        used += 1
        got, want = evaluate(check["expression"], row), evaluate(check["compare"], row)
        if isinstance(got, str) or isinstance(want, str):
            if got != want:
                faults.append(f"{got!r} against {want!r} in {row}")
        elif not abs(got - want) <= evaluate(check["tolerance"], row) * (1 + 1e-12):
            faults.append(f"{got!r} against {want!r}, off by {got - want:.3g}, in {row}")
    assert used, "no row is left"
    assert not faults, f"{len(faults)} of {used} rows:\n" + "\n".join(faults[:10])


def _worked() -> list[tuple[str, dict[str, str]]]:
    found = []
    for file in sorted(REFERENCE.glob("*/*.csv")):
        name = f"{file.parent.name}/{file.name}"
        if file.parent.name in ("uncertainty", "points"):
            continue
        _, rows = read_table(name)
        # inputs in trade units (mass_lb) are for people; checks.csv has them
        if rows and {"model", "inputs", "value", "tolerance"} <= rows[0].keys():
            found += [(name, r) for r in rows]
    return found


@pytest.mark.parametrize("name,row", [w for w in _worked() if w[0].startswith("questions/")], ids=lambda p: p if isinstance(p, str) else p["id"])
def test_worked_answer(name: str, row: dict[str, str]) -> None:
    value = call_from_text(row["model"], row["inputs"], policy="extrapolate")
    assert abs(value - float(row["value"])) <= float(row["tolerance"]) * (1 + 1e-9), row["source"]


@pytest.mark.parametrize("row", read_table("questions/published_slips.csv")[1], ids=lambda r: r["id"])
def test_published_slip(row: dict[str, str]) -> None:
    """Answers that are in print and wrong: the model gives the right one, and it differs."""
    value = components(call_from_text(row["model"], row["inputs"], policy="extrapolate"))[0]
    assert abs(value - float(row["correct"])) <= float(row["tolerance"])  # type: ignore[operator]
    assert abs(value - float(row["printed"])) > float(row["tolerance"])  # type: ignore[operator]
