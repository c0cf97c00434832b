# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_grist_mass_and_absorption(Model):
    @overload
    def __call__(self, grist_mass: _S, absorption: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grist_mass: _N, absorption: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grist_mass: _L, absorption: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_grist_mass_and_moisture_and_extract_mass(Model):
    @overload
    def __call__(self, grist_mass: _S, moisture: _S, extract_mass: _S, spent_moisture: _S = 0.78, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grist_mass: _N, moisture: _N, extract_mass: _N, spent_moisture: _N = 0.78, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grist_mass: _L, moisture: _L, extract_mass: _L, spent_moisture: _L = 0.78, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mash_mass_and_temperature_and_target_temperature(Model):
    @overload
    def __call__(self, mash_mass: _S, temperature: _S, target_temperature: _S, boiling_temperature: _S = 100.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mash_mass: _N, temperature: _N, target_temperature: _N, boiling_temperature: _N = 100.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mash_mass: _L, temperature: _L, target_temperature: _L, boiling_temperature: _L = 100.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mash_heat_capacity_and_decoction_specific_heat_and_temperature(Model):
    @overload
    def __call__(self, mash_heat_capacity: _S, decoction_specific_heat: _S, temperature: _S, target_temperature: _S, boiling_temperature: _S = 100.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mash_heat_capacity: _N, decoction_specific_heat: _N, temperature: _N, target_temperature: _N, boiling_temperature: _N = 100.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mash_heat_capacity: _L, decoction_specific_heat: _L, temperature: _L, target_temperature: _L, boiling_temperature: _L = 100.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_grist_mass_and_mash_water_mass_and_temperature(Model):
    @overload
    def __call__(self, grist_mass: _S, mash_water_mass: _S, temperature: _S, target_temperature: _S, infusion_temperature: _S, malt_heat: _S = 0.4, tun_heat_capacity: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grist_mass: _N, mash_water_mass: _N, temperature: _N, target_temperature: _N, infusion_temperature: _N, malt_heat: _N = 0.4, tun_heat_capacity: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grist_mass: _L, mash_water_mass: _L, temperature: _L, target_temperature: _L, infusion_temperature: _L, malt_heat: _L = 0.4, tun_heat_capacity: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_grist_mass_and_mash_water_volume_and_temperature(Model):
    @overload
    def __call__(self, grist_mass: _S, mash_water_volume: _S, temperature: _S, target_temperature: _S, infusion_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grist_mass: _N, mash_water_volume: _N, temperature: _N, target_temperature: _N, infusion_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grist_mass: _L, mash_water_volume: _L, temperature: _L, target_temperature: _L, infusion_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mash_ratio_and_grain_temperature_and_liquor_temperature(Model):
    @overload
    def __call__(self, mash_ratio: _S, grain_temperature: _S, liquor_temperature: _S, moisture: _S = 0.04, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mash_ratio: _N, grain_temperature: _N, liquor_temperature: _N, moisture: _N = 0.04, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mash_ratio: _L, grain_temperature: _L, liquor_temperature: _L, moisture: _L = 0.04, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_moisture(Model):
    @overload
    def __call__(self, moisture: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, moisture: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, moisture: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_ratio_and_grain_temperature_and_target_temperature(Model):
    @overload
    def __call__(self, mass_ratio: _S, grain_temperature: _S, target_temperature: _S, malt_heat: _S = 0.4, slaking_heat: _S = 0.0, tun_specific_heat: _S = 0.0, tun_temperature: _S = 20.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass_ratio: _N, grain_temperature: _N, target_temperature: _N, malt_heat: _N = 0.4, slaking_heat: _N = 0.0, tun_specific_heat: _N = 0.0, tun_temperature: _N = 20.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass_ratio: _L, grain_temperature: _L, target_temperature: _L, malt_heat: _L = 0.4, slaking_heat: _L = 0.0, tun_specific_heat: _L = 0.0, tun_temperature: _L = 20.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mash_ratio_and_grain_temperature_and_target_temperature(Model):
    @overload
    def __call__(self, mash_ratio: _S, grain_temperature: _S, target_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mash_ratio: _N, grain_temperature: _N, target_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mash_ratio: _L, grain_temperature: _L, target_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_grist_mass_and_water_volume_and_displacement(Model):
    @overload
    def __call__(self, grist_mass: _S, water_volume: _S, displacement: _S = 0.65, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grist_mass: _N, water_volume: _N, displacement: _N = 0.65, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grist_mass: _L, water_volume: _L, displacement: _L = 0.65, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _absorption_per_mass(_of_grist_mass_and_absorption):
    """How much liquid does the drained grain keep? grist_mass [g], absorption [L/kg] -> [L]. Use: planning, with the figure measured in one's own tun."""
    per_mass: _absorption_per_mass
    spent_grain_moisture: _absorption_spent_grain_moisture

class _absorption_spent_grain_moisture(_of_grist_mass_and_moisture_and_extract_mass):
    """How much liquid does the drained grain keep? grist_mass [g], moisture [fraction], extract_mass [g], spent_moisture [fraction] -> [g]. Use: spent grain whose moisture is known: lauter tun 0.75, combined mash and lauter tun 0.80, mash filter 0.65."""

class _decoction_equal_heat(_of_mash_mass_and_temperature_and_target_temperature):
    """How much of the mash must be boiled to reach the next rest? mash_mass [g], temperature [degC], target_temperature [degC], boiling_temperature [degC] -> [g]. Use: a decoction as thick as the mash it is taken from."""
    equal_heat: _decoction_equal_heat
    heat_capacity: _decoction_heat_capacity

class _decoction_heat_capacity(_of_mash_heat_capacity_and_decoction_specific_heat_and_temperature):
    """How much of the mash must be boiled to reach the next rest? mash_heat_capacity [kJ/K], decoction_specific_heat [kJ/(kg K)], temperature [degC], target_temperature [degC], boiling_temperature [degC] -> [g]. Use: a decoction thicker or thinner than the mash, or a tun that takes up heat."""

class _infusion_enthalpy(_of_grist_mass_and_mash_water_mass_and_temperature):
    """How much hot water takes the mash to its next rest? grist_mass [g], mash_water_mass [g], temperature [degC], target_temperature [degC], infusion_temperature [degC], malt_heat [ratio], tun_heat_capacity [kJ/K] -> [g]. Use: water by mass, with or without the heat that the tun takes up."""
    enthalpy: _infusion_enthalpy
    palmer: _infusion_palmer

class _infusion_palmer(_of_grist_mass_and_mash_water_volume_and_temperature):
    """How much hot water takes the mash to its next rest? grist_mass [g], mash_water_volume [L], temperature [degC], target_temperature [degC], infusion_temperature [degC] -> [L]. Use: to repeat a recipe worked with the rule of 0.2 quart per pound."""

class _initial_temperature_pauls_whites(_of_mash_ratio_and_grain_temperature_and_liquor_temperature):
    """What is the temperature of a mash just mixed? mash_ratio [L/kg], grain_temperature [degC], liquor_temperature [degC], moisture [fraction] -> [degC]."""
    pauls_whites: _initial_temperature_pauls_whites

class _malt_heat_pauls_whites(_of_moisture):
    """What is the specific heat of malt, relative to water? moisture [fraction] -> [ratio]."""
    pauls_whites: _malt_heat_pauls_whites

class _slaking_heat_pauls_whites(_of_moisture):
    """How much heat does a kilogram of malt release when it is wetted? moisture [fraction] -> [kJ/kg]."""
    pauls_whites: _slaking_heat_pauls_whites

class _slaking_rise_pauls_whites(_of_moisture):
    """By how much does wetting the malt warm the mash? moisture [fraction] -> [K]."""
    pauls_whites: _slaking_rise_pauls_whites

class _strike_enthalpy(_of_mass_ratio_and_grain_temperature_and_target_temperature):
    """How hot must the water be for the mash to reach its temperature? mass_ratio [ratio], grain_temperature [degC], target_temperature [degC], malt_heat [ratio], slaking_heat [kJ/kg], tun_specific_heat [kJ/(kg K)], tun_temperature [degC] -> [degC]. Use: any mash or steep: water by mass, with or without slaking heat and a cold tun."""
    enthalpy: _strike_enthalpy
    palmer: _strike_palmer

class _strike_palmer(_of_mash_ratio_and_grain_temperature_and_target_temperature):
    """How hot must the water be for the mash to reach its temperature? mash_ratio [L/kg], grain_temperature [degC], target_temperature [degC] -> [degC]. Use: to repeat a recipe worked with the rule of 0.2 quart per pound."""

class _volume_displacement(_of_grist_mass_and_water_volume_and_displacement):
    """How much room does the mash take in the tun? grist_mass [g], water_volume [L], displacement [L/kg] -> [L]."""
    displacement: _volume_displacement

absorption: _absorption_per_mass
decoction: _decoction_equal_heat
infusion: _infusion_enthalpy
initial_temperature: _initial_temperature_pauls_whites
malt_heat: _malt_heat_pauls_whites
slaking_heat: _slaking_heat_pauls_whites
slaking_rise: _slaking_rise_pauls_whites
strike: _strike_enthalpy
volume: _volume_displacement
