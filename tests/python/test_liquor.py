"""Brewing water: what the tables of tests/reference/process do not say by themselves.

Each test names its source; "identity" means that it follows from the definitions alone.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest

import wortmath as wm

q = wm.liquor
NAN = math.nan
MASS = {"calcium": 40.078, "magnesium": 24.305, "sodium": 22.98977, "potassium": 39.0983,  # IUPAC, abridged
        "sulphate": 96.056, "chloride": 35.45, "bicarbonate": 61.016, "carbonate": 60.008, "hydroxide": 17.007}
CHARGE = {"calcium": 2, "magnesium": 2, "sodium": 1, "potassium": 1, "sulphate": -2, "chloride": -1, "bicarbonate": -1, "carbonate": -2, "hydroxide": -1}
SALTS = {"calcium_sulphate_dihydrate": 2, "calcium_sulphate_anhydrous": 0, "calcium_chloride_dihydrate": 2, "calcium_chloride_anhydrous": 0,
         "magnesium_sulphate_heptahydrate": 7, "magnesium_chloride_hexahydrate": 6, "sodium_bicarbonate": 0, "sodium_carbonate_anhydrous": 0,
         "calcium_carbonate": 0, "calcium_hydroxide": 0, "sodium_chloride": 0, "potassium_chloride": 0, "sodium_hydroxide": 0}
SCALES = ("millimoles", "ppm_caco3", "german_degrees", "french_degrees", "clark_degrees", "grains_per_gallon")
US_GALLON = 3.785411784


def refuses(model: Any, *args: Any, says: str, **named: Any) -> None:
    """Refused under every policy that raises, with a sentence that holds these words."""
    for how in ("raise", "extrapolate"):
        with pytest.raises(wm.RangeError, match=says):
            model(*args, **named, policy=how)


def into(scale: str, equivalents: float) -> Any:
    return getattr(q, f"{scale}_from_equivalents")(equivalents)


def out_of(scale: str, value: float) -> Any:
    return getattr(q, f"equivalents_from_{scale}")(value)


# ---- salts ---------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("salt", "waters"), SALTS.items())
def test_salts_are_neutral_and_whole(salt: str, waters: int) -> None:
    """identity: charges cancel, and ions and water of crystallisation make up the salt."""
    held = {ion: q.salt(salt, ion, 1.0, 1000.0) for ion in MASS}  # 1 g in 1000 L: the mass fraction in mg/L
    charge = sum(CHARGE[ion] * held[ion] / MASS[ion] for ion in MASS)
    assert charge == pytest.approx(0.0, abs=1e-15)
    dry = sum(held.values())
    # Every salt here holds one cation or, for sodium carbonate, two.
    cations = 2 if salt == "sodium_carbonate_anhydrous" else 1
    molar = cations / sum(held[ion] / MASS[ion] for ion in MASS if CHARGE[ion] > 0)
    assert molar * (1 - dry) == pytest.approx(waters * 18.015, abs=1e-10)


def test_salt_traps() -> None:
    """The catalogue: dihydrate for anhydrous calcium chloride is 32 % in calcium; what copies print under the wrong ion for 1 g in 1 US gal."""
    assert q.salt("calcium_chloride_anhydrous", "calcium", 1, 1) / q.salt("calcium_chloride_dihydrate", "calcium", 1, 1) - 1 == pytest.approx(0.32, abs=0.005)
    chalk = q.salt("calcium_carbonate", "carbonate", 1.0, US_GALLON)
    lime = q.salt("calcium_hydroxide", "hydroxide", 1.0, US_GALLON)
    assert chalk == pytest.approx(158, abs=0.5)  # printed under HCO3
    assert 2 * 61.016 / 60.008 * chalk == pytest.approx(322, abs=0.5)  # printed under CO3
    assert 61.016 / 17.007 * lime == pytest.approx(435, abs=0.5)  # printed under OH
    assert q.salt("sodium_chloride", "calcium", 5.0, 20.0) == 0.0
    assert math.isnan(q.salt("sodium_chloride", "calcium", NAN, 20.0))
    assert q.salt("sodium_chloride", "sodium", 2.0, 10.0, 0.5) == pytest.approx(q.salt("sodium_chloride", "sodium", 1.0, 10.0))
    refuses(q.salt, "sodium_chloride", "sodium", 2.0, 0.0, says="volume")
    refuses(q.salt, "sodium_chloride", "sodium", 2.0, 10.0, 95.0, says="95 % is 0.95")
    with pytest.raises((ValueError, TypeError)):
        q.salt("gypsum", "calcium", 1.0, 1.0)


# ---- hardness and alkalinity ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("scale", SCALES)
def test_scales_come_back(scale: str) -> None:
    """identity, also for a residual alkalinity below 0."""
    for value in (-3.0, 0.0, 0.07, 1.0, 250.0):
        assert out_of(scale, into(scale, value)) == pytest.approx(value, abs=1e-15, rel=1e-15)
    assert into(scale, 2.0) == pytest.approx(2 * into(scale, 1.0), rel=1e-15)


def test_hardness_and_alkalinity_in_ppm() -> None:
    """The catalogue: 2.49728 Ca + 4.11792 Mg, and 0.820162 HCO3, in ppm as CaCO3."""
    assert into("ppm_caco3", q.hardness(1.0, 0.0)) == pytest.approx(2.49728, abs=5e-6)
    assert into("ppm_caco3", q.hardness(0.0, 1.0)) == pytest.approx(4.11792, abs=5e-6)
    assert into("ppm_caco3", q.alkalinity(1.0)) == pytest.approx(0.820162, abs=5e-7)


def test_residual_alkalinity_in_equivalents_only() -> None:
    """Kolbach: 200 ppm, 100 and 20 mg/L give 116.9 ppm; the commonest mistake takes 3.5 and 7 for mg/L of the ion and gets 168.6."""
    right = into("ppm_caco3", q.residual_alkalinity(out_of("ppm_caco3", 200.0), 100.0, 20.0))
    wrong = 200 - (100 / 3.5 + 20 / 7)
    assert right == pytest.approx(116.9, abs=0.05)
    assert wrong == pytest.approx(168.6, abs=0.05)
    assert q.residual_alkalinity(2.0, 60.0, 12.0) < q.residual_alkalinity(2.0, 60.0, 0.0) < q.residual_alkalinity(2.0, 0.0, 0.0) == 2.0
    with pytest.raises(wm.RangeError, match="alkalinity"):
        q.residual_alkalinity(12.0, 60.0, 12.0)
    refuses(q.residual_alkalinity, 200.0, 60.0, 12.0, says="alkalinity")  # ppm typed for mEq/L
    refuses(q.residual_alkalinity, 2.0, -1.0, 12.0, says="calcium")


def test_ph_shift() -> None:
    """The catalogue: 0.03 pH for a German degree is 0.0841155 for a mEq/L; at 5.47 L/kg the other slope is the same."""
    assert q.ph_shift.kolbach(1.0) == pytest.approx(0.0841155, abs=5e-8)
    assert q.ph_shift.kolbach(out_of("german_degrees", 4.0)) == pytest.approx(0.12)
    assert q.ph_shift.troester(2.0, 5.4704) == pytest.approx(q.ph_shift.kolbach(2.0), rel=1e-4)
    assert q.ph_shift.troester(2.0, 3.0) == pytest.approx(2 * (0.013 * 3 + 0.013))


# ---- carbonic acid ---------------------------------------------------------------------------------------------------------


def test_constants_of_water_at_25_degrees() -> None:
    """The catalogue: 6.3519, 10.3289, 13.9946 at 25 degC; sea water's 148.9652 would be a different scale."""
    assert q.carbonate_pk1(25.0) == pytest.approx(6.3519, abs=5e-5)
    assert q.carbonate_pk2(25.0) == pytest.approx(10.3289, abs=5e-5)
    assert q.water_pk(25.0) == pytest.approx(13.9946, abs=5e-5)
    assert q.water_pk(25.0) + (148.9802 - 148.9652) / math.log(10) > 14.0


def test_carbonate_ranges_name_the_sibling() -> None:
    with pytest.raises(wm.RangeError, match="plummer_busenberg covers it"):
        q.carbonate_pk1.millero(70.0)
    gap = q.carbonate_pk1.millero(90.0, policy="extrapolate") - q.carbonate_pk1(90.0)
    assert gap == pytest.approx(0.038, abs=0.0005)


def test_activity() -> None:
    """The catalogue: 5 mmol/L moves pK1 by -0.033; without ions nothing moves."""
    assert q.activity(1.0, 5.0) == pytest.approx(-0.033, abs=0.001)
    assert q.activity(2.0, 5.0) == pytest.approx(4 * q.activity(1.0, 5.0))
    assert q.activity(2.0, 0.0) == 0.0


@pytest.mark.parametrize("temperature", [0.0, 25.0, 60.0, 90.0])
def test_fractions(temperature: float) -> None:
    """identity: the shares add up, and two neighbours are equal where the pH is their pK."""
    for ph in np.linspace(4.3, 9.0, 24):
        assert sum(q.carbonate_fractions(ph, temperature)) == pytest.approx(1.0, abs=1e-15)
    first = q.carbonate_fractions(q.carbonate_pk1(temperature), temperature)
    assert first.co2 == pytest.approx(first.bicarbonate, rel=1e-12)
    second = q.carbonate_fractions(q.carbonate_pk2(temperature), temperature, policy="extrapolate")
    assert second.bicarbonate == pytest.approx(second.carbonate, rel=1e-12)


@pytest.mark.parametrize("ph", [6.2, 7.0, 7.6, 8.3, 8.9])
def test_titration_to_its_own_end_point_takes_the_alkalinity(ph: float) -> None:
    """identity: that is what the titration means."""
    for alkalinity in (0.5, 2.0, 6.0):
        for endpoint in (4.3, 4.5):
            assert q.acid_demand(alkalinity, ph, endpoint, 20.0, endpoint) == pytest.approx(alkalinity, rel=1e-12)
        assert q.acid_demand(alkalinity, ph, ph) == pytest.approx(0.0, abs=1e-15)
        assert q.acid_demand(alkalinity, ph, ph + 0.1, policy="extrapolate") < 0
        demand = [q.acid_demand(alkalinity, ph, target) for target in np.linspace(4.4, ph, 12)]
        assert (np.diff(demand) < 0).all()


def test_the_trades_nine_tenths() -> None:
    """Common practice: 0.90 of the alkalinity at pH 5.4; 0.876 from pH 7.0, 0.897 from 8.3 at 25 degC."""
    assert q.acid_demand(4.0, 7.0, 5.4) / 4 == pytest.approx(0.876, abs=0.0005)
    assert q.acid_demand(4.0, 8.3, 5.4) / 4 == pytest.approx(0.897, abs=0.0005)


def test_a_water_without_alkalinity_holds_no_carbonate() -> None:
    """The catalogue: the titration would come out below 0, and so would the acid."""
    assert q.total_carbonate.titration(0.0, 7.0) == 0.0
    assert q.total_carbonate.equilibrium(0.0, 8.0) == 0.0
    assert q.acid_demand(0.0, 7.0, 5.4) > 0.0
    assert math.isnan(q.total_carbonate.titration(NAN, 7.0))
    assert math.isnan(q.total_carbonate.equilibrium(NAN, 7.0))


@pytest.mark.parametrize("endpoint", [7.0, 7.5])
def test_ph_must_lie_above_the_end_point(endpoint: float) -> None:
    refuses(q.total_carbonate.titration, 2.0, 7.0, 25.0, endpoint, says="above the end point")
    refuses(q.acid_demand, 2.0, 7.0, 5.4, 25.0, endpoint, says="above the end point")
    refuses(q.acid_dose, 20.0, 2.0, 7.0, 5.4, "lactic", 0.88, 1206.0, 25.0, endpoint, says="above the end point")


@pytest.mark.parametrize("temperature", [0.0, 10.0, 25.0, 60.0])
def test_ph_comes_back(temperature: float) -> None:
    """identity over the validated region: pH from carbonate and alkalinity, both from the pH."""
    for ph in np.linspace(4.3, 9.0, 48):
        for carbonate in (0.05, 0.5, 2.0, 8.0):
            alkalinity = q.alkalinity.carbonate(carbonate, ph, temperature)
            if 0 <= alkalinity <= 10:
                assert q.ph(carbonate, alkalinity, temperature) == pytest.approx(ph, abs=1e-9)
                if alkalinity > 0:
                    assert q.total_carbonate.equilibrium(alkalinity, ph, temperature) == pytest.approx(carbonate, rel=1e-9)


@pytest.mark.parametrize("temperature", [0.0, 25.0, 130.0])
def test_ph_has_a_root_everywhere(temperature: float) -> None:
    """The balance closes far beyond the validated region, from pure water to a soda lake (below 0 degC 0.1 mol/L of base would pass pH 14)."""
    for carbonate in (0.0, 1e-6, 1e-3, 1.0, 30.0, 1000.0):
        for alkalinity in (0.0, 1e-6, 1e-3, 0.1, 1.0, 10.0, 100.0):
            ph = q.ph(carbonate, alkalinity, temperature, policy="extrapolate")
            assert 0.0 < ph < 14.0
            back = q.alkalinity.carbonate(carbonate, ph, temperature, policy="extrapolate")
            scale = 1e-12 * (1 + carbonate + alkalinity)
            assert back == pytest.approx(alkalinity, rel=1e-11, abs=scale)


def test_pure_water_is_neutral() -> None:
    """identity: half of pKw."""
    assert q.ph(0.0, 0.0, 25.0) == pytest.approx(q.water_pk(25.0) / 2, abs=1e-12)


def test_ph_does_not_blend() -> None:
    """Worked in the catalogue: 5 L of 5 mEq/L at pH 7.0 and 15 L of 1 mEq/L at 8.2 (20 degC) give 7.195, not 7.900."""
    volumes, alkalinities, phs = [5.0, 15.0], [5.0, 1.0], [7.0, 8.2]
    carbonate = q.blend([q.total_carbonate.equilibrium(a, p, 20.0) for a, p in zip(alkalinities, phs)], volumes)
    assert q.ph(carbonate, q.blend(alkalinities, volumes), 20.0) == pytest.approx(7.195, abs=0.0005)
    assert q.blend(phs, volumes) == pytest.approx(7.900, abs=0.0005)
    refuses(q.blend, [], [], says="nothing to blend")
    refuses(q.blend, [1.0, 2.0], [0.0, 0.0], says="nothing to blend")
    refuses(q.blend, [1.0, 2.0], [1.0, -1.0], says="volumes")


# ---- acids -----------------------------------------------------------------------------------------------------------------


def test_acid_equivalents() -> None:
    """identity: half a proton at the pK of a simple acid, all of them at a high pH, none at a low one."""
    assert q.acid_equivalents("lactic", 3.86) == pytest.approx(0.5, abs=1e-15)
    for acid, protons in (("lactic", 1), ("phosphoric", 3), ("citric", 3), ("hydrochloric", 1), ("sulphuric", 2)):
        values = [q.acid_equivalents(acid, p) for p in np.linspace(0.0, 14.0, 57)]
        assert (np.diff(values) >= 0).all()
        assert values[-1] == pytest.approx(protons, rel=0.01)
    assert q.acid_equivalents("phosphoric", 4.67) == pytest.approx(1.0, abs=0.005)
    with pytest.raises((ValueError, TypeError)):
        q.acid_equivalents("acetic", 5.4)


@pytest.mark.parametrize(("acid", "w", "d", "strength"), [
    ("lactic", 0.88, 1206.0, 11.45), ("lactic", 0.80, 1190.0, 10.27), ("phosphoric", 0.85, 1685.0, 14.84), ("phosphoric", 0.75, 1579.0, 12.27),
    ("phosphoric", 0.10, 1053.2, 1.091), ("hydrochloric", 0.37, 1180.0, 11.98), ("sulphuric", 0.96, 1840.0, 36.02)])
def test_common_acids(acid: str, w: float, d: float, strength: float) -> None:
    """The catalogue's table of common solutions at pH 5.4, mEq/mL (densities of most from memory)."""
    half = 0.5 * 10 ** -(3 if strength < 10 else 2)
    assert q.acid_strength(acid, w, d, 5.4) / 1000 == pytest.approx(strength, abs=half)


def test_strength_belongs_to_a_ph() -> None:
    """Printed for 88 % lactic acid: 8.64 mEq/mL at pH 4.3, which is not its strength at mash pH."""
    assert q.acid_strength("lactic", 0.88, 1206.0, 4.3) / 1000 == pytest.approx(8.64, abs=0.005)


@pytest.mark.parametrize("density", [1.206, 499.0])
def test_a_density_in_grams_per_millilitre(density: float) -> None:
    """The dose would be a thousand times too large."""
    refuses(q.acid_strength, "lactic", 0.88, density, 5.4, says="density")
    refuses(q.acid_dose, 20.0, 2.0, 7.0, 5.4, "lactic", 0.88, density, says="density")


def test_acid_dose() -> None:
    """identity: dose times strength is volume times demand; the dose is some mL."""
    dose = q.acid_dose(20.0, 3.0, 7.4, 5.4, "lactic", 0.88, 1206.0, 20.0)
    assert dose * q.acid_strength("lactic", 0.88, 1206.0, 5.4) == pytest.approx(20.0 * q.acid_demand(3.0, 7.4, 5.4, 20.0), rel=1e-13)
    assert 0.004 < dose < 0.006
    for target in (7.4, 7.5):
        refuses(q.acid_dose, 20.0, 3.0, 7.4, target, "lactic", 0.88, 1206.0, says="acid lowers the pH")


def test_dechlorination() -> None:
    """Worked in the catalogue: 20 L at 2 mg/L need 62.7 mg of the potassium salt; 1 mg/L of chlorine adds 1.355 mg/L sulphate."""
    assert q.dechlorination(20.0, 2.0, "potassium_metabisulphite") * 1000 == pytest.approx(62.7, abs=0.05)
    per_gram = q.dechlorination(1000.0, 1.0, "potassium_metabisulphite")
    assert per_gram * 2 * 96.056 / 222.312 == pytest.approx(1.355, abs=0.0005)
    assert q.dechlorination(20.0, 2.0, "sodium_metabisulphite", 0.5) == pytest.approx(2 * q.dechlorination(20.0, 2.0, "sodium_metabisulphite"))
    refuses(q.dechlorination, 20.0, 2.0, "sodium_metabisulphite", 0.0, says="assay")
    with pytest.raises(wm.RangeError, match="validated"):
        q.dechlorination(20.0, 6.0, "sodium_metabisulphite")


# ---- reports ---------------------------------------------------------------------------------------------------------------


def test_ion_balance() -> None:
    """identity: a salt solution balances; sulphate reported as sulphur (x 2.996) does not."""
    gypsum = {ion: q.salt("calcium_sulphate_dihydrate", ion, 10.0, 20.0) for ion in ("calcium", "sulphate")}
    balance = q.ion_balance(gypsum["calcium"], 0, 0, 0, gypsum["sulphate"], 0, 0)
    assert balance.cations == pytest.approx(balance.anions, rel=1e-14)
    assert balance.difference == pytest.approx(0.0, abs=1e-14)
    as_sulphur = q.ion_balance(gypsum["calcium"], 0, 0, 0, gypsum["sulphate"] / 2.996, 0, 0)
    assert as_sulphur.difference > 0.10
    assert 96.056 / 32.06 == pytest.approx(2.996, abs=0.0005)
    pure = q.ion_balance(0, 0, 0, 0, 0, 0, 0)
    assert pure.cations == pure.anions == 0.0
    assert math.isnan(pure.difference)


def test_sulphate_to_chloride() -> None:
    """The catalogue: no chloride gives NaN, no exception."""
    assert q.sulphate_chloride(150.0, 50.0) == pytest.approx(3.0)
    assert math.isnan(q.sulphate_chloride(150.0, 0.0))
    assert math.isnan(q.sulphate_chloride(0.0, 0.0))


# ---- mash ------------------------------------------------------------------------------------------------------------------

GRIST: dict[str, Any] = {"masses": [4500.0, 500.0], "malt_ph": [5.74, 4.7], "a1": [-42.0, -60.0], "a2": [1.5, -2.0], "a3": [-0.5, 0.0]}  # invented malts
LIQUOR: dict[str, Any] = {"volume": 15.0, "alkalinity": 3.0, "ph": 7.4, "calcium": 60.0, "magnesium": 10.0}


def test_mash_ph_balances_the_protons() -> None:
    """identity: at the answer the malts' protons meet those of water, hardness and acid."""
    acid = 12.0
    ph = q.mash_ph(**GRIST, **LIQUOR, acid_added=acid)
    malt = sum(m / 1000 * (a * (ph - p) + b * (ph - p) ** 2 + c * (ph - p) ** 3) for m, p, a, b, c in zip(*GRIST.values()))
    water = q.acid_demand(3.0, 7.4, ph) - 2 * 60 / 40.078 / 3.5 - 2 * 10 / 24.305 / 7
    assert malt + 15.0 * water - acid == pytest.approx(0.0, abs=1e-9)


def test_mash_ph_moves_the_right_way() -> None:
    """identity: acid, hardness and dark malt lower it, alkalinity and a base raise it."""
    here = q.mash_ph(**GRIST, **LIQUOR)
    assert q.mash_ph(**GRIST, **LIQUOR, acid_added=20.0) < here < q.mash_ph(**GRIST, **LIQUOR, acid_added=-20.0)
    assert q.mash_ph(**GRIST, **{**LIQUOR, "calcium": 120.0}) < here < q.mash_ph(**GRIST, **{**LIQUOR, "alkalinity": 5.0})
    assert q.mash_ph(**{**GRIST, "masses": [4000.0, 1000.0]}, **LIQUOR) < here


def test_mash_ph_of_one_malt_in_no_water() -> None:
    """identity: its own pH in distilled water."""
    alone = q.mash_ph([5000.0], [5.7], [-45.0], [0.0], [0.0], 0.0, 0.0, 7.0, 0.0, 0.0)
    assert alone == pytest.approx(5.7, abs=1e-12)


def test_mash_ph_without_an_answer() -> None:
    """The catalogue: not a number where there is no root between pH 4 and 7. A mash without malt is refused."""
    assert math.isnan(q.mash_ph(**GRIST, **LIQUOR, acid_added=5000.0))
    assert math.isnan(q.mash_ph(**GRIST, **{**LIQUOR, "alkalinity": NAN}))
    with pytest.raises(wm.RangeError, match="at least one malt"):
        q.mash_ph([], [], [], [], [], **LIQUOR)
    with pytest.raises(wm.RangeError, match="above the end point"):
        q.mash_ph(**GRIST, **{**LIQUOR, "ph": 4.5}, endpoint_ph=4.5)
    refuses(q.mash_ph, **{**GRIST, "a1": [-42.0, 1.0]}, **LIQUOR, says="a1")
    with pytest.raises(ValueError, match="length"):
        q.mash_ph(**{**GRIST, "a3": [0.0]}, **LIQUOR)
