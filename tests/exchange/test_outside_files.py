"""Files that LibreOffice wrote, read right; PDF and SVG that we write, read by other programs.

How the files in `data` were made is said in `data/how_made.md`.
"""

from __future__ import annotations

import datetime
import shutil
import subprocess
from pathlib import Path
from xml.etree import ElementTree

import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.cli import main
from pedigreeview.exchange import read_book
from pedigreeview.exchange.import_plan import guess_plan
from pedigreeview.exchange.importing import carry_out
from pedigreeview.exchange.spreadsheets import open_table

DATA = Path(__file__).parent / "data"


@pytest.mark.parametrize("name", ["newcomers.ods", "newcomers.xlsx", "newcomers_semicolon.csv"])
def test_a_table_through_libreoffice_is_the_same(name: str, root: Path) -> None:
    wanted = read_book(root / "demo_pedigrees" / "newcomers_table.csv")
    found = read_book(DATA / name)
    assert (found.plants, found.crosses) == (wanted.plants, wanted.crosses)
    assert len(found.plants) == 26


@pytest.mark.parametrize("name", ["peas.ods", "peas.xlsx"])
def test_the_demo_through_libreoffice_is_the_same(name: str) -> None:
    wanted, found = read_book(DATA / "peas.csv"), read_book(DATA / name)
    assert (found.plants, found.crosses) == (wanted.plants, wanted.crosses)
    assert found.plants["21-01-4"].cross == "TP ⊗"


def test_codes_that_became_dates_are_named() -> None:
    """LibreOffice opened the CSV file with the columns of codes not set to text."""
    book = read_book(DATA / "codes_as_dates.xlsx")
    assert "2021-01-03" in book.plants
    (said,) = [remark for remark in book.remarks if "dates" in remark]
    assert "'2021-01-01' in row 4" in said
    assert not [remark for remark in read_book(DATA / "peas.xlsx").remarks if "dates" in remark]


@pytest.mark.parametrize("name", ["newcomers.ods", "newcomers.xlsx"])
def test_dates_are_dates(name: str) -> None:
    (table,) = open_table(DATA / name).tables
    rows = {cells[0]: cells for _, cells in table.below(table.heading)}
    assert rows["LH1"][4] == datetime.date(2020, 2, 20)
    # A year alone is a number, and read as the year.
    assert rows["Lantern"][4] == 2019


@pytest.mark.parametrize("name", ["garden.ods", "garden.xlsx"])
def test_formulas_percentages_and_remarks(name: str) -> None:
    sheets = open_table(DATA / name)
    assert [table.name for table in sheets.tables] == ["remarks", "plants"]
    book = read_book(DATA / name)
    assert list(book.plants) == ["Größe", "24", "A ♀×♂"]
    wide, short, child = book.plants.values()
    assert (wide.fixation, wide.sown) == (0.9, "2021-05-17")
    assert wide.note.split("\n") == ["two   blanks", "and a line"]
    # The formulas give what LibreOffice worked out: 1/4 + 90% - 0.4, and a text that begins with =.
    assert short.fixation == pytest.approx(0.75)
    assert short.note == "=cmd1"
    assert child.note == '<b> & "quoted", ;'
    cross = book.crosses[child.cross]
    assert (cross.seed_parent, cross.pollen_parent, child.sown) == ("Größe", "24", "2022")


@pytest.mark.parametrize("name", ["garden.ods", "garden.xlsx"])
def test_they_are_imported_as_any_table(name: str) -> None:
    sheets = open_table(DATA / name)
    plan = guess_plan(sheets, "plants")
    assert plan.of("plant") is not None
    assert list(carry_out(sheets, plan).book.plants) == ["Größe", "24", "A ♀×♂"]


def test_text_in_other_codings() -> None:
    # The day is written the American way there; the letters are read all the same.
    for name in ("garden_utf16.csv", "garden_windows.csv"):
        with pytest.raises(Fault) as caught:
            read_book(DATA / name)
        (said,) = caught.value.lines()[1:]
        assert "'05/17/2021' is no date. Write 2021-05-17." in said
        assert "Größe" in said
    sheets = open_table(DATA / "garden_utf16.csv")
    found = carry_out(sheets, guess_plan(sheets)).book
    assert list(found.plants) == ["Größe", "24", "A ♀×♂"]
    assert found.plants["Größe"].sown == "2021-05-17"
    text = (DATA / "garden_windows.csv").read_bytes().replace(b"05/17/2021", b"2021-05-17")
    from pedigreeview.exchange.formats import FORMATS, read_bytes_as

    book = read_bytes_as(text, FORMATS["table"], "t.csv")
    assert list(book.plants)[:2] == ["Größe", "24"]
    assert "Windows-1252" in book.remarks[0]


def test_a_picture_is_read_by_an_xml_parser(tmp_path: Path, root: Path) -> None:
    out = tmp_path / "peas.svg"
    assert main(["diagram", str(DATA / "peas.csv"), "--out", str(out)]) in (0, 1)
    drawing = ElementTree.fromstring(out.read_bytes())
    said = {"".join(element.itertext()) for element in drawing.iter()}
    assert {"TP", "BA", "21-01-3"} <= said


@pytest.mark.skipif(shutil.which("pdftotext") is None, reason="pdftotext is not installed")
def test_a_pdf_is_read_by_pdftotext(tmp_path: Path) -> None:
    out = tmp_path / "peas.pdf"
    assert main(["diagram", str(DATA / "peas.csv"), "--out", str(out)]) in (0, 1)
    read = subprocess.run(
        ["pdftotext", "-layout", str(out), "-"], capture_output=True, check=True, timeout=60
    )
    said = read.stdout.decode("utf-8")
    for code in ("TP", "BA", "21-01-3", "21-01-4"):
        assert code in said
    assert not read.stderr.decode()
