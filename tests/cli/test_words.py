"""Words that are wrong, and input that is wrong: one sentence each on standard error, status 2."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from pedigreeview import __version__
from pedigreeview.cli import COMMANDS, command_parsers
from pedigreeview.places import demo

Call = Callable[..., Any]


def refused(ended: Any) -> list[str]:
    assert ended.status == 2
    assert ended.out == ""
    assert "Traceback" not in ended.err
    return ended.err.splitlines()


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (("summary",), "FILE must be given. See pedigreeview summary --help."),
        (("coefficients",), "FILE must be given. See pedigreeview coefficients --help."),
        (("relate", "x.csv", "A"), "B must be given. See pedigreeview relate --help."),
        (("diagram", "x.csv"), "--out must be given. See pedigreeview diagram --help."),
        (("convert", "x.csv"), "TO must be given. See pedigreeview convert --help."),
        (("sumary", "x.csv"), "There is no command 'sumary' and no file of this name."),
        (("summary", "x.csv", "--jsn"), "This was not understood: --jsn."),
        (("summary", "x.csv", "--founders-as", "line"), "--founders-as: invalid choice: 'line'"),
        (("summary", "x.csv", "--fixation", "2"), "--fixation: '2' is no number from 0 to 1"),
        (("summary", "x.csv", "--fixation", "nan"), "--fixation: 'nan' is no number from 0 to 1"),
        (("diagram", "x.csv", "--out", "x.svg", "--up", "-1"), "--up: "),
        (("diagram", "x.csv", "--out", "x.svg", "--down", "2.5"), "--down: '2.5' is no whole"),
        (("diagram", "x.csv", "--out", "x.svg", "--margin", "51"), "--margin: '51' is no margin"),
        (("diagram", "x.csv", "--out", "x.svg", "--margin", "-3"), "--margin: '-3' is no margin"),
        (("diagram", "x.csv", "--out", "x.svg", "--margin", "nan"), "--margin: 'nan' is no margin"),
        (("diagram", "x.csv", "--out", "x.pdf", "--paper", "A9"), "--paper: invalid choice: 'A9'"),
        (("diagram", "x.csv", "--out", "x.svg", "--margin"), "--margin: expected one argument"),
        (("diagram", "x.csv", "--out", "x.svg", "--caption"), "--caption: expected one argument"),
        (("diagram", "x.csv", "--out", "x.bmp"), "x.bmp: A picture that ends in .bmp cannot"),
        (("diagram", "x.csv", "--out", "x"), "x: It has no ending. Use one of .svg"),
        (("convert", "x.csv", "x.bmp"), "x.bmp: A file that ends in .bmp cannot be written."),
        (("convert", "x.csv", "x.ods"), "x.ods: A file that ends in .ods cannot be written."),
        (("convert", "x.csv", "-", "--to", "ods"), "-: The format 'ods' is read, but not written"),
        (("import",), "TABLE must be given. See pedigreeview import --help."),
        (("matrix", "x.csv"), "--out must be given. See pedigreeview matrix --help."),
        (("open", "gone.csv"), "gone.csv: There is no such file or folder."),
        (("gone.csv",), "gone.csv: There is no such file or folder."),
        (("summary", "gone.csv"), "gone.csv: There is no such file or folder."),
    ],
)
def test_wrong_words(call: Call, words: tuple[str, ...], sentence: str) -> None:
    lines = refused(call(*words))
    assert len(lines) == 1
    assert lines[0].startswith(sentence)


def test_unknown_plants_are_all_named_with_the_nearest(call: Call, table: Call) -> None:
    lines = refused(call("coefficients", table(), "--plant", "f1", "--plant", "F22", "--json"))
    assert lines == [
        "There is no plant 'f1' in this book. Did you mean F1?",
        "There is no plant 'F22' in this book. Did you mean F2?",
    ]
    far = refused(call("relate", table(), "TP", "zzzz"))
    assert far == ["There is no plant 'zzzz' in this book. Its first plants are TP, BA, F1."]


def test_a_cross_is_no_plant(call: Call, table: Call) -> None:
    lines = refused(call("relate", table(), "TP", "TP × BA"))
    assert lines == ["'TP × BA' is a cross, not a plant of this book; its first plants are F1."]


def test_a_name_finds_its_code(call: Call, table: Call) -> None:
    text = "plant,seed_parent,pollen_parent,name\nTP,,,Tarnwick Pale\n"
    lines = refused(call("coefficients", table(text), "--plant", "tarnwick pale"))
    assert lines == ["There is no plant 'tarnwick pale' in this book. Did you mean TP?"]


def test_all_faults_of_a_file_are_listed_at_once(call: Call, table: Call) -> None:
    text = "plant,seed_parent,pollen_parent,selfings,fixation\nTP,,,,2\nTP,,,,\nF1,TP,BA,half,\n"
    lines = refused(call("summary", table(text)))
    assert len(lines) == 4
    assert lines[0].startswith("peas.csv: 3 faults; nothing was taken in.")
    for row, column in ((2, "fixation"), (3, "plant"), (4, "selfings")):
        assert any(f"row {row}, column {column}" in line for line in lines[1:])


def test_a_folder_that_is_no_book(call: Call, tmp_path: Path) -> None:
    (tmp_path / "empty").mkdir()
    lines = refused(call("summary", tmp_path / "empty"))
    assert "datapackage.json" in lines[0]


def test_a_place_that_cannot_be_written(call: Call, table: Call, tmp_path: Path) -> None:
    for words in (
        ("diagram", table(), "--out", tmp_path / "gone" / "n.dot"),
        ("convert", table(), tmp_path / "gone" / "t.csv"),
    ):
        assert len(refused(call(*words))) == 1


def test_a_fault_of_the_program_is_said_without_a_traceback(
    call: Call, table: Call, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object, **__: object) -> None:
        raise ZeroDivisionError("a bug")

    monkeypatch.setattr("pedigreeview.cli.read", broken)
    lines = refused(call("summary", table()))
    assert lines[0].startswith("This is a fault of the program, not yours: ZeroDivisionError")
    monkeypatch.setenv("PEDIGREEVIEW_DEBUG", "1")
    assert "Traceback" in call("summary", table()).err


def test_stopping_by_the_keyboard(call: Call, table: Call, monkeypatch: pytest.MonkeyPatch) -> None:
    def stopped(*_: object, **__: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("pedigreeview.cli.read", stopped)
    assert refused(call("summary", table())) == ["Stopped."]


# help -------------------------------------------------------------------------------------------


def test_help_names_every_command(call: Call) -> None:
    ended = call("--help")
    assert ended.status == 0
    assert ended.err == ""
    for name in COMMANDS:
        assert f"\n    {name}" in ended.out
    assert "exit status: 0 done; 1 done" in ended.out


@pytest.mark.parametrize("command", list(COMMANDS))
def test_help_of_a_command_has_examples_and_founders(call: Call, command: str) -> None:
    ended = call(command, "--help")
    assert ended.status == 0
    assert f"examples:\n  pedigreeview {command}" in ended.out
    assert "--founders-as variety|plant" in ended.out
    assert "--fixation X" in ended.out


def test_the_commands_are_those_agreed() -> None:
    agreed = ["open", "summary", "coefficients", "relate", "diagram", "check", "convert"]
    assert list(COMMANDS)[: len(agreed)] == agreed
    assert list(COMMANDS) == list(command_parsers())


def test_the_version(call: Call) -> None:
    ended = call("--version")
    assert (ended.status, ended.out) == (0, f"pedigreeview {__version__}\n")


def test_what_is_written_does_not_lie_inside_what_is_read(call: Call, tmp_path: Path) -> None:
    book = tmp_path / "book"
    assert call("convert", demo("two_peas_both_ways"), book).status == 0
    before = {path.name: path.read_bytes() for path in book.iterdir()}
    for target in (book / "plants.csv", book / "inner"):
        ended = call("convert", book, target, "--replace")
        assert ended.status == 2
        assert "one inside the other" in ended.err
    assert {path.name: path.read_bytes() for path in book.iterdir()} == before


def test_a_code_that_starts_with_a_dash_has_its_way(call: Call, table: Call) -> None:
    path = table("plant,seed_parent,pollen_parent\n-a,,\nb,,\nc,-a,b\n")
    refused = call("relate", path, "-a", "c")
    assert refused.status == 2
    assert "goes after --" in refused.err
    assert call("relate", path, "--", "-a", "c").status == 0
    assert call("coefficients", path, "--plant=-a").status == 0
