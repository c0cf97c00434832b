"""Formulas printed from what computes them: as mathematics, and as functions in other languages.

The outside here is the other language: CPython's math module, the C compiler, a JavaScript engine, a reader of
spreadsheet formulas written for this test, and mpmath at 50 digits.
"""

from __future__ import annotations

import json
import math
import random
import re
import shutil
import subprocess
from pathlib import Path
from typing import Any, Callable, Iterator

import numpy as np
import pytest

import wortmath as wm
from expression import argument, model, read_table
from test_points import CHAPTERS
from wortmath import _core

PATHS = list(_core._models)

# No closed form: the length of the iteration depends on its results.
NOT_EXPORTED = {"bitterness.isomerisation_profile.malowicki_shellhammer": "iteration"}
# What a spreadsheet has no formula for; the first words of the reason that is given.
NOT_IN_A_SHEET = {
    **NOT_EXPORTED,
    "bitterness.utilisation.tinseth_gravity_steps": "goes through a list",  # a running sum within a sum
    "colour.word.bjcp_2021": "several words",
    "liquor.mash_ph.proton_condition": "between two bounds",
    # Too long with all their words open; they are exported when the words are chosen.
    "gravity.convert.icumsa": "longer than a cell",
    "colour.tristimulus.table_5nm": "longer than a cell",
}
CHOSEN_IN_A_SHEET = {
    "gravity.convert.icumsa": {"from_scale": "gravity_15_4", "to_scale": "gravity_20_20"},
    "colour.tristimulus.table_5nm": {"illuminant": "c", "observer": "cie_1964", "spectrum": "de_lange_average"},
}


def function_name(path: str) -> str:
    return path.replace(".", "_")


def points(chapter: str) -> Iterator[tuple[str, dict[str, Any]]]:
    for row in read_table(f"points/{chapter}.csv")[1]:
        given = {i.name: i for i in model(row["path"]).inputs}
        pairs = (p.split("=", 1) for p in row["inputs"].split(";") if p)
        yield model(row["path"]).path, {k: argument(given[k], v) for k, v in pairs}


def parts(value: Any) -> list[Any]:
    return list(value) if isinstance(value, tuple) else [value]


def is_arithmetic(code: str) -> bool:
    """Nothing but + - * / and the square root, whose results the standard fixes to the last bit."""
    return not re.search(r"\bmath\.(?!sqrt\b|nan\b|inf\b|floor\b)|\*\*", code)


def agrees(got: Any, want: Any, relative: float) -> bool:
    if isinstance(want, (str, list, bool)):
        return bool(got == want)
    if want != want:
        return got is None or got != got
    return got is not None and bool(got == want or abs(got - want) <= relative * abs(want))


# ---- mathematics

@pytest.mark.parametrize("topic", sorted({p.split(".")[0] for p in PATHS}))
def test_every_formula_prints_as_mathematics(topic: str) -> None:
    for path in (p for p in PATHS if p.split(".")[0] == topic):
        if path in NOT_EXPORTED:
            continue
        text = wm._model.by_path(path).latex()
        depth = 0
        for c in re.sub(r"\\[{}]", "", text):
            depth += (c == "{") - (c == "}")
            assert depth >= 0, path
        assert depth == 0, path
        assert [e for e in re.findall(r"\\begin\{(\w+)\}", text)].count("aligned") == 1, path
        assert len(re.findall(r"\\begin", text)) == len(re.findall(r"\\end", text)), path
        assert text.count(r"\left") == text.count(r"\right"), path
        assert not re.search(r"\bnan\b", text) and "+ -" not in text and "e-" not in re.sub(r"\\text\{[^}]*\}|\\mathrm\{[^}]*\}", "", text), path


def test_mathematics_of_a_few() -> None:
    assert wm.extract.from_gravity.asbc.formula == (
        "\\begin{aligned}\n\\mathrm{from\\_gravity} &= -616.868 + 1111.14 \\, \\mathrm{gravity} - 630.272 \\, \\mathrm{gravity}^{2} "
        "+ 135.997 \\, \\mathrm{gravity}^{3}\n\\end{aligned}")
    tinseth = wm.bitterness.utilisation.tinseth.formula
    assert r"\mathrm{bigness} &= 1.65 \cdot 0.000125^{\mathrm{boil\_gravity} - 1}" in tinseth
    assert r"\sum_{i=1}^{n}" in wm.liquor.blend.linear.formula
    assert r"\begin{cases}" in wm.colour.from_grist.piecewise.formula
    assert "is the root of" in wm.package.pressure.beer_henry.formula
    assert wm.bitterness.utilisation.tinseth._repr_latex_().startswith("$\\displaystyle \\begin{aligned}")
    assert "no closed form" in wm.bitterness.isomerisation_profile.formula


def test_words_can_be_settled() -> None:
    salt = wm.liquor.salt.ion if hasattr(wm.liquor.salt, "ion") else wm.liquor.salt
    words = {i.name: i.words[0] for i in salt.inputs if i.kind == "word"}
    settled = salt.export("python", **words)
    assert len(settled) < len(salt.export("python"))
    assert not any(w in settled.split('"""')[2] for w in words)
    with pytest.raises(TypeError, match="cannot be settled"):
        salt.export("c", nothing="x")
    with pytest.raises(ValueError, match="is not one of"):
        salt.export("c", **{next(iter(words)): "no such word"})
    with pytest.raises(ValueError, match="is not one of python"):
        salt.export("cobol")


# ---- languages

def python_functions() -> dict[str, tuple[Callable[..., Any], bool]]:
    found = {}
    for path in PATHS:
        if path in NOT_EXPORTED:
            with pytest.raises(ValueError, match=NOT_EXPORTED[path]):
                _core.printed(path, "python")
            continue
        code = _core.printed(path, "python")
        scope: dict[str, Any] = {}
        exec(compile(code, path, "exec"), scope)  # noqa: S102
        found[path] = scope[function_name(path)], is_arithmetic(code)
    return found


FUNCTIONS = python_functions()


def test_how_many_are_exact() -> None:
    """The bit-for-bit comparison below must not run empty."""
    assert sum(exact for _, exact in FUNCTIONS.values()) > 300
    assert len(FUNCTIONS) == len(PATHS) - len(NOT_EXPORTED)


@pytest.mark.parametrize("chapter", CHAPTERS)
def test_exported_python(chapter: str) -> None:
    """Bit for bit where the formula is arithmetic; else exp, log and pow of two libraries within 1e-13."""
    faults, count = [], 0
    for path, inputs in points(chapter):
        if path in NOT_EXPORTED:
            continue
        function, exact = FUNCTIONS[path]
        want = parts(model(path)(**inputs, policy="extrapolate"))
        got = parts(function(**inputs))
        count += 1
        if len(got) != len(want) or not all(agrees(g, w, 0.0 if exact else 1e-13) for g, w in zip(got, want)):
            faults.append(f"{path}({inputs}): {got} against {want}")
    assert not faults, "\n".join(faults[:20])
    assert count > 100


def positional(path: str, inputs: dict[str, Any]) -> list[tuple[Any, Any]]:
    return [(i, inputs.get(i.name, i.default)) for i in model(path).inputs]


def all_calls() -> list[tuple[str, dict[str, Any]]]:
    return [(path, inputs) for chapter in CHAPTERS for path, inputs in points(chapter) if path not in NOT_EXPORTED]


def compare_all(answers: list[list[Any]], relative: float) -> None:
    calls = all_calls()
    assert len(answers) == len(calls)
    faults = []
    for (path, inputs), got in zip(calls, answers):
        want = parts(model(path)(**inputs, policy="extrapolate"))
        allowed = 0.0 if FUNCTIONS[path][1] else relative
        if len(got) != len(want) or not all(agrees(g, w, allowed) for g, w in zip(got, want)):
            faults.append(f"{path}({inputs}): {got} against {want}")
    assert not faults, f"{len(faults)}:\n" + "\n".join(faults[:20])


@pytest.mark.skipif(not shutil.which("node"), reason="no JavaScript engine")
def test_exported_javascript(tmp_path: Path) -> None:
    """One file with every function; arithmetic bit for bit, the engine's own exp and log within 1e-13."""
    text = "\n".join(_core.printed(p, "javascript") for p in FUNCTIONS)
    calls = [f"{function_name(p)}({', '.join(json.dumps(v) for _, v in positional(p, inputs))})" for p, inputs in all_calls()]
    text += "\nfor (const answer of [\n" + ",\n".join(f"() => {c}" for c in calls) + "\n]) {\n"
    text += "  const a = answer();\n  console.log(JSON.stringify(a !== null && typeof a === 'object' && !Array.isArray(a) ? Object.values(a) : [a]));\n}\n"
    file = tmp_path / "all.js"
    file.write_text(text, encoding="utf-8")
    done = subprocess.run(["node", str(file)], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr[:2000]
    compare_all([json.loads(line) for line in done.stdout.splitlines()], 1e-13)


def c_argument(given: Any, value: Any) -> str:
    if given.kind == "word":
        return json.dumps(value)
    if given.kind == "truth":
        return str(int(value))
    if value is None:
        return "NAN"
    if given.kind == "list":
        return "(const double[]){" + ", ".join(repr(float(x)) for x in value) + "}"
    return repr(float(value)).replace("inf", "INFINITY")


@pytest.mark.skipif(not shutil.which("gcc"), reason="no C compiler")
def test_exported_c(tmp_path: Path) -> None:
    """One file with every function, without a warning; arithmetic bit for bit, else within 1e-13."""
    text = "#include <stdio.h>\n" + "\n".join(_core.printed(p, "c") for p in FUNCTIONS) + "\nint main(void) {\n"
    for path, inputs in all_calls():
        m = model(path)
        values = positional(path, inputs)
        lengths = [len(v) for i, v in values if i.kind == "list"]
        call = f"{function_name(path)}({', '.join([c_argument(i, v) for i, v in values] + [str(n) for n in lengths[:1]])})"
        if m.outputs[0].name:
            text += f"    {{ struct {function_name(path)}_result r = {call}; "
            text += " ".join('printf("%d ", r.{0});'.format(o.name) if o.kind == "truth" else 'printf("%.17g ", r.{0});'.format(o.name) for o in m.outputs)
            text += ' puts(""); }\n'
        elif m.outputs[0].kind == "word":
            text += f"    puts({call});\n"
        elif m.outputs[0].kind == "words":
            text += f'    printf("%u\\n", {call});\n'
        else:
            text += f'    printf("%.17g\\n", {call});\n'
    text += "    return 0;\n}\n"
    file, program = tmp_path / "all.c", tmp_path / "all"
    file.write_text(text, encoding="utf-8")
    # A function keeps the arguments of its model, also those that its formula does not use.
    built = subprocess.run(["gcc", "-std=c11", "-O0", "-Wall", "-Wextra", "-Werror", "-Wno-unused-parameter", "-ffp-contract=off", str(file), "-o", str(program), "-lm"],
                           capture_output=True, text=True, check=False)
    assert built.returncode == 0, built.stderr[:3000]
    lines = subprocess.run([str(program)], capture_output=True, text=True, check=True).stdout.splitlines()
    answers = []
    for (path, _), line in zip(all_calls(), lines, strict=True):
        outputs = model(path).outputs
        if outputs[0].kind == "word":
            answers.append([line])
        elif outputs[0].kind == "words":
            answers.append([[w for k, w in enumerate(outputs[0].words) if int(line) >> k & 1]])
        else:
            answers.append([bool(int(x)) if o.kind == "truth" else float(x) for o, x in zip(outputs, line.split())])
    compare_all(answers, 1e-13)


# ---- spreadsheets

class Blank(float):
    """An empty cell: 0 where a number is needed."""


def _lookup(x: Any, xs: Any, ys: Any) -> Any:
    return ys[int(np.searchsorted(xs, x, side="right")) - 1] if x == x else math.nan


SHEET: dict[str, Any] = {
    "IF": lambda c, a, b: a if c else b, "AND": lambda *c: all(c), "OR": lambda *c: any(c), "NOT": lambda c: not c, "NA": lambda: math.nan,
    "ISBLANK": lambda x: isinstance(x, Blank), "EXP": np.exp, "LN": np.log, "SQRT": np.sqrt, "TANH": np.tanh, "SINH": np.sinh, "ATANH": np.arctanh, "SIN": np.sin, "COS": np.cos,
    "ABS": np.abs, "INT": np.floor, "SIGN": np.sign, "POWER": lambda x, y: np.power(x, y, dtype=float), "MIN": min, "MAX": max, "LOOKUP": _lookup,
    "ATAN2": lambda x, y: np.arctan2(y, x), "SUMPRODUCT": lambda a: float(sum(np.atleast_1d(a))), "CHOOSE": lambda k, *words: words[int(k) - 1],
}


def sheet_answers(text: str, inputs: dict[str, Any]) -> dict[str, Any]:
    """The cells of an exported sheet, row by row: the operators and functions of OpenFormula that exports use."""
    cells = {k: np.array(v, dtype=float) if isinstance(v, list) else np.float64(v) if isinstance(v, float) else Blank() if v is None else v for k, v in inputs.items()}
    for line in text.splitlines():
        name, formula = line.split("\t=", 1)
        out = ""
        for token in re.findall(r'"[^"]*"|\d+\.?\d*(?:E[-+]?\d+)?|\w+\(?|<>|<=|>=|.', formula):
            if token[0].isdigit():
                out += f"number({token})"
            elif token[0].isalpha():
                out += f"sheet[{token[:-1]!r}](" if token[-1] == "(" else f"cells[{token!r}]"
            else:
                out += {";": ",", "=": "==", "<>": "!=", "{": "array([", "}": "])", "|": ","}.get(token, token)
        cells[name] = eval(out, {"number": np.float64, "array": np.array, "sheet": SHEET, "cells": cells})  # noqa: S307
    return cells


def sheet_name(name: str) -> str:
    return name + "_" if re.fullmatch(r"[A-Za-z]{1,3}\d+|[rcRC]", name) else name


@pytest.mark.parametrize("chapter", CHAPTERS)
@pytest.mark.filterwarnings("ignore::RuntimeWarning")
def test_exported_spreadsheet(chapter: str) -> None:
    """Within 1e-12: a spreadsheet has no expm1 and no log1p, and exports write them with SINH and ATANH."""
    texts: dict[str, str] = {}
    faults, count = [], 0
    for path, inputs in points(chapter):
        if path in NOT_EXPORTED:
            continue
        chosen, given = CHOSEN_IN_A_SHEET.get(path, {}), {i.name: v for i, v in positional(path, inputs)}
        if path in NOT_IN_A_SHEET and (not chosen or any(given[k] != v for k, v in chosen.items())):
            continue
        if path not in texts:
            texts[path] = model(path).export("openformula", **chosen)
        m = model(path)
        cells = sheet_answers(texts[path], {sheet_name(k): v for k, v in given.items()})
        want = parts(m(**inputs, policy="extrapolate"))
        got = list(cells.values())[-len(want):]
        count += 1
        if not all(agrees(g if isinstance(w, str) else bool(g) if isinstance(w, bool) else float(g), w, 1e-12) for g, w in zip(got, want)):
            faults.append(f"{path}({inputs}): {got} against {want}")
    assert not faults, f"{len(faults)}:\n" + "\n".join(faults[:20])
    assert count > 100


def test_what_a_spreadsheet_refuses() -> None:
    refused = {}
    for path in PATHS:
        try:
            _core.printed(path, "openformula")
        except ValueError as e:
            refused[path] = str(e)
    assert refused.keys() == NOT_IN_A_SHEET.keys()
    for path, reason in NOT_IN_A_SHEET.items():
        assert reason in refused[path]
