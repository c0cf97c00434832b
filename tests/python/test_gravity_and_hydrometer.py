"""Water, air pressure, gravity scales, hydrometer and mass balance: what the tables of tests/reference/extract do not say.

Each test names its source; "identity" means that it follows from the definitions alone. "derived" figures were computed
for this project from the ICUMSA polynomial and the PTB water of 1990 by other code than the library's.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable

import pytest

import wortmath as wm

water, air, gravity, hydrometer, balance, thermal = wm.water, wm.atmosphere, wm.gravity, wm.hydrometer, wm.balance, wm.thermal
SIXTY_F = 15 + 5 / 9
SCALES = {
    "gravity_20_20": (20, 20, 1.2),
    "gravity_20_20_true": (20, 20, 0),
    "gravity_20_4": (20, 4, 0),
    "gravity_17_5_17_5": (17.5, 17.5, 0),
    "gravity_15_15": (15, 15, 0),
    "gravity_15_4": (15, 4, 0),
    "gravity_60F_60F": (SIXTY_F, SIXTY_F, 0),
    "gravity_60F_60F_apparent": (SIXTY_F, SIXTY_F, 1.2),
}


def steps(lo: float, hi: float, n: int = 41) -> list[float]:
    return [lo + (hi - lo) * i / (n - 1) for i in range(n)]


# ---- water -----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("t,rho", [(4, 999.971995), (15, 999.099064), (SIXTY_F, 999.013466), (17.5, 998.685887), (20, 998.203123)])
def test_water_of_the_gravity_scales(t: float, rho: float) -> None:
    """Bettin and Spieweck 1990, evaluated by hand (derived)."""
    assert water.density.ptb_1990(t) == pytest.approx(rho, abs=6e-7)


def test_water_formulas_cannot_be_told_apart_by_a_brewer() -> None:
    """Independent formulas: Kell 1975, Tanaka 2001, IAPWS SR6-08, PTB 1990."""
    for t in steps(0, 40):
        values = [m(t) for m in (water.density.iapws_sr6_08, water.density.tanaka, water.density.kell, water.density.ptb_1990)]
        assert max(values) - min(values) < 0.0062


def test_misprints_of_kell_are_not_in_the_formula() -> None:
    """Misprints in circulation: +7.987e-3 in the numerator is 4.8 kg/m3 off at 20 degC, 16.897850e-3 in the denominator 0.27."""
    assert water.density.kell(20) == pytest.approx(water.density.iapws_sr6_08(20), abs=0.005)
    assert water.density.kell(100) - water.density.iapws_sr6_08(100) == pytest.approx(0.0146, abs=0.002)


def test_tanaka_ends_where_it_goes_wrong() -> None:
    """Range of the source 0 to 40 degC; it would be 0.017 kg/m3 off at 60 and 0.234 at 100 degC."""
    with pytest.raises(wm.RangeError, match="outside the validated range"):
        water.density.tanaka(45)
    assert water.density.tanaka(50, policy="extrapolate") == pytest.approx(water.density.iapws_sr6_08(50), abs=0.02)
    with pytest.raises(wm.RangeError):
        water.density.tanaka(60, policy="extrapolate")


def test_boiling_and_condensing_are_one_line() -> None:
    """identity: equations 30 and 31 of IAPWS R7-97 solve the same quadratic."""
    for t in [*steps(0, 373.946, 200)]:
        assert water.boiling_temperature(water.saturation_pressure(t)) == pytest.approx(t, abs=1e-9)
    assert water.boiling_temperature(1.01325) == pytest.approx(99.97430, abs=6e-6)
    assert water.saturation_pressure(100) == pytest.approx(1.01417978, abs=6e-9)


def test_two_saturation_lines_that_share_nothing() -> None:
    """IAPWS R7-97 against IAPWS SR1-86(1992)."""
    for t in steps(0.01, 370, 60):
        assert water.saturation_pressure.if97(t) == pytest.approx(water.saturation_pressure.iapws_sr1_86(t), rel=3e-4)
    assert water.saturation_pressure.iapws_sr1_86(373.946) == pytest.approx(220.64, rel=1e-9)  # the critical point


def test_boiling_temperature_is_never_extrapolated() -> None:
    for p in (0.006, 221.0):
        with pytest.raises(wm.RangeError):
            water.boiling_temperature(p, policy="extrapolate")
    with pytest.raises(wm.RangeError, match="1013 mbar is 1.013 bar"):
        water.boiling_temperature(1013)
    assert "closed heated vessel" in water.boiling_temperature.if97.danger


def test_pressure_factor_is_one_at_one_atmosphere() -> None:
    """identity"""
    for t in steps(0, 40, 9):
        assert water.pressure_factor(t, 1.01325) == pytest.approx(1, abs=1e-15)
    assert water.density.tanaka(20) * water.pressure_factor(20, 5) > water.density.tanaka(20)


def test_air_makes_water_lighter() -> None:
    """Tanaka and others 2001: -4.612e-3 + 0.106e-3 t."""
    assert water.dissolved_air(0) == pytest.approx(-4.612e-3, abs=1e-15)
    assert water.dissolved_air(20) == pytest.approx(-2.492e-3, abs=1e-15)
    with pytest.raises(wm.RangeError):
        water.dissolved_air(26)


# ---- air pressure ----------------------------------------------------------------------------------------------------


def test_boiling_point_on_a_mountain() -> None:
    """U.S. Standard Atmosphere 1976 and IAPWS R7-97 (derived)."""
    for z, t in [(500, 98.31), (1000, 96.65), (1609, 94.62), (2000, 93.32), (3000, 89.98)]:
        assert water.boiling_temperature(air.pressure(z)) == pytest.approx(t, abs=0.0051)


def test_rule_of_one_degree_fahrenheit_per_500_feet_reads_low() -> None:
    """common practice, no source: 0.3 K low at 1000 m, 0.9 K at 3000 m."""
    for z, low in [(1000, 0.3), (3000, 0.9)]:
        rule = 100 - z / 0.3048 / 500 / 1.8
        assert water.boiling_temperature(air.pressure(z)) - rule == pytest.approx(low, abs=0.08)


def test_altitude_and_pressure_are_inverse() -> None:
    """identity, at the ends of both regions too"""
    for z in steps(-2000, 10000, 49):
        assert air.altitude(air.pressure(z)) == pytest.approx(z, abs=1e-6)
    for z in (-5000, 11019):
        with pytest.raises(wm.RangeError):
            air.pressure(z)
        assert air.altitude(air.pressure(z, policy="extrapolate"), policy="extrapolate") == pytest.approx(z, abs=1e-6)
    for z in (-5001, 11020):  # above 11 km the next layer of the standard begins
        with pytest.raises(wm.RangeError):
            air.pressure(z, policy="extrapolate")


def test_station_pressure_is_in_proportion_to_the_day() -> None:
    """identity"""
    for z in (0, 700, 1609):
        assert air.station_pressure(1.01325, z) == pytest.approx(air.pressure(z), rel=1e-15)
        assert air.station_pressure(1.03, z) / air.station_pressure(1.00, z) == pytest.approx(1.03, rel=1e-12)
    with pytest.raises(wm.RangeError, match="is it mbar or hPa"):
        air.station_pressure(1013, 500)


# ---- gravity scales --------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("scale", SCALES)
def test_every_scale_by_its_definition(scale: str) -> None:
    """identity: density over density of water, less the air; and back."""
    liquid, of_water, a = SCALES[scale]
    for w in (0, 0.05, 0.12, 0.25, 0.40):
        rho = wm.extract.density.icumsa(w, liquid)
        s = (rho - a) / (water.density.ptb_1990(of_water) - a)
        assert gravity.from_density(rho, of_water, a) == pytest.approx(s, abs=1e-15)
        assert gravity.to_density(s, of_water, a) == pytest.approx(rho, rel=1e-15)
        assert gravity.convert(s, scale, "gravity_20_20") == pytest.approx(wm.extract.to_gravity.icumsa(100 * w), abs=2e-15)


@pytest.mark.parametrize("one,other", list(itertools.permutations(SCALES, 2)))
def test_conversion_and_back(one: str, other: str) -> None:
    """identity"""
    for s in (0.992, 1.0, 1.010, 1.050, 1.120, 1.340):
        there = gravity.convert(s, one, other, policy="extrapolate")
        assert gravity.convert(there, other, one, policy="extrapolate") == pytest.approx(s, abs=4e-15)


def test_water_reads_one_where_both_temperatures_agree() -> None:
    """identity: the same water stands above and below the line."""
    for scale, (liquid, of_water, _) in SCALES.items():
        s = gravity.convert(1.0, "gravity_20_20", scale)
        assert s == pytest.approx(1.0, abs=1e-15) if liquid == of_water else s < 0.9995


TRAPS = {  # derived: degP by which the cubic of ASBC is wrong if it is fed another scale than SG 20/20, at 5, 10, 12, 16, 20, 25, 30 degP
    "gravity_20_20_true": (-0.006, -0.012, -0.014, -0.018, -0.022, -0.027, -0.032),
    "gravity_20_4": (-0.458, -0.457, -0.456, -0.455, -0.453, -0.451, -0.448),
    "gravity_17_5_17_5": (0.007, 0.013, 0.015, 0.020, 0.024, 0.028, 0.032),
    "gravity_15_15": (0.021, 0.040, 0.048, 0.062, 0.075, 0.090, 0.104),
    "gravity_15_4": (-0.202, -0.179, -0.170, -0.153, -0.137, -0.119, -0.101),
    "gravity_60F_60F": (0.018, 0.034, 0.040, 0.052, 0.063, 0.076, 0.087),
    "gravity_60F_60F_apparent": (0.024, 0.046, 0.054, 0.070, 0.086, 0.103, 0.120),
}


@pytest.mark.parametrize("scale", TRAPS)
def test_what_a_wrong_scale_costs(scale: str) -> None:
    for plato, error in zip((5, 10, 12, 16, 20, 25, 30), TRAPS[scale]):
        fed, right = (wm.extract.to_gravity.icumsa(plato, *SCALES[x]) for x in (scale, "gravity_20_20"))
        asbc = wm.extract.from_gravity.asbc
        assert asbc(fed, policy="extrapolate") - asbc(right, policy="extrapolate") == pytest.approx(error, abs=0.00051)


def test_air_and_vacuum() -> None:
    """identity; at 20 degC the apparent excess is 1.001204 times the true one (derived)."""
    for s in (0.992, 1.0, 1.05, 1.3):
        apparent = gravity.apparent_from_true(s)
        assert gravity.true_from_apparent(apparent) == pytest.approx(s, abs=1e-15)
        assert apparent == pytest.approx(gravity.convert(s, "gravity_20_20_true", "gravity_20_20"), abs=1e-15)
        assert apparent - 1 == pytest.approx(1.001204 * (s - 1), abs=1e-6)
    assert gravity.true_from_apparent(1.05, 20, 0) == 1.05


def test_refusals_of_gravity() -> None:
    for s in (0.989, 1.351):
        with pytest.raises(wm.RangeError, match="outside the validated range"):
            gravity.to_density(s)
        assert math.isfinite(gravity.to_density(s, policy="extrapolate"))
        assert math.isfinite(gravity.convert(s, "gravity_15_4", "gravity_20_20", policy="extrapolate"))
    for s in (0.949, 1.501):
        with pytest.raises(wm.RangeError):
            gravity.convert(s, "gravity_15_4", "gravity_20_20", policy="extrapolate")
    with pytest.raises(wm.RangeError, match="is it 1.0480"):
        gravity.to_points(1048)
    with pytest.raises(wm.RangeError, match="is it degrees Plato"):
        gravity.to_points(12)
    with pytest.raises(wm.RangeError, match="between 0.990 and 1.35"):
        gravity.from_density(1400)
    assert gravity.from_density(1400, policy="extrapolate") == pytest.approx(1.40300, abs=1e-5)
    with pytest.raises((TypeError, ValueError)):
        gravity.convert(1.05, "gravity_20_20", "plato")
    assert math.isnan(gravity.to_density(math.nan))


# ---- trade units -----------------------------------------------------------------------------------------------------

TRADE = [
    (gravity.to_points, gravity.from_points, 50.0),
    (gravity.to_oechsle, gravity.from_oechsle, 50.0),
    (gravity.to_belgian, gravity.from_belgian, 5.0),
    (gravity.to_twaddell, gravity.from_twaddell, 10.0),
    (gravity.to_brewers_pounds, gravity.from_brewers_pounds, 18.0),
    (gravity.to_baume.modulus_145, gravity.from_baume.modulus_145, 145 - 145 / 1.05),
    (gravity.to_baume.modulus_144_3, gravity.from_baume.modulus_144_3, 144.3 - 144.3 / 1.05),
    (gravity.to_baume.gerlach, gravity.from_baume.gerlach, 144.32 - 144.32 / 1.05),
]


@pytest.mark.parametrize("to,back,at_1050", TRADE)
def test_trade_units(to: Callable[..., float], back: Callable[..., float], at_1050: float) -> None:
    """identity, at the ends of both regions too; the value at 1.050 by the definition of the unit"""
    assert to(1.05) == pytest.approx(at_1050, rel=1e-12)
    assert to(1.0) == pytest.approx(0, abs=1e-13)
    for s in (0.990, 1.0, 1.048, 1.35):
        assert back(to(s)) == pytest.approx(s, abs=1e-15)
    for s in (0.95, 1.50):
        assert back(to(s, policy="extrapolate"), policy="extrapolate") == pytest.approx(s, abs=1e-15)
    with pytest.raises(wm.RangeError):
        back(to(1.40, policy="extrapolate"))


def test_printed_examples_of_trade_units() -> None:
    """1.048 is 4.8 Belgian degrees; a brewers' pound is 2.778 points (A Practical Treatise on Brewing, 4th ed.)."""
    assert gravity.to_belgian(1.048) == pytest.approx(4.8, abs=1e-12)
    assert 1000 * (gravity.from_brewers_pounds(1) - 1) == pytest.approx(2.778, abs=0.0005)


def test_klosterneuburg_scale() -> None:
    """identity; the factors 5 and 4.86 in circulation are other scales."""
    for k in steps(0, 30, 31):
        assert gravity.kmw_from_oechsle(gravity.oechsle_from_kmw(k)) == pytest.approx(k, abs=1e-12)
    assert gravity.oechsle_from_kmw(17) == pytest.approx(17 * 4.914, rel=1e-12)
    assert abs(gravity.oechsle_from_kmw(17) - 5 * 17) > 1
    for k in (-0.1, 30.1):
        with pytest.raises(wm.RangeError):
            gravity.oechsle_from_kmw(k, policy="extrapolate")


def test_a_gallon_of_water() -> None:
    """Water at 20 degC: 8.322 lb in air (NBS C440), 8.330 lb of mass; brass and steel weights differ by 7e-6."""
    rho = water.density.ptb_1990(20)
    assert gravity.pounds_per_us_gallon.in_air(rho) == pytest.approx(8.322, abs=0.0005)
    assert gravity.pounds_per_us_gallon.mass(rho) == pytest.approx(8.330, abs=0.0005)
    steel = gravity.pounds_per_us_gallon.in_air(rho, 1.2, 8000)
    assert steel / gravity.pounds_per_us_gallon.in_air(rho) - 1 == pytest.approx(7e-6, abs=5e-7)
    assert gravity.pounds_per_us_gallon.in_air(rho, 0) == gravity.pounds_per_us_gallon.mass(rho)


# ---- hydrometer ------------------------------------------------------------------------------------------------------


def test_hydrometer_worked_readings() -> None:
    """derived: 1.0436 at 40 degC, 20/20 apparent; 11.0 degP read at 30 degC."""
    assert hydrometer.correct(1.0436, 40) == pytest.approx(1.0500011, abs=6e-8)
    assert hydrometer.correct_plato(11.0, 30) == pytest.approx(11.66637, abs=6e-6)


def test_points_to_add_for_a_wort_of_1050() -> None:
    """derived: a 20/20 true instrument; 0.12 % more on the apparent scale."""
    for t, points in [(0, -2.64), (10, -1.90), (15, -1.08), (25, 1.31), (30, 2.82), (40, 6.39), (50, 10.63), (60, 15.47)]:
        reading = 1.050 - points / 1000
        assert hydrometer.correct(reading, t, 20, 20, 0) == pytest.approx(1.050, abs=6e-6)


@pytest.mark.parametrize("t_cal", [15, SIXTY_F, 17.5, 20])
def test_nothing_to_correct_at_calibration(t_cal: float) -> None:
    """identity"""
    for s in (0.992, 1.0, 1.012, 1.05, 1.12, 1.34):
        assert hydrometer.correct(s, t_cal, t_cal) == pytest.approx(s, abs=1e-14)
        assert hydrometer.correct.lyons_difference(s, t_cal, t_cal) == pytest.approx(s, abs=1e-15)
        assert hydrometer.correct.ratio_cubic(s, t_cal, t_cal) == pytest.approx(s, abs=1e-15)
        assert hydrometer.correct.water_only(s, t_cal, t_cal) == s
    for p in (-2.5, 0, 2.5, 12, 30, 70):
        assert hydrometer.correct_plato(p, t_cal, t_cal) == pytest.approx(p, abs=1e-11)


def test_two_kinds_of_stem_agree() -> None:
    """identity: the same glass in the same wort, marked in gravity or in degrees Plato."""
    for p, t in itertools.product((-2, 0, 3, 12, 25, 60), (2, 15, 33, 58)):
        s = wm.extract.to_gravity.icumsa(p)
        by_gravity = wm.extract.from_gravity.icumsa(hydrometer.correct(s, t))
        assert hydrometer.correct_plato(p, t) == pytest.approx(by_gravity, abs=1e-9)


def test_water_temperature_follows_the_calibration_unless_given() -> None:
    """identity: an instrument of 15/15 is not one of 15/4."""
    assert hydrometer.correct(1.05, 25, 15) == hydrometer.correct(1.05, 25, 15, 15)
    assert hydrometer.correct(1.05, 25, 15, None) == hydrometer.correct(1.05, 25, 15)
    assert abs(hydrometer.correct(1.05, 25, 15, 4) - hydrometer.correct(1.05, 25, 15)) > 1e-6


def test_warmer_always_adds_more_above_the_maximum_of_water() -> None:
    """identity: above 4 degC a warm liquid is lighter."""
    for s in (1.0, 1.05, 1.1):
        corrected = [hydrometer.correct(s, t) for t in steps(8, 60)]
        assert all(b > a for a, b in zip(corrected, corrected[1:]))


def test_strong_wort_needs_more() -> None:
    """derived: at 50 degC +9.45 points for 1.000 and +11.32 for 1.080 (true 20/20)."""
    for s, points in [(1.000, 9.45), (1.080, 11.32)]:
        assert hydrometer.correct(s - points / 1000, 50, 20, 20, 0) == pytest.approx(s, abs=6e-6)


def test_what_small_errors_cost() -> None:
    """derived: glass of 10e-6 per K, one kelvin of the thermometer, and a calibration of 15 or 15 5/9 degC taken for 20."""
    for t, points in [(30, 0.16), (60, 0.65)]:
        glass = hydrometer.correct(1.050, t, 20, 20, 0, 10e-6) - hydrometer.correct(1.050, t, 20, 20, 0)
        assert 1000 * glass == pytest.approx(points, abs=0.006)
    for t, points in [(20, 0.24), (30, 0.33), (60, 0.54)]:
        a, b = (hydrometer.correct(1.050, t + d, policy="extrapolate") for d in (0, 1))
        assert 1000 * (b - a) == pytest.approx(points, abs=0.006)
    for t_cal, points in [(15, 1.1), (SIXTY_F, 1.0)]:
        assert abs(1000 * (hydrometer.correct(1.050, 20, t_cal, policy="raise") - 1.050)) == pytest.approx(points, abs=0.06)


def test_published_polynomials_against_glass_and_liquid() -> None:
    """derived: for a liquid of 1.050 and an instrument of 20 degC, points by which the older formulas differ."""

    def difference(model: Callable[..., float], t: float) -> float:
        reading = 1.050
        for _ in range(60):  # what the instrument reads in it
            reading -= hydrometer.correct(reading, t, policy="extrapolate") - 1.050
        return 1000 * (model(reading, t, 20, policy="extrapolate") - 1.050)

    for t, points in [(10, 0.42), (30, -0.35), (40, -0.56), (50, -0.64), (100, -0.29)]:
        assert difference(hydrometer.correct.lyons_difference, t) == pytest.approx(points, abs=0.006)
    for t, points, room in [(10, 0.36, 0.006), (35, -0.26, 0.006), (60, 0.23, 0.006), (80, 1.1, 0.05), (100, 1.9, 0.05)]:
        assert difference(hydrometer.correct.ratio_cubic, t) == pytest.approx(points, abs=room)


def test_lyons_is_not_zero_at_its_own_temperature() -> None:
    """C. Lyons, Homebrew Digest 963 (1992): +0.11 points at 59 degF, +0.19 at 60."""
    assert 1000 * (hydrometer.correct.lyons(1.0, 15) - 1) == pytest.approx(0.11, abs=0.006)
    assert 1000 * (hydrometer.correct.lyons(1.0, SIXTY_F) - 1) == pytest.approx(0.19, abs=0.006)
    assert hydrometer.correct.lyons(1.0, 60) == pytest.approx(1 + (1.313454 - 0.132674 * 140 + 2.057793e-3 * 140**2 - 2.627634e-6 * 140**3) / 1000, abs=1e-15)


def test_refusals_of_the_hydrometer() -> None:
    with pytest.raises(wm.RangeError, match="outside the validated range .0 to 60 degC"):
        hydrometer.correct(1.05, 75)
    assert math.isfinite(hydrometer.correct(1.03, 75, policy="extrapolate"))
    for t in (-6, 103):
        with pytest.raises(wm.RangeError):
            hydrometer.correct(1.05, t, policy="extrapolate")
        with pytest.raises(wm.RangeError):
            hydrometer.correct_plato(12, t, policy="extrapolate")
    with pytest.raises(wm.RangeError, match="is it degF"):
        hydrometer.correct(1.05, 140)
    with pytest.raises(wm.RangeError, match="is it degrees Plato"):
        hydrometer.correct(12, 25)
    with pytest.raises(wm.RangeError, match="is it a gravity"):
        hydrometer.correct_plato(1048, 25)
    with pytest.raises(wm.RangeError, match="no wort carries the instrument"):
        hydrometer.correct(0.97, -5, 102, policy="extrapolate")
    with pytest.raises(wm.RangeError, match="glass_expansion"):
        hydrometer.correct(1.05, 25, glass_expansion=25)
    assert math.isnan(hydrometer.correct(math.nan, 25))


def test_own_error_of_an_instrument() -> None:
    """derived: 1.002 in water, 1.043 in 10 degP (1.0400): a reading of 1.012 is 1.00976."""
    assert hydrometer.calibrate.two_point(1.012, 1.002, 1.000, 1.043, 1.040) == pytest.approx(1.00976, abs=6e-6)
    assert hydrometer.calibrate.two_point(1.002, 1.002, 1.000, 1.043, 1.040) == pytest.approx(1.000, abs=1e-15)
    assert hydrometer.calibrate.two_point(1.043, 1.002, 1.000, 1.043, 1.040) == pytest.approx(1.040, abs=1e-15)
    assert hydrometer.calibrate(1.012, 1.002) == pytest.approx(1.010, abs=1e-15)
    assert wm.extract.to_gravity.icumsa(10) == pytest.approx(1.0400, abs=5e-5)  # the second liquid
    for high in (1.021, 1.002, 0.990):
        with pytest.raises(wm.RangeError, match="at least 0.020 above"):
            hydrometer.calibrate.two_point(1.012, 1.002, 1.000, high, 1.040)
    assert math.isfinite(hydrometer.calibrate.two_point(1.012, 1.002, 1.000, 1.022, 1.020))
    with pytest.raises(wm.RangeError):
        hydrometer.calibrate(1.21, 1.002)


def test_surface_tension() -> None:
    """derived: 6 mm stem, 60 g, -20 mN/m: +6.4e-4; a lower tension lets it read high."""
    assert hydrometer.surface_tension_shift(6, 60, -20) == pytest.approx(6.4e-4, abs=5e-6)
    assert hydrometer.surface_tension_shift(6, 60, 20) == -hydrometer.surface_tension_shift(6, 60, -20)
    with pytest.raises(wm.RangeError):
        hydrometer.surface_tension_shift(6, 0, -20)


# ---- balance ---------------------------------------------------------------------------------------------------------

WORTS = [(20000, 12.5, 8.0), (5000, 24.0, 1.5), (31000, 10.0, 9.999)]


@pytest.mark.parametrize("m,strong,weak", WORTS)
def test_every_change_can_be_undone(m: float, strong: float, weak: float) -> None:
    """identity: extract is conserved by water, and added by solids."""
    x = balance.dilute(m, strong, weak)
    assert balance.blend(m, strong, x, 0) == pytest.approx(weak, rel=1e-12)
    assert balance.boil_down(m + x, weak, strong) == pytest.approx(x, rel=1e-9)
    assert balance.after_boil(m + x, weak, x) == pytest.approx(strong, rel=1e-12)
    for solids in (0.80, 0.96, 0.999):
        a = balance.strengthen(m, weak, strong, solids)
        assert balance.blend(m, weak, a, 100 * solids) == pytest.approx(strong, rel=1e-12)
    r = balance.blend_ratio(strong, weak, (strong + 3 * weak) / 4)
    assert r == pytest.approx(1 / 3, rel=1e-9)
    assert balance.dilute(m, strong, strong) == pytest.approx(0, abs=1e-9)
    assert balance.boil_down(m, strong, strong) == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("t", [4, 20, 65, 98])
def test_litres_are_the_same_balance_through_density(t: float) -> None:
    """identity, with extract.density.icumsa"""
    v, strong, weak = 20.0, 16.0, 11.0

    def grams(litres: float, plato: float) -> float:
        rho: float = wm.extract.density.icumsa(plato / 100, t)
        return litres * rho

    x = balance.dilute.volume(v, strong, weak, t)
    assert x * water.density.ptb_1990(t) == pytest.approx(balance.dilute(grams(v, strong), strong, weak), rel=1e-12)
    blended = balance.blend.volume(v, strong, x, 0, t)
    assert blended.extract == pytest.approx(weak, rel=1e-12)
    assert blended.volume < v + x  # volumes do not add up
    assert blended.volume == pytest.approx(v + x, rel=1e-3)
    left = balance.boil_down.volume(blended.volume, weak, strong, t)
    assert left == pytest.approx(v, rel=1e-12)
    assert balance.strengthen.volume(v, weak, strong, 0.97, t) == pytest.approx(balance.strengthen(grams(v, weak), weak, strong, 0.97), rel=1e-12)


def test_extract_made_up_to_a_volume() -> None:
    """identity: degP x density is grams per litre; 1 lb made up to 1 US gal is 11.475 degP, added to it 10.718 (derived)."""
    for p, t in itertools.product((0, 0.1, 5, 12, 30, 60, 89.9), (-5, 0, 20, 65, 100, 105)):
        c = p / 100 * wm.extract.density.icumsa(p / 100, t, policy="extrapolate")
        assert balance.top_up(c * 20, 20, t, policy="extrapolate") == pytest.approx(p, abs=1e-11)
    lb, gal = 453.59237, 3.785411784
    assert balance.blend(lb, 99.9999999, gal * water.density.ptb_1990(20), 0) == pytest.approx(10.718, abs=0.0006)
    with pytest.raises(wm.RangeError, match="stronger than 90 degP"):
        balance.top_up(1400, 1, 20)
    with pytest.raises(wm.RangeError, match="stronger than 90 degP"):
        balance.top_up(1e9, 1, 20)


def test_linear_rule_for_gravity_is_an_approximation() -> None:
    """derived: 5 L of 20 degP and 5 L of water, true 20/20: 1.04146 by the rule, 1.04164 exact, 9.998 L."""
    s = wm.extract.to_gravity.icumsa(20, 20, 20, 0)
    assert balance.blend.points_volume(5, s, 5, 1) == pytest.approx(1.04146, abs=6e-6)
    exact = balance.blend.volume(5, 20, 5, 0)
    assert exact.volume == pytest.approx(9.998, abs=0.0005)
    assert wm.extract.to_gravity.icumsa(exact.extract, 20, 20, 0) == pytest.approx(1.04164, abs=6e-6)
    assert balance.blend.points_volume(3, 1.05, 7, 1.05) == pytest.approx(1.05, abs=1e-15)


def test_refusals_of_the_balance() -> None:
    refused: list[Callable[[str], float]] = [
        lambda how: balance.dilute(1000, 12, 13, policy=how),
        lambda how: balance.dilute(1000, 12, 0, policy=how),
        lambda how: balance.dilute.volume(20, 12, 12.5, policy=how),
        lambda how: balance.boil_down(1000, 12, 11, policy=how),
        lambda how: balance.boil_down.volume(20, 12, 11, policy=how),
        lambda how: balance.strengthen(1000, 12, 11, 0.97, policy=how),
        lambda how: balance.strengthen(1000, 12, 97, 0.97, policy=how),
        lambda how: balance.strengthen.volume(20, 12, 80, 0.8, policy=how),
        lambda how: balance.blend_ratio(12, 16, 16, policy=how),
        lambda how: balance.blend_ratio(12, 16, 11, policy=how),
        lambda how: balance.blend_ratio(12, 12, 12, policy=how),
        lambda how: balance.after_boil(1000, 12, 880, policy=how),
        lambda how: balance.after_boil(1000, 12, 2000, policy=how),
        lambda how: balance.blend(0, 12, 1000, 0, policy=how),
        lambda how: balance.blend(1000, 100, 1000, 0, policy=how),
        lambda how: balance.blend(1000, -0.1, 1000, 0, policy=how),
        lambda how: balance.after_boil(1000, 12, -1, policy=how),
    ]
    for call, how in itertools.product(refused, ("raise", "extrapolate")):
        with pytest.raises(wm.RangeError):
            call(how)
    with pytest.raises(wm.RangeError, match="80 % is 0.8"):
        balance.strengthen(1000, 12, 14, 80)
    with pytest.raises(wm.RangeError, match="water only weakens"):
        balance.dilute(1000, 12, 13)
    assert balance.after_boil(1000, 12, 0) == 12


# ---- heat ------------------------------------------------------------------------------------------------------------


def test_peacock_is_the_slope_of_its_enthalpy() -> None:
    """S. Peacock, Int. Sugar J. 97 (1995) 571; with x/10 for x/100 in the last bracket, as printed, it would be 1.35 at 12 degP, 20 degC."""

    def enthalpy(x: float, t: float, divisor: float = 100) -> float:
        return 2.326 * (x / 10 * (100 + x) / (900 - 8 * x) + 1.8 * t * (1 - x / divisor * (0.6 - 0.0009 * t)))

    for x, t in itertools.product((0, 12, 30, 60), (5, 20, 65, 95)):
        slope = (enthalpy(x, t + 1) - enthalpy(x, t - 1)) / 2
        assert thermal.specific_heat.peacock(x, t) == pytest.approx(slope, abs=1e-9)
    assert (enthalpy(12, 21, 10) - enthalpy(12, 19, 10)) / 2 == pytest.approx(1.35, abs=0.01)
    assert thermal.specific_heat.peacock(12, 20) == pytest.approx(3.90, abs=0.005)


def test_specific_heats_in_circulation_are_low() -> None:
    """4.19 - 0.033 x and 4.186 (1 - 0.0078 x): 0.11 kJ/(kg K) low at 12 degP, 0.28 at 30."""
    for x, low, room in [(12, 0.11, 0.012), (30, 0.28, 0.04)]:
        for slip in (4.19 - 0.033 * x, 4.186 * (1 - 0.0078 * x)):
            assert thermal.specific_heat(x, 20) - slip == pytest.approx(low, abs=room)
    assert thermal.specific_heat(12, 20) == pytest.approx(3.9036, abs=5e-5)
    assert thermal.specific_heat(12, 100) == pytest.approx(3.9756, abs=5e-5)
    assert thermal.specific_heat(12, 20, 0.9) < thermal.specific_heat(12, 20)
    with pytest.raises(wm.RangeError, match="90 % is 0.9"):
        thermal.specific_heat(12, 20, 90)


def test_boiling_point_elevation() -> None:
    """Starzak and Peacock 1997 with IAPWS-IF97: the activity times the pressure of water is the pressure (identity)."""
    for x, p in itertools.product((0, 5, 12, 30, 60), (0.5, 0.7, 1.01325, 1.1)):
        rise = thermal.boiling_point_elevation(x, p)
        t = water.boiling_temperature(p) + rise + 273.15
        y = (x / 342.2965) / (x / 342.2965 + (100 - x) / 18.015268)
        activity = (1 - y) * math.exp(-(2121.4052 / t) * y**2 * (1 - 1.0038 * y - 0.24653 * y**2))
        assert activity * water.saturation_pressure(t - 273.15) == pytest.approx(p, rel=1e-12)
        ideal = thermal.boiling_point_elevation.ideal_solution(min(x, 40), 342.2965, p)
        assert ideal <= thermal.boiling_point_elevation(min(x, 40), p) + 1e-9  # sucrose binds water
    assert thermal.boiling_point_elevation(0, 1) == pytest.approx(0, abs=1e-9)


def test_peacock_1995_is_not_for_wort() -> None:
    """Half the true value at 5 degP; one copy prints 374 for 374.3, less than 0.003 K."""
    half = thermal.boiling_point_elevation.peacock_1995(5, 100, policy="extrapolate")
    assert half / thermal.boiling_point_elevation(5, 1.01418) == pytest.approx(0.5, abs=0.06)
    with pytest.raises(wm.RangeError, match="starzak_peacock covers it"):
        thermal.boiling_point_elevation.peacock_1995(12, 100)
    for x in (25, 50, 70):
        value = thermal.boiling_point_elevation.peacock_1995(x, 100)
        assert value * (1 - (274.3 / 274.0) ** 0.38) == pytest.approx(0, abs=0.003)
