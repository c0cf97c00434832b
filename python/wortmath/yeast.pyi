# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from typing import Any, overload

from . import Model, _A, _L, _N, _P, _S, _W

class _of_cells_and_cells_per_gram_and_viability(Model):
    @overload
    def __call__(self, cells: _S, cells_per_gram: _S = 5000000000.0, viability: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, cells: _N, cells_per_gram: _N = 5000000000.0, viability: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, cells: _L, cells_per_gram: _L = 5000000000.0, viability: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_and_dose(Model):
    @overload
    def __call__(self, volume: _S, dose: _S = 0.65, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, dose: _N = 0.65, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, dose: _L = 0.65, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_and_extract_and_pitch_rate(Model):
    @overload
    def __call__(self, volume: _S, extract: _S, pitch_rate: _S = 0.75, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, extract: _N, pitch_rate: _N = 0.75, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, extract: _L, pitch_rate: _L = 0.75, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_volume_and_gravity(Model):
    @overload
    def __call__(self, volume: _S, gravity: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, volume: _N, gravity: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, volume: _L, gravity: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_cells_and_cells_per_ml_and_viability(Model):
    @overload
    def __call__(self, cells: _S, cells_per_ml: _S, viability: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, cells: _N, cells_per_ml: _N, viability: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, cells: _L, cells_per_ml: _L, viability: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_cells_and_volume(Model):
    @overload
    def __call__(self, cells: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, cells: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, cells: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_cells_and_extract_mass(Model):
    @overload
    def __call__(self, cells: _S, extract_mass: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, cells: _N, extract_mass: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, cells: _L, extract_mass: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_days_and_initial_viability_and_retained(Model):
    @overload
    def __call__(self, days: _S, initial_viability: _S = 1.0, retained: _S = 0.8, reference_days: _S = 30.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, days: _N, initial_viability: _N = 1.0, retained: _N = 0.8, reference_days: _N = 30.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, days: _L, initial_viability: _L = 1.0, retained: _L = 0.8, reference_days: _L = 30.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _dry_mass_per_gram(_of_cells_and_cells_per_gram_and_viability):
    """How much dry yeast should be pitched? cells [cells], cells_per_gram [cells/g], viability [fraction] -> [g]. Use: whenever a number of cells is wanted."""
    per_gram: _dry_mass_per_gram
    dose_rate: _dry_mass_dose_rate

class _dry_mass_dose_rate(_of_volume_and_dose):
    """How much dry yeast should be pitched? volume [L], dose [g/L] -> [g]. Use: to follow the dose on a data sheet."""

class _pitch_rate_plato(_of_volume_and_extract_and_pitch_rate):
    """How many yeast cells should be pitched? volume [L], extract [degP], pitch_rate [million cells/(mL degP)] -> [cells]. Use: any gravity, and whenever a rate is prescribed."""
    rate_plato: _pitch_rate_plato
    two_step: _pitch_two_step

class _pitch_two_step(_of_volume_and_gravity):
    """How many yeast cells should be pitched? volume [L], gravity [SG 20/20] -> [cells]. Use: ale pitched and fermented above 18 degC (65 degF), up to a gravity of 1.076."""

class _slurry_volume_count(_of_cells_and_cells_per_ml_and_viability):
    """How much harvested yeast slurry holds the cells? cells [cells], cells_per_ml [cells/mL], viability [fraction] -> [L]."""
    count: _slurry_volume_count

class _starter_unstirred_table(_of_cells_and_volume):
    """How many cells are there after a starter? cells [cells], volume [L] -> [cells]. Use: a starter that stands."""
    unstirred_table: _starter_unstirred_table
    stirred_extract: _starter_stirred_extract

class _starter_stirred_extract(_of_cells_and_extract_mass):
    """How many cells are there after a starter? cells [cells], extract_mass [g] -> [cells]. Use: a stirred starter."""

class _viability_exponential(_of_days_and_initial_viability_and_retained):
    """What share of stored yeast is still alive? days [d], initial_viability [fraction], retained [fraction], reference_days [d] -> [fraction]."""
    exponential: _viability_exponential

dry_mass: _dry_mass_per_gram
pitch: _pitch_rate_plato
slurry_volume: _slurry_volume_count
starter: _starter_unstirred_table
viability: _viability_exponential
