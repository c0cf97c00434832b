"""The coefficient audit itself: that it finds the numbers of the formulas, changes them, and notices what it must."""

from __future__ import annotations

import shutil
import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parents[1] / "audit"))

import coefficients  # noqa: E402


@pytest.mark.parametrize("text,changed", [("0.0100", "0.0101"), ("1.9e-5", "2.0e-5"), ("9", "10"), ("0.9", "1.0"), ("5.701128e-8", "5.701129e-8"), ("2.39e11", "2.40e11"),
                                          ("6356766.0", "6356766.1"), ("1.022992966719220", "1.022992966719221")])
def test_one_more_in_the_last_digit(text: str, changed: str) -> None:
    assert coefficients.changed_by_one(text) == changed


def test_numbers_of_formulas_are_found_and_ranges_are_not(tmp_path: Path) -> None:
    literals = coefficients.instrument(tmp_path / "headers")
    assert len(literals) > 2500
    found = {(x.file, x.text) for x in literals}
    for text in ("616.868", "1111.14", "630.272", "135.997"):
        assert ("extract/cubics.hpp", text) in found
    assert ("constants.hpp", "453.59237") in found
    assert ("bitterness/gravity_adjustment.hpp", "0.000125") in found
    assert not any(x.text in ("1.106", "0.97") for x in literals if x.file == "extract/from_gravity.hpp")  # a range
    source = (coefficients.ROOT / "include/wortmath/extract/cubics.hpp").read_text(encoding="utf-8").splitlines()
    assert all(x.text in source[x.line - 1] for x in literals if x.file == "extract/cubics.hpp")


@pytest.mark.slow
@pytest.mark.skipif(not shutil.which("g++"), reason="no compiler")
def test_a_changed_number_is_noticed(tmp_path: Path) -> None:
    literals = coefficients.instrument(tmp_path)
    program = coefficients.build(tmp_path)
    wanted = [x for x in literals if x.file in ("extract/cubics.hpp", "constants.hpp", "water/density.hpp")]
    coefficients.run(program, literals, wanted)
    asbc = [x for x in wanted if x.text in ("616.868", "1111.14", "630.272", "135.997")]
    assert len(asbc) == 4 and all(coefficients.verdict(x) == "outside" for x in asbc)
    pound = next(x for x in wanted if x.text == "453.59237")
    assert pound.fixed and coefficients.verdict(pound) in ("outside", "points")
    assert sum(coefficients.verdict(x) == "outside" for x in wanted) > len(wanted) / 3
