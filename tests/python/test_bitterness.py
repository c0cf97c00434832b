"""Bitterness and hops: what the tables of tests/reference/bitterness do not say by themselves.

Each test names its source; "identity" means that it follows from the definitions alone, "chapter" that the figure was
computed for this project by an independent implementation.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest

import wortmath as wm
from expression import read_table

b = wm.bitterness
hop = wm.hop
NAN = math.nan
EXTRAPOLATE: Any = {"policy": "extrapolate"}
UTILISATIONS = ("tinseth", "rager", "rager_table", "garetz_1993", "garetz_1994", "daniels_whole", "daniels_pellet", "mosher", "tutzauer")
OPEN_KETTLE = (1017.876, 1017.876, 20.0)  # 36 cm across, nothing on it, 20 L


def simpson(f: Any, lo: float, hi: float, n: int = 2000) -> float:
    x = np.linspace(lo, hi, 2 * n + 1)
    y = np.array([f(float(v)) for v in x])
    return float((hi - lo) / (6 * n) * (y[0] + y[-1] + 4 * y[1::2].sum() + 2 * y[2:-1:2].sum()))


# ---- additions -------------------------------------------------------------------------------------------------------


def test_published_roundings_stand_in_their_ratio_to_the_exact_factor() -> None:
    """identity: 1 oz in 1 US gal is 28349.523125/3.785411784 mg/L; the rounded constants are those in print."""
    exact = b.from_addition.exact(28.0, 0.05, 20.0, 0.23)
    factor = 28349.523125 / 3.785411784
    printed = {"tinseth": 7490, "rager": 7462, "daniels": 7489, "garetz": 7490, "palmer": 7500, "hbu_1_34": 10000 / 1.34}
    for name, constant in printed.items():
        assert getattr(b.from_addition, name)(28.0, 0.05, 20.0, 0.23) == pytest.approx(exact * constant / factor, rel=1e-13)


def test_an_addition_and_its_inverse() -> None:
    """identity, and the product that defines bitterness units."""
    units = b.from_addition(40.0, 0.062, 23.0, 0.21)
    assert units == b.alpha_dosed(40.0, 0.062, 23.0) * 0.21
    assert b.mass_for_target(units, 0.062, 23.0, 0.21) == pytest.approx(40.0, rel=1e-14)
    for nothing in ((30.0, 0.0, 20.0, 0.2), (30.0, 0.05, 20.0, 0.0)):  # the tables give no utilisation at short times
        with pytest.raises(wm.RangeError, match="above 0"):
            b.mass_for_target(*nothing)


@pytest.mark.parametrize(
    "arguments,word", [((-1.0, 0.05, 20.0), "mass"), ((30.0, 5.2, 20.0), "5.2 % is 0.052"), ((30.0, 0.05, 0.0), "volume"), ((30.0, -0.01, 20.0), "alpha")]
)
def test_impossible_doses(arguments: tuple[float, ...], word: str) -> None:
    """chapter: general input checks."""
    with pytest.raises(wm.RangeError, match=word):
        b.alpha_dosed(*arguments, **EXTRAPOLATE)


# ---- utilisation -----------------------------------------------------------------------------------------------------

SPREAD = {  # per cent at 1.050 after 0, 5, 10, 15, 30, 45, 60, 90 min, and at 1.080 after 60 min
    "tinseth": (0, 4.60, 8.36, 11.45, 17.73, 21.17, 23.07, 24.67, 17.62),
    "rager": (5.12, 5.72, 6.70, 8.22, 17.11, 26.90, 30.82, 31.93, 26.80),
    "rager_table": (5.0, 5.0, 6.0, 8.0, 15.3, 26.9, 30.0, 30.0, 26.09),
    "garetz_1993": (0, 0, 0, 1, 11, 23, 25, 25, 21.74),
    "garetz_1994": (0, 0, 0, 2, 11, 18, 20, 23, 17.39),
    "daniels_whole": (5, 5, 12, 12, 19, 22, 24, 27, 20.87),
    "daniels_pellet": (6, 6, 15, 15, 24, 27, 30, 34, 26.09),
    "mosher": (0, 6, 9, 12, 22, 25, 27, 27, None),
    "tutzauer": (2.15, 3.24, 4.70, 6.61, 14.89, 24.65, 30.00, None, 27.32),
}


@pytest.mark.parametrize("name", SPREAD)
def test_spread_of_the_models(name: str) -> None:
    """chapter: the table that shows how far the published models lie apart."""
    model = getattr(b.utilisation, name)
    at = [(1.050, t) for t in (0, 5, 10, 15, 30, 45, 60, 90)] + [(1.080, 60)]
    for (gravity, minutes), percent in zip(at, SPREAD[name]):
        if percent is None:
            with pytest.raises(wm.RangeError):
                model(gravity, minutes, **EXTRAPOLATE)
        else:
            assert 100 * model(gravity, minutes, **EXTRAPOLATE) == pytest.approx(percent, abs=0.00501)


def test_tinseth_limits() -> None:
    """chapter: 0.39759 for the thinnest wort and a boil without end; the gravity factor passes 1 at 1.0557."""
    assert b.utilisation(1.0, 1e5, **EXTRAPOLATE) == pytest.approx(0.39759, abs=5e-6)
    assert b.gravity_adjustment(1.0557) == pytest.approx(1, abs=5e-4)
    assert b.utilisation(1.05, 0) == 0
    assert b.utilisation(1.05, 60, 2 * 4.15) == pytest.approx(b.utilisation(1.05, 60) / 2, rel=1e-15)
    assert b.utilisation(1.05, 1e-12) == pytest.approx(1.65 * 8000**-0.05 * 0.04e-12 / 4.15, rel=1e-12)  # nothing cancels


def test_tinseth_copied_with_the_constant_in_the_exponent() -> None:
    """chapter: a copy in circulation prints exp(-0.04 t/4.15), which doubles the hour at 1.050 to 0.46."""
    wrong = b.gravity_adjustment(1.05) * (1 - math.exp(-0.04 * 60 / 4.15))
    assert wrong == pytest.approx(0.46, abs=0.005)
    assert b.utilisation(1.05, 60) == pytest.approx(wrong / 2, rel=0.01)


@pytest.mark.parametrize("name", UTILISATIONS)
def test_utilisation_grows_with_time_and_falls_with_gravity(name: str) -> None:
    """common sense of every source; the tables step."""
    model = getattr(b.utilisation, name)
    times = [model(1.045, t, **EXTRAPOLATE) for t in np.linspace(0, 60, 121)]
    assert all(x <= y for x, y in zip(times, times[1:]))
    assert 0 <= times[0] < times[-1] < 0.45
    if name != "mosher":
        gravities = [model(g, 30, **EXTRAPOLATE) for g in np.linspace(1.050, 1.130, 17)]
        assert all(x > y for x, y in zip(gravities, gravities[1:]))


def test_gravity_that_rises_in_a_straight_line() -> None:
    """identity: the integral of the tinseth rate; chapter: 0.23455 for 1.045 to 1.055, 0.23066 at the mean."""
    assert b.utilisation.tinseth_linear_gravity(1.045, 1.055, 60) == pytest.approx(0.23455, abs=5e-6)
    assert b.utilisation(1.050, 60) == pytest.approx(0.23066, abs=5e-6)
    assert b.utilisation.tinseth_linear_gravity(1.062, 1.062, 47) == pytest.approx(b.utilisation(1.062, 47), rel=1e-14)
    for start, end, minutes in ((1.045, 1.110, 90.0), (1.120, 1.040, 30.0), (1.050, 1.0500001, 5.0)):

        def rate(t: float) -> float:
            return b.gravity_adjustment(start + (end - start) * t / minutes) * 0.04 * math.exp(-0.04 * t) / 4.15

        assert b.utilisation.tinseth_linear_gravity(start, end, minutes) == pytest.approx(simpson(rate, 0, minutes), rel=1e-10)
    # where fall of gravity and loss of alpha acids just balance, the closed form is 0/0
    fall = 0.04 * 30 / math.log(8000)
    here = [b.utilisation.tinseth_linear_gravity(1.18, 1.18 - fall + d, 30, **EXTRAPOLATE) for d in (-1e-9, 0, 1e-9)]
    assert here[0] > here[1] > here[2] and here[0] - here[2] < 1e-8


def test_gravity_steps_table() -> None:
    """reference/bitterness/gravity_steps.csv: adaptive quadrature, one integral per step; tolerance as its head says."""
    _, rows = read_table("bitterness/gravity_steps.csv")
    assert len(rows) >= 5
    for row in rows:
        gravities, minutes = ([float(x) for x in row[k].split(";")] for k in ("boil_gravity_sg", "step_min"))
        assert b.utilisation.tinseth_gravity_steps(gravities, minutes) == pytest.approx(float(row["utilisation"]), rel=1e-10)


def test_gravity_steps() -> None:
    """identity; chapter: most extract for the last quarter of an hour."""
    steps = b.utilisation.tinseth_gravity_steps
    assert steps([1.062], [47]) == pytest.approx(b.utilisation(1.062, 47), rel=1e-14)
    assert steps([1.062, 1.062, 1.062], [7, 0, 40]) == pytest.approx(b.utilisation(1.062, 47), rel=1e-14)
    assert steps([1.020, 1.090], [45, 15], **EXTRAPOLATE) == pytest.approx(0.29048, abs=5e-6)
    assert b.utilisation(0.75 * 1.020 + 0.25 * 1.090, 60) == pytest.approx(0.25809, abs=5e-6)
    assert b.utilisation(1.090, 60) == pytest.approx(0.16101, abs=5e-6)


def test_gravity_steps_that_make_no_boil() -> None:
    """chapter: equal length of at least one, each step not negative; the table behind it ends at 1.030 and at 120 min."""
    steps = b.utilisation.tinseth_gravity_steps
    with pytest.raises(wm.RangeError, match="at least one step"):
        steps([], [])
    with pytest.raises((wm.RangeError, ValueError, TypeError)):
        steps([1.05, 1.06], [10])
    with pytest.raises(wm.RangeError, match="step_minutes = -5"):
        steps([1.05, 1.06], [10, -5], **EXTRAPOLATE)
    with pytest.raises(wm.RangeError, match="boil_gravities = 1.02 .*1.03 to 1.13"):
        steps([1.020, 1.090], [45, 15])
    with pytest.raises(wm.RangeError, match="120 minutes"):
        steps([1.05, 1.06], [100, 30])
    assert steps([1.05, 1.06], [90, 30]) < steps([1.05, 1.06], [100, 30], **EXTRAPOLATE)


def test_rager_curve_and_its_misprint() -> None:
    """Hops FAQ 1993; chapter: hops at the end of the boil are not zero, the limit is 31.97 %, and a copy with 32.32
    for 31.32 reads 0.75 points low at 30 min."""
    assert b.utilisation.rager(1.050, 0) == pytest.approx(0.0512, abs=5e-5)
    assert b.utilisation.rager(1.050, 1e4, **EXTRAPOLATE) == pytest.approx(0.3197, abs=5e-5)
    misprint = (18.10907 + 13.86204 * math.tanh((30 - 32.32275) / 18.26774)) / 100
    assert b.utilisation.rager(1.050, 30) - misprint == pytest.approx(0.0075, abs=5e-5)


def test_edges_of_the_bins() -> None:
    """Hops FAQ: 6-10, 11-15, ... in whole minutes, so the upper end decides; Daniels: [10, 20), the lower end."""
    assert b.utilisation.rager_table(1.05, 5) == 0.05 and b.utilisation.rager_table(1.05, 5.0001) == 0.06
    assert b.utilisation.garetz_1994(1.05, 10) == 0 and b.utilisation.garetz_1994(1.05, 10.0001) == 0.02
    assert b.utilisation.daniels_pellet(1.05, 9.9999) == 0.06 and b.utilisation.daniels_pellet(1.05, 10) == 0.15
    assert b.utilisation.daniels_whole(1.05, 500) == 0.27  # its last bin is open
    for name, end in (("rager_table", 60), ("garetz_1993", 60), ("garetz_1994", 90)):
        model = getattr(b.utilisation, name)
        with pytest.raises(wm.RangeError, match="validated"):
            model(1.05, end + 0.001)
        assert model(1.05, 300, **EXTRAPOLATE) == model(1.05, end)


def test_mosher_knows_only_weak_worts() -> None:
    """R. Mosher: up to 1.050; straight lines; the line to zero at no time is ours."""
    assert b.utilisation.mosher(1.050, 60) == 0.27
    with pytest.raises(wm.RangeError, match="boil_gravity = 1.0501"):
        b.utilisation.mosher(1.0501, 60, **EXTRAPOLATE)
    for short in (0.0, 4.9, 60.1):
        with pytest.raises(wm.RangeError, match="5 to 60"):
            b.utilisation.mosher(1.04, short)
    assert b.utilisation.mosher(1.04, 2.5, **EXTRAPOLATE) == pytest.approx(0.03)
    assert b.utilisation.mosher(1.04, 37.5) == pytest.approx(0.235)


def test_tutzauer_ends_at_its_peak() -> None:
    """F. Tutzauer 1992: a parabola in time; chapter: three chart values at 1.070 within 1.29 percentage points."""
    with pytest.raises(wm.RangeError, match="0 to 60 min"):
        b.utilisation.tutzauer(1.07, 60.5, **EXTRAPOLATE)
    for gravity in (1.040, 1.075, 1.110):
        peak = (0.12896 - 0.04187 * gravity) / 0.00136992
        assert 60 < peak < 62.5
        assert b.utilisation.tutzauer(gravity, 59) < b.utilisation.tutzauer(gravity, 60)


@pytest.mark.parametrize("name", UTILISATIONS)
def test_gravities_no_kettle_holds(name: str) -> None:
    """chapter: below 0.990 and above 1.300 is an error under every policy; degrees Plato are recognised."""
    for gravity in (0.98, 1.31, 12.0):
        with pytest.raises(wm.RangeError, match="degrees Plato" if gravity == 12 else "boil_gravity"):
            getattr(b.utilisation, name)(gravity, 30, **EXTRAPOLATE)


# ---- gravity ---------------------------------------------------------------------------------------------------------


def test_gravity_factors() -> None:
    """chapter: normalised differently at 1.050, and what 1.100 costs relative to it; hosom's values for an hour."""
    g = b.gravity_adjustment
    assert [round(g.tinseth(1.05), 4), g.rager(1.05), g.daniels(1.05), g.garetz_1994(1.05), round(g.hosom(1.05, 60), 3)] == [1.0528, 1, 1, 1, 0.966]
    assert g.tinseth(1.1) / g.tinseth(1.05) == pytest.approx(0.638, abs=5e-4)
    assert g.rager(1.1) == pytest.approx(0.8) and g.daniels(1.1) == pytest.approx(0.8)
    assert g.hosom(1.1, 40) / g.hosom(1.05, 40) == pytest.approx(0.766, abs=5e-4)
    for gravity, factor in ((1.030, 0.9978), (1.050, 0.9662), (1.070, 0.8916), (1.100, 0.7402), (1.130, 0.5839)):
        assert g.hosom(gravity, 60) == pytest.approx(factor, abs=5e-5)


def test_gravity_factors_are_continuous() -> None:
    """identity: no jump at 1.050, at 30 and 40 min, or where water begins."""
    g = b.gravity_adjustment
    for name in ("rager", "daniels", "garetz_1994"):
        assert getattr(g, name)(1.05 + 1e-9) == pytest.approx(1, abs=1e-8)
        assert getattr(g, name)(0.995) == 1
    for t in (30, 40):
        assert g.hosom(1.08, t - 1e-9) == pytest.approx(g.hosom(1.08, t + 1e-9), abs=1e-8)
    assert g.hosom(1.08, 41) == g.hosom(1.08, 500) < g.hosom(1.08, 35) < g.hosom(1.08, 29) == g.hosom(1.08, 0)
    assert [g.hosom(x, 60) for x in (0.99, 1.0, 1.0 + 1e-12)] == [1, 1, 1]
    assert g.hosom(1.2945, 60) == 0 < g.hosom(1.2943, 60) < 0.001  # 1/ln 2 over 4.9 above 1


def test_misprint_of_the_gravity_term() -> None:
    """B. Szymczak 1992: the article prints 0.24 for 1.096 and .050 for 1.050."""
    assert 1 / b.gravity_adjustment.rager(1.096) - 1 == pytest.approx(0.23, abs=1e-12)


def test_mean_gravity_of_a_boil() -> None:
    """identity: the time mean while the volume falls in a straight line; chapter: 1.049666."""
    mean = b.average_boil_gravity
    assert mean(1.045, 1.055) == pytest.approx(1.049666, abs=5e-7)
    for start, end in ((1.030, 1.034), (1.050, 1.110), (1.080, 1.040)):
        first, last = 1 / (start - 1), 1 / (end - 1)  # volumes, of equal extract
        assert mean(start, end) == pytest.approx(1 + simpson(lambda x: 1 / (first + (last - first) * x), 0, 1), rel=1e-12)
        assert mean(start, end) == pytest.approx(mean(end, start), rel=1e-15)
        assert min(start, end) < mean(start, end) < mean.arithmetic(start, end) == (start + end) / 2
    assert mean(1.06, 1.06) == pytest.approx(1.06, rel=1e-15)
    for d in (1e-15, 1e-10, 1e-6, 0.000599, 0.000601):
        assert mean(1.06, 1.06 + d) == pytest.approx(1.06 + d / 2, abs=d * d * 3 + 3e-16)
    for thin in ((1.0, 1.02), (0.995, 1.02), (1.02, 0.998)):
        assert mean(*thin) == mean.arithmetic(*thin)


def test_concentrated_boil() -> None:
    """identity: twice the extract per litre in half the volume."""
    assert b.boil_gravity(1.045, 2.0) == pytest.approx(1.090)
    with pytest.raises(wm.RangeError, match="concentration_factor"):
        b.boil_gravity(1.045, 0.0)


def test_hopping_rate() -> None:
    """identity: B times its factor is X, what the book iterates; chapter: four values."""
    for x, printed in ((10, 9.642), (20, 18.661), (40, 35.227), (80, 64.165)):
        assert b.hopping_rate(x, 1.0) == pytest.approx(printed, abs=5e-4)
        for concentration in (0.8, 1.0, 2.5):
            units = b.hopping_rate(x, concentration)
            assert units * b.hopping_rate_factor(units, concentration) == pytest.approx(x, rel=1e-14)
    assert b.hopping_rate(0.0, 1.0) == 0


# ---- kinetics --------------------------------------------------------------------------------------------------------


def test_activation_energies() -> None:
    """reference/bitterness/malowicki_constants.csv: printed activation energies, 0.05 kJ/mol."""
    _, rows = read_table("bitterness/malowicki_constants.csv")
    low, high = b.isomerisation_rate(95.0), b.isomerisation_rate(125.0)
    for row, name in zip(rows, ("k1", "k2")):
        slope = math.log(getattr(high, name) / getattr(low, name)) / (1 / 368.15 - 1 / 398.15)
        assert slope == pytest.approx(float(row["b_kelvin"]), rel=1e-12)
        assert slope * 8.314462618e-3 == pytest.approx(float(row["ea_kj_per_mol"]), abs=0.05)
        assert getattr(low, name) * math.exp(slope / 368.15) == pytest.approx(float(row["a"]), rel=1e-12)


@pytest.mark.parametrize(
    "temperature,half_life,peak_minutes,peak,hour",
    [
        (60, 2519, 7735, 0.6942, 0.01635),
        (80, 335.6, 959.9, 0.6620, 0.11503),
        (90, 133.1, 368.3, 0.6467, 0.25852),
        (100, 55.50, 148.6, 0.6320, 0.47589),
        (110, 24.21, 62.87, 0.6177, 0.61716),
        (120, 11.02, 27.77, 0.6040, 0.44075),
        (130, 5.215, 12.77, 0.5908, 0.12180),
    ],
)
def test_isomerisation_at_a_temperature(temperature: float, half_life: float, peak_minutes: float, peak: float, hour: float) -> None:
    """chapter: table of half-lives and of the time of most iso-alpha acids, to their last printed digit."""
    assert b.isomerisation_alpha_left(temperature, half_life, **EXTRAPOLATE) == pytest.approx(0.5, abs=2e-4)
    at = b.isomerisation_peak_time(temperature, **EXTRAPOLATE)
    assert at == pytest.approx(peak_minutes, rel=6e-5 if peak_minutes > 1000 else 4e-4)
    assert b.isomerisation(temperature, at, **EXTRAPOLATE) == pytest.approx(peak, abs=5.1e-5)
    assert b.isomerisation(temperature, 60, **EXTRAPOLATE) == pytest.approx(hour, abs=5.1e-6)
    for other in (0.98 * at, 1.02 * at):
        assert b.isomerisation(temperature, other, **EXTRAPOLATE) < b.isomerisation(temperature, at, **EXTRAPOLATE)


def test_loss_of_iso_alpha_acids_in_a_long_boil() -> None:
    """Kappler et al. 2010: more than 20 % of dosed iso-alpha acids lost in 90 min; k2 gives 24.3 %."""
    assert 1 - math.exp(-90 * b.isomerisation_rate(100).k2) == pytest.approx(0.243, abs=5e-4)
    assert max(b.isomerisation(100, t) for t in range(0, 600, 10)) < 0.64  # 75 to 85 % is often quoted


def test_fractions_are_one_whole() -> None:
    """identity: what is left, what is there and what is gone make one, also for equal rates and at the joints of the forms."""
    cases = [(0.0125, 0.0125, 60.0), (0.0125, 0.0031, 0.0), (0.0, 0.02, 50.0), (0.03, 0.0, 50.0), (0.0, 0.0, 10.0)]
    cases += [(0.02, 0.0200000001, 50.0), (2.0, 1e-6, 400.0), (1e-6, 2.0, 400.0)]
    cases += [(1 / 60, 0.4, 60 * (1 + d)) for d in (-1e-12, 1e-12)] + [(0.05, 0.1, 40 * (1 + d)) for d in (-1e-12, 1e-12)]
    for k1, k2, t in cases:
        f = b.isomerisation_fractions(k1, k2, t)
        assert f.alpha_left + f.isomerisation_yield + f.degraded == pytest.approx(1, abs=4e-16)
        assert min(f) >= 0
    for k1, k2, t in ((0.02, 0.05, 20.0), (0.05, 0.1, 20.0), (0.05, 0.1, 10.0)):  # no jump where another form takes over
        below, above = (b.isomerisation_fractions(k1, k2, t * (1 + d)).degraded for d in (-1e-9, 1e-9))
        assert 0 < above - below < 3e-9


def test_a_start_that_subtraction_would_lose() -> None:
    """identity: k1 k2 t^2/2 for short times, where 1 - alpha - iso has no digit left."""
    assert b.isomerisation_fractions(0.0125, 0.0031, 1e-9).degraded == pytest.approx(0.0125 * 0.0031 * 0.5e-18, rel=1e-9)


def test_peak_of_two_rates() -> None:
    """identity: the derivative is zero; never, if nothing is lost; no peak without isomerisation."""
    first_order = b.isomerisation_peak_time.first_order
    assert first_order(0.01, 0.01) == pytest.approx(100)
    assert first_order(0.01, 0.01 * (1 + 1e-9)) == pytest.approx(100, rel=1e-9)
    assert first_order(0.01, 0.0) == math.inf
    for k1, k2 in ((0.0125, 0.0031), (0.002, 0.05)):
        t = first_order(k1, k2)
        assert k1 * math.exp(-k1 * t) == pytest.approx(k2 * math.exp(-k2 * t), rel=1e-12)
    with pytest.raises(wm.RangeError, match="k1"):
        first_order(0.0, 0.1, **EXTRAPOLATE)


def test_range_of_the_rates() -> None:
    """chapter: measured from 90 to 130 degC, computed from 0 to 140, nothing beyond."""
    for model, rest in (
        (b.isomerisation_rate, ()),
        (b.isomerisation, (30,)),
        (b.isomerisation_alpha_left, (30,)),
        (b.isomerisation_degraded, (30,)),
        (b.isomerisation_peak_time, ()),
        (b.relative_utilisation.malowicki_rate_ratio, ()),
        (b.relative_utilisation.malowicki_yield_ratio, (30,)),
    ):
        for fine in (90, 130):
            model(fine, *rest)
        for unvouched in (0, 89.99, 130.01, 140):
            with pytest.raises(wm.RangeError, match="90 to 130"):
                model(unvouched, *rest)
            model(unvouched, *rest, **EXTRAPOLATE)
        for never in (-0.01, 140.01, 212):
            with pytest.raises(wm.RangeError, match="0 to 140"):
                model(never, *rest, **EXTRAPOLATE)


def test_isomerisation_profiles_table() -> None:
    """reference/bitterness/isomerisation_profiles.csv: nested Gauss-Legendre quadrature; tolerances as its head says."""
    _, rows = read_table("bitterness/isomerisation_profiles.csv")
    assert len(rows) >= 5
    for row in rows:
        points = [[float(x) for x in p.split(":")] for p in row["profile"].split(";")]
        f = b.isomerisation_profile([p[0] for p in points], [p[1] for p in points], **EXTRAPOLATE)
        assert f.alpha_left == pytest.approx(float(row["alpha_left"]), rel=1e-8)
        assert f.isomerisation_yield == pytest.approx(float(row["iso_alpha"]), rel=1e-8)
        assert f.degraded == pytest.approx(float(row["degraded"]), abs=1e-9)
        assert sum(f) == pytest.approx(1, abs=1e-14)


def test_profile_identities() -> None:
    """identity: constant temperature; a point on the line changes nothing; time counts from the first point."""
    flat = b.isomerisation_profile([0, 20, 60], [100, 100, 100])
    assert flat == pytest.approx(b.isomerisation_fractions(*b.isomerisation_rate(100), 60), rel=1e-12)
    whole = b.isomerisation_profile([0, 40], [100, 92])
    assert b.isomerisation_profile([0, 10, 40], [100, 98, 92]) == pytest.approx(whole, rel=1e-8)
    assert b.isomerisation_profile([300, 340], [100, 92]) == pytest.approx(whole, rel=1e-9)
    warmer, cooler = b.isomerisation(100, 40), b.isomerisation(92, 40)
    assert cooler < whole.isomerisation_yield < warmer


def test_profiles_that_are_none() -> None:
    """chapter: at least two points, strictly increasing minutes, equal length."""
    for minutes, temperatures in (([], []), ([0], [100]), ([0, 10, 10], [100, 99, 98]), ([0, 10, 5], [100, 99, 98])):
        with pytest.raises(wm.RangeError, match="minutes that grow"):
            b.isomerisation_profile(minutes, temperatures)
    with pytest.raises((wm.RangeError, ValueError, TypeError)):
        b.isomerisation_profile([0, 10], [100, 95, 90])
    with pytest.raises(wm.RangeError, match="temperatures = 80 "):
        b.isomerisation_profile([0, 10], [100, 80])


def test_relative_utilisation() -> None:
    """chapter: table of hosom, rate ratio, and yield ratio for 10, 20 and 60 min."""
    r = b.relative_utilisation
    for t, *printed in (
        (95, 0.7071, 0.6495, 0.6676, 0.6859, 0.7612),
        (90, 0.4907, 0.4168, 0.4363, 0.4564, 0.5432),
        (85, 0.3370, 0.2642, 0.2799, 0.2962, 0.3692),
        (80, 0.2290, 0.1653, 0.1765, 0.1882, 0.2417),
        (70, 0.1022, 0.0621, 0.0668, 0.0719, 0.0952),
        (63, 0.0565, 0.0303, 0.0326, 0.0352, 0.0470),
    ):
        got = [r(t), r.malowicki_rate_ratio(t, **EXTRAPOLATE)] + [r.malowicki_yield_ratio(t, m, **EXTRAPOLATE) for m in (10, 20, 60)]
        assert got == pytest.approx(printed, abs=5.1e-5)
        assert r.malowicki_yield_ratio(t, 0, **EXTRAPOLATE) == pytest.approx(got[1], rel=1e-14)  # no time: the ratio of the rates
        assert r.malowicki_yield_ratio(t, 60, **EXTRAPOLATE) == pytest.approx(b.isomerisation(t, 60, **EXTRAPOLATE) / b.isomerisation(100, 60), rel=1e-12)
    assert r.malowicki_rate_ratio(100) == 1 and r.malowicki_yield_ratio(100, 77) == 1
    # after a day and a half of boiling nothing is left of either, and the quotient still stands
    assert math.isfinite(r.malowicki_yield_ratio(99.9, 1e5)) and r.malowicki_yield_ratio(99.9, 1e5) > 1


def test_hosom_is_held_at_one_near_the_boil() -> None:
    """J.-P. Hosom, as printed: 1.0092 at 373.15 K, passing 1 at 373.0191 K."""
    r = b.relative_utilisation
    assert r.hosom_unclamped(100) == pytest.approx(1.0092, abs=5e-5)
    assert r.hosom_unclamped(373.0191 - 273.15) == pytest.approx(1, abs=1e-5)
    assert r.hosom(100) == 1 and r.hosom(99.86) == r.hosom_unclamped(99.86) < 1
    for t in (62.9, 101.1):
        with pytest.raises(wm.RangeError, match="63 to 101"):
            r.hosom(t)


# ---- stands ----------------------------------------------------------------------------------------------------------


def test_kettle_cooling() -> None:
    """chapter: 36 cm open kettle, 20 L; starts at 373.25 K; the fit is flagged below 335 K and above 100 L."""
    for minutes, printed in ((0, 100.10), (5, 94.93), (10, 90.25), (20, 82.20), (30, 75.64), (60, 62.32)):
        assert b.kettle_cooling(minutes, *OPEN_KETTLE) == pytest.approx(printed, abs=0.00501)
    with pytest.raises(wm.RangeError, match="61.85 degC"):
        b.kettle_cooling(70, *OPEN_KETTLE)
    assert b.kettle_cooling(1e6, *OPEN_KETTLE, **EXTRAPOLATE) == pytest.approx(319.55 - 273.15)  # a parameter of the fit, not the room
    with pytest.raises(wm.RangeError, match="volume = 101"):
        b.kettle_cooling(5, 1000, 1000, 101)
    assert b.kettle_cooling(30, 1000, 400, 20) > b.kettle_cooling(30, 1000, 1000, 20)  # a smaller opening


def test_time_until_a_temperature() -> None:
    """identity: the inverse; chapter: only between 46.40 and 100.10 degC."""
    for minutes in (0.0, 0.5, 12.0, 55.0):
        assert b.kettle_cooling_time(b.kettle_cooling(minutes, 900, 500, 25), 900, 500, 25) == pytest.approx(minutes, abs=1e-11)
    assert b.kettle_cooling_time(100.10, *OPEN_KETTLE) == pytest.approx(0, abs=1e-11)
    for never in (46.40, 30.0, 100.2):
        with pytest.raises(wm.RangeError, match="temperature"):
            b.kettle_cooling_time(never, *OPEN_KETTLE, **EXTRAPOLATE)
    assert b.kettle_cooling_time(46.5, *OPEN_KETTLE, **EXTRAPOLATE) > 200
    with pytest.raises(wm.RangeError, match="validated"):
        b.kettle_cooling_time(60, *OPEN_KETTLE)


def test_newtons_cooling() -> None:
    """identity: an exponential to the surroundings."""
    newton = b.kettle_cooling.newton
    assert newton(0, 95, 20, 40) == 95
    assert newton(40, 95, 20, 40) == pytest.approx(20 + 75 / math.e)
    assert newton(1e5, 95, 20, 40) == 20
    assert newton(30, newton(20, 95, 20, 40), 20, 40) == pytest.approx(newton(50, 95, 20, 40), rel=1e-14)
    with pytest.raises(wm.RangeError, match="time_constant"):
        newton(10, 95, 20, 0)


def test_post_boil_figures() -> None:
    """chapter: 1.050, 36 cm open kettle, 20 L; stands at 90 and 80 degC."""
    for boil, stand, printed in ((0, 20, 0.08298), (0, 60, 0.09657), (10, 20, 0.13926), (60, 20, 0.23819)):
        assert b.post_boil(1.050, boil, stand, *OPEN_KETTLE) == pytest.approx(printed, abs=5.1e-6)
    assert b.post_boil.constant_temperature(1.050, 0, 20, 90) == pytest.approx(0.06854, abs=5.1e-6)
    assert b.post_boil.constant_temperature(1.050, 0, 20, 80) == pytest.approx(0.03199, abs=5.1e-6)


def test_post_boil_identities() -> None:
    """identity: no stand is the boil alone; a stand that boils is a longer boil; bounds and growth."""
    for boil in (0.0, 7.0, 60.0):
        assert b.post_boil(1.06, boil, 0, *OPEN_KETTLE) == pytest.approx(b.utilisation(1.06, boil), rel=1e-14, abs=1e-17)
        assert b.post_boil.constant_temperature(1.06, boil, 0, 80) == pytest.approx(b.utilisation(1.06, boil), rel=1e-14, abs=1e-17)
        assert b.post_boil.constant_temperature(1.06, boil, 25, 100) == pytest.approx(b.utilisation(1.06, boil + 25), rel=1e-14)
        grown = [b.post_boil(1.06, boil, t, *OPEN_KETTLE) for t in np.linspace(0, 60, 61)]
        assert all(x < y for x, y in zip(grown, grown[1:]))
        assert grown[-1] < b.utilisation(1.06, boil + 60)


@pytest.mark.parametrize("kettle", [(1017.876, 1017.876, 20.0), (700.0, 60.0, 90.0), (120.0, 120.0, 1.0), (2000.0, 2000.0, 100.0)])
def test_post_boil_integral(kettle: tuple[float, float, float]) -> None:
    """identity: Simpson's rule on the same rates, and no seam where the wort stops isomerising like a boil."""
    seam = b.kettle_cooling_time(373.0191199665 - 273.15, *kettle)

    def rate(s: float) -> float:
        return math.exp(-0.04 * s) * b.relative_utilisation(b.kettle_cooling(s, *kettle, **EXTRAPOLATE), **EXTRAPOLATE)

    for stand in (seam / 2, seam * (1 - 1e-9), seam * (1 + 1e-9), 3.0, 25.0, 300.0):
        area = simpson(rate, 0, min(stand, seam), 50) + (simpson(rate, seam, stand) if stand > seam else 0)
        assert b.post_boil(1.05, 0, stand, *kettle, **EXTRAPOLATE) == pytest.approx(b.gravity_adjustment(1.05) / 4.15 * 0.04 * area, rel=1e-9)  # Simpson's
    for endless in (1e4, 1e7):
        assert b.post_boil(1.05, 0, endless, *kettle, **EXTRAPOLATE) == pytest.approx(b.post_boil(1.05, 0, 2000, *kettle, **EXTRAPOLATE), rel=1e-11)


def test_post_boil_ends_with_the_cooling_curve() -> None:
    """J.-P. Hosom's curve is flagged below 335 K, also inside the stand."""
    with pytest.raises(wm.RangeError, match="61.85 degC"):
        b.post_boil(1.05, 0, 70, *OPEN_KETTLE)
    with pytest.raises(wm.RangeError, match="63 to 101"):
        b.post_boil.constant_temperature(1.05, 0, 20, 60)


# ---- altitude --------------------------------------------------------------------------------------------------------


def test_altitude_spread() -> None:
    """chapter: three places by four models, at the boiling points in print."""
    a = b.altitude_factor
    for metres, boils, *printed in (
        (1609.344, 94.7, 0.839, 0.747, 0.686, 0.633),
        (2194.2552, 92.7, 0.793, 0.656, 0.593, 0.530),
        (3352.8, 88.7, 0.714, 0.493, 0.441, 0.371),
    ):
        got = [a.garetz_1994(metres), a(boils, 60), a.hosom(boils), a.malowicki_rate_ratio(boils)]
        assert got == pytest.approx(printed, abs=5.1e-4)
        assert sorted(got, reverse=True) == got


def test_altitude_range() -> None:
    """chapter: 85 to 101 degC without a flag although the rates were measured from 90 up; 0 to 15000 ft."""
    a = b.altitude_factor
    for model, rest in ((a, (60,)), (a.malowicki_rate_ratio, ()), (a.hosom, ())):
        assert model(100, *rest) == 1
        assert model(85, *rest) < 0.4 < model(95, *rest) < 1 < model(101, *rest)
        for unvouched in (84.9, 101.1):
            with pytest.raises(wm.RangeError, match="85 to 101"):
                model(unvouched, *rest)
            assert model(unvouched, *rest, **EXTRAPOLATE) > 0
    assert a.garetz_1994(0) == 1
    assert a.garetz_1994(550 * 0.3048) == pytest.approx(1 / 1.02, rel=1e-14)
    a.garetz_1994(4572)
    with pytest.raises(wm.RangeError, match="0 to 4572"):
        a.garetz_1994(4573)


# ---- kettle, cellar, laboratory --------------------------------------------------------------------------------------


def test_solubility() -> None:
    """J.-P. Hosom; chapter: the smaller of two branches, crossing at 239.209 mg/L, instead of a step at 240."""
    s = b.solubility_limit
    assert s(239.2) == 239.2 and s(239.22) < 239.22
    assert s(239.209) == pytest.approx(239.209, abs=5e-4)
    doses = np.linspace(0, 2000, 401)
    dissolved = [s(float(x)) for x in doses]
    assert all(x <= y for x, y in zip(dissolved, dissolved[1:])) and all(y <= x for x, y in zip(doses, dissolved))
    assert dissolved[-1] < 490
    assert [s.none(900.0), s.hosom_flat(900.0), s.hough(900.0)] == [900, 270, 250]
    assert [s.none(9.0), s.hosom_flat(9.0), s.hough(9.0), s(0.0)] == [9, 9, 9, 0]


def test_partial_boil() -> None:
    """identity: the same as dosing over the final volume with the utilisation of the kettle."""
    u = b.utilisation(1.09, 60)
    assert b.partial_boil(b.from_addition(40, 0.06, 8, u), 8, 20) == pytest.approx(b.from_addition(40, 0.06, 20, u), rel=1e-14)
    assert b.partial_boil(30, 20, 20) == 30
    with pytest.raises(wm.RangeError, match="smaller than the kettle volume"):
        b.partial_boil(30, 20, 19.9, **EXTRAPOLATE)


def test_partial_boil_against_a_measurement() -> None:
    """reference/bitterness/partial_boil_measured.csv: evidence against the gravity terms, as the chapter prints it."""
    _, rows = read_table("bitterness/partial_boil_measured.csv")
    bu = {r["boil"]: float(r["bitterness_bu"]) for r in rows}
    assert bu["partial"] / bu["full"] == pytest.approx(0.92, abs=0.005)
    assert b.gravity_adjustment.tinseth(1.127) / b.gravity_adjustment.tinseth(1.072) == pytest.approx(0.61, abs=0.005)
    assert b.gravity_adjustment.rager(1.127) / b.gravity_adjustment.rager(1.076) == pytest.approx(0.82, abs=0.005)


def test_cellar() -> None:
    """A. Justus 2018: 33.7 % lost; chapter: an hour's isomerisation times what is kept is near the trade's 30 %."""
    assert b.cellar_retention(44.0) == pytest.approx(44 * 0.663)
    assert b.cellar_retention(44.0, 1.0) == 44
    assert b.isomerisation(100, 60) * b.cellar_retention(1.0) == pytest.approx(0.32, abs=0.005)
    with pytest.raises(wm.RangeError, match="66.3 % is 0.663"):
        b.cellar_retention(44.0, 66.3)


def test_bitterness_units_by_absorbance() -> None:
    """ASBC Beer-23A: 50 times the absorbance; a dilution below 1 is none; above 2 dilute."""
    assert b.bitterness_units(0.62) == pytest.approx(31)
    assert b.bitterness_units(1.1, 2.0) == pytest.approx(110)
    with pytest.raises(wm.RangeError, match="dilution = 0.5"):
        b.bitterness_units(0.62, 0.5, **EXTRAPOLATE)
    with pytest.raises(wm.RangeError, match="0 to 2"):
        b.bitterness_units(2.1)
    assert b.bitterness_units(2.1, **EXTRAPOLATE) == pytest.approx(105)


def test_iso_alpha_acids_are_no_bitterness_units() -> None:
    """reference/bitterness/bitterness_units_vs_iso_alpha.csv (Kishimoto et al. 2021): two beers of one bitterness by
    absorbance, one of them almost without iso-alpha acids. The convention of the 50 counts 5/7 BU for 1 mg/L."""
    _, rows = read_table("bitterness/bitterness_units_vs_iso_alpha.csv")
    bu, iso = ([float(r[k]) for r in rows] for k in ("bitterness_bu", "iso_alpha_mg_l"))
    assert abs(bu[0] / bu[1] - 1) < 0.06 and iso[0] / iso[1] > 15
    assert b.bitterness_units.five_sevenths(7.0, 0.0) == pytest.approx(5)
    assert all(b.bitterness_units.five_sevenths(x, 0.0) < y for x, y in zip(iso, bu))


def test_oxidised_alpha_acids() -> None:
    """J.-P. Hosom: 1.5 to 10.8 BU of gain printed for 170 mg/L; chapter: 1.2 gives 1.4, 3.2 would give 15.7, 10.8 means 2.5."""
    gain = [b.oxidised_alpha.hosom_pellets(170, f) - b.oxidised_alpha(170) for f in (1.2, 2.5, 3.2)]
    assert gain == pytest.approx([1.4, 10.7, 15.7], abs=0.05)
    assert b.oxidised_alpha.hosom_pellets(170) == pytest.approx(2 * b.oxidised_alpha(170))
    with pytest.raises(wm.RangeError, match="1.2 to 3.2"):
        b.oxidised_alpha.hosom_pellets(170, 3.3)


def test_bitterness_as_tasted() -> None:
    """Algazzali and Shellhammer 2016: 66 +- 13 % and 84 +- 10 %."""
    assert b.sensory_bitterness(20, 10, 5) == pytest.approx(20 + 6.6 + 4.2)
    assert b.sensory_bitterness.maye(20, 10, 5) == pytest.approx(20 + 6.6 + 0.5)
    assert b.sensory_bitterness_spread(10, 5) == pytest.approx(math.hypot(1.3, 0.5), rel=1e-14)


def test_hopped_extract_per_mass_not_per_volume() -> None:
    """kit supplier's rule; chapter: read by volume of the tin, the result shrinks by the density, about 1.4."""
    assert b.hopped_extract(270, 1700, 23) == pytest.approx(270 * 1.7 / 23)
    assert b.hopped_extract(270, 1700 / 1.4, 23) == pytest.approx(14.3, abs=0.05)


# ---- balance ---------------------------------------------------------------------------------------------------------


def test_ratios_answer_different_questions() -> None:
    """chapter: no default among them."""
    with pytest.raises(TypeError, match="bu_gu"):
        b.ratio(30, 1.05)
    assert b.ratio.bu_gu(30, 1.050) == pytest.approx(0.6)
    assert b.ratio.relative_bitterness(30, 1.050, 0.7655) == b.ratio.bu_gu(30, 1.050)
    assert b.ratio.relative_bitterness(30, 1.050, 0.8655) == pytest.approx(0.66)
    assert b.ratio.bu_re(30, 12, 3) == pytest.approx(30 / (0.1808 * 12 + 0.8192 * 3))


def test_ratios_of_nothing() -> None:
    """chapter: OG at or below 1 and a real extract at or below 0 are errors; attenuation is a share."""
    for gravity in (1.0, 0.995):
        for call in (lambda g: b.ratio.bu_gu(30, g, **EXTRAPOLATE), lambda g: b.ratio.relative_bitterness(30, g, 0.8, **EXTRAPOLATE)):
            with pytest.raises(wm.RangeError, match="original_gravity"):
                call(gravity)
    with pytest.raises(wm.RangeError, match="real extract"):
        b.ratio.bu_re(30, 0.0, 0.0)
    with pytest.raises(wm.RangeError, match="80 % is 0.8"):
        b.ratio.relative_bitterness(30, 1.05, 80)


def test_balanced_bitterness() -> None:
    """Q. B. Smith 1990: 0.4 BU a point up to 40, 0.8 above; the chart runs from 1.010 to 1.100."""
    smith = b.balanced_bitterness
    assert [round(smith(1 + x / 1000), 9) for x in (10, 40, 50, 100)] == [4, 16, 24, 64]
    assert smith(1.04 + 1e-9) == pytest.approx(smith(1.04 - 1e-9), abs=2e-6)
    for gravity in (1.009, 1.101):
        with pytest.raises(wm.RangeError, match="1.01 to 1.1"):
            smith(gravity)
    with pytest.raises(wm.RangeError, match="original_gravity = 0.999"):
        smith(0.999, **EXTRAPOLATE)


# ---- hops ------------------------------------------------------------------------------------------------------------


def test_alpha_units() -> None:
    """Hops FAQ 1993: ounces times per cent."""
    assert hop.alpha_units(28.349523125, 0.055) == pytest.approx(5.5, rel=1e-14)


def test_equivalent_mass_keeps_the_alpha_acids() -> None:
    """identity."""
    mass = hop.equivalent_mass(30, 0.065, 0.07)
    assert mass * 0.07 == pytest.approx(30 * 0.065, rel=1e-15)
    with pytest.raises(wm.RangeError, match="actual_alpha"):
        hop.equivalent_mass(30, 0.065, 0.0)


def test_storage_index() -> None:
    """ASBC Hops-12; Nickerson and Likens 1979 with slope 110; chapter: percent lost at six indices."""
    assert hop.storage_index(0.3, 1.2) == 0.25
    with pytest.raises(wm.RangeError, match="absorbance_325"):
        hop.storage_index(0.3, 0.0)
    for index, percent in ((0.25, 0), (0.30, 8.71), (0.31, 10.28), (0.40, 22.45), (0.50, 33.11), (0.70, 49.19)):
        assert 100 * hop.storage_index_loss(index) == pytest.approx(percent, abs=0.00501)
    assert hop.storage_index_loss(2.03, **EXTRAPOLATE) == pytest.approx(1, abs=0.001)
    assert hop.storage_index_loss(0.2) < 0  # fresh hops differ: no clamp
    with pytest.raises(wm.RangeError, match="storage_index = 2.01"):
        hop.storage_index_loss(2.01)
    with pytest.raises(wm.RangeError, match="storage_index"):
        hop.storage_index_loss(0.0, **EXTRAPOLATE)


def test_ageing_figures() -> None:
    """M. Garetz 1994; chapter: rates for four losses, factors for three temperatures."""
    for loss, rate in ((0.15, 0.000903), (0.35, 0.002393), (0.50, 0.003851), (0.65, 0.005832)):
        assert hop.ageing_rate(loss) == pytest.approx(rate, abs=5.1e-7)
        assert hop.ageing(0.10, loss, 20, 1, 180) == pytest.approx(0.10 * (1 - loss), rel=1e-14)  # what the loss means
    for temperature, factor in ((20, 1), (5, 0.5), (4, 0.4774), (0, 0.3969), (-18, 0.1727)):
        assert hop.ageing_temperature_factor(temperature) == pytest.approx(factor, abs=5.1e-5)
    assert hop.ageing_rate(0.0) == 0 and hop.ageing_rate(1e-17) == pytest.approx(1e-17 / 180)


def test_ageing_back_and_forth() -> None:
    """identity: the inverse, and storage in two parts."""
    terms = (0.4, 4.0, 0.75)
    later = hop.ageing(0.10, *terms, 300)
    assert hop.ageing_initial_alpha(later, *terms, 300) == pytest.approx(0.10, rel=1e-14)
    assert hop.ageing(hop.ageing(0.10, *terms, 100), *terms, 200) == pytest.approx(later, rel=1e-14)
    assert hop.ageing(0.10, *terms, 0) == 0.10


def test_misprint_of_the_ageing_appendix() -> None:
    """M. Garetz 1994 prints A0 = AN*100/(100*lost) where 100/(100 - lost) is meant."""
    today, lost = 0.06, 40.0
    right = hop.ageing_initial_alpha(today, lost / 100, 20, 1, 180)
    assert right == pytest.approx(today * 100 / (100 - lost), rel=1e-14)
    assert abs(today * 100 / (100 * lost) - right) > 0.09


def test_range_of_ageing() -> None:
    """chapter: loss in [0, 1), storage factor in [0, 1]; flagged above 20 and below -30 degC."""
    for bad in ((0.1, 1.0, 4, 1, 10), (0.1, -0.1, 4, 1, 10), (0.1, 0.4, 4, 1.01, 10), (0.1, 0.4, 4, 1, -1), (1.1, 0.4, 4, 1, 10)):
        for model in (hop.ageing, hop.ageing_initial_alpha):
            with pytest.raises(wm.RangeError):
                model(*bad, **EXTRAPOLATE)
    for unvouched in (-31, 21):
        with pytest.raises(wm.RangeError, match="-30 to 20"):
            hop.ageing(0.1, 0.4, unvouched, 1, 10)
        assert 0 < hop.ageing(0.1, 0.4, unvouched, 1, 10, **EXTRAPOLATE) < 0.1


# ---- all of them -----------------------------------------------------------------------------------------------------


def _examples() -> list[tuple[str, dict[str, Any]]]:
    """One point of each model, from points/bitterness.csv."""
    found: dict[str, dict[str, Any]] = {}
    for row in read_table("points/bitterness.csv")[1]:
        pairs = (pair.split("=") for pair in row["inputs"].split(";"))
        found.setdefault(row["path"], {k: [float(x) for x in v.split("|")] if "gravities" in k or "step" in k or "|" in v else float(v) for k, v in pairs})
    return list(found.items())


def _model(path: str) -> Any:
    topic, family, name = path.split(".")
    return getattr(getattr(getattr(wm, topic), family), name)


def test_every_model_is_met() -> None:
    assert len(_examples()) == sum(len(getattr(t, f).models) for t in (b, hop) for f in dir(t) if hasattr(getattr(t, f), "models")) == 78


@pytest.mark.parametrize("path,given", _examples(), ids=lambda p: p if isinstance(p, str) else "")
def test_nan_passes(path: str, given: dict[str, Any]) -> None:
    """design: NaN in, NaN out, silently, in every result and through every argument."""
    model = _model(path)
    for argument in model.inputs:
        value = given.get(argument.name, argument.default)
        spoilt = {**given, argument.name: [NAN] + value[1:] if isinstance(value, list) else NAN}
        result = model(**spoilt)
        if path.endswith("isomerisation_profile.malowicki_shellhammer") or not isinstance(result, tuple):
            assert np.all(np.isnan(result)), argument.name
        else:
            assert any(math.isnan(x) for x in result), argument.name


@pytest.mark.parametrize("path,given", _examples(), ids=lambda p: p if isinstance(p, str) else "")
def test_infinity_is_no_amount(path: str, given: dict[str, Any]) -> None:
    """chapter: an infinite value is an error under every policy."""
    model = _model(path)
    for argument in model.inputs:
        value = given.get(argument.name, argument.default)
        for infinite in (math.inf, -math.inf):
            spoilt = {**given, argument.name: [infinite] + value[1:] if isinstance(value, list) else infinite}
            with pytest.raises(wm.RangeError, match=argument.name):
                model(**spoilt, **EXTRAPOLATE)
