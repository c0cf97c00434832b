"""The generated pages are up to date, and what they rest on is complete: docs/evidence.py, docs/brewing.toml, docs/no_table.toml."""

from __future__ import annotations

import fnmatch
import math
import re
import sys
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "docs"))
if sys.version_info < (3, 11):
    pytest.importorskip("tomli")

import evidence  # noqa: E402
import make_reference  # noqa: E402
import make_validation  # noqa: E402
import pages  # noqa: E402
import spread  # noqa: E402

from wortmath import _core  # noqa: E402


def _stale(folder: Path, made: dict[str, str]) -> list[str]:
    written = {f.relative_to(folder).as_posix() for f in folder.rglob("*") if f.is_file()}
    return sorted(written ^ made.keys()) + [name for name, text in made.items() if name in written and (folder / name).read_text(encoding="utf-8") != text]


def test_reference_is_up_to_date() -> None:
    assert _stale(make_reference.FOLDER, make_reference.pages()) == [], "run python docs/make_reference.py"


def test_validation_report_is_up_to_date() -> None:
    assert _stale(make_validation.FOLDER, make_validation.files()) == [], "run python docs/make_validation.py"


def test_the_report_is_one_file_of_moderate_size() -> None:
    files = make_validation.files()
    assert sum(len(t.encode()) for t in files.values()) < 8e6
    html = files["report.html"]
    assert re.findall(r'(?:src|href)="(?!#)[^"]*"', html) == [], "nothing from elsewhere"
    anchors, targets = set(re.findall(r' id="([^"]+)"', html)), set(re.findall(r'href="#([^"]+)"', html))
    assert targets <= anchors
    for path in _core._models:
        assert path.rsplit(".", 1)[0] in html, path


def test_every_link_of_the_pages_leads_somewhere() -> None:
    made = {f"reference/{n}": t for n, t in make_reference.pages().items()} | {f"validation/{n}": t for n, t in make_validation.files().items()}
    for name, text in made.items():
        if not name.endswith(".md"):
            continue
        own = set(re.findall(r'<a id="([^"]+)">', text))
        for target in re.findall(r"\]\(([^)\s]+)\)", text):
            file, _, anchor = target.partition("#")
            if not file:
                assert anchor in own, f"{name}: {target}"
                continue
            there = (Path(name).parent / file).as_posix().replace("validation/../", "").replace("reference/../", "")
            assert there in made, f"{name}: {target}"
            assert not anchor or f'<a id="{anchor}">' in made[there], f"{name}: {target}"


def test_every_topic_is_introduced() -> None:
    import wortmath as wm
    assert set(make_reference.TOPICS) == set(wm.topics)


def test_every_model_has_a_figure_from_outside_or_a_reason() -> None:
    reasons = make_validation.reasons()
    assert [p for p, why in reasons.items() if not why] == [], "give the reason in docs/no_table.toml"
    written = spread.tomllib.loads((ROOT / "docs" / "no_table.toml").read_text(encoding="utf-8"))["reason"]
    idle = [m for r in written for m in r["models"] if not any(fnmatch.fnmatchcase(p, m) for p in reasons)]
    assert idle == [], "these have figures from outside by now, or do not exist"


def test_every_table_has_its_head() -> None:
    for name, table in evidence.tables().items():
        assert table.title and table.source and table.status, name


def test_every_check_holds_in_the_report() -> None:
    for c in evidence.checks():
        assert c.rows, f"{c.table.file}: {c.expression}: no row is left"
        assert c.use_of_tolerance <= 1 + 1e-9, f"{c.table.file}: {c.expression}"
        assert c.subjects, f"{c.table.file}: {c.expression}: no model"


def test_every_wide_tolerance_has_its_reason() -> None:
    bare = [f"{c.table.file}: {c.expression}" for c in evidence.checks() if c.table.outside and c.wider and not c.note and "tolerance" not in c.tolerance]
    assert bare == []


def test_every_check_can_fail() -> None:
    """Some change of the model's answer makes it fail; where none in common does, it is one of shape or of one side."""
    for c in evidence.checks():
        assert c.words or math.isfinite(c.would_notice) or c.notice in ("shape", "one side"), f"{c.table.file}: {c.expression}"
    blind = [c for c in evidence.checks() if c.notice in ("shape", "one side")]
    assert len(blind) < 20


def test_a_changed_answer_fails_as_announced() -> None:
    """The announced change, and a little more, goes beyond the tolerance in some row; a little less does not."""
    seen = 0
    for c in evidence.checks():
        if not c.table.outside or c.words or c.whole or c.unit_of_shift != "%" or not 1e-6 < c.would_notice < 0.01 or seen > 40:
            continue
        seen += 1

        def fails(by: float, c: Any = c) -> bool:
            with evidence._changed(c.subjects[:1], by, False):
                return any(abs(evidence.expression.evaluate(c.expression, r.inputs) - r.want) > r.tolerance * (1 + 1e-9) for r in c.rows)
        assert fails(1.05 * c.would_notice) and fails(-1.05 * c.would_notice), c.expression
        assert not (fails(0.95 * c.would_notice) and fails(-0.95 * c.would_notice)), c.expression
    assert seen > 20


def test_ranges_of_brewing_name_families_and_arguments() -> None:
    for family, setting in spread.ranges().items():
        paths = spread.families()[family]
        assert len(paths) > 1, family
        names = {i.name for p in paths for i in evidence.facts(p)["inputs"]}
        assert set(setting.get("given", {})) <= names, family
        assert setting["over"] in names or setting["over"] in str(setting.get("given")), family
        assert set(setting.get("also", {})) | set(setting.get("apart", {})) <= {p.rsplit(".", 1)[1] for p in paths}, family
        s = spread.spread(family)
        assert s is not None and len(s.curves) > 1 and s.widest is not None, family


def test_the_spread_is_that_of_the_models() -> None:
    import wortmath as wm
    s = spread.spread("attenuation.alcohol_by_volume")
    assert s is not None
    d = next(d for d in s.at if d.x == 1.05)
    fg = 1 + 0.22 * (1.05 - 1)
    assert d.values["balling"] == wm.attenuation.alcohol_by_volume(1.05, fg)
    assert d.width == max(d.values.values()) - min(d.values.values())
    # The same wort on another scale: a gravity of 1.04 at 20 degC reads otherwise at 60 degF.
    s = spread.spread("extract.from_gravity")
    assert s is not None
    d = next(d for d in s.at if d.x == 1.04)
    assert abs(d.values["manning"] - d.values["asbc"]) < 0.01 < abs(wm.extract.from_gravity.manning(1.04) - wm.extract.from_gravity.asbc(1.04))


@pytest.mark.parametrize("value,text", [(0, "0"), (1e-15, "0"), (0.0123, "0.012"), (123.4, "123"), (4.56e-7, "4.6×10⁻⁷"), (5e-7, "5×10⁻⁷"), (0.00012, "0.00012"), (-0.5, "-0.5")])
def test_figures(value: float, text: str) -> None:
    assert pages.figure(value) == text


def test_text_is_not_taken_for_markup() -> None:
    page = pages.Page()
    page.text("a_b * c < d, `x_y*z`, **strong** and *plain words*")
    assert page.markdown() == "a_b \\* c \\< d, `x_y*z`, **strong** and *plain words*\n"
    assert page.html() == "<p>a_b * c &lt; d, <code>x_<wbr>y*z</code>, <b>strong</b> and <i>plain words</i></p>\n"
