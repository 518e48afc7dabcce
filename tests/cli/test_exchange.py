"""Tables in and out on the command line: convert, import, merge, matrix, notation, streams."""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from pedigreeview.commands.convert import FORMAT_NAMES
from pedigreeview.commands.tables_out import MATRIX_KINDS, NOTATION_STYLES
from pedigreeview.exchange import read_book
from pedigreeview.exchange.formats import FORMATS
from pedigreeview.exchange.matrices import KINDS
from pedigreeview.exchange.plant_notation import STYLES
from pedigreeview.exchange.spreadsheet_writing import workbook_bytes
from tests.cli.conftest import environment

Call = Callable[..., Any]

FOREIGN = "No,Cross\n24-1,Moss x Ash\n24-2,moss x Fern\n"


def test_the_words_are_those_of_the_library() -> None:
    assert set(FORMAT_NAMES) == set(FORMATS)
    assert set(MATRIX_KINDS) == set(KINDS)
    assert set(NOTATION_STYLES) == set(STYLES)


@pytest.mark.parametrize(
    "name",
    ["b.pedbook", "b.xlsx", "b.brapi.json", "b.graphml", "b.gexf", "b.json", "folder", "b.tsv"],
)
def test_convert_goes_by_the_ending(call: Call, table: Call, tmp_path: Path, name: str) -> None:
    ended = call("convert", table(), tmp_path / name)
    assert ended.status == 0
    assert f"Wrote {tmp_path / name}" in ended.out
    assert set(read_book(tmp_path / name).plants) == {"F2", "F1", "TP", "BA", "R1", "BC"}
    again = call("convert", table(), tmp_path / name)
    assert again.status == 2
    assert "This exists already" in again.err
    assert call("convert", table(), tmp_path / name, "--replace").status == 0


def test_what_a_format_cannot_carry_is_said_first(call: Call, table: Call, tmp_path: Path) -> None:
    ended = call("convert", table(), tmp_path / "b.mcpd.csv")
    assert "Not carried: 4 plants with parents: only founders have passport data." in ended.err
    assert ended.status == 0


def test_streams(tmp_path: Path) -> None:
    def run(*words: str, data: bytes) -> subprocess.CompletedProcess[bytes]:
        return subprocess.run(
            [sys.executable, "-m", "pedigreeview", *words],
            input=data, capture_output=True, cwd=tmp_path, env=environment(), timeout=120,
        )  # fmt: skip

    table = b"plant,seed_parent,pollen_parent\nF1,TP,BA\n"
    out = run("convert", "-", "-", "--to", "brapi", data=table)
    assert out.returncode == 0
    assert json.loads(out.stdout)["crosses"]["result"]["data"][0]["crossDbId"] == "TP × BA"
    back = run("convert", "-", "-", "--from", "brapi", "--to", "table", data=out.stdout)
    assert back.stdout.decode() == "plant,seed_parent,pollen_parent,cross\n" + (
        "F1,TP,BA,TP × BA\nTP,,,\nBA,,,\n"
    )
    assert run("convert", "-", "-", "--to", "folder", data=table).returncode == 2
    come = run("import", "-", "-", "--to", "table", data=FOREIGN.encode())
    assert come.returncode == 1  # 'Moss' and 'moss' are named
    assert come.stdout.startswith(b"plant,seed_parent,pollen_parent,cross\n24-1,Ash,Moss,")
    assert os.listdir(tmp_path) == []


@pytest.mark.parametrize("words", [("convert", "-", "out.csv"), ("import", "-", "--preview")])
def test_a_stream_without_an_end_is_refused(
    words: tuple[str, ...],
    call: Call,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    from pedigreeview.exchange import text_files

    monkeypatch.setattr(text_files, "MOST_UNPACKED", 100_000)
    monkeypatch.chdir(tmp_path)
    with Path(os.devnull).with_name("zero").open("rb") as endless:
        monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(endless, encoding="latin-1"))
        ended = call(*words)
    assert ended.status == 2
    assert "standard input: The file is larger than" in ended.err
    assert not list(tmp_path.iterdir())


def test_import_shows_its_guesses_and_writes_nothing(
    call: Call, table: Call, tmp_path: Path
) -> None:
    ended = call("import", table(FOREIGN, "f.csv"), "--preview")
    assert "both parents in one cell" in ended.out
    assert "24-1  Moss x Ash" in ended.out
    assert "May be one plant: 'Moss', 'moss'" in ended.err
    assert sorted(os.listdir(tmp_path)) == ["f.csv"]


def test_import_by_the_person_s_words(call: Call, tmp_path: Path) -> None:
    rows = [["K1", "A", "natural", "5/3/2024", "12"], ["K2", "A", "b", "6/3/2024", "x"]]
    data = workbook_bytes(
        [("old", ["a"], []), ("S 2", ["Tag", "Mum", "Dad", "When", "Tall"], rows)]
    )
    source, target = tmp_path / "t.xlsx", tmp_path / "t.csv"
    source.write_bytes(data)
    ended = call(
        "import", source, target, "--sheet", "S 2", "--heading-row", "1", "--form", "plants",
        "--column", "Tag=plant", "--column", "Mum=seed_parent", "--column", "Dad=pollen_parent",
        "--column", "When=sown", "--column", "Tall=trait:height", "--dates", "month-day",
        "--unknown", "natural=code", "--same", "b=B",
    )  # fmt: skip
    assert ended.status == 0
    assert target.read_text().splitlines()[1:3] == [
        "K1,A,natural,A × natural,2024-05-03", "K2,A,B,A × B,2024-06-03",
    ]  # fmt: skip
    assert "Not carried: The table 'scores' with its 2 rows." in ended.err


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (("--column", "Mum"), "has no '='"),
        (("--column", "Mum=x"), "has no column 'Mum'"),
        (("--column", "No=dam"), "cannot mean 'dam'"),
        (("--unknown", "?=maybe"), "cannot mean 'maybe'"),
        (("--heading-row", "99"), "Row 99"),
        (("--sheet", "x"), "no sheet 'x'"),
        ((), "TO must be given"),
    ],
)
def test_wrong_words_of_import(
    call: Call, table: Call, words: tuple[str, ...], sentence: str
) -> None:
    ended = call("import", table(FOREIGN, "f.csv"), *words)
    assert ended.status == 2
    assert sentence in ended.err


def test_import_into_a_book_is_one_step_of_it(call: Call, table: Call, tmp_path: Path) -> None:
    from pedigreeview.book.book_file import BookFile

    book = tmp_path / "mine.pedbook"
    call("convert", table(), book)
    more = table("plant,seed_parent,pollen_parent,name\nTP,,,Tarn\nN1,F1,BA,\n", "more.csv")
    ended = call("import", more, "--into", book)
    assert ended.status == 0
    assert "TP, name: yours blank, theirs Tarn; theirs is taken." in ended.err
    with BookFile.open(book) as file:
        assert file.undo_words == "Import more.csv"
        assert file.book.plants["TP"].name == "Tarn"
        assert "N1" in file.book.plants
        file.undo()
        assert "N1" not in file.book.plants
    other = tmp_path / "both.csv"
    assert call("import", more, other, "--into", book, "--take", "mine").status == 0
    assert read_book(other).plants["TP"].name == ""


def test_merge_shows_new_names_and_writes_both(call: Call, table: Call, tmp_path: Path) -> None:
    one = table()
    two = table("plant,seed_parent,pollen_parent\nF1,BA,X\nG,F1,F1\n", "two.csv")
    shown = call("merge", one, two, "--preview", "--before", "Ann-")
    assert "Clashes in plants: their 'F1' becomes 'Ann-F1'." in shown.err
    assert call("merge", one, two).status == 2
    ended = call("merge", one, two, tmp_path / "both.csv", "--before", "Ann-")
    assert ended.status == 0
    book = read_book(tmp_path / "both.csv")
    assert book.crosses[book.plants["G"].cross].seed_parent == "Ann-F1"
    assert book.crosses[book.plants["F1"].cross].seed_parent == "TP"


@pytest.mark.parametrize("command", ["import", "merge", "import into a new file"])
def test_import_and_merge_that_are_stopped_change_nothing(
    command: str, call: Call, table: Call, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from pedigreeview.book.faults import Cancelled
    from pedigreeview.commands import tables_in

    book = tmp_path / "mine.pedbook"
    call("convert", table(), book)
    rows = "".join(f"N{at},F1,BA\n" for at in range(600))
    more = table(f"plant,seed_parent,pollen_parent\n{rows}", "more.csv")
    target = tmp_path / "both.csv"
    words = {
        "import": ("import", more, "--into", book),
        "merge": ("merge", book, more, target),
        "import into a new file": ("import", more, target, "--into", book),
    }[command]
    name = "merge_books" if command == "merge" else "import_table"
    real, calls = getattr(tables_in, name), 0
    last = 10**9

    def tick() -> None:
        nonlocal calls
        calls += 1
        if calls >= last:
            raise Cancelled

    monkeypatch.setattr(tables_in, name, lambda *given: real(*given, tick))
    before = book.read_bytes()
    last, tried = 1, 0
    ended = call(*words)
    while ended.status == 2:
        assert ended.err.splitlines()[-1] == "Stopped."
        assert book.read_bytes() == before
        assert not target.exists()
        tried += 1
        last, calls = last + 4, 0
        ended = call(*words)
    assert tried > 4
    assert ended.status == 0
    assert "N599" in read_book(book if command == "import" else target).plants


def test_matrix(call: Call, table: Call, tmp_path: Path) -> None:
    path = tmp_path / "m.npz"
    ended = call("matrix", table(), "--out", path, "--plant", "F1", "TP")
    assert ended.status == 0
    assert "Base:" in ended.out
    with np.load(path) as held:
        assert held["matrix"].tolist() == [[0.5, 0.5], [0.5, 1.0]]
    assert call("matrix", table(), "--out", path).status == 2
    assert call("matrix", table(), "--out", path, "--replace").status == 0


def test_notation(call: Call, table: Call) -> None:
    assert call("notation", table(), "BC").out == "TP*2/BA\n"
    ended = call("notation", table(), "F2", "R1", "--style", "cross")
    assert ended.out == "F2: TP × BA\nR1: BA × TP\n"
    assert "Selfings are not written." in ended.err
    document = call("notation", table(), "F2", "--json").document
    assert document == {
        "style": "slash",
        "plants": [{"plant": "F2", "notation": "TP/BA", "said": ["Selfings are not written."]}],
    }
    assert call("notation", table(), "nobody").status == 2


def test_coefficients_as_a_table(call: Call, table: Call, tmp_path: Path) -> None:
    path = tmp_path / "c.csv"
    source = table("plant,seed_parent,pollen_parent\nF1,=TP,BA\nX,Y,BA\nY,X,BA\n")
    assert call("coefficients", source, "--out", path).status == 1
    lines = path.read_text().splitlines()
    assert lines[0].startswith("plant,inbreeding,inbreeding_exact,kind,")
    assert lines[0].endswith(",withheld,share of =TP,share of BA")
    held = {line.split(",")[0]: line.split(",") for line in lines[1:]}
    assert held["'=TP"][1] == "1"
    assert held["F1"][-2:] == ["0.5", "0.5"]
    assert held["X"][-3] == "own_ancestor"
    assert call("coefficients", source, "--out", path).status == 2
