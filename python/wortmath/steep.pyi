# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, Literal, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_grist_mass_and_malt(Model):
    @overload
    def __call__(self, grist_mass: _S, malt: Literal["light_crystal", "pale_crystal", "medium_crystal", "dark_crystal", "dark_belgian_caramel", "chocolate_malt", "roast_barley", "black_patent_malt", "brown_malt", "dextrin_malt", "malto_dextrin", "sugar"], *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grist_mass: _N, malt: Literal["light_crystal", "pale_crystal", "medium_crystal", "dark_crystal", "dark_belgian_caramel", "chocolate_malt", "roast_barley", "black_patent_malt", "brown_malt", "dextrin_malt", "malto_dextrin", "sugar"], *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grist_mass: _L, malt: Literal["light_crystal", "pale_crystal", "medium_crystal", "dark_crystal", "dark_belgian_caramel", "chocolate_malt", "roast_barley", "black_patent_malt", "brown_malt", "dextrin_malt", "malto_dextrin", "sugar"], *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_grist_mass_and_potential_and_efficiency(Model):
    @overload
    def __call__(self, grist_mass: _S, potential: _S, efficiency: _S = 0.35, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, grist_mass: _N, potential: _N, efficiency: _N = 0.35, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, grist_mass: _L, potential: _L, efficiency: _L = 0.35, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _extract_palmer_table(_of_grist_mass_and_malt):
    """How much extract does steeped grain give, without a mash? grist_mass [g], malt [word] -> [g]. Use: the grains of the table."""
    palmer_table: _extract_palmer_table
    fraction_of_potential: _extract_fraction_of_potential

class _extract_fraction_of_potential(_of_grist_mass_and_potential_and_efficiency):
    """How much extract does steeped grain give, without a mash? grist_mass [g], potential [L degrees/kg], efficiency [fraction] -> [g]. Use: grain that the table does not name."""

extract: _extract_palmer_table
