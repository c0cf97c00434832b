# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, Literal, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_sugar(Model):
    def __call__(self, sugar: Literal["glucose", "fructose", "glucose_monohydrate", "sucrose", "maltose", "maltose_monohydrate", "maltotriose", "lactose"], *, policy: _P = None) -> float: ...

class _of_solids_and_real_attenuation(Model):
    @overload
    def __call__(self, solids: _S, real_attenuation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, solids: _N, real_attenuation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, solids: _L, real_attenuation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_target_carbonation_and_beer_carbonation_and_beer_volume(Model):
    @overload
    def __call__(self, target_carbonation: _S, beer_carbonation: _S, beer_volume: _S, sugar_yield: _S, efficiency: _S = 0.95, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, target_carbonation: _N, beer_carbonation: _N, beer_volume: _N, sugar_yield: _N, efficiency: _N = 0.95, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, target_carbonation: _L, beer_carbonation: _L, beer_volume: _L, sugar_yield: _L, efficiency: _L = 0.95, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_target_carbonation_and_beer_carbonation_and_beer_volume_variant_2(Model):
    @overload
    def __call__(self, target_carbonation: _S, beer_carbonation: _S, beer_volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, target_carbonation: _N, beer_carbonation: _N, beer_volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, target_carbonation: _L, beer_carbonation: _L, beer_volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_target_carbonation_and_beer_carbonation_and_beer_volume_variant_3(Model):
    @overload
    def __call__(self, target_carbonation: _S, beer_carbonation: _S, beer_volume: _S, temperature: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, target_carbonation: _N, beer_carbonation: _N, beer_volume: _N, temperature: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, target_carbonation: _L, beer_carbonation: _L, beer_volume: _L, temperature: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_beer_carbonation_and_sugar_mass_and_beer_volume(Model):
    @overload
    def __call__(self, beer_carbonation: _S, sugar_mass: _S, beer_volume: _S, sugar_yield: _S, efficiency: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, beer_carbonation: _N, sugar_mass: _N, beer_volume: _N, sugar_yield: _N, efficiency: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, beer_carbonation: _L, sugar_mass: _L, beer_volume: _L, sugar_yield: _L, efficiency: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_sugar_mass_and_beer_volume_and_sugar(Model):
    @overload
    def __call__(self, sugar_mass: _S, beer_volume: _S, sugar: Literal["glucose", "fructose", "glucose_monohydrate", "sucrose", "maltose", "maltose_monohydrate", "maltotriose", "lactose"], efficiency: _S = 0.95, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, sugar_mass: _N, beer_volume: _N, sugar: Literal["glucose", "fructose", "glucose_monohydrate", "sucrose", "maltose", "maltose_monohydrate", "maltotriose", "lactose"], efficiency: _N = 0.95, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, sugar_mass: _L, beer_volume: _L, sugar: Literal["glucose", "fructose", "glucose_monohydrate", "sucrose", "maltose", "maltose_monohydrate", "maltotriose", "lactose"], efficiency: _L = 0.95, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_real_extract_and_final_real_extract(Model):
    @overload
    def __call__(self, real_extract: _S, final_real_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, real_extract: _N, final_real_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, real_extract: _L, final_real_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_extract_and_apparent_extract_and_final_apparent_extract(Model):
    @overload
    def __call__(self, original_extract: _S, apparent_extract: _S, final_apparent_extract: _S, density: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, apparent_extract: _N, final_apparent_extract: _N, density: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, apparent_extract: _L, final_apparent_extract: _L, density: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_beer_volume_and_target_carbonation_and_beer_carbonation(Model):
    @overload
    def __call__(self, beer_volume: _S, target_carbonation: _S, beer_carbonation: _S, speise_real_extract: _S, final_real_extract: _S, speise_density: _S, speise_carbonation: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, beer_volume: _N, target_carbonation: _N, beer_carbonation: _N, speise_real_extract: _N, final_real_extract: _N, speise_density: _N, speise_carbonation: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, beer_volume: _L, target_carbonation: _L, beer_carbonation: _L, speise_real_extract: _L, final_real_extract: _L, speise_density: _L, speise_carbonation: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_beer_volume_and_speise_gravity(Model):
    @overload
    def __call__(self, beer_volume: _S, speise_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, beer_volume: _N, speise_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, beer_volume: _L, speise_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _sugar_yield_stoichiometric(_of_sugar):
    """How many grams of carbon dioxide does one gram of priming sugar give? sugar [word] -> [g/g]. Use: pure sugars."""
    stoichiometric: _sugar_yield_stoichiometric
    malt_extract: _sugar_yield_malt_extract

class _sugar_yield_malt_extract(_of_solids_and_real_attenuation):
    """How many grams of carbon dioxide does one gram of priming sugar give? solids [fraction], real_attenuation [fraction] -> [g/g]. Use: malt extract whose solids and attenuation its maker or a test gives."""

class _dose_mass_balance(_of_target_carbonation_and_beer_carbonation_and_beer_volume):
    """How much sugar brings the beer to the carbonation I want? target_carbonation [volumes], beer_carbonation [volumes], beer_volume [L], sugar_yield [g/g], efficiency [fraction] -> [g]. Use: any sugar whose yield is known."""
    mass_balance: _dose_mass_balance
    hibberd_1995: _dose_hibberd_1995
    lewis: _dose_lewis

class _dose_hibberd_1995(_of_target_carbonation_and_beer_carbonation_and_beer_volume_variant_2):
    """How much sugar brings the beer to the carbonation I want? target_carbonation [volumes], beer_carbonation [volumes], beer_volume [L] -> [g]. Use: a rule for sucrose that fits in the head."""

class _dose_lewis(_of_target_carbonation_and_beer_carbonation_and_beer_volume_variant_3):
    """How much sugar brings the beer to the carbonation I want? target_carbonation [volumes], beer_carbonation [volumes], beer_volume [L], temperature [degC] -> [g]. Use: to repeat texts that used it."""

class _carbonation_mass_balance(_of_beer_carbonation_and_sugar_mass_and_beer_volume):
    """How much carbonation does a weighed amount of priming sugar give? beer_carbonation [volumes], sugar_mass [g], beer_volume [L], sugar_yield [g/g], efficiency [fraction] -> [volumes]. Use: the way back from a dose, and what the pressure check is fed with."""
    mass_balance: _carbonation_mass_balance

class _alcohol_added_stoichiometric(_of_sugar_mass_and_beer_volume_and_sugar):
    """How much strength does the priming sugar add? sugar_mass [g], beer_volume [L], sugar [word], efficiency [fraction] -> [% vol]. Use: to be added to a strength that comes from the gravities before priming, on a label too."""
    stoichiometric: _alcohol_added_stoichiometric

class _fermentable_balling(_of_real_extract_and_final_real_extract):
    """How much of the extract will still ferment? real_extract [degP], final_real_extract [degP] -> [degP]. Use: speise, kraeusen and beers that were bottled early."""
    balling: _fermentable_balling

class _unfinished_balling(_of_original_extract_and_apparent_extract_and_final_apparent_extract):
    """How much carbon dioxide will extract that has not fermented yet still give? original_extract [degP], apparent_extract [degP], final_apparent_extract [degP], density [kg/m3] -> [g/L]. Use: beer that is packaged before its final extract is reached."""
    balling: _unfinished_balling

class _speise_mass_balance(_of_beer_volume_and_target_carbonation_and_beer_carbonation):
    """How much unfermented or fermenting wort brings the beer to the carbonation I want? beer_volume [L], target_carbonation [volumes], beer_carbonation [volumes], speise_real_extract [degP], final_real_extract [degP], speise_density [kg/m3], speise_carbonation [volumes] -> [L]. Use: speise, gyle and kraeusen whose extract was measured."""
    mass_balance: _speise_mass_balance
    papazian_gyle: _speise_papazian_gyle

class _speise_papazian_gyle(_of_beer_volume_and_speise_gravity):
    """How much unfermented or fermenting wort brings the beer to the carbonation I want? beer_volume [L], speise_gravity [SG 20/20] -> [L]. Use: to repeat recipes that used it."""

sugar_yield: _sugar_yield_stoichiometric
dose: _dose_mass_balance
carbonation: _carbonation_mass_balance
alcohol_added: _alcohol_added_stoichiometric
fermentable: _fermentable_balling
unfinished: _unfinished_balling
speise: _speise_mass_balance
