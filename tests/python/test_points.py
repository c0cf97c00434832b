"""Every model at random points against an independent implementation, and the worked answers of the public."""

from __future__ import annotations

import math

import pytest

from expression import call_from_text, joined, read_table

CHAPTERS = ["attenuation", "bitterness", "carbonation", "colour", "extract", "process", "refractometer"]


def components(value: object) -> list[object]:
    return list(value) if isinstance(value, tuple) else [value]


def compare(path: str, value: object, expected: str, absolute: float, relative: float) -> str:
    """Empty, or what is wrong."""
    parts = components(joined(value))
    wanted = [expected] if isinstance(parts[0], str) else expected.split("|")
    if len(parts) != len(wanted):
        return f"{path}: {value!r} against {expected}"
    for got, want in zip(parts, wanted):
        if isinstance(got, str):
            good = got == want
        elif isinstance(got, bool):
            good = got == (want == "True")
        else:
            good = abs(got - float(want)) <= absolute + relative * abs(float(want)) or (math.isnan(got) and want == "nan")  # type: ignore[operator]
        if not good:
            return f"{path}: {value!r} against {expected}"
    return ""


@pytest.mark.parametrize("chapter", CHAPTERS)
def test_points(chapter: str) -> None:
    _, rows = read_table(f"points/{chapter}.csv")
    faults = []
    for row in rows:
        try:
            value = call_from_text(row["path"], row["inputs"], policy="extrapolate")
        except (ValueError, TypeError, AttributeError, KeyError) as e:
            faults.append(f"{row['path']}({row['inputs']}): {e}")
            continue
        fault = compare(row["path"], value, row["result"], float(row["abs"]), float(row["rel"]))
        if fault:
            faults.append(fault + f" at {row['inputs']}")
    assert not faults, f"{len(faults)} of {len(rows)}:\n" + "\n".join(faults[:40])
    assert len(rows) > 100
