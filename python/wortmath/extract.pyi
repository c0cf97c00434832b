# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, Literal, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_mass_fraction_and_temperature(Model):
    @overload
    def __call__(self, mass_fraction: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass_fraction: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass_fraction: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_fraction(Model):
    @overload
    def __call__(self, mass_fraction: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass_fraction: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass_fraction: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_density_and_temperature(Model):
    @overload
    def __call__(self, density: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, density: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, density: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_density(Model):
    @overload
    def __call__(self, density: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, density: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, density: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity(Model):
    @overload
    def __call__(self, gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity_and_liquid_temperature_and_water_temperature(Model):
    @overload
    def __call__(self, gravity: _S, liquid_temperature: _S = 20.0, water_temperature: _S = 20.0, air_density: _S = 1.2, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, liquid_temperature: _N = 20.0, water_temperature: _N = 20.0, air_density: _N = 1.2, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, liquid_temperature: _L = 20.0, water_temperature: _L = 20.0, air_density: _L = 1.2, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract(Model):
    @overload
    def __call__(self, extract: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_liquid_temperature_and_water_temperature(Model):
    @overload
    def __call__(self, extract: _S, liquid_temperature: _S = 20.0, water_temperature: _S = 20.0, air_density: _S = 1.2, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, liquid_temperature: _N = 20.0, water_temperature: _N = 20.0, air_density: _N = 1.2, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, liquid_temperature: _L = 20.0, water_temperature: _L = 20.0, air_density: _L = 1.2, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_fraction_and_from_temperature_and_to_temperature(Model):
    @overload
    def __call__(self, mass_fraction: _S, from_temperature: _S, to_temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass_fraction: _N, from_temperature: _N, to_temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass_fraction: _L, from_temperature: _L, to_temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_nothing(Model):
    def __call__(self, *, policy: _P = None) -> float: ...

class _of_linear_expansion_and_mark_temperature_and_temperature(Model):
    @overload
    def __call__(self, linear_expansion: _S, mark_temperature: _S, temperature: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, linear_expansion: _N, mark_temperature: _N, temperature: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, linear_expansion: _L, mark_temperature: _L, temperature: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_scale(Model):
    @overload
    def __call__(self, extract: _S, scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"] = "gravity_20_20", *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"] = "gravity_20_20", *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"] = "gravity_20_20", *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_yield(Model):
    @overload
    def __call__(self, extract_yield: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract_yield: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract_yield: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_ppg(Model):
    @overload
    def __call__(self, ppg: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, ppg: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, ppg: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_potential(Model):
    @overload
    def __call__(self, potential: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, potential: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, potential: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_imperial_ppg(Model):
    @overload
    def __call__(self, imperial_ppg: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, imperial_ppg: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, imperial_ppg: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_pounds_per_quarter(Model):
    @overload
    def __call__(self, pounds_per_quarter: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, pounds_per_quarter: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, pounds_per_quarter: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mass_and_potential_and_volume(Model):
    @overload
    def __call__(self, mass: _S, potential: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mass: _N, potential: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mass: _L, potential: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_moisture(Model):
    @overload
    def __call__(self, extract: _S, moisture: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, moisture: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, moisture: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_yield_and_moisture(Model):
    @overload
    def __call__(self, extract_yield: _S, moisture: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract_yield: _N, moisture: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract_yield: _L, moisture: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_dry_basis_yield_and_moisture(Model):
    @overload
    def __call__(self, dry_basis_yield: _S, moisture: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, dry_basis_yield: _N, moisture: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, dry_basis_yield: _L, moisture: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_volume_and_temperature(Model):
    @overload
    def __call__(self, extract: _S, volume: _S, temperature: _S, grist_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, volume: _N, temperature: _N, grist_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, volume: _L, temperature: _L, grist_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_gravity_and_hot_volume(Model):
    @overload
    def __call__(self, extract: _S, gravity: _S, hot_volume: _S, grist_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, gravity: _N, hot_volume: _N, grist_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, gravity: _L, hot_volume: _L, grist_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_volume_and_temperature_variant_2(Model):
    @overload
    def __call__(self, extract: _S, volume: _S, temperature: _S, grist_mass: _S, extract_yield: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, volume: _N, temperature: _N, grist_mass: _N, extract_yield: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, volume: _L, temperature: _L, grist_mass: _L, extract_yield: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity_and_volume_and_grist_mass(Model):
    @overload
    def __call__(self, gravity: _S, volume: _S, grist_mass: _S, potential: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, volume: _N, grist_mass: _N, potential: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, volume: _L, grist_mass: _L, potential: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_yield_and_moisture_and_liquor_to_grist(Model):
    @overload
    def __call__(self, extract_yield: _S, moisture: _S, liquor_to_grist: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract_yield: _N, moisture: _N, liquor_to_grist: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract_yield: _L, moisture: _L, liquor_to_grist: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_extract_and_extract_yield_and_moisture(Model):
    @overload
    def __call__(self, extract: _S, extract_yield: _S, moisture: _S, liquor_to_grist: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, extract: _N, extract_yield: _N, moisture: _N, liquor_to_grist: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, extract: _L, extract_yield: _L, moisture: _L, liquor_to_grist: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _density_icumsa(_of_mass_fraction_and_temperature):
    """What is the density of wort, taken as a sucrose solution, of a strength at a temperature? mass_fraction [fraction], temperature [degC] -> [kg/m3]. Use: wort at any temperature, and every mass balance."""
    icumsa: _density_icumsa
    asbc_20: _density_asbc_20

class _density_asbc_20(_of_mass_fraction):
    """What is the density of wort, taken as a sucrose solution, of a strength at a temperature? mass_fraction [fraction] -> [kg/m3]. Use: at 20 degC only, for degrees Plato that came from extract.from_gravity.asbc."""

class _from_density_icumsa(_of_density_and_temperature):
    """How strong is wort of a density at a temperature? density [kg/m3], temperature [degC] -> [fraction]. Use: a density meter's result, or mass over volume, at any temperature."""
    icumsa: _from_density_icumsa
    asbc_20: _from_density_asbc_20

class _from_density_asbc_20(_of_density):
    """How strong is wort of a density at a temperature? density [kg/m3] -> [fraction]. Use: at 20 degC only, where the trade's degrees Plato are wanted."""

class _from_gravity_asbc(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: the trade's degrees Plato up to 20 degP, 25 at most."""
    asbc: _from_gravity_asbc
    nbs: _from_gravity_nbs
    nbs_three_term: _from_gravity_nbs_three_term
    nbs_two_term: _from_gravity_nbs_two_term
    lincoln: _from_gravity_lincoln
    de_clerck: _from_gravity_de_clerck
    rosendal_schmidt: _from_gravity_rosendal_schmidt
    manning: _from_gravity_manning
    plato_17_5: _from_gravity_plato_17_5
    buhl: _from_gravity_buhl
    buhl_cubic: _from_gravity_buhl_cubic
    constant_260: _from_gravity_constant_260
    constant_259: _from_gravity_constant_259
    quarter: _from_gravity_quarter
    hackbarth: _from_gravity_hackbarth
    icumsa: _from_gravity_icumsa

class _from_gravity_nbs(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: above 20 degP."""

class _from_gravity_nbs_three_term(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: where an inverse without iteration is wanted, to 34 degP."""

class _from_gravity_nbs_two_term(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: to repeat work that used it."""

class _from_gravity_lincoln(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: by hand, to 20 degP."""

class _from_gravity_de_clerck(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: to repeat work that used it, to 20 degP."""

class _from_gravity_rosendal_schmidt(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: to repeat work that used it, to 20 degP."""

class _from_gravity_manning(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 60/60 degF] -> [degP]. Use: gravity read on the 60/60 degF scale."""

class _from_gravity_plato_17_5(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 17.5/17.5] -> [degP]. Use: gravity read on the true 17.5/17.5 scale."""

class _from_gravity_buhl(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: by hand, to 20 degP."""

class _from_gravity_buhl_cubic(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: to repeat work that used it."""

class _from_gravity_constant_260(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: to check what an instrument shows."""

class _from_gravity_constant_259(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: to repeat work that used it."""

class _from_gravity_quarter(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20] -> [degP]. Use: in the head, to 12 degP."""

class _from_gravity_hackbarth(_of_gravity):
    """How many degrees Plato belong to a specific gravity? gravity [SG 20/20 true] -> [degP]. Use: true gravity 20/20, to 60 degP."""

class _from_gravity_icumsa(_of_gravity_and_liquid_temperature_and_water_temperature):
    """How many degrees Plato belong to a specific gravity? gravity [SG], liquid_temperature [degC], water_temperature [degC], air_density [kg/m3] -> [degP]. Use: any scale or temperature but the trade's, and inside mass balances."""

class _to_gravity_asbc(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: the trade's degrees Plato up to 20 degP, 25 at most."""
    asbc: _to_gravity_asbc
    nbs: _to_gravity_nbs
    nbs_three_term: _to_gravity_nbs_three_term
    nbs_two_term: _to_gravity_nbs_two_term
    lincoln: _to_gravity_lincoln
    de_clerck: _to_gravity_de_clerck
    rosendal_schmidt: _to_gravity_rosendal_schmidt
    manning: _to_gravity_manning
    plato_17_5: _to_gravity_plato_17_5
    buhl: _to_gravity_buhl
    buhl_cubic: _to_gravity_buhl_cubic
    constant_260: _to_gravity_constant_260
    constant_259: _to_gravity_constant_259
    quarter: _to_gravity_quarter
    rational: _to_gravity_rational
    cubic: _to_gravity_cubic
    hackbarth: _to_gravity_hackbarth
    icumsa: _to_gravity_icumsa

class _to_gravity_nbs(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: above 20 degP."""

class _to_gravity_nbs_three_term(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: where an inverse without iteration is wanted, to 34 degP."""

class _to_gravity_nbs_two_term(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: to repeat work that used it."""

class _to_gravity_lincoln(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: by hand, to 20 degP."""

class _to_gravity_de_clerck(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: to repeat work that used it, to 20 degP."""

class _to_gravity_rosendal_schmidt(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: to repeat work that used it, to 20 degP."""

class _to_gravity_manning(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 60/60 degF]. Use: for a hydrometer marked at 60 degF."""

class _to_gravity_plato_17_5(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 17.5/17.5]. Use: for an old saccharometer of 17.5 degC."""

class _to_gravity_buhl(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: by hand, to 20 degP."""

class _to_gravity_buhl_cubic(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: to repeat work that used it."""

class _to_gravity_constant_260(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: to check what an instrument shows."""

class _to_gravity_constant_259(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: to repeat work that used it."""

class _to_gravity_quarter(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: in the head, to 12 degP."""

class _to_gravity_rational(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: by hand, to 20 degP."""

class _to_gravity_cubic(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20]. Use: to repeat work that used it, to 20 degP."""

class _to_gravity_hackbarth(_of_extract):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP] -> [SG 20/20 true]. Use: true gravity 20/20, to 60 degP."""

class _to_gravity_icumsa(_of_extract_and_liquid_temperature_and_water_temperature):
    """Which specific gravity belongs to an extract in degrees Plato? extract [degP], liquid_temperature [degC], water_temperature [degC], air_density [kg/m3] -> [SG]. Use: any scale or temperature but the trade's, and inside mass balances."""

class _concentration_icumsa(_of_mass_fraction_and_temperature):
    """How many grams of extract does a litre of wort hold? mass_fraction [fraction], temperature [degC] -> [g/L]. Use: any strength and temperature."""
    icumsa: _concentration_icumsa
    lincoln: _concentration_lincoln

class _concentration_lincoln(_of_extract):
    """How many grams of extract does a litre of wort hold? extract [degP] -> [g/L]. Use: to repeat American brewhouse figures at 20 degC."""

class _specific_volume_icumsa(_of_mass_fraction_and_temperature):
    """How much room does a kilogram of dissolved extract take in wort? mass_fraction [fraction], temperature [degC] -> [L/kg]. Use: how far an addition of sugar or malt extract raises the level."""
    icumsa: _specific_volume_icumsa

class _volume_ratio_density_ratio(_of_mass_fraction_and_from_temperature_and_to_temperature):
    """How does the volume of the same wort change with its temperature? mass_fraction [fraction], from_temperature [degC], to_temperature [degC] -> [ratio]. Use: any pair of temperatures."""
    density_ratio: _volume_ratio_density_ratio
    kunze: _volume_ratio_kunze
    pfisterer_stanners: _volume_ratio_pfisterer_stanners

class _volume_ratio_kunze(_of_nothing):
    """How does the volume of the same wort change with its temperature? -> [ratio]. Use: boiling kettle to cold wort, to repeat a brewhouse sheet."""

class _volume_ratio_pfisterer_stanners(_of_nothing):
    """How does the volume of the same wort change with its temperature? -> [ratio]. Use: boiling kettle to cold wort, to repeat work that used it."""

class _vessel_expansion_linear(_of_linear_expansion_and_mark_temperature_and_temperature):
    """How much more does a vessel hold at a mark when it is hot? linear_expansion [1/K], mark_temperature [degC], temperature [degC] -> [ratio]. Use: to correct a level read on a hot vessel."""
    linear: _vessel_expansion_linear

class _sucrose_potential_icumsa(_of_extract_and_scale):
    """How many litre-degrees does a kilogram of sucrose give, in wort of a strength? extract [degP], scale [word] -> [L degrees/kg]. Use: the potential of sugar where the constant of extract.potential_from_yield is not close enough."""
    icumsa: _sucrose_potential_icumsa

class _potential_from_yield_sucrose_10_plato(_of_extract_yield):
    """What potential does an ingredient have that yields a share of its weight as extract? extract_yield [fraction] -> [L degrees/kg]. Use: any ingredient, for worts near 10 degP."""
    sucrose_10_plato: _potential_from_yield_sucrose_10_plato
    noonan: _potential_from_yield_noonan
    palmer: _potential_from_yield_palmer
    dilute_limit: _potential_from_yield_dilute_limit

class _potential_from_yield_noonan(_of_extract_yield):
    """What potential does an ingredient have that yields a share of its weight as extract? extract_yield [fraction] -> [L degrees/kg]. Use: to repeat recipes that used it."""

class _potential_from_yield_palmer(_of_extract_yield):
    """What potential does an ingredient have that yields a share of its weight as extract? extract_yield [fraction] -> [L degrees/kg]. Use: American malt lists in whole points."""

class _potential_from_yield_dilute_limit(_of_extract_yield):
    """What potential does an ingredient have that yields a share of its weight as extract? extract_yield [fraction] -> [L degrees/kg]. Use: very thin worts."""

class _potential_from_ppg_definition(_of_ppg):
    """How many litre-degrees per kg is a potential in points per pound and US gallon? ppg [ppg] -> [L degrees/kg]. Use: potentials of American malt lists."""
    definition: _potential_from_ppg_definition

class _ppg_from_potential_definition(_of_potential):
    """How many points per pound and US gallon is a potential in litre-degrees per kg? potential [L degrees/kg] -> [ppg]. Use: potentials for American recipes."""
    definition: _ppg_from_potential_definition

class _potential_from_imperial_definition(_of_imperial_ppg):
    """How many litre-degrees per kg is a potential in points per pound and imperial gallon? imperial_ppg [pt imp gal/lb] -> [L degrees/kg]. Use: potentials of older British malt lists."""
    definition: _potential_from_imperial_definition

class _potential_from_quarter_definition(_of_pounds_per_quarter):
    """How many litre-degrees per kg is a yield in brewers' pounds per quarter? pounds_per_quarter [lb/qr] -> [L degrees/kg]. Use: yields in old British brewing books."""
    definition: _potential_from_quarter_definition

class _gravity_from_points_linear(_of_mass_and_potential_and_volume):
    """What gravity does an ingredient give in a volume of wort? mass [g], potential [L degrees/kg], volume [L] -> [SG]. Use: rough recipes; a mass balance is better (balance.top_up)."""
    linear: _gravity_from_points_linear

class _iob_from_ebc_linear(_of_extract_yield):
    """What potential by the hot-water mash of the Institute of Brewing belongs to an extract yield by the congress mash? extract_yield [fraction] -> [L degrees/kg]. Use: to read a British malt analysis beside a European one."""
    linear: _iob_from_ebc_linear

class _congress_mass_balance(_of_extract_and_moisture):
    """What extract yield does a congress mash show? extract [degP], moisture [fraction] -> [fraction]. Use: the extract of a laboratory wort; the yield is as-is, moisture included."""
    mass_balance: _congress_mass_balance

class _dry_basis_exact(_of_extract_yield_and_moisture):
    """What is an as-is extract yield on dry basis? extract_yield [fraction], moisture [fraction] -> [fraction]. Use: to compare malts of different moisture."""
    exact: _dry_basis_exact

class _as_is_exact(_of_dry_basis_yield_and_moisture):
    """What is a dry-basis extract yield of malt as it is weighed? dry_basis_yield [fraction], moisture [fraction] -> [fraction]. Use: always."""
    exact: _as_is_exact
    noonan_book: _as_is_noonan_book
    noonan_article: _as_is_noonan_article

class _as_is_noonan_book(_of_dry_basis_yield_and_moisture):
    """What is a dry-basis extract yield of malt as it is weighed? dry_basis_yield [fraction], moisture [fraction] -> [fraction]. Use: to repeat old recipes only."""

class _as_is_noonan_article(_of_dry_basis_yield_and_moisture):
    """What is a dry-basis extract yield of malt as it is weighed? dry_basis_yield [fraction], moisture [fraction] -> [fraction]. Use: to repeat old recipes only."""

class _brewhouse_yield_mass(_of_extract_and_volume_and_temperature):
    """What share of the grist's weight is extract in the wort? extract [degP], volume [L], temperature [degC], grist_mass [g] -> [fraction]. Use: any volume whose temperature is known."""
    mass: _brewhouse_yield_mass
    kunze: _brewhouse_yield_kunze

class _brewhouse_yield_kunze(_of_extract_and_gravity_and_hot_volume):
    """What share of the grist's weight is extract in the wort? extract [degP], gravity [SG 20/20], hot_volume [L], grist_mass [g] -> [fraction]. Use: to repeat a brewhouse sheet: boiling volume, cold sample."""

class _brewhouse_efficiency_mass(_of_extract_and_volume_and_temperature_variant_2):
    """What share of the grist's own extract is in the wort? extract [degP], volume [L], temperature [degC], grist_mass [g], extract_yield [fraction] -> [fraction]. Use: any volume whose temperature is known."""
    mass: _brewhouse_efficiency_mass
    points: _brewhouse_efficiency_points

class _brewhouse_efficiency_points(_of_gravity_and_volume_and_grist_mass):
    """What share of the grist's own extract is in the wort? gravity [SG], volume [L], grist_mass [g], potential [L degrees/kg] -> [fraction]. Use: the trade's efficiency, comparable with recipes on paper."""

class _first_wort_mass_balance(_of_extract_yield_and_moisture_and_liquor_to_grist):
    """How strong is the first wort of a mash? extract_yield [fraction], moisture [fraction], liquor_to_grist [ratio] -> [degP]. Use: the most that full conversion can give, before sparging."""
    mass_balance: _first_wort_mass_balance

class _conversion_efficiency_mass_balance(_of_extract_and_extract_yield_and_moisture):
    """What share of the malt's extract has the mash dissolved? extract [degP], extract_yield [fraction], moisture [fraction], liquor_to_grist [ratio] -> [fraction]. Use: a well stirred mash; how far conversion has come."""
    mass_balance: _conversion_efficiency_mass_balance

density: _density_icumsa
from_density: _from_density_icumsa
from_gravity: _from_gravity_asbc
to_gravity: _to_gravity_asbc
concentration: _concentration_icumsa
specific_volume: _specific_volume_icumsa
volume_ratio: _volume_ratio_density_ratio
vessel_expansion: _vessel_expansion_linear
sucrose_potential: _sucrose_potential_icumsa
potential_from_yield: _potential_from_yield_sucrose_10_plato
potential_from_ppg: _potential_from_ppg_definition
ppg_from_potential: _ppg_from_potential_definition
potential_from_imperial: _potential_from_imperial_definition
potential_from_quarter: _potential_from_quarter_definition
gravity_from_points: _gravity_from_points_linear
iob_from_ebc: _iob_from_ebc_linear
congress: _congress_mass_balance
dry_basis: _dry_basis_exact
as_is: _as_is_exact
brewhouse_yield: _brewhouse_yield_mass
brewhouse_efficiency: _brewhouse_efficiency_mass
first_wort: _first_wort_mass_balance
conversion_efficiency: _conversion_efficiency_mass_balance
