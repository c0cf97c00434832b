"""One batch worked by hand: nothing but arithmetic, written from the formulas of the sources, beside what the engine says.

Sources of the formulas: water, H. Bettin and F. Spieweck (1990); sucrose solutions, ICUMSA as printed by Bubnik and others (1995); degrees Plato,
the ASBC cubic; attenuation, Balling; utilisation, G. Tinseth (about 1995-97); colour, D. Morey (recalled); CO2 after fermentation, the water
quadratic of the trade. The batch is invented.
"""

from __future__ import annotations

import math

import pytest

import wortmath as wm

BATCH = """
[batch]
name = "by hand"
barometer = "1.01325 bar"
[models]
altitude_factor = "none"
[[step]]
do = "water"
mass = "9 kg"
temperature = "20 degC"
[[step]]
do = "dissolve"
extracts = [{ mass = "2 kg", kind = "dry", solids = 0.96, colour = "8 degL" }]
sugars = [{ mass = "200 g", kind = "sucrose" }]
[[step]]
do = "boil"
minutes = "60 min"
evaporation = "1.5 kg/h"
hops = [{ mass = "30 g", alpha = 0.08, minutes = "60 min" }]
[[step]]
do = "chill"
to = "20 degC"
[[step]]
do = "transfer"
[[step]]
do = "top_up"
mass = "10 kg"
temperature = "20 degC"
[[step]]
do = "pitch"
mass = "12 g"
[[step]]
do = "ferment"
days = "10 d"
temperature = "20 degC"
attenuation = 0.78
[[step]]
do = "prime"
mass = "120 g"
water = "0 L"
efficiency = 1.0
[[step]]
do = "bottle"
volume = "0.5 L"
hottest = "25 degC"
"""


def sucrose_density_20(w: float) -> float:
    """kg/m3 at 20 degC."""
    water = (999.83952 + 16.952577 * 20 - 7.9905127e-3 * 20**2 - 46.241757e-6 * 20**3 + 105.84601e-9 * 20**4 - 281.03006e-12 * 20**5) / (1 + 16.887236e-3 * 20)
    return water + 385.1761 * w + 135.3705 * w**2 + 40.9299 * w**3 - 3.9643 * w**4 + 13.4853 * w**5 - 17.2890 * w**6


def gravity_of(plato: float) -> float:
    """The ASBC cubic turned round by bisection."""
    low, high = 0.95, 1.2
    for _ in range(200):
        middle = (low + high) / 2
        if 135.997 * middle**3 - 630.272 * middle**2 + 1111.14 * middle - 616.868 < plato:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def test_a_batch_worked_by_hand() -> None:
    f = wm.batch.read_text(BATCH).forecast()
    results = f.results

    # masses in g
    malt, sugar = 0.96 * 2000.0, 200.0
    water_before = 9000.0 + 0.04 * 2000.0
    water_after = water_before - 1500.0
    before, after = (gravity_of(100 * (malt + sugar) / (malt + sugar + w)) for w in (water_before, water_after))
    wort = malt + sugar + water_after + 10000.0
    original = 100 * (malt + sugar) / wort
    assert results["original_extract_degp"] == pytest.approx(original, rel=1e-12)
    assert results["original_gravity"] == pytest.approx(gravity_of(original), rel=1e-12)

    # bitterness: the mean gravity over a steady boil is the logarithmic one, since extract stays and volume shrinks
    p0, p1 = before - 1, after - 1
    mean = 1 + p0 * p1 * math.log(p1 / p0) / (p1 - p0)
    utilisation = 1.65 * 0.000125 ** (mean - 1) * (1 - math.exp(-0.04 * 60)) / 4.15
    milligrams = 1000 * 30 * 0.08 * utilisation
    litres = wort / sucrose_density_20(original / 100)
    at_pitch = f.steps[6]["after"]
    assert at_pitch["volume_20c_l"] == pytest.approx(litres, rel=1e-12)
    assert at_pitch["bitterness_bu"] == pytest.approx(milligrams / litres, rel=1e-9)
    assert f.hops[0]["utilisation"] == pytest.approx(utilisation, rel=1e-9)

    # fermentation after Balling: an apparent attenuation of 78 % of the malt extract; the sugar goes completely
    apparent = original * (1 - 0.78)
    q = 0.22 + 0.001 * original
    real = (q * original + apparent) / (1 + q)
    share = (original - real) / ((1 - 1.0665 / 2.0665 * real / 100) * original)
    fermented = share * malt + sugar
    assert f.steps[7]["reported"]["fermented_g"] == pytest.approx(fermented, rel=1e-12)
    ethanol = fermented / 2.0665
    beer = wort - fermented + ethanol
    left = 100 * (malt + sugar - fermented) / beer
    alcohol = 100 * ethanol / beer
    assert results["alcohol_by_mass"] == pytest.approx(alcohol, rel=1e-12)
    original_again = 100 * (2.0665 * alcohol + left) / (100 + 1.0665 * alcohol)
    q = 0.22 + 0.001 * original_again
    final = gravity_of((1 + q) * left - q * original_again)
    assert results["final_gravity"] == pytest.approx(final, rel=1e-12)

    # the package: what the water quadratic leaves at 20 degC, and sucrose at its full yield, 4 x 44.0095 g of CO2 in 342.2965 g
    packaged = f.steps[-1]["after"]["volume_20c_l"]
    held = f.steps[-1]["after"]["co2_g"] / (1.9768 * packaged)
    t = 1.8 * 20 + 32
    assert held == pytest.approx(3.0378 - 0.050062 * t + 0.00026555 * t**2, rel=1e-9)
    assert f.package["carbonation_vol"] == pytest.approx(held + 120 * 4 * 44.0095 / 342.2965 / (1.9768 * packaged), rel=1e-6)
    assert f.package["bottles"] == int(beer / 1000 / 0.5 / (f.steps[-1]["after"]["mass_g"] / 1000 / packaged))

    # colour: pounds times degrees Lovibond per US gallon, to the power 0.6859, times 1.4922
    mcu = 2000.0 * 8 / 453.59237 / (packaged / 3.785411784)
    assert results["colour_srm"] == pytest.approx(1.4922 * mcu**0.6859, rel=1e-9)
