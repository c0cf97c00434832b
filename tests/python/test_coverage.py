"""The coverage study, in a small size; `python tests/study/coverage.py` runs it in full and writes docs/coverage.md."""

from __future__ import annotations

import importlib.util
from pathlib import Path

import numpy as np
import pytest

SPEC = importlib.util.spec_from_file_location("coverage_study", Path(__file__).parents[1] / "study" / "coverage.py")
assert SPEC is not None and SPEC.loader is not None
study = importlib.util.module_from_spec(SPEC)
SPEC.loader.exec_module(study)


@pytest.mark.slow
def test_partial_boil() -> None:
    n = 1000
    found = study.partial_boil(n)
    low, high = study.band(0.95, n)
    assert ((found["held"] >= low) & (found["held"] <= high)).all()
    low, high = study.band(0.05, n)
    assert low <= found["alarms"] <= high
    low, high = study.band(0.80, n)
    assert ((found["found"] >= low) & (found["found"] <= high)).all()


@pytest.mark.slow
def test_days_of_a_batch() -> None:
    n = 150
    found = study.days(study.World(), n)
    low, high = study.band(0.95, n)
    assert (found["held"] >= low).all() and all(low <= share <= high for share in found["results"].values())
    low, high = study.band(0.05, n)
    assert low <= found["alarms"] <= high
    for pairs in found["constants"].values():
        error = np.array([p[0] for p in pairs])
        assert abs(error.mean()) < 3.3 * error.std(ddof=1) / np.sqrt(n)


@pytest.mark.slow
@pytest.mark.parametrize("cause", ["top-up not mixed", "evaporation", "refractometer in beer", "gauge for absolute"])
def test_causes_that_can_be_told_apart_are_named_first(cause: str) -> None:
    world = study.World()
    named = seen = 0
    for seed in range(20_000, 20_005):
        _, y = world.draw(seed, study.FAULTS[cause])
        day = world.read(y)
        plain = day.solve(study._reconcile.NOTHING)
        if plain.probability < 0.05:
            seen += 1
            named += next(c["cause"] for c in study._reconcile._causes(day, plain) if c["cause"] != "nothing") == cause
    assert seen >= 3 and named >= seen - 1
