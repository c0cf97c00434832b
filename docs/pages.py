"""Pages from one description as Markdown (for the repository) and as HTML (one file that holds everything)."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from html import escape
from pathlib import Path
from typing import Any


@dataclass(frozen=True)
class Finding:
    """One check of the report: what was compared with what, the figures, a small picture."""
    model: str
    worked_out: str      # what is made of the model's answer before it is compared; empty if nothing
    table: str
    note: str
    figures: tuple[str, ...]
    svg: str = ""


@dataclass
class Page:
    """A page under construction. Text may hold `code`, **strong**, *emphasis* and [links](to); everything else is taken as it is."""
    blocks: list[tuple[str, Any]] = field(default_factory=list)

    def heading(self, level: int, text: str, anchor: str = "") -> None:
        self.blocks.append(("heading", (level, text, anchor)))

    def text(self, words: str) -> None:
        self.blocks.append(("text", words))

    def items(self, lines: Sequence[str], small: bool = False) -> None:
        self.blocks.append(("small" if small else "items", list(lines)))

    def table(self, heads: Sequence[str], rows: Sequence[Sequence[str]], numbers: Sequence[int] = (), fold: str = "") -> None:
        """`numbers` are the columns set flush right; `fold` is the line under which a long table is folded away."""
        self.blocks.append(("table", (list(heads), [list(r) for r in rows], set(numbers), fold)))

    def formula(self, latex: str, fold: str = "") -> None:
        """A formula in LaTeX; Markdown alone shows it."""
        self.blocks.append(("formula", (latex, fold)))

    def code(self, text: str) -> None:
        self.blocks.append(("code", text))

    def picture(self, name: str, svg: str, words: str) -> None:
        self.blocks.append(("picture", (name, svg, words)))

    def findings(self, heads: Sequence[str], rows: Sequence[Finding], name: str, svg: str) -> None:
        """Checks with their figures (`heads`): with their own small pictures in HTML, with one sheet of them in Markdown."""
        self.blocks.append(("findings", (list(heads), list(rows), name, svg)))

    # ---- Markdown ----

    def markdown(self, pictures: str = "") -> str:
        out = []
        for kind, what in self.blocks:
            if kind == "heading":
                level, text, anchor = what
                out.append((f'<a id="{anchor}"></a>\n\n' if anchor else "") + "#" * level + " " + text)
            elif kind == "text":
                out.append(_md(str(what)))
            elif kind in ("items", "small"):
                out.append("\n".join(f"- {_md(line)}" for line in what))
            elif kind == "formula":
                latex, fold = what
                block = f"```math\n{latex}\n```"
                out.append(f"<details><summary>{fold}</summary>\n\n{block}\n\n</details>" if fold else block)
            elif kind == "code":
                out.append(f"```\n{what}\n```")
            elif kind == "picture":
                name, _, words = what
                out.append(f"![{name.removesuffix('.svg')}]({pictures}{name})\n\n{_md(words)}")
            else:
                if kind == "findings":
                    names, found, name, svg = what
                    heads, numbers, fold = ["model", "table", *names, "remark"], range(2, 2 + len(names)), ""
                    rows = [[f.model + (f", in `{f.worked_out}`" if f.worked_out else ""), f.table, *f.figures, f.note] for f in found]
                else:
                    heads, rows, numbers, fold = what
                line = "|" + "|".join("---:" if k in numbers else "---" for k in range(len(heads))) + "|"
                table = "\n".join(["| " + " | ".join(heads) + " |", line] + ["| " + " | ".join(_md(c).replace("|", "\\|") for c in r) + " |" for r in rows])
                out.append(f"<details><summary>{fold}</summary>\n\n{table}\n\n</details>" if fold else table)
                if kind == "findings" and svg:
                    out.append(f"![{name.removesuffix('.svg')}]({pictures}{name})")
        return "\n\n".join(out) + "\n"

    # ---- HTML ----

    def html(self) -> str:
        out = []
        for kind, what in self.blocks:
            if kind == "heading":
                level, text, anchor = what
                out.append(f"<h{level}{f' id={chr(34)}{anchor}{chr(34)}' if anchor else ''}>{_html(text)}</h{level}>")
            elif kind == "text":
                out.append(f"<p>{_html(str(what))}</p>")
            elif kind in ("items", "small"):
                out.append(("<ul class=s>" if kind == "small" else "<ul>") + "".join(f"<li>{_html(line)}</li>" for line in what) + "</ul>")
            elif kind == "code":
                out.append(f"<pre>{escape(str(what))}</pre>")
            elif kind == "picture":
                _, svg, words = what
                out.append(f"<figure>{svg}<figcaption>{_html(words)}</figcaption></figure>")
            elif kind == "findings":
                names, found, _, _ = what
                rows = ["<tr><td>" + f"<b>{_html(f.model)}</b> {_html(f.table)}" + (f"<div class=w>{_html(f'`{f.worked_out}`')}</div>" if f.worked_out else "")
                        + (f"<div class=r>{_html(f.note)}</div>" if f.note else "") + "</td>" + "".join(f"<td class=n>{_html(x)}</td>" for x in f.figures) + f"<td class=p>{f.svg}</td></tr>" for f in found]
                out.append("<table class=f><thead><tr><th>check</th>" + "".join(f"<th class=n>{_html(n)}</th>" for n in names) + "<th></th></tr></thead><tbody>" + "".join(rows) + "</tbody></table>")
            elif kind == "table":
                heads, rows, numbers, fold = what
                mark = {k: " class=n" for k in numbers}
                table = "<table><thead><tr>" + "".join(f"<th{mark.get(k, '')}>{_html(h)}</th>" for k, h in enumerate(heads)) + "</tr></thead><tbody>" + "".join(
                    "<tr>" + "".join(f"<td{mark.get(k, '')}>{_html(c)}</td>" for k, c in enumerate(r)) + "</tr>" for r in rows) + "</tbody></table>"
                out.append(f"<details><summary>{_html(fold)}</summary>{table}</details>" if fold else table)
        return "\n".join(out) + "\n"


def _md(text: str) -> str:
    """Text for Markdown: what is no mark-up must not become it."""
    parts = re.split(r"(`[^`]*`|\*\*[^*]+\*\*|(?<!\w)\*[a-z ]+\*(?!\w)|\[[^\]]*\]\([^)]*\))", text)
    return "".join(p if k % 2 else re.sub(r"([*<]|(?<![A-Za-z0-9])_|_(?![A-Za-z0-9]))", r"\\\1", p) for k, p in enumerate(parts))


def _html(text: str) -> str:
    done = escape(text, quote=False)
    done = re.sub(r"`([^`]*)`", lambda m: "<code>" + re.sub(r"([_.(,])(?=\w)", r"\1<wbr>", m[1]) + "</code>", done)
    done = re.sub(r"\*\*([^*]+)\*\*", r"<b>\1</b>", done)
    done = re.sub(r"(?<!\w)\*([a-z ]+)\*(?!\w)", r"<i>\1</i>", done)
    return re.sub(r"\[([^\]]*)\]\(([^)]*)\)", r'<a href="\2">\1</a>', done)


def save(folder: Path, files: dict[str, str]) -> None:
    """Write the files and take away those of an earlier run."""
    for old in sorted(folder.rglob("*")):
        if old.is_file() and old.relative_to(folder).as_posix() not in files:
            old.unlink()
    for name, text in files.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(text, encoding="utf-8", newline="\n")


def figure(x: float) -> str:
    """A deviation with the digits that say something."""
    if x == 0 or abs(x) < 1e-12:
        return "0"
    if 1e-4 <= abs(x) < 1e5:
        text = f"{x:.2g}" if abs(x) < 100 else f"{x:.0f}"
        return text if "e" not in text else f"{float(text):.6f}".rstrip("0")
    mantissa, power = f"{x:.1e}".split("e")
    return f"{mantissa.removesuffix('.0')}×10{str(int(power)).translate(_UP)}"


_UP = str.maketrans("-0123456789", "⁻⁰¹²³⁴⁵⁶⁷⁸⁹")
