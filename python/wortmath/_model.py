"""What every model knows about itself: attached to the compiled type, so that calling it stays a call into C."""

from __future__ import annotations

import html
import inspect
import math
from collections import namedtuple
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from . import _colour, _core, _gradient

Model = _core.Model


@dataclass(frozen=True)
class Input:
    """One argument of a model. `validated` and `possible` are pairs of limits in `unit`."""
    name: str
    kind: str
    unit: str
    noun: str
    validated: tuple[float, float]
    possible: tuple[float, float]
    words: list[str]
    required: bool
    default: Any = None


@dataclass(frozen=True)
class Output:
    """One result of a model."""
    name: str | None
    unit: str
    noun: str
    kind: str
    words: list[str]


@lru_cache(maxsize=None)
def facts(path: str) -> dict[str, Any]:
    d: dict[str, Any] = _core.describe(path)
    d["inputs"] = tuple(Input(**i) for i in d["inputs"])
    d["outputs"] = tuple(Output(**o) for o in d["outputs"])
    return d


def range_text(lo: float, hi: float) -> str:
    # the largest finite number keeps infinity out; to a reader it is no limit
    lo, hi = (-math.inf if lo < -1e308 else lo), (math.inf if hi > 1e308 else hi)
    if lo == -math.inf and hi == math.inf:
        return "any"
    if hi == math.inf:
        return "above 0" if 0 < lo < 1e-300 else f"{lo:g} or more"
    if lo == -math.inf:
        return f"{hi:g} at most"
    return f"above 0, to {hi:g}" if 0 < lo < 1e-300 else f"{lo:g} to {hi:g}"


def _property(name: str, doc: str) -> property:
    return property(lambda self: facts(self.path)[name], doc=doc)


def _input_range(i: Input) -> str:
    return " | ".join(i.words) if i.kind == "word" else "True or False" if i.kind == "truth" else range_text(*i.validated)


def _default_text(i: Input) -> str:
    return "" if i.required else f" = {i.default!r}" if not isinstance(i.default, float) else f" = {i.default:g}"


def _signature(self: Any) -> inspect.Signature:
    kind = inspect.Parameter.POSITIONAL_OR_KEYWORD
    parameters = [inspect.Parameter(i.name, kind, default=inspect.Parameter.empty if i.required else i.default) for i in self.inputs]
    parameters.append(inspect.Parameter("policy", inspect.Parameter.KEYWORD_ONLY, default=None))
    return inspect.Signature(parameters)


def _doc(self: Any) -> str:
    f = facts(self.path)
    rows = [f["question"], ""]
    if f["use"]:
        rows += [f"Use: {f['use']}.", ""]
    if f["inputs"]:
        rows.append("Parameters")
        rows.append("----------")
        for i in f["inputs"]:
            rows.append(f"{i.name} : {i.unit}{_default_text(i)}")
            rows.append(f"    {i.noun}; validated {_input_range(i)}" if i.kind not in ("word", "truth") else f"    {_input_range(i)}")
        rows += ["policy : \"raise\" (scalars), \"nan\" (arrays) or \"extrapolate\"",
                 "    what happens outside the validated range; lists and arrays broadcast", ""]
    rows += ["Returns", "-------"]
    rows += [f"{o.name or f['name']} : {o.unit}" for o in f["outputs"]]
    rows += ["", "Raises", "------", "wortmath.RangeError : an input outside its range", "TypeError : text, None or a misspelt argument", ""]
    for label, key in (("Validity", "holds_when"), ("Refusal", "refusal"), ("Accuracy", "accuracy"), ("Note", "note"), ("Danger", "danger")):
        if f[key]:
            rows.append(f"{label}: {f[key]}")
    rows.append(f"Source: {f['source']} ({f['status']})")
    return "\n".join(rows)


def _repr(self: Any) -> str:
    f = facts(self.path)
    arguments = ", ".join(f"{i.name} [{i.unit}]{_default_text(i)}" for i in f["inputs"])
    results = ", ".join((f"{o.name} " if o.name else "") + f"[{o.unit}]" for o in f["outputs"])
    return f"<{self.path}({arguments}) -> {results}; {f['status']}: {f['source']}>"


def _repr_html(self: Any) -> str:
    f = facts(self.path)
    e = html.escape
    rows = "".join(f"<tr><td>{e(i.name)}</td><td>{e(i.unit)}</td><td>{e(_input_range(i))}</td><td>{e(_default_text(i)[3:])}</td></tr>" for i in f["inputs"])
    results = ", ".join(e((o.name + " " if o.name else "") + "[" + o.unit + "]") for o in f["outputs"])
    return (f"<div><b>{e(self.path)}</b> &rarr; {results}<br><i>{e(f['question'])}</i>"
            f"<table><tr><th>argument</th><th>unit</th><th>validated</th><th>default</th></tr>{rows}</table>"
            f"<small>{e(f['status'])}: {e(f['source'])}</small></div>")


def _result_type(self: Any) -> Any:
    return _named(self.path)


@lru_cache(maxsize=None)
def _named(path: str) -> Any:
    f = facts(path)
    made = namedtuple(f["name"], [o.name for o in f["outputs"]])  # type: ignore[misc]
    made.__module__ = "wortmath." + f["topic"]
    if "outside_gamut" in made._fields:
        made.hex = property(_colour.hex_code)  # type: ignore[attr-defined]
    return made


_LANGUAGES = ("python", "c", "javascript", "openformula")


def _chosen(self: Any, words: dict[str, Any]) -> list[int]:
    """The states of the arguments whose words, truth values or presence are settled; -1 leaves one open."""
    states = [-1] * len(self.inputs)
    for name, value in words.items():
        at = next((k for k, i in enumerate(self.inputs) if i.name == name and i.kind in ("word", "truth", "optional")), -1)
        if at < 0:
            open_ = [i.name for i in self.inputs if i.kind in ("word", "truth", "optional")]
            raise TypeError(f'{self.path}: "{name}" cannot be settled in its formula' + (f'; {", ".join(open_)} can' if open_ else ""))
        given = self.inputs[at]
        if given.kind == "word":
            if value not in given.words:
                raise ValueError(f'{self.path}: {name} = {value!r} is not one of {", ".join(given.words)}')
            states[at] = given.words.index(value)
        else:
            states[at] = int(value is not None) if given.kind == "optional" else int(bool(value))
    return states


def latex(self: Any, **words: Any) -> str:
    """The formula as mathematics, printed from the formula that computes.

    Words, truth values and optional numbers may be settled: `model.latex(salt="sodium_chloride")`. Left open, they become
    cases, or the usual one is shown where there are too many.
    """
    return _core.printed(self.path, "latex", _chosen(self, words))


def _formula(self: Any) -> str:
    try:
        return latex(self)
    except ValueError as e:
        return "\\text{" + str(e).removeprefix(self.path + " ") + "}"


def export(self: Any, language: str, **words: Any) -> str:
    """The formula as a function in another language: "python", "c", "javascript", or "openformula" for spreadsheets.

    It is printed from the formula that computes, and needs nothing but that language's mathematics. Ranges are not checked
    in it; they stand in its comment. For spreadsheets each line is a name, a tab and the formula of that name's cell;
    lists are columns. Words, truth values and optional numbers may be settled: `model.export("c", salt="sodium_chloride")`.
    """
    if language not in _LANGUAGES:
        raise ValueError(f'{self.path}: {language!r} is not one of {", ".join(_LANGUAGES)}')
    return _core.printed(self.path, language, _chosen(self, words))


def by_path(path: str) -> Any:
    """The model (or, by the path of a family, its default) with this path."""
    models = _core._models
    if path in models:
        return models[path]
    import wortmath
    at: Any = wortmath
    for part in path.split("."):
        at = getattr(at, part, None)
        if at is None:
            raise KeyError(f"there is no model {path}")
    return at


def _family_models(self: Any) -> dict[str, Any]:
    family = facts(self.path)["family"]
    return {p.rsplit(".", 1)[1]: m for p, m in _core._models.items() if p.startswith(family + ".")}


def compare(self: Any, *args: Any, **kwargs: Any) -> Any:
    """All models of the family at the same inputs: a dict by model name, NaN where one refuses.

    Inputs beyond those that a model takes are left out for it, and models that ask for another scale are left out.
    With pandas installed, a DataFrame for array inputs.
    """
    own = {i.name: i.unit for i in self.inputs}
    # A reading on one gravity scale says nothing to a model that asks for another.
    alike = {n: m for n, m in _family_models(self).items() if all(own.get(i.name, i.unit) in (i.unit, "SG") or i.unit == "SG" for i in m.inputs)}
    return _compare(alike, args, kwargs)


def _compare(models: dict[str, Any], args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    import warnings

    import numpy as np
    found: dict[str, Any] = {}
    for name, model in models.items():
        names = [i.name for i in model.inputs]
        with warnings.catch_warnings():
            warnings.simplefilter("ignore", RuntimeWarning)
            try:
                found[name] = model(*args[:len(names)], **{k: v for k, v in kwargs.items() if k in names or k == "policy"})
            except (ValueError, TypeError):
                found[name] = math.nan
    if any(isinstance(v, np.ndarray) and v.ndim == 1 for v in found.values()):
        try:
            import pandas
        except ImportError:
            return found
        return pandas.DataFrame(found)
    return found


class Family:
    """A family whose models answer different questions: it has no default, one model has to be named."""

    def __init__(self, path: str, question: str, models: dict[str, Any]) -> None:
        self.path = path
        self.question = question
        self._models = models
        self.__dict__.update(models)

    def __call__(self, *args: Any, **kwargs: Any) -> Any:
        raise TypeError(f"{self.path} has no default, since its models answer different questions; name one:\n"
                        + "\n".join(f"  {self.path}.{n}({', '.join(i.name for i in m.inputs)}): {m.use or m.source}" for n, m in self._models.items()))

    def __repr__(self) -> str:
        return f"<{self.path}: {self.question} Models: {', '.join(self._models)}>"

    def compare(self, *args: Any, **kwargs: Any) -> Any:
        return _compare(self._models, args, kwargs)

    @property
    def models(self) -> dict[str, Any]:
        return dict(self._models)


def equip() -> None:
    """Attach the readable side to the compiled type."""
    for name, doc in (("source", "Where the formula was published."), ("status", "primary, secondary, memory or derived."), ("use", "When to take this model."),
                      ("accuracy", "As stated by the source or measured."), ("note", "Traps and misprints."), ("danger", "Where an error can hurt someone."),
                      ("inputs", "The arguments, with units and ranges."), ("outputs", "The results, with units."), ("question", "What the family answers."),
                      ("family", "The path of the family."), ("topic", "The topic."), ("holds_when", "The range that inputs and result have together.")):
        setattr(Model, name, _property(name, doc))
    Model.output = property(lambda self: self.outputs[0] if len(self.outputs) == 1 else self.outputs)
    Model.valid = property(lambda self: {i.name: i.validated for i in self.inputs if i.kind not in ("word", "truth")})
    Model.models = property(_family_models)
    Model.result_type = property(_result_type)
    Model.compare = compare
    Model.gradient = _gradient.gradient
    Model.formula = property(_formula, doc="The formula as mathematics (LaTeX).")
    Model.latex = latex
    Model.export = export
    Model._repr_latex_ = lambda self: "$\\displaystyle " + self.formula + "$"
    Model.__signature__ = property(_signature)
    Model.__doc__ = property(_doc)
    Model.name = property(lambda self: facts(self.path)["name"])
    Model.__repr__ = _repr
    Model._repr_html_ = _repr_html
    Model.__reduce__ = lambda self: (by_path, (self.path,))
