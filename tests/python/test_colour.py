"""Colour: what the tables of tests/reference/colour do not say by themselves.

Each test names its source; "identity" means that it follows from the definitions alone.
"""

from __future__ import annotations

import math
import warnings
from typing import Any

import numpy as np
import pytest

import wortmath as wm
from expression import read_table

c = wm.colour
NAN = math.nan
WAVELENGTHS = [380.0 + 5.0 * i for i in range(81)]
GRIST = ("morey", "daniels", "mosher", "piecewise", "bies_hansen", "congress")
BOTH = {"d65": "D65", "c": "C"}


def lab_of(srm: float, path: float, illuminant: str = "c", observer: str = "cie_1964", spectrum: Any = "de_lange_average") -> Any:
    return c.lab(*c.tristimulus(srm, path, illuminant, observer, spectrum, policy="extrapolate"), *c.white_point(illuminant, observer))


def of(model: Any, x: float) -> float:
    return model(x, policy="extrapolate")


# ---- scales ----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("srm", [0.0, 0.3, 2.0, 12.7, 40.0, 500.0])
def test_srm_and_ebc_are_one_scale(srm: float) -> None:
    """identity: both are fixed multiples of the absorbance at 430 nm."""
    ebc = c.ebc_from_srm(srm)
    assert ebc == pytest.approx(srm * 25 / 12.7, abs=1e-12, rel=1e-12)
    assert c.srm_from_ebc(ebc) == pytest.approx(srm, abs=1e-12, rel=1e-12)
    absorbance = c.absorbance_from_srm(srm)
    assert c.absorbance_from_ebc(ebc) == pytest.approx(absorbance, rel=1e-12)
    assert c.srm_from_absorbance(absorbance, policy="extrapolate") == pytest.approx(srm, rel=1e-12)
    assert c.ebc_from_absorbance(absorbance, policy="extrapolate") == pytest.approx(ebc, rel=1e-12)


def test_path_and_dilution() -> None:
    """identity: half the path, or twice the volume, halves the reading. Half an inch is 1.27 cm (exact)."""
    assert c.srm_from_absorbance(0.4, 0.5) == pytest.approx(2 * c.srm_from_absorbance(0.4))
    assert c.ebc_from_absorbance(0.4, 1.0, 4.0) == pytest.approx(4 * c.ebc_from_absorbance(0.4))
    assert c.srm_from_absorbance(1.0, 1.27) == pytest.approx(10.0, rel=1e-12)


def test_a_raw_reading_above_two_has_to_be_diluted() -> None:
    """ASBC Beer-10 A, practice of photometry: the absorbance that the instrument sees is limited, not the colour."""
    with pytest.raises(wm.RangeError, match=r"absorbance_430 = 2\.1 .*validated.*0 to 2"):
        c.srm_from_absorbance(2.1)
    assert c.srm_from_absorbance(1.9, 1.0, 10.0) == pytest.approx(241.3)
    for bad in ((-0.1,), (0.5, 0.0), (0.5, 1.0, 0.9)):
        for family in (c.srm_from_absorbance, c.ebc_from_absorbance):
            with pytest.raises(wm.RangeError):
                family(*bad, policy="extrapolate")


def test_lovibond_there_and_back() -> None:
    """identity above the clamp; the clamp lies at 0.76/1.3546 degL; encyclopaedia accounts of SRM = 1.3546 L - 0.76."""
    for lovibond in (0.6, 1.5, 10.0, 40.0, 500.0):
        assert c.lovibond_from_srm(c.srm_from_lovibond(lovibond)) == pytest.approx(lovibond, rel=1e-12)
        assert c.lovibond_from_srm.identity(c.srm_from_lovibond.identity(lovibond)) == lovibond
    assert c.srm_from_lovibond(0.3) == 0.0
    assert c.lovibond_from_srm(0.0) == pytest.approx(0.561, abs=5e-4)
    assert c.lovibond_from_srm(2.0) == pytest.approx(2.04, abs=5e-3)
    assert c.lovibond_from_srm(10.0) == pytest.approx(7.94, abs=5e-3)


def test_visual_ebc_there_and_back() -> None:
    """identity for fix and siebel; the printed inverse of fix is a rounding and does not return."""
    for lovibond in (0.5, 1.0, 2.5, 4.0):
        assert c.lovibond_from_visual_ebc.fix(c.visual_ebc_from_lovibond.fix(lovibond)) == pytest.approx(lovibond, rel=1e-12)
    for lovibond in (0.6, 3.0, 80.0, 500.0):
        assert c.lovibond_from_visual_ebc(c.visual_ebc_from_lovibond(lovibond)) == pytest.approx(lovibond, rel=1e-12)
    for visual, low in ((5.0, 0.012), (100.0, 0.10)):
        back = of(c.visual_ebc_from_lovibond.fix, of(c.lovibond_from_visual_ebc.fix_printed, visual))
        assert visual - back == pytest.approx(low, abs=0.06 * low)
    assert c.visual_ebc_from_lovibond.fix(0.4) == 0.0
    assert c.visual_ebc_from_lovibond.siebel(0.5) == 0.0


def test_fix_is_stated_for_pale_wort() -> None:
    """G. Fix, Home Brew Digest 1328: below 4 degL; the sibling that covers more is named."""
    with pytest.raises(wm.RangeError, match="visual_ebc_from_lovibond.siebel covers it"):
        c.visual_ebc_from_lovibond.fix(4.1)
    with pytest.raises(wm.RangeError):
        c.lovibond_from_visual_ebc.fix(9.5)
    assert of(c.visual_ebc_from_lovibond.fix, 10.0) == pytest.approx(25.3)


def test_iob_mash() -> None:
    """J. Inst. Brew. 1953 (abstract): the continental mash is 1.18 times as concentrated."""
    assert c.ebc_from_iob_mash(100.0) == pytest.approx(118.0)


def test_clarity() -> None:
    """ASBC Beer-10 A: at most 0.039. The average beer itself (0.0364 at 700 nm) passes."""
    assert c.clarity(1.0, 0.039) == (0.039, True)
    assert c.clarity(0.5, 0.0196).passes is False
    assert c.clarity(1.0, c.spectrum(700.0)).passes is True
    for bad in ((0.0, 0.01), (-0.1, 0.01), (0.5, -0.01), (NAN, 0.01), (0.5, NAN)):
        with pytest.raises(wm.RangeError):
            c.clarity(*bad, policy="extrapolate")


# ---- grist -----------------------------------------------------------------------------------------------------------


def test_grist_load() -> None:
    """Worked by hand: 5 kg of 2 degL and 0.5 kg of 60 degL in 20 L; exact pound and US gallon."""
    assert c.grist_load.si([2, 60], [5000, 500], 20) == pytest.approx(2.0, rel=1e-12)
    assert c.grist_load([2, 60], [5000, 500], 20) == pytest.approx((2 * 5000 + 60 * 500) / 453.59237 / (20 / 3.785411784), rel=1e-12)
    assert c.grist_load([2, 60], [5000, 500], 20) == pytest.approx(16.6908, abs=5e-5)
    assert c.mcu_from_load(2.0) == pytest.approx(16.6908, abs=5e-5)
    assert c.mcu_from_load(0.508) == pytest.approx(4.239465462, abs=5e-10)  # a load in EBC kg/L, SRM taken as degL
    assert c.grist_load([], [], 20) == 0.0
    assert c.grist_load.si([], [], 20) == 0.0


def test_grist_load_refuses() -> None:
    with pytest.raises(ValueError, match="length"):
        c.grist_load([2, 60], [5000], 20)
    for bad in (([2], [5000], 0.0), ([2], [-1.0], 20.0), ([-2], [5000], 20.0)):
        for model in (c.grist_load.mcu, c.grist_load.si):
            with pytest.raises(wm.RangeError):
                model(*bad, policy="extrapolate")


def test_thirty_mcu() -> None:
    """The published coefficients worked by hand at 30 MCU: the models differ by a factor of two."""
    got = {m: round(of(getattr(c.from_grist, m), 30.0), 1) for m in GRIST}
    assert got == {"morey": 15.4, "daniels": 14.4, "mosher": 13.7, "piecewise": 14.4, "bies_hansen": 28.8, "congress": 30.7}


def test_si_forms_of_the_grist_models() -> None:
    """identity: the same lines with the load in degL kg/L (and in EBC)."""
    for load in (0.4, 1.7, 6.0):
        mcu = c.mcu_from_load(load)
        assert c.from_grist.morey(mcu) == pytest.approx(6.395107 * load**0.6859, rel=2e-7)
        assert c.ebc_from_srm(c.from_grist.morey(c.mcu_from_load(0.508 * load))) == pytest.approx(7.911084 * load**0.6859, rel=2e-7)
        assert c.from_grist.bies_hansen(mcu) == pytest.approx(8.009521 * load, rel=1e-7)
        assert c.from_grist.congress(mcu) == pytest.approx(8.529 * load, rel=1e-4)


def test_wrong_exponent_of_morey() -> None:
    """A wrong exponent 0.659 circulates; 10 MCU tell the two apart."""
    assert c.from_grist(10.0) == pytest.approx(7.2398, abs=5e-5)
    assert 1.4922 * 10**0.659 == pytest.approx(6.805, abs=5e-4)


def test_morey_smooths_the_piecewise_line() -> None:
    """A log-log regression of the piecewise line on 1, 2 ... 164 MCU has to give Morey's two coefficients."""
    mcu = np.arange(1.0, 165.0)
    slope, intercept = np.polyfit(np.log(mcu), np.log(c.from_grist.piecewise(mcu)), 1)
    assert math.exp(intercept) == pytest.approx(1.4923, abs=5e-5)
    assert slope == pytest.approx(0.6859, abs=5e-5)
    gap = c.from_grist.morey(mcu) - c.from_grist.piecewise(mcu)
    assert c.from_grist.morey(10.5) - 10.5 == pytest.approx(-3.0, abs=0.05)
    assert gap.max() == pytest.approx(2.1, abs=0.05) and 45 <= mcu[gap.argmax()] <= 55
    assert gap[mcu == 151.0] == pytest.approx(-3.4, abs=0.05)
    small = np.linspace(0.0, 4.0, 401)
    above = c.from_grist.morey(small) - small
    assert above.max() == pytest.approx(0.49, abs=5e-3) and small[above.argmax()] == pytest.approx(1.08, abs=0.02)
    assert c.from_grist.morey(3.58) == pytest.approx(3.58, abs=5e-3)


@pytest.mark.parametrize(("mcu", "srm"), [(10.5, 10.5), (37.0, 15.8)])
def test_piecewise_is_continuous(mcu: float, srm: float) -> None:
    """identity: the three lines meet."""
    for shift in (-1e-9, 0.0, 1e-9):
        assert c.from_grist.piecewise(mcu + shift) == pytest.approx(srm, abs=2e-9)
        assert c.mcu_for_colour.piecewise(srm + shift) == pytest.approx(mcu, abs=6e-9)


@pytest.mark.parametrize("name", GRIST)
def test_mcu_for_colour_inverts_from_grist(name: str) -> None:
    """identity, over the whole possible region."""
    for mcu in (0.0, 0.2, 3.0, 10.4, 10.6, 25.0, 36.9, 37.1, 90.0, 163.0, 400.0):
        srm = of(getattr(c.from_grist, name), mcu)
        assert of(getattr(c.mcu_for_colour, name), srm) == pytest.approx(mcu, rel=1e-11, abs=1e-11)


def test_fifteen_srm() -> None:
    """The inverses worked by hand at 15 SRM."""
    assert c.mcu_for_colour(15.0) == pytest.approx(28.92, abs=5e-3)
    assert c.mcu_for_colour.piecewise(15.0) == pytest.approx(33.0, abs=1e-9)
    assert c.mcu_for_colour.bies_hansen(15.0) == pytest.approx(15.63, abs=5e-3)
    assert c.mcu_for_colour.congress(15.0) == pytest.approx(14.68, abs=5e-3)


RANGES = [  # model, a value inside, values that are unvalidated, values that are impossible
    (c.from_grist.morey, 167.0, [167.4, 1000.0], [-0.1]),
    (c.from_grist.daniels, 10.5, [0.0, 10.4, 37.1], [-0.1]),
    (c.from_grist.mosher, 37.1, [0.0, 37.0], [-0.1]),
    (c.from_grist.piecewise, 164.0, [164.1], [-0.1]),
    (c.from_grist.bies_hansen, 900.0, [], [-0.1]),
    (c.from_grist.congress, 900.0, [], [-0.1]),
    (c.mcu_for_colour.morey, 49.99, [50.0, 80.0], [-0.1]),
    (c.mcu_for_colour.daniels, 15.8, [8.4, 10.4, 15.9], [8.3, -0.1]),
    (c.mcu_for_colour.mosher, 15.9, [4.7, 15.8], [4.6, -0.1]),
    (c.mcu_for_colour.piecewise, 53.9, [54.0], [-0.1]),
    (c.mcu_for_colour.bies_hansen, 900.0, [], [-0.1]),
    (c.mcu_for_colour.congress, 900.0, [], [-0.1]),
    (c.swatch, 60.0, [60.1], [-0.1]),
    (c.tristimulus, 60.0, [60.1], [-0.1]),
    (c.tristimulus.table_10nm, 60.0, [60.1], [-0.1]),
    (c.tristimulus.wyman, 60.0, [60.1], [-0.1]),
    (c.observer.wyman_1964, 300.0, [], [265.8, 1338.0]),
    (c.spectrum, 380.0, [], [379.0, 781.0]),
    (c.srgb_decode, 1.0, [], [-0.01, 1.01]),
    (c.ebc_from_srm, 0.0, [], [-0.1]),
    (c.srm_from_ebc, 0.0, [], [-0.1]),
    (c.ebc_from_iob_mash, 0.0, [], [-0.1]),
    (c.srm_from_lovibond, 0.0, [], [-0.1]),
    (c.word.half_open, 0.0, [], [-0.1, NAN]),
    (c.word.bjcp_2021, 0.0, [], [-0.1, NAN]),
]


@pytest.mark.parametrize(("model", "inside", "unvalidated", "impossible"), RANGES, ids=lambda x: getattr(x, "path", ""))
def test_ranges(model: Any, inside: float, unvalidated: list[float], impossible: list[float]) -> None:
    """The ranges that the sources state."""
    model(inside)
    for x in unvalidated:
        with pytest.raises(wm.RangeError, match="validated"):
            model(x)
        model(x, policy="extrapolate")
    for x in impossible:
        with pytest.raises(wm.RangeError):
            model(x, policy="extrapolate")


def test_a_refusal_names_a_sibling() -> None:
    with pytest.raises(wm.RangeError, match=r"from_grist\.morey covers it"):
        c.from_grist.daniels(5.0)


def test_malt_mass_gives_the_mass_back() -> None:
    """identity: a grist of one malt."""
    load = c.grist_load([55.0], [730.0], 23.0)
    assert c.malt_mass(load, 55.0, 23.0) == pytest.approx(730.0, rel=1e-12)
    assert c.malt_mass.si(c.grist_load.si([55.0], [730.0], 23.0), 55.0, 23.0) == pytest.approx(730.0, rel=1e-12)
    for bad in ((5.0, 0.0, 20.0), (5.0, 60.0, 0.0), (-5.0, 60.0, 20.0)):
        for model in (c.malt_mass.mcu, c.malt_mass.si):
            with pytest.raises(wm.RangeError):
                model(*bad, policy="extrapolate")


def test_one_more_malt_reaches_a_colour() -> None:
    """identity: the load wanted less the load there is that of one more malt."""
    wanted = c.mcu_for_colour(14.0) - c.grist_load([2.0], [4500.0], 20.0)
    more = c.malt_mass(wanted, 60.0, 20.0)
    assert c.from_grist(c.grist_load([2.0, 60.0], [4500.0, more], 20.0)) == pytest.approx(14.0, rel=1e-12)


@pytest.mark.parametrize("concentration", [1.0, 0.1, 0.103, 0.085])
def test_labelled_extract_against_the_congress_mash(concentration: float) -> None:
    """Beer's law both ways: counted as malt of the congress mash (0.1173 kg/L) an extract gives the same colour."""
    equivalent = 9.0 * 0.1173 / concentration
    as_malt = c.from_grist.congress(c.grist_load([equivalent], [2500.0], 21.0))
    assert c.labelled_extract(9.0, concentration, 2500.0, 21.0) == pytest.approx(as_malt, rel=1e-3)
    with pytest.raises(wm.RangeError):
        c.labelled_extract(9.0, 0.0, 2500.0, 21.0)


# ---- mixtures --------------------------------------------------------------------------------------------------------


def test_mixtures() -> None:
    """identity: absorbance times volume is conserved."""
    assert c.blend([7.0, 7.0, 7.0], [1.0, 20.0, 3.0]) == pytest.approx(7.0, rel=1e-14)
    assert c.blend([4.0, 20.0], [10.0, 5.0]) == pytest.approx((4 * 10 + 20 * 5) / 15, rel=1e-14)
    assert c.blend([12.0, 0.0], [10.0, 6.0]) == pytest.approx(c.dilute(12.0, 10.0, 16.0), rel=1e-14)
    assert c.dilute(c.dilute(12.0, 10.0, 16.0), 16.0, 10.0) == pytest.approx(12.0, rel=1e-14)
    water = c.water_for_colour(12.0, 7.5, 10.0)
    assert c.dilute(12.0, 10.0, 10.0 + water) == pytest.approx(7.5, rel=1e-14)
    assert c.water_for_colour(12.0, 12.0, 10.0) == 0.0


def test_mixtures_refuse() -> None:
    with pytest.raises(wm.RangeError, match="water only makes a beer paler"):
        c.water_for_colour(5.0, 8.0, 20.0)
    with pytest.raises(wm.RangeError):
        c.water_for_colour(5.0, 0.0, 20.0)
    with pytest.raises(wm.RangeError, match="together more than nothing"):
        c.blend([4.0, 20.0], [0.0, 0.0])
    with pytest.raises(wm.RangeError, match="together more than nothing"):
        c.blend([], [])
    with pytest.raises(ValueError, match="length"):
        c.blend([4.0, 20.0], [10.0])
    for bad in (([-1.0, 20.0], [10.0, 5.0]), ([4.0, 20.0], [10.0, -5.0])):
        with pytest.raises(wm.RangeError):
            c.blend(*bad, policy="extrapolate")
    with pytest.raises(wm.RangeError):
        c.dilute(12.0, 10.0, 0.0)


# ---- spectra ---------------------------------------------------------------------------------------------------------


def test_every_spectrum_is_one_at_430_nm() -> None:
    """identity."""
    assert c.spectrum(430.0) == pytest.approx(1.0, rel=1e-14)
    assert c.spectrum.log_linear(430.0, 5.2) == 1.0
    for share in (0.0, 0.3, 1.0):
        assert c.spectrum.two_group(430.0, share) == pytest.approx(1.0, rel=1e-14)


def test_frozen_values_of_the_average_beer() -> None:
    """Values of the catalogue; they guard the four coefficients (from memory) against a changed digit."""
    for wavelength, ratio in ((380, 2.215904), (500, 0.416345), (530, 0.288699), (700, 0.036416), (780, 0.013747)):
        assert c.spectrum(wavelength) == pytest.approx(ratio, abs=5e-7)


def test_linner_index() -> None:
    """identity for the straight spectra; the other figures from the catalogue."""
    def index(f: Any) -> float:
        return c.linner_index(f(510.0), f(610.0))
    for hl in (3.0, 5.2, 7.5):
        assert index(lambda l: c.spectrum.log_linear(l, hl)) == pytest.approx(hl, rel=1e-12)
    for share, hl in ((0.0, 6.670), (0.5, 5.131), (1.0, 4.357)):
        assert index(lambda l: c.spectrum.two_group(l, share)) == pytest.approx(hl, abs=5e-4)
    average = index(c.spectrum)
    assert average == pytest.approx(5.291, abs=5e-4)
    assert 10 ** (average / 10) == pytest.approx(3.382, abs=5e-4)
    assert 1 / c.spectrum(530.0) == pytest.approx(3.464, abs=5e-4)


def test_two_group_ends_are_straight() -> None:
    """identity: without, and with nothing but, roast malt one exponential is left."""
    for wavelength in WAVELENGTHS:
        assert c.spectrum.two_group(wavelength, 0.0) == pytest.approx(c.spectrum.log_linear(wavelength, 6.670409), rel=1e-6)
        assert c.spectrum.two_group(wavelength, 1.0) == pytest.approx(c.spectrum.log_linear(wavelength, 4.357433), rel=1e-6)


def test_two_group_holds_its_printed_absorbances() -> None:
    """D. J. Bies, R. M. Hansen, poster 56, 2010: 0.5374 and 0.7802 at 500 nm for 20 SRM in 1 cm."""
    for share, absorbance in ((0.0, 0.5374), (1.0, 0.7802)):
        assert c.absorbance_from_srm(20.0) * c.spectrum.two_group(500.0, share) == pytest.approx(absorbance, abs=5e-5)


def test_transmittance() -> None:
    """identity: Beer and Lambert; 25.4 SRM in 1 cm pass 1/100 (ASBC Beer-10 A)."""
    assert c.transmittance(25.4, 1.0, 1.0) == pytest.approx(0.01, rel=1e-12)
    assert c.transmittance(5.0, 1.0, 0.4) == pytest.approx(c.transmittance(1.0, 5.0, 0.4), rel=1e-12)
    assert c.transmittance(1e9, 1.0, 1.0) == 0.0
    assert c.transmittance(0.0, 5.0, 1.0) == 1.0
    for bad in ((-1.0, 1.0, 1.0), (5.0, -1.0, 1.0)):
        with pytest.raises(wm.RangeError):
            c.transmittance(*bad, policy="extrapolate")


# ---- the tables of the CIE -------------------------------------------------------------------------------------------


def test_no_value_between_the_rows() -> None:
    """The tables are not interpolated for the user; the fit answers in between."""
    for model in (c.observer.cie_1931, c.observer.cie_1964):
        for wavelength in (381.0, 554.9, 779.999):
            with pytest.raises(wm.RangeError, match="380, 385, 390"):
                model(wavelength, policy="extrapolate")
        for wavelength in (375.0, 785.0):
            with pytest.raises(wm.RangeError, match="380 to 780 nm"):
                model(wavelength, policy="extrapolate")
    assert c.observer(555.0).ybar == 1.0
    assert c.observer.wyman_1931(556.0).ybar == pytest.approx(1.0, abs=0.01)
    assert all(math.isnan(x) for x in c.observer(NAN))


def only(row: int) -> list[float]:
    return [1.0 if i == row else 0.0 for i in range(81)]


@pytest.mark.parametrize("illuminant", ["d65", "c"])
def test_compiled_illuminants_are_the_files(illuminant: str) -> None:
    """CIE 15:2004: light through one row alone gives the illuminant of that row back, relative to that at 560 nm."""
    _, rows = read_table(f"colour/cie_illuminant_{illuminant}_5nm.csv")
    assert [float(r["wavelength_nm"]) for r in rows] == WAVELENGTHS
    power = [c.tristimulus_from_transmittance(only(i), illuminant).y / c.observer(w).ybar for i, w in enumerate(WAVELENGTHS)]
    for got, r in zip(power, rows):
        assert got / power[36] == pytest.approx(float(r["S"]) / float(rows[36]["S"]), rel=1e-12)


def test_fits_of_the_observers() -> None:
    """Wyman, Sloan, Shirley 2013 against the tables of the CIE: no row is further off than the largest errors of the catalogue."""
    for table, fit, errors in ((c.observer.cie_1931, c.observer.wyman_1931, (0.0140, 0.0080, 0.0222)), (c.observer.cie_1964, c.observer.wyman_1964, (0.047, 0.027, 0.062))):
        off = np.abs([np.subtract(fit(w), table(w)) for w in WAVELENGTHS])
        assert (off.max(axis=0) <= np.multiply(errors, 1.005)).all()
        assert (off.max(axis=0) >= np.multiply(errors, 0.9)).all()


def test_transmittances() -> None:
    """identity: clear glass shows the white, a grey filter a share of it; 81 values, none negative."""
    for illuminant in BOTH:
        for observer in ("cie_1931", "cie_1964"):
            white = c.white_point(illuminant, observer)
            assert white.y == 1.0
            assert c.tristimulus_from_transmittance([1.0] * 81, illuminant, observer) == pytest.approx(white, rel=1e-14)
            assert c.tristimulus_from_transmittance([0.25] * 81, illuminant, observer) == pytest.approx([0.25 * w for w in white], rel=1e-14)
            assert c.tristimulus(0.0, 5.0, illuminant, observer) == pytest.approx(white, rel=1e-14)
            assert c.tristimulus.table_10nm(0.0, 5.0, illuminant, observer) == pytest.approx(c.white_point.table_10nm(illuminant, observer), rel=1e-14)
    for length in (0, 1, 80, 82):
        with pytest.raises(wm.RangeError, match="81 transmittances"):
            c.tristimulus_from_transmittance([0.5] * length)
    with pytest.raises(wm.RangeError):
        c.tristimulus_from_transmittance([0.5] * 80 + [-0.01], policy="extrapolate")
    with pytest.raises(wm.RangeError):
        c.tristimulus_from_transmittance([0.5] * 80 + [98.0])


def test_unknown_words() -> None:
    for call in (lambda: c.white_point("d50"), lambda: c.white_point("c", "cie_2006"), lambda: c.tristimulus(5, 1, "a"), lambda: c.tristimulus(5, 1, "c", "cie_1931", "sine")):
        with pytest.raises(wm.RangeError, match="not known"):
            call()


@pytest.mark.parametrize("model", ["table_5nm", "table_10nm", "wyman"])
def test_path_and_colour_are_one(model: str) -> None:
    """identity of Beer and Lambert; more colour and more path are darker."""
    m = getattr(c.tristimulus, model)
    for k in (0.2, 3.0, 5.0):
        assert m(12.0 / k, 2.0 * k) == pytest.approx(m(12.0, 2.0), rel=1e-12)
    colours = np.linspace(0.0, 60.0, 121)
    assert (np.diff(m(colours, 5.0).y) < 0).all()
    assert (np.diff(m(8.0, np.linspace(0.0, 10.0, 101)).y) < 0).all()


def test_spectra_with_a_parameter_and_functions() -> None:
    """The rows of tristimulus_cases.csv that name a spectrum with its parameter, both as a pair and as a function."""
    _, rows = read_table("colour/tristimulus_cases.csv")
    seen = set()
    for r in rows:
        if not r["parameter"]:
            continue
        name, parameter = r["spectrum"], float(r["parameter"])
        seen.add(name)
        model = {"5": c.tristimulus.table_5nm, "10": c.tristimulus.table_10nm}[r["step_nm"]]
        spectrum = getattr(c.spectrum, name)
        wanted = [float(r[k]) for k in "XYZ"]
        where = (float(r["srm"]), float(r["path_cm"]), r["illuminant"], r["observer"])
        assert model(*where, (name, parameter)) == pytest.approx(wanted, abs=5.1e-7)
        assert model(*where, spectrum=lambda l: spectrum(l, parameter)) == pytest.approx(wanted, abs=5.1e-7)
    assert seen == {"two_group", "log_linear"}


def test_the_average_beer_as_a_function() -> None:
    """identity: the default spectrum, given as a function, changes nothing; nor do transmittances made from it."""
    for model in (c.tristimulus.table_5nm, c.tristimulus.table_10nm):
        assert model(9.0, 3.0, "c", "cie_1964", c.spectrum) == pytest.approx(model(9.0, 3.0, "c", "cie_1964"), rel=1e-12)
    through = [c.transmittance(9.0, 3.0, c.spectrum(w)) for w in WAVELENGTHS]
    assert c.tristimulus_from_transmittance(through) == pytest.approx(c.tristimulus(9.0, 3.0), rel=1e-12)
    many = c.tristimulus(np.array([3.0, 9.0]), 3.0, spectrum=("two_group", 0.4))
    assert many.y[1] == pytest.approx(c.tristimulus(9.0, 3.0, spectrum=("two_group", 0.4)).y, rel=1e-12)


def test_spectra_that_are_refused() -> None:
    for name in ("two_group", "log_linear"):
        with pytest.raises(wm.RangeError, match="need their parameter"):
            c.tristimulus(9.0, 3.0, spectrum=name)
    with pytest.raises(wm.RangeError, match="not known"):
        c.tristimulus(9.0, 3.0, spectrum=("de_lange", 1.0))
    with pytest.raises(TypeError):
        c.tristimulus(9.0, 3.0, spectrum=5.2)
    with pytest.raises(wm.RangeError):
        c.tristimulus(9.0, 3.0, spectrum=("two_group", 1.2))
    with pytest.raises(wm.RangeError, match="every row"):
        c.tristimulus(9.0, 3.0, spectrum=lambda wavelength: NAN)
    with pytest.raises(wm.RangeError, match="validated"):
        c.tristimulus(70.0, 3.0, spectrum=("two_group", 0.5))
    assert c.tristimulus(70.0, 3.0, spectrum=("two_group", 0.5), policy="extrapolate").y > 0


def test_caramel_and_roast_are_a_band_around_the_average() -> None:
    """Figures of the catalogue for the two groups against the average beer (CIEDE2000, D65, 1931)."""
    for srm, path, low, high in ((10.0, 1.0, 3.3, 3.4), (20.0, 1.0, 5.7, 6.0), (20.0, 5.0, 12.0, 15.0)):
        average = lab_of(srm, path, "d65", "cie_1931")
        off = sorted(c.difference(*average, *lab_of(srm, path, "d65", "cie_1931", ("two_group", share))) for share in (0.0, 1.0))
        tolerance = 0.05 if path == 1.0 else 0.5
        assert off[0] == pytest.approx(low, abs=tolerance) and off[1] == pytest.approx(high, abs=tolerance)


# ---- Lab and differences ---------------------------------------------------------------------------------------------


def test_lab_there_and_back() -> None:
    """identity on both sides of the joint (6/29)^3, and continuous across it."""
    white = c.white_point("c", "cie_1964")
    joint = (6 / 29) ** 3
    for share in (0.0, 1e-5, joint - 1e-9, joint + 1e-9, 0.2, 1.0, 1.4):
        xyz = (share * white.x, 0.9 * share * white.y, 0.5 * share * white.z)
        assert c.xyz_from_lab(*c.lab(*xyz, *white), *white) == pytest.approx(xyz, abs=1e-14)
    low, high = (c.lab(0.0, joint + shift, 0.0, 1.0, 1.0, 1.0).l for shift in (-1e-12, 1e-12))
    assert high - low == pytest.approx(0.0, abs=1e-8) and high > low
    assert c.lab(-0.1, -0.1, -0.1, *white) == pytest.approx((0.0, 0.0, 0.0), abs=1e-12)
    for bad in ((0.0, 1.0, 1.0), (1.0, 0.0, 1.0), (1.0, 1.0, -1.0)):
        with pytest.raises(wm.RangeError):
            c.lab(0.2, 0.2, 0.2, *bad, policy="extrapolate")


def test_lab_of_beer() -> None:
    """identity: no colour is white; darker with every step of colour and of path."""
    assert lab_of(0.0, 1.0) == pytest.approx((100.0, 0.0, 0.0), abs=1e-12)
    assert (np.diff([lab_of(s, 1.0).l for s in np.linspace(0.0, 60.0, 61)]) < 0).all()
    assert (np.diff([lab_of(8.0, p).l for p in np.linspace(0.0, 10.0, 41)]) < 0).all()


def test_average_beer_by_the_asbc_method() -> None:
    """Conditions of ASBC Beer-10 C, value of the catalogue: an average beer of 10 SRM in 1 cm."""
    assert lab_of(10.0, 1.0) == pytest.approx((84.244, 3.401, 45.510), abs=5.1e-4)


def test_hue() -> None:
    """identity: the quadrants, and no hue without chroma."""
    for a, b, hue in ((1, 0, 0), (1, 1, 45), (0, 2, 90), (-3, 0, 180), (0, -1, 270), (1, -1, 315), (0, 0, 0), (-0.0, 0.0, 0)):
        got = c.chroma_hue(a, b)
        assert got.hue == pytest.approx(hue, abs=1e-12)
        assert got.chroma == pytest.approx(math.hypot(a, b), rel=1e-15)


def test_differences_are_symmetric() -> None:
    """identity; no difference between a colour and itself, greys and black included."""
    colours = [(50.0, 2.5, 0.0), (73.0, 25.0, -18.0), (84.2, 3.4, 45.5), (0.0, 0.0, 0.0), (100.0, 0.0, 0.0), (20.0, -30.0, 5.0)]
    for model in (c.difference.ciede2000, c.difference.cie76):
        for p in colours:
            assert model(*p, *p) == 0.0
            for q in colours:
                assert model(*p, *q) == pytest.approx(model(*q, *p), rel=1e-12)
    assert c.difference.cie76(50, 1, 2, 53, 5, 14) == pytest.approx(13.0, rel=1e-15)


def test_opposite_hues() -> None:
    """Sharma, Wu, Dalal 2005, pair 14: hues 180 degrees apart; one rounding of the arc tangent chooses between two values."""
    got = c.difference(50.0, -0.001, 2.49, 50.0, 0.001, -2.49)
    assert min(abs(got - 4.8045), abs(got - 4.7461)) < 6e-5


def test_difference_of_one_srm() -> None:
    """Columns dE76_to_next and dE00_to_next of srm_to_lab_c_10deg.csv, half a unit of the last digit."""
    _, rows = read_table("colour/srm_to_lab_c_10deg.csv")
    assert rows
    for r in rows:
        srm, path = float(r["srm"]), float(r["path_cm"])
        here, there = lab_of(srm, path), lab_of(srm + 1, path)
        assert c.difference(*here, *there) == pytest.approx(float(r["dE00_to_next"]), abs=5.1e-4)
        assert c.difference.cie76(*here, *there) == pytest.approx(float(r["dE76_to_next"]), abs=5.1e-4)


def test_just_noticeable_steps() -> None:
    """jnd_steps.csv: half a unit below the printed step is under the threshold, half a unit above is over it."""
    _, rows = read_table("colour/jnd_steps.csv")
    assert rows
    for r in rows:
        srm, path = float(r["srm"]), float(r["path_cm"])
        here = lab_of(srm, path)
        for model, column, threshold in ((c.difference.ciede2000, "dSRM_for_dE00_1", 1.0), (c.difference.cie76, "dSRM_for_dE76_2.3", 2.3)):
            step = float(r[column])
            under, over = (model(*here, *lab_of(srm + step + shift, path)) for shift in (-5.1e-4, 5.1e-4))
            assert under < threshold < over
        assert 100 * float(r["dSRM_for_dE00_1"]) / srm == pytest.approx(float(r["dSRM_percent_dE00"]), abs=0.051 + 0.05 / srm)


# ---- screen ----------------------------------------------------------------------------------------------------------


def test_encode_and_decode() -> None:
    """identity within the step of 3e-8 between the branches of IEC 61966-2-1; 0.4613561 is the published test value."""
    light = np.linspace(0.0, 1.0, 2001)
    assert np.abs(c.srgb_decode(c.srgb_encode(light)) - light).max() < 1e-7
    assert (np.diff(c.srgb_encode(light)) > 0).all()
    assert c.srgb_encode(0.18) == pytest.approx(0.4613561, abs=5e-8)
    assert c.srgb_encode(-0.3) == 0.0
    assert c.srgb_encode(7.0) == pytest.approx(1.0, rel=1e-15)
    assert math.isnan(c.srgb_encode(NAN)) and math.isnan(c.srgb_decode(NAN))


def test_matrices() -> None:
    """IEC 61966-2-1: the printed forward matrix, inverted, is the seven-decimal one; white is 1 1 1."""
    forward = np.array([[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]])
    unit = np.eye(3)
    for model, residual in ((c.srgb_linear.seven_decimal, 1e-7), (c.srgb_linear.four_decimal, 1e-4)):
        matrix = np.array([model(*row) for row in unit]).T
        assert np.abs(matrix @ forward - unit).max() < residual
    white = (0.3127 / 0.3290, 1.0, (1 - 0.3127 - 0.3290) / 0.3290)
    assert c.srgb_linear.primaries(*white) == pytest.approx((1, 1, 1), rel=1e-12)
    printed = np.array([[3.240970, -1.537383, -0.498611], [-0.969244, 1.875968, 0.041555], [0.055630, -0.203977, 1.056972]])
    assert np.abs(np.array([c.srgb_linear.primaries(*row) for row in unit]).T - printed).max() < 5.1e-7


def channels(code: str) -> list[int]:
    return [int(code[i:i + 2], 16) for i in (1, 3, 5)]


SWATCHES = {1: "#fefaef #fae8b6", 2: "#fdf6df #f4d180", 3: "#fcf1d1 #eebd55", 4: "#fbecc3 #e7aa31", 6: "#f9e3aa #d98a00",
            10: "#f4d180 #ba5b00", 15: "#eebd55 #993400", 20: "#e7aa31 #7d1900", 30: "#d98a00 #540000", 40: "#c97000 #390000"}


@pytest.mark.parametrize("srm", SWATCHES)
def test_swatches(srm: int) -> None:
    """Values of the catalogue, within 1 of 255: legitimate matrices differ by that much."""
    for path, code in zip((1.0, 5.0), SWATCHES[srm].split()):
        got = c.swatch(srm, path)
        assert got.hex == f"#{got.red:02x}{got.green:02x}{got.blue:02x}"
        assert np.abs(np.subtract(channels(got.hex), channels(code))).max() <= 1
        assert c.srgb(*c.tristimulus(srm, path)) == got
    assert c.swatch(srm) == c.swatch(srm, 5.0)
    assert c.srgb(*c.tristimulus(srm, 5.0)).hex == c.swatch(srm).hex


def test_hex_column() -> None:
    """The hex column of srm_to_srgb_d65_2deg.csv."""
    _, rows = read_table("colour/srm_to_srgb_d65_2deg.csv")
    for r in rows:
        got = c.swatch(float(r["srm"]), float(r["path_cm"]))
        assert np.abs(np.subtract(channels(got.hex), channels(r["hex"]))).max() <= 1


def test_gamut() -> None:
    """Figures of the catalogue: the average beer leaves the screen's colours from 6 SRM (5 cm) and 26 SRM (1 cm)."""
    assert c.swatch(0.0).hex == "#ffffff" and c.swatch(0.0).outside_gamut is False
    assert [c.swatch(s, 5.0).outside_gamut for s in (1, 5, 6, 11, 40)] == [False, False, True, True, True]
    assert [c.swatch(s, 1.0).outside_gamut for s in (5, 25, 26, 60)] == [False, False, True, True]
    assert c.srgb(1.0, 1.0, 1.0).outside_gamut is True  # the equal-energy white is no D65
    assert type(c.swatch(6.0).red) is int


def test_what_clipping_costs() -> None:
    """Figure of the catalogue: up to CIEDE2000 6.9, at 11 SRM in 5 cm."""
    back = np.linalg.inv(np.array([c.srgb_linear(*row) for row in np.eye(3)]).T)
    white = c.white_point()
    cost = {}
    for srm in range(1, 41):
        xyz = c.tristimulus(srm, 5.0)
        shown = back @ np.clip(c.srgb_linear(*xyz), 0.0, 1.0)
        cost[srm] = c.difference(*c.lab(*xyz, *white), *c.lab(*(float(v) for v in shown), *white))
    assert max(cost, key=lambda s: cost[s]) == 11
    assert cost[11] == pytest.approx(6.9, abs=0.05)


def test_whole_numbers_and_truth_values_refuse_nan() -> None:
    for call in (lambda: c.swatch(NAN), lambda: c.swatch(5.0, NAN), lambda: c.srgb(NAN, 0.2, 0.2), lambda: c.srgb(0.2, 0.2, NAN)):
        with pytest.raises(wm.RangeError, match="not a number"):
            call()


def test_numbers_pass_nan() -> None:
    for value in (c.from_grist(NAN), c.from_grist.piecewise(NAN), c.ebc_from_srm(NAN), c.srm_from_lovibond(NAN), c.visual_ebc_from_lovibond(NAN), c.mcu_for_colour(NAN),
                  c.mcu_for_colour.piecewise(NAN), c.blend([NAN, 2.0], [1.0, 1.0]), c.grist_load([NAN], [1.0], 1.0), c.water_for_colour(NAN, 2.0, 3.0), c.spectrum(NAN),
                  c.transmittance(NAN, 1.0, 1.0), c.tristimulus(NAN).y, c.lab(0.2, NAN, 0.2, 1.0, 1.0, 1.0).l, c.chroma_hue(NAN, 0.0).hue, c.difference(50, NAN, 0, 50, 0, 0),
                  c.difference.cie76(50, 0, 0, 50, 0, NAN), c.linner_index(NAN, 0.1)):
        assert math.isnan(value)


# ---- words -----------------------------------------------------------------------------------------------------------


def test_half_open_words() -> None:
    """identity: the rule of this project, [low, high): a limit belongs to the darker word."""
    limits = {0: "very pale", 2: "straw", 3: "yellow", 4.5: "gold", 6: "amber", 9.5: "deep amber", 14: "copper", 17: "deep copper", 18.5: "brown", 22: "dark brown",
              30: "very dark brown", 35: "black", 40: "opaque black"}
    before = None
    for low, word in limits.items():
        assert c.word(low) == word
        if before:
            assert c.word(np.nextafter(low, 0.0).item()) == before
        before = word
    assert c.word(1e6) == "opaque black"


def test_bjcp_words() -> None:
    """BJCP 2021 Style Guidelines, colour reference: closed intervals as printed, in their order; gaps have no word."""
    _, rows = read_table("colour/bjcp_2021_colour_words.csv")
    for srm in np.arange(0.0, 60.0, 0.25):
        wanted = [r["word"] for r in rows if float(r["srm_low"]) <= srm <= float(r["srm_high"] or "inf")]
        assert c.word.bjcp_2021(float(srm)) == wanted
    assert c.word.bjcp_2021(18.7) == [] and len(c.word.bjcp_2021(30.0)) == 3


# ---- outside check: a general-purpose library of colour science ------------------------------------------------------


@pytest.fixture(scope="module")
def reference() -> Any:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        return pytest.importorskip("colour", reason="the package colour-science is not installed")


OBSERVERS = {"cie_1931": "CIE 1931 2 Degree Standard Observer", "cie_1964": "CIE 1964 10 Degree Standard Observer"}


def test_observers_and_illuminants_against_colour_science(reference: Any) -> None:
    """colour-science (BSD-3-Clause): its 1 nm observers and 5 nm illuminants at the rows of the tables."""
    for name, title in OBSERVERS.items():
        matching = reference.MSDS_CMFS[title]
        for w in WAVELENGTHS:
            assert getattr(c.observer, name)(w) == pytest.approx(tuple(matching[w]), abs=1e-9)
    for name, title in BOTH.items():
        light = reference.SDS_ILLUMINANTS[title]
        power = [c.tristimulus_from_transmittance(only(i), name).y / c.observer(w).ybar for i, w in enumerate(WAVELENGTHS)]
        for w, got in zip(WAVELENGTHS, power):
            assert got / power[36] == pytest.approx(float(light[w]) / float(light[560.0]), rel=1e-9)


@pytest.mark.parametrize("illuminant", ["d65", "c"])
@pytest.mark.parametrize("observer", ["cie_1931", "cie_1964"])
def test_sums_against_one_nanometre(reference: Any, illuminant: str, observer: str) -> None:
    """A sum every 1 nm over the tables of colour-science: 5 nm within CIEDE2000 0.002, 10 nm within 0.007 (1931) and 0.009 (1964), for D65.

    The fit to an observer has its largest error against the table every 1 nm: 0.0140, 0.0080, 0.0222 and 0.047, 0.027, 0.062.
    """
    w = np.arange(380.0, 781.0)
    matching = np.array([reference.MSDS_CMFS[OBSERVERS[observer]][x] for x in w])
    source = reference.SDS_ILLUMINANTS[BOTH[illuminant]]
    light = np.interp(w, source.wavelengths, source.values)
    ratio = np.array([c.spectrum(float(x)) for x in w])

    def fine(srm: float, path: float) -> Any:
        through = light * 10 ** (-srm / 12.7 * path * ratio)
        return (through[:, None] * matching).sum(axis=0) / (light * matching[:, 1]).sum()

    fit, errors = {"cie_1931": (c.observer.wyman_1931, (0.0140, 0.0080, 0.0222)), "cie_1964": (c.observer.wyman_1964, (0.047, 0.027, 0.062))}[observer]
    assert np.abs([fit(float(x)) for x in w] - matching).max(axis=0) == pytest.approx(errors, rel=0.01)

    ten = 0.0071 if observer == "cie_1931" else 0.0095
    white = fine(0.0, 1.0)
    for srm, path in ((2.0, 1.0), (8.0, 5.0), (15.0, 1.0), (30.0, 5.0), (40.0, 1.0)):
        fine_lab = c.lab(*(float(v) for v in fine(srm, path)), *(float(v) for v in white))
        for model, coarse_white, allowed in ((c.tristimulus.table_5nm, c.white_point.table_5nm, 0.002), (c.tristimulus.table_10nm, c.white_point.table_10nm, ten)):
            coarse = c.lab(*model(srm, path, illuminant, observer), *coarse_white(illuminant, observer))
            # Between its rows illuminant C is only known by a straight line here.
            assert c.difference(*coarse, *fine_lab) < (allowed if illuminant == "d65" else 0.02)


def test_lab_and_differences_against_colour_science(reference: Any) -> None:
    """colour-science: XYZ_to_Lab and both differences at random colours."""
    random = np.random.default_rng(20080712)
    white = c.white_point()
    chromaticity = (white.x / sum(white), white.y / sum(white))
    for _ in range(200):
        p, q = random.uniform(0.0, 1.1, 3), random.uniform(0.0, 1.1, 3)
        lp, lq = c.lab(*p.tolist(), *white), c.lab(*q.tolist(), *white)
        assert lp == pytest.approx(tuple(reference.XYZ_to_Lab(p, chromaticity)), abs=2e-6)
        assert c.xyz_from_lab(*lp, *white) == pytest.approx(tuple(reference.Lab_to_XYZ(np.array(lp), chromaticity)), abs=1e-8)
        assert c.difference(*lp, *lq) == pytest.approx(float(reference.delta_E(lp, lq, method="CIE 2000")), abs=1e-8)
        assert c.difference.cie76(*lp, *lq) == pytest.approx(float(reference.delta_E(lp, lq, method="CIE 1976")), abs=1e-10)


def test_screen_against_colour_science(reference: Any) -> None:
    """colour-science: the transfer function of sRGB and its matrices."""
    srgb = reference.RGB_COLOURSPACES["sRGB"]
    for u in np.linspace(0.0, 1.0, 101).tolist():
        assert c.srgb_encode(u) == pytest.approx(float(srgb.cctf_encoding(u)), abs=1e-12)
        assert c.srgb_decode(u) == pytest.approx(float(srgb.cctf_decoding(u)), abs=1e-12)
    printed = np.array(srgb.matrix_XYZ_to_RGB)
    seven, computed = (np.array([m(*row) for row in np.eye(3)]).T for m in (c.srgb_linear.seven_decimal, c.srgb_linear.primaries))
    assert min(np.abs(seven - printed).max(), np.abs(np.round(seven, 4) - printed).max()) < 5.1e-5
    derived = reference.normalised_primary_matrix(srgb.primaries, srgb.whitepoint)
    assert np.abs(computed @ derived - np.eye(3)).max() < 1e-10
