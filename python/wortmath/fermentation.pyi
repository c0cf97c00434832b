# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_hours_and_start_and_end(Model):
    @overload
    def __call__(self, hours: _S, start: _S, end: _S, rate: _S, midpoint_hours: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, hours: _N, start: _N, end: _N, rate: _N, midpoint_hours: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, hours: _L, start: _L, end: _L, rate: _L, midpoint_hours: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_progress_and_rate_and_midpoint_hours(Model):
    @overload
    def __call__(self, progress: _S, rate: _S, midpoint_hours: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, progress: _N, rate: _N, midpoint_hours: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, progress: _L, rate: _L, midpoint_hours: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_fermented_mass_and_heat_of_fermentation(Model):
    @overload
    def __call__(self, fermented_mass: _S, heat_of_fermentation: _S = 600.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, fermented_mass: _N, heat_of_fermentation: _N = 600.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, fermented_mass: _L, heat_of_fermentation: _L = 600.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_glucose_mass_and_maltose_mass_and_maltotriose_mass(Model):
    @overload
    def __call__(self, glucose_mass: _S, maltose_mass: _S, maltotriose_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, glucose_mass: _N, maltose_mass: _N, maltotriose_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, glucose_mass: _L, maltose_mass: _L, maltotriose_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_drop_and_heat_of_fermentation_and_specific_heat(Model):
    @overload
    def __call__(self, extract_drop: _S, heat_of_fermentation: _S = 600.0, specific_heat: _S = 4.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract_drop: _N, heat_of_fermentation: _N = 600.0, specific_heat: _N = 4.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract_drop: _L, heat_of_fermentation: _L = 600.0, specific_heat: _L = 4.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _course_logistic(_of_hours_and_start_and_end):
    """What does the hydrometer read after some hours of fermentation? hours [h], start [any], end [any], rate [1/h], midpoint_hours [h] -> [any]."""
    logistic: _course_logistic

class _course_time_logistic(_of_progress_and_rate_and_midpoint_hours):
    """When will a given share of the drop in gravity be done? progress [fraction], rate [1/h], midpoint_hours [h] -> [h]."""
    logistic: _course_time_logistic

class _heat_per_extract(_of_fermented_mass_and_heat_of_fermentation):
    """How much heat does the fermentation release? fermented_mass [g], heat_of_fermentation [kJ/kg] -> [kJ]. Use: malt wort, where the sugars are not known one by one."""
    per_extract: _heat_per_extract
    sugar_profile: _heat_sugar_profile

class _heat_sugar_profile(_of_glucose_mass_and_maltose_mass_and_maltotriose_mass):
    """How much heat does the fermentation release? glucose_mass [g], maltose_mass [g], maltotriose_mass [g] -> [kJ]. Use: a wort with an analysis of its sugars."""

class _temperature_rise_adiabatic(_of_extract_drop_and_heat_of_fermentation_and_specific_heat):
    """How much would the beer warm up if nothing cooled it? extract_drop [degP], heat_of_fermentation [kJ/kg], specific_heat [kJ/(kg K)] -> [K]."""
    adiabatic: _temperature_rise_adiabatic

course: _course_logistic
course_time: _course_time_logistic
heat: _heat_per_extract
temperature_rise: _temperature_rise_adiabatic
