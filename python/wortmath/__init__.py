"""Brewing mathematics: every model by topic, family and name, as scalars, arrays and batches.

    >>> import wortmath as wm
    >>> round(wm.extract.from_gravity(1.048), 2)                     # the default model of the family
    11.91
    >>> round(wm.extract.from_gravity.lincoln(1.048), 2)             # a named one
    11.91

Bare numbers are in the library's units (g, L, kg/m3, degC, bar, shares from 0 to 1); every model lists them.
"""

from __future__ import annotations

import sys
from types import ModuleType

from . import _call, _core, _model
from ._errors import RangeError, RangeWarning
from ._model import Family, Model

_core.install(_call.slow, _call.report, RangeError)
_model.equip()


def _build() -> list[str]:
    """The topics as modules, made from the catalogue: wortmath.extract.from_gravity.lincoln."""
    topics: dict[str, ModuleType] = {}
    families: dict[str, dict[str, Model]] = {}
    for path, model in _core._models.items():
        families.setdefault(path.rsplit(".", 1)[0], {})[path.rsplit(".", 1)[1]] = model
    for family_path, models in families.items():
        topic_name, family_name = family_path.split(".")
        topic = topics.get(topic_name)
        if topic is None:
            topic = topics[topic_name] = ModuleType(f"{__name__}.{topic_name}", f"The families of models of the topic {topic_name}.")
            topic.__all__ = []  # type: ignore[attr-defined]
            sys.modules[topic.__name__] = topic
            globals()[topic_name] = topic
        default = next((m for n, m in models.items() if _core.is_default(m)), None)
        family: Model | Family
        if default is None:
            family = Family(family_path, next(iter(models.values())).question, models)
        else:
            family = default
            for name, model in models.items():
                default.__dict__[name] = model
        setattr(topic, family_name, family)
        topic.__all__.append(family_name)  # type: ignore[attr-defined]
    return sorted(topics)


topics = _build()

from . import batch, reconcile, uncertainty  # noqa: E402  (need nothing of the topics, but stand after them in the namespace)


def get_include() -> str:
    """The folder of the C++ headers that this package carries, for building extension modules against them."""
    from pathlib import Path
    return str(Path(__file__).with_name("include"))


__version__ = "0.1.0"
__all__ = ["batch", "reconcile", "uncertainty", "Family", "Model", "RangeError", "RangeWarning", "get_include", "topics", *topics]
