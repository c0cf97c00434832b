# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_brix_and_wort_factor(Model):
    @overload
    def __call__(self, brix: _S, wort_factor: _S = 1.04, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, brix: _N, wort_factor: _N = 1.04, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, brix: _L, wort_factor: _L = 1.04, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_brix_and_extract(Model):
    @overload
    def __call__(self, brix: _S, extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, brix: _N, extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, brix: _L, extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_brix_and_sample_temperature(Model):
    @overload
    def __call__(self, brix: _S, sample_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, brix: _N, sample_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, brix: _L, sample_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_brix_and_current_brix_and_wort_factor(Model):
    @overload
    def __call__(self, original_brix: _S, current_brix: _S, wort_factor: _S = 1.04, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_brix: _N, current_brix: _N, wort_factor: _N = 1.04, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_brix: _L, current_brix: _L, wort_factor: _L = 1.04, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_brix_and_current_brix(Model):
    @overload
    def __call__(self, original_brix: _S, current_brix: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_brix: _N, current_brix: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_brix: _L, current_brix: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_current_brix_and_gravity_and_wort_factor(Model):
    @overload
    def __call__(self, current_brix: _S, gravity: _S, wort_factor: _S = 1.04, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, current_brix: _N, gravity: _N, wort_factor: _N = 1.04, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, current_brix: _L, gravity: _L, wort_factor: _L = 1.04, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_current_brix_and_gravity(Model):
    @overload
    def __call__(self, current_brix: _S, gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, current_brix: _N, gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, current_brix: _L, gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_extract_and_apparent_extract_and_wort_factor(Model):
    @overload
    def __call__(self, original_extract: _S, apparent_extract: _S, wort_factor: _S = 1.04, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, apparent_extract: _N, wort_factor: _N = 1.04, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, apparent_extract: _L, wort_factor: _L = 1.04, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_brix(Model):
    @overload
    def __call__(self, brix: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, brix: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, brix: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_index(Model):
    @overload
    def __call__(self, index: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, index: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, index: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_temperature_and_density_and_wavelength(Model):
    @overload
    def __call__(self, temperature: _S, density: _S, wavelength: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, temperature: _N, density: _N, wavelength: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, temperature: _L, density: _L, wavelength: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_index_in_vacuum(Model):
    @overload
    def __call__(self, index_in_vacuum: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, index_in_vacuum: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, index_in_vacuum: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass_and_real_extract_and_density(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, real_extract: _S, density: _S, extract_refraction: _S = 0.2065, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, real_extract: _N, density: _N, extract_refraction: _N = 0.2065, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, real_extract: _L, density: _L, extract_refraction: _L = 0.2065, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_extract_and_brix(Model):
    @overload
    def __call__(self, original_extract: _S, brix: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, brix: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, brix: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_scale_reading(Model):
    @overload
    def __call__(self, scale_reading: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, scale_reading: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, scale_reading: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _wort_correction_divide(_of_brix_and_wort_factor):
    """What extract has an unfermented wort that reads so many degrees Brix? brix [degBx], wort_factor [ratio] -> [degP]. Use: unfermented wort only: alcohol raises the reading."""
    divide: _wort_correction_divide

class _wort_factor_measured(_of_brix_and_extract):
    """What is the wort factor of this wort on this instrument? brix [degBx], extract [degP] -> [ratio]. Use: once for each kind of wort and each instrument, unfermented and at 20 degC."""
    measured: _wort_factor_measured

class _temperature_correction_polynomial(_of_brix_and_sample_temperature):
    """What is added to a reading taken away from 20 degC, without automatic compensation? brix [degBx], sample_temperature [degC] -> [degBx]. Use: wort and sugar, on an instrument true at 20 degC that does not compensate by itself."""
    polynomial: _temperature_correction_polynomial

class _brix_at_20_polynomial(_of_brix_and_sample_temperature):
    """What would the instrument have read at 20 degC? brix [degBx], sample_temperature [degC] -> [degBx]. Use: wort and sugar, on an instrument true at 20 degC that does not compensate by itself."""
    polynomial: _brix_at_20_polynomial

class _final_gravity_additive(_of_original_brix_and_current_brix_and_wort_factor):
    """What gravity has the beer, from the readings before and during or after fermentation? original_brix [degBx], current_brix [degBx], wort_factor [ratio] -> [SG 20/20]. Use: the whole fermentation, early and unusual attenuations too."""
    additive: _final_gravity_additive
    novotny_linear: _final_gravity_novotny_linear
    novotny_quadratic: _final_gravity_novotny_quadratic
    bonham: _final_gravity_bonham
    terrill_linear: _final_gravity_terrill_linear
    terrill_cubic: _final_gravity_terrill_cubic
    woodland: _final_gravity_woodland

class _final_gravity_novotny_linear(_of_original_brix_and_current_brix_and_wort_factor):
    """What gravity has the beer, from the readings before and during or after fermentation? original_brix [degBx], current_brix [degBx], wort_factor [ratio] -> [SG 20/20]. Use: apparent attenuations of 50 to 95 %, worts of 8 to 20 degP; what the trade quotes most."""

class _final_gravity_novotny_quadratic(_of_original_brix_and_current_brix_and_wort_factor):
    """What gravity has the beer, from the readings before and during or after fermentation? original_brix [degBx], current_brix [degBx], wort_factor [ratio] -> [SG 20/20]. Use: apparent attenuations of 50 to 95 %."""

class _final_gravity_bonham(_of_original_brix_and_current_brix_and_wort_factor):
    """What gravity has the beer, from the readings before and during or after fermentation? original_brix [degBx], current_brix [degBx], wort_factor [ratio] -> [SG 20/20]. Use: often called the standard formula; no range fails, but it runs low."""

class _final_gravity_terrill_linear(_of_original_brix_and_current_brix_and_wort_factor):
    """What gravity has the beer, from the readings before and during or after fermentation? original_brix [degBx], current_brix [degBx], wort_factor [ratio] -> [SG 20/20]. Use: finished beer of 70 to 80 % apparent attenuation only; never to follow a fermentation."""

class _final_gravity_terrill_cubic(_of_original_brix_and_current_brix_and_wort_factor):
    """What gravity has the beer, from the readings before and during or after fermentation? original_brix [degBx], current_brix [degBx], wort_factor [ratio] -> [SG 20/20]. Use: finished beer of 65 to 85 % apparent attenuation only; never to follow a fermentation."""

class _final_gravity_woodland(_of_original_brix_and_current_brix):
    """What gravity has the beer, from the readings before and during or after fermentation? original_brix [degBx], current_brix [degBx] -> [SG 20/20]. Use: finished beer up to 16 degP."""

class _two_instrument_alcohol_by_volume_additive(_of_current_brix_and_gravity_and_wort_factor):
    """How strong is a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20], wort_factor [ratio] -> [% vol]. Use: any beer."""
    additive: _two_instrument_alcohol_by_volume_additive
    additive_linear: _two_instrument_alcohol_by_volume_additive_linear
    woodland: _two_instrument_alcohol_by_volume_woodland

class _two_instrument_alcohol_by_volume_additive_linear(_of_current_brix_and_gravity_and_wort_factor):
    """How strong is a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20], wort_factor [ratio] -> [% vol]. Use: where no iteration is wanted."""

class _two_instrument_alcohol_by_volume_woodland(_of_current_brix_and_gravity):
    """How strong is a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20] -> [% vol]. Use: raw readings, not divided by a wort factor."""

class _two_instrument_real_extract_additive(_of_current_brix_and_gravity_and_wort_factor):
    """What is the real extract of a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20], wort_factor [ratio] -> [degP]. Use: any beer."""
    additive: _two_instrument_real_extract_additive
    additive_linear: _two_instrument_real_extract_additive_linear

class _two_instrument_real_extract_additive_linear(_of_current_brix_and_gravity_and_wort_factor):
    """What is the real extract of a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20], wort_factor [ratio] -> [degP]. Use: where no iteration is wanted."""

class _two_instrument_original_extract_additive(_of_current_brix_and_gravity_and_wort_factor):
    """What was the original extract of a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20], wort_factor [ratio] -> [degP]. Use: any beer."""
    additive: _two_instrument_original_extract_additive
    additive_linear: _two_instrument_original_extract_additive_linear

class _two_instrument_original_extract_additive_linear(_of_current_brix_and_gravity_and_wort_factor):
    """What was the original extract of a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20], wort_factor [ratio] -> [degP]. Use: where no iteration is wanted."""

class _two_instrument_original_gravity_woodland(_of_current_brix_and_gravity):
    """What was the original gravity of a beer of unknown history, from refractometer and hydrometer together? current_brix [degBx], gravity [SG 20/20] -> [SG 20/20]. Use: raw readings, not divided by a wort factor; two_instrument_original_extract.additive is the safer way."""
    woodland: _two_instrument_original_gravity_woodland

class _reading_additive(_of_original_extract_and_apparent_extract_and_wort_factor):
    """What does a refractometer show in a fermenting beer? original_extract [degP], apparent_extract [degP], wort_factor [ratio] -> [degBx]. Use: the whole fermentation; at the start it gives the wort factor times the original extract exactly."""
    additive: _reading_additive

class _index_icumsa_1974(_of_brix):
    """What is the refractive index of a sucrose solution, at 20 degC against air? brix [degBx] -> [ratio]. Use: any sugar content."""
    icumsa_1974: _index_icumsa_1974
    icumsa_1974_cubic: _index_icumsa_1974_cubic

class _index_icumsa_1974_cubic(_of_brix):
    """What is the refractive index of a sucrose solution, at 20 degC against air? brix [degBx] -> [ratio]. Use: small computers; wort strengths."""

class _brix_from_index_icumsa_1974(_of_index):
    """What sugar content belongs to a refractive index at 20 degC against air? index [ratio] -> [degBx]. Use: any sugar content."""
    icumsa_1974: _brix_from_index_icumsa_1974
    icumsa_1974_cubic: _brix_from_index_icumsa_1974_cubic
    horner_quintic: _brix_from_index_horner_quintic

class _brix_from_index_icumsa_1974_cubic(_of_index):
    """What sugar content belongs to a refractive index at 20 degC against air? index [ratio] -> [degBx]. Use: small computers; wort strengths, 0 to 30 degBx."""

class _brix_from_index_horner_quintic(_of_index):
    """What sugar content belongs to a refractive index at 20 degC against air? index [ratio] -> [degBx]. Use: to repeat older work."""

class _water_index_iapws_r9_97(_of_temperature_and_density_and_wavelength):
    """What is the refractive index of water, against vacuum? temperature [degC], density [kg/m3], wavelength [nm] -> [ratio]. Use: to check the zero of an instrument at its temperature and wavelength."""
    iapws_r9_97: _water_index_iapws_r9_97

class _index_in_air_ratio(_of_index_in_vacuum):
    """What is the refractive index against air where it is known against vacuum? index_in_vacuum [ratio] -> [ratio]. Use: before an index of water meets a sugar scale."""
    ratio: _index_in_air_ratio

class _ethanol_index_crc_fit(_of_alcohol_by_mass):
    """What is the refractive index of weak ethanol in water, at 20 degC against air? alcohol_by_mass [% mass] -> [ratio]. Use: up to 12 % mass; above that mixture_index."""
    crc_fit: _ethanol_index_crc_fit

class _mixture_index_lorentz_lorenz(_of_alcohol_by_mass_and_real_extract_and_density):
    """What is the refractive index of water, alcohol and extract together, at 20 degC against air? alcohol_by_mass [% mass], real_extract [degP], density [kg/m3], extract_refraction [cm3/g] -> [ratio]. Use: beer, with the refraction of its own extract from extract_refraction."""
    lorentz_lorenz: _mixture_index_lorentz_lorenz

class _extract_refraction_from_wort(_of_original_extract_and_brix):
    """How strongly does the extract of this wort refract? original_extract [degP], brix [degBx] -> [cm3/g]. Use: carries the wort factor into mixture_index."""
    from_wort: _extract_refraction_from_wort

class _immersion_index_zeiss(_of_scale_reading):
    """What refractive index belongs to the scale of an old immersion refractometer? scale_reading [scale divisions] -> [ratio]. Use: old laboratory data."""
    zeiss: _immersion_index_zeiss

class _apparent_extract_from_immersion_savel_1971(_of_scale_reading):
    """What is the apparent extract of a fermenting beer, by an old immersion refractometer? scale_reading [scale divisions] -> [degP]. Use: wort of 11.50 degP only."""
    savel_1971: _apparent_extract_from_immersion_savel_1971

wort_correction: _wort_correction_divide
wort_factor: _wort_factor_measured
temperature_correction: _temperature_correction_polynomial
brix_at_20: _brix_at_20_polynomial
final_gravity: _final_gravity_additive
two_instrument_alcohol_by_volume: _two_instrument_alcohol_by_volume_additive
two_instrument_real_extract: _two_instrument_real_extract_additive
two_instrument_original_extract: _two_instrument_original_extract_additive
two_instrument_original_gravity: _two_instrument_original_gravity_woodland
reading: _reading_additive
index: _index_icumsa_1974
brix_from_index: _brix_from_index_icumsa_1974
water_index: _water_index_iapws_r9_97
index_in_air: _index_in_air_ratio
ethanol_index: _ethanol_index_crc_fit
mixture_index: _mixture_index_lorentz_lorenz
extract_refraction: _extract_refraction_from_wort
immersion_index: _immersion_index_zeiss
apparent_extract_from_immersion: _apparent_extract_from_immersion_savel_1971
