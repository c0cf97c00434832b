"""A reading and what to do about it.

Outside the project: balances of mass and extract worked out here from densities alone, the worked dilution of the trade
(gravity points times volume, within its known error), scipy.stats for the statistics of two readings, and the forecast
of a batch in which the choice is carried out as a step.
"""

import json
import math
import subprocess
import sys
from pathlib import Path

import pytest

import wortmath as wm

DEMO = Path(wm.batch.demo_path())


def masses(volume, gravity, temperature):
    p = wm.extract.from_gravity.asbc(gravity)
    m = volume * wm.extract.density.icumsa(p / 100, temperature)
    return m, m * p / 100


def test_water_for_a_wort_that_is_too_strong():
    a = wm.batch.adjust("after_boil", 12.0, 1.061, 60.0, target_gravity=1.055, bitterness=40.0, colour=12.0)
    c = a["add_water"]
    m, x = masses(12.0, 1.061, 60.0)
    grams = x / (wm.extract.from_gravity.asbc(1.055) / 100) - m
    assert c["further"]["mass_g"] == pytest.approx(grams, rel=1e-12)
    assert c["amount"] == pytest.approx(grams / wm.water.density.ptb_1990(20.0), rel=1e-12) and c["unit"] == "L"
    after = c["after"]
    assert after["gravity_20_20"] == pytest.approx(1.055, abs=1e-12)
    assert after["mass_g"] == pytest.approx(m + grams, rel=1e-12)
    # Bitter substances and extract stay; points times volume agree within the rule's error of a per cent.
    assert after["bitterness_bu"] * after["volume_20c_l"] == pytest.approx(40.0 * a.now["volume_20c_l"], rel=1e-12)
    assert 61.0 / 55.0 * a.now["volume_20c_l"] == pytest.approx(after["volume_20c_l"], rel=0.01)
    assert after["colour_srm"] < 12.0


@pytest.mark.parametrize("choice, solids", [("add_extract", 0.80), ("add_dry_extract", 0.97), ("add_sugar", 1.0)])
def test_extract_and_sugar_for_a_wort_that_is_too_weak(choice, solids):
    a = wm.batch.adjust("before_boil", 20.0, 1.040, 20.0, target_gravity=1.048, attenuation=0.75, bitterness=10.0)
    g = a[choice]["amount"]
    m, x = masses(20.0, 1.040, 20.0)
    assert (x + solids * g) / (m + g) == pytest.approx(wm.extract.from_gravity.asbc(1.048) / 100, rel=1e-12)
    after = a[choice]["after"]
    assert after["gravity_20_20"] == pytest.approx(1.048, abs=1e-12) and after["volume_l"] > 20.0
    assert after["alcohol_expected"] > a.now["alcohol_expected"]
    # Sugar ferments completely, malt extract does not.
    assert a["add_sugar"]["after"]["alcohol_expected"] > a["add_extract"]["after"]["alcohol_expected"]


def test_boiling_longer_is_told_in_minutes_with_a_rate():
    a = wm.batch.adjust("after_boil", 20.0, 1.045, 20.0, target_gravity=1.050, evaporation=3.0)
    c = a["boil_longer"]
    m, x = masses(20.0, 1.045, 20.0)
    gone = m - x / (wm.extract.from_gravity.asbc(1.050) / 100)
    assert c["unit"] == "min" and c["amount"] == pytest.approx(60 * gone / wm.water.density.ptb_1990(20.0) / 3.0, rel=1e-12)
    assert c["after"]["gravity_20_20"] == pytest.approx(1.050, abs=1e-12)
    bare = wm.batch.adjust("after_boil", 20.0, 1.045, 20.0, target_gravity=1.050)["boil_longer"]
    assert bare["unit"] == "L" and bare["amount"] == pytest.approx(c["further"]["water_l"], rel=1e-12)
    assert any("scalds" in s for s in a.cautions) and any("burners" in s for s in a.cautions)
    late = wm.batch.adjust("in_fermenter", 20.0, 1.045, 20.0, target_gravity=1.050)
    assert all(x["do"] != "boil_longer" for x in late.choices) and any("left the kettle" in s for s in late.not_possible)


def test_volume_and_gravity_at_once():
    a = wm.batch.adjust("in_fermenter", 17.0, 1.050, 20.0, target_gravity=1.048, target_volume=20.0)
    c = a["extract_and_water"]
    assert c["after"]["volume_l"] == pytest.approx(20.0, rel=1e-12) and c["after"]["gravity_20_20"] == pytest.approx(1.048, abs=1e-12)
    boil = wm.batch.adjust("before_boil", 25.0, 1.030, 20.0, target_gravity=1.050, target_volume=20.0)["extract_and_boil"]
    assert boil["after"]["volume_l"] == pytest.approx(20.0, rel=1e-12) and boil["after"]["gravity_20_20"] == pytest.approx(1.050, abs=1e-12)
    much = wm.batch.adjust("in_fermenter", 20.0, 1.070, 20.0, target_gravity=1.040, target_volume=21.0)
    assert any("more extract than" in s for s in much.not_possible)
    volume = wm.batch.adjust("in_fermenter", 17.0, 1.050, 18.0, target_volume=20.0)["add_water"]
    assert volume["after"]["volume_l"] == pytest.approx(20.0, rel=1e-12)


def test_blend_of_two_worts_and_of_two_beers():
    a = wm.batch.adjust("in_fermenter", 10.0, 1.060, 20.0, target_gravity=1.050, blend_gravity=1.040, bitterness=30.0, blend_bitterness=20.0)
    c = a["blend"]
    m1, x1 = masses(10.0, 1.060, 20.0)
    m2, x2 = masses(c["amount"], 1.040, 20.0)
    assert (x1 + x2) / (m1 + m2) == pytest.approx(wm.extract.from_gravity.asbc(1.050) / 100, rel=1e-12)
    assert 20.0 < c["after"]["bitterness_bu"] < 30.0
    assert any("must lie between" in s for s in wm.batch.adjust("in_fermenter", 10.0, 1.060, target_gravity=1.050, blend_gravity=1.055).not_possible)
    assert any("there are 1.00 L" in s for s in wm.batch.adjust("in_fermenter", 10.0, 1.060, target_gravity=1.050, blend_gravity=1.040, blend_volume=1.0).not_possible)
    b = wm.batch.adjust("after_fermentation", 10.0, 1.012, 20.0, original_gravity=1.065, target_alcohol=5.5, blend_gravity=1.010, blend_original_gravity=1.042)
    assert b["blend"]["after"]["alcohol_by_volume"] == pytest.approx(5.5, abs=1e-9)


def test_beer_is_diluted_fed_and_sweetened():
    beer = dict(volume=19.0, gravity=1.012, temperature=20.0, original_gravity=1.060)
    a = wm.batch.adjust("after_fermentation", **beer, target_alcohol=5.0)
    c = a["add_water"]
    # Ethanol stays: per cent by volume times volume at 20 degC (Balling's and the definition's small terms aside).
    assert c["after"]["alcohol_by_volume"] == pytest.approx(5.0, abs=1e-9)
    assert c["after"]["alcohol_by_volume"] * c["after"]["volume_20c_l"] == pytest.approx(a.now["alcohol_by_volume"] * a.now["volume_20c_l"], rel=1e-9)
    fed = wm.batch.adjust("after_fermentation", **beer, target_alcohol=7.5)
    f = fed["feed"]
    assert f["after"]["alcohol_by_volume"] == pytest.approx(7.5, abs=1e-9)
    ethanol = f["amount"] / 2.0665
    litres = (f["after"]["alcohol_by_volume"] * f["after"]["volume_20c_l"] - fed.now["alcohol_by_volume"] * fed.now["volume_20c_l"]) / 100
    assert litres * 789.24 == pytest.approx(ethanol, rel=2e-3)     # density of ethanol at 20 degC, OIML tables (from memory)
    assert any("carbon dioxide" in s for s in fed.cautions)
    sweet = wm.batch.adjust("after_fermentation", **beer, target_gravity=1.016)
    assert sweet["sweeten"]["after"]["gravity_20_20"] == pytest.approx(1.016, abs=1e-9)
    assert sweet["sweeten"]["after"]["alcohol_by_volume"] < sweet.now["alcohol_by_volume"] and any("burst" in s for s in sweet.cautions)
    with pytest.raises(ValueError, match="original gravity is needed"):
        wm.batch.adjust("after_fermentation", 19.0, 1.012, target_alcohol=5.0)


def test_choices_carried_out_in_a_batch_give_what_was_told():
    """The plan's own engine: water, syrup or sugar put into the fermenter as a step."""
    text = DEMO.read_text(encoding="utf-8")
    batch = wm.batch.read_text(text)
    planned = next(s["after"] for s in batch.forecast().steps if s["do"] == "pitch")
    for wanted, step in ((planned["gravity_20_20"] - 0.004, 'do = "top_up"\nmass = "{} g"\ntemperature = "15 degC"'),
                         (planned["gravity_20_20"] + 0.004, 'do = "dissolve"\nextracts = [{{ mass = "{} g", kind = "syrup", solids = "80 %", colour = "12 EBC" }}]')):
        a = batch.adjust("in_fermenter", planned["volume_l"], planned["gravity_20_20"], planned["temperature_c"], target_gravity=wanted)
        c = a.choices[0]
        grams = c["further"].get("mass_g", c["amount"])
        changed = text.replace('[[step]]\ndo = "pitch"', "[[step]]\n" + step.format(repr(grams)) + '\n\n[[step]]\ndo = "pitch"', 1)
        f = wm.batch.read_text(changed).forecast()
        after = next(s["after"] for s in f.steps if s["do"] == "pitch")
        assert after["gravity_20_20"] == pytest.approx(wanted, abs=1e-10)
        assert after["volume_20c_l"] == pytest.approx(c["after"]["volume_20c_l"], rel=1e-9)
        assert after["bitterness_bu"] == pytest.approx(c["after"]["bitterness_bu"], rel=1e-9)
        assert after["colour_srm"] == pytest.approx(c["after"]["colour_srm"], rel=1e-6)
        assert c["after"]["alcohol_expected"] == pytest.approx(next(s["after"]["alcohol_by_volume"] for s in f.steps if s["do"] == "ferment"), rel=2e-3)


def test_against_a_plan_what_is_not_given_comes_from_the_file():
    batch = wm.batch.read(DEMO)
    a = batch.adjust("after_boil", 9.0, 1.075, 25.0)
    assert a.target_gravity == a.planned["gravity_20_20"] and a["boil_longer"]["unit"] == "min"
    assert a["add_extract"]["sentence"].endswith("pale malt syrup")
    assert a.now["bitterness_bu"] * a.now["volume_20c_l"] == pytest.approx(a.planned["bitterness_bu"] * a.planned["volume_20c_l"], rel=1e-12)
    early = batch.adjust("before_boil", 14.0, 1.064, 60.0)
    assert early["boil_less"]["unit"] == "min" if any(c["do"] == "boil_less" for c in early.choices) else early["boil_longer"]["unit"] == "min"
    done = batch.adjust("after_fermentation", 18.4, 1.010, 18.0)
    assert done.choices[0]["after"]["alcohol_by_volume"] == pytest.approx(done.planned["alcohol_by_volume"], abs=1e-9)


@pytest.mark.parametrize("more, words", [({}, "nothing is wanted"), ({"target_gravity": 0.99}, "above that of water"), ({"target_alcohol": 4.0}, "after_fermentation"),
                                         ({"target_gravity": 1.05, "solids": 1.2}, "solids"), ({"target_volume": -3.0}, "above 0")])
def test_refusals_are_sentences(more, words):
    with pytest.raises(ValueError, match=words):
        wm.batch.adjust("after_boil", 12.0, 1.06, 20.0, **more)
    with pytest.raises(ValueError, match="not a stage"):
        wm.batch.adjust("lunch", 12.0, 1.06, target_gravity=1.05)
    with pytest.raises(TypeError):
        wm.batch.adjust("after_boil", 12.0, 1.06, target=1.05)


# ------------------------------------------------------------------------------------------------ has it finished?

def test_slope_and_its_probability_against_scipy():
    stats = pytest.importorskip("scipy.stats")
    days, gravities, u = [8.0, 10.0, 12.0, 15.0], [1.0140, 1.0131, 1.0128, 1.0122], 0.0005
    j = wm.batch.judge_fermentation(days, gravities, u)
    line = stats.linregress(days, gravities)
    assert j.slope_per_day == pytest.approx(line.slope, rel=1e-10)
    mean = sum(days) / 4
    assert j.slope_uncertainty == pytest.approx(u / math.sqrt(sum((d - mean) ** 2 for d in days)), rel=1e-12)
    assert j.probability_of_no_change == pytest.approx(stats.norm.cdf(line.slope / j.slope_uncertainty), rel=1e-9)
    # Two readings: the difference against sqrt(2) times the uncertainty of one.
    two = wm.batch.judge_fermentation([0.0, 2.0], [1.0150, 1.0140], u)
    assert two.drop == pytest.approx(0.0010, abs=1e-15) and two.drop_uncertainty == pytest.approx(u * math.sqrt(2), rel=1e-12)
    assert two.probability_of_no_change == pytest.approx(stats.norm.sf(0.0010 / (u * math.sqrt(2))), rel=1e-9)


@pytest.mark.parametrize("days, gravities, more, verdict", [
    ([8, 12], [1.020, 1.014], {}, "falling"),
    ([10, 11], [1.0122, 1.0121], {}, "cannot_tell"),
    ([10, 14, 18], [1.0121, 1.0120, 1.0120], {}, "steady"),
    ([10, 14, 18], [1.0121, 1.0120, 1.0120], {"limit_gravity": 1.0118}, "steady_at_the_end"),
    ([10, 14, 18], [1.0241, 1.0240, 1.0240], {"expected_gravity": 1.012}, "stuck"),
    ([10, 14], [1.0120, 1.0160], {}, "rising")])
def test_verdicts(days, gravities, more, verdict):
    j = wm.batch.judge_fermentation(days, gravities, **more)
    assert j.verdict == verdict and len(j.cautions) == 2 and any("burst" in c for c in j.cautions)
    assert "safe" not in j.text()


def test_false_alarms_at_the_stated_rate():
    """A steady gravity is called falling in 5 % of 4,000 seeded pairs (binomial 99.9 % band); a fall of the size that is
    said to be visible nine times in ten is found as often."""
    import random
    random.seed(7)
    u, n = 0.0005, 4000
    visible = wm.batch.judge_fermentation([0, 3], [1.012, 1.012], u).smallest_visible_per_day
    alarms = sum(wm.batch.judge_fermentation([0, 3], [random.gauss(1.012, u), random.gauss(1.012, u)], u).verdict == "falling" for _ in range(n))
    found = sum(wm.batch.judge_fermentation([0, 3], [random.gauss(1.012 + 3 * visible, u), random.gauss(1.012, u)], u).verdict == "falling" for _ in range(n))
    assert abs(alarms / n - 0.05) < 3.29 * math.sqrt(0.05 * 0.95 / n)
    assert abs(found / n - 0.90) < 3.29 * math.sqrt(0.9 * 0.1 / n)


def test_gas_that_is_still_to_come():
    """One gravity point of drop is about half a volume (the chapter's figure)."""
    j = wm.batch.judge_fermentation([10, 14, 18], [1.014, 1.014, 1.014], limit_gravity=1.010, original_gravity=1.050)
    assert j.remaining_gravity_drop == pytest.approx(0.004, abs=1e-12)
    assert j.remaining_co2_vol == pytest.approx(4 * 0.5, rel=0.06)
    assert j.remaining_co2_upper_vol > 1.13 * j.remaining_co2_vol
    p = [wm.extract.from_gravity.asbc(g) for g in (1.050, 1.014, 1.010)]
    grams = wm.priming.unfinished.balling(*p, wm.gravity.to_density.definition(1.014, policy="extrapolate"))
    assert j.remaining_co2_vol == pytest.approx(wm.carbonation.volumes.real_gas(grams), rel=1e-12)


# ------------------------------------------------------------------------------------------------ the command line

def run(*arguments):
    return subprocess.run([sys.executable, "-m", "wortmath", "adjust", *map(str, arguments)], capture_output=True, text=True, encoding="utf-8")


def test_adjust_on_the_command_line(tmp_path):
    page = tmp_path / "a.html"
    done = run("--stage", "after_boil", "--volume", "12 L", "--gravity", "1.061", "--temperature", "60 degC", "--target-gravity", "1.055", "--html", page)
    assert done.returncode == 0 and "1.30 L of water" in done.stdout and max(map(len, done.stdout.splitlines())) <= 80
    assert "Add 1.30" in page.read_text(encoding="utf-8") or "add 1.30" in page.read_text(encoding="utf-8")
    numbers = json.loads(run("--stage", "after_boil", "--volume", "3.170064628 gal", "--gravity", "14.9737 degP", "--temperature", "140 degF", "--target-gravity", "1.055", "--json", "-").stdout)
    assert numbers["choices"][0]["amount"] == pytest.approx(1.30, abs=0.01)
    against = run(DEMO, "--stage", "in_fermenter", "--volume", "18.4 L", "--gravity", "1.046", "--temperature", "18 degC")
    assert against.returncode == 0 and "Planned" in against.stdout and "pale malt syrup" in against.stdout
    judged = run("--reading", "10=1.0135", "--reading", "13=1.0130", "--expected", "1.012", "--original-gravity", "1.050", "--json", "-")
    assert json.loads(judged.stdout)["verdict"] == "cannot_tell"


@pytest.mark.parametrize("arguments, words", [
    (["--volume", "12 L"], "--stage is missing"), (["--stage", "after_boil", "--volume", "12", "--gravity", "1.05", "--target-gravity", "1.04"], "has no unit"),
    (["--stage", "after_boil", "--volume", "12 L", "--gravity", "12", "--target-gravity", "1.04"], "degP"), (["--stage", "after_boil", "--volume", "12 L", "--gravity", "1.05"], "nothing is wanted"),
    (["--stage", "noon"], "noon"), (["--reading", "3"], "has no gravity"), (["--reading", "3=1.01"], "two readings"), (["nothere.toml", "--stage", "after_boil", "--volume", "12 L", "--gravity", "1.05"], "nothere.toml"),
    (["--stage", "after_boil", "--volume", "12 L", "--gravity", "1.05", "--target-gravity", "1.04", "--expected", "1.01"], "belongs to --reading")])
def test_bad_input_is_one_sentence_and_exit_status_2(arguments, words):
    done = run(*arguments)
    assert done.returncode == 2 and done.stdout == "" and words in done.stderr and len(done.stderr.strip().splitlines()) == 1
