"""How a model's result moves with its inputs: exact partial derivatives."""

from __future__ import annotations

import math
from typing import Any

from . import _call, _core


def gradient(self: Any, *args: Any, **kwargs: Any) -> Any:
    """The partial derivatives at these inputs, by the name of the argument: in the unit of the result for one unit of the input.

    Plain numbers only; for a list, a list of derivatives. What is chosen by a word, and what is not given, has none.
    Models with several results give a dict for each. The range is checked as in a call.
    """
    if not any(o.kind in ("number", "whole") for o in self.outputs):
        raise TypeError(f"{self.path} answers with words, which have no derivative")
    value = self(*args, **kwargs)
    if hasattr(value, "__array__") and getattr(value, "ndim", 0) > 0:
        raise TypeError(f"{self.path}.gradient takes plain numbers, not arrays")
    given = {k: v for k, v in kwargs.items() if k != "policy"}
    inputs, bound = self.inputs, _call._bind(self, args, given)
    plain: list[Any] = []
    for i, x in zip(inputs, bound):
        if i.kind == "word":
            plain.append(float(i.words.index(x)))
        elif i.kind == "truth":
            plain.append(1.0 if x else 0.0)
        elif x is None:
            plain.append(None)
        elif i.kind == "list":
            plain.append([float(v) for v in x])
        else:
            if hasattr(x, "units"):
                raise TypeError(f"{self.path}.gradient takes plain numbers in the units of the model ({i.name} in {i.unit})")
            plain.append(float(x))
    lengths = {len(x) for x in plain if isinstance(x, list)} - {1}
    if len(lengths) == 1:  # one number stands for all, as in a call
        n = lengths.pop()
        plain = [x * n if isinstance(x, list) and len(x) == 1 else x for x in plain]
    found = _core.model_gradient(self.path, plain)
    moving = [at for at, (i, x) in enumerate(zip(inputs, plain)) if i.kind not in ("word", "truth") and x is not None]
    each = [{inputs[at].name: (math.nan if v != v else by[at]) for at in moving} for v, by in found]
    if len(each) == 1:
        return each[0]
    return {o.name: partials for o, partials in zip(self.outputs, each)}
