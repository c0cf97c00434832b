# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_temperature(Model):
    @overload
    def __call__(self, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_pressure(Model):
    @overload
    def __call__(self, temperature: _S, pressure: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, pressure: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, pressure: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_pressure(Model):
    @overload
    def __call__(self, pressure: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, pressure: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, pressure: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_barometer(Model):
    @overload
    def __call__(self, temperature: _S, barometer: _S = 1.01325, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, barometer: _N = 1.01325, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, barometer: _L = 1.01325, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _density_iapws_sr6_08(_of_temperature):
    """What is the density of air-free pure water at a temperature? temperature [degC] -> [kg/m3]. Use: plain water at any temperature."""
    iapws_sr6_08: _density_iapws_sr6_08
    tanaka: _density_tanaka
    kell: _density_kell
    ptb_1990: _density_ptb_1990

class _density_tanaka(_of_temperature):
    """What is the density of air-free pure water at a temperature? temperature [degC] -> [kg/m3]. Use: calibration work between 0 and 40 degC."""

class _density_kell(_of_temperature):
    """What is the density of air-free pure water at a temperature? temperature [degC] -> [kg/m3]. Use: to repeat older work."""

class _density_ptb_1990(_of_temperature):
    """What is the density of air-free pure water at a temperature? temperature [degC] -> [kg/m3]. Use: above and below the line of every gravity ratio, beside icumsa."""

class _pressure_factor_tanaka(_of_temperature_and_pressure):
    """By which factor does pressure raise the density of water? temperature [degC], pressure [bar] -> [ratio]. Use: calibration work; no brewing reading can tell."""
    tanaka: _pressure_factor_tanaka

class _dissolved_air_tanaka(_of_temperature):
    """How much is added to the density of air-free water when it is saturated with air? temperature [degC] -> [kg/m3]. Use: calibration work; no brewing reading can tell."""
    tanaka: _dissolved_air_tanaka

class _saturation_pressure_if97(_of_temperature):
    """At which pressure does water boil at a temperature? temperature [degC] -> [bar]. Use: everywhere."""
    if97: _saturation_pressure_if97
    iapws_sr1_86: _saturation_pressure_iapws_sr1_86

class _saturation_pressure_iapws_sr1_86(_of_temperature):
    """At which pressure does water boil at a temperature? temperature [degC] -> [bar]. Use: as a check on if97 that shares nothing with it."""

class _boiling_temperature_if97(_of_pressure):
    """At which temperature does water boil under a pressure? pressure [bar] -> [degC]. Use: water; wort boils higher by thermal.boiling_point_elevation."""
    if97: _boiling_temperature_if97

class _oxygen_saturation_benson_krause(_of_temperature_and_barometer):
    """How much oxygen does water hold that stands in air? temperature [degC], barometer [bar] -> [mg/L]. Use: air-saturated pure water at cellar and pitching temperatures."""
    benson_krause: _oxygen_saturation_benson_krause
    iapws_g7_04: _oxygen_saturation_iapws_g7_04

class _oxygen_saturation_iapws_g7_04(_of_temperature_and_barometer):
    """How much oxygen does water hold that stands in air? temperature [degC], barometer [bar] -> [mg/L]. Use: as an independent check of the default."""

density: _density_iapws_sr6_08
pressure_factor: _pressure_factor_tanaka
dissolved_air: _dissolved_air_tanaka
saturation_pressure: _saturation_pressure_if97
boiling_temperature: _boiling_temperature_if97
oxygen_saturation: _oxygen_saturation_benson_krause
