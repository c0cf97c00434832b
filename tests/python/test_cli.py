"""The command line: what each command prints, every way to get it wrong, and that nothing half-made is left behind."""

from __future__ import annotations

import csv
import io
import json
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any

import pytest

import wortmath as wm
from wortmath import _ask, _card, _cli, _core, _units, _words

from expression import REFERENCE

FOLDER = REFERENCE / "batch"
GOOD = [*sorted(FOLDER.glob("*.toml")), wm.batch.demo_path()]
BAD = sorted((FOLDER / "bad").glob("*.toml"))
DEMO = wm.batch.demo_path().read_text(encoding="utf-8")


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]) -> Any:
    def call(*arguments: str) -> tuple[int, str, str]:
        code = _cli.main([*arguments])
        out, err = capsys.readouterr()
        return code, out, err
    return call


def shell(command: str, **env: str) -> subprocess.CompletedProcess[str]:
    """The command as a user's shell runs it; `wortmath` stands for this very package."""
    places = os.pathsep.join(p for p in (str(Path(wm.__file__).parents[1]), os.environ.get("PYTHONPATH", "")) if p)
    return subprocess.run(["bash", "-c", f"set -o pipefail; wortmath() {{ {sys.executable!r} -m wortmath \"$@\"; }}; {command}"], capture_output=True, text=True, encoding="utf-8", timeout=120,
                          env={**os.environ, "PYTHONPATH": places, **env})


def ferments(**changes: str) -> str:
    """The demo with some of its amounts changed."""
    text = DEMO
    for key, value in changes.items():
        text, count = re.subn(rf"(?m)^{key} = .*$", lambda _: f"{key} = {value}", text)
        assert count == 1, key
    return text


@pytest.fixture
def dangerous(tmp_path: Path) -> Path:
    """A batch whose package meets a rule for stop."""
    path = tmp_path / "dangerous.toml"
    path.write_text(ferments(carbonation='"4.5 vol"', hottest='"40 degC"', fermentation_confirmed="true"), encoding="utf-8")
    return path


# ------------------------------------------------------------------------------------------------ first steps

def test_alone_says_three_things(run: Any) -> None:
    code, out, err = run()
    assert (code, err) == (0, "")
    assert [line.split("  ")[1].strip() for line in out.splitlines() if line.startswith("  wortmath")] == ["wortmath demo", "wortmath demo --write my.toml", "wortmath card my.toml"]


@pytest.mark.parametrize("arguments", [["--help"], ["-h"], ["help"], ["help", "card"], *([c, "--help"] for c in _cli.COMMANDS), *([c, "-h"] for c in _cli.COMMANDS)])
def test_help(run: Any, arguments: list[str]) -> None:
    code, out, err = run(*arguments)
    assert (code, err) == (0, "")
    assert "wortmath" in out and len(out) > 200


def test_help_explains_every_option(run: Any) -> None:
    options = {"card": ["--units", "--start", "--html", "--json", "--strict"], "demo": ["--write", "--force", "--units"], "models": ["--count"], "eval": ["--all", "--table", "--csv", "--policy"]}
    for command, words in options.items():
        out = run(command, "--help")[1]
        assert all(w in out for w in words)


def test_version(run: Any) -> None:
    assert run("--version") == (0, f"wortmath {wm.__version__}\n", "")


def test_as_module_and_as_script() -> None:
    done = shell("wortmath --version")
    assert (done.returncode, done.stdout, done.stderr) == (0, f"wortmath {wm.__version__}\n", "")
    script = Path(sys.executable).with_name("wortmath")
    if script.exists():
        assert subprocess.run([script, "--version"], capture_output=True, text=True).stdout.startswith("wortmath ")


# ------------------------------------------------------------------------------------------------ wrong arguments

WRONG = [
    (["crad", "x"], ["crad", "card"]),
    (["my.toml"], ["wortmath card my.toml"]),
    (["--units", "us"], ["--units", "after the command"]),
    (["card"], ["batch file is missing", "wortmath card"]),
    (["card", "a.toml", "b.toml"], ['"b.toml"', "too many"]),
    (["card", "a.toml", "--strct"], ["--strct", "--strict"]),
    (["card", "a.toml", "--strict=yes"], ["--strict", "yes"]),
    (["card", "a.toml", "--units"], ["--units", "value"]),
    (["card", "a.toml", "--units", "imperial"], ["--units", "imperial", "us or metric"]),
    (["card", "a.toml", "--start", "24:00"], ["--start", "24:00", "09:00"]),
    (["card", "a.toml", "--start", "nine"], ["--start", "nine"]),
    (["card", "a.toml", "--start", "9:60"], ["9:60"]),
    (["card", "a.toml", "--json"], ["--json", "value"]),
    (["card", "a.toml", "--jso", "x"], ["--jso", "--json"]),
    (["card", "no such file.toml"], ["no such file.toml"]),
    (["card", str(FOLDER)], [str(FOLDER), "directory"]),
    (["card", str(GOOD[0]), "--json", "-", "--html", "-"], ["--json", "--html"]),
    (["card", str(GOOD[0]), "--json", ""], ["--json", "file name"]),
    (["card", str(GOOD[0]), "--json", str(FOLDER)], ["folder"]),
    (["card", str(GOOD[0]), "--json", "no/such/folder/x.json"], ["no/such/folder/x.json", "folder"]),
    (["card", str(GOOD[0]), "--json", "a\0b"], ["cannot be a file name"]),
    (["demo", "x"], ['"x"', "too many"]),
    (["demo", "--force"], ["--force", "--write"]),
    (["demo", "--write", ""], ["file name"]),
    (["demo", "--write", str(FOLDER), "--force"], ["folder"]),
    (["demo", "--write", "x.toml", "--json", "-"], ["--write", "--json"]),
    (["demo", "--write", "x.toml", "--strict", "--start", "9:00"], ["--start", "--strict"]),
    (["demo", "--write", "no/such/folder/x.toml"], ["no/such/folder/x.toml", "folder"]),
    (["models", "zzzzzz"], ["zzzzzz"]),
    (["models", "prming"], ["prming", "priming"]),
    (["models", "--cnt"], ["--cnt", "--count"]),
    (["models", "?!"], ["?!"]),
    (["eval"], ["model is missing", "wortmath eval"]),
    (["eval", "extract"], ["topic", "extract.from_gravity"]),
    (["eval", "tinseth"], ["bitterness.utilisation.tinseth"]),
    (["eval", "extract.from_gravty", "gravity=1.05"], ["extract.from_gravity"]),
    (["eval", "extract.from_gravity"], ["gravity", "missing"]),
    (["eval", "extract.from_gravity", "1.048"], ["1.048", "gravity=1.048"]),
    (["eval", "extract.from_gravity", "gravty=1.048"], ["gravty", "gravity"]),
    (["eval", "extract.from_gravity", "gravity=1.04", "gravity=1.05"], ["gravity", "twice"]),
    (["eval", "extract.from_gravity", "gravity="], ["gravity", "number"]),
    (["eval", "extract.from_gravity", "gravity=heavy"], ["heavy", "number"]),
    (["eval", "extract.from_gravity", "gravity=nan"], ["nan", "number"]),
    (["eval", "extract.from_gravity", "gravity=1e999"], ["1e999", "too large"]),
    (["eval", "extract.from_gravity", "gravity=12"], ["12", "degrees Plato"]),
    (["eval", "extract.from_gravity", "gravity=1048"], ["1048", "1.048"]),
    (["eval", "extract.from_gravity", "gravity=12 degP"], ["degP", "extract.to_gravity"]),
    (["eval", "extract.from_gravity", "gravity=1,048"], ["1,048", "1.048"]),
    (["eval", "extract.from_gravity", "gravity=1.03:1.05:0.01"], ["--table"]),
    (["eval", "extract.from_gravity", "gravity=1.110"], ["1.11", "nbs", "--policy extrapolate"]),
    (["eval", "extract.from_gravity", "gravity=1.03:1.05", "--table"], ["start:end:step"]),
    (["eval", "extract.from_gravity", "gravity=1.03:1.05:0", "--table"], ["step"]),
    (["eval", "extract.from_gravity", "gravity=1.03:1.01:0.01", "--table"], ["step"]),
    (["eval", "extract.from_gravity", "gravity=1:1.1:0.000001", "--table"], ["10000"]),
    (["eval", "bitterness.utilisation", "boil_gravity=1:1.1:0.001", "boil_minutes=0:120:1", "--table"], ["rows", "10000"]),
    (["eval", "extract.from_gravity", "gravity=1.05:1.2:0.05", "--table", "--policy", "raise"], ["1.15"]),
    (["eval", "extract.from_gravity", "--table"], ["gravity", "missing"]),
    (["eval", "extract.from_gravity", "gravity=1.05", "--policy", "ignore"], ["--policy", "ignore", "extrapolate"]),
    (["eval", "bitterness.utilisation", "boil_gravity=1.05", "boil_minutes=60 mim"], ["mim", "min"]),
    (["eval", "bitterness.utilisation", "boil_gravity=1.05", "boil_minutes=5 kg"], ["kg", "min"]),
    (["eval", "water.density", "temperature=64 F"], ["degF"]),
    (["eval", "water.density", "temperature=150"], ["150", "degF"]),
    (["eval", "bitterness.ratio", "bitterness=30", "gravity=1.05"], ["no default", "bu_gu"]),
    (["eval", "package.caution", "package=tin", "gauge_pressure=2", "carbonation=2"], ["tin", "keg"]),
    (["eval", "package.caution", "package=keg", "gauge_pressure=2", "carbonation=2", "fermentation_confirmed=perhaps"], ["perhaps", "yes or no"]),
    (["eval", "bitterness.utilisation.tinseth_gravity_steps", "boil_gravities=1.05,1.06", "step_minutes=10"], ["boil_gravities", "step_minutes"]),
    (["eval", "carbonation.volumes", "concentration=2.4 vol"], ["vol"]),
]


@pytest.mark.parametrize(("arguments", "words"), WRONG, ids=lambda v: " ".join(v)[:60].replace("\0", "0") if v else "nothing")
def test_wrong_arguments(run: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, arguments: list[str], words: list[str]) -> None:
    monkeypatch.chdir(tmp_path)
    code, out, err = run(*arguments)
    assert code == 2
    assert out == ""
    assert err.endswith("\n") and "Traceback" not in err and "usage:" not in err
    for word in words:
        assert word in err, err
    assert list(tmp_path.iterdir()) == []


# ------------------------------------------------------------------------------------------------ wrong files

@pytest.mark.parametrize("path", BAD, ids=lambda p: p.stem)
def test_wrong_batches_leave_no_file(run: Any, tmp_path: Path, path: Path) -> None:
    expected = dict(line.split(" = ", 1) for line in path.with_suffix(".expect").read_text(encoding="utf-8").splitlines())
    code, out, err = run("card", str(path), "--json", str(tmp_path / "x.json"))
    assert (code, out) == (2, "")
    for word in expected["words"].split("|"):
        assert word.lower() in err.lower()
    if "line" in expected:
        assert any(err.startswith(f"line {n}") for n in expected["line"].split("|"))
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(("name", "content", "words"), [
    ("empty", b"", ["empty"]), ("latin", "name = \"M\u00e4rzen\"".encode("latin-1"), ["UTF-8"]), ("large", b"#" * 1_100_000, ["1 MB"]), ("binary", bytes(range(256)), []), ("broken", b"[batch\n", ["line 1"])])
def test_files_that_are_no_batches(run: Any, tmp_path: Path, name: str, content: bytes, words: list[str]) -> None:
    path = tmp_path / name
    path.write_bytes(content)
    code, out, err = run("card", str(path), "--json", str(tmp_path / "x.json"))
    assert (code, out) == (2, "") and err.count("\n") == 1
    assert all(w.lower() in err.lower() for w in words), err
    assert [p.name for p in tmp_path.iterdir()] == [name]


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="an administrator may read everything")
def test_file_without_permission(run: Any, tmp_path: Path) -> None:
    path = tmp_path / "secret.toml"
    path.write_text(DEMO, encoding="utf-8")
    path.chmod(0)
    code, out, err = run("card", str(path))
    assert (code, out) == (2, "") and "secret.toml" in err


# ------------------------------------------------------------------------------------------------ writing

def test_the_batch_file_is_never_overwritten(run: Any, tmp_path: Path) -> None:
    path = tmp_path / "my.toml"
    path.write_text(DEMO, encoding="utf-8")
    link = tmp_path / "link.toml"
    link.symlink_to(path)
    for target in (path, link):
        code, out, err = run("card", str(path), "--json", str(target))
        assert (code, out) == (2, "") and "batch file itself" in err
    assert path.read_text(encoding="utf-8") == DEMO


def test_one_name_for_two_files(run: Any, tmp_path: Path) -> None:
    code, out, err = run("demo", "--json", str(tmp_path / "x"), "--html", str(tmp_path / "." / "x"))
    assert (code, out) == (2, "") and "different names" in err and list(tmp_path.iterdir()) == []


def test_all_files_or_none(run: Any, tmp_path: Path) -> None:
    code, out, err = run("demo", "--json", str(tmp_path / "x.json"), "--html", str(tmp_path / "no" / "x.html"))
    assert (code, out) == (2, "") and "x.html" in err
    assert list(tmp_path.iterdir()) == []


def test_a_full_disk_leaves_the_old_file(run: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "x.json"
    path.write_text("old")

    def full(*_: Any, **__: Any) -> Any:
        raise OSError(28, "No space left on device")
    for module, function in ((tempfile, "mkstemp"), (os, "replace"), (os, "chmod")):
        with monkeypatch.context() as patch:
            patch.setattr(module, function, full)
            code, out, err = run("demo", "--json", str(path))
        assert (code, out) == (2, "") and "disk is full" in err
        assert [p.name for p in tmp_path.iterdir()] == ["x.json"] and path.read_text() == "old"


def test_files_keep_their_mode(run: Any, tmp_path: Path) -> None:
    old, new = tmp_path / "old.json", tmp_path / "new.json"
    old.write_text("old")
    old.chmod(0o640)
    plain = tmp_path / "plain"
    plain.write_text("")
    assert run("demo", "--json", str(old))[0] == 0 and run("demo", "--json", str(new))[0] == 0
    assert old.stat().st_mode & 0o777 == 0o640
    assert new.stat().st_mode == plain.stat().st_mode


@pytest.mark.skipif(not os.path.exists("/dev/null"), reason="no devices here")
def test_devices_stay_devices(run: Any) -> None:
    assert run("demo", "--json", os.devnull)[0] == 0
    assert not os.path.isfile(os.devnull)


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="no device that is always full")
def test_standard_output_that_takes_nothing() -> None:
    done = shell("wortmath demo > /dev/full")
    assert done.returncode == 2 and "disk is full" in done.stderr and "Traceback" not in done.stderr


def test_standard_output_that_is_closed() -> None:
    done = shell("wortmath demo >&-")
    assert done.returncode == 2 and "closed" in done.stderr and "Traceback" not in done.stderr


def test_nobody_reads_on() -> None:
    done = shell("wortmath models bitterness.utilisation | head -n 1; wortmath demo | head -n 1")
    assert done.stderr == "" and "bitterness.utilisation" in done.stdout


def test_interrupted_quietly(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    def stop(_: list[str]) -> Any:
        raise KeyboardInterrupt
    monkeypatch.setitem(_cli.COMMANDS, "card", stop)
    assert run("card", "x") == (130, "", "")


def test_terminal_without_the_letters(tmp_path: Path) -> None:
    path = tmp_path / "étoile.toml"
    path.write_text(DEMO.replace("Millrace Amber", "Étoile"), encoding="utf-8")
    done = shell(f"wortmath card '{path}' && wortmath card '{path}' --json -", PYTHONIOENCODING="ascii", PYTHONUTF8="0")
    assert done.returncode == 0 and done.stderr == ""
    assert json.loads(done.stdout[done.stdout.index("\n{\n"):])["name"] == "Étoile"


# ------------------------------------------------------------------------------------------------ card

def lines_of(text: str) -> list[str]:
    return text.rstrip("\n").split("\n")


@pytest.mark.parametrize("units", [None, "us", "metric"])
@pytest.mark.parametrize("path", GOOD, ids=lambda p: p.stem)
def test_card(run: Any, path: Path, units: str | None) -> None:
    code, out, err = run("card", str(path), *([] if units is None else ["--units", units]), "--start", "9:30")
    assert (code, err) == (0, "")
    assert max(_card.width(line) for line in lines_of(out)) <= 80
    assert all(line == line.rstrip() for line in lines_of(out)) and "\x1b" not in out and "\u00a0" not in out
    batch = wm.batch.read(path)
    forecast = batch.forecast()
    results, package = forecast.results, forecast.package
    flat = " ".join(out.split())

    # the steps in their order, the clock never backwards
    numbers = [int(m[1]) for m in re.finditer(r"(?m)^ ?(\d+)  \S.*(?:\d\d:\d\d|day [\d.]+)$", out)]
    assert numbers == list(range(1, len(batch.steps) + 1))
    clocks = re.findall(r"(?m)^ ?\d+  .* (\d\d:\d\d)$", out)
    assert clocks == sorted(clocks) and clocks[0] == "09:30"

    # every ingredient is gathered by name
    gather = out[out.index("GATHER"):out.index("BREWING DAY")]
    for step in batch.steps:
        for kind in ("grains", "extracts", "sugars", "hops"):
            for item in step.get(kind, ()):
                assert item["name"] in gather

    # every caution once in full, where it applies first
    for caution in forecast.cautions:
        assert flat.count(" ".join(wm.batch.caution_text(caution["id"]).split())) == 1, caution
    # what the hydrometer shows and the answers
    for step in forecast.steps:
        if step["after"] and step["after"]["hydrometer"] is not None:
            assert f"hydrometer {step['after']['hydrometer']:.3f} (sample at" in flat
    for text in (f"{results['original_gravity']:.3f}", f"{results['final_gravity']:.3f}", f"{results['alcohol_by_volume']:.1f} % vol", f"{results['bitterness_bu']:.0f} BU",
                 f"{results['colour_srm']:.0f} SRM", f"{min(results['bitterness_by_model'].values()):.0f} to {max(results['bitterness_by_model'].values()):.0f} BU",
                 *(f"{name} {value:.1f}" for name, value in results["alcohol_by_formula"].items()), *forecast.models.values()):
        assert text == "none" or text in flat, text
    assert f"{package['carbonation_vol']:.2f} volumes of CO2" in flat
    if package["kind"] == "bottle":
        assert f"{package['bottles']} bottles of" in flat
    if package["level"] == 0:
        assert _words.NO_RULE in flat
    assert len(re.findall(r"(?m)^  - ", out)) == len(forecast.assumed) + len(forecast.outside_range) + len(forecast.reasons)

    # a card makes no promises, and has the units asked for
    assert not re.search(r"\bsafe(ly|ty)?\b|\bOK\b|\u2713|\u2714|\u2705", out, re.IGNORECASE)
    if units == "us":
        assert not re.search(r"\d (L|mL|kg|bar|mbar|°C)\b", out)
    if units == "metric":
        assert not re.search(r"\d (gal|fl oz|imp \w+|lb|oz|psi|°F)\b", out)


def test_amounts_in_the_units_of_the_file() -> None:
    told = _words.tell(wm.batch.read(FOLDER / "a_extract_us.toml").forecast())
    assert (told.units.mass, told.units.volume, told.units.temperature, told.units.pressure) == ("us", "us", "F", "psi")
    assert [i.amount for _, items in told.gather for i in items if i.list == "extracts"] == ["6.6 lb", "12 oz"]
    told = _words.tell(wm.batch.read(FOLDER / "d_imperial_kettle.toml").forecast())
    assert (told.units.mass, told.units.volume, told.units.temperature, told.units.pressure) == ("us", "imperial", "F", "psi")
    told = _words.tell(wm.batch.read(FOLDER / "b_all_grain_metric.toml").forecast())
    assert (told.units.mass, told.units.volume, told.units.temperature, told.units.pressure) == ("metric", "metric", "C", "bar")


def test_conversions_of_the_card() -> None:
    """NIST Special Publication 811, from memory: a US gallon is 3.785412 L, a pound 453.59237 g, a psi 6.894757 kPa, a foot 0.3048 m."""
    us, metric = _words.US, _words.METRIC
    assert us.volume_text(5 * 3.785412) == "5.00 gal" and us.mass_text(3 * 453.59237) == "3 lb 0.0 oz" and us.mass_text(453.59237 * 0.5) == "8.00 oz"
    assert us.pressure_text(6.894757e-2 * 12) == "12 psi" and us.temperature_text(100) == "212 °F" and us.length_text(304.8) == "1000 ft"
    assert us.mass_text(453.59) == "1 lb 0.0 oz" and us.mass_text(452.6) == "1 lb 0.0 oz"  # never 16.0 oz
    assert metric.volume_text(0.33) == "330 mL" and metric.volume_text(5.0) == "5.00 L" and metric.volume_text(19.04) == "19.0 L"
    assert metric.mass_text(999.7) == "1.00 kg" and metric.mass_text(4.25) == "4.2 g" and metric.temperature_text(-0.2) == "0 °C"


@pytest.mark.parametrize("minutes, text", [(0.5, "30 s"), (60, "60 min"), (120, "120 min"), (150, "2 h 30 min"), (180, "3 h")])
def test_times(minutes: float, text: str) -> None:
    assert _words.minutes_text(minutes) == text


def test_clock_runs_past_midnight() -> None:
    assert _words.clock_text(_words.parse_clock("23:30") + 45) == "00:15 (+1)"


def test_names_are_shown_as_text(run: Any, tmp_path: Path) -> None:
    path = tmp_path / "names.toml"
    long = "malt" * 40
    path.write_text(DEMO.replace('"caramel malt"', f'"{long}"').replace('"biscuit malt"', '"\u65e5\u672c\u306e\u9ea6\u82bd' + "\u9ea6" * 60 + '"').replace('"dry ale yeast"', '"red\\u001b[31m\\u0007\\nyeast"'), encoding="utf-8")
    code, out, _ = run("card", str(path))
    assert code == 0 and not re.search(r"[\x00-\x09\x0b-\x1f\x7f]", out)
    assert max(_card.width(line) for line in lines_of(out)) <= 80
    assert long in "".join(out.split()) and "red [31m yeast" in out


SHORT = '[batch]\nname = "Short"\n[[step]]\ndo = "water"\nvolume = "10 L"\n'
GOES_ON = [
    '[[step]]\ndo = "dissolve"\nextracts = [{ mass = "1 kg", kind = "dry" }]\n',
    '[[step]]\ndo = "boil"\nminutes = "30 min"\npower = "2 kW"\nhops = [{ mass = "10 g", alpha = 0.1, minutes = "0 min" }]\n',
    '[[step]]\ndo = "stand"\nminutes = "20 min"\ntemperature = "80 degC"\nhops = [{ mass = "10 g", alpha = 0.1 }]\n',
    '[[step]]\ndo = "chill"\nto = "20 degC"\n',
    '[[step]]\ndo = "transfer"\n',
    '[[step]]\ndo = "pitch"\ncells = 100e9\n',
    '[[step]]\ndo = "ferment"\ndays = "1.5 d"\ntemperature = "20 degC"\nfinal_gravity = "2.5 degP"\n',
    '[[step]]\ndo = "prime"\nmass = "1 oz"\n',
    '[[step]]\ndo = "note"\ntext = "Wait."\n',
    '[[step]]\ndo = "keg"\nhottest = "25 degC"\n',
]


@pytest.mark.parametrize("length", range(len(GOES_ON) + 1))
def test_batches_that_stop_early(run: Any, tmp_path: Path, length: int) -> None:
    path = tmp_path / "short.toml"
    path.write_text(SHORT + "".join(GOES_ON[:length]), encoding="utf-8")
    if length in (8, 9):   # primed, but not packaged
        assert run("card", str(path))[0] == 2
        return
    for units in ("us", "metric"):
        code, out, err = run("card", str(path), "--units", units)
        assert (code, err) == (0, "") and "SHORT" in out and "WHERE EVERYTHING WENT" in out
        assert ("IN THE KEG" in out) == (length == 10)
        assert max(_card.width(line) for line in lines_of(out)) <= 80


def test_stops_stand_at_the_top_and_at_the_step(run: Any, dangerous: Path) -> None:
    code, out, err = run("card", str(dangerous))
    assert (code, err) == (0, "")
    head, rest = out[:out.index("GATHER")], out[out.index("DAYS AHEAD"):]
    assert "STOP  step 14: pressure of the package" in head
    assert "\n    STOP     The pressure of this package meets a rule" in rest
    assert "STOP: a rule of this project (not a standard) is met." in rest and _words.NO_RULE not in out


def test_a_pressure_that_cannot_be_computed(run: Any, tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    path.write_text(ferments(headspace='"60 %"'), encoding="utf-8")
    out = run("card", str(path))[1]
    assert "STOP: the pressure could not be computed" in out and "not computed, see the reasons below" in out
    assert len(re.findall(r"(?m)^  - ", out[out.index("NOT COMPUTED"):])) >= 1


def test_outside_the_range_is_said_in_words() -> None:
    told = _words.tell(wm.batch.read(FOLDER / "c_late_extract_altitude.toml").forecast())
    assert told.outside == ["step 5 (boil): bitterness.utilisation.tinseth_gravity_steps was checked for boil gravities 1.030 to 1.130; here 1.025"]


def test_strict(run: Any, dangerous: Path, tmp_path: Path) -> None:
    code, out, err = run("card", str(dangerous), "--strict")
    assert code == 3 and "IN THE BOTTLE" in out and err.startswith("stop: step 14")
    code, out, err = run("card", str(dangerous), "--strict", "--json", "-")
    assert code == 3 and err == "" and any(c["level"] == "stop" for c in json.loads(out)["cautions"])
    assert run("demo", "--strict")[0] == 0
    code, out, _ = run("card", str(dangerous), "--strict", "--json", str(tmp_path / "x.json"))
    assert code == 3 and (tmp_path / "x.json").exists() and "IN THE BOTTLE" in out


@pytest.mark.parametrize("path", GOOD, ids=lambda p: p.stem)
def test_json(run: Any, tmp_path: Path, path: Path) -> None:
    code, out, err = run("card", str(path), "--json", "-")
    assert (code, err) == (0, "")
    got = json.loads(out)
    assert got["format"] == "wortmath batch 1" and got == json.loads(wm.batch.read(path).forecast().to_json())
    target = tmp_path / "x.json"
    code, out, err = run("card", str(path), "--json", str(target))
    assert code == 0 and out.startswith("=" * 80) and err == f"saved {target}\n"
    assert json.loads(target.read_text(encoding="utf-8")) == got
    assert [p.name for p in tmp_path.iterdir()] == ["x.json"]


def test_html(run: Any, tmp_path: Path) -> None:
    target = tmp_path / "x.html"
    code, out, err = run("demo", "--html", str(target), "--start", "9:00")
    assert code == 0 and out.startswith("=" * 80) and err == f"saved {target}\n"
    page = target.read_text(encoding="utf-8")
    assert page.lower().startswith("<!doctype html>") and "Millrace Amber" in page
    code, out, err = run("demo", "--html", "-", "--start", "9:00")
    assert (code, out, err) == (0, page, "")


# ------------------------------------------------------------------------------------------------ demo

def test_demo_is_an_ordinary_batch(run: Any) -> None:
    code, out, err = run("demo")
    assert (code, err) == (0, "") and "invented" in out.lower()
    forecast = wm.batch.read(wm.batch.demo_path()).forecast()
    assert 45 <= forecast.package["bottles"] <= 60
    assert not forecast.outside_range and not forecast.assumed and not forecast.reasons and not forecast.stops
    # written before the day, so nobody has confirmed that fermentation is over
    assert {c["id"] for c in forecast.cautions if c["level"] == "caution"} == {"early_package", "dry_hop_restart"}


def test_demo_as_a_start(run: Any, tmp_path: Path) -> None:
    path = tmp_path / "my.toml"
    code, out, err = run("demo", "--write", str(path))
    assert (code, err) == (0, "") and f"wortmath card {path}" in out
    assert path.read_text(encoding="utf-8") == DEMO
    assert run("card", str(path))[1] == run("demo")[1]
    path.write_text("mine")
    code, out, err = run("demo", "--write", str(path))
    assert (code, out) == (2, "") and "--force" in err and path.read_text() == "mine"
    assert run("demo", "--write", str(path), "--force")[0] == 0 and path.read_text(encoding="utf-8") == DEMO
    assert run("demo", "--write", "-") == (0, DEMO, "")
    dangling = tmp_path / "link.toml"
    dangling.symlink_to(tmp_path / "nowhere.toml")
    assert run("demo", "--write", str(dangling))[0] == 2 and not (tmp_path / "nowhere.toml").exists()


def test_a_newcomers_mistakes(run: Any, tmp_path: Path) -> None:
    """The demo changed with three usual slips: each message names the line, and mending it is enough."""
    path = tmp_path / "my.toml"
    for wrong, right, words in (('alpha = "9 %"', 'alpha = 9', ["alpha", "9 %"]), ('to = "68 degC"', 'to = "154 degC"', ["degF"]), ('volume = "12 L"', 'volume = "12 l"', ['"12 l"', "L"])):
        text = DEMO.replace(wrong, right)
        assert text != DEMO
        path.write_text(text, encoding="utf-8")
        code, out, err = run("card", str(path))
        line = next(n for n, (a, b) in enumerate(zip(DEMO.split("\n"), text.split("\n")), 1) if a != b)
        assert (code, out) == (2, "") and err.startswith(f"line {line}, step ") and all(w in err for w in words), err


# ------------------------------------------------------------------------------------------------ models

def test_models_count(run: Any) -> None:
    rows = (REFERENCE / "api.csv").read_text(encoding="utf-8").splitlines()[1:]
    assert run("models", "--count") == (0, f"{len(rows)}\n", "")
    assert run("models", "priming", "--count")[1] == f"{sum(r.startswith('priming.') for r in rows)}\n"
    assert run("models", "extract.from_gravity.asbc", "--count")[1] == "1\n"


def test_models_overview(run: Any) -> None:
    code, out, err = run("models")
    assert (code, err) == (0, "") and all(f"\n  {t} " in out for t in wm.topics)
    assert max(map(len, lines_of(out))) <= 80


@pytest.mark.parametrize("topic", wm.topics)
def test_models_pages(topic: str) -> None:
    """Every topic, family and model has a page of at most 80 columns with its question, evidence and source."""
    pages = {topic: _ask.models([topic])}
    for path, model in _core._models.items():
        if path.startswith(topic + "."):
            pages[path] = _ask.models([path])
            pages[model.family] = _ask.models(["wortmath." + model.family])
            flat = " ".join(pages[path].split())
            for text in (model.question, model.source, model.use, model.danger, model.note):
                assert " ".join(text.split()) in flat
            assert model.status + ":" in flat and f"wortmath eval {path}" in flat
            assert model.question in " ".join(pages[topic].split()) and model.name in pages[model.family]
    for path, page in pages.items():
        assert max(map(_card.width, lines_of(page))) <= 80 or path in page, path


@pytest.mark.parametrize(("words", "first"), [("bottle pressure", "package.pressure"), ("priming sugar", "priming."), ("color malt", "colour."), 
                                             ("boiling temperature altitude", ""), ("strike", "mash.strike"), ("chlorine", "liquor.dechlorination"), ("refractometers", "refractometer.")])
def test_models_search(run: Any, words: str, first: str) -> None:
    code, out, err = run("models", *words.split())
    assert (code, err) == (0, "")
    families = re.findall(r"(?m)^(?:  )?([a-z]+\.[a-z_0-9]+)$", out)
    assert families and families[0].startswith(first), families


# ------------------------------------------------------------------------------------------------ eval

def test_eval_steam_table(run: Any) -> None:
    """IAPWS R7-97(2012), table 36 (from memory): the saturation temperature at 0.1 MPa is 372.755919 K."""
    code, out, err = run("eval", "water.boiling_temperature", "pressure=0.1 MPa")
    assert (code, err) == (0, "") and float(out.split()[0]) == pytest.approx(372.755919 - 273.15, abs=5e-5)
    assert out.split("\n")[0].endswith(" degC") and "IAPWS R7-97" in out


@pytest.mark.parametrize(("text", "unit", "value"), [
    # NIST Special Publication 811, appendix B.8, from memory: exact there or with seven digits
    ("1 lb", "g", 453.59237), ("1 oz", "g", 28.34952), ("1 gal", "L", 3.785412), ("1 qt", "L", 0.9463529), ("1 pt", "L", 0.4731765), ("1 floz", "L", 0.02957353), ("1 impgal", "L", 4.54609),
    ("1 impfloz", "L", 0.02841306), ("1 ft3", "m3", 0.02831685), ("1 ft", "m", 0.3048), ("1 in", "cm", 2.54), ("1 psi", "bar", 0.06894757), ("1 mmHg", "bar", 0.001333224), ("1 atm", "bar", 1.01325),
    ("1 lb/gal", "kg/m3", 119.8264), ("1 lb/impgal", "kg/m3", 99.77637), ("1 oz/gal", "g/L", 7.489152), ("1 BTU/lb", "kJ/kg", 2.326), ("1 BTU/(lb degF)", "kJ/(kg K)", 4.1868),
    ("1 ft3/min", "m3/h", 4.719474e-4 * 3600), ("1 kcal", "kJ", 4.1868), ("1 BTU/degF", "kJ/K", 1.899101), ("1 in2", "cm2", 6.4516), ("1 kWh", "kJ", 3600.0),
    ("212 degF", "degC", 100.0), ("-40 °F", "degC", -40.0), ("273.15 K", "degC", 0.0), ("9 degF", "K", 5.0), ("90 min", "h", 1.5), ("36 h", "d", 1.5), ("1 h", "min", 60.0),
    # a US beer barrel is 31 gallons (27 CFR 25.11)
    ("1 bbl", "L", 117.347765), ("9 %", "fraction", 0.09), ("5.2 %", "% vol", 5.2), ("4 %", "L/L", 0.04), ("0.5 %", "ppm", 5000.0), ("180 billion cells", "cells", 180e9), ("1.050 SG", "SG 20/20", 1.05),
    ("12 degP", "degP", 12.0), (" +1.5e1mL ", "L", 0.015), (".5 L", "L", 0.5)])
def test_units(text: str, unit: str, value: float) -> None:
    assert _units.parse(text, unit) == pytest.approx(value, rel=5e-7, abs=1e-9)


def test_units_agree_with_those_of_batch_files() -> None:
    """The reader of batch files has its own table, in C++: every unit of its dimensions means the same here."""
    for unit in ("mg", "g", "kg", "oz", "lb"):
        read = wm.batch.read_text(SHORT + f'[[step]]\ndo = "water"\nmass = "7.3 {unit}"\n').steps[-1]["mass"]["value"]
        assert read == pytest.approx(_units.parse(f"7.3 {unit}", "g"), rel=1e-15), unit
    for unit in ("mL", "L", "hL", "floz", "pt", "qt", "gal", "bbl", "impfloz", "imppt", "impqt", "impgal"):
        read = wm.batch.read_text(SHORT + f'[[step]]\ndo = "water"\nvolume = "7.3 {unit}"\n').steps[-1]["volume"]["value"]
        assert read == pytest.approx(_units.parse(f"7.3 {unit}", "L"), rel=1e-15), unit
    for unit, number in (("degC", "60"), ("°C", "60"), ("degF", "151"), ("°F", "151"), ("K", "333")):
        read = wm.batch.read_text(SHORT + f'[[step]]\ndo = "heat"\nto = "{number} {unit}"\n').steps[-1]["to"]["value"]
        assert read == pytest.approx(_units.parse(f"{number} {unit}", "degC"), rel=1e-14), unit
    for unit in ("s", "min", "h", "d"):
        read = wm.batch.read_text(SHORT + f'[[step]]\ndo = "boil"\npower = "1 kW"\nminutes = "0.01 {unit}"\n').steps[-1]["minutes"]["value"]
        assert read == pytest.approx(_units.parse(f"0.01 {unit}", "min"), rel=1e-15), unit


def test_units_of_every_argument() -> None:
    """A bare number and the unit's own name are taken for every argument of every model, and mean the same."""
    units = {i.unit for m in _core._models.values() for i in m.inputs if i.kind not in ("word", "truth")}
    assert len(units) > 60
    for unit in units:
        assert _units.parse("1.25", unit) == 1.25
        if not unit.startswith("SG") and unit not in ("fraction", "ratio", "fraction per decade"):
            assert _units.parse(f"1.25 {unit}", unit) == 1.25, unit
        with pytest.raises(_units.UnitError):
            _units.parse("1.25 bananas", unit)


def test_every_conversion_goes_back() -> None:
    for dimension, units in _units.TABLE.items():
        base = next(iter(units))
        lib = base if base and _units.dimension_of(base) == dimension else {"share": "fraction", "temperature difference": "K"}.get(dimension, base)
        for unit in units:
            if unit:
                assert _units.express(_units.convert(7.3, unit, lib), lib, unit) == pytest.approx(7.3, rel=1e-12), (dimension, unit)


def test_eval_shows_customary_results(run: Any) -> None:
    out = run("eval", "water.boiling_temperature", "pressure=12.2 psi")[1].split("\n")[0]
    metric, us = re.fullmatch(r"(\S+) degC  \((\S+) degF\)", out).groups()  # type: ignore[union-attr]
    assert float(us) == pytest.approx(float(metric) * 1.8 + 32, abs=0.01)
    assert "degF" not in run("eval", "water.boiling_temperature", "pressure=0.9 bar")[1]


def test_eval_agrees_with_the_call(run: Any) -> None:
    for path, text, call in (("extract.from_gravity", ["gravity=1.048"], lambda: wm.extract.from_gravity(1.048)),
                             ("package.pressure", ["carbonation=2.5", "temperature=77 degF", "headspace=5 %", "barometer=14 psi"],
                              lambda: wm.package.pressure(2.5, 25.0, headspace=0.05, barometer=_units.parse("14 psi", "bar"))),
                             ("bitterness.utilisation.tinseth_gravity_steps", ["boil_gravities=1.04,1.06", "step_minutes=0.5,0.25 h"],
                              lambda: wm.bitterness.utilisation.tinseth_gravity_steps([1.04, 1.06], [30.0, 15.0])),
                             ("package.caution", ["package=keg", "gauge_pressure=2", "carbonation=2.5", "rated_gauge_pressure=none", "fermentation_confirmed=yes"],
                              lambda: wm.package.caution("keg", 2.0, 2.5, None, True))):
        code, out, err = run("eval", path, *text)
        assert (code, err) == (0, "")
        assert float(out.split()[0]) == pytest.approx(call(), rel=1e-5)


def test_eval_several_results(run: Any) -> None:
    code, out, _ = run("eval", "colour.swatch", "srm=10")
    answer = wm.colour.swatch(10.0)
    assert code == 0 and [line.split() for line in out.split("\n")[:4]] == [["red", str(answer.red)], ["green", str(answer.green)], ["blue", str(answer.blue)], ["outside_gamut", "yes" if answer.outside_gamut else "no"]]


def test_eval_policies(run: Any) -> None:
    assert run("eval", "extract.from_gravity", "gravity=1.11", "--policy", "raise")[0] == 2
    assert run("eval", "extract.from_gravity", "gravity=1.11", "--policy", "nan")[1].startswith("- degP\n")
    out = run("eval", "extract.from_gravity", "gravity=1.11", "--policy", "extrapolate")[1]
    assert float(out.split()[0]) == pytest.approx(wm.extract.from_gravity(1.11, policy="extrapolate"), rel=1e-5) and "outside the range that was checked" in out


def test_eval_all(run: Any) -> None:
    code, out, err = run("eval", "bitterness.utilisation", "boil_gravity=1.050", "boil_minutes=1 h", "--all")
    assert (code, err) == (0, "") and max(map(len, lines_of(out))) <= 80
    for name, model in wm.bitterness.utilisation.models.items():
        row = re.search(rf"(?m)^[* ] {name} +(\S+) +{model.status}", out)
        assert row, name
        needs = [i.name for i in model.inputs if i.required and i.name not in ("boil_gravity", "boil_minutes")]
        if needs:
            assert row[1] == "-" and needs[0] in out
        else:
            assert float(row[1]) == pytest.approx(model(1.05, 60.0), rel=1e-5)
    out = run("eval", "extract.from_gravity", "gravity=1.120", "--all")[1]
    assert re.search(r"\* asbc +- +secondary +refuses", out) and re.search(r"nbs +2[78]\.\d+ degP", out)
    code, out, err = run("eval", "extract.from_gravity", "grvity=1.120", "--all")
    assert (code, out) == (2, "") and "gravity" in err


@pytest.mark.parametrize("family", sorted({m.family for m in _core._models.values()}))
def test_eval_all_works_for_every_family(family: str) -> None:
    """Given only what the first model needs, every family prints a row for each of its models."""
    models = {p.rsplit(".", 1)[1]: m for p, m in _core._models.items() if m.family == family}
    first = next(iter(models.values()))
    given = []
    for i in first.inputs:
        if i.required:
            low, high = (max(-1e3, i.validated[0]), min(1e3, i.validated[1])) if i.kind not in ("word", "truth") else (0.0, 0.0)
            middle = repr(low + (high - low) * 0.25)
            given.append(f"{i.name}={i.words[0] if i.kind == 'word' else 'yes' if i.kind == 'truth' else middle}")
    text = _ask.evaluate(family, given, all_models=True)
    assert all(re.search(rf"(?m)^[* ] {name}\b", text) for name in models)
    assert max(map(_card.width, lines_of(text))) <= 80


def test_eval_table(run: Any) -> None:
    code, out, err = run("eval", "extract.from_gravity", "gravity=1.030:1.120:0.010", "--table")
    assert (code, err) == (0, "")
    rows = [line.split() for line in lines_of(out) if re.match(r" *1\.\d+ ", line)]
    assert [r[0] for r in rows] == ["1.030", "1.040", "1.050", "1.060", "1.070", "1.080", "1.090", "1.100", "1.110", "1.120"]
    assert [float(r[1]) for r in rows[:8]] == pytest.approx([wm.extract.from_gravity(1.03 + 0.01 * k) for k in range(8)], abs=1e-4)
    assert [r[1] for r in rows[8:]] == ["-", "-"] and "--policy extrapolate" in " ".join(out.split())


def test_eval_csv(run: Any) -> None:
    code, out, err = run("eval", "bitterness.utilisation", "boil_gravity=1.040,1.060", "boil_minutes=0:1:0.25 h", "--csv")
    assert (code, err) == (0, "")
    rows = list(csv.reader(io.StringIO(out)))
    assert rows[0] == ["boil_gravity [SG 20/20]", "boil_minutes [min]", "utilisation"] and len(rows) == 1 + 2 * 5
    for gravity, minutes, value in rows[1:]:
        assert float(value) == wm.bitterness.utilisation(float(gravity), float(minutes))
    assert [r[1] for r in rows[1:6]] == ["0.0", "15.0", "30.0", "45.0", "60.0"]
    assert out == run("eval", "bitterness.utilisation", "boil_gravity=1.040,1.060", "boil_minutes=0:1:0.25 h", "--csv", "--table")[1]


def test_eval_table_of_all_models(run: Any) -> None:
    rows = list(csv.reader(io.StringIO(run("eval", "extract.from_gravity", "gravity=1.09,1.04", "--all", "--csv")[1])))
    assert len(rows) == 3 and [r[0] for r in rows[1:]] == ["1.09", "1.04"]
    for name, low in zip(rows[0][1:], rows[2][1:]):
        assert float(low) == wm.extract.from_gravity.models[name.split(" ")[0]](1.04)
    columns = [name.split(" ")[0] for name in rows[0]]
    assert rows[1][columns.index("quarter")] == "nan" and rows[1][columns.index("nbs")] != "nan"


def test_eval_range_ends_exactly() -> None:
    argument = wm.extract.from_gravity.inputs[0]
    assert _ask._range("1.030:1.090:0.010", argument) == [1.03, 1.04, 1.05, 1.06, 1.07, 1.08, 1.09]
    assert _ask._range("1.09:1.03:-0.03", argument) == [1.09, 1.06, 1.03]
    assert _ask._range("1.03:1.05:0.03", argument) == [1.03]
