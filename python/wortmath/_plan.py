"""wortmath plan and wortmath rescale: amounts for targets, and a batch for another kettle."""

from __future__ import annotations

import json
import os
from html import escape
from typing import Any

from . import _core
from ._card import WIDTH, wrap

RESCALE = ("factor", "volume", "evaporation", "leave", "dead_space", "rack_leave", "packaging_loss", "largest_boil", "altitude", "top_up_temperature")
LABELS = {"original_gravity": ("original gravity", ".4f", ""), "original_extract_degp": ("original extract", ".2f", " degP"), "final_gravity": ("final gravity", ".4f", ""),
          "alcohol_by_volume": ("alcohol", ".2f", " % vol"), "alcohol_by_volume_before_priming": ("alcohol before priming", ".2f", " % vol"), "alcohol_by_mass": ("alcohol by mass", ".2f", " % mass"),
          "bitterness_bu": ("bitterness", ".1f", " BU"), "bitterness_ratio": ("bitterness ratio", ".3f", ""), "colour_srm": ("colour", ".1f", " SRM"), "colour_ebc": ("colour", ".1f", " EBC"),
          "volume_packaged_l": ("packaged volume", ".2f", " L"), "cells_needed": ("cells needed", ".3g", ""), "dry_yeast_g": ("dry yeast", ".1f", " g"), "energy_kj_per_l": ("energy", ".0f", " kJ/L"),
          "carbonation_vol": ("carbonation", ".2f", " vol"), "residual_vol": ("CO2 before priming", ".2f", " vol"), "priming_sugar_g": ("priming sugar", ".1f", " g")}


class Plan:
    """Amounts that reach the targets, or come as close as can be. `toml` is the batch file with these amounts."""

    def __init__(self, data: dict[str, Any], source: str | None = None) -> None:
        self._data = data
        self.source = source

    def __getattr__(self, name: str) -> Any:
        try:
            return self.__dict__["_data"][name]
        except KeyError:
            raise AttributeError(f'a plan has no "{name}"; it has {", ".join(self.__dict__.get("_data", {}))}') from None

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self._data]

    def __repr__(self) -> str:
        return f"<plan: {'all targets met' if self._data['met'] else 'not all targets can be met'}, {len(self._data['amounts'])} amounts>"

    @property
    def batch(self) -> Any:
        """The batch with its new amounts."""
        from . import batch
        return batch.read_text(self._data["toml"])

    @property
    def sentences(self) -> list[str]:
        """What cannot be reached, and the closest to it."""
        return [*(t["sentence"] for t in self._data["targets"] if t["sentence"]), *self._data.get("sentences", [])]

    def to_dict(self) -> dict[str, Any]:
        return self._data

    def to_json(self, indent: int | None = 2) -> str:
        return json.dumps(self._data, indent=indent, ensure_ascii=False, allow_nan=False)

    def text(self) -> str:
        """What to tell, 80 columns."""
        return _text(self)


def plan(text: str, source: str | None = None) -> Plan:
    return Plan(_core.plan(text), source)


def rescale(text: str, source: str | None = None, **request: float | None) -> Plan:
    unknown = [k for k in request if k not in RESCALE]
    if unknown:
        raise TypeError(f'rescale has no argument "{unknown[0]}"; it takes {", ".join(RESCALE)}')
    return Plan(_core.rescale(text, request), source)


# ------------------------------------------------------------------------------------------------ text and page

def shown(key: str, value: float | None) -> str:
    if value is None:
        return "none"
    if key.endswith("attenuation"):
        return f"{100 * value:.1f} %"
    _, form, unit = LABELS.get(key, (key, ".4g", " bar" if key.endswith("_bar") else ""))
    return f"{value:{form}}{unit}"


def label(key: str) -> str:
    return LABELS.get(key, (key.replace("_", " "),))[0]


def amount(a: dict[str, Any], which: str) -> str:
    """An amount in the file's unit, for reading."""
    number, _, unit = str(a[f"{which}_text"]).partition(" ")
    return f"{float(number):.5g}" + (f" {unit}" if unit else "")


def owner(a: dict[str, Any]) -> str:
    return f"{a['name']}, {a['key']}" if a["name"] else f"{a['do']}, {a['key']}"


def outside(o: dict[str, Any]) -> str:
    return f"{o['model']} is used outside its checked range: {o['argument']} = {o['value']:.5g}" + (f" in step {o['step']}" if o["step"] else "")


def _lead(p: Plan) -> str:
    n = p.iterations
    return ("All targets are met" if p.met else "Not all targets can be met") + f", found in {n} step{'s' if n != 1 else ''}."


def _text(p: Plan) -> str:
    lines = [_lead(p), "", "TARGETS"]
    rows = [(label(t["result"]), "met" if t["met"] else "NOT MET", t["text"], shown(t["result"], t["reached"])) for t in p.targets]
    widths = [max(len(r[i]) for r in rows) for i in range(4)]
    lines += [f"  {a:<{widths[0]}}  wanted {w:>{widths[2]}}  gives {g:>{widths[3]}}  {m}" for a, m, w, g in rows]
    for sentence in p.sentences:
        lines += wrap(sentence[:1].upper() + sentence[1:] + ".", "  ")
    lines += ["", "AMOUNTS"]
    cells = [(str(a["step"]), owner(a), amount(a, "before"), amount(a, "after"), f"{100 * (a['after'] / a['before'] - 1):+.1f} %" if a["before"] else "",
              f"at its {a['at_limit']}" if a["at_limit"] else "") for a in p.amounts]
    if cells:
        w = [max(len(c[i]) for c in cells) for i in range(6)]
        w[1] = min(w[1], WIDTH - 24 - w[2] - w[3] - w[4] - w[5])
        for c in cells:
            name = c[1] if len(c[1]) <= w[1] else c[1][:w[1] - 3] + "..."
            lines.append(f"  step {c[0]:>2}  {name:<{w[1]}}  {c[2]:>{w[2]}} -> {c[3]:>{w[3]}}  {c[4]:>{w[4]}}  {c[5]}".rstrip())
    if p.newly_outside_range:
        lines += ["", "OUTSIDE THE CHECKED RANGE, as the file was not before"]
        for o in p.newly_outside_range:
            lines += wrap(outside(o) + "; nobody vouches for the result.", "  ")
    if p.new_cautions:
        lines += ["", "CAUTIONS that the file did not have before"]
        for c in p.new_cautions:
            lines += wrap(c["text"], f"  {c['level'].upper()}  " + (f"step {c['step']}: " if c["step"] else ""), "    ")
    return "\n".join(lines) + "\n"


def document(title: str, body: str) -> str:
    """A plain page in the looks of the card."""
    from . import __version__
    from ._html import _css
    return ('<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n'
            f'<meta name="color-scheme" content="light dark">\n<title>{escape(title)}</title>\n<style>{_css()}.answer{{border-collapse:collapse;width:100%}}'
            ".answer th,.answer td{text-align:left;padding:.2rem .8rem .2rem 0;border-bottom:1px solid var(--rule)}.answer .n{text-align:right;white-space:nowrap}</style>\n</head>\n"
            f"<body>\n<main>\n{body}\n<footer><p>Made by wortmath {escape(__version__)} from published formulas. Measure on the day: what your instruments show is what counts. "
            "Local codes and the makers' data come first.</p></footer>\n</main>\n</body>\n</html>\n")


def table(head: list[str], rows: list[list[str]], numbers: set[int]) -> str:
    def cells(tag: str, row: list[str]) -> str:
        return "".join(f"<{tag}{' class=n' if i in numbers else ''}>{escape(x)}</{tag}>" for i, x in enumerate(row))
    body = "".join(f"<tr>{cells('td', r)}</tr>" for r in rows)
    return f'<table class="answer"><thead><tr>{cells("th", head)}</tr></thead><tbody>{body}</tbody></table>' if rows else ""


def page(p: Plan, name: str) -> str:
    parts = [f"<header><h1>{escape(name)}: plan</h1><p>{escape(_lead(p))}</p></header>", "<section><h2>Targets</h2>",
             table(["result", "wanted", "gives", ""], [[label(t["result"]), t["text"], shown(t["result"], t["reached"]), "met" if t["met"] else "not met"] for t in p.targets], {1, 2}),
             *(f'<p class="mind caution">{escape(s[:1].upper() + s[1:])}.</p>' for s in p.sentences), "</section>", "<section><h2>Amounts</h2>",
             table(["step", "amount", "before", "now", "change", ""], [[str(a["step"]), owner(a), amount(a, "before"), amount(a, "after"),
                   f"{100 * (a['after'] / a['before'] - 1):+.1f} %" if a["before"] else "", f"at its {a['at_limit']}" if a["at_limit"] else ""] for a in p.amounts], {2, 3, 4}), "</section>"]
    if p.newly_outside_range:
        parts.append("<section><h2>Outside the checked range</h2>" + "".join(f'<p class="mind caution">{escape(outside(o))}; nobody vouches for the result.</p>' for o in p.newly_outside_range) + "</section>")
    if p.new_cautions:
        parts.append("<section><h2>New cautions</h2>" + "".join(f'<p class="mind {escape(c["level"])}"><b class="word">{escape(c["level"].upper())}</b> {escape(c["text"])}</p>' for c in p.new_cautions) + "</section>")
    return document(f"{name}: plan", "\n".join(parts))


# ------------------------------------------------------------------------------------------------ the commands

def _read(path: str) -> tuple[str, str]:
    """The text of a batch file, checked by the reader, and the name of the batch."""
    from . import batch
    from ._cli import Refusal
    try:
        b = batch.read(path)
        return b.text, b.name
    except (ValueError, OSError) as e:
        raise Refusal(str(e)) from None


def outputs(options: Any, text: str, numbers: str, page_of: Any, source: str | None = None, code: int = 0) -> Any:
    """Text, JSON and page as the options ask: `-` is standard output, in place of the text."""
    from ._cli import Answer, Refusal
    if options.json == "-" and options.html == "-":
        raise Refusal("--json - and --html - both want standard output; give one of them a file name")
    answer = Answer(text, code=code)
    for name, wanted, content in (("--json", options.json, lambda: numbers + "\n"), ("--html", options.html, page_of)):
        if wanted is None:
            continue
        if wanted == "":
            raise Refusal(f"{name} needs a file name")
        if source and wanted != "-" and os.path.exists(wanted) and os.path.exists(source) and os.path.samefile(wanted, source):
            raise Refusal(f"{name}: {wanted} is the batch file itself; it would be lost")
        if wanted == "-":
            answer.text = content()
        else:
            answer.files.append((wanted, content()))
    answer.remark = "".join(f"saved {path}\n" for path, _ in answer.files)
    return answer


def _options(parser: Any) -> None:
    parser.add_argument("--write", metavar="FILE", help="save the batch file with its new amounts; its remarks and units stay")
    parser.add_argument("--json", metavar="FILE", help="also save all numbers as JSON; - writes them to standard output instead of the text")
    parser.add_argument("--html", metavar="FILE", help="also save a page; - writes it to standard output instead of the text")


def _answer(p: Plan, options: Any, name: str) -> Any:
    from ._cli import Refusal
    answer = outputs(options, p.text(), p.to_json(), lambda: page(p, name), options.file, 0 if p.met else 1)
    if options.write is not None:
        if options.write == "":
            raise Refusal("--write needs a file name")
        if not p.met:
            answer.remark += f"not saved: {options.write}, since not all targets are met\n"
        elif options.write == "-":
            if options.json == "-" or options.html == "-":
                raise Refusal("--write - and another - both want standard output; give one of them a file name")
            answer.text = p.toml
        else:
            answer.files.append((options.write, p.toml))
            answer.remark += f"saved {options.write}\n"
            if answer.text and options.json != "-" and options.html != "-":
                answer.text += f"\nSaved; see the card: wortmath card {options.write}\n"
    return answer


def plan_command(arguments: list[str]) -> Any:
    from ._cli import Refusal, _parser
    parser = _parser("plan", "Amounts that reach targets. The batch file says which: [[target]] with result and value, [[free]] with name or step, and key.\n"
                     "Of all answers it takes the one with the smallest relative change.",
                     'Example, at the end of a batch file:\n\n  [[target]]\n  result = "original_gravity"\n  value = "1.050 SG"\n\n  [[free]]\n  name = "pale malt syrup"\n  key = "mass"\n  most = "3 kg"\n\n'
                     "Exit status: 0; 1 if a target cannot be met (then the closest is shown); 2 for bad input.")
    parser.add_argument("file", metavar="FILE", help="a batch file with [[target]] and [[free]]")
    _options(parser)
    options = parser.read(arguments)
    text, name = _read(options.file)
    try:
        p = plan(text, options.file)
    except ValueError as e:
        raise Refusal(str(e)) from None
    return _answer(p, options, name)


def rescale_command(arguments: list[str]) -> Any:
    from ._adjust import quantity
    from ._cli import Refusal, _parser
    parser = _parser("rescale", "A batch for another kettle and fermenter: the same gravity and bitterness (and colour, where grain and extract can move apart), the ingredients in proportion.",
                     'Example:  wortmath rescale my.toml --volume "38 L" --evaporation "3 L/h" --largest-boil "25 L" --write big.toml')
    parser.add_argument("file", metavar="FILE", help="a batch file")
    parser.add_argument("--factor", metavar="NUMBER", help="how many times the volume at pitching")
    units = {"volume": "L", "evaporation": "L/h", "leave": "L", "dead_space": "L", "rack_leave": "L", "packaging_loss": "L", "largest_boil": "L", "altitude": "m", "top_up_temperature": "degC"}
    words = {"volume": "the volume at pitching, at 20 degC", "evaporation": "what boils off", "leave": "what stays in the kettle at transfer", "dead_space": "what stays in the tun", "rack_leave": "what stays under the beer",
             "packaging_loss": "what is lost in packaging", "largest_boil": "the most the kettle may hold while it boils, hot", "altitude": "of the place", "top_up_temperature": "of the water of a top-up that has to be put in"}
    for key, unit in units.items():
        parser.add_argument(f"--{key.replace('_', '-')}", metavar=f'"N {unit}"', help=words[key])
    _options(parser)
    options = parser.read(arguments)
    text, name = _read(options.file)
    request: dict[str, float | None] = {}
    if options.factor is not None:
        try:
            request["factor"] = float(options.factor)
        except ValueError:
            raise Refusal(f'--factor: "{options.factor}" is not a number') from None
    for key, unit in units.items():
        given = getattr(options, key)
        if given is not None:
            request[key] = quantity(f"--{key.replace('_', '-')}", given, unit)
    try:
        p = rescale(text, options.file, **request)
    except ValueError as e:
        raise Refusal(str(e)) from None
    return _answer(p, options, name)
