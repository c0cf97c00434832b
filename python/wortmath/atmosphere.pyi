# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_altitude(Model):
    @overload
    def __call__(self, altitude: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, altitude: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, altitude: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_pressure(Model):
    @overload
    def __call__(self, pressure: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, pressure: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, pressure: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_sea_level_pressure_and_altitude(Model):
    @overload
    def __call__(self, sea_level_pressure: _S, altitude: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, sea_level_pressure: _N, altitude: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, sea_level_pressure: _L, altitude: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _pressure_us1976(_of_altitude):
    """What is the usual air pressure at an altitude? altitude [m] -> [bar]. Use: where no barometer is at hand."""
    us1976: _pressure_us1976

class _altitude_us1976(_of_pressure):
    """At which altitude is an air pressure the usual one? pressure [bar] -> [m]. Use: to place a barometer's reading on the scale of altitudes."""
    us1976: _altitude_us1976

class _station_pressure_us1976_scaled(_of_sea_level_pressure_and_altitude):
    """What is the true air pressure here, given the weather report's? sea_level_pressure [bar], altitude [m] -> [bar]. Use: before water.boiling_temperature, when the pressure comes from a weather report."""
    us1976_scaled: _station_pressure_us1976_scaled

pressure: _pressure_us1976
altitude: _altitude_us1976
station_pressure: _station_pressure_us1976_scaled
