# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Any, NamedTuple, overload

from . import Family, Model, _A, _L, _Labelled, _List, _N, _P, _Quantity, _S, _W

class _result_1(NamedTuple):
    k1: float
    k2: float

class _result_2(NamedTuple):
    k1: _A
    k2: _A

class _result_3(NamedTuple):
    alpha_left: float
    isomerisation_yield: float
    degraded: float

class _result_4(NamedTuple):
    alpha_left: _A
    isomerisation_yield: _A
    degraded: _A

class _of_mass_and_alpha_and_volume(Model):
    @overload
    def __call__(self, mass: _S, alpha: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, alpha: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, alpha: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_alpha_and_volume_variant_2(Model):
    @overload
    def __call__(self, mass: _S, alpha: _S, volume: _S, utilisation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, alpha: _N, volume: _N, utilisation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, alpha: _L, volume: _L, utilisation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_bitterness_and_alpha_and_volume(Model):
    @overload
    def __call__(self, bitterness: _S, alpha: _S, volume: _S, utilisation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, bitterness: _N, alpha: _N, volume: _N, utilisation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, bitterness: _L, alpha: _L, volume: _L, utilisation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_boil_gravity_and_boil_minutes_and_brewery_constant(Model):
    @overload
    def __call__(self, boil_gravity: _S, boil_minutes: _S, brewery_constant: _S = 4.15, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boil_gravity: _N, boil_minutes: _N, brewery_constant: _N = 4.15, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, boil_gravity: _L, boil_minutes: _L, brewery_constant: _L = 4.15, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_start_gravity_and_end_gravity_and_boil_minutes(Model):
    @overload
    def __call__(self, start_gravity: _S, end_gravity: _S, boil_minutes: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, start_gravity: _N, end_gravity: _N, boil_minutes: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, start_gravity: _L, end_gravity: _L, boil_minutes: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_boil_gravities_and_step_minutes(Model):
    @overload
    def __call__(self, boil_gravities: Sequence[float], step_minutes: Sequence[float], *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boil_gravities: Sequence[Sequence[float]], step_minutes: Sequence[Sequence[float]], *, policy: _P = None) -> _A: ...
    @overload
    def __call__(self, boil_gravities: _List | _Labelled | _Quantity, step_minutes: _List | _Labelled | _Quantity, *, policy: _P = None) -> Any: ...

class _of_boil_gravity_and_boil_minutes(Model):
    @overload
    def __call__(self, boil_gravity: _S, boil_minutes: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boil_gravity: _N, boil_minutes: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, boil_gravity: _L, boil_minutes: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_label_bitterness_and_mass_and_volume(Model):
    @overload
    def __call__(self, label_bitterness: _S, mass: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, label_bitterness: _N, mass: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, label_bitterness: _L, mass: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_boil_gravity(Model):
    @overload
    def __call__(self, boil_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boil_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, boil_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_gravity_and_concentration_factor(Model):
    @overload
    def __call__(self, original_gravity: _S, concentration_factor: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_gravity: _N, concentration_factor: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_gravity: _L, concentration_factor: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_start_gravity_and_end_gravity(Model):
    @overload
    def __call__(self, start_gravity: _S, end_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, start_gravity: _N, end_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, start_gravity: _L, end_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_unadjusted_bitterness_and_concentration_factor(Model):
    @overload
    def __call__(self, unadjusted_bitterness: _S, concentration_factor: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, unadjusted_bitterness: _N, concentration_factor: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, unadjusted_bitterness: _L, concentration_factor: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_bitterness_and_concentration_factor(Model):
    @overload
    def __call__(self, bitterness: _S, concentration_factor: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, bitterness: _N, concentration_factor: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, bitterness: _L, concentration_factor: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature(Model):
    @overload
    def __call__(self, temperature: _S, *, policy: _P = None) -> _result_1: ...
    @overload
    def __call__(self, temperature: _N, *, policy: _P = None) -> _result_2: ...
    @overload
    def __call__(self, temperature: _L, *, policy: _P = None) -> Any: ...

class _of_k1_and_k2_and_minutes(Model):
    @overload
    def __call__(self, k1: _S, k2: _S, minutes: _S, *, policy: _P = None) -> _result_3: ...
    @overload
    def __call__(self, k1: _N, k2: _N, minutes: _N, *, policy: _P = None) -> _result_4: ...
    @overload
    def __call__(self, k1: _L, k2: _L, minutes: _L, *, policy: _P = None) -> Any: ...

class _of_k1_and_k2(Model):
    @overload
    def __call__(self, k1: _S, k2: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, k1: _N, k2: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, k1: _L, k2: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_variant_2(Model):
    @overload
    def __call__(self, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_minutes(Model):
    @overload
    def __call__(self, temperature: _S, minutes: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, minutes: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, minutes: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_minutes_and_temperatures(Model):
    @overload
    def __call__(self, minutes: Sequence[float], temperatures: Sequence[float], *, policy: _P = None) -> _result_3: ...
    @overload
    def __call__(self, minutes: Sequence[Sequence[float]], temperatures: Sequence[Sequence[float]], *, policy: _P = None) -> _result_4: ...
    @overload
    def __call__(self, minutes: _List | _Labelled | _Quantity, temperatures: _List | _Labelled | _Quantity, *, policy: _P = None) -> Any: ...

class _of_minutes_and_surface_area_and_opening_area(Model):
    @overload
    def __call__(self, minutes: _S, surface_area: _S, opening_area: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, minutes: _N, surface_area: _N, opening_area: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, minutes: _L, surface_area: _L, opening_area: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_minutes_and_start_temperature_and_ambient_temperature(Model):
    @overload
    def __call__(self, minutes: _S, start_temperature: _S, ambient_temperature: _S, time_constant_minutes: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, minutes: _N, start_temperature: _N, ambient_temperature: _N, time_constant_minutes: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, minutes: _L, start_temperature: _L, ambient_temperature: _L, time_constant_minutes: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_surface_area_and_opening_area(Model):
    @overload
    def __call__(self, temperature: _S, surface_area: _S, opening_area: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, surface_area: _N, opening_area: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, surface_area: _L, opening_area: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_boil_gravity_and_boil_minutes_and_stand_minutes(Model):
    @overload
    def __call__(self, boil_gravity: _S, boil_minutes: _S, stand_minutes: _S, surface_area: _S, opening_area: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boil_gravity: _N, boil_minutes: _N, stand_minutes: _N, surface_area: _N, opening_area: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, boil_gravity: _L, boil_minutes: _L, stand_minutes: _L, surface_area: _L, opening_area: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_boil_gravity_and_boil_minutes_and_stand_minutes_variant_2(Model):
    @overload
    def __call__(self, boil_gravity: _S, boil_minutes: _S, stand_minutes: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boil_gravity: _N, boil_minutes: _N, stand_minutes: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, boil_gravity: _L, boil_minutes: _L, stand_minutes: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_boiling_temperature_and_boil_minutes(Model):
    @overload
    def __call__(self, boiling_temperature: _S, boil_minutes: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boiling_temperature: _N, boil_minutes: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, boiling_temperature: _L, boil_minutes: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_boiling_temperature(Model):
    @overload
    def __call__(self, boiling_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, boiling_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, boiling_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_altitude(Model):
    @overload
    def __call__(self, altitude: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, altitude: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, altitude: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alpha_dosed(Model):
    @overload
    def __call__(self, alpha_dosed: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alpha_dosed: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alpha_dosed: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_kettle_bitterness_and_kettle_volume_and_final_volume(Model):
    @overload
    def __call__(self, kettle_bitterness: _S, kettle_volume: _S, final_volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, kettle_bitterness: _N, kettle_volume: _N, final_volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, kettle_bitterness: _L, kettle_volume: _L, final_volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_wort_bitterness_and_retention(Model):
    @overload
    def __call__(self, wort_bitterness: _S, retention: _S = 0.663, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, wort_bitterness: _N, retention: _N = 0.663, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, wort_bitterness: _L, retention: _L = 0.663, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_absorbance_275_and_dilution(Model):
    @overload
    def __call__(self, absorbance_275: _S, dilution: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, absorbance_275: _N, dilution: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, absorbance_275: _L, dilution: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_iso_alpha_and_other_resin(Model):
    @overload
    def __call__(self, iso_alpha: _S, other_resin: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, iso_alpha: _N, other_resin: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, iso_alpha: _L, other_resin: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alpha_dosed_and_variety_factor(Model):
    @overload
    def __call__(self, alpha_dosed: _S, variety_factor: _S = 2.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alpha_dosed: _N, variety_factor: _N = 2.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alpha_dosed: _L, variety_factor: _L = 2.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_iso_alpha_and_humulinones_and_hulupones(Model):
    @overload
    def __call__(self, iso_alpha: _S, humulinones: _S, hulupones: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, iso_alpha: _N, humulinones: _N, hulupones: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, iso_alpha: _L, humulinones: _L, hulupones: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_iso_alpha_and_humulinones_and_alpha_acids(Model):
    @overload
    def __call__(self, iso_alpha: _S, humulinones: _S, alpha_acids: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, iso_alpha: _N, humulinones: _N, alpha_acids: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, iso_alpha: _L, humulinones: _L, alpha_acids: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_humulinones_and_hulupones(Model):
    @overload
    def __call__(self, humulinones: _S, hulupones: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, humulinones: _N, hulupones: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, humulinones: _L, hulupones: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_bitterness_and_original_gravity(Model):
    @overload
    def __call__(self, bitterness: _S, original_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, bitterness: _N, original_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, bitterness: _L, original_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_bitterness_and_original_gravity_and_apparent_attenuation(Model):
    @overload
    def __call__(self, bitterness: _S, original_gravity: _S, apparent_attenuation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, bitterness: _N, original_gravity: _N, apparent_attenuation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, bitterness: _L, original_gravity: _L, apparent_attenuation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_bitterness_and_original_extract_and_apparent_extract(Model):
    @overload
    def __call__(self, bitterness: _S, original_extract: _S, apparent_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, bitterness: _N, original_extract: _N, apparent_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, bitterness: _L, original_extract: _L, apparent_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_gravity(Model):
    @overload
    def __call__(self, original_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _alpha_dosed_exact(_of_mass_and_alpha_and_volume):
    """How much alpha acids does a hop addition bring per litre? mass [g], alpha [fraction], volume [L] -> [mg/L]."""
    exact: _alpha_dosed_exact

class _from_addition_exact(_of_mass_and_alpha_and_volume_variant_2):
    """How many bitterness units does one hop addition bring? mass [g], alpha [fraction], volume [L], utilisation [fraction] -> [BU]. Use: everything but the repetition of a printed example."""
    exact: _from_addition_exact
    tinseth: _from_addition_tinseth
    rager: _from_addition_rager
    daniels: _from_addition_daniels
    garetz: _from_addition_garetz
    palmer: _from_addition_palmer
    hbu_1_34: _from_addition_hbu_1_34

class _from_addition_tinseth(_of_mass_and_alpha_and_volume_variant_2):
    """How many bitterness units does one hop addition bring? mass [g], alpha [fraction], volume [L], utilisation [fraction] -> [BU]. Use: examples in ounces and US gallons with the constant 7490."""

class _from_addition_rager(_of_mass_and_alpha_and_volume_variant_2):
    """How many bitterness units does one hop addition bring? mass [g], alpha [fraction], volume [L], utilisation [fraction] -> [BU]. Use: examples with the constant 7462."""

class _from_addition_daniels(_of_mass_and_alpha_and_volume_variant_2):
    """How many bitterness units does one hop addition bring? mass [g], alpha [fraction], volume [L], utilisation [fraction] -> [BU]. Use: examples with the constant 0.7489 and both percents."""

class _from_addition_garetz(_of_mass_and_alpha_and_volume_variant_2):
    """How many bitterness units does one hop addition bring? mass [g], alpha [fraction], volume [L], utilisation [fraction] -> [BU]. Use: examples with the constant 0.749 and both percents."""

class _from_addition_palmer(_of_mass_and_alpha_and_volume_variant_2):
    """How many bitterness units does one hop addition bring? mass [g], alpha [fraction], volume [L], utilisation [fraction] -> [BU]. Use: examples with the constant 75 and alpha acids in per cent."""

class _from_addition_hbu_1_34(_of_mass_and_alpha_and_volume_variant_2):
    """How many bitterness units does one hop addition bring? mass [g], alpha [fraction], volume [L], utilisation [fraction] -> [BU]. Use: examples with homebrew bitterness units times per cent over 1.34 gallons; goes with utilisation.tutzauer."""

class _mass_for_target_exact(_of_bitterness_and_alpha_and_volume):
    """How much of a hop gives the bitterness that one addition is to bring? bitterness [BU], alpha [fraction], volume [L], utilisation [fraction] -> [g]."""
    exact: _mass_for_target_exact

class _utilisation_tinseth(_of_boil_gravity_and_boil_minutes_and_brewery_constant):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min], brewery_constant [ratio] -> [fraction]. Use: any boil, any hop addition; tune brewery_constant to measured beers (smaller gives more)."""
    tinseth: _utilisation_tinseth
    tinseth_linear_gravity: _utilisation_tinseth_linear_gravity
    tinseth_gravity_steps: _utilisation_tinseth_gravity_steps
    rager: _utilisation_rager
    rager_table: _utilisation_rager_table
    garetz_1993: _utilisation_garetz_1993
    garetz_1994: _utilisation_garetz_1994
    daniels_whole: _utilisation_daniels_whole
    daniels_pellet: _utilisation_daniels_pellet
    mosher: _utilisation_mosher
    tutzauer: _utilisation_tutzauer

class _utilisation_tinseth_linear_gravity(_of_start_gravity_and_end_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? start_gravity [SG 20/20], end_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: a strong boil, or hops added late into a boil whose gravity at both ends is known."""

class _utilisation_tinseth_gravity_steps(_of_boil_gravities_and_step_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravities [SG 20/20], step_minutes [min] -> [fraction]. Use: extract or sugar added late, water topped up: whatever makes the kettle gravity jump while these hops boil."""

class _utilisation_rager(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: recipes written with it; hops at the end of the boil are not zero here (5.12 %)."""

class _utilisation_rager_table(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: to repeat a calculation done with the printed table: pellets thrown in loose."""

class _utilisation_garetz_1993(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: to repeat a calculation done with the early table; it gives hops boiled 10 minutes or less no bitterness."""

class _utilisation_garetz_1994(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: only to repeat a calculation done with the book; hopping rate and elevation are families of their own."""

class _utilisation_daniels_whole(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: whole hops, to repeat a calculation done with the book."""

class _utilisation_daniels_pellet(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: hop pellets, to repeat a calculation done with the book."""

class _utilisation_mosher(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: pellets in a wort that ends the boil at 1.050 or less."""

class _utilisation_tutzauer(_of_boil_gravity_and_boil_minutes):
    """What share of the dosed alpha acids counts as bitterness units in the beer? boil_gravity [SG 20/20], boil_minutes [min] -> [fraction]. Use: to repeat recipes made with that chart, with from_addition.hbu_1_34."""

class _hopped_extract_by_mass(_of_label_bitterness_and_mass_and_volume):
    """How much bitterness does a hopped malt extract bring to the wort? label_bitterness [BU L/kg], mass [g], volume [L] -> [BU]."""
    by_mass: _hopped_extract_by_mass

class _gravity_adjustment_tinseth(_of_boil_gravity):
    """By what factor does the gravity of the wort scale the utilisation of hops? boil_gravity [SG 20/20] -> [ratio]. Use: with the utilisation of the same name, which contains it."""
    tinseth: _gravity_adjustment_tinseth
    rager: _gravity_adjustment_rager
    daniels: _gravity_adjustment_daniels
    garetz_1994: _gravity_adjustment_garetz_1994
    hosom: _gravity_adjustment_hosom

class _gravity_adjustment_rager(_of_boil_gravity):
    """By what factor does the gravity of the wort scale the utilisation of hops? boil_gravity [SG 20/20] -> [ratio]. Use: with the utilisations rager, rager_table and garetz_1993, which contain it."""

class _gravity_adjustment_daniels(_of_boil_gravity):
    """By what factor does the gravity of the wort scale the utilisation of hops? boil_gravity [SG 20/20] -> [ratio]. Use: with the utilisations daniels_whole and daniels_pellet, which contain it."""

class _gravity_adjustment_garetz_1994(_of_boil_gravity):
    """By what factor does the gravity of the wort scale the utilisation of hops? boil_gravity [SG 20/20] -> [ratio]. Use: with the utilisation of the same name, which contains it."""

class _gravity_adjustment_hosom(_of_boil_gravity_and_boil_minutes):
    """By what factor does the gravity of the wort scale the utilisation of hops? boil_gravity [SG 20/20], boil_minutes [min] -> [ratio]. Use: to see that gravity may matter little for hops boiled less than half an hour."""

class _boil_gravity_garetz_1994(_of_original_gravity_and_concentration_factor):
    """What is the gravity in the kettle while a concentrated wort boils? original_gravity [SG 20/20], concentration_factor [ratio] -> [SG 20/20]. Use: the gravity that the other rules of that book ask for."""
    garetz_1994: _boil_gravity_garetz_1994

class _average_boil_gravity_constant_evaporation(_of_start_gravity_and_end_gravity):
    """What is the mean gravity of a boil, from those at its start and its end? start_gravity [SG 20/20], end_gravity [SG 20/20] -> [SG 20/20]. Use: the gravity that utilisation.tinseth asks for."""
    constant_evaporation: _average_boil_gravity_constant_evaporation
    arithmetic: _average_boil_gravity_arithmetic

class _average_boil_gravity_arithmetic(_of_start_gravity_and_end_gravity):
    """What is the mean gravity of a boil, from those at its start and its end? start_gravity [SG 20/20], end_gravity [SG 20/20] -> [SG 20/20]. Use: a quick estimate."""

class _hopping_rate_garetz_1994(_of_unadjusted_bitterness_and_concentration_factor):
    """How much does a high hop charge lower the bitterness? unadjusted_bitterness [BU], concentration_factor [ratio] -> [BU]. Use: once, on the sum of all additions of a calculation by that book."""
    garetz_1994: _hopping_rate_garetz_1994

class _hopping_rate_factor_garetz_1994(_of_bitterness_and_concentration_factor):
    """By what factor does the bitterness of a strongly hopped beer fall short of the sum of its additions? bitterness [BU], concentration_factor [ratio] -> [ratio]. Use: to check a calculation of that book step by step; hopping_rate gives the result at once."""
    garetz_1994: _hopping_rate_factor_garetz_1994

class _isomerisation_rate_malowicki_shellhammer(_of_temperature):
    """How fast do alpha acids turn into iso-alpha acids, and how fast are these lost again? temperature [degC] -> k1 [1/min], k2 [1/min]. Use: iso-alpha acids in hot wort at any temperature; never as bitterness units."""
    malowicki_shellhammer: _isomerisation_rate_malowicki_shellhammer

class _isomerisation_fractions_first_order(_of_k1_and_k2_and_minutes):
    """At constant rates, how much of the dissolved alpha acids is left, turned into iso-alpha acids, and degraded? k1 [1/min], k2 [1/min], minutes [min] -> alpha_left [fraction], isomerisation_yield [fraction], degraded [fraction]. Use: rates of your own; isomerisation takes a temperature instead."""
    first_order: _isomerisation_fractions_first_order

class _isomerisation_peak_time_first_order(_of_k1_and_k2):
    """After how many minutes is there most iso-alpha acids? k1 [1/min], k2 [1/min] -> [min]. Use: rates of your own."""

class _isomerisation_peak_time_malowicki_shellhammer(_of_temperature_variant_2):
    """After how many minutes is there most iso-alpha acids? temperature [degC] -> [min]. Use: wort at a temperature."""
    first_order: _isomerisation_peak_time_first_order
    malowicki_shellhammer: _isomerisation_peak_time_malowicki_shellhammer

class _isomerisation_malowicki_shellhammer(_of_temperature_and_minutes):
    """How much iso-alpha acids does a milligram of dissolved alpha acids give at a constant temperature? temperature [degC], minutes [min] -> [fraction]. Use: iso-alpha acids in hot wort; contains no losses after it, and is not a utilisation."""
    malowicki_shellhammer: _isomerisation_malowicki_shellhammer

class _isomerisation_alpha_left_malowicki_shellhammer(_of_temperature_and_minutes):
    """What share of the dissolved alpha acids is still alpha acids after a time at a constant temperature? temperature [degC], minutes [min] -> [fraction]. Use: what is left to isomerise."""
    malowicki_shellhammer: _isomerisation_alpha_left_malowicki_shellhammer

class _isomerisation_degraded_malowicki_shellhammer(_of_temperature_and_minutes):
    """What share of the dissolved alpha acids has become iso-alpha acids and been lost again, at a constant temperature? temperature [degC], minutes [min] -> [fraction]. Use: why a very long boil gains nothing."""
    malowicki_shellhammer: _isomerisation_degraded_malowicki_shellhammer

class _isomerisation_profile_malowicki_shellhammer(_of_minutes_and_temperatures):
    """How much iso-alpha acids do dissolved alpha acids give along a history of temperatures? minutes [min], temperatures [degC] -> alpha_left [fraction], isomerisation_yield [fraction], degraded [fraction]. Use: a measured or computed course of temperature: a kettle that cools, a stand, a boil under pressure."""
    malowicki_shellhammer: _isomerisation_profile_malowicki_shellhammer

class _relative_utilisation_hosom(_of_temperature_variant_2):
    """How fast does bitterness form below the boil, relative to a boil at 100 degC? temperature [degC] -> [ratio]. Use: hops in wort that cools after the boil."""
    hosom: _relative_utilisation_hosom
    hosom_unclamped: _relative_utilisation_hosom_unclamped
    malowicki_rate_ratio: _relative_utilisation_malowicki_rate_ratio
    malowicki_yield_ratio: _relative_utilisation_malowicki_yield_ratio

class _relative_utilisation_hosom_unclamped(_of_temperature_variant_2):
    """How fast does bitterness form below the boil, relative to a boil at 100 degC? temperature [degC] -> [ratio]. Use: the formula as printed."""

class _relative_utilisation_malowicki_rate_ratio(_of_temperature_variant_2):
    """How fast does bitterness form below the boil, relative to a boil at 100 degC? temperature [degC] -> [ratio]. Use: very short times, when nothing has been lost yet."""

class _relative_utilisation_malowicki_yield_ratio(_of_temperature_and_minutes):
    """How fast does bitterness form below the boil, relative to a boil at 100 degC? temperature [degC], minutes [min] -> [ratio]. Use: a known time at a known temperature."""

class _kettle_cooling_hosom(_of_minutes_and_surface_area_and_opening_area):
    """How warm is the wort some minutes after the heat is off? minutes [min], surface_area [cm2], opening_area [cm2], volume [L] -> [degC]. Use: an open homebrew kettle without a chiller."""
    hosom: _kettle_cooling_hosom
    newton: _kettle_cooling_newton

class _kettle_cooling_newton(_of_minutes_and_start_temperature_and_ambient_temperature):
    """How warm is the wort some minutes after the heat is off? minutes [min], start_temperature [degC], ambient_temperature [degC], time_constant_minutes [min] -> [degC]. Use: any vessel whose time constant has been measured: the time in which the difference to the surroundings falls to 37 %."""

class _kettle_cooling_time_hosom(_of_temperature_and_surface_area_and_opening_area):
    """How many minutes after the heat is off does the wort reach a temperature? temperature [degC], surface_area [cm2], opening_area [cm2], volume [L] -> [min]. Use: an open homebrew kettle without a chiller; where the curve starts at altitude."""
    hosom: _kettle_cooling_time_hosom

class _post_boil_hosom(_of_boil_gravity_and_boil_minutes_and_stand_minutes):
    """What is the utilisation of hops that are boiled for a time, or not at all, and then left in the hot wort? boil_gravity [SG 20/20], boil_minutes [min], stand_minutes [min], surface_area [cm2], opening_area [cm2], volume [L] -> [fraction]. Use: a kettle of homebrew size left open to cool by itself."""
    hosom: _post_boil_hosom
    constant_temperature: _post_boil_constant_temperature

class _post_boil_constant_temperature(_of_boil_gravity_and_boil_minutes_and_stand_minutes_variant_2):
    """What is the utilisation of hops that are boiled for a time, or not at all, and then left in the hot wort? boil_gravity [SG 20/20], boil_minutes [min], stand_minutes [min], temperature [degC] -> [fraction]. Use: a stand held at one temperature."""

class _altitude_factor_malowicki_yield_ratio(_of_boiling_temperature_and_boil_minutes):
    """By what factor does a lower boiling point cut the utilisation of hops? boiling_temperature [degC], boil_minutes [min] -> [ratio]. Use: the usual choice: published rates, and between the extremes."""
    malowicki_yield_ratio: _altitude_factor_malowicki_yield_ratio
    malowicki_rate_ratio: _altitude_factor_malowicki_rate_ratio
    hosom: _altitude_factor_hosom
    garetz_1994: _altitude_factor_garetz_1994

class _altitude_factor_malowicki_rate_ratio(_of_boiling_temperature):
    """By what factor does a lower boiling point cut the utilisation of hops? boiling_temperature [degC] -> [ratio]. Use: the low end of the spread."""

class _altitude_factor_hosom(_of_boiling_temperature):
    """By what factor does a lower boiling point cut the utilisation of hops? boiling_temperature [degC] -> [ratio]. Use: a factor that does not depend on the time."""

class _altitude_factor_garetz_1994(_of_altitude):
    """By what factor does a lower boiling point cut the utilisation of hops? altitude [m] -> [ratio]. Use: only to repeat a calculation done with the book."""

class _solubility_limit_hosom(_of_alpha_dosed):
    """How much of the dosed alpha acids dissolves in boiling wort? alpha_dosed [mg/L] -> [mg/L]. Use: strongly hopped worts, before isomerisation; the sum of what is present, per litre of kettle volume."""
    hosom: _solubility_limit_hosom
    none: _solubility_limit_none
    hosom_flat: _solubility_limit_hosom_flat
    hough: _solubility_limit_hough

class _solubility_limit_none(_of_alpha_dosed):
    """How much of the dosed alpha acids dissolves in boiling wort? alpha_dosed [mg/L] -> [mg/L]. Use: to repeat the published utilisations, which know no limit."""

class _solubility_limit_hosom_flat(_of_alpha_dosed):
    """How much of the dosed alpha acids dissolves in boiling wort? alpha_dosed [mg/L] -> [mg/L]. Use: a plain ceiling."""

class _solubility_limit_hough(_of_alpha_dosed):
    """How much of the dosed alpha acids dissolves in boiling wort? alpha_dosed [mg/L] -> [mg/L]. Use: a plain ceiling."""

class _partial_boil_dilution(_of_kettle_bitterness_and_kettle_volume_and_final_volume):
    """What is left of the bitterness when a concentrated wort is topped up? kettle_bitterness [BU], kettle_volume [L], final_volume [L] -> [BU]."""
    dilution: _partial_boil_dilution

class _cellar_retention_justus_2018(_of_wort_bitterness_and_retention):
    """How much of the bitterness of the wort is left in the filtered beer? wort_bitterness [BU], retention [fraction] -> [BU]. Use: bitterness measured or computed in the wort; retention for your own cellar."""
    justus_2018: _cellar_retention_justus_2018

class _bitterness_units_asbc_beer_23a(_of_absorbance_275_and_dilution):
    """How many bitterness units do laboratory figures stand for? absorbance_275 [ratio], dilution [ratio] -> [BU]. Use: an absorbance at 275 nm, 1 cm, of the iso-octane extract of acidified beer."""
    asbc_beer_23a: _bitterness_units_asbc_beer_23a
    five_sevenths: _bitterness_units_five_sevenths

class _bitterness_units_five_sevenths(_of_iso_alpha_and_other_resin):
    """How many bitterness units do laboratory figures stand for? iso_alpha [mg/L], other_resin [mg/L] -> [BU]. Use: the only way from mg/L to bitterness units."""

class _oxidised_alpha_hosom_cones(_of_alpha_dosed):
    """How much bitterness comes from alpha acids that oxidise as the hops go in? alpha_dosed [mg/L] -> [BU]. Use: whole hops, on top of an estimate from iso-alpha acids; not on top of utilisation.tinseth."""
    hosom_cones: _oxidised_alpha_hosom_cones
    hosom_pellets: _oxidised_alpha_hosom_pellets

class _oxidised_alpha_hosom_pellets(_of_alpha_dosed_and_variety_factor):
    """How much bitterness comes from alpha acids that oxidise as the hops go in? alpha_dosed [mg/L], variety_factor [ratio] -> [BU]. Use: pellets, on top of an estimate from iso-alpha acids; not on top of utilisation.tinseth."""

class _sensory_bitterness_algazzali_shellhammer_2016(_of_iso_alpha_and_humulinones_and_hulupones):
    """How bitter does a beer taste, as mg/L of iso-alpha acids? iso_alpha [mg/L], humulinones [mg/L], hulupones [mg/L] -> [mg/L]. Use: figures by HPLC, dry-hopped beer above all."""
    algazzali_shellhammer_2016: _sensory_bitterness_algazzali_shellhammer_2016
    algazzali_shellhammer_2014: _sensory_bitterness_algazzali_shellhammer_2014
    maye: _sensory_bitterness_maye

class _sensory_bitterness_algazzali_shellhammer_2014(_of_iso_alpha_and_humulinones_and_hulupones):
    """How bitter does a beer taste, as mg/L of iso-alpha acids? iso_alpha [mg/L], humulinones [mg/L], hulupones [mg/L] -> [mg/L]. Use: to repeat work from before 2016."""

class _sensory_bitterness_maye(_of_iso_alpha_and_humulinones_and_alpha_acids):
    """How bitter does a beer taste, as mg/L of iso-alpha acids? iso_alpha [mg/L], humulinones [mg/L], alpha_acids [mg/L] -> [mg/L]. Use: when the alpha acids in the beer are known but not its hulupones."""

class _sensory_bitterness_spread_algazzali_shellhammer_2016(_of_humulinones_and_hulupones):
    """How far may the bitterness as tasted be off through its weights? humulinones [mg/L], hulupones [mg/L] -> [mg/L]. Use: beside sensory_bitterness of the same name."""
    algazzali_shellhammer_2016: _sensory_bitterness_spread_algazzali_shellhammer_2016

class _ratio_bu_gu(_of_bitterness_and_original_gravity):
    """How does the bitterness of a beer stand to its strength or its sweetness? bitterness [BU], original_gravity [SG 20/20] -> [BU per gravity point]. Use: bitterness against the strength of the wort."""

class _ratio_relative_bitterness(_of_bitterness_and_original_gravity_and_apparent_attenuation):
    """How does the bitterness of a beer stand to its strength or its sweetness? bitterness [BU], original_gravity [SG 20/20], apparent_attenuation [fraction] -> [BU per gravity point]. Use: beers that attenuate more or less than usual."""

class _ratio_bu_re(_of_bitterness_and_original_extract_and_apparent_extract):
    """How does the bitterness of a beer stand to its strength or its sweetness? bitterness [BU], original_extract [degP], apparent_extract [degP] -> [BU per degP]. Use: bitterness against what is left in the beer to balance it."""

class _ratio(Family):
    """How does the bitterness of a beer stand to its strength or its sweetness?"""
    bu_gu: _ratio_bu_gu
    relative_bitterness: _ratio_relative_bitterness
    bu_re: _ratio_bu_re

class _balanced_bitterness_smith_1990(_of_original_gravity):
    """Which bitterness balances a wort? original_gravity [SG 20/20] -> [BU]. Use: a first guess for a beer without a style."""
    smith_1990: _balanced_bitterness_smith_1990

alpha_dosed: _alpha_dosed_exact
from_addition: _from_addition_exact
mass_for_target: _mass_for_target_exact
utilisation: _utilisation_tinseth
hopped_extract: _hopped_extract_by_mass
gravity_adjustment: _gravity_adjustment_tinseth
boil_gravity: _boil_gravity_garetz_1994
average_boil_gravity: _average_boil_gravity_constant_evaporation
hopping_rate: _hopping_rate_garetz_1994
hopping_rate_factor: _hopping_rate_factor_garetz_1994
isomerisation_rate: _isomerisation_rate_malowicki_shellhammer
isomerisation_fractions: _isomerisation_fractions_first_order
isomerisation_peak_time: _isomerisation_peak_time_malowicki_shellhammer
isomerisation: _isomerisation_malowicki_shellhammer
isomerisation_alpha_left: _isomerisation_alpha_left_malowicki_shellhammer
isomerisation_degraded: _isomerisation_degraded_malowicki_shellhammer
isomerisation_profile: _isomerisation_profile_malowicki_shellhammer
relative_utilisation: _relative_utilisation_hosom
kettle_cooling: _kettle_cooling_hosom
kettle_cooling_time: _kettle_cooling_time_hosom
post_boil: _post_boil_hosom
altitude_factor: _altitude_factor_malowicki_yield_ratio
solubility_limit: _solubility_limit_hosom
partial_boil: _partial_boil_dilution
cellar_retention: _cellar_retention_justus_2018
bitterness_units: _bitterness_units_asbc_beer_23a
oxidised_alpha: _oxidised_alpha_hosom_cones
sensory_bitterness: _sensory_bitterness_algazzali_shellhammer_2016
sensory_bitterness_spread: _sensory_bitterness_spread_algazzali_shellhammer_2016
ratio: _ratio
balanced_bitterness: _balanced_bitterness_smith_1990
