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

class _of_applied_gauge_pressure_and_lift_and_resistance(Model):
    @overload
    def __call__(self, applied_gauge_pressure: _S, lift: _S, resistance: _S, beer_density: _S = 1010.0, other_pressure_drop: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, applied_gauge_pressure: _N, lift: _N, resistance: _N, beer_density: _N = 1010.0, other_pressure_drop: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, applied_gauge_pressure: _L, lift: _L, resistance: _L, beer_density: _L = 1010.0, other_pressure_drop: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_length_and_lift_and_resistance(Model):
    @overload
    def __call__(self, length: _S, lift: _S, resistance: _S, beer_density: _S = 1010.0, other_pressure_drop: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, length: _N, lift: _N, resistance: _N, beer_density: _N = 1010.0, other_pressure_drop: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, length: _L, lift: _L, resistance: _L, beer_density: _L = 1010.0, other_pressure_drop: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_pure_co2_gauge_pressure_and_co2_fraction_and_barometer(Model):
    @overload
    def __call__(self, pure_co2_gauge_pressure: _S, co2_fraction: _S, barometer: _S = 1.01325, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, pure_co2_gauge_pressure: _N, co2_fraction: _N, barometer: _N = 1.01325, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, pure_co2_gauge_pressure: _L, co2_fraction: _L, barometer: _L = 1.01325, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_pure_co2_gauge_pressure_and_blend_gauge_pressure_and_barometer(Model):
    @overload
    def __call__(self, pure_co2_gauge_pressure: _S, blend_gauge_pressure: _S, barometer: _S = 1.01325, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, pure_co2_gauge_pressure: _N, blend_gauge_pressure: _N, barometer: _N = 1.01325, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, pure_co2_gauge_pressure: _L, blend_gauge_pressure: _L, barometer: _L = 1.01325, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _altitude_addition_standard_atmosphere(_of_altitude):
    """What has to be added to a chart's gauge pressure at my altitude? altitude [m] -> [bar]. Use: when no barometer is at hand."""
    standard_atmosphere: _altitude_addition_standard_atmosphere
    half_psi_per_1000_ft: _altitude_addition_half_psi_per_1000_ft

class _altitude_addition_half_psi_per_1000_ft(_of_altitude):
    """What has to be added to a chart's gauge pressure at my altitude? altitude [m] -> [bar]. Use: to repeat the trade's chart."""

class _line_length_balance(_of_applied_gauge_pressure_and_lift_and_resistance):
    """How long must the beer line be to use up the pressure? applied_gauge_pressure [bar], lift [m], resistance [bar/m], beer_density [kg/m3], other_pressure_drop [bar] -> [m]. Use: a line of one bore between keg and tap."""
    balance: _line_length_balance

class _line_pressure_balance(_of_length_and_lift_and_resistance):
    """What gauge pressure pushes the beer through its line? length [m], lift [m], resistance [bar/m], beer_density [kg/m3], other_pressure_drop [bar] -> [bar]. Use: a line of one bore between keg and tap."""
    balance: _line_pressure_balance

class _blend_pressure_partial_pressure(_of_pure_co2_gauge_pressure_and_co2_fraction_and_barometer):
    """What gauge pressure of a gas blend replaces a pressure of pure carbon dioxide? pure_co2_gauge_pressure [bar], co2_fraction [fraction], barometer [bar] -> [bar]. Use: blends of carbon dioxide and nitrogen, as ideal gases."""
    partial_pressure: _blend_pressure_partial_pressure

class _blend_fraction_partial_pressure(_of_pure_co2_gauge_pressure_and_blend_gauge_pressure_and_barometer):
    """What share of carbon dioxide must a gas blend have? pure_co2_gauge_pressure [bar], blend_gauge_pressure [bar], barometer [bar] -> [fraction]. Use: blends of carbon dioxide and nitrogen, as ideal gases."""
    partial_pressure: _blend_fraction_partial_pressure

altitude_addition: _altitude_addition_standard_atmosphere
line_length: _line_length_balance
line_pressure: _line_pressure_balance
blend_pressure: _blend_pressure_partial_pressure
blend_fraction: _blend_fraction_partial_pressure
