# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

import numpy as np
from numpy.typing import NDArray

from . import Family, Model, _A, _L, _N, _P, _S, _W

class _of_original_extract_and_density_and_real_attenuation(Model):
    @overload
    def __call__(self, original_extract: _S, density: _S, real_attenuation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, density: _N, real_attenuation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, density: _L, real_attenuation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_co2_mass_and_room_volume_and_temperature(Model):
    @overload
    def __call__(self, co2_mass: _S, room_volume: _S, temperature: _S = 20.0, background: _S = 420.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, co2_mass: _N, room_volume: _N, temperature: _N = 20.0, background: _N = 420.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, co2_mass: _L, room_volume: _L, temperature: _L = 20.0, background: _L = 420.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_release_rate_and_fresh_air_flow_and_temperature(Model):
    @overload
    def __call__(self, release_rate: _S, fresh_air_flow: _S, temperature: _S = 20.0, background: _S = 420.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, release_rate: _N, fresh_air_flow: _N, temperature: _N = 20.0, background: _N = 420.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, release_rate: _L, fresh_air_flow: _L, temperature: _L = 20.0, background: _L = 420.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_co2_concentration(Model):
    @overload
    def __call__(self, co2_concentration: _S, *, policy: _P = None) -> int: ...
    @overload
    def __call__(self, co2_concentration: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> NDArray[np.int64]: ...
    @overload
    def __call__(self, co2_concentration: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _co2_release_balling(_of_original_extract_and_density_and_real_attenuation):
    """How much carbon dioxide does a fermentation give off? original_extract [degP], density [kg/m3], real_attenuation [fraction] -> [g/L]. Use: a whole fermentation, in grams per litre of wort."""
    balling: _co2_release_balling

class _co2_concentration_sealed_room(_of_co2_mass_and_room_volume_and_temperature):
    """How much carbon dioxide is in the air of the room? co2_mass [g], room_volume [m3], temperature [degC], background [ppm] -> [ppm]. Use: a cylinder that empties, or a room without ventilation."""

class _co2_concentration_steady_ventilation(_of_release_rate_and_fresh_air_flow_and_temperature):
    """How much carbon dioxide is in the air of the room? release_rate [g/h], fresh_air_flow [m3/h], temperature [degC], background [ppm] -> [ppm]. Use: a room with a known flow of fresh air."""

class _co2_concentration(Family):
    """How much carbon dioxide is in the air of the room?"""
    sealed_room: _co2_concentration_sealed_room
    steady_ventilation: _co2_concentration_steady_ventilation

class _caution_project_rule(_of_co2_concentration):
    """Which level of caution does the carbon dioxide in a room call for? co2_concentration [ppm] -> [level]. Use: the mean of a room."""
    project_rule: _caution_project_rule

co2_release: _co2_release_balling
co2_concentration: _co2_concentration
caution: _caution_project_rule
