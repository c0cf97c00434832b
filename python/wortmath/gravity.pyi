# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, Literal, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_gravity_and_water_temperature_and_air_density(Model):
    @overload
    def __call__(self, gravity: _S, water_temperature: _S = 20.0, air_density: _S = 1.2, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, water_temperature: _N = 20.0, air_density: _N = 1.2, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, water_temperature: _L = 20.0, air_density: _L = 1.2, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_density_and_water_temperature_and_air_density(Model):
    @overload
    def __call__(self, density: _S, water_temperature: _S = 20.0, air_density: _S = 1.2, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, density: _N, water_temperature: _N = 20.0, air_density: _N = 1.2, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, density: _L, water_temperature: _L = 20.0, air_density: _L = 1.2, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity_and_from_scale_and_to_scale(Model):
    @overload
    def __call__(self, gravity: _S, from_scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"], to_scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"], *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, from_scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"], to_scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"], *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, from_scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"], to_scale: Literal["gravity_20_20", "gravity_20_20_true", "gravity_20_4", "gravity_17_5_17_5", "gravity_15_15", "gravity_15_4", "gravity_60F_60F", "gravity_60F_60F_apparent"], *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_gravity(Model):
    @overload
    def __call__(self, gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_points(Model):
    @overload
    def __call__(self, points: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, points: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, points: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_oechsle(Model):
    @overload
    def __call__(self, oechsle: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, oechsle: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, oechsle: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_belgian(Model):
    @overload
    def __call__(self, belgian: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, belgian: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, belgian: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_twaddell(Model):
    @overload
    def __call__(self, twaddell: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, twaddell: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, twaddell: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_brewers_pounds(Model):
    @overload
    def __call__(self, brewers_pounds: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, brewers_pounds: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, brewers_pounds: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_baume(Model):
    @overload
    def __call__(self, baume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, baume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, baume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_kmw(Model):
    @overload
    def __call__(self, kmw: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, kmw: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, kmw: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_density(Model):
    @overload
    def __call__(self, density: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, density: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, density: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_density_and_air_density_and_weight_density(Model):
    @overload
    def __call__(self, density: _S, air_density: _S = 1.2, weight_density: _S = 8400.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, density: _N, air_density: _N = 1.2, weight_density: _N = 8400.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, density: _L, air_density: _L = 1.2, weight_density: _L = 8400.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _to_density_definition(_of_gravity_and_water_temperature_and_air_density):
    """What density does a specific gravity stand for? gravity [SG], water_temperature [degC], air_density [kg/m3] -> [kg/m3]. Use: any gravity scale: say the temperature of its water, and air 0 for a scale in vacuum."""
    definition: _to_density_definition

class _from_density_definition(_of_density_and_water_temperature_and_air_density):
    """Which specific gravity belongs to a density? density [kg/m3], water_temperature [degC], air_density [kg/m3] -> [SG]. Use: any gravity scale: give the density at the liquid temperature of the scale, the temperature of its water, and air 0 for a scale in vacuum."""
    definition: _from_density_definition

class _convert_icumsa(_of_gravity_and_from_scale_and_to_scale):
    """What does a gravity on one scale read on another? gravity [SG], from_scale [word], to_scale [word] -> [SG]. Use: the only bridge between gravity scales."""
    icumsa: _convert_icumsa

class _true_from_apparent_buoyancy(_of_gravity_and_water_temperature_and_air_density):
    """What would a gravity weighed in air be in vacuum? gravity [SG], water_temperature [degC], air_density [kg/m3] -> [SG]. Use: within one pair of temperatures; gravity.convert goes from scale to scale."""
    buoyancy: _true_from_apparent_buoyancy

class _apparent_from_true_buoyancy(_of_gravity_and_water_temperature_and_air_density):
    """What would a gravity in vacuum be, weighed in air? gravity [SG], water_temperature [degC], air_density [kg/m3] -> [SG]. Use: within one pair of temperatures; gravity.convert goes from scale to scale."""
    buoyancy: _apparent_from_true_buoyancy

class _to_points_definition(_of_gravity):
    """How many gravity points is a specific gravity? gravity [SG] -> [points]. Use: the scale of the gravity stays what it was."""
    definition: _to_points_definition

class _from_points_definition(_of_points):
    """Which specific gravity is a number of gravity points? points [points] -> [SG]. Use: the scale of the gravity stays what it was."""
    definition: _from_points_definition

class _to_oechsle_definition(_of_gravity):
    """How many degrees Oechsle is a specific gravity? gravity [SG 20/20] -> [degOe]. Use: must scales, and instruments of wine makers."""
    definition: _to_oechsle_definition

class _from_oechsle_definition(_of_oechsle):
    """Which specific gravity is a number of degrees Oechsle? oechsle [degOe] -> [SG 20/20]. Use: must scales, and instruments of wine makers."""
    definition: _from_oechsle_definition

class _to_belgian_definition(_of_gravity):
    """How many Belgian degrees is a specific gravity? gravity [SG] -> [belgian degrees]. Use: old Belgian recipes; the scale of the gravity stays what it was."""
    definition: _to_belgian_definition

class _from_belgian_definition(_of_belgian):
    """Which specific gravity is a number of Belgian degrees? belgian [belgian degrees] -> [SG]. Use: old Belgian recipes; the scale of the gravity stays what it was."""
    definition: _from_belgian_definition

class _to_twaddell_definition(_of_gravity):
    """How many degrees Twaddell is a specific gravity? gravity [SG 60/60 degF] -> [degTw]. Use: instruments of the chemical trade."""
    definition: _to_twaddell_definition

class _from_twaddell_definition(_of_twaddell):
    """Which specific gravity is a number of degrees Twaddell? twaddell [degTw] -> [SG 60/60 degF]. Use: instruments of the chemical trade."""
    definition: _from_twaddell_definition

class _to_brewers_pounds_definition(_of_gravity):
    """How many brewers' pounds per barrel is a specific gravity? gravity [SG 60/60 degF] -> [lb/bbl]. Use: old British recipes and brewing books."""
    definition: _to_brewers_pounds_definition

class _from_brewers_pounds_definition(_of_brewers_pounds):
    """Which specific gravity is a number of brewers' pounds per barrel? brewers_pounds [lb/bbl] -> [SG 60/60 degF]. Use: old British recipes and brewing books."""
    definition: _from_brewers_pounds_definition

class _to_baume_modulus_145(_of_gravity):
    """How many degrees Baume is a specific gravity? gravity [SG 20/20 true] -> [degBe]. Use: syrups and malt extract sold by degrees Baume."""
    modulus_145: _to_baume_modulus_145
    modulus_144_3: _to_baume_modulus_144_3
    gerlach: _to_baume_gerlach

class _to_baume_modulus_144_3(_of_gravity):
    """How many degrees Baume is a specific gravity? gravity [SG 15/4] -> [degBe]. Use: instruments and density meters that say 15/4 or modulus 144.3."""

class _to_baume_gerlach(_of_gravity):
    """How many degrees Baume is a specific gravity? gravity [SG 15/15] -> [degBe]. Use: old German tables."""

class _from_baume_modulus_145(_of_baume):
    """Which specific gravity is a number of degrees Baume? baume [degBe] -> [SG 20/20 true]. Use: syrups and malt extract sold by degrees Baume."""
    modulus_145: _from_baume_modulus_145
    modulus_144_3: _from_baume_modulus_144_3
    gerlach: _from_baume_gerlach

class _from_baume_modulus_144_3(_of_baume):
    """Which specific gravity is a number of degrees Baume? baume [degBe] -> [SG 15/4]. Use: instruments and density meters that say 15/4 or modulus 144.3."""

class _from_baume_gerlach(_of_baume):
    """Which specific gravity is a number of degrees Baume? baume [degBe] -> [SG 15/15]. Use: old German tables."""

class _oechsle_from_kmw_babo(_of_kmw):
    """How many degrees Oechsle is a reading of the Klosterneuburg must scale? kmw [degKMW] -> [degOe]. Use: must scales of the Klosterneuburg kind."""
    babo: _oechsle_from_kmw_babo

class _kmw_from_oechsle_babo(_of_oechsle):
    """What does the Klosterneuburg must scale read at a number of degrees Oechsle? oechsle [degOe] -> [degKMW]. Use: must scales of the Klosterneuburg kind."""
    babo: _kmw_from_oechsle_babo

class _pounds_per_us_gallon_mass(_of_density):
    """How many pounds does a US gallon of a liquid weigh? density [kg/m3] -> [lb/US gal]. Use: mass balances."""
    mass: _pounds_per_us_gallon_mass
    in_air: _pounds_per_us_gallon_in_air

class _pounds_per_us_gallon_in_air(_of_density_and_air_density_and_weight_density):
    """How many pounds does a US gallon of a liquid weigh? density [kg/m3], air_density [kg/m3], weight_density [kg/m3] -> [lb/US gal]. Use: to repeat tables of weights in air."""

to_density: _to_density_definition
from_density: _from_density_definition
convert: _convert_icumsa
true_from_apparent: _true_from_apparent_buoyancy
apparent_from_true: _apparent_from_true_buoyancy
to_points: _to_points_definition
from_points: _from_points_definition
to_oechsle: _to_oechsle_definition
from_oechsle: _from_oechsle_definition
to_belgian: _to_belgian_definition
from_belgian: _from_belgian_definition
to_twaddell: _to_twaddell_definition
from_twaddell: _from_twaddell_definition
to_brewers_pounds: _to_brewers_pounds_definition
from_brewers_pounds: _from_brewers_pounds_definition
to_baume: _to_baume_modulus_145
from_baume: _from_baume_modulus_145
oechsle_from_kmw: _oechsle_from_kmw_babo
kmw_from_oechsle: _kmw_from_oechsle_babo
pounds_per_us_gallon: _pounds_per_us_gallon_mass
