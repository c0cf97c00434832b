"""The small language of tests/reference/*/checks.csv; tests/cpp/support/expression.hpp reads the same."""

from __future__ import annotations

import ast
import csv
import operator
from pathlib import Path
from typing import Any

import wortmath as wm

REFERENCE = Path(__file__).parents[1] / "reference"

_BINARY = {ast.Add: operator.add, ast.Sub: operator.sub, ast.Mult: operator.mul, ast.Div: operator.truediv}
_COMPARE = {ast.LtE: operator.le, ast.GtE: operator.ge, ast.Lt: operator.lt, ast.Gt: operator.gt, ast.Eq: operator.eq, ast.NotEq: operator.ne}


def read_table(name: str) -> tuple[list[str], list[dict[str, str]]]:
    """The comment lines and the rows of a table."""
    lines = (REFERENCE / name).read_text(encoding="utf-8").splitlines()
    comments = [line for line in lines if line.startswith("#")]
    return comments, list(csv.DictReader(line for line in lines if line and not line.startswith("#")))


def number_or_word(text: str) -> Any:
    try:
        return float(text)
    except ValueError:
        return {"True": True, "true": True, "False": False, "false": False}.get(text, text)


def list_of(text: str) -> list[float]:
    return [float(x) for x in text.replace(";", "|").split("|")] if text else []


def joined(result: Any) -> Any:
    return "|".join(result) if isinstance(result, list) else result


def evaluate(text: str, row: dict[str, str]) -> Any:
    def walk(node: ast.expr) -> Any:
        if isinstance(node, ast.Constant):
            return node.value
        if isinstance(node, ast.Name):
            fixed = {"true": True, "false": False, "none": None}
            return fixed[node.id] if node.id in fixed else number_or_word(row[node.id])
        if isinstance(node, ast.BinOp):
            return _BINARY[type(node.op)](walk(node.left), walk(node.right))
        if isinstance(node, ast.UnaryOp):
            value = walk(node.operand)
            return not value if isinstance(node.op, ast.Not) else -value
        if isinstance(node, ast.BoolOp):
            values = [walk(v) for v in node.values]
            return all(values) if isinstance(node.op, ast.And) else any(values)
        if isinstance(node, ast.Compare):
            return _COMPARE[type(node.ops[0])](walk(node.left), walk(node.comparators[0]))
        if isinstance(node, ast.List):
            return [walk(e) for e in node.elts]
        if isinstance(node, ast.Attribute):
            return getattr(walk(node.value), node.attr)
        if isinstance(node, ast.Call):
            name = ast.unparse(node.func)
            if name == "col":
                return number_or_word(row[walk(node.args[0])])
            if name == "list":
                inner = node.args[0]
                return list_of(row[inner.id] if isinstance(inner, ast.Name) else row[walk(inner.args[0])])  # type: ignore[attr-defined]
            args = [walk(a) for a in node.args]
            if name in ("abs", "min", "max"):
                return {"abs": abs, "min": min, "max": max}[name](*args)
            return joined(model(name)(*args, **{k.arg: walk(k.value) for k in node.keywords if k.arg}))
        raise ValueError(f"cannot read {ast.unparse(node)!r}")

    return walk(ast.parse(text.strip(), mode="eval").body)


def model(path: str) -> Any:
    at: Any = wm
    for part in path.split("."):
        at = getattr(at, part)
    return at


def argument(given: Any, text: str) -> Any:
    """An argument of points/ and questions/: k=v, lists joined by |."""
    if given.kind == "list":
        return list_of(text)
    if given.kind in ("word",):
        return text
    if given.kind == "truth":
        return {"true": True, "false": False, "1": True, "0": False, "1.0": True, "0.0": False}[text.lower()]
    if text.lower() == "none":
        return None
    return float(text)


def call_from_text(path: str, inputs: str, **extra: Any) -> Any:
    m = model(path)
    by_name = {i.name: i for i in m.inputs}
    pairs = [pair.split("=", 1) for pair in inputs.split(";") if pair]
    unknown = [k for k, _ in pairs if k not in by_name]
    if unknown:
        raise KeyError(f"{path} has no argument {unknown}")
    return m(**{k: argument(by_name[k], v) for k, v in pairs}, **extra)
