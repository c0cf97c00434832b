"""How sure a result is, and which input decides that.

    >>> from wortmath.uncertainty import Instrument, budget
    >>> hydrometer = Instrument.preset("hydrometer")                      # shares its offset between readings
    >>> og, fg = hydrometer.read(1.050, "OG"), hydrometer.read(1.012, "FG")
    >>> round(budget.first_order(lambda a, b: 131.25 * (a - b), [og, fg]).uncertainty, 3)
    0.056

`uncertainty` is one standard deviation, `limit` a half-width, `expanded` the U of a certificate. A model is a catalogue
model, an output of a batch or a function of as many arguments as there are inputs. JCGM 100, 101 and 102.
"""

from __future__ import annotations

import math
import warnings
from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from . import _core
from ._errors import RangeError, RangeWarning

_c = _core._uncertainty
Input = _c.Input
Instrument = _c.Instrument
Input.__module__ = Instrument.__module__ = __name__
Floats = NDArray[np.float64]

__all__ = ["Budget", "Input", "Instrument", "Interval", "Joint", "Mean", "MonteCarlo", "SecondOrder", "budget", "coverage_factor", "covariance", "dof", "interval",
           "monte_carlo", "multivariate", "type_a", "type_b"]


class Mean(NamedTuple):
    """The mean of repeated readings."""
    mean: float
    uncertainty: float
    dof: float


class Interval(NamedTuple):
    low: float
    high: float


class _BudgetFields(NamedTuple):
    uncertainty: float
    components: Floats
    shares: Floats
    cross_share: float


class Budget(_BudgetFields):
    """First-order budget. Of a model also `value`, `dof`, `names` and `sensitivities`, one entry per line."""
    value: float | None = None
    dof: float | None = None
    names: list[str] | None = None
    sensitivities: Floats | None = None
    uncertainties: Floats | None = None

    def expanded(self, probability: float = 0.95) -> tuple[float, float]:
        """U and its factor k; NaN where the degrees of freedom are not defined."""
        n = math.inf if self.dof is None else self.dof
        k = math.nan if math.isnan(n) else coverage_factor.student(probability, n)
        return k * self.uncertainty, k

    def __str__(self) -> str:
        if self.value is None:
            return f"u = {_two_digits(self.uncertainty)}"
        rows = [f"{_with(self.value, self.uncertainty)}  u = {_two_digits(self.uncertainty)}  ({'degrees of freedom not defined' if math.isnan(self.dof or 0) else f'dof {self.dof:.3g}'}; first order)"]
        assert self.names is not None
        width = max(map(len, self.names), default=4)
        for i in sorted(range(len(self.names)), key=lambda i: -self.components[i]):
            rows.append(f"  {self.names[i]:{width}}  {_two_digits(self.components[i]):>10}  {100 * self.shares[i]:5.1f} %")
        if self.cross_share:
            rows.append(f"  {'correlations':{width}}  {'':10}  {100 * self.cross_share:5.1f} %")
        return "\n".join(rows)


class _SecondOrderFields(NamedTuple):
    uncertainty: float
    bias: float


class SecondOrder(_SecondOrderFields):
    """Uncertainty with the second-order terms, and the bias: mean of the result less the result of the means."""
    value: float | None = None


class _JointFields(NamedTuple):
    covariance: Floats
    ellipsoid_factor: float


class Joint(_JointFields):
    """Several outputs together."""
    values: Floats | None = None

    @property
    def correlations(self) -> Floats:
        u = np.sqrt(np.diag(self.covariance))
        with np.errstate(invalid="ignore", divide="ignore"):
            return np.asarray(self.covariance / np.outer(u, u))


class MonteCarlo:
    """The distribution of an output, or of several from the same draws (then value, uncertainty, low and high are
    lists, samples has a row for each, and covariance and ellipsoid_factor are there)."""

    __slots__ = ("value", "uncertainty", "low", "high", "trials", "refused", "converged", "seed", "samples", "covariance", "ellipsoid_factor", "probability", "interval")
    value: Any
    uncertainty: Any
    low: Any
    high: Any
    trials: int
    refused: int
    converged: bool
    seed: int
    samples: Floats
    covariance: Floats | None
    ellipsoid_factor: float | None
    probability: float
    interval: str

    def __init__(self, found: dict[str, Any], several: bool, probability: float, kind: str) -> None:
        for name in ("value", "uncertainty", "low", "high"):
            setattr(self, name, found[name].tolist() if several else float(found[name][0]))
        for name in ("trials", "refused", "converged", "seed"):
            setattr(self, name, found[name])
        self.samples = found["samples"] if several else found["samples"][0]
        self.covariance, self.ellipsoid_factor = found["covariance"], found["ellipsoid_factor"]
        if several and self.covariance is None:  # a list of one
            self.covariance = np.array([[found["uncertainty"][0] ** 2]])
        self.probability, self.interval = probability, kind

    def __iter__(self) -> Any:
        return (getattr(self, name) for name in self.__slots__[:9])

    def upper(self, probability: float = 0.99) -> float | list[float]:
        """The upper end of the symmetric interval with every refused draw counted as infinite: for limits that can hurt."""
        if self.samples.ndim == 1:
            return float(_c.upper_with_refused(self.samples, probability))
        return [float(_c.upper_with_refused(y, probability)) for y in self.samples]

    def __repr__(self) -> str:
        return (f"<MonteCarlo: value {self.value}, uncertainty {self.uncertainty}, {100 * self.probability:g} % from {self.low} to {self.high} ({self.interval}); "
                f"{self.trials} trials, {self.refused} refused, seed {self.seed}, {'converged' if self.converged else 'not converged'}>")


def _two_digits(u: float) -> str:
    return f"{u:.2g}" if u == u else "nan"


def _with(value: float, u: float) -> str:
    if not (0 < u < math.inf):
        return f"{value:.6g}"
    # the place of the second digit of what is printed for u
    place = 1 - int(f"{u:.1e}".split("e")[1])
    return f"{value:.{max(0, place)}f}"


def _array(x: ArrayLike, dimensions: int, name: str) -> Floats:
    a = np.asarray(x, dtype=float)
    if a.ndim != dimensions:
        raise ValueError(f"{name}: expected {'a list' if dimensions == 1 else 'a matrix, a list of lists'} of numbers")
    return a


def _matrix(x: ArrayLike | None, name: str = "correlations") -> Floats | None:
    return None if x is None else _array(x, 2, name)


def _inputs(inputs: Sequence[Any]) -> list[Any]:
    made = list(inputs)
    for i, x in enumerate(made):
        if not isinstance(x, Input):
            if isinstance(x, (int, float)) and not isinstance(x, bool):
                made[i] = Input(float(x))  # a bare number is exact
            else:
                raise TypeError(f"input {i + 1} is {x!r}; expected an Input, made by Input(value, uncertainty) or by an instrument's read")
    return made


_REFUSALS = (RangeError, ArithmeticError, ValueError)


def _is_catalogue_model(model: Any) -> bool:
    return isinstance(model, _core.Model)


def _scalar_call(model: Any) -> Callable[[list[float]], float]:
    """The model as a function of a list of floats, computed outside its validated range too where it allows that."""
    if not callable(model):
        raise TypeError(f"{model!r} is not a model; expected a catalogue model, an output of a batch or a function")
    if not _is_catalogue_model(model):
        return lambda x: float(model(*x))

    def call(x: list[float]) -> float:
        y = model(*x, policy="extrapolate")
        if isinstance(y, tuple):
            raise ValueError(f"{model.path} has several results; make a function that picks one")
        return float(y)
    return call


def _first_call(model: Any, inputs: list[Any]) -> float:
    """The value at the estimate, by the model's usual policy: an estimate outside the validated range is an error."""
    return float(model(*[i.value for i in inputs]))


def _derivatives(model: Any, inputs: list[Any]) -> tuple[float, Floats]:
    """Value and derivatives by the arguments: the one place that chooses between exact derivatives, where a model has
    them, and half the change over two standard uncertainties (JCGM 100, 5.1.3, note)."""
    value = _first_call(model, inputs)
    exact = getattr(model, "gradient", None)
    if _is_catalogue_model(model) and callable(exact):
        g = exact(*[i.value for i in inputs])
        slopes = list(g.values()) if isinstance(g, dict) else list(g)
        if len(slopes) >= len(inputs) and all(isinstance(s, (int, float)) for s in slopes[:len(inputs)]):
            return value, np.array(slopes[:len(inputs)], dtype=float)
    found: tuple[float, Floats] = _c.sensitivities(_scalar_call(model), inputs)
    return value, found[1]


class _Blocks:
    """Evaluates models on a block of draws: arguments by trials in, outputs by trials out, NaN where one is refused."""

    def __init__(self, models: Sequence[Any]) -> None:
        self.models = list(models)
        self.as_arrays: list[bool | None] = [None] * len(self.models)
        for m in self.models:
            _scalar_call(m)

    @staticmethod
    def _one(model: Any, x: Floats) -> float:
        try:
            with warnings.catch_warnings():
                warnings.simplefilter("ignore", RangeWarning)
                return float(model(*x.tolist()))
        except _REFUSALS:
            return math.nan

    @staticmethod
    def _whole(model: Any, x: Floats) -> Floats | None:
        try:
            with warnings.catch_warnings(), np.errstate(all="ignore"):
                warnings.simplefilter("ignore")
                y = np.asarray(model(*x), dtype=float)
        except Exception:  # a function that cannot take whole arrays, in whatever way it says so: it is called row by row
            return None
        return y if y.shape == (x.shape[1],) else None

    def _row(self, j: int, x: Floats) -> Floats:
        model = self.models[j]
        block = getattr(model, "_block", None)  # an output of a batch knows how
        if block is not None:
            return np.asarray(block(x), dtype=float)
        if _is_catalogue_model(model):
            with warnings.catch_warnings():
                warnings.simplefilter("ignore", RangeWarning)
                danger = bool(model.danger)
                return np.asarray(model(*x, policy="nan" if danger else "extrapolate"), dtype=float)
        y = self._whole(model, x) if self.as_arrays[j] is not False else None
        if self.as_arrays[j] is None:
            # Many functions take arrays as well as numbers; a sample of single calls decides whether this one does.
            places = np.unique(np.linspace(0, x.shape[1] - 1, 24).astype(int))
            single = np.array([self._one(model, x[:, k]) for k in places])
            self.as_arrays[j] = y is not None and bool(np.allclose(np.where(np.isfinite(y[places]), y[places], math.nan), np.where(np.isfinite(single), single, math.nan),
                                                                   rtol=1e-12, atol=0, equal_nan=True))
        if self.as_arrays[j] and y is not None:
            return y
        return np.array([self._one(model, column) for column in x.T])

    def __call__(self, x: Floats) -> Floats:
        return np.vstack([self._row(j, x) for j in range(len(self.models))])


class type_a:
    """Standard uncertainty from repeated readings."""

    @staticmethod
    def mean(readings: ArrayLike) -> Mean:
        """Mean, its standard uncertainty s/sqrt(n), and n - 1."""
        return Mean(*_c.type_a_mean(_array(readings, 1, "readings")))


class type_b:
    """Standard uncertainty from a statement."""

    @staticmethod
    def rectangular(limit: float) -> float:
        return float(_c.rectangular(limit))

    @staticmethod
    def triangular(limit: float) -> float:
        return float(_c.triangular(limit))

    @staticmethod
    def arcsine(limit: float) -> float:
        return float(_c.arcsine(limit))

    @staticmethod
    def trapezoidal(limit: float, top_ratio: float) -> float:
        return float(_c.trapezoidal(limit, top_ratio))

    @staticmethod
    def curvilinear_trapezoid(limit: float, limit_tolerance: float) -> float:
        return float(_c.curvilinear_trapezoid(limit, limit_tolerance))

    @staticmethod
    def expanded(expanded: float, coverage_factor: float = 2.0) -> float:
        return float(_c.expanded(expanded, coverage_factor))

    @staticmethod
    def resolution(step: float) -> float:
        return float(_c.resolution(step))

    @staticmethod
    def critical_difference(critical_difference: float) -> float:
        return float(_c.critical_difference(critical_difference))

    @staticmethod
    def log_normal(value: float, factor: float) -> float:
        return float(_c.log_normal(value, factor))


def _budget(found: dict[str, Any]) -> Budget:
    b = Budget(found["uncertainty"], found["components"], found["shares"], found["cross_share"])
    for name in ("value", "dof", "names", "sensitivities", "uncertainties"):
        if name in found:
            setattr(b, name, found[name])
    return b


class budget:
    """The uncertainty of one output, and who contributes."""

    @staticmethod
    def first_order(sensitivities: Any, uncertainties: Any = None, correlations: ArrayLike | None = None, *, model: Any = None, inputs: Any = None) -> Budget:
        """first_order(sensitivities, uncertainties, correlations=None), or first_order(model, inputs, correlations=None)."""
        sensitivities, uncertainties = (model if model is not None else sensitivities), (inputs if inputs is not None else uncertainties)
        r = _matrix(correlations)
        if callable(sensitivities):
            known = _inputs(uncertainties)
            value, slopes = _derivatives(sensitivities, known)
            return _budget(_c.budget_of_derivatives(value, slopes, known, r))
        return _budget(_c.budget(_array(sensitivities, 1, "sensitivities"), _array(uncertainties, 1, "uncertainties"), r))

    @staticmethod
    def second_order(sensitivities: Any, hessian: Any = None, third: ArrayLike | None = None, uncertainties: ArrayLike | None = None, *, model: Any = None, inputs: Any = None) -> SecondOrder:
        """second_order(sensitivities, hessian, third, uncertainties), or second_order(model, inputs)."""
        sensitivities, hessian = (model if model is not None else sensitivities), (inputs if inputs is not None else hessian)
        if callable(sensitivities):
            known = _inputs(hessian)
            value = _first_call(sensitivities, known)
            u, bias, _ = _c.second_order_of_model(_scalar_call(sensitivities), known)
            s = SecondOrder(u, bias)
            s.value = value
            first = budget.first_order(sensitivities, known).uncertainty
        else:
            if third is None or uncertainties is None:
                raise TypeError("second_order takes sensitivities, hessian, third and uncertainties, or a model and its inputs")
            c, w = _array(sensitivities, 1, "sensitivities"), _array(uncertainties, 1, "uncertainties")
            s = SecondOrder(*_c.second_order(c, _array(hessian, 2, "hessian"), _array(third, 2, "third"), w)[:2])
            first = float(_c.budget(c, w, None)["uncertainty"])
        if s.uncertainty ** 2 > 1.05 * first ** 2:
            warnings.warn(f"the second-order terms raise the variance by more than 5 % (u from {first:.3g} to {s.uncertainty:.3g}): first order is not enough here, use Monte Carlo", RuntimeWarning, stacklevel=2)
        return s


class dof:
    """Effective degrees of freedom."""

    @staticmethod
    def welch_satterthwaite(components: ArrayLike, dofs: ArrayLike) -> float:
        """Of independent components |c u|; not defined for correlated ones."""
        return float(_c.welch_satterthwaite(_array(components, 1, "components"), _array(dofs, 1, "dofs")))


class coverage_factor:
    """From a standard to an expanded uncertainty."""

    @staticmethod
    def student(probability: float, dof: float = math.inf) -> float:
        """Two-sided factor; infinite degrees of freedom: normal."""
        return float(_c.student(probability, dof))


class covariance:
    """Readings of one instrument."""

    @staticmethod
    def shared_terms(readings: ArrayLike, reading_uncertainty: float, offset_uncertainty: float, scale_uncertainty: float = 0.0) -> Floats:
        v: Floats = _c.shared_terms(_array(readings, 1, "readings"), reading_uncertainty, offset_uncertainty, scale_uncertainty)
        return v


class multivariate:
    """Several outputs together."""

    @staticmethod
    def first_order(jacobian: Any, covariance: Any = None, *args: Any, models: Any = None, inputs: Any = None, correlations: ArrayLike | None = None, probability: float = 0.95) -> Joint:
        """first_order(jacobian, covariance, probability=0.95), or first_order(models, inputs, correlations=None, probability=0.95)."""
        jacobian, covariance = (models if models is not None else jacobian), (inputs if inputs is not None else covariance)
        if models is not None or callable(jacobian) or (isinstance(jacobian, (list, tuple)) and jacobian and all(callable(m) for m in jacobian)):
            if len(args) > 2:
                raise TypeError("first_order(models, inputs, correlations, probability) takes four arguments")
            correlations = args[0] if args else correlations
            probability = args[1] if len(args) > 1 else probability
            known = _inputs(covariance)
            rows = [_derivatives(m, known) for m in ([jacobian] if callable(jacobian) else jacobian)]
            slopes = np.array([np.where(np.isnan(c), 0.0, c) for _, c in rows]).reshape(len(rows), len(known))
            j = Joint(*_c.joint(slopes, _c.covariance_of(known, _matrix(correlations)), probability))
            j.values = np.array([v for v, _ in rows])
            return j
        if len(args) > 1 or correlations is not None:
            raise TypeError("first_order(jacobian, covariance, probability): the covariance already holds the correlations")
        return Joint(*_c.joint(_array(jacobian, 2, "jacobian"), _array(covariance, 2, "covariance"), args[0] if args else probability))


class interval:
    """Coverage intervals of a sample."""

    @staticmethod
    def symmetric(samples: ArrayLike, probability: float = 0.95) -> Interval:
        """As much probability below as above."""
        return Interval(*_c.symmetric(_array(samples, 1, "samples"), probability))

    @staticmethod
    def shortest(samples: ArrayLike, probability: float = 0.95) -> Interval:
        """The narrowest."""
        return Interval(*_c.shortest(_array(samples, 1, "samples"), probability))


class monte_carlo:
    """The distribution of an output by drawing the inputs."""

    @staticmethod
    def adaptive(model: Any, inputs: Sequence[Any], correlations: ArrayLike | None = None, probability: float = 0.95, interval: str = "symmetric", digits: int = 2, seed: int = 1,
                 most_trials: float = 1e7) -> MonteCarlo:
        """Draws blocks until mean, uncertainty and both ends are steady to `digits` digits of the uncertainty.

        A list of models gives joint outputs from the same draws.
        """
        if interval not in ("symmetric", "shortest"):
            raise ValueError(f'interval is {interval!r}; expected "symmetric" or "shortest"')
        if isinstance(seed, bool) or int(seed) != seed or not 0 <= int(seed) < 2 ** 64:
            raise ValueError(f"seed is {seed!r}; expected a whole number from 0 to 2^64 - 1")
        several = isinstance(model, (list, tuple))
        models = list(model) if several else [model]
        if not models:
            raise ValueError("there is no model")
        found = _c.adaptive(_Blocks(models), _inputs(inputs), _matrix(correlations), probability, interval == "shortest", digits, int(seed), float(most_trials))
        return MonteCarlo(found, several, probability, interval)
