# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Family, Model, _A, _L, _N, _P, _S, _W

class _of_alcohol_by_volume(Model):
    @overload
    def __call__(self, alcohol_by_volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _alcohol_tolerance_eu_1169_beer(_of_alcohol_by_volume):
    """By how much may the stated strength differ from the actual one, plus or minus? alcohol_by_volume [% vol] -> [% vol]. Use: beer above 1.2 % vol on a label in the European Union."""

class _alcohol_tolerance_us_27cfr7(_of_alcohol_by_volume):
    """By how much may the stated strength differ from the actual one, plus or minus? alcohol_by_volume [% vol] -> [% vol]. Use: malt beverages of 0.5 % vol or more on a label in the United States."""

class _alcohol_tolerance(Family):
    """By how much may the stated strength differ from the actual one, plus or minus?"""
    eu_1169_beer: _alcohol_tolerance_eu_1169_beer
    us_27cfr7: _alcohol_tolerance_us_27cfr7

class _duty_strength_uk(_of_alcohol_by_volume):
    """On what strength is duty charged? alcohol_by_volume [% vol] -> [% vol]. Use: beer duty in the United Kingdom."""
    uk: _duty_strength_uk

alcohol_tolerance: _alcohol_tolerance
duty_strength: _duty_strength_uk
