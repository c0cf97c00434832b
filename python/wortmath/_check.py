"""wortmath check: a model against a table of one's own. The reading of the table refuses with line and column."""

from __future__ import annotations

import argparse
import csv
import io
import json
import math
import os
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from . import _units
from ._errors import RangeError
from ._model import by_path
from ._units import nearest

_BIGGEST = 32 * 2**20  # bytes of a table
_WORST = 5


class TableError(ValueError):
    """A table, or a wish about it, that cannot be followed; the message is a sentence with line and column."""


@dataclass
class Column:
    at: int       # counted from 1
    name: str
    unit: str     # as the header or an option has it; empty if none

    @property
    def where(self) -> str:
        return f'column {self.at} ("{self.name}")'


def configure(parser: argparse.ArgumentParser) -> None:
    """The options of the command."""
    parser.add_argument("table", metavar="TABLE.csv", help="a table with a header: columns named like the model's arguments, units in brackets: temperature [degF]")
    parser.add_argument("--model", required=True, metavar="PATH", help="the model to check, as in extract.from_gravity.asbc; a family stands for its default")
    parser.add_argument("--compare", metavar="COLUMN", help="the column with the values that the model should give; else the one column that is no argument")
    parser.add_argument("--argument", action="append", default=[], metavar="NAME=COLUMN", help="take this column for an argument, or one value for all rows: boil_minutes=60")
    parser.add_argument("--units", action="append", default=[], metavar="COLUMN=UNIT",
                        help="the unit of a column whose header has none; \"library\" alone: all such columns are in the units of the library")
    parser.add_argument("--result", metavar="NAME", help="which result to compare, of a model that has several")
    parser.add_argument("--ignore", action="append", default=[], metavar="COLUMN", help="leave a column out")
    parser.add_argument("--extrapolate", action="store_true", help="compute also where nobody has checked the model")
    parser.add_argument("--plot", metavar="FILE", help="a picture of the deviations: .svg, or .png and .pdf where matplotlib is installed")
    parser.add_argument("--json", metavar="FILE", help="the whole result as JSON; - for standard output and nothing else there")


# ---- the table ------------------------------------------------------------------------------------------------------

def _text_of(path: str) -> str:
    try:
        if os.path.isdir(path):
            raise TableError(f"{path} is a directory; a table is expected")
        if os.path.getsize(path) > _BIGGEST:
            raise TableError(f"{path} has more than {_BIGGEST // 2**20} MB; this is no table of a model")
        raw = Path(path).read_bytes()
    except FileNotFoundError:
        raise TableError(f"there is no file {path}") from None
    except OSError as e:
        raise TableError(f"{path} cannot be read: {(e.strerror or str(e)).lower()}") from None
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as e:
        line = raw[:e.start].count(b"\n") + 1
        raise TableError(f"{path}, line {line}: not UTF-8; save the table as UTF-8 text") from None


def _rows_of(path: str) -> tuple[list[Column], int, list[tuple[int, list[str]]]]:
    """The columns, the line of the header, and the rows with their line numbers."""
    text = _text_of(path)
    lines = text.splitlines()
    kept = [n for n, line in enumerate(lines, 1) if line.strip() and not line.lstrip().startswith("#")]
    if not kept:
        raise TableError(f"{path} is empty; a header and at least one row are expected")
    head = lines[kept[0] - 1]
    separator = max(",;\t", key=head.count)
    try:
        table = [next(csv.reader(io.StringIO(lines[n - 1]), delimiter=separator, strict=True), []) for n in kept]
    except csv.Error as e:
        raise TableError(f"{path}: the quotes of a cell are not closed in its line ({e})") from None
    columns = []
    for at, cell in enumerate(table[0], 1):
        name, bracket, rest = cell.strip().partition("[")
        if bracket and not rest.rstrip().endswith("]"):
            raise TableError(f"{path}, line {kept[0]}, column {at}: the unit in \"{cell.strip()}\" is not closed; write name [unit]")
        columns.append(Column(at, name.strip(), rest.rstrip().rstrip("]").strip()))
        if not columns[-1].name:
            raise TableError(f"{path}, line {kept[0]}, column {at}: the column has no name")
        if [c.name for c in columns].count(columns[-1].name) > 1:
            raise TableError(f'{path}, line {kept[0]}, column {at}: there is a column "{columns[-1].name}" already')
    rows = [(n, [c.strip() for c in row]) for n, row in zip(kept[1:], table[1:])]
    for n, row in rows:
        if len(row) != len(columns):
            raise TableError(f"{path}, line {n}: {len(row)} cells, where the header has {len(columns)}")
    if not rows:
        raise TableError(f"{path} has a header and no row")
    return columns, kept[0], rows


# ---- columns and arguments ------------------------------------------------------------------------------------------

def _needs_unit(unit: str) -> bool:
    """Whether a bare number could be meant in more than one unit."""
    dimension = _units.dimension_of(unit)
    if dimension is None:
        return False
    known = _units.TABLE[dimension]
    return "" not in known and len({(u.factor, u.zero) for u in known.values()}) > 1


def _checked_unit(path: str, line: int, column: Column, unit: str, of: str, bare: bool) -> str:
    if not column.unit:
        if _needs_unit(unit) and not bare:
            raise TableError(f'{path}, line {line}, {column.where}: the unit is missing; write "{column.name} [{unit}]" or give --units "{column.name}={unit}"')
        return unit
    try:
        return _units.check_unit(column.unit, unit) or unit
    except _units.UnitError as e:
        raise TableError(f"{path}, line {line}, {column.where}: {e} (for {of})") from None


def _number(path: str, line: int, column: Column, cell: str, what: str) -> float:
    try:
        value = float(cell)
    except ValueError:
        comma = "; write it with a decimal point" if cell.count(",") == 1 and cell.replace(",", "").replace("-", "").strip().isdigit() else ""
        raise TableError(f'{path}, line {line}, {column.where}: "{cell}" is not a number{comma}; {what} is expected') from None
    if not math.isfinite(value):
        raise TableError(f'{path}, line {line}, {column.where}: "{cell}" is not a finite number; {what} is expected')
    return value


def _value(path: str, line: int, column: Column, cell: str, given: Any, unit: str) -> Any:
    if given.kind == "word":
        if cell not in given.words:
            raise TableError(f'{path}, line {line}, {column.where}: "{cell}" is not known{nearest(cell, given.words)}; it is one of {", ".join(given.words)}')
        return cell
    if given.kind == "truth":
        truth = {"true": True, "yes": True, "1": True, "false": False, "no": False, "0": False}.get(cell.lower())
        if truth is None:
            raise TableError(f'{path}, line {line}, {column.where}: "{cell}" is neither true nor false')
        return truth
    if not cell:
        if given.required:
            raise TableError(f"{path}, line {line}, {column.where}: the cell is empty; {given.noun} is expected")
        return given.default
    if given.kind == "list":
        return [_in_library(_number(path, line, column, part, given.noun), unit, given.unit) for part in cell.split("|")]
    return _in_library(_number(path, line, column, cell, given.noun), unit, given.unit)


def _in_library(value: float, given: str, unit: str) -> float:
    return value if given == unit else _units.convert(value, given, unit)


def _pairs(wishes: list[str], option: str) -> dict[str, str]:
    found = {}
    for wish in wishes:
        name, equals, value = wish.partition("=")
        if not equals or not name.strip() or not value.strip():
            raise TableError(f'{option} "{wish}": two names with = between them are expected')
        found[name.strip()] = value.strip()
    return found


class Plan:
    """Which column is which argument, and which one is compared."""

    def __init__(self, model: Any, wishes: argparse.Namespace) -> None:
        self.model = model
        self.path: str = wishes.table
        self.columns, self.line, self.rows = _rows_of(self.path)
        by_name = {c.name: c for c in self.columns}
        inputs = {i.name: i for i in model.inputs}
        units = [u for u in wishes.units if u != "library"]
        bare = "library" in wishes.units
        for name, unit in _pairs(units, "--units").items():
            if name not in by_name:
                raise TableError(f'--units: {self.path} has no column "{name}"{nearest(name, list(by_name))}')
            if by_name[name].unit and by_name[name].unit != unit:
                raise TableError(f"{self.path}, line {self.line}, {by_name[name].where}: the header says {by_name[name].unit}, --units says {unit}")
            by_name[name].unit = unit
        for name in wishes.ignore:
            if name not in by_name:
                raise TableError(f'--ignore: {self.path} has no column "{name}"{nearest(name, list(by_name))}')

        self.fixed: dict[str, Any] = {}
        self.taken: dict[str, Column] = {}
        for name, source in _pairs(wishes.argument, "--argument").items():
            if name not in inputs:
                raise TableError(f'--argument: {model.path} has no argument "{name}"{nearest(name, list(inputs))}; it takes {", ".join(inputs) or "none"}')
            if source in by_name:
                self.taken[name] = by_name[source]
            else:
                self.fixed[name] = self._constant(inputs[name], source, by_name)
        used = {c.name for c in self.taken.values()}
        for name in inputs:
            if name in by_name and name not in self.taken and name not in self.fixed and name != wishes.compare and name not in used and name not in wishes.ignore:
                self.taken[name] = by_name[name]
        left = [c for c in self.columns if c not in self.taken.values() and c.name not in wishes.ignore]
        self.result = self._result(wishes.result, left, wishes.compare)
        self.compared = self._compared(wishes.compare, by_name, left, inputs)
        for c in left:
            if c is not self.compared:
                raise TableError(f"{self.path}, line {self.line}, {c.where} fits no argument of {model.path}{nearest(c.name, list(inputs))}; it takes {', '.join(inputs) or 'none'}. "
                                 f'Give --argument NAME="{c.name}", or --ignore "{c.name}"')
        for name, given in inputs.items():
            if given.required and name not in self.taken and name not in self.fixed:
                raise TableError(f"{self.path}, line {self.line}: no column for the argument {name} ({given.noun}); name one {name}, or give --argument {name}=COLUMN")
        self.units = {name: _checked_unit(self.path, self.line, c, inputs[name].unit, name, bare or inputs[name].kind in ("word", "truth")) for name, c in self.taken.items()}
        self.unit = _checked_unit(self.path, self.line, self.compared, self.result.unit, "the result", bare or self.result.kind != "number")

    def _constant(self, given: Any, text: str, by_name: dict[str, Column]) -> Any:
        if given.kind == "word" and text in given.words:
            return text
        if given.kind == "truth" and text.lower() in ("true", "false"):
            return text.lower() == "true"
        try:
            if given.kind in ("number", "optional"):
                return _units.parse(text, given.unit)
        except _units.UnitError as e:
            if text[:1].isdigit():
                raise TableError(f"--argument {given.name}={text}: {e}") from None
        raise TableError(f'--argument {given.name}={text}: {self.path} has no column "{text}"{nearest(text, list(by_name))}')

    def _result(self, wanted: str | None, left: list[Column], compare: str | None) -> Any:
        outputs = self.model.outputs
        names = [o.name for o in outputs if o.name]
        if wanted is not None:
            if wanted not in names:
                raise TableError(f'--result: {self.model.path} has no result "{wanted}"{nearest(wanted, names)}; it has {", ".join(names) or "one, without a name"}')
            return outputs[names.index(wanted)]
        if len(outputs) == 1:
            return outputs[0]
        alike = [o for o in outputs if o.name == compare or compare is None and any(c.name == o.name for c in left)]
        if len(alike) != 1:
            raise TableError(f"{self.model.path} has several results: {', '.join(names)}; choose one with --result")
        return alike[0]

    def _compared(self, wanted: str | None, by_name: dict[str, Column], left: list[Column], inputs: dict[str, Any]) -> Column:
        if wanted is not None:
            if wanted not in by_name:
                raise TableError(f'--compare: {self.path} has no column "{wanted}"{nearest(wanted, list(by_name))}; it has {", ".join(by_name)}')
            return by_name[wanted]
        named = [c for c in left if c.name == self.result.name]
        strange = [c for c in left if nearest(c.name, [n for n in inputs if n not in self.taken])]
        if len(named) == 1:
            return named[0]
        if len(left) == 1 and not strange:
            return left[0]
        if not left:
            raise TableError(f"{self.path}, line {self.line}: every column is an argument; which one is to be compared? Give --compare COLUMN")
        if len(left) == 1 or strange and len(left) - len(strange) == 1:
            c = strange[0]
            raise TableError(f"{self.path}, line {self.line}, {c.where} fits no argument of {self.model.path}{nearest(c.name, list(inputs))}; it takes {', '.join(inputs)}. "
                             f'Give --argument NAME="{c.name}", --compare "{c.name}" or --ignore "{c.name}"')
        raise TableError(f"{self.path}, line {self.line}: {', '.join(c.where for c in left)} fit no argument of {self.model.path} ({', '.join(inputs) or 'none'}); "
                         "say which one is compared with --compare, and leave the others out with --ignore")


# ---- the comparison -------------------------------------------------------------------------------------------------

def half_a_digit(cell: str) -> float:
    """Half a unit of the last digit that a number is printed with."""
    mantissa, _, power = cell.lower().partition("e")
    decimals = len(mantissa.partition(".")[2])
    return 0.5 * 10.0 ** (int(power or 0) - decimals)


def compare(plan: Plan, extrapolate: bool) -> dict[str, Any]:
    """Every row against the model."""
    model, result = plan.model, plan.result
    inputs = {i.name: i for i in model.inputs}
    words = result.kind in ("word", "words", "truth")
    rows: list[dict[str, Any]] = []
    refused: list[dict[str, Any]] = []
    empty = 0
    for line, cells in plan.rows:
        values = dict(plan.fixed)
        for name, c in plan.taken.items():
            values[name] = _value(plan.path, line, c, cells[c.at - 1], inputs[name], plan.units[name])
        cell = cells[plan.compared.at - 1]
        if not cell:
            empty += 1
            continue
        want: Any = cell if words else _number(plan.path, line, plan.compared, cell, result.noun)
        shown = {name: cells[c.at - 1] for name, c in plan.taken.items()}
        try:
            got = model(**values, policy="extrapolate" if extrapolate else "raise")
        except RangeError as e:
            refused.append({"line": line, "inputs": shown, "reason": str(e)})
            continue
        except ValueError as e:  # lists of different lengths
            raise TableError(f"{plan.path}, line {line}: {e}") from None
        got = got if result.name is None else getattr(got, result.name)
        if isinstance(got, float) and not math.isfinite(got):
            refused.append({"line": line, "inputs": shown, "reason": f"{model.path} gives no finite number here"})
            continue
        if words:
            got = "|".join(got) if isinstance(got, list) else str(got).lower() if isinstance(got, bool) else got
            rows.append({"line": line, "inputs": shown, "table": want, "model": got, "deviation": None, "agrees": got.lower() == want.lower()})
        else:
            got = got if plan.unit == result.unit else _units.express(float(got), result.unit, plan.unit)
            rows.append({"line": line, "inputs": shown, "table": want, "model": got, "deviation": got - want, "agrees": abs(got - want) <= half_a_digit(cell) * (1 + 1e-9)})
    found: dict[str, Any] = {
        "model": model.path, "question": model.question, "source": model.source, "status": model.status, "table": plan.path, "compared_column": plan.compared.name,
        "result": result.name, "unit": "" if words else plan.unit, "arguments": {n: c.name for n, c in plan.taken.items()}, "fixed": plan.fixed,
        "rows": len(plan.rows), "compared": len(rows), "empty": empty, "refused": refused, "within_half_a_digit": sum(r["agrees"] for r in rows), "deviations": rows}
    deviations = [r["deviation"] for r in rows if r["deviation"] is not None]
    if deviations:
        found["mean"] = math.fsum(deviations) / len(deviations)
        found["rms"] = math.sqrt(math.fsum(d * d for d in deviations) / len(deviations))
        found["largest"] = max(deviations, key=abs)
        found["worst"] = [r["line"] for r in sorted(rows, key=lambda r: -abs(r["deviation"]))[:_WORST]]
    elif words:
        found["worst"] = [r["line"] for r in rows if not r["agrees"]][:_WORST]
    return found


def report(found: dict[str, Any]) -> str:
    """The comparison in words, for a terminal."""
    unit = f" {found['unit']}" if found["unit"] and not found["unit"].startswith("SG") and found["unit"] not in ("ratio", "fraction") else ""
    words = "largest" not in found
    lines = [f"{found['model']}: {found['question']}", f"  source: {found['source']} ({found['status']})", f"  table: {found['table']}, column \"{found['compared_column']}\"", ""]
    parts = [f"{found['compared']} compared"] + ([f"{found['empty']} without a value"] if found["empty"] else []) + ([f"{len(found['refused'])} refused"] if found["refused"] else [])
    lines.append(f"rows      {found['rows']}: {', '.join(parts)}")
    if words:
        lines.append(f"alike     {found['within_half_a_digit']} of {found['compared']}")
    else:
        worst = next(r for r in found["deviations"] if r["line"] == found["worst"][0])
        lines += [f"largest   {found['largest']:+.3g}{unit}, in line {worst['line']}", f"mean      {found['mean']:+.3g}{unit}", f"rms       {found['rms']:.3g}{unit}",
                  f"within    half a unit of the last printed digit: {found['within_half_a_digit']} of {found['compared']} rows"]
    bad = [next(r for r in found["deviations"] if r["line"] == n) for n in found.get("worst", [])]
    if bad:
        heads = ["line", *found["arguments"].values(), "table", "model"] + ([] if words else ["model - table"])
        body = [[str(r["line"]), *r["inputs"].values(), str(r["table"]) if words else f"{r['table']:.10g}", r["model"] if words else f"{r['model']:.7g}"]
                + ([] if words else [f"{r['deviation']:+.3g}"]) for r in bad]
        widths = [max(len(row[k]) for row in [heads, *body]) for k in range(len(heads))]
        lines += ["", "rows that differ" if words else "worst rows"] + ["  " + "  ".join(cell.rjust(w) for cell, w in zip(row, widths)).rstrip() for row in [heads, *body]]
    if found["refused"]:
        lines += ["", "refused rows" + ("" if len(found["refused"]) <= _WORST else f", the first {_WORST} of {len(found['refused'])}")]
        lines += [f"  line {r['line']}: {r['reason']}" for r in found["refused"][:_WORST]]
        lines.append("  --extrapolate computes those that are only outside the validated range")
    return "\n".join(lines) + "\n"


def _curve(found: dict[str, Any], plan: Plan) -> tuple[str, list[float], list[float]]:
    """Deviations over the first argument that moves, or over the rows."""
    rows = [r for r in found["deviations"] if r["deviation"] is not None]
    for given in plan.model.inputs:
        column = plan.taken.get(given.name)
        if column and given.kind in ("number", "optional") and all(r["inputs"][given.name] for r in rows):
            xs = [float(r["inputs"][given.name]) for r in rows]
            if len(set(xs)) > 1:
                return f"{column.name} [{plan.units[given.name]}]", xs, [r["deviation"] for r in rows]
    return "line of the table", [float(r["line"]) for r in rows], [r["deviation"] for r in rows]


def draw(found: dict[str, Any], plan: Plan) -> str:
    """The deviations as an SVG picture; shaded: half a unit of the last printed digit."""
    from . import _chart
    x_label, xs, ys = _curve(found, plan)
    cells = {line: cells[plan.compared.at - 1] for line, cells in plan.rows}
    band = [half_a_digit(cells[r["line"]]) for r in found["deviations"]]
    panel = _chart.Panel(f"{found['model']}: {found['compared']} rows of {os.path.basename(found['table'])}", x_label, f"model − table [{found['unit']}]",
                         [_chart.Curve("model − table", xs, ys, dots=True)], band, zero=True)
    return _chart.sheet([panel], width=640, height=340, columns=1, description=f"Deviations of {found['model']} from {found['table']}; shaded: half a unit of the last printed digit")


def _draw_with_matplotlib(found: dict[str, Any], plan: Plan, suffix: str) -> bytes:
    try:
        from matplotlib.backends.backend_agg import FigureCanvasAgg
        from matplotlib.figure import Figure
    except ImportError:
        raise TableError(f'a picture in {suffix} needs matplotlib (pip install "wortmath[plot]"); .svg works without it') from None
    x_label, xs, ys = _curve(found, plan)
    figure = Figure(figsize=(8, 4.25), layout="constrained")
    FigureCanvasAgg(figure)
    axes = figure.add_subplot()
    axes.axhline(0, color="0.7", linewidth=0.8)
    axes.plot(xs, ys, ".")
    axes.set(title=f"{found['model']}: {found['compared']} rows of {os.path.basename(found['table'])}", xlabel=x_label, ylabel=f"model − table [{found['unit']}]")
    out = io.BytesIO()
    figure.savefig(out, format=suffix[1:])
    return out.getvalue()


def main(wishes: argparse.Namespace) -> tuple[str, list[tuple[str, str | bytes]]]:
    """The text for standard output, and the files to write. Raises TableError before anything is written."""
    try:
        model = by_path(wishes.model)
    except KeyError:
        from . import _core
        known = sorted({path.rsplit(".", 1)[0] for path in _core._models}) + list(_core._models)
        raise TableError(f'there is no model "{wishes.model}"{nearest(wishes.model, known)}; wortmath models lists them') from None
    if not hasattr(model, "inputs"):
        raise TableError(f'"{wishes.model}" is not one model; name one: {", ".join(getattr(model, "models", None) or getattr(model, "__all__", []))}')
    suffix = os.path.splitext(wishes.plot or "")[1].lower()
    if wishes.plot is not None and suffix not in (".svg", ".png", ".pdf"):
        raise TableError(f"--plot {wishes.plot}: the name of a picture ends in .svg, .png or .pdf")
    for option, name in (("--plot", wishes.plot), ("--json", wishes.json)):
        if name == "":
            raise TableError(f"{option} needs a file name")
        if name and os.path.exists(name) and os.path.exists(wishes.table) and os.path.samefile(name, wishes.table):
            raise TableError(f"{option}: {name} is the table itself; it would be lost")
    plan = Plan(model, wishes)
    found = compare(plan, wishes.extrapolate)
    if not found["compared"]:
        first = f"; the first, in line {found['refused'][0]['line']}: {found['refused'][0]['reason']}" if found["refused"] else ""
        raise TableError(f"{wishes.table}: no row can be compared{first}")
    files: list[tuple[str, str | bytes]] = []
    if wishes.plot:
        if "largest" not in found:
            raise TableError("--plot: words and truth values have no deviation to draw")
        files.append((wishes.plot, draw(found, plan) if suffix == ".svg" else _draw_with_matplotlib(found, plan, suffix)))
    if not wishes.json:
        return report(found), files
    data = json.dumps(found, indent=2, ensure_ascii=False, allow_nan=False) + "\n"
    if wishes.json == "-":
        return data, files
    return report(found), [*files, (wishes.json, data)]
