"""Write docs/validation: what every model was checked against, how far off it is, and how far the models differ.

    python docs/make_validation.py

The numbers come from tests/reference (printed tables, worked answers, points of an independent implementation) and from
the library as it is now; the text is the catalogue's and that of the manifests. index.md and a page for each chapter, with
pictures, and report.html, which holds all of it in one file to read or to print.
"""

from __future__ import annotations

import fnmatch
import math
import re
from functools import lru_cache
from html import escape
from pathlib import Path
from typing import Any

from evidence import CHAPTERS, Check, answers, by_model, checks, expression, facts, points, tables
from pages import Finding, Page, figure, save
from spread import Spread, amount, families, ranges, shown, spread, tomllib

from wortmath import _chart

FOLDER = Path(__file__).resolve().parent / "validation"


@lru_cache(maxsize=None)
def chapter_of() -> dict[str, str]:
    """The chapter of every model: where its random points stand."""
    return {row["path"]: chapter for chapter in CHAPTERS for row in expression.read_table(f"points/{chapter}.csv")[1]}


def outside_rows(path: str) -> int:
    return sum(len(c.rows) for c in by_model()[path] if c.table.outside) + sum(a.model == path for a in answers())


@lru_cache(maxsize=None)
def reasons() -> dict[str, str]:
    """Why a model has no row from outside, for each that has none."""
    written = tomllib.loads((Path(__file__).parent / "no_table.toml").read_text(encoding="utf-8"))["reason"]
    found = {}
    for path in by_model():
        if not outside_rows(path):
            found[path] = next((r["why"] for r in written if any(fnmatch.fnmatchcase(path, m) for m in r["models"])), "")
    return found


# ---- pictures -------------------------------------------------------------------------------------------------------

def _unit(unit: str) -> str:
    return "" if unit in ("ratio", "any", "name", "") else f" [{unit}]"


def models_picture(s: Spread) -> str:
    """All models of a family, and each minus the default."""
    names = list(s.curves)
    values = _chart.Panel("what they say", s.over + _unit(s.unit), s.result_unit if s.result_unit != "any" else "", [_chart.Curve(n, s.xs, s.curves[n]) for n in names])
    base = s.curves[names[0]]
    apart = _chart.Panel(f"difference from {names[0]}", s.over + _unit(s.unit), s.result_unit if s.result_unit != "any" else "",
                         [_chart.Curve(n, s.xs, [y - b for y, b in zip(s.curves[n], base)]) for n in names], zero=True)
    height = max(210.0, 34 + 14.0 * len(names) + 20)
    left, right = 300.0, 310.0 + 28 + 5.3 * max(map(len, names))
    return (f"<svg xmlns='http://www.w3.org/2000/svg' width='{left + 20 + right:.0f}' height='{height:.0f}' viewBox='0 0 {left + 20 + right:.0f} {height:.0f}' {_chart.FONT} role='img'>"
            f"<title>{escape(s.family)}: its models over {escape(s.over)}</title><rect width='100%' height='100%' fill='#ffffff'/>\n"
            f"<g>{_chart.draw(values, left, height)}</g>\n<g transform='translate({left + 20:.0f} 0)'>{_chart.draw(apart, right, height, legend=True)}</g>\n</svg>\n")


def _drawable(c: Check) -> bool:
    return len(c.rows) >= 4 and not c.words and not c.whole and all(math.isfinite(r.deviation) for r in c.rows) and c.largest > 1e-12


def _panel(c: Check, title: bool) -> _chart.Panel:
    xs = [float(r.inputs[c.axis]) for r in c.rows] if c.axis else [float(k) for k in range(1, len(c.rows) + 1)]
    name = c.subjects[0].split(".", 2)[2]
    words = f"{name}: {c.table.file.removesuffix('.csv')}" if title else ""
    return _chart.Panel(words if len(words) <= 41 else words[:40] + "…", c.axis or "row", "",
                        [_chart.Curve(name, xs, [r.deviation for r in c.rows], dots=True)], [r.tolerance for r in c.rows], zero=True)


def _small_picture(c: Check) -> str:
    return (f"<svg xmlns='http://www.w3.org/2000/svg' width='190' height='86' viewBox='0 0 190 86' {_chart.FONT} role='img'><title>model minus table</title>"
            f"{_chart.draw(_panel(c, False), 190, 86)}</svg>")


def deviations_picture(family: str, own: list[Check]) -> str:
    return _chart.sheet([_panel(c, True) for c in own], width=228, height=140, columns=4 if len(own) > 3 else 3, description=f"{family}: model minus table, over the table; shaded: what is allowed")


# ---- words ----------------------------------------------------------------------------------------------------------

def _sentence(s: Spread) -> str:
    """How far the models of a family differ, as a brewer would say it."""
    where = {"temperature": "at", "": "at"}.get(s.over, "at")
    unit = f" {s.unit}" if s.unit not in ("ratio", "fraction", "any") and not s.unit.startswith("SG") else ""
    parts = []
    for d in s.at:
        if len(d.values) > 1:
            parts.append(f"{where} {s.over.replace('_', ' ')} {d.x:g}{unit} by {' '.join(amount(d.width, s.result_unit)).strip()} (`{d.least}` {shown(d.values[d.least], s.result_unit, d.width)}, "
                         f"`{d.most}` {shown(d.values[d.most], s.result_unit, d.width)})" if d.width > 1e-9 * max(abs(v) for v in d.values.values()) else
                         f"{where} {s.over.replace('_', ' ')} {d.x:g}{unit} not at all")
    if not parts:
        return ""
    w = s.widest
    most = "" if w is None or w.width < 1e-9 else f" Widest apart in this range: {' '.join(amount(w.width, s.result_unit)).strip()}, at {w.x:.4g}{unit} (`{w.least}`, `{w.most}`)."
    why = f" {ranges()[s.family]['why'][0].upper()}{ranges()[s.family]['why'][1:]}." if "why" in ranges()[s.family] else ""
    return f"{len(s.curves)} models differ " + "; ".join(parts) + "." + most + why + (f" The rest stands still: {s.given}." if s.given else "")


def _table_name(c: Check) -> str:
    where = c.where
    for text, words in (("note=='' and ", "without a remark, "), ("note==''", "without a remark"), ("!=", " ≠ "), ("==", " = "), ("<=", " ≤ "), (">=", " ≥ "), ("<", " < "), (">", " > "), ("  ", " ")):
        where = where.replace(text, words)
    return f"{c.table.title or c.table.file}" + (f" ({where})" if where else "") + ("" if c.table.outside else ", *own calculation*")


def _tolerance(c: Check) -> str:
    least, most = min(r.tolerance for r in c.rows), max(r.tolerance for r in c.rows)
    return "exact" if c.words or most < 1e-11 else figure(most) if most - least < 1e-9 * most else f"{figure(least)} to {figure(most)}"


def _half(c: Check) -> str:
    most = max(r.half for r in c.rows)
    return "" if c.words or c.whole or most == 0 else figure(most)


def _worked_out(c: Check, alone: bool) -> str:
    """What is compared, where that is not the answer as it is, or where several checks share model and table."""
    text = c.expression.replace(", policy='extrapolate'", "")
    plain = re.fullmatch(r"[a-z][a-z0-9_.]+\([^()]*(\([^()]*\)[^()]*)*\)", text, re.IGNORECASE)
    whole = f"{text} : {c.compare}"
    return "" if plain and alone else whole if len(whole) <= 170 else f"{whole[:168]} …"  # the manifest has the rest


def _findings(own: list[Check], paths: list[str]) -> list[Finding]:
    return [Finding(next(p for p in c.subjects if p in paths).split(".", 2)[2], _worked_out(c, sum((o.subjects, _table_name(o)) == (c.subjects, _table_name(c)) for o in own) == 1),
                    _table_name(c), c.note,
                    (str(len(c.rows)), "all agree" if c.words and c.largest == 0 else figure(c.largest), "" if c.words else figure(c.rms), _tolerance(c), _half(c), c.notice),
                    _small_picture(c) if _drawable(c) else "")
            for c in sorted(own, key=lambda c: (not c.table.outside, c.subjects))]


HEADS = ["rows", "largest deviation", "rms", "allowed", "half\u00a0a digit", "would notice"]


# ---- pages ----------------------------------------------------------------------------------------------------------

def family_section(page: Page, family: str, paths: list[str]) -> None:
    page.heading(3, f"{family}: {facts(paths[0])['question'][0].lower()}{facts(paths[0])['question'][1:]}", family)
    s = spread(family)
    if s and len(s.curves) > 1:
        page.picture(f"{family}.models.svg", models_picture(s), _sentence(s))
    own = [c for c in checks() if set(c.subjects) & set(paths)]
    if own:
        drawn = [c for c in own if _drawable(c)]
        page.findings(HEADS, _findings(own, paths), f"{family}.tables.svg", deviations_picture(family, drawn) if drawn else "")
    said = []
    for p in paths:
        n = outside_rows(p)
        held = f"{n} comparison{'s' if n > 1 else ''} with figures from outside" if n else f"no figure from outside: {reasons()[p] or 'no reason stated'}"
        said.append(f"**{p.split('.', 2)[2]}** (*{facts(p)['status']}*): {facts(p)['source']}; {held}.")
    for a in answers():
        if a.model in paths:
            off = figure(abs(a.got - a.want))
            said.append((f"In print and wrong: {figure_of(a.printed)}; `{a.model}` gives {figure_of(a.got)}" if a.printed is not None else
                         f"Worked in public: {figure_of(a.want)}; `{a.model}` gives {figure_of(a.got)}, {off} off, {figure(a.tolerance) if a.tolerance else 'nothing'} allowed") + f" ({a.source}).")
    n = sum(points()[p].rows for p in paths if p in points())
    worst = max((points()[p].largest for p in paths if p in points()), default=0.0)
    said.append(f"Independent implementation: {n} random points, {'no difference above 10⁻¹²' if worst < 1e-12 else f'at most {figure(worst)} of the value apart'}.")
    page.items(said, small=True)


def figure_of(x: float | None) -> str:
    return "" if x is None else f"{x:.6g}" if abs(x) < 1e6 else f"{x:,.0f}".replace(",", "\u202f")


def chapter_page(chapter: str) -> Page:
    page = Page()
    page.heading(2, CHAPTERS[chapter], chapter)
    own = {f: p for f, p in families().items() if chapter_of().get(p[0]) == chapter}
    paths = [p for ps in own.values() for p in ps]
    page.text(_chapter_words(chapter, paths))
    for family, ps in own.items():
        family_section(page, family, ps)
    page.heading(3, f"The tables of this chapter: {CHAPTERS[chapter].lower()}")
    used = {c.table.file for c in checks() if c.table.chapter == chapter}
    page.table(["table", "what it shows", "source", "evidence", "rows", ""],
               [[f"`{t.file.removesuffix('.csv')}`", t.title, t.source, t.status, str(len(t.rows)), "" if t.file in used else "data or context, no check"]
                for t in tables().values() if t.chapter == chapter], [4])
    return page


def _chapter_words(chapter: str, paths: list[str]) -> str:
    own = [c for c in checks() if c.subjects[0] in paths]
    outside = [c for c in own if c.table.outside]
    with_rows = sum(outside_rows(p) > 0 for p in paths)
    return (f"{len(paths)} models. {with_rows} have rows from outside this project: {sum(len(c.rows) for c in outside)} comparisons in {len(outside)} checks; "
            f"{sum(len(c.rows) for c in own) - sum(len(c.rows) for c in outside)} more comparisons are with calculations of our own. "
            f"{sum(c.wider for c in outside)} of the {len(outside)} checks allow more than half a unit of the last printed digit; the remark beside each says why.")


def front(page: Page) -> None:
    paths = list(by_model())
    outside = [c for c in checks() if c.table.outside]
    own = [c for c in checks() if not c.table.outside]
    bare = [p for p in paths if not outside_rows(p)]
    page.text(f"wortmath holds {len(paths)} published or derived formulas that answer {len(families())} questions of brewing. This report sets each beside what others have printed, measured or worked out, "
              "and the formulas beside each other. It is made by one command from the tables in the repository; nothing in it is typed in by hand.")
    page.heading(2, "In short", "short")
    page.items([
        f"**{sum(len(c.rows) for c in outside)} comparisons** with {len({c.table.file for c in outside})} tables from outside (standards, handbooks, papers, laboratory measurements, charts of the trade), for "
        f"{sum(outside_rows(p) > 0 for p in paths)} of the {len(paths)} models; {sum(a.printed is None for a in answers())} answers that others worked in public.",
        f"{sum(c.within_half for c in outside)} of them differ by **no more than half a unit of the last printed digit**. Of the {len(outside)} tests behind them {sum(not c.wider for c in outside)} allow no more than that; "
        f"the other {sum(c.wider for c in outside)} allow more, since the formula is a fit, the table rests on other data, or beers are not that exact. The reason stands beside each. {sum(len(c.rows) for c in outside if c.table.status.startswith('memory'))} of the comparisons are with tables that were recalled and not looked up; the list of each chapter's tables says which.",
        f"{sum(len(c.rows) for c in own)} comparisons with calculations of our own by other means (60-digit arithmetic, quadrature, mass balances) and {sum(p.rows for p in points().values())} random points of a second, independent implementation of every model: "
        "they find slips of the pen, not errors of the source.",
        f"{len(bare)} models have no row from outside; the reason stands beside each. {sum(facts(p)['status'] == 'memory' for p in paths)} formulas are recalled and were not looked up (evidence: memory).",
        f"{sum(a.printed is not None for a in answers())} answers in print are shown to be wrong, and the misprints that circulate are listed."])
    page.heading(2, "How to read it", "reading")
    page.items([
        "A check names the model and the table. Where more than the bare answer is compared, a line shows what: `worked out of the model : worked out of the table`.",
        "**largest deviation**: the largest difference model minus table over the rows, in the unit of what is compared; **rms**: the root of the mean square.",
        "**allowed**: the tolerance of the test that runs with every change. **half a digit**: half a unit of the last digit that the table prints, carried through whatever is worked out of the column. Where more is allowed, the remark gives the reason.",
        "**would notice**: the smallest change of the model's answer, at all rows alike, that makes the test fail in either direction: a share of the value, or for gravities, temperatures and pH an amount. "
        "*any*: words or exact figures; *shape*: the model stands on both sides of a ratio, a common factor cancels; *one side*: only a deviation to one side is an error. A check that would notice little is a weak one.",
        "**own calculation**: the numbers were computed for this project by another road. They are no evidence for the formula.",
        "Evidence of a formula: *primary*: the original was read; *secondary*: read in a copy or quotation; *memory*: recalled, not looked up; *derived*: this project's own fit or derivation.",
        "Pictures with dots: model minus table over the table, the tolerance shaded. Pictures with lines: all models of a family over the range a brewer uses, drawn only where each is validated."])
    page.heading(2, "By chapter", "chapters")
    rows = []
    for chapter, title in CHAPTERS.items():
        ps = [p for p in paths if chapter_of().get(p) == chapter]
        cs = [c for c in checks() if c.subjects[0] in ps]
        out = [c for c in cs if c.table.outside]
        rows.append([f"[{title}]({chapter}.md)", str(len(ps)), str(sum(outside_rows(p) > 0 for p in ps)), str(sum(len(c.rows) for c in out)), f"{sum(not c.wider for c in out)} of {len(out)}",
                     str(sum(len(c.rows) for c in cs) - sum(len(c.rows) for c in out)), str(sum(points()[p].rows for p in ps if p in points()))])
    page.table(["chapter", "models", "with rows from outside", "comparisons with them", "checks to half a digit", "own calculations", "random points"], rows, range(1, 7))

    page.heading(2, "Where the formulas disagree", "disagreement")
    page.text("One question, several published answers. The size is told over the range that a brewer uses; the pictures stand in the chapters.")
    told = []
    for family, ps in families().items():
        s = spread(family)
        if s and len(s.curves) > 1 and s.widest and (w := s.widest).width > 0:
            scale = max(abs(v) for v in w.values.values())
            unit = "" if s.unit in ("ratio", "fraction", "any") or s.unit.startswith("SG") else f" {s.unit}"
            share = "" if s.result_unit.startswith(("SG", "degC", "pH")) or not scale else f"{100 * w.width / scale:.2g} %" if w.width / scale < 1 else f"{100 * w.width / scale:.0f} %"
            told.append([facts(ps[0])["question"], str(len(s.curves)), " ".join(amount(w.width, s.result_unit)).strip(), share,
                         f"{s.over.replace('_', ' ')} {w.x:.4g}{unit}: `{w.least}` {shown(w.values[w.least], s.result_unit, w.width)}, `{w.most}` {shown(w.values[w.most], s.result_unit, w.width)}"])
    page.table(["question", "models", "widest apart", "of the value", "where"], told, [1, 2, 3])

    page.heading(2, "Wrong answers in print", "slips")
    page.table(["where", "printed", "model", "its answer", "why"],
               [[r["source"], figure_of(float(r["printed"])) + " " + r["unit"], f"`{r['model']}`", figure_of(float(r["correct"])), r["why"]] for r in expression.read_table("questions/published_slips.csv")[1]], [1, 3])
    page.heading(2, "Misprints and traps in circulation", "traps")
    page.text("From the notes of the models: constants misprinted or miscopied, formulas in circulation under a wrong name or in a wrong unit. What is used here stands in the reference of the model.")
    page.table(["model", "what circulates"], [[f"`{p}`", words] for p in paths if (words := _traps(facts(p)["note"]))])

    page.heading(2, "Checks that notice little", "weak")
    page.text("Checks against outside tables in which the model's answers could change by more than 5 % (or 1 gravity point, 0.5 degC, 0.05 pH) unnoticed, weakest first, those on shape or one side only last. They show the order of magnitude or the direction, no more.")
    limits = {"%": 0.05, "SG": 0.001, "degC": 0.5, "pH": 0.05}
    weak = [c for c in checks() if c.table.outside and not c.words and not c.whole and c.would_notice > limits[c.unit_of_shift]]
    page.table(["model", "table", "rows", "largest deviation", "allowed", "would notice", "remark"],
               [[f"`{c.subjects[0]}`", _table_name(c), str(len(c.rows)), figure(c.largest), _tolerance(c), c.notice, c.note]
                for c in sorted(weak, key=lambda c: (c.notice in ("shape", "one side"), -c.would_notice))], (2, 3, 4, 5))

    page.heading(2, "Models without a row from outside", "bare")
    page.text(f"{len(bare)} of {len(paths)}. Every one of them is held by the independent implementation; that is evidence of a correct copy, not of a correct formula.")
    by_reason: dict[str, list[str]] = {}
    for p in bare:
        by_reason.setdefault(reasons()[p] or "no reason stated", []).append(p)
    page.items([f"**{why[0].upper()}{why[1:]}** ({len(ps)}): {', '.join(f'`{p}`' for p in ps)}." for why, ps in by_reason.items()], small=True)


_TRAP = re.compile(r"misprint|misquot|misread|miscop|mistak|garbled|in circulation|\bcopies\b|copied|misuse|taken for|popular|\bis printed (for|where)\b|printed (with|without|in|as)\b|^printed[ :]|is wrong|wrong (exponent|shape)",
                   re.IGNORECASE)


def _traps(note: str) -> str:
    """The clauses of a note that tell of a trap, with what is used instead."""
    kept: list[str] = []
    clauses = re.split(r"(?<=;) |(?<=[a-z)]\.) (?=[A-Z])", note)
    for k, clause in enumerate(clauses):
        if _TRAP.search(clause) or (kept and kept[-1] == clauses[k - 1] and re.match(r"(used|meant|both|.* is used|.*-which)\b", clause)):
            kept.append(clause)
    return " ".join(kept).rstrip(";.")


STYLE = """
:root { --ink: #1b1b1b; --muted: #5a5a5a; --rule: #c9c9c9; --accent: #0b5d9e; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 62rem; padding: 2.5rem 1.5rem 4rem; color: var(--ink); background: #fff; font: 15px/1.5 "Liberation Sans", Arial, Helvetica, sans-serif; }
h1 { font-size: 2rem; line-height: 1.2; margin: 0 0 .3rem; }
h2 { font-size: 1.35rem; margin: 3rem 0 .6rem; border-bottom: 2px solid var(--ink); padding-bottom: .2rem; }
h3 { font-size: 1.02rem; margin: 2.2rem 0 .5rem; line-height: 1.35; }
p, li { max-width: 46rem; }
code { font: .88em "DejaVu Sans Mono", "Liberation Mono", Consolas, monospace; overflow-wrap: anywhere; }
a { color: var(--accent); text-decoration: none; }
table { border-collapse: collapse; width: 100%; margin: .8rem 0; font-size: 12.5px; line-height: 1.35; }
th { text-align: left; vertical-align: bottom; border-bottom: 1px solid var(--ink); padding: .25rem .5rem .25rem 0; font-weight: bold; }
td { vertical-align: top; border-bottom: 1px solid var(--rule); padding: .25rem .5rem .25rem 0; overflow-wrap: break-word; }
th.n, td.n { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
th.n { white-space: normal; }
td:first-child { min-width: 8.5rem; }
table.f td:first-child { width: 38%; }
table.f td { padding-top: .35rem; }
.w { margin-top: .15rem; } .w code { font-size: 10.5px; color: var(--muted); }
.r { color: var(--muted); margin-top: .15rem; }
td.p { width: 190px; padding: .1rem 0; } td.p svg { display: block; }
ul.s { color: var(--muted); font-size: 12.5px; padding-left: 1.1rem; } ul.s b { color: var(--ink); }
figure { margin: 1rem 0; break-inside: avoid; }
figure svg { max-width: 100%; height: auto; display: block; }
figcaption { font-size: 12.5px; color: var(--muted); max-width: 46rem; margin-top: .35rem; }
nav { columns: 2; margin: 1.2rem 0; } nav a { display: block; }
.sub { color: var(--muted); margin: 0 0 1.5rem; }
@page { size: A4; margin: 16mm 14mm; }
@media print {
  body { max-width: none; padding: 0; font-size: 9pt; line-height: 1.4; }
  table, figcaption, ul.s { font-size: 7.5pt; } .w code { font-size: 6.5pt; } h2 { margin-top: 1.8rem; } h3 { margin-top: 1.3rem; font-size: 10pt; }
  @CHAPTERS@ { break-before: page; } h2, h3 { break-after: avoid; } tr { break-inside: avoid; } ul.s { break-before: avoid; break-inside: avoid; } thead { display: table-header-group; }
  a { color: inherit; }
}
"""


def report_html(first: Page, chapters: dict[str, Page]) -> str:
    """Everything in one file that needs nothing else."""
    body = first.html()
    for chapter in chapters:
        body = body.replace(f'href="{chapter}.md"', f'href="#{chapter}"')
    titles = [("short", "In short"), ("reading", "How to read it"), ("chapters", "By chapter"), ("disagreement", "Where the formulas disagree"), ("slips", "Wrong answers in print"),
              ("traps", "Misprints and traps in circulation"), ("weak", "Checks that notice little"), ("bare", "Models without a row from outside"), *CHAPTERS.items()]
    nav = "".join(f'<a href="#{anchor}">{escape(title)}</a>' for anchor, title in titles)
    style = STYLE.replace("@CHAPTERS@", ", ".join(f"h2#{c}" for c in CHAPTERS))
    return (f'<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>wortmath: validation report</title><style>{style}</style></head><body>\n'
            f'<h1>Validation report</h1>\n<p class="sub">wortmath: published brewing formulas beside what others printed and measured</p>\n<nav>{nav}</nav>\n{body}' + "".join(p.html() for p in chapters.values()) + "</body></html>\n")


def files() -> dict[str, str]:
    """Every file of the report by its name."""
    first, chapters = Page(), {chapter: chapter_page(chapter) for chapter in CHAPTERS}
    front(first)
    found = {"index.md": "# Validation report\n\nAll of it in one file, to read or to print: [report.html](report.html).\n\n" + first.markdown()}
    for chapter, page in chapters.items():
        found[f"{chapter}.md"] = "[the report](index.md)\n\n" + page.markdown("plots/")
        for kind, what in page.blocks:
            if kind == "picture":
                name, svg, _ = what
                found[f"plots/{name}"] = svg
            elif kind == "findings" and what[3]:
                found[f"plots/{what[2]}"] = what[3]
    found["report.html"] = report_html(first, chapters)
    return found


def main() -> None:
    made = files()
    save(FOLDER, made)
    missing = [p for p, why in reasons().items() if not why]
    print(f"{len(made)} files, {sum(len(t.encode()) for t in made.values()) / 1e6:.2f} MB, in {FOLDER}")
    if missing:
        print(f"{len(missing)} models have neither a row from outside nor a reason in docs/no_table.toml:\n  " + "\n  ".join(missing))


if __name__ == "__main__":
    main()
