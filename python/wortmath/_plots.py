"""The pictures of the kettle card: small inline SVG by matplotlib, coloured by the page that holds them.

Needs the extra `plot`; `pictures` raises ImportError without it. A picture that has nothing to show is left out.
"""

from __future__ import annotations

import io
import re
import warnings
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any
from xml.etree import ElementTree

from . import _words

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from .batch import Forecast

WIDTH = 300.0  # of every picture, in px at its natural size: the width of a phone's column

# What is drawn in the left colour is given to the page as the right one. The page sets the names for light and dark;
# the figures behind the comma serve a picture on its own.
INK, MUTED, RULE, PAPER = "#010101", "#020202", "#030303", "#040404"
BLUE, AMBER, VIOLET, STOP = "#050505", "#060606", "#070707", "#080808"
_IN_PAGE = {INK: "currentColor", MUTED: "var(--muted,#5c5650)", RULE: "var(--rule,#b9b2a8)", PAPER: "var(--paper,#fff)", BLUE: "var(--blue,#0a6aa6)",
            AMBER: "var(--amber,#a85f00)", VIOLET: "var(--violet,#b8608f)", STOP: "var(--stop,#b3261e)"}

_STYLE: Any = {"svg.fonttype": "none", "svg.hashsalt": "wortmath", "font.size": 11, "text.color": INK, "axes.labelcolor": MUTED, "axes.edgecolor": RULE, "axes.linewidth": 0.8,
          "xtick.color": RULE, "ytick.color": RULE, "xtick.labelcolor": MUTED, "ytick.labelcolor": MUTED, "xtick.labelsize": 10, "ytick.labelsize": 10,
          "axes.labelsize": 10, "axes.spines.top": False, "axes.spines.right": False, "axes.facecolor": "none", "figure.facecolor": "none", "lines.solid_capstyle": "round",
          "xtick.major.size": 3.0, "ytick.major.size": 3.0, "axes.unicode_minus": True, "text.parse_math": False}


@dataclass(frozen=True)
class Picture:
    key: str
    title: str
    caption: str
    svg: str


class _Sheet:
    """A figure measured in px from its upper left corner."""

    def __init__(self, height: float) -> None:
        from matplotlib.backends.backend_svg import FigureCanvasSVG
        from matplotlib.figure import Figure
        self.height = height
        self.figure = Figure(figsize=(WIDTH / 72, height / 72), dpi=72)
        FigureCanvasSVG(self.figure)

    def axes(self, left: float, top: float, width: float, height: float) -> Axes:
        return self.figure.add_axes((left / WIDTH, 1 - (top + height) / self.height, width / WIDTH, height / self.height))

    def svg(self, key: str, title: str, description: str) -> str:
        written = io.StringIO()
        self.figure.savefig(written, format="svg", transparent=True, metadata={"Date": None, "Creator": None, "Format": None, "Type": None})
        return _for_page(written.getvalue(), key, title, description)


def _for_page(svg: str, key: str, title: str, description: str) -> str:
    """What matplotlib wrote, as a part of a page: its own ids, the page's colours and font, a text alternative, nothing to spare."""
    drawn = ElementTree.fromstring(svg)
    used = set(re.findall(r'(?:href="#|url\(#)([^")]+)', svg))
    root = ElementTree.Element("svg", {"class": "plot", "role": "img", "viewBox": drawn.get("viewBox", ""), "aria-labelledby": f"{key}-title {key}-desc"})
    for name, text in (("title", title), ("desc", description)):
        ElementTree.SubElement(root, name, {"id": f"{key}-{name}"}).text = text
    for child in drawn:
        root.extend(_kept(child, key, used))
    return ElementTree.tostring(root, encoding="unicode")


def _kept(node: ElementTree.Element, key: str, used: set[str]) -> list[ElementTree.Element]:
    """A node without its namespace, unused ids and needless groups; none, if nothing of it is to be seen."""
    name = node.tag.rpartition("}")[2] if isinstance(node.tag, str) else ""
    children = [kept for child in node for kept in _kept(child, key, used)]
    if name in ("", "metadata", "style") or name in ("g", "defs", "clipPath") and not children:
        return []
    attributes = {}
    for long, value in node.attrib.items():
        attribute = long.rpartition("}")[2]
        if attribute == "id":
            if value in used:
                attributes["id"] = f"{key}-{value}"
            continue
        if attribute == "transform" and value.startswith("rotate(-0 "):
            continue
        if attribute in ("href", "clip-path"):
            value = value.replace("#", f"#{key}-")
        elif attribute == "style":
            # The font is that of the page: only its size and weight are drawn.
            value = re.sub(r"font:\s*(?:(\d+)\s+)?([\d.]+px)[^;]*", lambda m: f"font-size: {m[2]}" + (f"; font-weight: {m[1]}" if m[1] else ""), value)
            value = re.sub(r"font-family:[^;]*;?\s*", "", value)
            for colour, shown in _IN_PAGE.items():
                value = value.replace(colour, shown)
            value = value.replace(": ", ":").replace("; ", ";")
        else:
            value = re.sub(r"(\d+\.\d{2})\d+", r"\1", " ".join(value.split()))
        attributes[attribute] = value
    if name == "path" and attributes.get("style") == "fill:none":
        return []
    if name == "g" and not attributes:
        return children
    kept = ElementTree.Element(name, attributes)
    kept.text = node.text if node.text and node.text.strip() else None
    kept.extend(children)
    return [kept]


def _mass(units: _words.Units, grams: float) -> str:
    """A mass in one unit, for columns of figures."""
    if units.mass != "us":
        return units.mass_text(grams)
    pounds = grams / _words.POUND_G
    return f"{pounds:.2f} lb" if pounds >= 0.995 else f"{16 * pounds:.1f} oz"


def _short(text: str, letters: int) -> str:
    return text if len(text) <= letters else text[:letters - 1].rstrip() + "…"


def _level(axis: Axes) -> None:
    """Rows from top to bottom that need no line or tick of their own."""
    axis.spines["left"].set_visible(False)
    axis.tick_params(axis="y", length=0, pad=2)
    axis.grid(axis="x", color=RULE, linewidth=0.5, alpha=0.6)
    axis.set_axisbelow(True)


def _ticks(axis: Axes, count: int) -> None:
    from matplotlib.ticker import MaxNLocator
    axis.xaxis.set_major_locator(MaxNLocator(count, steps=[1, 2, 2.5, 5, 10]))


# ----------------------------------------------------------------------------------- gravity and volume

def _changes(forecast: Forecast) -> list[dict[str, Any]]:
    """The steps at which a vessel's gravity or volume changes, the empty ones left out."""
    found: list[dict[str, Any]] = []
    for f in forecast.steps:
        after = f["after"]
        if after is None or f["do"] == "note" or f["do"] in ("condition", "serve"):
            continue
        before = found[-1]["after"] if found else None
        if before is not None and abs(before["gravity_20_20"] - after["gravity_20_20"]) < 5e-5 and abs(before["volume_20c_l"] - after["volume_20c_l"]) < 1e-6 * after["volume_20c_l"]:
            continue
        found.append(f)
    return found


def _day(forecast: Forecast, units: _words.Units) -> Picture | None:
    rows = _changes(forecast)
    if len(rows) < 2:
        return None
    row = 14.0 if len(rows) <= 40 else 600.0 / len(rows)
    sheet = _Sheet(len(rows) * row + 54)
    left, right = sheet.axes(66, 4, 104, len(rows) * row), sheet.axes(192, 4, 96, len(rows) * row)
    y = list(range(len(rows)))
    gravities = [f["after"]["gravity_20_20"] for f in rows]
    litres_each = {"imperial": _words.IMPERIAL_GALLON_L, "us": _words.GALLON_L}.get(units.volume, 1.0)
    unit = {"imperial": "imp gal", "us": "gal"}.get(units.volume, "L")
    volumes = [f["after"]["volume_l"] / litres_each for f in rows]
    colours = [AMBER if f["place"] == "kettle" else BLUE if f["place"] == "fermenter" else VIOLET for f in rows]
    low, high = min(gravities), max(gravities)
    spread = max(high - low, 0.01)
    for axis in (left, right):
        axis.set_ylim(len(rows) - 0.4, -0.6)
        axis.set_yticks([])
        _level(axis)
    left.set_yticks(y, [f"{f['number']} {f['do'].replace('_', ' ')}" for f in rows] if row >= 10 else [str(f["number"]) for f in rows])
    left.tick_params(axis="y", labelcolor=INK, labelsize=min(10.0, row * 0.68))
    left.plot(gravities, y, color=MUTED, linewidth=1.0, zorder=2)
    left.scatter(gravities, y, c=colours, s=24, zorder=3, linewidths=0)
    left.set_xlim(low - 0.07 * spread, high + 0.42 * spread)
    _ticks(left, 3)
    left.xaxis.set_major_formatter(lambda x, _: f"{x:.2f}" if spread > 0.015 else f"{x:.3f}")
    pitch = next((f["number"] for f in forecast.steps if f["do"] == "pitch"), 0)
    told = {gravities.index(high), len(rows) - 1, *[k for k, f in enumerate(rows) if f["number"] <= pitch][-1:]}
    for k in sorted(told):
        # where the line falls past the point from right to left, the room is on the left
        falling = 0 < k < len(rows) - 1 and gravities[k - 1] > gravities[k] + 0.05 * spread and gravities[k] > gravities[k + 1] + 0.05 * spread
        left.annotate(f"{gravities[k]:.3f}", (gravities[k], k), xytext=(-6 if falling else 6, 0), textcoords="offset points", ha="right" if falling else "left", va="center",
                      fontsize=10, color=INK, zorder=4)
    left.set_xlabel("gravity (SG 20/20)", labelpad=3)
    right.barh(y, volumes, height=0.62, color=colours)
    right.set_xlim(0, max(volumes) * 1.04)
    _ticks(right, 3)
    right.set_xlabel(f"volume ({unit})", labelpad=3)
    places = list(dict.fromkeys(f["place"] for f in rows))
    legend = {"kettle": AMBER, "fermenter": BLUE, "package": VIOLET}
    at = 66.0
    for place in places:
        sheet.figure.text(at / WIDTH, 4 / sheet.height, "●", color=legend[place], fontsize=10)
        sheet.figure.text((at + 11) / WIDTH, 4 / sheet.height, place, color=MUTED, fontsize=10)
        at += 26 + 6 * len(place)
    words = "; ".join(f"{f['number']} {f['do'].replace('_', ' ')}: {g:.3f}, {units.volume_text(f['after']['volume_l'])}" for f, g in zip(rows, gravities))
    return Picture("day", "Gravity and volume along the day", "Each row is a step of the card. Left, how heavy the liquid is against water at 20 °C; right, how much of it there is.",
                   sheet.svg("day", "Gravity and volume along the day", f"Step by step, gravity (SG 20/20) and volume at the temperature of the liquid: {words}."))


# ----------------------------------------------------------------------------------- bitterness

def _bitterness(forecast: Forecast) -> Picture | None:
    hops = [h for h in forecast.hops if h["bu"] > 0]
    totals = {k: v for k, v in (forecast.results["bitterness_by_model"] or {}).items() if v is not None}
    if not hops:
        return None
    used = forecast.models["utilisation"]
    shown = sorted(hops, key=lambda h: -h["bu"])[:12]
    shown = [h for h in hops if h in shown]
    names = []
    for h in shown:
        when = f"{h['minutes']:g} min" if h["minutes"] is not None else "stand"
        names.append(f"{_short(_words.one_line(h['name'] or 'hops'), 22 - len(when))}, {when}")
    totals.setdefault(used, forecast.results["bitterness_bu"])
    models = sorted(totals, key=lambda name: -totals[name])
    row, first = 14.0, len(shown) * 14.0
    sheet = _Sheet(first + len(models) * row + 72)
    upper, lower = sheet.axes(122, 18, 160, first), sheet.axes(122, first + 40, 160, len(models) * row)
    highest = max([*totals.values(), *(h["bu"] for h in shown), 1.0])
    for axis, labels in ((upper, names), (lower, models)):
        axis.set_ylim(len(labels) - 0.4, -0.6)
        axis.set_xlim(0, highest * 1.14)
        _level(axis)
        axis.set_yticks(range(len(labels)), labels)
        axis.tick_params(axis="y", labelcolor=INK, labelsize=10)
        _ticks(axis, 5)
    upper.spines["bottom"].set_visible(False)
    upper.tick_params(axis="x", length=0, labelbottom=False)
    upper.barh(range(len(shown)), [h["bu"] for h in shown], height=0.62, color=AMBER)
    for k, h in enumerate(shown):
        upper.annotate(f"{h['bu']:.0f}" if h["bu"] >= 0.95 else f"{h['bu']:.1f}", (h["bu"], k), xytext=(4, 0), textcoords="offset points", va="center", fontsize=10)
    for k, name in enumerate(models):
        mine = name == used
        lower.plot([0, totals[name]], [k, k], color=AMBER if mine else RULE, linewidth=2.2 if mine else 1.0, zorder=2)
        lower.scatter([totals[name]], [k], s=34 if mine else 24, c=[AMBER if mine else MUTED], zorder=3, linewidths=0)
        lower.annotate(f"{totals[name]:.0f}", (totals[name], k), xytext=(5, 0), textcoords="offset points", va="center", fontsize=10, fontweight="bold" if mine else "normal")
    lower.get_yticklabels()[models.index(used)].set_fontweight("bold")
    lower.set_xlabel("bitterness units (BU)", labelpad=3)
    left = 2 / WIDTH
    sheet.figure.text(left, 1 - 12 / sheet.height, f"By addition ({used})", fontsize=10, color=MUTED)
    sheet.figure.text(left, 1 - (first + 34) / sheet.height, "The whole, by every formula", fontsize=10, color=MUTED)
    words = (f"Additions by {used}: " + "; ".join(f"{n} {h['bu']:.1f} BU" for n, h in zip(names, shown)) + ". Totals: "
             + "; ".join(f"{n} {totals[n]:.0f} BU" for n in models) + ".")
    more = f" The {len(hops) - len(shown)} smallest additions are left out." if len(hops) > len(shown) else ""
    return Picture("bitter", "Bitterness", f"Above, what each hop brings. Below, the same hops by other published formulas: how far they lie apart is how well the number is known.{more}",
                   sheet.svg("bitter", "Bitterness by addition and by formula", words))


# ----------------------------------------------------------------------------------- pressure

def limits(package: Any, rated: float | None) -> tuple[float, float]:
    """Above which gauge pressures (bar) the rule of `package.caution` says caution and stop: read off the rule itself."""
    from . import package as topic

    def first(level: int) -> float:
        low, high = 0.0, 12.0
        for _ in range(40):
            middle = (low + high) / 2
            low, high = (low, middle) if topic.caution.project_rule(package, middle, 0.0, rated, True) >= level else (middle, high)
        return high

    return first(1), first(2)


def pressures(forecast: Forecast) -> Callable[[float], float] | None:
    """Gauge pressure (bar) in the closed package against its temperature (degC), as the forecast has it; None if it has none."""
    from . import package as topic
    found = forecast.package
    if found is None or found["hottest_pressure_bar"] is None or found["serving_pressure_bar"] is None:
        return None
    step, state = next((s, f["after"]) for s, f in zip(forecast.batch.steps, forecast.steps) if s["do"] in ("bottle", "keg"))
    air = 0.0 if found["regulator_pressure_bar"] is not None else 1.0
    filling, barometer = min(state["temperature_c"], 25.0), forecast.barometer_bar
    return lambda celsius: float(topic.pressure.beer_henry(found["carbonation_vol"], celsius, step["headspace"]["value"], air, filling, barometer, barometer, policy="extrapolate"))


def _pressure(forecast: Forecast, units: _words.Units) -> Picture | None:
    from ._errors import RangeError
    curve, found = pressures(forecast), forecast.package
    if curve is None:
        return None
    step = next(s for s in forecast.batch.steps if s["do"] in ("bottle", "keg"))
    serving, hottest = step["serving"]["value"], step["hottest"]["value"]
    psi, fahrenheit = units.pressure == "psi", units.temperature == "F"
    shown: Callable[[float], float] = lambda bar: bar / _words.PSI_BAR if psi else bar
    degrees: Callable[[float], float] = lambda celsius: celsius * 1.8 + 32 if fahrenheit else celsius
    first, last = min(0.0, serving), max(hottest, serving) + 4.0
    temperatures, heights = [], []
    for k in range(49):
        t = first + (last - first) * k / 48
        try:
            heights.append(curve(t))
        except RangeError:  # full of liquid before the end of the axis
            continue
        temperatures.append(t)
    caution, stop = limits(found["package"], step["rated"]["value"] if step["rated"] else None)
    hazard = found["hazard_pressure_bar"]
    top = max(stop * 1.12, max(heights) * 1.05, (hazard or 0.0) * 1.12)
    sheet = _Sheet(206)
    axis = sheet.axes(32, 8, 258, 162)
    axis.set_xlim(degrees(first), degrees(last))
    axis.set_ylim(0, shown(top))
    axis.grid(axis="y", color=RULE, linewidth=0.5, alpha=0.6)
    axis.set_axisbelow(True)
    axis.axhline(shown(stop), color=STOP, linewidth=1.6)
    axis.axhline(shown(caution), color=STOP, linewidth=1.2, dashes=(4, 3))
    axis.annotate(f"stop above {units.pressure_text(stop)}", (0, shown(stop)), xycoords=("axes fraction", "data"), xytext=(4, 3), textcoords="offset points", fontsize=10, color=STOP)
    axis.annotate(f"caution above {units.pressure_text(caution)}", (0, shown(caution)), xycoords=("axes fraction", "data"), xytext=(4, 3), textcoords="offset points", fontsize=10,
                  color=STOP)
    axis.plot([degrees(t) for t in temperatures], [shown(p) for p in heights], color=BLUE, linewidth=2.0)
    points = [(serving, found["serving_pressure_bar"], "served", "o", (5, -4), "left", "top"), (hottest, found["hottest_pressure_bar"], "hottest", "o", (6, -3), "left", "top")]
    if hazard is not None:
        points.append((hottest, hazard, "worst case", "D", (-6, 3), "right", "bottom"))
    for t, p, label, marker, offset, side, edge in points:
        late = degrees(t) > degrees(first) + 0.68 * (degrees(last) - degrees(first)) and side == "left"
        axis.scatter([degrees(t)], [shown(p)], marker=marker, s=30 if marker == "o" else 26, c=[BLUE if marker == "o" else STOP], zorder=4, linewidths=0)
        axis.annotate(f"{label} {units.pressure_text(p)}", (degrees(t), shown(p)), xytext=(8 if late else offset[0], -24 if late else offset[1]), textcoords="offset points",
                      ha="right" if late else side, va=edge, fontsize=10, color=STOP if marker == "D" else INK, zorder=3,
                      bbox={"facecolor": PAPER, "edgecolor": "none", "pad": 0.5})
    axis.set_xlabel(f"temperature of the package (°{units.temperature})", labelpad=3)
    axis.set_ylabel(f"pressure above the air outside ({'psi' if psi else 'bar'})", labelpad=3)
    _ticks(axis, 7)
    words = (f"With {found['carbonation_vol']:.2f} volumes of CO2 the pressure is {units.pressure_text(found['serving_pressure_bar'])} at {units.temperature_text(serving)} "
             f"and {units.pressure_text(found['hottest_pressure_bar'])} at {units.temperature_text(hottest)}, the hottest planned"
             + (f"; in the worst case {units.pressure_text(hazard)}" if hazard is not None else "") + f". The rule says caution above {units.pressure_text(caution)} and stop above {units.pressure_text(stop)}.")
    return Picture("pressure", "Pressure in the package", "The line is the plan. The worst case takes all sugar as gas and less gas dissolved; it is what the rule looks at. "
                   "The limits are a rule of this project, not a standard and not a statement about your package.", sheet.svg("pressure", "Pressure in the package against temperature", words))


# ----------------------------------------------------------------------------------- the ledger as a flow

@dataclass(frozen=True)
class Flow:
    """Where one thing came from and where it went, in grams."""
    name: str
    sources: list[tuple[str, float]]
    kept: list[tuple[str, float]]
    lost: list[tuple[str, float]]


def flows(forecast: Forecast) -> list[Flow]:
    """Water, extract and alcohol apart, from the states after each step; the names are those of the ledger."""
    empty = {"water_g": 0.0, "extract_g": 0.0, "ethanol_g": 0.0, "mass_g": 0.0}
    vessels = {"kettle": dict(empty), "fermenter": dict(empty)}
    into: dict[str, dict[str, float]] = {"water_g": {}, "extract_g": {}, "ethanol_g": {}}
    out: dict[str, dict[str, float]] = {"water_g": {}, "extract_g": {}, "ethanol_g": {}}
    made = {"alcohol": 0.0, "CO2": 0.0, "yeast": 0.0}
    ledger = forecast.ledger["out"]
    steeped = 0.0

    def add(table: dict[str, float], name: str, grams: float) -> None:
        if grams > 1e-9:
            table[name] = table.get(name, 0.0) + grams

    packaged = False
    priming = 0.0
    for step, f in zip(forecast.batch.steps, forecast.steps):
        do, after = f["do"], f["after"]
        if do in ("note", "condition", "serve") or after is None:
            continue
        place = "kettle" if f["place"] == "kettle" else "fermenter"
        old = vessels[place]
        new = {"water_g": after["water_g"], "extract_g": after["malt_extract_g"] + after["sugar_extract_g"], "ethanol_g": after["ethanol_g"], "mass_g": after["mass_g"]}
        if do == "transfer":
            kettle, vessels["kettle"] = vessels["kettle"], dict(empty)
            gone = {k: kettle[k] + old[k] - new[k] for k in into}
            named = {n: ledger.get(n, 0.0) for n in ("left in the kettle", "held by hops")}
            whole = sum(named.values())
            for k in into:
                for name, grams in named.items():
                    add(out[k], name, gone[k] * grams / whole if whole > 0 else 0.0)
        elif do == "steep":
            share = new["water_g"] / old["water_g"] if old["water_g"] > 0 else 1.0  # water only leaves; all else leaves with it
            whole = new["extract_g"] / share
            add(into["extract_g"], "grain", whole - old["extract_g"])
            add(out["extract_g"], "held by grain", whole - new["extract_g"])
            add(out["water_g"], "held by grain", old["water_g"] - new["water_g"])
            steeped += new["mass_g"] / share - new["mass_g"]
        elif do == "lauter":
            rinsing = forecast.ledger["in"].get("water", 0.0) - _other_water(forecast)
            add(into["water_g"], "water", rinsing)
            named = {"held by grain": ledger.get("held by grain", 0.0) - steeped, "left in the tun": ledger.get("left in the tun", 0.0)}
            whole = sum(named.values())
            for k, extra in (("water_g", rinsing), ("extract_g", 0.0)):
                for name, grams in named.items():
                    add(out[k], name, (old[k] + extra - new[k]) * grams / whole if whole > 0 else 0.0)
        elif do == "ferment":
            add(made, "alcohol", new["ethanol_g"] - old["ethanol_g"])
            add(made, "CO2", f["reported"]["co2_formed_g"])
            add(made, "yeast", f["reported"]["yeast_g"])
        elif do in ("rack", "dry_hop", "bottle", "keg"):
            name = {"rack": "left under the beer", "dry_hop": "held by dry hops"}.get(do, "lost in packaging")
            for k in into:
                add(out[k], name, old[k] - new[k])
            if do in ("bottle", "keg"):
                packaged = True
                if priming > 0:
                    add(into["extract_g"], "priming sugar", priming)
                    add(out["extract_g"], "lost in packaging", priming * (1 - new["water_g"] / old["water_g"]))
                    priming *= new["water_g"] / old["water_g"]
        else:
            if do == "boil":
                add(out["water_g"], "evaporated", f["reported"]["evaporated_g"])
                add(into["water_g"], "syrup", new["water_g"] - old["water_g"] + f["reported"]["evaporated_g"])
            else:
                add(into["water_g"], "syrup" if do == "dissolve" else "water", new["water_g"] - old["water_g"])
            add(into["extract_g"], "grain" if do == "mash" else "malt extract and sugar", new["extract_g"] - old["extract_g"])
            if do == "prime":
                priming = f["reported"]["sugar_g"]
        vessels[place] = new
    where = "in the package" if packaged else "in the vessel"
    kept = {k: sum(v[k] for v in vessels.values()) for k in into}
    found = [Flow("Extract", list(into["extract_g"].items()), [("became alcohol", made["alcohol"]), (where, kept["extract_g"]), ("priming sugar", priming if packaged else 0.0)],
                  [("became CO2", made["CO2"]), ("became yeast", made["yeast"]), *out["extract_g"].items()]),
             Flow("Water", list(into["water_g"].items()), [(where, kept["water_g"])], list(out["water_g"].items())),
             Flow("Alcohol", [("fermentation", made["alcohol"])], [(where, kept["ethanol_g"])], list(out["ethanol_g"].items()))]
    return [Flow(x.name, x.sources, [(n, g) for n, g in x.kept if g > 1e-9], [(n, g) for n, g in x.lost if g > 1e-9]) for x in found if sum(g for _, g in x.sources) > 0]


def _other_water(forecast: Forecast) -> float:
    """Water of the ledger that is not rinsing water, in grams."""
    total, before = 0.0, {"kettle": 0.0, "fermenter": 0.0}
    for f in forecast.steps:
        if f["after"] is None or f["do"] in ("note", "condition", "serve"):
            continue
        place = "kettle" if f["place"] == "kettle" else "fermenter"
        water = f["after"]["water_g"]
        if f["do"] in ("water", "top_up", "mash"):
            total += water - before[place]
        before[place] = water
        if f["do"] == "transfer":
            before["kettle"] = 0.0
    return total


_TINT = {"Extract": AMBER, "Water": BLUE, "Alcohol": VIOLET}


def _ledger(forecast: Forecast, units: _words.Units) -> Picture | None:
    found = flows(forecast)
    if not found:
        return None
    line, bar, gap = 13.0, 40.0, 2.0
    blocks = []
    for flow in found:
        total = sum(g for _, g in flow.sources)
        lost = sorted(flow.lost, key=lambda n: -n[1])
        if len(lost) > 5:
            lost = [*lost[:4], (f"{len(lost) - 4} other losses", sum(g for _, g in lost[4:]))]
        ends = [(n, g, True) for n, g in flow.kept] + [(n, g, False) for n, g in lost]
        # Every end needs the height of its label, every band its share of the bar.
        heights = [max(line, bar * g / total) for _, g, _ in ends]
        blocks.append((flow, total, ends, heights, sum(heights) + gap * (len(ends) - 1)))
    height = sum(max(b[4], bar + 16) for b in blocks) + 15.0 * len(blocks) + 4
    sheet = _Sheet(height)
    axis = sheet.axes(0, 0, WIDTH, height)
    axis.set_xlim(0, WIDTH)
    axis.set_ylim(height, 0)
    axis.axis("off")
    top = 8.0
    sentences = []
    for flow, total, ends, heights, tall in blocks:
        colour = _TINT[flow.name]
        y = top + max(0.0, (tall - bar) / 2)
        axis.text(2, y + bar / 2 - 7, flow.name, fontsize=11, fontweight="bold", va="center")
        axis.text(2, y + bar / 2 + 7, _mass(units, total), fontsize=10, va="center", color=MUTED)
        _patch(axis, [(62, y), (68, y), (68, y + bar), (62, y + bar)], colour, 1.0)
        edge, at = y, top
        for (name, grams, kept), tall_end in zip(ends, heights):
            thick = bar * grams / total
            middle = at + tall_end / 2
            _band(axis, 68, edge, 150, middle - thick / 2, thick, colour, 0.5 if kept else 0.2)
            _patch(axis, [(150, middle - max(thick, 0.8) / 2), (154, middle - max(thick, 0.8) / 2), (154, middle + max(thick, 0.8) / 2), (150, middle + max(thick, 0.8) / 2)], colour,
                   1.0 if kept else 0.5)
            axis.text(159, middle, name, fontsize=10, va="center", fontweight="bold" if kept else "normal")
            axis.text(298, middle, _mass(units, grams), fontsize=10, va="center", ha="right", color=INK if kept else MUTED)
            edge += thick
            at += tall_end + gap
        top += max(tall, bar + 16) + 15.0
        sentences.append(f"{flow.name}: {_mass(units, total)} from {_words.listed([n for n, _ in flow.sources])}; " + ", ".join(f"{n} {_mass(units, g)}" for n, g, _ in ends) + ".")
    return Picture("ledger", "Where it all went", "Every gram is accounted for. Strong bands end in the beer, pale ones leave it. Each bar on the left has its own scale.",
                   sheet.svg("ledger", "Where the extract, the water and the alcohol went", " ".join(sentences)))


def _patch(axis: Axes, corners: list[tuple[float, float]], colour: str, alpha: float) -> None:
    from matplotlib.patches import Polygon
    axis.add_patch(Polygon(corners, closed=True, facecolor=colour, edgecolor="none", alpha=alpha))


def _band(axis: Axes, x0: float, y0: float, x1: float, y1: float, thick: float, colour: str, alpha: float) -> None:
    """A band of constant thickness that swings from one height to another."""
    from matplotlib.patches import PathPatch
    from matplotlib.path import Path
    half = (x0 + x1) / 2
    thick = max(thick, 0.8)
    points = [(x0, y0), (half, y0), (half, y1), (x1, y1), (x1, y1 + thick), (half, y1 + thick), (half, y0 + thick), (x0, y0 + thick), (x0, y0)]
    codes = [Path.MOVETO, *[Path.CURVE4] * 3, Path.LINETO, *[Path.CURVE4] * 3, Path.CLOSEPOLY]
    axis.add_patch(PathPatch(Path(points, codes), facecolor=colour, edgecolor="none", alpha=alpha))


def pictures(forecast: Forecast, units: _words.Units) -> list[Picture]:
    """The pictures that this forecast has something to show for, in the order of the card."""
    import matplotlib
    from matplotlib import style
    found: list[Picture | None] = []
    with style.context("default", after_reset=True), matplotlib.rc_context(_STYLE), warnings.catch_warnings():
        warnings.filterwarnings("ignore", message="Glyph .* missing")  # the page has the letters, not the font that only measures them
        found = [_day(forecast, units), _bitterness(forecast), _pressure(forecast, units), _ledger(forecast, units)]
    return [p for p in found if p is not None]
