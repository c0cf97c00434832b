"""wortmath check: a table of one's own against a model. The tables here are slices of those in tests/reference."""

from __future__ import annotations

import json
import math
import xml.etree.ElementTree as ET
from pathlib import Path
from typing import Any

import pytest

import wortmath as wm
from expression import read_table
from wortmath import _chart, _check
from wortmath._cli import main


@pytest.fixture
def check(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Any:
    """Run the command on a text; status, standard output, standard error."""
    def run(table: str | bytes, *options: str) -> tuple[int, str, str]:
        path = tmp_path / "table.csv"
        path.write_bytes(table.encode() if isinstance(table, str) else table)
        code = main(["check", str(path), *options])
        out, err = capsys.readouterr()
        return code, out, err
    return run


def plato_table() -> str:
    """Plato's densities at 20 degC as apparent gravities, with the extract as printed."""
    _, rows = read_table("extract/sucrose_plato_15_20C.csv")
    lines = ["# Plato 1900", "gravity, plato"]
    for r in rows:
        if not r["note"] and float(r["mass_percent"]) <= 20:
            lines.append(f"{(0.999972 * float(r['sg_20_4_x1000']) - 1.2) / (0.999972 * 998.23 - 1.2):.8f}, {r['mass_percent']}")
    return "\n".join(lines)


def test_a_printed_table(check: Any) -> None:
    code, out, err = check(plato_table(), "--model", "extract.from_gravity.asbc", "--compare", "plato", "--json", "-")
    assert (code, err) == (0, "")
    found = json.loads(out)
    assert found["rows"] == found["compared"] == len(plato_table().splitlines()) - 2
    deviations = {r["line"]: r["deviation"] for r in found["deviations"]}
    rows = [line.split(",") for line in plato_table().splitlines()[2:]]
    expected = [wm.extract.from_gravity.asbc(float(g)) - float(p) for g, p in rows]
    assert list(deviations.values()) == pytest.approx(expected, abs=1e-12)
    assert abs(found["largest"]) == pytest.approx(max(map(abs, expected)))
    assert found["rms"] == pytest.approx(math.sqrt(sum(d * d for d in expected) / len(expected)))
    assert found["mean"] == pytest.approx(sum(expected) / len(expected))
    assert 0.003 < abs(found["largest"]) < 0.006, "the source states 0.005 degP"
    assert found["worst"][0] == max(deviations, key=lambda line: abs(deviations[line]))


def test_text_shows_the_worst_row(check: Any) -> None:
    code, out, _ = check("gravity,plato\n1.040,9.99\n1.060,15.00\n", "--model", "extract.from_gravity")
    assert code == 0
    assert "extract.from_gravity.asbc" in out and "2 compared" in out and "in line 3" in out
    worst = out.index("worst rows")
    assert out.index("1.060", worst) < out.index("1.040", worst)


def test_units_of_the_header(check: Any) -> None:
    kelvin = "temperature [degC], density [kg/m3]\n20, 998.2\n"
    for table, options in ((kelvin, ()), ("temperature [degF], density [kg/m3]\n68, 998.2\n", ()), ("temperature, density\n20, 998.2\n", ("--units", "library")),
                           ("temperature, density\n68, 998.2\n", ("--units", "temperature=degF", "--units", "density=kg/m3"))):
        code, out, err = check(table, "--model", "water.density", "--json", "-", *options)
        assert code == 0, err
        assert json.loads(out)["largest"] == pytest.approx(wm.water.density(20) - 998.2, abs=1e-9)


def test_the_compared_column_keeps_its_unit(check: Any) -> None:
    code, out, _ = check("temperature [degC], pressure [mbar]\n20, 23.39\n", "--model", "water.saturation_pressure", "--json", "-")
    found = json.loads(out)
    assert code == 0 and found["unit"] == "mbar"
    assert found["deviations"][0]["model"] == pytest.approx(1000 * wm.water.saturation_pressure(20))
    assert found["within_half_a_digit"] == 1


def test_other_names_and_constants(check: Any) -> None:
    table = "SG, minutes [h], share\n1.050, 1, 0.231\n"
    code, out, err = check(table, "--model", "bitterness.utilisation", "--argument", "boil_gravity=SG", "--argument", "boil_minutes=minutes", "--compare", "share",
                           "--argument", "brewery_constant=4.15", "--json", "-")
    assert code == 0, err
    found = json.loads(out)
    assert found["deviations"][0]["model"] == wm.bitterness.utilisation(1.050, 60)
    assert found["fixed"] == {"brewery_constant": 4.15}
    code, out, err = check("boil_gravity, share\n1.050, 0.231\n", "--model", "bitterness.utilisation", "--argument", "boil_minutes=1 h", "--json", "-")
    assert code == 0 and json.loads(out)["deviations"][0]["model"] == wm.bitterness.utilisation(1.050, 60)


def test_words_lists_and_several_results(check: Any) -> None:
    code, out, _ = check("srm,word\n3,straw\n3,black\n", "--model", "colour.word", "--json", "-")
    found = json.loads(out)
    assert code == 0 and found["compared"] == 2 and found["within_half_a_digit"] <= 1
    code, out, _ = check("masses [kg],extracts,temperatures [degC],mixed [degC]\n1|1,10|10,20|40,30\n", "--model", "thermal.mix", "--json", "-")
    assert code == 0 and json.loads(out)["largest"] == pytest.approx(wm.thermal.mix([1000, 1000], [10, 10], [20, 40]) - 30)
    table = "volume_1 [L],extract_1,volume_2 [L],extract_2,{}\n5,20,5,0,10\n"
    assert check(table.format("extract"), "--model", "balance.blend.volume")[0] == 0
    code, _, err = check(table.format("strength"), "--model", "balance.blend.volume")
    assert code == 2 and "several results: volume, extract" in err
    assert check(table.format("strength"), "--model", "balance.blend.volume", "--result", "extract", "--compare", "strength")[0] == 0


def test_rows_outside_the_range(check: Any) -> None:
    table = "gravity,plato\n1.040,9.99\n1.130,30.1\n1.500,90\n"
    code, out, _ = check(table, "--model", "extract.from_gravity.asbc", "--json", "-")
    found = json.loads(out)
    assert code == 0 and found["compared"] == 1 and [r["line"] for r in found["refused"]] == [3, 4]
    code, out, _ = check(table, "--model", "extract.from_gravity.asbc", "--extrapolate")
    assert code == 0 and "2 compared, 1 refused" in out and "line 4" in out


def test_cells_without_a_value_to_compare(check: Any) -> None:
    code, out, _ = check("gravity,plato\n1.040,9.99\n1.050,\n", "--model", "extract.from_gravity", "--json", "-")
    assert code == 0 and json.loads(out)["empty"] == 1 and json.loads(out)["compared"] == 1


def test_half_a_digit() -> None:
    for cell, half in (("9.99", 0.005), ("20", 0.5), ("1.0000", 0.00005), ("2.5e3", 50), ("-0.10", 0.005)):
        assert _check.half_a_digit(cell) == pytest.approx(half)


@pytest.mark.parametrize("separator", [";", "\t"])
def test_other_separators_and_quotes(check: Any, separator: str) -> None:
    text = "\ufeff" + separator.join(['"gravity"', '"plato"']) + "\r\n" + separator.join(["1.040", "9.99"]) + "\r\n"
    assert check(text, "--model", "extract.from_gravity")[0] == 0


G = ("--model", "extract.from_gravity.asbc")
T = ("--model", "water.density.kell")

WRONG: list[tuple[str | bytes, tuple[str, ...], list[str]]] = [
    ("", G, ["is empty"]),
    ("# only a remark\n", G, ["is empty"]),
    ("gravity,plato\n", G, ["no row"]),
    (b"gravity,plato\n1.04,\xff\n", G, ["line 2", "UTF-8"]),
    ("gravity,plato\n1.04\n", G, ["line 2", "1 cells", "header has 2"]),
    ("gravity,plato\n1.04,9.99,7\n", G, ["line 2", "3 cells"]),
    ("gravity,\n1.04,9.99\n", G, ["line 1, column 2", "no name"]),
    ("gravity,gravity\n1.04,9.99\n", G, ["line 1, column 2", "already"]),
    ("gravity [SG,plato\n1.04,9.99\n", G, ["line 1, column 1", "not closed"]),
    ("gravity,plato\n1.04,about ten\n", G, ["line 2, column 2", '"about ten" is not a number']),
    ("gravity,plato\n1.05,12\nn/a,12\n", G, ["line 3, column 1", '"n/a" is not a number', "specific gravity"]),
    ("gravity;plato\n1,04;9,99\n", G, ["line 2, column 1", "decimal point"]),
    ("gravity,plato\n,9.99\n", G, ["line 2, column 1", "empty"]),
    ("gravity,plato\nnan,9.99\n", G, ["line 2, column 1", "not a finite number"]),
    ("gravity,plato,remark\n1.04,9.99,x\n", (*G, "--compare", "plato"), ["line 1, column 3", '"remark"', "fits no argument", "--ignore"]),
    ("gravity,plato,brix\n1.04,9.99,x\n", G, ["line 1", '"plato"', '"brix"', "--compare"]),
    ("gravty,plato\n1.04,9.99\n", (*G, "--compare", "plato"), ["line 1, column 1", "fits no argument", 'did you mean "gravity"']),
    ("gravity,gravty\n1.04,9.99\n", ("--model", "extract.from_gravity.asbc", "--compare", "plato"), ['no column "plato"']),
    ("gravity\n1.04\n", G, ["line 1", "every column is an argument", "--compare"]),
    ("plato\n9.99\n", (*G, "--compare", "plato"), ["line 1", "no column for the argument gravity"]),
    ("boil_gravity,boil_minutes [min],brewry_constant\n1.05,60,4\n", ("--model", "bitterness.utilisation"), ["line 1, column 3", 'did you mean "brewery_constant"']),
    ("temperature,density [kg/m3]\n20,998.2\n", T, ["line 1, column 1", "the unit is missing", "temperature [degC]", "--units"]),
    ("temperature [degC],density\n20,998.2\n", T, ["line 1, column 2", "the unit is missing", "density [kg/m3]"]),
    ("temperature [psi],density [kg/m3]\n20,998.2\n", T, ["line 1, column 1", '"psi"']),
    ("temperature [degf],density [kg/m3]\n20,998.2\n", T, ["line 1, column 1", "degF"]),
    ("gravity [degP],plato\n10,9.99\n", G, ["line 1, column 1", "degP", "extract.to_gravity"]),
    ("gravity,plato [SG]\n1.04,9.99\n", G, ["line 1, column 2", "extract.from_gravity"]),
    ("temperature [degF],density [kg/m3]\n68,998.2\n", (*T, "--units", "temperature=degC"), ["the header says degF", "--units says degC"]),
    ("gravity,plato\n1.04,9.99\n", (*G, "--units", "temprature=degC"), ['no column "temprature"']),
    ("gravity,plato\n1.04,9.99\n", (*G, "--units", "degC"), ["two names with = between"]),
    ("gravity,plato\n1.04,9.99\n", (*G, "--argument", "gravti=gravity"), ['no argument "gravti"', 'did you mean "gravity"']),
    ("gravity,plato\n1.04,9.99\n", (*G, "--argument", "gravity=density"), ['no column "density"']),
    ("gravity,plato\n1.04,9.99\n", (*G, "--ignore", "remark"), ['no column "remark"']),
    ("gravity,plato\n1.04,9.99\n", (*G, "--result", "extract"), ['no result "extract"']),
    ("gravity,plato\n1.04,9.99\n", ("--model", "extract.from_gravty"), ['no model "extract.from_gravty"', "extract.from_gravity"]),
    ("gravity,plato\n1.04,9.99\n", ("--model", "extract"), ['"extract" is not one model']),
    ("bitterness,original_gravity,x\n30,1.05,1\n", ("--model", "bitterness.ratio"), ["not one model", "bu_gu"]),
    ("gravity,plato\n1.04,9.99\n", (*G, "--plot", "off.doc"), [".svg, .png or .pdf"]),
    ("gravity,plato\n12,9.99\n", G, ["no row can be compared", "line 2", "degrees Plato"]),
    ("srm,word\n3,straw\n", ("--model", "colour.word", "--plot", "off.svg"), ["no deviation to draw"]),
    ("sugar,yield\ncane,0.5\n", ("--model", "priming.sugar_yield"), ["line 2, column 1", '"cane" is not known']),
    ("masses [g],extracts,temperatures [degC],mixed [degC]\n1|1,10,20|40,30\n", ("--model", "thermal.mix"), ["line 2", "differ in length"]),
    ("gravity,plato\n1.04,9.99\n", (), ["--model"]),
    ("gravity,plato\n1.04,9.99\n", (*G, "--colour", "red"), ['no option "--colour"']),
]


@pytest.mark.parametrize("table,options,words", WRONG, ids=[" ".join(w[2])[:60] for w in WRONG])
def test_a_sentence_for_every_mistake(check: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, table: str | bytes, options: tuple[str, ...], words: list[str]) -> None:
    monkeypatch.chdir(tmp_path)
    code, out, err = check(table, *options)
    assert code == 2 and out == ""
    for w in words:
        assert w in err, err
    assert err.count("\n") == 1 and "Traceback" not in err
    assert [f.name for f in tmp_path.iterdir()] == ["table.csv"], "nothing is written"


def test_files_that_cannot_be_read(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for path, words in ((tmp_path / "absent.csv", "there is no file"), (tmp_path, "directory")):
        assert main(["check", str(path), *G]) == 2
        assert words in capsys.readouterr().err
    table = tmp_path / "table.csv"
    table.write_text("gravity,plato\n1.04,9.99\n")
    assert main(["check", str(table), *G, "--json", str(table)]) == 2
    assert "it would be lost" in capsys.readouterr().err
    assert main(["check", str(table), *G, "--json", str(tmp_path / "no" / "x.json"), "--plot", str(tmp_path / "x.svg")]) == 2
    assert "cannot be written" in capsys.readouterr().err
    assert [f.name for f in tmp_path.iterdir()] == ["table.csv"]


def test_a_picture(check: Any, tmp_path: Path) -> None:
    picture, data = tmp_path / "off.svg", tmp_path / "off.json"
    code, out, err = check(plato_table(), *G, "--plot", str(picture), "--json", str(data))
    assert code == 0 and "worst rows" in out and "saved" in err
    found = json.loads(data.read_text(encoding="utf-8"))
    root = ET.fromstring(picture.read_text(encoding="utf-8"))
    circles = list(root.iter("{http://www.w3.org/2000/svg}circle"))
    assert len(circles) == found["compared"]
    # The largest deviation is the dot farthest from the line of zero; a longer way down is a smaller value.
    heights = [float(c.get("cy", "nan")) for c in circles]
    deviations = [r["deviation"] for r in found["deviations"]]
    order = sorted(range(len(heights)), key=lambda k: -heights[k])
    assert [deviations[k] for k in order] == pytest.approx(sorted(deviations), abs=2e-5)


def test_a_picture_by_matplotlib(check: Any, tmp_path: Path) -> None:
    pytest.importorskip("matplotlib")
    assert check(plato_table(), *G, "--plot", str(tmp_path / "off.png"))[0] == 0
    assert (tmp_path / "off.png").read_bytes().startswith(b"\x89PNG")


def test_ticks() -> None:
    for lo, hi, about in ((0.0, 1.0, 5), (1.03, 1.1, 6), (-2e-7, 3e-7, 4), (0, 7e11, 3), (-1, 1, 2)):
        marks = _chart.ticks(lo, hi, about)
        assert 2 <= len(marks) <= about + 1 and all(lo - 1e-12 <= m <= hi * (1 + 1e-12) for m in marks)
        steps = {round((b - a) / (marks[1] - marks[0]), 6) for a, b in zip(marks, marks[1:])}
        assert steps == {1.0}
