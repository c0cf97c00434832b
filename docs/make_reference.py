"""Write docs/reference: what every family answers, with which models, and which one to take.

    python docs/make_reference.py

Everything comes from the catalogue, from docs/brewing.toml and from the checks in tests/reference.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import wortmath as wm
from evidence import by_model, expression, facts, points
from pages import Page, figure, save
from spread import amount, families, ranges, shown, spread

from wortmath import _model

FOLDER = Path(__file__).resolve().parent / "reference"

TOPICS = {
    "water": "Pure water: density, boiling, saturation, oxygen", "atmosphere": "Air pressure and altitude", "gravity": "The gravity scales and what goes from one to another",
    "extract": "Gravity and degrees Plato, potentials, yields, hot volumes", "hydrometer": "Correcting and calibrating a hydrometer", "balance": "Blending, diluting, boiling down, strengthening",
    "thermal": "Heat: mixing, chilling, ice, specific heats", "ethanol": "Mixtures of ethanol and water", "attenuation": "From two gravities to alcohol and extract",
    "beer": "The finished beer: density, strength, energy", "labelling": "What labels and duty ask for", "refractometer": "Reading wort and beer with a refractometer",
    "bitterness": "Bitterness from hops", "hop": "Hops before the kettle: alpha acids and ageing", "colour": "Colour: scales, recipes, and what a screen shows",
    "carbonation": "Carbon dioxide in water and beer", "priming": "Priming with sugar or wort", "package": "Pressure in bottles and kegs", "dispense": "Beer lines and gas blends",
    "room": "Carbon dioxide in the room", "kettle": "The boil", "mash": "Mash temperatures and volumes", "steep": "Steeped grain", "yeast": "Pitching yeast",
    "fermentation": "Course and heat of a fermentation", "liquor": "Brewing water: ions, alkalinity, acid, mash pH", "cleaning": "Cleaning solutions"}


def _range(i: Any) -> str:
    return ", ".join(f"`{w}`" for w in i.words) if i.kind == "word" else "true or false" if i.kind == "truth" else _model.range_text(*i.validated)


def _default(i: Any) -> str:
    return "" if i.required else f"{i.default:g}" if isinstance(i.default, float) else f"`{i.default}`" if isinstance(i.default, str) else str(i.default).lower()


def _possible(i: Any) -> str:
    return "" if i.kind in ("word", "truth") else "no further" if i.possible == i.validated else _model.range_text(*i.possible)


def _valid_in_short(f: dict[str, Any]) -> str:
    """The validated ranges that limit anything."""
    parts = [f"{i.name} {_model.range_text(*i.validated)}" for i in f["inputs"] if i.kind in ("number", "optional", "list") and (i.required or len(f["inputs"]) < 3)]
    return "; ".join(p for p in parts if not p.endswith(" any")) or "any"


def _backed(path: str) -> str:
    own = by_model()[path]
    outside = sum(len(c.rows) for c in own if c.table.outside)
    derived = sum(len(c.rows) for c in own if not c.table.outside)
    parts = [f"{outside} rows of printed tables or measurements"] if outside else []
    parts += [f"{derived} rows computed independently"] if derived else []
    n = points()[path].rows if path in points() else 0
    parts += [f"{n} random points of an independent implementation"] if n else []
    return ", ".join(parts) or "nothing yet"


def _difference(page: Page, family: str) -> None:
    s = spread(family)
    if s is None:
        return
    told = [d for d in s.at if len(d.values) > 1]
    if not told:
        return
    names = [n for n in s.curves if any(n in d.values for d in told)]
    unit = f" {s.unit}" if s.unit not in ("ratio", "fraction") and not s.unit.startswith("SG") else ""
    page.text("**How far they differ**, " + (f"with {s.given}, " if s.given else "") + f"over {s.over}" + (f" ({ranges()[family]['why']})" if "why" in ranges()[family] else "") + ":")
    rows = [[f"`{n}`"] + [shown(d.values[n], s.result_unit, d.width) if n in d.values else "" for d in told] for n in names]
    rows.append(["**widest apart**"] + [" ".join(amount(d.width, s.result_unit)).strip() for d in told])
    page.table(["model", *(f"{d.x:g}{unit}" for d in told)], rows, range(1, len(told) + 1))
    if s.apart:
        page.text("Left out: " + "; ".join(f"`{n}` ({why})" for n, why in s.apart.items()) + ".")


def _model_section(page: Page, path: str) -> None:
    f = facts(path)
    m = expression.model(path)
    call = f"{path}({', '.join(i.name + ('' if i.required else f' = {_default(i)}'.replace('`', '')) for i in f['inputs'])})"
    page.heading(3, f"`{path}`" + (" (default)" if f["is_default"] else ""), path)
    if f["use"]:
        page.text(f"**Use** {f['use']}.")
    page.code(call)
    page.formula(m.formula, fold="the formula, which is long" if len(m.formula) > 1500 else "")
    if f["inputs"]:
        page.table(["argument", "unit", "validated", "computed", "default", "what it is"],
                   [[f"`{i.name}`", i.unit if i.kind not in ("word", "truth") else "", _range(i), _possible(i), _default(i), "" if i.kind == "word" else i.noun] for i in f["inputs"]])
    outputs = f["outputs"]
    if outputs[0].name is None:
        o = outputs[0]
        page.text(f"**Result**: {o.noun} [{o.unit}]" + (f": {', '.join(o.words)}" if o.words else "") + ".")
    else:
        page.text("**Results**: " + "; ".join(f"`{o.name}`, {o.noun} [{o.unit}]" for o in outputs) + ".")
    told = [("Accuracy", f["accuracy"]), ("Together", f["holds_when"]), ("Refused", f["refusal"]), ("Notes and traps", f["note"]), ("**Care**", f["danger"])]
    page.items([f"{label}: {words}." if label.startswith("**") else f"**{label}**: {words}." for label, words in told if words]
               + [f"**Source**: {f['source']}. Evidence: {f['status']}.", f"**Checked against**: {_backed(path)}."])


def topic_page(topic: str) -> Page:
    page = Page()
    page.text("[all topics](index.md)")
    page.heading(1, f"{topic}: {TOPICS[topic][0].lower()}{TOPICS[topic][1:]}")
    own = {family: paths for family, paths in families().items() if family.split(".")[0] == topic}
    page.table(["question", "family", "models"], [[facts(p[0])["question"], f"[{family.split('.')[1]}](#{family})", str(len(p))] for family, p in own.items()], [2])
    for family, paths in own.items():
        page.heading(2, family, family)
        page.text(f"**{facts(paths[0])['question']}**")
        if len(paths) > 1:
            if not facts(paths[0])["family_has_default"]:
                page.text("The models answer different questions; there is no default, one has to be named.")
            page.table(["model", "when to use it", "validated for", "evidence"],
                       [[f"[{facts(p)['name']}](#{p})" + (" (default)" if facts(p)["is_default"] else ""), facts(p)["use"], _valid_in_short(facts(p)), facts(p)["status"]] for p in paths])
            _difference(page, family)
        for p in paths:
            _model_section(page, p)
    return page


def index_page() -> Page:
    page = Page()
    page.heading(1, "Reference")
    page.text(f"{len(by_model())} models in {len(families())} families. A family is one question; its models are the published answers. Calling a family takes its default model; "
              "`family.model(...)` names one; `family.compare(...)` asks all. The spelling is the same in Python and in C++, `wortmath eval` does it in the shell.")
    page.items(["**validated**: where the source supports the model. Outside, a number alone is refused with a sentence, an array gets NaN, `policy=\"extrapolate\"` computes it unvouched.",
                "**computed**: as far as `extrapolate` goes; beyond, the input is impossible and always refused.",
                "**evidence**: *primary*: original or official text read; *secondary*: read in a copy or quotation; *memory*: recalled, not looked up; *derived*: this project's own fit or derivation.",
                "A bare number is in the unit shown. What stands behind every model is in the [validation report](../validation/index.md)."])
    page.table(["topic", "what it is about", "families", "models"],
               [[f"[{t}]({t}.md)", TOPICS[t], str(sum(f.split('.')[0] == t for f in families())), str(sum(p.split('.')[0] == t for p in by_model()))] for t in wm.topics], [2, 3])
    page.heading(2, "Questions")
    for topic in wm.topics:
        page.text(f"**[{topic}]({topic}.md)**")
        page.items([f"{facts(p[0])['question']} [{family}]({topic}.md#{family})" for family, p in families().items() if family.split(".")[0] == topic])
    return page


def pages() -> dict[str, str]:
    """The text of every page by the name of its file."""
    found = {f"{topic}.md": topic_page(topic).markdown() for topic in wm.topics}
    found["index.md"] = index_page().markdown()
    return found


def main() -> None:
    made = pages()
    save(FOLDER, made)
    print(f"{len(made)} pages, {sum(map(len, made.values())) / 1e3:.0f} kB, in {FOLDER}")


if __name__ == "__main__":
    main()
