"""Readings that must obey balances: the most probable values, and which reading does not fit the others.

    >>> from wortmath import reconcile
    >>> r = reconcile.linear.least_squares([10.1, 5.9, 4.5], [[0.01, 0, 0], [0, 0.01, 0], [0, 0, 0.01]], [[1, -1, -1]], [0])
    >>> [round(float(x), 2) for x in r.values]
    [10.2, 5.8, 4.4]

A reconciled value is an estimate. Where gravity decides whether bottles may be closed, the raw reading and the more
cautious of raw and reconciled count.
"""

from __future__ import annotations

import warnings
from collections.abc import Callable
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import ArrayLike

from . import _core
from .uncertainty import Floats, _array

_c = _core._uncertainty

__all__ = ["Reconciled", "linear", "nonlinear", "partial_boil"]


class _ReconciledFields(NamedTuple):
    values: Floats
    uncertainties: Floats
    objective: float
    dof: int
    probability: float
    z: Floats
    critical_z: float
    balance_z: Floats
    bias: Floats
    detectable_bias: Floats


class Reconciled(_ReconciledFields):
    """Most probable values, the test of the whole (`probability` of a larger objective), of each reading (`z` against
    `critical_z`; 0: nothing checks it) and of each balance. `bias` is what a reading would be off by, were it the only
    fault; `detectable_bias` what the set can see. Of the nonlinear kind also `unmeasured` and `unmeasured_uncertainties`."""
    unmeasured: Floats
    unmeasured_uncertainties: Floats
    covariance: Floats
    log_determinant: float


def _result(found: dict[str, Any]) -> Reconciled:
    r = Reconciled(*(found[name] for name in Reconciled._fields))
    for name in ("unmeasured", "unmeasured_uncertainties", "covariance", "log_determinant"):
        setattr(r, name, found[name])
    return r


class linear:
    """Balances A x = b."""

    @staticmethod
    def least_squares(readings: ArrayLike, covariance: ArrayLike, balances: ArrayLike, constants: ArrayLike, error_rate: float = 0.05, detection_rate: float = 0.80) -> Reconciled:
        return _result(_c.linear(_array(readings, 1, "readings"), _array(covariance, 2, "covariance"), _array(balances, 2, "balances"), _array(constants, 1, "constants"), error_rate, detection_rate))


class _Linearised:
    """Value and derivatives of balances f(x, z). By a step into the complex plane where the function goes along with
    that, which loses no digits; else by central differences in the scale of the variable."""

    def __init__(self, f: Callable[[Any, Any], Any], scale_x: Floats) -> None:
        self.f, self.scale, self.exact = f, scale_x, True

    def value(self, x: Any, z: Any) -> Any:
        return np.atleast_1d(np.asarray(self.f(x, z))).ravel()

    def differences(self, x: Floats, z: Floats, factor: float) -> tuple[Floats, Floats]:
        sides = []
        for point, scale in ((x, self.scale), (z, np.maximum(1e-6, 1e-4 * np.abs(z)))):
            columns = []
            for i in range(len(point)):
                h = factor * (scale[i] if scale[i] > 0 else max(1e-6, 1e-6 * abs(point[i])))
                up, down = point.copy(), point.copy()
                up[i] += h
                down[i] -= h
                a, b = (self.value(up, z), self.value(down, z)) if point is x else (self.value(x, up), self.value(x, down))
                columns.append((a - b) / (up[i] - down[i]))
            sides.append(np.array(columns, dtype=float).T.reshape(-1, len(point)) if columns else None)
        rows = len(self.value(x, z))
        return tuple(s if s is not None else np.zeros((rows, 0)) for s in sides)  # type: ignore[return-value]

    def complex_step(self, x: Floats, z: Floats) -> tuple[Floats, Floats] | None:
        h = 1e-30
        sides = []
        try:
            with warnings.catch_warnings():
                warnings.simplefilter("error")
                for point in (x, z):
                    columns = []
                    for i in range(len(point)):
                        moved = point.astype(complex)
                        moved[i] += 1j * h
                        columns.append(np.imag(self.value(moved, z.astype(complex)) if point is x else self.value(x.astype(complex), moved)) / h)
                    sides.append(columns)
        except Exception:  # balances that cannot take complex numbers, in whatever way they say so: real differences follow
            return None
        rows = len(self.value(x, z))
        a, b = (np.array(c, dtype=float).T.reshape(rows, len(c)) for c in sides)
        return a, b

    def __call__(self, x: Floats, z: Floats) -> tuple[Floats, Floats, Floats]:
        f = np.asarray(self.value(x, z), dtype=float)
        if self.exact:
            found = self.complex_step(x, z)
            if found is not None:
                # A function that drops the imaginary part (abs, float) would pass for one that does not move.
                a, b = self.differences(x, z, 1e-3)
                big = max(1e-300, *(float(np.abs(m).max(initial=0.0)) for m in (a, b)))
                if all(np.allclose(m, n, rtol=1e-3, atol=1e-6 * big) for m, n in zip(found, (a, b))):
                    return f, found[0], found[1]
            self.exact = False
        a, b = self.differences(x, z, 1e-2)
        return f, a, b


class nonlinear:
    """Balances f(x, z) = 0 of readings x and unmeasured z."""

    @staticmethod
    def least_squares(balances: Callable[[Any, Any], Any], readings: ArrayLike, covariance: ArrayLike, guesses: ArrayLike | None = None, error_rate: float = 0.05,
                      detection_rate: float = 0.80) -> Reconciled:
        """`balances` gets the readings x and the unmeasured z as arrays and gives the list of what should be zero.
        `guesses` starts z; without, there are no unmeasured quantities."""
        y, v = _array(readings, 1, "readings"), _array(covariance, 2, "covariance")
        z = np.zeros(0) if guesses is None else _array(guesses, 1, "guesses")
        scale = np.sqrt(np.maximum(0.0, np.diag(v))) if v.shape == (len(y), len(y)) else np.ones(len(y))
        return _result(_c.nonlinear(_Linearised(balances, scale), y, v, z, error_rate, detection_rate))


class partial_boil:
    """A concentrated boil topped up in the fermenter."""

    @staticmethod
    def least_squares(readings: ArrayLike, uncertainties: ArrayLike, error_rate: float = 0.05, detection_rate: float = 0.80) -> Reconciled:
        """Readings in this order: extract put in (g), kettle wort (g, degP), water added (g), fermenter wort (g, degP)."""
        return _result(_c.partial_boil(_array(readings, 1, "readings"), _array(uncertainties, 1, "uncertainties"), error_rate, detection_rate))
