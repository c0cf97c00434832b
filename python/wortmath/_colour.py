"""What the colour models take and give beyond numbers and words: spectra of the caller's own, colours as #rrggbb."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np

from ._errors import RangeError


def hex_code(self: Any) -> str:
    """The colour as "#rrggbb"."""
    return f"#{int(self.red):02x}{int(self.green):02x}{int(self.blue):02x}"


def takes_spectrum(model: Any) -> bool:
    return model.path in ("colour.tristimulus.table_5nm", "colour.tristimulus.table_10nm")


def _relative(model: Any, spectrum: Any) -> Callable[[float], float]:
    from . import colour
    if callable(spectrum):
        return spectrum  # type: ignore[no-any-return]
    with_parameter = {"log_linear": colour.spectrum.log_linear, "two_group": colour.spectrum.two_group}
    if isinstance(spectrum, (tuple, list)) and len(spectrum) == 2 and isinstance(spectrum[0], str):
        name, parameter = spectrum
        if name in with_parameter:
            return lambda wavelength: with_parameter[name](wavelength, parameter)
        raise RangeError(f'{model.path}: spectrum = "{name}" is not known as a spectrum with a parameter; it is one of {", ".join(with_parameter)}',
                         model.path, "spectrum")
    raise TypeError(f"{model.path}: spectrum = {spectrum!r} is neither a name, nor a name with its parameter as in (\"two_group\", 0.73), "
                    "nor a function of the wavelength in nm")


def through(model: Any, bound: list[Any], policy: str | None) -> Any:
    """Tristimulus values through a spectrum that is a name with its parameter, or a function of the wavelength in nm."""
    from . import colour
    srm, path_length, illuminant, observer, spectrum = bound
    relative = _relative(model, spectrum)
    how = {} if policy is None else {"policy": policy}
    checked = model(srm, path_length, illuminant, observer, **how)  # the ranges are those of the named spectrum
    wavelengths = np.arange(380.0, 781.0, 5.0)
    rows = np.ones(81) if model.name == "table_5nm" else (wavelengths % 10.0 == 0.0).astype(float)
    ratios = np.array([float(relative(float(w))) if used else 0.0 for w, used in zip(wavelengths, rows)])
    if np.isnan(ratios).any():
        raise RangeError(f"{model.path}: spectrum gives no number at some wavelength; it needs one at every row of the table, 380 to 780 nm", model.path, "spectrum")
    whole: Any = {"policy": "extrapolate"}
    transmittances = rows * colour.transmittance(np.expand_dims(srm, -1), np.expand_dims(path_length, -1), ratios, **whole)
    seen = colour.tristimulus_from_transmittance(transmittances, illuminant, observer, **whole)
    white = colour.tristimulus_from_transmittance(rows, illuminant, observer)
    values = [np.where(np.isnan(c), c, v / white.y) for c, v in zip(checked, seen)]
    return model.result_type(*(float(v) if np.ndim(c) == 0 else v for c, v in zip(checked, values)))
