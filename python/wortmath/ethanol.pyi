# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, Literal, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_alcohol_by_mass_and_temperature(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_density_and_temperature(Model):
    @overload
    def __call__(self, density: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, density: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, density: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass_and_reference(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, reference: Literal["20C", "60F"] = "20C", *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, reference: Literal["20C", "60F"] = "20C", *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, reference: Literal["20C", "60F"] = "20C", *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_volume_and_reference(Model):
    @overload
    def __call__(self, alcohol_by_volume: _S, reference: Literal["20C", "60F"] = "20C", *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_volume: _N, reference: Literal["20C", "60F"] = "20C", *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_volume: _L, reference: Literal["20C", "60F"] = "20C", *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _density_oiml_r22(_of_alcohol_by_mass_and_temperature):
    """What is the density of a mixture of water and ethanol? alcohol_by_mass [% mass], temperature [degC] -> [kg/m3]. Use: mixtures of water and ethanol, distillates too; for beer see beer.density."""
    oiml_r22: _density_oiml_r22

class _alcohol_by_mass_from_density_oiml_r22(_of_density_and_temperature):
    """How strong is a mixture of water and ethanol, such as a distillate, of this density? density [kg/m3], temperature [degC] -> [% mass]. Use: mixtures of water and ethanol without extract."""
    oiml_r22: _alcohol_by_mass_from_density_oiml_r22

class _alcohol_by_volume_from_mass_oiml_r22(_of_alcohol_by_mass_and_reference):
    """What is the alcohol by volume of a mixture of water and ethanol of this alcohol by mass? alcohol_by_mass [% mass], reference [word] -> [% vol]. Use: mixtures of water and ethanol; for beer beer.alcohol_by_volume."""
    oiml_r22: _alcohol_by_volume_from_mass_oiml_r22

class _alcohol_by_mass_from_volume_oiml_r22(_of_alcohol_by_volume_and_reference):
    """What is the alcohol by mass of a mixture of water and ethanol of this alcohol by volume? alcohol_by_volume [% vol], reference [word] -> [% mass]. Use: mixtures of water and ethanol; for beer beer.alcohol_by_mass."""
    oiml_r22: _alcohol_by_mass_from_volume_oiml_r22

density: _density_oiml_r22
alcohol_by_mass_from_density: _alcohol_by_mass_from_density_oiml_r22
alcohol_by_volume_from_mass: _alcohol_by_volume_from_mass_oiml_r22
alcohol_by_mass_from_volume: _alcohol_by_mass_from_volume_oiml_r22
