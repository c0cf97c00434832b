# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_volume_and_boil_off_and_hours(Model):
    @overload
    def __call__(self, volume: _S, boil_off: _S, hours: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, boil_off: _N, hours: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, boil_off: _L, hours: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_net_power_and_boiling_temperature(Model):
    @overload
    def __call__(self, net_power: _S, boiling_temperature: _S = 100.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, net_power: _N, boiling_temperature: _N = 100.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, net_power: _L, boiling_temperature: _L = 100.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_specific_heat_and_temperature(Model):
    @overload
    def __call__(self, mass: _S, specific_heat: _S, temperature: _S, target_temperature: _S, power: _S, efficiency: _S = 1.0, vessel_heat_capacity: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, specific_heat: _N, temperature: _N, target_temperature: _N, power: _N, efficiency: _N = 1.0, vessel_heat_capacity: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, specific_heat: _L, temperature: _L, target_temperature: _L, power: _L, efficiency: _L = 1.0, vessel_heat_capacity: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_specific_heat_and_temperature_variant_2(Model):
    @overload
    def __call__(self, mass: _S, specific_heat: _S, temperature: _S, target_temperature: _S, power: _S, loss_coefficient: _S, efficiency: _S = 1.0, vessel_heat_capacity: _S = 0.0, ambient_temperature: _S = 20.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, specific_heat: _N, temperature: _N, target_temperature: _N, power: _N, loss_coefficient: _N, efficiency: _N = 1.0, vessel_heat_capacity: _N = 0.0, ambient_temperature: _N = 20.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, specific_heat: _L, temperature: _L, target_temperature: _L, power: _L, loss_coefficient: _L, efficiency: _L = 1.0, vessel_heat_capacity: _L = 0.0, ambient_temperature: _L = 20.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_hop_mass_and_absorption(Model):
    @overload
    def __call__(self, hop_mass: _S, absorption: _S = 5.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, hop_mass: _N, absorption: _N = 5.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, hop_mass: _L, absorption: _L = 5.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_evaporation_rate_and_boiling_temperature(Model):
    @overload
    def __call__(self, evaporation_rate: _S, boiling_temperature: _S = 100.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, evaporation_rate: _N, boiling_temperature: _N = 100.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, evaporation_rate: _L, boiling_temperature: _L = 100.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _evaporated_volume_percent_of_start(_of_volume_and_boil_off_and_hours):
    """How many litres boil off, by the share of the start that is lost in an hour? volume [L], boil_off [1/h], hours [h] -> [L]."""
    percent_of_start: _evaporated_volume_percent_of_start

class _evaporation_latent_heat(_of_net_power_and_boiling_temperature):
    """How much water boils off in an hour at a given net power? net_power [kW], boiling_temperature [degC] -> [g/h]."""
    latent_heat: _evaporation_latent_heat

class _heating_time_lossless(_of_mass_and_specific_heat_and_temperature):
    """How long does it take to heat the kettle? mass [g], specific_heat [kJ/(kg K)], temperature [degC], target_temperature [degC], power [kW], efficiency [fraction], vessel_heat_capacity [kJ/K] -> [min]. Use: the usual estimate, with one efficiency for the whole heating."""
    lossless: _heating_time_lossless
    newton_loss: _heating_time_newton_loss

class _heating_time_newton_loss(_of_mass_and_specific_heat_and_temperature_variant_2):
    """How long does it take to heat the kettle? mass [g], specific_heat [kJ/(kg K)], temperature [degC], target_temperature [degC], power [kW], loss_coefficient [kW/K], efficiency [fraction], vessel_heat_capacity [kJ/K], ambient_temperature [degC] -> [min]. Use: a weak burner or a bare kettle, once the loss has been measured."""

class _hop_absorption_per_mass(_of_hop_mass_and_absorption):
    """How much wort do the drained hops keep? hop_mass [g], absorption [L/kg] -> [L]."""
    per_mass: _hop_absorption_per_mass

class _net_power_latent_heat(_of_evaporation_rate_and_boiling_temperature):
    """What net power does a measured boil-off stand for? evaporation_rate [g/h], boiling_temperature [degC] -> [kW]."""
    latent_heat: _net_power_latent_heat

evaporated_volume: _evaporated_volume_percent_of_start
evaporation: _evaporation_latent_heat
heating_time: _heating_time_lossless
hop_absorption: _hop_absorption_per_mass
net_power: _net_power_latent_heat
