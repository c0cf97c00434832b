"""General-purpose reference libraries beside the models that carry the same quantity. Skipped where a library is missing."""

from __future__ import annotations

import numpy as np
import pytest

import wortmath as wm

from expression import read_table


def test_water_density_against_iapws95() -> None:
    iapws = pytest.importorskip("iapws")
    for t in (0.5, 4.0, 15.0, 20.0, 37.0, 60.0, 80.0, 99.0):
        rho = iapws.IAPWS95(T=t + 273.15, P=0.101325).rho
        assert wm.water.density(t) == pytest.approx(rho, abs=7.5e-4)  # the model holds at 0.1 MPa
        assert wm.water.density.ptb_1990(t) == pytest.approx(rho, abs=0.012)
        if t <= 40:
            assert wm.water.density.tanaka(t) == pytest.approx(rho, abs=0.0012)


def test_saturation_against_if97() -> None:
    iapws97 = pytest.importorskip("iapws.iapws97")
    for t in (5.0, 20.0, 60.0, 95.0, 100.0, 120.0):
        assert wm.water.saturation_pressure(t) == pytest.approx(10 * iapws97._PSat_T(t + 273.15), rel=1e-9)
    for p in (0.5, 0.7, 0.9, 1.0, 1.01325, 1.1):
        assert wm.water.boiling_temperature(p) == pytest.approx(iapws97._TSat_P(p / 10) - 273.15, abs=1e-7)


def test_atmosphere_against_fluids() -> None:
    atmosphere = pytest.importorskip("fluids.atmosphere")
    for altitude in (-400.0, 0.0, 300.0, 1609.0, 3000.0, 5500.0):
        # that library takes geometric altitude and the same standard of 1976
        standard = atmosphere.ATMOSPHERE_1976(altitude).P / 1e5
        assert wm.atmosphere.pressure(altitude) == pytest.approx(standard, rel=6e-4)


def test_water_index_against_chemicals() -> None:
    chemicals = pytest.importorskip("chemicals")
    for t, rho, nm in ((20.0, 998.2, 589.3), (0.5, 999.8, 589.3), (60.0, 983.2, 632.8), (25.0, 997.0, 404.4)):
        other = chemicals.RI_IAPWS(t + 273.15, rho, nm * 1e-9)
        assert wm.refractometer.water_index(t, rho, nm) == pytest.approx(other, abs=1e-9)


def test_trade_units_against_scipy() -> None:
    constants = pytest.importorskip("scipy.constants")
    for unit, kilograms in (("lb", constants.lb), ("oz", constants.oz)):
        assert state(f'mass = "1 {unit}"')["mass_g"] == pytest.approx(1e3 * kilograms, rel=1e-12)
    for unit, cubic_metres in (("gal", constants.gallon), ("impgal", constants.gallon_imp), ("floz", constants.fluid_ounce), ("impfloz", constants.fluid_ounce_imp)):
        assert state(f'volume = "1 {unit}"')["volume_l"] == pytest.approx(1e3 * cubic_metres, rel=1e-12)
    for unit, pascals in (("psi", constants.psi), ("atm", constants.atm), ("mmHg", constants.mmHg)):
        text = f'[batch]\nname = "one"\nbarometer = "{1e5 / pascals!r} {unit}"\n[[step]]\ndo = "note"\ntext = "one bar"\n'
        # the millimetre of mercury is the conventional one here, and the torr (1/760 atm) there: 1.4e-7 apart
        assert wm.batch.read_text(text).forecast().barometer_bar == pytest.approx(1.0, rel=2e-7 if unit == "mmHg" else 1e-9)


def state(key: str) -> dict[str, float]:
    found: dict[str, float] = wm.batch.read_text(f'[batch]\nname = "one"\n[[step]]\ndo = "water"\n{key}\n').forecast().steps[0]["after"]
    return found


def test_colour_difference_against_colour_science() -> None:
    colour = pytest.importorskip("colour")
    rng = np.random.default_rng(3)
    for _ in range(50):
        one, other = ([rng.uniform(5, 95), rng.uniform(-60, 60), rng.uniform(-60, 60)] for _ in range(2))
        assert wm.colour.difference(*one, *other) == pytest.approx(float(colour.delta_E(one, other, method="CIE 2000")), rel=1e-6)


def test_gas_and_alcohol_of_fermentation_against_chemistry() -> None:
    """Gay-Lussac's equation from molar masses: two molecules of CO2 for two of ethanol. Balling's yield is within 1 % of it."""
    constants = pytest.importorskip("chemicals.elements")
    ethanol, co2 = (constants.molecular_weight(atoms) for atoms in ({"C": 2, "H": 6, "O": 1}, {"C": 1, "O": 2}))
    assert wm.attenuation.co2_released.balling(4.0) == pytest.approx(4.0 / 100 * co2 / ethanol, rel=0.01)


def test_the_club_sheet() -> None:
    """A club's sheet of hydrometer corrections, calibration 60 degF: half a point for all 16 rows, as its head says."""
    rows = read_table("questions/hydrometer_club_sheet_60F.csv")[1]
    assert len(rows) == 16
    for row in rows:
        celsius = (float(row["sample_F"]) - 32) / 1.8
        corrected = wm.hydrometer.correct.lyons_quadratic(1.050, celsius, policy="extrapolate")
        assert 1000 * (corrected - 1.050) == pytest.approx(float(row["points"]), abs=0.5)
