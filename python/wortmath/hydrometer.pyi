# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_gravity_and_sample_temperature_and_calibration_temperature(Model):
    @overload
    def __call__(self, gravity: _S, sample_temperature: _S, calibration_temperature: _S = 20.0, water_temperature: _S | None = None, air_density: _S = 1.2, glass_expansion: _S = 2.5e-05, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, sample_temperature: _N, calibration_temperature: _N = 20.0, water_temperature: _N | None = None, air_density: _N = 1.2, glass_expansion: _N = 2.5e-05, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, sample_temperature: _L, calibration_temperature: _L = 20.0, water_temperature: _L | None = None, air_density: _L = 1.2, glass_expansion: _L = 2.5e-05, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity_and_sample_temperature(Model):
    @overload
    def __call__(self, gravity: _S, sample_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, sample_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, sample_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity_and_sample_temperature_and_calibration_temperature_variant_2(Model):
    @overload
    def __call__(self, gravity: _S, sample_temperature: _S, calibration_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, sample_temperature: _N, calibration_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, sample_temperature: _L, calibration_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_sample_temperature_and_calibration_temperature(Model):
    @overload
    def __call__(self, extract: _S, sample_temperature: _S, calibration_temperature: _S = 20.0, glass_expansion: _S = 2.5e-05, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, sample_temperature: _N, calibration_temperature: _N = 20.0, glass_expansion: _N = 2.5e-05, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, sample_temperature: _L, calibration_temperature: _L = 20.0, glass_expansion: _L = 2.5e-05, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity_and_water_reading(Model):
    @overload
    def __call__(self, gravity: _S, water_reading: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, water_reading: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, water_reading: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity_and_low_reading_and_low_gravity(Model):
    @overload
    def __call__(self, gravity: _S, low_reading: _S, low_gravity: _S, high_reading: _S, high_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, low_reading: _N, low_gravity: _N, high_reading: _N, high_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, low_reading: _L, low_gravity: _L, high_reading: _L, high_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_stem_diameter_and_mass_and_surface_tension_change(Model):
    @overload
    def __call__(self, stem_diameter: _S, mass: _S, surface_tension_change: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, stem_diameter: _N, mass: _N, surface_tension_change: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, stem_diameter: _L, mass: _L, surface_tension_change: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _correct_glass_and_liquid(_of_gravity_and_sample_temperature_and_calibration_temperature):
    """What would this hydrometer have read at its calibration temperature? gravity [SG], sample_temperature [degC], calibration_temperature [degC], water_temperature [degC], air_density [kg/m3], glass_expansion [1/K] -> [SG]. Use: every hydrometer whose calibration temperature is known."""
    glass_and_liquid: _correct_glass_and_liquid
    lyons: _correct_lyons
    lyons_difference: _correct_lyons_difference
    lyons_quadratic: _correct_lyons_quadratic
    ratio_cubic: _correct_ratio_cubic
    water_only: _correct_water_only

class _correct_lyons(_of_gravity_and_sample_temperature):
    """What would this hydrometer have read at its calibration temperature? gravity [SG], sample_temperature [degC] -> [SG]. Use: to repeat older work with an instrument of 59 degF."""

class _correct_lyons_difference(_of_gravity_and_sample_temperature_and_calibration_temperature_variant_2):
    """What would this hydrometer have read at its calibration temperature? gravity [SG], sample_temperature [degC], calibration_temperature [degC] -> [SG]. Use: to compare with glass_and_liquid."""

class _correct_lyons_quadratic(_of_gravity_and_sample_temperature):
    """What would this hydrometer have read at its calibration temperature? gravity [SG], sample_temperature [degC] -> [SG]. Use: to repeat older work with an instrument of 59 degF."""

class _correct_ratio_cubic(_of_gravity_and_sample_temperature_and_calibration_temperature_variant_2):
    """What would this hydrometer have read at its calibration temperature? gravity [SG], sample_temperature [degC], calibration_temperature [degC] -> [SG]. Use: to repeat older work."""

class _correct_water_only(_of_gravity_and_sample_temperature_and_calibration_temperature_variant_2):
    """What would this hydrometer have read at its calibration temperature? gravity [SG], sample_temperature [degC], calibration_temperature [degC] -> [SG]. Use: to check a printed table of corrections."""

class _correct_plato_glass_and_liquid(_of_extract_and_sample_temperature_and_calibration_temperature):
    """What would this saccharometer have read at its calibration temperature? extract [degP], sample_temperature [degC], calibration_temperature [degC], glass_expansion [1/K] -> [degP]. Use: every saccharometer whose calibration temperature is known."""
    glass_and_liquid: _correct_plato_glass_and_liquid

class _calibrate_offset(_of_gravity_and_water_reading):
    """What does a hydrometer reading become when the instrument's own error is taken off? gravity [SG], water_reading [SG] -> [SG]. Use: when water is the only known liquid at hand."""
    offset: _calibrate_offset
    two_point: _calibrate_two_point

class _calibrate_two_point(_of_gravity_and_low_reading_and_low_gravity):
    """What does a hydrometer reading become when the instrument's own error is taken off? gravity [SG], low_reading [SG], low_gravity [SG], high_reading [SG], high_gravity [SG] -> [SG]. Use: water, and sucrose weighed into water: 100 g and 900 g make 10 degP, 1.0400 on the scale 20/20."""

class _surface_tension_shift_force_balance(_of_stem_diameter_and_mass_and_surface_tension_change):
    """How much does a hydrometer misread in a liquid of another surface tension? stem_diameter [mm], mass [g], surface_tension_change [mN/m] -> [ratio]. Use: to judge an instrument that was calibrated in another liquid."""
    force_balance: _surface_tension_shift_force_balance

correct: _correct_glass_and_liquid
correct_plato: _correct_plato_glass_and_liquid
calibrate: _calibrate_offset
surface_tension_shift: _surface_tension_shift_force_balance
