"""The readings of a real day against its batch: which does not fit, what probably happened, house constants."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest

import wortmath as wm
from wortmath import _cli, _reconcile

DAY = wm.batch.demo_path().with_name("day_demo.toml")
DEMO = wm.batch.demo_path().read_text(encoding="utf-8")
TEXT = DAY.read_text(encoding="utf-8")


def entry(step: int, quantity: str, value: str, *more: str) -> str:
    return f'\n[[reading]]\nstep = {step}\nquantity = "{quantity}"\nvalue = "{value}"\n' + "\n".join(more) + "\n"


def study(text: str) -> dict:  # type: ignore[type-arg]
    found: dict = wm.batch.read_text(text).reconcile()  # type: ignore[type-arg]
    json.dumps(found, allow_nan=False)
    return found


def test_an_unmixed_top_up() -> None:
    # Total extract says 1.050, the sample reads 1.038.
    found = study(TEXT)
    gravity = next(r for r in found["readings"] if r["quantity"] == "gravity")
    assert gravity["planned"] == pytest.approx(1.050, abs=0.0005) and gravity["value"] == pytest.approx(1.038, abs=1e-4)
    assert not found["fits"] and found["outliers"][0]["name"] == "gravity (step 7)"
    assert found["diagnosis"][0]["cause"] == "top-up not mixed" and found["diagnosis"][0]["probability"] > 0.5
    assert sum(c["probability"] for c in found["diagnosis"]) <= 1 + 1e-9
    assert found["house_constants"] == []


@pytest.mark.parametrize("gravity", ["1.049 SG", "1.050 SG", "1.051 SG", "12.4 degP"])
def test_with_correct_mixing_no_alarm(gravity: str) -> None:
    found = study(TEXT.replace("1.038 SG", gravity))
    assert found["fits"] and found["outliers"] == [] and found["diagnosis"] == []


def _figure(step: int, key: str) -> float:
    return float(wm.batch.read_text(DEMO).forecast().steps[step - 1]["after"][key])


# Readings of the demo as its forecast has them; each fault changes one thing.
GOOD = {"kettle": (6, "volume", "11.73 L"), "wort": (7, "gravity", "1.0886 SG"), "fermenter": (8, "volume", "19.0 L"), "gravity": (8, "gravity", "1.0530 SG"), "end": (10, "gravity", "1.0128 SG")}


def with_readings(text: str = DEMO, **changed: tuple[int, str, str]) -> str:
    return text + "".join(entry(*r) for r in {**GOOD, **changed}.values())


def test_a_good_day_fits() -> None:
    found = study(with_readings())
    assert found["fits"] and found["probability"] > 0.5
    for r in found["readings"]:
        assert r["reconciled_uncertainty"] < r["uncertainty"]
    names = {c["key"]: c for c in found["house_constants"]}
    assert names["evaporation"]["value"] == pytest.approx(2.0, abs=2 * names["evaporation"]["uncertainty"])


@pytest.mark.parametrize("cause, text", [
    ("refractometer in beer", with_readings(end=(10, "gravity", f"{wm.extract.to_gravity(_figure(10, 'refractometer_degbx') / 1.04):.4f} SG"))),
    ("wrong volume mark", with_readings(fermenter=(8, "volume", "22.5 L"))),
    ("evaporation", with_readings(kettle=(6, "volume", "10.2 L"), wort=(7, "gravity", "1.1025 SG"))),
    ("top-up not mixed", with_readings(gravity=(8, "gravity", "1.030 SG"))),
    ("gauge for absolute", with_readings() + entry(15, "pressure", "3.75 bar")),
], ids=lambda x: x if len(x) < 40 else "")
def test_seeded_faults(cause: str, text: str) -> None:
    found = study(text)
    assert not found["fits"]
    assert cause in [c["cause"] for c in found["diagnosis"][:2]], [(c["cause"], round(c["probability"], 2)) for c in found["diagnosis"]]


def test_points_over_the_kettle_volume() -> None:
    before, after = _figure(7, "volume_20c_l"), _figure(8, "volume_20c_l")
    found = study(with_readings(gravity=(8, "gravity", f"{1 + 0.05295 * after / before:.4f} SG")))
    # a sample from the unstirred bottom shows the same: both are named
    assert {"points over the kettle volume", "top-up not mixed"} <= {c["cause"] for c in found["diagnosis"]}


def test_a_warm_sample() -> None:
    # wort of 1.0886 at 45 degC in a hydrometer for 20 degC, from the engine itself
    warm = DEMO.replace('sample_temperature = "20 degC"', 'sample_temperature = "45 degC"')
    shown = wm.batch.read_text(warm).forecast().steps[4]["after"]["hydrometer"]
    found = study(DEMO + entry(5, "volume", "12.2 L") + entry(5, "gravity", f"{shown:.4f} SG") + entry(8, "gravity", "1.0530 SG"))
    assert not found["fits"] and "sample temperature" in [c["cause"] for c in found["diagnosis"][:2]]
    told = study(DEMO + entry(5, "volume", "12.2 L") + entry(5, "gravity", f"{shown:.4f} SG", 'temperature = "45 degC"') + entry(8, "gravity", "1.0530 SG"))
    assert told["fits"]


def test_two_readings_contradict_each_other() -> None:
    found = study(with_readings() + entry(8, "refractometer", "11.0 degBx"))
    assert any({"gravity (step 8)", "refractometer (step 8)"} == set(c["readings"]) for c in found["contradictions"])
    assert not study(with_readings() + entry(8, "refractometer", "13.6 degBx"))["contradictions"]
    # and without a batch
    assert _reconcile.compare(["gravity 1.053 SG", "refractometer 11.0 degBx"])["contradictions"]
    assert not _reconcile.compare(["gravity 1.053 SG", "refractometer 13.6 degBx"])["contradictions"]
    assert _reconcile.compare(["volume 19 L", "volume 21 L"])["contradictions"] and not _reconcile.compare(["volume 19 L", "volume 19.2 L"])["contradictions"]


def test_removing_a_reading_lowers_the_objective_by_its_z_squared() -> None:
    day = _reconcile.Day(wm.batch.read_text(with_readings(fermenter=(8, "volume", "19.6 L"))))
    whole = day.solve(_reconcile.NOTHING)
    n = len(day.amounts)
    for j in range(len(day.readings)):
        assert day.solve(_reconcile.NOTHING, left_out=[j]).objective == pytest.approx(whole.objective - whole.z[n + j] ** 2, abs=0.02)


def test_least_squares_against_scipy() -> None:
    optimize = pytest.importorskip("scipy.optimize")
    day = _reconcile.Day(wm.batch.read_text(with_readings(gravity=(8, "gravity", "1.0545 SG"))))
    n = len(day.amounts)
    inputs = [a.input for a in day.amounts] + [r.input for r in day.readings]
    v = np.asarray(_reconcile._numbers.covariance_of(inputs, None))
    x0 = np.array([i.value for i in inputs])
    root = np.linalg.cholesky(v)

    def residuals(t: np.ndarray) -> np.ndarray:  # type: ignore[type-arg]
        theta = x0[:n] + t * np.sqrt(np.diag(v)[:n])
        full = np.concatenate([theta, day._predicted(theta[:, None], _reconcile.NOTHING)[:, 0]])
        return np.linalg.solve(root, full - x0)
    found = optimize.least_squares(residuals, np.zeros(n), xtol=1e-12, ftol=1e-14, gtol=1e-12)
    r = day.solve(_reconcile.NOTHING)
    assert 2 * found.cost == pytest.approx(r.objective, rel=1e-5)
    assert (found.x * np.sqrt(np.diag(v)[:n]) + x0[:n] - r.values[:n]) / np.sqrt(np.diag(v)[:n]) == pytest.approx(np.zeros(n), abs=1e-3)


def test_house_constants_of_a_folder(tmp_path: Path) -> None:
    truth = 2.4
    for seed in range(4):
        rng = np.random.default_rng(seed)
        real = wm.batch.read_text(DEMO.replace('evaporation = "2 L/h"', f'evaporation = "{truth} L/h"')).forecast().steps
        def read(step: int, key: str, u: float) -> float:
            return float(real[step - 1]["after"][key] + rng.normal(0, u))
        text = DEMO + entry(6, "volume", f"{read(6, 'volume_l', 0.1):.3f} L") + entry(7, "gravity", f"{read(7, 'gravity_20_20', 0.0004):.5f} SG") + entry(8, "gravity", f"{read(8, 'gravity_20_20', 0.0004):.5f} SG")
        (tmp_path / f"{seed}.toml").write_text(text, encoding="utf-8")
    found = _reconcile._folder(tmp_path, True)
    boil_off = next(c for c in found["house_constants"] if c["constant"] == "boil-off")
    assert boil_off["batches"] == 4 and abs(boil_off["value"] - truth) < 3 * boil_off["uncertainty"] and boil_off["uncertainty"] < 0.15


@pytest.mark.parametrize("more, words", [
    (entry(40, "volume", "1 L"), "there is no step 40"), (entry(5, "gravty", "1 L"), "unknown"), (entry(5, "volume", "1 kg"), "kg"), (entry(5, "gravity", "1.050 SG", 'temperature = "300 degC"'), "no temperature of wort"),
    (entry(5, "volume", "10 L", 'uncertainty = "1 L"', 'instrument = "volume_marks"'), "give one of"), (entry(2, "pressure", "1 bar"), "has no pressure"), ("", "no [[reading]]")])
def test_mistakes_are_sentences(more: str, words: str) -> None:
    with pytest.raises(ValueError) as e:
        study(DEMO + more)
    assert words in str(e.value)


def test_command(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    web = tmp_path / "r.html"
    assert _cli.main(["reconcile", str(DAY), "--html", str(web)]) == 0
    out = capsys.readouterr().out
    assert max(map(len, out.splitlines())) <= 80 and "not mixed" in out and "safe" not in out
    assert "not mixed" in web.read_text() and "<script" not in web.read_text()
    assert _cli.main(["reconcile", str(DAY), "--json", "-"]) == 0
    assert json.loads(capsys.readouterr().out)["diagnosis"][0]["cause"] == "top-up not mixed"
    assert _cli.main(["reconcile", "--reading", "gravity 1.053 SG", "--reading", "refractometer 11 degBx"]) == 0
    assert "contradict" in capsys.readouterr().out
    for bad in (["reconcile"], ["reconcile", "no.toml"], ["reconcile", str(tmp_path / "nothing")], ["reconcile", "--reading", "gravity 1.050"], ["reconcile", "--reading", "gravity 1.050 SG", "--reading", "spoons 3"],
                ["reconcile", str(DAY), "--reading", "gravity 1.050 SG"]):
        assert _cli.main(bad) == 2, bad
        captured = capsys.readouterr()
        assert captured.out == "" and len(captured.err.splitlines()) == 1
