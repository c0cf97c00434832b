"""What the README shows has to run: its Python, and its C++ against the headers that the installed package carries."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

import wortmath as wm

README = Path(__file__).parents[2] / "README.md"


def blocks(language: str) -> list[str]:
    return re.findall(rf"```{language}\n(.*?)```", README.read_text(encoding="utf-8"), re.S)


def test_python(capsys: pytest.CaptureFixture[str]) -> None:
    (code,) = blocks("python")
    exec(compile(code, "README", "exec"), {})
    assert "Tinseth" in capsys.readouterr().out


def compiler() -> str:
    found = shutil.which("g++") or shutil.which("c++") or shutil.which("clang++")
    if not found:
        pytest.skip("no C++ compiler on this machine")
    return found


def headers() -> str:
    folder = Path(wm.get_include())
    if not folder.is_dir():
        pytest.skip("this copy of the package was not installed, and carries no headers")
    return str(folder)


@pytest.mark.parametrize("source", ["README", "consumer"])
def test_cpp_from_the_headers_of_the_package(source: str, tmp_path: Path) -> None:
    code = blocks("cpp")[0] if source == "README" else (Path(__file__).parents[1] / "consumer" / "headers_only.cpp").read_text(encoding="utf-8")
    (tmp_path / "main.cpp").write_text(code, encoding="utf-8")
    program = tmp_path / "program"
    built = subprocess.run([compiler(), "-std=c++20", "-O1", "-Wall", "-Wextra", "-Werror", "-I", headers(), str(tmp_path / "main.cpp"), "-o", str(program)],
                           capture_output=True, text=True, check=False)
    assert built.returncode == 0, built.stderr[:2000]
    ran = subprocess.run([str(program)], capture_output=True, text=True, check=True)
    assert "11.91 degP" in ran.stdout


def test_the_first_lines_of_the_command() -> None:
    done = subprocess.run([sys.executable, "-m", "wortmath", "demo"], capture_output=True, text=True, check=True)
    assert "GATHER" in done.stdout
    assert max(map(len, done.stdout.splitlines())) <= 80
