"""What stands behind every model, read from tests/reference: the rows of the printed tables, the worked answers, the
points of the independent implementation. The validation report and the reference pages are made from this.

The checks and their language are those of the tests (tests/python/expression.py); nothing is computed twice.
"""

from __future__ import annotations

import ast
import math
import re
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT / "tests" / "python"))

import expression as expression  # noqa: E402

from pages import figure  # noqa: E402
from wortmath import _core  # noqa: E402
from wortmath._check import half_a_digit  # noqa: E402
from wortmath._model import facts as facts  # noqa: E402

CHAPTERS = {"extract": "Gravity, extract, water", "attenuation": "Attenuation, alcohol, energy", "refractometer": "Refractometer", "bitterness": "Bitterness and hops",
            "colour": "Colour", "carbonation": "Carbonation, priming, packages", "process": "Mash, kettle, yeast, liquor"}

# Where the zero of a scale is arbitrary, a share of the value says little: a shift is told in the unit itself.
_ARBITRARY_ZERO = ("SG", "degC", "pH")


@dataclass(frozen=True)
class Table:
    chapter: str
    file: str
    title: str
    source: str
    status: str
    use: str
    rows: tuple[dict[str, str], ...]

    @property
    def outside(self) -> bool:
        """Whether the numbers come from outside this project."""
        return not self.status.startswith("derived")


@dataclass(frozen=True)
class Row:
    got: Any
    want: Any
    tolerance: float
    half: float            # half a unit of the last printed digit of what is compared; 0 if nothing printed is
    slope: float           # change of `got` per relative (or, by the unit, absolute) change of the model's answer
    inputs: dict[str, str]

    @property
    def deviation(self) -> float:
        return 0.0 if self.got == self.want else math.inf if isinstance(self.got, str) else float(self.got - self.want)


@dataclass
class Check:
    table: Table
    where: str
    expression: str
    compare: str
    tolerance: str
    note: str
    subjects: tuple[str, ...]      # the models whose answer is compared; the first one's changes are looked at
    helpers: tuple[str, ...]       # the models that only prepare inputs or the value to compare
    rows: list[Row] = field(default_factory=list)

    @property
    def words(self) -> bool:
        """Whether words or truth values are compared, which agree or do not."""
        return any(isinstance(r.got, (str, bool)) for r in self.rows)

    @property
    def whole(self) -> bool:
        return bool(self.subjects) and facts(self.subjects[0])["outputs"][0].kind == "whole" and all(isinstance(r.got, int) and not isinstance(r.got, bool) for r in self.rows)

    @property
    def largest(self) -> float:
        return max((abs(r.deviation) for r in self.rows), default=0.0)

    @property
    def rms(self) -> float:
        return math.sqrt(math.fsum(r.deviation ** 2 for r in self.rows) / len(self.rows))

    @property
    def use_of_tolerance(self) -> float:
        """The largest deviation as a share of what is allowed."""
        return max((abs(r.deviation) / r.tolerance if r.tolerance else (0.0 if abs(r.deviation) < 1e-12 else math.inf)) for r in self.rows)

    @property
    def wider(self) -> bool:
        """Whether the tolerance is wider than half a unit of the last printed digit (and the comparison's own rounding)."""
        return any(r.tolerance > r.half * 1.21 + 1e-15 for r in self.rows)

    @property
    def within_half(self) -> int:
        """How many rows differ by no more than half a unit of the last printed digit."""
        return sum(r.got == r.want or abs(r.deviation) <= r.half * (1 + 1e-9) + 1e-12 for r in self.rows)

    @property
    def unit_of_shift(self) -> str:
        unit = str(facts(self.subjects[0])["outputs"][0].unit) if self.subjects else ""
        return unit.split()[0] if unit.startswith(_ARBITRARY_ZERO) else "%"

    @property
    def would_notice(self) -> float:
        """The smallest change of the model's answers that makes the check fail on either side: a share, or in the unit of the scale."""
        up = down = math.inf
        for r in self.rows:
            if r.slope and math.isfinite(r.slope):
                signed = math.copysign(1.0, r.slope) * r.deviation
                up = min(up, max(0.0, r.tolerance - signed) / abs(r.slope))
                down = min(down, max(0.0, r.tolerance + signed) / abs(r.slope))
        return max(up, down)

    @property
    def notice(self) -> str:
        """The same in words. Where the model enters twice, a change in common may cancel and only the shape is tested."""
        if self.words:
            return "any"
        if self.whole:
            return f"{math.floor(max(r.tolerance for r in self.rows)) + 1} unit" + ("s" if max(r.tolerance for r in self.rows) >= 1 else "")
        size = self.would_notice
        if self.unit_of_shift != "%":
            return f"{figure(size)} {self.unit_of_shift}" if math.isfinite(size) else "one side"
        if self.expression.replace(" ", "").startswith("max(0,"):
            return "one side"
        if size > 0.2 and self.expression.count(self.subjects[0].rsplit(".", 1)[0]) > 1:
            return "shape"
        return "any" if size < 1e-11 else f"{figure(100 * size)} %"

    @property
    def axis(self) -> str:
        """The column that the deviations are drawn over: the first of the expression that moves."""
        for name in _columns(self.expression):
            values = [r.inputs.get(name, "") for r in self.rows]
            if len(set(values)) > 2 and all(_is_number(v) for v in values):
                return name
        return ""


def _is_number(text: str) -> bool:
    try:
        return math.isfinite(float(text))
    except ValueError:
        return False


def _models_in(node: ast.AST) -> Iterator[tuple[str, bool]]:
    """The models that an expression calls, each with whether nothing else is made of its answer by another model."""
    def walk(n: ast.AST, inner: bool) -> Iterator[tuple[str, bool]]:
        if isinstance(n, ast.Call) and "." in (name := ast.unparse(n.func)):
            yield facts(expression.model(name).path)["path"], not inner
            inner = True
        for child in ast.iter_child_nodes(n):
            yield from walk(child, inner)
    yield from walk(node, False)


@lru_cache(maxsize=None)
def _columns(text: str) -> tuple[str, ...]:
    found: list[str] = []
    for node in ast.walk(ast.parse(text.strip(), mode="eval")):
        if isinstance(node, ast.Call) and ast.unparse(node.func) in ("col", "list") and node.args and isinstance(node.args[0], ast.Constant):
            found.append(str(node.args[0].value))
        elif isinstance(node, ast.Name) and node.id not in ("true", "false", "none") and node.id not in _TOPICS:
            found.append(node.id)
    return tuple(dict.fromkeys(found))


_TOPICS = {p.split(".")[0] for p in _core._models} | {"abs", "min", "max", "list", "col"}


@contextmanager
def _changed(paths: tuple[str, ...], by: float, shift: bool) -> Iterator[None]:
    """Let some models answer a little more than they do."""
    plain = expression.model

    def more(value: Any) -> Any:
        if isinstance(value, tuple):
            return type(value)(*map(more, value))
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            return value
        return value + 1 if isinstance(value, int) else value + by if shift else value * (1.0 + by)

    def model(path: str) -> Any:
        m = plain(path)
        return (lambda *a, **k: more(m(*a, **k))) if getattr(m, "path", "") in paths else m

    expression.model = model
    try:
        yield
    finally:
        expression.model = plain


def _half(text: str, row: dict[str, str]) -> float:
    """What half a unit of the last printed digit of each column is worth in the value of an expression."""
    base = expression.evaluate(text, row)
    if isinstance(base, (str, bool)):
        return 0.0
    total = 0.0
    for name in _columns(text):
        cell = row.get(name, "")
        if _is_number(cell):
            moved = {**row, name: repr(float(cell) + half_a_digit(cell))}
            try:
                total += abs(expression.evaluate(text, moved) - base)
            except ValueError:  # just beyond a range
                pass
    return total


def _exact(table: Table, line: dict[str, str]) -> bool:
    """Whether the compared column is the argument of the printed table, whole numbers taken as exact, and the printed figures go into the model."""
    def decimals(text: str) -> bool:
        return any("." in row.get(name, "") for name in _columns(text) for row in table.rows)
    return bool(_columns(line["compare"])) and not decimals(line["compare"]) and decimals(line["expression"])


@lru_cache(maxsize=None)
def tables() -> dict[str, Table]:
    found = {}
    for file in sorted(expression.REFERENCE.glob("*/*.csv")):
        name = f"{file.parent.name}/{file.name}"
        if file.name.startswith("checks") or file.parent.name in ("points", "uncertainty"):
            continue
        comments, rows = expression.read_table(name)
        head = {key.strip(): text.strip() for key, _, text in (c.lstrip("# ").partition(":") for c in comments)}
        found[name] = Table(file.parent.name, file.name, head.get("title", ""), head.get("source", ""), head.get("status", ""), head.get("use", ""), tuple(rows))
    return found


def _subjects(table: Table, every: list[str], outer: list[str]) -> tuple[str, ...]:
    """The models that a check is about: those that the head of the table names; else the outermost that does more than change the unit."""
    def named(path: str) -> bool:
        return path in table.use or re.search(re.escape(path.rsplit(".", 1)[0]) + r"(?![\w.])|" + re.escape(path.rsplit(".", 1)[0]) + r"\.\*", table.use) is not None
    by_head = tuple(p for p in dict.fromkeys(every) if named(p))
    if by_head:
        return by_head
    inner = [p for p in dict.fromkeys(every) if p not in outer]
    converts = outer[0].endswith((".exact", ".definition")) and len(facts(outer[0])["inputs"]) == 1
    return (inner[0] if converts and inner else outer[0],)


def _read_check(chapter: str, line: dict[str, str]) -> Check:
    table = tables()[f"{chapter}/{line['file']}"]
    calls = list(_models_in(ast.parse(line["expression"].strip(), mode="eval")))
    subjects = _subjects(table, [p for p, _ in calls], [p for p, top in calls if top])
    others = [p for p, _ in calls] + [p for p, _ in _models_in(ast.parse(line["compare"].strip(), mode="eval"))]
    check = Check(table, line["where"] or "", line["expression"], line["compare"], line["tolerance"], line["note"] or "", subjects,
                  tuple(p for p in dict.fromkeys(others) if p not in subjects))
    shift = check.unit_of_shift != "%"
    step = 1e-6
    printed = check.expression if _exact(table, line) else check.compare
    for row in table.rows:
        if check.where and not expression.evaluate(check.where, row):
            continue
        got, want = expression.evaluate(check.expression, row), expression.evaluate(check.compare, row)
        slope = 0.0
        if isinstance(got, (int, float)) and not isinstance(got, bool) and not isinstance(want, str):
            with _changed(subjects[:1], step, shift):
                try:
                    slope = (expression.evaluate(check.expression, row) - got) / (1 if check.subjects and facts(check.subjects[0])["outputs"][0].kind == "whole" else step)
                except ValueError:
                    slope = math.nan
        tolerance = 0.0 if isinstance(got, str) else float(expression.evaluate(check.tolerance, row))
        check.rows.append(Row(got, want, tolerance, _half(printed, row), slope, row))
    return check


@lru_cache(maxsize=None)
def checks() -> tuple[Check, ...]:
    """Every line of every manifest, evaluated."""
    found = []
    for chapter in CHAPTERS:
        for file in sorted((expression.REFERENCE / chapter).glob("checks*.csv")):
            found += [_read_check(chapter, line) for line in expression.read_table(f"{chapter}/{file.name}")[1]]
    return tuple(found)


@dataclass(frozen=True)
class Answer:
    """A worked answer, or a wrong one in print."""
    id: str
    model: str
    inputs: str
    got: float
    want: float
    tolerance: float
    source: str
    printed: float | None = None


@lru_cache(maxsize=None)
def answers() -> tuple[Answer, ...]:
    found = []
    for name in ("questions/worked_answers.csv", "questions/published_slips.csv", "questions/hydrometer_club_sheet_60F.csv", "questions/refractometer_pairs.csv"):
        for r in expression.read_table(name)[1]:
            if not {"model", "inputs", "tolerance"} <= r.keys():
                continue
            value = expression.call_from_text(r["model"], r["inputs"], policy="extrapolate")
            value = value[0] if isinstance(value, tuple) else value
            found.append(Answer(r.get("id", ""), facts(expression.model(r["model"]).path)["path"], r["inputs"], float(value), float(r.get("value") or r["correct"]), float(r["tolerance"]),
                                r.get("source", ""), float(r["printed"]) if r.get("printed") else None))
    return tuple(found)


@dataclass
class Points:
    rows: int = 0
    largest: float = 0.0   # relative to the value, of those that are numbers


@lru_cache(maxsize=None)
def points() -> dict[str, Points]:
    """Agreement with the independent implementation, by model."""
    found: dict[str, Points] = {}
    for chapter in CHAPTERS:
        for row in expression.read_table(f"points/{chapter}.csv")[1]:
            own = found.setdefault(row["path"], Points())
            own.rows += 1
            value = expression.joined(expression.call_from_text(row["path"], row["inputs"], policy="extrapolate"))
            parts = list(value) if isinstance(value, tuple) else [value]
            for got, want in zip(parts, [row["result"]] if isinstance(parts[0], str) else row["result"].split("|")):
                if isinstance(got, float) and math.isfinite(got) and float(want):
                    own.largest = max(own.largest, abs(got - float(want)) / abs(float(want)))
    return found


@lru_cache(maxsize=None)
def by_model() -> dict[str, list[Check]]:
    found: dict[str, list[Check]] = {path: [] for path in _core._models}
    for check in checks():
        for path in check.subjects:
            found[path].append(check)
    return found
