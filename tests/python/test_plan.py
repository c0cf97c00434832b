"""Derivatives, plans and the move to another kettle.

Outside the project: central differences and closed forms for derivatives, scipy.optimize for solutions on the same
inputs, the reader itself for the answers (a plan is a batch file; what it gives is read off the file again).
"""

import json
import math
import random
import re
import subprocess
import sys
from pathlib import Path

import pytest

import wortmath as wm
from wortmath import _core

DATA = Path(wm.batch.demo_path()).parent
DEMO = (DATA / "demo.toml").read_text(encoding="utf-8")
STEPS = {s["do"]: s["number"] for s in wm.batch.read_text(DEMO).steps}   # of those that occur more than once the last
REFERENCE = Path(__file__).parent.parent / "reference" / "batch"

# An invented batch with everything that a plan can get hold of.
GRAIN = """
[batch]
name = "Weir Porter"     # invented
[[step]]
do = "mash"
temperature = "67 degC"
water = "15 L"
grains = [
  { name = "pale", mass = "4 kg", colour = "2.5 degL", extract = "79 %" },
  { name = "dark", mass = "250 g", colour = "400 degL", extract = "70 %" },
]
[[step]]
do = "lauter"
sparges = [{ volume = "12 L" }]
[[step]]
do = "boil"
minutes = "60 min"
evaporation = "3 L/h"
hops = [{ name = "early", mass = "30 g", alpha = "8 %", minutes = "60 min" }, { name = "late", mass = "25 g", alpha = "5 %", minutes = "10 min" }]
sugars = [{ name = "table sugar", mass = "200 g", kind = "sucrose", minutes = "5 min" }]
[[step]]
do = "chill"
to = "20 degC"
[[step]]
do = "transfer"
[[step]]
do = "top_up"
volume = "1 L"
[[step]]
do = "pitch"
mass = "11 g"
[[step]]
do = "ferment"
days = "10 d"
temperature = "20 degC"
attenuation = "75 %"
[[step]]
do = "prime"
carbonation = "2.2 vol"
[[step]]
do = "bottle"
volume = "0.5 L"
hottest = "26 degC"
"""


def target(result, value):
    return f"\n[[target]]\nresult = \"{result}\"\nvalue = {value if isinstance(value, (int, float)) else json.dumps(value)}\n"


def free(key, name=None, step=None, least=None, most=None):
    text = f'\n[[free]]\nkey = "{key}"\n'
    for k, v in (("name", name), ("least", least), ("most", most)):
        text += f'{k} = "{v}"\n' if v is not None else ""
    return text + (f"step = {step}\n" if step else "")


def results(text):
    f = wm.batch.read_text(text).forecast()
    return {**f.results, **(f.package or {})}


# Result, value as the file has it, and what the result must then be.
OG, BU, EBC, ABV, VOL = "original_gravity", "bitterness_bu", "colour_ebc", "alcohol_by_volume", "volume_packaged_l"
REACHABLE = {
    "gravity by extract": (DEMO, [(OG, "1.060 SG", 1.060)], [("mass", "pale malt syrup")]),
    "gravity by two extracts": (DEMO, [(OG, "1.045 SG", 1.045)], [("mass", "pale malt syrup"), ("mass", "pale dry malt extract")]),
    "extract in degP by the mark": (DEMO, [(OG, "12.5 degP", None)], [("to", None, STEPS["top_up"])]),
    "bitterness by the first hop": (DEMO, [(BU, "45 BU", 45.0)], [("mass", "bittering hop")]),
    "bitterness by minutes": (DEMO, [(BU, "27 BU", 27.0)], [("minutes", "bittering hop", None, "10 min", "60 min")]),
    "three at once": (DEMO, [(OG, "1.057 SG", 1.057), (BU, "36 BU", 36.0), ("colour_srm", "24 EBC", None)], [("mass", "pale malt syrup"), ("mass", "caramel malt"), ("mass", "bittering hop")]),
    "alcohol and volume": (DEMO, [(ABV, "6 %", 6.0), (VOL, "20 L", 20.0)], [("mass", "pale malt syrup"), ("to", None, STEPS["top_up"])]),
    "carbonation and priming": (DEMO, [("carbonation_vol", "2.6 vol", 2.6), (OG, "1.050 SG", 1.050)], [("carbonation", None, STEPS["prime"]), ("mass", "pale malt syrup")]),
    "final gravity by attenuation": (DEMO, [("final_gravity", "1.009 SG", 1.009)], [("attenuation", None, STEPS["ferment"])]),
    "grain: gravity, bitterness, colour, volume": (GRAIN, [(OG, "1.056 SG", 1.056), (BU, "30 BU", 30.0), ("colour_srm", "25 SRM", 25.0), (VOL, "22 L", 22.0)],
                                                   [("mass", "pale"), ("mass", "dark"), ("mass", "early"), ("mass", "late"), ("volume", None, 6), ("water", None, 1)]),
    "grain: bitterness ratio": (GRAIN, [("bitterness_ratio", 0.6, 0.6), ("original_extract_degp", "13 degP", 13.0)], [("mass", "late"), ("mass", "early"), ("mass", "table sugar"), ("mass", "pale")]),
    "grain: boil-off and minutes": (GRAIN, [(OG, "1.052 SG", 1.052)], [("evaporation", None, 3, "1 L/h", "6 L/h")]),
    "serving pressure": (DEMO, [("serving_pressure_bar", "0.9 bar", 0.9)], [("carbonation", None, STEPS["prime"])]),
}
IMPOSSIBLE = {
    "paler than the dark malt allows": (GRAIN, [("colour_srm", "4 SRM"), (OG, "1.056 SG")], [("mass", "pale")], "colour 4 SRM cannot be reached with this much dark"),
    "stronger than the limit": (DEMO, [(OG, "1.090 SG"), (BU, "30 BU")], [("mass", "pale malt syrup", None, "1 kg", "3 kg"), ("mass", "bittering hop")], "original gravity 1.0900 cannot be reached"),
    "nothing free that matters": (DEMO, [("colour_srm", "30 SRM")], [("mass", "bittering hop")], "none of the free amounts"),
}


def file_of(base, targets, frees):
    return base + "".join(target(t[0], t[1]) for t in targets) + "".join(free(*f) for f in frees)


@pytest.mark.parametrize("case", REACHABLE)
def test_planned_file_meets_its_targets(case):
    base, targets, frees = REACHABLE[case]
    plan = wm.batch.read_text(file_of(base, targets, frees)).plan()
    assert plan.met and plan.iterations < 50
    found = results(plan.toml)
    for key, text, wanted in targets:
        if text == "12.5 degP":
            key, wanted = "original_extract_degp", 12.5
        if text == "24 EBC":
            key, wanted = "colour_ebc", 24.0
        assert abs(found[key] - wanted) <= 1e-9 * max(1.0, abs(wanted)), key
    # Nothing else of the file has changed: with the numbers of the free amounts struck out, both are the same.
    for a in plan.amounts:
        assert json.dumps(a["after_text"]) in plan.toml or a["after_text"] in plan.toml
    changed = sum(x != y for x, y in zip(plan.toml.splitlines(), file_of(base, targets, frees).splitlines()))
    assert 0 < changed <= len(frees) and len(plan.toml.splitlines()) == len(file_of(base, targets, frees).splitlines())


@pytest.mark.parametrize("case", IMPOSSIBLE)
def test_what_cannot_be_reached_is_named_with_the_closest(case):
    base, targets, frees, words = IMPOSSIBLE[case]
    plan = wm.batch.read_text(file_of(base, targets, frees)).plan()
    assert not plan.met
    missed = [t for t in plan.targets if not t["met"]]
    assert len(missed) == 1 and words in missed[0]["sentence"] and plan.sentences[0] == missed[0]["sentence"]
    # The others are met, and the closest is what the file gives.
    found = results(plan.toml)
    for t in plan.targets:
        assert abs(found[t["result"]] - t["reached"]) < 1e-12
        if t["met"]:
            assert abs(found[t["result"]] - t["wanted"]) < 1e-9


def test_closest_is_closest():
    """Against a scan of the only free amount."""
    base, targets, frees, _ = IMPOSSIBLE["stronger than the limit"]
    plan = wm.batch.read_text(file_of(base, targets, frees)).plan()
    syrup = next(a for a in plan.amounts if a["name"] == "pale malt syrup")
    assert syrup["at_limit"] == "most" and syrup["after"] == pytest.approx(3000.0, abs=1e-9)
    assert next(t for t in plan.targets if t["result"] == OG)["reached"] == pytest.approx(results(DEMO.replace('"2.5 kg"', '"3 kg"'))[OG], abs=1e-9)


def test_more_freedom_than_targets_is_the_smallest_relative_change():
    """The same problem by scipy's SLSQP, from the same forecasts."""
    optimize = pytest.importorskip("scipy.optimize")
    text = file_of(DEMO, [(OG, "1.060 SG"), (BU, "40 BU")], [("mass", "pale malt syrup"), ("mass", "pale dry malt extract"), ("mass", "bittering hop"), ("mass", "garden hop", STEPS["dry_hop"]), ("to", None, STEPS["top_up"])])
    plan = wm.batch.read_text(text).plan()
    assert plan.met
    start = [a["before"] for a in plan.amounts]

    def at(z):
        t = DEMO
        for (old, form), x, s in zip((('"2.5 kg", kind', '"{:.15g} g", kind'), ('"600 g"', '"{:.15g} g"'), ('"32 g"', '"{:.15g} g"'), ('"30 g"', '"{:.15g} g"'), ('to = "19 L"', 'to = "{:.15g} L"')), z, start):
            assert t.count(old) == 1
            t = t.replace(old, form.format(float(x * s)))
        return results(t)
    best = optimize.minimize(lambda z: sum((x - 1.0) ** 2 for x in z), [1.0] * 5, method="SLSQP", options={"ftol": 1e-14, "maxiter": 200},
                             constraints=[{"type": "eq", "fun": lambda z: (at(z)[OG] - 1.060) * 100}, {"type": "eq", "fun": lambda z: (at(z)[BU] - 40.0) / 40}])
    assert best.success
    ours = [a["after"] / a["before"] for a in plan.amounts]
    assert ours == pytest.approx(list(best.x), abs=2e-4)
    assert sum((x - 1.0) ** 2 for x in ours) <= best.fun + 1e-7


def test_square_problem_against_scipy_root():
    optimize = pytest.importorskip("scipy.optimize")
    text = file_of(DEMO, [(OG, "1.057 SG"), (BU, "36 BU")], [("mass", "pale malt syrup"), ("mass", "bittering hop")])
    plan = wm.batch.read_text(text).plan()

    def off(z):
        z = [float(x) for x in z]
        r = results(DEMO.replace('"2.5 kg", kind', f'"{z[0]!r} kg", kind').replace('"32 g"', f'"{10 * z[1]!r} g"'))
        return [(r[OG] - 1.057) * 100, r[BU] - 36.0]
    root = optimize.root(off, [2.5, 3.2], tol=1e-13)
    assert [a["after"] for a in plan.amounts] == pytest.approx([1000 * root.x[0], 10 * root.x[1]], rel=1e-8)


def test_from_any_reasonable_start():
    """A square problem has one answer, wherever it starts from."""
    random.seed(4)
    answers = []
    for _ in range(25):
        x, y, z = (math.exp(random.uniform(-1.2, 1.0)) for _ in range(3))
        start = DEMO.replace('"2.5 kg", kind', f'"{2.5 * x:.4f} kg", kind').replace('"32 g"', f'"{32 * y:.3f} g"').replace('"350 g"', f'"{350 * z:.3f} g"')
        plan = wm.batch.read_text(file_of(start, [(OG, "1.057 SG"), (BU, "36 BU"), ("colour_srm", "13 SRM")], [("mass", "pale malt syrup"), ("mass", "bittering hop"), ("mass", "caramel malt")])).plan()
        assert plan.met and plan.iterations < 50
        answers.append([a["after"] for a in plan.amounts])
    for a in answers:
        assert a == pytest.approx(answers[0], rel=1e-8)


def test_random_targets_within_reach_are_met():
    """Amounts drawn at random, forecast, and asked for: the plan finds amounts that give the same results."""
    random.seed(11)
    for _ in range(20):
        a, b, c = (math.exp(random.uniform(-0.5, 0.5)) for _ in range(3))
        there = results(GRAIN.replace('"4 kg"', f'"{4 * a!r} kg"').replace('"30 g"', f'"{30 * b!r} g"').replace('"250 g"', f'"{250 * c!r} g"'))
        plan = wm.batch.read_text(file_of(GRAIN, [(OG, f"{there[OG]!r} SG"), (BU, f"{there[BU]!r} BU"), ("colour_srm", f"{there['colour_srm']!r} SRM")], [("mass", "pale"), ("mass", "early"), ("mass", "dark")])).plan()
        assert plan.met and plan.iterations < 50
        assert [x["after"] for x in plan.amounts] == pytest.approx([4000 * a, 30 * b, 250 * c], rel=1e-6)


def test_new_uses_outside_the_checked_range_are_told():
    plan = wm.batch.read_text(file_of(DEMO, [(OG, "1.105 SG")], [("mass", "pale malt syrup")])).plan()
    assert plan.met
    models = {o["model"] for o in plan.newly_outside_range}
    assert "extract.to_gravity.asbc" in models
    before = {(o["step"], o["model"], o["argument"]) for o in wm.batch.read_text(DEMO).forecast().outside_range}
    after = {(o["step"], o["model"], o["argument"]) for o in plan.batch.forecast().outside_range}
    assert {(o["step"], o["model"], o["argument"]) for o in plan.newly_outside_range} == after - before
    quiet = wm.batch.read_text(file_of(DEMO, [(OG, "1.054 SG")], [("mass", "pale malt syrup")])).plan()
    assert quiet.newly_outside_range == []


@pytest.mark.parametrize("windows", [False, True])
def test_unusual_text_keeps_its_form(windows):
    text = GRAIN.replace('name = "Weir Porter"', 'name = "Wehr – Bräu ☕"').replace('"early", mass = "30 g"', '"früh ☕", mass = "30 g"') + target(BU, "33 BU") + free("mass", "früh ☕")
    if windows:
        text = text.replace("\n", "\r\n")
    plan = wm.batch.read_text(text).plan()
    assert plan.met
    assert plan.toml == text.replace('"30 g"', json.dumps(plan.amounts[0]["after_text"]))


def test_units_of_the_file_stay():
    text = DEMO.replace('"32 g"', '"1.1 oz"').replace('"2.5 kg", kind', '"5.5 lb", kind').replace('efficiency = "35 %"', "efficiency = 0.35")
    plan = wm.batch.read_text(file_of(text, [(BU, "40 BU"), (OG, "1.060 SG"), ("colour_srm", "11 SRM")], [("mass", "bittering hop"), ("mass", "pale malt syrup"), ("efficiency", None, STEPS["steep"])])).plan()
    assert [re.sub(r"[\d.]+", "#", a["after_text"]) for a in plan.amounts] == ["# oz", "# lb", "#"]


BAD = {
    "no target": (free("mass", "bittering hop"), "target: missing", None),
    "no free": (target(BU, "30 BU"), "free: missing", None),
    "unknown result": (target("bitternes", "30 BU") + free("mass", "bittering hop"), "not a result", "target"),
    "no unit": (target(BU, "30") + free("mass", "bittering hop"), "has no unit", "target"),
    "bare number": (target(BU, 30) + free("mass", "bittering hop"), "in quotes", "target"),
    "wrong unit": (target(OG, "5 kg") + free("mass", "bittering hop"), "the unit kg is for a mass", "target"),
    "degP for final gravity": (target("final_gravity", "3 degP") + free("mass", "bittering hop"), "as SG", "target"),
    "twice the same target": (target(BU, "30 BU") * 2 + free("mass", "bittering hop"), "a target already", "target"),
    "two scales of one colour are two results": (target("colour_srm", "8 SRM") + target("colour_srm", "9 SRM") + free("mass", "bittering hop"), "a target already", "target"),
    "unknown name": (target(BU, "30 BU") + free("mass", "no such hop"), "there is no ingredient", "free"),
    "name twice": (target(BU, "30 BU") + free("mass", "garden hop"), "add the number of the step", "free"),
    "name twice in one step": (target(BU, "30 BU") + free("mass", "garden hop", STEPS["boil"]), "names of their own", "free"),
    "unknown step": (target(BU, "30 BU") + free("mass", None, 99), "there is no step 99", "free"),
    "unknown key": (target(BU, "30 BU") + free("weight", "bittering hop"), "known: mass, alpha, minutes", "free"),
    "default": (target(OG, "1.05 SG") + free("absorption", None, STEPS["steep"]), "not in the file", "free"),
    "limits": (target(BU, "30 BU") + free("mass", "bittering hop", None, "50 g", "20 g"), "more than the least", "free"),
    "limit of another kind": (target(BU, "30 BU") + free("mass", "bittering hop", None, "50 mL"), "for a volume", "free"),
    "unknown key of free": (target(BU, "30 BU") + free("mass", "bittering hop") + 'lowest = "3 g"\n', "unknown key", "free"),
    "not a table": ("target = 3\n" + DEMO, "not a list of tables", None),
    "free twice": (target(BU, "30 BU") + free("mass", "bittering hop") * 2, "free already", "free"),
}


@pytest.mark.parametrize("case", BAD)
def test_bad_plans_are_named_with_their_line(case):
    extra, words, table = BAD[case]
    text = extra if extra.endswith(DEMO) else DEMO + extra
    with pytest.raises(wm.batch.BatchError) as e:
        wm.batch.read_text(text).plan()
    assert words in str(e.value)
    assert re.match(r"line \d+: ", str(e.value))
    if table:
        lines = text.splitlines()
        assert lines[max(0, e.value.line - 6):e.value.line + 1].count(f"[[{table}]]") >= 1


# ------------------------------------------------------------------------------------------------ derivatives

def test_gradient_of_a_model_against_closed_forms():
    g, t, k = 1.052, 55.0, 4.15
    d = wm.bitterness.utilisation.tinseth.gradient(g, t, k)
    u = wm.bitterness.utilisation.tinseth(g, t, k)
    assert d["boil_gravity"] == pytest.approx(u * math.log(0.000125), rel=1e-13)
    assert d["boil_minutes"] == pytest.approx(1.65 * 0.000125 ** (g - 1) * 0.04 * math.exp(-0.04 * t) / k, rel=1e-13)
    assert d["brewery_constant"] == pytest.approx(-u / k, rel=1e-13)
    assert wm.colour.from_grist.morey.gradient(20.0)["mcu"] == pytest.approx(1.4922 * 0.6859 * 20.0 ** (0.6859 - 1.0), rel=1e-13)
    m, p, q = 20000.0, 15.0, 12.0
    assert list(wm.balance.dilute.mass.gradient(m, p, q).values()) == pytest.approx([p / q - 1, m / q, -m * p / q ** 2], rel=1e-13)


def test_gradient_of_lists_words_results_and_refusals():
    d = wm.bitterness.utilisation.tinseth_gravity_steps.gradient([1.04, 1.05, 1.06], [20.0, 20.0, 20.0])
    assert len(d["boil_gravities"]) == 3 and all(x < 0 for x in d["boil_gravities"])
    e = 1e-6
    f = wm.bitterness.utilisation.tinseth_gravity_steps
    for i in range(3):
        up, down = ([1.04, 1.05, 1.06] for _ in range(2))
        up[i] += e
        down[i] -= e
        assert d["boil_gravities"][i] == pytest.approx((f(up, [20.0] * 3) - f(down, [20.0] * 3)) / (2 * e), rel=1e-6)
    assert set(wm.balance.blend.volume.gradient(10.0, 12.0, 5.0, 8.0)) == {"volume", "extract"}
    with pytest.raises(TypeError, match="words"):
        wm.colour.word.bjcp_2021.gradient(10.0)
    with pytest.raises(TypeError, match="caution"):
        _core.model_gradient("package.caution.project_rule", [0.0, 1.0, 2.0, None, 0.0])
    with pytest.raises(wm.RangeError):
        wm.bitterness.utilisation.tinseth.gradient(1.5, 60.0)
    with pytest.raises(TypeError):
        wm.bitterness.utilisation.tinseth.gradient("1.05", 60.0)


def test_derivatives_of_inverses_are_reciprocal():
    """Newton's iterations: dy/dx of a model times dx/dy of its inverse is one."""
    for path in ("asbc", "icumsa", "lincoln", "buhl"):
        forward = getattr(wm.extract.from_gravity, path)
        back = getattr(wm.extract.to_gravity, path)
        for s in (1.02, 1.05, 1.08):
            assert forward.gradient(s)["gravity"] * back.gradient(forward(s))["extract"] == pytest.approx(1.0, abs=1e-9)


@pytest.mark.parametrize("name", ["demo.toml", *sorted(p.name for p in REFERENCE.glob("*.toml"))])
@pytest.mark.parametrize("key", ["original_gravity", "bitterness_bu", "colour_srm", "alcohol_by_volume", "volume_packaged_l", "hottest_pressure_bar", "hazard_pressure_bar", "energy_kj_per_l", "final_gravity"])
def test_gradient_of_a_batch_against_central_differences(name, key):
    """Every amount that the file gives, moved by itself in the text of the file."""
    path = DATA / name if name == "demo.toml" else REFERENCE / name
    batch = wm.batch.read(path)
    found = batch.gradient(key)
    assert found == batch.forecast().gradient(key) and len(found) > 40
    # Kinks: whole bottles aside, a mark that is just full, a minute at the end of the boil, a gas that just leaves.
    checked = moved = 0
    for i, d in enumerate(found):
        if not d.given or d.step is None or d.value == 0.0:
            continue
        h = abs(d.value) * 1e-5
        try:
            values = [results(_core_with(batch.text, i, d.value + s * h))[key] for s in (-1, 1)]
        except wm.batch.BatchError:
            continue   # at a limit of the file
        middle = batch.forecast().results.get(key, (batch.forecast().package or {}).get(key))
        if None in values:
            continue
        slopes = [(values[1] - middle) / h, (middle - values[0]) / h]
        central = (values[1] - values[0]) / (2 * h)
        size = abs(middle / d.value)
        if abs(slopes[0] - slopes[1]) > 1e-3 * (abs(central) + 1e-6 * size):
            assert min(abs(d.derivative - s) for s in slopes) <= 1e-3 * abs(d.derivative) + 1e-6 * size   # a kink: one of the two sides
            continue
        assert d.derivative == pytest.approx(central, rel=2e-6, abs=3e-9 * size), (d.step, d.name, d.key)
        checked += 1
        moved += central != 0.0
    assert checked > 20 and moved >= 1


def _core_with(text, index, value):
    return _core.with_amounts(text, [(index, value)])


# ------------------------------------------------------------------------------------------------ another kettle

@pytest.mark.parametrize("name", ["demo.toml", *sorted(p.name for p in REFERENCE.glob("*.toml"))])
@pytest.mark.parametrize("factor", [0.5, 1.0, 1.7])
def test_rescaled_batch_keeps_what_the_beer_is(name, factor):
    path = DATA / name if name == "demo.toml" else REFERENCE / name
    batch = wm.batch.read(path)
    before = batch.forecast()
    big = batch.rescale(factor)
    after = big.batch.forecast()
    assert big.met
    for key in ("original_gravity", "bitterness_bu"):
        assert after.results[key] == pytest.approx(before.results[key], abs=1e-9, rel=1e-9)
    pitched = [next(s["after"]["volume_20c_l"] for s in f.steps if s["do"] == "pitch") for f in (before, after)]
    assert pitched[1] == pytest.approx(factor * pitched[0], rel=1e-9)
    assert after.results["colour_srm"] == pytest.approx(before.results["colour_srm"], rel=0.02)
    # Ingredients of a kind keep their proportions.
    for kind in ("grains", "extracts", "hops"):
        pairs = [(x["mass"]["value"], y["mass"]["value"]) for s, t in zip(batch.steps, big.batch.steps) if s["do"] != "dry_hop" for x, y in zip(s.get(kind, []), t.get(kind, []))]
        for x, y in pairs:
            assert y / x == pytest.approx(pairs[0][1] / pairs[0][0], rel=1e-9)


def test_rescaled_to_a_kettle_that_is_too_small():
    """What the kettle cannot hold is topped up, in a step of its own where the file had none."""
    text = GRAIN.replace('[[step]]\ndo = "top_up"\nvolume = "1 L"\n', "")
    batch = wm.batch.read_text(text)
    free_boil, small = batch.rescale(1.0), batch.rescale(1.0, largest_boil=18.0, top_up_temperature=12.0)
    assert not free_boil.top_up_put_in and free_boil.top_up_l == 0.0
    assert small.top_up_put_in and small.met and small.boil_volume_l <= 18.0 * (1 + 1e-6)
    steps = small.batch.steps
    at = next(n for n, s in enumerate(steps) if s["do"] == "top_up")
    assert steps[at - 1]["do"] == "transfer" and steps[at]["temperature"]["value"] == 12.0
    after = small.batch.forecast()
    grams = next(s["reported"]["added_g"] for s in after.steps if s["do"] == "top_up")
    assert small.top_up_l == pytest.approx(grams / wm.water.density.ptb_1990(12.0), rel=1e-9) and small.top_up_l > 3.0
    assert after.results["original_gravity"] == pytest.approx(batch.forecast().results["original_gravity"], abs=1e-9)
    assert small.volume_l == pytest.approx(free_boil.volume_l, rel=1e-9)


def test_rescale_changes_the_equipment():
    batch = wm.batch.read_text(DEMO.replace('to = "68 degC"', 'to = "88 degC"'))
    p = batch.rescale(2.0, evaporation=3.5, leave=1.0, rack_leave=1.2, packaging_loss=0.4, altitude=250.0)
    steps = {s["do"]: s for s in p.batch.steps}
    assert steps["boil"]["evaporation"]["value"] == 3.5 and steps["transfer"]["leave"]["value"] == 1.0
    assert steps["rack"]["leave"]["value"] == 1.2 and steps["bottle"]["loss"]["value"] == 0.4
    assert p.batch.forecast().boiling_temperature_c < batch.forecast().boiling_temperature_c
    for bad, words in (({"factor": -1.0}, "above 0"), ({"factor": 2.0, "volume": 30.0}, "not both"), ({"dead_space": 1.0}, "dead space"), ({"largest_boil": 2.0}, "does not fit")):
        with pytest.raises(ValueError, match=words):
            batch.rescale(**bad)
    # What does not brew at the new place is said by the engine, with its line.
    with pytest.raises(ValueError, match=r"line \d+, step \d+ \(heat\): to: .* above the boiling temperature"):
        wm.batch.read_text(wm.batch.demo_path().read_text(encoding="utf-8").replace('to = "68 degC"', 'to = "95 degC"')).rescale(2.0, altitude=4500.0)
    with pytest.raises(TypeError):
        batch.rescale(2.0, kettle=3)


# ------------------------------------------------------------------------------------------------ the command line

def run(*arguments):
    return subprocess.run([sys.executable, "-m", "wortmath", *map(str, arguments)], capture_output=True, text=True, encoding="utf-8")


def test_plan_on_the_command_line(tmp_path):
    demo, out, page = DATA / "plan_demo.toml", tmp_path / "planned.toml", tmp_path / "plan.html"
    done = run("plan", demo, "--write", out, "--html", page)
    assert done.returncode == 0, done.stderr
    assert "All targets are met" in done.stdout and max(map(len, done.stdout.splitlines())) <= 80 + len(str(out))
    card = json.loads(run("card", out, "--json", "-").stdout)["results"]
    assert card[OG] == pytest.approx(1.057, abs=1e-9) and card[BU] == pytest.approx(36.0, rel=1e-9) and card[EBC] == pytest.approx(24.0, rel=1e-9)
    assert "# A batch file with targets" in out.read_text(encoding="utf-8")
    html = page.read_text(encoding="utf-8")
    assert html.startswith("<!DOCTYPE html>") and "pale malt syrup" in html and "<script" not in html
    numbers = json.loads(run("plan", demo, "--json", "-").stdout)
    assert numbers["met"] and numbers["toml"] == out.read_text(encoding="utf-8")


def test_plan_that_cannot_be_met_and_bad_files(tmp_path):
    base, targets, frees, words = IMPOSSIBLE["paler than the dark malt allows"]
    bad, out = tmp_path / "pale.toml", tmp_path / "out.toml"
    bad.write_text(file_of(base, targets, frees), encoding="utf-8")
    done = run("plan", bad, "--write", out)
    assert done.returncode == 1 and "cannot be reached" in done.stdout and "the closest is" in done.stdout and not out.exists()
    done = run("plan", DATA / "demo.toml")
    assert done.returncode == 2 and done.stdout == "" and "target: missing" in done.stderr
    assert run("plan", tmp_path / "none.toml").returncode == 2
    done = run("rescale", DATA / "demo.toml", "--volume", "38")
    assert done.returncode == 2 and "has no unit" in done.stderr
    done = run("rescale", DATA / "demo.toml", "--volume", "10 gal", "--write", out)
    assert done.returncode == 0 and out.exists(), done.stderr
    assert json.loads(run("rescale", DATA / "demo.toml", "--volume", "10 gal", "--json", "-").stdout)["volume_l"] == pytest.approx(37.85411784, rel=1e-9)


# ------------------------------------------------------------------------------------------------ every model

def test_every_model_at_its_reference_points_against_central_differences():
    """The points are those of the reference tables, so inside every model's range; words and truth values stand still."""
    from expression import argument, read_table
    models, compared, kinks, faults, seen = set(), 0, 0, [], {}
    for chapter in ("attenuation", "bitterness", "carbonation", "colour", "extract", "process", "refractometer"):
        for row in read_table(f"points/{chapter}.csv")[1]:
            path = row["path"]
            if seen.setdefault(path, 0) >= 2:
                continue
            model = _core._models[path]
            kinds = {i.name: i.kind for i in model.inputs}
            if all(o.kind in ("word", "words", "truth") for o in model.outputs) or path.split(".")[1] == "caution":
                continue
            by_name = {i.name: i for i in model.inputs}
            given = {k: argument(by_name[k], v) for k, _, v in (pair.partition("=") for pair in row["inputs"].split(";") if pair)}
            value = model(**given, policy="extrapolate")
            values = list(value) if isinstance(value, tuple) else [value]
            if any(isinstance(v, float) and v != v for v in values):
                continue
            seen[path] += 1
            found = model.gradient(**given, policy="extrapolate")
            found = [found[o.name] for o in model.outputs] if len(values) > 1 else [found]
            models.add(path)
            for name, x in given.items():
                if kinds[name] in ("word", "truth"):
                    continue
                for at, v in enumerate(x if isinstance(x, list) else [x]):
                    if at % 7 or v is None:
                        continue   # of long lists a seventh
                    h = max(abs(v), 1e-3) * (1e-5 if abs(v) < 2 and "grav" in name else 1e-4)

                    def moved(by):
                        y = [*x[:at], v + by, *x[at + 1:]] if isinstance(x, list) else v + by
                        r = model(**{**given, name: y}, policy="extrapolate")
                        return list(r) if isinstance(r, tuple) else [r]
                    try:
                        up, down, half_up, half_down = moved(h), moved(-h), moved(h / 2), moved(-h / 2)
                    except ValueError:
                        continue   # the edge of what is possible
                    for k, o in enumerate(model.outputs):
                        if o.kind in ("word", "words", "truth"):
                            continue
                        wide, narrow = (up[k] - down[k]) / (2 * h), (half_up[k] - half_down[k]) / h
                        best, ahead, behind = (4 * narrow - wide) / 3, (half_up[k] - values[k]) * 2 / h, (values[k] - half_down[k]) * 2 / h
                        noise = 2e-13 * abs(values[k]) / h + 1e-14 / h
                        if not math.isfinite(best):
                            continue
                        if abs(ahead - behind) > 0.05 * (abs(ahead) + abs(behind)) + 100 * noise:
                            kinks += 1   # a corner of a table, a whole number
                            continue
                        exact = found[k][name][at] if isinstance(x, list) else found[k][name]
                        compared += 1
                        if abs(exact - best) > 2e-6 * abs(best) + 3 * (abs(best - narrow) + noise):
                            faults.append(f"{path}({row['inputs'][:90]}): d/d{name}[{at}] = {exact!r}, by differences {best!r}")
    assert not faults, f"{len(faults)} of {compared}\n" + "\n".join(faults[:20])
    everything = {p for p, m in _core._models.items() if m.inputs and not all(o.kind in ("word", "words", "truth") for o in m.outputs) and p.split(".")[1] != "caution"}
    assert len(models) > 480 and compared > 2000 and kinks < compared / 20
    assert {p for p in everything - models if any(i.kind not in ("word", "truth") for i in _core._models[p].inputs)} == set()
