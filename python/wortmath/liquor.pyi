# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Any, Literal, NamedTuple, overload

from . import Model, _A, _L, _Labelled, _List, _N, _P, _Quantity, _S, _W

class _result_1(NamedTuple):
    co2: float
    bicarbonate: float
    carbonate: float

class _result_2(NamedTuple):
    co2: _A
    bicarbonate: _A
    carbonate: _A

class _result_3(NamedTuple):
    cations: float
    anions: float
    difference: float

class _result_4(NamedTuple):
    cations: _A
    anions: _A
    difference: _A

class _of_alkalinity_and_ph_and_target_ph(Model):
    @overload
    def __call__(self, alkalinity: _S, ph: _S, target_ph: _S, temperature: _S = 25.0, endpoint_ph: _S = 4.3, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alkalinity: _N, ph: _N, target_ph: _N, temperature: _N = 25.0, endpoint_ph: _N = 4.3, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alkalinity: _L, ph: _L, target_ph: _L, temperature: _L = 25.0, endpoint_ph: _L = 4.3, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_and_alkalinity_and_ph(Model):
    @overload
    def __call__(self, volume: _S, alkalinity: _S, ph: _S, target_ph: _S, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], mass_fraction: _S, density: _S, temperature: _S = 25.0, endpoint_ph: _S = 4.3, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, alkalinity: _N, ph: _N, target_ph: _N, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], mass_fraction: _N, density: _N, temperature: _N = 25.0, endpoint_ph: _N = 4.3, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, alkalinity: _L, ph: _L, target_ph: _L, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], mass_fraction: _L, density: _L, temperature: _L = 25.0, endpoint_ph: _L = 4.3, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_acid_and_ph(Model):
    @overload
    def __call__(self, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], ph: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], ph: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], ph: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_acid_and_mass_fraction_and_density(Model):
    @overload
    def __call__(self, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], mass_fraction: _S, density: _S, ph: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], mass_fraction: _N, density: _N, ph: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, acid: Literal["lactic", "phosphoric", "citric", "hydrochloric", "sulphuric"], mass_fraction: _L, density: _L, ph: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_charge_and_ionic_strength(Model):
    @overload
    def __call__(self, charge: _S, ionic_strength: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, charge: _N, ionic_strength: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, charge: _L, ionic_strength: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_bicarbonate(Model):
    @overload
    def __call__(self, bicarbonate: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, bicarbonate: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, bicarbonate: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_total_carbonate_and_ph_and_temperature(Model):
    @overload
    def __call__(self, total_carbonate: _S, ph: _S, temperature: _S = 25.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, total_carbonate: _N, ph: _N, temperature: _N = 25.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, total_carbonate: _L, ph: _L, temperature: _L = 25.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_concentrations_and_volumes(Model):
    @overload
    def __call__(self, concentrations: Sequence[float], volumes: Sequence[float], *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, concentrations: Sequence[Sequence[float]], volumes: Sequence[Sequence[float]], *, policy: _P = None) -> _A: ...
    @overload
    def __call__(self, concentrations: _List | _Labelled | _Quantity, volumes: _List | _Labelled | _Quantity, *, policy: _P = None) -> Any: ...

class _of_ph_and_temperature(Model):
    @overload
    def __call__(self, ph: _S, temperature: _S = 25.0, *, policy: _P = None) -> _result_1: ...
    @overload
    def __call__(self, ph: _N, temperature: _N = 25.0, *, policy: _P = None) -> _result_2: ...
    @overload
    def __call__(self, ph: _L, temperature: _L = 25.0, *, policy: _P = None) -> Any: ...

class _of_temperature(Model):
    @overload
    def __call__(self, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_equivalents(Model):
    @overload
    def __call__(self, equivalents: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, equivalents: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, equivalents: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_and_chlorine_and_salt(Model):
    @overload
    def __call__(self, volume: _S, chlorine: _S, salt: Literal["potassium_metabisulphite", "sodium_metabisulphite"], assay: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, chlorine: _N, salt: Literal["potassium_metabisulphite", "sodium_metabisulphite"], assay: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, chlorine: _L, salt: Literal["potassium_metabisulphite", "sodium_metabisulphite"], assay: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_clark_degrees(Model):
    @overload
    def __call__(self, clark_degrees: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, clark_degrees: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, clark_degrees: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_french_degrees(Model):
    @overload
    def __call__(self, french_degrees: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, french_degrees: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, french_degrees: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_german_degrees(Model):
    @overload
    def __call__(self, german_degrees: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, german_degrees: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, german_degrees: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_grains_per_gallon(Model):
    @overload
    def __call__(self, grains_per_gallon: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grains_per_gallon: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grains_per_gallon: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_millimoles(Model):
    @overload
    def __call__(self, millimoles: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, millimoles: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, millimoles: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_ppm_caco3(Model):
    @overload
    def __call__(self, ppm_caco3: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, ppm_caco3: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, ppm_caco3: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_calcium_and_magnesium(Model):
    @overload
    def __call__(self, calcium: _S, magnesium: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, calcium: _N, magnesium: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, calcium: _L, magnesium: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_calcium_and_magnesium_and_sodium(Model):
    @overload
    def __call__(self, calcium: _S, magnesium: _S, sodium: _S, potassium: _S, sulphate: _S, chloride: _S, bicarbonate: _S, *, policy: _P = None) -> _result_3: ...
    @overload
    def __call__(self, calcium: _N, magnesium: _N, sodium: _N, potassium: _N, sulphate: _N, chloride: _N, bicarbonate: _N, *, policy: _P = None) -> _result_4: ...
    @overload
    def __call__(self, calcium: _L, magnesium: _L, sodium: _L, potassium: _L, sulphate: _L, chloride: _L, bicarbonate: _L, *, policy: _P = None) -> Any: ...

class _of_masses_and_malt_ph_and_a1(Model):
    @overload
    def __call__(self, masses: Sequence[float], malt_ph: Sequence[float], a1: Sequence[float], a2: Sequence[float], a3: Sequence[float], volume: _S, alkalinity: _S, ph: _S, calcium: _S, magnesium: _S, acid_added: _S = 0.0, temperature: _S = 25.0, endpoint_ph: _S = 4.3, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, masses: Sequence[Sequence[float]], malt_ph: Sequence[Sequence[float]], a1: Sequence[Sequence[float]], a2: Sequence[Sequence[float]], a3: Sequence[Sequence[float]], volume: _S, alkalinity: _S, ph: _S, calcium: _S, magnesium: _S, acid_added: _S = 0.0, temperature: _S = 25.0, endpoint_ph: _S = 4.3, *, policy: _P = None) -> _A: ...
    @overload
    def __call__(self, masses: _List | _Labelled | _Quantity, malt_ph: _List | _Labelled | _Quantity, a1: _List | _Labelled | _Quantity, a2: _List | _Labelled | _Quantity, a3: _List | _Labelled | _Quantity, volume: _L, alkalinity: _L, ph: _L, calcium: _L, magnesium: _L, acid_added: _L = 0.0, temperature: _L = 25.0, endpoint_ph: _L = 4.3, *, policy: _P = None) -> Any: ...

class _of_total_carbonate_and_alkalinity_and_temperature(Model):
    @overload
    def __call__(self, total_carbonate: _S, alkalinity: _S, temperature: _S = 25.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, total_carbonate: _N, alkalinity: _N, temperature: _N = 25.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, total_carbonate: _L, alkalinity: _L, temperature: _L = 25.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_residual_alkalinity(Model):
    @overload
    def __call__(self, residual_alkalinity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, residual_alkalinity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, residual_alkalinity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_residual_alkalinity_and_mash_ratio(Model):
    @overload
    def __call__(self, residual_alkalinity: _S, mash_ratio: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, residual_alkalinity: _N, mash_ratio: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, residual_alkalinity: _L, mash_ratio: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alkalinity_and_calcium_and_magnesium(Model):
    @overload
    def __call__(self, alkalinity: _S, calcium: _S, magnesium: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alkalinity: _N, calcium: _N, magnesium: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alkalinity: _L, calcium: _L, magnesium: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_salt_and_ion_and_mass(Model):
    @overload
    def __call__(self, salt: Literal["calcium_sulphate_dihydrate", "calcium_sulphate_anhydrous", "calcium_chloride_dihydrate", "calcium_chloride_anhydrous", "magnesium_sulphate_heptahydrate", "magnesium_chloride_hexahydrate", "sodium_bicarbonate", "sodium_carbonate_anhydrous", "calcium_carbonate", "calcium_hydroxide", "sodium_chloride", "potassium_chloride", "sodium_hydroxide"], ion: Literal["calcium", "magnesium", "sodium", "potassium", "sulphate", "chloride", "bicarbonate", "carbonate", "hydroxide"], mass: _S, volume: _S, assay: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, salt: Literal["calcium_sulphate_dihydrate", "calcium_sulphate_anhydrous", "calcium_chloride_dihydrate", "calcium_chloride_anhydrous", "magnesium_sulphate_heptahydrate", "magnesium_chloride_hexahydrate", "sodium_bicarbonate", "sodium_carbonate_anhydrous", "calcium_carbonate", "calcium_hydroxide", "sodium_chloride", "potassium_chloride", "sodium_hydroxide"], ion: Literal["calcium", "magnesium", "sodium", "potassium", "sulphate", "chloride", "bicarbonate", "carbonate", "hydroxide"], mass: _N, volume: _N, assay: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, salt: Literal["calcium_sulphate_dihydrate", "calcium_sulphate_anhydrous", "calcium_chloride_dihydrate", "calcium_chloride_anhydrous", "magnesium_sulphate_heptahydrate", "magnesium_chloride_hexahydrate", "sodium_bicarbonate", "sodium_carbonate_anhydrous", "calcium_carbonate", "calcium_hydroxide", "sodium_chloride", "potassium_chloride", "sodium_hydroxide"], ion: Literal["calcium", "magnesium", "sodium", "potassium", "sulphate", "chloride", "bicarbonate", "carbonate", "hydroxide"], mass: _L, volume: _L, assay: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_sulphate_and_chloride(Model):
    @overload
    def __call__(self, sulphate: _S, chloride: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, sulphate: _N, chloride: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, sulphate: _L, chloride: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alkalinity_and_ph_and_temperature(Model):
    @overload
    def __call__(self, alkalinity: _S, ph: _S, temperature: _S = 25.0, endpoint_ph: _S = 4.3, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alkalinity: _N, ph: _N, temperature: _N = 25.0, endpoint_ph: _N = 4.3, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alkalinity: _L, ph: _L, temperature: _L = 25.0, endpoint_ph: _L = 4.3, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alkalinity_and_ph_and_temperature_variant_2(Model):
    @overload
    def __call__(self, alkalinity: _S, ph: _S, temperature: _S = 25.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alkalinity: _N, ph: _N, temperature: _N = 25.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alkalinity: _L, ph: _L, temperature: _L = 25.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _acid_demand_closed(_of_alkalinity_and_ph_and_target_ph):
    """How much strong acid brings a water to a pH? alkalinity [mEq/L], ph [pH], target_ph [pH], temperature [degC], endpoint_ph [pH] -> [mEq/L]."""
    closed: _acid_demand_closed

class _acid_dose_closed(_of_volume_and_alkalinity_and_ph):
    """How much of an acid solution brings a water to a pH? volume [L], alkalinity [mEq/L], ph [pH], target_ph [pH], acid [word], mass_fraction [fraction], density [kg/m3], temperature [degC], endpoint_ph [pH] -> [L]."""
    closed: _acid_dose_closed

class _acid_equivalents_dissociation(_of_acid_and_ph):
    """How many protons does a molecule of the acid give off at a pH? acid [word], ph [pH] -> [eq/mol]."""
    dissociation: _acid_equivalents_dissociation

class _acid_strength_density(_of_acid_and_mass_fraction_and_density):
    """How many equivalents does a litre of the acid solution hold at a pH? acid [word], mass_fraction [fraction], density [kg/m3], ph [pH] -> [mEq/L]."""
    density: _acid_strength_density

class _activity_davies(_of_charge_and_ionic_strength):
    """What is the logarithm of an ion's activity coefficient? charge [ratio], ionic_strength [mmol/L] -> [ratio]."""
    davies: _activity_davies

class _alkalinity_from_bicarbonate(_of_bicarbonate):
    """What is the alkalinity of a water? bicarbonate [mg/L] -> [mEq/L]. Use: a water report, at a pH below 8.5."""
    from_bicarbonate: _alkalinity_from_bicarbonate
    carbonate: _alkalinity_carbonate

class _alkalinity_carbonate(_of_total_carbonate_and_ph_and_temperature):
    """What is the alkalinity of a water? total_carbonate [mmol/L], ph [pH], temperature [degC] -> [mEq/L]. Use: water whose total carbonate and pH are known."""

class _blend_linear(_of_concentrations_and_volumes):
    """What does a blend of waters hold? concentrations [any], volumes [L] -> [any]."""
    linear: _blend_linear

class _carbonate_fractions_equilibrium(_of_ph_and_temperature):
    """In which forms is the carbonate of a water at a pH? ph [pH], temperature [degC] -> co2 [fraction], bicarbonate [fraction], carbonate [fraction]."""
    equilibrium: _carbonate_fractions_equilibrium

class _carbonate_pk1_plummer_busenberg(_of_temperature):
    """What is the first dissociation constant of carbonic acid (as pK)? temperature [degC] -> [ratio]. Use: any temperature from 0 to 90 degC."""
    plummer_busenberg: _carbonate_pk1_plummer_busenberg
    millero: _carbonate_pk1_millero

class _carbonate_pk1_millero(_of_temperature):
    """What is the first dissociation constant of carbonic acid (as pK)? temperature [degC] -> [ratio]. Use: to compare, up to 50 degC."""

class _carbonate_pk2_plummer_busenberg(_of_temperature):
    """What is the second dissociation constant of carbonic acid (as pK)? temperature [degC] -> [ratio]. Use: any temperature from 0 to 90 degC."""
    plummer_busenberg: _carbonate_pk2_plummer_busenberg
    millero: _carbonate_pk2_millero

class _carbonate_pk2_millero(_of_temperature):
    """What is the second dissociation constant of carbonic acid (as pK)? temperature [degC] -> [ratio]. Use: to compare, up to 50 degC."""

class _clark_degrees_from_equivalents_exact(_of_equivalents):
    """How many Clark degrees are these mEq/L of hardness or alkalinity? equivalents [mEq/L] -> [Clark degrees]."""
    exact: _clark_degrees_from_equivalents_exact

class _dechlorination_stoichiometric(_of_volume_and_chlorine_and_salt):
    """How much metabisulphite removes the chlorine of tap water? volume [L], chlorine [mg/L], salt [word], assay [fraction] -> [g]."""
    stoichiometric: _dechlorination_stoichiometric

class _equivalents_from_clark_degrees_exact(_of_clark_degrees):
    """How many mEq/L of hardness or alkalinity are these Clark degrees? clark_degrees [Clark degrees] -> [mEq/L]."""
    exact: _equivalents_from_clark_degrees_exact

class _equivalents_from_french_degrees_exact(_of_french_degrees):
    """How many mEq/L of hardness or alkalinity are these French degrees? french_degrees [French degrees] -> [mEq/L]."""
    exact: _equivalents_from_french_degrees_exact

class _equivalents_from_german_degrees_exact(_of_german_degrees):
    """How many mEq/L of hardness or alkalinity are these German degrees? german_degrees [German degrees] -> [mEq/L]."""
    exact: _equivalents_from_german_degrees_exact

class _equivalents_from_grains_per_gallon_exact(_of_grains_per_gallon):
    """How many mEq/L of hardness or alkalinity are these grains per US gallon? grains_per_gallon [grains/US gal] -> [mEq/L]."""
    exact: _equivalents_from_grains_per_gallon_exact

class _equivalents_from_millimoles_exact(_of_millimoles):
    """How many mEq/L of hardness or alkalinity are these mmol/L of calcium carbonate? millimoles [mmol/L] -> [mEq/L]."""
    exact: _equivalents_from_millimoles_exact

class _equivalents_from_ppm_caco3_exact(_of_ppm_caco3):
    """How many mEq/L of hardness or alkalinity are these ppm as CaCO3? ppm_caco3 [ppm as CaCO3] -> [mEq/L]."""
    exact: _equivalents_from_ppm_caco3_exact

class _french_degrees_from_equivalents_exact(_of_equivalents):
    """How many French degrees are these mEq/L of hardness or alkalinity? equivalents [mEq/L] -> [French degrees]."""
    exact: _french_degrees_from_equivalents_exact

class _german_degrees_from_equivalents_exact(_of_equivalents):
    """How many German degrees are these mEq/L of hardness or alkalinity? equivalents [mEq/L] -> [German degrees]."""
    exact: _german_degrees_from_equivalents_exact

class _grains_per_gallon_from_equivalents_exact(_of_equivalents):
    """How many grains per US gallon are these mEq/L of hardness or alkalinity? equivalents [mEq/L] -> [grains/US gal]."""
    exact: _grains_per_gallon_from_equivalents_exact

class _hardness_calcium_magnesium(_of_calcium_and_magnesium):
    """What is the total hardness of a water? calcium [mg/L], magnesium [mg/L] -> [mEq/L]."""
    calcium_magnesium: _hardness_calcium_magnesium

class _ion_balance_relative(_of_calcium_and_magnesium_and_sodium):
    """Do the ions of a water report balance? calcium [mg/L], magnesium [mg/L], sodium [mg/L], potassium [mg/L], sulphate [mg/L], chloride [mg/L], bicarbonate [mg/L] -> cations [mEq/L], anions [mEq/L], difference [ratio]."""
    relative: _ion_balance_relative

class _mash_ph_proton_condition(_of_masses_and_malt_ph_and_a1):
    """What is the pH of the mash? masses [g], malt_ph [pH], a1 [mEq/(kg pH)], a2 [mEq/(kg pH2)], a3 [mEq/(kg pH3)], volume [L], alkalinity [mEq/L], ph [pH], calcium [mg/L], magnesium [mg/L], acid_added [mEq], temperature [degC], endpoint_ph [pH] -> [pH]."""
    proton_condition: _mash_ph_proton_condition

class _millimoles_from_equivalents_exact(_of_equivalents):
    """How many mmol/L of calcium carbonate are these mEq/L of hardness or alkalinity? equivalents [mEq/L] -> [mmol/L]."""
    exact: _millimoles_from_equivalents_exact

class _ph_carbonate(_of_total_carbonate_and_alkalinity_and_temperature):
    """What is the pH of a water with this carbonate and alkalinity? total_carbonate [mmol/L], alkalinity [mEq/L], temperature [degC] -> [pH]."""
    carbonate: _ph_carbonate

class _ph_shift_kolbach(_of_residual_alkalinity):
    """By how much does residual alkalinity raise the pH? residual_alkalinity [mEq/L] -> [pH]. Use: cast wort of 12 degP."""
    kolbach: _ph_shift_kolbach
    troester: _ph_shift_troester

class _ph_shift_troester(_of_residual_alkalinity_and_mash_ratio):
    """By how much does residual alkalinity raise the pH? residual_alkalinity [mEq/L], mash_ratio [L/kg] -> [pH]. Use: the mash."""

class _ppm_caco3_from_equivalents_exact(_of_equivalents):
    """How many ppm as CaCO3 are these mEq/L of hardness or alkalinity? equivalents [mEq/L] -> [ppm as CaCO3]."""
    exact: _ppm_caco3_from_equivalents_exact

class _residual_alkalinity_kolbach(_of_alkalinity_and_calcium_and_magnesium):
    """What is left of the alkalinity after calcium and magnesium have met the malt's phosphate? alkalinity [mEq/L], calcium [mg/L], magnesium [mg/L] -> [mEq/L]."""
    kolbach: _residual_alkalinity_kolbach

class _salt_stoichiometric(_of_salt_and_ion_and_mass):
    """How much of an ion does a salt add to the water? salt [word], ion [word], mass [g], volume [L], assay [fraction] -> [mg/L]."""
    stoichiometric: _salt_stoichiometric

class _sulphate_chloride_ratio(_of_sulphate_and_chloride):
    """What is the ratio of sulphate to chloride? sulphate [mg/L], chloride [mg/L] -> [ratio]."""
    ratio: _sulphate_chloride_ratio

class _total_carbonate_titration(_of_alkalinity_and_ph_and_temperature):
    """How much carbonate, in all its forms, does a water hold? alkalinity [mEq/L], ph [pH], temperature [degC], endpoint_ph [pH] -> [mmol/L]. Use: the alkalinity of a water report."""
    titration: _total_carbonate_titration
    equilibrium: _total_carbonate_equilibrium

class _total_carbonate_equilibrium(_of_alkalinity_and_ph_and_temperature_variant_2):
    """How much carbonate, in all its forms, does a water hold? alkalinity [mEq/L], ph [pH], temperature [degC] -> [mmol/L]. Use: an alkalinity counted from the level of CO2 (Gran), as liquor.alkalinity.carbonate gives it."""

class _water_pk_harned_owen(_of_temperature):
    """What is the ion product of water (as pK)? temperature [degC] -> [ratio]."""
    harned_owen: _water_pk_harned_owen

acid_demand: _acid_demand_closed
acid_dose: _acid_dose_closed
acid_equivalents: _acid_equivalents_dissociation
acid_strength: _acid_strength_density
activity: _activity_davies
alkalinity: _alkalinity_from_bicarbonate
blend: _blend_linear
carbonate_fractions: _carbonate_fractions_equilibrium
carbonate_pk1: _carbonate_pk1_plummer_busenberg
carbonate_pk2: _carbonate_pk2_plummer_busenberg
clark_degrees_from_equivalents: _clark_degrees_from_equivalents_exact
dechlorination: _dechlorination_stoichiometric
equivalents_from_clark_degrees: _equivalents_from_clark_degrees_exact
equivalents_from_french_degrees: _equivalents_from_french_degrees_exact
equivalents_from_german_degrees: _equivalents_from_german_degrees_exact
equivalents_from_grains_per_gallon: _equivalents_from_grains_per_gallon_exact
equivalents_from_millimoles: _equivalents_from_millimoles_exact
equivalents_from_ppm_caco3: _equivalents_from_ppm_caco3_exact
french_degrees_from_equivalents: _french_degrees_from_equivalents_exact
german_degrees_from_equivalents: _german_degrees_from_equivalents_exact
grains_per_gallon_from_equivalents: _grains_per_gallon_from_equivalents_exact
hardness: _hardness_calcium_magnesium
ion_balance: _ion_balance_relative
mash_ph: _mash_ph_proton_condition
millimoles_from_equivalents: _millimoles_from_equivalents_exact
ph: _ph_carbonate
ph_shift: _ph_shift_kolbach
ppm_caco3_from_equivalents: _ppm_caco3_from_equivalents_exact
residual_alkalinity: _residual_alkalinity_kolbach
salt: _salt_stoichiometric
sulphate_chloride: _sulphate_chloride_ratio
total_carbonate: _total_carbonate_titration
water_pk: _water_pk_harned_owen
