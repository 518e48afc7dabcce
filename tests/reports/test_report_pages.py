"""A report on paper: read by an outside reader, whole rows, every page numbered, the same twice."""

from __future__ import annotations

import re
import shutil
import subprocess
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtGui import QColor, QImage, QPainter

import pedigreeview
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Photo
from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.theme import theme
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.reports.line_history import line_history
from pedigreeview.reports.paper_type import width_of
from pedigreeview.reports.report_blocks import lines_of
from pedigreeview.reports.report_model import Cover, Picture, Report, Section, Table, Text
from pedigreeview.reports.report_pages import MARGIN, ReportPages, lay_out_report
from pedigreeview.reports.report_pdf import save_report_pdf
from pedigreeview.reports.report_photos import jpeg_of, photo_bytes, photo_image
from pedigreeview.reports.report_picture import line_picture, line_view

needs_reader = pytest.mark.skipif(not shutil.which("pdftotext"), reason="no pdftotext")
COVER = Cover(("R. W., Tarnwick", "Allotment 7"), "2026-09-01", ("Sweet and dwarf.",))


@pytest.fixture(scope="module")
def peas() -> PedigreeNetwork:
    return pedigreeview.read(demo("two_peas_both_ways"))


@pytest.fixture(scope="module")
def history(peas: PedigreeNetwork) -> Report:
    return line_history(peas, "19-4-2").with_cover(COVER)


def small(*items: Text | Table) -> Report:
    return Report("plant", "A", "A", "a book", (Section("what", "What it is", items),))


def texts(pages: ReportPages) -> list[list[str]]:
    return [
        [piece.text for _, block in page for piece in block.pieces if piece.kind == "text"]
        for page in pages.pages
    ]


def read(path: Path) -> str:
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], capture_output=True, text=True, check=True
    )
    return done.stdout


@needs_reader
def test_an_outside_reader_reads_every_word(
    peas: PedigreeNetwork, history: Report, tmp_path: Path
) -> None:
    pages = lay_out_report(peas, history)
    save_report_pdf(tmp_path / "a.pdf", pages)
    found = re.sub(r"\s+", " ", read(tmp_path / "a.pdf"))
    for heading in (section.heading for section in history.sections):
        assert heading in found
    assert "R. W., Tarnwick, Allotment 7, 2026-09-01" in found
    assert "Sweet and dwarf." in found
    assert "7/8 = 0.875" in found
    assert "21-01-3 ⊗" in found
    for at in range(pages.count):
        assert f"page {at + 1} of {pages.count}" in found
    # The codes of the picture are text as well.
    assert found.count("generation 4") == 1


def test_the_file_is_the_same_twice_and_has_the_given_date(
    peas: PedigreeNetwork, history: Report, tmp_path: Path
) -> None:
    pages = lay_out_report(peas, history)
    one = save_report_pdf(tmp_path / "a.pdf", pages).read_bytes()
    other = save_report_pdf(tmp_path / "b.pdf", lay_out_report(peas, history)).read_bytes()
    assert one == other
    assert b"/CreationDate (D:20260901000000Z" in one
    undated = lay_out_report(peas, history.with_cover(replace(COVER, date="in autumn")))
    third = save_report_pdf(tmp_path / "c.pdf", undated).read_bytes()
    assert b"/CreationDate (D:20000101000000Z" in third
    numbers = [re.search(rb"uuid:([0-9a-f-]{36})", held) for held in (one, third)]
    assert all(numbers)
    assert len({found[1] for found in numbers if found}) == 2


def test_nothing_leaves_the_page(peas: PedigreeNetwork, history: Report) -> None:
    for paper in ("A4", "Letter"):
        pages = lay_out_report(peas, history, paper=paper)
        for page in pages.pages:
            for top, block in page:
                assert top + block.height <= pages.height - 205
                for piece in block.pieces:
                    assert piece.x >= -0.01
                    assert piece.x + piece.width <= pages.width - 2 * MARGIN + 0.5, piece.text
    assert pages.words() == f"{pages.count} pages of Letter."
    with pytest.raises(Fault, match="no paper"):
        lay_out_report(peas, history, paper="A9")


def test_a_row_is_never_cut_and_headings_come_again(peas: PedigreeNetwork) -> None:
    rows = tuple((f"r{n}", f"first{n} " * 20 + f"last{n}") for n in range(60))
    pages = lay_out_report(peas, small(Table(("Row", "Words"), rows)))
    held = texts(pages)
    assert len(held) > 2
    for page in held:
        assert page.count("Row") == 1
    for n in range(60):
        where = [at for at, page in enumerate(held) if f"r{n}" in page]
        assert len(where) == 1
        assert f"last{n}" in " ".join(held[where[0]]).split()
    # At least two rows stand on the last page.
    assert sum(re.fullmatch(r"r\d+", text) is not None for text in held[-1]) >= 2


def test_a_row_higher_than_a_page_loses_nothing(peas: PedigreeNetwork) -> None:
    words = [f"w{n}" for n in range(3000)]
    pages = lay_out_report(peas, small(Table(("One", "Two"), (("x", " ".join(words)),))))
    found = " ".join(text for page in texts(pages) for text in page).split()
    assert [word for word in found if word.startswith("w")] == words
    for page in pages.pages:
        assert all(top + block.height <= pages.height - 205 for top, block in page)


def test_a_code_wider_than_its_column_is_broken_not_shortened() -> None:
    ensure_gui()
    held = theme("grey")
    code = "Z" * 300
    lines = lines_of(held, f"a {code} b", 29, 400)
    assert "".join("".join(lines).split()) == f"a{code}b"
    assert all(width_of(held, 29, line) <= 400 for line in lines)


def test_a_heading_is_never_the_last_on_its_page(peas: PedigreeNetwork, history: Report) -> None:
    for fill in range(0, 60, 4):
        filler = Section("what", "Start", tuple(Text(f"line {n}") for n in range(fill)))
        report = replace(history, sections=(filler, *history.sections[-2:]))
        headings = {section.heading for section in report.sections}
        for page in texts(lay_out_report(peas, report)):
            assert page[-1] not in headings


def test_the_picture_shows_the_line_alone_and_says_nothing_to_click(
    peas: PedigreeNetwork, history: Report
) -> None:
    picture = next(i for s in history.sections for i in s.items if isinstance(i, Picture))
    view = line_view(peas, picture)
    assert view.shown() == set(picture.plants)
    assert {block.sort for block in view.blocks} == {"tag", "knot"}
    assert not any(block.more_up or block.more_down for block in view.blocks)
    made = line_picture(peas, picture)
    for room in ((650.0, 900.0), (650.0, 300.0), (1200.0, 400.0)):
        fitted = made.fitted(*room)
        assert fitted.height <= room[1] + 0.5
        assert fitted.held.placed.bounds[2] * fitted.scale <= room[0]


def test_grey_paper_has_no_colour(peas: PedigreeNetwork, history: Report) -> None:
    def coloured(name: str) -> bool:
        pages = lay_out_report(peas, history.only(["picture"]), theme=name)
        image = pages.image(0, 400)
        spots = (
            image.pixelColor(x, y)
            for x in range(0, image.width(), 2)
            for y in range(0, image.height(), 2)
        )
        return any(spot.saturation() > 60 and spot.value() > 60 for spot in spots)

    assert not coloured("grey")
    assert coloured("light")


def test_a_wrong_ending_is_refused(peas: PedigreeNetwork, tmp_path: Path) -> None:
    pages = lay_out_report(peas, small(Text("x")))
    with pytest.raises(Fault, match="written as PDF"):
        save_report_pdf(tmp_path / "a.html", pages)
    with pytest.raises(Fault):
        save_report_pdf(tmp_path / "no" / "a.pdf", pages)


# Photos -------------------------------------------------------------------------------------------


@pytest.fixture
def with_photos(tmp_path: Path) -> PedigreeNetwork:
    ensure_gui()
    (tmp_path / "photos").mkdir()
    image = QImage(3000, 1500, QImage.Format.Format_RGB32)
    image.fill(QColor("#336699"))
    painter = QPainter(image)
    painter.fillRect(0, 0, 1500, 1500, QColor("#993333"))
    painter.end()
    held = jpeg_of(image)
    # A comment as a camera would leave it, right after the start of the file.
    note = b"GPS 54.5 N"
    held = held[:2] + b"\xff\xfe" + (len(note) + 2).to_bytes(2, "big") + note + held[2:]
    (tmp_path / "photos" / "a.jpg").write_bytes(held)
    (tmp_path / "photos" / "bad.jpg").write_bytes(b"no picture at all")
    (tmp_path / "photos" / "x.svg").write_text("<svg xmlns='http://www.w3.org/2000/svg'/>")
    (tmp_path / "secret.jpg").write_bytes(held)
    net = pedigreeview.read(demo("two_peas_both_ways"))
    net.book.path = tmp_path
    for name in ("a.jpg", "bad.jpg", "x.svg", "gone.jpg", "../secret.jpg"):
        net.book.photos[name] = Photo(name, "19-4-2", "2025-06-01", f"caption of {name}")
    return net


def test_photos_are_made_small_and_lose_what_a_camera_adds(with_photos: PedigreeNetwork) -> None:
    book = with_photos.book
    assert b"GPS" in (photo_bytes(book, "a.jpg") or b"")
    image = photo_image(book, "a.jpg")
    assert image is not None
    assert (image.width(), image.height()) == (1400, 700)
    assert b"GPS" not in jpeg_of(image)
    for name in ("bad.jpg", "x.svg", "gone.jpg", "../secret.jpg", "not in the book"):
        assert photo_image(book, name) is None
    assert photo_bytes(book, "../secret.jpg") is None


def test_photos_stand_on_the_page_and_missing_ones_are_said(with_photos: PedigreeNetwork) -> None:
    report = line_history(with_photos, "19-4-2").only(["photos"])
    pages = lay_out_report(with_photos, report)
    shown = " ".join(text for page in texts(pages) for text in page)
    assert "caption of a.jpg" in shown
    assert shown.count("is not with the book") == 4
    image = pages.image(0, 600)
    found = {image.pixelColor(x, y).name() for x in range(600) for y in range(0, 400, 3)}
    assert any(QColor(name).red() > 130 and QColor(name).blue() < 80 for name in found)
