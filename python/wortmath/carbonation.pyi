# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_temperature(Model):
    @overload
    def __call__(self, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_co2_pressure(Model):
    @overload
    def __call__(self, temperature: _S, co2_pressure: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, co2_pressure: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, co2_pressure: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_pressure(Model):
    @overload
    def __call__(self, temperature: _S, pressure: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, pressure: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, pressure: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_carbonation(Model):
    @overload
    def __call__(self, carbonation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, carbonation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, carbonation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_carbonation_and_temperature(Model):
    @overload
    def __call__(self, carbonation: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, carbonation: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, carbonation: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_co2(Model):
    @overload
    def __call__(self, co2: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, co2: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, co2: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_co2_and_temperature(Model):
    @overload
    def __call__(self, co2: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, co2: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, co2: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_fraction_and_density(Model):
    @overload
    def __call__(self, mass_fraction: _S, density: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass_fraction: _N, density: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass_fraction: _L, density: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_gauge_pressure_and_barometer(Model):
    @overload
    def __call__(self, temperature: _S, gauge_pressure: _S, barometer: _S = 1.01325, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, gauge_pressure: _N, barometer: _N = 1.01325, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, gauge_pressure: _L, barometer: _L = 1.01325, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_gauge_pressure_and_barometer_variant_2(Model):
    @overload
    def __call__(self, temperature: _S, gauge_pressure: _S, barometer: _S = 1.01325, factor: _S = 0.93, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, gauge_pressure: _N, barometer: _N = 1.01325, factor: _N = 0.93, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, gauge_pressure: _L, barometer: _L = 1.01325, factor: _L = 0.93, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_carbonation_and_barometer(Model):
    @overload
    def __call__(self, temperature: _S, carbonation: _S, barometer: _S = 1.01325, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, carbonation: _N, barometer: _N = 1.01325, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, carbonation: _L, barometer: _L = 1.01325, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_carbonation_and_barometer_variant_2(Model):
    @overload
    def __call__(self, temperature: _S, carbonation: _S, barometer: _S = 1.01325, factor: _S = 0.93, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, carbonation: _N, barometer: _N = 1.01325, factor: _N = 0.93, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, carbonation: _L, barometer: _L = 1.01325, factor: _L = 0.93, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_barometer_and_bunging_gauge_pressure(Model):
    @overload
    def __call__(self, temperature: _S, barometer: _S = 1.01325, bunging_gauge_pressure: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, barometer: _N = 1.01325, bunging_gauge_pressure: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, barometer: _L = 1.01325, bunging_gauge_pressure: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _second_virial_weiss_1974(_of_temperature):
    """How far is carbon dioxide gas from an ideal gas at a temperature? temperature [degC] -> [cm3/mol]. Use: the second virial coefficient behind every pressure of this chapter."""
    weiss_1974: _second_virial_weiss_1974

class _fugacity_coefficient_virial(_of_temperature_and_co2_pressure):
    """By what factor does the pressure of carbon dioxide overstate its urge to dissolve? temperature [degC], co2_pressure [bar] -> [ratio]. Use: wherever a CO2 pressure of several bar meets a Henry constant."""
    virial: _fugacity_coefficient_virial

class _compressibility_virial(_of_temperature_and_co2_pressure):
    """What volume does carbon dioxide take, as a share of that of an ideal gas? temperature [degC], co2_pressure [bar] -> [ratio]. Use: the gas in a headspace."""
    virial: _compressibility_virial

class _molar_volume_virial(_of_temperature_and_pressure):
    """How many litres does one mole of carbon dioxide gas take? temperature [degC], pressure [bar] -> [L/mol]. Use: to turn a mass of CO2 into a volume of gas."""
    virial: _molar_volume_virial

class _concentration_real_gas(_of_carbonation):
    """How many grams of carbon dioxide per litre is a carbonation in volumes? carbonation [volumes] -> [g/L]. Use: always, unless a text says that it uses another volume."""
    real_gas: _concentration_real_gas
    ideal_gas: _concentration_ideal_gas
    rounded_1_96: _concentration_rounded_1_96
    gas_at_temperature: _concentration_gas_at_temperature

class _concentration_ideal_gas(_of_carbonation):
    """How many grams of carbon dioxide per litre is a carbonation in volumes? carbonation [volumes] -> [g/L]. Use: to read texts that used it."""

class _concentration_rounded_1_96(_of_carbonation):
    """How many grams of carbon dioxide per litre is a carbonation in volumes? carbonation [volumes] -> [g/L]. Use: to read texts that used 1.96 g/L."""

class _concentration_gas_at_temperature(_of_carbonation_and_temperature):
    """How many grams of carbon dioxide per litre is a carbonation in volumes? carbonation [volumes], temperature [degC] -> [g/L]. Use: to decode recipes whose volume is gas at room temperature."""

class _volumes_real_gas(_of_co2):
    """How many volumes of carbon dioxide is a content in grams per litre? co2 [g/L] -> [volumes]. Use: always, unless a text says that it uses another volume."""
    real_gas: _volumes_real_gas
    ideal_gas: _volumes_ideal_gas
    rounded_1_96: _volumes_rounded_1_96
    gas_at_temperature: _volumes_gas_at_temperature

class _volumes_ideal_gas(_of_co2):
    """How many volumes of carbon dioxide is a content in grams per litre? co2 [g/L] -> [volumes]. Use: to write for readers of texts that used it."""

class _volumes_rounded_1_96(_of_co2):
    """How many volumes of carbon dioxide is a content in grams per litre? co2 [g/L] -> [volumes]. Use: to write for readers of texts that used 1.96 g/L."""

class _volumes_gas_at_temperature(_of_co2_and_temperature):
    """How many volumes of carbon dioxide is a content in grams per litre? co2 [g/L], temperature [degC] -> [volumes]. Use: to compare with recipes whose volume is gas at room temperature."""

class _concentration_from_mass_fraction_density(_of_mass_fraction_and_density):
    """How many grams of carbon dioxide per litre is a share by mass? mass_fraction [fraction], density [kg/m3] -> [g/L]. Use: to read results in % by mass, as MEBAK gives them."""
    density: _concentration_from_mass_fraction_density

class _henry_constant_weiss_1974(_of_temperature):
    """How much carbon dioxide does water take up per bar? temperature [degC] -> [g/(L bar)]. Use: drinks at all temperatures of storage, and everything about packages."""
    weiss_1974: _henry_constant_weiss_1974
    carroll_1991: _henry_constant_carroll_1991
    iapws_g7_04: _henry_constant_iapws_g7_04

class _henry_constant_carroll_1991(_of_temperature):
    """How much carbon dioxide does water take up per bar? temperature [degC] -> [g/(L bar)]. Use: the literature of soft drinks and of high temperatures."""

class _henry_constant_iapws_g7_04(_of_temperature):
    """How much carbon dioxide does water take up per bar? temperature [degC] -> [g/(L bar)]. Use: hot water and comparisons; not for carbonation."""

class _solubility_weiss_1974(_of_temperature_and_co2_pressure):
    """How much carbon dioxide does water hold under a pressure of the gas? temperature [degC], co2_pressure [bar] -> [g/L]. Use: water at the temperatures of drinks."""
    weiss_1974: _solubility_weiss_1974
    carroll_1991: _solubility_carroll_1991
    iapws_g7_04: _solubility_iapws_g7_04

class _solubility_carroll_1991(_of_temperature_and_co2_pressure):
    """How much carbon dioxide does water hold under a pressure of the gas? temperature [degC], co2_pressure [bar] -> [g/L]. Use: the literature of soft drinks and of high temperatures."""

class _solubility_iapws_g7_04(_of_temperature_and_co2_pressure):
    """How much carbon dioxide does water hold under a pressure of the gas? temperature [degC], co2_pressure [bar] -> [g/L]. Use: hot water and comparisons; not for carbonation."""

class _equilibrium_exponential_chart(_of_temperature_and_gauge_pressure_and_barometer):
    """How much carbon dioxide does beer hold under a gauge pressure of the pure gas? temperature [degC], gauge_pressure [bar], barometer [bar] -> [volumes]. Use: beer at the tap and in cold kegs; beer_henry for packages and above 20 degC."""
    exponential_chart: _equilibrium_exponential_chart
    beer_henry: _equilibrium_beer_henry
    quadratic_regulator: _equilibrium_quadratic_regulator
    german_exponential: _equilibrium_german_exponential

class _equilibrium_beer_henry(_of_temperature_and_gauge_pressure_and_barometer_variant_2):
    """How much carbon dioxide does beer hold under a gauge pressure of the pure gas? temperature [degC], gauge_pressure [bar], barometer [bar], factor [ratio] -> [volumes]. Use: packages, and everything above 20 degC."""

class _equilibrium_quadratic_regulator(_of_temperature_and_gauge_pressure_and_barometer):
    """How much carbon dioxide does beer hold under a gauge pressure of the pure gas? temperature [degC], gauge_pressure [bar], barometer [bar] -> [volumes]. Use: cold beer of 2 to 3 volumes: the closest to the chart."""

class _equilibrium_german_exponential(_of_temperature_and_gauge_pressure_and_barometer):
    """How much carbon dioxide does beer hold under a gauge pressure of the pure gas? temperature [degC], gauge_pressure [bar], barometer [bar] -> [volumes]. Use: to compare with German tables."""

class _pressure_exponential_chart(_of_temperature_and_carbonation_and_barometer):
    """What gauge pressure of pure carbon dioxide holds a carbonation in beer? temperature [degC], carbonation [volumes], barometer [bar] -> [bar]. Use: the regulator of a cold keg; beer_henry for packages and above 20 degC."""
    exponential_chart: _pressure_exponential_chart
    beer_henry: _pressure_beer_henry
    quadratic_regulator: _pressure_quadratic_regulator
    german_exponential: _pressure_german_exponential

class _pressure_beer_henry(_of_temperature_and_carbonation_and_barometer_variant_2):
    """What gauge pressure of pure carbon dioxide holds a carbonation in beer? temperature [degC], carbonation [volumes], barometer [bar], factor [ratio] -> [bar]. Use: beer under pure CO2 above 20 degC; a closed package has air in it too: package.pressure."""

class _pressure_quadratic_regulator(_of_temperature_and_carbonation_and_barometer):
    """What gauge pressure of pure carbon dioxide holds a carbonation in beer? temperature [degC], carbonation [volumes], barometer [bar] -> [bar]. Use: cold beer of 2 to 3 volumes: the closest to the chart."""

class _pressure_german_exponential(_of_temperature_and_carbonation_and_barometer):
    """What gauge pressure of pure carbon dioxide holds a carbonation in beer? temperature [degC], carbonation [volumes], barometer [bar] -> [bar]. Use: to compare with German tables."""

class _residual_water_quadratic(_of_temperature_and_barometer_and_bunging_gauge_pressure):
    """How much carbon dioxide is left in the beer after fermentation? temperature [degC], barometer [bar], bunging_gauge_pressure [bar] -> [volumes]. Use: before priming: it lies higher and asks for less sugar."""
    water_quadratic: _residual_water_quadratic
    zero_gauge_equilibrium: _residual_zero_gauge_equilibrium

class _residual_zero_gauge_equilibrium(_of_temperature_and_barometer_and_bunging_gauge_pressure):
    """How much carbon dioxide is left in the beer after fermentation? temperature [degC], barometer [bar], bunging_gauge_pressure [bar] -> [volumes]. Use: the physical answer for beer; for priming the default is the cautious side."""

second_virial: _second_virial_weiss_1974
fugacity_coefficient: _fugacity_coefficient_virial
compressibility: _compressibility_virial
molar_volume: _molar_volume_virial
concentration: _concentration_real_gas
volumes: _volumes_real_gas
concentration_from_mass_fraction: _concentration_from_mass_fraction_density
henry_constant: _henry_constant_weiss_1974
solubility: _solubility_weiss_1974
equilibrium: _equilibrium_exponential_chart
pressure: _pressure_exponential_chart
residual: _residual_water_quadratic
