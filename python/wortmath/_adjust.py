"""wortmath adjust: a reading that is off, and what can be done about it."""

from __future__ import annotations

import json
from html import escape
from typing import Any

from . import _core
from ._card import wrap

STAGES = ("before_boil", "after_boil", "in_fermenter", "after_fermentation")
_WANTED = ("target_gravity", "target_volume", "target_alcohol")
_KNOWN = (*_WANTED, "original_gravity", "bitterness", "colour", "evaporation", "attenuation", "solids", "extract_name", "extract_colour",
          "blend_gravity", "blend_volume", "blend_original_gravity", "blend_bitterness", "blend_colour")


class Adjustment:
    """The choices after a reading, each with its exact amount and what it makes of volume, gravity, bitterness, colour and alcohol."""

    def __init__(self, data: dict[str, Any]) -> None:
        self._data = data

    def __getattr__(self, name: str) -> Any:
        try:
            return self.__dict__["_data"][name]
        except KeyError:
            raise AttributeError(f'an adjustment has no "{name}"; it has {", ".join(self.__dict__.get("_data", {}))}') from None

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self._data]

    def __getitem__(self, what: str) -> dict[str, Any]:
        """The choice of this name, such as "add_water"."""
        for c in self._data["choices"]:
            if c["do"] == what:
                found: dict[str, Any] = c
                return found
        raise KeyError(f'there is no choice "{what}" here; there is {", ".join(c["do"] for c in self._data["choices"]) or "none"}')

    def __repr__(self) -> str:
        return f"<adjustment {self._data['stage']}: {', '.join(c['do'] for c in self._data['choices']) or 'nothing to choose'}>"

    def to_dict(self) -> dict[str, Any]:
        return self._data

    def to_json(self, indent: int | None = 2) -> str:
        return json.dumps(self._data, indent=indent, ensure_ascii=False, allow_nan=False)

    def text(self) -> str:
        return _text(self)


def adjust(stage: str, volume: float, gravity: float, temperature: float = 20.0, *, sample_temperature: float | None = None, calibration: float = 20.0, **more: Any) -> Adjustment:
    """What to do about a reading: litres at `temperature` (degC) and a gravity (SG 20/20).

    `stage`: before_boil, after_boil, in_fermenter, after_fermentation (then `original_gravity` too). Wanted: `target_gravity`,
    `target_volume`, `target_alcohol` (% vol, beer). Further keywords: `bitterness` (BU), `colour` (SRM), `evaporation` (L/h),
    `attenuation`, `solids`, `extract_name`, `extract_colour` (degL), and `blend_gravity`, `blend_volume`, `blend_original_gravity`,
    `blend_bitterness`, `blend_colour` of a second batch. `sample_temperature`: the hydrometer was read in a sample this warm.
    """
    unknown = [k for k in more if k not in _KNOWN]
    if unknown:
        raise TypeError(f'adjust has no argument "{unknown[0]}"; it takes {", ".join(_KNOWN)}')
    if sample_temperature is not None:
        from .batch import _model
        gravity = _model("hydrometer.correct.glass_and_liquid")(gravity, sample_temperature, calibration, policy="extrapolate")
    return Adjustment(_core.adjust({"stage": stage, "volume": float(volume), "gravity": float(gravity), "temperature": float(temperature), **more}))


def planned(batch: Any, stage: str) -> dict[str, Any]:
    """The state that a batch plans for a stage, and what its file says about what is at hand."""
    if stage not in STAGES:
        raise ValueError(f'"{stage}" is not a stage; known: {", ".join(STAGES)}')
    forecast = batch.forecast()
    steps = forecast.steps
    words = {"before_boil": ("boil",), "after_boil": ("boil", "stand"), "in_fermenter": ("pitch",), "after_fermentation": ("ferment",)}[stage]
    at = [n for n, s in enumerate(steps) if s["do"] in words]
    if stage == "before_boil":
        at = [n - 1 for n in at[:1] if n > 0]
    if not at or not steps[at[-1]]["after"]:
        raise ValueError(f"this batch has no {words[0]} step with something before it, so that it plans nothing for {stage}")
    more: dict[str, Any] = {}
    for s in batch.steps:
        if s["do"] == "boil" and s["evaporation"] and stage in ("before_boil", "after_boil"):
            e = s["evaporation"]
            more["evaporation"] = e["value"] if e["in"] == "L/h" else e["value"] / _water_at_20()
        for x in s.get("extracts", []):
            if "solids" not in more:
                more["solids"], more["extract_colour"] = x["solids"]["value"], _srm(x["colour"])
                more["extract_name"] = x["name"] or f"the {x['kind']} extract of step {s['number']}"
    if forecast.results["apparent_attenuation"] is not None and stage != "after_fermentation":
        more["attenuation"] = forecast.results["apparent_attenuation"]
    if stage == "after_fermentation":
        more["original_gravity"] = forecast.results["original_gravity"]
    return {"step": steps[at[-1]]["number"], "after": steps[at[-1]]["after"], "more": more}


def _water_at_20() -> float:
    from .batch import _model
    return float(_model("water.density.ptb_1990")(20.0))


def _srm(colour: dict[str, Any]) -> float:
    from .batch import _model
    return float(_model("colour.srm_from_ebc.exact")(colour["value"])) if colour["in"] == "EBC" else float(colour["value"])


def adjust_batch(batch: Any, stage: str, volume: float, gravity: float, temperature: float = 20.0, **more: Any) -> Adjustment:
    """The same against the plan of a batch: what is not given is taken from it."""
    plan = planned(batch, stage)
    state, request = plan["after"], {**plan["more"], **{k: v for k, v in more.items() if v is not None}}
    bare = adjust(stage, volume, gravity, temperature, **{**request, **({} if any(k in request for k in _WANTED) else {"target_volume": volume})})
    # The bitter substances and the colour that the plan has brought in are there, whatever the volume.
    share = state["volume_20c_l"] / bare.now["volume_20c_l"]
    if state["bitterness_bu"] > 0.0:
        request.setdefault("bitterness", state["bitterness_bu"] * share)
    if state["colour_srm"] > 0.0:
        from .batch import _model
        load = _model("colour.mcu_for_colour.morey")(state["colour_srm"], policy="extrapolate") * share
        request.setdefault("colour", _model("colour.from_grist.morey")(load, policy="extrapolate"))
    if not any(k in request for k in _WANTED):
        if stage == "after_fermentation":
            request["target_alcohol"] = state["alcohol_by_volume"]
        else:
            request["target_gravity"] = state["gravity_20_20"]
    found = adjust(stage, volume, gravity, temperature, **request)
    found._data["planned"] = {"step": plan["step"], **{k: state[k] for k in ("volume_l", "volume_20c_l", "temperature_c", "gravity_20_20", "bitterness_bu", "colour_srm", "alcohol_by_volume")}}
    return found


class Judgement:
    """Whether a fermentation has ended, from readings some days apart."""

    def __init__(self, data: dict[str, Any]) -> None:
        self._data = data

    def __getattr__(self, name: str) -> Any:
        try:
            return self.__dict__["_data"][name]
        except KeyError:
            raise AttributeError(f'a judgement has no "{name}"; it has {", ".join(self.__dict__.get("_data", {}))}') from None

    def __repr__(self) -> str:
        return f"<fermentation: {self._data['verdict']}>"

    def to_dict(self) -> dict[str, Any]:
        return self._data

    def to_json(self, indent: int | None = 2) -> str:
        return json.dumps(self._data, indent=indent, ensure_ascii=False, allow_nan=False)

    def text(self) -> str:
        lines = wrap(self._data["sentence"])
        lines += ["", "CARE"]
        for c in self._data["cautions"]:
            lines += wrap(c, "  ")
        return "\n".join(lines) + "\n"


def judge_fermentation(days: list[float], gravities: list[float], standard_uncertainty: float = 0.0005, *, original_gravity: float | None = None,
                       expected_gravity: float | None = None, limit_gravity: float | None = None) -> Judgement:
    """Falling, stuck or finished? Readings of one instrument, which share its offset; `standard_uncertainty` is what one reading adds.

    `expected_gravity`: of the plan; `limit_gravity`: of a forced fermentation. With one of them and the original gravity, also the
    carbon dioxide that is still to come in a closed package.
    """
    return Judgement(_core.judge_fermentation([float(d) for d in days], [float(g) for g in gravities], float(standard_uncertainty),
                                              {"original_gravity": original_gravity, "expected_gravity": expected_gravity, "limit_gravity": limit_gravity}))


# ------------------------------------------------------------------------------------------------ text and page

def _state(s: dict[str, Any]) -> list[str]:
    alcohol = f"{s['alcohol_by_volume']:.2f} % vol" if s["alcohol_by_volume"] else f"{s['alcohol_expected']:.2f} % vol later" if s["alcohol_expected"] is not None else ""
    return [f"{s['volume_l']:.2f} L", f"{s['gravity_20_20']:.4f}", f"{s['extract_degp']:.2f} degP", f"{s['bitterness_bu']:.1f} BU" if s["bitterness_bu"] is not None else "",
            f"{s['colour_srm']:.1f} SRM" if s["colour_srm"] is not None else "", alcohol]


def _line(s: dict[str, Any]) -> str:
    return ", ".join(x for x in _state(s) if x)


def _text(a: Adjustment) -> str:
    lines = [f"{'Read':<9}{_line(a.now)}"]
    if "planned" in a._data:
        p = a.planned
        lines.append(f"{'Planned':<9}{p['volume_l']:.2f} L at {p['temperature_c']:.0f} degC, {p['gravity_20_20']:.4f} (step {p['step']})")
    lines += ["", "CHOICES"] if a.choices else ["", "There is nothing to choose."]
    for n, c in enumerate(a.choices, 1):
        sentence = c["sentence"]
        lines += wrap(sentence[:1].upper() + sentence[1:] + ".", f"{n:>3}  ", "     ")
        lines += wrap(_line(c["after"]), "     gives ", "           ")
    for s in a.not_possible:
        lines += wrap("Not possible: " + s + ".", "  -  ", "     ")
    if a.cautions:
        lines += ["", "CARE"]
        for s in a.cautions:
            lines += wrap(s, "  ")
    return "\n".join(lines) + "\n"


def page(a: Adjustment) -> str:
    from ._plan import document, table
    head = ["", "volume", "gravity", "extract", "bitterness", "colour", "alcohol"]
    rows = [["as it is", *_state(a.now)], *([c["sentence"], *_state(c["after"])] for c in a.choices)]
    body = (f"<header><h1>A reading, {escape(a.stage.replace('_', ' '))}</h1></header><section><h2>Choices</h2>{table(head, rows, {1, 2, 3, 4, 5, 6})}"
            + "".join(f"<p>Not possible: {escape(s)}.</p>" for s in a.not_possible) + "</section>"
            + ("<section><h2>Care</h2>" + "".join(f'<p class="mind caution">{escape(s)}</p>' for s in a.cautions) + "</section>" if a.cautions else ""))
    return document("A reading and what to do", body)


def judgement_page(j: Judgement) -> str:
    from ._plan import document
    return document("Fermentation", f"<header><h1>Fermentation: {escape(j.verdict.replace('_', ' '))}</h1></header><section><p>{escape(j.sentence)}</p></section>"
                    "<section><h2>Care</h2>" + "".join(f'<p class="mind caution">{escape(s)}</p>' for s in j.cautions) + "</section>")


# ------------------------------------------------------------------------------------------------ the command

def quantity(option: str, text: str, unit: str) -> float:
    """The value of "12 L" in the library's unit; a bare number is refused where there are several units."""
    from . import _units
    from ._cli import Refusal
    try:
        number, name = _units.split(text)
        if not name and unit not in ("", "fraction"):
            raise Refusal(f'{option}: "{text}" has no unit; write for example "{number} {unit}"')
        value = _units.parse(text, unit)
    except _units.UnitError as e:
        raise Refusal(f"{option}: {e}") from None
    return value


def gravity_of(option: str, text: str) -> float:
    """1.061, "1.061 SG" or "15 degP" as SG 20/20."""
    from . import _units
    from ._cli import Refusal
    try:
        number, unit = _units.split(text)
    except _units.UnitError as e:
        raise Refusal(f"{option}: {e}") from None
    value = float(number)
    if unit in ("degP", "°P"):
        from .batch import _model
        try:
            return float(_model("extract.to_gravity.asbc")(value))
        except ValueError as e:
            raise Refusal(f"{option}: {e}") from None
    if unit not in ("", "SG"):
        raise Refusal(f'{option}: "{unit}" is not a unit of gravity; it is SG or degP')
    if not 0.97 <= value <= 1.2:
        raise Refusal(f"{option}: {number} is not a specific gravity (0.97 to 1.20)" + (f'; is it "{number} degP"?' if 1.2 < value <= 45 else ""))
    return value


def _share(option: str, text: str) -> float:
    from ._cli import Refusal
    number = text.strip().removesuffix("%").strip()
    try:
        value = float(number) / (100.0 if text.strip().endswith("%") else 1.0)
    except ValueError:
        raise Refusal(f'{option}: "{text}" is not a share; write it as "75 %"') from None
    if not 0.0 <= value <= 1.0:
        raise Refusal(f'{option}: "{text}" is not a share from 0 to 1; write it as "75 %"')
    return value


def _bare(option: str, text: str, unit: str) -> float:
    from ._cli import Refusal
    number = text.strip().removesuffix(unit).strip()
    try:
        value = float(number)
    except ValueError:
        raise Refusal(f'{option}: "{text}" is not a number of {unit}') from None
    if not value >= 0.0 or value == float("inf"):
        raise Refusal(f'{option}: "{text}" is not possible')
    return value


def _colour(option: str, text: str) -> float:
    from .batch import _model
    for unit in ("EBC", "SRM", "degL"):
        if text.strip().endswith(unit):
            value = _bare(option, text, unit)
            return float(_model("colour.srm_from_ebc.exact")(value)) if unit == "EBC" else value
    from ._cli import Refusal
    raise Refusal(f'{option}: "{text}" has no unit; write for example "12 SRM" or "24 EBC"')


def adjust_command(arguments: list[str]) -> Any:
    from ._cli import Refusal, _one_of, _parser
    from ._plan import outputs
    parser = _parser("adjust", "A reading that is off: what can be done, with exact amounts, and what each way does to the rest.\nWith a batch file, against its plan; without one, from the bare reading.\n"
                     "With two or more --reading DAY=GRAVITY: whether fermentation has ended.",
                     'Examples:\n  wortmath adjust --stage after_boil --volume "12 L" --gravity 1.061 --temperature "60 degC" --target-gravity 1.055\n'
                     '  wortmath adjust my.toml --stage in_fermenter --volume "18.4 L" --gravity 1.046 --temperature "18 degC"\n'
                     '  wortmath adjust --stage after_fermentation --volume "19 L" --gravity 1.012 --original-gravity 1.060 --target-alcohol "5 %"\n'
                     "  wortmath adjust --reading 10=1.0135 --reading 13=1.0130 --expected 1.012 --original-gravity 1.050")
    parser.add_argument("file", metavar="FILE", nargs="?", help="a batch file: its plan, boil-off and extract are then taken from there")
    parser.add_argument("--stage", metavar="STAGE", type=_one_of(*STAGES), help=", ".join(STAGES))
    kinds: dict[str, tuple[str, str, Any]] = {}

    def option(name: str, example: str, words: str, kind: Any) -> None:
        kinds[name] = (f"--{name.replace('_', '-')}", example, kind)
        parser.add_argument(f"--{name.replace('_', '-')}", metavar="SHARE" if "%" in example else f'"{example}"' if " " in example else example, help=words.replace("%", "%%"))

    def unit(u: str) -> Any:
        return lambda o, t: quantity(o, t, u)
    option("volume", "12 L", "what is there", unit("L"))
    option("gravity", "1.061", "as read, SG 20/20 or degP", gravity_of)
    option("temperature", "60 degC", "of what is there, where its volume was read; 20 degC", unit("degC"))
    option("sample_temperature", "30 degC", "of the sample in which the hydrometer was read, if not cooled to 20 degC", unit("degC"))
    option("calibration", "20 degC", "of the hydrometer", unit("degC"))
    option("target_gravity", "1.055", "what is wanted", gravity_of)
    option("target_volume", "14 L", "what is wanted, at the same temperature", unit("L"))
    option("target_alcohol", "5 %", "what is wanted, of beer, such as \"5 %\" vol", lambda o, t: 100.0 * _share(o, t))
    option("original_gravity", "1.060", "of beer: what it was before fermentation", gravity_of)
    option("bitterness", "30 BU", "as it is", lambda o, t: _bare(o, t, "BU"))
    option("colour", "12 SRM", "as it is", _colour)
    option("evaporation", "3 L/h", "what boils off: boiling longer is then told in minutes", unit("L/h"))
    option("attenuation", "75 %", "apparent, expected, such as \"75 %\": the alcohol is then told", _share)
    option("solids", "80 %", "of the extract at hand, such as \"80 %\"", _share)
    option("extract_colour", "6 degL", "of the extract at hand", _colour)
    option("blend_gravity", "1.040", "of a second batch to blend with", gravity_of)
    option("blend_volume", "8 L", "of it that there is", unit("L"))
    option("blend_original_gravity", "1.050", "of it, if it is beer", gravity_of)
    option("blend_bitterness", "20 BU", "of it", lambda o, t: _bare(o, t, "BU"))
    option("blend_colour", "8 SRM", "of it", _colour)
    parser.add_argument("--reading", metavar="DAY=GRAVITY", action="append", help="a reading of the fermentation; two or more of them, days apart")
    option("spread", "0.0005", "standard uncertainty of one reading, beyond the offset that all share", lambda o, t: _bare(o, t, "SG"))
    option("expected", "1.012", "the final gravity that was expected", gravity_of)
    option("limit", "1.010", "the final gravity of a forced fermentation", gravity_of)
    parser.add_argument("--json", metavar="FILE", help="also save all numbers as JSON; - writes them to standard output instead of the text")
    parser.add_argument("--html", metavar="FILE", help="also save a page; - writes it to standard output instead of the text")
    options = parser.read(arguments)
    given = {name: kind(flag, getattr(options, name)) for name, (flag, _, kind) in kinds.items() if getattr(options, name) is not None}
    try:
        if options.reading:
            return _judge(options, given)
        for name in ("spread", "expected", "limit"):
            if name in given:
                raise Refusal(f"--{name} belongs to --reading DAY=GRAVITY, given twice or more")
        missing = [f"--{n}" for n in ("volume", "gravity") if n not in given]
        if options.stage is None:
            missing.insert(0, "--stage")
        if missing:
            raise Refusal(f"wortmath adjust: {missing[0]} is missing; wortmath adjust --help shows examples")
        volume, gravity, temperature = given.pop("volume"), given.pop("gravity"), given.pop("temperature", 20.0)
        if options.file is not None:
            from . import batch
            found = adjust_batch(batch.read(options.file), options.stage, volume, gravity, temperature, **given)
        else:
            found = adjust(options.stage, volume, gravity, temperature, **given)
    except (ValueError, OSError) as e:
        raise Refusal(str(e)) from None
    return outputs(options, found.text(), found.to_json(), lambda: page(found), options.file)


def _judge(options: Any, given: dict[str, Any]) -> Any:
    from ._cli import Refusal
    from ._plan import outputs
    days, gravities = [], []
    for text in options.reading:
        day, sign, value = text.partition("=")
        try:
            days.append(float(day.strip().removesuffix("d").strip()))
        except ValueError:
            raise Refusal(f'--reading: "{text}" does not begin with a day; write it as 10=1.0135') from None
        if not sign:
            raise Refusal(f'--reading: "{text}" has no gravity; write it as 10=1.0135')
        gravities.append(gravity_of("--reading", value))
    expected, limit, original = given.get("expected"), given.get("limit"), given.get("original_gravity")
    if options.file is not None:
        from . import batch
        results = batch.read(options.file).forecast().results
        expected = results["final_gravity"] if expected is None else expected
        original = results["original_gravity"] if original is None else original
    j = judge_fermentation(days, gravities, given.get("spread", 0.0005), original_gravity=original, expected_gravity=expected, limit_gravity=limit)
    return outputs(options, j.text(), j.to_json(), lambda: judgement_page(j), options.file)
