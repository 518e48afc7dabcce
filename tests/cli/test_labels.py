"""`labels` and `sheets` on the command line."""

from __future__ import annotations

import pytest

from pedigreeview.cli import main
from pedigreeview.commands.labels import LABEL_KINDS, LISTS, PAPERS
from pedigreeview.places import demo
from pedigreeview.reports.garden_sheets import is_sheet_number
from pedigreeview.reports.label_content import KINDS
from pedigreeview.reports.label_sheets import PAPER_MM

PEAS = str(demo("two_peas_both_ways"))


def test_words_are_those_of_the_reports():
    assert LABEL_KINDS == KINDS
    assert tuple(PAPER_MM) == PAPERS


@pytest.mark.parametrize("kind", LABEL_KINDS)
def test_labels_of_each_kind(tmp_path, capsys, kind):
    out = tmp_path / "a.pdf"
    assert main(["labels", PEAS, "--for", kind, "-o", str(out)]) == 0
    assert out.read_bytes().startswith(b"%PDF")
    said, told = capsys.readouterr()
    assert said.startswith(f"Wrote {out}: ")
    assert told == ""


@pytest.mark.parametrize("what", LISTS)
def test_each_list(tmp_path, capsys, what):
    out = tmp_path / "a.pdf"
    words = ["sheets", PEAS, "--list", what, "-o", str(out), "--paper", "Letter"]
    assert main(words) == 0
    assert out.read_bytes().startswith(b"%PDF")
    said = capsys.readouterr().out
    assert "of Letter, " in said
    if what in ("garden", "pollinations", "scores", "rows"):
        numbers = said.splitlines()[1].rstrip(".").replace(",", "").split()
        assert is_sheet_number(numbers[-1])
        assert sum(map(is_sheet_number, numbers)) == (3 if what == "garden" else 1)


def test_options_reach_the_paper(tmp_path, capsys):
    out = str(tmp_path / "a.pdf")
    words = ["labels", PEAS, "--for", "packets", "--code", "K21-1", "K21-2", "-o", out]
    words += ["--sheet", "A4 3x8 70x36", "--start", "24", "--copies", "2", "--each", "3", "--qr"]
    assert main([*words, "--no-marks"]) == 0
    said = capsys.readouterr().out
    assert "12 labels on 2 sheets (A4, 3 × 8 labels of 70 × 36 mm)" in said
    assert "number 12" in said
    words = ["labels", PEAS, "--for", "flowers", "--code", "P21-1", "--every", "-o", out]
    assert main(words) == 0
    assert "5 labels" in capsys.readouterr().out
    words = ["sheets", PEAS, "--list", "crossing", "--code", "21-01", "--no-landscape", "-o", out]
    assert main([*words, "--date", "2021-06-11"]) == 0
    assert "1 page of A4, portrait." in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["labels", "--for", "walls", "-o", "a.pdf"], "flowers"),
        (["labels", "--for", "pots", "-o", "a.png"], "written as PDF"),
        (["labels", "--for", "pots", "--code", "X", "-o", "a.pdf"], "no plant or cross 'X'"),
        (["labels", "--for", "pots", "--start", "0", "-o", "a.pdf"], "no number from 1 on"),
        (["labels", "--for", "pots", "--sheet", "blue", "-o", "a.pdf"], "no label sheet 'blue'"),
        (["labels", "--for", "pots"], "-o/--out must be given"),
        (["sheets", "--list", "beds", "--code", "bed 99", "-o", "a.pdf"], "no bed or row"),
        (["sheets", "--list", "plan", "--date", "soon", "-o", "a.pdf"], "no date"),
    ],
)
def test_what_cannot_be_done_is_said(tmp_path, monkeypatch, capsys, words, says):
    monkeypatch.chdir(tmp_path)
    assert main([words[0], PEAS, *words[1:]]) == 2
    said, told = capsys.readouterr()
    assert said == ""
    assert says in told
    assert list(tmp_path.iterdir()) == []
