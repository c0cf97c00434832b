"""The kettle card as a page: what a browser, a reader, a printer and a sceptic may expect of it.

Sources: HTML Living Standard for the structure (html5lib, where installed, parses strictly); WCAG 2.1, success criteria 1.4.3 and
1.4.11, for contrast; the results of an independent engine in tests/reference/batch for what the page says.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest

import wortmath as wm
from expression import REFERENCE
from wortmath import _html, _plots, _words

SHARED = sorted((REFERENCE / "batch").glob("*.toml"))
ALL = [*SHARED, wm.batch.demo_path()]

WATER = '[[step]]\ndo = "water"\nvolume = "10 L"\n'
HEAD = '[batch]\nname = "early"\n' + WATER
WORT = HEAD + '''[[step]]
do = "steep"
minutes = "30 min"
temperature = "68 degC"
grains = [{ name = "grain", mass = "500 g", colour = "100 EBC" }]
[[step]]
do = "dissolve"
extracts = [{ name = "extract", mass = "2 kg", kind = "dry" }]
[[step]]
do = "boil"
minutes = "60 min"
evaporation = "2 L/h"
hops = [{ name = "first", mass = "30 g", alpha = "8 %", minutes = "60 min" }, { name = "late", mass = "30 g", alpha = "8 %", minutes = "15 min" }]
'''
PITCHED = WORT + '[[step]]\ndo = "chill"\nto = "20 degC"\n[[step]]\ndo = "transfer"\n[[step]]\ndo = "pitch"\nmass = "11 g"\n'
FERMENTED = PITCHED + '[[step]]\ndo = "ferment"\ndays = "7 d"\ntemperature = "20 degC"\n'


def bottled(volumes: float, hottest: float, package: str = "unrated_glass") -> str:
    return FERMENTED + (f'[[step]]\ndo = "prime"\ncarbonation = "{volumes} vol"\n[[step]]\ndo = "bottle"\nvolume = "0.5 L"\nhottest = "{hottest} degC"\n'
                        f'package = "{package}"\nfermentation_confirmed = true\n')


EARLY = {"water": HEAD, "kettle": WORT, "pitched": PITCHED, "fermented": FERMENTED, "bottled": bottled(2.3, 25), "stop": bottled(4.5, 40), "no pressure": bottled(2.3, 70),
         "no rating": bottled(2.0, 25, "not_pressure_rated")}

VOID = {"meta", "br", "img", "link", "input", "hr", "base", "col", "embed", "source", "track", "wbr", "area"}


class Reader(HTMLParser):
    """Reads a page, and refuses what is not closed, closed twice or put where it may not stand."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.open: list[tuple[str, dict[str, str]]] = []
        self.tags: list[tuple[str, dict[str, str]]] = []
        self.pieces: list[str] = []
        self.by_step: dict[int, list[str]] = {}
        self.faults: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        names = [name for name, _ in attrs]
        if len(set(names)) != len(names):
            self.faults.append(f"<{tag}> has an attribute twice")
        given = {name: value or "" for name, value in attrs}
        parent = self.open[-1][0] if self.open else ""
        if tag == "li" and parent not in ("ul", "ol") or tag in ("tr",) and parent not in ("tbody", "thead") or tag in ("td", "th") and parent != "tr":
            self.faults.append(f"<{tag}> in <{parent}>")
        if parent in ("ul", "ol") and tag != "li":
            self.faults.append(f"<{tag}> in <{parent}>")
        if parent in ("p", "h1", "h2", "h3") and tag in ("p", "div", "ul", "ol", "table", "section", "h1", "h2", "h3"):
            self.faults.append(f"<{tag}> in <{parent}>")
        self.tags.append((tag, given))
        if tag not in VOID:
            self.open.append((tag, given))

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if not any(name == "svg" for name, _ in self.open):
            self.faults.append(f"<{tag}/> outside of svg")
        self.tags.append((tag, {name: value or "" for name, value in attrs}))

    def handle_endtag(self, tag: str) -> None:
        if not self.open or self.open[-1][0] != tag:
            self.faults.append(f"</{tag}> closes {self.open[-1][0] if self.open else 'nothing'}")
        else:
            self.open.pop()

    def handle_data(self, data: str) -> None:
        if any(tag == "style" for tag, _ in self.open):
            return
        self.pieces.append(data)
        for _, given in self.open:
            found = re.fullmatch(r"step-(\d+)", given.get("id", ""))
            if found:
                self.by_step.setdefault(int(found[1]), []).append(data)

    @property
    def text(self) -> str:
        return spaced("\n".join(self.pieces))

    def step(self, number: int) -> str:
        return spaced("".join(self.by_step[number]))


def spaced(text: str) -> str:
    return " ".join(text.replace("\u00a0", " ").split())


def read(page: str) -> Reader:
    reader = Reader()
    reader.feed(page)
    reader.close()
    return reader


def forecast(path: Path) -> Any:
    return wm.batch.read(path).forecast()


@pytest.fixture(scope="module", params=[*ALL, *EARLY], ids=lambda p: p.stem if isinstance(p, Path) else p)
def made(request: Any) -> tuple[Any, str]:
    found = forecast(request.param) if isinstance(request.param, Path) else wm.batch.read_text(EARLY[request.param]).forecast()
    return found, _html.page(found, None, "09:00")


# ----------------------------------------------------------------------------------------------- as a file

def test_structure(made: tuple[Any, str]) -> None:
    page = made[1]
    reader = read(page)
    assert not reader.faults and not reader.open
    assert page.startswith("<!DOCTYPE html>")
    assert reader.tags[0] == ("html", {"lang": "en"})
    metas = [given for tag, given in reader.tags if tag == "meta"]
    assert {"charset": "utf-8"} in metas and any(m.get("name") == "viewport" and "width=device-width" in m["content"] for m in metas)
    assert [tag for tag, _ in reader.tags].count("main") == 1
    assert "".join(read(re.search(r"<title>.*?</title>", page)[0]).pieces) == f"{made[0].name}: kettle card"  # type: ignore[index]
    ids = [given["id"] for _, given in reader.tags if "id" in given]
    assert len(ids) == len(set(ids))
    assert len(page.encode()) < 400_000


def test_strict_parser(made: tuple[Any, str]) -> None:
    html5lib = pytest.importorskip("html5lib")
    html5lib.HTMLParser(strict=True).parse(made[1])


def test_headings_in_order(made: tuple[Any, str]) -> None:
    levels = [int(tag[1]) for tag, _ in read(made[1]).tags if re.fullmatch(r"h[1-6]", tag)]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(after - before <= 1 for before, after in zip(levels, levels[1:]))


def test_nothing_from_outside_and_no_script(made: tuple[Any, str]) -> None:
    page, reader = made[1], read(made[1])
    assert not [tag for tag, _ in reader.tags if tag in ("script", "link", "img", "iframe", "object", "embed", "base", "audio", "video", "form", "image", "foreignobject")]
    ids = {given["id"] for _, given in reader.tags if "id" in given}
    for tag, given in reader.tags:
        assert not [name for name in given if name.startswith("on") or name in ("src", "srcset", "data", "action", "xlink:href")], (tag, given)
        if "href" in given:
            assert given["href"].startswith("#") and given["href"][1:] in ids, given
        for reference in re.findall(r"url\(([^)]*)\)", " ".join(given.values())):
            assert reference.startswith("#") and reference[1:] in ids
    assert "@import" not in page and "url(" not in _html._css() and "://" not in page


def test_pictures_have_words(made: tuple[Any, str]) -> None:
    pytest.importorskip("matplotlib")
    page, reader = made[1], read(made[1])
    drawn = [given for tag, given in reader.tags if tag == "svg"]
    assert drawn
    for given in drawn:
        assert given["role"] == "img"
        for name in given["aria-labelledby"].split():
            assert len(re.search(rf'id="{name}">([^<]*)<', page)[1]) > 5  # type: ignore[index]
    assert "<metadata" not in page and "<?xml" not in page


def luminance(colour: str) -> float:
    parts = [int(colour[k:k + 2], 16) / 255 for k in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.03928 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_contrast_formula() -> None:
    # Black on white is 21 by definition; #767676 on white is the well-known grey that just reaches 4.5 (from memory).
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert 4.5 <= contrast("#767676", "#ffffff") < 4.6


@pytest.mark.parametrize("palette", [_html.LIGHT, _html.DARK], ids=["light", "dark"])
def test_contrast(palette: dict[str, str]) -> None:
    for text in ("ink", "muted", "amber", "stop"):
        assert contrast(palette[text], palette["paper"]) >= 4.5, text
    for wash in ("caution-wash", "stop-wash", "note-wash"):
        assert contrast(palette["ink"], palette[wash]) >= 4.5
        assert contrast(palette["amber"], palette[wash]) >= 4.5
    assert contrast(palette["stop"], palette["stop-wash"]) >= 4.5
    for drawn in ("blue", "violet", "amber", "muted", "stop"):
        assert contrast(palette[drawn], palette["paper"]) >= 3


# Machado, Oliveira and Fernandes, IEEE Trans. Vis. Comput. Graph. 15 (2009) 1291, severity 1 (matrices from memory), on linear RGB.
DEFICIENT = {"protan": [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
             "deutan": [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
             "tritan": [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]]}


def seen(colour: str, matrix: list[list[float]]) -> tuple[float, float, float]:
    """CIE L*a*b* (D65) of a colour as an eye with this matrix sees it."""
    parts = [int(colour[k:k + 2], 16) / 255 for k in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    r, g, b = (min(1.0, max(0.0, sum(m * v for m, v in zip(row, linear)))) for row in matrix)
    x, y, z = ((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505, 0.2126 * r + 0.7152 * g + 0.0722 * b, (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089)
    fx, fy, fz = (t ** (1 / 3) if t > 0.008856 else 7.787 * t + 16 / 116 for t in (x, y, z))
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


@pytest.mark.parametrize("eye", DEFICIENT)
@pytest.mark.parametrize("palette", [_html.LIGHT, _html.DARK], ids=["light", "dark"])
def test_colours_of_the_vessels_differ_for_every_eye(palette: dict[str, str], eye: str) -> None:
    # A distance of 2.3 is just seen (common practice); bars side by side need several times that. The words stand there too.
    for one, other in (("amber", "blue"), ("amber", "violet"), ("blue", "violet")):
        distance = sum((a - b) ** 2 for a, b in zip(seen(palette[one], DEFICIENT[eye]), seen(palette[other], DEFICIENT[eye]))) ** 0.5
        assert distance > 12, (one, other, distance)


def test_palettes_are_the_ones_used() -> None:
    css = _html._css()
    light, dark, paper = (css.index(_html._colours(_html.LIGHT)), css.index(_html._colours(_html.DARK)), css.rindex(_html._colours(_html.LIGHT)))
    assert light < css.index("prefers-color-scheme:dark") < dark < css.index("@media print") < paper  # paper is white, whatever the screen was
    names = {name for p in (_html.LIGHT, _html.DARK) for name in p}
    assert set(_html.LIGHT) == set(_html.DARK) == names
    assert set(re.findall(r"var\(--([a-z-]+)", css)) <= names
    assert {re.match(r"var\(--([a-z-]+)", v)[1] for v in _plots._IN_PAGE.values() if v.startswith("var")} <= names  # type: ignore[index]
    assert not re.findall(r"(?<![-\w])(?:color|background|border-color):#", css)  # no colour beside the palettes


# ----------------------------------------------------------------------------------------------- what it says

@pytest.mark.parametrize("path", SHARED, ids=lambda p: p.stem)
def test_says_what_the_other_engine_says(path: Path) -> None:
    want = json.loads(path.with_suffix(".json").read_text(encoding="utf-8"))
    reader = read(_html.page(forecast(path), None, "09:00"))
    told: dict[str, int] = {}
    for caution in want["cautions"]:
        if caution["step"] is None:
            assert spaced(wm.batch.caution_text(caution["id"])).replace(" degC", " °C") in reader.text
    for number, step in ((s["number"], s) for s in want["steps"]):
        here = reader.step(number)
        for caution in (c for c in want["cautions"] if c["step"] == number):
            if told.get(caution["id"], number) != number:
                assert f"step {told[caution['id']]}" in here, (number, caution)
            else:
                told[caution["id"]] = number
                assert spaced(wm.batch.caution_text(caution["id"])).replace(" degC", " °C") in here, (number, caution)
    last = None
    for step in want["steps"]:
        reading = step["after"] and step["after"]["hydrometer"]
        if reading is not None and step["place"] != "package" and step["do"] != "note" and f"{reading:.3f}" != last:
            last = f"{reading:.3f}"
            assert "hydrometer" in reader.step(step["number"]) and last in reader.step(step["number"])
    r, p = want["results"], want["package"]
    for text in (f"{r['original_gravity']:.3f}", f"{r['final_gravity']:.3f}", f"{r['alcohol_by_volume']:.1f} % vol", f"{r['bitterness_bu']:.0f} BU", f"{r['colour_srm']:.0f} SRM"):
        assert text in reader.text
    if p["kind"] == "bottle":
        assert f"Fill {p['bottles']} bottles" in reader.text
    if p["level"] == 0:
        assert "No rule of this list was met. This is not a statement about your bottles." in reader.text
    rgb = ",".join(str(c) for c in r["swatch"])
    assert any(f"rgb({rgb})" in given.get("style", "") for _, given in reader.tags)


def test_every_reading_has_an_empty_box(made: tuple[Any, str]) -> None:
    page = made[1]
    rows = re.findall(r'<tr><th scope="row">([^<]*)</th><td class="val">[^<]+</td><td class="slot"><span></span></td></tr>', page)
    assert len(rows) == page.count('class="val"') == page.count('class="slot"')
    assert sum("volume" in row for row in rows) >= 1


def test_gathering_stands_first(made: tuple[Any, str]) -> None:
    page = made[1]
    order = [page.find(f"<h2>{title}") for title in ("Weigh out and gather", "Brewing day", "Days ahead", "What it should become", "In the bottle", "In pictures", "For those who check")]
    present = [k for k in order if k >= 0]
    assert present == sorted(present) and order[0] >= 0 and order[1] >= 0
    # every hop of the file has an empty square in the list and one at its step
    hops = [h for s in made[0].batch.steps for h in s.get("hops", ())]
    assert page.count('class="tick"') >= 2 * len(hops)


def test_times() -> None:
    found = wm.batch.read_text(PITCHED).forecast()
    page = read(_html.page(found, None, "09:00"))
    # By hand: half an hour of steeping from 9:00, an hour of boiling, hops with 60 and 15 minutes left.
    assert page.step(2).startswith("09:00") and page.step(4).startswith("09:30")
    assert "09:30" + "60 min left" in page.step(4) and "10:15" + "15 min left" in page.step(4)
    assert page.step(5).startswith("10:30")
    elapsed = read(_html.page(found))
    assert elapsed.step(1).startswith("0:00") and "1:15" + "15 min left" in elapsed.step(4) and elapsed.step(5).startswith("1:30")
    late = read(_html.page(found, None, "23:30"))
    assert late.step(4).startswith("00:00 (+1)")
    for wrong in ("9", "24:00", "nine", "09:60"):
        with pytest.raises(ValueError, match="is not a time of day"):
            _html.page(found, None, wrong)


def test_days() -> None:
    text = FERMENTED + ('[[step]]\ndo = "ferment"\ndays = "3 d"\ntemperature = "12 degC"\n[[step]]\ndo = "rack"\n[[step]]\ndo = "prime"\nmass = "60 g"\n'
                        '[[step]]\ndo = "bottle"\nvolume = "0.5 L"\nhottest = "25 degC"\n[[step]]\ndo = "condition"\ndays = "14 d"\ntemperature = "20 degC"\n')
    page = read(_html.page(wm.batch.read_text(text).forecast()))
    # By hand: 7 days, 3 days, 14 days.
    for step, day in ((8, 0), (9, 7), (10, 10), (11, 10), (12, 10), (13, 10)):
        assert page.step(step).startswith(f"Day {day}"), step
    assert "Day 24 drinking" in page.text


def test_units() -> None:
    found = forecast(SHARED[0])
    us, metric = read(_html.page(found, "us")).text, read(_html.page(found, "metric")).text
    assert "gal" in us and "°F" in us and "psi" in us and " L " not in us
    assert " kg " in metric and "°C" in metric and " bar" in metric and " gal" not in metric and "°F" not in metric
    with pytest.raises(ValueError, match="us"):
        _html.page(found, "furlongs")


NAMES = ['<script>alert("x")</script>', "it's \"quoted\" & <b>bold</b>", "Ümläut ß – 漢字 😀", "$x^2$ \\frac{a}{b} %s {0}", "--></style><svg onload=1>", "x" * 300]


@pytest.mark.parametrize("name", NAMES, ids=range(len(NAMES)))
def test_names_are_text(name: str) -> None:
    quoted = json.dumps(name, ensure_ascii=False)
    text = (f"[batch]\nname = {quoted}\nnotes = {quoted}\n{WATER}"
            f'[[step]]\ndo = "note"\ntext = {quoted}\n[[step]]\ndo = "steep"\ntemperature = "68 degC"\ngrains = [{{ name = {quoted}, mass = "500 g" }}]\n'
            f'[[step]]\ndo = "boil"\nminutes = "60 min"\nevaporation = "1 L/h"\nhops = [{{ name = {quoted}, mass = "30 g", alpha = "8 %", minutes = "60 min" }}]\n'
            f'extracts = [{{ name = {quoted}, mass = "1 kg", kind = "dry", minutes = "10 min" }}]\n'
            f'[[step]]\ndo = "chill"\nto = "20 degC"\n[[step]]\ndo = "transfer"\n[[step]]\ndo = "pitch"\nname = {quoted}\nmass = "11 g"\n')
    page = _html.page(wm.batch.read_text(text).forecast())
    reader = read(page)
    assert not reader.faults and not reader.open
    assert not [tag for tag, given in reader.tags if tag in ("script", "b>bold") or any(n.startswith("on") for n in given)]
    plain = read(_html.page(wm.batch.read_text(text.replace(quoted, '"plain"')).forecast()))
    assert [tag for tag, _ in reader.tags] == [tag for tag, _ in plain.tags]  # a name adds no element
    heading = re.search(r"<h1>(.*?)</h1>", page, re.S)
    assert heading is not None and "".join(read(heading[0]).pieces) == name
    assert reader.text.count(spaced(name)) >= 8  # title, heading, notes, note, and each ingredient twice


def test_stop_is_told_at_the_top_and_at_the_step() -> None:
    reader = read(_html.page(wm.batch.read_text(EARLY["stop"]).forecast()))
    assert reader.text.index("STOP") < reader.text.index("Weigh out and gather")
    bottle = max(reader.by_step)
    assert "STOP" in reader.step(bottle) and spaced(wm.batch.caution_text("package_pressure")) in reader.step(bottle)
    refused = read(_html.page(wm.batch.read_text(EARLY["no pressure"]).forecast())).text
    assert "STOP" in refused and "not computed" in refused.lower()


def test_no_reassurance(made: tuple[Any, str]) -> None:
    assert not re.search(r"\bsafe(ly|ty)?\b|\bOK\b|[✓✔☑✅]", read(made[1]).text)


# ----------------------------------------------------------------------------------------------- the pictures

def test_without_matplotlib(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in [n for n in sys.modules if n.split(".")[0] == "matplotlib"]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.setitem(sys.modules, "matplotlib", None)
    page = _html.page(forecast(ALL[-1]))
    reader = read(page)
    assert not reader.faults and "<svg" not in page
    assert 'matplotlib is not installed: pip install "wortmath[plot]" brings it' in reader.text


def test_same_page_every_time() -> None:
    pytest.importorskip("matplotlib")
    path = ALL[-1]
    code = f"import sys, wortmath as wm; from wortmath import _html; sys.stdout.buffer.write(_html.page(wm.batch.read({str(path)!r}).forecast(), None, '09:00').encode())"
    made = [subprocess.run([sys.executable, "-c", code], capture_output=True, check=True, env={**os.environ, "PYTHONHASHSEED": seed}).stdout for seed in ("1", "2")]
    assert made[0] == made[1]


def test_reader_settings_do_not_show() -> None:
    matplotlib = pytest.importorskip("matplotlib")
    found = forecast(SHARED[0])
    plain = _html.page(found)
    with matplotlib.rc_context({"font.size": 30, "axes.facecolor": "red", "svg.fonttype": "path", "text.usetex": False}):
        assert _html.page(found) == plain
        assert matplotlib.rcParams["font.size"] == 30


# The table of `package.caution` in its chapter: bar gauge above which the rule says caution and stop; with a rating, 0.8 of it and the rating.
@pytest.mark.parametrize("package, rated, caution, stop", [
    ("unrated_glass", None, 4.7, 6.0), ("beer_glass_rated", None, 4.7, 6.0), ("soft_drink_glass", None, 4.7, 6.0), ("sparkling_wine_glass", None, 6.0, 8.0),
    ("keg", None, 2.4, 3.0), ("not_pressure_rated", None, 0.2, 1.0), ("other", None, 4.7, 6.0), ("keg", 7.0, 5.6, 7.0), ("unrated_glass", 4.0, 3.2, 4.0), ("unrated_glass", 12.0, 4.7, 6.0)])
def test_limits_are_those_of_the_rule(package: str, rated: float | None, caution: float, stop: float) -> None:
    assert list(_plots.limits(package, rated)) == pytest.approx([caution, stop], abs=1e-6)


@pytest.mark.parametrize("path", SHARED, ids=lambda p: p.stem)
def test_pressure_line_goes_through_the_answers(path: Path) -> None:
    want = json.loads(path.with_suffix(".json").read_text(encoding="utf-8"))
    found = forecast(path)
    line = _plots.pressures(found)
    assert line is not None
    step = next(s for s in found.batch.steps if s["do"] in ("bottle", "keg"))
    assert line(step["serving"]["value"]) == pytest.approx(want["package"]["serving_pressure_bar"], rel=1e-9)
    assert line(step["hottest"]["value"]) == pytest.approx(want["package"]["hottest_pressure_bar"], rel=1e-9)
    for s, w in zip(found.batch.steps, want["steps"]):
        if w["do"] in ("condition", "serve"):
            assert line(s["temperature"]["value"]) == pytest.approx(w["reported"]["pressure_bar"], rel=1e-9)


@pytest.mark.parametrize("path", ALL, ids=lambda p: p.stem)
def test_flows_are_the_ledger(path: Path) -> None:
    found = forecast(path)
    ledger = json.loads(path.with_suffix(".json").read_text(encoding="utf-8"))["ledger"] if path in SHARED else found.ledger
    flows = {f.name: f for f in _plots.flows(found)}
    assert list(flows) == ["Extract", "Water", "Alcohol"]
    for flow in flows.values():
        arrived = sum(g for _, g in flow.sources)
        assert sum(g for _, g in flow.kept + flow.lost) == pytest.approx(arrived, rel=1e-9), flow
        assert min(g for _, g in flow.kept + flow.lost) > 0
    lost: dict[str, float] = {}
    for flow in flows.values():
        for name, grams in flow.lost:
            lost[name] = lost.get(name, 0.0) + grams
    for name, grams in ledger["out"].items():
        if name == "yeast":
            assert lost["became yeast"] == pytest.approx(grams, rel=1e-9)
        elif name != "CO2 released":
            # what is lost of fermented beer takes its dissolved gas along, which the flows leave out: 4 g in a litre at most
            assert lost.get(name, 0.0) == pytest.approx(grams, rel=0.004), name
    closing = next(f["after"] for f in found.steps if f["do"] in ("bottle", "keg"))
    kept = sum(g for f in flows.values() for n, g in f.kept if n in ("in the package", "priming sugar"))
    assert kept + closing["co2_g"] == pytest.approx(ledger["kept_g"], rel=1e-9)


def test_pictures_follow_the_batch() -> None:
    pytest.importorskip("matplotlib")
    keys = {name: [p.key for p in _plots.pictures(f, _words.choose(f.batch))] for name, f in ((n, wm.batch.read_text(t).forecast()) for n, t in EARLY.items())}
    assert keys["bottled"] == ["day", "bitter", "pressure", "ledger"]
    assert keys["no pressure"] == ["day", "bitter", "ledger"]
    assert keys["kettle"] == keys["fermented"] == ["day", "bitter", "ledger"]
    assert keys["water"] == ["ledger"]


def test_long_days() -> None:
    pytest.importorskip("matplotlib")
    many = HEAD + "".join(f'[[step]]\ndo = "water"\nvolume = "{0.01 * (k + 1):.2f} L"\n' for k in range(150)) + WORT.removeprefix(HEAD).replace(
        "hops = [", "hops = [" + ", ".join(f'{{ name = "hop {k}", mass = "{k + 1} g", alpha = "5 %", minutes = "{k % 60} min" }}' for k in range(60)) + ", ")
    found = wm.batch.read_text(many).forecast()
    page = _html.page(found)
    assert not read(page).faults and len(page.encode()) < 400_000
    day = next(p for p in _plots.pictures(found, _words.choose(found.batch)) if p.key == "day")
    assert float(re.search(r'viewBox="0 0 [\d.]+ ([\d.]+)"', day.svg)[1]) < 800  # type: ignore[index]
