# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Any, NamedTuple, overload

from . import Model, _A, _L, _Labelled, _List, _N, _P, _Quantity, _S, _W

class _result_1(NamedTuple):
    wort_out_temperature: float
    water_out_temperature: float

class _result_2(NamedTuple):
    wort_out_temperature: _A
    water_out_temperature: _A

class _result_3(NamedTuple):
    temperature: float
    remaining_ice_mass: float

class _result_4(NamedTuple):
    temperature: _A
    remaining_ice_mass: _A

class _of_extract_and_pressure(Model):
    @overload
    def __call__(self, extract: _S, pressure: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, pressure: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, pressure: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_solute_molar_mass_and_pressure(Model):
    @overload
    def __call__(self, extract: _S, solute_molar_mass: _S, pressure: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, solute_molar_mass: _N, pressure: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, solute_molar_mass: _L, pressure: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_water_boiling_temperature(Model):
    @overload
    def __call__(self, extract: _S, water_boiling_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, water_boiling_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, water_boiling_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_specific_heat_and_temperature(Model):
    @overload
    def __call__(self, mass: _S, specific_heat: _S, temperature: _S, target_temperature: _S, water_temperature: _S, water_specific_heat: _S = 4.19, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, specific_heat: _N, temperature: _N, target_temperature: _N, water_temperature: _N, water_specific_heat: _N = 4.19, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, specific_heat: _L, temperature: _L, target_temperature: _L, water_temperature: _L, water_specific_heat: _L = 4.19, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_wort_flow_and_specific_heat_and_temperature(Model):
    @overload
    def __call__(self, wort_flow: _S, specific_heat: _S, temperature: _S, water_flow: _S, water_temperature: _S, ua: _S, *, policy: _P = None) -> _result_1: ...
    @overload
    def __call__(self, wort_flow: _N, specific_heat: _N, temperature: _N, water_flow: _N, water_temperature: _N, ua: _N, *, policy: _P = None) -> _result_2: ...
    @overload
    def __call__(self, wort_flow: _L, specific_heat: _L, temperature: _L, water_flow: _L, water_temperature: _L, ua: _L, *, policy: _P = None) -> Any: ...

class _of_ntu_and_capacity_ratio(Model):
    @overload
    def __call__(self, ntu: _S, capacity_ratio: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, ntu: _N, capacity_ratio: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, ntu: _L, capacity_ratio: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_ntu(Model):
    @overload
    def __call__(self, ntu: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, ntu: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, ntu: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_specific_heat_and_temperature_variant_2(Model):
    @overload
    def __call__(self, mass: _S, specific_heat: _S, temperature: _S, target_temperature: _S, ice_temperature: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, specific_heat: _N, temperature: _N, target_temperature: _N, ice_temperature: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, specific_heat: _L, temperature: _L, target_temperature: _L, ice_temperature: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_specific_heat_and_temperature_variant_3(Model):
    @overload
    def __call__(self, mass: _S, specific_heat: _S, temperature: _S, ice_mass: _S, ice_temperature: _S = 0.0, *, policy: _P = None) -> _result_3: ...
    @overload
    def __call__(self, mass: _N, specific_heat: _N, temperature: _N, ice_mass: _N, ice_temperature: _N = 0.0, *, policy: _P = None) -> _result_4: ...
    @overload
    def __call__(self, mass: _L, specific_heat: _L, temperature: _L, ice_mass: _L, ice_temperature: _L = 0.0, *, policy: _P = None) -> Any: ...

class _of_mass_and_specific_heat_and_temperature_variant_4(Model):
    @overload
    def __call__(self, mass: _S, specific_heat: _S, temperature: _S, water_flow: _S, water_temperature: _S, ua: _S, minutes: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, specific_heat: _N, temperature: _N, water_flow: _N, water_temperature: _N, ua: _N, minutes: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, specific_heat: _L, temperature: _L, water_flow: _L, water_temperature: _L, ua: _L, minutes: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_specific_heat_and_temperature_variant_5(Model):
    @overload
    def __call__(self, mass: _S, specific_heat: _S, temperature: _S, target_temperature: _S, water_flow: _S, water_temperature: _S, ua: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, specific_heat: _N, temperature: _N, target_temperature: _N, water_flow: _N, water_temperature: _N, ua: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, specific_heat: _L, temperature: _L, target_temperature: _L, water_flow: _L, water_temperature: _L, ua: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature(Model):
    @overload
    def __call__(self, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_masses_and_extracts_and_temperatures(Model):
    @overload
    def __call__(self, masses: Sequence[float], extracts: Sequence[float], temperatures: Sequence[float], *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, masses: Sequence[Sequence[float]], extracts: Sequence[Sequence[float]], temperatures: Sequence[Sequence[float]], *, policy: _P = None) -> _A: ...
    @overload
    def __call__(self, masses: _List | _Labelled | _Quantity, extracts: _List | _Labelled | _Quantity, temperatures: _List | _Labelled | _Quantity, *, policy: _P = None) -> Any: ...

class _of_masses_and_specific_heats_and_temperatures(Model):
    @overload
    def __call__(self, masses: Sequence[float], specific_heats: Sequence[float], temperatures: Sequence[float], *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, masses: Sequence[Sequence[float]], specific_heats: Sequence[Sequence[float]], temperatures: Sequence[Sequence[float]], *, policy: _P = None) -> _A: ...
    @overload
    def __call__(self, masses: _List | _Labelled | _Quantity, specific_heats: _List | _Labelled | _Quantity, temperatures: _List | _Labelled | _Quantity, *, policy: _P = None) -> Any: ...

class _of_extract_and_temperature_and_purity(Model):
    @overload
    def __call__(self, extract: _S, temperature: _S, purity: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, temperature: _N, purity: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, temperature: _L, purity: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_temperature(Model):
    @overload
    def __call__(self, extract: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _boiling_point_elevation_starzak_peacock(_of_extract_and_pressure):
    """How far above water does wort boil? extract [degP], pressure [bar] -> [K]. Use: wort: sucrose stands in, as an upper figure for the sugars of wort."""
    starzak_peacock: _boiling_point_elevation_starzak_peacock
    ideal_solution: _boiling_point_elevation_ideal_solution
    peacock_1995: _boiling_point_elevation_peacock_1995

class _boiling_point_elevation_ideal_solution(_of_extract_and_solute_molar_mass_and_pressure):
    """How far above water does wort boil? extract [degP], solute_molar_mass [g/mol], pressure [bar] -> [K]. Use: solutes of another molar mass than sucrose; 500 g/mol is an assumption for wort."""

class _boiling_point_elevation_peacock_1995(_of_extract_and_water_boiling_temperature):
    """How far above water does wort boil? extract [degP], water_boiling_temperature [degC] -> [K]. Use: syrup from 25 degP upwards."""

class _cooling_water_constant_heat(_of_mass_and_specific_heat_and_temperature):
    """How much cold water brings a wort to a temperature? mass [g], specific_heat [kJ/(kg K)], temperature [degC], target_temperature [degC], water_temperature [degC], water_specific_heat [kJ/(kg K)] -> [g]."""
    constant_heat: _cooling_water_constant_heat

class _counterflow_chiller_effectiveness(_of_wort_flow_and_specific_heat_and_temperature):
    """How cold does wort leave a plate or counterflow chiller, and how warm does the water? wort_flow [g/h], specific_heat [kJ/(kg K)], temperature [degC], water_flow [g/h], water_temperature [degC], ua [kW/K] -> wort_out_temperature [degC], water_out_temperature [degC]."""
    effectiveness: _counterflow_chiller_effectiveness

class _effectiveness_counterflow(_of_ntu_and_capacity_ratio):
    """What share of the heat that could pass does a heat exchanger pass? ntu [ratio], capacity_ratio [ratio] -> [fraction]. Use: streams that run against each other."""
    counterflow: _effectiveness_counterflow
    parallel: _effectiveness_parallel
    isothermal: _effectiveness_isothermal

class _effectiveness_parallel(_of_ntu_and_capacity_ratio):
    """What share of the heat that could pass does a heat exchanger pass? ntu [ratio], capacity_ratio [ratio] -> [fraction]. Use: streams that run side by side in one direction: a chiller connected the wrong way round."""

class _effectiveness_isothermal(_of_ntu):
    """What share of the heat that could pass does a heat exchanger pass? ntu [ratio] -> [fraction]. Use: one side boils, or is a large stirred bath: a coil in the kettle."""

class _ice_enthalpy(_of_mass_and_specific_heat_and_temperature_variant_2):
    """How much ice cools a wort to a temperature? mass [g], specific_heat [kJ/(kg K)], temperature [degC], target_temperature [degC], ice_temperature [degC] -> [g]."""
    enthalpy: _ice_enthalpy

class _ice_result_enthalpy(_of_mass_and_specific_heat_and_temperature_variant_3):
    """How cold does a wort become with a given mass of ice? mass [g], specific_heat [kJ/(kg K)], temperature [degC], ice_mass [g], ice_temperature [degC] -> temperature [degC], remaining_ice_mass [g]."""
    enthalpy: _ice_result_enthalpy

class _immersion_chiller_lumped(_of_mass_and_specific_heat_and_temperature_variant_4):
    """How cold is the wort after some minutes with a cooling coil in it? mass [g], specific_heat [kJ/(kg K)], temperature [degC], water_flow [g/h], water_temperature [degC], ua [kW/K], minutes [min] -> [degC]."""
    lumped: _immersion_chiller_lumped

class _immersion_time_lumped(_of_mass_and_specific_heat_and_temperature_variant_5):
    """How long does a cooling coil take to bring the wort to a temperature? mass [g], specific_heat [kJ/(kg K)], temperature [degC], target_temperature [degC], water_flow [g/h], water_temperature [degC], ua [kW/K] -> [min]."""
    lumped: _immersion_time_lumped

class _latent_heat_iapws_fit(_of_temperature):
    """How much heat does it take to evaporate a kilogram of water? temperature [degC] -> [kJ/kg]."""
    iapws_fit: _latent_heat_iapws_fit

class _mix_wort_enthalpy(_of_masses_and_extracts_and_temperatures):
    """What is the temperature of several streams mixed together? masses [g], extracts [degP], temperatures [degC] -> [degC]. Use: topping up and blending, whenever extract and temperature of the streams are known."""
    wort_enthalpy: _mix_wort_enthalpy
    constant_heat: _mix_constant_heat

class _mix_constant_heat(_of_masses_and_specific_heats_and_temperatures):
    """What is the temperature of several streams mixed together? masses [g], specific_heats [kJ/(kg K)], temperatures [degC] -> [degC]. Use: streams whose specific heat is known but not their extract."""

class _specific_heat_kadlec(_of_extract_and_temperature_and_purity):
    """How much heat does a kilogram of wort take for each kelvin? extract [degP], temperature [degC], purity [fraction] -> [kJ/(kg K)]. Use: wort at any temperature."""
    kadlec: _specific_heat_kadlec
    peacock: _specific_heat_peacock

class _specific_heat_peacock(_of_extract_and_temperature):
    """How much heat does a kilogram of wort take for each kelvin? extract [degP], temperature [degC] -> [kJ/(kg K)]. Use: as a check on kadlec, of another origin."""

boiling_point_elevation: _boiling_point_elevation_starzak_peacock
cooling_water: _cooling_water_constant_heat
counterflow_chiller: _counterflow_chiller_effectiveness
effectiveness: _effectiveness_counterflow
ice: _ice_enthalpy
ice_result: _ice_result_enthalpy
immersion_chiller: _immersion_chiller_lumped
immersion_time: _immersion_time_lumped
latent_heat: _latent_heat_iapws_fit
mix: _mix_wort_enthalpy
specific_heat: _specific_heat_kadlec
