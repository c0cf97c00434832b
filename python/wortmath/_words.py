"""A forecast in words: units, amounts, what to do at each step, what to expect, what to mind. Card and page share it.

`tell(forecast, units, start)` makes a Story; how it looks is the business of _card.py (text) and _html.py.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from .batch import Batch, Forecast

# Legal definitions; the reader of batch files has the same ones.
POUND_G = 453.59237
GALLON_L = 3.785411784
IMPERIAL_GALLON_L = 4.54609
PSI_BAR = 0.06894757293168
FOOT_M = 0.3048

NO_RULE = "No rule of this list was met. This is not a statement about your bottles."

Amount = dict[str, Any]


# -------------------------------------------------------------------------------------------------- units

@dataclass(frozen=True)
class Units:
    """Which units are shown, a choice for each kind of quantity. With `as_written`, what the file gives stays as it is there."""
    mass: str = "metric"         # metric, us
    volume: str = "metric"       # metric, us, imperial
    temperature: str = "C"       # C, F
    pressure: str = "bar"        # bar, psi
    length: str = "m"            # m, ft
    as_written: bool = True

    def mass_text(self, g: float) -> str:
        if self.mass == "us":
            ounces = g / POUND_G * 16
            if round(ounces, 1) < 16:
                return f"{ounces:.2f} oz"
            pounds = int(round(ounces, 1) // 16)
            return f"{pounds} lb {max(0.0, ounces - 16 * pounds):.1f} oz"
        if g >= 999.5:
            return f"{g / 1000:.2f} kg"
        return f"{g:.0f} g" if g >= 9.95 or g == 0 else f"{g:.1f} g"

    def volume_text(self, litres: float) -> str:
        if self.volume == "us":
            gallons = litres / GALLON_L
            if gallons >= 0.495:
                return f"{gallons:.2f} gal"
            ounces = gallons * 128
            return f"{ounces:.0f} fl oz" if ounces >= 19.95 or ounces == 0 else f"{ounces:.1f} fl oz"
        if self.volume == "imperial":
            gallons = litres / IMPERIAL_GALLON_L
            if gallons >= 0.995:
                return f"{gallons:.2f} imp gal"
            pints = gallons * 8
            return f"{pints:.1f} imp pt" if pints >= 0.95 else f"{pints * 20:.1f} imp fl oz"
        if litres >= 9.995:
            return f"{litres:.1f} L"
        if litres >= 0.9995:
            return f"{litres:.2f} L"
        return f"{litres * 1000:.0f} mL" if litres >= 0.00995 or litres == 0 else f"{litres * 1000:.1f} mL"

    def about_text(self, litres: float) -> str:
        """A volume after "about": as fine as anyone measures it."""
        if self.volume == "metric":
            return f"{litres:.1f} L" if litres >= 0.95 else f"{max(10, round(litres * 100) * 10)} mL" if litres > 0 else "0 mL"
        return self.volume_text(litres)

    def ledger_text(self, g: float) -> str:
        return f"{g / POUND_G:.2f} lb" if self.mass == "us" else f"{g / 1000:.2f} kg"

    def temperature_text(self, celsius: float, decimals: int = 0) -> str:
        value = celsius * 1.8 + 32 if self.temperature == "F" else celsius
        return f"{_no_minus_zero(round(value, decimals), decimals)} °{self.temperature}"

    def pressure_text(self, bar: float) -> str:
        return f"{_no_minus_zero(bar / PSI_BAR, 0)} psi" if self.pressure == "psi" else f"{_no_minus_zero(bar, 1)} bar"

    def length_text(self, metres: float) -> str:
        return f"{_no_minus_zero(metres / FOOT_M, 0)} ft" if self.length == "ft" else f"{_no_minus_zero(metres, 0)} m"

    def absorption_text(self, litres_per_kg: float) -> str:
        if self.volume == "us" and self.mass == "us":
            return f"{litres_per_kg * (128 / GALLON_L) / (16000 / POUND_G):.2f} fl oz per oz"
        return f"{litres_per_kg:.2f} L/kg"

    def rate_text(self, amount: Amount) -> str:
        if amount["in"] == "g/h":
            return f"{self.mass_text(amount['value'])} an hour"
        return f"{self.volume_text(amount['value'])} an hour"


METRIC = Units(as_written=False)
US = Units("us", "us", "F", "psi", "ft", as_written=False)

# How a unit of the file is printed where its own spelling is not the usual one.
_PRINTED = {"degC": "°C", "degF": "°F", "degL": "°L", "degP": "°P", "floz": "fl oz", "impfloz": "imp fl oz", "imppt": "imp pt",
            "impqt": "imp qt", "impgal": "imp gal", "gal/h": "gal/h", "impgal/h": "imp gal/h", "floz/oz": "fl oz per oz", "vol": "volumes", "d": "days"}
_VOTES = {"mass": {"mg": "metric", "g": "metric", "kg": "metric", "oz": "us", "lb": "us"},
          "volume": {"mL": "metric", "L": "metric", "hL": "metric", "floz": "us", "pt": "us", "qt": "us", "gal": "us", "bbl": "us", "gal/h": "us", "floz/oz": "us",
                     "impfloz": "imperial", "imppt": "imperial", "impqt": "imperial", "impgal": "imperial", "impgal/h": "imperial"},
          "temperature": {"degC": "C", "°C": "C", "K": "C", "degF": "F", "°F": "F"},
          "pressure": {"bar": "bar", "mbar": "bar", "kPa": "bar", "hPa": "bar", "psi": "psi"}}


def _no_minus_zero(x: float, decimals: int) -> str:
    text = f"{x:.{decimals}f}"
    return text[1:] if text.startswith("-") and float(text) == 0 else text


def amounts(tree: Any) -> Iterator[Amount]:
    """All amounts of the steps of a batch, wherever they stand."""
    if isinstance(tree, dict):
        if "value" in tree and "unit" in tree:
            yield tree
        else:
            for value in tree.values():
                yield from amounts(value)
    elif isinstance(tree, list):
        for value in tree:
            yield from amounts(value)


def choose(batch: Batch, units: str | None = None) -> Units:
    """The units of a card: those asked for, or for each kind of quantity those that most amounts of the file have."""
    if units == "us":
        return US
    if units == "metric":
        return METRIC
    if units is not None:
        raise ValueError(f'units = {units!r} is not known; it is "us", "metric", or None for the units of the file')
    # Yeast comes in grams in every kitchen and says nothing about the others.
    given = [a["unit"] for s in batch.steps if s["do"] != "pitch" for a in amounts(s) if a["given"]]
    found: dict[str, str | None] = {}
    for kind, words in _VOTES.items():
        votes = [words[u] for u in given if u in words]
        found[kind] = max(dict.fromkeys(votes), key=votes.count) if votes else None
    customary = (found["mass"] or found["volume"] or found["temperature"]) in ("us", "imperial", "F")
    temperature = found["temperature"] or ("F" if customary else "C")
    return Units(found["mass"] or ("us" if customary else "metric"), found["volume"] or ("us" if customary else "metric"), temperature,
                 found["pressure"] or ("psi" if customary else "bar"), "ft" if temperature == "F" else "m")


def amount_text(units: Units, a: Amount) -> str:
    """An amount of the file: as it stands there, or in the units asked for."""
    value, counted_in = a["value"], a["in"]
    # Colours, gravities and gas have one unit everywhere; they are shown as the file has them.
    scale = counted_in in ("SRM", "EBC", "SG", "degP", "vol", "g/L")
    if (units.as_written or scale) and a["given"] and counted_in not in ("min", "share", "number"):
        number = a["text"].strip()[:-len(a["unit"])].strip() if a["unit"] else a["text"].strip()
        if re.fullmatch(r"\d+(\.\d+)?", number):
            return f"{number} {_PRINTED.get(a['unit'], a['unit'])}" if a["unit"] != "d" else days_text(value)
    if counted_in == "g":
        return units.mass_text(value)
    if counted_in == "L":
        return units.volume_text(value)
    if counted_in == "degC":
        exact = value * 1.8 + 32 if units.temperature == "F" else value
        return units.temperature_text(value, 0 if abs(exact - round(exact)) < 0.05 else 1)
    if counted_in == "bar":
        return units.pressure_text(value)
    if counted_in == "m":
        return units.length_text(value)
    if counted_in == "min":
        return minutes_text(value)
    if counted_in == "d":
        return days_text(value)
    if counted_in == "share":
        return percent_text(value)
    if counted_in in ("g/h", "L/h"):
        return units.rate_text(a)
    if counted_in == "L/kg":
        return units.absorption_text(value)
    if counted_in == "kW":
        return f"{value:.3g} kW" if value >= 1 else f"{value * 1000:.0f} W"
    if counted_in == "SG":
        return f"{value:.4f}".rstrip("0")
    printed = {"SRM": "SRM", "EBC": "EBC", "degP": "°P", "vol": "volumes", "g/L": "g/L"}.get(counted_in, "")
    return f"{value:.4g} {printed}".rstrip()


def percent_text(share: float) -> str:
    return f"{100 * share:.3g} %"


def minutes_text(minutes: float) -> str:
    if 0 < minutes < 1:
        return f"{60 * minutes:.0f} s"
    if minutes <= 120:
        return f"{minutes:.0f} min" if abs(minutes - round(minutes)) < 0.05 else f"{minutes:.1f} min"
    hours, rest = divmod(round(minutes), 60)
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def days_text(days: float) -> str:
    return "1 day" if days == 1 else f"{days:.3g} days"


def clock_text(minutes: float) -> str:
    """A time of day, with the number of days where it runs past midnight."""
    day, rest = divmod(round(minutes), 1440)
    return f"{rest // 60:02d}:{rest % 60:02d}" + (f" (+{day})" if day else "")


def parse_clock(text: str) -> float:
    """Minutes since midnight of "9:00" or "09:00"."""
    found = re.fullmatch(r"(\d{1,2}):(\d\d)", text.strip())
    if not found or int(found[1]) > 23 or int(found[2]) > 59:
        raise ValueError(f'"{text}" is not a time of day; write it as 09:00, from 00:00 to 23:59')
    return 60.0 * int(found[1]) + int(found[2])


def cells_text(cells: float) -> str:
    return f"{cells / 1e9:.0f} billion cells" if cells >= 1e10 else f"{cells / 1e9:.1f} billion cells"


def listed(words: list[str], last: str = "and") -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} {last} {words[-1]}" if words else ""


def spread_text(values: list[float], decimals: int) -> str:
    """The range of several values, once where they print alike."""
    low, high = f"{min(values):.{decimals}f}", f"{max(values):.{decimals}f}"
    return low if low == high else f"{low} to {high}"


def one_line(text: str) -> str:
    """A name of the file on one line: no line breaks, no characters that would steer a terminal."""
    return " ".join("".join(c if c.isprintable() else " " for c in text).split())


# -------------------------------------------------------------------------------------------------- cautions

LEVELS = ("stop", "caution", "note", "always")
_TITLES = {"hot_liquid": "hot liquid", "burner": "burner", "boil_over": "boiling over", "hot_glass": "hot wort in glass", "warm_pitch": "wort too warm for the yeast",
           "cold_pitch": "wort too cold for the yeast", "co2_room": "carbon dioxide in the room", "yeast_short": "too little yeast", "early_package": "packaging too early",
           "package_pressure": "pressure of the package", "bottles": "bottles", "keg": "keg and gas", "dry_hop_restart": "dry hops start fermentation again",
           "hop_dog": "hops and dogs", "cleaning": "cleaning", "wide_bitterness": "bitterness formulas disagree", "hop_ceiling": "more alpha acids than dissolve",
           "low_attenuation": "fermentation stopped early", "steep_starch": "starch from steeped grain"}


@dataclass(frozen=True)
class Caution:
    """A caution where it applies. `first` is the step at which its text stands; there it is None."""
    id: str
    level: str
    title: str
    text: str
    first: int | None = None


def _cautions(forecast: Forecast) -> dict[int | None, list[Caution]]:
    from .batch import caution_text
    placed: dict[int | None, list[Caution]] = {}
    told: dict[str, int | None] = {}
    for c in sorted(forecast.cautions, key=lambda c: (c["step"] or 0, LEVELS.index(c["level"]))):
        name, step = c["id"], c["step"]
        first = told.get(name) if name in told else None
        told.setdefault(name, step)
        placed.setdefault(step, []).append(Caution(name, c["level"], _TITLES.get(name, name.replace("_", " ")), caution_text(name), first))
    return placed


# -------------------------------------------------------------------------------------------------- the story

@dataclass(frozen=True)
class Item:
    """An ingredient: how much, of what, what else is to know. `minutes` before the end of the boil; `clock` when that is."""
    list: str
    amount: str
    name: str
    detail: str = ""
    minutes: float | None = None
    clock: str | None = None


@dataclass
class StepStory:
    number: int
    do: str
    title: str
    place: str
    begin: float | None          # minutes since the start of the day; None once the days count
    day: float | None            # days since pitching; None on the brewing day
    actions: list[str] = field(default_factory=list)
    items: list[Item] = field(default_factory=list)
    volume: str | None = None       # "11.3 L at 25 °C", where it is new
    hydrometer: str | None = None   # "1.053 (sample at 20 °C)", where it is new
    expect: list[tuple[str, str]] = field(default_factory=list)  # further readings: label and value
    cautions: list[Caution] = field(default_factory=list)


@dataclass(frozen=True)
class Target:
    """An answer of the batch: what it is, its value, the range of the other models, by which model, a remark."""
    key: str
    label: str
    value: str
    others: str = ""
    model: str = ""
    remark: str = ""


@dataclass(frozen=True)
class Addition:
    step: int
    name: str
    when: str
    alpha: str
    used: str
    bu: float
    others: str


@dataclass(frozen=True)
class PackageStory:
    headline: str
    rows: list[tuple[str, str]]
    level: int
    verdict: str
    remark: str = ""


@dataclass
class Story:
    name: str
    notes: str | None
    units: Units
    start: float | None
    timing: str                    # what the times leave out
    summary: list[str]
    alerts: list[tuple[str, str]]  # level, and the steps with what to mind there: stops and cautions
    place: str
    instruments: str
    gather: list[tuple[str, list[Item]]]
    before: list[Caution]          # before the first step
    steps: list[StepStory]
    targets: list[Target]
    by_model: list[tuple[str, list[tuple[str, str]]]]  # what every model gives: what of, and the models with their values
    additions: list[Addition]
    target_cautions: list[Caution]
    package: PackageStory | None
    ledger_in: list[tuple[str, float]]
    ledger_out: list[tuple[str, float]]
    kept: float
    imbalance: float
    assumed: list[str]
    outside: list[str]
    reasons: list[str]


_TITLE = {"water": "Water", "heat": "Heat", "steep": "Steep the grain", "mash": "Mash", "lauter": "Run off and rinse", "dissolve": "Dissolve the extract", "boil": "Boil",
          "stand": "Hop stand", "chill": "Cool", "transfer": "Into the fermenter", "top_up": "Top up with water", "pitch": "Pitch the yeast", "ferment": "Ferment",
          "rack": "Rack", "dry_hop": "Dry hops", "prime": "Priming sugar", "bottle": "Bottle", "keg": "Keg", "condition": "Condition", "serve": "Serve", "note": "Note"}
_SUGARS = {"sucrose": "table sugar (sucrose)", "glucose": "dextrose without water (glucose)", "glucose_monohydrate": "brewing dextrose (glucose monohydrate)",
           "fructose": "fruit sugar (fructose)"}
_PACKAGES = {"unrated_glass": "beer bottles whose maker's figure is not known", "beer_glass_rated": "beer bottles with a maker's figure",
             "soft_drink_glass": "soft-drink bottles", "sparkling_wine_glass": "sparkling-wine bottles", "keg": "a keg", "other": "another package made for pressure",
             "not_pressure_rated": "a package not made for pressure"}
_GATHER = {"water": "Water", "grains": "Grain", "extracts": "Malt extract", "sugars": "Sugar", "hops": "Hops", "yeast": "Yeast", "priming": "Priming sugar"}


def sugar_name(kind: str) -> str:
    return _SUGARS.get(kind, kind.replace("_", " "))


def package_name(kind: str) -> str:
    return _PACKAGES.get(kind, kind.replace("_", " "))


class _Teller:
    def __init__(self, forecast: Forecast, units: str | None, start: float | None) -> None:
        self.forecast = forecast
        self.batch = forecast.batch
        self.units = choose(self.batch, units)
        self.start = start
        self.cautions = _cautions(forecast)
        self.calibration = amount_text(self.units, self.batch.instruments["hydrometer_calibration"])
        self.sample = amount_text(self.units, self.batch.instruments["sample_temperature"])
        self.minute = 0.0
        self.day: float | None = None
        self.last_volume: str | None = None
        self.last_hydrometer: str | None = None
        self.last: dict[str, Any] | None = None   # state before the step

    def text(self, a: Amount) -> str:
        return amount_text(self.units, a)

    def clock(self, minutes: float) -> str | None:
        return None if self.start is None else clock_text(self.start + minutes)

    def water_text(self, grams: float) -> str:
        from . import water
        return self.units.about_text(grams / float(water.density.ptb_1990(20.0)))

    # ------------------------------------------------------------------------------------------ ingredients

    def items(self, s: dict[str, Any]) -> list[Item]:
        found = [self.item(kind, i, s) for kind in ("grains", "extracts", "sugars", "hops") for i in s.get(kind, ())]
        if s["do"] == "boil":
            # What goes in first stands first; at the same minute the sugars go before the hops, as they are counted.
            order = {"extracts": 0, "sugars": 1, "hops": 2}
            found.sort(key=lambda i: (-(i.minutes or 0.0), order[i.list]))
        return found

    def item(self, kind: str, i: dict[str, Any], s: dict[str, Any]) -> Item:
        name = one_line(i["name"]) if i["name"] else {"grains": "grain", "extracts": "malt syrup" if i.get("kind") == "syrup" else "dry malt extract", "sugars": sugar_name(i.get("kind", "")), "hops": "hops"}[kind]
        detail = []
        if kind == "hops" and i["alpha"]["value"] > 0:
            detail.append(f"{percent_text(i['alpha']['value'])} alpha")
        if kind == "extracts" and i["name"]:
            detail.append({"syrup": "syrup", "dry": "dry"}[i["kind"]])
        if kind == "sugars" and i["name"]:
            detail.append(i["kind"].replace("_", " "))
        if kind != "hops" and i["colour"]["given"]:
            detail.append(self.text(i["colour"]))
        minutes = i["minutes"]["value"] if i.get("minutes") else None
        clock = None if minutes is None else self.clock(self.minute + s["minutes"]["value"] - minutes)
        return Item(kind, self.text(i["mass"]), name or "", ", ".join(detail), minutes, clock)

    # ------------------------------------------------------------------------------------------ the steps

    def step(self, s: dict[str, Any], f: dict[str, Any]) -> StepStory:
        do = s["do"]
        story = StepStory(f["number"], do, _TITLE.get(do, do), f["place"], self.minute if self.day is None else None, self.day,
                          cautions=self.cautions.get(f["number"], []))
        story.items = self.items(s)
        getattr(self, "do_" + do)(story, s, f)
        self.readings(story, f)
        self.last = f["after"]
        return story

    def readings(self, story: StepStory, f: dict[str, Any]) -> None:
        after = f["after"]
        if after is None or story.do in ("note", "bottle", "keg", "condition", "serve"):
            return
        units = self.units
        volume = f"{units.volume_text(after['volume_l'])} at {units.temperature_text(after['temperature_c'])}"
        if volume != self.last_volume:
            story.volume = self.last_volume = volume
        hydrometer = None if after["hydrometer"] is None else f"{after['hydrometer']:.3f}"
        if hydrometer != self.last_hydrometer or story.do == "pitch":
            self.last_hydrometer = hydrometer
            story.hydrometer = f"{hydrometer} (sample at {self.sample})" if hydrometer else None

    def do_water(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        amount = self.text(s["volume"] or s["mass"])
        story.items.append(Item("water", amount, "water into the kettle", f"at {self.text(s['temperature'])}"))
        if self.last is None:
            story.actions.append(f"Put {amount} of water at {self.text(s['temperature'])} into the kettle.")
        else:
            story.actions.append(f"Add {amount} of water at {self.text(s['temperature'])} to the kettle.")

    def do_heat(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.title = f"Heat to {self.text(s['to'])}"
        minutes = f["reported"].get("minutes")
        if minutes is None:
            story.actions.append("Heat slowly and stir. How long it takes depends on your burner.")
        else:
            share = s["efficiency"]["value"]
            reaching = f", of which {percent_text(share)} reaches the kettle" if share < 1 else ""
            story.actions.append(f"About {minutes_text(round(minutes))} with {self.text(s['power'])}{reaching}.")
            self.minute += minutes

    def do_steep(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        at = self.text(s["temperature"]) if s["temperature"] else self.units.temperature_text(f["after"]["temperature_c"])
        how_long = f" for {minutes_text(s['minutes']['value'])}" if s["minutes"] else ""
        drain = "then squeeze the bag out" if s["squeezed"] else "then let the bag drain, do not squeeze it"
        story.actions.append(f"Steep the crushed grain in a bag at {at}{how_long}, {drain}.")
        self.minute += s["minutes"]["value"] if s["minutes"] else 0.0

    def do_mash(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        strike = f["reported"]["strike_temperature_c"]
        if s["water"]:
            amount = self.text(s["water"])
            story.items.insert(0, Item("water", amount, "mash water", f"at {self.text(s['water_temperature'])}"))
            first = f"Heat {amount} of water to {self.units.temperature_text(strike, 1)}"
        else:
            first = f"Heat the water in the kettle to {self.units.temperature_text(strike, 1)}"
        held = f" Hold it there for {minutes_text(s['minutes']['value'])}." if s["minutes"] else ""
        story.actions.append(f"{first}, then stir in the crushed grain (at {self.text(s['grain_temperature'])}): the mash settles at {self.text(s['temperature'])}.{held}")
        story.expect.append(("strike water", self.units.temperature_text(strike, 1)))
        self.minute += s["minutes"]["value"] if s["minutes"] else 0.0

    def do_lauter(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.actions.append("Run the wort off the grain and into the kettle.")
        for count, sparge in enumerate(s["sparges"], 1):
            amount = self.text(sparge["volume"])
            story.items.append(Item("water", amount, "rinsing water" if len(s["sparges"]) == 1 else f"rinsing water {count}", f"at {self.text(sparge['temperature'])}"))
        if s["sparges"]:
            story.actions.append("Then add the rinsing water, stir, wait a little, run off" + (", and so again." if len(s["sparges"]) > 1 else "."))
        if s["dead_space"]["value"] > 0:
            story.actions.append(f"{self.text(s['dead_space'])} stays in the tun.")
        runnings = f["reported"].get("first_runnings_degp")
        if runnings is not None:
            story.expect.append(("first runnings", f"{runnings:.1f} °P"))

    def do_dissolve(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        if s["sugars"]:
            story.title = "Dissolve the extract and the sugar" if s["extracts"] else "Dissolve the sugar"
        if f["place"] == "fermenter":
            story.actions.append("Stir into the fermenter until nothing lies on the bottom.")
        else:
            warm = f["after"] is not None and f["after"]["temperature_c"] > 50
            story.actions.append(("Heat off. " if warm else "") + "Stir in until nothing lies on the bottom.")

    def do_boil(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.title = f"Boil for {minutes_text(s['minutes']['value'])}"
        rate = f" ({self.text(s['evaporation'])})" if s["evaporation"] else f" (with {self.text(s['power'])})"
        lost = f["reported"]["evaporated_g"]
        story.actions.append(f"Boil without a lid: about {self.water_text(lost)} of water boils away{rate}." if lost > 0 else "Keep it boiling.")
        if story.items:
            story.actions.append("What goes in, by the minutes that are left:")
        self.minute += s["minutes"]["value"]

    def do_stand(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        more = " with these hops" if s["hops"] else ""
        story.actions.append(f"Let it stand at {self.text(s['temperature'])} for {minutes_text(s['minutes']['value'])}{more}.")
        if s["kettle_hops"] and any(o["do"] == "boil" and o["hops"] for o in self.batch.steps):
            story.actions.append("The hops of the boil stay in and are counted too.")
        self.minute += s["minutes"]["value"]

    def do_chill(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.title = f"Cool to {self.text(s['to'])}"
        if f["place"] == "kettle":
            story.actions.append("Cool the covered kettle, in cold water or with a chiller. From here on everything that touches the wort has to be clean and disinfected.")
        else:
            story.actions.append("Cool the fermenter.")

    def do_transfer(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        leave = f", and leave {self.text(s['leave'])} with the sludge behind" if s["leave"]["value"] > 0 else ""
        story.actions.append(f"Run the wort into the fermenter{leave}.")
        held = self.forecast.ledger["out"].get("held by hops", 0.0)
        if held > 0:
            story.actions.append(f"The hops hold back about {self.units.mass_text(held)} of wort.")

    def do_top_up(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        at = self.text(s["temperature"])
        added = self.water_text(f["reported"]["added_g"])
        if s["to"]:
            story.actions.append(f"Fill up to {self.text(s['to'])} with water at {at}: about {added}.")
            story.items.append(Item("water", added, f"water to top up to {self.text(s['to'])}", f"at {at}"))
        else:
            amount = self.text(s["volume"] or s["mass"])
            story.actions.append(f"Add {amount} of water at {at}.")
            story.items.append(Item("water", amount, "water to top up", f"at {at}"))
        story.actions.append("Stir well before you take a sample: the heavy wort lies below.")

    def do_pitch(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        reported = f["reported"]
        name = one_line(s["name"]) if s["name"] else "yeast"
        if s["mass"]:
            amount = self.text(s["mass"]) if self.units.as_written else f"{s['mass']['value']:.3g} g"
        else:
            amount = cells_text(s["cells"]["value"]) if s["cells"] else ""
        wanted = f"between {self.text(s['range'][0])} and {self.text(s['range'][1])}" if s["range"] else ""
        story.actions.append(f"Add {amount + ' of ' if amount else ''}{name}." + (f" It wants {wanted}." if wanted else ""))
        counted = amount if s["cells"] else "" if s["mass"] else f"about {reported['dry_yeast_by_dose_g']:.0f} g if dry"
        story.items.append(Item("yeast", amount if s["mass"] else "", name, ", ".join(t for t in (counted, wanted) if t)))
        rate, per_gram = s["pitch_rate"]["value"], s["cells_per_gram"]["value"]
        story.actions.append(f"By the rate of {rate:g} million cells per mL and °P this wort wants {cells_text(reported['cells_needed'])}: "
                             f"{reported['dry_yeast_g']:.0f} g of dry yeast with {per_gram / 1e9:g} billion a gram. The usual dose by volume is {reported['dry_yeast_by_dose_g']:.0f} g.")
        self.day = 0.0

    def do_ferment(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.actions.append(f"Leave it for {self.text(s['days'])} at {self.text(s['temperature'])}.")
        after = f["after"]
        if s["final_gravity"]:
            story.actions.append(f"Planned end: {self.text(s['final_gravity'])}, as the file gives it.")
        elif s["attenuation"]:
            story.actions.append(f"Planned: {percent_text(s['attenuation']['value'])} apparent attenuation of the malt extract. What your hydrometer shows is what counts.")
        if after:
            story.expect.append(("alcohol", f"{after['alcohol_by_volume']:.1f} % vol"))
        self.day = (self.day or 0.0) + s["days"]["value"]

    def do_rack(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        at = f" at {self.text(s['temperature'])}" if s["temperature"] else ""
        leave = f", and leave {self.text(s['leave'])} with the yeast behind" if s["leave"]["value"] > 0 else ""
        story.actions.append(f"Move the beer into a clean vessel{at} without splashing{leave}.")

    def do_dry_hop(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        at = f" at {self.text(s['temperature'])}" if s["temperature"] else ""
        story.actions.append(f"Add the hops and wait {self.text(s['days'])}{at}. They soak up {self.text(s['absorption'])}.")
        self.day = (self.day or 0.0) + s["days"]["value"]

    def do_prime(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        grams = f["reported"]["sugar_g"]
        sugar = sugar_name(s["sugar"])
        amount = self.text(s["mass"]) if s["mass"] else self.units.mass_text(grams)
        in_grams = f"{grams:.0f} g" if self.units.mass == "us" and amount.endswith("oz") else ""   # few kitchen scales show hundredths of an ounce
        dissolved = f" in {self.text(s['water'])} of boiled water" if s["water"]["value"] > 0 else ""
        story.actions.append(f"Weigh {amount}{f' ({in_grams})' if in_grams else ''} of {sugar}, dissolve it{dissolved}, mix gently and evenly into the beer.")
        story.actions.append(f"The beer holds about {f['reported']['residual_vol']:.2f} volumes of CO2 before that.")
        story.items.append(Item("priming", amount, sugar, in_grams))

    def do_bottle(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        package = self.forecast.package
        story.actions.append(f"Fill {package['bottles']} bottles of {self.text(s['volume'])}, with {percent_text(s['headspace']['value'])} of headspace, and cap them.")
        if package["remainder_l"]:
            story.actions.append(f"About {self.units.about_text(package['remainder_l'])} is left over.")
        story.actions.append(f"The plan is for {package_name(package['package'])}, never warmer than {self.text(s['hottest'])}.")

    def do_keg(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        package = self.forecast.package
        volume = self.units.volume_text(self.forecast.results["volume_packaged_l"])
        story.actions.append(f"Fill the keg: {volume}, {percent_text(s['headspace']['value'])} of headspace.")
        if package["regulator_pressure_bar"] is not None:
            story.actions.append(f"Carbonate from the cylinder to {self.gas(package['carbonation_vol'])}: regulator at "
                                 f"{self.units.pressure_text(package['regulator_pressure_bar'])} with the beer at {self.text(s['serving'])}.")
        story.actions.append(f"The plan is for {package_name(package['package'])}, never warmer than {self.text(s['hottest'])}.")

    def do_condition(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.actions.append(f"Keep for {self.text(s['days'])} at {self.text(s['temperature'])}.")
        self.gauge(story, f)
        self.day = (self.day or 0.0) + s["days"]["value"]

    def do_serve(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.actions.append(f"Serve at {self.text(s['temperature'])}.")
        self.gauge(story, f)

    def do_note(self, story: StepStory, s: dict[str, Any], f: dict[str, Any]) -> None:
        story.actions.append(one_line(s["text"]))

    def gauge(self, story: StepStory, f: dict[str, Any]) -> None:
        pressure = f["reported"].get("pressure_bar")
        story.expect.append(("pressure", "not computed" if pressure is None else f"{self.units.pressure_text(pressure)} above the air outside"))

    def gas(self, volumes: float) -> str:
        from . import carbonation
        grams = float(carbonation.concentration.real_gas(volumes, policy="extrapolate"))
        return f"{volumes:.2f} volumes of CO2 ({grams:.1f} g/L)"

    # ------------------------------------------------------------------------------------------ the answers

    def gravities(self, extract: float) -> list[float]:
        """What the models of the gravity scale make of an extract: those that a batch file may name."""
        from . import extract as topic
        from ._errors import RangeError
        back = topic.from_gravity.models
        found = []
        for name, model in topic.to_gravity.models.items():
            if name in back and model.output.unit in ("SG 20/20", "SG"):
                try:
                    found.append(float(model(extract, policy="extrapolate")))
                except RangeError:
                    pass
        return found

    def targets(self) -> list[Target]:
        r, models = self.forecast.results, self.forecast.models
        found: list[Target] = []
        add = found.append
        if r["original_gravity"] is not None:
            add(Target("original_gravity", "Original gravity", f"{r['original_gravity']:.3f}", spread_text(self.gravities(r["original_extract_degp"]), 3), models["gravity"],
                       f"{r['original_extract_degp']:.1f} °P"))
        if r["final_gravity"] is not None:
            fermented = [f["after"] for f in self.forecast.steps if f["do"] == "ferment"][-1]
            others = spread_text(self.gravities(fermented["apparent_extract_degp"]), 3)
            add(Target("final_gravity", "Final gravity", f"{r['final_gravity']:.3f}", others, models["gravity"],
                       f"apparent attenuation {100 * r['apparent_attenuation']:.0f} %, real {100 * r['real_attenuation']:.0f} %"))
        if r["final_gravity"] is not None and r["alcohol_by_volume"] is not None:
            formulas = [v for v in (r["alcohol_by_formula"] or {}).values() if v is not None]
            before = r["alcohol_by_volume_before_priming"]
            primed = self.forecast.package is not None and (self.forecast.package["priming_alcohol_by_volume"] or 0) > 0
            remark = f"{before:.1f} % vol before the priming sugar; the formulas leave it out" if primed else ""
            add(Target("alcohol_by_volume", "Alcohol", f"{r['alcohol_by_volume']:.1f} % vol", f"{spread_text(formulas, 1)} % vol" if formulas else "", "balance of masses", remark))
        if r["bitterness_bu"] is not None and self.forecast.hops:
            values = [v for v in (r["bitterness_by_model"] or {}).values() if v is not None]
            remarks = [f"{r['bitterness_ratio']:.2f} BU for each point of original gravity"] if r["bitterness_ratio"] is not None else []
            remarks += [f"altitude factor {models['altitude_factor']}"] if models["altitude_factor"] != "none" else []
            add(Target("bitterness_bu", "Bitterness", f"{r['bitterness_bu']:.0f} BU", f"{spread_text(values, 0)} BU" if values else "", models["utilisation"], "; ".join(remarks)))
        if r["colour_srm"]:
            values = [v for v in (r["colour_by_model"] or {}).values() if v is not None]
            words = listed(r["colour_word"] or [], "or")
            add(Target("colour_srm", "Colour", f"{r['colour_srm']:.0f} SRM", f"{spread_text(values, 0)} SRM" if values else "", models["colour"],
                       f"{r['colour_ebc']:.0f} EBC" + (f", {words[0].lower() + words[1:]}" if words else "")))
        if r["volume_packaged_l"] is not None:
            add(Target("volume_packaged_l", "Packaged", self.units.volume_text(r["volume_packaged_l"])))
        if r["energy_kj_per_l"] is not None:
            glass, name = (GALLON_L * 12 / 128, "12 fl oz") if self.units.volume == "us" else (0.1, "100 mL")
            add(Target("energy_kj_per_l", "Energy", f"{r['energy_kj_per_l'] * glass:.0f} kJ", "", "asbc_beer33", f"in {name}"))
        return found

    def by_model(self) -> list[tuple[str, list[tuple[str, str]]]]:
        r = self.forecast.results
        found: list[tuple[str, list[tuple[str, str]]]] = []
        for label, key, decimals in (("Alcohol, % vol", "alcohol_by_formula", 1), ("Bitterness, BU", "bitterness_by_model", 0), ("Colour, SRM", "colour_by_model", 0)):
            values = [(name, f"{v:.{decimals}f}") for name, v in (r[key] or {}).items() if v is not None]
            of = {"bitterness_by_model": "bitterness_bu", "colour_by_model": "colour_srm"}.get(key, "final_gravity")
            if values and r[of]:
                found.append((label, values))
        return found

    def additions(self) -> list[Addition]:
        found = []
        for h in self.forecast.hops:
            do = self.batch.steps[h["step"] - 1]["do"]
            when = f"{h['minutes']:g} min" if h["minutes"] is not None else {"stand": "stand", "dry_hop": "dry"}.get(do, do)
            others = [v for v in h["bu_by_model"].values() if v is not None]
            found.append(Addition(h["step"], one_line(h["name"]) if h["name"] else "hops", when, f"{h['alpha_g']:.1f} g" if h["alpha_g"] > 0 else "-", percent_text(round(h["utilisation"], 3)) if do != "dry_hop" else "-",
                                  h["bu"], spread_text(others, 0) if others and do != "dry_hop" else "-"))
        return found

    def package(self) -> PackageStory | None:
        p = self.forecast.package
        if p is None:
            return None
        units = self.units
        s = next(s for s in self.batch.steps if s["do"] in ("bottle", "keg"))
        rows: list[tuple[str, str]] = []
        if p["kind"] == "bottle":
            rows.append(("bottles", f"{p['bottles']} of {self.text(s['volume'])}, about {units.about_text(p['remainder_l'])} left over"))
        else:
            rows.append(("in the keg", units.volume_text(self.forecast.results["volume_packaged_l"])))
        rows.append(("package", package_name(p["package"]) + (f", rated {self.text(s['rated'])}" if s["rated"] else "")))
        if p["residual_vol"] is not None:
            rows.append(("gas before", f"{p['residual_vol']:.2f} volumes of CO2 from fermentation, by {self.forecast.models['residual']}"))
        if p["priming_sugar_g"]:
            prime = next(s for s in self.batch.steps if s["do"] == "prime")
            grams = f" ({p['priming_sugar_g']:.0f} g)" if units.mass == "us" else ""
            rows.append(("priming", f"{units.mass_text(p['priming_sugar_g'])}{grams} of {sugar_name(prime['sugar'])}, adds {p['priming_alcohol_by_volume']:.1f} % vol"))
        rows.append(("carbonation", self.gas(p["carbonation_vol"])))
        if p["regulator_pressure_bar"] is not None:
            rows.append(("regulator", f"{units.pressure_text(p['regulator_pressure_bar'])} at {self.text(s['serving'])}"))
        for label, key, at in (("when served", "serving_pressure_bar", s["serving"]), ("at the hottest", "hottest_pressure_bar", s["hottest"]), ("worst case", "hazard_pressure_bar", s["hottest"])):
            value = p[key]
            rows.append((label, ("not computed, see the reasons below" if value is None else f"{units.pressure_text(value)} at {self.text(at)}")
                         + (f", with {self.gas(p['hazard_carbonation_vol'])}" if label == "worst case" and value is not None and p["hazard_carbonation_vol"] is not None else "")))
        here = {c["id"]: c["level"] for c in self.forecast.cautions if c["step"] == s["number"]}
        if p["level"] == 0:
            verdict = NO_RULE
        elif p["level"] == 2:
            verdict = ("STOP: the pressure could not be computed, and nobody knows what this package will see. Do not package like this." if p["hazard_pressure_bar"] is None
                       else "STOP: a rule of this project (not a standard) is met. Do not package like this.")
        elif "package_pressure" in here:
            verdict = "CAUTION: a rule of this project (not a standard) is met."
        else:
            verdict = "CAUTION: nothing in the file says that fermentation is finished, and that alone is a rule of this list."
        kind = "In the bottle" if p["kind"] == "bottle" else "In the keg"
        ferments = "the sugar ferments to the last, what is unfinished too," if p["priming_sugar_g"] else "what is unfinished ferments too,"
        remark = f"Worst case: {ferments} and the beer holds its gas badly."
        return PackageStory(kind, rows, p["level"], verdict, remark)

    # ------------------------------------------------------------------------------------------ the rest

    def step_name(self, number: int) -> str:
        return f"step {number} ({self.batch.steps[number - 1]['do']})"

    def assumed(self) -> list[str]:
        found = []
        for a in self.forecast.assumed:
            value = a["value"] if isinstance(a["value"], str) else percent_text(a["value"])
            if isinstance(a["value"], str):
                value = package_name(value)
            of = f" of {one_line(a['name'])}" if a["name"] else ""
            found.append(f"{self.step_name(a['step'])}: {a['key'].replace('_', ' ')}{of} {value}")
        return found

    def outside(self) -> list[str]:
        from ._model import by_path, range_text
        found = []
        for o in self.forecast.outside_range:
            model = by_path(o["model"])
            given = next((i for i in model.inputs if i.name == o["argument"]), None)
            gravity = given is not None and given.unit.startswith("SG")
            decimals = ".3f" if gravity else ".4g"
            what = o["argument"].replace("_", " ")
            unit = "" if given is None or gravity or given.unit in ("ratio", "fraction") or given.unit.lower() == what else f" {printed_unit(given.unit)}"
            low, high = (-math.inf, math.inf) if given is None else given.validated
            checked = f"{low:{decimals}} to {high:{decimals}}" if abs(low) < 1e9 and abs(high) < 1e9 else range_text(low, high)
            where = "the results" if o["step"] is None else self.step_name(o["step"])
            found.append(f"{where}: {o['model']} was checked for {what} {checked}{unit}; here {o['value']:{decimals}}{unit}")
        return found

    def gather(self, steps: list[StepStory]) -> list[tuple[str, list[Item]]]:
        lists: dict[str, list[Item]] = {}
        for story in steps:
            for i in story.items:
                where = {"boil": f"boil {i.minutes:g} min" if i.minutes is not None else "boil", "stand": "hop stand", "dry_hop": "dry"}.get(story.do, "")
                detail = ", ".join(t for t in (i.detail, where) if t)
                lists.setdefault(i.list, []).append(Item(i.list, i.amount, i.name, detail, i.minutes, i.clock))
        return [(title, lists[key]) for key, title in _GATHER.items() if key in lists]

    def summary(self) -> list[str]:
        r, p = self.forecast.results, self.forecast.package
        parts = []
        if p is not None:
            s = next(s for s in self.batch.steps if s["do"] in ("bottle", "keg"))
            parts.append(f"{p['bottles']} bottles of {self.text(s['volume'])}" if p["kind"] == "bottle" else f"{self.units.volume_text(r['volume_packaged_l'])} in a keg")
        if r["original_gravity"] is not None:
            parts.append(f"from {r['original_gravity']:.3f}" + (f" to {r['final_gravity']:.3f}" if r["final_gravity"] is not None else ""))
        if r["final_gravity"] is not None and r["alcohol_by_volume"] is not None:
            parts.append(f"{r['alcohol_by_volume']:.1f} % vol")
        if self.forecast.hops and r["bitterness_bu"] is not None:
            parts.append(f"{r['bitterness_bu']:.0f} BU")
        if r["colour_srm"]:
            parts.append(f"{r['colour_srm']:.0f} SRM")
        return parts

    def alerts(self) -> list[tuple[str, str]]:
        found = []
        for level in ("stop", "caution"):
            at = [f"step {step}: {', '.join(c.title for c in here if c.level == level)}" for step, here in self.cautions.items() if any(c.level == level for c in here)]
            if at:
                found.append((level, "; ".join(at)))
        return found

    def timing(self) -> str:
        """Which times are missing, so that nobody takes the clock for a promise."""
        untimed = [s["do"] for s, f in zip(self.batch.steps, self.forecast.steps) if s["do"] == "heat" and "minutes" not in f["reported"]]
        untimed += [s["do"] for s in self.batch.steps if s["do"] == "chill"][:1]
        words = {"heat": "heating", "chill": "cooling"}
        if self.batch.steps and not untimed:
            return ""
        return f"The times count what the file gives minutes for. {listed([words[w] for w in dict.fromkeys(untimed)]).capitalize()} come{'s' if len(set(untimed)) == 1 else ''} on top."

    def place(self) -> str:
        from . import atmosphere
        p, boiling = self.forecast.barometer_bar, self.forecast.boiling_temperature_c
        height = float(atmosphere.altitude.us1976(p, policy="extrapolate"))
        shown = f"{p / PSI_BAR:.1f} psi" if self.units.pressure == "psi" else f"{1000 * p:.0f} mbar"
        return f"Air pressure {shown}, as at {self.units.length_text(height)} above the sea: water boils at {self.units.temperature_text(boiling, 1)}."

    def story(self) -> Story:
        steps = [self.step(s, f) for s, f in zip(self.batch.steps, self.forecast.steps)]
        loose = self.cautions.get(None, [])
        ledger = self.forecast.ledger
        notes = self.batch.notes
        return Story(one_line(self.batch.name), None if not notes else "\n".join(one_line(line) for line in notes.strip().split("\n")), self.units, self.start, self.timing(), self.summary(),
                     self.alerts(), self.place(), f"The hydrometer is made for {self.calibration}; samples are read at {self.sample}.",
                     self.gather(steps), [c for c in loose if c.id != "wide_bitterness"], steps, self.targets(), self.by_model(), self.additions(),
                     [c for c in loose if c.id == "wide_bitterness"], self.package(),
                     [(n, g) for n, g in ledger["in"].items() if g > 0], [(n, g) for n, g in ledger["out"].items() if g > 0], ledger["kept_g"], ledger["imbalance_g"],
                     self.assumed(), self.outside(), [one_line(r) for r in self.forecast.reasons])


def printed_unit(unit: str) -> str:
    return _PRINTED.get(unit, unit)


def tell(forecast: Forecast, units: str | None = None, start: float | None = None) -> Story:
    """The forecast as a story. `start` is the time of day at which the first step begins, in minutes since midnight."""
    return _Teller(forecast, units, start).story()
