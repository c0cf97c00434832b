"""The kettle card as one HTML file: no script, no request to anywhere, for paper, phone and desk, light and dark.

What it says is the Story of _words.py; here is only how it looks.
"""

from __future__ import annotations

import re
from html import escape
from typing import TYPE_CHECKING

from . import _plots, _words
from ._words import Addition, Caution, Item, PackageStory, StepStory, Story, Target

if TYPE_CHECKING:
    from .batch import Forecast

# Text in ink, muted, amber, stop on paper, and ink on the washes, keep a contrast of 4.5 or more; the tests compute it.
LIGHT = {"paper": "#ffffff", "desk": "#f3f0ea", "ink": "#231f1b", "muted": "#5f574f", "rule": "#cfc8bd", "amber": "#985400", "blue": "#0a659c", "violet": "#b8608f",
         "stop": "#b3261e", "caution-wash": "#fbf0d9", "stop-wash": "#fce8e5", "note-wash": "#f4f1ec"}
DARK = {"paper": "#1e1b18", "desk": "#141210", "ink": "#ece6dd", "muted": "#b3a99d", "rule": "#4b443c", "amber": "#e8a548", "blue": "#69b5ea", "violet": "#b06aa8",
        "stop": "#ff9a90", "caution-wash": "#332916", "stop-wash": "#40211d", "note-wash": "#292521"}

_STYLE = """
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--desk);color:var(--ink);font:1rem/1.5 -apple-system,"Segoe UI",Roboto,"Helvetica Neue",Arial,"Liberation Sans",system-ui,sans-serif;font-variant-numeric:tabular-nums}
main{max-width:62rem;margin:0 auto;background:var(--paper);padding:1.25rem 1rem 2rem;overflow-wrap:break-word}
h1,h2{font-family:"Iowan Old Style","Palatino Linotype",Palatino,Georgia,"Liberation Serif",serif;font-weight:600;line-height:1.15}
h1{font-size:2.1rem;margin:0 0 .25rem;letter-spacing:-.01em}
h2{font-size:1.4rem;margin:2.25rem 0 .75rem;padding-top:.6rem;border-top:2px solid var(--ink)}
h3{font-size:1rem;line-height:1.35;margin:0}
p{margin:.25rem 0}
a{color:inherit}
ul,ol{margin:0;padding:0}
ul,ol{list-style:none}
.small,.fine{font-size:.875rem;color:var(--muted)}
h2 .small{font:400 .875rem/1.3 -apple-system,"Segoe UI",Roboto,"Helvetica Neue",Arial,"Liberation Sans",system-ui,sans-serif;margin-left:.6em}
.sum{display:flex;flex-wrap:wrap;gap:.25rem 1.1rem;margin:.7rem 0;font-weight:600;font-size:1.05rem;align-items:center}
.swatch{display:inline-block;width:2.4em;height:0;border:.48em solid;outline:1px solid var(--muted);vertical-align:-.12em}
.tick{display:inline-block;width:.85em;height:.85em;border:1.5px solid var(--ink);border-radius:2px;flex:none;transform:translateY(.08em)}
.gather{display:grid;gap:1rem 2rem;grid-template-columns:repeat(auto-fill,minmax(17rem,1fr))}
.gather h3{color:var(--amber);margin-bottom:.15rem}
.gather li,.goes li{display:flex;gap:.55rem;align-items:baseline;padding:.16rem 0}
.gather b,.goes b{white-space:nowrap;min-width:4.2rem}
.detail{color:var(--muted);font-size:.9em}
.step{display:grid;grid-template-columns:3.7rem minmax(0,1fr);gap:.1rem .7rem;padding:.8rem 0;border-top:1px solid var(--rule)}
ol>li.step:first-child{border-top:0}
.when{margin:0;line-height:1.3;font-weight:600;font-size:1.05rem;color:var(--amber);white-space:nowrap}
.what{min-width:0}
.no{display:inline-block;min-width:1.2em;margin-right:.45em;color:var(--muted);font-weight:400}
.goes{margin:.2rem 0 .3rem}
.goes .left{min-width:5.3rem;white-space:nowrap}
.goes .at{min-width:3rem;color:var(--amber);font-weight:600}
.reads{margin-top:.4rem;align-self:start;grid-column:2}
.reads th,.reads td{border:0;padding:.1rem 0;vertical-align:middle}
.reads th{color:var(--muted);font-size:.9rem;font-weight:400;line-height:1.25}
.reads .val{font-weight:600;text-align:right;padding:0 .7rem;white-space:nowrap}
.reads .slot{width:5.2rem}
.slot span{display:block;height:1.9rem;border:1px solid var(--muted);border-radius:3px}
.mind{grid-column:1/-1;margin:.35rem 0 0;padding:.4rem .7rem;font-size:.875rem;line-height:1.42;background:var(--note-wash);border-left:3px solid var(--muted)}
.mind.caution{background:var(--caution-wash);border-color:var(--amber)}
.mind.stop{background:var(--stop-wash);border-color:var(--stop)}
.again{font-size:.875rem;color:var(--muted)}
.mind .word{color:var(--amber);letter-spacing:.03em}
.mind.stop .word{color:var(--stop)}
.way{display:grid;grid-template-columns:repeat(auto-fit,minmax(6.2rem,1fr));gap:.5rem 0;margin:.2rem 0 .6rem}
.way li{border-top:3px solid var(--blue);padding:.3rem .5rem .2rem 0;font-size:.92rem;line-height:1.3;position:relative}
.way li::before{content:"";position:absolute;top:-7px;left:0;width:11px;height:11px;border-radius:50%;background:var(--blue)}
.way b{display:block}
table{border-collapse:collapse;width:100%;font-size:.95rem}
th,td{text-align:left;vertical-align:baseline;padding:.35rem .8rem .35rem 0;border-top:1px solid var(--rule)}
thead th{border-top:0;font-size:.85rem;font-weight:400;color:var(--muted);padding-top:0}
tbody th{font-weight:400}
td.figure{font-weight:600;white-space:nowrap}
td.right,th.right{text-align:right}
.wide{overflow-x:auto}
.words{font-size:.875rem;color:var(--muted);line-height:1.35}
.targets th,.targets .others,.targets .by{white-space:nowrap}
.targets thead .words{font-size:.85rem}
.facts th{width:8rem;font-weight:400;color:var(--muted)}
.facts th,.facts td{padding:.2rem .8rem .2rem 0}
.facts tr:first-child>*{border-top:0}
.plots{display:grid;gap:1.6rem 2rem;grid-template-columns:repeat(auto-fit,minmax(min(100%,18.5rem),1fr));align-items:start}
figure{margin:0;break-inside:avoid}
figure h3{margin-bottom:.4rem}
figcaption{font-size:.85rem;color:var(--muted);line-height:1.4;margin-top:.4rem}
.plot{display:block;width:100%;max-width:26rem;height:auto}
.fine h2{color:var(--ink)}
.fine h3{color:var(--ink);margin:.9rem 0 .15rem}
.fine table{font-size:.85rem}
footer{margin-top:2rem;padding-top:.6rem;border-top:1px solid var(--rule);font-size:.85rem;color:var(--muted)}
@media (max-width:40rem){
 .goes .timed{flex-wrap:wrap;row-gap:0}
 .goes .timed>:last-child{flex-basis:100%;padding-left:1.4rem}
 .targets thead{position:absolute;left:-100vw}
 .targets tr{display:grid;grid-template-columns:1fr auto;gap:0 .8rem;border-top:1px solid var(--rule);padding:.45rem 0}
 .targets th,.targets td{border:0;padding:0}
 .targets .figure{text-align:right}
 .targets .others,.targets .by{font-size:.875rem;color:var(--muted)}
 .targets .others:not(:empty)::before{content:"all formulas: "}
 .targets .by{text-align:right}
 .targets .by:not(:empty)::before{content:"by "}
 .targets .words{grid-column:1/-1}
}
@media (min-width:46rem){
 body{padding:1.5rem 0}
 main{padding:2.2rem 2.6rem 2.6rem}
 h1{font-size:2.7rem}
 .step{grid-template-columns:4.6rem minmax(0,1fr) 21rem;gap:.1rem 1.2rem}
 .what{grid-column:2}
 .reads{margin-top:0;grid-column:3}
 .mind{grid-column:2/-1}
}
"""

# Two pages for an ordinary batch: the brewing day on the first, the days ahead and the answers on the second.
# Headings of steps run in with their text there; what is for those who check stays on the screen.
_PRINT = """
@page{margin:8mm 11mm}
@media print{
 html{font-size:8pt}
 body{padding:0;background:none;line-height:1.28}
 main{max-width:none;padding:0}
 h1{font-size:19pt}
 h2{font-size:11.5pt;margin:2mm 0 .8mm;padding-top:1mm;border-top-width:1.2pt;break-after:avoid}
 p{margin:.3mm 0}
 h2 .small{font-size:7.1pt}
 .sum{margin:.8mm 0;font-size:10pt;gap:0 5mm}
 .gather{display:block;columns:3;column-gap:6mm}
 .gather div{break-inside:avoid;margin-bottom:1mm}
 .gather h3{margin:0}
 .gather li,.goes li{padding:0}
 .gather b,.goes b{min-width:11.5mm}
 .gather li,.goes li{gap:1.6mm}
 .goes{margin:.3mm 0}
 .goes .left{min-width:15mm}
 .goes .at{min-width:9mm}
 .step{grid-template-columns:12mm minmax(0,1fr) 68mm;gap:0 3mm;padding:.9mm 0;break-inside:avoid}
 .what{grid-column:2}
 .what h3,.what>p{display:inline}
 .what h3::after{content:".";margin-right:.3em}
 .what>p::after{content:" "}
 .what .no{min-width:0}
 .when{font-size:9pt;margin:0}
 .reads{margin-top:0;grid-column:3}
 .reads th,.reads td{padding:.1mm 0}
 .reads .val{padding:0 2.5mm}
 .reads .slot{width:17mm}
 .slot span{height:4.1mm;border-radius:1pt}
 .mind{grid-column:2/-1;font-size:7.1pt;line-height:1.22;margin:.6mm 0 0;padding:.3mm 2mm;background:none;border-left-width:1pt}
 .mind.caution,.mind.stop{border-left-width:2.4pt}
 .way{margin:1.2mm 0 .5mm;gap:1mm 0;grid-template-columns:repeat(auto-fit,minmax(20mm,1fr))}
 .way li{font-size:8pt;border-top-width:1.5pt;padding:.8mm 1mm 0 0}
 .way li::before{width:5pt;height:5pt;top:-3.2pt}
 .ahead{break-before:page}
 .ahead h2{border-top:0;padding-top:0;margin-top:0}
 .answers{display:grid;grid-template-columns:1.15fr 1fr;gap:0 7mm;break-inside:avoid}
 table{font-size:8pt}
 th,td{padding:.3mm 2.5mm .3mm 0}
 .words,.again,.small,.fine,.fine table,figcaption,footer{font-size:7.1pt;line-height:1.22}
 .targets tr{display:grid;grid-template-columns:23mm 22mm 24mm 1fr;gap:0 2mm;border-top:1px solid var(--rule);padding:.2mm 0}
 .targets thead tr{border-top:0}
 .targets th,.targets td{border:0;padding:0}
 .targets .words{grid-column:1/-1}
 .targets thead .words{display:none}
 .facts th{width:20mm}
 .facts th,.facts td{padding:.25mm 2mm .25mm 0}
 .plots{grid-template-columns:repeat(3,1fr);gap:5mm}
 figure h3{font-size:8.3pt;margin-bottom:.5mm}
 .pictures{break-inside:avoid;margin-top:2mm}
 .pictures h2{display:none}
 .screen,figcaption,figure.ledger{display:none}
 .fine h2{display:none}
 .remark h3,.remark ul,.remark li{display:inline;font-size:inherit}
 .remark h3::after{content:": "}
 .remark li:not(:last-child)::after{content:"; "}
 footer{margin-top:1.5mm;padding-top:.6mm}
 a{text-decoration:none}
 tr{break-inside:avoid}
}
"""

_WORD = {"stop": "STOP", "caution": "CAUTION", "note": "NOTE", "always": ""}
_MEANING = {"original_gravity": "how heavy the wort is against water, with all its sugar", "final_gravity": "the same when the yeast is done",
            "bitterness_bu": "10 is hardly bitter, 60 very bitter"}  # the last: common practice, no source
_MODELS = {"utilisation": ("bitterness", "bitterness.utilisation"), "altitude_factor": ("boiling point and bitterness", "bitterness.altitude_factor"),
           "colour": ("colour", "colour.from_grist"), "gravity": ("gravity and extract", "extract.to_gravity"), "residual": ("gas left from fermentation", "carbonation.residual")}


def _e(text: str) -> str:
    """Text as text, whatever characters it holds; a number stays with its unit."""
    return re.sub(r"(?<=\d) (?=(?:°|%|L\b|mL\b|gal\b|g\b|kg\b|oz\b|lb\b|bar\b|psi\b|min\b|BU\b|SRM\b|EBC\b|vol))", "\u00a0", escape(text.replace(" degC", " °C")))


def _colours(palette: dict[str, str]) -> str:
    return ":root{" + ";".join(f"--{name}:{value}" for name, value in palette.items()) + "}"


def _css() -> str:
    return (f"{_colours(LIGHT)}{_STYLE}@media (prefers-color-scheme:dark){{{_colours(DARK)}}}"
            f"@media print{{{_colours(LIGHT)}}}{_PRINT}")


# ----------------------------------------------------------------------------------------------- parts

def _cautions(cautions: list[Caution]) -> str:
    parts = []
    for c in cautions:
        if c.first is not None and c.level == "always":
            continue  # told before: _again
        word = f'<b class="word">{_WORD[c.level]}</b> ' if _WORD.get(c.level) else ""
        told = _e(c.text) if c.first is None else f'as in <a href="#step-{c.first}">step {c.first}</a>.'
        parts.append(f'<p class="mind {_e(c.level)}">{word}<b>{_e(c.title[0].upper() + c.title[1:])}.</b> {told}</p>')
    return "".join(parts)


def _again(cautions: list[Caution]) -> str:
    """The cautions that always apply and whose text stands at an earlier step: named where they apply again."""
    steps: dict[int, list[str]] = {}
    for c in cautions:
        if c.first is not None and c.level == "always":
            steps.setdefault(c.first, []).append(c.title)
    if not steps:
        return ""
    told = "; ".join(f'{_e(_words.listed(titles))}, as in <a href="#step-{step}">step {step}</a>' for step, titles in steps.items())
    return f'<p class="again"><b>Mind:</b> {told}.</p>'


def _gather(groups: list[tuple[str, list[Item]]]) -> str:
    if not groups:
        return ""
    blocks = []
    for title, items in groups:
        rows = "".join(f'<li><span class="tick"></span><b>{_e(i.amount)}</b> <span>{_e(i.name)}{_detail(i.detail)}</span></li>' for i in items)
        blocks.append(f"<div><h3>{_e(title)}</h3><ul>{rows}</ul></div>")
    return f'<section><h2>Weigh out and gather</h2><div class="gather">{"".join(blocks)}</div></section>'


def _detail(text: str) -> str:
    return f' <span class="detail">{_e(text)}</span>' if text else ""


def _clock(story: Story, minutes: float) -> str:
    if story.start is not None:
        return _words.clock_text(story.start + minutes)
    return f"{round(minutes) // 60}:{round(minutes) % 60:02d}"


def _goes(step: StepStory, story: Story, boil: float) -> str:
    """What goes in at a step, with the minutes left and the time at which that is."""
    if not step.items or step.do in ("water", "top_up", "pitch", "prime"):
        return ""
    rows = []
    for i in step.items:
        timed = mark = ""
        if i.minutes is not None and step.begin is not None:
            mark = ' class="timed"'
            timed = f'<span class="at">{_clock(story, step.begin + boil - i.minutes)}</span><span class="left">{i.minutes:g} min left</span>'
        rows.append(f'<li{mark}><span class="tick"></span>{timed}<b>{_e(i.amount)}</b> <span>{_e(i.name)}{_detail(i.detail)}</span></li>')
    return f'<ul class="goes">{"".join(rows)}</ul>'


def _readings(step: StepStory, story: Story, forecast: Forecast) -> str:
    """What the instruments should show, each beside an empty box for what they do show."""
    rows = []
    later = ", at the end" if step.do == "ferment" else ""
    if step.hydrometer:
        number, _, how = step.hydrometer.partition(" (")
        rows.append((f"hydrometer {how.removeprefix('sample ').rstrip(')')}".rstrip() + later, number))
    if step.volume:
        amount, _, warm = step.volume.partition(" at ")
        rows.append((f"volume at {warm}", amount))
    for label, value in step.expect:
        amount, over, air = value.partition(" above ")
        if label != "alcohol":
            rows.append((label + over + air, amount))
    if step.do == "bottle":
        rows.append(("bottles", str(forecast.package["bottles"])))
    if step.do == "keg":
        rows.append(("in the keg", story.units.volume_text(forecast.results["volume_packaged_l"])))
    if not rows:
        return ""
    cells = "".join(f'<tr><th scope="row">{_e(label)}</th><td class="val">{_e(value)}</td><td class="slot"><span></span></td></tr>' for label, value in rows)
    return f'<table class="reads"><tbody>{cells}</tbody></table>'


def _facts(rows: list[tuple[str, str]]) -> str:
    return '<table class="facts"><tbody>' + "".join(f'<tr><th scope="row">{_e(label)}</th><td>{_e(value)}</td></tr>' for label, value in rows) + "</tbody></table>"


def _step(step: StepStory, story: Story, forecast: Forecast, boil: float) -> str:
    when = f"Day {step.day:.3g}" if step.day is not None else _clock(story, step.begin or 0.0)
    # Nobody reads alcohol off an instrument on the day: it is told, and has no box.
    actions = "".join(f"<p>{_e(a)}</p>" for a in [*step.actions, *(f"Alcohol by then: {value}." for label, value in step.expect if label == "alcohol")])
    return (f'<li class="step" id="step-{step.number}"><p class="when">{when}</p><div class="what"><h3><span class="no">{step.number}</span>{_e(step.title)}</h3>'
            f"{actions}{_again(step.cautions)}{_goes(step, story, boil)}</div>{_readings(step, story, forecast)}{_cautions(step.cautions)}</li>")


def _steps(steps: list[StepStory], story: Story, forecast: Forecast) -> str:
    minutes = {s["number"]: s["minutes"]["value"] for s in forecast.batch.steps if s["do"] == "boil"}
    return "<ol>" + "".join(_step(s, story, forecast, minutes.get(s.number, 0.0)) for s in steps) + "</ol>"


def _days(steps: list[StepStory], forecast: Forecast) -> str:
    """The days ahead at a glance: when something has to be done."""
    names = {"ferment": "fermentation", "rack": "second vessel", "dry_hop": "dry hops", "prime": "priming", "bottle": "bottling", "keg": "kegging", "condition": "conditioning", "serve": "drinking",
             "chill": "cooling", "dissolve": "more extract", "top_up": "more water"}
    marks: dict[float, list[str]] = {}
    end = 0.0
    for s in steps:
        if s.day is None or s.do == "note":
            continue
        if s.do in names and names[s.do] not in marks.setdefault(s.day, []):
            marks[s.day].append(names[s.do])
        days = forecast.batch.steps[s.number - 1].get("days")
        end = max(end, s.day + (days["value"] if days else 0.0))
    if forecast.package is not None and not any(s.do == "serve" for s in steps):
        marks.setdefault(end, []).append("drinking")
    marks = {day: words for day, words in marks.items() if words}
    if not marks:
        return ""
    return '<ul class="way">' + "".join(f"<li><b>Day {day:.3g}</b>{_e(', '.join(words))}</li>" for day, words in sorted(marks.items())) + "</ul>"


def _targets(story: Story, forecast: Forecast) -> str:
    if not story.targets:
        return ""
    swatch = _swatch(story, forecast)
    rows = []
    for t in story.targets:
        words = "; ".join(x for x in (_MEANING.get(t.key, ""), t.remark) if x)
        rows.append(f'<tr><th scope="row">{_e(t.label)}</th><td class="figure">{_e(t.value)}{" " + swatch if t.key == "colour_srm" else ""}</td>'
                    f'<td class="others">{_e(t.others)}</td><td class="by">{_e(t.model)}</td><td class="words">{_e(words)}</td></tr>')
    return ('<section><h2>What it should become</h2><table class="targets"><thead><tr><th scope="col">target</th><th scope="col">this card</th><th scope="col">all formulas</th>'
            f'<th scope="col">by</th><th scope="col" class="words">in words</th></tr></thead><tbody>{"".join(rows)}</tbody></table>'
            '<p class="small">All formulas: what the published ones make of it. Far apart means rough.</p>'
            f"{_cautions(story.target_cautions)}</section>")


def _swatch(story: Story, forecast: Forecast, attributes: str = "") -> str:
    """The colour of the beer, where a colour is told. A border, because browsers leave backgrounds out on paper."""
    rgb = forecast.results["swatch"]
    if not rgb or not any(t.key == "colour_srm" for t in story.targets):
        return ""
    return f'<span class="swatch" style="border-color:rgb({",".join(str(int(c)) for c in rgb)})"{attributes}></span>'


def _package(p: PackageStory | None) -> str:
    if p is None:
        return ""
    level = ("note", "caution", "stop")[p.level]
    remark = f'<p class="small">{_e(p.remark)}</p>' if p.remark else ""
    return (f'<section><h2>{_e(p.headline)}</h2>{_facts(p.rows)}{remark}<p class="mind {level}"><b>{_e(p.verdict)}</b></p>'
            '<p class="small">Pressures are above the air outside.</p></section>')


def _pictures(forecast: Forecast, story: Story) -> str:
    try:
        drawn = _plots.pictures(forecast, story.units)
    except ImportError:
        return ('<section><h2>In pictures</h2><p>The pictures are missing, because matplotlib is not installed: '
                '<code>pip install "wortmath[plot]"</code> brings it, then make the card again.</p></section>')
    if not drawn:
        return ""
    figures = "".join(f'<figure class="{p.key}"><h3>{_e(p.title)}</h3>{p.svg}<figcaption>{_e(p.caption)}</figcaption></figure>' for p in drawn)
    return f'<section class="pictures"><h2>In pictures</h2><div class="plots">{figures}</div></section>'


def _additions(additions: list[Addition]) -> str:
    if not additions:
        return ""
    rows = "".join(f'<tr><th scope="row">{_e(a.name)}</th><td>{_e(a.when)}</td><td class="right">{_e(a.alpha)}</td><td class="right">{_e(a.used)}</td>'
                   f'<td class="right">{f"{a.bu:.0f}" if a.used != "-" else "-"}</td><td class="right">{_e(a.others)}</td></tr>' for a in additions)
    return ('<h3>Hop by hop</h3><div class="wide"><table><thead><tr><th scope="col">hop</th><th scope="col">when</th><th scope="col" class="right">alpha acids</th>'
            f'<th scope="col" class="right">of it used</th><th scope="col" class="right">BU</th><th scope="col" class="right">all formulas</th></tr></thead><tbody>{rows}</tbody></table></div>')


def _used_models(forecast: Forecast) -> str:
    from ._model import by_path
    rows = []
    for key, name in forecast.models.items():
        what, family = _MODELS.get(key, (key.replace("_", " "), ""))
        try:
            model = by_path(f"{family}.{name}")
            source = f"{model.source} ({model.status})"
        except KeyError:
            source = ""
        rows.append(f'<tr><th scope="row">{_e(what)}</th><td>{_e(name)}</td><td>{_e(source)}</td></tr>')
    return ('<h3>Formulas of this card</h3><div class="wide"><table><thead><tr><th scope="col">for</th><th scope="col">formula</th><th scope="col">source</th></tr></thead>'
            f'<tbody>{"".join(rows)}</tbody></table></div>')


def _fine(story: Story, forecast: Forecast) -> str:
    units = story.units
    flows = [("in", ", ".join(f"{n} {units.ledger_text(g)}" for n, g in story.ledger_in)),
             ("out", ", ".join(f"{n} {units.ledger_text(g)}" for n, g in story.ledger_out)),
             ("kept", units.ledger_text(story.kept)),
             ("difference", "less than a milligram" if abs(story.imbalance) < 1e-3 else f"{abs(story.imbalance):.3g} g")]
    checks = [_additions(story.additions)]
    if story.by_model:
        checks.append("<h3>Formula by formula</h3>" + _facts([(label, ", ".join(f"{n} {v}" for n, v in values)) for label, values in story.by_model]))
    checks += [_used_models(forecast), "<h3>Ledger</h3>" + _facts(flows)]
    remarks = "".join(f'<div class="remark"><h3>{title}</h3><ul>' + "".join(f"<li>{_e(x)}</li>" for x in entries) + "</ul></div>"
                      for title, entries in (("Not in the file, taken as usual", story.assumed), ("Outside the range that was checked", story.outside), ("Not computed", story.reasons)) if entries)
    return f'<section class="fine"><h2>For those who check</h2><div class="screen">{"".join(checks)}</div>{remarks}</section>'


def page(forecast: Forecast, units: str | None = None, start: str | None = None) -> str:
    """The card as one HTML file; `units` "us", "metric" or None for those of the file, `start` the time of day "HH:MM" of the first step."""
    from . import __version__
    story = _words.tell(forecast, units, None if start is None else _words.parse_clock(start))
    today, ahead = [s for s in story.steps if s.day is None], [s for s in story.steps if s.day is not None]
    notes = "".join(f"<p>{_e(line)}</p>" for line in (story.notes or "").split("\n") if line)
    swatch = _swatch(story, forecast, ' role="img" aria-label="colour of the beer"')
    alerts = "".join(f'<p class="mind {_e(level)}"><b class="word">{_WORD.get(level, level.upper())}</b> {_e(text)}</p>' for level, text in story.alerts)
    title = f"{story.name}: kettle card" if story.name else "Kettle card"
    timed = "time of day" if story.start is not None else "hours and minutes from the start"
    body = [f'<header><h1>{_e(story.name) or "Kettle card"}</h1>{notes}<ul class="sum">{"".join(f"<li>{_e(part)}</li>" for part in story.summary)}{f"<li>{swatch}</li>" if swatch else ""}</ul>{alerts}'
            f'<p class="small">{_e(story.place)} {_e(story.instruments)}</p></header>',
            _gather(story.gather)]
    if today:
        body.append(f'<section><h2>Brewing day</h2><p class="small">Times: {timed}. {_e(story.timing)} Beside what to expect is a box for what you read.</p>'
                    f"{_cautions(story.before)}{_steps(today, story, forecast)}</section>")
    if ahead:
        body.append(f'<section class="ahead"><h2>Days ahead <span class="small">counted from the brewing day, which is day 0</span></h2>{_days(ahead, forecast)}{_steps(ahead, story, forecast)}</section>')
    answers = _targets(story, forecast) + _package(story.package)
    body += [f'<div class="answers">{answers}</div>' if answers else "", _pictures(forecast, story), _fine(story, forecast)]
    return ('<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n'
            f'<meta name="color-scheme" content="light dark">\n<title>{escape(title)}</title>\n<style>{_css()}</style>\n</head>\n<body>\n<main>\n'
            + "\n".join(part for part in body if part)
            + f"\n<footer><p>Made by wortmath {escape(__version__)} from published formulas. Measure on the day: what your instruments show is what counts. Local codes and the makers' data come first.</p></footer>"
            "\n</main>\n</body>\n</html>\n")
