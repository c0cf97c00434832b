"""The exceptions of wortmath."""

from __future__ import annotations


class RangeError(ValueError):
    """An input is outside the region where a model is validated, or is impossible.

    The message is a sentence for the person who gave the value. The attributes carry the same for a program:
    `model`, `argument`, `value`, `validated` and `possible` (pairs), and `region`: "unvalidated" (computed under
    the policy "extrapolate"), "impossible" (never computed) or "joint" (the inputs and the result together).
    """

    def __init__(self, message: str, model: str = "", argument: str = "", value: float = float("nan"),
                 limits: tuple[float, float, float, float] | None = None, region: str = "") -> None:
        super().__init__(message)
        self.model = model
        self.argument = argument
        self.value = value
        self.validated = None if limits is None else limits[:2]
        self.possible = None if limits is None else limits[2:]
        self.region = region

    def __reduce__(self):  # type: ignore[no-untyped-def]
        limits = None if self.validated is None else (*self.validated, *(self.possible or ()))
        return type(self), (str(self), self.model, self.argument, self.value, limits, self.region)


class RangeWarning(RuntimeWarning):
    """Elements of an array were outside a model's range and became NaN."""
