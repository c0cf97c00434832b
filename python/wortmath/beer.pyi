# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_alcohol_by_mass_and_real_extract(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, real_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, real_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, real_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_beer_density_and_alcohol_by_mass(Model):
    @overload
    def __call__(self, beer_density: _S, alcohol_by_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, beer_density: _N, alcohol_by_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, beer_density: _L, alcohol_by_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass_and_beer_density(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, beer_density: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, beer_density: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, beer_density: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_volume_and_beer_density(Model):
    @overload
    def __call__(self, alcohol_by_volume: _S, beer_density: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_volume: _N, beer_density: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_volume: _L, beer_density: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_volume_and_volume(Model):
    @overload
    def __call__(self, alcohol_by_volume: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_volume: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_volume: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass_and_real_extract_and_ash(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, real_extract: _S, ash: _S = 0.001, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, real_extract: _N, ash: _N = 0.001, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, real_extract: _L, ash: _L = 0.001, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_gravity_and_final_gravity(Model):
    @overload
    def __call__(self, original_gravity: _S, final_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_gravity: _N, final_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_gravity: _L, final_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_volume_and_carbohydrate_concentration_and_protein_concentration(Model):
    @overload
    def __call__(self, alcohol_by_volume: _S, carbohydrate_concentration: _S, protein_concentration: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_volume: _N, carbohydrate_concentration: _N, protein_concentration: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_volume: _L, carbohydrate_concentration: _L, protein_concentration: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_real_extract_and_protein_and_ash(Model):
    @overload
    def __call__(self, real_extract: _S, protein: _S, ash: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, real_extract: _N, protein: _N, ash: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, real_extract: _L, protein: _L, ash: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _density_tabarie(_of_alcohol_by_mass_and_real_extract):
    """What is the density of degassed beer at 20 degC, from its alcohol and real extract? alcohol_by_mass [% mass], real_extract [degP] -> [kg/m3]. Use: any beer."""
    tabarie: _density_tabarie
    balling: _density_balling

class _density_balling(_of_alcohol_by_mass_and_real_extract):
    """What is the density of degassed beer at 20 degC, from its alcohol and real extract? alcohol_by_mass [% mass], real_extract [degP] -> [kg/m3]. Use: consistent with the extract family of models."""

class _real_extract_from_density_tabarie(_of_beer_density_and_alcohol_by_mass):
    """What extract is in the beer, from its density and alcohol (density meter and alcohol meter)? beer_density [kg/m3], alcohol_by_mass [% mass] -> [degP]. Use: an analysed beer; the original extract then follows by attenuation.original_extract."""
    tabarie: _real_extract_from_density_tabarie

class _alcohol_by_volume_definition(_of_alcohol_by_mass_and_beer_density):
    """What is the alcohol by volume of a beer whose alcohol by mass and density are known? alcohol_by_mass [% mass], beer_density [kg/m3] -> [% vol]. Use: beer, with the density of the beer itself at 20 degC in vacuum."""
    definition: _alcohol_by_volume_definition

class _alcohol_by_mass_definition(_of_alcohol_by_volume_and_beer_density):
    """What is the alcohol by mass of a beer whose alcohol by volume and density are known? alcohol_by_volume [% vol], beer_density [kg/m3] -> [% mass]. Use: beer, with the density of the beer itself at 20 degC in vacuum."""
    definition: _alcohol_by_mass_definition

class _alcohol_mass_definition(_of_alcohol_by_volume_and_volume):
    """How many grams of alcohol are in a serving? alcohol_by_volume [% vol], volume [L] -> [g]. Use: the gram figure to show beside any counting unit."""
    definition: _alcohol_mass_definition

class _energy_asbc_beer33(_of_alcohol_by_mass_and_real_extract_and_ash):
    """How much energy is in a kilogram of beer, from its analysis? alcohol_by_mass [% mass], real_extract [degP], ash [fraction] -> [kJ/kg]. Use: an analysed beer."""
    asbc_beer33: _energy_asbc_beer33

class _energy_of_serving_hall(_of_original_gravity_and_final_gravity):
    """How much energy is in a serving of 355 mL, from original and final gravity? original_gravity [SG 20/20], final_gravity [SG 20/20] -> [kJ]. Use: two gravities and no analysis."""
    hall: _energy_of_serving_hall

class _label_energy_kilojoule_eu_1169(_of_alcohol_by_volume_and_carbohydrate_concentration_and_protein_concentration):
    """What energy in kJ does the law put on the label? alcohol_by_volume [% vol], carbohydrate_concentration [g/L], protein_concentration [g/L] -> [kJ/L]. Use: labels in the European Union; a label shows the energy of 100 mL, a tenth of this."""
    eu_1169: _label_energy_kilojoule_eu_1169

class _label_energy_kilocalorie_eu_1169(_of_alcohol_by_volume_and_carbohydrate_concentration_and_protein_concentration):
    """What energy in kcal does the law put on the label? alcohol_by_volume [% vol], carbohydrate_concentration [g/L], protein_concentration [g/L] -> [kcal/L]. Use: labels in the European Union; a label shows the energy of 100 mL, a tenth of this."""
    eu_1169: _label_energy_kilocalorie_eu_1169

class _carbohydrate_asbc_beer33(_of_real_extract_and_protein_and_ash):
    """What share of the beer is carbohydrate? real_extract [degP], protein [fraction], ash [fraction] -> [fraction]. Use: an analysed beer."""
    asbc_beer33: _carbohydrate_asbc_beer33

density: _density_tabarie
real_extract_from_density: _real_extract_from_density_tabarie
alcohol_by_volume: _alcohol_by_volume_definition
alcohol_by_mass: _alcohol_by_mass_definition
alcohol_mass: _alcohol_mass_definition
energy: _energy_asbc_beer33
energy_of_serving: _energy_of_serving_hall
label_energy_kilojoule: _label_energy_kilojoule_eu_1169
label_energy_kilocalorie: _label_energy_kilocalorie_eu_1169
carbohydrate: _carbohydrate_asbc_beer33
