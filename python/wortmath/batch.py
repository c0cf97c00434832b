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
from functools import cached_property
from pathlib import Path
from typing import Any

from . import _core

BatchError = _core.BatchError

__all__ = ["Batch", "BatchError", "Forecast", "caution_text", "demo_path", "read", "read_text"]


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

    def card(self, units: str | None = None) -> str:
        """The kettle card as text, 80 columns; units "us", "metric" or None for those of the file."""
        from . import _card
        return _card.text(self, units)


class Batch:
    """A batch as its file has it. `forecast()` brews it on paper."""

    def __init__(self, core: Any, source: str | None = None) -> None:
        self._core = core
        self.source = source

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

    def forecast(self) -> Forecast:
        return Forecast(self, self._core._forecast())

    def __repr__(self) -> str:
        return f"<batch {self.name!r}, {len(self.steps)} steps>"


def read(path: str | os.PathLike[str]) -> Batch:
    """Read a batch file. Raises BatchError, whose message names line, step and key."""
    return Batch(_core.read_file(os.fspath(path)), os.fspath(path))


def read_text(text: str) -> Batch:
    """Read a batch from a string."""
    return Batch(_core.read_text(text))


def demo_path() -> Path:
    """The bundled batch. It is invented."""
    return Path(__file__).with_name("data") / "demo.toml"


def caution_text(caution_id: str) -> str:
    """The words of a caution."""
    return str(_core.caution_text(caution_id))
