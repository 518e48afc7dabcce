"""A report on pages: blocks of text, rows of tables, the pedigree and photos, flowed over paper.

Lengths are in tenths of a millimetre.  No row of a table and no picture is cut in two; the headings
of a table stand again on every page that it goes on to.  The same painting serves PDF, printer and
preview; all is black and grey on white but for the founders of a coloured picture.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QMarginsF, QPointF, QRectF, Qt
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter

from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.paper_lists import page_size
from pedigreeview.reports.paper_type import UNITS_PER_MM, ascent, paper_font
from pedigreeview.reports.report_blocks import Block, Piece, Setter, text_pieces
from pedigreeview.reports.report_model import PhotoOf, Picture, Report, Table, Text
from pedigreeview.reports.report_photos import photo_image
from pedigreeview.reports.report_picture import LinePicture, line_picture
from pedigreeview.reports.report_words import tr

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick
    from pedigreeview.network import PedigreeNetwork

__all__ = ["MARGIN", "ReportPages", "lay_out_report"]

MARGIN = 180.0
_TOP, _BOTTOM = 200.0, 210.0
_SMALL = 25


@dataclass(frozen=True, slots=True)
class ReportPages:
    """A report laid out on its pages."""

    report: Report
    paper: str
    width: float
    height: float
    """Of the paper."""
    pages: tuple[tuple[tuple[float, Block], ...], ...]
    pictures: dict[int, Callable[[QPainter], None]]
    """How the pieces that are no text are painted, each from its own upper left."""

    @property
    def count(self) -> int:
        """How many pages there are."""
        return len(self.pages)

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of a page in millimetres."""
        return self.width / UNITS_PER_MM, self.height / UNITS_PER_MM

    @property
    def layout(self) -> QPageLayout:
        """The page without margins."""
        return QPageLayout(
            QPageSize(getattr(QPageSize.PageSizeId, self.paper)),
            QPageLayout.Orientation.Portrait,
            QMarginsF(0, 0, 0, 0),
            QPageLayout.Unit.Millimeter,
        )

    def words(self) -> str:
        """How many pages of what paper."""
        if self.count == 1:
            return tr("1 page of {}.").format(self.paper)
        return tr("{} pages of {}.").format(self.count, self.paper)

    def paint(self, painter: QPainter, at: int) -> None:
        """Paint one page from the upper left of the paper, a unit a tenth of a millimetre."""
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        for top, block in self.pages[at]:
            for piece in sorted(block.pieces, key=lambda one: one.kind != "shade"):
                self._piece(painter, piece, MARGIN + piece.x, top + piece.y)
        self._edges(painter, at)
        painter.restore()

    def _piece(self, painter: QPainter, piece: Piece, x: float, y: float) -> None:
        theme = theme_named("grey")
        ink = colour(theme["ink_soft" if piece.soft else "ink"])
        if piece.kind == "text":
            painter.setFont(paper_font(theme, piece.size, strong=piece.strong))
            painter.setPen(ink)
            painter.drawText(QPointF(x, y + ascent(theme, piece.size)), piece.text)
        elif piece.kind == "rule":
            painter.setPen(pen(theme["ink_soft"], 1.2 if piece.soft else 2.4))
            painter.drawLine(QLineF(x, y, x + piece.width, y))
        elif piece.kind == "shade":
            painter.fillRect(QRectF(x, y, piece.width, piece.height), colour(theme["paper_behind"]))
        else:
            painter.save()
            painter.translate(x, y)
            self.pictures[piece.number](painter)
            painter.restore()

    def _edges(self, painter: QPainter, at: int) -> None:
        """Title above (but on the first page, which has it large), who and which page below."""
        theme = theme_named("grey")
        room = self.width - 2 * MARGIN
        number = tr("page {} of {}").format(at + 1, self.count)
        y = self.height - _BOTTOM + 66
        self._piece(painter, Piece("rule", 0, 0, room, soft=True), MARGIN, y - 14)
        (piece,) = text_pieces(theme, number, _SMALL, room, soft=True)[:1]
        self._piece(painter, piece, self.width - MARGIN - piece.width, y)
        cover = self.report.cover
        said = [*cover.person[:1], cover.date]
        foot = ", ".join(text for text in said if text) or self.report.below
        for line in text_pieces(theme, foot, _SMALL, room - piece.width - 60, soft=True)[:1]:
            self._piece(painter, line, MARGIN, y)
        if at:
            for line in text_pieces(theme, self.report.title, _SMALL, room, soft=True)[:1]:
                self._piece(painter, line, MARGIN, _TOP - 84)
            self._piece(painter, Piece("rule", 0, 0, room, soft=True), MARGIN, _TOP - 44)

    def image(self, at: int, width: int) -> QImage:
        """One page as it will look, so many pixels wide."""
        wide, high = self.width, self.height
        made = QImage(
            width, max(1, round(width * high / wide)), QImage.Format.Format_ARGB32_Premultiplied
        )
        made.fill(Qt.GlobalColor.white)
        painter = QPainter()
        painter.begin(made)
        try:
            painter.scale(width / wide, width / wide)
            self.paint(painter, at)
        finally:
            painter.end()
        return made


def lay_out_report(
    net: PedigreeNetwork,
    report: Report,
    *,
    paper: str = "A4",
    theme: str = "grey",
    placed: LinePicture | None = None,
    tick: Tick | None = None,
) -> ReportPages:
    """Flow a report over pages of A4 or Letter, upright.

    theme : of the pedigree: 'grey', founders told apart by pattern, or 'light'
    placed : the pedigree where it was placed before (`line_picture`), in this theme

    Raises
    ------
    Fault : there is no such paper
    """
    ensure_gui()
    width, height = page_size(paper, False)
    room = width - 2 * MARGIN
    setter = Setter(room, height - _TOP - _BOTTOM)
    pictures: dict[int, Callable[[QPainter], None]] = {}
    blocks = setter.title(report)
    for at, section in enumerate(report.sections):
        if tick is not None:
            tick(at, len(report.sections), "Parts")
        blocks += setter.heading(section.heading, first=not at)
        photos: list[tuple[PhotoOf, QImage | None]] = []
        for place, item in enumerate(section.items):
            if isinstance(item, Picture):
                made = placed or line_picture(net, item, theme)
                blocks += setter.picture(made, item.words, pictures)
            elif isinstance(item, PhotoOf):
                photos.append((item, photo_image(net.book, item.name)))
            elif isinstance(item, Text) and isinstance((*section.items, None)[place + 1], Table):
                # What says what a table is stays with it.
                blocks += [replace(block, with_next=True) for block in setter.item(item)]
            else:
                blocks += setter.item(item)
        blocks += setter.photos(photos, pictures)
    pages = _flowed(blocks, _TOP, height - _BOTTOM)
    return ReportPages(report, paper, width, height, pages, pictures)


def _flowed(
    blocks: list[Block], top: float, bottom: float
) -> tuple[tuple[tuple[float, Block], ...], ...]:
    """Blocks on pages.

    Those that belong to the next go on with it; the headings of tables come again.
    """
    pages: list[list[tuple[float, Block]]] = [[]]
    y = top
    for at, block in enumerate(blocks):
        need, last = block.height, at
        while blocks[last].with_next and last + 1 < len(blocks):
            last += 1
            need += blocks[last].height
        if y + min(need, bottom - top) > bottom + 0.01 and pages[-1]:
            pages.append([])
            y = top
            if block.again is not None:
                pages[-1].append((y, block.again))
                y += block.again.height
        if not pages[-1] and block.space:
            continue
        pages[-1].append((y, block))
        y += block.height
    return tuple(tuple(page) for page in pages if page)
