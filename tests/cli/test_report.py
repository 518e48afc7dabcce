"""`report` on the command line."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest

from pedigreeview.cli import main
from pedigreeview.commands.labels import PAPERS
from pedigreeview.commands.report import PARTS
from pedigreeview.places import demo
from pedigreeview.reports.label_sheets import PAPER_MM
from pedigreeview.reports.report_words import part_words

PEAS = str(demo("two_peas_both_ways"))


def test_words_are_those_of_the_reports() -> None:
    assert tuple(part_words()) == PARTS
    assert tuple(PAPER_MM) == PAPERS


def test_a_plant_as_pdf_and_a_line_as_html(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    pdf, html = tmp_path / "a.pdf", tmp_path / "a.html"
    assert main(["report", PEAS, "21-01-3", "-o", str(pdf), "--paper", "Letter"]) == 0
    assert pdf.read_bytes().startswith(b"%PDF")
    said = capsys.readouterr().out
    assert said.startswith(f"Wrote {pdf}: ")
    assert "of Letter." in said
    words = ["report", PEAS, "19-4-2", "--line", "--out", str(html), "--by", "R. W."]
    words += ["--without", "picture", "reciprocals", "--date", "2026-09-01", "--caption", "Mine."]
    assert main(words) == 0
    text = "".join(ElementTree.parse(html).getroot().itertext())
    for piece in ("The history of 19-4-2", "R. W., 2026-09-01", "Mine.", "Selection"):
        assert piece in text
    assert "Both directions" not in text


def test_two_processes_write_the_same_pdf(tmp_path: Path) -> None:
    held = []
    for name in ("a.pdf", "b.pdf"):
        words = ["report", PEAS, "TP", "-o", str(tmp_path / name)]
        subprocess.run(
            [sys.executable, "-m", "pedigreeview", *words], check=True, capture_output=True
        )
        held.append((tmp_path / name).read_bytes())
    assert held[0] == held[1]


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["TP", "--out", "a.txt"], "written as PDF or HTML"),
        (["nobody", "--out", "a.pdf"], "no plant 'nobody'"),
        (["TP", "--line", "--out", "a.pdf"], "TP is a founder"),
        (["TP"], "-o/--out must be given"),
    ],
)
def test_what_is_refused(
    words: list[str],
    told: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["report", PEAS, *words]) == 2
    assert told in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []
