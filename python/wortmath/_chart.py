"""Small charts as SVG text, drawn without a library: deviations from a table, curves of several models.

The same numbers give the same bytes on every machine, so that committed pictures change only when a result does.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from html import escape

INK, MUTED, RULE, BAND, LINE = "#222222", "#666666", "#bbbbbb", "#e4ecf3", "#0b5d9e"
# Told apart also by those who see few colours; the first is the default model's.
COLOURS = ("#0b5d9e", "#c2410c", "#15803d", "#7e22ce", "#a16207", "#be185d", "#0f766e", "#525252")
DASHES = ("", "6 3", "2 2", "8 3 2 3")
FONT = "font-family='Helvetica,Arial,Liberation Sans,sans-serif'"


@dataclass
class Curve:
    label: str
    xs: Sequence[float]
    ys: Sequence[float]
    dots: bool = False


@dataclass
class Panel:
    """One chart. `band` is the tolerance around zero at every x (half-widths)."""
    title: str
    x_label: str
    y_label: str
    curves: Sequence[Curve]
    band: Sequence[float] = ()
    zero: bool = False
    steps: Sequence[str] = field(default_factory=list)  # names on the x axis in place of numbers


def _number(x: float) -> str:
    return f"{x:.2f}".rstrip("0").rstrip(".") if "." in f"{x:.2f}" else f"{x:.2f}"


def ticks(lo: float, hi: float, about: int) -> list[float]:
    """Round numbers that divide an interval into about so many parts."""
    span = hi - lo
    if not span > 0:
        return [lo]
    raw = span / about
    size = 10.0 ** math.floor(math.log10(raw))
    step = next(m * size for m in (1.0, 2.0, 2.5, 5.0, 10.0) if m * size >= raw * 0.999)
    first = math.ceil(lo / step - 1e-9)
    return [round(k * step, 12 - math.floor(math.log10(step))) for k in range(first, math.floor(hi / step + 1e-9) + 1)]


def _some_ticks(lo: float, hi: float, about: int) -> list[float]:
    """At least two, however small the chart."""
    return next((m for n in range(about, about + 6) if len(m := ticks(lo, hi, n)) > 1), [lo])


def _exponent(biggest: float) -> int:
    """The power of ten that is taken out of the labels of an axis."""
    if biggest == 0 or 1e-3 <= biggest < 1e5:
        return 0
    return math.floor(math.log10(biggest))


def _labels(values: Sequence[float], exponent: int) -> list[str]:
    shown = [v / 10.0**exponent for v in values]
    digits = next((d for d in range(7) if all(abs(round(v, d) - v) <= 1e-9 * max(map(abs, shown)) for v in shown)), 6)
    return [f"{v:.{digits}f}".replace("-", "\N{MINUS SIGN}") if round(v, digits) != 0 else f"{0:.{digits}f}" for v in shown]


_UP = str.maketrans("-0123456789", "⁻⁰¹²³⁴⁵⁶⁷⁸⁹")


def _text(x: float, y: float, words: str, *, size: float = 9, anchor: str = "start", colour: str = MUTED, weight: str = "normal", turn: bool = False) -> str:
    rotate = f" transform='rotate(-90 {_number(x)} {_number(y)})'" if turn else ""
    bold = " font-weight='bold'" if weight == "bold" else ""
    return f"<text x='{_number(x)}' y='{_number(y)}' font-size='{size:g}' text-anchor='{anchor}' fill='{colour}'{bold}{rotate}>{escape(words, quote=False)}</text>"


def _finite(values: Sequence[float]) -> list[float]:
    return [v for v in values if math.isfinite(v)]


def draw(panel: Panel, width: float, height: float, *, legend: bool = False) -> str:
    """The chart as an SVG group whose upper left corner is the origin."""
    every_x = _finite([x for c in panel.curves for x in c.xs])
    every_y = _finite([y for c in panel.curves for y in c.ys])
    if not every_x or not every_y:
        return _text(width / 2, height / 2, "nothing to draw", anchor="middle")
    x_lo, x_hi = min(every_x), max(every_x)
    y_lo, y_hi = min(every_y), max(every_y)
    if panel.zero:
        y_lo, y_hi = min(y_lo, 0.0), max(y_hi, 0.0)
    reach = max(_finite(panel.band), default=0.0)
    if reach:
        y_lo, y_hi = min(y_lo, -reach), max(y_hi, reach)
    x_room = (x_hi - x_lo) * 0.03 or max(abs(x_lo) * 0.05, 0.5)
    y_room = (y_hi - y_lo) * 0.07 or max(abs(y_lo) * 0.05, 1e-12)
    x_lo, x_hi, y_lo, y_hi = x_lo - x_room, x_hi + x_room, y_lo - y_room, y_hi + y_room

    x_marks = _some_ticks(x_lo, x_hi, max(2, int(width / 65)))
    y_marks = _some_ticks(y_lo, y_hi, max(2, int(height / 34)))
    x_power, y_power = _exponent(max(abs(x_lo), abs(x_hi))), _exponent(max(abs(y_lo), abs(y_hi)))
    y_words = _labels(y_marks, y_power)
    longest = max((c.label for c in panel.curves), key=len) if legend else ""
    left, right = (22 if panel.y_label or y_power else 8) + 5.2 * max(map(len, y_words)), 10 + (28 + 5.3 * len(longest) if legend else 0)
    top, bottom = (20 if panel.title else 8), (18 if panel.steps else 30)
    w, h = width - left - right, height - top - bottom

    def px(x: float) -> float:
        return left + (x - x_lo) / (x_hi - x_lo) * w

    def py(y: float) -> float:
        return top + (y_hi - y) / (y_hi - y_lo) * h

    out = [_text(0, 11, panel.title, size=10, colour=INK, weight="bold")] if panel.title else []
    if panel.band:
        xs, half = zip(*sorted(zip(panel.curves[0].xs, panel.band)))
        if max(half) - min(half) <= 1e-9 * max(half):
            xs, half = (x_lo, x_hi), (half[0], half[0])
        edge = [(px(x), py(t)) for x, t in zip(xs, half)] + [(px(x), py(-t)) for x, t in zip(reversed(xs), reversed(half))]
        out.append(f"<path d='M{' '.join(f'{_number(a)},{_number(b)}' for a, b in edge)}Z' fill='{BAND}'/>")
    for y, words in zip(y_marks, y_words):
        out.append(f"<path d='M{_number(left)},{_number(py(y))}h{_number(w)}' stroke='{RULE}' stroke-width='{0.9 if panel.zero and y == 0 else 0.35}'/>")
        out.append(_text(left - 4, py(y) + 3, words, anchor="end"))
    if panel.steps:
        for at, name in enumerate(panel.steps):
            out.append(_text(px(at), height - 6, name, anchor="middle"))
    else:
        for x, words in zip(x_marks, _labels(x_marks, x_power)):
            out.append(f"<path d='M{_number(px(x))},{_number(top + h)}v3' stroke='{RULE}'/>")
            out.append(_text(px(x), top + h + 12, words, anchor="middle"))
        power = f" (×10{str(x_power).translate(_UP)})" if x_power else ""
        out.append(_text(left + w / 2, height - 4, panel.x_label + power, anchor="middle"))
    power = f" (×10{str(y_power).translate(_UP)})" if y_power else ""
    out.append(_text(9, top + h / 2, panel.y_label + power, anchor="middle", turn=True))
    out.append(f"<path d='M{_number(left)},{_number(top)}v{_number(h)}h{_number(w)}' fill='none' stroke='{RULE}'/>")
    for at, c in enumerate(panel.curves):
        colour, dash = COLOURS[at % len(COLOURS)], DASHES[at // len(COLOURS) % len(DASHES)]
        points = [(px(x), py(y)) if math.isfinite(x) and math.isfinite(y) else None for x, y in zip(c.xs, c.ys)]
        if c.dots:
            size = 1.9 if len(points) <= 60 else 1.3
            out.append(f"<g fill='{colour}' fill-opacity='0.75'>" + "".join(f"<circle cx='{_number(p[0])}' cy='{_number(p[1])}' r='{size}'/>" for p in points if p) + "</g>")
        else:
            path, pen = "", "M"
            for p in points:
                if p is None:
                    pen = "M"
                    continue
                path += f"{pen}{_number(p[0])},{_number(p[1])}"
                pen = "L"
            dashes = f" stroke-dasharray='{dash}'" if dash else ""
            out.append(f"<path d='{path}' fill='none' stroke='{colour}' stroke-width='1.4'{dashes}/>")
        if legend:
            y = top + 8 + 14 * at
            dashes = f" stroke-dasharray='{dash}'" if dash else ""
            mark = f"<circle cx='{_number(left + w + 18)}' cy='{_number(y)}' r='2.2' fill='{colour}'/>" if c.dots else \
                f"<path d='M{_number(left + w + 10)},{_number(y)}h16' stroke='{colour}' stroke-width='1.6'{dashes}/>"
            out.append(mark + _text(left + w + 31, y + 3, c.label, colour=INK))
    return "".join(out)


def sheet(panels: Sequence[Panel], *, width: float, height: float, columns: int, legend: bool = False, description: str = "") -> str:
    """Charts in rows, as one SVG picture."""
    rows = -(-len(panels) // columns)
    gap = 14.0
    total_w, total_h = columns * width + (columns - 1) * gap, rows * height + (rows - 1) * gap
    body = "".join(f"<g transform='translate({_number(k % columns * (width + gap))} {_number(k // columns * (height + gap))})'>{draw(p, width, height, legend=legend)}</g>\n"
                   for k, p in enumerate(panels))
    title = f"<title>{escape(description)}</title>" if description else ""
    return (f"<svg xmlns='http://www.w3.org/2000/svg' width='{_number(total_w)}' height='{_number(total_h)}' viewBox='0 0 {_number(total_w)} {_number(total_h)}' {FONT} role='img'>"
            f"{title}<rect width='100%' height='100%' fill='#ffffff'/>\n{body}</svg>\n")
