"""The kettle card as text: 80 columns, readable without colour."""

from __future__ import annotations

import re
import unicodedata
from typing import TYPE_CHECKING

from . import _words
from ._words import Addition, Caution, Item, PackageStory, StepStory, Story, Target

if TYPE_CHECKING:
    from .batch import Forecast

WIDTH = 80
_LABELS = {"stop": "STOP", "caution": "CAUTION", "note": "NOTE", "always": "CARE"}
_LABEL_WIDTH = 9

# A number and its unit stay on one line.
_JOINED = "\u00a0"
_UNIT = re.compile(r"(?<=\d) (?=(?:mL|L|L/kg|gal|imp|fl|pt|qt|g|kg|oz|lb|°[A-Z]|%|bar|mbar|psi|min|h|days?|BU|SRM|EBC|volumes|billion|vol)\b|%)")


def width(text: str) -> int:
    """Columns that a text takes in a terminal."""
    return sum(0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text)


def pad(text: str, columns: int, right: bool = False) -> str:
    blank = " " * (columns - width(text))
    return blank + text if right else text + blank


def cut(text: str, columns: int) -> str:
    """A text that fits, with dots where something had to go."""
    if width(text) <= columns:
        return text
    kept = ""
    for c in text:
        if width(kept + c) > columns - 3:
            break
        kept += c
    return kept.rstrip() + "..."


def wrap(text: str, first: str = "", rest: str | None = None, columns: int = WIDTH) -> list[str]:
    """Lines of at most `columns`; `first` stands before the first line, `rest` before the others."""
    rest = " " * width(first) if rest is None else rest
    lines, line = [], first
    filled = False
    for word in filter(None, re.split(r"[ \t\n]+", _UNIT.sub(_JOINED, text))):
        while True:
            if width(line) + (1 if filled else 0) + width(word) <= columns:
                line += (" " if filled else "") + word
                filled = True
                break
            if filled:
                lines.append(line)
                line, filled = rest, False
                continue
            room = 0
            while room < len(word) and width(line + word[:room + 1]) <= columns:
                room += 1
            lines.append(line + word[:max(1, room)])
            word = word[max(1, room):]
            line = rest
    if filled:
        lines.append(line)
    return [line.replace(_JOINED, " ") for line in lines]


def rule(title: str, right: str = "") -> list[str]:
    end = f" {right}" if right else ""
    return ["", f"{title} " + "-" * (WIDTH - width(title) - 1 - width(end)) + end]


def _split(amount: str) -> tuple[str, str]:
    number, _, unit = amount.partition(" ")
    return number, unit


def _items(items: list[Item], indent: str, lead: list[str]) -> list[str]:
    """Amounts one below the other: what leads (a list name, the minutes left), number, unit, name, detail."""
    parts = [_split(i.amount) for i in items]
    columns = [max((width(t) for t in column), default=0) for column in (lead, [n for n, _ in parts], [u for _, u in parts])]
    lines = []
    for i, first, (number, unit) in zip(items, lead, parts):
        names = max((width(o.name) for o in items if o.list == i.list and width(o.name) <= 36), default=0)
        head = indent + (pad(first, columns[0]) + "   " if columns[0] else "") + pad(number, columns[1], right=True) + " " + pad(unit, columns[2]) + "   "
        body = pad(i.name, names) + (f"  {i.detail}" if i.detail else "")
        lines += [head + body] if width(head + body) <= WIDTH else wrap(f"{i.name}, {i.detail}" if i.detail else i.name, head)
    return lines


def _gather(groups: list[tuple[str, list[Item]]]) -> list[str]:
    items = [i for _, group in groups for i in group]
    lead = [title if n == 0 else "" for title, group in groups for n in range(len(group))]
    return [*rule("GATHER"), *_items(items, "  ", lead)]


def _labelled(label: str, text: str, indent: str = "    ") -> list[str]:
    return wrap(text, indent + label.ljust(_LABEL_WIDTH), indent + " " * _LABEL_WIDTH)


def _cautions(cautions: list[Caution], indent: str = "    ") -> list[str]:
    lines: list[str] = []
    for level in _words.LEVELS:
        here = [c for c in cautions if c.level == level]
        label = _LABELS[level]
        for c in (c for c in here if c.first is None):
            lines += _labelled(label, c.text, indent)
            label = "" if level == "always" else label
        again: dict[int, list[str]] = {}
        for c in here:
            if c.first is not None:
                again.setdefault(c.first, []).append(c.title)
        if again:
            lines += _labelled(label, "; ".join(f"as in step {step}: {', '.join(titles)}" for step, titles in again.items()), indent)
    return lines


def _when(step: StepStory, story: Story) -> str:
    if step.day is not None:
        return f"day {step.day:.3g}"
    begin = step.begin or 0.0
    return _words.clock_text(story.start + begin) if story.start is not None else f"{round(begin) // 60}:{round(begin) % 60:02d}"


def _step(step: StepStory, story: Story) -> list[str]:
    when = _when(step, story)
    head = f"{step.number:2d}  {step.title}"
    lines = ["", pad(cut(head, WIDTH - width(when) - 2), WIDTH - width(when)) + when]
    for action in step.actions:
        lines += wrap(action, "    ")
    if step.items and step.do not in ("water", "top_up", "pitch", "prime"):
        timed = any(i.minutes is not None for i in step.items)
        lead = [f"{i.minutes:g} min" + (f" ({i.clock})" if i.clock else "") if i.minutes is not None else "" for i in step.items] if timed else [""] * len(step.items)
        longest = max(width(t) for t in lead)
        lines += _items(step.items, "      ", [pad(t, longest, right=True) for t in lead] if timed else lead)
    readings = ([step.volume] if step.volume else []) + ([f"hydrometer {step.hydrometer}"] if step.hydrometer else []) + [f"{label} {value}" for label, value in step.expect]
    if readings:
        lines += _labelled("Expect", ", ".join(r.replace(" ", _JOINED) for r in readings))
    return lines + _cautions(step.cautions)


def _steps(story: Story) -> list[str]:
    lines: list[str] = []
    headed = False
    by_day = [s for s in story.steps if s.day is None]
    for step in by_day:
        if not headed:
            lines += rule("BREWING DAY", "time of day" if story.start is not None else "hours from the start")
            lines += wrap(story.timing, "  ") if story.timing else []
            lines += _cautions(story.before, "  ")
            headed = True
        lines += _step(step, story)
    ahead = [s for s in story.steps if s.day is not None]
    if ahead:
        lines += rule("DAYS AHEAD", "days from pitching")
        for step in ahead:
            lines += _step(step, story)
    return lines


def _targets(targets: list[Target], by_model: list[tuple[str, list[tuple[str, str]]]], cautions: list[Caution]) -> list[str]:
    if not targets:
        return []
    value_width, others_width = (max(width(t) for t in column) + 2 for column in (["this card", *(t.value for t in targets)], ["all models", *(t.others for t in targets)]))
    lines = [*rule("TARGETS"), f"  {'':17}{pad('this card', value_width)}{pad('all models', others_width)}model of this card"]
    for t in targets:
        lines.append(f"  {pad(t.label, 17)}{pad(t.value, value_width)}{pad(t.others, others_width)}{t.model}".rstrip())
        if t.remark:
            lines += wrap(t.remark, " " * 19)
    lines += wrap("Where the models lie far apart, take the number as a rough one.", "  ")
    lines += _cautions(cautions, "  ")
    if by_model:
        lines += rule("MODEL BY MODEL")
    for label, values in by_model:
        lines += wrap(", ".join(f"{name} {value}".replace(" ", _JOINED) for name, value in values), f"  {label:17}")
    return lines


def _additions(additions: list[Addition]) -> list[str]:
    if not additions:
        return []
    names = min(28, max(len("hop"), *(width(a.name) for a in additions)))
    lines = [*rule("BITTERNESS BY ADDITION"), f"  step  {'when':8}{'hop':{names}}   alpha acids    used     BU     all models"]
    for a in additions:
        bu = f"{a.bu:.0f}" if a.used != "-" else "-"
        lines.append(f"  {a.step:4d}  {pad(a.when, 8)}{pad(cut(a.name, names), names)}   {a.alpha:>11}  {a.used:>6}  {bu:>5}   {a.others:>12}")
    return lines


def _package(p: PackageStory | None) -> list[str]:
    if p is None:
        return []
    lines = rule(p.headline.upper(), "pressures above the air outside")
    for label, value in p.rows:
        lines += wrap(value, f"  {label:16}")
    return lines + (wrap(p.remark, "  ") if p.remark else []) + ["", *wrap(p.verdict, "  ")]


def _ledger(story: Story) -> list[str]:
    units = story.units
    went_in = [(n, units.ledger_text(g)) for n, g in story.ledger_in]
    out = [(n, units.ledger_text(g)) for n, g in story.ledger_out] + [("kept", units.ledger_text(story.kept))]
    lines = [*rule("WHERE EVERYTHING WENT"), f"  {'in':36}  out"]
    for n in range(max(len(went_in), len(out))):
        one = f"{went_in[n][0]:22}{went_in[n][1]:>12}" if n < len(went_in) else ""
        two = f"{out[n][0]:22}{out[n][1]:>12}" if n < len(out) else ""
        lines.append(f"  {one:36}  {two}".rstrip())
    off = abs(story.imbalance)
    lines.append("  In and out agree to less than a milligram." if off < 1e-3 else f"  In and out differ by {off:.3g} g.")
    return lines


def _list(title: str, entries: list[str]) -> list[str]:
    return [] if not entries else [*rule(title), *(line for e in entries for line in wrap(e, "  - "))]


def render(story: Story) -> str:
    lines = ["=" * WIDTH, *wrap(story.name.upper())]
    for paragraph in (story.notes or "").split("\n"):
        lines += wrap(paragraph)
    lines += [*wrap(" | ".join(story.summary)), *(line for level, at in story.alerts for line in wrap(at, f"{_LABELS[level]}  ")), "=" * WIDTH, *wrap(story.place), *wrap(story.instruments)]
    lines += _gather(story.gather) if story.gather else []
    lines += _steps(story)
    lines += _targets(story.targets, story.by_model, story.target_cautions)
    lines += _additions(story.additions)
    lines += _package(story.package)
    lines += _ledger(story)
    lines += _list("NOT IN THE FILE, TAKEN AS USUAL", story.assumed)
    lines += _list("OUTSIDE THE RANGE THAT WAS CHECKED", story.outside)
    lines += _list("NOT COMPUTED", story.reasons)
    lines += ["", *wrap("Computed from published formulas. Measure on the day: what your instruments show is what counts.")]
    return "\n".join(line.rstrip() for line in lines) + "\n"


def text(forecast: Forecast, units: str | None = None, start: float | None = None) -> str:
    """The kettle card; `units` "us", "metric" or None for those of the file, `start` in minutes since midnight."""
    return render(_words.tell(forecast, units, start))
