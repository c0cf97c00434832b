"""How sure the forecast of a batch is: [[uncertain]], the study, the command."""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest

import wortmath as wm
from wortmath import _cli, _spread
from wortmath.uncertainty import Input, budget

DEMO = wm.batch.demo_path().read_text(encoding="utf-8")
DAY = wm.batch.demo_path().with_name("day_demo.toml")

PLAIN = """
[batch]
name = "two pots"
[[step]]
do = "water"
volume = "10 L"
temperature = "20 degC"
[[step]]
do = "dissolve"
sugars = [{ name = "sugar", mass = "1 kg", kind = "sucrose" }]
[[step]]
do = "transfer"
[[step]]
do = "pitch"
mass = "5 g"
"""


def study(text: str, **options: object) -> dict:  # type: ignore[type-arg]
    found: dict = wm.batch.read_text(text).spread(**options)  # type: ignore[type-arg]
    return found


# Closed form: sugar m in V litres of water at 20 degC: extract 100 m/(m + 998.2 V), so that u(P)/P = (1 - P/100) u(m)/m,
# and the gravity follows by the slope of the model that the batch names.
def test_first_order_against_the_closed_form() -> None:
    text = PLAIN + '[[uncertain]]\nname = "sugar"\nkey = "mass"\nuncertainty = "10 g"\n'
    b = wm.batch.read_text(text)
    found = b.spread(defaults=False, monte_carlo=False)
    assert [a["uncertainty"] for a in found["uncertain"]] == [10.0]
    state = b.forecast().steps[1]["after"]
    p = state["extract_degp"]
    slope = (wm.extract.to_gravity(p + 0.01) - wm.extract.to_gravity(p - 0.01)) / 0.02
    out = b.output("extract_degp", [("sugar", "mass")], step=2)
    u = budget.first_order(out, [Input(1000, 10)]).uncertainty
    assert u == pytest.approx(p * (1 - p / 100) * 10 / 1000, rel=1e-4)
    gravity = b.output("gravity_20_20", [("sugar", "mass")], step=2)
    assert budget.first_order(gravity, [Input(1000, 10)]).uncertainty == pytest.approx(u * slope, rel=1e-4)


def test_outputs_of_a_batch_are_models() -> None:
    b = wm.batch.read_text(DEMO)
    out = b.output("original_gravity", [("pale malt syrup", "solids"), (8, "to")])
    assert out(0.80, 19.0) == pytest.approx(b.forecast().results["original_gravity"], rel=1e-12)
    inputs = [Input.rectangular(0.80, 0.02), Input(19.0, 0.2)]
    first = budget.first_order(out, inputs)
    assert np.std(out._block(_spread._numbers.draw(inputs, None, 1, 0, 5000)), ddof=1) == pytest.approx(first.uncertainty, rel=0.05)
    with pytest.raises(ValueError, match="fits"):
        b.output("original_gravity", [("no such thing", "mass")])


@pytest.mark.parametrize("entry, uncertainty", [
    ('uncertainty = "10 g"', 10.0), ('uncertainty = "1 %"', 10.0), ('uncertainty = "0.01 kg"', 10.0), ('limit = "10 g"', 10 / math.sqrt(3)), ('limit = "10 g"\nshape = "triangular"', 10 / math.sqrt(6)),
    ("factor = 2", 388.559), ('uncertainty = "10 g"\ndof = 5', 10.0)])
def test_statements_of_the_file(entry: str, uncertainty: float) -> None:
    found = study(PLAIN + f'[[uncertain]]\nname = "sugar"\nkey = "mass"\n{entry}\n', defaults=False, monte_carlo=False)
    assert found["uncertain"][0]["uncertainty"] == pytest.approx(uncertainty, rel=1e-4)


def test_a_difference_of_temperature_has_no_zero() -> None:
    found = study(PLAIN + '[[uncertain]]\nstep = 1\nkey = "temperature"\nuncertainty = "1.8 degC"\n', defaults=False, monte_carlo=False)
    assert found["uncertain"][0]["uncertainty"] == 1.8
    fahrenheit = study(PLAIN.replace("20 degC", "68 degF") + '[[uncertain]]\nstep = 1\nkey = "temperature"\nuncertainty = "1.8 degF"\n', defaults=False, monte_carlo=False)
    assert fahrenheit["uncertain"][0]["uncertainty"] == pytest.approx(1.0)


@pytest.mark.parametrize("entry, words", [
    ('name = "suger"\nkey = "mass"\nuncertainty = "1 g"', 'no ingredient is called "suger"'),
    ('name = "sugar"\nkey = "weight"\nuncertainty = "1 g"', "known: mass"),
    ('name = "sugar"\nkey = "mass"', "missing; say how sure"),
    ('name = "sugar"\nkey = "mass"\nuncertainty = "1 g"\nlimit = "2 g"', "give one of"),
    ('name = "sugar"\nkey = "mass"\nuncertainty = "1 L"', "L"),
    ('name = "sugar"\nkey = "mass"\nuncertainty = 3', "no unit"),
    ('name = "sugar"\nkey = "mass"\nuncertainty = "-1 g"', "negative"),
    ('name = "sugar"\nkey = "mass"\nfactor = 0.5', "above 1"),
    ('name = "sugar"\nkey = "mass"\nuncertainty = "1 g"\nshape = "rectangular"', "a shape goes with a limit"),
    ('name = "sugar"\nkey = "mass"\ninstrument = "spoon"', "known: fine_hydrometer"),
    ('step = 9\nkey = "mass"\nuncertainty = "1 g"', "there is no step 9"),
    ('key = "mass"\nuncertainty = "1 g"', "say which amount"),
    ('name = "sugar"\nkey = "mass"\nuncertanty = "1 g"', "unknown key"),
])
def test_mistakes_in_the_file_are_named_with_their_line(entry: str, words: str) -> None:
    with pytest.raises(wm.batch.BatchError) as e:
        study(PLAIN + f"[[uncertain]]\n{entry}\n", defaults=False, monte_carlo=False)
    assert words in str(e.value) and str(e.value).startswith(("line 1", "line 2")) and "uncertain" in str(e.value)


def test_readings_of_one_instrument_share_its_scale() -> None:
    two = 'do = "water"\nvolume = "10 L"\ntemperature = "20 degC"\n'
    text = PLAIN.replace(two, two + '[[step]]\n' + two)
    marks = '[[uncertain]]\nstep = {}\nkey = "volume"\ninstrument = "volume_marks"\nlabel = "{}"\n'
    shared = wm.batch.read_text(text + marks.format(1, "pot") + marks.format(2, "pot"))
    apart = wm.batch.read_text(text + marks.format(1, "pot") + marks.format(2, "jug"))
    u = []
    for b in (shared, apart):
        core = _spread._engine.as_brewed(b._core)
        amounts = _spread.amounts_of(b, core, False)
        y, c = _spread.Brewer(core, amounts, [(3, "volume_l")]).sensitivities()
        u.append(_spread._numbers.budget_of_derivatives(y[0], c[0], [a.input for a in amounts], None)["uncertainty"])
    assert u[0] == pytest.approx(math.hypot(0.1 * math.sqrt(2), 0.012 * 20), rel=0.02) and u[1] == pytest.approx(math.hypot(0.1 * math.sqrt(2), 0.012 * 10 * math.sqrt(2)), rel=0.02)


def test_study_of_the_demo() -> None:
    found = study(DEMO, digits=1)
    assert found["converged"] and found["refused"] == 0 and found["trials"] % 10000 == 0
    for key, r in found["results"].items():
        mc, first = r["monte_carlo"], r["first_order"]
        assert mc["uncertainty"] == pytest.approx(first["uncertainty"], rel=0.05), key
        low, high = mc["symmetric"]
        assert low < r["value"] < high
        assert mc["shortest"][1] - mc["shortest"][0] <= (high - low) * (1 + 1e-12)
        assert sum(line["share"] for line in first["budget"]) == pytest.approx(1.0)
        shares = [line["share"] for line in first["budget"]]
        assert shares == sorted(shares, reverse=True)
    bitterness = found["results"]["bitterness_bu"]
    assert bitterness["models"]["high"] > bitterness["value"] > bitterness["models"]["low"]
    assert bitterness["first_order"]["uncertainty"] < bitterness["models"]["rectangular_uncertainty"]  # not mixed in
    package = found["package"]
    assert package["hazard_pressure_upper_99_bar"] > found["results"]["hazard_pressure_bar"]["monte_carlo"]["symmetric"][1] > package["hazard_pressure_bar"]
    assert package["level"] >= package["level_of_the_forecast"]
    json.loads(json.dumps(found, allow_nan=False))


def test_upper_end_raises_the_level_of_the_package() -> None:
    # The worst case by the forecast is below 3.0 volumes, the limit for glass of unknown rating; its upper end is above.
    loud = DEMO.replace('carbonation = "2.3 vol"', 'carbonation = "2.85 vol"').replace("fermentation_confirmed = false", "fermentation_confirmed = true")
    found = study(loud, digits=1, trials=1e5)
    assert found["package"]["level_of_the_forecast"] == 0 and found["results"]["hazard_carbonation_vol"]["value"] < 3.0 < found["package"]["hazard_carbonation_upper_99_vol"]
    assert found["package"]["level"] == 1
    assert "caution" in _spread.text(found)


def test_threads_change_nothing() -> None:
    b = wm.batch.read_text(DEMO)
    core = _spread._engine.as_brewed(b._core)
    amounts = _spread.amounts_of(b, core, True)
    x = _spread._numbers.draw([a.input for a in amounts], None, 5, 3, 500)
    one, two, three = (_spread.Brewer(core, amounts, [(0, "bitterness_bu"), (0, "hazard_pressure_bar")], threads=t)(x) for t in (1, 2, 3))
    assert (one == two).all() and (one == three).all() and len(np.unique(one[0])) == 500


def test_draws_that_cannot_be_brewed_are_counted() -> None:
    text = DEMO + '\n[[uncertain]]\nstep = 11\nkey = "leave"\nuncertainty = "0.5 L"\n'  # negative in 8 %
    found = study(text, digits=1, defaults=False, trials=2e5)
    share = 0.5 * math.erfc(0.7 / 0.5 / math.sqrt(2))
    assert found["refused"] / found["trials"] == pytest.approx(share, rel=0.1) and not found["converged"]
    assert found["package"]["hazard_pressure_upper_99_bar"] is None and found["package"]["level"] == 2


def test_progress_and_interruption() -> None:
    seen: list[int] = []

    def stop(done: int) -> None:
        seen.append(done)
        if done >= 20000:
            raise KeyboardInterrupt
    with pytest.raises(KeyboardInterrupt):
        study(DEMO, progress=stop)
    assert seen == sorted(seen) and seen[-1] == 20000


def test_second_order_of_all_answers_at_once_is_that_of_each() -> None:
    b = wm.batch.read_text(DEMO)
    core = _spread._engine.as_brewed(b._core)
    amounts = [a for a in _spread.amounts_of(b, core, True) if a.place["key"] in ("solids", "to", "attenuation")]
    brewer = _spread.Brewer(core, amounts, [(0, "original_gravity"), (0, "alcohol_by_volume")])
    for j, (u, bias) in enumerate(brewer.second_order()):
        one = _spread._numbers.second_order_of_model(lambda x: float(brewer(np.array(x)[:, None])[j, 0]), brewer.inputs)
        assert (u, bias) == pytest.approx(one[:2], rel=1e-9)


def test_command(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    web, numbers = tmp_path / "s.html", tmp_path / "s.json"
    assert _cli.main(["spread", str(DAY), "--html", str(web), "--json", str(numbers)]) == 0
    out = capsys.readouterr().out
    assert max(map(len, out.splitlines())) <= 80 and "Who contributes" in out and "seed 1" in out
    assert json.loads(numbers.read_text())["format"] == "wortmath spread 1"
    page = web.read_text()
    assert page.startswith("<!doctype html>") and "<script" not in page and "class=bar" in page
    assert _cli.main(["spread", str(DAY), "--json", "-", "--trials", "0"]) == 0
    assert json.loads(capsys.readouterr().out)["trials"] == 0
    for bad in (["spread"], ["spread", "no.toml"], ["spread", str(DAY), "--trials", "10"], ["spread", str(DAY), "--seed", "-1"], ["spread", str(DAY), "--digits", "9"]):
        assert _cli.main(bad) == 2
        captured = capsys.readouterr()
        assert captured.out == "" and len(captured.err.splitlines()) == 1
