# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_volume_and_concentration_and_strength(Model):
    @overload
    def __call__(self, volume: _S, concentration: _S, strength: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, concentration: _N, strength: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, concentration: _L, strength: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _dose_dilution(_of_volume_and_concentration_and_strength):
    """How much of a product makes a cleaning or sanitising solution? volume [L], concentration [mg/L], strength [g/L] -> [L]."""
    dilution: _dose_dilution

dose: _dose_dilution
