# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
from collections.abc import Mapping, Sequence
from typing import Any, Literal, Protocol, TypeAlias

import numpy as np
from numpy.typing import NDArray

from . import _core as _core
from . import atmosphere as atmosphere
from . import attenuation as attenuation
from . import balance as balance
from . import batch as batch
from . import beer as beer
from . import bitterness as bitterness
from . import carbonation as carbonation
from . import cleaning as cleaning
from . import colour as colour
from . import dispense as dispense
from . import ethanol as ethanol
from . import extract as extract
from . import fermentation as fermentation
from . import gravity as gravity
from . import hop as hop
from . import hydrometer as hydrometer
from . import kettle as kettle
from . import labelling as labelling
from . import liquor as liquor
from . import mash as mash
from . import package as package
from . import priming as priming
from . import reconcile as reconcile
from . import refractometer as refractometer
from . import room as room
from . import steep as steep
from . import thermal as thermal
from . import uncertainty as uncertainty
from . import water as water
from . import yeast as yeast
from ._errors import RangeError as RangeError
from ._errors import RangeWarning as RangeWarning

__version__: str
__all__: list[str]
topics: list[str]
def get_include() -> str: ...

class _Labelled(Protocol):
    """pandas, xarray, masked arrays, float32: whatever NumPy's functions hand back as it came."""
    def __array_ufunc__(self, ufunc: Any, method: Any, *inputs: Any, **kwargs: Any) -> Any: ...

class _Quantity(Protocol):
    """A number with a unit, as pint has it."""
    @property
    def magnitude(self) -> Any: ...
    @property
    def units(self) -> Any: ...
    @property
    def dimensionality(self) -> Any: ...

_S: TypeAlias = float | np.floating[Any] | np.integer[Any]
_A: TypeAlias = NDArray[np.float64]
_List: TypeAlias = Sequence[float] | Sequence[Sequence[float]] | NDArray[np.float64] | NDArray[np.integer[Any]]
_N: TypeAlias = _S | _List
_L: TypeAlias = _S | _List | _Labelled | _Quantity
_P: TypeAlias = Literal["raise", "nan", "extrapolate"] | None
_W: TypeAlias = NDArray[np.bool_] | bool

class Input:
    name: str
    kind: Literal["number", "optional", "list", "word", "truth"]
    unit: str
    noun: str
    validated: tuple[float, float]
    possible: tuple[float, float]
    words: list[str]
    required: bool
    default: Any

class Output:
    name: str | None
    unit: str
    noun: str
    kind: Literal["number", "whole", "truth", "word", "words"]
    words: list[str]

class Model:
    """One published answer to one question. Call it with numbers, lists, arrays or quantities."""
    def __call__(self, *args: Any, **kwargs: Any) -> Any: ...
    @property
    def path(self) -> str: ...
    @property
    def name(self) -> str: ...
    @property
    def family(self) -> str: ...
    @property
    def topic(self) -> str: ...
    @property
    def question(self) -> str: ...
    @property
    def use(self) -> str: ...
    @property
    def source(self) -> str: ...
    @property
    def status(self) -> Literal["primary", "secondary", "memory", "derived"]: ...
    @property
    def accuracy(self) -> str: ...
    @property
    def note(self) -> str: ...
    @property
    def danger(self) -> str: ...
    @property
    def holds_when(self) -> str | None: ...
    @property
    def inputs(self) -> tuple[Input, ...]: ...
    @property
    def outputs(self) -> tuple[Output, ...]: ...
    @property
    def output(self) -> Any: ...
    @property
    def valid(self) -> Mapping[str, tuple[float, float]]: ...
    @property
    def models(self) -> dict[str, Model]: ...
    @property
    def result_type(self) -> Any: ...
    @property
    def ufunc(self) -> np.ufunc: ...
    @property
    def formula(self) -> str: ...
    def compare(self, *args: Any, **kwargs: Any) -> Any: ...
    def export(self, language: str, **words: Any) -> str: ...
    def gradient(self, *args: Any, **kwargs: Any) -> Any: ...
    def latex(self, **words: Any) -> str: ...
    def _repr_html_(self) -> str: ...
    def _repr_latex_(self) -> str: ...

class Family:
    """A family whose models answer different questions: one of them has to be named."""
    path: str
    question: str
    @property
    def models(self) -> dict[str, Model]: ...
    def compare(self, *args: Any, **kwargs: Any) -> Any:
        """All models of the family at the same inputs."""
