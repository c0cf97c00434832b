# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, Literal, overload

import numpy as np
from numpy.typing import NDArray

from . import Model, _A, _L, _N, _P, _S, _W

class _of_volume_and_loss_volume_and_bottle_volume(Model):
    @overload
    def __call__(self, volume: _S, loss_volume: _S, bottle_volume: _S, *, policy: _P = None) -> int: ...
    @overload
    def __call__(self, volume: _N, loss_volume: _N, bottle_volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> NDArray[np.int64]: ...
    @overload
    def __call__(self, volume: _L, loss_volume: _L, bottle_volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_carbonation_and_temperature_and_headspace(Model):
    @overload
    def __call__(self, carbonation: _S, temperature: _S, headspace: _S = 0.04, air: _S = 1.0, fill_temperature: _S = 20.0, fill_pressure: _S = 1.01325, barometer: _S = 1.01325, factor: _S = 0.93, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, carbonation: _N, temperature: _N, headspace: _N = 0.04, air: _N = 1.0, fill_temperature: _N = 20.0, fill_pressure: _N = 1.01325, barometer: _N = 1.01325, factor: _N = 0.93, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, carbonation: _L, temperature: _L, headspace: _L = 0.04, air: _L = 1.0, fill_temperature: _L = 20.0, fill_pressure: _L = 1.01325, barometer: _L = 1.01325, factor: _L = 0.93, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_carbonation_and_temperature_and_henry_constant(Model):
    @overload
    def __call__(self, carbonation: _S, temperature: _S, henry_constant: _S, headspace: _S = 0.04, air: _S = 1.0, fill_temperature: _S = 20.0, fill_pressure: _S = 1.01325, barometer: _S = 1.01325, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, carbonation: _N, temperature: _N, henry_constant: _N, headspace: _N = 0.04, air: _N = 1.0, fill_temperature: _N = 20.0, fill_pressure: _N = 1.01325, barometer: _N = 1.01325, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, carbonation: _L, temperature: _L, henry_constant: _L, headspace: _L = 0.04, air: _L = 1.0, fill_temperature: _L = 20.0, fill_pressure: _L = 1.01325, barometer: _L = 1.01325, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_carbonation_and_temperature_and_headspace_variant_2(Model):
    @overload
    def __call__(self, carbonation: _S, temperature: _S, headspace: _S, fill_temperature: _S, fill_pressure: _S = 1.01325, barometer: _S = 1.01325, factor: _S = 0.89, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, carbonation: _N, temperature: _N, headspace: _N, fill_temperature: _N, fill_pressure: _N = 1.01325, barometer: _N = 1.01325, factor: _N = 0.89, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, carbonation: _L, temperature: _L, headspace: _L, fill_temperature: _L, fill_pressure: _L = 1.01325, barometer: _L = 1.01325, factor: _L = 0.89, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_co2_pressure_and_temperature_and_headspace(Model):
    @overload
    def __call__(self, co2_pressure: _S, temperature: _S, headspace: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, co2_pressure: _N, temperature: _N, headspace: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, co2_pressure: _L, temperature: _L, headspace: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_package_and_gauge_pressure_and_carbonation(Model):
    @overload
    def __call__(self, package: Literal["unrated_glass", "beer_glass_rated", "soft_drink_glass", "sparkling_wine_glass", "keg", "not_pressure_rated", "other"], gauge_pressure: _S, carbonation: _S, rated_gauge_pressure: _S | None = None, fermentation_confirmed: bool = False, *, policy: _P = None) -> int: ...
    @overload
    def __call__(self, package: Literal["unrated_glass", "beer_glass_rated", "soft_drink_glass", "sparkling_wine_glass", "keg", "not_pressure_rated", "other"], gauge_pressure: _N, carbonation: _N, rated_gauge_pressure: _N | None = None, fermentation_confirmed: bool = False, *, policy: _P = None, out: _A | None = None, where: _W = True) -> NDArray[np.int64]: ...
    @overload
    def __call__(self, package: Literal["unrated_glass", "beer_glass_rated", "soft_drink_glass", "sparkling_wine_glass", "keg", "not_pressure_rated", "other"], gauge_pressure: _L, carbonation: _L, rated_gauge_pressure: _L | None = None, fermentation_confirmed: bool = False, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _bottle_count_whole(_of_volume_and_loss_volume_and_bottle_volume):
    """How many bottles does the batch fill? volume [L], loss_volume [L], bottle_volume [L] -> [bottles]."""
    whole: _bottle_count_whole

class _pressure_beer_henry(_of_carbonation_and_temperature_and_headspace):
    """What gauge pressure will the sealed package see at a temperature? carbonation [volumes], temperature [degC], headspace [L/L], air [fraction], fill_temperature [degC], fill_pressure [bar], barometer [bar], factor [ratio] -> [bar]. Use: what a bottle, can or keg sees; hazard_run for the caution."""
    beer_henry: _pressure_beer_henry
    given_solubility: _pressure_given_solubility
    hazard_run: _pressure_hazard_run

class _pressure_given_solubility(_of_carbonation_and_temperature_and_henry_constant):
    """What gauge pressure will the sealed package see at a temperature? carbonation [volumes], temperature [degC], henry_constant [g/(L bar)], headspace [L/L], air [fraction], fill_temperature [degC], fill_pressure [bar], barometer [bar] -> [bar]. Use: other drinks, or a beer whose solubility was measured."""

class _pressure_hazard_run(_of_carbonation_and_temperature_and_headspace_variant_2):
    """What gauge pressure will the sealed package see at a temperature? carbonation [volumes], temperature [degC], headspace [L/L], fill_temperature [degC], fill_pressure [bar], barometer [bar], factor [ratio] -> [bar]. Use: what package.caution is fed with: hottest temperature, smallest plausible headspace, coldest plausible fill temperature."""

class _headspace_gas_virial(_of_co2_pressure_and_temperature_and_headspace):
    """How much carbon dioxide is in the headspace, per litre of beer? co2_pressure [bar], temperature [degC], headspace [L/L] -> [g/L]. Use: kegs that are primed: their headspace takes gas that a dose does not count."""
    virial: _headspace_gas_virial

class _caution_project_rule(_of_package_and_gauge_pressure_and_carbonation):
    """Which level of caution does a package call for? package [word], gauge_pressure [bar], carbonation [volumes], rated_gauge_pressure [bar], fermentation_confirmed [bool] -> [level]. Use: every package: fed with package.pressure.hazard_run at the hottest temperature, and that run's carbonation."""
    project_rule: _caution_project_rule

bottle_count: _bottle_count_whole
pressure: _pressure_beer_henry
headspace_gas: _headspace_gas_virial
caution: _caution_project_rule
