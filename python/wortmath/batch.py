"""Batches: a file in, a computed batch out.

    >>> import wortmath as wm
    >>> batch = wm.batch.read(wm.batch.demo_path())
    >>> forecast = batch.forecast()
    >>> round(forecast.results["original_gravity"], 3)
    1.053

The shape of a forecast is that of `wortmath card --json`; docs/batch.md describes file and result.
"""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any, NamedTuple

from . import _core

if TYPE_CHECKING:
    from ._adjust import Adjustment, Judgement
    from ._plan import Plan

BatchError = _core.BatchError

__all__ = ["Batch", "BatchError", "Derivative", "Forecast", "adjust", "caution_text", "demo_path", "judge_fermentation", "read", "read_text"]


class Derivative(NamedTuple):
    """How a result moves with one amount of the file: its change for one `unit` more of the amount."""
    step: int | None
    name: str | None
    key: str
    value: float
    derivative: float
    unit: str
    given: bool


class Forecast:
    """What comes out of a batch: every step's state, the ledger, the results, the package and the cautions."""

    def __init__(self, batch: Batch, data: dict[str, Any]) -> None:
        self.batch = batch
        self._data = data

    def __getattr__(self, name: str) -> Any:
        try:
            return self.__dict__["_data"][name]
        except KeyError:
            raise AttributeError(f'a forecast has no "{name}"; it has {", ".join(self.__dict__.get("_data", {}))}') from None

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self._data]

    def __repr__(self) -> str:
        r = self._data["results"]
        parts = [f"{label} {r[key]:{form}}{unit}" for label, key, form, unit in (("OG", "original_gravity", ".4f", ""), ("FG", "final_gravity", ".4f", ""),
                 ("alcohol", "alcohol_by_volume", ".1f", " % vol"), ("bitterness", "bitterness_bu", ".0f", " BU"), ("colour", "colour_srm", ".0f", " SRM")) if r[key] is not None]
        return f"<forecast of {self._data['name']!r}: {', '.join(parts)}>"

    def to_dict(self) -> dict[str, Any]:
        """The whole result, as it is printed by `card --json`."""
        return self._data

    def to_json(self, indent: int | None = 2) -> str:
        return json.dumps(self._data, indent=indent, ensure_ascii=False, allow_nan=False)

    @property
    def stops(self) -> bool:
        """Whether one of the cautions is a stop."""
        return any(c["level"] == "stop" for c in self._data["cautions"])

    def gradient(self, result_key: str) -> list[Derivative]:
        """How one of the results, or of the package, moves with every amount of the file (and with the defaults in use)."""
        return self.batch.gradient(result_key)

    def card(self, units: str | None = None) -> str:
        """The kettle card as text, 80 columns; units "us", "metric" or None for those of the file."""
        from . import _card
        return _card.text(self, units)


class Batch:
    """A batch as its file has it. `forecast()` brews it on paper."""

    def __init__(self, core: Any, source: str | None = None, text: str | None = None) -> None:
        self._core = core
        self.source = source
        self._text = text

    @property
    def name(self) -> str:
        return str(self._core.name)

    @property
    def notes(self) -> str | None:
        notes: str | None = self._core.notes
        return notes

    @cached_property
    def steps(self) -> list[dict[str, Any]]:
        """The steps with all their keys: amounts as dicts with value, text, unit, line and whether the file gave them."""
        steps: list[dict[str, Any]] = self._core.steps
        return steps

    @cached_property
    def instruments(self) -> dict[str, Any]:
        instruments: dict[str, Any] = self._core.instruments
        return instruments

    @property
    def text(self) -> str:
        """The file as it is written."""
        if self._text is None:
            with open(self.source or "", encoding="utf-8", newline="") as f:
                self._text = f.read()
        return self._text

    def forecast(self) -> Forecast:
        return Forecast(self, self._core._forecast())

    def gradient(self, result_key: str) -> list[Derivative]:
        """Exact derivatives of a result (a key of results or package) by every amount; zero where it does not move."""
        known = _core.result_keys()
        if result_key not in known:
            raise KeyError(f'"{result_key}" is not a result with one number; known: {", ".join(known)}')
        return [Derivative(d["step"], d["name"], d["key"], d["value"], d["derivative"], d["in"], d["given"]) for d in _core.batch_gradient(self._core, result_key)]

    def plan(self) -> Plan:
        """Amounts for the [[target]]s of the file, by its [[free]] ones; the answer is a batch file again."""
        from . import _plan
        return _plan.plan(self.text, self.source)

    def rescale(self, factor: float | None = None, **request: float | None) -> Plan:
        """The batch for another kettle: `factor` or `volume` (L at pitching, 20 degC), and what differs there: `evaporation` (L/h),
        `leave`, `dead_space`, `rack_leave`, `packaging_loss`, `largest_boil` (L), `altitude` (m), `top_up_temperature` (degC)."""
        from . import _plan
        return _plan.rescale(self.text, self.source, factor=factor, **request)

    def adjust(self, stage: str, volume: float, gravity: float, temperature: float = 20.0, **more: Any) -> Adjustment:
        """What to do about a reading at a stage, against the plan; keywords as in `wortmath.batch.adjust`."""
        from . import _adjust
        return _adjust.adjust_batch(self, stage, volume, gravity, temperature, **more)

    def spread(self, **options: Any) -> dict[str, Any]:
        """How sure the forecast is, as plain data: options `defaults`, `seed`, `trials`, `digits`, `probability`, `monte_carlo`."""
        from . import _spread
        return _spread.spread(self, **options)

    def reconcile(self, *, defaults: bool = True) -> dict[str, Any]:
        """The file's [[reading]] against the batch, as plain data: what does not fit, and what probably happened."""
        from . import _reconcile
        return _reconcile.reconcile(self, defaults=defaults)

    def output(self, result: str, amounts: Sequence[tuple[str | int, str]], step: int = 0) -> Any:
        """A figure as a measurement model for wortmath.uncertainty: a function of some amounts, each given by the name
        of its ingredient or the number of its step, and its key."""
        from . import _spread
        return _spread.Output(self, result, amounts, step)

    def __repr__(self) -> str:
        return f"<batch {self.name!r}, {len(self.steps)} steps>"


def read(path: str | os.PathLike[str]) -> Batch:
    """Read a batch file. Raises BatchError, whose message names line, step and key."""
    return Batch(_core.read_file(os.fspath(path)), os.fspath(path))


def read_text(text: str) -> Batch:
    """Read a batch from a string."""
    return Batch(_core.read_text(text), None, text)


def _model(path: str) -> Any:
    return _core._models[path]


def adjust(stage: str, volume: float, gravity: float, temperature: float = 20.0, **more: Any) -> Adjustment:
    """What to do about a bare reading, without a batch. See `help(wortmath._adjust.adjust)` for the keywords."""
    from . import _adjust
    return _adjust.adjust(stage, volume, gravity, temperature, **more)


def judge_fermentation(days: list[float], gravities: list[float], standard_uncertainty: float = 0.0005, **more: float | None) -> Judgement:
    """Has it finished? From two or more readings; keywords `original_gravity`, `expected_gravity`, `limit_gravity`."""
    from . import _adjust
    return _adjust.judge_fermentation(days, gravities, standard_uncertainty, **more)


def demo_path() -> Path:
    """The bundled batch. It is invented."""
    return Path(__file__).with_name("data") / "demo.toml"


def caution_text(caution_id: str) -> str:
    """The words of a caution."""
    return str(_core.caution_text(caution_id))
