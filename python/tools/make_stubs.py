"""Write the type stubs of the package from its catalogue: python python/tools/make_stubs.py

Every topic gets one stub. A change of a model, an argument or a unit changes the stub; tests/python/test_stubs.py
compares the files with what this module makes.
"""

from __future__ import annotations

import argparse
import inspect
import keyword
from pathlib import Path
from types import ModuleType
from typing import Any

import wortmath as wm
from wortmath import _core
from wortmath._model import facts

PACKAGE = Path(__file__).resolve().parents[1] / "wortmath"
NOTE = "# Made by python/tools/make_stubs.py from the catalogue; not to be edited.\n"
# The scalar form of a call is a special case of its array form: that the two overlap is the point of both.
HEAD = NOTE + '# mypy: disable-error-code="overload-overlap"\n'

INIT = '''
from collections.abc import Mapping, Sequence
from typing import Any, Literal, Protocol, TypeAlias

import numpy as np
from numpy.typing import NDArray

from . import _core as _core
{imports}
from ._errors import RangeError as RangeError
from ._errors import RangeWarning as RangeWarning

__version__: str
__all__: list[str]
topics: list[str]
{functions}

class _Labelled(Protocol):
    """pandas, xarray, masked arrays, float32: whatever NumPy's functions hand back as it came."""
    def __array_ufunc__(self, ufunc: Any, method: Any, *inputs: Any, **kwargs: Any) -> Any: ...

class _Quantity(Protocol):
    """A number with a unit, as pint has it."""
    @property
    def magnitude(self) -> Any: ...
    @property
    def units(self) -> Any: ...
    @property
    def dimensionality(self) -> Any: ...

_S: TypeAlias = float | np.floating[Any] | np.integer[Any]
_A: TypeAlias = NDArray[np.float64]
_List: TypeAlias = Sequence[float] | Sequence[Sequence[float]] | NDArray[np.float64] | NDArray[np.integer[Any]]
_N: TypeAlias = _S | _List
_L: TypeAlias = _S | _List | _Labelled | _Quantity
_P: TypeAlias = Literal["raise", "nan", "extrapolate"] | None
_W: TypeAlias = NDArray[np.bool_] | bool

class Input:
    name: str
    kind: Literal["number", "optional", "list", "word", "truth"]
    unit: str
    noun: str
    validated: tuple[float, float]
    possible: tuple[float, float]
    words: list[str]
    required: bool
    default: Any

class Output:
    name: str | None
    unit: str
    noun: str
    kind: Literal["number", "whole", "truth", "word", "words"]
    words: list[str]

class Model:
    """One published answer to one question. Call it with numbers, lists, arrays or quantities."""
    def __call__(self, *args: Any, **kwargs: Any) -> Any: ...
{members}
    def _repr_html_(self) -> str: ...
    def _repr_latex_(self) -> str: ...

class Family:
    """A family whose models answer different questions: one of them has to be named."""
    path: str
    question: str
    @property
    def models(self) -> dict[str, Model]: ...
    def compare(self, *args: Any, **kwargs: Any) -> Any:
        """All models of the family at the same inputs."""
'''

# What a model knows about itself, in the order in which a reader asks for it.
PROPERTIES = {"path": "str", "name": "str", "family": "str", "topic": "str", "question": "str", "use": "str", "source": "str",
              "status": 'Literal["primary", "secondary", "memory", "derived"]', "accuracy": "str", "note": "str", "danger": "str", "holds_when": "str | None",
              "inputs": "tuple[Input, ...]", "outputs": "tuple[Output, ...]", "output": "Any", "valid": "Mapping[str, tuple[float, float]]",
              "models": "dict[str, Model]", "result_type": "Any", "ufunc": "np.ufunc", "formula": "str"}


def _quoted(text: str) -> str:
    return text.replace("\\", "\\\\").replace('"', "'")


def _one_line(f: dict[str, Any]) -> str:
    arguments = ", ".join(f"{i.name} [{i.unit}]" for i in f["inputs"])
    results = ", ".join(f"{o.name or ''} [{o.unit}]".strip() for o in f["outputs"])
    use = f" Use: {f['use']}." if f["use"] else ""
    return _quoted(f"{f['question']} {arguments} -> {results}.{use}".replace("  ", " "))


def _literal(words: list[str]) -> str:
    return "Literal[" + ", ".join(f'"{w}"' for w in words) + "]"


def _parameter(i: Any, number: str, list_of: str) -> str:
    kind = {"number": number, "optional": f"{number} | None", "list": list_of, "truth": "bool"}.get(i.kind) or _literal(i.words)
    return f"{i.name}: {kind}" + ("" if i.required else " = " + (f'"{i.default}"' if isinstance(i.default, str) else repr(i.default)))


def _field(o: Any, arrays: bool) -> str:
    scalar, array = {"number": ("float", "_A"), "whole": ("int", "NDArray[np.int64]"), "truth": ("bool", "NDArray[np.bool_]")}.get(o.kind, (_literal(o.words), "NDArray[np.object_]"))
    return array if arrays else f"list[{scalar}]" if o.kind == "words" else scalar


class Topic:
    """The stub of one topic: call signatures that several models share are written once."""

    def __init__(self, name: str) -> None:
        self.name = name
        self.shapes: dict[str, str] = {}     # text of a call -> name of its class
        self.results: dict[str, str] = {}    # text of a named tuple -> its name
        self.models: list[str] = []
        self.families: list[str] = []

    def result(self, f: dict[str, Any], arrays: bool) -> str:
        outputs = f["outputs"]
        if outputs[0].name is None:
            return _field(outputs[0], arrays)
        rows = [f"    {o.name}: {_field(o, arrays)}" for o in outputs]
        if any(o.name == "outside_gamut" for o in outputs):
            rows.append("    @property\n    def hex(self) -> str: ...")
        body = "\n".join(rows)
        if body not in self.results:
            self.results[body] = f"_result_{len(self.results) + 1}"
        return self.results[body]

    def shape(self, f: dict[str, Any]) -> str:
        lists = any(i.kind == "list" for i in f["inputs"])
        if all(i.kind in ("word", "truth") for i in f["inputs"]):
            forms = [("", "_S", "_S", self.result(f, False), "")]
        else:
            extras = ", out: _A | None = None, where: _W = True" if f["outputs"][0].name is None and not lists else ""
            forms = [("    @overload\n", "_S", "Sequence[float]", self.result(f, False), ""),
                     ("    @overload\n", "_N", "Sequence[Sequence[float]]" if all(i.kind != "number" for i in f["inputs"]) else "_List", self.result(f, True), extras),
                     ("    @overload\n", "_L", "_List | _Labelled | _Quantity", "Any", ", out: Any = None, where: Any = True" if extras else "")]
            if lists:  # one list in an array is a scalar call, several are not: the type cannot tell
                forms[1] = (forms[1][0], "_S", "Sequence[Sequence[float]]", forms[1][3], extras)
        text = ""
        for mark, number, list_of, result, extras in forms:
            arguments = "".join(", " + _parameter(i, number, list_of) for i in f["inputs"])
            text += f"{mark}    def __call__(self{arguments}, *, policy: _P = None{extras}) -> {result}: ...\n"
        if text not in self.shapes:  # mypy's messages show the name
            name = "_of_" + ("_and_".join(i.name for i in f["inputs"][:3]) or "nothing")
            used = sum(n == name or n.startswith(name + "_variant_") for n in self.shapes.values())
            self.shapes[text] = f"{name}_variant_{used + 1}" if used else name
        return self.shapes[text]

    def family(self, path: str, members: list[dict[str, Any]]) -> None:
        family = path.split(".")[1]
        default = next((f for f in members if f["is_default"]), None)
        siblings = [f"    {f['name']}: _{family}_{f['name']}\n" for f in members]
        for f in members:
            if keyword.iskeyword(f["name"]) or (f["name"] in PROPERTIES and len(members) > 1):
                raise SystemExit(f"{f['path']}: the name is taken by an attribute that every model has")
            own = "".join(siblings) if f is default else ""
            self.models.append(f'class _{family}_{f["name"]}({self.shape(f)}):\n    """{_one_line(f)}"""\n{own}')
        if default is None:
            self.models.append(f'class _{family}(Family):\n    """{_quoted(members[0]["question"])}"""\n{"".join(siblings)}')
        self.families.append(f"{family}: _{family}_{default['name']}" if default else f"{family}: _{family}")

    def text(self) -> str:
        body = "".join(f"class {name}(NamedTuple):\n{fields}\n\n" for fields, name in self.results.items())
        body += "".join(f"class {name}(Model):\n{call}\n" for call, name in self.shapes.items())
        body += "\n".join(self.models) + "\n" + "\n".join(self.families) + "\n"
        typing = [word for word in ("Any", "Literal", "NamedTuple", "overload") if word + ("[" if word == "Literal" else "") in body]
        own = [word for word in ("Family", "Model", "_A", "_L", "_Labelled", "_List", "_N", "_P", "_Quantity", "_S", "_W")
               if any(form in body for form in (f"({word})", f": {word} ", f": {word},", f": {word}\n", f" {word} |", f"| {word}", f"-> {word}:"))]
        head = HEAD + ("from collections.abc import Sequence\n" if "Sequence[" in body else "") + f"from typing import {', '.join(typing)}\n"
        if "np." in body:
            head += "\nimport numpy as np\nfrom numpy.typing import NDArray\n"
        return head + f"\nfrom . import {', '.join(own)}\n\n" + body


def _signature(function: Any) -> str:
    return f"def {function.__name__}{inspect.signature(function)}: ...".replace("'", "").replace("(self: Any", "(self")


def _members() -> str:
    """The attributes and methods of a model, as the package attaches them to the compiled type."""
    kind = type(next(iter(_core._models.values())))
    public = [name for name in dir(kind) if not name.startswith("_")]
    methods = [name for name in public if inspect.isfunction(getattr(kind, name))]
    untyped = [name for name in public if name not in methods and name not in PROPERTIES]
    if untyped:
        raise SystemExit(f"give the types of {', '.join(untyped)} in PROPERTIES")
    lines = [f"    @property\n    def {name}(self) -> {PROPERTIES[name]}: ..." for name in PROPERTIES if name in public]
    return "\n".join(lines + [f"    {_signature(getattr(kind, name))}" for name in methods])


def stubs() -> dict[str, str]:
    """The text of every stub by the name of its file."""
    topics = {name: Topic(name) for name in wm.topics}
    families: dict[str, list[dict[str, Any]]] = {}
    for path in _core._models:
        families.setdefault(path.rsplit(".", 1)[0], []).append(facts(path))
    for path, members in families.items():
        topics[path.split(".")[0]].family(path, members)
    found = {f"{name}.pyi": topic.text() for name, topic in topics.items()}
    modules = sorted(name for name in wm.__all__ if isinstance(getattr(wm, name), ModuleType))
    imports = "\n".join(f"from . import {name} as {name}" for name in modules)
    functions = "\n".join(_signature(getattr(wm, name)) for name in wm.__all__ if inspect.isfunction(getattr(wm, name)))
    found["__init__.pyi"] = NOTE + INIT.format(imports=imports, functions=functions, members=_members()).lstrip("\n")
    found["py.typed"] = ""
    return found


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--into", type=Path, default=PACKAGE, help="the folder of the stubs")
    into: Path = parser.parse_args().into
    made = stubs()
    for stale in into.glob("*.pyi"):
        if stale.read_text(encoding="utf-8").startswith(NOTE) and stale.name not in made:
            stale.unlink()
    for name, text in made.items():
        (into / name).write_text(text, encoding="utf-8")
    print(f"{len(made)} files, {sum(map(len, made.values())) / 1e3:.0f} kB, in {into}")


if __name__ == "__main__":
    main()
