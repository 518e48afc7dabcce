"""Lists and tables on paper: pages, repeated headings, nothing cut off, columns over parts."""

from __future__ import annotations

import shutil
import subprocess

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtGui import QImage, QPainter

from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.reports.label_lines import Mark
from pedigreeview.reports.paper_lists import (
    MARGIN,
    Block,
    Part,
    lay_out_lists,
    page_size,
    paint_list_page,
    save_lists,
)
from pedigreeview.reports.paper_tables import Cell, TableColumn, table_parts
from pedigreeview.reports.paper_type import UNITS_PER_INCH

pytestmark = pytest.mark.usefixtures("qapp")


def table(rows: int, columns: int = 3, **how):
    made = [TableColumn(f"column {at}", 20) for at in range(columns)]
    cells = [[Cell(f"r{row}c{at}") for at in range(columns)] for row in range(rows)]
    how = {"keys": 1, "paper": "A4", "landscape": False, **how}
    return table_parts("Rows", "below", made, cells, **how)


def texts(lists, at: int) -> list[str]:
    return [mark.text for mark in lists.marks(at) if mark.what == "text"]


def test_rows_flow_over_pages_with_head_and_numbers():
    lists = lay_out_lists(table(70), book="Two rows", date="2026-05-01")
    assert lists.count == 3
    assert lists.words() == "3 pages of A4, portrait."
    found: list[str] = []
    for at in range(lists.count):
        shown = texts(lists, at)
        assert f"page {at + 1} of 3" in shown
        assert "Two rows, 2026-05-01" in shown
        assert "Rows" in shown
        assert "column 0" in shown
        found += [text for text in shown if text.startswith("r") and text.endswith("c0")]
    assert found == [f"r{row}c0" for row in range(70)]


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize("landscape", [False, True])
def test_everything_lies_on_the_paper(paper, landscape):
    parts = table(40, 9, paper=paper, landscape=landscape, sheet="7F3K-Q", notes=["A note. " * 40])
    lists = lay_out_lists(parts, book="b", paper=paper, landscape=landscape)
    wide, high = page_size(paper, landscape)
    assert (lists.width, lists.height) == (wide, high)
    assert (wide > high) == landscape
    for at in range(lists.count):
        for mark in lists.marks(at):
            assert mark.x >= MARGIN - 0.01
            assert mark.x + mark.width <= wide - MARGIN + 0.5
            assert mark.y >= 45
            assert mark.y + mark.height <= high - MARGIN + 0.5


def test_columns_that_do_not_fit_go_on_with_the_keys_repeated():
    parts = table(4, 24)
    assert len(parts) > 1
    assert parts[0].title == f"Rows, part 1 of {len(parts)}"
    seen: list[str] = []
    for part in parts:
        shown = [mark.text for block in part.blocks for mark in block.marks if mark.text]
        assert "r0c0" in shown
        assert "1" in shown
        seen += [text for text in shown if text.startswith("r0c") and text != "r0c0"]
    assert seen == [f"r0c{at}" for at in range(1, 24)]


def test_a_heading_is_never_the_last_on_its_page():
    line = Block((Mark("rule", 0, 0, 10, 0),), 100.0)
    head = Block((Mark("rule", 0, 0, 20, 0),), 100.0, with_next=True)
    for before in range(20, 30):
        part = Part("t", "", None, (*[line] * before, head, line, line))
        lists = lay_out_lists([part], book="")
        for page in lists.pages:
            assert not page.blocks[-1][1].with_next


WORDS = st.text(st.sampled_from("abc WMi-×⊗♀♂é"), max_size=50)


@settings(max_examples=40)
@given(st.lists(st.tuples(WORDS, WORDS), min_size=1, max_size=6), st.integers(1, 8))
def test_text_of_a_cell_stays_in_its_cell(cells, columns):
    made = [TableColumn("head", 12) for _ in range(columns)]
    rows = [[Cell(text, small, strong=True)] * columns for text, small in cells]
    parts = table_parts("T", "", made, rows, keys=0, paper="A4", landscape=False)
    for part in parts:
        for block in part.blocks:
            edges = sorted(
                [0.0, *(m.x for m in block.marks if m.what == "rule" and m.height == block.height)]
            )
            edges.append(next(m.width for m in block.marks if m.what == "box"))
            for mark in block.marks:
                if mark.what in ("box", "shade", "rule"):
                    continue
                left = max(edge for edge in edges if edge <= mark.x + 0.01)
                right = min(edge for edge in edges if edge > mark.x)
                assert left <= mark.x
                assert mark.x + mark.width <= right + 0.6
                assert mark.y >= -0.01
                assert mark.y + mark.height <= block.height + 0.01


def test_a_sheet_is_black_on_white():
    lists = lay_out_lists(table(10, sheet="7F3K-Q"), book="b")
    image = QImage(800, 1132, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    painter.scale(97 / UNITS_PER_INCH, 97 / UNITS_PER_INCH)
    paint_list_page(painter, lists, 0)
    painter.end()
    pixels = {image.pixel(x, y) for x in range(0, 800, 2) for y in range(0, 1132)}
    assert all(p >> 16 & 255 == p >> 8 & 255 == p & 255 for p in pixels)
    assert min(p & 255 for p in pixels) < 40


@pytest.mark.skipif(shutil.which("pdftotext") is None, reason="pdftotext is not installed")
def test_the_pdf_is_read_back(tmp_path):
    lists = lay_out_lists(table(40, sheet="7F3K-Q"), book="Two rows", date="2026-05-01")
    path = save_lists(tmp_path / "a.pdf", lists)
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], capture_output=True, text=True, check=True
    )
    first, second = done.stdout.split("\f")[:2]
    for page, number in ((first, 1), (second, 2)):
        assert f"page {number} of 2" in page
        assert "sheet 7F3K-Q" in page
    assert "r0c0" in first
    assert "r39c2" in second


def test_what_cannot_be_printed(tmp_path):
    with pytest.raises(Fault, match="nothing to print"):
        lay_out_lists([], book="b")
    with pytest.raises(Fault, match="no paper 'B7'"):
        lay_out_lists(table(2), book="b", paper="B7")
    lists = lay_out_lists(table(2), book="b")
    with pytest.raises(Fault, match=r"\.pdf"):
        save_lists(tmp_path / "a.svg", lists)

    def tick(*_: object) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        save_lists(tmp_path / "a.pdf", lists, tick=tick)
    assert list(tmp_path.iterdir()) == []
