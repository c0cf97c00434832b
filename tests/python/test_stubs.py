"""The type stubs are what the catalogue makes of them, and mypy --strict sees through them what Python does."""

from __future__ import annotations

import importlib.util
import math
import os
import subprocess
import sys
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

import wortmath as wm
from wortmath import _core
from wortmath._model import facts

ROOT = Path(__file__).resolve().parents[2]
STUBS = ROOT / "python" / "wortmath"


def _maker() -> ModuleType:
    spec = importlib.util.spec_from_file_location("make_stubs", ROOT / "python" / "tools" / "make_stubs.py")
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="session")
def mypy(tmp_path_factory: pytest.TempPathFactory) -> Any:
    """Run mypy --strict over a text; its lines come back without the name of the file."""
    pytest.importorskip("mypy")
    folder = tmp_path_factory.mktemp("mypy")

    def run(text: str) -> list[str]:
        program = folder / "program.py"
        program.write_text(text, encoding="utf-8")
        done = subprocess.run([sys.executable, "-m", "mypy", "--strict", "--follow-imports=silent", f"--cache-dir={folder / 'cache'}", "--config-file=", program.name],
                              cwd=folder, env={**os.environ, "MYPYPATH": str(ROOT / "python")}, capture_output=True, text=True)
        assert done.returncode in (0, 1), done.stderr
        return [line.removeprefix("program.py:") for line in done.stdout.splitlines() if line.startswith("program.py:") and ": note:" not in line]

    return run


def test_stubs_are_up_to_date() -> None:
    made = _maker().stubs()
    stale = [name for name, text in made.items() if not (STUBS / name).exists() or (STUBS / name).read_text(encoding="utf-8") != text]
    assert not stale, f"run python python/tools/make_stubs.py: {', '.join(stale)}"
    written = {f.name for f in STUBS.glob("*.pyi")} - {"_core.pyi"}
    assert written == {name for name in made if name.endswith(".pyi")}


def test_stubs_are_sound(tmp_path: Path) -> None:
    pytest.importorskip("mypy")
    done = subprocess.run([sys.executable, "-m", "mypy", "--strict", "--follow-imports=silent", f"--cache-dir={tmp_path}", "--config-file=", *map(str, sorted(STUBS.glob("*.pyi")))],
                          capture_output=True, text=True, cwd=ROOT / "python")
    assert done.returncode == 0, done.stdout + done.stderr


def _written(i: Any) -> str:
    if i.kind == "word":
        return repr(i.words[0])
    if i.kind == "truth":
        return "True"
    lo = max(i.validated[0], -1e6)
    value = repr(round(min(i.validated[1], lo + 1.0), 6)) if math.isfinite(lo) else "1.0"
    return f"[{value}, {value}]" if i.kind == "list" else value


def _type_of(o: Any) -> str:
    literal = "Literal[" + ", ".join(repr(w) for w in o.words) + "]"
    return {"number": "float", "whole": "int", "truth": "bool", "word": literal, "words": f"list[{literal}]"}[o.kind]


def test_every_model_is_typed(mypy: Any) -> None:
    """A program that calls every model by position and by keyword, with the types that its results have."""
    lines = ["from typing import Literal, assert_type", "import wortmath as wm"]
    for path in _core._models:
        f = facts(path)
        for call in (f"wm.{path}({', '.join(_written(i) for i in f['inputs'])})", f"wm.{path}({', '.join(f'{i.name}={_written(i)}' for i in f['inputs'] if i.required)})"):
            lines += [f"assert_type({call}{'.' + o.name if o.name else ''}, {_type_of(o)})" for o in f["outputs"]]
    assert mypy("\n".join(lines)) == []
    assert len(lines) > 2 * len(_core._models)


def test_a_right_program(mypy: Any) -> None:
    assert mypy("""
from typing import Any, assert_type
import numpy as np
from numpy.typing import NDArray
import wortmath as wm
from wortmath import batch
from wortmath.extract import from_gravity

assert_type(wm.extract.from_gravity(1.048), float)
assert_type(from_gravity.lincoln(gravity=1.048, policy="extrapolate"), float)
gravities = np.linspace(1.030, 1.080, 6)
assert_type(wm.extract.from_gravity(gravities), NDArray[np.float64])
assert_type(wm.bitterness.utilisation([1.04, 1.05], 60, policy="nan"), NDArray[np.float64])
assert_type(wm.bitterness.utilisation(1.05, np.linspace(0.0, 60.0, 7)), NDArray[np.float64])
assert_type(wm.balance.blend.volume(5, 20, 5, 0).extract, float)
assert_type(wm.balance.blend.volume(5, 20, gravities, 0).extract, NDArray[np.float64])
assert_type(wm.priming.sugar_yield("sucrose"), float)
assert_type(wm.thermal.mix([1, 2], [10, 12], [20, 30]), float)
assert_type(wm.package.caution("keg", 2.0, 2.4), int)
assert_type(wm.extract.volume_ratio.kunze(), float)
assert_type(wm.extract.from_gravity.lincoln.source, str)
assert_type(wm.hydrometer.correct(1.05, 30, water_temperature=None), float)
share, _ = wm.extract.from_gravity(1.048), [m.source for m in wm.extract.from_gravity.models.values()]
loads: dict[str, Any] = wm.extract.from_gravity.compare(1.048)
try:
    print(batch.read("brew.toml").forecast().results["original_gravity"])
except (batch.BatchError, wm.RangeError) as e:
    print(e)
""") == []


WRONG = [
    ('wm.extract.from_gravity("1.048")', "incompatible type"),
    ("wm.extract.from_gravity(gravty=1.048)", 'Unexpected keyword argument "gravty"'),
    ("wm.extract.from_gravity.lincon(1.048)", 'maybe "lincoln"?'),
    ("wm.extract.from_gravty(1.048)", 'maybe "from_gravity"'),
    ("wm.extract.from_gravity(None)", "No overload variant"),
    ("wm.extract.from_gravity()", "require at least one argument"),
    ("wm.extract.from_gravity(1.048, 20)", "No overload variant"),
    ('wm.extract.from_gravity(1.048, policy="ignore")', "No overload variant"),
    ('wm.priming.sugar_yield("cane")', "incompatible type"),
    ("wm.bitterness.ratio(30, 1.05)", "not callable"),
    ('wm.package.caution("keg", 1.0, 2.4, fermentation_confirmed="yes")', "No overload variant"),
    ('text: str = wm.extract.from_gravity(1.048)', "Incompatible types in assignment"),
    ("wm.balance.blend.volume(5, 20, 5, 0).strength", 'has no attribute "strength"'),
]


def test_a_wrong_program(mypy: Any) -> None:
    found = mypy("import wortmath as wm\n" + "\n".join(line for line, _ in WRONG))
    for number, (line, words) in enumerate(WRONG, start=2):
        own = [f for f in found if f.startswith(f"{number}:")]
        assert any(words in f for f in own), f"{line}: mypy says {own}"


def test_everything_public_is_in_the_stub(mypy: Any) -> None:
    assert mypy("import wortmath as wm\n" + "\n".join(f"print(wm.{name})" for name in wm.__all__)) == []


def test_runtime_has_what_the_stub_promises() -> None:
    for name in _maker().PROPERTIES:
        if f"def {name}(" in (STUBS / "__init__.pyi").read_text(encoding="utf-8"):
            assert hasattr(type(wm.extract.from_gravity), name) or hasattr(wm.extract.from_gravity, name), name
