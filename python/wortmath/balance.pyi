# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, NamedTuple, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _result_1(NamedTuple):
    volume: float
    extract: float

class _result_2(NamedTuple):
    volume: _A
    extract: _A

class _of_mass_1_and_extract_1_and_mass_2(Model):
    @overload
    def __call__(self, mass_1: _S, extract_1: _S, mass_2: _S, extract_2: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass_1: _N, extract_1: _N, mass_2: _N, extract_2: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass_1: _L, extract_1: _L, mass_2: _L, extract_2: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_1_and_extract_1_and_volume_2(Model):
    @overload
    def __call__(self, volume_1: _S, extract_1: _S, volume_2: _S, extract_2: _S, temperature: _S = 20.0, *, policy: _P = None) -> _result_1: ...
    @overload
    def __call__(self, volume_1: _N, extract_1: _N, volume_2: _N, extract_2: _N, temperature: _N = 20.0, *, policy: _P = None) -> _result_2: ...
    @overload
    def __call__(self, volume_1: _L, extract_1: _L, volume_2: _L, extract_2: _L, temperature: _L = 20.0, *, policy: _P = None) -> Any: ...

class _of_volume_1_and_gravity_1_and_volume_2(Model):
    @overload
    def __call__(self, volume_1: _S, gravity_1: _S, volume_2: _S, gravity_2: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume_1: _N, gravity_1: _N, volume_2: _N, gravity_2: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume_1: _L, gravity_1: _L, volume_2: _L, gravity_2: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_1_and_extract_2_and_target_extract(Model):
    @overload
    def __call__(self, extract_1: _S, extract_2: _S, target_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract_1: _N, extract_2: _N, target_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract_1: _L, extract_2: _L, target_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_extract_and_target_extract(Model):
    @overload
    def __call__(self, mass: _S, extract: _S, target_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, extract: _N, target_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, extract: _L, target_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_and_extract_and_target_extract(Model):
    @overload
    def __call__(self, volume: _S, extract: _S, target_extract: _S, temperature: _S = 20.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, extract: _N, target_extract: _N, temperature: _N = 20.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, extract: _L, target_extract: _L, temperature: _L = 20.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_extract_and_evaporated_mass(Model):
    @overload
    def __call__(self, mass: _S, extract: _S, evaporated_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, extract: _N, evaporated_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, extract: _L, evaporated_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_extract_and_target_extract_variant_2(Model):
    @overload
    def __call__(self, mass: _S, extract: _S, target_extract: _S, solids: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, extract: _N, target_extract: _N, solids: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, extract: _L, target_extract: _L, solids: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_and_extract_and_target_extract_variant_2(Model):
    @overload
    def __call__(self, volume: _S, extract: _S, target_extract: _S, solids: _S, temperature: _S = 20.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, extract: _N, target_extract: _N, solids: _N, temperature: _N = 20.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, extract: _L, target_extract: _L, solids: _L, temperature: _L = 20.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_mass_and_volume_and_temperature(Model):
    @overload
    def __call__(self, extract_mass: _S, volume: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract_mass: _N, volume: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract_mass: _L, volume: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _blend_mass(_of_mass_1_and_extract_1_and_mass_2):
    """How strong is a blend of two worts? mass_1 [g], extract_1 [degP], mass_2 [g], extract_2 [degP] -> [degP]. Use: weighed amounts."""
    mass: _blend_mass
    volume: _blend_volume
    points_volume: _blend_points_volume

class _blend_volume(_of_volume_1_and_extract_1_and_volume_2):
    """How strong is a blend of two worts? volume_1 [L], extract_1 [degP], volume_2 [L], extract_2 [degP], temperature [degC] -> volume [L], extract [degP]. Use: amounts read in litres."""

class _blend_points_volume(_of_volume_1_and_gravity_1_and_volume_2):
    """How strong is a blend of two worts? volume_1 [L], gravity_1 [SG], volume_2 [L], gravity_2 [SG] -> [SG]. Use: mental arithmetic; the volume model is exact."""

class _blend_ratio_mass(_of_extract_1_and_extract_2_and_target_extract):
    """In which ratio of masses do two worts make a blend of a given strength? extract_1 [degP], extract_2 [degP], target_extract [degP] -> [ratio]. Use: weighed amounts."""
    mass: _blend_ratio_mass

class _dilute_mass(_of_mass_and_extract_and_target_extract):
    """How much water brings a wort down to a target strength? mass [g], extract [degP], target_extract [degP] -> [g]. Use: weighed amounts."""
    mass: _dilute_mass
    volume: _dilute_volume

class _dilute_volume(_of_volume_and_extract_and_target_extract):
    """How much water brings a wort down to a target strength? volume [L], extract [degP], target_extract [degP], temperature [degC] -> [L]. Use: amounts read in litres."""

class _boil_down_mass(_of_mass_and_extract_and_target_extract):
    """How far must a wort be boiled down to reach a target strength? mass [g], extract [degP], target_extract [degP] -> [g]. Use: weighed amounts."""
    mass: _boil_down_mass
    volume: _boil_down_volume

class _boil_down_volume(_of_volume_and_extract_and_target_extract):
    """How far must a wort be boiled down to reach a target strength? volume [L], extract [degP], target_extract [degP], temperature [degC] -> [L]. Use: amounts read in litres."""

class _after_boil_mass(_of_mass_and_extract_and_evaporated_mass):
    """How strong is a wort after water has boiled off? mass [g], extract [degP], evaporated_mass [g] -> [degP]. Use: weighed amounts."""
    mass: _after_boil_mass

class _strengthen_mass(_of_mass_and_extract_and_target_extract_variant_2):
    """How much malt extract or sugar brings a wort up to a target strength? mass [g], extract [degP], target_extract [degP], solids [fraction] -> [g]. Use: weighed amounts."""
    mass: _strengthen_mass
    volume: _strengthen_volume

class _strengthen_volume(_of_volume_and_extract_and_target_extract_variant_2):
    """How much malt extract or sugar brings a wort up to a target strength? volume [L], extract [degP], target_extract [degP], solids [fraction], temperature [degC] -> [g]. Use: amounts read in litres."""

class _top_up_volume(_of_extract_mass_and_volume_and_temperature):
    """How strong is an amount of extract made up to a volume with water? extract_mass [g], volume [L], temperature [degC] -> [degP]. Use: extract or sugar dissolved and topped up to a known volume."""
    volume: _top_up_volume

blend: _blend_mass
blend_ratio: _blend_ratio_mass
dilute: _dilute_mass
boil_down: _boil_down_mass
after_boil: _after_boil_mass
strengthen: _strengthen_mass
top_up: _top_up_volume
