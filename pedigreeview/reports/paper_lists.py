"""Lists and plans on paper: book, date and 'page 2 of 3' on top, then blocks one below the other.

Lengths are in tenths of a millimetre.  A document is made of parts; each begins on a new page and
repeats its heading on every page that it takes.  The same painting serves preview, printer and PDF.
"""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.label_lines import Mark, signed_line, text_mark
from pedigreeview.reports.label_sheets import PAPER_MM
from pedigreeview.reports.mark_painter import paint_mark
from pedigreeview.reports.paper_pages import pdf_path, save_pages
from pedigreeview.reports.paper_type import UNITS_PER_MM, shortened, wrapped
from pedigreeview.reports.report_words import counted, tr

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick

__all__ = [
    "MARGIN",
    "Block",
    "PaperLists",
    "Part",
    "lay_out_lists",
    "list_page_layout",
    "page_size",
    "paint_list_page",
    "save_lists",
]

MARGIN = 120.0
_TITLE, _BELOW, _TOP = 50, 28, 24
_HEAD_GAP = 30.0


@dataclass(frozen=True, slots=True)
class Block:
    """Something that is never parted between pages; marks from its own upper left."""

    marks: tuple[Mark, ...]
    height: float
    with_next: bool = False
    """A heading, which must not be the last on its page."""


@dataclass(frozen=True, slots=True)
class Part:
    """One list or plan."""

    title: str
    below: str
    heading: Block | None
    """Repeated on every page of the part."""
    blocks: tuple[Block, ...]
    sheet: str = ""
    """The sheet's number, by which what is written on it is typed back."""
    notes: tuple[str, ...] = ()
    """Sentences at the end of the part."""
    of: int = 1
    """Parts into which the list fell because its columns do not fit side by side."""


@dataclass(frozen=True, slots=True)
class _Page:
    part: Part
    blocks: tuple[tuple[float, Block], ...]
    """Each with its top."""


@dataclass(frozen=True, slots=True)
class PaperLists:
    """A document laid out on its pages."""

    paper: str
    landscape: bool
    width: float
    height: float
    """Of the paper."""
    top: str
    """Book and date."""
    pages: tuple[_Page, ...]

    @property
    def count(self) -> int:
        """How many pages there are."""
        return len(self.pages)

    def marks(self, at: int) -> list[Mark]:
        """Everything on one page, placed from the upper left of the paper."""
        page = self.pages[at]
        found = _head_marks(page.part, self.width)
        for top, block in page.blocks:
            found += [mark.moved(MARGIN, top) for mark in block.marks]
        theme = theme_named("grey")
        y = MARGIN - 58
        number = text_mark(theme, tr("page {} of {}").format(at + 1, self.count), _TOP, soft=True)
        found.append(number.moved(self.width - MARGIN - number.width, y))
        room = self.width - 2 * MARGIN - number.width - 40
        held = shortened(theme, _TOP, self.top, room)
        found.append(text_mark(theme, held, _TOP, soft=True).moved(MARGIN, y))
        return found

    def words(self) -> str:
        """How many pages of what paper."""
        pages = counted(self.count, tr("{} page"), tr("{} pages"))
        way = tr("{} of {}, landscape.") if self.landscape else tr("{} of {}, portrait.")
        return way.format(pages, self.paper)


def page_size(paper: str, landscape: bool) -> tuple[float, float]:
    """Width and height of the paper.

    Raises
    ------
    Fault : there is no such paper
    """
    if paper not in PAPER_MM:
        raise Fault(
            f"There is no paper '{paper}'.", Place(), f"Choose one of: {', '.join(PAPER_MM)}."
        )
    wide, high = (value * UNITS_PER_MM for value in PAPER_MM[paper])
    return (high, wide) if landscape else (wide, high)


def lay_out_lists(
    parts: Sequence[Part], *, book: str, paper: str = "A4", landscape: bool = False, date: str = ""
) -> PaperLists:
    """Flow the blocks of each part over pages.

    book, date : for the top of each page; the date is today's without one

    Raises
    ------
    Fault : no parts, or no such paper
    """
    if not parts:
        raise Fault("There is nothing to print.", Place(), "Choose a list.")
    ensure_gui()
    width, height = page_size(paper, landscape)
    top = ", ".join(text for text in (book, date or datetime.date.today().isoformat()) if text)
    pages: list[_Page] = []
    for part in parts:
        pages += _flowed(part, width, height)
    return PaperLists(paper, landscape, width, height, top, tuple(pages))


def _flowed(part: Part, width: float, height: float) -> list[_Page]:
    start = MARGIN + _head_height(part, width)
    bottom = height - MARGIN
    blocks = [*part.blocks, *_note_blocks(part.notes, width - 2 * MARGIN)]
    pages: list[_Page] = []
    placed: list[tuple[float, Block]] = []
    y = start

    def begin() -> float:
        placed.clear()
        if part.heading is None:
            return start
        placed.append((start, part.heading))
        return start + part.heading.height

    y = begin()
    fresh = len(placed)
    for at, block in enumerate(blocks):
        need = block.height
        if block.with_next and at + 1 < len(blocks):
            need += blocks[at + 1].height
        if y + need > bottom and len(placed) > fresh:
            pages.append(_Page(part, tuple(placed)))
            y = begin()
        placed.append((y, block))
        y += block.height
    pages.append(_Page(part, tuple(placed)))
    return pages


def _head_marks(part: Part, width: float) -> list[Mark]:
    theme = theme_named("grey")
    room = width - 2 * MARGIN
    found: list[Mark] = []
    if part.sheet:
        line = signed_line(theme, tr("sheet {}").format(part.sheet), 36)
        wide = line.width + 40
        left = width - MARGIN - wide
        found.append(Mark("box", left, MARGIN - 6, wide, 58))
        found += [mark.moved(left + 20, MARGIN + 1) for mark in line.marks]
        room -= wide + 40
    title = shortened(theme, _TITLE, part.title, room, strong=True)
    found.append(text_mark(theme, title, _TITLE, strong=True).moved(MARGIN, MARGIN - 8))
    y = MARGIN + 1.2 * _TITLE
    for line_text in wrapped(theme, _BELOW, part.below, width - 2 * MARGIN):
        found.append(text_mark(theme, line_text, _BELOW, soft=True).moved(MARGIN, y))
        y += 1.2 * _BELOW
    return found


def _head_height(part: Part, width: float) -> float:
    lines = len(wrapped(theme_named("grey"), _BELOW, part.below, width - 2 * MARGIN))
    return 1.2 * _TITLE + 1.2 * _BELOW * lines + _HEAD_GAP


def _note_blocks(notes: Sequence[str], width: float) -> list[Block]:
    theme = theme_named("grey")
    found = []
    for note in notes:
        lines = wrapped(theme, _TOP, note, width)
        marks = [
            text_mark(theme, line, _TOP, soft=True).moved(0, 14 + 1.25 * _TOP * at)
            for at, line in enumerate(lines)
        ]
        found.append(Block(tuple(marks), 14 + 1.25 * _TOP * len(lines)))
    return found


def paint_list_page(painter: QPainter, lists: PaperLists, at: int) -> None:
    """Paint one page from the upper left of the paper, a unit being a tenth of a millimetre."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    theme = theme_named("grey")
    marks = lists.marks(at)
    # Shades lie beneath everything, whatever block they came with.
    for mark in sorted(marks, key=lambda one: one.what != "shade"):
        paint_mark(painter, mark, theme)
    painter.restore()


def save_lists(path: str | Path, lists: PaperLists, *, tick: Tick | None = None) -> Path:
    """Write a document as PDF; beside its place first, then moved there.

    Raises
    ------
    Fault : a name that does not end in .pdf, or a file that cannot be written
    """
    path = pdf_path(path, "Lists are written as PDF.")
    save_pages(
        path,
        lists.pages[0].part.title,
        list_page_layout(lists),
        lists.count,
        lambda painter, at: paint_list_page(painter, lists, at),
        refused="The list could not be written.",
        tick=tick,
    )
    return path


def list_page_layout(lists: PaperLists) -> QPageLayout:
    """The paper without margins, for a PDF or a printer."""
    way = QPageLayout.Orientation.Landscape if lists.landscape else QPageLayout.Orientation.Portrait
    size = QPageSize(getattr(QPageSize.PageSizeId, lists.paper))
    return QPageLayout(size, way, QMarginsF(0, 0, 0, 0), QPageLayout.Unit.Millimeter)
