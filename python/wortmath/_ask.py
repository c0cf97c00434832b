"""wortmath models and wortmath eval: the catalogue for people, and any of its models with units."""

from __future__ import annotations

import csv
import difflib
import io
import itertools
import math
import re
from collections.abc import Sequence
from decimal import Decimal
from typing import Any

from . import _core, _units
from ._card import pad, width, wrap
from ._errors import RangeError
from ._model import range_text
from ._units import nearest

MOST_ROWS = 10_000
MOST_FOUND = 12

_EVIDENCE = {"primary": "primary: as the author published it", "secondary": "secondary: as others quote it", "memory": "memory: recalled, not looked up",
             "derived": "derived: this project's own fit or derivation"}


class Question(Exception):
    """What was asked makes no sense; the message is a sentence."""


# ------------------------------------------------------------------------------------------------ finding

def _catalogue() -> dict[str, dict[str, Any]]:
    """The models of every family, by the family's path and the model's name."""
    families: dict[str, dict[str, Any]] = {}
    for path, model in sorted(_core._models.items()):
        family, name = path.rsplit(".", 1)
        families.setdefault(family, {})[name] = model
    return families


def _default(models: dict[str, Any]) -> Any | None:
    return next((m for m in models.values() if _core.is_default(m)), None)


def _ordered(models: dict[str, Any]) -> list[Any]:
    """The default first."""
    return sorted(models.values(), key=lambda m: (not _core.is_default(m), m.path))


def _stem(word: str) -> str:
    word = word.lower().replace("color", "colour")
    return word[:-1] if len(word) > 3 and word.endswith("s") and not word.endswith("ss") else word


def _score(words: Sequence[str], family: str, models: dict[str, Any]) -> tuple[int, int]:
    """How many of the words a family has, and how prominently."""
    any_model = next(iter(models.values()))
    places = [(8, family.replace(".", " ").replace("_", " ")), (5, any_model.question), (4, " ".join(models).replace("_", " ")), (2, " ".join(m.use for m in models.values())),
              (2, " ".join(i.name.replace("_", " ") for m in models.values() for i in m.inputs)),
              (1, " ".join(f"{m.source} {m.note} {m.danger} {m.accuracy}" for m in models.values()))]
    hits, weight = 0, 0
    for word in words:
        found = [w for w, text in places if re.search(r"\b" + re.escape(word), text.lower().replace("color", "colour"))]
        hits += bool(found)
        weight += sum(found)
    return hits, weight


def _search(words: Sequence[str]) -> tuple[list[str], bool]:
    """The families that have to do with the words, best first, and whether they have all of them."""
    stems = [_stem(w) for text in words for w in re.findall(r"[\w%]+", text.replace("_", " "))]
    if not stems:
        return [], True
    scored = [(f, *_score(stems, f, models)) for f, models in _catalogue().items()]
    best = max((hits for _, hits, _ in scored), default=0)
    if best == 0:
        return [], True
    found = sorted(((weight, f) for f, hits, weight in scored if hits == best), key=lambda p: (-p[0], p[1]))
    return [f for _, f in found], best == len(stems)


# ------------------------------------------------------------------------------------------------ models

def _counted(count: int, one: str, many: str) -> str:
    return f"{count} {one if count == 1 else many}"


def _range_of(i: Any) -> str:
    if i.kind == "word":
        return "one of " + ", ".join(i.words)
    if i.kind == "truth":
        return "yes or no"
    text = range_text(*i.validated)
    return "any number" if text == "any" else text


def _facts(model: Any, indent: str, full: bool) -> list[str]:
    """All about a model, as labelled lines."""
    lines: list[str] = []

    def add(label: str, text: str) -> None:
        if text:
            lines.extend(wrap(text, indent + label.ljust(10), indent + " " * 10))
    if model.use:
        add("when", model.use)
    label = "takes"
    for i in model.inputs:
        unit = f" [{i.unit}]" if i.kind not in ("word", "truth") and i.unit else ""
        several = "a list of " if i.kind == "list" else ""
        given = "" if i.required else ", or nothing" if i.default is None else f"; {_shown(i.default, i.unit)} if not given"
        add(label, f"{i.name}{unit}: {several}{_range_of(i)}{given}")
        label = ""
    add("gives", ", ".join((f"{o.name} " if o.name else "") + (f"[{o.unit}]" if o.unit else "") for o in model.outputs))
    if model.holds_when:
        add("holds", model.holds_when)
    if full:
        add("accuracy", model.accuracy)
        add("note", model.note)
    add("danger", model.danger)
    add("evidence", _EVIDENCE.get(model.status, model.status))
    add("source", model.source)
    return lines


def _model_page(model: Any) -> list[str]:
    given = " ".join(f"{i.name}=..." for i in model.inputs if i.required)
    return [model.path, *wrap(model.question, "  "), "", *_facts(model, "  ", True), "", f"  wortmath eval {model.path} {given}".rstrip()]


def _family_page(family: str, models: dict[str, Any]) -> list[str]:
    any_model = next(iter(models.values()))
    lines = [family, *wrap(any_model.question, "  ")]
    if _default(models) is None and len(models) > 1:
        lines += wrap("Its models answer different questions, so there is no default.", "  ")
    for model in _ordered(models):
        lines += ["", f"  {model.name}" + ("   (the default)" if _core.is_default(model) and len(models) > 1 else ""), *_facts(model, "      ", len(models) == 1)]
    return lines


def _short(family: str, models: dict[str, Any]) -> list[str]:
    names = ", ".join(m.name + ("*" if _core.is_default(m) and len(models) > 1 else "") for m in _ordered(models))
    return [f"  {family}", *wrap(next(iter(models.values())).question, "      "), *wrap(names, "      models: ", " " * 14)]


def models(words: Sequence[str], count: bool = False) -> str:
    """The text of wortmath models."""
    families = _catalogue()
    topics = sorted({f.split(".")[0] for f in families})
    path = words[0].strip().removeprefix("wortmath.").removeprefix("wm.") if len(words) == 1 else ""
    note: list[str] = []
    if not words:
        chosen = list(families)
    elif path in _core._models:
        return "1\n" if count else "\n".join(_model_page(_core._models[path])) + "\n"
    elif path in families:
        chosen = [path]
    elif path in topics:
        chosen = [f for f in families if f.split(".")[0] == path]
    else:
        chosen, complete = _search(words)
        if not chosen:
            raise _refusal(f'nothing here has to do with "{" ".join(words)}"{nearest(words[0], _vocabulary())}; wortmath models lists the topics')
        if not complete:
            note = [*wrap(f'No question has to do with all of "{" ".join(words)}"; these have to do with most of it:'), ""]
        path = ""

    total = sum(len(families[f]) for f in chosen)
    if count:
        return f"{total}\n"  # a bare number, for whoever counts by program
    if not words:
        lines = wrap(f"{total} models in {len(families)} families, by topic. A family answers one question; its models are the published answers.") + [""]
        for topic in topics:
            own = [f.split(".")[1] for f in families if f.split(".")[0] == topic]
            lines += wrap(", ".join(own), f"  {topic:14}", " " * 16)
        lines += ["", *wrap("wortmath models TOPIC, FAMILY, MODEL or any words says more, for example: wortmath models priming")]
        return "\n".join(lines) + "\n"
    if len(chosen) == 1:
        return "\n".join([*note, *_family_page(chosen[0], families[chosen[0]])]) + "\n"
    shown = chosen if path in topics else chosen[:MOST_FOUND]
    head = f"{path}: {_counted(total, 'model', 'models')} in {_counted(len(chosen), 'family', 'families')}" if path in topics else f"{_counted(len(chosen), 'question', 'questions')} found"
    lines = [*note, head, ""]
    for family in shown:
        lines += [*_short(family, families[family]), ""]
    if len(chosen) > len(shown):
        lines += [f"and {len(chosen) - len(shown)} more; another word would narrow it down", ""]
    lines += wrap("* is the default of its family. wortmath models FAMILY says more about one.")
    return "\n".join(lines) + "\n"


def _vocabulary() -> list[str]:
    return sorted({w for path in _core._models for w in re.split(r"[._]", path) if len(w) > 2})


def _refusal(text: str) -> Exception:
    from ._cli import Refusal
    return Refusal("wortmath models: " + text)


# ------------------------------------------------------------------------------------------------ eval

def _shown(value: Any, unit: str, exact: bool = False) -> str:
    if value is None:
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, str):
        return value
    if isinstance(value, (list, tuple)):
        return ", ".join(_shown(v, unit, exact) for v in value) or "none"
    if isinstance(value, int):
        return str(value)
    number = float(value)
    if exact:
        return repr(number)
    if math.isnan(number):
        return "-"
    if unit.startswith("SG"):
        return f"{number:.5f}".rstrip("0") if len(f"{number:.5f}".rstrip("0").split(".")[1]) >= 3 else f"{number:.3f}"
    return f"{number:.6g}"


def _find(path: str) -> tuple[str, dict[str, Any], Any | None]:
    """The family, its models and the model of a path; the model is None where a family has no default."""
    families = _catalogue()
    path = path.strip().removeprefix("wortmath.").removeprefix("wm.")
    if path in _core._models:
        model = _core._models[path]
        return model.family, families[model.family], model
    if path in families:
        return path, families[path], _default(families[path])
    more = "; wortmath models lists what there is"
    own = [f for f in families if f.split(".")[0] == path]
    if own:
        raise Question(f"{path} is a topic; name one of its families: {', '.join(own)}")
    same = [p for p in [*families, *_core._models] if p.rsplit(".", 1)[1] == path]
    if same:
        raise Question(f'"{path}" alone is not enough; write {" or ".join(same[:5])}')
    close = difflib.get_close_matches(path, [*families, *_core._models], 1, 0.6)
    raise Question(f'there is no model "{path}"' + (f' (did you mean "{close[0]}"?)' if close else "") + more)


def _assignments(values: Sequence[str], models: Sequence[Any]) -> dict[str, str]:
    known = list(dict.fromkeys(i.name for m in models for i in m.inputs))
    given: dict[str, str] = {}
    for value in values:
        name, equals, text = value.partition("=")
        name = name.strip()
        if not equals:
            left = [n for n in known if n not in given]
            example = f"{left[0]}={value.strip()}" if left else f"name={value.strip()}"
            raise Question(f'"{value}" has no name; write, for example, {example}')
        if name not in known:
            takes = f"it takes {', '.join(known)}" if known else "it takes none"
            raise Question(f'{models[0].path if len(models) == 1 else models[0].family} has no argument "{name}"{nearest(name, known)}; {takes}')
        if name in given:
            raise Question(f'"{name}" is given twice')
        given[name] = text.strip()
    return given


def _problem(name: str, text: str, e: Exception) -> Question:
    return Question(f'{name}="{text}": {e}')


def _range(text: str, i: Any) -> list[float]:
    """start:end:step, with a unit at the end for all three."""
    parts = text.split(":")
    if len(parts) != 3:
        raise _units.UnitError("a range is start:end:step, such as 1.030:1.090:0.010")
    last, unit = _units.split(parts[2])
    numbers = []
    for part in (parts[0], parts[1], last):
        number, own = _units.split(part)
        if own:
            raise _units.UnitError("the unit of a range stands once, at its end")
        numbers.append(Decimal(number))
    start, end, step = numbers
    if step == 0 or (end - start) * step < 0:
        raise _units.UnitError(f"with a step of {last} nothing leads from {parts[0].strip()} to {parts[1].strip()}")
    count = int((end - start) / step + Decimal("1e-9")) + 1
    if count > MOST_ROWS:
        raise _units.UnitError(f"that is {count} values; {MOST_ROWS} are the most")
    return [_units.parse(f"{start + step * n} {unit}", i.unit) for n in range(count)]


def _several(text: str, i: Any) -> list[float]:
    """Numbers between commas; a unit at the end holds for those without one."""
    parts = [p for p in (p.strip() for p in text.split(",")) if p]
    if not parts:
        raise _units.UnitError("a list of numbers is expected, such as 10,20,30")
    _, unit = _units.split(parts[-1])
    return [_units.parse(p if _units.split(p)[1] else f"{p} {unit}", i.unit) for p in parts]


def _value(i: Any, text: str) -> Any:
    """One value of an argument."""
    try:
        if i.kind == "word":
            return text
        if i.kind == "truth":
            if text.lower() not in ("yes", "no", "true", "false"):
                raise _units.UnitError("yes or no is expected")
            return text.lower() in ("yes", "true")
        if i.kind == "optional" and text.lower() == "none":
            return None
        if i.kind == "list":
            return _range(text, i) if ":" in text else _several(text, i)
        if ":" in text or "," in text:
            point = re.fullmatch(r"(\d+),(\d+)(.*)", text)
            meant = f"{point[1]}.{point[2]}{point[3]} if one number is meant, or " if point else ""
            raise _units.UnitError(f"one number is expected; {'write ' + meant if meant else ''}add --table for several")
        return _units.parse(text, i.unit)
    except _units.UnitError as e:
        raise _problem(i.name, text, e) from None


def _values(i: Any, text: str) -> list[Any]:
    """The values of an argument of a table."""
    try:
        if i.kind == "word":
            return [w.strip() for w in text.split(",")]
        if i.kind in ("number", "optional"):
            if ":" in text:
                return list(_range(text, i))
            if "," in text:
                return list(_several(text, i))
    except _units.UnitError as e:
        raise _problem(i.name, text, e) from None
    return [_value(i, text)]


def _columns(model: Any) -> list[str]:
    return [o.name or "" for o in model.outputs]


def _results(model: Any, answer: Any) -> list[Any]:
    return list(answer) if len(model.outputs) > 1 or model.outputs[0].name is not None else [answer]


def _call(model: Any, values: dict[str, Any], policy: str | None) -> list[Any]:
    """The results of a call; raises RangeError, ValueError or TypeError with a sentence."""
    try:
        answer = model(**values) if policy is None else model(**values, policy=policy)
    except RangeError as e:
        raise RangeError(str(e).replace('the policy "extrapolate" computes it unvouched', "--policy extrapolate computes it, and nobody vouches for it"), e.model, e.argument, e.value) from None
    return _results(model, answer)


def _customary(given: dict[str, str], inputs: Sequence[Any]) -> bool:
    """Whether a value was given in US or imperial units: the reader then sees results in them too."""
    for i in inputs:
        if i.kind in ("number", "optional", "list") and i.name in given:
            text = given[i.name].replace(":", ",").split(",")[-1]
            try:
                if _units.customary(_units.split(text)[1], i.unit):
                    return True
            except _units.UnitError:
                pass
    return False


def _result_line(o: Any, value: Any, customary: bool) -> str:
    text = f"{_shown(value, o.unit)} {_unit_shown(o)}".rstrip()
    if customary and isinstance(value, float) and not math.isnan(value):
        second = _units.second_opinion(value, o.unit)
        if second:
            text += f"  ({second[0]:.5g} {second[1]})"
    return f"{o.name}  {text}" if o.name else text


def _unit_shown(o: Any) -> str:
    return "" if o.unit in ("ratio", "fraction", "name", "list of names", "bool", "level", "any", "0..255", "word") else o.unit


def _one(model: Any, given: dict[str, str], policy: str | None) -> str:
    inputs = {i.name: i for i in model.inputs}
    values = {name: _value(inputs[name], text) for name, text in given.items()}
    try:
        results = _call(model, values, policy)
    except (ValueError, TypeError) as e:
        raise Question(str(e)) from None
    customary = _customary(given, model.inputs)
    names = max((len(o.name or "") for o in model.outputs), default=0)
    lines = [_result_line(o, v, customary) if not o.name else f"{o.name:{names}}  {_result_line(o, v, customary)[len(o.name) + 2:]}" for o, v in zip(model.outputs, results)]
    lines += ["", model.path, *wrap(model.question, "  ")]
    long = max((len(n) for n in inputs), default=0)
    for i in model.inputs:
        value = values.get(i.name, i.default)
        unit = "" if i.kind in ("word", "truth") or value is None or i.unit in ("ratio", "fraction", "any") else f" {i.unit}"
        shown = f"{_shown(value, i.unit)}{unit}"
        if i.name not in given:
            remark = "  (not given)" if value is None else "  (as usual)"
        else:
            remark = f"  (from {given[i.name]})" if i.kind != "word" and re.search(r"[^\d.\s,:+-]", given[i.name]) and given[i.name] not in (shown, shown.split()[0]) else ""
        lines += wrap(shown + remark, f"  {i.name:{long}}  ")
        if isinstance(value, float) and not (i.validated[0] <= value <= i.validated[1]):
            lines += wrap(f"outside the range that was checked, {_range_of(i)}", " " * (long + 4))
    if model.danger:
        lines += wrap(model.danger, "  mind: ")
    lines += wrap(_EVIDENCE.get(model.status, model.status), "  ")
    lines += wrap(model.source, "  ")
    return "\n".join(lines) + "\n"


def _ranges(model: Any) -> str:
    parts = [f"{i.name} {_range_of(i)}" for i in model.inputs if i.kind in ("number", "list", "optional") and _range_of(i) != "any number"]
    return "; ".join(parts) + (f"; {model.holds_when}" if model.holds_when else "")


def _all(family: str, models: dict[str, Any], given: dict[str, str], policy: str | None) -> str:
    ordered = _ordered(models)
    first = ordered[0]
    lines = [*wrap(first.question), *[f"  {name} = {text}" for name, text in given.items()], ""]
    rows: list[tuple[str, list[str], str, str]] = []
    asked = {i.name: i.unit for i in first.inputs}
    for model in ordered:
        mark = "*" if _core.is_default(model) and len(models) > 1 else " "
        inputs = {i.name: i for i in model.inputs}
        values = {name: _value(inputs[name], text) for name, text in given.items() if name in inputs}
        missing = [i.name for i in model.inputs if i.required and i.name not in given]
        left = [name for name in given if name not in inputs]
        remark = _ranges(model)
        # the same number on another gravity scale is another liquid
        scales = [f"{i.name} in {i.unit}" for i in model.inputs if i.name in given and i.name in asked and i.unit not in (asked[i.name], "SG") and i.unit.startswith("SG")]
        if scales:
            remark = "; ".join([f"takes {', '.join(scales)}", remark])
        if missing:
            answers, remark = ["-"], f"needs {', '.join(missing)}"
        else:
            try:
                results = _call(model, values, policy)
                customary = _customary(given, model.inputs)
                answers = [_result_line(o, v, customary) for o, v in zip(model.outputs, results)]
                outside = [i.name for i in model.inputs if isinstance(values.get(i.name), float) and not (i.validated[0] <= values[i.name] <= i.validated[1])]
                if outside:
                    remark += f" ({', '.join(outside)} outside)"
            except (ValueError, TypeError) as e:
                answers, remark = ["-"], "refuses: " + str(e).removeprefix(f"{model.path}: ")
        if left:
            remark += f"; does not take {', '.join(left)}"
        rows.append((mark + " " + model.name, answers, model.status, remark))
    names, answer, evidence = (max(width(t) for t in column) for column in ([r[0] for r in rows], [a for r in rows for a in r[1]], [r[2] for r in rows]))
    narrow = names + answer + evidence + 6 <= 54 and all(len(r[1]) == 1 for r in rows)
    for name, answers, status, remark in rows:
        if narrow:
            head = f"{pad(name, names)}  {pad(answers[0], answer)}  {pad(status, evidence)}  "
            lines += wrap(remark, head, " " * width(head)) if remark else [head.rstrip()]
        else:   # the remark has no room beside the answer, or there are several answers
            lines += [f"{pad(name, names)}  {pad(answers[0] if len(answers) == 1 else '', answer if len(answers) == 1 else 0)}  {status}"]
            lines += [line for a in answers if len(answers) > 1 for line in wrap(a, " " * 6)] + wrap(remark, " " * 6)
    lines += ["", *wrap("* is the default. Evidence: " + "; ".join(_EVIDENCE[s] for s in dict.fromkeys(m.status for m in ordered) if s in _EVIDENCE) + ".")]
    return "\n".join(lines) + "\n"


def _table(models: list[Any], given: dict[str, str], policy: str | None, as_csv: bool) -> str:
    inputs: dict[str, Any] = {}
    for model in models:
        for i in model.inputs:
            inputs.setdefault(i.name, i)
    values = {name: _values(inputs[name], text) for name, text in given.items()}
    moving = [name for name in values if len(values[name]) > 1]
    rows_wanted = math.prod(len(v) for v in values.values())
    if rows_wanted > MOST_ROWS:
        raise Question(f"that makes {rows_wanted} rows; {MOST_ROWS} are the most")
    shown = moving or list(values)
    usable = [m for m in models if all(i.name in given for i in m.inputs if i.required)]
    if not usable:
        missing = [f'"{i.name}" ({i.unit})' for i in models[0].inputs if i.required and i.name not in given]
        raise Question(f"{models[0].path}: {', '.join(missing)} is missing")
    heads = [(name, inputs[name].unit if inputs[name].kind not in ("word", "truth") else "", inputs[name].unit) for name in shown]
    for model in usable:
        for o in model.outputs:
            label = model.name if len(models) > 1 else o.name or model.family.split(".")[1]
            heads.append((f"{label} {o.name}" if len(models) > 1 and o.name else label, _unit_shown(o), o.unit))
    how = policy or "nan"
    blanks = False
    rows: list[list[Any]] = []
    for combination in itertools.product(*values.values()):
        row_values = dict(zip(values, combination))
        row: list[Any] = [row_values[name] for name in shown]
        for model in usable:
            own = {i.name for i in model.inputs}
            mine = {n: _converted(v, inputs[n], model) for n, v in row_values.items() if n in own}
            try:
                results = _call(model, mine, how)
            except RangeError as e:
                if how == "raise" or not e.region and e.argument and isinstance(row_values.get(e.argument), str):
                    raise Question(str(e)) from None
                results = [math.nan] * len(model.outputs)
            except (ValueError, TypeError) as e:
                raise Question(str(e)) from None
            blanks = blanks or any(isinstance(r, float) and math.isnan(r) for r in results)
            row += results
        rows.append(row)

    if as_csv:
        out = io.StringIO()
        writer = csv.writer(out, lineterminator="\n")
        writer.writerow([f"{name} [{unit}]" if unit else name for name, unit, _ in heads])
        writer.writerows([[_shown(v, unit, exact=True) for v, (_, _, unit) in zip(row, heads)] for row in rows])
        return out.getvalue()
    cells = [[_shown(v, unit) for v, (_, _, unit) in zip(row, heads)] for row in rows]
    _align_decimals(cells)
    columns = [max(len(head[0]), len(head[1]), *(len(r[c]) for r in cells)) for c, head in enumerate(heads)]
    lines = [*wrap(usable[0].question)]
    lines += [f"  {name} = {given[name]}" for name in values if name not in shown]
    lines += ["", "  ".join(head[0].rjust(w) for head, w in zip(heads, columns)), "  ".join(head[1].rjust(w) for head, w in zip(heads, columns)).rstrip()]
    lines += ["  ".join(c.rjust(w) for c, w in zip(row, columns)) for row in cells]
    if blanks:
        lines += ["", *wrap("- stands where the model refuses: outside the range that was checked (--policy extrapolate computes it, and nobody vouches for it), or impossible.")]
    left = [m.name for m in models if m not in usable]
    if left:
        lines += ["", *wrap(f"Left out, since they need more: {', '.join(left)}.")]
    return "\n".join(lines) + "\n"


def _converted(value: Any, read_as: Any, model: Any) -> Any:
    """A value that was read for an argument of one model, for the argument of that name of another."""
    own = next(i for i in model.inputs if i.name == read_as.name)
    if own.unit != read_as.unit and isinstance(value, float) and _units.dimension_of(own.unit) == _units.dimension_of(read_as.unit) is not None:
        return _units.express(value, read_as.unit, own.unit) if own.unit in _units.TABLE[str(_units.dimension_of(own.unit))] else value
    return value


def _align_decimals(cells: list[list[str]]) -> None:
    """The numbers of a column with the same number of decimals."""
    for c in range(len(cells[0]) if cells else 0):
        numbers = [r[c] for r in cells if re.fullmatch(r"-?\d+(\.\d+)?", r[c])]
        if len(numbers) != sum(r[c] != "-" for r in cells) or not numbers:
            continue
        largest = max(len(n.lstrip("-").split(".")[0]) for n in numbers)
        decimals = min(max((len(n.split(".")[1]) if "." in n else 0) for n in numbers), max(0, 6 - largest))
        for r in cells:
            if r[c] != "-":
                r[c] = f"{float(r[c]):.{decimals}f}"


def evaluate(path: str, values: Sequence[str], all_models: bool = False, table: bool = False, as_csv: bool = False, policy: str | None = None) -> str:
    """The text of wortmath eval; raises Question with a sentence."""
    family, models, model = _find(path)
    if all_models:
        chosen = _ordered(models)
        given = _assignments(values, chosen)
        return _table(chosen, given, policy, as_csv) if table else _all(family, models, given, policy)
    if model is None:
        lines = [f"  {m.path}: {m.use or m.source}" for m in models.values()]
        raise Question(f"{family} has no default, since its models answer different questions; name one:\n" + "\n".join(lines))
    given = _assignments(values, [model])
    return _table([model], given, policy, as_csv) if table else _one(model, given, policy)
