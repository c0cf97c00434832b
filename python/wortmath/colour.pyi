# Made by python/tools/make_stubs.py from the catalogue; not to be edited.
# mypy: disable-error-code="overload-overlap"
from collections.abc import Sequence
from typing import Any, Literal, NamedTuple, overload

import numpy as np
from numpy.typing import NDArray

from . import Model, _A, _L, _Labelled, _List, _N, _P, _Quantity, _S, _W

class _result_1(NamedTuple):
    ratio: float
    passes: bool

class _result_2(NamedTuple):
    ratio: _A
    passes: NDArray[np.bool_]

class _result_3(NamedTuple):
    xbar: float
    ybar: float
    zbar: float

class _result_4(NamedTuple):
    xbar: _A
    ybar: _A
    zbar: _A

class _result_5(NamedTuple):
    x: float
    y: float
    z: float

class _result_6(NamedTuple):
    x: _A
    y: _A
    z: _A

class _result_7(NamedTuple):
    l: float
    a: float
    b: float

class _result_8(NamedTuple):
    l: _A
    a: _A
    b: _A

class _result_9(NamedTuple):
    chroma: float
    hue: float

class _result_10(NamedTuple):
    chroma: _A
    hue: _A

class _result_11(NamedTuple):
    red: float
    green: float
    blue: float

class _result_12(NamedTuple):
    red: _A
    green: _A
    blue: _A

class _result_13(NamedTuple):
    red: int
    green: int
    blue: int
    outside_gamut: bool
    @property
    def hex(self) -> str: ...

class _result_14(NamedTuple):
    red: NDArray[np.int64]
    green: NDArray[np.int64]
    blue: NDArray[np.int64]
    outside_gamut: NDArray[np.bool_]
    @property
    def hex(self) -> str: ...

class _of_absorbance_430_and_path_length_and_dilution(Model):
    @overload
    def __call__(self, absorbance_430: _S, path_length: _S = 1.0, dilution: _S = 1.0, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, absorbance_430: _N, path_length: _N = 1.0, dilution: _N = 1.0, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, absorbance_430: _L, path_length: _L = 1.0, dilution: _L = 1.0, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_srm(Model):
    @overload
    def __call__(self, srm: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, srm: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, srm: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_ebc(Model):
    @overload
    def __call__(self, ebc: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, ebc: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, ebc: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_absorbance_430_and_absorbance_700(Model):
    @overload
    def __call__(self, absorbance_430: _S, absorbance_700: _S, *, policy: _P = None) -> _result_1: ...
    @overload
    def __call__(self, absorbance_430: _N, absorbance_700: _N, *, policy: _P = None) -> _result_2: ...
    @overload
    def __call__(self, absorbance_430: _L, absorbance_700: _L, *, policy: _P = None) -> Any: ...

class _of_lovibond(Model):
    @overload
    def __call__(self, lovibond: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, lovibond: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, lovibond: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_visual_ebc(Model):
    @overload
    def __call__(self, visual_ebc: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, visual_ebc: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, visual_ebc: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_iob_colour(Model):
    @overload
    def __call__(self, iob_colour: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, iob_colour: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, iob_colour: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_lovibonds_and_masses_and_volume(Model):
    @overload
    def __call__(self, lovibonds: Sequence[float], masses: Sequence[float], volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, lovibonds: Sequence[Sequence[float]], masses: Sequence[Sequence[float]], volume: _S, *, policy: _P = None) -> _A: ...
    @overload
    def __call__(self, lovibonds: _List | _Labelled | _Quantity, masses: _List | _Labelled | _Quantity, volume: _L, *, policy: _P = None) -> Any: ...

class _of_colour_load(Model):
    @overload
    def __call__(self, colour_load: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, colour_load: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, colour_load: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mcu(Model):
    @overload
    def __call__(self, mcu: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mcu: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mcu: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_mcu_and_lovibond_and_volume(Model):
    @overload
    def __call__(self, mcu: _S, lovibond: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, mcu: _N, lovibond: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, mcu: _L, lovibond: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_colour_load_and_lovibond_and_volume(Model):
    @overload
    def __call__(self, colour_load: _S, lovibond: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, colour_load: _N, lovibond: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, colour_load: _L, lovibond: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_label_colour_and_label_concentration_and_mass(Model):
    @overload
    def __call__(self, label_colour: _S, label_concentration: _S, mass: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, label_colour: _N, label_concentration: _N, mass: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, label_colour: _L, label_concentration: _L, mass: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_colours_and_volumes(Model):
    @overload
    def __call__(self, colours: Sequence[float], volumes: Sequence[float], *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, colours: Sequence[Sequence[float]], volumes: Sequence[Sequence[float]], *, policy: _P = None) -> _A: ...
    @overload
    def __call__(self, colours: _List | _Labelled | _Quantity, volumes: _List | _Labelled | _Quantity, *, policy: _P = None) -> Any: ...

class _of_colour_and_volume_before_and_volume_after(Model):
    @overload
    def __call__(self, colour: _S, volume_before: _S, volume_after: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, colour: _N, volume_before: _N, volume_after: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, colour: _L, volume_before: _L, volume_after: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_colour_and_target_colour_and_volume(Model):
    @overload
    def __call__(self, colour: _S, target_colour: _S, volume: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, colour: _N, target_colour: _N, volume: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, colour: _L, target_colour: _L, volume: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_wavelength(Model):
    @overload
    def __call__(self, wavelength: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, wavelength: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, wavelength: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_wavelength_and_linner_index(Model):
    @overload
    def __call__(self, wavelength: _S, linner_index: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, wavelength: _N, linner_index: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, wavelength: _L, linner_index: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_wavelength_and_roast_share(Model):
    @overload
    def __call__(self, wavelength: _S, roast_share: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, wavelength: _N, roast_share: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, wavelength: _L, roast_share: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_srm_and_path_length_and_relative_absorbance(Model):
    @overload
    def __call__(self, srm: _S, path_length: _S, relative_absorbance: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, srm: _N, path_length: _N, relative_absorbance: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, srm: _L, path_length: _L, relative_absorbance: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_absorbance_510_and_absorbance_610(Model):
    @overload
    def __call__(self, absorbance_510: _S, absorbance_610: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, absorbance_510: _N, absorbance_610: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, absorbance_510: _L, absorbance_610: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_wavelength_variant_2(Model):
    @overload
    def __call__(self, wavelength: _S, *, policy: _P = None) -> _result_3: ...
    @overload
    def __call__(self, wavelength: _N, *, policy: _P = None) -> _result_4: ...
    @overload
    def __call__(self, wavelength: _L, *, policy: _P = None) -> Any: ...

class _of_illuminant_and_observer(Model):
    def __call__(self, illuminant: Literal["d65", "c"] = "d65", observer: Literal["cie_1931", "cie_1964"] = "cie_1931", *, policy: _P = None) -> _result_5: ...

class _of_srm_and_path_length_and_illuminant(Model):
    @overload
    def __call__(self, srm: _S, path_length: _S = 1.0, illuminant: Literal["d65", "c"] = "d65", observer: Literal["cie_1931", "cie_1964"] = "cie_1931", spectrum: Literal["de_lange_average", "log_linear", "two_group"] = "de_lange_average", *, policy: _P = None) -> _result_5: ...
    @overload
    def __call__(self, srm: _N, path_length: _N = 1.0, illuminant: Literal["d65", "c"] = "d65", observer: Literal["cie_1931", "cie_1964"] = "cie_1931", spectrum: Literal["de_lange_average", "log_linear", "two_group"] = "de_lange_average", *, policy: _P = None) -> _result_6: ...
    @overload
    def __call__(self, srm: _L, path_length: _L = 1.0, illuminant: Literal["d65", "c"] = "d65", observer: Literal["cie_1931", "cie_1964"] = "cie_1931", spectrum: Literal["de_lange_average", "log_linear", "two_group"] = "de_lange_average", *, policy: _P = None) -> Any: ...

class _of_srm_and_path_length_and_illuminant_variant_2(Model):
    @overload
    def __call__(self, srm: _S, path_length: _S = 1.0, illuminant: Literal["d65", "c"] = "d65", *, policy: _P = None) -> _result_5: ...
    @overload
    def __call__(self, srm: _N, path_length: _N = 1.0, illuminant: Literal["d65", "c"] = "d65", *, policy: _P = None) -> _result_6: ...
    @overload
    def __call__(self, srm: _L, path_length: _L = 1.0, illuminant: Literal["d65", "c"] = "d65", *, policy: _P = None) -> Any: ...

class _of_transmittances_and_illuminant_and_observer(Model):
    @overload
    def __call__(self, transmittances: Sequence[float], illuminant: Literal["d65", "c"] = "d65", observer: Literal["cie_1931", "cie_1964"] = "cie_1931", *, policy: _P = None) -> _result_5: ...
    @overload
    def __call__(self, transmittances: Sequence[Sequence[float]], illuminant: Literal["d65", "c"] = "d65", observer: Literal["cie_1931", "cie_1964"] = "cie_1931", *, policy: _P = None) -> _result_6: ...
    @overload
    def __call__(self, transmittances: _List | _Labelled | _Quantity, illuminant: Literal["d65", "c"] = "d65", observer: Literal["cie_1931", "cie_1964"] = "cie_1931", *, policy: _P = None) -> Any: ...

class _of_x_and_y_and_z(Model):
    @overload
    def __call__(self, x: _S, y: _S, z: _S, xn: _S, yn: _S, zn: _S, *, policy: _P = None) -> _result_7: ...
    @overload
    def __call__(self, x: _N, y: _N, z: _N, xn: _N, yn: _N, zn: _N, *, policy: _P = None) -> _result_8: ...
    @overload
    def __call__(self, x: _L, y: _L, z: _L, xn: _L, yn: _L, zn: _L, *, policy: _P = None) -> Any: ...

class _of_l_and_a_and_b(Model):
    @overload
    def __call__(self, l: _S, a: _S, b: _S, xn: _S, yn: _S, zn: _S, *, policy: _P = None) -> _result_5: ...
    @overload
    def __call__(self, l: _N, a: _N, b: _N, xn: _N, yn: _N, zn: _N, *, policy: _P = None) -> _result_6: ...
    @overload
    def __call__(self, l: _L, a: _L, b: _L, xn: _L, yn: _L, zn: _L, *, policy: _P = None) -> Any: ...

class _of_a_and_b(Model):
    @overload
    def __call__(self, a: _S, b: _S, *, policy: _P = None) -> _result_9: ...
    @overload
    def __call__(self, a: _N, b: _N, *, policy: _P = None) -> _result_10: ...
    @overload
    def __call__(self, a: _L, b: _L, *, policy: _P = None) -> Any: ...

class _of_x_and_y_and_z_variant_2(Model):
    @overload
    def __call__(self, x: _S, y: _S, z: _S, *, policy: _P = None) -> _result_11: ...
    @overload
    def __call__(self, x: _N, y: _N, z: _N, *, policy: _P = None) -> _result_12: ...
    @overload
    def __call__(self, x: _L, y: _L, z: _L, *, policy: _P = None) -> Any: ...

class _of_u(Model):
    @overload
    def __call__(self, u: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, u: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, u: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_v(Model):
    @overload
    def __call__(self, v: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, v: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, v: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_x_and_y_and_z_variant_3(Model):
    @overload
    def __call__(self, x: _S, y: _S, z: _S, *, policy: _P = None) -> _result_13: ...
    @overload
    def __call__(self, x: _N, y: _N, z: _N, *, policy: _P = None) -> _result_14: ...
    @overload
    def __call__(self, x: _L, y: _L, z: _L, *, policy: _P = None) -> Any: ...

class _of_srm_and_path_length(Model):
    @overload
    def __call__(self, srm: _S, path_length: _S = 5.0, *, policy: _P = None) -> _result_13: ...
    @overload
    def __call__(self, srm: _N, path_length: _N = 5.0, *, policy: _P = None) -> _result_14: ...
    @overload
    def __call__(self, srm: _L, path_length: _L = 5.0, *, policy: _P = None) -> Any: ...

class _of_l1_and_a1_and_b1(Model):
    @overload
    def __call__(self, l1: _S, a1: _S, b1: _S, l2: _S, a2: _S, b2: _S, *, policy: _P = None) -> float: ...
    @overload
    def __call__(self, l1: _N, a1: _N, b1: _N, l2: _N, a2: _N, b2: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> _A: ...
    @overload
    def __call__(self, l1: _L, a1: _L, b1: _L, l2: _L, a2: _L, b2: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_srm_variant_2(Model):
    @overload
    def __call__(self, srm: _S, *, policy: _P = None) -> Literal["very pale", "straw", "yellow", "gold", "amber", "deep amber", "copper", "deep copper", "brown", "dark brown", "very dark brown", "black", "opaque black"]: ...
    @overload
    def __call__(self, srm: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> NDArray[np.object_]: ...
    @overload
    def __call__(self, srm: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _of_srm_variant_3(Model):
    @overload
    def __call__(self, srm: _S, *, policy: _P = None) -> list[Literal["Straw", "Yellow", "Gold", "Amber", "Deep amber/light copper", "Copper", "Deep copper/light brown", "Brown", "Dark Brown", "Very Dark Brown", "Black", "Black, opaque"]]: ...
    @overload
    def __call__(self, srm: _N, *, policy: _P = None, out: _A | None = None, where: _W = True) -> NDArray[np.object_]: ...
    @overload
    def __call__(self, srm: _L, *, policy: _P = None, out: Any = None, where: Any = True) -> Any: ...

class _srm_from_absorbance_asbc(_of_absorbance_430_and_path_length_and_dilution):
    """What colour in SRM does a photometer reading at 430 nm mean? absorbance_430 [ratio], path_length [cm], dilution [ratio] -> [SRM]. Use: clear, degassed beer and wort; a reading above 2 has to be repeated diluted."""
    asbc: _srm_from_absorbance_asbc

class _absorbance_from_srm_asbc(_of_srm):
    """What absorbance at 430 nm, in one centimetre, has a beer of this colour in SRM? srm [SRM] -> [1/cm]."""
    asbc: _absorbance_from_srm_asbc

class _ebc_from_absorbance_analytica(_of_absorbance_430_and_path_length_and_dilution):
    """What colour in EBC units does a photometer reading at 430 nm mean? absorbance_430 [ratio], path_length [cm], dilution [ratio] -> [EBC]. Use: clear, degassed beer and wort; a reading above 2 has to be repeated diluted."""
    analytica: _ebc_from_absorbance_analytica

class _absorbance_from_ebc_analytica(_of_ebc):
    """What absorbance at 430 nm, in one centimetre, has a beer of this colour in EBC units? ebc [EBC] -> [1/cm]."""
    analytica: _absorbance_from_ebc_analytica

class _ebc_from_srm_exact(_of_srm):
    """What is a colour in SRM on the EBC scale? srm [SRM] -> [EBC]."""
    exact: _ebc_from_srm_exact

class _srm_from_ebc_exact(_of_ebc):
    """What is a colour in EBC units (430 nm) on the SRM scale? ebc [EBC] -> [SRM]."""
    exact: _srm_from_ebc_exact

class _clarity_asbc(_of_absorbance_430_and_absorbance_700):
    """Is a sample clear enough, and average enough in its spectrum, for a colour in SRM? absorbance_430 [ratio], absorbance_700 [ratio] -> ratio [ratio], passes [bool]."""
    asbc: _clarity_asbc

class _srm_from_lovibond_maltster(_of_lovibond):
    """What is a malt colour in degrees Lovibond on the SRM scale? lovibond [degL] -> [SRM]. Use: degrees read with the discs of series 52; malt and laboratory wort, not finished beer."""
    maltster: _srm_from_lovibond_maltster
    identity: _srm_from_lovibond_identity

class _srm_from_lovibond_identity(_of_lovibond):
    """What is a malt colour in degrees Lovibond on the SRM scale? lovibond [degL] -> [SRM]. Use: certificates whose 'L' is a photometer reading."""

class _lovibond_from_srm_maltster(_of_srm):
    """What is a malt colour in SRM on the Lovibond scale? srm [SRM] -> [degL]. Use: degrees read with the discs of series 52; malt and laboratory wort, not finished beer."""
    maltster: _lovibond_from_srm_maltster
    identity: _lovibond_from_srm_identity

class _lovibond_from_srm_identity(_of_srm):
    """What is a malt colour in SRM on the Lovibond scale? srm [SRM] -> [degL]. Use: certificates whose 'L' is a photometer reading."""

class _visual_ebc_from_lovibond_siebel(_of_lovibond):
    """What is a malt colour in degrees Lovibond in the visual EBC units used before 1991? lovibond [degL] -> [visual EBC]. Use: malt labels."""
    siebel: _visual_ebc_from_lovibond_siebel
    fix: _visual_ebc_from_lovibond_fix

class _visual_ebc_from_lovibond_fix(_of_lovibond):
    """What is a malt colour in degrees Lovibond in the visual EBC units used before 1991? lovibond [degL] -> [visual EBC]. Use: pale wort, below 4 SRM."""

class _lovibond_from_visual_ebc_siebel(_of_visual_ebc):
    """What is a malt colour in the visual EBC units used before 1991 in degrees Lovibond? visual_ebc [visual EBC] -> [degL]. Use: malt labels."""
    siebel: _lovibond_from_visual_ebc_siebel
    fix: _lovibond_from_visual_ebc_fix
    fix_printed: _lovibond_from_visual_ebc_fix_printed

class _lovibond_from_visual_ebc_fix(_of_visual_ebc):
    """What is a malt colour in the visual EBC units used before 1991 in degrees Lovibond? visual_ebc [visual EBC] -> [degL]. Use: pale wort, below 4 SRM; goes there and back with visual_ebc_from_lovibond.fix."""

class _lovibond_from_visual_ebc_fix_printed(_of_visual_ebc):
    """What is a malt colour in the visual EBC units used before 1991 in degrees Lovibond? visual_ebc [visual EBC] -> [degL]. Use: to repeat printed results."""

class _ebc_from_iob_mash_concentration(_of_iob_colour):
    """What is a malt colour from the British (IoB) mash on the basis of the EBC mash? iob_colour [EBC (IoB mash)] -> [EBC]."""
    concentration: _ebc_from_iob_mash_concentration

class _grist_load_mcu(_of_lovibonds_and_masses_and_volume):
    """How much malt colour goes into how much wort? lovibonds [degL], masses [g], volume [L] -> [MCU]. Use: before from_grist."""
    mcu: _grist_load_mcu
    si: _grist_load_si

class _grist_load_si(_of_lovibonds_and_masses_and_volume):
    """How much malt colour goes into how much wort? lovibonds [degL], masses [g], volume [L] -> [degL kg/L]. Use: metric work; malt colours in EBC give EBC kg/L; mcu_from_load comes before from_grist."""

class _mcu_from_load_exact(_of_colour_load):
    """How many malt colour units (degL lb per US gallon) are a load in degL kg per litre? colour_load [degL kg/L] -> [MCU]."""
    exact: _mcu_from_load_exact

class _from_grist_morey(_of_mcu):
    """What colour will a beer have that is brewed with this load of malt colour? mcu [MCU] -> [SRM]. Use: the relation most recipes are written for."""
    morey: _from_grist_morey
    daniels: _from_grist_daniels
    mosher: _from_grist_mosher
    piecewise: _from_grist_piecewise
    bies_hansen: _from_grist_bies_hansen
    congress: _from_grist_congress

class _from_grist_daniels(_of_mcu):
    """What colour will a beer have that is brewed with this load of malt colour? mcu [MCU] -> [SRM]. Use: amber beers, from 10.5 to 37 MCU."""

class _from_grist_mosher(_of_mcu):
    """What colour will a beer have that is brewed with this load of malt colour? mcu [MCU] -> [SRM]. Use: dark beers, above 37 MCU."""

class _from_grist_piecewise(_of_mcu):
    """What colour will a beer have that is brewed with this load of malt colour? mcu [MCU] -> [SRM]. Use: to see what morey smooths."""

class _from_grist_bies_hansen(_of_mcu):
    """What colour will a beer have that is brewed with this load of malt colour? mcu [MCU] -> [SRM]. Use: caramel and roast malts, as a straight line; leave base malt out of the load."""

class _from_grist_congress(_of_mcu):
    """What colour will a beer have that is brewed with this load of malt colour? mcu [MCU] -> [SRM]. Use: malts measured by photometer (SRM or EBC); the only one to which labelled_extract may be added."""

class _mcu_for_colour_morey(_of_srm):
    """How much malt colour does a beer of this colour need? srm [SRM] -> [MCU]. Use: beside from_grist.morey; less the MCU of the malts already chosen it is the MCU of one more malt."""
    morey: _mcu_for_colour_morey
    daniels: _mcu_for_colour_daniels
    mosher: _mcu_for_colour_mosher
    piecewise: _mcu_for_colour_piecewise
    bies_hansen: _mcu_for_colour_bies_hansen
    congress: _mcu_for_colour_congress

class _mcu_for_colour_daniels(_of_srm):
    """How much malt colour does a beer of this colour need? srm [SRM] -> [MCU]. Use: beside from_grist.daniels; amber beers."""

class _mcu_for_colour_mosher(_of_srm):
    """How much malt colour does a beer of this colour need? srm [SRM] -> [MCU]. Use: beside from_grist.mosher; dark beers."""

class _mcu_for_colour_piecewise(_of_srm):
    """How much malt colour does a beer of this colour need? srm [SRM] -> [MCU]. Use: beside from_grist.piecewise."""

class _mcu_for_colour_bies_hansen(_of_srm):
    """How much malt colour does a beer of this colour need? srm [SRM] -> [MCU]. Use: beside from_grist.bies_hansen; the load of caramel and roast malts only."""

class _mcu_for_colour_congress(_of_srm):
    """How much malt colour does a beer of this colour need? srm [SRM] -> [MCU]. Use: beside from_grist.congress; malts measured by photometer."""

class _malt_mass_mcu(_of_mcu_and_lovibond_and_volume):
    """How much of one malt brings a load of malt colour? mcu [MCU], lovibond [degL], volume [L] -> [g]. Use: after mcu_for_colour."""
    mcu: _malt_mass_mcu
    si: _malt_mass_si

class _malt_mass_si(_of_colour_load_and_lovibond_and_volume):
    """How much of one malt brings a load of malt colour? colour_load [degL kg/L], lovibond [degL], volume [L] -> [g]. Use: metric work."""

class _labelled_extract_beer_law(_of_label_colour_and_label_concentration_and_mass):
    """What colour does a malt extract bring whose label states a colour at a stated strength? label_colour [SRM], label_concentration [kg/L], mass [g], volume [L] -> [SRM]."""
    beer_law: _labelled_extract_beer_law

class _blend_beer_law(_of_colours_and_volumes):
    """What colour has a mixture of beers? colours [SRM], volumes [L] -> [SRM]."""
    beer_law: _blend_beer_law

class _dilute_beer_law(_of_colour_and_volume_before_and_volume_after):
    """What colour has a beer or wort after its volume has changed by water, added or evaporated? colour [SRM], volume_before [L], volume_after [L] -> [SRM]."""
    beer_law: _dilute_beer_law

class _water_for_colour_beer_law(_of_colour_and_target_colour_and_volume):
    """How much water brings a beer down to a paler colour? colour [SRM], target_colour [SRM], volume [L] -> [L]."""
    beer_law: _water_for_colour_beer_law

class _spectrum_de_lange_average(_of_wavelength):
    """How does the absorbance of beer change with the wavelength, relative to 430 nm? wavelength [nm] -> [ratio]. Use: a beer of which only the colour is known."""
    de_lange_average: _spectrum_de_lange_average
    log_linear: _spectrum_log_linear
    two_group: _spectrum_two_group

class _spectrum_log_linear(_of_wavelength_and_linner_index):
    """How does the absorbance of beer change with the wavelength, relative to 430 nm? wavelength [nm], linner_index [ratio] -> [ratio]. Use: a laboratory gives the absorbance at 430 nm and at one more wavelength."""

class _spectrum_two_group(_of_wavelength_and_roast_share):
    """How does the absorbance of beer change with the wavelength, relative to 430 nm? wavelength [nm], roast_share [fraction] -> [ratio]. Use: the share of roast malt is known; with 0 and 1 an honest band of uncertainty beside the average beer."""

class _transmittance_beer_lambert(_of_srm_and_path_length_and_relative_absorbance):
    """What share of the light of one wavelength passes through a beer? srm [SRM], path_length [cm], relative_absorbance [ratio] -> [fraction]. Use: bright beer."""
    beer_lambert: _transmittance_beer_lambert

class _linner_index_linner(_of_absorbance_510_and_absorbance_610):
    """How steep is the spectrum between green and red: is the colour red or brown? absorbance_510 [ratio], absorbance_610 [ratio] -> [ratio]."""
    linner: _linner_index_linner

class _observer_cie_1931(_of_wavelength_variant_2):
    """How strongly does light of one wavelength act on the three colour-matching functions of an observer? wavelength [nm] -> xbar [ratio], ybar [ratio], zbar [ratio]. Use: screens."""
    cie_1931: _observer_cie_1931
    cie_1964: _observer_cie_1964
    wyman_1931: _observer_wyman_1931
    wyman_1964: _observer_wyman_1964

class _observer_cie_1964(_of_wavelength_variant_2):
    """How strongly does light of one wavelength act on the three colour-matching functions of an observer? wavelength [nm] -> xbar [ratio], ybar [ratio], zbar [ratio]. Use: the tristimulus method ASBC Beer-10 C."""

class _observer_wyman_1931(_of_wavelength_variant_2):
    """How strongly does light of one wavelength act on the three colour-matching functions of an observer? wavelength [nm] -> xbar [ratio], ybar [ratio], zbar [ratio]. Use: where the table is not at hand, and between its rows."""

class _observer_wyman_1964(_of_wavelength_variant_2):
    """How strongly does light of one wavelength act on the three colour-matching functions of an observer? wavelength [nm] -> xbar [ratio], ybar [ratio], zbar [ratio]. Use: where the table is not at hand, and between its rows."""

class _white_point_table_5nm(_of_illuminant_and_observer):
    """What are the tristimulus values of the white that an illuminant shows to an observer? illuminant [word], observer [word] -> x [ratio], y [ratio], z [ratio]. Use: beside tristimulus.table_5nm."""
    table_5nm: _white_point_table_5nm
    table_10nm: _white_point_table_10nm

class _white_point_table_10nm(_of_illuminant_and_observer):
    """What are the tristimulus values of the white that an illuminant shows to an observer? illuminant [word], observer [word] -> x [ratio], y [ratio], z [ratio]. Use: beside tristimulus.table_10nm."""

class _tristimulus_table_5nm(_of_srm_and_path_length_and_illuminant):
    """What are the tristimulus values of a beer seen through a glass or a cell? srm [SRM], path_length [cm], illuminant [word], observer [word], spectrum [word] -> x [ratio], y [ratio], z [ratio]. Use: the usual case."""
    table_5nm: _tristimulus_table_5nm
    table_10nm: _tristimulus_table_10nm
    wyman: _tristimulus_wyman

class _tristimulus_table_10nm(_of_srm_and_path_length_and_illuminant):
    """What are the tristimulus values of a beer seen through a glass or a cell? srm [SRM], path_length [cm], illuminant [word], observer [word], spectrum [word] -> x [ratio], y [ratio], z [ratio]. Use: spectra measured every 10 nm."""

class _tristimulus_wyman(_of_srm_and_path_length_and_illuminant_variant_2):
    """What are the tristimulus values of a beer seen through a glass or a cell? srm [SRM], path_length [cm], illuminant [word] -> x [ratio], y [ratio], z [ratio]. Use: where the observer's table is not at hand."""

class _tristimulus_from_transmittance_table_5nm(_of_transmittances_and_illuminant_and_observer):
    """What are the tristimulus values of a sample whose transmittance was measured at every wavelength? transmittances [fraction], illuminant [word], observer [word] -> x [ratio], y [ratio], z [ratio]. Use: a scanned spectrum: this beer instead of an average one."""
    table_5nm: _tristimulus_from_transmittance_table_5nm

class _lab_cie_1976(_of_x_and_y_and_z):
    """Which lightness, redness and yellowness (L*, a*, b*) belong to these tristimulus values? x [ratio], y [ratio], z [ratio], xn [ratio], yn [ratio], zn [ratio] -> l [ratio], a [ratio], b [ratio]."""
    cie_1976: _lab_cie_1976

class _xyz_from_lab_cie_1976(_of_l_and_a_and_b):
    """Which tristimulus values belong to this lightness, redness and yellowness (L*, a*, b*)? l [ratio], a [ratio], b [ratio], xn [ratio], yn [ratio], zn [ratio] -> x [ratio], y [ratio], z [ratio]."""
    cie_1976: _xyz_from_lab_cie_1976

class _chroma_hue_cie_1976(_of_a_and_b):
    """How vivid is a colour, and which hue has it? a [ratio], b [ratio] -> chroma [ratio], hue [degrees]."""
    cie_1976: _chroma_hue_cie_1976

class _srgb_linear_seven_decimal(_of_x_and_y_and_z_variant_2):
    """How much linear red, green and blue light of a screen makes these tristimulus values? x [ratio], y [ratio], z [ratio] -> red [ratio], green [ratio], blue [ratio]. Use: the usual case."""
    seven_decimal: _srgb_linear_seven_decimal
    four_decimal: _srgb_linear_four_decimal
    primaries: _srgb_linear_primaries

class _srgb_linear_four_decimal(_of_x_and_y_and_z_variant_2):
    """How much linear red, green and blue light of a screen makes these tristimulus values? x [ratio], y [ratio], z [ratio] -> red [ratio], green [ratio], blue [ratio]. Use: to repeat results of the first edition."""

class _srgb_linear_primaries(_of_x_and_y_and_z_variant_2):
    """How much linear red, green and blue light of a screen makes these tristimulus values? x [ratio], y [ratio], z [ratio] -> red [ratio], green [ratio], blue [ratio]. Use: more digits than any printed matrix."""

class _srgb_encode_iec(_of_u):
    """Which value of a screen's channel, from 0 to 1, stands for an amount of linear light? u [ratio] -> [ratio]."""
    iec: _srgb_encode_iec

class _srgb_decode_iec(_of_v):
    """How much linear light does the value of a screen's channel, from 0 to 1, stand for? v [ratio] -> [ratio]."""
    iec: _srgb_decode_iec

class _srgb_iec(_of_x_and_y_and_z_variant_3):
    """Which red, green and blue, from 0 to 255, show these tristimulus values on a screen? x [ratio], y [ratio], z [ratio] -> red [0..255], green [0..255], blue [0..255], outside_gamut [bool]."""
    iec: _srgb_iec

class _swatch_de_lange_d65(_of_srm_and_path_length):
    """What does a beer of this colour look like on a screen? srm [SRM], path_length [cm] -> red [0..255], green [0..255], blue [0..255], outside_gamut [bool]."""
    de_lange_d65: _swatch_de_lange_d65

class _difference_ciede2000(_of_l1_and_a1_and_b1):
    """How different do two colours look: would anyone see it? l1 [ratio], a1 [ratio], b1 [ratio], l2 [ratio], a2 [ratio], b2 [ratio] -> [ratio]. Use: small differences; about 1 is just noticeable."""
    ciede2000: _difference_ciede2000
    cie76: _difference_cie76

class _difference_cie76(_of_l1_and_a1_and_b1):
    """How different do two colours look: would anyone see it? l1 [ratio], a1 [ratio], b1 [ratio], l2 [ratio], a2 [ratio], b2 [ratio] -> [ratio]. Use: to compare with older work; about 2.3 is just noticeable (Mahy 1994)."""

class _word_half_open(_of_srm_variant_2):
    """Which word describes the colour of a beer? srm [SRM] -> [name]. Use: one word for every colour."""
    half_open: _word_half_open
    bjcp_2021: _word_bjcp_2021

class _word_bjcp_2021(_of_srm_variant_3):
    """Which word describes the colour of a beer? srm [SRM] -> [list of names]. Use: the words of those guidelines, as printed."""

srm_from_absorbance: _srm_from_absorbance_asbc
absorbance_from_srm: _absorbance_from_srm_asbc
ebc_from_absorbance: _ebc_from_absorbance_analytica
absorbance_from_ebc: _absorbance_from_ebc_analytica
ebc_from_srm: _ebc_from_srm_exact
srm_from_ebc: _srm_from_ebc_exact
clarity: _clarity_asbc
srm_from_lovibond: _srm_from_lovibond_maltster
lovibond_from_srm: _lovibond_from_srm_maltster
visual_ebc_from_lovibond: _visual_ebc_from_lovibond_siebel
lovibond_from_visual_ebc: _lovibond_from_visual_ebc_siebel
ebc_from_iob_mash: _ebc_from_iob_mash_concentration
grist_load: _grist_load_mcu
mcu_from_load: _mcu_from_load_exact
from_grist: _from_grist_morey
mcu_for_colour: _mcu_for_colour_morey
malt_mass: _malt_mass_mcu
labelled_extract: _labelled_extract_beer_law
blend: _blend_beer_law
dilute: _dilute_beer_law
water_for_colour: _water_for_colour_beer_law
spectrum: _spectrum_de_lange_average
transmittance: _transmittance_beer_lambert
linner_index: _linner_index_linner
observer: _observer_cie_1931
white_point: _white_point_table_5nm
tristimulus: _tristimulus_table_5nm
tristimulus_from_transmittance: _tristimulus_from_transmittance_table_5nm
lab: _lab_cie_1976
xyz_from_lab: _xyz_from_lab_cie_1976
chroma_hue: _chroma_hue_cie_1976
srgb_linear: _srgb_linear_seven_decimal
srgb_encode: _srgb_encode_iec
srgb_decode: _srgb_decode_iec
srgb: _srgb_iec
swatch: _swatch_de_lange_d65
difference: _difference_ciede2000
word: _word_half_open
