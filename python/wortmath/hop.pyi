# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_mass_and_alpha(Model):
    @overload
    def __call__(self, mass: _S, alpha: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, alpha: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, alpha: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_alpha_and_actual_alpha(Model):
    @overload
    def __call__(self, mass: _S, alpha: _S, actual_alpha: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, alpha: _N, actual_alpha: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, alpha: _L, actual_alpha: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_absorbance_275_and_absorbance_325(Model):
    @overload
    def __call__(self, absorbance_275: _S, absorbance_325: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, absorbance_275: _N, absorbance_325: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, absorbance_275: _L, absorbance_325: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_storage_index_and_slope(Model):
    @overload
    def __call__(self, storage_index: _S, slope: _S = 1.1, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, storage_index: _N, slope: _N = 1.1, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, storage_index: _L, slope: _L = 1.1, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alpha_and_six_month_loss_and_temperature(Model):
    @overload
    def __call__(self, alpha: _S, six_month_loss: _S, temperature: _S, storage_factor: _S, storage_days: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alpha: _N, six_month_loss: _N, temperature: _N, storage_factor: _N, storage_days: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alpha: _L, six_month_loss: _L, temperature: _L, storage_factor: _L, storage_days: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_six_month_loss(Model):
    @overload
    def __call__(self, six_month_loss: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, six_month_loss: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, six_month_loss: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature(Model):
    @overload
    def __call__(self, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _alpha_units_aau(_of_mass_and_alpha):
    """How many alpha acid units, or homebrew bitterness units, is a hop addition? mass [g], alpha [fraction] -> [AAU]. Use: recipes that count ounces times per cent."""
    aau: _alpha_units_aau

class _equivalent_mass_equal_alpha(_of_mass_and_alpha_and_actual_alpha):
    """How much of the hops in hand brings the alpha acids that the recipe counts on? mass [g], alpha [fraction], actual_alpha [fraction] -> [g]. Use: hops boiled for bitterness, from another lot or aged."""
    equal_alpha: _equivalent_mass_equal_alpha

class _storage_index_absorbance_ratio(_of_absorbance_275_and_absorbance_325):
    """What is the hop storage index, from the absorbances of a hop extract? absorbance_275 [ratio], absorbance_325 [ratio] -> [ratio]."""
    absorbance_ratio: _storage_index_absorbance_ratio

class _storage_index_loss_nickerson_likens(_of_storage_index_and_slope):
    """What share of its alpha and beta acids has a hop lost, judged by its storage index? storage_index [ratio], slope [fraction per decade] -> [fraction]."""
    nickerson_likens: _storage_index_loss_nickerson_likens

class _ageing_garetz_storage(_of_alpha_and_six_month_loss_and_temperature):
    """How much alpha acids is left in hops after storage? alpha [fraction], six_month_loss [fraction], temperature [degC], storage_factor [ratio], storage_days [d] -> [fraction]. Use: storage_factor 1 in air, 0.75 sealed with air inside, 0.5 in a barrier under vacuum or inert gas."""
    garetz_storage: _ageing_garetz_storage

class _ageing_initial_alpha_garetz_storage(_of_alpha_and_six_month_loss_and_temperature):
    """How much alpha acids did hops hold before storage, from what they hold today? alpha [fraction], six_month_loss [fraction], temperature [degC], storage_factor [ratio], storage_days [d] -> [fraction]."""
    garetz_storage: _ageing_initial_alpha_garetz_storage

class _ageing_rate_garetz(_of_six_month_loss):
    """At which rate per day do stored hops lose alpha acids, from the share lost in six months? six_month_loss [fraction] -> [1/d]."""
    garetz: _ageing_rate_garetz

class _ageing_temperature_factor_garetz(_of_temperature):
    """By what factor does the temperature change the ageing of stored hops, relative to 20 degC? temperature [degC] -> [ratio]."""
    garetz: _ageing_temperature_factor_garetz

alpha_units: _alpha_units_aau
equivalent_mass: _equivalent_mass_equal_alpha
storage_index: _storage_index_absorbance_ratio
storage_index_loss: _storage_index_loss_nickerson_likens
ageing: _ageing_garetz_storage
ageing_initial_alpha: _ageing_initial_alpha_garetz_storage
ageing_rate: _ageing_rate_garetz
ageing_temperature_factor: _ageing_temperature_factor_garetz
