# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_original_extract(Model):
    @overload
    def __call__(self, original_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_extract_and_apparent_extract(Model):
    @overload
    def __call__(self, original_extract: _S, apparent_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, apparent_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, apparent_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_apparent_extract_and_alcohol_by_mass(Model):
    @overload
    def __call__(self, apparent_extract: _S, alcohol_by_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, apparent_extract: _N, alcohol_by_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, apparent_extract: _L, alcohol_by_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_extract_and_real_extract(Model):
    @overload
    def __call__(self, original_extract: _S, real_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, real_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, real_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass_and_real_extract(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, real_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, real_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, real_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_apparent_extract_and_real_extract(Model):
    @overload
    def __call__(self, apparent_extract: _S, real_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, apparent_extract: _N, real_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, apparent_extract: _L, real_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass_and_apparent_extract(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, apparent_extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, apparent_extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, apparent_extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_gravity_and_final_gravity(Model):
    @overload
    def __call__(self, original_gravity: _S, final_gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_gravity: _N, final_gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_gravity: _L, final_gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_extract_and_apparent_attenuation(Model):
    @overload
    def __call__(self, original_extract: _S, apparent_attenuation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_extract: _N, apparent_attenuation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_extract: _L, apparent_attenuation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_original_gravity_and_apparent_attenuation(Model):
    @overload
    def __call__(self, original_gravity: _S, apparent_attenuation: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, original_gravity: _N, apparent_attenuation: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, original_gravity: _L, apparent_attenuation: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_alcohol_by_mass(Model):
    @overload
    def __call__(self, alcohol_by_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, alcohol_by_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, alcohol_by_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_distillate_gravity_and_residue_gravity_and_acid_indication(Model):
    @overload
    def __call__(self, distillate_gravity: _S, residue_gravity: _S, acid_indication: _S = 0.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, distillate_gravity: _N, residue_gravity: _N, acid_indication: _N = 0.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, distillate_gravity: _L, residue_gravity: _L, acid_indication: _L = 0.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _quotient_balling(_of_original_extract):
    """How many times larger than the real attenuation is the apparent one? original_extract [degP] -> [ratio]. Use: apparent over real attenuation of a wort of this original extract."""
    balling: _quotient_balling

class _apparent_factor_balling(_of_original_extract):
    """How much alcohol, in % mass of the beer, comes of each degree by which the apparent extract fell? original_extract [degP] -> [ratio]. Use: any beer."""
    balling: _apparent_factor_balling
    pawlowski: _apparent_factor_pawlowski
    cutaia: _apparent_factor_cutaia

class _apparent_factor_pawlowski(_of_original_extract):
    """How much alcohol, in % mass of the beer, comes of each degree by which the apparent extract fell? original_extract [degP] -> [ratio]. Use: a second opinion beside balling."""

class _apparent_factor_cutaia(_of_original_extract):
    """How much alcohol, in % mass of the beer, comes of each degree by which the apparent extract fell? original_extract [degP] -> [ratio]. Use: to compare with the brews of that paper."""

class _real_factor_balling(_of_original_extract):
    """How much alcohol, in % mass of the beer, comes of each degree by which the real extract fell? original_extract [degP] -> [ratio]. Use: any beer."""
    balling: _real_factor_balling
    pawlowski: _real_factor_pawlowski
    cutaia: _real_factor_cutaia

class _real_factor_pawlowski(_of_original_extract):
    """How much alcohol, in % mass of the beer, comes of each degree by which the real extract fell? original_extract [degP] -> [ratio]. Use: a second opinion beside balling."""

class _real_factor_cutaia(_of_original_extract):
    """How much alcohol, in % mass of the beer, comes of each degree by which the real extract fell? original_extract [degP] -> [ratio]. Use: to compare with the brews of that paper."""

class _difference_factor_balling(_of_original_extract):
    """How much alcohol, in % mass of the beer, goes with each degree between real and apparent extract? original_extract [degP] -> [ratio]. Use: any beer."""
    balling: _difference_factor_balling
    pawlowski: _difference_factor_pawlowski
    cutaia: _difference_factor_cutaia

class _difference_factor_pawlowski(_of_original_extract):
    """How much alcohol, in % mass of the beer, goes with each degree between real and apparent extract? original_extract [degP] -> [ratio]. Use: a second opinion beside balling."""

class _difference_factor_cutaia(_of_original_extract):
    """How much alcohol, in % mass of the beer, goes with each degree between real and apparent extract? original_extract [degP] -> [ratio]. Use: to compare with the brews of that paper."""

class _real_extract_balling(_of_original_extract_and_apparent_extract):
    """What extract is left in the beer once its alcohol is taken away, from original and apparent extract? original_extract [degP], apparent_extract [degP] -> [degP]. Use: any beer."""
    balling: _real_extract_balling
    de_clerck: _real_extract_de_clerck
    pawlowski: _real_extract_pawlowski

class _real_extract_de_clerck(_of_original_extract_and_apparent_extract):
    """What extract is left in the beer once its alcohol is taken away, from original and apparent extract? original_extract [degP], apparent_extract [degP] -> [degP]. Use: to repeat older work; right for very weak worts only."""

class _real_extract_pawlowski(_of_original_extract_and_apparent_extract):
    """What extract is left in the beer once its alcohol is taken away, from original and apparent extract? original_extract [degP], apparent_extract [degP] -> [degP]. Use: a second opinion beside balling."""

class _real_extract_from_alcohol_dealcoholised(_of_apparent_extract_and_alcohol_by_mass):
    """What extract is left in the beer once its alcohol is taken away, from apparent extract and measured alcohol? apparent_extract [degP], alcohol_by_mass [% mass] -> [degP]. Use: quick work; beer.real_extract_from_density is more exact."""
    dealcoholised: _real_extract_from_alcohol_dealcoholised

class _apparent_extract_balling(_of_original_extract_and_real_extract):
    """What does a hydrometer show in a beer of this original and real extract? original_extract [degP], real_extract [degP] -> [degP]. Use: any beer."""
    balling: _apparent_extract_balling
    de_clerck: _apparent_extract_de_clerck

class _apparent_extract_de_clerck(_of_original_extract_and_real_extract):
    """What does a hydrometer show in a beer of this original and real extract? original_extract [degP], real_extract [degP] -> [degP]. Use: to repeat older work; right for very weak worts only."""

class _original_extract_balling(_of_alcohol_by_mass_and_real_extract):
    """What was the original extract of the wort, from alcohol and real extract of the beer (the great formula)? alcohol_by_mass [% mass], real_extract [degP] -> [degP]. Use: an analysed beer."""
    balling: _original_extract_balling

class _original_extract_from_extracts_balling(_of_apparent_extract_and_real_extract):
    """What was the original extract, from the hydrometer before and after boiling off the alcohol? apparent_extract [degP], real_extract [degP] -> [degP]. Use: a beer of unknown history and a hydrometer alone."""
    balling: _original_extract_from_extracts_balling

class _original_extract_from_apparent_balling(_of_alcohol_by_mass_and_apparent_extract):
    """What was the original extract, from apparent extract and measured alcohol? alcohol_by_mass [% mass], apparent_extract [degP] -> [degP]. Use: a density reading and an alcohol meter."""
    balling: _original_extract_from_apparent_balling

class _alcohol_by_mass_balling(_of_original_extract_and_apparent_extract):
    """How much alcohol is in the beer, from its original and apparent extract? original_extract [degP], apparent_extract [degP] -> [% mass]. Use: any beer."""
    balling: _alcohol_by_mass_balling
    de_clerck: _alcohol_by_mass_de_clerck
    pawlowski: _alcohol_by_mass_pawlowski
    cutaia: _alcohol_by_mass_cutaia

class _alcohol_by_mass_de_clerck(_of_original_extract_and_apparent_extract):
    """How much alcohol is in the beer, from its original and apparent extract? original_extract [degP], apparent_extract [degP] -> [% mass]. Use: to repeat older work."""

class _alcohol_by_mass_pawlowski(_of_original_extract_and_apparent_extract):
    """How much alcohol is in the beer, from its original and apparent extract? original_extract [degP], apparent_extract [degP] -> [% mass]. Use: a second opinion beside balling."""

class _alcohol_by_mass_cutaia(_of_original_extract_and_apparent_extract):
    """How much alcohol is in the beer, from its original and apparent extract? original_extract [degP], apparent_extract [degP] -> [% mass]. Use: to compare with the brews of that paper."""

class _alcohol_by_mass_from_real_extract_balling(_of_original_extract_and_real_extract):
    """How much alcohol is in the beer, from its original and real extract? original_extract [degP], real_extract [degP] -> [% mass]. Use: any beer."""
    balling: _alcohol_by_mass_from_real_extract_balling
    pawlowski: _alcohol_by_mass_from_real_extract_pawlowski
    cutaia: _alcohol_by_mass_from_real_extract_cutaia

class _alcohol_by_mass_from_real_extract_pawlowski(_of_original_extract_and_real_extract):
    """How much alcohol is in the beer, from its original and real extract? original_extract [degP], real_extract [degP] -> [% mass]. Use: a second opinion beside balling."""

class _alcohol_by_mass_from_real_extract_cutaia(_of_original_extract_and_real_extract):
    """How much alcohol is in the beer, from its original and real extract? original_extract [degP], real_extract [degP] -> [% mass]. Use: to compare with the brews of that paper."""

class _alcohol_by_volume_balling(_of_original_gravity_and_final_gravity):
    """How strong is the beer, from its original and final gravity? original_gravity [SG 20/20], final_gravity [SG 20/20] -> [% vol]. Use: any beer; the only chain of published parts."""
    balling: _alcohol_by_volume_balling
    linear_131: _alcohol_by_volume_linear_131
    hall: _alcohol_by_volume_hall
    hmrc: _alcohol_by_volume_hmrc
    cutaia: _alcohol_by_volume_cutaia
    de_clerck: _alcohol_by_volume_de_clerck

class _alcohol_by_volume_linear_131(_of_original_gravity_and_final_gravity):
    """How strong is the beer, from its original and final gravity? original_gravity [SG 20/20], final_gravity [SG 20/20] -> [% vol]. Use: in the head; as good as any formula below 16 degP."""

class _alcohol_by_volume_hall(_of_original_gravity_and_final_gravity):
    """How strong is the beer, from its original and final gravity? original_gravity [SG 20/20], final_gravity [SG 20/20] -> [% vol]. Use: not above 14 degP: its four gravity points for each degree make it run high."""

class _alcohol_by_volume_hmrc(_of_original_gravity_and_final_gravity):
    """How strong is the beer, from its original and final gravity? original_gravity [SG 20/20], final_gravity [SG 20/20] -> [% vol]. Use: the official British factors."""

class _alcohol_by_volume_cutaia(_of_original_gravity_and_final_gravity):
    """How strong is the beer, from its original and final gravity? original_gravity [SG 20/20], final_gravity [SG 20/20] -> [% vol]. Use: to compare with the brews of that paper, 9 to 18 degP."""

class _alcohol_by_volume_de_clerck(_of_original_gravity_and_final_gravity):
    """How strong is the beer, from its original and final gravity? original_gravity [SG 20/20], final_gravity [SG 20/20] -> [% vol]. Use: to repeat older work."""

class _apparent_attenuation_definition(_of_original_extract_and_apparent_extract):
    """What share of the extract seems to have fermented, judged by the hydrometer? original_extract [degP], apparent_extract [degP] -> [fraction]. Use: any beer; on the sample of a forced ferment it is the limit attenuation."""
    definition: _apparent_attenuation_definition

class _real_attenuation_balling(_of_original_extract_and_real_extract):
    """What share of the extract has really fermented? original_extract [degP], real_extract [degP] -> [fraction]. Use: the plain degree of fermentation."""
    balling: _real_attenuation_balling
    asbc: _real_attenuation_asbc

class _real_attenuation_asbc(_of_original_extract_and_real_extract):
    """What share of the extract has really fermented? original_extract [degP], real_extract [degP] -> [fraction]. Use: American analyses, and wherever the share of the extract that ferments is meant."""

class _real_attenuation_from_apparent_balling(_of_original_extract_and_apparent_attenuation):
    """What is the real attenuation of a beer whose apparent attenuation is known? original_extract [degP], apparent_attenuation [fraction] -> [fraction]. Use: gives the plain degree, that of real_attenuation.balling."""
    balling: _real_attenuation_from_apparent_balling
    cutaia: _real_attenuation_from_apparent_cutaia

class _real_attenuation_from_apparent_cutaia(_of_original_extract_and_apparent_attenuation):
    """What is the real attenuation of a beer whose apparent attenuation is known? original_extract [degP], apparent_attenuation [fraction] -> [fraction]. Use: gives the kind of degree that real_attenuation.asbc gives."""

class _final_gravity_plato(_of_original_gravity_and_apparent_attenuation):
    """Where will the gravity end if the wort ferments to this apparent attenuation? original_gravity [SG 20/20], apparent_attenuation [fraction] -> [SG 20/20]. Use: attenuations in extract, as laboratories and yeast makers mean them."""
    plato: _final_gravity_plato
    points: _final_gravity_points

class _final_gravity_points(_of_original_gravity_and_apparent_attenuation):
    """Where will the gravity end if the wort ferments to this apparent attenuation? original_gravity [SG 20/20], apparent_attenuation [fraction] -> [SG 20/20]. Use: in the head."""

class _co2_released_balling(_of_alcohol_by_mass):
    """How much carbon dioxide went off for each gram of beer? alcohol_by_mass [% mass] -> [g/g]. Use: the gas of a whole fermentation, per gram of beer; what stays dissolved is part of it."""
    balling: _co2_released_balling

class _yeast_formed_balling(_of_alcohol_by_mass):
    """How much dry yeast grew for each gram of beer? alcohol_by_mass [% mass] -> [g/g]. Use: the yeast of a whole fermentation, per gram of beer."""
    balling: _yeast_formed_balling

class _original_gravity_from_distillation_balling(_of_distillate_gravity_and_residue_gravity_and_acid_indication):
    """What was the original gravity, from the distillate and the spent beer, both made up to the volume of the sample at 60 degF? distillate_gravity [SG 60/60 degF], residue_gravity [SG 60/60 degF], acid_indication [degrees] -> [SG 60/60 degF]. Use: laboratories entitled to distil: the model does the arithmetic only."""
    balling: _original_gravity_from_distillation_balling

quotient: _quotient_balling
apparent_factor: _apparent_factor_balling
real_factor: _real_factor_balling
difference_factor: _difference_factor_balling
real_extract: _real_extract_balling
real_extract_from_alcohol: _real_extract_from_alcohol_dealcoholised
apparent_extract: _apparent_extract_balling
original_extract: _original_extract_balling
original_extract_from_extracts: _original_extract_from_extracts_balling
original_extract_from_apparent: _original_extract_from_apparent_balling
alcohol_by_mass: _alcohol_by_mass_balling
alcohol_by_mass_from_real_extract: _alcohol_by_mass_from_real_extract_balling
alcohol_by_volume: _alcohol_by_volume_balling
apparent_attenuation: _apparent_attenuation_definition
real_attenuation: _real_attenuation_balling
real_attenuation_from_apparent: _real_attenuation_from_apparent_balling
final_gravity: _final_gravity_plato
co2_released: _co2_released_balling
yeast_formed: _yeast_formed_balling
original_gravity_from_distillation: _original_gravity_from_distillation_balling
