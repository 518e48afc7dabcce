"""Labels on sheets and rolls: which lies where, painted on any device, saved as PDF.

The same painting serves the window's preview, a printer and the PDF.  Everything is black on white,
so that a grey printer loses nothing.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QMarginsF, QRectF, QSizeF, Qt
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPen

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.theme import Theme
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.label_layout import LabelLayout, lay_out_label
from pedigreeview.reports.label_sheets import LabelSheet
from pedigreeview.reports.label_text import LabelText
from pedigreeview.reports.mark_painter import paint_mark
from pedigreeview.reports.paper_pages import pdf_path, save_pages
from pedigreeview.reports.paper_type import UNITS_PER_MM
from pedigreeview.reports.qr import paint_qr
from pedigreeview.reports.report_words import counted, tr

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick

__all__ = [
    "LabelPages",
    "cut_marks",
    "lay_out_labels",
    "page_layout",
    "paint_label_page",
    "save_labels",
]

_TICK = 3.0
"""Length of a cut mark in the margin, and half that of one between labels, in millimetres."""
_MOST_COPIES = 500


@dataclass(frozen=True, slots=True)
class LabelPages:
    """Labels with the sheet that they go on."""

    labels: tuple[LabelText, ...]
    sheet: LabelSheet
    largest: float
    """Size of small type that most of the labels have; none has a larger one."""
    start: int = 1
    """Place of the first label on its sheet, 1 for the first: the rest was used before."""
    marks: bool = True
    """Whether to show where to cut and fold."""
    qr: bool = False

    @property
    def theme(self) -> Theme:
        """Black on white."""
        return theme_named("grey")

    @property
    def count(self) -> int:
        """How many pages there are."""
        return -(-(len(self.labels) + self.start - 1) // self.sheet.count)

    @property
    def next_free(self) -> int:
        """Place of the first unused label on the last sheet; 1 where none is left on it."""
        return (len(self.labels) + self.start - 1) % self.sheet.count + 1

    def on_page(self, at: int) -> list[tuple[int, LabelText]]:
        """The labels of one page, each with its place on the sheet, 0 for the first."""
        first = at * self.sheet.count - (self.start - 1)
        held = range(max(0, first), min(len(self.labels), first + self.sheet.count))
        return [(number - first, self.labels[number]) for number in held]

    @property
    def room(self) -> tuple[float, float]:
        """Width and height for text, in tenths of a millimetre: the least of all places."""
        return _room(self.sheet)

    def layout(self, text: LabelText) -> LabelLayout:
        """The text placed in a panel of the sheet, in a size that most labels of the run have."""
        return _laid_out(text, *self.room, self.qr, self.largest, tr("selfed"))

    def crowded(self) -> list[LabelText]:
        """Labels from which something had to be left out for want of room."""
        return [text for text in dict.fromkeys(self.labels) if self.layout(text).left_out]

    def words(self) -> str:
        """How many labels and sheets, and where the next free label is."""
        labels = counted(len(self.labels), tr("{} label"), tr("{} labels"))
        if self.sheet.roll:
            return tr("{} ({}).").format(labels, self.sheet.words())
        sheets = counted(self.count, tr("{} sheet"), tr("{} sheets"))
        said = tr("{} on {} ({}).").format(labels, sheets, self.sheet.words())
        if self.next_free > 1:
            free = tr("The next free label on the last sheet is number {}.")
            said = f"{said} {free.format(self.next_free)}"
        return said


@lru_cache(maxsize=8192)
def _laid_out(
    text: LabelText, width: float, height: float, qr: bool, largest: float | None, tongue: str
) -> LabelLayout:
    """Placed once; `tongue`: a word as it is spoken, so that another language is placed anew."""
    theme = theme_named("grey")
    if largest is None:
        return lay_out_label(text, width, height, theme, qr=qr)
    return lay_out_label(text, width, height, theme, qr=qr, largest=largest)


@lru_cache(maxsize=64)
def _room(sheet: LabelSheet) -> tuple[float, float]:
    panels = [panel for at in range(sheet.count) for panel in sheet.panels(at)]
    width = round(min(panel[2] for panel in panels) * UNITS_PER_MM, 3)
    height = round(min(panel[3] for panel in panels) * UNITS_PER_MM, 3)
    return (height, width) if sheet.turned else (width, height)


def _common(labels: Iterable[LabelText], sheet: LabelSheet, qr: bool) -> float:
    """The size of the small type that four fifths of the labels can have."""
    different = dict.fromkeys(labels)
    # A sample is enough to see what size is usual.
    sample = list(different)[:: max(1, len(different) // 60)]
    room, tongue = _room(sheet), tr("selfed")
    sizes = sorted(_laid_out(text, *room, qr, None, tongue).small for text in sample)
    return sizes[len(sizes) // 5]


def lay_out_labels(
    labels: Iterable[LabelText],
    sheet: LabelSheet,
    *,
    start: int = 1,
    copies: int = 1,
    marks: bool = True,
    qr: bool = False,
) -> LabelPages:
    """Labels on their sheets.

    start : place of the first label on the first sheet, which may be partly used
    copies : how often the whole set is printed, one set after the other

    Raises
    ------
    Fault : no labels, a start that is not on the sheet, or copies out of range
    """
    held = tuple(labels)
    if not held:
        raise Fault("There are no labels to print.", Place(), "Choose what is to be labelled.")
    if not 1 <= start <= sheet.count:
        raise Fault(
            f"There is no label {start} on this sheet.",
            Place(),
            f"Begin with a label from 1 to {sheet.count}."
            if sheet.count > 1
            else "On a roll printing begins with label 1.",
        )
    if not 1 <= copies <= _MOST_COPIES:
        raise Fault(
            f"{copies} copies cannot be printed.",
            Place(),
            f"Write a number from 1 to {_MOST_COPIES}.",
        )
    ensure_gui()
    return LabelPages(held * copies, sheet, _common(held, sheet, qr), start, marks, qr)


def paint_label_page(painter: QPainter, pages: LabelPages, at: int) -> None:
    """Paint one page from the upper left of the paper.

    The painter must be scaled so that one unit is a tenth of a millimetre: by the device's dots an
    inch over `UNITS_PER_INCH`.
    """
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    sheet = pages.sheet
    for place, text in pages.on_page(at):
        layout = pages.layout(text)
        for panel in sheet.panels(place):
            left, top, width, height = (value * UNITS_PER_MM for value in panel)
            painter.save()
            if sheet.turned:
                painter.translate(left + width, top)
                painter.rotate(90)
                width, height = height, width
            else:
                painter.translate(left, top)
            painter.translate(0, (height - layout.height) / 2)
            _paint_label(painter, layout, pages.theme)
            painter.restore()
    if pages.marks:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        used = [place for place, _ in pages.on_page(at)]
        _paint_marks(painter, pages, used)
    painter.restore()


def _paint_label(painter: QPainter, layout: LabelLayout, theme: Theme) -> None:
    for mark in layout.marks:
        paint_mark(painter, mark, theme)
    if layout.qr is not None:
        left, top, side = layout.qr
        paint_qr(painter, layout.squares, QRectF(left, top, side, side), theme["ink"])


def cut_marks(sheet: LabelSheet, used: Sequence[int]) -> list[tuple[float, float, float, float]]:
    """Lines that show where to cut and fold, as x1, y1, x2, y2 in millimetres.

    Each lies on the edge of a used label, drawn outwards: in the margin, or as far as the gap goes;
    where labels touch, a short line lies along the edge that they share.  The fold of a loop tag
    has a tick at each edge, inwards.  A roll is cut by its printer.
    """
    found: dict[tuple[float, float, float, float], None] = {}
    wide, high = sheet.page

    def add(x1: float, y1: float, x2: float, y2: float) -> None:
        ends = (
            min(max(x1, 0.0), wide), min(max(y1, 0.0), high),
            min(max(x2, 0.0), wide), min(max(y2, 0.0), high),
        )  # fmt: skip
        line = tuple(round(value, 3) for value in ends)
        if line[:2] != line[2:]:
            found[(line[0], line[1], line[2], line[3])] = None

    for at in used:
        left, top, width, height = sheet.place(at)
        row, column = divmod(at, sheet.columns)
        out = {
            "left": sheet.margin[0] if column == 0 else sheet.gap[0] / 2,
            "right": wide - left - width if column == sheet.columns - 1 else sheet.gap[0] / 2,
            "top": sheet.margin[1] if row == 0 else sheet.gap[1] / 2,
            "bottom": high - top - height if row == sheet.rows - 1 else sheet.gap[1] / 2,
        }
        for x, way, side in ((left, -1, "left"), (left + width, 1, "right")):
            for y, down, edge in ((top, -1, "top"), (top + height, 1, "bottom")):
                if sheet.roll:
                    continue
                add(x, y, x + way * min(_TICK, out[side]), y)
                add(x, y, x, y + down * min(_TICK, out[edge]))
                # Labels that touch leave no room outside: along the edge, where nothing is printed.
                if out[side] < 0.5:
                    add(x, y, x, y - down * _TICK / 2)
                if out[edge] < 0.5:
                    add(x, y, x - way * _TICK / 2, y)
        if sheet.fold:
            for shift in (-sheet.fold / 2, 0.0, sheet.fold / 2):
                long = 2.0 if shift == 0.0 else 1.0
                if sheet.turned:
                    y = top + height / 2 + shift
                    add(left, y, left + long, y)
                    add(left + width, y, left + width - long, y)
                else:
                    x = left + width / 2 + shift
                    add(x, top, x, top + long)
                    add(x, top + height, x, top + height - long)
    return list(found)


def _paint_marks(painter: QPainter, pages: LabelPages, used: Sequence[int]) -> None:
    painter.setPen(QPen(colour(pages.theme["ink_soft"]), 1.0, Qt.PenStyle.SolidLine))
    for line in cut_marks(pages.sheet, used):
        painter.drawLine(QLineF(*(value * UNITS_PER_MM for value in line)))


def save_labels(
    path: str | Path,
    labels: Iterable[LabelText],
    sheet: LabelSheet,
    *,
    start: int = 1,
    copies: int = 1,
    marks: bool = True,
    qr: bool = False,
    title: str = "",
    tick: Tick | None = None,
) -> LabelPages:
    """Write labels as PDF, one page for each sheet or for each label of a roll.

    The file is written beside its place and moved there when it is whole.

    Raises
    ------
    Fault : nothing to print, a start or copies out of range, or a file that cannot be written
    """
    path = pdf_path(path, "Labels are written as PDF.")
    pages = lay_out_labels(labels, sheet, start=start, copies=copies, marks=marks, qr=qr)
    save_pages(
        path,
        title or tr("Labels"),
        page_layout(sheet),
        pages.count,
        lambda painter, at: paint_label_page(painter, pages, at),
        refused="The labels could not be written.",
        doing="Labels",
        tick=tick,
    )
    return pages


def page_layout(sheet: LabelSheet) -> QPageLayout:
    """The paper of a sheet without margins, for a PDF or a printer."""
    if sheet.paper:
        size = QPageSize(getattr(QPageSize.PageSizeId, sheet.paper))
    else:
        wide, high = sheet.page
        size = QPageSize(
            QSizeF(wide, high),
            QPageSize.Unit.Millimeter,
            sheet.name,
            QPageSize.SizeMatchPolicy.ExactMatch,
        )
    # A size that is wider than high stays as it is: Portrait means 'as given'.
    return QPageLayout(
        size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0), QPageLayout.Unit.Millimeter
    )
