"""The command as a process: what goes to which stream, in which signs, and how it ends."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.cli import main

Call = Callable[..., Any]


def test_status_0_a_result_and_nothing_else(process: Call, table: Call) -> None:
    ended = process("relate", table(), "F2", "BC")
    assert (ended.status, ended.err) == (0, "")
    assert "F2 – F1 – BC" in ended.out


def test_status_1_names_the_problems_and_prints_the_result(process: Call, loop: Path) -> None:
    ended = process("summary", loop, "--json")
    assert ended.status == 1
    assert ended.document["plants"] == 6
    assert ended.err.startswith("Error own_ancestor: ")
    assert "X" in ended.err


def test_status_2_leaves_standard_output_empty(process: Call, table: Call) -> None:
    ended = process("relate", table(), "F2", "bc", "--json")
    assert ended.status == 2
    assert ended.out == ""
    assert ended.err == "There is no plant 'bc' in this book. Did you mean BC?\n"


@pytest.mark.parametrize(
    ("text", "encoding"),
    [
        ("plant;seed_parent;pollen_parent;fixation\nTP;;;0,5\nÄ;;;\nF1;TP;Ä;\n", "utf-8-sig"),
        ("plant\tseed_parent\tpollen_parent\tfixation\r\nTP\t\t\t0.5\r\nF1\tTP\tÄ\t\r\n", "cp1252"),
        ('plant,seed_parent,pollen_parent,fixation\n"TP","",,0.5\nF1,TP,"Ä",\n', "utf-8"),
    ],
)
def test_tables_as_spreadsheets_write_them(
    call: Call, table: Call, text: str, encoding: str
) -> None:
    ended = call("coefficients", table(text, encoding=encoding), "--json")
    assert ended.status == 0
    founders = ended.document["base"]["founders"]
    assert {held["plant"]: held["fixation"] for held in founders} == {"TP": 0.5, "Ä": 1.0}


def test_a_terminal_that_knows_only_ascii(process: Call, table: Call) -> None:
    plain = {"PYTHONIOENCODING": "ascii"}
    path = table("plant,seed_parent,pollen_parent\nÄ1,,\nB,,\nC,Ä1,B\nD,B,Ä1\n")
    ended = process("summary", path, encoding="ascii", **plain)
    assert ended.status == 0
    assert "A1 <-> B" in ended.out
    assert "A1 x B" in ended.out
    found = process("summary", path, "--json", encoding="ascii", **plain)
    assert found.document["reciprocal_pairs"][0]["parents"] == ["Ä1", "B"]


def test_a_reader_that_stops_early(table: Call) -> None:
    rows = "".join(f"P{n},,\n" for n in range(3000))
    path = table("plant,seed_parent,pollen_parent\n" + rows)
    reading, writing = os.pipe()
    os.close(reading)
    root = str(Path(__file__).resolve().parent.parent.parent)
    done = subprocess.run(
        [sys.executable, "-m", "pedigreeview", "check", str(path), "--json"],
        stdout=writing,
        stderr=subprocess.PIPE,
        stdin=subprocess.DEVNULL,
        env={**os.environ, "PYTHONPATH": root},
    )
    os.close(writing)
    assert (done.returncode, done.stderr) == (0, b"")


def test_a_disk_that_is_full(
    table: Call, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    class Full:
        encoding = "utf-8"

        def write(self, text: str) -> int:
            raise OSError(28, "No space left on device")

        def fileno(self) -> int:
            raise OSError

    monkeypatch.setattr(sys, "stdout", Full())
    assert main(["summary", str(table())]) == 2
    assert capsys.readouterr().err == "The system refused: No space left on device.\n"


def test_no_streams_at_all(table: Call, monkeypatch: pytest.MonkeyPatch) -> None:
    # A program started without a console on Windows has none.
    monkeypatch.setattr(sys, "stdout", None)
    monkeypatch.setattr(sys, "stderr", None)
    assert main(["summary", str(table())]) == 0


def test_a_column_that_is_not_known_is_told(call: Call, table: Call) -> None:
    ended = call("summary", table("plant,seed_parent,pollen_parent,hat\nTP,,,red\n"), "--json")
    assert ended.status == 0
    assert "hat" in ended.err
    assert json.loads(ended.out)["plants"] == 1
