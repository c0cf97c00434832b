#!/usr/bin/env python3
"""Changes every printed coefficient by one in its last digit and reports which changes no test notices.

    python tests/audit/coefficients.py            all topics, writes docs/audit.md
    python tests/audit/coefficients.py water      one topic, prints what it finds

A copy of the headers is made in which every number of a formula, of a table or of a constant asks whether it is the one to
be changed; it is compiled once, with the tests' own reader of tables. Each number then costs one run of a small program
over the rows that depend on it: the printed tables and worked answers (outside), and tests/reference/points (inside: an
independent implementation of the same text). Ranges of inputs are not coefficients and are left alone, and so are the
limits of `holds`.
"""

from __future__ import annotations

import argparse
import os
import re
import shutil
import subprocess
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from decimal import Decimal
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
HERE = Path(__file__).resolve().parent

TOKEN = re.compile(
    r"""//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])'|^[ \t]*\#(?:\\\n|[^\n])*"""
    r"""|(?:\d(?:'?\d)*\.?(?:\d(?:'?\d)*)?|\.\d+)(?:[eE][+-]?\d+)?|[A-Za-z_]\w*|::|->|<=|>=|==|!=|&&|\|\||[^\s\w]|\s+""",
    re.S | re.M)
# Lists of inputs and words about models: their numbers are ranges, not coefficients.
ABOUT = {"facts", "input", "validated", "possible", "only", "otherwise", "limits", "beyond", "names"}
WHOLE = {"size_t", "int", "bool", "char", "unsigned", "input", "facts", "validated", "possible", "only", "string_view", "family", "family_without_default"}
NOT_MODELS = {"batch", "uncertainty", "reconcile"}


@dataclass
class Literal:
    number: int
    file: str
    line: int
    text: str
    rows: list[int] = field(default_factory=list)
    fixed: bool = False  # read when the program starts: a constant or a table
    outside: float = -1.0  # largest change over tolerance; -1: no row depends on it
    points: float = -1.0
    failed_outside: int = 0
    failed_points: int = 0


def changed_by_one(text: str) -> str:
    """The number with one more in its last printed digit."""
    mantissa, _, exponent = text.replace("'", "").lower().partition("e")
    step = Decimal(1).scaleb(Decimal(mantissa).as_tuple().exponent)  # type: ignore[arg-type]
    more = str(Decimal(mantissa) + step)
    return more + ("e" + exponent if exponent else "")


def is_space(token: str) -> bool:
    return token.isspace() or token.startswith(("//", "/*"))


class Header:
    """The tokens of a header, with what each brace opens."""

    def __init__(self, path: Path, relative: str) -> None:
        self.path, self.relative = path, relative
        self.tokens = TOKEN.findall(path.read_text(encoding="utf-8"))
        assert "".join(self.tokens) == path.read_text(encoding="utf-8"), path
        self.lines: list[int] = []
        line = 1
        for t in self.tokens:
            self.lines.append(line)
            line += t.count("\n")
        self.scope = [""] * len(self.tokens)
        self.skipped = [False] * len(self.tokens)
        self.constant = [False] * len(self.tokens)  # the compiler must know what stands here
        self.whole_array = [False] * len(self.tokens)
        self.close = [-1] * len(self.tokens)
        self._walk()
        self.wrapped: dict[int, Literal] = {}

    def _walk(self) -> None:
        stack: list[tuple[str, bool, bool, int, bool]] = []
        header: list[str] = []
        for k, t in enumerate(self.tokens):
            kind, skip, array, _, constant = stack[-1] if stack else ("namespace", False, False, -1, False)
            self.scope[k], self.skipped[k], self.whole_array[k], self.constant[k] = kind, skip, array, constant
            if is_space(t) or t.startswith("#") or t.lstrip().startswith("#"):
                continue
            if t == "{":
                words = set(header)
                if "namespace" in words:
                    kind = "namespace"
                elif self.first_word(header) in ("struct", "class", "enum") or header[-1:] == ["struct"]:
                    kind = "struct"
                elif ")" in words or "]" in words and "(" in words:
                    kind = "function"
                elif kind != "function" or not header:
                    kind = "list" if kind != "function" else "function"
                if kind in ("namespace", "struct"):
                    array = False
                name_of_function = next((w for w, after in zip(header, header[1:]) if after == "("), "")
                constant = constant or (kind not in ("namespace", "struct", "function") and bool(words & ABOUT))
                constant = constant or (bool(words & {"facts", "input"}) and kind != "struct" and "(" not in words)
                skip = skip or constant or (kind == "function" and name_of_function.endswith("holds"))
                array = array or ("double" in words and "[" in words and "(" not in words)
                stack.append((kind, skip, array, k, constant))
                header = []
            elif t == "}":
                if stack:
                    self.close[stack.pop()[3]] = k
                header = []
            elif t == ";":
                header = []
            else:
                header.append(t)

    @staticmethod
    def first_word(header: list[str]) -> str:
        """After `template <...>`."""
        if header[:1] != ["template"]:
            return header[0] if header else ""
        depth = 0
        for k, t in enumerate(header):
            depth += (t == "<") - (t == ">")
            if t == ">" and depth == 0:
                return header[k + 1] if k + 1 < len(header) else ""
        return ""

    def next_(self, k: int) -> int:
        k += 1
        while k < len(self.tokens) and is_space(self.tokens[k]):
            k += 1
        return k

    def previous(self, k: int) -> str:
        k -= 1
        while k >= 0 and is_space(self.tokens[k]):
            k -= 1
        return self.tokens[k] if k >= 0 else ""

    def find_literals(self, literals: list[Literal]) -> None:
        for k, t in enumerate(self.tokens):
            if not t[0].isdigit() and not (t[0] == "." and len(t) > 1) or self.skipped[k]:
                continue
            fractional = "." in t or "e" in t.lower()
            if not fractional and not self.whole_array[k] or self.previous(k) in ("[", "<"):
                continue
            if any(w in self.statement(k) for w in ("below", "above", "static_assert", "answer_to_anything_else")):
                continue
            literal = Literal(len(literals) + 1, self.relative, self.lines[k], t)
            literals.append(literal)
            self.wrapped[k] = literal

    def statement(self, k: int) -> list[str]:
        """The tokens between the last ; { } and this one."""
        found = []
        while k > 0 and self.tokens[k - 1] not in (";", "{", "}"):
            k -= 1
            found.append(self.tokens[k])
        return found

    def end_of_statement(self, k: int) -> int:
        depth = 0
        while k < len(self.tokens):
            t = self.tokens[k]
            if t in "([{":
                depth += 1
            elif t in ")]}":
                depth -= 1
                if depth < 0:
                    return k
            elif t == ";" and depth == 0:
                return k
            k += 1
        return k

    def declarations(self) -> list[tuple[int, str, list[str], int, int]]:
        """Each `constexpr` or `consteval`: its token, "variable" or "function", names (or the function's), where it ends."""
        found = []
        for k, t in enumerate(self.tokens):
            if t not in ("constexpr", "consteval") or self.previous(k) == "if":
                continue
            at, names, depth, last = self.next_(k), [], 0, ""
            while self.tokens[at] not in ("=", "(", ";") and not (self.tokens[at] == "{" and depth == 0):
                word = self.tokens[at]
                if word == "<":
                    depth += 1
                elif word == ">":
                    depth -= 1
                elif word == "[":
                    while self.tokens[at] != "]":
                        at += 1
                elif re.match(r"[A-Za-z_]", word) and depth == 0:
                    last = word
                at = self.next_(at)
            if self.tokens[at] == "{" and last in ("struct", "const"):  # struct { ... } name[]{...}
                at = self.next_(self.close[at])
                last = self.tokens[at]
                found.append((k, "variable", [last], at, self.end_of_statement(at)))
                continue
            if self.tokens[at] == "(" or last == "operator":
                body = at
                while self.tokens[body] not in ("{", ";"):
                    body += 1
                found.append((k, "function", [last], at, self.close[body] if self.tokens[body] == "{" else body))
                continue
            end = self.end_of_statement(at)
            names = [last]
            depth = 0
            for j in range(at, end):  # further declarators
                depth += (self.tokens[j] in "([{") - (self.tokens[j] in ")]}")
                if self.tokens[j] == "," and depth == 0:
                    names.append(self.tokens[self.next_(j)])
            found.append((k, "variable", names, at, end))
        return found

    def is_local(self, k: int) -> bool:
        """Does the function around this token declare the name itself?"""
        begin = k
        while begin > 0 and self.scope[begin - 1] not in ("namespace", "struct"):
            begin -= 1
        while begin > 0 and self.tokens[begin - 1] not in (";", "}"):  # its arguments
            begin -= 1
        end = k
        while end < len(self.tokens) and self.scope[end] not in ("namespace", "struct"):
            end += 1
        text = "".join(self.tokens[begin:end])
        return bool(re.search(r"\b(?:T|double|auto|const)\b[\s&(]+" + self.tokens[k] + r"\b|\bT [^;]*, " + self.tokens[k] + r" =", text))

    def type_words(self, k: int, at: int) -> set[str]:
        return {t for t in self.tokens[k:at] if re.match(r"[A-Za-z_]", t)}


def instrument(into: Path) -> list[Literal]:
    """Writes the headers that can be changed, and says what is in them."""
    include = ROOT / "include" / "wortmath"
    shutil.copytree(include, into / "wortmath")
    files = sorted(p for p in include.rglob("*.hpp") if p.parent != include and p.relative_to(include).parts[0] not in NOT_MODELS) + [include / "constants.hpp"]
    headers = [Header(p, p.relative_to(include).as_posix()) for p in files]
    literals: list[Literal] = []
    for h in headers:
        h.find_literals(literals)

    # Constants that hold such a number, or depend on one that does, exist twice: as they are printed, for ranges and
    # whatever else the compiler must know, and as they are in this run.
    twice: set[str] = set()
    declared = [(h, d) for h in headers for d in h.declarations()]
    while True:
        before = len(twice)
        for h, (k, what, names, at, end) in declared:
            if what == "function" or h.scope[k] == "function" or h.type_words(k, at) & WHOLE:
                continue
            if any(j in h.wrapped or t in twice and h.previous(j) != "." for j, t in enumerate(h.tokens[at:end], at)):
                twice.update(names)
        if before == len(twice):
            break

    for h in headers:
        out = list(h.tokens)
        mine = {n for k, what, names, _, _ in h.declarations() if what == "variable" and h.scope[k] != "function" for n in names}
        static: set[int] = set()  # tokens of constants that are computed when the program starts
        for k, what, names, at, end in h.declarations():
            if h.tokens[k] == "consteval":
                out[k] = "constexpr"
            elif what == "variable" and h.scope[k] == "function" and (not h.type_words(k, at) & WHOLE):
                out[k] = "const"
                if h.previous(k) == "static":
                    raise SystemExit(f"{h.relative}:{h.lines[k]}: a static constant within a function cannot be changed")
            elif what == "variable" and twice & set(names) and not h.type_words(k, at) & WHOLE:
                out[k] = ("inline const" if h.previous(k) == "static" else "const") if h.scope[k] == "struct" else "const"
                copies = twice | set(names)
                original = "".join(t + "_kept" if t in copies and h.previous(j) != "." else t for j, t in enumerate(h.tokens[k + 1:end], k + 1))
                out[end] = ";" + (" static constexpr" if h.scope[k] == "struct" else " inline constexpr") + original + ";"
                static.update(range(at, end))
        for k, literal in h.wrapped.items():
            function = "at_start" if k in static else "value"
            out[k] = f"::wortmath::audit::{function}({literal.number}, {literal.text.replace(chr(39), '')}, {changed_by_one(literal.text)})"
        for k, t in enumerate(h.tokens):
            if t not in twice or h.previous(k) == "." or k in static:
                continue
            if h.constant[k]:
                out[k] = t + "_kept"
            elif h.scope[k] in ("function", "list"):
                begin = k
                while h.tokens[begin - 1] == "::":
                    begin -= 2
                if begin == k and (t not in mine or h.is_local(k)):
                    continue
                if "using" in h.statement(k):
                    continue
                qualified = "".join(h.tokens[begin:k])
                out[begin:k + 1] = [f"(__builtin_is_constant_evaluated() ? {qualified}{t}_kept : {qualified}{t})"] + [""] * (k - begin)
        for k in range(len(h.tokens) - 2):  # what was known to the compiler must now be captured
            if h.tokens[k:k + 3] == ["[", "]", "("] and h.scope[k] == "function":
                out[k] = "[&"
        text = "".join(out)
        text = re.sub(r"(inline const \w+ \w+ = \[\] \{)", r"\1 ::wortmath::audit::not_before_start();", text)
        if text != "".join(h.tokens):
            text = text.replace("#pragma once\n", '#pragma once\n#include "audit_value.hpp"\n', 1)
        (into / "wortmath" / h.relative).write_text(text, encoding="utf-8")

    # The table of models without the kernels, which only repeat the formula.
    table = (ROOT / "src" / "table.hpp").read_text(encoding="utf-8")
    table = re.sub(r"            e\.kernels\[0\].*?(?=        \} else \{\n            e\.listed)", "", table, flags=re.S)
    table = table.replace("#if defined(WORTMATH_LIBMVEC)", "#if 0 && defined(WORTMATH_LIBMVEC)")
    (into / "audit_table.hpp").write_text(table, encoding="utf-8")
    return literals


def build(into: Path) -> Path:
    program = into / "audit"
    topics = [p.stem for p in sorted((ROOT / "src").glob("*.cpp")) if (ROOT / "include" / "wortmath" / f"{p.stem}.hpp").exists() and re.search(r"^WORTMATH_TOPIC\(", p.read_text(), re.M)]
    units = [f'#include "wortmath/{t}.hpp"\n#include "audit_table.hpp"\nWORTMATH_TOPIC({t})\n' for t in topics]
    flags = ["-std=c++20", "-O1", "-w", "-ffp-contract=off", f"-I{into}", f"-I{HERE}", f"-I{ROOT / 'tests/cpp/support'}", f"-I{ROOT / 'src'}", f"-I{ROOT / 'include'}",
             f'-DWORTMATH_REFERENCE="{ROOT / "tests/reference"}"']
    compiler = os.environ.get("CXX", "g++")
    sources = [HERE / "audit.cpp", ROOT / "src" / "catalogue.cpp"]
    for t, text in zip(topics, units):
        source = into / f"{t}.cpp"
        source.write_text(text, encoding="utf-8")
        sources.append(source)

    def compile_(source: Path) -> str:
        done = subprocess.run([compiler, *flags, "-c", str(source), "-o", str(into / (source.stem + ".o"))], capture_output=True, text=True, check=False)
        if done.returncode:
            raise SystemExit(done.stderr[:6000])
        return str(into / (source.stem + ".o"))

    with ThreadPoolExecutor(os.cpu_count()) as pool:
        objects = list(pool.map(compile_, sources))
    subprocess.run([compiler, *objects, "-o", str(program)], check=True)
    return program


def run(program: Path, literals: list[Literal], wanted: list[Literal]) -> None:
    baseline = program.parent / "baseline"
    trace = subprocess.run([str(program), "trace", str(baseline)], capture_output=True, text=True, check=True).stdout
    for line in trace.splitlines():
        what, *numbers = line.split()
        if what == "fixed":
            for n in numbers:
                literals[int(n) - 1].fixed = True
        elif what == "row":
            for n in numbers[1:]:
                literals[int(n) - 1].rows.append(int(numbers[0]))
        elif what == "fails":
            raise SystemExit(f"a row fails before anything is changed: {line}")

    def change(some: list[Literal], environment: dict[str, str]) -> None:
        lines = "\n".join(f"{x.number} " + ("all" if x.fixed else ",".join(map(str, x.rows))) for x in some)
        done = subprocess.run([str(program), "change", str(baseline)], input=lines, capture_output=True, text=True, check=False, env={**os.environ, **environment})
        if done.returncode:
            raise SystemExit(f"{some[0]}: {done.stderr[:500]}")
        for line in done.stdout.splitlines():
            number, outside, points, failed_outside, failed_points = line.split()
            x = literals[int(number) - 1]
            x.outside, x.points, x.failed_outside, x.failed_points = float(outside), float(points), int(failed_outside), int(failed_points)

    many = os.cpu_count() or 1
    moving = [x for x in wanted if not x.fixed and x.rows]
    jobs: list[tuple[list[Literal], dict[str, str]]] = [(moving[k::many], {"WORTMATH_AUDIT": "0"}) for k in range(many) if moving[k::many]]
    jobs += [([x], {"WORTMATH_AUDIT": str(x.number)}) for x in wanted if x.fixed]
    with ThreadPoolExecutor(many) as pool:
        list(pool.map(lambda job: change(*job), jobs))


def verdict(literal: Literal) -> str:
    if literal.failed_outside:
        return "outside"
    if literal.failed_points:
        return "points"
    return "nothing"


def size(x: float) -> str:
    return "no row" if x < 0 else f"{x:.2g}"


UNMOVED = 1e-5  # of a tolerance: what an iteration leaves of another start
WHY = {"moves": "moves a result, but by less than the tolerance of any row: so many digits are printed that the last cannot be seen",
       "still": "moves no result: a limit or an edge that no row comes near, a word that no row asks for, or the start or the slope of an iteration, which ends at the same root",
       "no row": "no row computes with it"}


def why(x: Literal) -> str:
    if x.outside < 0 and x.points < 0:
        return "no row"
    return "moves" if max(x.outside, x.points) > UNMOVED else "still"


def table(chosen: list[Literal]) -> list[str]:
    rows = [f"| {x.file} | {x.line} | {x.text} | {size(x.outside)} | {size(x.points)} |" for x in chosen]
    return ["| file | line | number | share of tolerance: outside | points |", "|---|---|---|---|---|", *rows, ""]


def report(literals: list[Literal]) -> str:
    def topic_of(x: Literal) -> str:
        return x.file.split("/")[0].removesuffix(".hpp")

    verdicts = ("outside", "points", "nothing")
    out = ["# Coefficient audit", "",
           "Made by `python tests/audit/coefficients.py`. Each number in a formula, a table or a constant was changed by one in its last printed digit.",
           "A printed table or a worked answer notices the change (*outside*), or only `tests/reference/points`, an independent implementation of the same text, does",
           "(*points*), or neither (*nothing*). Ranges of inputs are not part of it, and the tests of properties in `tests/python` are not counted.", "",
           "| topic | numbers | outside | points only | nothing |", "|---|---|---|---|---|"]
    for topic in [*sorted({topic_of(x) for x in literals}), "**all**"]:
        mine = [x for x in literals if topic in (topic_of(x), "**all**")]
        out.append(f"| {topic} | {len(mine)} | " + " | ".join(str(sum(verdict(x) == v for x in mine)) for v in verdicts) + " |")
    unseen, inside = ([x for x in literals if verdict(x) == v] for v in ("nothing", "points"))
    out += ["", f"## Noticed by nothing: {len(unseen)}", "",
            "The share is how far the change moves a result, over the tolerance of the row that it moves most; *no row*: none computes with it.", ""]
    for reason, words in WHY.items():
        chosen = [x for x in unseen if why(x) == reason]
        if chosen:
            out += [f"### {len(chosen)}: {words}", "", *table(chosen)]
    out += [f"## Noticed only by the points: {len(inside)}", "", "In the printed tables the change stays within their rounding, or they do not compute with it.", "", *table(inside)]
    return "\n".join(out)


def main() -> int:
    arguments = argparse.ArgumentParser(description="Which printed digit does no test notice?")
    arguments.add_argument("topic", nargs="?", help="a folder of include/wortmath; all without it")
    arguments.add_argument("--keep", type=Path, help="an empty folder for the changed headers and the program")
    options = arguments.parse_args()
    began = time.time()
    with tempfile.TemporaryDirectory() as temporary:
        into = options.keep or Path(temporary)
        into.mkdir(exist_ok=True)
        literals = instrument(into)
        print(f"{len(literals)} numbers in {len({x.file for x in literals})} headers", flush=True)
        program = build(into)
        print(f"compiled after {time.time() - began:.0f} s", flush=True)
        wanted = [x for x in literals if not options.topic or x.file.split("/")[0].removesuffix(".hpp") == options.topic]
        if not wanted:
            raise SystemExit(f"there is no topic {options.topic}")
        run(program, literals, wanted)
    print(f"{len(wanted)} numbers changed after {time.time() - began:.0f} s", flush=True)
    text = report(wanted)
    if options.topic:
        print(text)
    else:
        (ROOT / "docs" / "audit.md").write_text(text, encoding="utf-8")
        print(text.split("## ")[0])
    return 0


if __name__ == "__main__":
    sys.exit(main())
