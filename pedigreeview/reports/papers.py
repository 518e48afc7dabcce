"""Any paper of the season by one wish: labels, lists and blank sheets, on any device.

The same `Paper` is painted for the preview, written as PDF and sent to a printer, so that what was
seen is what comes out.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPagedPaintDevice, QPageLayout, QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.printed_sheets import PrintedSheet
from pedigreeview.reports.garden_sheets import (
    GardenSheet,
    crossing_sheet,
    fruit_sheet,
    pollination_sheet,
    row_sheet,
    score_sheet,
)
from pedigreeview.reports.label_content import KINDS, labels_for
from pedigreeview.reports.label_sheets import LabelSheet, sheet_named, usual_sheet
from pedigreeview.reports.labels import (
    LabelPages,
    lay_out_labels,
    page_layout,
    paint_label_page,
    save_labels,
)
from pedigreeview.reports.paper_lists import (
    PaperLists,
    Part,
    lay_out_lists,
    list_page_layout,
    paint_list_page,
    save_lists,
)
from pedigreeview.reports.paper_pages import paint_pages
from pedigreeview.reports.paper_type import UNITS_PER_MM
from pedigreeview.reports.report_words import tr

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick

__all__ = ["Paper", "Wish", "make_paper"]

_SAID = 6
"""Labels that are named one by one where something is left out of them."""
_EMPTY_ROWS = 4
"""Rows at the foot of a crossing list, for crosses that are made on the spot."""


@dataclass(frozen=True, slots=True)
class Wish:
    """What is to be printed, and on what.

    paper : a word of `paper_choices.PAPERS`
    codes : what it is made for; none: all that are due
    stock : of labels, a name or measures (`label_sheets.sheet_named`); '' for the usual one
    every : of tags, one for each flower or fruit; None as is usual for the kind
    size, landscape : of lists, the paper and its way
    traits : of score sheets; none: all
    rows : of a pollination sheet
    day : ISO day of the crossing list
    season : year of the crossing plan; '' for the one that is coming
    """

    paper: str
    codes: tuple[str, ...] = ()
    stock: str = ""
    start: int = 1
    copies: int = 1
    marks: bool = True
    qr: bool = False
    every: bool | None = None
    size: str = "A4"
    landscape: bool = True
    traits: tuple[str, ...] = ()
    rows: int = 24
    day: str = ""
    season: str = ""

    @property
    def labels(self) -> bool:
        """Whether it goes on label stock."""
        return self.paper in KINDS


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper laid out on its pages.

    sheets : blank sheets among it, to be kept in the book when they are printed
    warnings : what does not fit or stands otherwise than one might think, a sentence each
    next_free : of label sheets, the first label that stays unused; 1 where none is left
    """

    title: str
    labels: LabelPages | None
    lists: PaperLists | None
    sheets: tuple[PrintedSheet, ...] = ()
    warnings: tuple[str, ...] = ()

    @property
    def count(self) -> int:
        """How many pages there are."""
        held = self.labels or self.lists
        assert held is not None
        return held.count

    @property
    def next_free(self) -> int:
        """The first unused label of the last sheet, 1 where none is left or on a roll."""
        return self.labels.next_free if self.labels is not None else 1

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of a page in millimetres."""
        if self.labels is not None:
            return self.labels.sheet.page
        assert self.lists is not None
        return self.lists.width / UNITS_PER_MM, self.lists.height / UNITS_PER_MM

    @property
    def layout(self) -> QPageLayout:
        """The page from edge to edge, whatever margins a printer keeps."""
        if self.labels is not None:
            made = page_layout(self.labels.sheet)
        else:
            assert self.lists is not None
            made = list_page_layout(self.lists)
        made.setMode(QPageLayout.Mode.FullPageMode)
        return made

    def words(self) -> str:
        """How much it is, on what."""
        held = self.labels or self.lists
        assert held is not None
        return held.words()

    def paint(self, painter: QPainter, at: int) -> None:
        """Paint one page, a unit of the painter being a tenth of a millimetre."""
        if self.labels is not None:
            paint_label_page(painter, self.labels, at)
        elif self.lists is not None:
            paint_list_page(painter, self.lists, at)

    def image(self, at: int, width: int) -> QImage:
        """One page as it will look, so many pixels wide."""
        wide, high = self.size
        made = QImage(
            width, max(1, round(width * high / wide)), QImage.Format.Format_ARGB32_Premultiplied
        )
        made.fill(Qt.GlobalColor.white)
        painter = QPainter()
        painter.begin(made)
        try:
            scale = width / (wide * UNITS_PER_MM)
            painter.scale(scale, scale)
            self.paint(painter, at)
        finally:
            painter.end()
        return made

    def save(self, path: str | Path, tick: Tick | None = None) -> Path:
        """Write it as PDF, beside its place first.

        Raises
        ------
        Fault : a name that does not end in .pdf, or a file that cannot be written
        """
        held = self.labels
        if held is not None:
            save_labels(
                path,
                held.labels,
                held.sheet,
                start=held.start,
                marks=held.marks,
                qr=held.qr,
                title=self.title,
                tick=tick,
            )
            return Path(path)
        assert self.lists is not None
        return save_lists(path, self.lists, tick=tick)

    def print_on(self, device: QPagedPaintDevice, tick: Tick | None = None) -> int:
        """Paint every page on a printer at its true size and give their number.

        Raises
        ------
        Fault : the device cannot be painted on
        Cancelled : by the tick, between two pages
        """
        device.setPageLayout(self.layout)
        refused = Fault(
            "The printer did not take the paper.",
            None,
            "See whether it is switched on, or save it as PDF.",
        )
        paint_pages(device, self.count, self.paint, refused, tick=tick)
        return self.count


def make_paper(book: Book, wish: Wish, titles: Mapping[str, str] | None = None) -> Paper:
    """Lay a paper out.

    titles : what each paper is called in the title of its file

    Raises
    ------
    Fault : nothing to print, a code that is not in the book, a stock that is not known
    """
    named = (titles or {}).get(wish.paper, wish.paper)
    title = f"{book.settings.name}: {named}" if book.settings.name else named
    if wish.labels:
        return _labels(book, wish, title)
    parts, sheets, warnings = _parts(book, wish)
    name = book.settings.name
    lists = lay_out_lists(parts, book=name, paper=wish.size, landscape=wish.landscape)
    over = max(part.of for part in parts)
    if over > 1:
        warnings.append(
            f"Its columns do not fit side by side: they go on over {over} parts, each with "
            "the first columns again."
        )
    return Paper(title, None, lists, sheets, tuple(warnings))


def _labels(book: Book, wish: Wish, title: str) -> Paper:
    stock: LabelSheet = (
        sheet_named(wish.stock) if wish.stock.strip() else usual_sheet(wish.paper, wish.size)
    )
    texts = labels_for(book, wish.paper, wish.codes, every=wish.every)
    pages = lay_out_labels(
        texts, stock, start=wish.start, copies=wish.copies, marks=wish.marks, qr=wish.qr
    )
    warnings = []
    crowded = pages.crowded()
    for text in crowded[:_SAID]:
        missing = ", ".join(tr(one) for one in pages.layout(text).left_out)
        warnings.append(f"The label {text.code} has no room for: {missing}.")
    if len(crowded) > _SAID:
        warnings.append(
            f"{len(crowded) - _SAID} more labels have no room for all of it; larger ones would."
        )
    return Paper(title, pages, None, (), tuple(warnings))


_Made = tuple[list[Part], tuple[PrintedSheet, ...], list[str]]


def _parts(book: Book, wish: Wish) -> _Made:
    day = wish.day or datetime.date.today().isoformat()
    codes = wish.codes
    if wish.paper == "crossing":
        return _crossing(book, wish, day)
    if wish.paper == "plan":
        from pedigreeview.reports.crossing_plan import crossing_plan, crossing_plan_parts

        plan = crossing_plan(book, wish.season, codes)
        return (
            crossing_plan_parts(book, plan, paper=wish.size, landscape=wish.landscape),
            (),
            [],
        )
    if wish.paper == "beds":
        from pedigreeview.reports.bed_plan import bed_plan_parts, bed_rows

        rows = bed_rows(book, codes)
        return bed_plan_parts(book, rows, paper=wish.size, landscape=wish.landscape), (), []
    from pedigreeview.reports.garden_lists import garden_parts

    sheet: GardenSheet
    if wish.paper == "pollinations":
        sheet = pollination_sheet(wish.rows)
    elif wish.paper == "fruit sheet":
        sheet = fruit_sheet(book, codes)
    elif wish.paper == "rows":
        sheet = row_sheet(book, codes)
    elif wish.paper == "scores":
        sheet = score_sheet(book, codes, wish.traits)
    else:
        raise Fault(f"There is no paper '{wish.paper}'.", Place(), "Choose another.")
    parts = garden_parts(book, sheet, paper=wish.size, landscape=wish.landscape)
    return parts, (sheet.as_printed(day),), []


def _crossing(book: Book, wish: Wish, day: str) -> _Made:
    from pedigreeview.reports.crossing_list import crossing_list_parts, crossing_rows
    from pedigreeview.reports.garden_lists import how_typed_in

    rows = crossing_rows(book, day, wish.codes)
    parts = crossing_list_parts(book, day, wish.codes, paper=wish.size, landscape=wish.landscape)
    sheet = crossing_sheet([row.cross for row in rows], _EMPTY_ROWS)
    how = how_typed_in()
    numbered = [replace(part, sheet=sheet.number, notes=(*part.notes, how)) for part in parts]
    return numbered, (sheet.as_printed(day),), []
