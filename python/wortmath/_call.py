"""Calls that the short way in C does not take: keywords, lists, arrays of integers, labels, quantities, mistakes."""

from __future__ import annotations

import difflib
import numbers
import warnings
from typing import Any

import numpy as np

from . import _colour, _core
from ._errors import RangeError, RangeWarning

_EXTRAS = ("policy", "out", "where")


def nearest(word: str, known: list[str]) -> str:
    """'; did you mean "x"?' or nothing."""
    close = difflib.get_close_matches(word, known, 1, 0.5)
    return f'; did you mean "{close[0]}"?' if close else ""


def _bind(model: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> list[Any]:
    inputs = model.inputs
    names = [i.name for i in inputs]
    if len(args) > len(inputs):
        raise TypeError(f"{model.path} takes {len(inputs)} arguments ({', '.join(names)}), {len(args)} were given")
    missing = object()
    bound: list[Any] = [missing] * len(inputs)
    bound[:len(args)] = args
    for name, value in kwargs.items():
        if name not in names:
            raise TypeError(f'{model.path} has no argument "{name}"{nearest(name, names + list(_EXTRAS))}; it takes {", ".join(names) or "none"}')
        at = names.index(name)
        if bound[at] is not missing:
            raise TypeError(f'{model.path}: "{name}" is given twice')
        bound[at] = value
    for at, given in enumerate(bound):
        if given is missing:
            if inputs[at].required:
                raise TypeError(f'{model.path}: "{names[at]}" ({inputs[at].unit}) is missing')
            bound[at] = inputs[at].default
    return bound


def _not_a_number(model: Any, given: Any, value: Any) -> TypeError:
    return TypeError(f"{model.path}: {given.name} = {value!r} is not a number; {given.noun} is expected")


def _word(model: Any, given: Any, value: Any) -> float:
    if not isinstance(value, str):
        raise TypeError(f"{model.path}: {given.name} = {value!r} is not a word; it is one of {', '.join(given.words)}")
    if value not in given.words:
        raise RangeError(f'{model.path}: {given.name} = "{value}" is not known{nearest(value, given.words)}; it is one of {", ".join(given.words)}',
                         model.path, given.name)
    return float(given.words.index(value))


def _is_quantity(value: Any) -> bool:
    return hasattr(value, "magnitude") and hasattr(value, "units") and hasattr(value, "dimensionality")


def _scalar(model: Any, given: Any, value: Any) -> float | None:
    """The value as a plain number, or None where it is an array."""
    if isinstance(value, (bool, np.bool_)):
        raise _not_a_number(model, given, value)
    if isinstance(value, numbers.Real):
        return float(value)
    if isinstance(value, (str, bytes, type(None), numbers.Complex)):
        raise _not_a_number(model, given, value)
    return None


def _array(model: Any, given: Any, value: Any) -> Any:
    """An array-like as numbers in float; labelled and masked arrays stay what they are."""
    dtype = getattr(value, "dtype", None)
    if dtype is None:
        try:
            value = np.asarray(value)
        except ValueError as e:
            raise _not_a_number(model, given, value) from e
        dtype = value.dtype
    kind = getattr(dtype, "kind", "O")
    if kind == "O":
        flat = np.asarray(value, dtype=object).ravel()
        for x in flat:
            if not isinstance(x, numbers.Real) or isinstance(x, bool):
                raise _not_a_number(model, given, x)
        return np.asarray(value, dtype=float)
    if kind not in "fiu":
        raise _not_a_number(model, given, value)
    if kind in "iu" or getattr(dtype, "itemsize", 8) not in (4, 8):
        value = value.astype(float)
    return value


def slow(model: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    kwargs = dict(kwargs)
    policy = kwargs.pop("policy", None)
    extras = {k: kwargs.pop(k) for k in ("out", "where") if k in kwargs}
    if policy not in (None, "raise", "nan", "extrapolate"):
        raise ValueError(f'{model.path}: policy = {policy!r} is not one of "raise", "nan", "extrapolate"')
    bound = _bind(model, args, kwargs)
    inputs = model.inputs
    if _colour.takes_spectrum(model) and not isinstance(bound[-1], str):
        return _colour.through(model, bound, policy)

    quantities = any(_is_quantity(v) for v in bound)
    if quantities:
        from . import quantities as q
        registry = next(v for v in bound if _is_quantity(v))._REGISTRY
        bound = [q.magnitude_of(model, given, v) if _is_quantity(v) else v for given, v in zip(inputs, bound)]

    values: list[Any] = []
    array_call = False
    for given, value in zip(inputs, bound):
        if given.kind == "word":
            values.append(_word(model, given, value))
        elif given.kind == "truth":
            if not isinstance(value, (bool, np.bool_)):
                raise TypeError(f"{model.path}: {given.name} = {value!r} is neither True nor False")
            values.append(float(value))
        elif given.kind == "list":
            value = _array(model, given, value)
            if getattr(value, "ndim", 0) == 0:
                raise TypeError(f"{model.path}: {given.name} = {value!r} is a single number; a list is expected")
            array_call = array_call or value.ndim > 1
            values.append(value)
        elif value is None and given.kind == "optional":
            values.append(None)
        else:
            number = _scalar(model, given, value)
            if number is None:
                array_call = True
                number = _array(model, given, value)
            values.append(number)

    if not array_call and not extras:
        lists = [np.ascontiguousarray(v, dtype=float) if g.kind == "list" else v for g, v in zip(inputs, values)]
        lengths = {g.name: len(v) for g, v in zip(inputs, lists) if g.kind == "list"}
        if len(set(lengths.values())) > 1:
            raise ValueError(f"{model.path}: the lists differ in length: " + ", ".join(f"{n} has {k}" for n, k in lengths.items()))
        answer = _core.evaluate(model, tuple(lists), policy or "raise")
    else:
        columns = tuple(_core.absent() if v is None else v for v in values)
        answer, tally = _core.through_ufunc(model, columns, extras, policy or "nan")
        report(model, policy or "nan", tally)
        answer = _dressed(model, answer)
    if quantities:
        answer = q.quantity_from(model, answer, registry)
    return answer


def _dressed(model: Any, answer: Any) -> Any:
    outputs = model.outputs
    columns = answer if isinstance(answer, tuple) else (answer,)
    done = []
    for o, column in zip(outputs, columns):
        if o.kind == "whole" and getattr(column, "dtype", None) is not None and column.dtype.kind == "f":
            column = column.astype(np.int64)
        elif o.kind == "truth":
            column = column.astype(bool)
        elif o.kind == "word":
            column = np.asarray(o.words, dtype=object)[np.asarray(column, dtype=int)]
        elif o.kind == "words":
            masks = np.asarray(column, dtype=int)
            words = np.empty(masks.shape, dtype=object)
            for at in np.ndindex(masks.shape):
                words[at] = [w for k, w in enumerate(o.words) if int(masks[at]) >> k & 1]
            column = words if words.ndim else words[()]
        done.append(column)
    if outputs[0].name is None:
        return done[0]
    return model.result_type(*done)


def report(model: Any, policy: str, tally: tuple[int, int, int, int, int, int, float, str]) -> None:
    """Raise or warn for the elements that an array call refused."""
    elements, impossible, unvalidated, joint, undefined, first_input, first_value, first_region = tally
    refused = impossible + unvalidated + joint + undefined
    if not refused:
        return
    # Whole numbers, truth values and words have no NaN that could stand for a refused element.
    must_raise = policy == "raise" or (policy == "extrapolate" and impossible + undefined > 0) or any(o.kind != "number" for o in model.outputs)
    if must_raise:
        _core.refusal(model, first_input, first_value, first_region)
    parts = []
    if unvalidated:
        parts.append(f"{unvalidated} outside the validated range")
    if impossible:
        parts.append(f"{impossible} impossible")
    if undefined:
        parts.append(f"{undefined} without a result for these inputs together")
    if joint:
        parts.append(f"{joint} outside the range of inputs and result together")
    try:
        _core.refusal(model, first_input, first_value, first_region)
    except RangeError as e:
        first = str(e)
    warnings.warn(RangeWarning(f"{model.path}: {refused} of {elements} elements became NaN ({', '.join(parts)}); the first: {first}"), stacklevel=3)
